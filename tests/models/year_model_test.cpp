#include "app/models/row_order.h"
#include "app/models/year_model.h"
#include "tests/models/year_filler.h"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <memory>

namespace lathhouse::models {
namespace {

/// The same with a number for each plant.
YearData numbered_year()
{
    auto year = filled_year();
    home::PlantId next = 0;
    for (auto& plant : year.plants) {
        plant.id = ++next;
    }
    return year;
}

YearSolver filling_solver()
{
    return [year = filled_year()](Probability risk) { return filled_plan(year, risk); };
}

/// A model whose first plan is there.
class YearModelTest : public testing::Test {
protected:
    YearModelTest()
        : model(numbered_year(), filling_solver(),
                YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)))
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !model.planning(); }, 30'000));
    }
    QVariant plant(int row, PlantRows::Role role)
    {
        return model.plants()->data(model.plants()->index(row), role);
    }
    YearModel model;
};

TEST_F(YearModelTest, ModelsKeepTheRulesOfModels)
{
    QAbstractItemModelTester plants(model.plants(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester nights(model.nights(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester readout(model.cursor()->lines(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setCursorDay(77);
    model.setRiskStop(4);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !model.planning(); }, 30'000));
    EXPECT_EQ(model.nights()->rowCount(), 365);
    EXPECT_EQ(model.plants()->rowCount(), 14);
    EXPECT_EQ(model.nights()->rowCount(model.nights()->index(0)), 0);
}

TEST_F(YearModelTest, ASteppedDayIsToldWithItsHoursAndLight)
{
    for (int row = 0; row < model.plants()->rowCount(); ++row) {
        const auto& stays = model.stays(model.order()[static_cast<std::size_t>(row)]);
        if (stays.size() < 2 || stays[1].ladder_days < 14) {
            continue;
        }
        model.setCursorDay(stays[1].first - 14);
        EXPECT_EQ(plant(row, PlantRows::CursorWordsRole).toString(), "step 1 of 5: 1 hours, morning sun");
        model.setCursorDay(stays[1].first - 1);
        EXPECT_EQ(plant(row, PlantRows::CursorWordsRole).toString(), "step 5 of 5: 14 hours, morning sun");
        model.setCursorDay(stays[2].first);
        EXPECT_EQ(plant(row, PlantRows::CursorWordsRole).toString(), "step 1 of 4");
        return;
    }
    FAIL() << "no plant hardens for 14 days";
}

TEST_F(YearModelTest, TheChosenPlantsSpotSaysWhy)
{
    YearModel told(numbered_year(),
                   [solve = filling_solver()](Probability risk) {
                       SolvedYear solved = solve(risk);
                       for (auto& stays : solved.stays) {
                           for (auto& stay : stays) {
                               stay.why = stay.first == 0 ? "stands there" : "better off outside from now on";
                           }
                       }
                       return solved;
                   },
                   YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)));
    ASSERT_TRUE(QTest::qWaitFor([&told] { return !told.planning(); }, 30'000));
    const auto plant_in = [&told](int row) { return told.order()[static_cast<std::size_t>(row)]; };
    for (int row = 0; row < told.plants()->rowCount(); ++row) {
        const auto& stays = told.stays(plant_in(row));
        if (stays.size() < 2) {
            continue;
        }
        QSignalSpy said(told.cursor(), &CursorReading::whyChanged);
        told.setCurrentRow(row == 0 ? 1 : 0);
        told.setCurrentRow(row);
        EXPECT_GE(said.count(), 1);
        told.setCursorDay(0);
        EXPECT_TRUE(told.cursor()->whyThere().endsWith(": stands there.")) << told.cursor()->whyThere().toStdString();
        told.setCursorDay(stays[1].first);
        EXPECT_TRUE(told.cursor()->whyThere().endsWith(": better off outside from now on.")) << told.cursor()->whyThere().toStdString();
        return;
    }
    FAIL() << "no plant is carried";
}

TEST(YearWords, TheClockIsThatOfTheReadersPlace)
{
    const YearWords british(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const YearWords american(Units::Us, QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_EQ(british.clock(14 * 60 + 5), "14:05");
    EXPECT_EQ(american.clock(14 * 60 + 5), "2:05 PM");
    EXPECT_EQ(american.clock(7), "12:07 AM");
}

TEST_F(YearModelTest, MarksNameTheTicksOfFeedingWhereThereAreAny)
{
    EXPECT_FALSE(model.plants()->marks().contains("feed"));
    YearModel fed(numbered_year(),
                  [solve = filling_solver()](Probability risk) {
                      SolvedYear solved = solve(risk);
                      solved.feeds.resize(solved.stays.size());
                      solved.feeds.front() = {100, 114};
                      return solved;
                  },
                  YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)));
    ASSERT_TRUE(QTest::qWaitFor([&fed] { return !fed.planning(); }, 30'000));
    EXPECT_TRUE(fed.plants()->marks().endsWith("tick below the bar: feed")) << fed.plants()->marks().toStdString();
}

TEST_F(YearModelTest, RowsStandBySpotOrByNameAndTheChosenPlantStays)
{
    model.setCurrentRow(5);
    const int chosen = model.plants()->idAt(5);
    ASSERT_NE(chosen, 0);
    EXPECT_EQ(model.plants()->line(), "14 in order of going out");
    QSignalSpy said(model.plants(), &PlantRows::lineChanged);

    model.plants()->setRowOrder(1);
    EXPECT_GE(said.count(), 1);
    EXPECT_EQ(model.plants()->shortLine(), "14 by spot");
    QStringList groups;
    int before = -1;
    for (int row = 0; row < model.plants()->rowCount(); ++row) {
        const QString group = plant(row, PlantRows::GroupRole).toString();
        EXPECT_FALSE(group.isEmpty());
        if (groups.isEmpty() || groups.last() != group) {
            EXPECT_FALSE(groups.contains(group)) << "a spot stands in one place";
            groups.append(group);
            before = -1;
        }
        const auto& stays = model.stays(model.order()[static_cast<std::size_t>(row)]);
        EXPECT_EQ(group.toStdString(), model.year().spots[stays.front().spot].name);
        const int out = stays.size() > 1 ? stays[1].first : 365;
        EXPECT_GE(out, before) << "at a spot the date out decides";
        before = out;
    }
    EXPECT_GE(groups.size(), 2);
    EXPECT_EQ(model.plants()->idAt(model.currentRow()), chosen);

    model.plants()->setRowOrder(2);
    QStringList names = model.plants()->names();
    QStringList sorted = names;
    std::ranges::sort(sorted, [](const QString& a, const QString& b) { return a.localeAwareCompare(b) < 0; });
    EXPECT_EQ(names, sorted);
    EXPECT_EQ(model.plants()->idAt(model.currentRow()), chosen);
    model.plants()->setRowOrder(3);
    EXPECT_EQ(model.plants()->rowOrder(), 2);
    EXPECT_EQ(model.plants()->idAt(-1), 0);
    EXPECT_EQ(model.plants()->idAt(14), 0);
}

TEST_F(YearModelTest, TheOrderOfTheRowsIsKeptForThePerson)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath("window.ini");
    model.plants()->remember(std::make_shared<KeptSettings>(file));
    EXPECT_EQ(model.plants()->rowOrder(), 0);
    model.plants()->setRowOrder(2);
    YearModel next(filled_year(), filling_solver(), YearWords(Units::Metric));
    next.plants()->remember(std::make_shared<KeptSettings>(file));
    EXPECT_EQ(next.plants()->rowOrder(), 2);
    EXPECT_TRUE(QTest::qWaitFor([&next] { return !next.planning(); }, 30'000));
    EXPECT_EQ(next.plants()->names(), model.plants()->names());
    KeptSettings(file).keep("year/rows", "sideways");
    YearModel damaged(filled_year(), filling_solver(), YearWords(Units::Metric));
    damaged.plants()->remember(std::make_shared<KeptSettings>(file));
    EXPECT_EQ(damaged.plants()->rowOrder(), 0);
    EXPECT_TRUE(QTest::qWaitFor([&damaged] { return !damaged.planning(); }, 30'000));
}

TEST(RowOrder, WithoutAPlanRowsKeepTheOrderOfTheHousehold)
{
    const auto year = filled_year();
    for (const RowOrder order : {RowOrder::ByDateOut, RowOrder::BySpot}) {
        const auto rows = order_of(order, year, {});
        EXPECT_EQ(rows.size(), year.plants.size());
        EXPECT_TRUE(std::ranges::is_sorted(rows));
    }
    EXPECT_FALSE(first_spot({}, 0));
}

TEST_F(YearModelTest, RowsStandInOrderOfGoingOut)
{
    int before = -1;
    for (const std::size_t at : model.order()) {
        const auto& stays = model.stays(at);
        const int out = stays.size() > 1 ? stays[1].first : 365;
        EXPECT_GE(out, before);
        before = out;
    }
}

TEST_F(YearModelTest, CursorStaysWithinTheYear)
{
    model.setCursorDay(-5);
    EXPECT_EQ(model.cursorDay(), 0);
    model.setCursorDay(1000);
    EXPECT_EQ(model.cursorDay(), 364);
    model.setCursorDay(77);
    EXPECT_EQ(model.cursor()->shortDate(), "Sat 30 May");
    EXPECT_EQ(model.cursor()->longDate(), "Saturday 30 May");
    model.stepMonths(1);
    EXPECT_EQ(model.cursor()->shortDate(), "Tue 30 Jun");
}

TEST_F(YearModelTest, MonthStepFromTheLastDayStaysInTheMonth)
{
    model.setCursorDay(17); // 31 March
    model.stepMonths(1);
    EXPECT_EQ(model.cursor()->shortDate(), "Thu 30 Apr");
}

TEST_F(YearModelTest, MonthStepFromAnotherDayGoesToTheSameDay)
{
    model.setCursorDay(47); // 30 April, the last of its month.
    model.stepMonths(1);
    EXPECT_EQ(model.cursor()->shortDate(), "Sat 30 May");
    model.stepMonths(9);
    EXPECT_EQ(model.cursor()->shortDate(), "Sun 28 Feb");
    model.stepMonths(-1);
    EXPECT_EQ(model.cursor()->shortDate(), "Thu 28 Jan");
}

TEST_F(YearModelTest, FrostThisNightAndAfterAreTwoNumbers)
{
    model.setCursorDay(60);
    QStringList labels;
    for (int row = 0; row < model.cursor()->lines()->rowCount(); ++row) {
        labels.append(model.cursor()->lines()->data(model.cursor()->lines()->index(row), ReadoutRows::LabelRole).toString());
    }
    EXPECT_TRUE(labels.contains("Frost this night"));
    EXPECT_TRUE(labels.contains("Frost after this night"));
}

TEST_F(YearModelTest, DatesFollowTheRiskBeforeThePlanDoes)
{
    const std::size_t first = model.order().front();
    const auto careful = model.dates(first);
    model.setRiskStop(4);
    EXPECT_TRUE(model.planning());
    const auto bold = model.dates(first);
    ASSERT_FALSE(careful.empty());
    ASSERT_EQ(careful.size(), bold.size());
    for (std::size_t end = 0; end < bold.size(); ++end) {
        if (bold[end].going_out) {
            EXPECT_LT(bold[end].chosen, careful[end].chosen);
        } else {
            EXPECT_GT(bold[end].chosen, careful[end].chosen);
        }
    }
    EXPECT_TRUE(QTest::qWaitFor([this] { return !model.planning(); }, 30'000));
}

TEST_F(YearModelTest, OnlyTheLastOfManyRisksIsTaken)
{
    QSignalSpy plans(&model, &YearModel::planChanged);
    for (int stop : {0, 1, 3, 4}) {
        model.setRiskStop(stop);
    }
    EXPECT_TRUE(QTest::qWaitFor([this] { return !model.planning(); }, 30'000));
    EXPECT_EQ(plans.count(), 1);
}

TEST_F(YearModelTest, RiskThatIsKnownGivesTheSamePlan)
{
    const auto before = model.stays(0);
    model.setRiskStop(4);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !model.planning(); }, 30'000));
    model.setRiskStop(2);
    EXPECT_FALSE(model.planning());
    const auto& after = model.stays(0);
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t stay = 0; stay < after.size(); ++stay) {
        EXPECT_EQ(after[stay].first, before[stay].first);
    }
}

TEST_F(YearModelTest, ViewKeepsTheDayAndTheCursor)
{
    model.setCursorDay(200);
    model.view()->zoom(1, 200);
    EXPECT_EQ(model.view()->days(), 183);
    EXPECT_NEAR(200 - model.view()->first(), 183.0 * 200.0 / 365.0, 1.0);
    model.view()->zoom(1, 200);
    EXPECT_EQ(model.view()->days(), 92);
    model.view()->zoom(5, 200);
    EXPECT_EQ(model.view()->days(), 7);
    model.setCursorDay(0);
    EXPECT_EQ(model.view()->first(), 0);
    model.setCursorDay(364);
    EXPECT_EQ(model.view()->first(), 365 - 7);
    model.view()->zoom(-9, 364);
    EXPECT_EQ(model.view()->first(), 0);
    EXPECT_EQ(model.view()->days(), 365);
}

TEST_F(YearModelTest, RowIsSpokenAsASentence)
{
    for (int row = 0; row < model.plants()->rowCount(); ++row) {
        const QString sentence = plant(row, PlantRows::SentenceRole).toString();
        EXPECT_TRUE(sentence.startsWith(plant(row, PlantRows::NameRole).toString()));
        EXPECT_TRUE(sentence.endsWith('.'));
    }
    EXPECT_TRUE(plant(1, PlantRows::SentenceRole).toString().contains("Hardening"));
    EXPECT_TRUE(model.riskSpoken().startsWith("Risk you accept, 1 in 10. "));
}

TEST_F(YearModelTest, NoChanceIsCertain)
{
    for (int row = 0; row < model.nights()->rowCount(); ++row) {
        const QString spoken = model.night_sentence(static_cast<std::size_t>(row));
        EXPECT_FALSE(spoken.contains("0 %") || spoken.contains("100 %"));
    }
}

TEST(YearModel, PlansAtOtherRisksAreReadyOnceNothingIsAsked)
{
    std::atomic<int> solved = 0;
    const auto held = std::make_shared<int>(); // By this test, by the model's solver and by each plan that is under way.
    YearModel model(
        filled_year(),
        [&solved, held, year = filled_year()](Probability risk) {
            ++solved;
            return filled_plan(year, risk);
        },
        YearWords(Units::Metric, QLocale::c()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return solved == 5 && held.use_count() == 2; }, 30'000));
    QCoreApplication::processEvents();
    for (const int stop : {0, 4, 1, 3, 2}) {
        QSignalSpy plans(&model, &YearModel::planChanged);
        model.setRiskStop(stop);
        EXPECT_FALSE(model.planning());
        EXPECT_EQ(plans.count(), 1);
    }
    EXPECT_EQ(solved, 5);
}

TEST(YearWords, TemperaturesHaveATrueMinusAndAThinSpace)
{
    const YearWords metric(Units::Metric, QLocale::c());
    EXPECT_EQ(metric.temperature(Celsius::from_degrees(-8.3)), QStringLiteral("\u22128.3\u202F°C"));
    EXPECT_EQ(metric.bare(Celsius::from_degrees(-0.04)), "0.0");
    const YearWords us(Units::Us, QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_EQ(us.temperature(Celsius::from_degrees(0.0)), QStringLiteral("32\u202F°F"));
    EXPECT_EQ(us.short_date(calendar::Date{2026, 5, 30}), "Sat May 30");
    EXPECT_EQ(
        YearWords(Units::Metric, QLocale(QLocale::German, QLocale::Germany)).bare(Celsius::from_degrees(2.5)),
        "2,5");
}

TEST(YearWords, SunThatStaysIsSaid)
{
    const YearWords words(Units::Metric, QLocale::c());
    EXPECT_EQ(words.day_length(0), "sun does not rise");
    EXPECT_EQ(words.day_length(1440), "sun does not set");
    EXPECT_EQ(words.day_length(425), "7 h 05 min");
}

TEST(RiskDates, FallInEachColdSeasonOfTheYear)
{
    // From mid September the window holds the coming in first, the going out later.
    const YearData year = filled_year(calendar::Date{2026, 9, 15});
    const auto dates = risk_dates(year.curves.front(), year.days, year.turn, Probability::literal(0.1));
    ASSERT_EQ(dates.size(), 2U);
    EXPECT_FALSE(dates[0].going_out);
    EXPECT_TRUE(dates[1].going_out);
    EXPECT_LT(dates[0].chosen, dates[1].chosen);
}

} // namespace
} // namespace lathhouse::models

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
