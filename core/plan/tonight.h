#pragma once

#include "core/climate/night_outlook.h"
#include "core/climate/place_nights.h"
#include "core/home/household.h"
#include "core/home/thermometer.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// A night ahead and what was forecast of it.
struct NightAhead {
    calendar::Date night; ///< The morning on which it ends.
    std::optional<climate::ForecastLow> forecast = {};
    climate::NightWeather weather = {};
    std::optional<Celsius> dew_point = {};
};

/// How many nights ahead are answered.
inline constexpr int kNightsAhead = 10;

/// The nights that end after `today`, at most ten, each by the forecast of it that was issued last. A day's
/// forecasts need not reach that far; nights without one are left out.
std::vector<NightAhead> nights_of_forecast(std::span<const home::KeptForecast> forecasts,
                                           calendar::Date today);

/// Whether frost forms on leaves in the open while the air is above freezing. On a clear calm night leaves
/// are colder than the air at screen height: frost is seen with lows up to 3.5 C (trade rule R038), and an
/// upper face open to the sky can be 5 K colder than the air (R166). Under a roof it does not form (R039).
enum class LeafFrost {
    None,
    IfClearAndCalm, ///< The low is cold enough, sky or wind are not known.
    Likely,
};
/// At or below that low of the open air.
inline constexpr Celsius kLeafFrostBelow = Celsius::from_degrees(3.0);

enum class NightReason {
    WithinRisk,   ///< Outdoors; may stay.
    DamageLikely, ///< Outdoors; the damage line is crossed with more than the accepted chance.
    DeathLikely,  ///< Outdoors; the lethal line is crossed with more than a tenth of it.
    RoomHolds,    ///< Indoors; the room's logged lows stay above its damage line.
    RoomTooCold,  ///< Indoors; they do not.
};

/// One plant through one night where it stands now.
struct PlantNight {
    home::PlantId plant;
    home::SpotId spot;
    Probability damage; ///< Chance of a low at or below its damage line at its spot.
    Probability lethal;
    bool carry_in;
    NightReason reason;
    LeafFrost leaf_frost;
};

struct NightPlan {
    NightAhead ahead;
    climate::NightOutlook outlook;  ///< Of the open air.
    std::vector<PlantNight> plants; ///< Those that stand somewhere whose nights are known, by id.
};

/// What every plant faces in each of the nights. Outdoors the spot's offset as the log has taught it, for the
/// night's kind, with how it scatters from night to night; indoors the room's lows of the last three weeks
/// (Student's t about their mean, four nights of 1.5 K added to their spread; common practice, no source),
/// and no answer where none were logged.
///
/// as_told: the household with the offsets that it was given, not the learned ones.
/// by_season: where given, chances of a night of which no forecast speaks are the place's own, as the plan and every other
/// answer have them; else those of `season`.
/// Precondition: `season` outlives the answer.
std::vector<NightPlan> plan_nights(const home::Household& as_told, const home::NightLog& log,
                                   const climate::NightModel& season, std::span<const NightAhead> nights,
                                   calendar::Date today, Probability risk, const climate::PlaceNights* by_season = nullptr);

/// The coming night of a plant that stands outdoors.
struct ComingNight {
    PlantNight plant;
    Celsius low;      ///< The middle one, at its spot.
    bool by_forecast; ///< Else by the season alone.
};
/// Of every plant that stands outdoors, by the forecast where one is kept.
std::vector<ComingNight> coming_nights(const home::Household& as_told, const home::NightLog& log,
                                       const climate::NightModel& season, const climate::PlaceNights& by_season,
                                       calendar::Date today, Probability risk);

/// A logged low or high of a room that a plant in it does not like.
enum class RoomTrouble { AtSafeNight, AtDamage, AtHeatLimit };
struct RoomRemark {
    home::PlantId plant;
    home::SpotId spot;
    RoomTrouble trouble;
    Celsius logged;
    calendar::Date night;
    Celsius line;
};
/// The worst low and the worst high of the last three weeks against the lines of each plant indoors.
std::vector<RoomRemark> room_remarks(const home::Household& household, const home::NightLog& log,
                                     calendar::Date today);

/// How right forecasts have been at this place, by groups of lead.
struct ForecastRecord {
    climate::ForecastErrors errors; ///< With the record in them.
    struct Scores {
        int nights = 0;
        KelvinDelta forecast = KelvinDelta::from_kelvins(0.0); ///< Mean score with the usual errors.
        KelvinDelta learned = KelvinDelta::from_kelvins(0.0);  ///< With the errors of the nights before each.
        KelvinDelta season = KelvinDelta::from_kelvins(0.0);   ///< Of the season alone.
    };
    std::array<Scores, climate::ForecastErrors::kGroups> scores;
};
/// Scores are continuous ranked probability scores of the open-air low, as far as a thermometer tells it.
ForecastRecord forecast_record(const home::Household& as_told, const home::NightLog& log,
                               const climate::NightModel& season);

} // namespace lathhouse::plan
