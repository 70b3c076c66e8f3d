#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/place_climate_options.h"
#include "core/climate/night_outlook.h"
#include "core/climate/place_nights.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct NightOptions {
    PlaceOptions place;
    OffsetOptions offset;
    std::string date;
    std::optional<double> threshold;
    std::optional<double> forecast;
    std::optional<int> lead;
};

/// What was forecast; nullopt where nothing was said. Without a lead it is counted from today.
Result<std::optional<climate::ForecastLow>> forecast_of(const NightOptions& options, calendar::Date today,
                                                        calendar::Date night)
{
    if (!options.forecast) {
        return std::optional<climate::ForecastLow>{};
    }
    const auto low = logged_temperature("--forecast", *options.forecast);
    if (!low) {
        return low.error();
    }
    const int lead = options.lead.value_or(calendar::days_between(today, night));
    if (lead < 0 || lead > climate::kLongestLead) {
        return Error{ErrorCode::OutOfRange,
                     options.lead
                         ? "--lead must lie within 0 and 365 days"
                         : "the night of " + calendar::to_text(night) +
                               " is over or more than a year ahead; say --lead DAYS, or --on for another "
                               "today"};
    }
    return std::optional{climate::ForecastLow{*low, lead}};
}

Result<Answer> night_of(const Globals& globals, const NightOptions& options)
{
    if (options.lead && !options.forecast) {
        return Error{ErrorCode::WrongUsage, "--lead needs --forecast: say the low that is forecast as well"};
    }
    const auto date = calendar::parse_date(options.date);
    if (!date) {
        return date.error();
    }
    const auto forecast = forecast_of(options, globals.today, *date);
    if (!forecast) {
        return forecast.error();
    }
    if (options.threshold && !(*options.threshold >= -90.0 && *options.threshold <= 60.0)) {
        return Error{ErrorCode::OutOfRange, "--threshold must lie within -90 and 60 degrees Celsius"};
    }
    const auto offset = offset_of(options.offset);
    if (!offset) {
        return offset.error();
    }
    const auto place = climate_of(globals, options.place);
    if (!place) {
        return place.error();
    }
    const auto model = place->nights();
    const auto day = calendar::DayOfYear::of(*date);
    const climate::NightOutlook outlook{model, day, *forecast};
    const auto low = [&](Probability chance) { return outlook.quantile(chance, *offset); };
    const Celsius median = low(Probability::literal(0.5));
    const Celsius cold = low(Probability::literal(0.05));
    const Celsius mild = low(Probability::literal(0.95));
    Json json{{"median_c", json_number(median.degrees())},
              {"p05_c", json_number(cold.degrees())},
              {"p95_c", json_number(mild.degrees())},
              {"chance", nullptr},
              {"attribution", attribution_of(*place)}};
    std::string text = "The night that ends on the morning of " + words::full_day(*date) + ": about " +
                       words::temperature(median, globals.units) +
                       (*forecast ? ", in 9 of 10 such nights " : ", in 9 of 10 years ") +
                       words::temperature(cold, globals.units) + " to " +
                       words::temperature(mild, globals.units) + ".\n";
    if (*forecast) {
        text += outlook.has_forecast()
                    ? "By a forecast of " + words::temperature((*forecast)->low, globals.units) +
                          " with a lead of " + std::to_string((*forecast)->lead) +
                          ((*forecast)->lead == 1 ? " day" : " days") + ", usually right to " +
                          words::number(outlook.spread().kelvins(), 1) +
                          " K (standard deviation), and by the season.\n"
                    : "A forecast that far ahead says no more than the season.\n";
    }
    if (options.threshold) {
        const auto line = Celsius::from_degrees(*options.threshold);
        // Where no forecast speaks the night is the season's, as `chance` and the plan have it.
        const auto chance = outlook.has_forecast()
                                ? outlook.chance_at_or_below(line, *offset)
                                : climate::PlaceNights::of(*place).chance_on(day, line, *offset);
        json["chance"] = json_number(chance.fraction());
        text +=
            "At or below " + words::temperature(line, globals.units) + ": " + words::chance(chance) + ".\n";
    }
    return Answer{json, text + sources_in_words(*place, globals.units), texts(place->warnings)};
}

} // namespace

void add_night(Commands& commands)
{
    auto options = std::make_shared<NightOptions>();
    CLI::App& command = commands.add("night", "How cold one night is likely to be",
                                     "lathhouse night --at 45.5,-122.7 --date 2027-04-20 --threshold 0");
    add_place_options(command, options->place, false);
    command.add_option("--date", options->date, "The night's morning")->required()->type_name("YYYY-MM-DD");
    command.add_option("--threshold", options->threshold, "Line in degrees Celsius")->type_name("C");
    command.add_option("--forecast", options->forecast, "Low that is forecast, degrees Celsius")
        ->type_name("C");
    command
        .add_option("--lead", options->lead,
                    "Days from the forecast to the morning on which the night ends (default: from today)")
        ->type_name("DAYS");
    add_offset_options(command, options->offset);
    commands.on_run(command, [options](const Globals& globals) { return night_of(globals, *options); });
}

} // namespace lathhouse::cli
