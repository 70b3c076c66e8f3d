#pragma once

#include "core/climate/place_climate.h"
#include "tests/climate/plain_place.h"
#include "tests/plan/short_names.h"

namespace lathhouse::plan {

/// A place that exists nowhere: lows that swing as a cosine, days 10 K warmer unless said.
struct InventedClimate {
    double mean_low;
    double swing; ///< Half of the way from the coldest to the warmest month.
    double latitude = 48.0;
    int warmest_month = 7;
    double day_over_night = 10.0;
    double spread = 4.0;
    climate::Monthly<double> rain_mm = {60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60};
};

inline climate::PlaceClimate place_of(const InventedClimate& invented)
{
    const auto low = wave(invented.mean_low, invented.swing, invented.warmest_month);
    auto high = low;
    for (auto& value : high) {
        value = value + KelvinDelta::from_kelvins(invented.day_over_night);
    }
    climate::Monthly<std::optional<Millimetres>> rain{};
    for (std::size_t month = 0; month < 12; ++month) {
        rain[month] = Millimetres::from_millimetres(invented.rain_mm[month]);
    }
    climate::MonthlyFigures figures{low, high, climate::in_every_month(KelvinDelta::from_kelvins(invented.spread)),
                                    std::nullopt, {}, {}, std::nullopt};
    auto here = climate::plain_place(invented.latitude, 200.0, figures);
    here.rain = rain;
    here.expected_error_days = here.expected_error_days_carried = 5.0;
    return here;
}

/// Winters with frost, warm summers.
inline constexpr InventedClimate kInland{.mean_low = 6.5, .swing = 10.0};
/// The same south of the equator.
inline constexpr InventedClimate kSouth{.mean_low = 12.0, .swing = 5.5, .latitude = -32.0, .warmest_month = 2};
/// Cool short summers.
inline constexpr InventedClimate kNorth{.mean_low = -3.0, .swing = 10.0, .latitude = 66.0, .day_over_night = 8.0};
/// No frost, three very wet months, hot before them.
inline constexpr InventedClimate kMonsoon{.mean_low = 22.0,
                                          .swing = 4.5,
                                          .latitude = 19.0,
                                          .warmest_month = 6,
                                          .day_over_night = 9.0,
                                          .spread = 1.5,
                                          .rain_mm = {2, 2, 2, 5, 15, 480, 800, 560, 330, 70, 15, 5}};
/// Hot and dry: winter is the season for cool crops.
inline constexpr InventedClimate kDesert{.mean_low = 17.0, .swing = 10.0, .latitude = 33.0, .day_over_night = 13.0};
/// Hardly any season, mild.
inline constexpr InventedClimate kHighTropics{.mean_low = 11.5, .swing = 0.6, .latitude = -1.0, .spread = 1.5};

} // namespace lathhouse::plan
