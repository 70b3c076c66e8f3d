#include "app/cli/frost.h"
#include "app/cli/threshold_dates.h"
#include "core/climate/monthly_form.h"
#include "core/climate/night_model.h"

namespace lathhouse::cli {
namespace {

std::string_view in_words(climate::SpreadBasis basis, bool lowest_known, bool counted)
{
    switch (basis) {
    case climate::SpreadBasis::Lows:
        if (counted) {
            return "the nights at or below the given lines are counted: the middle dates are right to about "
                   "3 days";
        }
        return "the spread of the lows is known: the middle dates are right to about 3 days";
    case climate::SpreadBasis::Means:
        if (lowest_known) {
            return "the spread of the daily means and the lowest values are known: the middle dates are "
                   "right to "
                   "about 3 to 4 days";
        }
        return "only the spread of the daily means is known: the middle dates are right to about 4 to 5 days";
    case climate::SpreadBasis::None:
        break;
    }
    return "no spread is known: the dates are rough, the middle ones right to about 8 days";
}

} // namespace

Result<Answer> frost_from_monthly(const Globals& globals, const FrostOptions& options)
{
    const auto lines = lines_of(options);
    if (!lines) {
        return lines.error();
    }
    const auto table = CsvTable::read(options.monthly);
    if (!table) {
        return table.error();
    }
    const auto places = climate::read_monthly_form(*table);
    if (!places) {
        return places.error();
    }
    Answer answer;
    Json stations = Json::array();
    for (const auto& place : *places) {
        const auto model =
            climate::NightModel::from_monthly(place.figures, place.position.latitude, place.counted);
        Json thresholds = Json::array();
        answer.text +=
            place.station + (place.name.empty() ? "" : ", " + place.name) + ": " +
            std::string{in_words(model.basis(), place.figures.years.has_value(), !place.counted.empty())} +
            "\n";
        for (const Celsius line : *lines) {
            const auto dates = model.dates(line, options.risks);
            thresholds.push_back(json_of(dates));
            answer.text += text_of(dates, globals.units);
        }
        const auto lowest = model.lowest_of_season();
        answer.text += text_of(lowest, globals.units);
        stations.push_back({{"station", place.station},
                            {"turn", model.turn().last_day().to_text()},
                            {"thresholds", thresholds},
                            {"lowest_of_season", json_of(lowest)}});
    }
    answer.json = {{"stations", stations}};
    return answer;
}

} // namespace lathhouse::cli
