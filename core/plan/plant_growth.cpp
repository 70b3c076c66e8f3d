#include "core/plan/plant_growth.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <string_view>

namespace lathhouse::plan {

namespace {

using home::EventKind;
using home::MeasurementKind;

constexpr std::string_view kMoved = "moved";
/// What may show in growth, so that it can be asked about or be in the way.
constexpr std::array kShows{EventKind::Moved,     EventKind::Repotted,       EventKind::Pruned,    EventKind::Treated,
                            EventKind::ColdNight, EventKind::ChemicalDamage, EventKind::PestFound, EventKind::Divided,
                            EventKind::PlantedOut};
/// Harm comes before care and moves where several are to be judged.
constexpr std::array kHarms{EventKind::ColdNight, EventKind::ChemicalDamage, EventKind::PestFound};

std::vector<growth::DatedEvent> events_of_kinds(std::span<const home::Event> events, const Whereabouts& whereabouts,
                                                std::span<const EventKind> kinds)
{
    std::vector<growth::DatedEvent> shown;
    for (const auto& event : events) {
        if (std::ranges::find(kinds, event.kind) != kinds.end() && whereabouts.concerns(event)) {
            std::string word{home::to_string(event.kind)};
            std::ranges::replace(word, '_', ' ');
            shown.push_back({event.happened, std::move(word)});
        }
    }
    std::ranges::stable_sort(shown, {}, &growth::DatedEvent::date);
    return shown;
}

const growth::DatedEvent* latest_that_shows(const std::vector<growth::DatedEvent>& events,
                                            std::span<const growth::SeriesReading> readings, int least)
{
    for (auto event = events.rbegin(); event != events.rend(); ++event) {
        const auto before = std::ranges::count_if(readings, [&](const auto& of) { return of.date <= event->date; });
        if (before >= least && before < static_cast<std::ptrdiff_t>(readings.size())) {
            return &*event;
        }
    }
    return nullptr;
}

} // namespace

std::vector<growth::DatedEvent> events_that_show(std::span<const home::Event> events, const Whereabouts& whereabouts)
{
    return events_of_kinds(events, whereabouts, kShows);
}

std::optional<growth::DatedEvent> event_to_judge(std::span<const home::Event> events, const Whereabouts& whereabouts,
                                                 std::span<const growth::SeriesReading> readings)
{
    const auto harms = events_of_kinds(events, whereabouts, kHarms);
    const auto all = events_that_show(events, whereabouts);
    const auto* event = latest_that_shows(harms, readings, static_cast<int>(growth::kLeastBefore));
    for (const int least : {static_cast<int>(growth::kLeastBefore), 1}) {
        if (event == nullptr) {
            event = latest_that_shows(all, readings, least);
        }
    }
    return event == nullptr ? std::nullopt : std::optional{*event};
}

std::vector<growth::DatedEvent> in_the_way_of(const growth::DatedEvent& event, std::span<const growth::DatedEvent> all)
{
    std::vector<growth::DatedEvent> others;
    std::ranges::copy_if(all, std::back_inserter(others), [&](const growth::DatedEvent& of) {
        return !(of == event) && of.what != kMoved;
    });
    return others;
}

std::optional<growth::SeriesKind> series_kind_of(MeasurementKind measure)
{
    switch (measure) {
    case MeasurementKind::Height:
    case MeasurementKind::Width:
    case MeasurementKind::LongestLeaf:
    case MeasurementKind::Stem: return growth::SeriesKind::Size;
    case MeasurementKind::Leaves: return growth::SeriesKind::Count;
    case MeasurementKind::GreenCover: return growth::SeriesKind::Share;
    case MeasurementKind::YellowShare: return growth::SeriesKind::Yellow;
    case MeasurementKind::NewLeaves:
    case MeasurementKind::Flowers: break;
    }
    return std::nullopt;
}

std::vector<MeasurementKind> measures_of(std::span<const home::Measurement> measurements, home::PlantId plant)
{
    std::map<MeasurementKind, int> counts;
    for (const auto& of : measurements) {
        if (of.plant == plant) {
            ++counts[of.kind];
        }
    }
    std::vector<MeasurementKind> measures;
    for (const auto& [measure, count] : counts) {
        measures.push_back(measure);
    }
    std::ranges::stable_sort(measures, std::greater{}, [&](MeasurementKind of) { return counts[of]; });
    return measures;
}

std::vector<growth::Measured> measured_of(std::span<const home::Measurement> measurements, home::PlantId plant,
                                          MeasurementKind measure)
{
    const auto kind = series_kind_of(measure);
    std::vector<growth::Measured> measured;
    for (const auto& of : measurements) {
        if (of.plant != plant || of.kind != measure) {
            continue;
        }
        for (const double value : of.repeats) {
            if (!kind || !growth::fault_of(*kind, value)) { // A height of 0 has no logarithm.
                measured.push_back({of.measured, value});
            }
        }
    }
    return measured;
}

PlantGrowth growth_of(const home::Plant& plant, MeasurementKind measure,
                      std::span<const home::Measurement> measurements, std::span<const home::Event> events,
                      const Whereabouts& whereabouts, const home::SpotClimate& spots, const home::NightLog& log,
                      const GrowthWish& wish)
{
    PlantGrowth shown{.measure = measure, .readings = {}, .events = {}, .event = {}, .window = {}, .recovery = {},
                      .course = {}, .standard_error = {}};
    const auto kind = series_kind_of(measure);
    const auto measured = measured_of(measurements, plant.id, measure);
    shown.readings = growth::readings_of(measured);
    const auto all = events_that_show(events, whereabouts);
    for (const auto& of : all) {
        if (of.what != kMoved) {
            shown.events.push_back(of);
        }
    }
    if (!kind || shown.readings.empty()) {
        return shown;
    }
    if (const auto repeats = growth::repeatability_of(*kind, measured)) {
        shown.standard_error = repeats->standard_error;
        shown.error_by_repeats = true;
    }
    auto event = event_to_judge(events, whereabouts, shown.readings);
    if (wish.event) {
        const auto named = std::ranges::find(all, *wish.event, &growth::DatedEvent::date);
        event = named != all.end() ? *named : growth::DatedEvent{*wish.event, ""};
    }
    if (!event) {
        return shown;
    }
    shown.event = *event;
    shown.window = growth::window_of(shown.readings, event->date, in_the_way_of(*event, all));
    auto clock = growth::GrowthClock::calendar();
    auto from = std::min(shown.readings.front().date, event->date);
    auto to = last_foreseen(shown.readings, event->date);
    for (const auto& of : wish.spared) {
        if (!of.empty()) {
            from = std::min(from, of.front().date);
            to = std::max(to, of.back().date);
        }
    }
    if (auto own = clock_of(plant, whereabouts, spots, log, from, to)) {
        clock = std::move(*own);
        shown.by_plant_clock = true;
    }
    const auto spared = wish.spared.empty() ? std::nullopt
                                            : growth::SparedClock::of(*kind, wish.spared, event->date, clock);
    shown.by_spared = spared.has_value();
    const auto* beside = spared ? &*spared : nullptr;
    constexpr int kStepDays = 3;
    shown.recovery = growth::recovery_of(*kind, shown.window.readings, event->date, clock, beside);
    shown.course = growth::fitted_course(*kind, shown.window.readings, event->date, clock, kStepDays, beside);
    if (!shown.standard_error) {
        shown.standard_error = shown.recovery->standard_error;
    }
    return shown;
}

} // namespace lathhouse::plan
