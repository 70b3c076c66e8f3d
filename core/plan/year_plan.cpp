#include "core/plan/year_plan.h"

#include "core/plan/stress.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace lathhouse::plan {
namespace {

using calendar::DayOfYear;
using calendar::Days;

// What cannot be is dearer than anything that can, in this order, so that a household without any good place
// still gets the least bad plan, and is told.
constexpr float kColdBreach = 1000.0F;
constexpr float kReachBreach = 300.0F;
constexpr float kCrowdBreach = 60.0F;
constexpr int kMostRounds = 12;
constexpr std::size_t kLeastStay = kLeastNightsOfAStay;
constexpr std::size_t kNights = kNightsOfAPlan;

/// Nights x spots of one plant.
using Costs = std::vector<float>;
/// Spot (as an index into the household's spots) of each night.
using Path = std::vector<std::uint16_t>;

bool evening_allowed(const climate::SeasonChances& season, calendar::Date evening, Probability risk)
{
    // The night that begins on this evening is the night of the next date; on the evening of the turn itself
    // the nights to come belong to the next season.
    const auto today = DayOfYear::of(evening);
    const auto tomorrow = DayOfYear::of(evening + Days{1});
    const bool before_turn = season.turn().season_index(tomorrow) != 0;
    return (before_turn && season.after(today) <= risk) || season.on_or_before(tomorrow) <= risk;
}

struct Instance {
    const home::Household& household;
    const climate::PlaceClimate& climate;
    const ColdChances& chances;
    calendar::Date from;
    Probability risk;
    std::size_t spots;
    std::vector<Costs> costs;               // [plant][night * spots + spot]
    std::vector<std::vector<char>> allowed; // [plant * spots + spot][night], outdoors only
    std::vector<float> least;               // [plant] sum over nights of the cheapest admissible spot

    std::size_t plants() const { return household.plants.size(); }
    calendar::Date date(std::size_t night) const { return from + Days{static_cast<int>(night)}; }
};

Costs costs_of(Instance& instance, const home::Plant& plant, std::size_t plant_index)
{
    Costs costs(kNights * instance.spots);
    for (std::size_t s = 0; s < instance.spots; ++s) {
        const auto& spot = instance.household.spots[s];
        auto& allowed = instance.allowed[plant_index * instance.spots + s];
        if (home::is_outdoors(spot.kind)) {
            allowed = admissible_evenings(plant, spot, instance.chances, instance.from, instance.risk);
        }
        const bool pinned_elsewhere = plant.pinned_spot && *plant.pinned_spot != spot.id;
        for (std::size_t night = 0; night < kNights; ++night) {
            float& cost = costs[night * instance.spots + s];
            cost = static_cast<float>(
                stress_of(plant, spot, instance.climate, instance.chances.nights(), instance.date(night)));
            if (pinned_elsewhere) {
                cost += 10.0F * kColdBreach;
            }
            if (!allowed.empty() && !allowed[night]) {
                cost += kColdBreach;
            }
            if (plant.hazardous && spot.in_reach) {
                cost += kReachBreach;
            }
        }
    }
    return costs;
}

/// Cheapest path of one plant, given what the others take.
struct Step {
    Path path;
    double cost;
};
Step cheapest_path(const Instance& instance, std::size_t plant_index, const std::vector<int>* taken)
{
    const auto& plant = instance.household.plants[plant_index];
    const auto& spots = instance.household.spots;
    const auto latitude = instance.climate.position.latitude;
    const std::size_t n = instance.spots;
    const auto cost_of = [&](std::size_t night, std::size_t s) {
        const bool full = taken != nullptr && (*taken)[night * n + s] >= spots[s].capacity;
        return static_cast<double>(instance.costs[plant_index][night * n + s]) + (full ? kCrowdBreach : 0.0F);
    };

    // A state is a spot and the nights already spent there, the last meaning kLeastStay and more: only from
    // there a plant may be carried on. The first night's spot counts as stayed where the plant stands there
    // already.
    constexpr std::size_t kSettled = kLeastStay - 1;
    constexpr double kNever = std::numeric_limits<double>::infinity();
    std::vector<double> best(n * kLeastStay, kNever);
    std::vector<double> next(n * kLeastStay);
    std::vector<std::uint16_t> came_from(kNights * n); // Spot before, of an arrival.
    std::vector<char> settled_now(kNights * n);        // The settled state was reached on this night.
    std::vector<double> moves(n * n);
    const auto* now = plant.spot ? instance.household.spot(*plant.spot) : nullptr;
    for (std::size_t s = 0; s < n; ++s) {
        const bool arrives = now != nullptr && now->id != spots[s].id;
        const double carried = arrives ? move_cost(plant, *now, spots[s], latitude, instance.from) : 0.0;
        best[s * kLeastStay + (arrives ? 0 : kSettled)] = cost_of(0, s) + carried;
    }
    for (std::size_t night = 1; night < kNights; ++night) {
        if (night % 7 == 1) { // The step in light changes slowly: a week's moves share one table.
            for (std::size_t from = 0; from < n; ++from) {
                for (std::size_t to = 0; to < n; ++to) {
                    moves[from * n + to] =
                        from == to ? kNever
                                   : move_cost(plant, spots[from], spots[to], latitude, instance.date(night));
                }
            }
        }
        for (std::size_t s = 0; s < n; ++s) {
            const double* here = &best[s * kLeastStay];
            double* then = &next[s * kLeastStay];
            const double cost = cost_of(night, s);
            then[0] = kNever;
            for (std::size_t from = 0; from < n; ++from) {
                if (const double through = best[from * kLeastStay + kSettled] + moves[from * n + s];
                    through < then[0]) {
                    then[0] = through;
                    came_from[night * n + s] = static_cast<std::uint16_t>(from);
                }
            }
            then[0] += cost;
            for (std::size_t age = 1; age < kSettled; ++age) {
                then[age] = here[age - 1] + cost;
            }
            settled_now[night * n + s] = here[kSettled - 1] < here[kSettled];
            then[kSettled] = std::min(here[kSettled - 1], here[kSettled]) + cost;
        }
        std::swap(best, next);
    }
    const auto last = std::ranges::min_element(best);
    Step step{Path(kNights), *last};
    auto s = static_cast<std::size_t>(last - best.begin()) / kLeastStay;
    auto age = static_cast<std::size_t>(last - best.begin()) % kLeastStay;
    for (std::size_t night = kNights; night-- > 0;) {
        step.path[night] = static_cast<std::uint16_t>(s);
        if (age == 0) {
            s = came_from[night * n + s];
            age = kSettled;
        } else if (age < kSettled || settled_now[night * n + s]) {
            --age;
        }
    }
    return step;
}

void occupy(std::vector<int>& taken, const Path& path, std::size_t spots, int change)
{
    for (std::size_t night = 0; night < kNights; ++night) {
        taken[night * spots + path[night]] += change;
    }
}

/// Places the plants one after another, those that lose most by not having their own best year first, and
/// places each anew while that makes anything cheaper.
std::vector<Step> place_all(const Instance& instance, const std::vector<Step>& alone)
{
    const std::size_t count = instance.plants();
    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::vector<double> need(count);
    for (std::size_t p = 0; p < count; ++p) {
        // What a year at its second choice would cost more: a plant that cares little can wait.
        std::vector<int> first_choice_full(kNights * instance.spots, 0);
        for (std::size_t night = 0; night < kNights; ++night) {
            first_choice_full[night * instance.spots + alone[p].path[night]] =
                std::numeric_limits<int>::max();
        }
        need[p] = cheapest_path(instance, p, &first_choice_full).cost - alone[p].cost;
    }
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return need[a] > need[b]; });

    std::vector<int> taken(kNights * instance.spots, 0);
    std::vector<Step> placed(count);
    for (const std::size_t p : order) {
        placed[p] = cheapest_path(instance, p, &taken);
        occupy(taken, placed[p].path, instance.spots, +1);
    }
    for (int round = 0; round < kMostRounds; ++round) {
        bool changed = false;
        for (const std::size_t p : order) {
            occupy(taken, placed[p].path, instance.spots, -1);
            Step again = cheapest_path(instance, p, &taken);
            if (again.path != placed[p].path) {
                placed[p] = std::move(again);
                changed = true;
            }
            occupy(taken, placed[p].path, instance.spots, +1);
        }
        if (!changed) {
            break;
        }
    }
    for (std::size_t p = 0; p < count;
         ++p) { // The others have moved since: count each path as it stands now.
        occupy(taken, placed[p].path, instance.spots, -1);
        placed[p].cost = cheapest_path(instance, p, &taken).cost;
        occupy(taken, placed[p].path, instance.spots, +1);
    }
    return placed;
}

/// Chances of a harmful night at the two ends of an outdoor stay.
void fill_risks(Stay& stay, const home::Plant& plant, const home::Spot& spot, const ColdChances& chances)
{
    const auto& season = chances.season(plant.lines.damage_begins, spot.offset);
    const auto first_night = DayOfYear::of(stay.from + Days{1});
    const auto last_night = DayOfYear::of(stay.to + Days{1});
    const int nights = calendar::days_between(stay.from, stay.to) + 1;
    const int to_turn = DayOfYear::kCount - 1 - season.turn().season_index(first_night);
    if (nights > to_turn) {
        stay.risk_out = season.after(DayOfYear::of(stay.from));
        stay.risk_in = season.on_or_before(last_night);
        return;
    }
    const auto within =
        chances.nights().chance_within(first_night, nights, plant.lines.damage_begins, spot.offset);
    (season.turn().season_index(first_night) < DayOfYear::kCount / 2 ? stay.risk_in : stay.risk_out) = within;
}

Reason reason_for(const Instance& instance, std::size_t p, const Path& path, const Path& alone,
                  std::size_t night)
{
    const auto& plant = instance.household.plants[p];
    const auto& spots = instance.household.spots;
    const auto& here = spots[path[night]];
    if (plant.pinned_spot == here.id) {
        return {ReasonKind::PinnedThere, std::nullopt, std::nullopt};
    }
    if (night == 0 && plant.spot == here.id) {
        return {ReasonKind::StandsThere, std::nullopt, std::nullopt};
    }
    const auto allowed = [&](std::size_t spot, std::size_t at) {
        const auto& evenings = instance.allowed[p * instance.spots + spot];
        return evenings.empty() || evenings[at];
    };
    const auto deciding = [&](const home::Spot& spot, std::size_t at) -> Reason {
        // The damage line decides unless only the lethal line, with a tenth of the risk, forbids that
        // evening.
        const auto damage = plant.lines.damage_begins;
        const bool by_damage =
            !evening_allowed(instance.chances.season(damage, spot.offset), instance.date(at), instance.risk);
        return by_damage
                   ? Reason{{}, damage, instance.risk}
                   : Reason{{}, plant.lines.lethal, Probability::clamped(instance.risk.fraction() / 10.0)};
    };
    const bool was_out = night > 0 && home::is_outdoors(spots[path[night - 1]].kind);
    if (home::is_outdoors(here.kind) && !was_out) {
        if (night > 0 && !allowed(path[night], night - 1)) {
            Reason reason = deciding(here, night - 1);
            reason.kind = ReasonKind::NightsAllow;
            return reason;
        }
        return {ReasonKind::BetterOutside, std::nullopt, std::nullopt};
    }
    if (!home::is_outdoors(here.kind) && was_out) {
        if (!allowed(path[night - 1], night)) {
            Reason reason = deciding(spots[path[night - 1]], night);
            reason.kind = ReasonKind::NightsForbid;
            return reason;
        }
        return {ReasonKind::NightsTooCool, plant.lines.safe_night, std::nullopt};
    }
    return {path[night] == alone[night] ? ReasonKind::BetterLight : ReasonKind::MakesRoom, std::nullopt,
            std::nullopt};
}

PlantYear year_of(const Instance& instance, std::size_t p, const Path& path, const Path& alone)
{
    const auto& plant = instance.household.plants[p];
    PlantYear year{plant.id, {}};
    for (std::size_t night = 0; night < kNights; ++night) {
        if (night > 0 && path[night] == path[night - 1]) {
            year.stays.back().to = instance.date(night);
            continue;
        }
        year.stays.push_back({instance.household.spots[path[night]].id, instance.date(night),
                              instance.date(night), reason_for(instance, p, path, alone, night), std::nullopt,
                              std::nullopt});
    }
    for (auto& stay : year.stays) {
        const auto& spot = *instance.household.spot(stay.spot);
        if (home::is_outdoors(spot.kind)) {
            fill_risks(stay, plant, spot, instance.chances);
        }
    }
    return year;
}

void note_breaches(const Instance& instance, const std::vector<Step>& placed, std::vector<Breach>& breaches)
{
    std::vector<int> taken(kNights * instance.spots, 0);
    const auto note = [&](BreachKind kind, std::size_t p, std::size_t s, std::size_t night) {
        const auto plant = instance.household.plants[p].id;
        const auto spot = instance.household.spots[s].id;
        const auto date = instance.date(night);
        for (auto& known : breaches) {
            if (known.kind == kind && known.plant == plant && known.spot == spot &&
                known.to + Days{1} == date) {
                known.to = date;
                return;
            }
        }
        breaches.push_back({kind, plant, spot, date, date});
    };
    for (std::size_t p = 0; p < placed.size(); ++p) {
        const auto& plant = instance.household.plants[p];
        for (std::size_t night = 0; night < kNights; ++night) {
            const std::size_t s = placed[p].path[night];
            const auto& spot = instance.household.spots[s];
            const auto& allowed = instance.allowed[p * instance.spots + s];
            if (!allowed.empty() && !allowed[night]) {
                note(BreachKind::ColdNights, p, s, night);
            }
            if (plant.hazardous && spot.in_reach) {
                note(BreachKind::InReach, p, s, night);
            }
            if (++taken[night * instance.spots + s] > spot.capacity) {
                note(BreachKind::OverCapacity, p, s, night);
            }
        }
    }
}

} // namespace

std::vector<char> admissible_evenings(const home::Plant& plant, const home::Spot& spot,
                                      const ColdChances& chances, calendar::Date from, Probability risk)
{
    const auto& damage = chances.season(plant.lines.damage_begins, spot.offset);
    const auto& lethal = chances.season(plant.lines.lethal, spot.offset);
    const auto lethal_risk = Probability::clamped(risk.fraction() / 10.0);
    std::vector<char> allowed(kNights);
    for (std::size_t night = 0; night < kNights; ++night) {
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
                   const ColdChances& chances, calendar::Date from, Probability risk)
{
    const auto started = std::chrono::steady_clock::now();
    Instance instance{household, climate, chances, from, risk, household.spots.size(), {}, {}, {}};
    YearPlan plan{from, risk, {}, 0.0, {}, {}};
    if (household.spots.empty() || household.plants.empty()) {
        return plan;
    }
    instance.allowed.resize(household.plants.size() * instance.spots);
    double floor = 0.0;
    double bound = 0.0;
    std::vector<Step> alone;
    for (std::size_t p = 0; p < household.plants.size(); ++p) {
        instance.costs.push_back(costs_of(instance, household.plants[p], p));
        for (std::size_t night = 0; night < kNights; ++night) {
            const auto first =
                instance.costs[p].begin() + static_cast<std::ptrdiff_t>(night * instance.spots);
            floor += *std::min_element(first, first + static_cast<std::ptrdiff_t>(instance.spots));
        }
        alone.push_back(cheapest_path(instance, p, nullptr));
        bound += alone.back().cost;
    }
    const auto placed = place_all(instance, alone);
    double cost = 0.0;
    for (std::size_t p = 0; p < household.plants.size(); ++p) {
        cost += placed[p].cost;
        plan.plants.push_back(year_of(instance, p, placed[p].path, alone[p].path));
    }
    note_breaches(instance, placed, plan.breaches);
    plan.gap = cost > floor ? std::max(0.0, (cost - bound) / (cost - floor)) : 0.0;
    plan.solve_time = std::chrono::steady_clock::now() - started;
    return plan;
}

} // namespace lathhouse::plan
