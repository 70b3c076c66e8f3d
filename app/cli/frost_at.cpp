#include "app/cli/frost.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/threshold_dates.h"
#include "core/climate/own_record.h"
#include "core/climate/place_nights.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::cli {
namespace {

/// The dates counted at a station that stands where the place is, for every line asked; nullopt where there
/// is none such. The household's own record is counted anew, for any line and chance that its seasons can
/// tell.
std::optional<std::vector<climate::ThresholdDates>> counted_at(const climate::PlaceClimate& place,
                                                               const std::vector<Celsius>& lines,
                                                               const std::vector<double>& further_percents)
{
    if (!climate::station_stands_at(place)) {
        return std::nullopt;
    }
    if (place.own) {
        return climate::dates_from_own(*place.own, lines, further_percents);
    }
    if (!further_percents
             .empty()) { // A count answers for its own chances alone; another risk needs the model.
        return std::nullopt;
    }
    const auto nearest = std::ranges::min(place.stations, {}, &climate::StationInUse::distance);
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
    const auto nights =
        options.from_monthly ? climate::PlaceNights{place->nights()} : climate::PlaceNights::of(*place);
    const auto counted = options.from_monthly ? std::nullopt : counted_at(*place, *lines, options.risks);
    std::vector<climate::ThresholdDates> answers;
    bool moved = false; // To counted dates: of stations near, or of the household's own record.
    if (counted) {
        answers = *counted;
        for (auto& dates : answers) {
            climate::complete_counted(dates, nights.model().turn());
        }
    } else {
        for (const Celsius line : *lines) {
            moved |= nights.dates_from(line) != climate::DatesFrom::Model;
            answers.push_back(nights.dates(line, options.risks));
        }
    }
    Json thresholds = Json::array();
    std::string text;
    for (const auto& dates : answers) {
        thresholds.push_back(json_of(dates));
        text += text_of(dates, globals.units);
    }
    const double error = counted ? climate::counted_error_days(counted->front().last.years.value_or(1))
                                 : nights.expected_error_days(*place, lines->front());
    // Of a place without such nights nothing is dated that could be wrong.
    const bool has_dates = std::ranges::any_of(answers, [](const climate::ThresholdDates& dates) {
        return dates.state == climate::ThresholdState::Ordinary ||
               dates.state == climate::ThresholdState::NoWindow;
    });
    const auto lowest = place->lowest_nights();
    text += text_of(lowest, globals.units);
    text += std::string{counted && place->own ? "Counted in the household's own record"
                        : counted             ? "Counted at the station"
                        : moved && place->own
                            ? "From monthly figures, moved to the dates of the household's own record"
                        : moved ? "From monthly figures and the dates counted at stations near"
                                : "From monthly figures"} +
            (has_dates ? ", right to about " + words::number(error, 0) + " days at the middle chances.\n"
                       : ".\n") +
            sources_in_words(*place, globals.units);
    return Answer{{{"method", counted                ? "records"
                              : moved && !place->own ? "neighbours"
                                                     : "monthly"},
                   {"expected_error_days", json_number(error)},
                   {"turn", nights.model().turn().last_day().to_text()},
                   {"thresholds", thresholds},
                   {"lowest_of_season", json_of(lowest)},
                   {"attribution", attribution_of(*place)}},
                  text,
                  place->warnings};
}

} // namespace lathhouse::cli
