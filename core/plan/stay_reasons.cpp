#include "core/plan/household_moves.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::DayOfYear;
using calendar::Days;

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
        chances.place_nights().chance_within(first_night, nights, plant.lines.damage_begins, spot.offset);
    (season.turn().season_index(first_night) < DayOfYear::kCount / 2 ? stay.risk_in : stay.risk_out) = within;
}

/// The line that closes an outdoor spot on an evening, with the chance that goes with it.
Reason deciding_line(const HouseholdMoves& moves, std::size_t p, const home::Spot& spot, std::size_t night)
{
    // The damage line decides unless only the lethal line, with a tenth of the risk, forbids that evening.
    const auto& lines = moves.household().plants[p].lines;
    const auto& season = moves.chances().season(lines.damage_begins, spot.offset);
    if (!evening_allowed(season, moves.date(night), moves.risk())) {
        return {{}, lines.damage_begins, moves.risk()};
    }
    return {{}, lines.lethal, Probability::clamped(moves.risk().fraction() / 10.0)};
}

bool is_full(const HouseholdMoves& moves, std::size_t s, std::size_t night, const std::vector<MovePath>& paths)
{
    return std::ranges::count_if(paths, [&](const MovePath& path) { return path[night] == s; }) >=
           moves.problem().capacity[s];
}

/// Whether a spot that would suit the plant better had no room that night.
bool better_is_full(const HouseholdMoves& moves, std::size_t p, std::size_t here, std::size_t night,
                    const std::vector<MovePath>& paths)
{
    const auto& problem = moves.problem();
    for (std::size_t s = 0; s < moves.real_spots(); ++s) {
        if (problem.cost_at(p, night, s) + 0.05F >= problem.cost_at(p, night, here)) {
            continue;
        }
        if (is_full(moves, s, night, paths)) {
            return true;
        }
    }
    return false;
}

/// Whether a spot with room would suit a clean plant better that night but for the pests there.
bool better_has_pests(const HouseholdMoves& moves, std::size_t p, std::size_t here, std::size_t night,
                      const std::vector<MovePath>& paths)
{
    const auto& problem = moves.problem();
    for (std::size_t s = 0; s < moves.real_spots(); ++s) {
        const float for_pests = moves.price_of_pests(p, s, night);
        if (for_pests > 0.0F && problem.cost_at(p, night, s) - for_pests + 0.05F < problem.cost_at(p, night, here) &&
            !is_full(moves, s, night, paths)) {
            return true;
        }
    }
    return false;
}

/// Where the plant stood before that night: on the first, where it stands today.
std::optional<std::size_t> stood_before(const HouseholdMoves& moves, std::size_t p, const MovePath& path, std::size_t night)
{
    return night > 0 ? std::optional<std::size_t>{path[night - 1]} : moves.problem().start[p];
}

/// Whether the cold lines close, that evening, the spot outdoors from which the plant comes in.
bool nights_force_in(const HouseholdMoves& moves, std::size_t p, const MovePath& path, std::size_t night)
{
    const auto stood = stood_before(moves, p, path, night);
    return stood && home::is_outdoors(moves.spot(*stood).kind) && !home::is_outdoors(moves.spot(path[night]).kind) &&
           !moves.allowed(p, *stood, night);
}

/// Whether it could hurt a child or an animal where it stood, and cannot where it comes to.
bool comes_out_of_reach(const HouseholdMoves& moves, std::size_t p, const MovePath& path, std::size_t night)
{
    const auto stood = stood_before(moves, p, path, night);
    return stood && moves.household().plants[p].hazardous && moves.spot(*stood).in_reach && !moves.spot(path[night]).in_reach;
}

/// Whether the plant, a clean one, stood at a spot apart that is now for those that are not.
bool leaves_spot_apart(const HouseholdMoves& moves, std::size_t p, const MovePath& path, std::size_t night)
{
    const auto stood = stood_before(moves, p, path, night);
    return stood && moves.spot(*stood).apart && moves.isolated(p, moves.date(night)) == nullptr &&
           moves.some_isolated(moves.date(night));
}

/// Whether nights at or below the safe one are what brings a plant in: more than one in twenty is that cool where it
/// stood (common practice, no source).
bool nights_tell(const HouseholdMoves& moves, const home::Plant& plant, const home::Spot& left, std::size_t night)
{
    constexpr double kTelling = 0.05;
    const auto day = DayOfYear::of(moves.date(night) + Days{1});
    return moves.chances().nights().chance_on(day, plant.lines.safe_night, left.offset).fraction() > kTelling;
}

Reason reason_for(const HouseholdMoves& moves, std::size_t p, const std::vector<MovePath>& paths,
                  std::size_t night)
{
    const auto& path = paths[p];
    const auto& plant = moves.household().plants[p];
    const auto& here = moves.spot(path[night]);
    if (moves.pinned(p, moves.date(night)) == here.id) {
        return {ReasonKind::PinnedThere, std::nullopt, std::nullopt};
    }
    if (const auto* apart = moves.isolated(p, moves.date(night)); apart != nullptr) {
        if (here.apart) {
            return {ReasonKind::StandsApart, std::nullopt, std::nullopt, *apart};
        }
        if (plant.spot == here.id) {
            return {ReasonKind::CarriedToNobody, std::nullopt, std::nullopt, *apart};
        }
        if (!nights_force_in(moves, p, path, night)) {
            return {ReasonKind::NoneApart, std::nullopt, std::nullopt, *apart};
        }
    }
    const auto* rest = moves.resting(p, moves.date(night));
    if (rest != nullptr && night == 0 && plant.spot == here.id && !home::is_outdoors(here.kind)) {
        return {ReasonKind::Rests, std::nullopt, std::nullopt, std::nullopt, *rest};
    }
    if (night == 0 && plant.spot == here.id) {
        return {ReasonKind::StandsThere, std::nullopt, std::nullopt};
    }
    if (leaves_spot_apart(moves, p, path, night)) {
        return {ReasonKind::LeavesSpotApart, std::nullopt, std::nullopt};
    }
    const auto stood = stood_before(moves, p, path, night);
    const bool was_out = stood && home::is_outdoors(moves.spot(*stood).kind);
    const bool goes_out = home::is_outdoors(here.kind);
    if (goes_out && !was_out) {
        if (night > 0 && !moves.allowed(p, path[night], night - 1)) {
            Reason reason = deciding_line(moves, p, here, night - 1);
            reason.kind = ReasonKind::NightsAllow;
            return reason;
        }
        return {ReasonKind::BetterOutside, std::nullopt, std::nullopt};
    }
    if (!goes_out && was_out) {
        if (nights_force_in(moves, p, path, night)) {
            Reason reason = deciding_line(moves, p, moves.spot(*stood), night);
            reason.kind = ReasonKind::NightsForbid;
            return reason;
        }
        if (comes_out_of_reach(moves, p, path, night)) {
            return {ReasonKind::OutOfReach, std::nullopt, std::nullopt};
        }
        if (nights_tell(moves, plant, moves.spot(*stood), night)) {
            return {ReasonKind::NightsTooCool, plant.lines.safe_night, std::nullopt};
        }
    } else if (comes_out_of_reach(moves, p, path, night)) {
        return {ReasonKind::OutOfReach, std::nullopt, std::nullopt};
    } else if (better_is_full(moves, p, path[night], night, paths)) {
        return {ReasonKind::MakesRoom, std::nullopt, std::nullopt};
    }
    return {better_has_pests(moves, p, path[night], night, paths) ? ReasonKind::KeptFromPests
                                                                  : ReasonKind::BetterLight, // Or less heat, rain or wind.
            std::nullopt, std::nullopt};
}

bool pins_disagree(const home::Household& household, home::PlantId plant, calendar::Date evening)
{
    std::optional<home::SpotId> spot;
    for (const auto& pin : household.pins) {
        if (pin.plant == plant && pin.from <= evening && evening <= pin.to) {
            if (spot && *spot != pin.spot) {
                return true;
            }
            spot = pin.spot;
        }
    }
    return false;
}

/// Whether the cold lines leave some spot outdoors open to a plant for as long as a stay lasts.
bool some_window(const HouseholdMoves& moves, std::size_t p)
{
    const auto& problem = moves.problem();
    for (std::size_t s = 0; s < moves.real_spots(); ++s) {
        int run = 0;
        for (std::size_t night = 0; home::is_outdoors(moves.spot(s).kind) && night < problem.nights; ++night) {
            run = moves.allowed(p, s, night) ? run + 1 : 0;
            if (run >= kLeastNightsOfAStay) {
                return true;
            }
        }
    }
    return false;
}

/// The deciding line of the warmest night outdoors: what stands between the plant and the mildest spot.
Refusal cold_refusal(const HouseholdMoves& moves, std::size_t p)
{
    const auto& lines = moves.household().plants[p].lines;
    for (std::size_t s = 0; s < moves.real_spots(); ++s) {
        const auto& spot = moves.spot(s);
        if (!home::is_outdoors(spot.kind)) {
            continue;
        }
        const auto& season = moves.chances().season(lines.damage_begins, spot.offset);
        for (std::size_t night = 0; night < moves.problem().nights; ++night) {
            if (evening_allowed(season, moves.date(night), moves.risk())) {
                return {moves.household().plants[p].id, RefusalKind::NightsForbid, lines.lethal,
                        Probability::clamped(moves.risk().fraction() / 10.0)};
            }
        }
    }
    return {moves.household().plants[p].id, RefusalKind::NightsForbid, lines.damage_begins, moves.risk()};
}

/// Nothing where the plant goes out or is out and comes in, or where there is no outdoors.
std::optional<Refusal> refusal_of(const HouseholdMoves& moves, std::size_t p, const std::vector<MovePath>& paths)
{
    const auto& plant = moves.household().plants[p];
    const auto out = [&](std::size_t s) { return home::is_outdoors(moves.spot(s).kind); };
    bool outdoors = false;
    bool out_of_reach = false;
    for (std::size_t s = 0; s < moves.real_spots(); ++s) {
        outdoors |= out(s) && moves.spot(s).capacity > 0;
        out_of_reach |= out(s) && !moves.spot(s).in_reach;
    }
    if (!outdoors || std::ranges::any_of(paths[p], out)) {
        return std::nullopt;
    }
    const auto plain = [&](RefusalKind kind) { return Refusal{plant.id, kind, std::nullopt, std::nullopt}; };
    if (plant.pinned_spot) {
        return plain(RefusalKind::PinnedIndoors);
    }
    if (plant.hazardous && !out_of_reach) {
        return plain(RefusalKind::OnlyInReach);
    }
    if (!some_window(moves, p)) {
        return cold_refusal(moves, p);
    }
    if (moves.isolated(p, moves.date(paths[p].size() - 1)) != nullptr) {
        return plain(RefusalKind::KeptApart);
    }
    for (std::size_t night = 0; night < paths[p].size(); ++night) {
        for (std::size_t s = 0; s < moves.real_spots(); ++s) {
            const bool better = out(s) && moves.problem().cost_at(p, night, s) + 0.05F <
                                              moves.problem().cost_at(p, night, paths[p][night]);
            if (better && is_full(moves, s, night, paths)) {
                return plain(RefusalKind::Full);
            }
        }
    }
    const auto* stands = plant.spot ? moves.household().spot(*plant.spot) : nullptr;
    if (stands != nullptr && home::is_outdoors(stands->kind)) {
        return std::nullopt; // It is out today and comes in: its stay says why.
    }
    return plain(RefusalKind::BetterInside);
}

} // namespace

std::vector<Refusal> refusals_of(const HouseholdMoves& moves, const std::vector<MovePath>& paths)
{
    std::vector<Refusal> refusals;
    for (std::size_t p = 0; p < paths.size(); ++p) {
        if (const auto refusal = refusal_of(moves, p, paths)) {
            refusals.push_back(*refusal);
        }
    }
    return refusals;
}

PlantYear tell_year(const HouseholdMoves& moves, std::size_t p, const std::vector<MovePath>& paths)
{
    const auto& plant = moves.household().plants[p];
    const auto& path = paths[p];
    PlantYear year{plant.id, {}};
    for (std::size_t night = 0; night < path.size(); ++night) {
        if (night > 0 && path[night] == path[night - 1]) {
            year.stays.back().to = moves.date(night);
            continue;
        }
        year.stays.push_back({moves.spot(path[night]).id, moves.date(night), moves.date(night),
                              reason_for(moves, p, paths, night), std::nullopt, std::nullopt});
    }
    for (auto& stay : year.stays) {
        const auto& spot = *moves.household().spot(stay.spot);
        if (home::is_outdoors(spot.kind)) {
            fill_risks(stay, plant, spot, moves.chances());
        }
    }
    return year;
}

std::vector<Breach> breaches_of(const HouseholdMoves& moves, const std::vector<MovePath>& paths)
{
    std::vector<Breach> breaches;
    const auto& problem = moves.problem();
    std::vector<int> taken(problem.nights * problem.spots, 0);
    const auto note = [&](BreachKind kind, std::size_t p, const home::Spot& spot, std::size_t night) {
        const auto plant = moves.household().plants[p].id;
        const auto date = moves.date(night);
        for (auto& known : breaches) {
            if (known.kind == kind && known.plant == plant && known.spot == spot.id &&
                known.to + Days{1} == date) {
                known.to = date;
                return;
            }
        }
        breaches.push_back({kind, plant, spot.id, date, date});
    };
    for (std::size_t p = 0; p < paths.size(); ++p) {
        for (std::size_t night = 0; night < problem.nights; ++night) {
            const std::size_t s = paths[p][night];
            const auto& spot = moves.spot(s);
            if (!moves.allowed(p, s, night)) {
                note(BreachKind::ColdNights, p, spot, night);
            }
            if (moves.household().plants[p].hazardous && spot.in_reach) {
                note(BreachKind::InReach, p, spot, night);
            }
            if (moves.isolated(p, moves.date(night)) != nullptr && !spot.apart) {
                note(BreachKind::NotApart, p, spot, night);
            }
            if (pins_disagree(moves.household(), moves.household().plants[p].id, moves.date(night))) {
                note(BreachKind::PinsDisagree, p, spot, night);
            }
            if (++taken[night * problem.spots + s] > spot.capacity) {
                note(BreachKind::OverCapacity, p, spot, night);
            }
        }
    }
    return breaches;
}

} // namespace lathhouse::plan
