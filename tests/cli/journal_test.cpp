#include "tests/cli/with_demonstration.h"

#include <gtest/gtest.h>


namespace lathhouse::cli {
namespace {

class Journal : public WithDemonstration {
protected:
    Journal() : WithDemonstration("2026-09-10") {}
};

TEST_F(Journal, KeepsAnEventOfSeveralPlants)
{
    const auto ran = ask({"log", "event", "pest_found", "--plant", "2", "--plant", "4", "--detail",
                          "pest=mealybug", "--detail", "amount=few", "--note", "in the axils", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["logged"], 2);
    const auto shown = ask({"log", "show", "--kind", "pest_found", "--json"}).json()["events"];
    ASSERT_GE(shown.size(), 2u); // The demonstration had a find of its own.
    EXPECT_EQ(shown[shown.size() - 2]["details"]["pest"], "mealybug");
    EXPECT_EQ(shown[shown.size() - 2]["date"], "2026-09-10");
}

TEST_F(Journal, UndoesAndRedoes)
{
    ASSERT_EQ(ask({"log", "event", "moved", "--plant", "2", "--spot", "1"}).status, 0);
    const auto undone = ask({"log", "undo"});
    EXPECT_TRUE(undone.out.starts_with("Undone: 2026-09-10  moved, Angel's trumpet to ")) << undone.out;
    EXPECT_EQ(ask({"log", "redo"}).status, 0);
    const auto nothing = ask({"log", "redo"});
    EXPECT_EQ(nothing.status, 1);
    EXPECT_TRUE(is_one_clear_error(nothing)) << nothing.err;
}

TEST_F(Journal, SaysForWhichPlantsASprayCounts)
{
    const auto of_spot = ask({"log", "event", "chemical_damage", "--spot", "1", "--detail", "product=glyphosate"});
    EXPECT_TRUE(of_spot.out.ends_with("It counts for the plants that stood there on that day.\n")) << of_spot.out << of_spot.err;
    const auto of_home = ask({"log", "event", "chemical_damage"});
    EXPECT_TRUE(of_home.out.ends_with("It names no spot, so it counts for the plants that stood outdoors on that day.\n")) << of_home.out;
    const auto of_plant = ask({"log", "event", "chemical_damage", "--plant", "2"});
    EXPECT_EQ(of_plant.out.find("counts"), std::string::npos) << of_plant.out;
}

TEST_F(Journal, AddsAPlantUnderAFreeNameAndASpot)
{
    const auto plant = ask({"add", "plant", "lemon", "--spot", "3", "--litres", "12", "--json"});
    ASSERT_EQ(plant.status, 0) << plant.err;
    EXPECT_EQ(plant.json()["name"], "Lemon 2");
    const auto spot = ask({"add", "spot", "Bathroom", "--kind", "indoors", "--capacity", "2", "--light-summer",
                           "3", "--light-winter", "1", "--apart", "--json"});
    ASSERT_EQ(spot.status, 0) << spot.err;
    EXPECT_EQ(ask({"moves", "--effort", "fast", "--json"}).json()["plants"].size(), 15u);
}

TEST_F(Journal, PinsAPlantAndLetsItGo)
{
    ASSERT_EQ(ask({"pin", "Lemon", "1", "--from", "2026-12-01", "--to", "2027-01-31"}).status, 0);
    const auto twice = ask({"pin", "Lemon", "2", "--from", "2027-01-15", "--to", "2027-02-10"});
    EXPECT_EQ(twice.status, 2);
    EXPECT_NE(twice.err.find("cannot stand in two places"), std::string::npos) << twice.err;
    EXPECT_EQ(ask({"unpin", "Lemon", "--json"}).json()["taken_back"], 1);
    EXPECT_EQ(ask({"unpin", "Lemon", "--json"}).json()["taken_back"], 0);
}

TEST_F(Journal, SaysThatAPinBeginsAfterThePlan)
{
    const auto within = ask({"pin", "Lemon", "1", "--from", "2027-09-08", "--to", "2036-01-31"});
    ASSERT_EQ(within.status, 0);
    EXPECT_EQ(within.err.find("ends with the night of"), std::string::npos) << within.err;
    const auto beyond = ask({"pin", "Lemon", "1", "--from", "2036-02-01", "--to", "2036-03-01"});
    ASSERT_EQ(beyond.status, 0);
    EXPECT_NE(beyond.err.find("ends with the night of 2027-09-09"), std::string::npos) << beyond.err;
}

TEST_F(Journal, PinsAreUndoneInTheOrderOfEntry)
{
    ASSERT_EQ(ask({"pin", "Lemon", "1", "--from", "2026-12-01", "--to", "2027-01-31"}).status, 0);
    ASSERT_EQ(ask({"pin", "Lemon", "1"}).status, 0);
    EXPECT_EQ(ask({"unpin", "Lemon", "--json"}).json()["taken_back"], 2);
    const auto undone = ask({"log", "undo"});
    ASSERT_EQ(undone.status, 0) << undone.err;
    EXPECT_NE(undone.out.find("Lemon is pinned no longer"), std::string::npos) << undone.out;
    ASSERT_EQ(ask({"log", "undo"}).status, 0);
    EXPECT_EQ(ask({"unpin", "Lemon", "--json"}).json()["taken_back"], 1) << "the one on those nights is left";
}

TEST_F(Journal, SaysOfAPlantThatNothingOfThatIsThere)
{
    ASSERT_EQ(ask({"add", "plant", "Citrus limon", "--name", "New lemon"}).status, 0);
    for (const auto& command : std::vector<std::vector<std::string>>{{"log", "show", "--plant", "New lemon", "--kind", "fed"},
                                                                     {"list", "measurements", "--plant", "New lemon"},
                                                                     {"list", "photos", "--plant", "New lemon"},
                                                                     {"list", "readings", "--spot", "1"}}) {
        const auto ran = ask(command);
        EXPECT_EQ(ran.status, 0) << ran.err;
        EXPECT_NE(ran.out.find(" that"), std::string::npos) << command[1] << ": " << ran.out;
    }
}

struct RefusedCase {
    const char* name;
    std::vector<std::string> command;
    int status;
};
void PrintTo(const RefusedCase& row, std::ostream* out)
{
    *out << row.name;
}
class JournalRefuses : public Journal, public testing::WithParamInterface<RefusedCase> {};
TEST_P(JournalRefuses, WithOneClearError)
{
    const auto ran = ask(GetParam().command);
    EXPECT_EQ(ran.status, GetParam().status) << ran.err;
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}
INSTANTIATE_TEST_SUITE_P(
    Input, JournalRefuses,
    testing::Values(
        RefusedCase{"UnknownKind", {"log", "event", "eaten", "--plant", "2"}, 2},
        RefusedCase{"UnknownPlant", {"log", "event", "watered", "--plant", "Lemmon"}, 1},
        RefusedCase{"NoPlant", {"log", "event", "watered"}, 2},
        RefusedCase{"Tomorrow", {"log", "event", "watered", "--plant", "2", "--date", "2026-09-11"}, 2},
        RefusedCase{"NamelessPest", {"log", "event", "pest_found", "--plant", "2"}, 2},
        RefusedCase{"DetailWithoutEquals", {"log", "event", "fed", "--plant", "2", "--detail", "100"}, 2},
        RefusedCase{"DetailTwice",
                    {"log", "event", "pest_found", "--plant", "2", "--detail", "pest=mealybug", "--detail", "pest=thrips"},
                    2},
        RefusedCase{"UnknownPlantKind", {"add", "plant", "Triffid"}, 1},
        RefusedCase{"LethalAboveSafe", {"add", "plant", "lemon", "--lethal", "9", "--safe-night", "4"}, 2},
        RefusedCase{"NoVolume", {"add", "plant", "lemon", "--litres", "0"}, 2},
        RefusedCase{"TakenName",
                    {"add", "spot", "Living room", "--kind", "open", "--capacity", "1", "--light-summer", "9",
                     "--light-winter", "2"},
                    2},
        RefusedCase{"TooManyPots",
                    {"add", "spot", "Bench", "--kind", "open", "--capacity", "1001", "--light-summer", "9",
                     "--light-winter", "2"},
                    2},
        RefusedCase{"FewerPotsThanNone",
                    {"add", "spot", "Bench", "--kind", "open", "--capacity=-1", "--light-summer", "9",
                     "--light-winter", "2"},
                    2},
        RefusedCase{"OffsetTooFar",
                    {"add", "spot", "Bench", "--kind", "open", "--capacity", "1", "--light-summer", "9",
                     "--light-winter", "2", "--offset", "31"},
                    2},
        RefusedCase{"OffsetSpreadBelowNone",
                    {"add", "spot", "Bench", "--kind", "open", "--capacity", "1", "--light-summer", "9",
                     "--light-winter", "2", "--offset-sd=-1"},
                    2},
        RefusedCase{"ColdRoom",
                    {"add", "spot", "Cellar", "--kind", "indoors", "--capacity", "1", "--light-summer", "0",
                     "--light-winter", "0", "--winter=-400"},
                    2},
        RefusedCase{"RoomWithoutATemperature",
                    {"add", "spot", "Cellar", "--kind", "indoors", "--capacity", "1", "--light-summer", "0",
                     "--light-winter", "0", "--winter", "nan"},
                    2},
        RefusedCase{"RiskThatIsNoNumber", {"export", "sheet", "year", "/no/such/folder/year.pdf", "--risk", "nan"}, 2},
        RefusedCase{"PinBackwards", {"pin", "Lemon", "1", "--from", "2027-02-01", "--to", "2027-01-01"}, 2}),
    [](const auto& row) { return std::string{row.param.name}; });

} // namespace
} // namespace lathhouse::cli
