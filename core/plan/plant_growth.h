#pragma once

#include "core/growth/event_window.h"
#include "core/growth/recovery.h"
#include "core/growth/repeatability.h"
#include "core/home/measurement.h"
#include "core/plan/plant_clock.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// What kind of series a measure makes; nullopt for new leaves and flowers, which are no one growing thing.
std::optional<growth::SeriesKind> series_kind_of(home::MeasurementKind measure);

/// What happened to a plant that may show in its growth, by date; moves are among it.
std::vector<growth::DatedEvent> events_that_show(std::span<const home::Event> events, const Whereabouts& whereabouts);

/// The event to judge: the latest harm (cold night, spray, pests) that has 3 readings before it and one after;
/// without one the latest of any kind; without that the latest with a reading on either side. nullopt without any.
std::optional<growth::DatedEvent> event_to_judge(std::span<const home::Event> events, const Whereabouts& whereabouts,
                                                 std::span<const growth::SeriesReading> readings);

/// Those that stand in the way of judging that one: all others but moves, which go with the weather and are in the
/// plant's clock.
std::vector<growth::DatedEvent> in_the_way_of(const growth::DatedEvent& event, std::span<const growth::DatedEvent> all);

/// What the grower asks of a plant's growth besides the measure.
struct GrowthWish {
    std::optional<calendar::Date> event; ///< The day of what is to be judged; event_to_judge where nothing is said.
    /// Readings of the same measure of plants of its kind that were spared, by date, one series a plant. Fewer than
    /// SparedClock wants are passed by.
    std::vector<std::vector<growth::SeriesReading>> spared;
};

/// What one measure says of a plant's growth, and what happened to the plant meanwhile.
struct PlantGrowth {
    home::MeasurementKind measure;
    std::vector<growth::SeriesReading> readings; ///< By date; repeats of one date are their mean.
    std::vector<growth::DatedEvent> events;      ///< Those that may show in growth, by date; moves are not among them.
    std::optional<growth::DatedEvent> event;     ///< The one that is judged.
    growth::EventWindow window;                  ///< Around that one.
    std::optional<growth::Recovery> recovery;    ///< nullopt without such an event, and for what makes no series.
    bool by_plant_clock = false;                 ///< Else the calendar: where it stood is not known.
    bool by_spared = false;                      ///< The spared plants' clock runs on top of it.
    std::vector<growth::FittedDay> course;       ///< Of the model behind the recovery; may be empty.
    /// Error of one reading on the series' scale: of repeats, else of the fit; nullopt where neither says.
    std::optional<double> standard_error;
    bool error_by_repeats = false;
};

/// Measures that a plant has, those with most dates first.
std::vector<home::MeasurementKind> measures_of(std::span<const home::Measurement> measurements, home::PlantId plant);

/// The growth of a plant by one measure, around the event that was asked for.
///
/// measurements, events: of any plants, by date.
PlantGrowth growth_of(const home::Plant& plant, home::MeasurementKind measure,
                      std::span<const home::Measurement> measurements, std::span<const home::Event> events,
                      const Whereabouts& whereabouts, const home::SpotClimate& spots, const home::NightLog& log,
                      const GrowthWish& wish = {});

/// The readings of one measure of a plant, by date; values that its kind of series cannot have are left out.
std::vector<growth::Measured> measured_of(std::span<const home::Measurement> measurements, home::PlantId plant,
                                          home::MeasurementKind measure);

} // namespace lathhouse::plan
