#include "core/plan/withheld.h"

#include "core/base/parse.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/growing_rules.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::Event;
using home::EventKind;

constexpr double kMuchBrighter = 2.0; // A doubling of light is what leaves feel.

Days weeks(double count)
{
    return Days{static_cast<int>(std::lround(7.0 * count))};
}

/// Last day before the first of the events of these kinds after `since`.
std::optional<Date> last_day_before(std::span<const Event* const> events, EventKind kind, Date since)
{
    for (const auto* event : events) {
        if (event->kind == kind && event->happened > since) {
            return event->happened - Days{1};
        }
    }
    return std::nullopt;
}

/// What damage withholds: until new growth, and as long as the substance's weeks of hold last in any case, as
/// damage_course has it.
Withheld after_damage(const Event& damage, const home::Household& household, std::optional<Date> new_growth)
{
    Withheld withheld{damage.happened, new_growth, WithheldWhy::ChemicalDamage, WithheldUntil::NewGrowth, damage.happened};
    const auto held = damage_course(case_of(damage, household, {})).no_feed_before - Days{1};
    if (new_growth && held > *new_growth) {
        withheld.to = held;
        withheld.until = WithheldUntil::Date;
    }
    return withheld;
}

bool harmed_by(const Event& night, const home::Plant& plant)
{
    const auto low = parse_number(night.detail("low_c"));
    return !low || *low <= plant.lines.damage_begins.degrees();
}

} // namespace

std::vector<Withheld> withheld_by_events(const home::Household& household, const home::Plant& plant,
                                         const Whereabouts& whereabouts, const home::SpotClimate& spots,
                                         std::span<const Event> events, Date from, int days)
{
    std::vector<const Event*> own;
    for (const auto& event : events) {
        const bool by_air = event.kind == EventKind::ColdNight || event.kind == EventKind::ChemicalDamage;
        if (by_air ? reaches(event, whereabouts, household) : whereabouts.concerns(event)) {
            own.push_back(&event);
        }
    }
    std::ranges::stable_sort(own, {}, [](const Event* event) { return event->happened; });

    std::vector<Withheld> withheld;
    for (const auto* event : own) {
        const auto since = event->happened;
        const auto new_growth = last_day_before(own, EventKind::NewGrowth, since);
        switch (event->kind) {
        case EventKind::ChemicalDamage:
            if (!is_told_anew(events, static_cast<std::size_t>(event - events.data()))) {
                withheld.push_back(after_damage(*event, household, new_growth));
            }
            break;
        case EventKind::ColdNight:
            if (harmed_by(*event, plant)) {
                withheld.push_back({since, new_growth, WithheldWhy::Chilled, WithheldUntil::NewGrowth, since});
            }
            break;
        case EventKind::Isolated: {
            const auto released = last_day_before(own, EventKind::Released, since);
            if (lower_case(event->detail("why")).find("root") == std::string::npos) {
                withheld.push_back({since, released, WithheldWhy::Isolated, WithheldUntil::Release, since});
            } else {
                const auto both = released && new_growth ? std::optional{std::max(*released, *new_growth)}
                                                         : std::nullopt;
                withheld.push_back(
                    {since, both, WithheldWhy::SickRoots, WithheldUntil::ReleaseAndNewGrowth, since});
            }
            break;
        }
        case EventKind::Repotted:
            withheld.push_back({since, since + weeks(growing_figure("feed_after_repotting")) - Days{1},
                                WithheldWhy::Repotted, WithheldUntil::Date, since});
            break;
        case EventKind::Moved:
            if (event->detail("bought") == "yes") {
                withheld.push_back({since, since + weeks(growing_figure("feed_after_purchase")) - Days{1},
                                    WithheldWhy::Bought, WithheldUntil::Date, since});
            }
            break;
        default:
            break;
        }
    }

    const int settle = static_cast<int>(growing_figure("feed_after_move"));
    const auto known = [&](std::optional<home::SpotId> id) { return id && household.spot(*id) != nullptr; };
    for (int day = -settle; day < days; ++day) {
        const auto date = from + Days{day};
        const auto before = whereabouts.on(date - Days{1});
        const auto after = whereabouts.on(date);
        if (known(before) && known(after) && before != after &&
            spots.on(*after, date).light.moles() > kMuchBrighter * spots.on(*before, date).light.moles()) {
            withheld.push_back(
                {date, date + Days{settle - 1}, WithheldWhy::Moved, WithheldUntil::Date, date});
        }
    }
    return withheld;
}

const Withheld* withheld_on(const PlantFeeding& feeding, calendar::Date day)
{
    const auto found = std::ranges::find_if(
        feeding.withheld, [day](const Withheld& withheld) { return withheld.from <= day && (!withheld.to || day <= *withheld.to); });
    return found != feeding.withheld.end() ? &*found : nullptr;
}

} // namespace lathhouse::plan
