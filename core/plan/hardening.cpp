#include "core/plan/hardening.h"
#include "core/plan/hardening_done.h"

#include "core/plan/pest_course.h"
#include "core/plan/whereabouts.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr int kHoursAtLast = 10;
constexpr int kDaysOfShade = 7;
constexpr int kCrawlerStage = 7; // Days; sets the second inspection after the first.
constexpr int kForgottenAfterDays = 7;
constexpr double kDarkestMoles = 0.05;
constexpr double kDayShare = 0.6;

struct Step {
    double doublings;
    KelvinDelta colder;
};

Step step_on(const home::Spot& from, const home::Spot& to, const home::SpotClimate& climate, Date date)
{
    const auto here = climate.on(from.id, date);
    const auto there = climate.on(to.id, date);
    return {std::log2(std::max(kDarkestMoles, there.light.moles()) / std::max(kDarkestMoles, here.light.moles())),
            here.low - there.low};
}

Shade shade_of(int day, int days, double doublings)
{
    if (doublings < 0.5) {
        return Shade::None;
    }
    return 3 * day < days ? Shade::Full : 3 * day < 2 * days ? Shade::Half : Shade::None;
}

int hours_of(int day, int days)
{
    return static_cast<int>(std::lround(1.0 + (kHoursAtLast - 1.0) * day / std::max(1, days - 1)));
}

LadderItem on(LadderItemKind kind, Date date, int hours = 0, Shade shade = Shade::None)
{
    return {kind, date, date, hours, shade};
}

/// Whether the household has an indoor spot that is apart from other plants.
bool has_spot_apart(const home::Household& household)
{
    return std::ranges::any_of(household.spots, [](const home::Spot& spot) {
        return spot.apart && !home::is_outdoors(spot.kind) && spot.capacity > 0;
    });
}

/// When a plant that stands indoors came in from outdoors last, and from where.
struct CameIn {
    Date date;
    const home::Spot* from;
};
std::optional<CameIn> came_in(const home::Plant& plant, const home::Household& household,
                              std::span<const home::Event> events, Date today)
{
    const Whereabouts whereabouts{plant, events, {}, today};
    const auto spot_on = [&](Date date) {
        const auto spot = whereabouts.on(date);
        return spot ? household.spot(*spot) : nullptr;
    };
    const auto* after = spot_on(today);
    if (after == nullptr || home::is_outdoors(after->kind)) {
        return std::nullopt;
    }
    std::optional<CameIn> last;
    for (const auto& event : events) {
        if (event.kind != home::EventKind::Moved || event.plant != plant.id || event.happened > today) {
            continue;
        }
        const auto* from = spot_on(event.happened - Days{1});
        const auto* to = spot_on(event.happened);
        if (from != nullptr && to != nullptr && home::is_outdoors(from->kind) && !home::is_outdoors(to->kind)) {
            last = {event.happened, from};
        }
    }
    return last;
}

} // namespace

Celsius hardening_floor(const plants::ColdLines& lines)
{
    constexpr auto kTender = Celsius::from_degrees(7.2);
    const bool frost_damages = lines.damage_begins > Celsius::from_degrees(-2.0);
    return frost_damages ? std::max(lines.safe_night, kTender) : lines.safe_night;
}

int days_of_hardening(double doublings, KelvinDelta colder)
{
    const double days =
        7.0 + 2.0 * std::max(0.0, doublings - 1.0) + 0.5 * std::max(0.0, colder.kelvins() - 5.0);
    return static_cast<int>(std::lround(std::clamp(days, 7.0, 14.0)));
}

int weeks_of_stepping_down(double doublings)
{
    if (doublings > -1.0) {
        return 0;
    }
    return static_cast<int>(std::lround(std::clamp(4.0 + 2.0 * (-doublings - 1.0), 4.0, 8.0)));
}

Ladder ladder_out(const home::Plant& plant, const home::Spot& from, const home::Spot& to,
                  const home::SpotClimate& climate, Date planned, Date today)
{
    const auto step = step_on(from, to, climate, planned);
    const int days = days_of_hardening(step.doublings, step.colder);
    const Date reached = std::max(planned, today + Days{days});
    Ladder ladder{plant.id, from.id, to.id, Direction::Out, planned, reached, step.doublings, step.colder, {}, {}};
    for (int day = 0; day < days; ++day) {
        ladder.items.push_back(on(LadderItemKind::OutByDay, reached - Days{days - day}, hours_of(day, days),
                                  shade_of(day, days, step.doublings)));
    }
    ladder.items.push_back(on(LadderItemKind::FirstNightOut, reached));
    return ladder;
}

Ladder ladder_in(const home::Plant& plant, const home::Spot& from, const home::Spot& to,
                 const home::SpotClimate& climate, Date planned, bool spot_apart)
{
    const auto step = step_on(from, to, climate, planned);
    Ladder ladder{plant.id, from.id, to.id, Direction::In, planned, planned, step.doublings, step.colder, {}, {}};
    if (step.doublings < -0.5) {
        ladder.items.push_back({LadderItemKind::IntoShade, planned - Days{kDaysOfShade}, planned - Days{1}, 0,
                                Shade::Full});
    }
    ladder.items.push_back(on(LadderItemKind::Inspect, planned - Days{3}));
    ladder.items.push_back(on(LadderItemKind::Soak, planned - Days{1}));
    ladder.items.push_back(on(LadderItemKind::CarryIn, planned));
    ladder.items.push_back(
        {LadderItemKind::KeepApart, planned, planned + Days{kLeastDaysApart - 1}, 0, Shade::None});
    ladder.items.push_back(on(LadderItemKind::Inspect, planned + Days{kLeastDaysApart - kCrawlerStage}));
    ladder.items.push_back(on(LadderItemKind::Inspect, planned + Days{kLeastDaysApart}));
    if (const int weeks = weeks_of_stepping_down(step.doublings); weeks > 0) {
        ladder.items.push_back(
            {LadderItemKind::StepDown, planned, planned + Days{7 * weeks - 1}, 0, Shade::None});
    }
    ladder.no_spot_apart = !spot_apart;
    return ladder;
}

std::vector<Ladder> ladders_of(const home::Household& household, const home::SpotClimate& climate,
                               const YearPlan& plan, Date today)
{
    const bool apart = has_spot_apart(household);
    std::vector<Ladder> ladders;
    for (const auto& year : plan.plants) {
        const auto& plant = *household.plant(year.plant);
        // A plan that begins with a carry from where the plant stands has its ladder as well.
        const home::Spot* before = plant.spot ? household.spot(*plant.spot) : nullptr;
        for (const auto& stay : year.stays) {
            const auto& spot = *household.spot(stay.spot);
            if (before != nullptr && home::is_outdoors(before->kind) != home::is_outdoors(spot.kind)) {
                auto ladder = home::is_outdoors(spot.kind)
                                  ? ladder_out(plant, *before, spot, climate, stay.from, today)
                                  : ladder_in(plant, *before, spot, climate, stay.from, apart);
                const auto last = std::ranges::max(ladder.items, {}, &LadderItem::until).until;
                if (last >= today) {
                    ladders.push_back(std::move(ladder));
                }
            }
            before = &spot;
        }
    }
    std::ranges::stable_sort(ladders, {}, [](const Ladder& ladder) { return ladder.items.front().date; });
    return ladders;
}

Ladder held_up(const Ladder& ladder, const home::Plant& plant, const home::Spot& to,
               const home::SpotClimate& climate, const home::NightLog& forecasts)
{
    if (ladder.direction == Direction::In) {
        return ladder;
    }
    const auto low_of = [&](Date evening) -> std::optional<Celsius> {
        const auto* forecast = forecasts.last_forecast(evening + Days{1});
        return forecast ? std::optional{forecast->low + to.offset.mean} : std::nullopt;
    };
    const auto cold_day = [&](Date date) {
        const auto low = low_of(date);
        const auto usual = climate.on(to.id, date);
        return low && *low + (usual.high - usual.low) * kDayShare < hardening_floor(plant.lines);
    };
    const auto cold_night = [&](Date evening) {
        const auto low = low_of(evening);
        return low && *low < plant.lines.safe_night;
    };
    Ladder held = ladder;
    held.items.clear();
    Date date = ladder.items.front().date;
    for (const auto& item : ladder.items) {
        const bool night = item.kind == LadderItemKind::FirstNightOut;
        date = std::max(date, item.date);
        while (night ? cold_night(date) || cold_night(date + Days{1}) : cold_day(date)) {
            held.paused.push_back(date);
            date += Days{1};
        }
        auto moved = item;
        moved.date = moved.until = date;
        held.items.push_back(moved);
        date += Days{1};
    }
    held.reached = held.items.back().date;
    return held;
}

int days_hardened(home::PlantId plant, std::span<const home::Event> events, calendar::Date today)
{
    const std::string task = "out-by-day/" + std::to_string(plant) + "/"; // As the round names it.
    std::set<calendar::Date> days;
    std::optional<calendar::Date> moved;
    for (const auto& event : events) {
        if (event.plant != plant || event.happened >= today) {
            continue;
        }
        if (event.kind == home::EventKind::Moved) {
            moved = std::max(moved.value_or(event.happened), event.happened);
        } else if (event.kind == home::EventKind::TaskDone && event.detail("task").starts_with(task)) {
            days.insert(event.happened);
        }
    }
    int hardened = 0;
    calendar::Date after = today;
    for (auto day = days.rbegin(); day != days.rend(); ++day) {
        if (calendar::days_between(*day, after) > kForgottenAfterDays || (moved && *day < *moved)) {
            break;
        }
        ++hardened;
        after = *day;
    }
    return hardened;
}

std::vector<Ladder> with_days_hardened(std::vector<Ladder> ladders, std::span<const home::Event> events,
                                       calendar::Date today)
{
    for (auto& ladder : ladders) {
        const auto days =
            static_cast<int>(std::ranges::count(ladder.items, LadderItemKind::OutByDay, &LadderItem::kind));
        const int done = ladder.direction == Direction::Out ? std::min(days_hardened(ladder.plant, events, today), days) : 0;
        // The days behind a plant are those of its next way out, not of one in another year.
        if (done == 0 || ladder.items.front().date > today + Days{days}) {
            continue;
        }
        ladder.reached = std::max(ladder.planned, today + Days{days - done});
        int day = 0;
        for (auto& item : ladder.items) {
            item.date = item.until = ladder.reached - Days{days - day};
            if (day < done) { // Before the next, wherever that stands.
                item.date = item.until = std::min(item.date, today - Days{done - day});
            }
            ++day;
        }
    }
    return ladders;
}

std::vector<Ladder> ladders_behind(const home::Household& household, const home::SpotClimate& climate,
                                   std::span<const home::Event> events, calendar::Date today)
{
    std::vector<Ladder> ladders;
    for (const auto& plant : household.plants) {
        const auto* stands = plant.spot ? household.spot(*plant.spot) : nullptr;
        const auto carried = stands != nullptr ? came_in(plant, household, events, today) : std::nullopt;
        if (!carried) {
            continue;
        }
        auto ladder = ladder_in(plant, *carried->from, *stands, climate, carried->date, has_spot_apart(household));
        std::erase_if(ladder.items, [&](const LadderItem& item) {
            return item.date < carried->date || item.kind == LadderItemKind::CarryIn;
        });
        if (std::ranges::max(ladder.items, {}, &LadderItem::until).until >= today) {
            ladders.push_back(std::move(ladder));
        }
    }
    return ladders;
}

Ladder held_up_from(const Ladder& ladder, const home::Plant& plant, const home::Spot& to,
                    const home::SpotClimate& climate, const home::NightLog& forecasts, calendar::Date today)
{
    const auto next = std::ranges::find_if(ladder.items, [today](const LadderItem& item) { return item.date >= today; });
    if (ladder.direction == Direction::In || next == ladder.items.end()) {
        return held_up(ladder, plant, to, climate, forecasts);
    }
    Ladder ahead = ladder;
    ahead.items.assign(next, ladder.items.end());
    Ladder held = held_up(ahead, plant, to, climate, forecasts);
    held.items.insert(held.items.begin(), ladder.items.begin(), next);
    return held;
}

std::vector<Ladder> ladders_ahead(const home::Household& household, const home::SpotClimate& climate, const YearPlan& plan,
                                  std::span<const home::Event> events, const home::NightLog& forecasts, calendar::Date today)
{
    auto ladders = with_days_hardened(ladders_of(household, climate, plan, today), events, today);
    for (auto& ladder : ladders) {
        ladder = held_up_from(ladder, *household.plant(ladder.plant), *household.spot(ladder.to), climate, forecasts, today);
    }
    return ladders;
}

} // namespace lathhouse::plan
