#include "tests/cli/with_demonstration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>


namespace lathhouse::cli {
namespace {

using testing::HasSubstr;

class SeedCommands : public WithDemonstration {
protected:
    /// Without a past, so that lots and trays are numbered from 1.
    SeedCommands() : WithDemonstration("2027-01-10", {"--years", "0"}) {}
    Ran on(const std::string& date, const std::vector<std::string>& command) const { return ask(command, date); }
    void add_tomato() const
    {
        const auto ran = on("2027-02-01", {"add", "lot", "--crop", "tomato", "--name", "Balcony", "--packed", "2026",
                                           "--germination", "90", "--seeds", "60"});
        ASSERT_EQ(ran.status, 0) << ran.err;
    }
};

TEST_F(SeedCommands, ALotIsSownCountedAndTeachesItsRate)
{
    add_tomato();
    const auto sown = on("2027-03-01", {"log", "sown", "--lot", "Balcony", "--seeds", "20", "--mix", "20", "--json"});
    ASSERT_EQ(sown.status, 0) << sown.err;
    // Published: eight days at 20 C, give or take two kelvins.
    EXPECT_EQ(sown.json()["emerge"]["from"], "2027-03-08");
    EXPECT_EQ(sown.json()["emerge"]["to"], "2027-03-11");
    ASSERT_EQ(on("2027-03-10", {"log", "count", "--tray", "1", "--emerged", "10"}).status, 0);
    const auto last = on("2027-03-25", {"log", "count", "--tray", "1", "--emerged", "12", "--last", "--json"});
    ASSERT_EQ(last.status, 0) << last.err;
    EXPECT_NEAR(last.json()["lot"]["germination"].get<double>(), 0.75, 1e-6); // (18 + 12) / 40
    const auto lots = on("2027-03-25", {"list", "lots", "--json"}).json()["lots"];
    ASSERT_EQ(lots.size(), 1U);
    EXPECT_EQ(lots[0]["seeds_left"], 40);
    EXPECT_EQ(lots[0]["state"], "good");
    const auto shown = on("2027-03-25", {"show", "lot", "1", "--json"}).json();
    EXPECT_EQ(shown["trays"][0]["counts"].size(), 2U);
    EXPECT_TRUE(shown["trays"][0]["over"]);
    EXPECT_FALSE(shown["sources"].empty());
}

TEST_F(SeedCommands, SowingByALotUsesWhatItsCountsTaught)
{
    add_tomato();
    const auto seeds = [&] {
        return on("2027-03-26", {"sowing", "--lot", "Balcony", "--plants", "10", "--json"}).json()["seeds"].get<int>();
    };
    const int before = seeds();
    ASSERT_EQ(on("2027-03-01", {"log", "sown", "--lot", "1", "--seeds", "20"}).status, 0);
    ASSERT_EQ(on("2027-03-25", {"log", "count", "--tray", "1", "--emerged", "8", "--last"}).status, 0);
    EXPECT_GT(seeds(), before);
}

TEST_F(SeedCommands, SeedlingsBecomePlantsOfOneDescent)
{
    add_tomato();
    ASSERT_EQ(on("2027-03-01", {"log", "sown", "--lot", "1", "--seeds", "8", "--spot", "1"}).status, 0);
    ASSERT_EQ(on("2027-03-25", {"log", "count", "--tray", "1", "--emerged", "3", "--last"}).status, 0);
    const auto potted = on("2027-03-26", {"log", "potted", "--tray", "1", "--plants", "2", "--json"});
    ASSERT_EQ(potted.status, 0) << potted.err;
    EXPECT_EQ(potted.json()["plants"].size(), 2U);
    EXPECT_EQ(on("2027-03-26", {"show", "lot", "1", "--json"}).json()["trays"][0]["plants"], 2);
    const auto plants = on("2027-03-26", {"list", "plants", "--json"}).json()["plants"];
    const auto& last = plants[plants.size() - 1];
    EXPECT_EQ(last["kind"], "Solanum lycopersicum");
    EXPECT_EQ(last["spot"], 1);
    EXPECT_GE(last["safe_night_c"], 10.0);
    const auto over = on("2027-03-26", {"log", "potted", "--tray", "1", "--plants", "2"});
    EXPECT_EQ(over.status, 2);
    EXPECT_THAT(over.err, HasSubstr("1 seedlings left"));
}

TEST_F(SeedCommands, PastUseIsSaid)
{
    add_tomato();
    ASSERT_EQ(on("2027-03-01", {"log", "sown", "--lot", "1", "--seeds", "30"}).status, 0);
    const auto counted = on("2027-03-25", {"log", "count", "--tray", "1", "--emerged", "3", "--last"});
    EXPECT_THAT(counted.out, HasSubstr("past use"));
    EXPECT_THAT(counted.out, HasSubstr("fewer than 19 of 20"));
    EXPECT_THAT(on("2027-03-25", {"sowing", "--lot", "1"}).out, HasSubstr("past use"));
    EXPECT_THAT(on("2027-03-25", {"list", "lots"}).out, HasSubstr("past use"));
}

TEST_F(SeedCommands, RefusesWhatCannotBe)
{
    add_tomato();
    struct Case {
        std::vector<std::string> arguments;
        int status;
        const char* says;
    };
    for (const auto& [arguments, status, says] :
         {Case{{"add", "lot", "--crop", "tomatto"}, 1, "did you mean"},
          Case{{"add", "lot", "--crop", "tomato", "--name", "balcony"}, 2, "another name"},
          Case{{"add", "lot", "--crop", "tomato", "--name", "x", "--seeds", "0"}, 2, "0 seeds"},
          Case{{"add", "lot", "--crop", "tomato", "--name", "x", "--germination", "400"}, 2, "100 percent"},
          Case{{"add", "lot", "--crop", "tomato", "--name", "x", "--packed", "2035"}, 2, "packed year"},
          Case{{"log", "sown", "--lot", "7", "--seeds", "3"}, 1, "list lots"},
          Case{{"log", "sown", "--lot", "1", "--seeds", "61"}, 2, "60 seeds left"},
          Case{{"log", "sown", "--lot", "1", "--seeds", "0"}, 2, "at least one"},
          Case{{"log", "sown", "--lot", "1", "--seeds", "3", "--spot", "nowhere"}, 1, "list spots"},
          Case{{"log", "count", "--tray", "5", "--emerged", "3"}, 1, "no such tray"},
          Case{{"show", "lot", "9"}, 1, "list lots"},
          Case{{"sowing", "--lot", "9"}, 1, "list lots"}}) {
        const auto ran = on("2027-03-25", arguments);
        EXPECT_EQ(ran.status, status) << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
        EXPECT_THAT(ran.err, HasSubstr(says));
    }
    EXPECT_EQ(on("2027-03-25", {"list", "lots", "--json"}).json()["lots"].size(), 1U);
}

TEST_F(SeedCommands, SowingUsesTheHouseholdsPlaceWhereNoneIsNamed)
{
    const auto ran = on("2027-01-10", {"sowing", "--crop", "zinnia", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_FALSE(ran.json()["plant_out"].is_null());
}

} // namespace
} // namespace lathhouse::cli
