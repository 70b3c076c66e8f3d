// The commands that answer for nights: frost in its three forms, chance, climate, night.

#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <filesystem>
#include <fstream>

namespace lathhouse::cli {
namespace {

/// Tekamah, Nebraska (USC00258480), a station of the shipped table.
const std::vector<std::string> kTekamah{"--at", "41.7767,-96.2328", "--elevation", "347.5"};

Ran run_at(const std::string& command, std::vector<std::string> further)
{
    std::vector<std::string> all{command};
    all.insert(all.end(), kTekamah.begin(), kTekamah.end());
    all.insert(all.end(), further.begin(), further.end());
    all.push_back("--json");
    return run_command(all);
}

/// A file in the test's own folder, gone with the object.
class ScratchFile {
public:
    ScratchFile(const std::string& name, const std::string& text)
        : path_(std::filesystem::path{testing::TempDir()} / ("lathhouse_frost_" + name))
    {
        std::ofstream{path_} << text;
    }
    ~ScratchFile() { std::filesystem::remove(path_); }
    ScratchFile(const ScratchFile&) = delete;
    ScratchFile& operator=(const ScratchFile&) = delete;
    std::string path() const { return path_.string(); }

private:
    std::filesystem::path path_;
};

/// Twenty years of invented days: a cosine about 8 C, coldest in mid January, whose phase differs from year
/// to year by up to nine days. Tenths of a degree.
std::string invented_record()
{
    using namespace std::chrono;
    std::string text = "STATION,DATE,TMIN,TMAX\n";
    for (sys_days day = 1991y / January / 1; day <= sys_days{2010y / December / 31}; day += days{1}) {
        const year_month_day date{day};
        const int year = static_cast<int>(date.year());
        // The year turns in summer, so that a winter has one phase.
        const int winter = static_cast<unsigned>(date.month()) >= 8 ? year : year - 1;
        const double shift = winter * 7 % 19 - 9.0;
        const double place = static_cast<double>((day - sys_days{1991y / January / 15}).count());
        const double low = 80.0 - 140.0 * std::cos(6.283185307 * (place - shift) / 365.25);
        const auto two = [](unsigned value) { return (value < 10 ? "0" : "") + std::to_string(value); };
        text += "INVENTED001," + std::to_string(year) + "-" + two(static_cast<unsigned>(date.month())) + "-" +
                two(static_cast<unsigned>(date.day())) + "," + std::to_string(std::lround(low)) + "," +
                std::to_string(std::lround(low) + 110) + "\n";
    }
    return text;
}

TEST(FrostAt, AStationsOwnPlaceHasItsCountedDates)
{
    const auto ran = run_at("frost", {"--threshold", "0"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json answer = ran.json();
    EXPECT_EQ(answer["method"], "records");
    EXPECT_EQ(answer["turn"], "07-31");
    const nlohmann::json& line = answer["thresholds"][0];
    // Counted from GHCN-Daily 1991-2018 (NOAA, public domain) outside the program.
    EXPECT_EQ(line["last"]["dates"]["50"], "04-23");
    EXPECT_EQ(line["first"]["dates"]["50"], "10-10");
    EXPECT_EQ(line["last"]["dates"]["10"], "05-13");
    EXPECT_EQ(line["last"]["dates"].size(), 9U);
    const nlohmann::json& interval = line["last"]["intervals"]["50"];
    EXPECT_LT(interval["from"], "04-23");
    EXPECT_GT(interval["to"], "04-23");
    EXPECT_GE(interval["coverage"], 0.9);
}

TEST(FrostAt, ARiskDownToOnePercentIsNotCountedAtTheStation)
{
    const auto ran = run_at("frost", {"--threshold", "0", "--risk", "1", "--risk", "5"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json answer = ran.json();
    EXPECT_EQ(answer["method"], "neighbours");
    const nlohmann::json& last = answer["thresholds"][0]["last"];
    EXPECT_GT(last["dates"]["1"], last["dates"]["5"]);
    EXPECT_GT(last["dates"]["5"], last["dates"]["10"]);
    EXPECT_TRUE(last["intervals"].is_null());
    EXPECT_TRUE(last["years"].is_null());
}

TEST(FrostAt, TellsTheColdestNightAndItsRange)
{
    const nlohmann::json lowest = run_at("frost", {"--threshold", "0"}).json()["lowest_of_season"];
    const nlohmann::json climate = run_at("climate", {}).json();
    EXPECT_NEAR(lowest["mean_c"].get<double>(), climate["lowest_c"].get<double>(), 1e-5);
    EXPECT_LT(lowest["p10_c"], lowest["p50_c"]);
    EXPECT_LT(lowest["p50_c"], lowest["p90_c"]);
}

TEST(FrostAt, NightsPerYearGrowWithTheLine)
{
    const nlohmann::json lines =
        run_at("frost", {"--threshold=-10", "--threshold", "0", "--threshold", "7.5"}).json()["thresholds"];
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_LT(lines[0]["nights_per_year"], lines[1]["nights_per_year"]);
    EXPECT_LT(lines[1]["nights_per_year"], lines[2]["nights_per_year"]);
}

TEST(FrostRecords, DatesStandWithinTheirIntervals)
{
    const ScratchFile record{"record.csv", invented_record()};
    const auto ran = run_command({"frost", "--records", record.path(), "--base", "1991-2010", "--threshold",
                                  "0", "--risk", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json line = ran.json()["stations"][0]["thresholds"][0];
    EXPECT_EQ(line["first"]["years"], 19);
    for (const char* end : {"last", "first"}) {
        for (const auto& [percent, interval] : line[end]["intervals"].items()) {
            const nlohmann::json& date = line[end]["dates"][percent];
            EXPECT_GE(interval["coverage"], 0.9) << end << percent;
            if (!interval["from"].is_null()) {
                EXPECT_LE(interval["from"], date) << end << percent;
            }
            if (!interval["to"].is_null()) {
                EXPECT_GE(interval["to"], date) << end << percent;
            }
        }
        // Of 19 seasons 0.5^19 and so on: the middle has limits on both sides, one percent has none outwards.
        EXPECT_FALSE(line[end]["intervals"]["50"]["from"].is_null());
        EXPECT_FALSE(line[end]["intervals"]["50"]["to"].is_null());
        EXPECT_TRUE(line[end]["intervals"]["1"][std::string{end} == "last" ? "to" : "from"].is_null());
        EXPECT_TRUE(line[end]["model_dates"].contains("1"));
        EXPECT_FALSE(line[end]["model_dates"].contains("10"));
    }
    const auto text =
        run_command({"frost", "--records", record.path(), "--base", "1991-2010", "--risk", "1"});
    EXPECT_NE(text.out.find("rarer than one of the seasons counted"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("19 seasons can tell"), std::string::npos) << text.out;
}

TEST(FrostMonthly, AnswersFromAFileOfFigures)
{
    std::string head = "station,latitude,longitude";
    std::string row = "OWN1,47.5,8.5";
    for (const char* figure : {"low", "high", "low_sd"}) {
        for (int m = 1; m <= 12; ++m) {
            head += std::string{","} + figure + (m < 10 ? "_0" : "_") + std::to_string(m);
            const double low = 5.0 - 8.0 * std::cos(6.283185307 * (m - 1) / 12.0);
            const std::string name = figure;
            row += "," + std::to_string(name == "low" ? low : name == "high" ? low + 9.0 : 4.0);
        }
    }
    const ScratchFile figures{"figures.csv", head + "\n" + row + "\n"};
    const auto ran = run_command(
        {"frost", "--monthly", figures.path(), "--threshold", "0", "--threshold", "2.2", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json station = ran.json()["stations"][0];
    EXPECT_EQ(station["station"], "OWN1");
    EXPECT_GT(station["thresholds"][1]["last"]["dates"]["50"],
              station["thresholds"][0]["last"]["dates"]["50"]);
    EXPECT_LT(station["lowest_of_season"]["mean_c"], -3.0);
}

TEST(FrostMonthly, TakesNightsCountedAtLines)
{
    // A cold season of six months; half of the nights of its months fall to -5 C, or only a few.
    const auto table = [](double at_minus_five) {
        std::string head = "station,latitude,longitude";
        std::string row = "OWN1,47.5,8.5";
        for (const char* figure : {"low", "high", "nights_0c", "nights_-5c", "nights_8c"}) {
            for (int m = 1; m <= 12; ++m) {
                const bool cold = m < 4 || m > 9;
                head += std::string{","} + figure + (m < 10 ? "_0" : "_") + std::to_string(m);
                const std::string name = figure;
                row += "," + std::to_string(name == "low"          ? cold ? -2.0 : 8.0
                                            : name == "high"       ? cold ? 5.0 : 18.0
                                            : name == "nights_0c"  ? cold ? 20.0 : 1.0
                                            : name == "nights_-5c" ? cold ? at_minus_five : 0.0
                                            : cold                 ? 28.0
                                                                   : 15.0);
            }
        }
        return head + "\n" + row + "\n";
    };
    const auto nights_at = [&table](double at_minus_five) {
        const ScratchFile figures{"counted.csv", table(at_minus_five)};
        const auto ran = run_command({"frost", "--monthly", figures.path(), "--threshold=-5", "--json"});
        EXPECT_EQ(ran.status, 0) << ran.err;
        return ran.json()["stations"][0]["thresholds"][0]["nights_per_year"].get<double>();
    };
    EXPECT_NEAR(nights_at(10.0), 60.0, 8.0);
    // Fewer than the mean and the other counts let expect: taken as far as twenty years weigh.
    EXPECT_LT(nights_at(3.0), nights_at(10.0) - 15.0);
    const ScratchFile figures{"counted.csv", table(5.0)};
    EXPECT_NE(run_command({"frost", "--monthly", figures.path()}).out.find("are counted"), std::string::npos);
}

TEST(Frost, SaysOfNoDateHowRightItIsWhereThereIsNone)
{
    // Singapore.
    const auto ran = run_command({"frost", "--at", "1.37,103.98", "--elevation", "15", "--threshold", "0"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.out.find("middle chances"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("From monthly figures."), std::string::npos) << ran.out;
}

TEST(FrostMonthly, AColumnThatLacksIsNamed)
{
    const ScratchFile figures{"lacking.csv", "station,latitude,longitude\nOWN1,47.5,8.5\n"};
    const auto ran = run_command({"frost", "--monthly", figures.path()});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_NE(ran.err.find("low_01"), std::string::npos) << ran.err;
}

TEST(Chance, OfOneNightIsTheNightsOwn)
{
    const nlohmann::json one =
        run_at("chance", {"--threshold", "0", "--from", "2027-04-20", "--to", "2027-04-20"}).json();
    const nlohmann::json night = run_at("night", {"--date", "2027-04-20", "--threshold", "0"}).json();
    EXPECT_NEAR(one["expected_nights"].get<double>(), night["chance"].get<double>(), 1e-6);
    EXPECT_NEAR(one["any"].get<double>(), night["chance"].get<double>(), 0.003);
}

TEST(Chance, GrowsWithTheSpanAndFallsAfterIt)
{
    const nlohmann::json weeks =
        run_at("chance", {"--threshold", "0", "--from", "2027-04-20", "--to", "2027-05-10"}).json();
    const nlohmann::json week =
        run_at("chance", {"--threshold", "0", "--from", "2027-04-20", "--to", "2027-04-26"}).json();
    EXPECT_GT(weeks["any"], week["any"]);
    EXPECT_GE(weeks["expected_nights"], weeks["any"]);
    EXPECT_LT(weeks["after"], week["after"]);
    EXPECT_EQ(weeks["before"], week["before"]);
    EXPECT_GT(week["before"], 0.99); // By April this place has had its frost.
}

TEST(Chance, AfterADateIsTheRiskOfThatDate)
{
    const nlohmann::json frost = run_at("frost", {"--threshold", "0"}).json();
    const std::string date = frost["thresholds"][0]["last"]["dates"]["10"];
    const std::string full = "2027-" + date;
    const nlohmann::json chance = run_at("chance", {"--threshold", "0", "--from", full, "--to", full}).json();
    EXPECT_LE(chance["after"].get<double>(), 0.1 + 1e-6);
    EXPECT_GT(chance["after"].get<double>(), 0.08);
}

TEST(Chance, OverAWholeSeasonIsWhatTheSeasonsWithoutLeave)
{
    const nlohmann::json whole =
        run_at("chance", {"--threshold=-25", "--from", "2026-08-01", "--to", "2027-07-31"}).json();
    const nlohmann::json frost = run_at("frost", {"--threshold=-25", "--from-monthly"}).json();
    EXPECT_NEAR(whole["any"].get<double>(),
                1.0 - frost["thresholds"][0]["last"]["share_without"].get<double>(),
                0.005); // 29 February apart.
    EXPECT_EQ(whole["before"], 0.0);
    EXPECT_EQ(whole["after"], 0.0);
}

TEST(Chance, WhereThereIsNoSeasonNothingIsBeforeOrAfter)
{
    // Singapore: lows swing by less than two degrees.
    const auto ran = run_command({"chance", "--at", "1.37,103.98", "--elevation", "15", "--threshold", "22",
                                  "--from", "2027-01-01", "--to", "2027-01-31", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_TRUE(ran.json()["before"].is_null());
    EXPECT_TRUE(ran.json()["after"].is_null());
}

TEST(Night, RangeAndChanceAgree)
{
    const nlohmann::json night = run_at("night", {"--date", "2027-04-20"}).json();
    EXPECT_TRUE(night["chance"].is_null());
    EXPECT_LT(night["p05_c"], night["median_c"]);
    EXPECT_LT(night["median_c"], night["p95_c"]);
    const std::string median = std::to_string(night["median_c"].get<double>());
    const nlohmann::json moved =
        run_at("night", {"--date", "2027-04-20", "--threshold=" + median, "--offset", "2"}).json();
    EXPECT_LT(moved["chance"], 0.5); // A spot two degrees warmer falls there less often.
}

TEST(Climate, TwelveMonthsAndStationsThatSumToOne)
{
    const nlohmann::json answer = run_at("climate", {}).json();
    ASSERT_EQ(answer["months"].size(), 12U);
    double weights = 0.0;
    for (const auto& station : answer["stations"]) {
        weights += station["weight"].get<double>();
    }
    EXPECT_NEAR(weights, 1.0, 1e-4);
    // Mean low of January and its spread at this station, counted from GHCN-Daily outside the program.
    EXPECT_NEAR(answer["months"][0]["low_c"].get<double>(), -11.52, 1.0);
    EXPECT_NEAR(answer["months"][0]["low_spread_c"].get<double>(), 7.02, 0.7);
}

struct WrongUse {
    const char* name;
    std::vector<std::string> arguments;
    int status;
    const char* says;
};
void PrintTo(const WrongUse& row, std::ostream* out)
{
    *out << row.name;
}
class NightCommands : public testing::TestWithParam<WrongUse> {};

TEST_P(NightCommands, SayWhatIsWrong)
{
    const auto ran = run_command(GetParam().arguments);
    EXPECT_EQ(ran.status, GetParam().status) << ran.err;
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
    EXPECT_NE(ran.err.find(GetParam().says), std::string::npos) << ran.err;
}

INSTANTIATE_TEST_SUITE_P(
    Wrong, NightCommands,
    testing::Values(
        WrongUse{"RiskOfNothing", {"frost", "--at", "48,20", "--risk", "0"}, 2, "--risk"},
        WrongUse{"LineBelowAllCold", {"frost", "--at", "48,20", "--threshold=-120"}, 2, "--threshold"},
        WrongUse{"NoForm", {"frost"}, 2, "--records"},
        WrongUse{"FiguresThatAreNotThere", {"frost", "--monthly", "/no/such/figures.csv"}, 1, "figures.csv"},
        WrongUse{
            "BackwardsInTime",
            {"chance", "--at", "48,20", "--threshold", "0", "--from", "2027-05-02", "--to", "2027-05-01"},
            2,
            "--to"},
        WrongUse{"OffsetThatNoSpotHas",
                 {"chance", "--at", "48,20", "--threshold", "0", "--from", "2027-05-01", "--to", "2027-05-02",
                  "--offset", "45"},
                 2,
                 "--offset"},
        WrongUse{"NightWithoutDate", {"night", "--at", "48,20"}, 2, "--date"},
        WrongUse{"LeadWithoutForecast",
                 {"night", "--at", "48,20", "--date", "2027-05-01", "--lead", "3"},
                 2,
                 "--forecast"}),
    [](const auto& row) { return std::string{row.param.name}; });

} // namespace
} // namespace lathhouse::cli
