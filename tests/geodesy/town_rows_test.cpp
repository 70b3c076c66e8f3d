#include "core/geodesy/town_rows.h"

#include "core/base/csv.h"
#include "tests/geodesy/sample_towns.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::geodesy {
namespace {

class TownRowFiles : public testing::Test {
protected:
    TownRowFiles()
        : folder_(std::filesystem::path{testing::TempDir()} /
                  (std::string{"lathhouse-towns-"} +
                   testing::UnitTest::GetInstance()->current_test_info()->name()))
    {
        std::filesystem::create_directories(folder_);
    }
    ~TownRowFiles() override { std::filesystem::remove_all(folder_); }
    std::filesystem::path write(const char* name, std::string_view text)
    {
        EXPECT_TRUE(write_file_whole(folder_ / name, text));
        return folder_ / name;
    }
    std::filesystem::path folder_;
};

/// A line of the gazetteer with its 19 columns; the town is invented.
std::string place(int id, const char* name, const char* others, const char* feature, int population,
                  const char* terrain)
{
    return std::to_string(id) + '\t' + name + '\t' + name + '\t' + others + "\t10.5\t20.25\tP\t" + feature +
           "\tXA\t\t07\t\t\t\t" + std::to_string(population) + "\t\t" + terrain +
           "\tEurope/Vienna\t2023-01-01\n";
}

TEST_F(TownRowFiles, AreReadAsTheyWereWritten)
{
    const auto rows = sample_towns();
    write("towns.csv", towns_text(rows));
    write("regions.csv", regions_text(rows));
    const auto read = read_town_rows(folder_);
    ASSERT_TRUE(read) << read.error().message;
    ASSERT_EQ(read->towns.size(), rows.towns.size());
    EXPECT_EQ(towns_text(*read), towns_text(rows));
    EXPECT_EQ(regions_text(*read), regions_text(rows));
    EXPECT_EQ(read->towns[7].other_keys, rows.towns[7].other_keys);
}
TEST_F(TownRowFiles, NameTheLineOfARowThatIsWrong)
{
    write("regions.csv", "country,code,name,zone\nXA,07,Somewhere,Europe/Vienna\n");
    for (const char* row :
         {"1,Town,,XA,07,95.0,10.0,,1,", "1,Town,,XA,07,,10.0,,1,", "1,,,XA,07,5.0,10.0,,1,",
          "1,Town,,XA,09,5.0,10.0,,1,", "1,Town,,XA,09,5.0,10.0,,1,Europe/Vienna", "1,Town,,XA,07,5.0,10.0,,many,"}) {
        write("towns.csv",
              std::string{
                  "id,name,other_keys,country,region,latitude,longitude,elevation_m,population,zone\n"} +
                  row + "\n");
        const auto read = read_town_rows(folder_);
        ASSERT_FALSE(read) << row;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << row;
        EXPECT_THAT(read.error().message, testing::HasSubstr("line 2")) << row;
    }
}
TEST_F(TownRowFiles, AreChosenFromTheGazetteer)
{
    const auto places =
        write("places.txt",
              place(1, "Bigtown", "BGT,Gross Stadt,Großstadt,Биг", "PPL", 250000, "412") +
                  place(2, "Hamlet", "", "PPL", 300, "5") + place(3, "Seat", "", "PPLA", 900, "-9999") +
                  place(4, "Quarter", "", "PPLX", 50000, "5") + place(5, "Oldtown", "", "PPLH", 90000, "5"));
    const auto divisions = write("divisions.json", R"([{"code": "XA.07", "name": "Somewhere"}])");
    const auto rows = build_town_rows(places, divisions);
    ASSERT_TRUE(rows) << rows.error().message;
    ASSERT_EQ(rows->towns.size(), 2U);
    const auto& town = rows->towns[0];
    EXPECT_EQ(town.name, "Bigtown");
    EXPECT_THAT(town.other_keys, testing::ElementsAre("gross stadt", "grossstadt", "big"));
    EXPECT_EQ(town.elevation->metres(), 412.0);
    EXPECT_FALSE(rows->towns[1].elevation);
    ASSERT_EQ(rows->regions.size(), 1U);
    EXPECT_EQ(rows->regions[0].name, "Somewhere");
    EXPECT_EQ(rows->regions[0].zone, "Europe/Vienna");
}
TEST_F(TownRowFiles, OfABrokenGazetteerAreRefusedWithTheLine)
{
    const auto divisions = write("divisions.json", "[]");
    const auto cut =
        build_town_rows(write("cut.txt", place(1, "A", "", "PPLC", 1, "1") + "2\tB\tB"), divisions);
    ASSERT_FALSE(cut);
    EXPECT_THAT(cut.error().message, testing::HasSubstr("line 2"));
    const auto places = write("places.txt", place(1, "A", "", "PPLC", 1, "1"));
    EXPECT_FALSE(build_town_rows(places, write("broken.json", "[{\"code\": 1}]")));
    EXPECT_FALSE(build_town_rows(places, write("broken.json", "{")));
    EXPECT_FALSE(build_town_rows(folder_ / "absent.txt", divisions));
}

} // namespace
} // namespace lathhouse::geodesy
