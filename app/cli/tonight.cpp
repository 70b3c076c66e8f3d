#include "core/plan/tonight.h"
#include "app/clock.h"
#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/place_climate_options.h"
#include "app/words/tonight_words.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <memory>
#include <set>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct TonightOptions {
    std::vector<double> lows;
    FileOptions forecast;
    std::string issued;
    WeatherOptions weather;
    std::optional<double> dew_point;
    double risk_percent = 10.0;
    bool keep = false;
    bool sure = false;
};

/// The forecasts that were typed: tonight's low, then those of the nights after it.
Result<std::vector<home::KeptForecast>> typed(const TonightOptions& options, calendar::Date issued)
{
    if (options.lows.size() > plan::kNightsAhead) {
        return Error{ErrorCode::WrongUsage, "--low is given " + std::to_string(options.lows.size()) +
                                                " times; at most ten nights ahead"};
    }
    std::optional<Celsius> dew_point;
    if (options.dew_point) {
        const auto given = logged_temperature("--dew-point", *options.dew_point);
        if (!given) {
            return given.error();
        }
        dew_point = *given;
    }
    std::vector<home::KeptForecast> forecasts;
    for (const double degrees : options.lows) {
        const auto low = logged_temperature("--low", degrees);
        if (!low) {
            return low.error();
        }
        const bool is_tonight = forecasts.empty();
        forecasts.push_back({issued, issued + calendar::Days{static_cast<int>(forecasts.size()) + 1}, *low,
                             is_tonight ? weather_of(options.weather) : climate::NightWeather{},
                             is_tonight ? dew_point : std::nullopt, now()});
    }
    return forecasts;
}

Result<std::vector<home::KeptForecast>> forecasts_of(const TonightOptions& options, const home::NightLog& log,
                                                     calendar::Date today)
{
    if (!options.lows.empty() && !options.forecast.file.empty()) {
        return Error{ErrorCode::WrongUsage, "give --low or --forecast, not both"};
    }
    if (!options.lows.empty()) {
        return typed(options, today);
    }
    if (!options.weather.sky.empty() || !options.weather.wind.empty() || options.dew_point) {
        return Error{ErrorCode::WrongUsage,
                     "--sky, --wind and --dew-point go with --low; a file has columns for them"};
    }
    if (!options.forecast.file.empty()) {
        const auto issued = past_date_of("--issued", options.issued, today);
        if (!issued) {
            return issued.error();
        }
        return forecast_of(options.forecast, *issued);
    }
    if (plan::nights_of_forecast(log.forecasts, today).empty()) {
        return Error{ErrorCode::WrongUsage,
                     "no forecast is known for the coming nights; give --low C, or --forecast FILE"};
    }
    return log.forecasts;
}

Json json_of(const std::vector<plan::NightPlan>& plans, const home::Household& household,
             words::UnitSystem units)
{
    Json nights = Json::array();
    for (const auto& plan : plans) {
        Json plants = Json::array();
        for (const auto& plant : plan.plants) {
            plants.push_back({{"id", plant.plant},
                              {"spot", plant.spot},
                              {"chance_damage", json_number(plant.damage.fraction())},
                              {"chance_lethal", json_number(plant.lethal.fraction())},
                              {"carry_in", plant.carry_in},
                              {"why", words::why(plant, plan.ahead, household, units)}});
        }
        nights.push_back({{"date", calendar::to_text(plan.ahead.night)}, {"plants", plants}});
    }
    return {{"nights", nights}};
}

void say_night(std::ostream& text, const plan::NightPlan& plan, words::UnitSystem units)
{
    const auto low = [&](Probability chance) {
        return words::temperature(plan.outlook.quantile(chance), units);
    };
    text << words::full_day(plan.ahead.night) << ": ";
    if (plan.ahead.forecast) {
        text << words::temperature(plan.ahead.forecast->low, units) << " forecast, ";
    }
    text << "in the open " << low(Probability::literal(0.5)) << ", in 9 of 10 such nights "
         << low(Probability::literal(0.05)) << " to " << low(Probability::literal(0.95)) << '\n';
}

/// The plants of one kind under a head line; nothing where there are none.
template <class Belongs>
void say_plants(std::ostream& text, const plan::NightPlan& plan, const home::Household& household,
                words::UnitSystem units, const char* head, Belongs belongs)
{
    bool any = false;
    for (const auto& plant : plan.plants) {
        if (!belongs(plant)) {
            continue;
        }
        text << (any ? "" : head);
        any = true;
        const auto& pot = *household.plant(plant.plant);
        text << "  " << words::padded(pot.name, 22) << "  "
             << words::padded(household.spot(plant.spot)->name, 14) << "  "
             << words::why(plant, plan.ahead, household, units)
             << (plant.carry_in && pot.pinned_spot ? " (kept there by hand)" : "") << '\n';
    }
}

bool is_outdoor(const plan::PlantNight& plant)
{
    return plant.reason == plan::NightReason::WithinRisk || plant.carry_in;
}

std::string text_of(const std::vector<plan::NightPlan>& plans, const HouseholdWithLog& home,
                    const climate::PlaceClimate& climate, const climate::NightModel& season,
                    calendar::Date today, Probability risk, words::UnitSystem units)
{
    const auto& household = home.as_told;
    std::ostringstream text;
    text << household.name << ", " << household.place.name
         << (household.demonstration ? " (demonstration household, invented)" : "")
         << ". A night is named by the morning on which it ends.\n\n";
    const auto carried = [](const plan::PlantNight& of) { return of.carry_in; };
    for (const auto& plan : plans) {
        say_night(text, plan, units);
        if (&plan == &plans.front()) {
            if (std::ranges::none_of(plan.plants, carried)) {
                text << "Nothing needs to come in.\n";
            }
            say_plants(text, plan, household, units, "Carry in:\n", carried);
            say_plants(text, plan, household, units, "May stay out:\n",
                       [](const plan::PlantNight& of) { return is_outdoor(of) && !of.carry_in; });
            say_plants(text, plan, household, units, "Indoors:\n",
                       [](const plan::PlantNight& of) { return !is_outdoor(of); });
            text << (plans.size() > 1 ? "\n" : "");
        } else {
            say_plants(text, plan, household, units, "", carried);
        }
    }
    text << '\n';
    for (const auto& remark : plan::room_remarks(household, home.log, today)) {
        text << words::room_remark(remark, household, units) << ".\n";
    }
    std::set<home::SpotId> outdoors;
    for (const auto& plant : plans.front().plants) {
        if (is_outdoor(plant)) {
            outdoors.insert(plant.spot);
        }
    }
    for (const auto id : outdoors) {
        const auto& spot = *household.spot(id);
        const auto offset = home::offset_of(spot, home.log, season);
        text << spot.name << ": "
             << (offset.nights > 0
                     ? words::learned(offset, units)
                     : "no readings yet, taken as " + words::against_open_air(spot.offset.mean, units))
             << ".\n";
    }
    text << "A plant comes in where the chance of a night that damages it is above " << words::chance(risk)
         << ", or of one that kills it above a tenth of that.\n"
         << sources_in_words(climate, units);
    return std::move(text).str();
}

Result<Answer> tonight_of(const Globals& globals, const TonightOptions& options)
{
    const auto risk = Probability::from_percent(options.risk_percent);
    if (!risk || options.risk_percent < 0.1 || options.risk_percent > 50.0) {
        return Error{ErrorCode::OutOfRange, "--risk must lie within 0.1 and 50 percent"};
    }
    if (options.keep && options.lows.empty() && options.forecast.file.empty()) {
        return Error{ErrorCode::WrongUsage, "--keep keeps the forecast that is given; add --low C, or --forecast FILE"};
    }
    const auto home = household_with_log(globals);
    if (!home) {
        return home.error();
    }
    const auto forecasts = forecasts_of(options, home->log, globals.today);
    if (!forecasts) {
        return forecasts.error();
    }
    const auto nights = plan::nights_of_forecast(*forecasts, globals.today);
    if (nights.empty()) {
        return Error{ErrorCode::Malformed,
                     name_of(options.forecast) + " has no night from " +
                         calendar::to_text(globals.today + calendar::Days{1}) + " to " +
                         calendar::to_text(globals.today + calendar::Days{plan::kNightsAhead}) +
                         "; a night is named by the morning on which it ends"};
    }
    const auto climate = climate_of(home->as_told);
    if (!climate) {
        return climate.error();
    }
    for (const auto& night : nights) {
        // What the household keeps was asked about, or said surely, when it was kept.
        if (!night.forecast || options.sure || (options.lows.empty() && options.forecast.file.empty())) {
            continue;
        }
        const auto usual = home::of_night(climate->monthly.low, night.night);
        if (const auto fits = not_a_slip(night.forecast->low, usual, night.night, globals.units); !fits) {
            return fits.error();
        }
    }
    if (options.keep) {
        if (const auto made = were_made_by(globals.today, *forecasts); !made) {
            return made.error();
        }
        auto store = journal::HouseholdStore::open(globals.home);
        if (!store) {
            return store.error();
        }
        if (const auto kept = store->record(std::span<const home::KeptForecast>{*forecasts}); !kept) {
            return kept.error();
        }
    }
    const auto season = climate->nights();
    const auto plans = plan::plan_nights(home->as_told, home->log, season, nights, globals.today, *risk);
    Answer answer{json_of(plans, home->as_told, globals.units),
                  text_of(plans, *home, *climate, season, globals.today, *risk, globals.units),
                  texts(climate->warnings)};
    if (nights.front().night > globals.today + calendar::Days{1}) {
        answer.warnings.push_back("the forecast has no low for tonight, the night that ends on " +
                                  calendar::to_text(globals.today + calendar::Days{1}));
    }
    return answer;
}

} // namespace

void add_tonight(Commands& commands)
{
    auto options = std::make_shared<TonightOptions>();
    CLI::App& command = commands.add(
        "tonight", "Which plants should come in tonight and in the next ten nights",
        "lathhouse tonight --low 2.5 --sky clear --wind calm\n  lathhouse tonight --forecast lows.csv");
    add_numbers(command, "--low", options->lows,
                "Low that is forecast for tonight, degrees Celsius; again for each night after it")
        ->type_name("C");
    command
        .add_option(
            "--forecast", options->forecast.file,
            "CSV or JSON with a low for each night: columns date (of the morning) and low_c or low_f, "
            "and where known dew_point_c, sky, wind_m_s, issued; - reads what is pasted")
        ->type_name("FILE");
    add_columns_option(command, options->forecast, "date=day,low_f=Tmin");
    command
        .add_option("--issued", options->issued, "Day on which the file's forecast was made (default: today)")
        ->type_name("YYYY-MM-DD");
    add_weather_options(command, options->weather);
    command.add_option("--dew-point", options->dew_point, "Dew point tonight, degrees Celsius")
        ->type_name("C");
    command
        .add_option("--risk", options->risk_percent,
                    "Accepted chance of a damaging night, in percent (default 10)")
        ->type_name("PERCENT");
    add_sure_flag(command, options->sure);
    command.add_flag("--keep", options->keep,
                     "Keeps the forecast in the household, so that its errors here are learned");
    commands.on_run(command, [options](const Globals& globals) { return tonight_of(globals, *options); });
}

} // namespace lathhouse::cli
