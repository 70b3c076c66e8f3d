#include "core/plan/year_plan.h"

#include "core/plan/household_moves.h"

namespace lathhouse::plan {

using calendar::DayOfYear;
using calendar::Days;

bool evening_allowed(const climate::SeasonChances& season, calendar::Date evening, Probability risk)
{
    // The night that begins on this evening is the night of the next date; on the evening of the turn itself
    // the nights to come belong to the next season.
    const auto today = DayOfYear::of(evening);
    const auto tomorrow = DayOfYear::of(evening + Days{1});
    const bool before_turn = season.turn().season_index(tomorrow) != 0;
    return (before_turn && season.after(today) <= risk) || season.on_or_before(tomorrow) <= risk;
}

std::vector<char> admissible_evenings(const home::Plant& plant, const home::Spot& spot,
                                      const ColdChances& chances, calendar::Date from, Probability risk)
{
    const auto& damage = chances.season(plant.lines.damage_begins, spot.offset);
    const auto& lethal = chances.season(plant.lines.lethal, spot.offset);
    const auto lethal_risk = Probability::clamped(risk.fraction() / 10.0);
    std::vector<char> allowed(kNightsOfAPlan);
    for (std::size_t night = 0; night < allowed.size(); ++night) {
        const auto evening = from + Days{static_cast<int>(night)};
        allowed[night] =
            evening_allowed(damage, evening, risk) && evening_allowed(lethal, evening, lethal_risk);
    }
    return allowed;
}

OutdoorWindow outdoor_window(const home::Plant& plant, const home::Spot& spot, const ColdChances& chances,
                             Probability risk)
{
    const auto& damage = chances.season(plant.lines.damage_begins, spot.offset);
    const auto& lethal = chances.season(plant.lines.lethal, spot.offset);
    const auto lethal_risk = Probability::clamped(risk.fraction() / 10.0);
    const auto& turn = damage.turn();
    const auto allowed = [&](int season_index) { // Evening of that place; the night is the one after.
        const auto evening = turn.day_at(season_index);
        const auto night = turn.day_at(season_index + 1);
        const auto by = [&](const climate::SeasonChances& season, Probability limit) {
            return (season_index != DayOfYear::kCount - 1 && season.after(evening) <= limit) ||
                   season.on_or_before(night) <= limit;
        };
        return by(damage, risk) && by(lethal, lethal_risk);
    };
    // From the evening of the turn backwards to the first forbidden one, and forwards.
    const int turn_evening = DayOfYear::kCount - 1;
    if (!allowed(turn_evening)) {
        return {OutdoorWindow::State::Never, std::nullopt, std::nullopt};
    }
    int out = turn_evening;
    while (out > 0 && allowed(out - 1)) {
        --out;
    }
    if (out == 0) {
        return {OutdoorWindow::State::AllYear, std::nullopt, std::nullopt};
    }
    int in = 0;
    while (in < out && allowed(in)) {
        ++in;
    }
    return {OutdoorWindow::State::Ordinary, turn.day_at(out), turn.day_at(in)};
}

YearPlan plan_year(const home::Household& household, const climate::PlaceClimate& climate,
                   const ColdChances& chances, calendar::Date from, Probability risk, Effort effort,
                   const PlanWishes& wishes)
{
    const auto started = std::chrono::steady_clock::now();
    YearPlan plan{from, risk, {}, 0.0, {}, {}, {}};
    if (household.spots.empty() || household.plants.empty()) {
        return plan;
    }
    const HouseholdMoves moves{household, climate, chances, from, risk, wishes};
    const MoveSolution solution = solve_moves(moves.problem(), effort);
    std::vector<MovePath> paths;
    for (std::size_t p = 0; p < household.plants.size(); ++p) {
        paths.push_back(moves.at_real_spots(p, solution.paths[p]));
    }
    for (std::size_t p = 0; p < household.plants.size(); ++p) {
        plan.plants.push_back(tell_year(moves, p, paths));
    }
    plan.breaches = breaches_of(moves, paths);
    plan.refusals = refusals_of(moves, paths);
    plan.gap = solution.gap();
    plan.solve_time = std::chrono::steady_clock::now() - started;
    return plan;
}

} // namespace lathhouse::plan
