#include "app/models/year_sowings.h"

#include "app/words/phrase.h"
#include "app/words/words.h"
#include "core/plan/sowing.h"

#include <algorithm>
#include <set>

namespace lathhouse::models {

namespace {

constexpr int kDaysOfTheYear = 365;

std::string ready_words(const plants::SeedKind& kind)
{
    switch (kind.ready_what) {
    case plants::ReadyWhat::Flower:
        return words::phrase("first flower");
    case plants::ReadyWhat::Leaves:
        return words::phrase("full leaf");
    case plants::ReadyWhat::Harvest:
        break;
    }
    return words::phrase("first ripe");
}

std::optional<YearSowing> sowing_of(const std::string& name, const plants::SeedKind& kind,
                                    const plan::SowingSeason& season, calendar::Date today)
{
    const auto& sow = season.sow_indoors ? season.sow_indoors : season.sow_outdoors;
    if (!sow) {
        return std::nullopt;
    }
    const auto day = [today](calendar::Date date) { return calendar::days_between(today, date); };
    const auto span = [&day](const plan::DateSpan& dates) {
        return DaySpan{day(dates.from), calendar::days_between(dates.from, dates.to) + 1};
    };
    YearSowing sowing{.name = name, .indoors = season.sow_indoors.has_value(), .sow = day(sow->from)};
    if (sowing.sow >= kDaysOfTheYear) {
        return std::nullopt;
    }
    sowing.sentence = sowing.indoors ? words::phrase("%1. Sow indoors %2.", name, words::day(sow->from))
                                     : words::phrase("%1. Sow outdoors %2.", name, words::day(sow->from));
    if (const auto& up = sowing.indoors ? season.emerge_indoors : season.emerge_outdoors) {
        sowing.up = span(up->dates);
        sowing.sentence += " " + words::phrase("Comes up %1 to %2.", words::day(up->dates.from), words::day(up->dates.to));
    }
    if (sowing.indoors && season.plant_out) {
        sowing.out = day(season.plant_out->from);
        if (season.hardening_from) {
            sowing.harden = day(*season.hardening_from);
        }
        sowing.end_words = words::phrase("out %1", words::day(season.plant_out->from));
        sowing.sentence += " " + words::phrase("Plant out from %1.", words::day(season.plant_out->from));
    }
    if (const auto& ready = season.ready && sowing.indoors ? season.ready : season.ready_outdoors) {
        sowing.ready = span(*ready);
        sowing.end_words = ready_words(kind) + " " + words::day(ready->from);
        sowing.sentence += " " + words::phrase("%1 from %2.", ready_words(kind), words::day(ready->from));
    }
    return sowing;
}

} // namespace

std::vector<YearSowing> year_sowings(const plan::HouseholdFacts& facts, calendar::Date today)
{
    std::vector<YearSowing> sowings;
    if (facts.seeds.lots.empty()) {
        return sowings;
    }
    const plan::SowingClimate climate(facts.climate, today);
    std::set<std::string> shown;
    for (const home::SeedLot& lot : facts.seeds.lots) {
        const auto left = facts.seeds.seeds_left(lot.id);
        const auto kind = plants::SeedReference::built_in().find(lot.crop);
        if ((left && *left <= 0) || !kind || !shown.insert((*kind)->name()).second) {
            continue;
        }
        const auto plan = plan::plan_sowing(**kind, facts.climate, climate, {});
        if (!plan.season) {
            continue; // The page Seeds says why there is no date.
        }
        if (auto sowing = sowing_of(lot.name, **kind, *plan.season, today)) {
            sowings.push_back(std::move(*sowing));
        }
    }
    std::ranges::stable_sort(sowings, {}, &YearSowing::sow);
    return sowings;
}

} // namespace lathhouse::models
