#pragma once

#include "core/plan/pest_course.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace lathhouse::plan {

/// A pest as the events name it.
struct PestOfHistory {
    std::string key;           ///< What finds are told apart by.
    std::string as_written;    ///< By the grower; empty where none was named.
    const plants::Pest* clock; ///< The one by which it is reckoned.
    bool is_known;             ///< `clock` is the pest itself.
    bool is_precaution;        ///< No find: plants that were set apart.
};

/// The events that bear on pests, sorted for questions. See plan_pest_courses for the details it reads.
class PestHistory {
public:
    PestHistory(const home::Household& household, std::span<const home::Event> events,
                calendar::Date today);

    struct Find {
        calendar::Date date;
        PestAmount amount;
    };
    /// Of an infested plant: the days on which it may have passed its pest on.
    struct Source {
        home::PlantId plant;
        calendar::Date from;
        calendar::Date to;
    };
    struct Contact {
        home::PlantId plant;
        calendar::Date last;
        PestReason reason;
        std::optional<home::PlantId> from;
    };

    std::vector<home::PlantId> living() const;
    std::vector<home::PlantId> living_or_gone() const;
    bool is_living(home::PlantId plant) const;
    std::optional<home::SpotId> spot_on(home::PlantId plant, calendar::Date date) const;
    /// Whether it was set apart by hand, or stands at a spot that is.
    bool is_apart_on(home::PlantId plant, calendar::Date date) const;
    /// The named ones, then the ones nobody knows, then the precaution where a plant was set apart.
    std::vector<PestOfHistory> pests() const { return pests_; }
    std::vector<Find> finds(home::PlantId plant, const PestOfHistory& pest) const;
    /// In order of date.
    std::vector<calendar::Date> clean_looks(home::PlantId plant) const;
    int treatments_after(home::PlantId plant, calendar::Date since) const;
    std::optional<calendar::Date> last_treatment(home::PlantId plant, calendar::Date since) const;
    /// The most that was found on or after the date.
    PestAmount amount(home::PlantId plant, const PestOfHistory& pest, calendar::Date since) const;
    /// Put back among the others after the date, and not set apart again.
    bool released_after(home::PlantId plant, calendar::Date since) const;
    /// The last contact of every living plant with a source, a find at its spot, or its setting apart.
    std::vector<Contact> contacts(const PestOfHistory& pest, std::span<const Source> sources) const;

private:
    struct OfPlant {
        std::vector<std::pair<calendar::Date, home::SpotId>> stays;
        std::vector<std::pair<calendar::Date, bool>> apart; ///< By hand, from that date on.
        std::vector<calendar::Date> clean_looks;
        std::vector<calendar::Date> treatments;
        std::map<std::string, std::vector<Find>> finds;
        bool gone = false;
        std::optional<calendar::Date> gone_on; ///< It stands nowhere from then on.
        bool was_moved = false;
    };
    void take(const home::Event& event);
    void take_find(const home::Event& event, const std::string& name);
    bool set_apart_on(home::PlantId plant, calendar::Date date) const;
    std::string key_of(const std::string& name);

    const home::Household& household_;
    calendar::Date today_;
    std::map<home::PlantId, OfPlant> plants_;
    std::vector<PestOfHistory> pests_;
    std::map<std::string, std::vector<std::pair<calendar::Date, home::SpotId>>> finds_at_spots_;
};

} // namespace lathhouse::plan
