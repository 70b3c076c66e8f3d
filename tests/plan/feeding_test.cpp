#include "core/plan/feeding.h"
#include "core/plan/withheld.h"

#include "tests/plan/growing_sample.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::plan {
namespace {

using namespace sample;
using home::EventKind;

/// Feeding of one plant at a place.
struct Case {
    home::Household home;
    climate::PlaceClimate climate;
    std::vector<home::Event> events = {};
    std::vector<PlantYear> stays = {};
    FeedingOptions options = {.from = date(2027, 1, 1)};

    PlantFeeding feeding() const
    {
        const home::SpotClimate spots{home, climate};
        auto all = feeding_year(home, climate, spots, events, stays, options);
        EXPECT_EQ(all.size(), 1U);
        return all.front();
    }
};

Case temperate(const char* kind, home::SpotId stands = kSill)
{
    return {potted_household(kind, 48.0, stands), place(48.0, 6.0, 10.0)};
}

bool open_on(const PlantFeeding& feeding, calendar::Date on)
{
    return std::ranges::any_of(feeding.windows, [&](const FeedingWindow& window) {
        return window.from <= on && on <= window.to;
    });
}

std::optional<Withheld> withheld_then(const PlantFeeding& feeding, calendar::Date on)
{
    const auto* held = withheld_on(feeding, on);
    return held != nullptr ? std::optional{*held} : std::nullopt;
}

TEST(FeedingYear, CoversEveryDayOnceWithAWindowOrAReason)
{
    for (const char* kind : {"Ficus benjamina", "Crassula ovata", "Citrus limon", "Caladium bicolor"}) {
        auto asked = temperate(kind);
        asked.events = {event(EventKind::Repotted, date(2027, 1, 1))};
        const auto feeding = asked.feeding();
        for (int day = 0; day < 365; ++day) {
            const auto on = asked.options.from + calendar::Days{day};
            EXPECT_NE(open_on(feeding, on), withheld_then(feeding, on).has_value()) << kind << " " << on;
        }
    }
}

TEST(FeedingYear, IsHalfWhileAPlantIsYoung)
{
    auto asked = temperate("Capsicum annuum");
    asked.options.from = date(2027, 4, 1);
    const auto grown = asked.feeding();
    const auto until = date(2027, 5, 20);
    asked.home.plants.front().young_until = until;
    const auto young = asked.feeding();
    ASSERT_FALSE(grown.days.empty());
    EXPECT_FALSE(grown.days.front().young);
    int weak = 0;
    for (const auto& feed : young.days) {
        EXPECT_EQ(feed.young, feed.on < until + calendar::Days{60}) << feed.on; // It stands indoors.
        weak += feed.young ? 1 : 0;
    }
    EXPECT_GT(weak, 0);
    const auto& nitrogen = plants::PlantReference::built_in().find("Capsicum annuum").value()->feed_nitrogen_ppm;
    EXPECT_LE(young.days.front().nitrogen_ppm, nitrogen.high / 2.0);
    EXPECT_GE(young.days.back().nitrogen_ppm, nitrogen.low);
    for (int day = 0; day < 365; ++day) {
        const auto on = asked.options.from + calendar::Days{day};
        EXPECT_NE(open_on(young, on), withheld_then(young, on).has_value()) << on;
    }
    asked.home.plants.front().spot = kOpen; // Planted out once it is old enough.
    for (const auto& feed : asked.feeding().days) {
        EXPECT_EQ(feed.young, feed.on < until) << feed.on;
    }
}

// Extension advice for 40 to 45 degrees north: nothing from late October to late February, start in early March
// (rule feed_day_length and its source).
TEST(FeedingYear, OfAHousePlantRunsFromSpringToAutumn)
{
    const auto feeding = temperate("Ficus benjamina").feeding();
    EXPECT_FALSE(open_on(feeding, date(2027, 1, 5)));
    EXPECT_FALSE(open_on(feeding, date(2027, 12, 10)));
    EXPECT_TRUE(open_on(feeding, date(2027, 4, 15)));
    EXPECT_TRUE(open_on(feeding, date(2027, 8, 15)));
}

TEST(FeedingYear, IsTurnedRoundInTheSouth)
{
    Case south{potted_household("Ficus benjamina", -48.0), place(-48.0, 6.0, 10.0)};
    // The sample's light follows the hemisphere by itself.
    const auto feeding = south.feeding();
    EXPECT_TRUE(open_on(feeding, date(2027, 1, 5)));
    EXPECT_FALSE(open_on(feeding, date(2027, 7, 5)));
    EXPECT_TRUE(open_on(feeding, date(2027, 11, 15)));
}

TEST(FeedingYear, HasNoWinterInTheTropics)
{
    // Nights of 22, days of 32 all year, at the equator: even a kind that rests in winter has none there.
    Case tropics{potted_household("Euphorbia milii", 1.0, kOpen), place(1.0, 22.0, 0.5)};
    const auto feeding = tropics.feeding();
    ASSERT_EQ(feeding.windows.size(), 1U);
    EXPECT_EQ(feeding.windows.front().from, date(2027, 1, 1));
    EXPECT_EQ(feeding.windows.front().to, date(2027, 12, 31));
}

TEST(FeedingYear, StopsWhereRainKeepsThePotWet)
{
    Case monsoon{potted_household("Hibiscus rosa-sinensis", 15.0, kOpen), place(15.0, 22.0, 1.0, 20.0)};
    for (std::size_t month = 5; month < 9; ++month) {
        monsoon.climate.rain[month] = Millimetres::from_millimetres(500.0);
    }
    const auto feeding = monsoon.feeding();
    const auto wet = withheld_then(feeding, date(2027, 7, 15));
    ASSERT_TRUE(wet);
    EXPECT_EQ(wet->why, WithheldWhy::WetSeason);
    EXPECT_TRUE(open_on(feeding, date(2027, 11, 15)));
    monsoon.home.plants.front().spot = kSill; // Under a roof it is fed.
    EXPECT_TRUE(open_on(monsoon.feeding(), date(2027, 7, 15)));
}

TEST(FeedingYear, IsWithheldFromAPlantThatRests)
{
    const auto feeding = temperate("Crassula ovata").feeding();
    const auto winter = withheld_then(feeding, date(2027, 1, 5));
    ASSERT_TRUE(winter);
    EXPECT_EQ(winter->why, WithheldWhy::Rests);
    ASSERT_TRUE(winter->to);
    EXPECT_GT(*winter->to, date(2027, 2, 10)); // Days of 11 hours come on about 24 February at 48 degrees.
    EXPECT_LT(*winter->to, date(2027, 3, 5));
}

TEST(FeedingYear, IsWithheldAfterRepottingForSixWeeks)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::Repotted, date(2027, 5, 20))};
    const auto rest = withheld_then(asked.feeding(), date(2027, 6, 1));
    ASSERT_TRUE(rest);
    EXPECT_EQ(rest->why, WithheldWhy::Repotted);
    EXPECT_EQ(rest->to, date(2027, 6, 30));
    EXPECT_TRUE(open_on(asked.feeding(), date(2027, 7, 1)));
}

TEST(FeedingYear, WaitsForNewGrowthAfterChemicalDamage)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::ChemicalDamage, date(2027, 5, 20))};
    const auto open_end = withheld_then(asked.feeding(), date(2027, 8, 1));
    ASSERT_TRUE(open_end);
    EXPECT_EQ(open_end->why, WithheldWhy::ChemicalDamage);
    EXPECT_EQ(open_end->until, WithheldUntil::NewGrowth);
    EXPECT_FALSE(open_end->to) << "nobody knows when";
    asked.events.push_back(event(EventKind::NewGrowth, date(2027, 5, 30)));
    const auto held = withheld_then(asked.feeding(), date(2027, 7, 14));
    ASSERT_TRUE(held) << "nobody knows what it was: eight weeks in any case";
    EXPECT_EQ(held->to, date(2027, 7, 14));
    EXPECT_EQ(held->until, WithheldUntil::Date);
    EXPECT_TRUE(open_on(asked.feeding(), date(2027, 7, 15)));
}

TEST(FeedingYear, HoldsFeedAsLongAsTheAnswerOnDamageSays)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::ChemicalDamage, date(2027, 5, 20), {{"product", "glyphosate"}}),
                    event(EventKind::NewGrowth, date(2027, 5, 30))};
    EXPECT_TRUE(withheld_then(asked.feeding(), date(2027, 9, 1))) << "26 weeks, though it grows";
    // Told anew: it was vinegar, with two weeks.
    asked.events.push_back(event(EventKind::ChemicalDamage, date(2027, 5, 20), {{"product", "vinegar"}}));
    EXPECT_FALSE(open_on(asked.feeding(), date(2027, 6, 2)));
    EXPECT_TRUE(open_on(asked.feeding(), date(2027, 6, 3)));
}

TEST(FeedingYear, CountsNewGrowthOnlyAfterTheDamage)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::NewGrowth, date(2027, 5, 10)),
                    event(EventKind::ChemicalDamage, date(2027, 5, 20))};
    EXPECT_TRUE(withheld_then(asked.feeding(), date(2027, 6, 1)));
}

TEST(FeedingYear, IsWithheldAfterAColdNightThatHurt)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::ColdNight, date(2027, 5, 20), {{"low_c", "2"}})};
    const auto chilled = withheld_then(asked.feeding(), date(2027, 6, 1));
    ASSERT_TRUE(chilled);
    EXPECT_EQ(chilled->why, WithheldWhy::Chilled);
    asked.events = {event(EventKind::ColdNight, date(2027, 5, 20), {{"low_c", "14"}})};
    EXPECT_TRUE(open_on(asked.feeding(), date(2027, 6, 1))) << "14 C hurts no weeping fig";
    auto at_spot = event(EventKind::ColdNight, date(2027, 5, 20), {{"low_c", "2"}});
    at_spot.plant = std::nullopt;
    at_spot.spot = kSill;
    asked.events = {moved(date(2027, 1, 1), kSill), at_spot};
    EXPECT_TRUE(withheld_then(asked.feeding(), date(2027, 6, 1))) << "it stood at that spot";
    asked.events = {moved(date(2027, 1, 1), kDim), at_spot, moved(date(2027, 5, 30), kSill)};
    const auto elsewhere = withheld_then(asked.feeding(), date(2027, 6, 1));
    EXPECT_TRUE(!elsewhere || elsewhere->why != WithheldWhy::Chilled) << "it stood elsewhere";
}

TEST(FeedingYear, CountsANightOfTheWholeHouseholdForWhatStoodOutdoors)
{
    auto night = event(EventKind::ColdNight, date(2027, 5, 20), {{"low_c", "-6"}});
    night.plant = std::nullopt;
    for (const auto spot : {kOpen, kSill}) {
        auto asked = temperate("Citrus limon", spot);
        asked.options.from = date(2027, 6, 1);
        asked.events = {night};
        const auto rest = withheld_then(asked.feeding(), date(2027, 6, 1));
        EXPECT_EQ(rest && rest->why == WithheldWhy::Chilled, spot == kOpen);
    }
}

TEST(FeedingYear, IsWithheldFromSickRootsUntilReleasedAndGrowing)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::Isolated, date(2027, 5, 1), {{"why", "root rot"}}),
                    event(EventKind::Released, date(2027, 5, 20))};
    const auto sick = withheld_then(asked.feeding(), date(2027, 6, 1));
    ASSERT_TRUE(sick);
    EXPECT_EQ(sick->why, WithheldWhy::SickRoots);
    asked.events.push_back(event(EventKind::NewGrowth, date(2027, 5, 25)));
    EXPECT_TRUE(open_on(asked.feeding(), date(2027, 6, 1)));
}

TEST(FeedingYear, IsWithheldFromAPlantOfAShop)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    auto came = moved(date(2027, 5, 25), kSill);
    came.details["bought"] = "yes";
    asked.events = {came};
    const auto rest = withheld_then(asked.feeding(), date(2027, 6, 20));
    ASSERT_TRUE(rest);
    EXPECT_EQ(rest->why, WithheldWhy::Bought);
}

TEST(FeedingYear, WaitsTwoWeeksAfterAPlannedMoveIntoTheSun)
{
    auto asked = temperate("Citrus limon");
    const auto out = date(2027, 6, 1);
    asked.stays = stays_of({stay(kSill, date(2027, 1, 1), date(2027, 5, 31)), stay(kOpen, out, date(2027, 12, 31))});
    const auto rest = withheld_then(asked.feeding(), date(2027, 6, 5));
    ASSERT_TRUE(rest);
    EXPECT_EQ(rest->why, WithheldWhy::Moved);
    EXPECT_EQ(rest->from, out);
    EXPECT_EQ(rest->to, date(2027, 6, 14));
}

TEST(FeedingYear, StaysOpenUnderLamps)
{
    auto asked = temperate("Epipremnum aureum");
    EXPECT_FALSE(open_on(temperate("Epipremnum aureum", kDim).feeding(), date(2027, 1, 5)));
    asked.home.plants.front().spot = kDim;
    asked.options.lamps = Lamps{14.0, PhotonFlux::from_micromoles(60.0)};
    const auto feeding = asked.feeding();
    EXPECT_TRUE(open_on(feeding, date(2027, 1, 5)));
    EXPECT_TRUE(feeding.windows.front().by_lamps);
    asked.options.lamps = Lamps{1.0, PhotonFlux::from_micromoles(5.0)};
    EXPECT_FALSE(open_on(asked.feeding(), date(2027, 1, 5))) << "a candle is no lamp";
}

TEST(FeedingYear, LampsWhoseLightIsNotKnownAreWeak)
{
    const auto measured = lamps_of(14.0, PhotonFlux::from_micromoles(60.0));
    EXPECT_EQ(measured.hours, 14.0);
    EXPECT_NEAR(measured.flux.micromoles(), 60.0, 1e-9);
    const auto unknown = lamps_of(14.0, std::nullopt);
    EXPECT_GT(unknown.flux.micromoles(), 0.0);
    EXPECT_LT(unknown.flux.micromoles(), 60.0);
}

TEST(FeedingYear, FeedsAtTheIntervalFromTheLastFeed)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::Fed, date(2027, 5, 25))};
    const auto feeding = asked.feeding();
    ASSERT_FALSE(feeding.days.empty());
    EXPECT_EQ(feeding.last_fed, date(2027, 5, 25));
    const auto& window = feeding.windows.front();
    EXPECT_EQ(feeding.days.front().on, date(2027, 5, 25) + calendar::Days{window.every_days});
    EXPECT_GE(window.every_days, 21) << "a middling grower";
    EXPECT_LE(window.every_days, 63);
    for (const auto& day : feeding.days) {
        EXPECT_TRUE(open_on(feeding, day.on));
        EXPECT_GE(day.nitrogen_ppm, window.nitrogen_ppm.low);
        EXPECT_LE(day.nitrogen_ppm, window.nitrogen_ppm.high);
    }
}

TEST(FeedingYear, GivesSucculentsTwoFeeds)
{
    const auto feeding = temperate("Crassula ovata").feeding();
    EXPECT_GE(feeding.days.size(), 1U);
    EXPECT_LE(feeding.days.size(), 2U * feeding.windows.size() + 1U);
}

TEST(FeedingYear, SaysWhereNothingIsKnown)
{
    auto asked = temperate("Ficus benjamina");
    asked.home.plants.front().kind = "the red one from my aunt";
    const auto feeding = asked.feeding();
    EXPECT_TRUE(feeding.windows.empty());
    ASSERT_EQ(feeding.withheld.size(), 1U);
    EXPECT_EQ(feeding.withheld.front().why, WithheldWhy::UnknownKind);
    EXPECT_FALSE(feeding.withheld.front().to);
    auto nowhere = temperate("Ficus benjamina");
    nowhere.home.plants.front().spot = std::nullopt;
    EXPECT_EQ(nowhere.feeding().withheld.front().why, WithheldWhy::Nowhere);
}

// University of Nebraska Extension: a 15 cm pot holds 1.2 L and takes 2.4 L; every four to six months (University
// of California).
TEST(Leaching, TakesTwiceThePotEveryFewMonths)
{
    auto asked = temperate("Ficus benjamina");
    asked.home.plants.front().pot_volume = Litres::from_litres(1.2);
    asked.events = {event(EventKind::Leached, date(2026, 11, 20))};
    const auto usual = asked.feeding().leaching;
    ASSERT_TRUE(usual);
    EXPECT_NEAR(usual->water.litres(), 2.4, 1e-12);
    EXPECT_FALSE(usual->rough);
    EXPECT_EQ(usual->due, date(2027, 4, 21)); // Five months of 30.44 days.
    asked.options.water = WaterHardness::Hard;
    EXPECT_EQ(asked.feeding().leaching->every_months, 4);
    asked.options.water = WaterHardness::Soft;
    EXPECT_EQ(asked.feeding().leaching->every_months, 6);
}

TEST(Leaching, WaitsForGrowth)
{
    auto asked = temperate("Ficus benjamina");
    asked.events = {event(EventKind::Leached, date(2026, 1, 1))};
    const auto feeding = asked.feeding();
    ASSERT_TRUE(feeding.leaching->due);
    EXPECT_GT(*feeding.leaching->due, date(2027, 2, 1));
    EXPECT_TRUE(open_on(feeding, *feeding.leaching->due));
}

TEST(DueOn, NamesTheFeedUntilItsTimeIsOver)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::Fed, date(2027, 5, 25)), event(EventKind::Leached, date(2027, 5, 25))};
    const std::vector<PlantFeeding> year{asked.feeding()};
    const auto& first = year.front().days.front();
    EXPECT_TRUE(due_on(year, first.on - calendar::Days{1}).empty());
    const auto due = due_on(year, first.on);
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due.front().task, FeedingTask::Feed);
    EXPECT_EQ(due.front().can_wait_until, first.can_wait_until);
    EXPECT_EQ(due_on(year, first.can_wait_until).size(), 1U);
    EXPECT_FALSE(due.front().first);
    asked.events.clear();
    const std::vector<PlantFeeding> never_fed{asked.feeding()};
    ASSERT_GE(never_fed.front().days.size(), 2U);
    EXPECT_TRUE(due_on(never_fed, never_fed.front().days[0].on).front().first);
    EXPECT_FALSE(due_on(never_fed, never_fed.front().days[1].on).front().first);
}

/// What the round writes where a task of the plant is left out or put off.
home::Event task_said(EventKind kind, const char* task, calendar::Date on)
{
    auto said = event(kind, on);
    said.details["task"] = std::string{task} + "1/" + calendar::to_text(on);
    return said;
}

/// In the middle of growth, with a diary that begins so many days before and tells of no washing out.
Case known_for(int days)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 6, 1);
    asked.events = {event(EventKind::Noted, asked.options.from - calendar::Days{days})};
    return asked;
}

// Salts gather with every feed and watering, in four to six months (University of California): a plant of which
// nothing is known yet is not thought full of them.
TEST(Leaching, IsNotAskedOfAPlantThatIsNewHere)
{
    EXPECT_GE(known_for(0).feeding().leaching->due, date(2027, 10, 31)); // 152 days.
    EXPECT_EQ(known_for(100).feeding().leaching->due, date(2027, 7, 23));
    EXPECT_EQ(known_for(200).feeding().leaching->due, date(2027, 6, 1));
    auto nothing = known_for(0);
    nothing.events.clear();
    EXPECT_GE(nothing.feeding().leaching->due, date(2027, 10, 31));
    EXPECT_FALSE(nothing.feeding().leaching->last);
}

TEST(Leaching, LeftOutIsAskedAgainAfterAMonthAndPutOffOnItsDay)
{
    auto asked = known_for(200);
    asked.events.push_back(task_said(EventKind::TaskSkipped, "wash-out/", date(2027, 5, 30)));
    EXPECT_EQ(asked.feeding().leaching->due, date(2027, 6, 29));
    asked.events.back() = task_said(EventKind::TaskPostponed, "wash-out/", date(2027, 5, 30));
    asked.events.back().details["until"] = "2027-06-05";
    EXPECT_EQ(asked.feeding().leaching->due, date(2027, 6, 5));
}

TEST(DueOn, AsksOneOfWashingOutAndFeeding)
{
    auto asked = known_for(200);
    const auto today = asked.options.from;
    auto due = due_on(std::vector{asked.feeding()}, today);
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due.front().task, FeedingTask::Leach);
    // Left out, it no longer keeps the feed waiting.
    asked.events.push_back(task_said(EventKind::TaskSkipped, "wash-out/", today));
    due = due_on(std::vector{asked.feeding()}, today);
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due.front().task, FeedingTask::Feed);
}

TEST(DueOn, FeedsTheDayAfterTheWashingOut)
{
    auto asked = known_for(200);
    const auto today = asked.options.from;
    asked.events.push_back(event(EventKind::Leached, today));
    const std::vector<PlantFeeding> year{asked.feeding()};
    EXPECT_TRUE(due_on(year, today).empty());
    const auto due = due_on(year, today + calendar::Days{1});
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due.front().task, FeedingTask::Feed);
}

TEST(DueOn, AFeedThatIsLeftOutIsFollowedByTheNextInItsTurn)
{
    auto asked = known_for(0);
    const auto today = asked.options.from;
    ASSERT_EQ(due_on(std::vector{asked.feeding()}, today).size(), 1U);
    asked.events.push_back(task_said(EventKind::TaskSkipped, "feed/", today));
    const auto feeding = asked.feeding();
    EXPECT_EQ(feeding.days.front().on, today + calendar::Days{feeding.windows.front().every_days});
    EXPECT_FALSE(feeding.last_fed); // Nothing was given.
}

TEST(FeedingYear, WithholdsFromAPlantThatStandsApartUntilItIsReleased)
{
    auto asked = temperate("Ficus benjamina");
    asked.events = {event(EventKind::Isolated, date(2027, 5, 1), {{"why", "mealybugs"}}),
                    event(EventKind::Released, date(2027, 5, 20))};
    const auto feeding = asked.feeding();
    const auto apart = withheld_then(feeding, date(2027, 5, 10));
    ASSERT_TRUE(apart);
    EXPECT_EQ(apart->why, WithheldWhy::Isolated);
    EXPECT_FALSE(withheld_then(feeding, date(2027, 6, 10)));
}

TEST(FeedingYear, WithholdsFromAnInfestedPlantUntilItCanBeClear)
{
    auto asked = temperate("Ficus benjamina");
    asked.options.from = date(2027, 5, 10);
    asked.events = {event(EventKind::PestFound, date(2027, 5, 1), {{"pest", "citrus mealybug"}})};
    const auto feeding = asked.feeding();
    const auto held = withheld_then(feeding, asked.options.from);
    ASSERT_TRUE(held);
    EXPECT_EQ(held->why, WithheldWhy::Infested);
    EXPECT_EQ(held->since, date(2027, 5, 1));
    EXPECT_EQ(held->until, WithheldUntil::NoPests);
    ASSERT_TRUE(held->to); // Some weeks at a room's temperatures.
    EXPECT_GT(*held->to, date(2027, 5, 20));
    EXPECT_TRUE(due_on(std::vector{feeding}, asked.options.from).empty());
    asked.options.from = *held->to + calendar::Days{30};
    ASSERT_TRUE(withheld_then(asked.feeding(), asked.options.from)); // No clean look: its course goes on.
    asked.events.push_back(event(EventKind::Inspected, asked.options.from, {{"found", "nothing"}}));
    EXPECT_FALSE(withheld_then(asked.feeding(), asked.options.from));
}

TEST(DueOn, AFirstFeedSaysHowOftenItIsFedNow)
{
    const auto asked = known_for(0);
    const auto feeding = asked.feeding();
    const auto due = due_on(std::vector{feeding}, asked.options.from);
    ASSERT_EQ(due.size(), 1U);
    EXPECT_TRUE(due.front().first);
    EXPECT_EQ(due.front().every_days, feeding.windows.front().every_days);
}

TEST(FeedingYear, NeverFeedsWhatLivesWithoutFeed)
{
    const auto feeding = temperate("Dionaea muscipula").feeding();
    EXPECT_TRUE(feeding.windows.empty());
    const auto rest = withheld_then(feeding, date(2027, 6, 1));
    ASSERT_TRUE(rest);
    EXPECT_EQ(rest->why, WithheldWhy::NeverFed);
}

} // namespace
} // namespace lathhouse::plan
