#include "app/cli/sun.h"

#include "core/sky/sun.h"

#include <array>
#include <cstdio>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct SunOptions {
    PlaceOptions place;
    std::string from;
    std::string to;
    std::string zone;
};

struct DatedDay {
    calendar::Date date;
    sky::SunDay day;
};

Json json_instant(const std::optional<calendar::Instant>& instant)
{
    return instant ? Json(calendar::to_text(*instant)) : Json(nullptr);
}

const char* kind_name(sky::DayKind kind)
{
    switch (kind) {
    case sky::DayKind::PolarDay:
        return "polar_day";
    case sky::DayKind::PolarNight:
        return "polar_night";
    case sky::DayKind::Ordinary:
        break;
    }
    return "ordinary";
}

Json json_of(const std::vector<DatedDay>& days)
{
    Json list = Json::array();
    for (const auto& [date, day] : days) {
        list.push_back({{"date", calendar::to_text(date)},
                        {"kind", kind_name(day.kind)},
                        {"sunrise", json_instant(day.rise)},
                        {"sunset", json_instant(day.set)},
                        {"civil_dawn", json_instant(day.civil_dawn)},
                        {"civil_dusk", json_instant(day.civil_dusk)},
                        {"noon", json_instant(day.noon)},
                        {"noon_elevation_deg", json_number(day.noon_elevation.degrees())},
                        {"day_length_s", json_number(day.day_length_seconds)},
                        {"extraterrestrial_mj", json_number(day.extraterrestrial.megajoules())}});
    }
    return {{"days", list}};
}

/// "04:57", with "+1" or "-1" where the clock is on the day after or before; a dash for what does not happen.
std::string clock(const std::optional<calendar::Instant>& instant, calendar::Date date,
                  const std::optional<calendar::TimeZone>& zone)
{
    if (!instant) {
        return "–";
    }
    // To the nearest minute, as almanacs print it.
    const auto shown = std::chrono::floor<std::chrono::minutes>(*instant + std::chrono::seconds{30});
    const auto local =
        zone ? calendar::Instant{zone->local(shown).time_since_epoch()} : calendar::Instant{shown};
    const auto minute = std::chrono::duration_cast<std::chrono::minutes>(
                            local - calendar::start_of_day_utc(calendar::utc_date(local)))
                            .count();
    const int shift = calendar::days_between(date, calendar::utc_date(local));
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), shift == 0 ? "%02d:%02d" : "%02d:%02d%+d",
                  static_cast<int>(minute / 60), static_cast<int>(minute % 60), shift);
    return text.data();
}

std::string text_of(const std::vector<DatedDay>& days, const std::optional<calendar::TimeZone>& zone)
{
    std::ostringstream text;
    text << "Times by the clock of " << (zone ? zone->name() : std::string{"UTC (--zone shows another)"})
         << ".\n"
         << words::padded("", 17)
         << "dawn     sunrise  noon     sunset   dusk     day length      noon height\n";
    for (const auto& [date, day] : days) {
        text << words::padded(words::full_day(date), 17)
             << words::padded(clock(day.civil_dawn, date, zone), 9)
             << words::padded(clock(day.rise, date, zone), 9) << words::padded(clock(day.noon, date, zone), 9)
             << words::padded(clock(day.set, date, zone), 9)
             << words::padded(clock(day.civil_dusk, date, zone), 9);
        switch (day.kind) {
        case sky::DayKind::Ordinary:
            text << words::padded(words::hours_and_minutes(day.day_length_seconds), 16);
            break;
        case sky::DayKind::PolarDay:
            text << words::padded("Sun all day", 16);
            break;
        case sky::DayKind::PolarNight:
            text << words::padded("no Sun", 16);
            break;
        }
        text << words::number(day.noon_elevation.degrees(), 1) << "°\n";
    }
    text << "Sunrise and sunset: centre of the Sun 50' below a free horizon at sea level; dawn and dusk: 6° "
            "below it.\n";
    return std::move(text).str();
}

Result<calendar::Date> date_of_option(const std::string& name, const std::string& text, calendar::Date fallback)
{
    if (text.empty()) {
        return fallback;
    }
    const auto date = calendar::parse_date(text);
    if (!date) {
        return Error{date.error().code, name + ": " + date.error().message};
    }
    return *date;
}

Result<Answer> sun_of(const SunOptions& options, const Globals& globals)
{
    const auto position = position_of(options.place);
    if (!position) {
        return position.error();
    }
    const auto from = date_of_option("--from", options.from, globals.today);
    if (!from) {
        return from.error();
    }
    const auto to = date_of_option("--to", options.to, *from);
    if (!to) {
        return to.error();
    }
    if (*to < *from) {
        return Error{ErrorCode::WrongUsage, "--to " + calendar::to_text(*to) + " lies before --from " +
                                                calendar::to_text(*from) + "; exchange them"};
    }
    std::optional<calendar::TimeZone> zone;
    if (!options.zone.empty()) {
        auto named = calendar::TimeZone::named(options.zone);
        if (!named) {
            // A name that does not exist is the caller's slip, not a thing that could not be done.
            const auto code =
                named.error().code == ErrorCode::NotFound ? ErrorCode::WrongUsage : named.error().code;
            return Error{code, "--zone: " + named.error().message};
        }
        zone = *named;
    }

    const sky::SolarEphemeris ephemeris{*from, *to};
    std::vector<DatedDay> days;
    Answer answer;
    for (auto date = *from; date <= *to; date += calendar::Days{1}) {
        if (!zone) {
            days.push_back({date, sky::sun_day(ephemeris, *position, date)});
            continue;
        }
        const auto day = sky::sun_day(ephemeris, *position, date, *zone);
        if (day) {
            days.push_back({date, *day});
        } else if (*from == *to) {
            return day.error();
        } else {
            answer.warnings.push_back(day.error().message);
        }
    }
    answer.json = json_of(days);
    answer.text = text_of(days, zone);
    return answer;
}

} // namespace

void add_sun(Commands& commands)
{
    auto options = std::make_shared<SunOptions>();
    CLI::App& command =
        commands.add("sun", "Gives sunrise, sunset, twilight and noon of a place",
                     "lathhouse sun --at 48.21,16.37 --from 2027-06-01 --to 2027-06-07 --zone Europe/Vienna");
    add_position_options(command, options->place, true);
    command.add_option("--from", options->from, "First date (default: today)")->type_name("YYYY-MM-DD");
    command.add_option("--to", options->to, "Last date (default: the first)")->type_name("YYYY-MM-DD");
    command
        .add_option("--zone", options->zone,
                    "Time zone whose civil dates are meant, such as Europe/Vienna (default: the local mean "
                    "solar day of the longitude)")
        ->type_name("NAME");
    commands.on_run(
        command, [options](const Globals& globals) -> Result<Answer> { return sun_of(*options, globals); });
}

} // namespace lathhouse::cli
