#include "core/home/night_log_file.h"

#include "core/base/parse.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lathhouse::home {
namespace {

Result<calendar::Date> date_at(const NamedRows& rows, std::size_t row, std::string_view column)
{
    auto text = rows.text(row, column);
    if (text.size() > 10 && (text[10] == 'T' || text[10] == ' ')) {
        text = text.substr(0, 10);
    }
    const auto date = calendar::parse_date(text);
    if (!date) {
        return rows.error_at(row, text.empty() ? said("the %1 is missing", column) : Said{date.error()});
    }
    return *date;
}

/// The temperature of `NAME_c` or `NAME_f`; nullopt where both are blank.
Result<std::optional<Celsius>> temperature_at(const NamedRows& rows, std::size_t row, const std::string& name)
{
    const auto celsius = rows.number(row, name + "_c");
    if (!celsius) {
        return celsius.error();
    }
    const auto fahrenheit = rows.number(row, name + "_f");
    if (!fahrenheit) {
        return fahrenheit.error();
    }
    std::optional<Celsius> value;
    if (*celsius) {
        value = Celsius::from_degrees(**celsius);
    } else if (*fahrenheit) {
        value = Celsius::from_fahrenheit(**fahrenheit);
    }
    if (value && !(*value >= kColdestLogged && *value <= kWarmestLogged)) {
        return rows.error_at(row, said("the %1 of %2 lies outside -90 to 60 degrees Celsius", name,
                                       rows.text(row, name + (*celsius ? "_c" : "_f"))));
    }
    return value;
}

Result<climate::NightWeather> weather_at(const NamedRows& rows, std::size_t row)
{
    climate::NightWeather weather;
    if (const auto word = rows.text(row, "sky"); !word.empty()) {
        weather.sky = sky_of(word);
        if (!weather.sky) {
            return rows.error_at(row, said("the sky is \"%1\"; write clear or cloudy", word.substr(0, 40)));
        }
    }
    const auto cloud = rows.number(row, "cloud_percent");
    if (!cloud) {
        return cloud.error();
    }
    if (*cloud) {
        if (!(**cloud >= 0.0 && **cloud <= 100.0)) {
            return rows.error_at(row, said("cloud must lie within 0 and 100 percent"));
        }
        weather.sky = **cloud < kClearBelowPercent ? climate::Sky::Clear : climate::Sky::Cloudy;
    }
    if (const auto word = rows.text(row, "wind"); !word.empty()) {
        weather.wind = wind_of(word);
        if (!weather.wind) {
            return rows.error_at(
                row, said("the wind is \"%1\"; write calm or windy, or use the column wind_m_s", word.substr(0, 40)));
        }
    }
    constexpr std::pair<const char*, double> kSpeeds[] = {
        {"wind_m_s", 1.0}, {"wind_km_h", 1.0 / 3.6}, {"wind_mph", 0.44704}};
    for (const auto& [column, metres_per_second] : kSpeeds) {
        const auto speed = rows.number(row, column);
        if (!speed) {
            return speed.error();
        }
        if (*speed) {
            if (!(**speed >= 0.0)) {
                return rows.error_at(row, said("the wind is negative"));
            }
            weather.wind = **speed * metres_per_second < kCalmBelowMetresPerSecond ? climate::Wind::Calm
                                                                                   : climate::Wind::Windy;
        }
    }
    return weather;
}

/// `NAME_c` or `NAME_f` must be there.
Result<void> require_temperature(const NamedRows& rows, const std::string& name)
{
    return rows.has(name + "_f") ? Result<void>{} : rows.require(name + "_c");
}

Result<Celsius> low_at(const NamedRows& rows, std::size_t row)
{
    const auto low = temperature_at(rows, row, "low");
    if (!low) {
        return low.error();
    }
    if (!*low) {
        return rows.error_at(row, said("the low is missing"));
    }
    return **low;
}

Error no_rows(const NamedRows& rows)
{
    return {ErrorCode::Malformed,
            said("%1 has column names and no row; it needs one for each night", rows.source_name())};
}

Result<SpotId> spot_at(const NamedRows& rows, std::size_t row, const Household& household,
                       std::optional<SpotId> spot)
{
    const auto word = rows.text(row, "spot");
    if (word.empty()) {
        if (spot) {
            return *spot;
        }
        return rows.error_at(row, said("no spot is named; fill the column spot or say --spot"));
    }
    const auto* found = household.spot_called(word);
    if (found == nullptr) {
        return rows.error_at(row, said("there is no spot \"%1\"; see `lathhouse list spots`", word.substr(0, 40)));
    }
    return found->id;
}

/// A file of nights has dates, lows and at least one row.
Result<void> require_nights(const NamedRows& rows)
{
    if (const auto there = rows.require("date"); !there) {
        return there.error();
    }
    if (const auto there = require_temperature(rows, "low"); !there) {
        return there.error();
    }
    if (rows.row_count() == 0) {
        return no_rows(rows);
    }
    return {};
}

} // namespace

std::optional<climate::Sky> sky_of(std::string_view word)
{
    const auto lower = lower_case(word);
    return lower == "clear"    ? std::optional{climate::Sky::Clear}
           : lower == "cloudy" ? std::optional{climate::Sky::Cloudy}
                               : std::nullopt;
}

std::optional<climate::Wind> wind_of(std::string_view word)
{
    const auto lower = lower_case(word);
    return lower == "calm"    ? std::optional{climate::Wind::Calm}
           : lower == "windy" ? std::optional{climate::Wind::Windy}
                              : std::nullopt;
}

std::string_view to_string(climate::Sky sky)
{
    return sky == climate::Sky::Clear ? "clear" : "cloudy";
}

std::string_view to_string(climate::Wind wind)
{
    return wind == climate::Wind::Calm ? "calm" : "windy";
}

Result<std::vector<KeptForecast>> forecast_from(const NamedRows& rows, calendar::Date issued,
                                                calendar::Instant entered)
{
    if (const auto there = require_nights(rows); !there) {
        return there.error();
    }
    std::vector<KeptForecast> forecasts;
    std::set<std::pair<calendar::Date, calendar::Date>> seen;
    for (std::size_t row = 0; row < rows.row_count(); ++row) {
        const auto night = date_at(rows, row, "date");
        if (!night) {
            return night.error();
        }
        auto made = issued;
        if (!rows.text(row, "issued").empty()) {
            const auto date = date_at(rows, row, "issued");
            if (!date) {
                return date.error();
            }
            made = *date;
        }
        const auto low = low_at(rows, row);
        if (!low) {
            return low.error();
        }
        const auto dew_point = temperature_at(rows, row, "dew_point");
        if (!dew_point) {
            return dew_point.error();
        }
        const auto weather = weather_at(rows, row);
        if (!weather) {
            return weather.error();
        }
        if (!seen.emplace(made, *night).second) {
            return rows.error_at(row, said("the night of %1 stands in the file twice; keep one row for each night",
                                           calendar::to_text(*night)));
        }
        if (*night < made) {
            continue; // Nights already over when the forecast was made are no forecast.
        }
        forecasts.push_back({made, *night, *low, *weather, *dew_point, entered});
    }
    if (forecasts.empty()) {
        return Error{ErrorCode::Malformed,
                     said("%1 has no night on or after %2, the day of the forecast; take a newer forecast",
                          rows.source_name(), calendar::to_text(issued))};
    }
    std::ranges::sort(forecasts, {}, [](const KeptForecast& of) { return std::pair{of.night, of.issued}; });
    return forecasts;
}

Result<std::vector<Reading>> readings_from(const NamedRows& rows, const Household& household,
                                           std::optional<SpotId> spot, calendar::Date today,
                                           calendar::Instant entered)
{
    if (const auto there = require_nights(rows); !there) {
        return there.error();
    }
    std::vector<Reading> readings;
    std::set<std::pair<calendar::Date, SpotId>> seen;
    for (std::size_t row = 0; row < rows.row_count(); ++row) {
        const auto night = date_at(rows, row, "date");
        if (!night) {
            return night.error();
        }
        if (*night > today) {
            return rows.error_at(row, said("the night of %1 is not over yet", calendar::to_text(*night)));
        }
        const auto where = spot_at(rows, row, household, spot);
        if (!where) {
            return where.error();
        }
        const auto low = low_at(rows, row);
        if (!low) {
            return low.error();
        }
        const auto high = temperature_at(rows, row, "high");
        if (!high) {
            return high.error();
        }
        if (*high && **high < *low) {
            return rows.error_at(row, said("the high is below the low"));
        }
        const auto station = temperature_at(rows, row, "station_low");
        if (!station) {
            return station.error();
        }
        const auto weather = weather_at(rows, row);
        if (!weather) {
            return weather.error();
        }
        if (!seen.emplace(*night, *where).second) {
            return rows.error_at(row,
                                 said("the night of %1 stands in the file twice for one spot; keep one row for each",
                                      calendar::to_text(*night)));
        }
        readings.push_back(
            {*where, *night, *low, *high, *weather, *station, entered, std::string{rows.text(row, "note")}});
    }
    return readings;
}

} // namespace lathhouse::home
