#include "core/plan/sowing.h"

#include "core/home/shelter.h"
#include "core/plan/sowing_search.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace lathhouse::plan {
namespace {

using plants::SeedKind;

constexpr int kMostSuccessions = 30;

/// Midst of emergence of a sowing in the soil, day by day.
std::optional<Emergence> emergence_outdoors(const SeedKind& kind, const SowingClimate& climate, int sown)
{
    const auto error = KelvinDelta::from_kelvins(kMixError);
    const auto reached = [&](auto rate_of) -> std::optional<int> {
        double way = 0.0;
        for (int day = sown; day < std::min(sown + kDaysOfAYear, SowingClimate::kDays); ++day) {
            way += rate_of(climate.soil(day));
            if (way >= 1.0 - 1e-9) {
                return day + 1;
            }
        }
        return std::nullopt;
    };
    const auto best_of = [&](Celsius soil) {
        return std::max({emergence_rate(kind, soil - error).quick, emergence_rate(kind, soil).quick,
                         emergence_rate(kind, soil + error).quick});
    };
    const auto worst_of = [&](Celsius soil) {
        double worst = emergence_rate(kind, soil).slow;
        for (const Celsius near : {soil - error, soil + error}) {
            const double rate = emergence_rate(kind, near).slow;
            if (rate > 0.0) {
                worst = std::min(worst, rate);
            }
        }
        return worst;
    };
    const auto from = reached(best_of);
    const auto to = reached(worst_of);
    if (!from || !to) {
        return std::nullopt;
    }
    const auto soil = climate.soil(sown);
    return Emergence{{climate.date(*from), climate.date(*to)}, soil, emergence_rate(kind, soil).basis, false};
}

std::optional<Emergence> emergence_indoors(const SeedKind& kind, const SowingClimate& climate, int sown, Celsius room)
{
    auto mix = room;
    auto days = emergence_days(kind, room);
    if (!days) {
        mix = kind.germ_best_low;
        days = emergence_days(kind, mix);
    }
    if (!days) {
        return std::nullopt;
    }
    return Emergence{{climate.date(sown + days->from), climate.date(sown + days->to)}, mix, days->basis, mix > room};
}

/// What one way of searching gives; nullopt where it finds no day.
std::optional<SowingSeason> season_of(const SowingSearch& search, const SowingWishes& wishes)
{
    const auto& kind = search.kind();
    const auto& climate = search.climate();
    auto indoors = search.run_of(SowingMethod::Indoors);
    auto outdoors = search.run_of(SowingMethod::Outdoors);
    if (!indoors && !outdoors) {
        return std::nullopt;
    }
    // Both belong to one season: what only comes up in the next is left to that one's answer.
    constexpr int kGap = 30;
    if (indoors && outdoors) {
        if (indoors->first > outdoors->last + kGap) {
            indoors.reset();
        } else if (outdoors->first > indoors->last + kGap) {
            outdoors.reset();
        }
    }
    const int weeks = search.days_indoors();
    const auto span = [&](int from, int to) { return DateSpan{climate.date(from), climate.date(to)}; };
    SowingSeason season;
    int first = 0;
    if (indoors) {
        first = indoors->first;
        season.sow_indoors = span(indoors->first - weeks, indoors->last - weeks);
        season.plant_out = span(indoors->first, indoors->last);
        season.hardening_from = climate.date(std::max(indoors->first - kHardeningDays, 0));
        season.emerge_indoors = emergence_indoors(kind, climate, indoors->first - weeks, wishes.room);
        season.ready = search.ready(SowingMethod::Indoors, indoors->first);
    }
    if (outdoors) {
        first = indoors ? std::min(first, outdoors->first) : outdoors->first;
        season.sow_outdoors = span(outdoors->first, outdoors->last);
        season.emerge_outdoors = emergence_outdoors(kind, climate, outdoors->first);
        season.ready_outdoors = search.ready(SowingMethod::Outdoors, outdoors->first);
    }
    // The way that is open longer says how the season ends.
    const auto last_sowing = [&](const std::optional<SowingRun>& run, int before) {
        return run ? std::optional{run->last - before} : std::nullopt;
    };
    const auto last_in = last_sowing(indoors, weeks);
    const auto last_out = last_sowing(outdoors, 0);
    const bool out_lasts = !last_in || (last_out && *last_out >= *last_in);
    const auto& lasting = out_lasts ? outdoors : indoors;
    if (!lasting->all_year) {
        season.last_useful = climate.date(out_lasts ? *last_out : *last_in);
        season.ends_by = search.limits(out_lasts ? SowingMethod::Outdoors : SowingMethod::Indoors,
                                       lasting->last + 1);
    }
    const auto method = indoors && indoors->first == first ? SowingMethod::Indoors : SowingMethod::Outdoors;
    season.begins_by = first == search.first_day(method) ? std::set{SowingLimit::Today}
                                                         : search.limits(method, first - 1);
    season.damage_chance = climate.chance_after(first, kind.damaging_night());
    season.usual_low = climate.usual_low(first + 1); // The first night out ends on the next morning.
    season.soil = climate.soil(first);
    season.needs_roof = !search.minds_rain() && search.is_wet(method, first);
    season.slow_sorts_at_risk = !search.slow_sort_holds(method, first, wishes.risk);

    if (kind.succession_days) {
        season.succession_by = outdoors ? SowingMethod::Outdoors : SowingMethod::Indoors;
        const auto& run = outdoors ? *outdoors : *indoors;
        const int before = outdoors ? 0 : weeks;
        std::optional<int> last_ready;
        for (int day = run.first; day <= run.last; ++day) {
            const auto ready = search.usual_ready(season.succession_by, day);
            if (ready && (!last_ready || *ready >= *last_ready + *kind.succession_days) &&
                std::ssize(season.successions) < kMostSuccessions) {
                season.successions.push_back({climate.date(day - before), climate.date(*ready)});
                last_ready = ready;
            }
        }
    }
    return season;
}

NoDate why_not(const SowingSearch& search, const climate::PlaceClimate& place, const SowingWishes& wishes)
{
    const auto& kind = search.kind();
    const auto& climate = search.climate();
    NoDate answer = search.diagnose();
    const auto attempt = [&](WayKind way, const SowingClimate& under, int extra_weeks, SowingPace pace,
                             Probability risk) {
        const SowingSearch other{kind, under, risk, pace, RainRule::Ignored, extra_weeks};
        auto tried = wishes;
        tried.risk = risk;
        if (auto season = season_of(other, tried)) {
            answer.ways.push_back({way, extra_weeks, risk, std::move(season)});
            return true;
        }
        return false;
    };
    attempt(WayKind::QuickSort, climate, 0, SowingPace::Quick, wishes.risk);
    if (kind.weeks_indoors) {
        for (const int extra : {2, 4, 6}) {
            if (attempt(WayKind::BiggerTransplants, climate, extra, SowingPace::Usual, wishes.risk)) {
                break;
            }
        }
    }
    const SowingClimate glass{place, climate.today(), home::prior_offset(home::SpotKind::Glazed)};
    if (!attempt(WayKind::UnderGlass, glass, 0, SowingPace::Usual, wishes.risk)) {
        attempt(WayKind::GlassAndBigger, glass, kind.weeks_indoors ? 6 : 0, SowingPace::Quick, wishes.risk);
    }
    const auto twice = Probability::clamped(std::min(0.5, 2.0 * wishes.risk.fraction()));
    if (twice > wishes.risk) {
        attempt(WayKind::GreaterRisk, climate, 0, SowingPace::Usual, twice);
    }
    if (answer.ways.empty()) {
        answer.ways.push_back({WayKind::RaisedIndoorsOnly, 0, wishes.risk, std::nullopt});
    }
    return answer;
}

} // namespace

calendar::Date SowingSeason::first_out() const
{
    if (plant_out && sow_outdoors) {
        return std::min(plant_out->from, sow_outdoors->from);
    }
    return plant_out ? plant_out->from : sow_outdoors->from;
}

SowingPlan plan_sowing(const SeedKind& kind, const climate::PlaceClimate& place, const SowingClimate& climate,
                       const SowingWishes& wishes)
{
    const auto lawful = Probability::clamped(kind.germination_percent / 100.0);
    SowingPlan plan{&kind, {}, {}, {}, {}, wishes.rate ? wishes.rate->mean() : lawful.fraction()};
    plan.seeds = wishes.rate ? home::seeds_needed(wishes.plants, *wishes.rate, kSureOfPlants)
                             : home::seeds_needed(wishes.plants, lawful, kSureOfPlants);
    for (const auto rain : {RainRule::Minded, RainRule::Ignored}) {
        const SowingSearch search{kind, climate, wishes.risk, SowingPace::Usual, rain, 0};
        plan.season = season_of(search, wishes);
        if (const auto out = search.run_from(SowingMethod::Indoors, 0)) {
            plan.transplants_out = DateSpan{climate.date(out->first), climate.date(out->last)};
        }
        if (plan.season) {
            return plan;
        }
    }
    plan.no_date =
        why_not(SowingSearch{kind, climate, wishes.risk, SowingPace::Usual, RainRule::Ignored, 0}, place, wishes);
    return plan;
}

} // namespace lathhouse::plan
