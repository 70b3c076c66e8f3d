#include "core/climate/record_check.h"

#include "core/climate/normals.h"
#include "tests/climate/plain_place.h"
#include "tests/climate/sample_record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lathhouse::climate {
namespace {

/// The table's figures for the place where the sample was kept: the sample's own, so that only changes tell.
PlaceClimate table_of(const DailyRecord& record, double warmer = 0.0)
{
    auto figures = normals_of(record, {record.first_year(), record.last_year()}, {}).value().monthly;
    for (std::size_t m = 0; m < 12; ++m) {
        figures.low[m] = figures.low[m] + KelvinDelta::from_kelvins(warmer);
        figures.high[m] = figures.high[m] + KelvinDelta::from_kelvins(warmer);
    }
    return plain_place(48.0, 150.0, figures);
}

DailyReading tenths(int value)
{
    return *DailyReading::from_tenths(value);
}

TEST(RecordCheck, FindsNothingInASoundRecord)
{
    EXPECT_TRUE(check_record(sample_record(2001, 2010)).doubts.empty());
}

TEST(RecordCheck, MakesImpossibleValuesGaps)
{
    auto record = sample_record(2001, 2010);
    record.month_to_write(2003, 5).high[4] = tenths(850); // A sensor's value at power-on.
    const auto checked = check_record(record);
    ASSERT_EQ(checked.doubts.size(), 1U);
    EXPECT_EQ(checked.doubts[0].kind, DoubtKind::Impossible);
    EXPECT_EQ(calendar::to_text(checked.doubts[0].from), "2003-05-05");
    EXPECT_FALSE(checked.record.month(2003, 5)->high[4].known());
    EXPECT_TRUE(checked.record.month(2003, 5)->low[4].known());
}

TEST(RecordCheck, MakesALowAboveItsHighAGap)
{
    auto record = sample_record(2001, 2010);
    record.month_to_write(2003, 5).low[4] = tenths(300);
    record.month_to_write(2003, 5).high[4] = tenths(250);
    const auto checked = check_record(record);
    ASSERT_EQ(checked.doubts.size(), 1U);
    EXPECT_EQ(checked.doubts[0].kind, DoubtKind::LowAboveHigh);
    EXPECT_FALSE(checked.record.month(2003, 5)->low[4].known());
    EXPECT_FALSE(checked.record.month(2003, 5)->high[4].known());
}

TEST(RecordCheck, TakesTwoNoughtsForAFailedReading)
{
    auto record = sample_record(2001, 2010);
    record.month_to_write(2003, 5).low[4] = tenths(0);
    record.month_to_write(2003, 5).high[4] = tenths(0);
    EXPECT_EQ(check_record(record).doubts.at(0).kind, DoubtKind::Nought);
}

TEST(RecordCheck, ShowsAStuckThermometerFromTwentyDaysOn)
{
    auto record = sample_record(2001, 2010);
    for (std::size_t day = 0; day < 19; ++day) {
        record.month_to_write(2003, 5).low[day] = tenths(71);
    }
    EXPECT_TRUE(check_record(record).doubts.empty());
    record.month_to_write(2003, 5).low[19] = tenths(71);
    const auto checked = check_record(record);
    ASSERT_EQ(checked.doubts.size(), 1U);
    EXPECT_EQ(checked.doubts[0].kind, DoubtKind::Stuck);
    EXPECT_EQ(calendar::to_text(checked.doubts[0].to), "2003-05-20");
    EXPECT_TRUE(checked.record.month(2003, 5)->low[10].known());
}

TEST(RecordCheck, ShowsWhatLiesFarOff)
{
    auto record = sample_record(2001, 2010);
    record.month_to_write(2003, 5).low[4] = tenths(-400);
    const auto checked = check_record(record);
    ASSERT_EQ(checked.doubts.size(), 1U);
    EXPECT_EQ(checked.doubts[0].kind, DoubtKind::FarOff);
    EXPECT_TRUE(checked.record.month(2003, 5)->low[4].known());
}

TEST(RecordSummary, CountsYearsGapsAndSeasons)
{
    auto record = sample_record(2001, 2012);
    for (int month = 1; month <= 12; ++month) {
        record.month_to_write(2005, month).low.fill(DailyReading{});
    }
    for (std::size_t day = 10; day < 15; ++day) {
        record.month_to_write(2009, 10).low[day] = DailyReading{};
    }
    const auto summary = summary_of(record);
    ASSERT_TRUE(summary.has_value());
    EXPECT_EQ(calendar::to_text(summary->first), "2001-01-01");
    EXPECT_EQ(summary->days, 4383);
    EXPECT_EQ(summary->days_with_low, 4383 - 365 - 5);
    EXPECT_EQ(summary->days_with_high, 4383);
    ASSERT_EQ(summary->gaps.size(), 2U);
    EXPECT_EQ(summary->gaps[0].days(), 365);
    EXPECT_EQ(summary->gaps[1].days(), 5);
    EXPECT_EQ(summary->years_without, std::vector<int>{2005});
    EXPECT_EQ(summary->seasons, 11);
    EXPECT_EQ(summary->counted_seasons, 8); // 2004/05, 2005/06 and 2009/10 do not count.
}

TEST(RecordSummary, OfARecordWithoutLowsIsNothing)
{
    DailyRecord record{"EMPTY"};
    record.month_to_write(2001, 1).high[0] = tenths(50);
    EXPECT_FALSE(summary_of(record).has_value());
}

TEST(RecordAgainstTheTable, IsPlausibleWhereItLiesNear)
{
    const auto record = sample_record(2001, 2010);
    const auto comparison = compare_with_table(record, table_of(record, 1.5));
    EXPECT_EQ(comparison.verdict, Verdict::Plausible);
    EXPECT_TRUE(comparison.reasons.empty());
    for (const auto& month : comparison.months) {
        EXPECT_NEAR(month.low_difference->kelvins(), -1.5, 0.05);
        EXPECT_NEAR(month.high_difference->kelvins(), -1.5, 0.05);
    }
}

TEST(RecordAgainstTheTable, IsDoubtfulWhereItLiesFurtherThanTheTableErrs)
{
    const auto record = sample_record(2001, 2010);
    const auto comparison = compare_with_table(record, table_of(record, 4.5));
    EXPECT_EQ(comparison.verdict, Verdict::Doubtful);
    ASSERT_EQ(comparison.reasons.size(), 2U);
    EXPECT_THAT(comparison.reasons[0].text, testing::HasSubstr("4.5 K below"));
    ASSERT_EQ(comparison.reasons[0].parts.size(), 2U);
    EXPECT_NE(comparison.reasons[0].parts[0].sentence, nullptr) << "the month is said too";
    EXPECT_EQ(comparison.reasons[0].parts[1].text, "4.5");
}

struct WrongUnit {
    const char* name;
    double (*change)(double);
    const char* says;
};
void PrintTo(const WrongUnit& row, std::ostream* out)
{
    *out << row.name;
}
class RecordInAWrongUnit : public testing::TestWithParam<WrongUnit> {};
TEST_P(RecordInAWrongUnit, IsImplausibleAndToldApart)
{
    const auto record = sample_record(2001, 2010);
    const auto comparison = compare_with_table(changed(record, GetParam().change), table_of(record));
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    ASSERT_EQ(comparison.reasons.size(), 1U);
    EXPECT_THAT(comparison.reasons[0].text, testing::HasSubstr(GetParam().says));
}
INSTANTIATE_TEST_SUITE_P(
    Units, RecordInAWrongUnit,
    testing::Values(
        WrongUnit{"FahrenheitTakenForCelsius", [](double c) { return c * 1.8 + 32.0; }, "with --fahrenheit"},
        WrongUnit{"CelsiusTakenForFahrenheit", [](double c) { return (c - 32.0) / 1.8; },
                  "without --fahrenheit"},
        WrongUnit{"TenthsTakenForWholes", [](double c) { return c * 10.0; }, "divide them by ten"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(RecordAgainstTheTable, WholesTakenForTenthsAreToldWhereItIsWarm)
{
    const auto record = sample_record(2001, 2010, {.mean_low = 20.0, .swing = 3.0});
    const auto comparison =
        compare_with_table(changed(record, [](double c) { return c / 10.0; }), table_of(record));
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    EXPECT_THAT(comparison.reasons.at(0).text, testing::HasSubstr("decimal point"));
}

TEST(RecordAgainstTheTable, OfTheOtherHemisphereIsImplausible)
{
    const auto here = sample_record(2001, 2010);
    const auto there = sample_record(2001, 2010, {.warmest_month = 1});
    const auto comparison = compare_with_table(there, table_of(here));
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    EXPECT_THAT(comparison.reasons.at(0).text, testing::HasSubstr("warmest when the place is coldest"));
}

TEST(RecordAgainstTheTable, FarTooWarmIsImplausible)
{
    const auto record = sample_record(2001, 2010);
    const auto comparison = compare_with_table(record, table_of(record, -7.5));
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    EXPECT_THAT(comparison.reasons.at(0).text, testing::HasSubstr("7.5 K above"));
}

TEST(RecordCheck, MakesImpossibleRainAGap)
{
    auto record = sample_record(2001, 2010);
    record.month_to_write(2003, 5).rain[4] = tenths(-10);
    const auto checked = check_record(record);
    ASSERT_EQ(checked.doubts.size(), 1U);
    EXPECT_EQ(checked.doubts[0].kind, DoubtKind::Impossible);
    EXPECT_FALSE(checked.record.month(2003, 5)->rain[4].known());
    EXPECT_TRUE(checked.record.month(2003, 5)->low[4].known());
}

TEST(RecordAgainstTheTable, OfAThermometerInTheSunIsImplausible)
{
    const auto record = sample_record(2001, 2010);
    auto table = table_of(record);
    for (auto& high : table.monthly.high) {
        high = high - KelvinDelta::from_kelvins(12.0);
    }
    const auto comparison = compare_with_table(record, table);
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    EXPECT_THAT(comparison.reasons.at(0).text, testing::HasSubstr("stood in the sun"));
}

TEST(RecordAgainstTheTable, FullOfImpossibleValuesIsImplausible)
{
    auto record = sample_record(2001, 2010);
    for (int year = 2001; year <= 2010; ++year) {
        for (int month = 1; month <= 12; ++month) {
            for (std::size_t day = 0; day < 4; ++day) {
                record.month_to_write(year, month).high[day] = tenths(850);
            }
        }
    }
    const auto comparison = compare_with_table(record, table_of(sample_record(2001, 2010)));
    EXPECT_EQ(comparison.verdict, Verdict::Implausible);
    EXPECT_THAT(comparison.reasons.at(0).text, testing::HasSubstr("480 of its days"));
}

TEST(LowestNights, HaveTheCountedMeanWhereThereIsOne)
{
    auto place = table_of(sample_record(2001, 2010));
    const auto of_model = place.lowest_nights();
    place.lowest_of_season = of_model.mean + KelvinDelta::from_kelvins(1.5);
    const auto counted = place.lowest_nights();
    EXPECT_NEAR(counted.mean.degrees(), place.lowest_of_season->degrees(), 1e-9);
    EXPECT_NEAR((counted.tenth - of_model.tenth).kelvins(), 1.5, 1e-9);
    EXPECT_NEAR((counted.ninetieth - of_model.ninetieth).kelvins(), 1.5, 1e-9);
}

} // namespace
} // namespace lathhouse::climate
