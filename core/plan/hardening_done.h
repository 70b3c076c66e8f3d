#pragma once

#include "core/home/history.h"
#include "core/plan/hardening.h"

#include <span>
#include <vector>

namespace lathhouse::plan {

/// Days of hardening that a plant has behind it on the morning of `today`: those on which an hour outdoors was ticked in
/// the round since it was moved last. After a week without one (common practice, no source) it begins anew. What was not
/// ticked was not done.
int days_hardened(home::PlantId plant, std::span<const home::Event> events, calendar::Date today);

/// The ladders with those days behind them: a plan that is made afresh each day would begin each with its first step. The
/// next step of a ladder out is due today, or so that the last ends before the first night out, whichever is later; what
/// is done keeps its place before it. Ladders in are left as they are.
std::vector<Ladder> with_days_hardened(std::vector<Ladder> ladders, std::span<const home::Event> events,
                                       calendar::Date today);

/// What comes after the carry of ladders in that were gone, from the day on which a plant was moved in: days apart, looks and
/// stepping down. A plan that is made afresh finds the plant indoors and has no ladder for it any more. A plant that was
/// carried out again since has none.
std::vector<Ladder> ladders_behind(const home::Household& household, const home::SpotClimate& climate,
                                   std::span<const home::Event> events, calendar::Date today);

/// As held_up, for what is still to come of a ladder: days behind it hold nothing up any more.
Ladder held_up_from(const Ladder& ladder, const home::Plant& plant, const home::Spot& to,
                    const home::SpotClimate& climate, const home::NightLog& forecasts, calendar::Date today);

/// The ladders of a plan with the days behind them, held up by the forecasts that are known.
std::vector<Ladder> ladders_ahead(const home::Household& household, const home::SpotClimate& climate, const YearPlan& plan,
                                  std::span<const home::Event> events, const home::NightLog& forecasts, calendar::Date today);

} // namespace lathhouse::plan
