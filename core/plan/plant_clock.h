#pragma once

#include "core/growth/growth_clock.h"
#include "core/growth/series.h"
#include "core/growth/temperature_response.h"
#include "core/home/spot_climate.h"
#include "core/plan/whereabouts.h"

#include <optional>

namespace lathhouse::plan {

/// What a plant's growth answers to.
struct GrowsBy {
    growth::CardinalTemperatures cardinal;
    DailyLight good; ///< In which it thrives.
};
/// Of no kind in particular: a plant of warm rooms and summers, 8, 25 and 35 C, 10 mol a day. Common practice,
/// no source.
GrowsBy grows_by_usual();
GrowsBy grows_by(const plants::PlantKind& kind);
/// Its kind's temperatures with the plant's own limit of heat and its own light; those of no kind where the kind
/// is the grower's own word.
GrowsBy grows_by(const home::Plant& plant);

/// How much a day counts on the growth clock: f(T; base, optimum, maximum) over the day's hours x
/// (1 - exp(-light / good)), 0..1.
double clock_step(const GrowsBy& by, const home::SpotDay& day);

/// The clock of the usual year at a spot, for the dates from `from` to `to`.
growth::GrowthClock clock_at(const GrowsBy& by, const home::SpotClimate& spots, home::SpotId spot,
                             calendar::Date from, calendar::Date to);
/// The clock of the open air at a place.
growth::GrowthClock clock_in_the_open(const GrowsBy& by, const climate::PlaceClimate& climate, calendar::Date from,
                                      calendar::Date to);
/// The clock of a plant where it really stood, by its moves, on days as they usually are there; a night whose low
/// was read at that spot counts with that low, and with the high where it was read too. A day on which nobody
/// knows where it stood counts as at its next known spot, else its last. nullopt where no spot is known at all.
std::optional<growth::GrowthClock> clock_of(const home::Plant& plant, const Whereabouts& whereabouts,
                                            const home::SpotClimate& spots, const home::NightLog& log,
                                            calendar::Date from, calendar::Date to);

/// Last date to which a clock must reach so that the next readings can be foreseen: 21 times the widest of the last
/// five gaps between readings ahead, at most ten years.
calendar::Date last_foreseen(const std::vector<growth::SeriesReading>& readings, calendar::Date event);

} // namespace lathhouse::plan
