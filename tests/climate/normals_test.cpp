#include "core/climate/normals.h"

#include "core/base/csv.h"
#include "core/climate/cold_seasons.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <map>

namespace lathhouse::climate {
namespace {

const std::filesystem::path kNormalsChecks = LATHHOUSE_CHECKS;

struct FigureAgreement {
    int values = 0;
    int beyond_rounding = 0;
    std::string first_difference;
};

/// Compares with checks/monthly_1991_2018.csv: computed from GHCN-Daily (NOAA NCEI, public domain) outside
/// the project, two decimals.
void compare(const CsvTable& table, std::size_t row, const RecordNormals& normals, FigureAgreement& agreement)
{
    for (std::size_t month = 0; month < 12; ++month) {
        const std::string suffix = (month < 9 ? "_0" : "_") + std::to_string(month + 1);
        const std::array<std::pair<std::string, double>, 4> values = {
            std::pair{"low" + suffix, normals.monthly.low[month].degrees()},
            std::pair{"high" + suffix, normals.monthly.high[month].degrees()},
            std::pair{"low_sd" + suffix, (*normals.monthly.low_spread)[month].kelvins()},
            std::pair{"mean_sd" + suffix, (*normals.monthly.mean_spread)[month].kelvins()}};
        for (const auto& [name, value] : values) {
            const double expected = **table.number(row, *table.column(name));
            ++agreement.values;
            if (std::abs(value - expected) > 0.00501) { // Half a last digit.
                ++agreement.beyond_rounding;
                agreement.first_difference = normals.station + " " + name + ": " + std::to_string(value) +
                                             " for " + std::to_string(expected);
            }
        }
    }
}

FigureAgreement figures_agreement(const std::vector<std::filesystem::path>& files)
{
    FigureAgreement agreement;
    const auto table = CsvTable::read(kNormalsChecks / "monthly_1991_2018.csv");
    std::map<std::string, std::size_t> rows;
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        rows[table->at(row, 0)] = row;
    }
    for (const auto& path : files) {
        const auto file = DailyFile::open(path);
        const auto all = for_stations_of(*file, [](const DailyRecord& record) {
            return normals_of(record, {1991, 2018}, {});
        });
        EXPECT_TRUE(all);
        for (const auto& normals : *all) {
            if (normals && rows.contains(normals->station)) {
                compare(*table, rows[normals->station], *normals, agreement);
            }
        }
    }
    return agreement;
}

TEST(Normals, StationsAgreeWithTheOutsideFiguresToRounding)
{
    if (std::string{LATHHOUSE_CHECKS}.empty()) {
        GTEST_SKIP() << "needs the outside check values";
    }
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator{kNormalsChecks / "records"}) {
        files.push_back(entry.path());
    }
    const auto agreement = figures_agreement(files);
    EXPECT_GE(agreement.values, 3 * 48);
    EXPECT_EQ(agreement.beyond_rounding, 0) << agreement.first_difference;
}

TEST(Normals, AllStationsAgreeWithTheOutsideFiguresToRounding)
{
    const char* file = std::getenv("LATHHOUSE_US_DAILY");
    if (std::string{LATHHOUSE_CHECKS}.empty() || file == nullptr) {
        GTEST_SKIP() << "needs the outside check values and LATHHOUSE_US_DAILY, the records of all stations";
    }
    const auto agreement = figures_agreement({file});
    EXPECT_GE(agreement.values, 660 * 48);
    EXPECT_EQ(agreement.beyond_rounding, 0) << agreement.first_difference;
}

/// Twelve years: low -1.0 and 1.0 C on odd and even days, high 10 C more, 2.0 mm a day.
DailyRecord made_record()
{
    DailyRecord record{"MADE"};
    for (int year = 2001; year <= 2012; ++year) {
        for (int month = 1; month <= 12; ++month) {
            auto& readings = record.month_to_write(year, month);
            for (std::size_t day = 0; day < 28; ++day) {
                const int low = day % 2 == 0 ? -10 : 10;
                readings.low[day] = *DailyReading::from_tenths(low);
                readings.high[day] = *DailyReading::from_tenths(low + 100);
                readings.rain[day] = *DailyReading::from_tenths(20);
            }
        }
    }
    return record;
}

TEST(Normals, AreMeansAndPopulationSpreads)
{
    const auto normals = normals_of(made_record(), {2001, 2012}, {});
    ASSERT_TRUE(normals) << normals.error().message;
    EXPECT_DOUBLE_EQ(normals->monthly.low[3].degrees(), 0.0);
    EXPECT_DOUBLE_EQ(normals->monthly.high[3].degrees(), 10.0);
    EXPECT_DOUBLE_EQ((*normals->monthly.low_spread)[3].kelvins(), 1.0);
    EXPECT_DOUBLE_EQ((*normals->monthly.mean_spread)[3].kelvins(), 1.0);
    EXPECT_DOUBLE_EQ(*normals->monthly.frost_days[3], 15.0);
    EXPECT_DOUBLE_EQ(normals->monthly.lowest[3]->degrees(), -1.0);
    EXPECT_DOUBLE_EQ(normals->rain[3]->millimetres(), 60.0);
    EXPECT_NEAR(*normals->persistence, -1.0, 1e-3);
    EXPECT_NEAR(normals->completeness.fraction(), 12.0 * 28.0 / 365.2425, 1e-9);
}

TEST(Normals, WholeDegreesFahrenheitAreNoticed)
{
    DailyRecord record = made_record();
    EXPECT_DOUBLE_EQ(normals_of(record, {2001, 2012}, {})->monthly.reading_step.kelvins(), 0.1);
    for (int year = 2001; year <= 2012; ++year) {
        for (int month = 1; month <= 12; ++month) {
            for (auto& low : record.month_to_write(year, month).low) {
                low =
                    low.known() ? *DailyReading::from_tenths(low.tenths() < 0 ? -11 : 22) : low; // 30 F, 36 F
            }
        }
    }
    EXPECT_DOUBLE_EQ(normals_of(record, {2001, 2012}, {})->monthly.reading_step.kelvins(), 1.0 / 1.8);
}

TEST(Normals, YearsOfTheBaseThatTheRecordLacksAreGaps)
{
    const auto whole = normals_of(made_record(), {2001, 2012}, {});
    const auto wider = normals_of(made_record(), {1999, 2014}, {});
    ASSERT_TRUE(whole && wider) << wider.error().message;
    EXPECT_EQ(wider->monthly.low[3], whole->monthly.low[3]);
    EXPECT_NEAR(*wider->persistence, *whole->persistence, 1e-9);
    EXPECT_EQ(mean_lows_of(made_record(), {1999, 2014})[3], mean_lows_of(made_record(), {2001, 2012})[3]);
}

TEST(Normals, TooFewYearsAreAnErrorWithTheMonth)
{
    const auto normals = normals_of(made_record(), {2001, 2007}, {});
    ASSERT_FALSE(normals);
    EXPECT_EQ(normals.error().code, ErrorCode::TooFewYears);
    EXPECT_NE(normals.error().message.find("month 1"), std::string::npos);
}

TEST(Normals, EmptyRecordIsTooShort)
{
    EXPECT_EQ(normals_of(DailyRecord{"NONE"}, {1991, 2018}, {}).error().code, ErrorCode::TooFewYears);
}

} // namespace
} // namespace lathhouse::climate
