#include "app/cli/frost.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/threshold_dates.h"
#include "core/climate/neighbour_dates.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::cli {
namespace {

/// Within these a station's own dates stand for the place.
constexpr double kSamePlaceKilometres = 5.0;
constexpr double kSameHeightMetres = 50.0;

/// The dates counted at a station that stands where the place is, for every line asked; nullopt where there
/// is none such.
std::optional<std::vector<climate::ThresholdDates>> counted_at(const climate::PlaceClimate& place,
                                                               const std::vector<Celsius>& lines)
{
    const auto nearest = std::ranges::min(place.stations, {}, &climate::StationInUse::distance);
    const double height_off = std::abs((nearest.station->elevation - place.elevation).metres());
    if (nearest.distance.kilometres() > kSamePlaceKilometres ||
        (place.elevation_given && height_off > kSameHeightMetres)) {
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
    const auto place = climate_of(options.place);
    if (!place) {
        return place.error();
    }
    const auto model = place->nights();
    // A count answers for its own chances alone; another risk needs the model.
    const bool may_count = !options.from_monthly && options.risks.empty();
    const auto counted = may_count ? counted_at(*place, *lines) : std::nullopt;
    std::vector<climate::ThresholdDates> answers;
    bool carried = false;
    if (counted) {
        answers = *counted;
    } else {
        for (const Celsius line : *lines) {
            auto dates = model.dates(line, options.risks);
            const auto residuals =
                options.from_monthly ? std::nullopt : climate::residuals_around(*place, line);
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
    // Sampling error of a date counted in some 25 seasons at the middle chances.
    constexpr double kCountedErrorDays = 2.5;
    const double error = counted   ? kCountedErrorDays
                         : carried ? place->expected_error_days_carried
                                   : place->expected_error_days;
    text += std::string{counted   ? "Counted at the station"
                        : carried ? "From monthly figures and the dates counted at stations near"
                                  : "From monthly figures"} +
            ", right to about " + words::number(error, 0) + " days at the middle chances.\n" +
            sources_in_words(*place, globals.units);
    return Answer{{{"method", counted   ? "records"
                              : carried ? "neighbours"
                                        : "monthly"},
                   {"expected_error_days", json_number(error)},
                   {"turn", model.turn().last_day().to_text()},
                   {"thresholds", thresholds},
                   {"attribution", attribution_of(*place)}},
                  text,
                  place->warnings};
}

} // namespace lathhouse::cli
