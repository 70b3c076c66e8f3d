#include "app/models/household_strip.h"
#include "app/models/strip_words.h"
#include "app/words/words.h"
#include "tests/climate/plain_place.h"
#include "tests/models/year_filler.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::models {
namespace {

climate::PlaceClimate climate_of(double low, double high, std::optional<double> rain)
{
    climate::MonthlyFigures figures{
        .low = climate::in_every_month(Celsius::from_degrees(low)),
        .high = climate::in_every_month(Celsius::from_degrees(high)),
        .low_spread = climate::in_every_month(KelvinDelta::from_kelvins(1.5)),
        .mean_spread = climate::in_every_month(KelvinDelta::from_kelvins(1.2)),
        .years = std::nullopt};
    auto place = climate::plain_place(1.0, 20.0, figures);
    if (rain) {
        for (std::size_t month = 0; month < 12; ++month) {
            place.rain[month] = Millimetres::from_millimetres(month == 3 ? *rain : *rain / 2.0);
        }
    }
    return place;
}

home::Household household_with(double damage)
{
    const Position position{Latitude::literal(1.0), Longitude::literal(20.0)};
    home::Household household{.name = "Invented",
                              .demonstration = true,
                              .place = {"a place", position, std::nullopt, "UTC"},
                              .spots = {},
                              .plants = {}};
    for (const double line : {damage - 8.0, damage, damage - 3.0}) {
        household.plants.push_back({.id = 1,
                                    .name = line == damage ? "Tender one" : "Other",
                                    .kind = "Planta exemplaris",
                                    .lines = {Celsius::from_degrees(line + 4.0), Celsius::from_degrees(line),
                                              Celsius::from_degrees(line - 5.0)},
                                    .heat_limit = Celsius::from_degrees(35.0),
                                    .light_to_survive = DailyLight::from_moles(2.0),
                                    .light_to_thrive = DailyLight::from_moles(8.0),
                                    .must_dry = false,
                                    .hazardous = false,
                                    .sulks = false,
                                    .wants_open_air = false,
                                    .pot_kilograms = 2.0,
                                    .spot = std::nullopt,
                                    .pinned_spot = std::nullopt});
    }
    return household;
}

/// The year as the strip's maker finds it: a place without frost.
YearData year_without_frost()
{
    YearData year = filled_year();
    year.frost = {};
    year.frost.state = FrostMarks::State::Never;
    for (YearDay& day : year.days) {
        day.frost = Probability::literal(0.0);
    }
    return year;
}

YearStrip strip_at(const YearData& year, const climate::PlaceClimate& climate, double damage)
{
    return strip_of(year, household_with(damage), climate, climate.nights());
}

const YearWords kWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));

TEST(YearStrip, IsFrostWhereThereIsFrost)
{
    YearData year = filled_year();
    year.strip = strip_at(year, climate_of(3.0, 12.0, 80.0), 12.0);
    EXPECT_EQ(year.strip.kind, YearStrip::Kind::FrostNights);
    EXPECT_DOUBLE_EQ(strip_share(year, 0), year.days[0].frost.fraction());
    EXPECT_EQ(strip_head(year, kWords, false), "Frost nights");
}

TEST(YearStrip, IsFrostWherePossibleThoughThereIsNoSeason)
{
    YearData year = filled_year();
    year.frost = {};
    year.frost.state = FrostMarks::State::NoSeason;
    EXPECT_EQ(strip_at(year, climate_of(3.0, 12.0, 80.0), 12.0).kind, YearStrip::Kind::FrostNights);
}

TEST(YearStrip, IsTheTenderestPlantsLineWhereNightsReachIt)
{
    YearData year = year_without_frost();
    const auto climate = climate_of(12.5, 24.0, 80.0);
    year.strip = strip_at(year, climate, 12.0);
    ASSERT_EQ(year.strip.kind, YearStrip::Kind::TenderNights);
    EXPECT_EQ(year.strip.plant, "Tender one");
    EXPECT_EQ(year.strip.line, Celsius::from_degrees(12.0));
    ASSERT_EQ(year.strip.shares.size(), year.days.size());
    const auto chance = climate.nights().chance_on(calendar::DayOfYear::of(year.days[40].date), year.strip.line);
    EXPECT_DOUBLE_EQ(strip_share(year, 40), chance.fraction());
    EXPECT_EQ(strip_label(year, kWords), QStringLiteral("To 12\u202F°C this night"));
}

TEST(YearStrip, IsHeatWhereNoNightReachesTheLine)
{
    YearData year = year_without_frost();
    year.strip = strip_at(year, climate_of(23.5, 30.5, 200.0), 12.0);
    ASSERT_EQ(year.strip.kind, YearStrip::Kind::HotDays);
    EXPECT_GT(*std::max_element(year.strip.shares.begin(), year.strip.shares.end()), 0.5);
    EXPECT_EQ(strip_head(year, YearWords(Units::Us, QLocale::c()), false), QStringLiteral("Days over 86\u202F°F"));
}

TEST(YearStrip, IsRainWhereNeitherColdNorHeatDecides)
{
    YearData year = year_without_frost();
    year.strip = strip_at(year, climate_of(18.0, 22.0, 240.0), 8.0);
    ASSERT_EQ(year.strip.kind, YearStrip::Kind::Rain);
    EXPECT_DOUBLE_EQ(year.strip.most_millimetres, 240.0);
    const auto april = std::find_if(year.days.begin(), year.days.end(),
                                    [](const YearDay& day) { return day.date.month() == 4; });
    const auto place = static_cast<std::size_t>(april - year.days.begin());
    EXPECT_DOUBLE_EQ(strip_share(year, place), 1.0);
    EXPECT_EQ(strip_value(year, kWords, place), text(words::rain(Millimetres::from_millimetres(240.0), words::UnitSystem::Metric)));
    EXPECT_EQ(strip_middle(year, kWords), text(words::rain(Millimetres::from_millimetres(120.0), words::UnitSystem::Metric)));
}

TEST(YearStrip, StaysFrostWhereNothingElseIsKnown)
{
    const YearData year = year_without_frost();
    EXPECT_EQ(strip_at(year, climate_of(18.0, 22.0, std::nullopt), 8.0).kind, YearStrip::Kind::FrostNights);
}

} // namespace
} // namespace lathhouse::models
