#include "tests/cli/run_command.h"

#include <gtest/gtest.h>

namespace lathhouse::cli {
namespace {

struct UsageCase {
    const char* name;
    std::vector<std::string> arguments;
    int status;
    const char* says;
};
void PrintTo(const UsageCase& row, std::ostream* out)
{
    *out << row.name;
}
class Usage : public testing::TestWithParam<UsageCase> {};
TEST_P(Usage, IsAnsweredInOneLine)
{
    const auto ran = run_command(GetParam().arguments);
    EXPECT_EQ(ran.status, GetParam().status);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
    EXPECT_NE(ran.err.find(GetParam().says), std::string::npos) << ran.err;
}
INSTANTIATE_TEST_SUITE_P(
    Wrong, Usage,
    testing::Values(
        UsageCase{"LatitudeOf91", {"sun", "--at", "91,0", "--from", "2027-01-10"}, 2, "latitude"},
        UsageCase{"UnknownZone",
                  {"sun", "--at", "48,20", "--from", "2027-01-10", "--zone", "Europe/Atlantis"},
                  2,
                  "Europe/Atlantis"},
        UsageCase{"NoSuchDay", {"--on", "2027-02-30", "show", "place"}, 2, "--on"},
        UsageCase{"DateInAnotherForm", {"sun", "--at", "48,20", "--from", "10.1.2027"}, 2, "2027-05-09"},
        UsageCase{"UnknownCommand", {"prune"}, 2, "prune"}, UsageCase{"MissingPlace", {"climate"}, 2, "--at"},
        UsageCase{"LettersForAPlace", {"climate", "--at", "here"}, 2, "here"},
        UsageCase{"UnknownUnits", {"--units", "furlongs", "climate", "--at", "48,20"}, 2, "furlongs"},
        UsageCase{"RiskOf90Percent", {"moves", "--risk", "90"}, 2, "--risk"},
        UsageCase{"FarFromAnyStation", {"climate", "--at=-48,-125"}, 1, "station"},
        UsageCase{
            "RecordsThatAreNotThere", {"frost", "--records", "/no/such/file.dly"}, 1, "/no/such/file.dly"},
        UsageCase{"BasePeriodBackwards",
                  {"frost", "--records", LATHHOUSE_TEST_DATA, "--base", "2020-1991"},
                  2,
                  "2020-1991"},
        UsageCase{"RecordsThatAreAFolder", {"frost", "--records", LATHHOUSE_TEST_DATA}, 1, "folder"},
        UsageCase{"LightOfNowhere", {"light"}, 2, "--at"},
        UsageCase{"WindowThatFacesNowhere", {"light", "--at", "48,20", "--kind", "indoors"}, 2, "--facing"},
        UsageCase{"FacingUp", {"light", "--at", "48,20", "--facing", "up"}, 2, "up"},
        UsageCase{"UnknownShelter", {"light", "--at", "48,20", "--kind", "cave"}, 2, "cave"},
        UsageCase{"WidthOfTheOpen", {"light", "--at", "48,20", "--width", "2"}, 2, "--facing"},
        UsageCase{
            "WindowWithoutWidth", {"light", "--at", "48,20", "--facing", "S", "--width", "0"}, 2, "width"},
        UsageCase{"SpotAndPlace", {"light", "--spot", "1", "--at", "48,20"}, 2, "--spot"},
        UsageCase{"LampWithoutTarget", {"light", "--at", "48,20", "--lamp", "100"}, 2, "--target"},
        UsageCase{
            "LampWithoutLight", {"light", "--at", "48,20", "--lamp", "0", "--target", "5"}, 2, "--lamp"},
        UsageCase{
            "TargetBeyondAnySun", {"light", "--at", "48,20", "--lamp", "9", "--target", "90"}, 2, "--target"},
        UsageCase{"ClockOfNoZone",
                  {"light", "--at", "48,20", "--elevation", "150", "--zone", "Europe/Atlantis"},
                  2,
                  "Europe/Atlantis"},
        UsageCase{"HoursBeyondTheDay", {"light", "--foot-candles", "100", "--hours", "25"}, 2, "--hours"},
        UsageCase{"FootCandlesAndMoles", {"light", "--foot-candles", "100", "--mol", "3"}, 2, "either"},
        UsageCase{"ConversionAtAPlace", {"light", "--foot-candles", "100", "--at", "48,20"}, 2, "convert"},
        UsageCase{"NegativeFootCandles", {"light", "--foot-candles=-1"}, 2, "within"},
        UsageCase{"NoHouseholdThere", {"--home", "/no/such/folder", "moves"}, 1, "/no/such/folder"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Usage, EveryCommandHasHelpWithAnExample)
{
    for (const char* command : {"sun",   "frost",   "chance", "normals", "climate", "stations", "night",
                                "light", "demo",    "list",   "show",    "log",     "mix",      "moves",
                                "place", "tonight", "window", "where",   "map",     "coast",    "towns",
                                "backup", "restore", "check", "import"}) {
        const auto ran = run_command({command, "--help"});
        EXPECT_EQ(ran.status, 0) << command;
        EXPECT_NE(ran.out.find("Example:\n  lathhouse "), std::string::npos) << command << ran.out;
        EXPECT_TRUE(ran.err.empty()) << ran.err;
    }
}

TEST(Usage, WindowIsHandedOver)
{
    EXPECT_EQ(run_command({"window"}).status, 42);
}

} // namespace
} // namespace lathhouse::cli
