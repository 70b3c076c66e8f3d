#include "app/cli/all_commands.h"
#include "app/cli/household_options.h"
#include "app/cli/light_conversion.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/view_options.h"
#include "app/words/lamp_words.h"
#include "app/words/season_words.h"
#include "core/calendar/time_zone.h"
#include "core/home/light_spread.h"
#include "core/home/spot_light.h"
#include "core/sky/direct_sun.h"
#include "core/units/light_source.h"

#include <algorithm>
#include <array>
#include <memory>

namespace lathhouse::cli {
namespace {

struct LightOptions {
    PlaceOptions place;
    ViewOptions view;
    std::optional<int> spot;
    std::string zone;
    std::optional<double> lamp;
    std::optional<double> target;
    ConversionOptions conversion;
};

/// What is asked about, wherever it came from.
struct AskedLight {
    climate::PlaceClimate climate;
    std::string title;
    std::optional<home::Spot> spot;
    std::optional<sky::SpotView> view;
    std::string zone;
};

constexpr double kFootCandleHours = 8.0;

Result<AskedLight> asked_of_household(const Globals& globals, const LightOptions& options)
{
    if (has_any(options.view) || is_given(options.place)) {
        return Error{ErrorCode::WrongUsage,
                     "--spot takes the place and the window from the household; leave --at "
                     "and the window's options out"};
    }
    const auto household = household_of(globals, WithoutHousehold::ShowsDemonstration);
    if (!household) {
        return household.error();
    }
    const auto* spot = household->spot(*options.spot);
    if (spot == nullptr) {
        return Error{ErrorCode::NotFound, "there is no spot " + std::to_string(*options.spot) + " in " +
                                              household->name + "; see: lathhouse list spots"};
    }
    const auto climate = climate_of(*household);
    if (!climate) {
        return climate.error();
    }
    const std::string seen = spot->view ? ", " + view_in_words(spot->kind, *spot->view) : std::string{};
    return AskedLight{*climate, spot->name + seen + ", " + household->name, *spot, spot->view,
                 household->place.time_zone};
}

Result<AskedLight> asked_of_place(const Globals& globals, const LightOptions& options)
{
    if (!is_given(options.place)) {
        return Error{
            ErrorCode::WrongUsage,
            "say a place with --at LAT,LON or --place NAME, or a spot of the household with --spot ID"};
    }
    const auto named = view_of(options.view);
    if (!named) {
        return named.error();
    }
    const auto climate = climate_of(globals, options.place);
    if (!climate) {
        return climate.error();
    }
    return AskedLight{*climate, "Light " + view_in_words(named->kind, named->view), std::nullopt, named->view, ""};
}

/// The day's spells of direct sun, by the clock of the zone or of UTC.
struct SunOfToday {
    Json json;
    std::string text;
};
SunOfToday sun_of_today(const AskedLight& asked, const std::optional<calendar::TimeZone>& zone,
                        calendar::Date today)
{
    const sky::SolarEphemeris ephemeris{today, today};
    const auto spells = sky::direct_sun(*asked.view, ephemeris, asked.climate.position, today);
    const auto clock = [&](calendar::Instant instant) {
        const auto since = zone ? zone->local(instant).time_since_epoch() : instant.time_since_epoch();
        const auto of_day = since - std::chrono::floor<std::chrono::days>(since);
        const auto minute = std::chrono::floor<std::chrono::minutes>(of_day).count();
        const auto two = [](auto number) { return (number < 10 ? "0" : "") + std::to_string(number); };
        return two(minute / 60) + ":" + two(minute % 60);
    };
    Json list = Json::array();
    std::string times;
    for (const auto& [from, to] : spells) {
        list.push_back({{"from", calendar::to_text(from)}, {"to", calendar::to_text(to)}});
        times += (times.empty() ? " " : ", ") + clock(from) + " to " + clock(to);
    }
    const double hours = sky::hours_of(spells);
    return SunOfToday{
        {{"date", calendar::to_text(today)}, {"direct_sun_h", json_number(hours)}, {"spells", list}},
        "Direct sun on " + words::full_day(today) + ", if it shines: " +
            (spells.empty() ? "none" : words::hours_and_minutes(hours * 3600.0) + ":" + times) +
            (spells.empty() ? ""
             : zone         ? " (" + zone->name() + ")"
                            : " (UTC)") +
            ".\n"};
}

/// The zone that was named, else the household's; none where neither is known.
Result<std::optional<calendar::TimeZone>> zone_of(const LightOptions& options, const AskedLight& asked)
{
    const std::string& name = options.zone.empty() ? asked.zone : options.zone;
    if (name.empty()) {
        return std::optional<calendar::TimeZone>{};
    }
    const auto named = calendar::TimeZone::named(name);
    if (!named && !options.zone.empty()) {
        return Error{ErrorCode::WrongUsage, "--zone: " + named.error().message};
    }
    return named ? std::optional{*named} : std::nullopt;
}

Result<void> check_lamp(const LightOptions& options)
{
    if (options.lamp.has_value() != options.target.has_value()) {
        return Error{ErrorCode::WrongUsage,
                     "--lamp and --target belong together: the lamp's light at the leaves and "
                     "the day's light that is wanted"};
    }
    if (options.lamp && !(*options.lamp > 0.0 && *options.lamp <= kMostLampMicromoles)) {
        return Error{ErrorCode::OutOfRange, "--lamp must be above 0 and at most 3000 µmol per m² and s"};
    }
    if (options.target && !(*options.target > 0.0 && *options.target <= kMostDailyMoles)) {
        return Error{ErrorCode::OutOfRange, "--target must be above 0 and at most 80 mol per m² and day"};
    }
    return {};
}

/// One month's figures; what needs the spot's view is not there without one.
struct MonthRow {
    DailyLight level;
    std::optional<home::MonthAtSpot> seen;
    std::optional<double> lamp_hours;
    std::optional<home::DaysAtSpot> days = {};
};

Json json_of(std::size_t month, const MonthRow& row, bool with_lamp)
{
    const auto of_view = [&](double home::MonthAtSpot::*figure) {
        return row.seen ? json_number((*row.seen).*figure) : Json(nullptr);
    };
    Json json{
        {"month", month + 1},
        {"daily_light_mol", json_number(row.level.moles())},
        {"direct_sun_h", of_view(&home::MonthAtSpot::direct_sun_hours)},
        {"foot_candles_8h", json_number(even_light_of(row.level, kFootCandleHours).daylight_foot_candles())},
        {"likely_sun_h", of_view(&home::MonthAtSpot::likely_sun_hours)},
        {"facing_light_mol", row.seen ? json_number(row.seen->facing.moles()) : Json(nullptr)}};
    const auto of_days = [&](DailyLight home::DaysAtSpot::*day) {
        return row.days ? json_number(((*row.days).*day).moles()) : Json(nullptr);
    };
    json["dark_day_mol"] = of_days(&home::DaysAtSpot::dark);
    json["middle_day_mol"] = of_days(&home::DaysAtSpot::middle);
    json["bright_day_mol"] = of_days(&home::DaysAtSpot::bright);
    if (with_lamp) {
        json["lamp_h"] = row.lamp_hours ? json_number(*row.lamp_hours) : Json(nullptr);
    }
    return json;
}

std::string line_of(const std::string& name, const std::array<std::string, 6>& cells, bool with_lamp)
{
    std::string line = words::padded(name, 10);
    for (std::size_t column = 0; column < (with_lamp ? 6U : 5U); ++column) {
        line += words::right_aligned(cells[column], 14);
    }
    return line + "\n";
}

std::string line_of(std::size_t month, const MonthRow& row, bool with_lamp)
{
    const auto hours = [](double value) { return words::number(value, 1) + " h"; };
    return line_of(words::month_name(month),
                   {words::number(row.level.moles(), 1),
                    row.seen ? words::number(row.seen->facing.moles(), 1) : "-",
                    row.seen ? hours(row.seen->direct_sun_hours) : "-",
                    words::number(even_light_of(row.level, kFootCandleHours).daylight_foot_candles(), 0),
                    row.days ? words::number(row.days->dark.moles(), 1) + " to " + words::number(row.days->bright.moles(), 1)
                             : "-",
                    row.lamp_hours ? hours(*row.lamp_hours) : "too weak"},
                   with_lamp);
}

Result<Answer> light_answer(const Globals& globals, const LightOptions& options)
{
    if (asks_for_conversion(options.conversion)) {
        if (options.spot || is_given(options.place) || has_any(options.view) || options.lamp ||
            options.target) {
            return Error{ErrorCode::WrongUsage,
                         "--foot-candles and --mol only convert; leave the place and the "
                         "spot out"};
        }
        return converted(options.conversion);
    }
    if (const auto good = check_lamp(options); !good) {
        return good.error();
    }
    const auto asked = options.spot ? asked_of_household(globals, options) : asked_of_place(globals, options);
    if (!asked) {
        return asked.error();
    }
    const home::YearOfSky year{asked->climate};
    std::optional<climate::Monthly<home::MonthAtSpot>> seen;
    if (asked->view) {
        seen = home::months_at(*asked->view, year);
    }
    const auto level = asked->spot ? home::spot_light(*asked->spot, year)
                                   : climate::in_every_month(DailyLight::from_moles(0.0));
    const auto days = asked->spot ? home::light_spread(*asked->spot, year)
                                  : std::optional{home::days_at(*asked->view, year)};
    const bool with_lamp = options.lamp.has_value();
    Json months = Json::array();
    std::string text =
        asked->title + "\n" +
        line_of("", {"mol a day", "leaf upright", "direct sun", "fc for 8 h", "9 days in 10", "lamp"}, with_lamp);
    double longest = 0.0;
    for (std::size_t m = 0; m < level.size(); ++m) {
        MonthRow row{seen ? (*seen)[m].level : level[m], std::nullopt, std::nullopt};
        if (seen) {
            row.seen = (*seen)[m];
        }
        if (days) {
            row.days = (*days)[m];
        }
        if (with_lamp) {
            const double hours = lamp_hours(row.level, DailyLight::from_moles(*options.target),
                                            PhotonFlux::from_micromoles(*options.lamp));
            longest = std::max(longest, hours);
            row.lamp_hours = hours <= 24.0 ? std::optional{hours} : std::nullopt;
        }
        months.push_back(json_of(m, row, with_lamp));
        text += line_of(m, row, with_lamp);
    }
    Answer answer{{{"months", months}}, text, texts(asked->climate.warnings)};
    answer.text +=
        "Light on a level leaf, mol of photons per m² and day; upright: on a leaf turned to the window. "
        "Direct "
        "sun: hours\nin which the Sun could reach the leaves, were there no cloud. Behind glass right to "
        "about 30 %, outdoors to 10 %.\n";
    answer.text += days ? "9 days in 10: what clouds change from day to day, told from the month's mean (Bendt, Collares-Pereira and\n"
                          "Rabl 1981); 1 day in 20 is darker, 1 in 20 brighter. In the tropics days differ less.\n"
                        : "What clouds change from day to day is not told of light that does not rise towards the summer, as under "
                          "lamps.\n";
    if (asked->view) {
        const auto zone = zone_of(options, *asked);
        if (!zone) {
            return zone.error();
        }
        const auto today = sun_of_today(*asked, *zone, globals.today);
        answer.json["today"] = today.json;
        answer.text += today.text;
    } else {
        answer.text +=
            "This spot has no window or roof described, so its own two figures of light are shown.\n";
    }
    if (with_lamp) {
        answer.text += words::lamp_caution() + "\n";
        if (longest > kLongestLampDay) {
            answer.text += words::lamp_burns_too_long() + "\n";
        }
    }
    answer.text += sources_in_words(asked->climate, globals.units);
    return answer;
}

} // namespace

void add_light(Commands& commands)
{
    auto options = std::make_shared<LightOptions>();
    CLI::App& command = commands.add(
        "light", "Gives the light of a spot through the year, direct sun, lamp hours, and converts meters",
        "lathhouse light --at 48.2,20.5 --elevation 150 --facing S --distance 0.3");
    add_place_options(command, options->place, false);
    command.add_option("--spot", options->spot, "A spot of the household, by its number")->type_name("ID");
    command
        .add_option("--zone", options->zone,
                    "Time zone for the times of direct sun (default: the household's)")
        ->type_name("NAME");
    add_view_options(command, options->view);
    command.add_option("--lamp", options->lamp, "Light of a lamp at the leaves, µmol per m² and s")
        ->type_name("PPFD");
    command.add_option("--target", options->target, "Day's light that the lamp is to make up to")
        ->type_name("MOL");
    add_conversion_options(command, options->conversion);
    commands.on_run(command, [options](const Globals& globals) { return light_answer(globals, *options); });
}

} // namespace lathhouse::cli
