#include "core/plan/water.h"

#include "core/plan/feeding.h"
#include "core/plan/growing_rules.h"
#include "core/plan/whereabouts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <string_view>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::EventKind;

constexpr int kLongestLesson = 60; // Days; a longer gap is a gap of the log.
constexpr std::size_t kLatestLessons = 12;
constexpr int kLongestSearch = 90; // Days from the last watering within which a look must fall.
constexpr int kWaitOfOthers = 2;   // Days that a look can wait where the kind is not kept moist.

struct DryingFigures {
    double share;
    int longest_gap;
    bool kept_moist;
};

DryingFigures figures_of(const home::Plant& plant, const plants::PlantKind* kind)
{
    const auto of = [](const char* share, const char* gap, bool moist) {
        return DryingFigures{growing_figure(share), static_cast<int>(growing_figure(gap)), moist};
    };
    if (plant.must_dry) {
        return of("dry_right_out", "look_right_out", false);
    }
    if (kind != nullptr && kind->drying_class == "keep_moist") {
        return of("dry_keep_moist", "look_keep_moist", true);
    }
    return of("dry_top_inch", "look_top_inch", false);
}

/// Whether it draws as little as a succulent does. A geranium, a lantana or thyme wants its mix to dry right out as well, yet
/// its leaves are thin and draw as others do (common practice, no source); of a kind of the grower's own nothing but that wish is known.
bool draws_little(const home::Plant& plant, const plants::PlantKind* kind)
{
    constexpr std::array<std::string_view, 4> kThinLeaves{"annual_porch", "citrus_fruit", "herb", "porch_tender"};
    return plant.must_dry && (kind == nullptr || std::ranges::find(kThinLeaves, kind->group) == kThinLeaves.end());
}

double top_area_square_metres(const PotSize& size)
{
    return std::numbers::pi / 4.0 * size.width.metres() * size.width.metres();
}

/// The plant with all that its looks need.
struct ThirstyPot {
    const home::Household& household;
    const home::Plant& plant;
    const Whereabouts& whereabouts;
    const home::SpotClimate& spots;
    PotSize size;
    DryingFigures drying;
    bool draws_little;

    std::optional<home::SpotDay> day(Date date) const
    {
        const auto spot = whereabouts.on(date);
        return spot && household.spot(*spot) != nullptr ? std::optional{spots.on(*spot, date)} : std::nullopt;
    }
    /// Litres that leave the pot on a day, rain taken off; negative where rain fills it.
    double loss(const home::SpotDay& day) const
    {
        return draw_of_day(day, size, draws_little).litres() -
               day.rain.millimetres() * top_area_square_metres(size);
    }
};

/// First day after `watered` on which `litres` have gone, and why; none where the plant stands nowhere.
struct Found {
    Date date;
    LookWhy why;
};
std::optional<Found> look_after(const ThirstyPot& asked, Date watered, double litres)
{
    double gone = 0.0;
    bool wet = false;
    for (int day = 1; day <= kLongestSearch; ++day) {
        const auto date = watered + Days{day};
        const auto there = asked.day(date);
        if (!there) {
            return std::nullopt;
        }
        wet = wet || (there->outdoors && is_wet(*there));
        gone = std::max(0.0, gone + asked.loss(*there));
        if (gone >= litres) {
            return Found{date, LookWhy::Drawn};
        }
        if (day == asked.drying.longest_gap) {
            return Found{date, wet ? LookWhy::WetSpell : LookWhy::LongestGap};
        }
    }
    return std::nullopt;
}

std::vector<Date> waterings_of(const ThirstyPot& asked, std::span<const home::Event> events, Date until)
{
    std::vector<Date> dates;
    for (const auto& event : events) {
        const bool full = event.kind == EventKind::Watered || event.kind == EventKind::Leached ||
                          event.kind == EventKind::Repotted;
        if (full && event.happened <= until && asked.whereabouts.concerns(event)) {
            dates.push_back(event.happened);
        }
    }
    std::ranges::sort(dates);
    dates.erase(std::unique(dates.begin(), dates.end()), dates.end());
    return dates;
}

std::vector<double> lessons_of(const ThirstyPot& asked, std::span<const Date> waterings, double may_go)
{
    std::vector<double> ratios;
    const auto first = waterings.size() > kLatestLessons ? waterings.size() - kLatestLessons : 1;
    for (std::size_t at = first; at < waterings.size(); ++at) {
        const int days = calendar::days_between(waterings[at - 1], waterings[at]);
        const auto spot = asked.whereabouts.on(waterings[at - 1]);
        double gone = 0.0;
        bool teaches = days <= kLongestLesson && spot && asked.whereabouts.on(waterings[at]) == spot;
        for (int day = 1; teaches && day <= days; ++day) {
            const auto there = asked.day(waterings[at - 1] + Days{day});
            teaches = there && !(there->outdoors && is_wet(*there));
            gone = teaches ? std::max(0.0, gone + asked.loss(*there)) : 0.0;
        }
        if (teaches && gone > 0.0) {
            ratios.push_back(gone / may_go);
        }
    }
    return ratios;
}

} // namespace

Litres draw_of_day(const home::SpotDay& day, const PotSize& size, bool little)
{
    const double factor = growing_figure(little ? "draw_succulent" : "draw_factor");
    // A millimetre on a square metre is a litre.
    return Litres::from_litres(factor * day.water_demand.millimetres() * top_area_square_metres(size));
}

std::vector<WaterLook> water_looks(const home::Household& household, const climate::PlaceClimate& climate,
                                   const home::SpotClimate& spots, std::span<const home::Event> events,
                                   std::span<const PlantYear> stays, Date from, int days)
{
    const RestingSeasons seasons{climate};
    std::vector<WaterLook> looks;
    for (const auto& plant : household.plants) {
        const auto planned = std::ranges::find(stays, plant.id, &PlantYear::plant);
        const Whereabouts whereabouts{plant, events,
                                      planned == stays.end() ? std::span<const Stay>{} : planned->stays, from};
        const auto* kind = kind_of(plant);
        const ThirstyPot asked{household, plant,           whereabouts,
                          spots,     pot_size(plant), figures_of(plant, kind), draws_little(plant, kind)};
        const auto available = asked.size.volume * growing_figure("available_share");
        const auto may_go = available * asked.drying.share;
        const auto today = asked.day(from);
        WaterLook look{plant.id,
                       today ? whereabouts.on(from) : std::nullopt,
                       {},
                       {},
                       LookWhy::NoWateringLogged,
                       0,
                       {asked.size, available, may_go, Litres::from_litres(0.0)},
                       learn_habit({}),
                       false,
                       false,
                       false,
                       plant.must_dry,
                       {}};
        if (today) {
            look.pot.drawn_of_day = draw_of_day(*today, asked.size, asked.draws_little);
            look.in_the_rain = household.spot(*look.spot)->kind == home::SpotKind::Open;
            if (kind != nullptr) {
                look.rests = growth_on(*kind, plant.light_to_thrive, plant.heat_limit, *today, from, seasons)
                                 .rest != RestReason::None;
                look.nearly_dry = look.rests && plants::rest_habit(*kind).dry;
            }
            const auto waterings = waterings_of(asked, events, from);
            look.habit = learn_habit(lessons_of(asked, waterings, may_go.litres()));
            const double litres = may_go.litres() * look.habit.factor;
            const auto were_it_now = look_after(asked, from, litres);
            look.every_days = were_it_now ? calendar::days_between(from, were_it_now->date) : 0;
            look.due = from;
            if (!waterings.empty()) {
                look.last_watered = waterings.back();
                if (const auto found = look_after(asked, waterings.back(), litres)) {
                    look.due = std::max(found->date, from);
                    look.why = found->why;
                }
            }
            const auto end = from + Days{days - 1};
            for (std::optional<Date> next = look.due; next && *next <= end;) {
                look.looks.push_back(*next);
                const auto found = look_after(asked, *next, litres);
                next = found ? std::optional{found->date} : std::nullopt;
            }
        }
        looks.push_back(std::move(look));
    }
    return looks;
}

std::vector<WaterDue> due_on(std::span<const WaterLook> looks, Date date)
{
    std::vector<WaterDue> due;
    for (const auto& look : looks) {
        if (look.due && *look.due <= date) {
            const bool moist = look.pot.may_go < look.pot.available * growing_figure("dry_top_inch");
            due.push_back(
                {look.plant, *look.due, *look.due + Days{moist ? 0 : kWaitOfOthers}, look.why, 1});
        }
    }
    return due;
}

std::vector<WetSpell> wet_spells(const home::Household& household, const home::SpotClimate& spots, Date from)
{
    const auto open = std::ranges::find(household.spots, home::SpotKind::Open, &home::Spot::kind);
    std::vector<WetSpell> spells;
    if (open == household.spots.end()) {
        return spells;
    }
    for (int day = 0; day < kNightsOfAPlan; ++day) {
        const auto date = from + Days{day};
        if (!is_wet(spots.on(open->id, date))) {
            continue;
        }
        if (!spells.empty() && spells.back().to + Days{1} == date) {
            spells.back().to = date;
        } else {
            spells.push_back({date, date});
        }
    }
    return spells;
}

} // namespace lathhouse::plan
