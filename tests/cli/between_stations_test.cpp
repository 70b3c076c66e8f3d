#include "tests/cli/run_command.h"

#include "core/base/csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::cli {
namespace {

// A place in Ohio, among stations with daily records but at none of them.
const std::vector<std::string> kAmongRecords{"--at", "40.35,-83.2", "--elevation", "300"};

std::vector<std::string> with(std::vector<std::string> arguments, const std::vector<std::string>& more)
{
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

TEST(FrostAtAPlace, IsCarriedFromNeighboursWhereTheyHaveDailyRecords)
{
    const auto ran = run_command(with({"frost", "--threshold", "0", "--json"}, kAmongRecords));
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json.at("method"), "neighbours");
    const auto monthly =
        run_command(with({"frost", "--threshold", "0", "--from-monthly", "--json"}, kAmongRecords)).json();
    EXPECT_EQ(monthly.at("method"), "monthly");
    EXPECT_LT(json.at("expected_error_days"), monthly.at("expected_error_days"));
}

TEST(FrostAtAPlace, IsFromMonthlyFiguresWhereThereAreNoDailyRecords)
{
    const auto ran =
        run_command({"frost", "--at", "48.2,20.5", "--elevation", "150", "--threshold", "0", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json().at("method"), "monthly");
}

TEST(StationsInUse, GiveTheYearsOfAllOfThem)
{
    // At New York the first station's record ends a year before the others'.
    const std::vector<std::string> chance{"chance", "--at", "40.7,-74.0", "--threshold", "0", "--from", "2027-05-01", "--to", "2027-05-02"};
    const auto base = run_command(with(chance, {"--json"})).json().at("attribution").at("base").get<std::string>();
    EXPECT_EQ(base, "1991-2018");
    EXPECT_THAT(run_command(chance).out, testing::HasSubstr("1991\u20132018"));
}

struct Face {
    const char* name;
    std::vector<std::string> arguments;
};
void PrintTo(const Face& row, std::ostream* out)
{
    *out << row.name;
}
class Attribution : public testing::TestWithParam<Face> {};

TEST_P(Attribution, StandsOnEveryFace)
{
    const auto text = run_command(with(GetParam().arguments, kAmongRecords));
    ASSERT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, testing::HasSubstr("chances, not promises"));
    EXPECT_THAT(text.out, testing::HasSubstr("NOAA NCEI"));
    EXPECT_THAT(text.out, testing::HasSubstr("stations, the nearest"));
    const auto json = run_command(with(with(GetParam().arguments, {"--json"}), kAmongRecords)).json();
    const auto& attribution = json.at("attribution");
    EXPECT_EQ(attribution.at("base"), "1991-2018");
    EXPECT_GT(attribution.at("stations"), 1);
    EXPECT_GT(attribution.at("nearest_km"), 0.0);
    EXPECT_GT(attribution.at("expected_error_c"), 0.0);
    EXPECT_TRUE(attribution.at("trend_c_per_decade").is_number());
    EXPECT_THAT(attribution.at("credits").get<std::string>(), testing::HasSubstr("NOAA"));
}

INSTANTIATE_TEST_SUITE_P(
    Faces, Attribution,
    testing::Values(Face{"Climate", {"climate"}}, Face{"Frost", {"frost", "--threshold", "0"}},
                    Face{"Chance",
                         {"chance", "--threshold", "0", "--from", "2027-05-01", "--to", "2027-05-20"}},
                    Face{"Night", {"night", "--date", "2027-04-20"}}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(StationsNear, CarryTheWeightsTheyHaveAtThePlace)
{
    const auto ran = run_command({"stations", "--near", "40.35,-83.2", "--count", "200", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    double sum = 0.0;
    for (const auto& station : json.at("stations")) {
        sum += station.at("weight").get<double>();
    }
    EXPECT_NEAR(sum, 1.0, 1e-4);
}

TEST(StationsNear, HaveNoWeightWhereNoneIsInReach)
{
    const auto ran = run_command({"stations", "--near=-48,-125", "--count", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.json().at("stations").at(0).at("weight").is_null());
    EXPECT_THAT(ran.err, testing::HasSubstr("no station"));
}

TEST(StationsLeaveOneOut, WriteTheirErrorsAndAPicture)
{
    const auto folder = std::filesystem::path{testing::TempDir()} / "left_out_errors";
    std::filesystem::create_directories(folder);
    const auto ran = run_command({"stations", "--leave-one-out", "--within", "us", "--out",
                                  folder / "errors.csv", "--map", folder / "errors.svg", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto table = CsvTable::read(folder / "errors.csv");
    ASSERT_TRUE(table);
    EXPECT_EQ(static_cast<int>(table->row_count()), ran.json().at("count").get<int>());
    const auto picture = read_text_file(folder / "errors.svg").value();
    EXPECT_TRUE(picture.starts_with("<svg "));
    EXPECT_EQ(std::ranges::count(picture, 'h') > static_cast<std::ptrdiff_t>(table->row_count()), true);
    std::filesystem::remove_all(folder);
}

TEST(StationsLeaveOneOut, WrongUseIsAnsweredInOneLine)
{
    for (const auto& arguments : {std::vector<std::string>{"stations", "--near", "40,-83", "--out", "x.csv"},
                                  std::vector<std::string>{"stations", "--leave-one-out", "--dates", "1"}}) {
        const auto ran = run_command(arguments);
        EXPECT_EQ(ran.status, 2) << ran.out;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
    }
    const auto ran =
        run_command({"stations", "--leave-one-out", "--within", "us", "--out", "/nowhere/x.csv"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
}

} // namespace
} // namespace lathhouse::cli
