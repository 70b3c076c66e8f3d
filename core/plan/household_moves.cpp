#include "core/plan/household_moves.h"

#include "core/base/side_by_side.h"
#include "core/home/seedling.h"
#include "core/plan/stress.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

namespace lathhouse::plan {
namespace {

/// A night beside others of a plant that ought to stand apart, where some spot is apart: dearer than a carry, cheaper than
/// nowhere. Common practice, no source.
constexpr float kNotApart = kNowhereBase;
/// A night of a clean plant at a spot where pests are found or may be, to which it would be carried. Common practice, no
/// source.
constexpr float kCarriedToPests = 1.0F;
/// A night below its safe one of a plant from a tray that is not old enough: dearer than a carry, cheaper than nowhere. Common
/// practice, no source.
constexpr float kTooCoolForYoung = 8.0F;
/// Longest hardening (days_of_hardening): so long before the first night out a plant spends hours among the others.
constexpr int kLongestHardening = 14;

bool runs_on(const Isolation& isolation, calendar::Date evening)
{
    return isolation.from <= evening && evening <= isolation.to;
}

} // namespace

HouseholdMoves::HouseholdMoves(const home::Household& household, const climate::PlaceClimate& climate,
                               const ColdChances& chances, calendar::Date from, Probability risk,
                               const PlanWishes& wishes)
    : household_(&household), chances_(&chances), from_(from), risk_(risk), wishes_(&wishes),
      some_spot_apart_(std::ranges::any_of(
          household.spots, [](const home::Spot& spot) { return spot.apart && spot.capacity > 0; }))
{
    const auto light = light_of_spots(household.spots, climate);
    make_zones(light);
    for (const auto& plant : household.plants) {
        problem_.size.push_back(1);
        problem_.trouble.push_back(static_cast<float>(trouble_of_carrying(plant)));
    }
    chances.prepare(household);
    fill_alike(StressOfYear{household, climate, chances.nights(), light, from});
    problem_.start.resize(problem_.plants);
    problem_.cost.resize(problem_.plants * kNightsOfAPlan * problem_.spots);
    for (std::size_t p = 0; p < problem_.plants; ++p) {
        for (std::size_t s = 0; s < real_spots(); ++s) {
            if (household.plants[p].spot == spot(s).id) {
                problem_.start[p] = s;
            }
        }
    }
    for (const auto& isolation : wishes.isolated) {
        const auto plant = std::ranges::find(household.plants, isolation.plant, &home::Plant::id);
        if (plant == household.plants.end()) {
            continue;
        }
        const auto start = problem_.start[static_cast<std::size_t>(plant - household.plants.begin())];
        if (start && !spot(*start).apart) {
            pests_at_.emplace_back(*start, isolation);
        }
    }
    if (std::ranges::any_of(household.plants, [from](const home::Plant& of) { return home::is_young(of, from, false); })) {
        usual_.emplace(household, climate);
    }
    side_by_side(problem_.plants, [&](std::size_t p) {
        fill_plant(p);
        keep_to_accepted(p);
    });
}

void HouseholdMoves::make_zones(const std::vector<LightYear>& light)
{
    const std::size_t real = household_->spots.size();
    spots_.resize(real);
    std::iota(spots_.begin(), spots_.end(), std::size_t{0});
    const auto zone_at = [&](std::size_t s) { return zone_of(household_->spots[s], light[s]); };
    std::ranges::stable_sort(spots_, {}, zone_at);

    problem_.plants = household_->plants.size();
    problem_.nights = kNightsOfAPlan;
    problem_.spots = (real + kSpotsAtOnce) / kSpotsAtOnce * kSpotsAtOnce; // With "nowhere", filled up.
    problem_.least_stay = kLeastNightsOfAStay;
    std::vector<MoveZone> zones;
    for (std::size_t s = 0; s < real; ++s) {
        const MoveZone zone = zone_at(spots_[s]);
        if (zones.empty() || zones.back() != zone) {
            zones.push_back(zone);
        }
        problem_.zone.push_back(zones.size() - 1);
        problem_.capacity.push_back(spot(s).capacity);
    }
    problem_.zone.resize(problem_.nowhere(), zones.size() - 1);
    problem_.zone.push_back(zones.size());
    problem_.capacity.resize(problem_.spots, 0);
    problem_.zones = zones.size() + 1;
    problem_.step.assign(problem_.zones * problem_.zones, 1.0F); // To and from "nowhere": as good as any.
    for (std::size_t a = 0; a < zones.size(); ++a) {
        for (std::size_t b = 0; b < zones.size(); ++b) {
            problem_.step[a * problem_.zones + b] = static_cast<float>(step_between(zones[a], zones[b]));
        }
    }
}

void HouseholdMoves::fill_alike(const StressOfYear& stress)
{
    // A thousand plants are of some hundred kinds: what is the same for all of a kind is worked out once.
    std::map<std::tuple<StressOfYear::Needs, double, double>, std::size_t> known;
    std::vector<std::size_t> first_of;
    for (std::size_t p = 0; p < problem_.plants; ++p) {
        const auto& plant = household_->plants[p];
        const auto [found, is_new] =
            known.try_emplace({StressOfYear::needs_of(plant), plant.lines.damage_begins.degrees(),
                               plant.lines.lethal.degrees()},
                              first_of.size());
        if (is_new) {
            first_of.push_back(p);
        }
        alike_.push_back(found->second);
    }
    const std::size_t real = real_spots();
    allowed_.resize(first_of.size() * real);
    stress_.resize(first_of.size());
    side_by_side(first_of.size(), [&](std::size_t kind) {
        const std::size_t p = first_of[kind];
        for (std::size_t s = 0; s < real; ++s) {
            if (home::is_outdoors(spot(s).kind)) {
                allowed_[kind * real + s] =
                    admissible_evenings(household_->plants[p], spot(s), *chances_, from_, risk_);
            }
        }
        stress_[kind] = stress.of_year(p, spots_);
    });
}

void HouseholdMoves::fill_plant(std::size_t p)
{
    const std::size_t real = real_spots();
    for (std::size_t night = 0; night < kNightsOfAPlan; ++night) {
        const auto evening = date(night);
        const auto pin = pinned(p, evening);
        const auto* apart = isolated(p, evening);
        const bool some_apart = some_isolated(evening);
        float* cost = &problem_.cost[(p * kNightsOfAPlan + night) * problem_.spots];
        for (std::size_t s = 0; s < real; ++s) {
            // Where a hand has pinned the plant it stays, cold or not; the breach is named.
            const bool open = pin ? *pin == spot(s).id : !closed(apart, some_apart, p, s, night) && allowed(p, s, night);
            cost[s] = open ? felt(p, night, s) + beside_pests(apart, p, s, evening) + too_cool_for_young(p, s, evening)
                           : kForbidden;
        }
        std::fill(cost + real, cost + problem_.nowhere(), kForbidden);
        cost[problem_.nowhere()] = kNowhereBase + kNowhereBySize;
    }
}

void HouseholdMoves::keep_to_accepted(std::size_t p)
{
    if (!wishes_->accepted) {
        return;
    }
    for (const auto& stay : wishes_->accepted->stays) {
        if (stay.plant != household_->plants[p].id) {
            continue;
        }
        for (std::size_t night = 0; night < kNightsOfAPlan; ++night) {
            if (date(night) < stay.from || date(night) > stay.to) {
                continue;
            }
            for (std::size_t s = 0; s < real_spots(); ++s) {
                problem_.cost[(p * kNightsOfAPlan + night) * problem_.spots + s] +=
                    spot(s).id == stay.spot ? 0.0F : kPriceOfChange;
            }
        }
    }
}

std::optional<home::SpotId> HouseholdMoves::pinned(std::size_t p, calendar::Date evening) const
{
    const auto& plant = household_->plants[p];
    auto pin = plant.pinned_spot;
    for (const auto& dated : household_->pins) {
        if (dated.plant == plant.id && dated.from <= evening && evening <= dated.to) {
            pin = dated.spot;
        }
    }
    return pin;
}

const Isolation* HouseholdMoves::isolated(std::size_t p, calendar::Date evening) const
{
    const auto found = std::ranges::find_if(wishes_->isolated, [&](const Isolation& isolation) {
        return isolation.plant == household_->plants[p].id && runs_on(isolation, evening);
    });
    return found != wishes_->isolated.end() ? &*found : nullptr;
}

bool HouseholdMoves::some_isolated(calendar::Date evening) const
{
    return std::ranges::any_of(wishes_->isolated,
                               [evening](const Isolation& isolation) { return runs_on(isolation, evening); });
}

bool HouseholdMoves::keeps_place(std::size_t p, std::size_t night) const
{
    const auto start = problem_.start[p];
    return start && !(household_->plants[p].hazardous && spot(*start).in_reach) && allowed(p, *start, night);
}

bool HouseholdMoves::hardens_too_early(std::size_t p, const home::Spot& to, calendar::Date evening) const
{
    const auto start = problem_.start[p];
    if (!start || to.apart || !home::is_outdoors(to.kind) || home::is_outdoors(spot(*start).kind)) {
        return false;
    }
    const auto begun = evening - calendar::Days{kLongestHardening};
    return resting(p, begun) != nullptr ||
           std::ranges::any_of(wishes_->isolated, [&](const Isolation& isolation) {
               return isolation.plant == household_->plants[p].id && isolation.to < evening && begun <= isolation.to;
           });
}

const Rest* HouseholdMoves::resting(std::size_t p, calendar::Date day) const
{
    const auto found = std::ranges::find_if(wishes_->resting, [&](const Rest& rest) {
        return rest.plant == household_->plants[p].id && day < rest.until;
    });
    return found != wishes_->resting.end() ? &*found : nullptr;
}

float HouseholdMoves::too_cool_for_young(std::size_t p, std::size_t s, calendar::Date evening) const
{
    const auto& plant = household_->plants[p];
    const auto start = problem_.start[p];
    // One that stands outdoors was planted out.
    const bool young = home::is_young(plant, evening, home::is_outdoors(spot(s).kind)) &&
                       !(start && home::is_outdoors(spot(*start).kind));
    return young && usual_->on(spot(s).id, evening).low < plant.lines.safe_night ? kTooCoolForYoung : 0.0F;
}

float HouseholdMoves::beside_pests(const Isolation* isolated, std::size_t p, std::size_t s, calendar::Date evening) const
{
    if (isolated != nullptr) {
        return some_spot_apart_ && !spot(s).apart ? kNotApart : 0.0F;
    }
    const bool to_pests = problem_.start[p] != s && std::ranges::any_of(pests_at_, [&](const auto& at) {
        return at.first == s && runs_on(at.second, evening);
    });
    return to_pests ? kCarriedToPests : 0.0F;
}

bool HouseholdMoves::closed(const Isolation* isolated, bool some_isolated, std::size_t p, std::size_t s,
                            std::size_t night) const
{
    const auto& to = spot(s);
    if (household_->plants[p].hazardous && to.in_reach) {
        return true;
    }
    if (isolated != nullptr) {
        return !to.apart && problem_.start[p] != s && keeps_place(p, night);
    }
    // Nobody clean stands beside what is isolated.
    return (to.apart && some_isolated) || hardens_too_early(p, to, date(night));
}

bool HouseholdMoves::allowed(std::size_t plant, std::size_t spot, std::size_t night) const
{
    const auto& evenings = allowed_[alike_[plant] * real_spots() + spot];
    return evenings.empty() || evenings[night];
}

MovePath HouseholdMoves::at_real_spots(std::size_t plant, const MovePath& path) const
{
    const std::size_t real = real_spots();
    const auto& kept = household_->plants[plant];
    MovePath result = path;
    for (std::size_t first = 0; first < path.size();) {
        if (path[first] != problem_.nowhere()) {
            ++first;
            continue;
        }
        std::size_t end = first;
        while (end < path.size() && path[end] == problem_.nowhere()) {
            ++end;
        }
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t s = 0; s < real; ++s) {
            double badness = 0.0;
            for (std::size_t night = first; night < end; ++night) {
                badness +=
                    static_cast<double>(felt(plant, night, s)) + (allowed(plant, s, night) ? 0.0 : 1000.0);
                const auto pin = pinned(plant, date(night));
                badness += pin && *pin != spot(s).id ? 1.0e6 : 0.0;
                if (isolated(plant, date(night)) != nullptr && !spot(s).apart) {
                    badness += problem_.start[plant] == s ? 400.0 : 500.0;
                }
            }
            const auto nights = static_cast<double>(end - first);
            badness += kept.hazardous && spot(s).in_reach ? 300.0 * nights : 0.0;
            if (badness < least) {
                least = badness;
                std::fill(result.begin() + static_cast<std::ptrdiff_t>(first),
                          result.begin() + static_cast<std::ptrdiff_t>(end), static_cast<std::uint16_t>(s));
            }
        }
        first = end;
    }
    return result;
}

} // namespace lathhouse::plan
