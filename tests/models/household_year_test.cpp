#include "app/cli/round_calendar.h"
#include "app/words/ladder_words.h"
#include "app/models/household_year.h"
#include "app/models/next_move.h"
#include "core/plan/hardening_done.h"
#include "core/plan/year_plan.h"
#include "tests/models/page_fixtures.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::models {
namespace {

/// The demonstration in the middle of May, with its lemon in a room; the nights would let it out at once.
struct LemonInARoom {
    plan::HouseholdFacts facts = plain_facts();
    home::PlantId lemon = 0;
    std::size_t place = 0;
    std::size_t room = 0;

    LemonInARoom()
    {
        auto& household = facts.as_told;
        std::erase_if(facts.events.edit(), [](const home::Event& event) { return event.kind == home::EventKind::Moved; });
        const auto spot = std::ranges::find_if(household.spots, [](const home::Spot& of) { return !home::is_outdoors(of.kind); });
        const auto plant = std::ranges::find(household.plants, "Citrus limon", &home::Plant::kind);
        EXPECT_TRUE(spot != household.spots.end() && plant != household.plants.end());
        plant->spot = spot->id;
        lemon = plant->id;
        place = static_cast<std::size_t>(plant - household.plants.begin());
        room = static_cast<std::size_t>(spot - household.spots.begin());
    }
};

TEST(HouseholdYear, APlantIsOutFromTheEndOfItsHardeningOn)
{
    const LemonInARoom of;
    const auto parts = plan::round_parts(of.facts, of.facts.climate.nights(), kShownToday, Probability::literal(0.1));
    const auto ladder = std::ranges::find_if(parts.ladders, [&](const plan::Ladder& step) {
        return step.plant == of.lemon && step.direction == plan::Direction::Out;
    });
    ASSERT_NE(ladder, parts.ladders.end());
    ASSERT_LT(ladder->planned, ladder->reached) << "the nights let it out sooner than its hardening ends";
    const auto solved = household_year(of.facts, kShownToday, Units::Metric).solver(Probability::literal(0.1));
    const auto& stays = solved.stays[of.place];
    ASSERT_GE(stays.size(), 2U);
    EXPECT_EQ(stays[0].spot, of.room);
    EXPECT_EQ(stays[0].first, 0);
    EXPECT_EQ(stays[1].first, calendar::days_between(kShownToday, ladder->reached));
    EXPECT_EQ(stays[0].last, stays[1].first - 1);
    EXPECT_GT(stays[1].ladder_days, 0);
    EXPECT_LE(stays[1].ladder_days, stays[1].first);
    ASSERT_EQ(stays[1].ladder_words.size(), static_cast<std::size_t>(stays[1].ladder_days));
    EXPECT_EQ(stays[1].ladder_words.front(), "1 hour, full shade");
    EXPECT_EQ(stays[1].ladder_words.back(), "10 hours, where it shall stand");
    EXPECT_GT(std::ranges::count_if(stays[1].ladder_words, [](const auto& step) { return step.ends_with(", morning sun"); }), 0);
    for (const auto& item : ladder->items) {
        const int before = calendar::days_between(item.date, ladder->reached);
        if (before > 0) {
            EXPECT_EQ(stays[1].ladder_words.at(stays[1].ladder_words.size() - static_cast<std::size_t>(before)), words::ladder_step(item));
        }
    }
    const auto next = next_move(parts, of.lemon, of.facts.as_told.plants[of.place].spot, kShownToday);
    ASSERT_TRUE(next);
    EXPECT_EQ(next->on, ladder->reached);
}

TEST(HouseholdYear, WhyAPlantStaysInIsSaidInItsLongestStay)
{
    LemonInARoom of;
    for (auto& spot : of.facts.as_told.spots) {
        spot.in_reach = spot.in_reach || home::is_outdoors(spot.kind);
    }
    const auto solved = household_year(of.facts, kShownToday, Units::Metric).solver(Probability::literal(0.1));
    const auto& stays = solved.stays[of.place];
    ASSERT_FALSE(stays.empty());
    const auto longest = std::ranges::max_element(stays, {}, [](const YearStay& stay) { return stay.last - stay.first; });
    EXPECT_EQ(longest->stays_in, "stays in all year: every spot outdoors is within reach of a child or an animal");
    EXPECT_EQ(std::ranges::count_if(stays, [](const YearStay& stay) { return !stay.stays_in.empty(); }), 1);
    const auto goes = household_year(plain_facts(), kShownToday, Units::Metric).solver(Probability::literal(0.1));
    for (const auto& of_plant : goes.stays) {
        for (const auto& stay : of_plant) {
            EXPECT_TRUE(stay.stays_in.empty() || std::ranges::none_of(of_plant, [&](const YearStay& any) {
                            return home::is_outdoors(plain_facts().as_told.spots[any.spot].kind);
                        }));
        }
    }
}

TEST(HouseholdYear, TheCalendarHasEachSowingOnItsFirstDay)
{
    const auto facts = with_seeds(plain_facts(), kShownToday);
    ASSERT_FALSE(facts.seeds.lots.empty());
    const auto parts = plan::round_parts(facts, facts.climate.nights(), kShownToday, Probability::literal(0.1));
    std::map<std::string, int> sowings;
    for (const auto& event : cli::round_calendar(facts, parts, 365, words::UnitSystem::Metric)) {
        if (event.summary.find("sow ") != std::string::npos) {
            EXPECT_EQ(event.category, "Seeds");
            ++sowings[event.summary];
        }
    }
    EXPECT_FALSE(sowings.empty());
    for (const auto& [summary, count] : sowings) {
        EXPECT_EQ(count, 1) << summary;
    }
}

TEST(HouseholdYear, TheCalendarTellsTheDaysOfHardeningBeforeItsCautions)
{
    const LemonInARoom of;
    const auto parts = plan::round_parts(of.facts, of.facts.climate.nights(), kShownToday, Probability::literal(0.1));
    const auto events = cli::round_calendar(of.facts, parts, 30, words::UnitSystem::Metric);
    const auto days = std::ranges::find_if(events, [](const exchange::CalendarEvent& event) {
        return event.summary.starts_with("Lemon") && event.summary.ends_with("hardening, out by day");
    });
    ASSERT_NE(days, events.end());
    ASSERT_LT(days->from, days->to);
    const auto& words = days->description;
    const auto last_day = words.rfind("out for ");
    EXPECT_LT(last_day, words.find("Keep it out of reach")) << words;
    EXPECT_TRUE(words.ends_with("A date of the plan, which is a chance and not a promise.")) << words;
    EXPECT_EQ(std::ranges::count(words.substr(0, words.find("Keep it")), '\n'), calendar::days_between(days->from, days->to) + 1) << words;
}

} // namespace
} // namespace lathhouse::models
