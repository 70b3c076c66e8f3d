#pragma once

#include "core/calendar/date.h"
#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "core/plan/light_year.h"

#include <compare>
#include <vector>

namespace lathhouse::plan {

/// Light at a spot on a date: between its winter and its summer figure by the season's cosine (shortest day
/// to longest day of the hemisphere). Common practice, no source; for spots whose window, roof or wall is
/// described the plan takes that instead (light_year.h).
DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::DayOfYear day);
DailyLight light_at(const home::Spot& spot, Latitude latitude, calendar::Date date);

/// Discomfort of one night and the day before it, without unit: about 1 is a night that a plant should not
/// have for long, 0 is at ease. Sum of
/// - cold: 0.12 for each degree by which the night is expected to fall short of the plant's safe night;
/// - heat: 0.1 for each degree by which the day is expected to exceed its heat limit (outdoors);
/// - light: 1.1 ln(need / light) where there is too little, doubled below what the plant survives on,
///   0.9 ln(light / (8 x need)) where there is too much;
/// - room air: 0.25 x the share of nights that would be above its safe night outdoors, for kinds that are
/// grown
///   in the open (porch plants, fruit, herbs, vegetables) and stand indoors;
/// - wind: 0.2 where the grower says that the spot is windy;
/// - rain: 0.35 x the share of wet days where the spot is open and the plant must dry.
/// Weights: those of the moves study's instances; common practice, no source. The number of wet days is taken
/// as the month's rain over 8 mm, at most all days (rule of thumb).
double stress_of(const home::Plant& plant, const home::Spot& spot, const climate::PlaceClimate& climate,
                 const climate::NightModel& nights, calendar::Date evening);

/// Where a spot stands for one that carries: outdoors or in, and how light it is, in doublings of its yearly
/// mean light, rounded.
struct MoveZone {
    bool outdoors;
    int light;
    friend constexpr auto operator<=>(const MoveZone&, const MoveZone&) = default;
};
MoveZone zone_of(const home::Spot& spot, const LightYear& light);
/// Trouble of a carry by the way it goes, in the unit of stress: 1.5 through the door, 1.2 for each doubling
/// of light upwards, 0.6 downwards. Common practice, no source.
double step_between(MoveZone from, MoveZone to);
/// Trouble of any carry of that plant: 6 and 0.1 a kilogram, three times that for plants that sulk. Common
/// practice, no source.
double trouble_of_carrying(const home::Plant& plant);

/// Stress of a household's plants through a year, the plants' and the spots' shares worked out once.
class StressOfYear {
public:
    /// light: of the household's spots, in their order.
    StressOfYear(const home::Household& household, const climate::PlaceClimate& climate,
                 const climate::NightModel& nights, std::span<const LightYear> light, calendar::Date from);
    /// All of a plant that its stress depends on: plants of equal needs feel the same everywhere.
    struct Needs {
        double safe_night; ///< Celsius, as the heat limit.
        double heat_limit;
        double moles_to_thrive; ///< A day, as those to survive.
        double moles_to_survive;
        bool must_dry;
        bool wants_open_air;
        friend auto operator<=>(const Needs&, const Needs&) = default;
    };
    static Needs needs_of(const home::Plant& plant);
    /// As stress_of, for a plant (its place in the household's list) and the whole year at these spots:
    /// [night x spots.size() + place in `spots`].
    std::vector<float> of_year(std::size_t plant, std::span<const std::size_t> spots) const;

private:
    /// What the air and the light of a night and the day before it are like at a spot.
    struct Air {
        double moles;
        std::optional<double> low; ///< Mean night low; nullopt in a room that says nothing of it.
        double low_spread;
        double high; ///< Mean day high, outdoors.
        double high_spread;
        double rain_share;      ///< Of days, where the spot is open.
        double warmth_outdoors; ///< Mean night low of the open air.
        double open_air_spread;
        bool outdoors;
        bool windy;
    };
    static Air air_of(const home::Spot& spot, const climate::PlaceClimate& climate,
                      const climate::NightModel& nights, const LightYear& light, calendar::Date evening);
    class Limits;
    static double stress(const Needs& needs, const Air& air, Limits& limits);
    friend double stress_of(const home::Plant& plant, const home::Spot& spot,
                            const climate::PlaceClimate& climate, const climate::NightModel& nights,
                            calendar::Date evening);

    const home::Household* household_;
    std::vector<Air> air_; ///< [spot][night]
    std::size_t nights_;
};

} // namespace lathhouse::plan
