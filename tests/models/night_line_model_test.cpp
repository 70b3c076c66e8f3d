#include "app/models/night_line_model.h"
#include "core/climate/line_dates.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>

#include <algorithm>
#include <set>
#include <span>

namespace lathhouse::models {
namespace {

class NightLine : public testing::Test {
protected:
    NightLine() : model([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, british_look()) {}
    bool ask(const QString& line, const QString& from = {}, const QString& to = {}, const QString& percent = {})
    {
        const bool taken = model.ask(line, from, to, percent);
        wait_for(model);
        return taken;
    }
    NightLineModel model;
};

TEST_F(NightLine, TellsTheDatesOfTheCoreByTheirChance)
{
    ASSERT_TRUE(ask("0"));
    const Celsius frost = Celsius::from_degrees(0.0);
    const auto dates = climate::dates_of_lines(plain_facts().climate, std::span{&frost, 1}).lines.front();
    std::set<QString> chances;
    for (const auto& [percent, day] : dates.last.dates) {
        chances.insert(YearWords::chance(*Probability::from_percent(percent)));
    }
    ASSERT_EQ(model.dates()->rowCount(), static_cast<int>(chances.size())) << "each chance has one name and one row";
    const double percent = dates.last.dates.begin()->first;
    EXPECT_EQ(model.dates()->at(0, "chance").toString(), YearWords::chance(*Probability::from_percent(percent)));
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_EQ(model.dates()->at(0, "last").toString(),
              words.day_and_month(dates.last.dates.at(percent)->next_on_or_after(kShownToday)));
    EXPECT_EQ(model.dates()->at(0, "first").toString(),
              words.day_and_month(dates.first.dates.at(percent)->next_on_or_after(kShownToday)));
    EXPECT_TRUE(model.head().startsWith(words.decimal(dates.nights_per_year, 1) + " nights a year")) << model.head().toStdString();
    EXPECT_TRUE(model.basis().contains("not promises"));
    EXPECT_TRUE(model.between().isEmpty());
}

TEST_F(NightLine, TellsTheChanceBetweenTwoDates)
{
    ASSERT_TRUE(ask("2", "1.5.2027", "2027-05-31"));
    const auto nights = climate::PlaceNights::of(plain_facts().climate);
    const auto between = climate::nights_between(nights, calendar::Date{2027, 5, 1}, calendar::Date{2027, 5, 31}, Celsius::from_degrees(2.0));
    ASSERT_TRUE(between);
    EXPECT_EQ(between->nights, 31);
    EXPECT_TRUE(model.between().contains("among the 31 from 1 May 2027 to 31 May 2027: " + YearWords::chance(between->any)))
        << model.between().toStdString();
    ASSERT_TRUE(between->after);
    EXPECT_TRUE(model.between().contains("next turn: " + YearWords::chance(*between->after)));
}

TEST_F(NightLine, TellsTheNightsOfASpotByItsOffset)
{
    const auto facts = plain_facts();
    const auto household = facts.household();
    std::vector<NightLineModel::Place> outdoors;
    for (const auto& spot : household.spots) {
        if (home::is_outdoors(spot.kind)) {
            outdoors.push_back({spot.id, text(spot.name)});
        }
    }
    ASSERT_FALSE(outdoors.empty());
    model.know(outdoors);
    ASSERT_EQ(model.places().size(), static_cast<qsizetype>(outdoors.size()) + 1);
    model.setPlace(99);
    EXPECT_EQ(model.place(), 0);
    ASSERT_TRUE(ask("0", "1.5.2027", "2027-05-31"));
    const QString open = model.head();
    model.setPlace(1);
    ASSERT_TRUE(ask("0", "1.5.2027", "2027-05-31"));
    const auto& spot = *household.spot(outdoors.front().spot);
    ASSERT_NE(spot.offset.mean.kelvins(), 0.0);
    const auto frost = Celsius::from_degrees(0.0);
    const auto dates = climate::dates_at_spot(facts.climate, frost, spot.offset).lines.front();
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_NE(model.head(), open);
    EXPECT_TRUE(model.head().startsWith(words.decimal(dates.nights_per_year, 1) + " nights a year")) << model.head().toStdString();
    EXPECT_EQ(model.dates()->at(0, "last").toString(),
              words.day_and_month(dates.last.dates.begin()->second->next_on_or_after(kShownToday)));
    const auto between = climate::nights_between(climate::PlaceNights::of(facts.climate), calendar::Date{2027, 5, 1},
                                                 calendar::Date{2027, 5, 31}, frost, spot.offset);
    EXPECT_TRUE(model.between().contains(YearWords::chance(between->any))) << model.between().toStdString();
    EXPECT_TRUE(model.basis().contains("At " + text(spot.name) + ", whose nights are " + words.difference(spot.offset.mean)))
        << model.basis().toStdString();
}

TEST_F(NightLine, GivesDatesForOneMoreChance)
{
    const auto row_of = [this](const QString& chance) {
        for (int row = 0; row < model.dates()->rowCount(); ++row) {
            if (model.dates()->at(row, "chance").toString() == chance) {
                return row;
            }
        }
        return -1;
    };
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto facts = plain_facts();
    const Celsius frost = Celsius::from_degrees(0.0);
    const double twelfth = 100.0 / 12.0;
    ASSERT_TRUE(ask("0"));
    EXPECT_EQ(row_of("1 in 12"), -1);
    const auto dates = climate::dates_of_lines(facts.climate, std::span{&frost, 1}, std::span{&twelfth, 1}).lines.front();
    ASSERT_TRUE(dates.last.dates.contains(twelfth));
    for (const auto* typed : {"12", " 1 in 12 ", "1 von 12", "1 de cada 12", "1:12", "1 / 12", "2 in 24"}) {
        ASSERT_TRUE(ask("0", {}, {}, typed)) << typed;
        ASSERT_GE(row_of("1 in 12"), 0) << typed;
        EXPECT_EQ(model.dates()->at(row_of("1 in 12"), "last").toString(), words.day_and_month(dates.last.dates.at(twelfth)->next_on_or_after(kShownToday)));
        EXPECT_EQ(model.dates()->at(row_of("1 in 12"), "first").toString(), words.day_and_month(dates.first.dates.at(twelfth)->next_on_or_after(kShownToday)));
    }
    ASSERT_TRUE(ask("0", {}, {}, "14")); // No stop of the words' own.
    EXPECT_GE(row_of("1 in 14"), 0);
    ASSERT_TRUE(ask("0", {}, {}, "95 %"));
    EXPECT_GE(row_of("9.5 in 10"), 0);
    ASSERT_TRUE(ask("0", {}, {}, "2 %"));
    EXPECT_EQ(row_of("1 in 12"), -1);
    const double fiftieth = 2.0;
    const auto rare = climate::dates_of_lines(facts.climate, std::span{&frost, 1}, std::span{&fiftieth, 1}).lines.front();
    ASSERT_GE(row_of("1 in 50"), 0);
    EXPECT_EQ(model.dates()->at(row_of("1 in 50"), "last").toString(), words.day_and_month(rare.last.dates.at(fiftieth)->next_on_or_after(kShownToday)));
    // At a spot by its own nights.
    const auto spot = *std::ranges::find_if(facts.as_told.spots, [](const home::Spot& of) { return home::is_outdoors(of.kind); });
    model.know({{spot.id, text(spot.name)}});
    model.setPlace(1);
    ASSERT_TRUE(ask("0", {}, {}, "12"));
    const auto known = facts.household();
    const auto at_spot = climate::dates_at_spot(facts.climate, frost, known.spot(spot.id)->offset, std::span{&twelfth, 1}).lines.front();
    EXPECT_EQ(model.dates()->at(row_of("1 in 12"), "last").toString(),
              words.day_and_month(at_spot.last.dates.at(twelfth)->next_on_or_after(kShownToday)));
}

TEST_F(NightLine, SaysWhichFurtherChanceIsNone)
{
    for (const auto* wrong : {"0", "1", "100 %", "0 %", "often", "-4", "1 in 1001", "1 in 0", "5 in 3"}) {
        EXPECT_FALSE(ask("0", {}, {}, wrong)) << wrong;
        EXPECT_TRUE(model.chanceWrong()) << wrong;
        EXPECT_TRUE(model.error().contains("such as 1 in 12")) << model.error().toStdString();
    }
    EXPECT_FALSE(ask("cold", {}, {}, "7"));
    EXPECT_FALSE(model.chanceWrong());
}

TEST_F(NightLine, KeepsTheChosenSpotAsLongAsItIsThere)
{
    model.know({{4, "Rail"}, {5, "Balcony"}});
    model.setPlace(2);
    model.know({{5, "Balcony"}, {7, "Porch"}});
    EXPECT_EQ(model.place(), 1);
    EXPECT_EQ(model.places().at(1), "Balcony");
    model.know({{7, "Porch"}});
    EXPECT_EQ(model.place(), 0);
}

TEST_F(NightLine, SaysSoWhereTheSpotIsGone)
{
    model.know({{99, "Roof"}});
    model.setPlace(1);
    ASSERT_TRUE(ask("0"));
    EXPECT_TRUE(model.error().contains("not outdoors any more")) << model.error().toStdString();
}

TEST_F(NightLine, SaysOfALineThatNoNightReaches)
{
    ASSERT_TRUE(ask("-60"));
    EXPECT_TRUE(model.head().startsWith("No night at or below")) << model.head().toStdString();
    EXPECT_EQ(model.dates()->rowCount(), 0);
}

TEST_F(NightLine, WhatIsNoneIsASentence)
{
    QAbstractItemModelTester tester(model.dates(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_FALSE(ask("cold"));
    EXPECT_FALSE(ask("0", "1.5.2027", ""));
    EXPECT_TRUE(model.error().contains("both")) << model.error().toStdString();
    EXPECT_FALSE(ask("0", "some day", "2.5.2027"));
    EXPECT_TRUE(model.error().contains("some day"));
    EXPECT_FALSE(ask("0", "2.5.2027", "1.5.2027"));
    EXPECT_FALSE(ask("0", "2.5.2027", "1.9.2029"));
    EXPECT_TRUE(model.head().isEmpty());
}

} // namespace
} // namespace lathhouse::models
