#include "app/page_links.h"

#include "app/models/year_door.h"
#include "tests/models/page_fixtures.h"

namespace lathhouse::models {
namespace {

TEST(PageLinks, SeedsHasTheTrayThatWasSownOnTheRound)
{
    auto facts = plain_facts();
    facts.seeds.lots = {{.id = 1, .name = "Beans", .crop = "Phaseolus vulgaris", .packed_year = 2026, .stated_percent = 90.0, .seeds = 60, .note = {}}};
    const auto household = std::make_shared<MemoryHousehold>(facts);
    const TodayLook look = british_look();
    auto loaded = year_in_memory(household, kShownToday, Units::Metric).load();
    ASSERT_TRUE(loaded);
    YearModel year(std::move(loaded->year), std::move(loaded->solver), look.words);
    RoundModel round(round_in_memory(household), {look.today, look.words, look.hands});
    TonightModel tonight(door_to_memory(household), look);
    PlantsModel plants(plants_in_memory(household), look);
    SeedsModel seeds(door_to_memory(household), look);
    HomeModel home(door_to_memory(household), look);
    connect_pages(year, round, tonight, plants, seeds, home);
    seeds.start();
    wait_for(seeds);
    ASSERT_EQ(seeds.lots()->rowCount(), 1);
    EXPECT_EQ(seeds.lots()->at(0, "seedsLeft").toString(), "60");
    round.start();
    ASSERT_TRUE(QTest::qWaitFor([&round] { return !round.working(); }, 30'000));
    int row = 0;
    while (row < round.rowCount() && !round.data(round.index(row), RoundModel::TaskRole).toString().endsWith("Beans")) {
        ++row;
    }
    ASSERT_LT(row, round.rowCount());
    round.tick(row);
    ASSERT_TRUE(round.sow("12")) << round.error().toStdString();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !round.working() && !seeds.working(); }, 30'000));
    EXPECT_EQ(seeds.lots()->at(0, "seedsLeft").toString(), "48");
}

TEST(PageLinks, WhatAPageSaidStaysUntilAnotherWrites)
{
    const auto household = std::make_shared<MemoryHousehold>(plain_facts());
    const TodayLook look = british_look();
    auto loaded = year_in_memory(household, kShownToday, Units::Metric).load();
    ASSERT_TRUE(loaded);
    YearModel year(std::move(loaded->year), std::move(loaded->solver), look.words);
    RoundModel round(round_in_memory(household), {look.today, look.words, look.hands});
    TonightModel tonight(door_to_memory(household), look);
    PlantsModel plants(plants_in_memory(household), look);
    SeedsModel seeds(door_to_memory(household), look);
    HomeModel home(door_to_memory(household), look);
    connect_pages(year, round, tonight, plants, seeds, home);
    connect_said(year, round, {&plants, &seeds}, {&tonight, &home});
    const auto settle = [&] {
        return QTest::qWaitFor([&] { return !round.working() && !plants.working() && !year.planning(); }, 30'000);
    };
    plants.start();
    round.start();
    ASSERT_TRUE(settle());
    plants.setCurrent(0);
    ASSERT_TRUE(plants.log(PlantsModel::Watered, {}, 0, {}, 0));
    ASSERT_TRUE(settle());
    EXPECT_TRUE(plants.said().endsWith("watered today."));
    round.tick(0);
    ASSERT_TRUE(settle());
    EXPECT_EQ(plants.said(), "");
    EXPECT_NE(round.said(), "");
    const QString ticked = round.said();
    plants.undo(); // It is no longer what came last: nothing changes.
    ASSERT_TRUE(settle());
    EXPECT_NE(plants.error(), "");
    EXPECT_EQ(round.said(), ticked);
    round.undo();
    ASSERT_TRUE(settle());
    EXPECT_TRUE(round.said().startsWith("Taken back: "));
    ASSERT_TRUE(plants.log(PlantsModel::Fed, {}, 0, {}, 0));
    ASSERT_TRUE(settle());
    EXPECT_TRUE(plants.said().endsWith("fed today."));
    EXPECT_EQ(round.said(), "");
}

} // namespace
} // namespace lathhouse::models
