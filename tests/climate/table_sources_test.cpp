#include "core/climate/build_station_table.h"
#include "tests/climate/sample_record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>

namespace lathhouse::climate {
namespace {

using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;

constexpr std::array kHeads = {"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

/// A row of the world's monthly means; what is said of a figure holds in every month.
struct WorldRow {
    std::string id = "1";
    std::string country = "Anyland";
    std::string place = "47,19,100,20"; ///< Latitude, longitude, height, years.
    std::map<std::string, std::string> figures = {{"tmin", "2"}, {"tmax", "12"}};
};

std::string world_text(const std::vector<WorldRow>& rows)
{
    const std::array figures = {"tmin", "tmax", "sd_tmean", "prcp_mm", "frostdays", "absmin"};
    std::string text = "wmo,name,country,lat,lon,elev_m,min_years";
    for (const std::string figure : figures) {
        for (const std::string month : kHeads) {
            text += "," + figure + "_" + month;
        }
    }
    for (const WorldRow& row : rows) {
        text += "\n" + row.id + ",Place " + row.id + "," + row.country + "," + row.place;
        for (const std::string figure : figures) {
            const auto said = row.figures.find(figure);
            for (std::size_t month = 0; month < kHeads.size(); ++month) {
                text += "," + (said == row.figures.end() ? std::string{} : said->second);
            }
        }
    }
    return text + "\n";
}

class TableSourcesTest : public testing::Test {
protected:
    TableSourcesTest()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_sources_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
    }
    ~TableSourcesTest() override { std::filesystem::remove_all(folder_); }

    std::filesystem::path write(const std::string& name, const std::string& content) const
    {
        std::ofstream{folder_ / name, std::ios::binary} << content;
        return folder_ / name;
    }
    Result<WorldRows> read(const std::vector<WorldRow>& rows) const
    {
        return read_world_rows(write("world.csv", world_text(rows)), {2003, 2021});
    }
    std::filesystem::path folder_;
};

TEST_F(TableSourcesTest, WorldRowHasItsFigures)
{
    const auto rows = read({{.figures = {{"tmin", "2"}, {"tmax", "12"}, {"sd_tmean", "1.5"}, {"prcp_mm", "40"}, {"absmin", "-11"}}}});
    ASSERT_TRUE(rows) << rows.error().message;
    ASSERT_EQ(rows->stations.size(), 1U);
    const Station& station = rows->stations.front();
    EXPECT_EQ(station.country, "Anyland");
    EXPECT_EQ(station.position.latitude.degrees(), 47.0);
    EXPECT_EQ(station.monthly.low[3].degrees(), 2.0);
    EXPECT_EQ(station.monthly.high[3].degrees(), 12.0);
    EXPECT_EQ((*station.monthly.mean_spread)[11].kelvins(), 1.5);
    EXPECT_EQ(station.rain[6]->millimetres(), 40.0);
    EXPECT_EQ(station.monthly.lowest[0]->degrees(), -11.0);
    EXPECT_EQ(station.monthly.years, 20);
}

TEST_F(TableSourcesTest, FrostDaysOverYearsThatHaveSomeBecomeThoseOfAllYears)
{
    const auto rows = read({{.figures = {{"tmin", "2"}, {"tmax", "12"}, {"frostdays", "5"}}}});
    ASSERT_TRUE(rows);
    const double all = rows->stations.front().monthly.frost_days[0].value();
    EXPECT_LT(all, 5.0);
    EXPECT_NEAR(all / (1.0 - std::exp(-0.45 * all)), 5.0, 1e-6); // As the header has it.
}

TEST_F(TableSourcesTest, FewFrostDaysOverYearsThatHaveSomeSayNothing)
{
    const auto rows = read({{.figures = {{"tmin", "2"}, {"tmax", "12"}, {"frostdays", "2.9"}}}});
    ASSERT_TRUE(rows);
    EXPECT_FALSE(rows->stations.front().monthly.frost_days[0].has_value());
}

TEST_F(TableSourcesTest, CountryThatReportsZerosIsTakenAtItsWord)
{
    const auto rows = read({{.figures = {{"tmin", "2"}, {"tmax", "12"}, {"frostdays", "40"}}},
                            {.id = "2", .figures = {{"tmin", "12"}, {"tmax", "22"}, {"frostdays", "0"}}}});
    ASSERT_TRUE(rows);
    EXPECT_EQ(rows->stations[0].monthly.frost_days[3], 30.0); // No more than April has.
    EXPECT_EQ(rows->stations[1].monthly.frost_days[3], 0.0);
}

TEST_F(TableSourcesTest, FrostDaysThatContradictTheLowsAreDropped)
{
    const auto rows = read({{.country = "Bolivia", .figures = {{"tmin", "2"}, {"tmax", "12"}, {"frostdays", "5"}}}});
    ASSERT_TRUE(rows);
    EXPECT_FALSE(rows->stations.front().monthly.frost_days[0].has_value());
}

TEST_F(TableSourcesTest, FigureThatCannotBeIsDroppedAndTheRowKept)
{
    const auto rows = read({{.figures = {{"tmin", "2"}, {"tmax", "12"}, {"sd_tmean", "25"}, {"prcp_mm", "-1"}, {"absmin", "3"}}}});
    ASSERT_TRUE(rows);
    const Station& station = rows->stations.front();
    EXPECT_FALSE(station.monthly.mean_spread.has_value());
    EXPECT_FALSE(station.rain[0].has_value());
    EXPECT_FALSE(station.monthly.lowest[0].has_value());
}

TEST_F(TableSourcesTest, RowThatCannotBeUsedIsLeftOutWithItsReason)
{
    const auto rows = read({{.id = "1", .place = ",19,100,20"},
                            {.id = "2", .figures = {{"tmin", "2"}}},
                            {.id = "3", .figures = {{"tmin", "12"}, {"tmax", "2"}}},
                            {.id = "4", .figures = {{"tmin", "2"}, {"tmax", "40"}}},
                            {.id = "5", .figures = {{"tmin", "-80"}, {"tmax", "2"}}},
                            {.id = "6", .place = "0,0,100,20"},
                            {.id = "7", .place = "47,19,7000,20"}});
    ASSERT_TRUE(rows);
    EXPECT_TRUE(rows->stations.empty());
    std::vector<std::string> reasons;
    for (const LeftOut& row : rows->left_out) {
        reasons.push_back(row.id + ": " + row.reason);
    }
    EXPECT_THAT(reasons,
                ElementsAre("1: no position or height", "2: a month lacks its mean low or high",
                            "3: the mean high of month 1 is below the mean low", "4: the daily range of month 1 is over 35 K",
                            "5: the mean low or high of month 1 is no possible value", "6: the position is 0, 0",
                            "7: the height is outside -430 to 6000 m"));
}

TEST_F(TableSourcesTest, WorldFileThatIsNoneIsASentence)
{
    const BasePeriod base{2003, 2021};
    EXPECT_EQ(read_world_rows(folder_ / "none.csv", base).error().code, ErrorCode::NotFound);
    EXPECT_THAT(read_world_rows(write("a.csv", "wmo,name\n1,Here\n"), base).error().message, HasSubstr("country"));
    std::string text = world_text({{}});
    text.replace(text.find("tmax_Jul"), 8, "tmax_Jxx");
    EXPECT_THAT(read_world_rows(write("b.csv", text), base).error().message, HasSubstr("tmax_Jul"));
    EXPECT_EQ(read({{.place = "north,19,100,20"}}).error().code, ErrorCode::Malformed);
    EXPECT_EQ(read({{.figures = {{"tmin", "cold"}}}}).error().code, ErrorCode::Malformed);
}

/// An invented record in the fixed-width form.
std::string fixed_width(const std::string& station, int first_year, int last_year)
{
    auto record = sample_record(first_year, last_year);
    std::string text;
    for (int year = first_year; year <= last_year; ++year) {
        for (int month = 1; month <= 12; ++month) {
            const auto& readings = record.month_to_write(year, month);
            const auto line = [&](const char* element, const auto& of_days) {
                std::array<char, 32> head{};
                std::snprintf(head.data(), head.size(), "%04d%02d%s", year, month, element);
                text += station + head.data();
                for (const auto& reading : of_days) {
                    std::array<char, 16> field{};
                    std::snprintf(field.data(), field.size(), "%5d   ", reading.known() ? reading.tenths() : -9999);
                    text += field.data();
                }
                text += "\n";
            };
            line("TMAX", readings.high);
            line("TMIN", readings.low);
            line("PRCP", readings.rain);
        }
    }
    return text;
}

TEST_F(TableSourcesTest, RecordsMeanAndPlacesComeTogether)
{
    const auto records = write("records.dly", fixed_width("USW00000001", 1991, 2020) + fixed_width("USW00000002", 2018, 2020) +
                                                  fixed_width("USW00000003", 1991, 2020));
    const auto places = write("places.csv", "station,name,latitude,longitude,elevation_m\n"
                                            "USW00000001,\"Field, upper\",40,-90,200\nUSW00000003,Nowhere,,,\n");
    const auto world = write("world.csv", world_text({{}}));
    const auto built = build_station_table({.records = {records}, .places = places, .world = world});
    ASSERT_TRUE(built) << built.error().message;
    ASSERT_EQ(built->stations.size(), 2U);
    EXPECT_TRUE(built->unplaced.empty());
    const auto of_us = std::ranges::find(built->stations, StationSource::UsDaily, &Station::source);
    ASSERT_NE(of_us, built->stations.end());
    EXPECT_EQ(of_us->name, "Field, upper");
    EXPECT_EQ(of_us->country, "United States of America");
    EXPECT_EQ(of_us->elevation.metres(), 200.0);
    EXPECT_NEAR(of_us->monthly.low[6].degrees(), 15.0, 0.6); // The invented course: 5 in the mean, 10 more in July.
    EXPECT_NEAR(of_us->monthly.high[6].degrees() - of_us->monthly.low[6].degrees(), 10.0, 1e-6);
    EXPECT_THAT(built->left_out, ElementsAre(Field(&LeftOut::id, "USW00000002"), Field(&LeftOut::reason, "no position")));
    EXPECT_THAT(left_out_text(built->left_out), HasSubstr("\nUSW00000003,,us_daily,no position\n"));
}

TEST_F(TableSourcesTest, WithoutPlacesStationsAreKeptAndNamedAsUnplaced)
{
    const auto records = write("records.dly", fixed_width("XX000000001", 1991, 2020));
    const auto built = build_station_table({.records = {records}, .places = {}, .world = {}});
    ASSERT_TRUE(built) << built.error().message;
    ASSERT_EQ(built->stations.size(), 1U);
    EXPECT_EQ(built->stations.front().source, StationSource::Own);
    EXPECT_THAT(built->unplaced, ElementsAre("XX000000001"));
}

TEST_F(TableSourcesTest, SourceThatCannotBeReadIsASentence)
{
    const auto none = folder_ / "none";
    EXPECT_EQ(build_station_table({.records = {none}, .places = {}, .world = {}}).error().code, ErrorCode::NotFound);
    EXPECT_EQ(build_station_table({.records = {}, .places = none, .world = {}}).error().code, ErrorCode::NotFound);
    EXPECT_EQ(build_station_table({.records = {}, .places = {}, .world = none}).error().code, ErrorCode::NotFound);
    const auto with_places = [&](const std::string& content) {
        return build_station_table({.records = {}, .places = write("places.csv", content), .world = {}});
    };
    EXPECT_THAT(with_places("station,name,latitude,longitude\n").error().message, HasSubstr("elevation_m"));
    EXPECT_EQ(with_places("station,name,latitude,longitude,elevation_m\nA,B,north,1,1\n").error().code, ErrorCode::Malformed);
    EXPECT_THAT(with_places("station,name,latitude,longitude,elevation_m\nA,B,1,999,1\n").error().message, HasSubstr("longitude"));
}

} // namespace
} // namespace lathhouse::climate
