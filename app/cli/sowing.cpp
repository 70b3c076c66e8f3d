#include "app/cli/sowing.h"

#include "app/cli/all_commands.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/cli/place_climate_options.h"
#include "app/cli/seed_options.h"
#include "app/words/place_words.h"
#include "app/words/source_words.h"
#include "app/words/sowing_words.h"
#include "core/base/parse.h"
#include "core/plan/sowing_calendar.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct SowingOptions {
    PlaceOptions place;
    std::string crop;
    std::string lot;
    bool calendar = false;
    double risk_percent = 10.0;
    int plants = 1;
    std::optional<double> room;
    int days = 7;
};

Json span_json(const std::optional<plan::DateSpan>& span)
{
    return span ? Json{{"from", calendar::to_text(span->from)}, {"to", calendar::to_text(span->to)}} : Json(nullptr);
}

std::optional<calendar::Date> start_of(const std::optional<plan::DateSpan>& span)
{
    return span ? std::optional{span->from} : std::nullopt;
}

std::optional<plan::DateSpan> dates_of(const std::optional<plan::Emergence>& emergence)
{
    return emergence ? std::optional{emergence->dates} : std::nullopt;
}

Json limits_json(const std::set<plan::SowingLimit>& limits)
{
    Json list = Json::array();
    for (const auto limit : limits) {
        list.push_back(words::to_string(limit));
    }
    return list;
}

Json strings(const std::vector<std::string>& texts)
{
    Json list = Json::array();
    for (const auto& text : texts) {
        list.push_back(text);
    }
    return list;
}

Json keys_json(const std::string& keys)
{
    Json list = Json::array();
    for (const auto key : split(keys, ';')) {
        list.push_back(std::string{key});
    }
    return list;
}

Json ways_json(const plan::NoDate& none)
{
    Json ways = Json::array();
    for (const auto& way : none.ways) {
        const auto season = way.season.value_or(plan::SowingSeason{});
        ways.push_back({{"way", words::to_string(way.kind)},
                        {"extra_weeks_indoors", way.extra_weeks},
                        {"risk", json_number(way.risk.fraction())},
                        {"sow_indoors", json_date(start_of(season.sow_indoors))},
                        {"sow_outdoors", span_json(season.sow_outdoors)},
                        {"plant_out", json_date(start_of(season.plant_out))},
                        {"ready", span_json(season.ready ? season.ready : season.ready_outdoors)}});
    }
    return ways;
}

Json json_of(const plan::SowingPlan& plan, const std::vector<std::string>& notes)
{
    const auto& kind = *plan.kind;
    const bool has = plan.season.has_value();
    const auto season = plan.season.value_or(plan::SowingSeason{});
    const auto& emerge = season.emerge_indoors ? season.emerge_indoors : season.emerge_outdoors;
    Json successions = Json::array();
    for (const auto& next : season.successions) {
        successions.push_back({{"sow", calendar::to_text(next.sow)}, {"ready", calendar::to_text(next.ready)}});
    }
    Json none = nullptr;
    if (plan.no_date) {
        none = {{"reason", words::to_string(plan.no_date->reason)},
                {"longest_stretch_days", plan.no_date->longest_stretch_days},
                {"days_needed", plan.no_date->days_needed},
                {"warmest_soil_c", json_number(plan.no_date->warmest_soil.degrees())},
                {"mildest_usual_low_c", json_number(plan.no_date->mildest_usual_low.degrees())},
                {"ways", ways_json(*plan.no_date)}};
    }
    const auto figure = [&](double value) { return has ? json_number(value) : Json(nullptr); };
    return {{"crop", kind.name()},
            {"botanical_name", kind.botanical_name},
            {"sow_indoors", json_date(start_of(season.sow_indoors))},
            {"sow_outdoors", span_json(season.sow_outdoors)},
            {"plant_out", json_date(start_of(season.plant_out))},
            {"emerge", span_json(dates_of(emerge))},
            {"ready", span_json(season.ready ? season.ready : season.ready_outdoors)},
            {"last_useful", json_date(season.last_useful)},
            {"seeds", plan.seeds ? Json(*plan.seeds) : Json(nullptr)},
            {"sow_indoors_until",
             season.sow_indoors ? Json(calendar::to_text(season.sow_indoors->to)) : Json(nullptr)},
            {"hardening_from", json_date(season.hardening_from)},
            {"plant_out_until", season.plant_out ? Json(calendar::to_text(season.plant_out->to)) : Json(nullptr)},
            {"emerge_outdoors", span_json(dates_of(season.emerge_outdoors))},
            {"emerge_at_c", emerge ? json_number(emerge->mix.degrees()) : Json(nullptr)},
            {"emerge_basis", emerge ? Json(words::to_string(emerge->basis)) : Json(nullptr)},
            {"ready_outdoors", span_json(season.ready_outdoors)},
            {"ready_what", plants::to_string(kind.ready_what)},
            {"successions", successions},
            {"germination", json_number(plan.seeds_rate)},
            {"safe_night_c", json_number(kind.safe_night.degrees())},
            {"damaging_night_c", json_number(kind.damaging_night().degrees())},
            {"damage_chance", figure(season.damage_chance.fraction())},
            {"usual_low_c", figure(season.usual_low.degrees())},
            {"soil_c", figure(season.soil.degrees())},
            {"begins_by", limits_json(season.begins_by)},
            {"ends_by", limits_json(season.ends_by)},
            {"no_date", none},
            {"notes", strings(notes)},
            {"common_practice", strings(kind.memory)},
            {"confidence", kind.confidence},
            {"sources", keys_json(kind.sources)}};
}

std::string until(calendar::Date first, const plan::DateSpan& span)
{
    return span.to > first ? " (until " + words::full_day(span.to) + ")" : "";
}

std::string text_of(const plan::SowingPlan& plan, const std::string& where, const SowingOptions& options,
                    const std::string& rate, const std::vector<std::string>& notes, words::UnitSystem units)
{
    const auto& kind = *plan.kind;
    std::ostringstream text;
    text << kind.name() << " (" << kind.botanical_name << "), " << where << '\n';
    const auto line = [&](const char* what, const std::string& value) {
        text << "  " << words::padded(what, 20) << value << '\n';
    };
    const auto span = [](const plan::DateSpan& dates) {
        return words::full_day(dates.from) + " to " + words::full_day(dates.to);
    };
    const std::string ready = kind.ready_what == plants::ReadyWhat::Flower ? "Flowers"
                              : kind.ready_what == plants::ReadyWhat::Leaves ? "Full leaf"
                                                                             : "Harvest";
    if (plan.season) {
        const auto& season = *plan.season;
        if (season.sow_indoors) {
            line("Sow indoors", words::full_day(season.sow_indoors->from) +
                                    until(season.sow_indoors->from, *season.sow_indoors));
            if (season.emerge_indoors) {
                line("  comes up", span(season.emerge_indoors->dates) + ", mix at " +
                                       words::temperature(season.emerge_indoors->mix, units));
            }
            line("Harden off from", words::full_day(*season.hardening_from));
            line("Plant out", words::full_day(season.plant_out->from) +
                                  until(season.plant_out->from, *season.plant_out));
            if (season.ready) {
                line(("  " + lower_case(ready)).c_str(), span(*season.ready));
            }
        }
        if (season.sow_outdoors) {
            line("Sow outdoors", span(*season.sow_outdoors));
            if (season.emerge_outdoors) {
                line("  comes up", span(season.emerge_outdoors->dates) + " (sown on the first day)");
            }
            if (season.ready_outdoors) {
                line(("  " + lower_case(ready)).c_str(), span(*season.ready_outdoors));
            }
        }
        line("Last useful sowing", season.last_useful ? words::full_day(*season.last_useful) : "none: all year");
    }
    line("Seeds", (plan.seeds ? std::to_string(*plan.seeds) : std::string{"over 100,000"}) + " for " +
                      std::to_string(options.plants) + (options.plants == 1 ? " plant" : " plants") +
                      ", 19 in 20 sure, at " + rate);
    if (plan.season) {
        text << '\n' << words::sowing_begins(plan, units) << '\n' << words::sowing_ends(plan, units) << '\n';
        if (plan.season->successions.size() > 1) {
            text << "For a harvest every " << *kind.succession_days << " days sow "
                 << (plan.season->succession_by == plan::SowingMethod::Indoors ? "indoors on" : "outdoors on");
            for (std::size_t i = 0; i < plan.season->successions.size(); ++i) {
                text << (i == 0 ? " " : ", ") << words::day(plan.season->successions[i].sow);
            }
            text << ".\n";
        }
    } else {
        text << '\n' << words::no_sowing_date(plan, units) << "\nWhat would help:\n";
        for (const auto& way : plan.no_date->ways) {
            text << "  - " << words::way_out(way) << '\n';
        }
    }
    text << words::how_to_sow(kind, units) << '\n';
    for (const auto& note : notes) {
        text << note << '\n';
    }
    return std::move(text).str();
}

/// Where, for what rate, at what climate: what both forms of the command share.
struct AskedSowing {
    climate::PlaceClimate climate;
    plan::SowingWishes wishes;
};

Result<AskedSowing> asked(const Globals& globals, const SowingOptions& options)
{
    const auto risk = Probability::from_percent(options.risk_percent);
    if (!risk || options.risk_percent < 0.1 || options.risk_percent > 50.0) {
        return Error{ErrorCode::OutOfRange, "--risk must lie within 0.1 and 50 percent"};
    }
    if (options.plants < 1 || options.plants > 10'000) {
        return Error{ErrorCode::OutOfRange, "--plants must lie within 1 and 10000"};
    }
    if (options.room && !(*options.room >= 0.0 && *options.room <= 45.0)) {
        return Error{ErrorCode::OutOfRange, "--room must lie within 0 and 45 degrees Celsius"};
    }
    auto climate = climate_of(globals, options.place);
    if (!climate) {
        return climate.error();
    }
    AskedSowing all{std::move(*climate), {}};
    all.wishes.risk = *risk;
    all.wishes.plants = options.plants;
    if (options.room) {
        all.wishes.room = Celsius::from_degrees(*options.room);
    }
    return all;
}

Result<Answer> sowing_of(const Globals& globals, const SowingOptions& options)
{
    std::optional<LotKnown> lot;
    if (!options.lot.empty()) {
        auto found = lot_known(globals, options.lot);
        if (!found) {
            return found.error();
        }
        lot = std::move(*found);
    }
    const auto found = lot ? Result<const plants::SeedKind*>{lot->kind}
                           : plants::SeedReference::built_in().find(options.crop);
    if (!found) {
        return found.error();
    }
    auto all = asked(globals, options);
    if (!all) {
        return all.error();
    }
    std::string rate = words::germination_basis(**found);
    if (lot) {
        all->wishes.rate = lot->rate.rate;
        rate = rate_in_words(*lot);
    }
    const plan::SowingClimate climate{all->climate, globals.today};
    const auto plan = plan::plan_sowing(**found, all->climate, climate, all->wishes);
    auto notes = words::sowing_notes(plan, globals.units);
    if (lot) {
        for (auto& note : lot_notes(*lot, plan.seeds)) {
            notes.push_back(std::move(note));
        }
    }
    auto json = json_of(plan, notes);
    json["climate"] = attribution_of(all->climate);
    const auto where = words::position(all->climate.position) + ", risk accepted " + words::chance(all->wishes.risk);
    return Answer{json,
                  text_of(plan, where, options, rate, notes, globals.units) +
                      "Days from the row's figures; depth, spacing and days to readiness are common practice without "
                      "a source. How sure the figures of this crop are: " + plan.kind->confidence + ".\n" +
                      sources_in_words(all->climate, globals.units) + words::sources_line(words::source_keys(plan.kind->sources)),
                  texts(all->climate.warnings)};
}

/// What of a kind can be sown from today for so many days.
Result<Answer> calendar_of(const Globals& globals, const SowingOptions& options)
{
    if (options.days < 1 || options.days > 366) {
        return Error{ErrorCode::OutOfRange, "--days must lie within 1 and 366"};
    }
    const auto all = asked(globals, options);
    if (!all) {
        return all.error();
    }
    const plan::SowingClimate climate{all->climate, globals.today};
    const auto last = globals.today + calendar::Days{options.days - 1};
    Json list = Json::array();
    std::vector<std::vector<std::string>> rows{{"crop", "how", "from", "until", "ready from"}};
    std::set<std::string> keys;
    for (const auto& sowing :
         plan::sowing_calendar(all->climate, climate, all->wishes, globals.today, options.days)) {
        const char* how = sowing.method == plan::SowingMethod::Indoors ? "indoors" : "outdoors";
        list.push_back({{"crop", sowing.kind->name()},
                        {"how", how},
                        {"from", calendar::to_text(sowing.sow.from)},
                        {"until", calendar::to_text(sowing.sow.to)},
                        {"ready", span_json(sowing.ready)}});
        rows.push_back({sowing.kind->name(), how, words::full_day(sowing.sow.from), words::full_day(sowing.sow.to),
                        sowing.ready ? words::full_day(sowing.ready->from) : ""});
        for (const auto key : split(sowing.kind->sources, ';')) {
            keys.emplace(key);
        }
    }
    std::string joined;
    for (const auto& key : keys) {
        joined += (joined.empty() ? "" : ";") + key;
    }
    const auto head = "What can be sown from " + words::full_day(globals.today) + " to " + words::full_day(last) + ", " +
                      words::position(all->climate.position) + ", risk accepted " +
                      words::chance(all->wishes.risk) + "\n";
    const auto body = rows.size() > 1 ? table(rows) : std::string{"Nothing in these days; try --days 60.\n"};
    return Answer{{{"from", calendar::to_text(globals.today)},
                   {"to", calendar::to_text(last)},
                   {"sowings", list},
                   {"climate", attribution_of(all->climate)},
                   {"sources", joined.empty() ? Json::array() : keys_json(joined)}},
                  head + body + sources_in_words(all->climate, globals.units) +
                      (joined.empty() ? std::string{} : words::sources_line(words::source_keys(joined))),
                  texts(all->climate.warnings)};
}

} // namespace

void add_sowing(Commands& commands)
{
    auto options = std::make_shared<SowingOptions>();
    CLI::App& command = commands.add("sowing", "When to sow what, how many seeds, and when it is too late",
                                     "lathhouse sowing --at 44.8,20.5 --crop zinnia --plants 12");
    add_place_options(command, options->place, false);
    command.add_option("--crop", options->crop, "Common or botanical name")->type_name("NAME");
    command.add_option("--lot", options->lot, "A lot of the household, by id or name: its crop and its own counts")
        ->type_name("ID");
    command.add_flag("--calendar", options->calendar, "All crops that can be sown in the next days");
    command.add_option("--days", options->days, "Days that --calendar looks ahead (default 7)")->type_name("N");
    command
        .add_option("--risk", options->risk_percent,
                    "Accepted chance of a damaging night, each way, in percent (default 10)")
        ->type_name("PERCENT");
    command.add_option("--plants", options->plants, "Plants wanted (default 1)")->type_name("N");
    command.add_option("--room", options->room, "Temperature where trays stand indoors (default 20)")->type_name("C");
    commands.on_run(command, [options](const Globals& globals) -> Result<Answer> {
        const int named = int{!options->crop.empty()} + int{!options->lot.empty()} + int{options->calendar};
        if (named != 1) {
            return Error{ErrorCode::WrongUsage, "give one of --crop NAME, --lot ID or --calendar"};
        }
        return options->calendar ? calendar_of(globals, *options) : sowing_of(globals, *options);
    });
}

} // namespace lathhouse::cli
