#include "app/models/seeds_model.h"
#include "core/plants/seed_kind.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSemaphore>
#include <QSignalSpy>

namespace lathhouse::models {
namespace {

class SeedsModelTest : public testing::Test {
protected:
    SeedsModelTest() : model(door_of(with_seeds(plain_facts(), kShownToday)), british_look())
    {
        model.start();
        wait_for(model);
    }
    int row_of(const QString& name)
    {
        for (int row = 0; row < model.lots()->rowCount(); ++row) {
            if (model.lots()->at(row, "name").toString() == name) {
                return row;
            }
        }
        return -1;
    }
    void choose(const QString& name)
    {
        model.setCurrentRow(row_of(name));
        wait_for(model);
    }
    SeedsModel model;
};

/// Every reading but the first waits until it may go on.
HouseholdDoor door_that_waits(std::shared_ptr<QSemaphore> begun, std::shared_ptr<QSemaphore> go_on)
{
    auto door = door_of(with_seeds(plain_facts(), kShownToday));
    const auto readings = std::make_shared<int>(0);
    door.load = [load = door.load, readings, begun, go_on] {
        const auto facts = load();
        if (++*readings > 1) {
            begun->release();
            go_on->acquire();
        }
        return facts;
    };
    return door;
}

TEST(SeedsModel, ACountWhileTheOneBeforeIsReadIsNotShownAsLess)
{
    for (const int days_ago : {0, 3}) {
        const auto begun = std::make_shared<QSemaphore>();
        const auto go_on = std::make_shared<QSemaphore>();
        SeedsModel model(door_that_waits(begun, go_on), british_look());
        model.start();
        wait_for(model);
        model.chooseLot("Zinnia");
        wait_for(model);
        ASSERT_EQ(model.trays()->rowCount(), 1);
        model.setDaysAgo(days_ago);
        model.count(0, 1);
        ASSERT_TRUE(QTest::qWaitFor([&] { return begun->available() > 0; })); // It is written, and is being read.
        model.count(0, 1);
        int least = model.trays()->at(0, "emerged").toInt();
        QObject::connect(model.trays(), &QAbstractItemModel::dataChanged, [&] { least = std::min(least, model.trays()->at(0, "emerged").toInt()); });
        go_on->release(100);
        wait_for(model);
        EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 2) << days_ago;
        EXPECT_EQ(least, 2) << days_ago;
    }
}

TEST_F(SeedsModelTest, FirstLotIsChosenAndHasItsSheet)
{
    EXPECT_EQ(model.lots()->rowCount(), 4);
    EXPECT_EQ(model.currentRow(), 0);
    EXPECT_TRUE(model.hasSheet());
    EXPECT_EQ(model.name(), model.lots()->at(0, "name").toString());
}

TEST_F(SeedsModelTest, ALotIsChosenByItsNameAndACropIsTheOneLookedAt)
{
    ASSERT_NE(row_of("Parsley"), 0);
    model.chooseLot("Parsley");
    wait_for(model);
    EXPECT_EQ(model.currentRow(), row_of("Parsley"));
    EXPECT_EQ(model.crop(), "");
    model.chooseLot("Not read yet");
    EXPECT_EQ(model.currentRow(), row_of("Parsley"));
    model.chooseCrop("cucumber");
    wait_for(model);
    EXPECT_EQ(model.crop(), "Cucumber");
}

TEST_F(SeedsModelTest, ShareAndIntervalAreThoseOfTheCore)
{
    const auto facts = with_seeds(plain_facts(), kShownToday);
    for (const auto& lot : facts.seeds.lots) {
        const auto kind = *plants::SeedReference::built_in().find(lot.crop);
        const auto rate = home::lot_rate(lot, facts.seeds, *kind);
        const int row = row_of(text(lot.name));
        EXPECT_DOUBLE_EQ(model.lots()->at(row, "mean").toDouble(), rate.rate.mean());
        EXPECT_EQ(model.lots()->at(row, "counted").toBool(), rate.sown > 0);
    }
    EXPECT_EQ(model.lots()->at(row_of("Tomato, red"), "basis").toString(), "17 of 20 came up");
    EXPECT_EQ(model.lots()->at(row_of("Parsley"), "basis").toString(), "no test yet");
    EXPECT_EQ(model.lots()->at(row_of("Zinnia"), "basis").toString(), "packet says 70 %");
}

TEST_F(SeedsModelTest, SheetIsThatOfThePlan)
{
    choose("Tomato, red");
    const auto facts = with_seeds(plain_facts(), kShownToday);
    const auto& lot = *facts.seeds.lot(1);
    const auto kind = *plants::SeedReference::built_in().find(lot.crop);
    plan::SowingWishes wishes;
    wishes.plants = model.plants();
    wishes.rate = home::lot_rate(lot, facts.seeds, *kind).rate;
    const auto plan =
        plan::plan_sowing(*kind, facts.climate, plan::SowingClimate{facts.climate, kShownToday}, wishes);
    ASSERT_TRUE(plan.season && plan.season->sow_indoors);
    EXPECT_EQ(model.amount(), QString("Sow %1 seeds for 5 plants").arg(*plan.seeds));
    EXPECT_EQ(model.dates()->at(0, "label").toString(), "Sow indoors");
    EXPECT_EQ(model.dates()->at(0, "value").toString(), model.words().short_date(plan.season->sow_indoors->from));
    ASSERT_TRUE(model.hasBar());
    EXPECT_EQ(model.sheet()->bar->sow->from, plan.season->sow_indoors->from);
    EXPECT_LT(model.sheet()->bar->from, model.sheet()->bar->to);
}

TEST_F(SeedsModelTest, SeedlingsThatStandComeBeforeTheNextSowing)
{
    EXPECT_EQ(model.lots()->at(row_of("Tomato, red"), "next").toString(), "pot up 17");
    EXPECT_TRUE(model.lots()->at(row_of("Zinnia"), "next").toString().startsWith("sown; up from")); // Not up yet.
    auto facts = with_seeds(plain_facts(), kShownToday);
    facts.seeds.potted = {{1, {901, 902}}};
    const auto next_on = [&](calendar::Date sown) {
        facts.seeds.trays[0].sown = sown;
        SeedsModel potted(door_of(facts), british_look());
        potted.start();
        wait_for(potted);
        return potted.lots()->at(row_of("Tomato, red"), "next").toString();
    };
    facts.seeds.counts = {{1, kShownToday, 17, true}};
    EXPECT_TRUE(next_on(kShownToday - calendar::Days{14}).startsWith("harden off from "));
    EXPECT_TRUE(next_on(kShownToday - calendar::Days{28}).startsWith("harden off now, out "));
    EXPECT_EQ(next_on(kShownToday - calendar::Days{42}), "plant out now");
    EXPECT_FALSE(next_on(kShownToday - calendar::Days{200}).contains("out now")); // Long gone.
}

TEST_F(SeedsModelTest, AMixCoolerThanTheSeedLikesBestIsRemarkedOn)
{
    const auto comes_up = [&](const QString& crop) {
        model.chooseCrop(crop);
        wait_for(model);
        for (int row = 0; row < model.dates()->rowCount(); ++row) {
            if (model.dates()->at(row, "label").toString() == "Comes up") {
                return model.dates()->at(row, "why").toString();
            }
        }
        return QString();
    };
    EXPECT_TRUE(comes_up("Pepper").contains("; best at 21")) << comes_up("Pepper").toStdString();
    EXPECT_FALSE(comes_up("Lettuce").contains("best at")) << comes_up("Lettuce").toStdString();
}

TEST_F(SeedsModelTest, EveryCropOfTheTablesHasASheet)
{
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        model.chooseCrop(text(kind.name()));
        wait_for(model);
        EXPECT_TRUE(model.error().isEmpty()) << kind.name() << ": " << model.error().toStdString();
        EXPECT_TRUE(model.hasBar() || !model.notes().isEmpty()) << kind.name();
    }
    EXPECT_EQ(model.currentRow(), -1);
}

TEST_F(SeedsModelTest, UnknownCropIsASentenceAndTheSheetStays)
{
    const QString before = model.name();
    model.chooseCrop("tomatto");
    wait_for(model);
    EXPECT_TRUE(model.error().contains("omato")) << model.error().toStdString();
    EXPECT_EQ(model.name(), before);
    model.chooseCrop("  ");
    EXPECT_TRUE(model.error().startsWith("Write the name"));
}

TEST_F(SeedsModelTest, ClicksInARowAllCount)
{
    choose("Zinnia");
    QSignalSpy written(&model, &SheetModel::written);
    for (int click = 0; click < 4; ++click) {
        model.count(0, 1);
    }
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 4);
    EXPECT_EQ(written.count(), 4);
    model.undo();
    model.undo();
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 2);
    model.redo();
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 3);
    EXPECT_TRUE(model.canRedo());
    model.count(0, 1);
    EXPECT_FALSE(model.canRedo());
    wait_for(model);
}

TEST_F(SeedsModelTest, WhatWasSownOrCountedDaysAgoHasThatDay)
{
    choose("Zinnia");
    const int trays = model.trays()->rowCount();
    model.setDaysAgo(-1);
    EXPECT_FALSE(model.sow("6"));
    EXPECT_TRUE(model.error().contains("how many days ago")) << model.error().toStdString();
    EXPECT_TRUE(model.dayAgo().isEmpty());
    model.setDaysAgo(1);
    EXPECT_EQ(model.dayAgo(), "Friday 15 May");
    model.setDaysAgo(500);
    EXPECT_TRUE(model.dayAgo().endsWith("2025") || model.dayAgo().endsWith("2026")) << model.dayAgo().toStdString();
    model.setDaysAgo(1);
    model.count(0, 1);
    model.count(0, 1);
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 2);
    model.setDaysAgo(0);
    model.count(0, 1);
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 3) << "counts on from what was counted yesterday";
    model.setDaysAgo(1);
    model.count(0, -1);
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 3) << "yesterday's count was lowered, today's stands";
    model.setDaysAgo(30);
    EXPECT_TRUE(model.sow("6"));
    EXPECT_TRUE(model.said().contains("on Thursday 16 April")) << model.said().toStdString();
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    EXPECT_EQ(model.trays()->rowCount(), trays + 1);
}

TEST_F(SeedsModelTest, ATrayOfAnotherYearHasItsYear)
{
    choose("Zinnia");
    model.setDaysAgo(300);
    ASSERT_TRUE(model.sow("6"));
    wait_for(model);
    const QString head = model.trays()->at(model.trays()->rowCount() - 1, "head").toString();
    EXPECT_TRUE(head.contains("July 2025")) << head.toStdString();
}

TEST_F(SeedsModelTest, WhatWasSownTodayIsATrayThatIsCounted)
{
    choose("Zinnia");
    const int trays = model.trays()->rowCount();
    EXPECT_FALSE(model.sow("a few"));
    EXPECT_TRUE(model.error().contains("how many seeds")) << model.error().toStdString();
    EXPECT_FALSE(model.sow("1000000"));
    EXPECT_TRUE(model.error().contains("are left")) << model.error().toStdString();
    ASSERT_TRUE(model.sow(" 12 "));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty());
    EXPECT_TRUE(model.said().startsWith("Zinnia: 12 seeds were sown today.")) << model.said().toStdString();
    EXPECT_FALSE(model.canUndo());
    ASSERT_EQ(model.trays()->rowCount(), trays + 1);
    EXPECT_EQ(model.trays()->at(trays, "seeds").toInt(), 12);
    model.count(trays, 3);
    wait_for(model);
    EXPECT_EQ(model.trays()->at(trays, "emerged").toInt(), 3);
    EXPECT_TRUE(model.canUndo());
}

TEST_F(SeedsModelTest, AnotherRiskMovesTheDatesAsInTheCore)
{
    choose("Tomato, red");
    const auto facts = with_seeds(plain_facts(), kShownToday);
    const auto kind = *plants::SeedReference::built_in().find(facts.seeds.lot(1)->crop);
    const plan::SowingClimate climate{facts.climate, kShownToday};
    const auto sow = [&](int stop) {
        plan::SowingWishes wishes;
        wishes.plants = model.plants();
        wishes.rate = home::lot_rate(*facts.seeds.lot(1), facts.seeds, *kind).rate;
        wishes.risk = risk_at(stop);
        const auto plan = plan::plan_sowing(*kind, facts.climate, climate, wishes);
        return plan.season && plan.season->sow_indoors ? model.words().short_date(plan.season->sow_indoors->to) : QString{};
    };
    EXPECT_EQ(model.riskStop(), 2);
    ASSERT_NE(sow(0), sow(4));
    for (const int stop : {0, 4}) {
        model.setRiskStop(stop);
        wait_for(model);
        ASSERT_TRUE(model.hasBar());
        EXPECT_EQ(model.words().short_date(model.sheet()->bar->sow->to), sow(stop)) << stop;
    }
    EXPECT_EQ(model.risk(), risk_at(4));
    model.setRiskStop(-1);
    EXPECT_EQ(model.riskStop(), 4);
}

TEST_F(SeedsModelTest, SeedlingsOfATrayThatStandsNowhereNeedASpot)
{
    choose("Zinnia");
    const int trays = model.trays()->rowCount();
    ASSERT_TRUE(model.sow("6"));
    wait_for(model);
    ASSERT_EQ(model.trays()->rowCount(), trays + 1);
    int newest = 0;
    for (int row = 1; row <= trays; ++row) {
        newest = model.trays()->at(row, "tray").toInt() > model.trays()->at(newest, "tray").toInt() ? row : newest;
    }
    EXPECT_FALSE(model.pot(newest, "1"));
    EXPECT_TRUE(model.error().startsWith("Say where they stand")) << model.error().toStdString();
    EXPECT_TRUE(model.pot(newest, "1", "Porch zinnia", 1));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
}

TEST_F(SeedsModelTest, SeedlingsArePottedFromTheTrayItself)
{
    choose("Zinnia");
    model.count(0, 1);
    model.count(0, 1);
    model.count(0, 1);
    wait_for(model);
    ASSERT_EQ(model.trays()->at(0, "toPot").toInt(), 3);
    EXPECT_FALSE(model.pot(0, "some"));
    EXPECT_TRUE(model.error().startsWith("Write how many seedlings")) << model.error().toStdString();
    EXPECT_FALSE(model.pot(0, "4"));
    EXPECT_TRUE(model.error().contains("has 3 seedlings")) << model.error().toStdString();
    EXPECT_FALSE(model.pot(99, "1"));
    QSignalSpy written(&model, &SheetModel::written);
    ASSERT_TRUE(model.pot(0, " 2 ", " Porch zinnia ", 1));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_EQ(written.count(), 1);
    EXPECT_TRUE(model.said().contains("2 plants")) << model.said().toStdString();
    EXPECT_EQ(model.trays()->at(0, "toPot").toInt(), 1);
    ASSERT_TRUE(model.pot(0, "1", "Porch zinnia-1", 1));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("there is a plant \"Porch zinnia-1\" already")) << model.error().toStdString();
    EXPECT_EQ(model.trays()->at(0, "toPot").toInt(), 1);
}

TEST_F(SeedsModelTest, ATrayStandsWhereItIsSaidAtTheWarmthThatWasMeasured)
{
    choose("Zinnia");
    const int trays = model.trays()->rowCount();
    ASSERT_GT(model.spots()->rowCount(), 1);
    for (const char* mix : {"warm", "-3", "80"}) {
        EXPECT_FALSE(model.sow("5", 1, mix, ""));
        EXPECT_TRUE(model.error().contains("how warm the mix is")) << model.error().toStdString();
    }
    ASSERT_TRUE(model.sow("5", 1, "18.5", " by the door "));
    wait_for(model);
    ASSERT_EQ(model.trays()->rowCount(), trays + 1);
    const QString said = model.trays()->at(trays, "sentence").toString();
    EXPECT_TRUE(said.contains(model.spots()->at(1, "name").toString())) << said.toStdString();
    EXPECT_TRUE(said.contains("18.5") && said.endsWith("by the door")) << said.toStdString();
    // A spot that is not on the list is none.
    ASSERT_TRUE(model.sow("5", 99));
    wait_for(model);
    EXPECT_FALSE(model.trays()->at(trays + 1, "head").toString().contains(model.spots()->at(1, "name").toString()));
}

TEST_F(SeedsModelTest, CountsOutsideTheTrayAreRefused)
{
    choose("Zinnia");
    model.count(0, -1);
    EXPECT_TRUE(model.error().startsWith("Fewer than none"));
    model.count(0, 13);
    EXPECT_TRUE(model.error().startsWith("Only 12 seeds"));
    model.count(5, 1);
    model.count(-1, 1);
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 0);
    EXPECT_FALSE(model.canUndo());
}

TEST_F(SeedsModelTest, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester lots(model.lots(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester trays(model.trays(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    choose("Zinnia");
    model.count(0, 1);
    model.setByName(true);
    wait_for(model);
    EXPECT_EQ(row_of("Lettuce, old"), 0);
    EXPECT_EQ(model.lots()->at(model.currentRow(), "name").toString(), "Zinnia");
}

TEST(SeedsModel, CountThatCannotBeKeptIsTakenOff)
{
    auto door = door_of(with_seeds(plain_facts(), kShownToday));
    door.count = [](const home::TrayCount&, calendar::Date, calendar::Instant) -> Result<void> {
        return Error{ErrorCode::Locked, "another program holds the household"};
    };
    SeedsModel model(door, british_look());
    model.start();
    wait_for(model);
    ASSERT_EQ(model.name(), "Zinnia");
    model.count(0, 1);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 1) << "shown at once";
    wait_for(model);
    EXPECT_EQ(model.trays()->at(0, "emerged").toInt(), 0);
    EXPECT_TRUE(model.error().contains("another program holds the household"));
    EXPECT_FALSE(model.canUndo());
    EXPECT_TRUE(model.said().isEmpty());
}

TEST(SeedsModel, WithoutLotsACropStillHasItsSheet)
{
    SeedsModel model(door_of(plain_facts()), british_look());
    model.chooseCrop("tomato");
    EXPECT_FALSE(model.working()) << "nothing is known yet";
    model.start();
    wait_for(model);
    EXPECT_FALSE(model.hasSheet());
    EXPECT_EQ(model.currentRow(), -1);
    model.chooseCrop("tomato");
    wait_for(model);
    EXPECT_TRUE(model.hasSheet());
    model.setPlants(3);
    wait_for(model);
    EXPECT_TRUE(model.amount().endsWith("for 3 plants"));
    model.setPlants(5000);
    EXPECT_EQ(model.plants(), SeedsModel::kMostPlants);
    wait_for(model);
}

TEST(SeedsModel, LotOfAnUnknownCropIsStillListed)
{
    auto facts = with_seeds(plain_facts(), kShownToday);
    facts.seeds.lots.push_back({9, "Mystery", "Nulla planta", std::nullopt, std::nullopt, 10, ""});
    SeedsModel model(door_of(std::move(facts)), british_look());
    model.start();
    wait_for(model);
    ASSERT_EQ(model.lots()->rowCount(), 5);
    model.setCurrentRow(4);
    wait_for(model);
    EXPECT_FALSE(model.hasSheet());
    EXPECT_TRUE(model.error().contains("Nulla planta")) << model.error().toStdString();
}

TEST_F(SeedsModelTest, ARoomThatIsColderMakesThemComeUpLater)
{
    choose("Zinnia");
    const auto comes_up = [this] {
        for (int row = 0; row < model.dates()->rowCount(); ++row) {
            if (model.dates()->at(row, "label").toString() == "Comes up") {
                return model.dates()->at(row, "sentence").toString();
            }
        }
        return QString{};
    };
    const QString usual = comes_up();
    ASSERT_FALSE(usual.isEmpty());
    EXPECT_EQ(model.room(), "");
    EXPECT_FALSE(model.standAt("60"));
    EXPECT_FALSE(model.standAt("warm"));
    ASSERT_TRUE(model.standAt("28"));
    wait_for(model);
    EXPECT_EQ(model.room(), "28.0");
    EXPECT_NE(comes_up(), usual);
    ASSERT_TRUE(model.standAt(" "));
    wait_for(model);
    EXPECT_EQ(comes_up(), usual);
}

TEST_F(SeedsModelTest, ATrayStandsAtTheWarmthThatIsSet)
{
    auto facts = with_seeds(plain_facts(), kShownToday);
    home::Tray cool{.id = 0, .lot = 1, .sown = kShownToday, .seeds = 10, .spot = {}, .mix = {}, .note = {}};
    ASSERT_TRUE(add_tray(facts, cool, kShownToday));
    const int own = facts.seeds.trays.back().id;
    cool.mix = Celsius::from_degrees(24.0);
    ASSERT_TRUE(add_tray(facts, cool, kShownToday));
    SeedsModel seeds(door_of(std::move(facts)), british_look());
    seeds.start();
    wait_for(seeds);
    const auto row = [&](const SheetRows& rows, const char* role, const QVariant& value) {
        int at = rows.rowCount() - 1;
        while (at >= 0 && rows.at(at, role) != value) {
            --at;
        }
        return at;
    };
    seeds.setCurrentRow(row(*seeds.lots(), "name", "Tomato, red"));
    wait_for(seeds);
    const auto of_tray = [&](int id) { return seeds.trays()->at(row(*seeds.trays(), "tray", id), "expected").toString(); };
    const QString usual = of_tray(own);
    const QString warmed = of_tray(own + 1);
    EXPECT_TRUE(usual.contains("20.0")) << usual.toStdString();
    ASSERT_TRUE(seeds.standAt("5"));
    wait_for(seeds);
    EXPECT_TRUE(of_tray(own).startsWith("Nothing comes up at 5.0")) << of_tray(own).toStdString();
    EXPECT_EQ(of_tray(own + 1), warmed) << "its mix was measured";
    ASSERT_TRUE(seeds.standAt("28"));
    wait_for(seeds);
    EXPECT_TRUE(of_tray(own).contains("at 28.0")) << of_tray(own).toStdString();
    EXPECT_EQ(of_tray(own + 1), warmed);
}

TEST_F(SeedsModelTest, WhatCanBeSownIsToldForSoManyDays)
{
    QAbstractItemModelTester tester(model.sowings(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.sowings()->rowCount(), 0);
    model.setSowingDays(7);
    wait_for(model);
    const int week = model.sowings()->rowCount();
    EXPECT_GT(week, 3);
    model.setSowingDays(90);
    wait_for(model);
    EXPECT_GT(model.sowings()->rowCount(), week);
    const QString crop = model.sowings()->at(0, "crop").toString();
    const QString name = model.sowings()->at(0, "name").toString();
    model.chooseCrop(crop);
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_EQ(model.name(), name);
    EXPECT_EQ(model.sowingDays(), 0) << "its sheet stands where the list did";
    EXPECT_EQ(model.sowings()->rowCount(), 0);
    model.setSowingDays(7);
    model.setCurrentRow(0);
    EXPECT_EQ(model.sowingDays(), 0);
}

} // namespace
} // namespace lathhouse::models
