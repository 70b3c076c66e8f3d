#include "app/cli/frost.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/threshold_dates.h"
#include "core/climate/neighbour_dates.h"
#include "core/climate/own_record.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::cli {
namespace {

/// Within these a station's own dates stand for the place.
constexpr double kSamePlaceKilometres = 5.0;
constexpr double kSameHeightMetres = 50.0;

/// The dates counted at a station that stands where the place is, for every line asked; nullopt where there
/// is none such. The household's own record is counted anew, for any line and chance that its seasons can
/// tell.
std::optional<std::vector<climate::ThresholdDates>> counted_at(const climate::PlaceClimate& place,
                                                               const std::vector<Celsius>& lines,
                                                               const std::vector<double>& further_percents)
{
    const auto nearest = std::ranges::min(place.stations, {}, &climate::StationInUse::distance);
    const double height_off = std::abs((nearest.station->elevation - place.elevation).metres());
    if (nearest.distance.kilometres() > kSamePlaceKilometres ||
        (place.elevation_given && height_off > kSameHeightMetres)) {
        return std::nullopt;
    }
    if (place.own) {
        return climate::dates_from_own(*place.own, lines, further_percents);
    }
    if (!further_percents
             .empty()) { // A count answers for its own chances alone; another risk needs the model.
        return std::nullopt;
    }
    std::vector<climate::ThresholdDates> found;
    for (const Celsius line : lines) {
        const auto dates = std::ranges::find_if(nearest.station->dates, [line](const auto& known) {
            return std::abs((known.threshold - line).kelvins()) < 0.005;
        });
        if (dates == nearest.station->dates.end()) {
            return std::nullopt;
        }
        found.push_back(*dates);
    }
    return found;
}

} // namespace

Result<Answer> frost_of_place(const Globals& globals, const FrostOptions& options)
{
    const auto lines = lines_of(options);
    if (!lines) {
        return lines.error();
    }
    const auto place = climate_of(globals, options.place);
    if (!place) {
        return place.error();
    }
    const auto model = place->nights();
    const auto counted = options.from_monthly ? std::nullopt : counted_at(*place, *lines, options.risks);
    std::vector<climate::ThresholdDates> answers;
    bool carried = false;
    if (counted) {
        answers = *counted;
        for (auto& dates : answers) {
            climate::complete_counted(dates, model.turn());
        }
    } else {
        for (const Celsius line : *lines) {
            auto dates = model.dates(line, options.risks);
            const auto residuals =
                options.from_monthly || place->own ? std::nullopt : climate::residuals_around(*place, line);
            carried |= residuals.has_value();
            answers.push_back(residuals ? climate::carried(std::move(dates), *residuals) : std::move(dates));
        }
    }
    Json thresholds = Json::array();
    std::string text;
    for (const auto& dates : answers) {
        thresholds.push_back(json_of(dates));
        text += text_of(dates, globals.units);
    }
    // Sampling error of a date counted in some 25 seasons at the middle chances; it shrinks with their root.
    constexpr double kCountedErrorDays = 2.5;
    constexpr double kUsualSeasons = 25.0;
    const double error =
        counted   ? kCountedErrorDays * std::sqrt(kUsualSeasons / counted->front().last.years.value_or(25))
        : carried ? place->expected_error_days_carried
                  : place->expected_error_days;
    const auto lowest = place->lowest_nights();
    text += text_of(lowest, globals.units);
    text += std::string{counted && place->own ? "Counted in the household's own record"
                        : counted             ? "Counted at the station"
                        : carried             ? "From monthly figures and the dates counted at stations near"
                                              : "From monthly figures"} +
            ", right to about " + words::number(error, 0) + " days at the middle chances.\n" +
            sources_in_words(*place, globals.units);
    return Answer{{{"method", counted   ? "records"
                              : carried ? "neighbours"
                                        : "monthly"},
                   {"expected_error_days", json_number(error)},
                   {"turn", model.turn().last_day().to_text()},
                   {"thresholds", thresholds},
                   {"lowest_of_season", json_of(lowest)},
                   {"attribution", attribution_of(*place)}},
                  text,
                  place->warnings};
}

} // namespace lathhouse::cli
