#pragma once

#include "core/climate/place_climate.h"
#include "core/home/spot_climate.h"
#include "core/plants/plant_kind.h"
#include "core/plants/rest_habit.h"
#include "core/units/light_meter.h"

#include <array>
#include <optional>

namespace lathhouse::plan {

/// Lamps over the plants that stand indoors.
struct Lamps {
    double hours; ///< A day, 0..24.
    PhotonFlux flux;
};

/// When plants of a place rest, by the dates of the place and not of the calendar.
class RestingSeasons {
public:
    /// Winter: the days that are shorter than 11 hours; where no day is that short, the three coolest months,
    /// and none where the months are alike (within 5 K). Summer: the three warmest months, none where they
    /// are alike. Source of the 11 hours: the rule feed_day_length.
    explicit RestingSeasons(const climate::PlaceClimate& climate);
    bool is_winter(calendar::Date date) const;
    bool is_hot(calendar::Date date) const;
    bool has_winter() const { return has_winter_; }

private:
    std::array<bool, 366> winter_{};
    std::array<bool, 366> hot_{};
    bool has_winter_ = false;
};

enum class RestReason { None, Winter, HotSeason };

/// How a plant grows on a usual day at a spot.
struct GrowthDay {
    double temperature; ///< temperature_response of the day, 0..1.
    double light;       ///< light_response, 0..1.
    double season;      ///< What short days leave, 0..1.
    RestReason rest;    ///< It stands still whatever the room is like.
    bool too_warm;      ///< What temperature takes, heat takes.
    DailyLight moles;   ///< Lamps included.
    /// 0..1; 0 in a rest.
    double index() const { return rest == RestReason::None ? temperature * light * season : 0.0; }
};

/// Growth of a kind on a usual day of that date at a spot.
///
/// light_to_thrive, heat_limit: the plant's own. Kinds that slow in winter grow at 0.4 on days of 9 hours and
/// less, fully from 12 hours on, in a straight line between (common practice, no source); lamps count as day
/// where they burn longer, and add their light. Kinds that rest do so in the place's seasons.
GrowthDay growth_on(const plants::PlantKind& kind, DailyLight light_to_thrive, Celsius heat_limit,
                    const home::SpotDay& day, calendar::Date date, const RestingSeasons& seasons,
                    std::optional<Lamps> lamps = {});

/// The kind of a plant in the reference; nullptr where the grower used another word.
const plants::PlantKind* kind_of(const home::Plant& plant);

} // namespace lathhouse::plan
