#include "app/cli/growth.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "core/home/measurement.h"
#include "core/journal/household_store.h"
#include "core/plan/plant_clock.h"
#include "core/plan/plant_growth.h"

#include <algorithm>
#include <map>

namespace lathhouse::cli {
namespace {

using home::MeasurementKind;

struct JournalSeries {
    MeasurementKind measure;
    growth::SeriesKind kind;
    std::vector<growth::Measured> measured;
};

/// The plant's measurements of the kind asked for, else of the kind with most dates.
Result<JournalSeries> series_of(const journal::HouseholdStore& store, const home::Plant& plant,
                                std::optional<MeasurementKind> asked)
{
    const auto all = store.measurements(plant.id);
    if (!all) {
        return all.error();
    }
    std::map<MeasurementKind, std::vector<growth::Measured>> kinds;
    for (const auto& of : *all) {
        const auto kind = plan::series_kind_of(of.kind);
        if (!kind) {
            continue;
        }
        for (const double value : of.repeats) {
            if (const auto fault = growth::fault_of(*kind, value)) {
                continue; // The journal takes a height of 0; a logarithm does not.
            }
            kinds[of.kind].push_back({of.measured, value});
        }
    }
    if (kinds.empty() || (asked && !kinds.contains(*asked))) {
        return Error{ErrorCode::NotFound,
                     "nothing was measured of " + plant.name +
                         (asked ? " in " + std::string{home::to_string(*asked)} : " that growth can be read from") +
                         "; log it with: lathhouse log measurement"};
    }
    const auto best = asked ? kinds.find(*asked)
                            : std::ranges::max_element(kinds, {}, [](const auto& of) {
                                  return growth::readings_of(of.second).size();
                              });
    return JournalSeries{best->first, *plan::series_kind_of(best->first), best->second};
}

Result<std::optional<MeasurementKind>> measure_asked(const std::string& word)
{
    if (word.empty()) {
        return std::optional<MeasurementKind>{};
    }
    const auto kind = home::measurement_kind_of(word);
    if (!kind || !plan::series_kind_of(*kind)) {
        return Error{ErrorCode::WrongUsage,
                     "--measure is \"" + word +
                         "\"; growth is read from height, width, longest_leaf, stem, leaves, green_cover or "
                         "yellow_share"};
    }
    return kind;
}

Result<std::vector<const home::Plant*>> plants_called(const home::Household& household,
                                                      const std::vector<std::string>& names)
{
    std::vector<const home::Plant*> plants;
    for (const auto& name : names) {
        const auto plant = plant_called(household, name);
        if (!plant) {
            return plant.error();
        }
        plants.push_back(*plant);
    }
    return plants;
}

} // namespace

Result<Answer> growth_of_plants(const Globals& globals, const GrowthOptions& options,
                                const std::vector<calendar::Date>& asked_events)
{
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    const auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const auto household = facts->household();
    const auto plants = plants_called(household, options.plants);
    if (!plants) {
        return plants.error();
    }
    const auto companions = plants_called(household, options.spared_plants);
    if (!companions) {
        return companions.error();
    }
    const auto measure = measure_asked(options.measure);
    if (!measure) {
        return measure.error();
    }
    const home::SpotClimate spots{household, facts->climate, facts->log};
    const auto clock_for = [&](const home::Plant& plant, calendar::Date from, calendar::Date to) {
        return plan::clock_of(plant, plan::Whereabouts{plant, facts->events, {}, globals.today}, spots, facts->log,
                              from, to);
    };

    const auto& plant = *plants->front();
    const auto series = series_of(*store, plant, *measure);
    if (!series) {
        return series.error();
    }
    const auto readings = growth::readings_of(series->measured);
    const plan::Whereabouts whereabouts{plant, facts->events, {}, globals.today};
    const auto happened = plan::events_that_show(facts->events, whereabouts);
    std::optional<growth::DatedEvent> event;
    if (!asked_events.empty()) {
        event = growth::DatedEvent{asked_events.front(), ""};
        for (const auto& of : happened) {
            if (of.date == event->date && event->what.empty()) {
                event->what = of.what;
            }
        }
    } else if (const auto latest = plan::event_to_judge(facts->events, whereabouts, readings)) {
        event = *latest;
    } else {
        return Error{ErrorCode::WrongUsage, "the journal has no move, repotting, damage or other event of " +
                                                plant.name +
                                                " between its measurements; say --event YYYY-MM-DD"};
    }

    if (plants->size() > 1) {
        // Every plant on its own clock would need a clock each; rates of one event are compared by calendar days.
        std::vector<ComparedSeries> list;
        const auto add = [&](const home::Plant& of, const std::string& group) -> Result<void> {
            const auto other = series_of(*store, of, series->measure);
            if (!other) {
                return other.error();
            }
            list.push_back({of.name, group, growth::readings_of(other->measured)});
            return {};
        };
        for (const auto* of : *plants) {
            if (const auto added = add(*of, companions->empty() ? "" : "met it"); !added) {
                return added.error();
            }
        }
        for (const auto* of : *companions) {
            if (const auto added = add(*of, "spared"); !added) {
                return added.error();
            }
        }
        return compare_plants(series->kind, event->date, list, growth::GrowthClock::calendar(),
                              words::ClockKind::Calendar);
    }

    GrowthQuestion question{.title = plant.name + ", " + std::string{home::to_string(series->measure)},
                            .kind = series->kind,
                            .measured = series->measured,
                            .event = event->date,
                            .event_word = event->what,
                            .others = plan::in_the_way_of(*event, happened)};
    std::ranges::replace(question.title, '_', ' ');
    for (std::size_t at = 1; at < asked_events.size(); ++at) {
        question.others.push_back({asked_events[at], ""});
    }
    auto from = std::min(readings.front().date, event->date);
    auto to = plan::last_foreseen(readings, event->date);
    std::vector<std::vector<growth::SeriesReading>> spared;
    for (const auto* of : *companions) {
        const auto other = series_of(*store, *of, series->measure);
        if (!other) {
            return other.error();
        }
        spared.push_back(growth::readings_of(other->measured));
        from = std::min(from, spared.back().front().date);
        to = std::max(to, spared.back().back().date);
    }
    if (auto clock = clock_for(plant, from, to)) {
        question.clock = std::move(*clock);
        question.clock_kind = words::ClockKind::Plant;
    }
    if (!spared.empty()) {
        question.spared = growth::SparedClock::of(series->kind, spared, event->date, question.clock);
        if (!question.spared) {
            return Error{ErrorCode::WrongUsage, "the spared plants have too few measurements of " +
                                                    std::string{home::to_string(series->measure)} +
                                                    " for a clock: 4 dates at least"};
        }
        question.clock_kind = words::ClockKind::Spared;
    }
    auto answer = answer_of(question);
    answer.json["plant"] = {{"id", plant.id}, {"name", plant.name}};
    answer.json["measure"] = home::to_string(series->measure);
    return answer;
}

} // namespace lathhouse::cli
