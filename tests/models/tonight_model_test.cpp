#include "app/models/tonight_model.h"
#include "app/models/word_form.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QUrl>

#include <algorithm>

namespace lathhouse::models {
namespace {

class ColdTonight : public testing::Test {
protected:
    ColdTonight() : model(door_of(with_cold_night(plain_facts(), kShownToday)), british_look())
    {
        model.start();
        wait_for(model);
    }
    TonightModel model;
};

/// Forecasts that are kept go there.
HouseholdDoor door_that_keeps(std::vector<home::KeptForecast>& kept)
{
    auto door = door_of(plain_facts());
    door.keep_forecasts = [&kept](const std::vector<home::KeptForecast>& forecasts) -> Result<void> {
        kept = forecasts;
        return {};
    };
    return door;
}

TEST(TonightModel, NothingIsReadBeforeTheStart)
{
    bool read = false;
    auto door = door_of(plain_facts());
    door.load = [&read]() -> Result<plan::HouseholdFacts> {
        read = true;
        return plain_facts();
    };
    TonightModel model(door, british_look());
    model.follow();
    EXPECT_FALSE(model.working());
    EXPECT_FALSE(read);
    EXPECT_TRUE(model.line().isEmpty());
    model.start();
    model.start();
    wait_for(model);
    EXPECT_TRUE(read);
    EXPECT_TRUE(model.known());
}

TEST_F(ColdTonight, GreatNumberIsTheMiddleOfTheCoreAtTheSpot)
{
    const auto facts = with_cold_night(plain_facts(), kShownToday);
    const auto season = facts.climate.nights();
    const auto nights = plan::nights_of_forecast(facts.log.forecasts, kShownToday);
    const auto plans =
        plan::plan_nights(facts.as_told, facts.log, season, nights, kShownToday, plan::kUsualRisk);
    const auto spot = std::ranges::find_if(facts.as_told.spots, [&](const home::Spot& of) {
        return model.where() == QStringLiteral("at ") + text(of.name);
    });
    ASSERT_NE(spot, facts.as_told.spots.end());
    const auto offset =
        home::offset_of(*spot, facts.log, season).of_night(climate::kind_of(nights.front().weather));
    const auto look = british_look();
    EXPECT_EQ(model.low(),
              look.words.temperature(plans.front().outlook.quantile(Probability::literal(0.5), offset)));
    EXPECT_TRUE(model.spread().contains(
        look.words.bare(plans.front().outlook.quantile(Probability::literal(0.05), offset))));
}

TEST_F(ColdTonight, CarriesAreThoseOfTheCoreAndComeFirst)
{
    const auto facts = with_cold_night(plain_facts(), kShownToday);
    const auto season = facts.climate.nights();
    const auto plans =
        plan::plan_nights(facts.as_told, facts.log, season,
                          plan::nights_of_forecast(facts.log.forecasts, kShownToday), kShownToday, plan::kUsualRisk);
    const auto carries = std::ranges::count(plans.front().plants, true, &plan::PlantNight::carry_in);
    ASSERT_GE(carries, 2);
    EXPECT_EQ(model.carryHead(), QString("Carry in %1 plants.").arg(carries));
    for (int row = 0; row < model.plants()->rowCount(); ++row) {
        EXPECT_EQ(model.plants()->at(row, "carry").toBool(), row < carries);
        const double low = model.plants()->at(row, "lowAt").toDouble();
        const double middle = model.plants()->at(row, "middleAt").toDouble();
        const double high = model.plants()->at(row, "highAt").toDouble();
        EXPECT_TRUE(0.0 <= low && low < middle && middle < high && high <= 1.0);
        EXPECT_GE(model.plants()->at(row, "lineAt").toDouble(), 0.0);
        EXPECT_LE(model.plants()->at(row, "lineAt").toDouble(), 1.0);
        // A chance is said as "1 in 7" or, where it is all but sure, as "almost sure".
        const QString sentence = model.plants()->at(row, "sentence").toString();
        EXPECT_TRUE(sentence.contains(" in ") || sentence.contains("almost sure")) << sentence.toStdString();
    }
}

TEST_F(ColdTonight, TenNightsAreOrderedWithin)
{
    ASSERT_EQ(model.ten().nights.size(), 10U);
    for (const auto& night : model.ten().nights) {
        EXPECT_TRUE(night.forecast);
        EXPECT_TRUE(night.low5 < night.low25 && night.low25 < night.low50 && night.low50 < night.low75 &&
                    night.low75 < night.low95);
    }
    EXPECT_TRUE(std::ranges::is_sorted(model.ten().marks, std::greater{}, &DamageMark::line));
    EXPECT_FALSE(model.ten().marks.empty());
    for (const auto& mark : model.ten().marks) {
        EXPECT_LE(mark.brief.size(), mark.plants.size());
        EXPECT_EQ(mark.brief == mark.plants, !mark.plants.endsWith(" more"));
    }
    EXPECT_TRUE(model.missing().isEmpty());
}

TEST_F(ColdTonight, ListsKeepTheRulesOfModels)
{
    QAbstractItemModelTester plants(model.plants(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester week(model.week(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_GT(model.week()->rowCount(), 0);
    bool coldest = false;
    for (int row = 0; row < model.week()->rowCount(); ++row) {
        coldest |= model.week()->at(row, "what").toString().startsWith("Coldest night ahead, ");
        EXPECT_FALSE(model.week()->at(row, "sentence").toString().isEmpty());
    }
    EXPECT_TRUE(coldest);
    model.reload();
    wait_for(model);
}

TEST(TonightModel, WithoutAForecastNothingIsSaidAboutCarrying)
{
    TonightModel model(door_of(plain_facts()), british_look());
    model.start();
    wait_for(model);
    EXPECT_FALSE(model.hasForecast());
    EXPECT_EQ(model.carryHead(), "No forecast for tonight.");
    EXPECT_TRUE(model.missing().contains("take a file with ten nights"));
    for (const auto& night : model.ten().nights) {
        EXPECT_FALSE(night.forecast);
    }
    for (int row = 0; row < model.plants()->rowCount(); ++row) {
        EXPECT_FALSE(model.plants()->at(row, "carry").toBool());
    }
}

TEST(TonightModel, TypedForecastIsKeptAndReadBack)
{
    TonightModel model(door_of(plain_facts()), british_look());
    model.start();
    wait_for(model);
    QSignalSpy written(&model, &SheetModel::written);
    EXPECT_FALSE(model.keepForecast("warm", 0));
    EXPECT_FALSE(model.error().isEmpty());
    EXPECT_FALSE(model.keepForecast("-80", 0, 0)) << "a slip for -8 is asked about";
    EXPECT_TRUE(model.error().contains("did you mean")) << model.error().toStdString();
    EXPECT_TRUE(model.keepForecast("3,5", 1, 1));
    wait_for(model);
    EXPECT_EQ(written.count(), 1);
    EXPECT_TRUE(model.hasForecast());
    EXPECT_TRUE(model.why().contains("the open air has")) << model.why().toStdString();
    EXPECT_TRUE(model.why().startsWith(QStringLiteral("Forecast 3.5\u202F°C, clear and calm")))
        << model.why().toStdString();
    EXPECT_TRUE(model.missing().startsWith("Forecast for 1 of ten nights"));
}

TEST(TonightModel, DewPointSkyAndWindAreKeptEachByItself)
{
    std::vector<home::KeptForecast> kept;
    TonightModel model(door_that_keeps(kept), british_look());
    model.start();
    wait_for(model);
    EXPECT_FALSE(model.keepForecast("3", 1, 2, "damp"));
    EXPECT_TRUE(model.error().startsWith("The dew point: ")) << model.error().toStdString();
    ASSERT_TRUE(model.keepForecast("3", 1, 2, "-1,5"));
    wait_for(model);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept.front().weather, (climate::NightWeather{climate::Sky::Clear, climate::Wind::Windy}));
    ASSERT_TRUE(kept.front().dew_point);
    EXPECT_DOUBLE_EQ(kept.front().dew_point->degrees(), -1.5);
    ASSERT_TRUE(model.keepForecast("3", 0, 1));
    wait_for(model);
    EXPECT_EQ(kept.front().weather, (climate::NightWeather{std::nullopt, climate::Wind::Calm}));
    EXPECT_FALSE(kept.front().dew_point);
}

TEST_F(ColdTonight, AnotherRiskIsThatOfTheCore)
{
    const auto facts = with_cold_night(plain_facts(), kShownToday);
    const auto season = facts.climate.nights();
    const auto nights = plan::nights_of_forecast(facts.log.forecasts, kShownToday);
    const auto carried = [&](int stop) {
        const auto plans = plan::plan_nights(facts.as_told, facts.log, season, nights, kShownToday, risk_at(stop));
        return std::ranges::count(plans.front().plants, true, &plan::PlantNight::carry_in);
    };
    const auto shown = [this] {
        int carries = 0;
        for (int row = 0; row < model.plants()->rowCount(); ++row) {
            carries += model.plants()->at(row, "carry").toBool() ? 1 : 0;
        }
        return carries;
    };
    EXPECT_EQ(model.riskStop(), 2);
    EXPECT_EQ(model.riskStops().at(2), "1 in 10");
    ASSERT_GT(carried(0), carried(4));
    for (const int stop : {0, 4}) {
        model.setRiskStop(stop);
        wait_for(model);
        EXPECT_EQ(shown(), carried(stop)) << stop;
    }
    model.setRiskStop(5);
    EXPECT_EQ(model.riskStop(), 4);
}

TEST_F(ColdTonight, DaysToComeAreAWeekOrUpToSixty)
{
    const int week = model.week()->rowCount();
    QSignalSpy told(&model, &TonightModel::daysChanged);
    model.setDays(500);
    wait_for(model);
    EXPECT_EQ(model.days(), 60);
    EXPECT_EQ(told.count(), 1);
    EXPECT_GT(model.week()->rowCount(), week);
    const QString last = model.words().short_date(kShownToday + calendar::Days{60});
    bool beyond = false;
    for (int row = 0; row < model.week()->rowCount(); ++row) {
        beyond |= model.week()->at(row, "date").toString() == model.words().short_date(kShownToday + calendar::Days{14}) ||
                  model.week()->at(row, "sentence").toString().contains(last);
    }
    EXPECT_TRUE(beyond);
    model.setDays(0);
    wait_for(model);
    EXPECT_EQ(model.days(), 7);
    EXPECT_EQ(model.week()->rowCount(), week);
}

TEST(TonightModel, FileOfTenNightsIsKeptOrRefusedWhole)
{
    TonightModel model(door_of(plain_facts()), british_look());
    model.start();
    wait_for(model);
    QTemporaryDir folder;
    const auto file = [&](const char* name, const QByteArray& content) {
        QFile written(folder.filePath(name));
        EXPECT_TRUE(written.open(QIODevice::WriteOnly));
        written.write(content);
        return written.fileName();
    };
    const auto refused = [&](const QString& path, const char* words) {
        EXPECT_TRUE(model.keepForecastFile(path));
        wait_for(model);
        EXPECT_TRUE(model.error().contains(words)) << model.error().toStdString();
        EXPECT_FALSE(model.hasForecast());
    };
    EXPECT_FALSE(model.keepForecastFile("  "));
    refused(folder.filePath("none.csv"), "none.csv");
    refused(file("torn.csv", "date,low_c\n2026-05-17,4\n2026-05-18,cold\n"), "torn.csv, line 3");
    refused(file("later.csv", "date,low_c,issued\n2026-05-19,4,2026-05-18\n"), "made after today");
    QByteArray ten = "date,low_c,sky,wind\n";
    for (int night = 17; night <= 26; ++night) {
        ten += QByteArrayLiteral("2026-05-") + QByteArray::number(night) + ",4.5,clear,calm\n";
    }
    EXPECT_TRUE(model.keepForecastFile(QUrl::fromLocalFile(file("ten.csv", ten)).toString()));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_TRUE(model.said().contains("10 nights"));
    EXPECT_TRUE(model.hasForecast());
    EXPECT_TRUE(model.missing().isEmpty());
    EXPECT_TRUE(std::ranges::all_of(model.ten().nights, [](const auto& night) { return night.forecast; }));
}

TEST(TonightModel, FileIsReadByNamesOfItsOwnAndAsOfTheDayItWasMade)
{
    std::vector<home::KeptForecast> kept;
    TonightModel model(door_that_keeps(kept), british_look());
    model.start();
    wait_for(model);
    QTemporaryDir folder;
    QFile written(folder.filePath("own.csv"));
    ASSERT_TRUE(written.open(QIODevice::WriteOnly));
    written.write("Day,Tmin\n2026-05-17,4\n2026-05-18,5\n");
    written.close();
    EXPECT_TRUE(model.keepForecastFile(written.fileName()));
    wait_for(model);
    EXPECT_FALSE(model.error().isEmpty()) << "its own names are not known";
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(model.keepForecastFile(written.fileName(), "date=Day,nothing=Tmin"));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("nothing")) << model.error().toStdString();
    EXPECT_FALSE(model.keepForecastFile(written.fileName(), "date=Day,low_c=Tmin", "yesterday"));
    EXPECT_TRUE(model.error().startsWith("Write how many days ago")) << model.error().toStdString();
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(model.keepForecastFile(written.fileName(), " date=Day,low_c=Tmin ", " 2 "));
    wait_for(model);
    EXPECT_EQ(model.error(), "");
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[1].issued, kShownToday - calendar::Days{2});
    EXPECT_EQ(kept[1].low, Celsius::from_degrees(5.0));
}

TEST(TonightModel, ForecastThatCannotBeKeptIsASentence)
{
    auto door = door_of(plain_facts());
    door.keep_forecasts = [](const std::vector<home::KeptForecast>&) -> Result<void> {
        return Error{ErrorCode::Locked, "another program holds the household"};
    };
    TonightModel model(door, british_look());
    model.start();
    wait_for(model);
    EXPECT_TRUE(model.keepForecast("3", 0));
    wait_for(model);
    EXPECT_TRUE(model.error().contains("another program holds the household"));
    EXPECT_TRUE(model.said().isEmpty());
    EXPECT_FALSE(model.hasForecast());
}

TEST(TonightModel, WithoutAnOutdoorSpotItSaysSo)
{
    auto facts = plain_facts();
    std::erase_if(facts.as_told.spots, [](const home::Spot& spot) { return home::is_outdoors(spot.kind); });
    for (auto& plant : facts.as_told.plants) {
        plant.spot = facts.as_told.spots.front().id;
    }
    facts.events = {};
    TonightModel model(door_of(std::move(facts)), british_look());
    model.start();
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_FALSE(model.hasSpot());
    EXPECT_EQ(model.line(), "No outdoor spot.");
}

TEST(TonightModel, FahrenheitIsShownWhereItIsWanted)
{
    TonightModel model(door_of(with_cold_night(plain_facts(), kShownToday)), british_look(Units::Us));
    model.start();
    wait_for(model);
    EXPECT_TRUE(model.low().endsWith(QString::fromUtf8("°F")));
    EXPECT_TRUE(model.why().contains(QStringLiteral("34\u202F°F"))) << model.why().toStdString();
}

TEST(TonightModel, GermanShortMonthEndsTheSentenceWithOnePoint)
{
    const auto& facts = plain_facts();
    TodayLook look{kShownToday, YearWords(Units::Metric, QLocale(QLocale::German, QLocale::Germany)), {}};
    bool ended = false;
    for (int day = 1; day <= 24 && !ended; ++day) {
        look.today = calendar::Date{2026, 9, static_cast<unsigned short>(day)};
        const QString said = tonight_facts(facts, look, {}).closest;
        EXPECT_FALSE(said.contains(QLatin1String(".."))) << said.toStdString();
        ended = said.endsWith(QLatin1String("Sept."));
    }
    EXPECT_TRUE(ended) << "no sentence ended with a day of September";
}

TEST(ClosedSentence, LosesOnlyThePointThatIsDoubled)
{
    EXPECT_EQ(closed("Look on 3. Sept.."), QString("Look on 3. Sept."));
    EXPECT_EQ(closed("Clear since 3. Sept.. Look again."), QString("Clear since 3. Sept. Look again."));
    for (const char* left : {"Look on 3 Sep.", "Kept in ../pots.", "Kept in pots/..", "and so on...", "a..b", "..", ""}) {
        EXPECT_EQ(closed(left), QString(left));
    }
}

} // namespace
} // namespace lathhouse::models
