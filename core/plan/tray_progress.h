#pragma once

#include "core/home/seed_lot.h"
#include "core/plan/emergence.h"
#include "core/plan/sowing.h"

#include <optional>
#include <string>
#include <vector>

namespace lathhouse::plan {

/// How a tray does against what is expected of it.
struct TrayProgress {
    const home::Tray* tray;
    Celsius mix;                       ///< As logged, else the room's.
    std::optional<DateSpan> expected_on; ///< When it comes up; nullopt where it does not at that temperature.
    double expected_by_now;            ///< Seedlings, of a lot of that rate.
    std::optional<home::TrayCount> counted;
    /// Expected by the date of the count; nullopt where nothing was counted.
    std::optional<double> expected_by_count;
    bool over;
    /// The count is lower than 19 of 20 such trays would show by that date.
    bool behind;
};

/// rate: before this lot's trays were counted would be fairest, after will do.
TrayProgress progress_of(const home::Tray& tray, const home::SeedBook& book, const plants::SeedKind& kind,
                         const home::GerminationRate& rate, Celsius room, calendar::Date today);

/// What seeds and trays want of the grower on a date.
enum class SowingTaskKind {
    SowIndoors,
    SowOutdoors,
    CountTray,   ///< Seedlings ought to be up.
    PotUp,       ///< The count is over and nothing was potted from the tray.
    Harden,
    PlantOut,
};
struct SowingTask {
    SowingTaskKind kind;
    std::optional<home::LotId> lot;
    std::optional<home::TrayId> tray;
    calendar::Date from;
    calendar::Date wait_until; ///< Later than that it is worth less.
    int minutes;               ///< Common practice, no source.
    std::string name = {};     ///< The lot's.
    bool last_day = false;     ///< Of a sowing: it is of no use any more tomorrow.
};

/// One lot's tasks on that date: the season's sowing where no tray has answered it, and its trays'. plan: of the
/// lot's kind, made for that date.
std::vector<SowingTask> due_on(calendar::Date date, const home::SeedLot& lot, const home::SeedBook& book,
                               const SowingPlan& plan, Celsius room);

/// What all lots of a household want, today and through the year from today: their sowings are worked out once. A lot whose
/// crop the reference does not know wants nothing.
class SowingOutlook {
public:
    SowingOutlook() = default;
    SowingOutlook(calendar::Date today, home::SeedBook book, const climate::PlaceClimate& place, Probability risk);
    /// Tasks on a date from today on; of later seasons than the one that comes first nothing is told.
    std::vector<SowingTask> due(calendar::Date date) const;

private:
    struct OfLot {
        home::SeedLot lot;
        SowingPlan plan;
    };
    home::SeedBook book_;
    std::vector<OfLot> lots_;
    Celsius room_ = SowingWishes{}.room;
};

} // namespace lathhouse::plan
