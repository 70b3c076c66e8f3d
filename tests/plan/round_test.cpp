#include "core/plan/round_parts.h"

#include "tests/plan/sample_household.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;
using home::Event;
using home::EventKind;

const Date kToday{2027, 6, 15};

class Round : public testing::Test {
protected:
    Round()
    {
        auto home = household({indoors(1, 6), balcony(2, 6), indoors(3, 2)},
                              {plant(1, 10, 4, 0), plant(2, 10, 4, 0), plant(3, 10, 4, 0), plant(4, 10, 4, 0)});
        home.spots[2].apart = true;
        home.spots[0].walking_order = 2;
        home.spots[1].walking_order = 1;
        home.plants[0].spot = 1;
        home.plants[1].spot = 2;
        home.plants[2].spot = 2;
        home.plants[3].spot = 1;
        for (auto& one : home.plants) {
            one.kind = "Citrus limon";
        }
        facts_.as_told = home;
    }
    void happened(EventKind kind, home::PlantId plant, int days_ago, std::map<std::string, std::string> details = {},
                  std::optional<home::SpotId> spot = {})
    {
        const auto date = kToday - Days{days_ago};
        facts_.events.push_back({plant, kind, spot, date, calendar::start_of_day_utc(date), "", std::move(details)});
    }
    std::vector<Task> round(Date date = kToday) const
    {
        return round_of(facts_.as_told, facts_.events, round_parts(facts_, nights_, kToday, Probability::literal(0.1)),
                        date);
    }
    /// The round of another day, on which all is planned anew.
    std::vector<Task> round_made(Date today) const
    {
        return round_of(facts_.as_told, facts_.events, round_parts(facts_, nights_, today, Probability::literal(0.1)),
                        today);
    }
    template <class Matter>
    static std::vector<Task> of(const std::vector<Task>& tasks)
    {
        std::vector<Task> found;
        std::ranges::copy_if(tasks, std::back_inserter(found),
                             [](const Task& task) { return std::holds_alternative<Matter>(task.matter); });
        return found;
    }
    climate::PlaceClimate place_ = climate_of(5.0, 10.0);
    climate::NightModel nights_ = place_.nights();
    HouseholdFacts facts_{.as_told = household({}, {}), .log = {}, .events = {}, .climate = place_};
};

TEST_F(Round, LooksAtTheWaterOfAPlantThatNobodyHasWatered)
{
    const auto looks = of<WaterDue>(round());
    EXPECT_EQ(looks.size(), 4u);
    EXPECT_TRUE(of<Hygiene>(round()).empty());
}

TEST_F(Round, WhatASprayHitRestsUntilNewGrowthOrTheHoldIsOver)
{
    const auto rests = [&] { return wishes_of(facts_, kToday).resting; };
    EXPECT_TRUE(rests().empty());
    happened(EventKind::ChemicalDamage, 1, 3, {{"product", "glyphosate"}});
    happened(EventKind::ColdNight, 4, 2, {{"low_c", "1"}});
    happened(EventKind::ColdNight, 2, 2, {{"low_c", "9"}}); // Cool, no harm.
    ASSERT_EQ(rests().size(), 2u);
    EXPECT_EQ(rests()[0].plant, 1);
    EXPECT_EQ(rests()[0].why, RestWhy::Sprayed);
    EXPECT_EQ(rests()[0].until, damage_courses(facts_.as_told, facts_.events).front().no_feed_before);
    EXPECT_EQ(rests()[1].plant, 4);
    EXPECT_EQ(rests()[1].until, kToday + Days{12}); // Two weeks after the night.
    happened(EventKind::NewGrowth, 1, 0);
    happened(EventKind::NewGrowth, 4, 0);
    EXPECT_TRUE(rests().empty());
}

TEST_F(Round, ASprayOfASpotCountsForThePlantsThatStoodThereThatDay)
{
    const auto sprayed = [&](std::optional<home::SpotId> spot) {
        facts_.events.push_back({{}, EventKind::ChemicalDamage, spot, kToday - Days{3}, calendar::start_of_day_utc(kToday - Days{3}), "",
                                 {{"product", "glyphosate"}}});
        std::set<home::PlantId> resting;
        for (const auto& rest : wishes_of(facts_, kToday).resting) {
            EXPECT_EQ(rest.why, RestWhy::Sprayed);
            EXPECT_EQ(rest.since, kToday - Days{3});
            resting.insert(rest.plant);
        }
        return resting;
    };
    happened(EventKind::Moved, 1, 10, {}, 2);
    happened(EventKind::Moved, 1, 1, {}, 1); // It stands elsewhere since.
    EXPECT_EQ(sprayed(2), (std::set<home::PlantId>{1, 2, 3}));
    happened(EventKind::NewGrowth, 2, 0);
    EXPECT_EQ(sprayed(2), (std::set<home::PlantId>{1, 3}));
    facts_.events = {};
    EXPECT_EQ(sprayed({}), (std::set<home::PlantId>{2, 3})) << "without a spot it is for those outdoors";
}

TEST_F(Round, GoesFromCleanOverSuspectToInfestedWithWashingBetween)
{
    happened(EventKind::PestFound, 2, 3, {{"pest", "mealybug"}, {"amount", "few"}});
    const auto tasks = round();
    EXPECT_TRUE(std::ranges::is_sorted(tasks, {}, &Task::state));
    const auto hygiene = of<Hygiene>(tasks);
    ASSERT_EQ(hygiene.size(), 3u); // Before the suspect one, before the infested one, at the end.
    EXPECT_EQ(std::get<Hygiene>(hygiene[0].matter), Hygiene::BeforeSuspect);
    EXPECT_EQ(std::get<Hygiene>(hygiene[1].matter), Hygiene::BeforeInfested);
    EXPECT_EQ(std::get<Hygiene>(tasks.back().matter), Hygiene::AtTheEnd);
    // The plant that shares the balcony is suspect, the two of the sill are clean.
    for (const auto& task : tasks) {
        if (task.plant) {
            EXPECT_EQ(task.state, *task.plant == 2   ? PestState::Infested
                                  : *task.plant == 3 ? PestState::Suspect
                                                     : PestState::Clean);
        }
    }
    EXPECT_FALSE(of<CourseStep>(tasks).empty());
}

TEST_F(Round, WithinAClassItGoesByWalkingOrder)
{
    const auto tasks = round();
    std::vector<int> orders;
    for (const auto& task : tasks) {
        if (task.spot) {
            orders.push_back(facts_.as_told.spot(*task.spot)->walking_order);
        }
    }
    EXPECT_TRUE(std::ranges::is_sorted(orders));
}

TEST_F(Round, WhatIsTickedSkippedOrPutOffIsGone)
{
    const auto looks = of<WaterDue>(round());
    ASSERT_EQ(looks.size(), 4u);
    facts_.events.push_back(done_event(looks[0], kToday, calendar::start_of_day_utc(kToday)));
    EXPECT_EQ(of<WaterDue>(round()).size(), 3u);
    happened(EventKind::TaskPostponed, *looks[1].plant, 0,
             {{"task", looks[1].key}, {"until", calendar::to_text(kToday + Days{1})}});
    EXPECT_EQ(of<WaterDue>(round()).size(), 2u);
    happened(EventKind::TaskSkipped, *looks[2].plant, 0, {{"task", looks[2].key}});
    EXPECT_EQ(of<WaterDue>(round()).size(), 1u);
}

TEST_F(Round, ASowingLeftOutComesAgainInItsNextSeason)
{
    facts_.climate = climate_of(6.5, 10.0);
    facts_.seeds.lots = {{1, "Balcony tomato", "Solanum lycopersicum", {}, 90.0, 60, {}}};
    const auto sowings_on = [&](Date date) {
        return of<SowingTask>(round_of(facts_.as_told, facts_.events,
                                       round_parts(facts_, nights_, date, Probability::literal(0.1)), date));
    };
    for (int day = 200; day < 365; day += 10) { // Towards the spring.
        const Date date = kToday + Days{day};
        const auto tasks = sowings_on(date);
        if (tasks.empty()) {
            continue;
        }
        happened(EventKind::TaskSkipped, 0, -day, {{"task", tasks[0].key}});
        facts_.events.edit().back().plant = {};
        EXPECT_TRUE(sowings_on(date).empty());
        EXPECT_FALSE(sowings_on(date + Days{365}).empty()) << "a year later it is another sowing";
        return;
    }
    FAIL() << "never sown";
}

TEST_F(Round, ATickedCarryIsAMove)
{
    LadderStep step{{LadderItemKind::CarryIn, kToday, kToday, 0, Shade::None}, 3};
    const Task task{step, PestState::Clean, 1, 2, kToday, kToday, 5, "carry-in/1/2027-06-15"};
    const auto event = done_event(task, kToday, calendar::start_of_day_utc(kToday));
    EXPECT_EQ(event.kind, EventKind::Moved);
    EXPECT_EQ(event.spot, 3);
    EXPECT_EQ(event.plant, 1);
}

TEST_F(Round, SeedsAreAmongItInTheirSeason)
{
    facts_.climate = climate_of(6.5, 10.0);
    facts_.seeds.lots = {{1, "Balcony tomato", "Solanum lycopersicum", {}, 90.0, 60, {}}};
    int rounds = 0;
    for (int month = 1; month <= 12; ++month) {
        const Date date{2027, static_cast<unsigned short>(month), 20};
        const auto tasks = of<SowingTask>(round_of(
            facts_.as_told, facts_.events, round_parts(facts_, nights_, date, Probability::literal(0.1)), date));
        for (const auto& task : tasks) {
            EXPECT_TRUE(task.key.starts_with("seeds")) << task.key;
            EXPECT_FALSE(task.plant);
            EXPECT_LE(task.due, date);
            EXPECT_GE(task.latest, date);
        }
        rounds += tasks.empty() ? 0 : 1;
    }
    EXPECT_GT(rounds, 0);
    EXPECT_LT(rounds, 12);
}

TEST_F(Round, ATickSaysWhatWasDone)
{
    const auto now = calendar::start_of_day_utc(kToday);
    const auto tick = [&](TaskMatter matter) {
        return done_event({std::move(matter), PestState::Clean, 1, 2, kToday, kToday, 5, "key"}, kToday, now);
    };
    const auto fed = tick(FeedingDue{1, FeedingTask::Feed, kToday, kToday, 2, 100.0, {}});
    EXPECT_EQ(fed.kind, EventKind::Fed);
    EXPECT_EQ(fed.details.at("ppm"), "100");
    EXPECT_EQ(tick(FeedingDue{1, FeedingTask::Feed, kToday, kToday, 2, 142.9, {}}).details.at("ppm"), "143") << "as the task said it";
    EXPECT_EQ(fed.details.at("task"), "key");
    EXPECT_EQ(tick(FeedingDue{1, FeedingTask::Leach, kToday, kToday, 10, {}, Litres::from_litres(2.0)}).kind, EventKind::Leached);
    const auto step = [&](CourseAct act) { return tick(CourseStep{kToday, kToday, 1, act, nullptr, PestState::Infested, 5}).kind; };
    EXPECT_EQ(step(CourseAct::Treat), EventKind::Treated);
    EXPECT_EQ(step(CourseAct::SetApart), EventKind::Isolated);
    EXPECT_EQ(step(CourseAct::Inspect), EventKind::Inspected);
    EXPECT_EQ(step(CourseAct::LastInspection), EventKind::Inspected);
    const auto moved = tick(PlainMove{3});
    EXPECT_EQ(moved.kind, EventKind::Moved);
    EXPECT_EQ(moved.spot, 3);
    const auto ladder = [&](LadderItemKind kind) { return tick(LadderStep{{kind, kToday, kToday, 0, Shade::None}, 3}); };
    EXPECT_EQ(ladder(LadderItemKind::FirstNightOut).spot, 3);
    EXPECT_EQ(ladder(LadderItemKind::Inspect).kind, EventKind::Inspected);
    EXPECT_EQ(ladder(LadderItemKind::OutByDay).kind, EventKind::TaskDone);
    EXPECT_EQ(tick(Hygiene::AtTheEnd).kind, EventKind::TaskDone);
}

TEST_F(Round, ACarryInOfTonightComesFromTheKeptForecast)
{
    facts_.log.forecasts.push_back({kToday, kToday + Days{1}, Celsius::from_degrees(-1.0), {}, {},
                                    calendar::start_of_day_utc(kToday)});
    const auto carries = of<CarryInTonight>(round());
    ASSERT_EQ(carries.size(), 2u); // The two on the balcony.
    EXPECT_GT(std::get<CarryInTonight>(carries[0].matter).damage.fraction(), 0.5);
    facts_.log.forecasts.back().low = Celsius::from_degrees(16.0);
    EXPECT_TRUE(of<CarryInTonight>(round()).empty());
}

TEST_F(Round, ComingInForTheNightAndForGoodIsOneCarry)
{
    // The first day on which the plan has a plant come in.
    const auto year = round_parts(facts_, nights_, kToday, Probability::literal(0.1));
    std::optional<Date> comes_in;
    std::optional<home::PlantId> plant;
    for (int day = 1; day < 300 && !comes_in; ++day) {
        for (const auto& task : of<LadderStep>(round_of(facts_.as_told, facts_.events, year, kToday + Days{day}))) {
            if (std::get<LadderStep>(task.matter).item.kind == LadderItemKind::CarryIn && !comes_in) {
                comes_in = kToday + Days{day};
                plant = task.plant;
            }
        }
    }
    ASSERT_TRUE(comes_in) << "nothing comes in within the year";
    const auto carry_ins = [&](const std::vector<Task>& tasks) {
        return std::ranges::count_if(of<LadderStep>(tasks), [&](const Task& task) {
            return task.plant == plant && std::get<LadderStep>(task.matter).item.kind == LadderItemKind::CarryIn;
        });
    };
    ASSERT_EQ(carry_ins(round_made(*comes_in)), 1);
    facts_.log.forecasts.push_back({*comes_in, *comes_in + Days{1}, Celsius::from_degrees(-3.0), {}, {},
                                    calendar::start_of_day_utc(*comes_in)});
    const auto cold = round_made(*comes_in);
    EXPECT_EQ(carry_ins(cold), 0);
    const auto carries = of<CarryInTonight>(cold);
    const auto carry = std::ranges::find(carries, plant, &Task::plant);
    ASSERT_NE(carry, carries.end());
    const auto& matter = std::get<CarryInTonight>(carry->matter);
    EXPECT_TRUE(matter.stays);
    ASSERT_TRUE(matter.to);
    EXPECT_FALSE(home::is_outdoors(facts_.as_told.spot(*matter.to)->kind));
    const auto event = done_event(*carry, *comes_in, calendar::Instant{});
    EXPECT_EQ(event.kind, EventKind::Moved);
    EXPECT_EQ(event.spot, matter.to);
    EXPECT_EQ(event.detail("task"), carry->key);
    // Put off, the coming in is left to another day; the night is not.
    happened(EventKind::TaskPostponed, *plant, 0,
             {{"task", "carry-in/" + std::to_string(*plant) + "/" + calendar::to_text(*comes_in)}, {"until", calendar::to_text(*comes_in + Days{3})}});
    facts_.events.edit().back().happened = *comes_in;
    for (const auto& task : of<CarryInTonight>(round_made(*comes_in))) {
        EXPECT_FALSE(task.plant == plant && std::get<CarryInTonight>(task.matter).stays);
    }
}

TEST_F(Round, TheDaysAfterAColdNightHaveTheirLooks)
{
    happened(EventKind::ColdNight, 3, 3, {{"low_c", "1.0"}});
    const auto looks = of<ColdStep>(round());
    ASSERT_FALSE(looks.empty());
    EXPECT_EQ(looks[0].plant, 3);
    // Feeding waits until it grows again.
    for (const auto& task : of<FeedingDue>(round())) {
        EXPECT_NE(task.plant, 3);
    }
}

TEST_F(Round, AColdNightWrittenDownWithoutItsLowHasItsLooksToo)
{
    happened(EventKind::ColdNight, 3, 3);
    EXPECT_EQ(of<ColdStep>(round()).size(), 1U);
}

TEST_F(Round, ThePlanKeepsAnInfestedPlantApart)
{
    happened(EventKind::PestFound, 2, 1, {{"pest", "mealybug"}, {"amount", "few"}});
    const auto wishes = wishes_of(facts_, kToday);
    ASSERT_FALSE(wishes.isolated.empty());
    const auto parts = round_parts(facts_, nights_, kToday, Probability::literal(0.1));
    for (const auto& year : parts.plan.plants) {
        if (year.plant == 2) {
            EXPECT_EQ(year.stays.front().spot, 3);
        }
    }
}

TEST_F(Round, AYearOfRoundsHasNoDoubleKeyOnADay)
{
    happened(EventKind::PestFound, 2, 3, {{"pest", "mealybug"}, {"amount", "few"}});
    const auto parts = round_parts(facts_, nights_, kToday, Probability::literal(0.1));
    for (int day = 0; day < 365; ++day) {
        std::vector<std::string> keys;
        for (const auto& task : round_of(facts_.as_told, facts_.events, parts, kToday + Days{day})) {
            keys.push_back(task.key);
            EXPECT_GT(task.minutes, 0);
            EXPECT_LE(task.due, task.latest) << task.key;
        }
        std::ranges::sort(keys);
        EXPECT_EQ(std::ranges::adjacent_find(keys), keys.end()) << day;
    }
}

TEST_F(Round, LooksAtAPlantAfterWeedKiller)
{
    happened(EventKind::ChemicalDamage, 3, 3, {{"product", "glyphosate"}}); // It is looked at on the third day.
    const auto looks = of<DamageStep>(round());
    ASSERT_FALSE(looks.empty());
    EXPECT_EQ(looks.front().plant, 3);
}

TEST_F(Round, CarriesAPlantToABetterSpotIndoors)
{
    auto dim = indoors(1, 6, 0.2, 0.4);
    facts_.as_told.spots = {dim, indoors(2, 6)};
    facts_.as_told.plants = {plant(4, 25, 22, 20)}; // Never warm enough outdoors.
    facts_.as_told.plants[0].kind = "Citrus limon";
    facts_.as_told.plants[0].spot = 1;
    const auto carries = of<PlainMove>(round());
    ASSERT_EQ(carries.size(), 1U);
    EXPECT_EQ(carries.front().plant, 4);
}

TEST_F(Round, WhatIsPutOffStaysAwayThoughThePlanIsMadeAnewEachDay)
{
    const auto look = of<WaterDue>(round()).front();
    happened(EventKind::TaskPostponed, *look.plant, 0, {{"task", look.key}, {"until", calendar::to_text(kToday + Days{3})}});
    const auto asks = [&](int day) {
        const auto looks = of<WaterDue>(round_made(kToday + Days{day}));
        return std::ranges::find(looks, look.plant, &Task::plant) != looks.end();
    };
    EXPECT_FALSE(asks(1));
    EXPECT_FALSE(asks(2));
    EXPECT_TRUE(asks(3));
    EXPECT_EQ(of<WaterDue>(round_made(kToday + Days{1})).size(), 3U) << "the other plants' looks are not put off";
}

TEST_F(Round, APutOffCarryStaysAwayToo)
{
    facts_.as_told.spots = {indoors(1, 6, 0.2, 0.4), indoors(2, 6)};
    facts_.as_told.plants = {plant(4, 25, 22, 20)};
    facts_.as_told.plants[0].spot = 1;
    const auto carry = of<PlainMove>(round()).front();
    happened(EventKind::TaskPostponed, 4, 0, {{"task", carry.key}, {"until", calendar::to_text(kToday + Days{2})}});
    EXPECT_TRUE(of<PlainMove>(round_made(kToday + Days{1})).empty());
    EXPECT_EQ(of<PlainMove>(round_made(kToday + Days{2})).size(), 1U);
}

TEST_F(Round, SettingASuspectApartCanBePutOffThoughItTouchesTheInfestedOneEachDay)
{
    happened(EventKind::PestFound, 2, 3, {{"pest", "mealybug"}, {"amount", "few"}});
    const auto setting_apart = [&](int day) {
        auto steps = of<CourseStep>(round_made(kToday + Days{day}));
        std::erase_if(steps, [](const Task& task) {
            return task.plant != 3 || std::get<CourseStep>(task.matter).act != CourseAct::SetApart;
        });
        return steps;
    };
    ASSERT_EQ(setting_apart(0).size(), 1U);
    happened(EventKind::TaskPostponed, 3, 0,
             {{"task", setting_apart(0).front().key}, {"until", calendar::to_text(kToday + Days{2})}});
    EXPECT_TRUE(setting_apart(1).empty());
    EXPECT_EQ(setting_apart(2).size(), 1U);
}

TEST_F(Round, OneRoundAWeekMeetsTheStepsAfterHarm)
{
    happened(EventKind::ChemicalDamage, 3, 0, {{"product", "glyphosate"}, {"still_wet", "yes"}});
    const auto acts = [&](int day) {
        std::vector<DamageAct> found;
        for (const auto& task : of<DamageStep>(round_made(kToday + Days{day}))) {
            EXPECT_LE(task.due, kToday + Days{day});
            EXPECT_GE(task.latest, kToday + Days{day});
            found.push_back(std::get<DamageStep>(task.matter).act);
        }
        return found;
    };
    using enum DamageAct;
    EXPECT_EQ(acts(0), (std::vector{Rinse, Photograph, AskAndTell}));
    EXPECT_EQ(acts(1), (std::vector{Photograph, AskAndTell})) << "what is dry is not rinsed any more";
    EXPECT_EQ(acts(6), (std::vector{Photograph, AskAndTell, Look}));
    EXPECT_EQ(std::ranges::count(acts(8), Look), 1) << "the look of the seventh day stands for that of the third";
    EXPECT_EQ(std::ranges::count(acts(13), Look), 1);
    happened(EventKind::ColdNight, 1, 0, {{"low_c", "1.0"}});
    EXPECT_EQ(of<ColdStep>(round_made(kToday + Days{2})).size(), 0U);
    EXPECT_EQ(of<ColdStep>(round_made(kToday + Days{5})).size(), 1U);
}

TEST_F(Round, ATickSettlesOneStepOfADayAlone)
{
    happened(EventKind::ChemicalDamage, 3, 0, {{"product", "glyphosate"}, {"still_wet", "yes"}});
    const auto steps = of<DamageStep>(round());
    ASSERT_EQ(steps.size(), 3U);
    facts_.events.push_back(done_event(steps.front(), kToday, calendar::start_of_day_utc(kToday)));
    EXPECT_EQ(of<DamageStep>(round()).size(), 2U);
    EXPECT_EQ(of<DamageStep>(round_made(kToday + Days{1})).size(), 2U);
    // After a cold night the look and the scratch test of the second week fall on one day.
    happened(EventKind::ColdNight, 1, 0, {{"low_c", "1.0"}});
    const auto after_cold = of<ColdStep>(round_made(kToday + Days{14}));
    ASSERT_EQ(after_cold.size(), 2U);
    EXPECT_NE(after_cold[0].key, after_cold[1].key);
}

TEST_F(Round, APlantThatIsGoneIsNotLookedAtAfterDamage)
{
    happened(EventKind::ChemicalDamage, 99, 3, {{"product", "glyphosate"}});
    EXPECT_TRUE(of<DamageStep>(round()).empty());
}

TEST_F(Round, WhatFollowsACarryInIsThereThoughThePlanKnowsItNoMore)
{
    happened(EventKind::Moved, 1, 30, {}, 2);
    happened(EventKind::Moved, 1, 0, {}, 1);
    const auto steps = [&](int day) {
        std::vector<LadderItemKind> found;
        for (const auto& task : of<LadderStep>(round_made(kToday + Days{day}))) {
            const auto& item = std::get<LadderStep>(task.matter).item;
            if (task.plant == 1 && item.date >= kToday && item.date <= kToday + Days{day} &&
                item.kind != LadderItemKind::OutByDay) {
                found.push_back(item.kind);
            }
        }
        return found;
    };
    const auto has = [&](int day, LadderItemKind kind) { return std::ranges::count(steps(day), kind) == 1; };
    EXPECT_TRUE(has(0, LadderItemKind::KeepApart));
    EXPECT_TRUE(has(5, LadderItemKind::KeepApart));
    EXPECT_TRUE(has(7, LadderItemKind::Inspect));
    EXPECT_TRUE(has(9, LadderItemKind::Inspect)) << "the week's round may have missed it";
    EXPECT_FALSE(has(14, LadderItemKind::KeepApart));
    EXPECT_TRUE(has(14, LadderItemKind::Inspect));
    EXPECT_FALSE(has(21, LadderItemKind::Inspect));
    happened(EventKind::Moved, 1, -2, {}, 2);
    facts_.as_told.plants[0].spot = 2;
    EXPECT_FALSE(has(7, LadderItemKind::Inspect)) << "it was carried out again";
}

} // namespace
} // namespace lathhouse::plan
