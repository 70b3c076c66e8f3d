#include "app/cli/frost.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/threshold_dates.h"
#include "core/climate/line_dates.h"

#include <algorithm>

namespace lathhouse::cli {

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
    const auto answer = climate::dates_of_lines(
        *place, *lines, options.risks,
        options.from_monthly ? climate::CountedDates::AreLeftOut : climate::CountedDates::ComeFirst);
    const auto& answers = answer.lines;
    const bool counted = answer.counted;
    const bool moved = answer.moved;
    Json thresholds = Json::array();
    std::string text;
    for (const auto& dates : answers) {
        thresholds.push_back(json_of(dates));
        text += text_of(dates, globals.units);
    }
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
            (has_dates ? ", right to about " + words::number(answer.error_days, 0) + " days at the middle chances.\n"
                       : ".\n") +
            sources_in_words(*place, globals.units);
    return Answer{{{"method", counted                ? "records"
                              : moved && !place->own ? "neighbours"
                                                     : "monthly"},
                   {"expected_error_days", json_number(answer.error_days)},
                   {"turn", place->nights().turn().last_day().to_text()},
                   {"thresholds", thresholds},
                   {"lowest_of_season", json_of(lowest)},
                   {"attribution", attribution_of(*place)}},
                  text,
                  texts(place->warnings)};
}

} // namespace lathhouse::cli
