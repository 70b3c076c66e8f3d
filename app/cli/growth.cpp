#include "app/cli/growth.h"

#include "app/cli/all_commands.h"
#include "app/cli/place_climate_options.h"
#include "core/base/csv.h"
#include "core/plan/plant_clock.h"

#include <algorithm>
#include <map>
#include <memory>

namespace lathhouse::cli {
namespace {

Result<growth::SeriesKind> kind_asked(const std::string& word)
{
    if (word.empty()) {
        return growth::SeriesKind::Size;
    }
    if (const auto kind = growth::series_kind_of(word)) {
        return *kind;
    }
    return Error{ErrorCode::WrongUsage, "--kind is \"" + word + "\"; say size, count, share or yellow"};
}

Result<std::vector<calendar::Date>> dates_of(const std::vector<std::string>& texts)
{
    std::vector<calendar::Date> dates;
    for (const auto& text : texts) {
        const auto date = calendar::parse_date(text);
        if (!date) {
            return Error{date.error().code, "--event: " + date.error().message};
        }
        dates.push_back(*date);
    }
    return dates;
}

/// Every plant of a file with a column `plant`, by name; all under one name where it has none.
Result<std::map<std::string, ComparedSeries>> plants_of(const CsvTable& table, growth::SeriesKind kind)
{
    const auto measured = growth::measured_from(table, kind);
    if (!measured) {
        return measured.error();
    }
    const auto plant = table.column("plant");
    const auto group = table.column("group");
    std::map<std::string, ComparedSeries> plants;
    std::map<std::string, std::vector<growth::Measured>> rows;
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        const auto name = plant ? table.at(row, *plant) : std::string{};
        if (plant && name.empty()) {
            return table.error_at(row, Said{"the plant is missing; give each line the plant's name"});
        }
        const auto of_group = group ? table.at(row, *group) : std::string{};
        const auto [at, added] = plants.try_emplace(name, ComparedSeries{name, of_group, {}});
        if (!added && at->second.group != of_group) {
            return table.error_at(row, Said{"the plant " + name + " is in the group \"" + of_group +
                                            "\" and above in \"" + at->second.group + "\"; a plant has one group"});
        }
        rows[name].push_back((*measured)[row]);
    }
    for (auto& [name, of] : plants) {
        of.readings = growth::readings_of(rows[name]);
    }
    return plants;
}

/// The clock of `--at`, over what the readings need; the calendar where no place is named.
struct AskedClock {
    growth::GrowthClock clock = growth::GrowthClock::calendar();
    words::ClockKind kind = words::ClockKind::Calendar;
};
Result<AskedClock> clock_asked(const Globals& globals, const GrowthOptions& options, calendar::Date from,
                               calendar::Date to)
{
    if (!is_given(options.place)) {
        if (!options.grown.empty()) {
            return Error{ErrorCode::WrongUsage,
                         "--grown says by what warmth and light it grows; say --at LAT,LON too"};
        }
        return AskedClock{};
    }
    auto by = plan::grows_by_usual();
    if (!options.grown.empty()) {
        const auto kind = plants::PlantReference::built_in().find(options.grown);
        if (!kind) {
            return kind.error();
        }
        by = plan::grows_by(**kind);
    }
    const auto climate = climate_of(globals, options.place);
    if (!climate) {
        return climate.error();
    }
    return AskedClock{plan::clock_in_the_open(by, *climate, from, to), words::ClockKind::Place};
}

Result<Answer> answer_for_series(const Globals& globals, const GrowthOptions& options, growth::SeriesKind kind,
                                 const std::vector<calendar::Date>& events)
{
    const auto table = CsvTable::read(options.series);
    if (!table) {
        return table.error();
    }
    auto measured = growth::measured_from(*table, kind);
    if (!measured) {
        return measured.error();
    }
    const auto readings = growth::readings_of(*measured);
    const auto event = events.front();
    const auto first = readings.empty() ? event : std::min(readings.front().date, event);
    auto last = plan::last_foreseen(readings, event);

    std::vector<std::vector<growth::SeriesReading>> companions;
    if (!options.spared.empty()) {
        const auto file = CsvTable::read(options.spared);
        if (!file) {
            return file.error();
        }
        const auto spared = plants_of(*file, kind);
        if (!spared) {
            return spared.error();
        }
        for (const auto& [name, of] : *spared) {
            companions.push_back(of.readings);
        }
    }
    auto clock_from = first;
    for (const auto& companion : companions) {
        clock_from = std::min(clock_from, companion.front().date);
        last = std::max(last, companion.back().date);
    }
    auto clock = clock_asked(globals, options, clock_from, last);
    if (!clock) {
        return clock.error();
    }
    GrowthQuestion question{.title = "Growth of " + options.series,
                            .kind = kind,
                            .measured = std::move(*measured),
                            .event = event,
                            .event_word = "",
                            .others = {},
                            .clock = std::move(clock->clock),
                            .clock_kind = clock->kind};
    for (std::size_t at = 1; at < events.size(); ++at) {
        question.others.push_back({events[at], ""});
    }
    if (!options.spared.empty()) {
        question.spared = growth::SparedClock::of(kind, companions, event, question.clock);
        if (!question.spared) {
            return Error{ErrorCode::WrongUsage,
                         options.spared + " has too few readings for a clock: spared plants need 4 dates at least"};
        }
        question.clock_kind = words::ClockKind::Spared;
    }
    return answer_of(question);
}

Result<Answer> answer_for_file_of_plants(const Globals& globals, const GrowthOptions& options,
                                         growth::SeriesKind kind, const std::vector<calendar::Date>& events)
{
    const auto table = CsvTable::read(options.compare);
    if (!table) {
        return table.error();
    }
    if (const auto plant = table->require_column("plant"); !plant) {
        return plant.error();
    }
    const auto plants = plants_of(*table, kind);
    if (!plants) {
        return plants.error();
    }
    std::vector<ComparedSeries> list;
    auto from = events.front();
    auto to = from;
    for (const auto& [name, of] : *plants) {
        from = std::min(from, of.readings.front().date);
        to = std::max(to, of.readings.back().date);
        list.push_back(of);
    }
    const auto clock = clock_asked(globals, options, from, to);
    if (!clock) {
        return clock.error();
    }
    return compare_plants(kind, events.front(), list, clock->clock, clock->kind);
}

Result<Answer> growth_answer(const Globals& globals, const GrowthOptions& options)
{
    const int forms = (options.series.empty() ? 0 : 1) + (options.compare.empty() ? 0 : 1) +
                      (options.plants.empty() ? 0 : 1);
    if (forms != 1) {
        return Error{ErrorCode::WrongUsage,
                     "say what grew: --series FILE.csv, --plant ID or --compare FILE.csv, one of them"};
    }
    const auto events = dates_of(options.events);
    if (!events) {
        return events.error();
    }
    if (!options.plants.empty()) {
        if (!options.spared.empty() || is_given(options.place) || !options.grown.empty() || !options.kind.empty()) {
            return Error{ErrorCode::WrongUsage, "--plant takes place, spots and kind from the household; leave "
                                                "--at, --grown, --kind and --spared out (--spared-plant names "
                                                "companions)"};
        }
        return growth_of_plants(globals, options, *events);
    }
    if (!options.measure.empty() || !options.spared_plants.empty()) {
        return Error{ErrorCode::WrongUsage, "--measure and --spared-plant go with --plant"};
    }
    const auto kind = kind_asked(options.kind);
    if (!kind) {
        return kind.error();
    }
    if (events->empty()) {
        return Error{ErrorCode::WrongUsage, "say when it happened: --event YYYY-MM-DD"};
    }
    if (!options.compare.empty()) {
        if (!options.spared.empty()) {
            return Error{ErrorCode::WrongUsage,
                         "--compare takes spared plants from its own file: a column group with two names"};
        }
        return answer_for_file_of_plants(globals, options, *kind, *events);
    }
    return answer_for_series(globals, options, *kind, *events);
}

} // namespace

void add_growth(Commands& commands)
{
    auto& command = commands.add("growth", "Whether a plant grows on after something happened to it",
                                 "lathhouse growth --plant 1");
    auto options = std::make_shared<GrowthOptions>();
    command.add_option("--series", options->series, "measurements: a file with columns date,value");
    command.add_option("--plant", options->plants,
                       "a plant of the household by id or name, by its journal; several are compared");
    command.add_option("--compare", options->compare,
                       "several plants: a file with columns plant,date,value and, if you like, group");
    command.add_option("--event", options->events,
                       "date of what happened; several: the first is asked about, the others are heeded. Of a plant "
                       "of the household without it: the latest that the journal has");
    command.add_option("--kind", options->kind, "size, count, share (0..1) or yellow (0..1); size without it");
    command.add_option("--measure", options->measure,
                       "of a plant: height, width, leaves ...; without it what was measured most often");
    command.add_option("--spared", options->spared,
                       "plants of the same kind that were spared: columns date,value and, if several, plant");
    command.add_option("--spared-plant", options->spared_plants,
                       "a plant of the household that was spared, by id or name; may be repeated");
    command.add_option("--grown", options->grown,
                       "the kind of plant, for the growth clock of --at; without it a usual pot plant");
    add_place_options(command, options->place, false);
    commands.on_run(command, [options](const Globals& globals) { return growth_answer(globals, *options); });
}

} // namespace lathhouse::cli
