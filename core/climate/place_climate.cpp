#include "core/climate/place_climate.h"

#include "core/calendar/month_length.h"
#include "core/climate/date_error.h"
#include "core/climate/normal.h"
#include "core/climate/station_weights.h"
#include "core/climate/table_sizes.h"
#include "core/climate/whole_number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <string>

namespace lathhouse::climate {

namespace {

constexpr double kFarthestKilometres = 1500.0;
constexpr double kGreatestHeightKilometres = 2.0;

/// Weighted mean of what some of the stations have; nullopt where none has it.
std::optional<double> mean_of(const std::vector<WeightedStation>& stations,
                              const std::function<std::optional<double>(const Station&)>& value)
{
    double sum = 0.0;
    double weights = 0.0;
    for (const WeightedStation& s : stations) {
        if (s.positive_share <= 0.0) {
            continue;
        }
        if (const auto of_station = value(*s.station)) {
            sum += s.positive_share * *of_station;
            weights += s.positive_share;
        }
    }
    return weights > 0.0 ? std::optional{sum / weights} : std::nullopt;
}

/// Share of the weight that stations with that property have.
double share_with(const std::vector<WeightedStation>& stations,
                  const std::function<bool(const Station&)>& has)
{
    double share = 0.0;
    for (const WeightedStation& s : stations) {
        share += has(*s.station) ? s.positive_share : 0.0;
    }
    return share;
}

Monthly<Celsius> to_celsius(const Monthly<double>& v)
{
    const auto c = [&v](std::size_t m) { return Celsius::from_degrees(v[m]); };
    return {c(0), c(1), c(2), c(3), c(4), c(5), c(6), c(7), c(8), c(9), c(10), c(11)};
}

Monthly<KelvinDelta> to_kelvins(const Monthly<double>& v)
{
    const auto k = [&v](std::size_t m) { return KelvinDelta::from_kelvins(v[m]); };
    return {k(0), k(1), k(2), k(3), k(4), k(5), k(6), k(7), k(8), k(9), k(10), k(11)};
}

/// A spread is averaged as a ratio: by its logarithm. nullopt unless most of the weight has it.
std::optional<Monthly<KelvinDelta>> spread_of(const std::vector<WeightedStation>& stations,
                                              std::optional<Monthly<KelvinDelta>> MonthlyFigures::*spread)
{
    if (share_with(stations, [spread](const Station& s) { return (s.monthly.*spread).has_value(); }) < 0.5) {
        return std::nullopt;
    }
    Monthly<double> values{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        values[m] = std::exp(*mean_of(stations, [spread, m](const Station& s) -> std::optional<double> {
            if (!(s.monthly.*spread)) {
                return std::nullopt;
            }
            return std::log(std::max((*(s.monthly.*spread))[m].kelvins(), 0.1));
        }));
    }
    return to_kelvins(values);
}

/// Frost days of the place: the stations' shares as places of a normal distribution, moved by the difference
/// of the mean lows, averaged.
std::optional<double> frost_days_at(const std::vector<WeightedStation>& stations, std::size_t month,
                                    Celsius low_here)
{
    const double days = calendar::kMeanDaysOfMonths[month];
    const auto place = mean_of(stations, [&](const Station& s) -> std::optional<double> {
        const auto& frost = s.monthly.frost_days[month];
        if (!frost || *frost < 0.4 || *frost > days - 0.4 || !s.monthly.mean_spread) {
            return std::nullopt;
        }
        constexpr double kLowsToMeans = 1.2; // Lows spread a little more than the daily means.
        const double spread = std::max(kLowsToMeans * (*s.monthly.mean_spread)[month].kelvins(), 1.0);
        const double z = std::clamp(normal_quantile(*frost / days), -4.0, 4.0);
        return z + (s.monthly.low[month] - low_here).kelvins() / spread;
    });
    return place ? std::optional{days * normal_below(*place)} : std::nullopt;
}

/// What a kilometre up does to a month's temperature: the neighbours' word, within limits. Colder by the dry
/// adiabatic 9.8 K at most (a parcel of dry air, g / c_p), warmer by 5 K at most (night air in basins).
struct LocalLapse {
    double of_neighbours;
    double within_limits;
};

LocalLapse local_lapse(const std::vector<WeightedStation>& stations,
                       Celsius (*of)(const Station&, std::size_t), std::size_t month, double usual,
                       Metres elevation)
{
    constexpr double kColdest = -9.8;
    constexpr double kWarmest = 5.0;
    const double centre = of(*stations.front().station, month).degrees();
    double lapse = -usual;
    for (const WeightedStation& s : stations) {
        const double up = (s.station->elevation - elevation).kilometres();
        lapse += s.lapse_share * (of(*s.station, month).degrees() + usual * up - centre);
    }
    return {lapse, std::clamp(lapse, kColdest, kWarmest)};
}

std::optional<LowTrend> trend_of(const std::vector<WeightedStation>& stations)
{
    if (share_with(stations, [](const Station& s) { return s.trend.has_value(); }) < 0.5) {
        return std::nullopt;
    }
    // The middle by weight: a station that was moved has a trend of its own. Neighbours have the same warm
    // and cold years, so that together they are no surer than one of them.
    std::vector<std::pair<LowTrend, double>> trends;
    double total = 0.0;
    for (const WeightedStation& s : stations) {
        if (s.station->trend && s.positive_share > 0.0) {
            trends.emplace_back(*s.station->trend, s.positive_share);
            total += s.positive_share;
        }
    }
    std::ranges::sort(trends, {}, [](const auto& trend) { return trend.first.kelvins_per_decade; });
    double below = 0.0;
    for (const auto& [trend, weight] : trends) {
        below += weight;
        if (below >= 0.5 * total) {
            return trend;
        }
    }
    return std::nullopt;
}

/// Everything but the warnings of a place, out of the stations of one base period.
PlaceClimate blend(const StationWeights& weights, Position position, Metres elevation, bool elevation_given)
{
    const auto& stations = weights.stations;
    Monthly<double> low{};
    Monthly<double> high{};
    double mean_up = 0.0;
    for (const WeightedStation& s : stations) {
        const double up = (s.station->elevation - elevation).kilometres();
        mean_up += s.positive_share * up;
        for (std::size_t m = 0; m < kMonths; ++m) {
            low[m] += s.share * (s.station->monthly.low[m].degrees() + Lapse::kLowPerKilometre * up);
            high[m] += s.share * (s.station->monthly.high[m].degrees() + Lapse::kHighPerKilometre * up);
        }
    }
    const auto low_of = [](const Station& s, std::size_t m) { return s.monthly.low[m]; };
    const auto high_of = [](const Station& s, std::size_t m) { return s.monthly.high[m]; };
    Monthly<double> low_lapse{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        const auto of_low = local_lapse(stations, low_of, m, Lapse::kLowPerKilometre, elevation);
        const auto of_high = local_lapse(stations, high_of, m, Lapse::kHighPerKilometre, elevation);
        low[m] -= (of_low.within_limits - of_low.of_neighbours) * mean_up;
        high[m] -= (of_high.within_limits - of_high.of_neighbours) * mean_up;
        low_lapse[m] = of_low.within_limits;
    }
    for (std::size_t m = 0; m < kMonths; ++m) {
        high[m] = std::max(high[m], low[m] + 0.5); // Two sums of their own may cross on a small island.
    }
    MonthlyFigures figures{.low = to_celsius(low),
                           .high = to_celsius(high),
                           .low_spread = spread_of(stations, &MonthlyFigures::low_spread),
                           .mean_spread = spread_of(stations, &MonthlyFigures::mean_spread),
                           .lowest = {},
                           .frost_days = {},
                           .years = {},
                           .reading_step = stations.front().station->monthly.reading_step};
    const auto years = mean_of(stations, [](const Station& s) -> std::optional<double> {
        return s.monthly.years ? std::optional{static_cast<double>(*s.monthly.years)} : std::nullopt;
    });
    if (years) {
        figures.years = static_cast<int>(std::lround(*years));
    }
    Monthly<std::optional<Millimetres>> rain{};
    for (std::size_t m = 0; m < kMonths; ++m) {
        const auto depth = mean_of(stations, [m](const Station& s) -> std::optional<double> {
            return s.monthly.lowest[m] ? std::optional{(s.monthly.low[m] - *s.monthly.lowest[m]).kelvins()}
                                       : std::nullopt;
        });
        if (depth) {
            figures.lowest[m] = figures.low[m] - KelvinDelta::from_kelvins(*depth);
        }
        figures.frost_days[m] = frost_days_at(stations, m, figures.low[m]);
        const auto millimetres = mean_of(stations, [m](const Station& s) -> std::optional<double> {
            return s.rain[m] ? std::optional{s.rain[m]->millimetres()} : std::nullopt;
        });
        if (millimetres) {
            rain[m] = Millimetres::from_millimetres(*millimetres);
        }
    }
    const auto below_coldest_month = mean_of(stations, [](const Station& s) -> std::optional<double> {
        return s.lowest_of_season
                   ? std::optional{(std::ranges::min(s.monthly.low) - *s.lowest_of_season).kelvins()}
                   : std::nullopt;
    });

    const ErrorSigns signs = error_signs(weights, elevation);
    double error = expected_low_error(signs, stations.front().station->source).kelvins();
    if (!elevation_given) {
        // The height is off by about the stations' own spread of heights.
        const double spread = *mean_of(stations, [elevation](const Station& s) {
            return std::optional{std::abs((s.elevation - elevation).kilometres())};
        });
        error = std::hypot(error, Lapse::kLowPerKilometre * spread);
    }
    const auto expected = KelvinDelta::from_kelvins(error);
    PlaceClimate place{.position = position,
                       .elevation = elevation,
                       .elevation_given = elevation_given,
                       .stations = {},
                       .monthly = figures,
                       .low_lapse_per_kilometre = low_lapse,
                       .rain = rain,
                       .lowest_of_season =
                           below_coldest_month
                               ? std::optional{std::ranges::min(figures.low) -
                                               KelvinDelta::from_kelvins(*below_coldest_month)}
                               : std::nullopt,
                       .signs = signs,
                       .trend = trend_of(stations),
                       .expected_error = expected,
                       .expected_error_days = error_days_of_model(figures, expected),
                       .expected_error_days_carried = error_days_carried(expected),
                       .warnings = {}};
    for (const WeightedStation& s : stations) {
        if (s.positive_share > 0.0) {
            place.stations.push_back({s.station, s.distance, s.positive_share});
        }
    }
    return place;
}

void add_warnings(PlaceClimate& place)
{
    const Metres nearest = std::ranges::min(place.stations, {}, &StationInUse::distance).distance;
    const auto height_off = [&place](const StationInUse& s) {
        return std::abs((s.station->elevation - place.elevation).metres());
    };
    if (!place.elevation_given) {
        place.warnings.push_back(
            said("the height of the place is not given; %1 m, the weighted height of its stations, is taken",
                 whole(place.elevation.metres())));
    }
    if (nearest.kilometres() > 600.0) {
        place.warnings.push_back(
            said("the nearest station is %1 km away: the answer is weak", whole(nearest.kilometres())));
    } else if (nearest.kilometres() > 100.0) {
        place.warnings.push_back(said("the nearest station is %1 km away", whole(nearest.kilometres())));
    }
    const double least = height_off(*std::ranges::min_element(place.stations, {}, height_off));
    if (place.elevation_given && least > 500.0) {
        place.warnings.push_back(
            said("no station lies within %1 m of the place's height: temperatures are carried there by the usual lapse",
                 whole(least - 1.0)));
    }
    if (!place.monthly.low_spread && !place.monthly.mean_spread) {
        place.warnings.push_back(said("no station near gives the spread of its days: frost dates are rough"));
    }
}

/// The place out of one group of stations; nullopt where the group has none near enough.
std::optional<PlaceClimate> out_of(std::span<const Station* const> group, Position position,
                                   std::optional<Metres> elevation, const Station* leave_out)
{
    StationWeights weights = station_weights(group, position, elevation, leave_out);
    if (weights.stations.empty()) {
        return std::nullopt;
    }
    const Metres nearest = std::ranges::min(weights.stations, {}, &WeightedStation::distance).distance;
    if (nearest.kilometres() > kFarthestKilometres) {
        return std::nullopt;
    }
    Metres height = elevation.value_or(Metres::from_metres(0.0));
    if (!elevation) {
        height = Metres::from_metres(
            *mean_of(weights.stations, [](const Station& s) { return std::optional{s.elevation.metres()}; }));
        weights = station_weights(group, position, height, leave_out);
    }
    const bool in_reach = std::ranges::any_of(weights.stations, [height](const WeightedStation& s) {
        return std::abs((s.station->elevation - height).kilometres()) <= kGreatestHeightKilometres;
    });
    return in_reach ? std::optional{blend(weights, position, height, elevation.has_value())} : std::nullopt;
}

} // namespace

LowestNight PlaceClimate::lowest_nights() const
{
    LowestNight lowest = nights().lowest_of_season();
    if (lowest_of_season) {
        const KelvinDelta off = *lowest_of_season - lowest.mean;
        for (Celsius* value : {&lowest.mean, &lowest.tenth, &lowest.median, &lowest.ninetieth}) {
            *value = *value + off;
        }
    }
    return lowest;
}

Result<PlaceClimate> climate_among(std::span<const Station> stations, Position position,
                                   std::optional<Metres> elevation, const Station* leave_out)
{
    std::vector<const Station*> pointers;
    pointers.reserve(stations.size());
    for (const Station& station : stations) {
        pointers.push_back(&station);
    }
    return climate_among(pointers, position, elevation, leave_out);
}

Result<PlaceClimate> climate_among(std::span<const Station* const> stations, Position position,
                                   std::optional<Metres> elevation, const Station* leave_out)
{
    std::vector<const Station*> daily;
    std::vector<const Station*> monthly;
    for (const Station* station : stations) {
        (station->source == StationSource::WorldMonthly ? monthly : daily).push_back(station);
    }
    // The sources differ in their base periods, so one of them answers alone: the surer one. Daily records
    // know the spread of the lows, which is worth a few tenths of a kelvin.
    constexpr double kWorthOfSpread = 0.2;
    auto from_daily = out_of(daily, position, elevation, leave_out);
    auto from_monthly = out_of(monthly, position, elevation, leave_out);
    const bool take_daily =
        from_daily && (!from_monthly || from_daily->expected_error.kelvins() <=
                                            from_monthly->expected_error.kelvins() + kWorthOfSpread);
    auto& chosen = take_daily ? from_daily : from_monthly;
    if (!chosen) {
        return Error{ErrorCode::NoStation, said("no station lies within %1 km and %2 m of height of that place; give a "
                                                "place or height nearer to one, or figures of your own with --monthly",
                                                whole(kFarthestKilometres), whole(kGreatestHeightKilometres * 1000.0))};
    }
    add_warnings(*chosen);
    return std::move(*chosen);
}

Result<PlaceClimate> climate_at(const StationTable& table, Position position, std::optional<Metres> elevation)
{
    return climate_among(table.stations(), position, elevation);
}

} // namespace lathhouse::climate
