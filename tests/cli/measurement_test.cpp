#include "app/cli/all_commands.h"
#include "app/cli/folder_warning.h"
#include "tests/cli/with_demonstration.h"

#include <gtest/gtest.h>


namespace lathhouse::cli {
namespace {

class MeasurementCommands : public WithDemonstration {
protected:
    MeasurementCommands() : WithDemonstration("2026-09-10") {}
};

TEST_F(MeasurementCommands, KeepEveryRepeat)
{
    const auto ran = ask({"log", "measurement", "width", "30.5", "30.7", "30.6", "--plant", "Rosemary", "--by", "Ada",
                          "--litres", "5", "--mix", "gritty", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto one = ran.json()["measurement"];
    EXPECT_EQ(one["repeats"].size(), 3U);
    EXPECT_NEAR(one["value"].get<double>(), 30.6, 1e-9);
    EXPECT_NEAR(one["standard_error"].get<double>(), 0.057735, 1e-6);
    EXPECT_EQ(one["unit"], "cm");
    EXPECT_EQ(one["method"], "ruler");
    EXPECT_EQ(one["by"], "Ada");
    EXPECT_EQ(one["pot_l"], 5.0);
    EXPECT_EQ(one["mix"], "gritty");
    const auto listed = ask({"list", "measurements", "--plant", "Rosemary", "--kind", "width", "--json"}).json();
    ASSERT_EQ(listed["measurements"].size(), 1U);
    EXPECT_EQ(listed["measurements"][0], one);
    const auto shown = ask({"show", "plant", "Rosemary"});
    EXPECT_NE(shown.out.find(", by Ada, in gritty"), std::string::npos) << shown.out;
}

TEST_F(MeasurementCommands, TakeInchesAndPercent)
{
    const auto plain = ask({"--units", "us", "log", "measurement", "width", "10", "--plant", "3", "--json"});
    ASSERT_EQ(plain.status, 0) << plain.err;
    EXPECT_NEAR(plain.json()["measurement"]["value"].get<double>(), 25.4, 1e-9);
    const auto said = ask({"log", "measurement", "width", "10in", "--plant", "3", "--json"});
    EXPECT_NEAR(said.json()["measurement"]["value"].get<double>(), 25.4, 1e-9);
    const auto metric = ask({"--units", "us", "log", "measurement", "width", "25.4cm", "--plant", "3"});
    EXPECT_NE(metric.out.find("10.00 in"), std::string::npos) << metric.out;
    const auto share = ask({"log", "measurement", "green_cover", "35%", "--plant", "3", "--json"});
    EXPECT_NEAR(share.json()["measurement"]["value"].get<double>(), 0.35, 1e-9);
    EXPECT_EQ(share.json()["measurement"]["method"], "eye");
}

TEST_F(MeasurementCommands, ATripOverATimeZoneKeepsTheOrder)
{
    // 08:00 on 2 May in Tokyo is 01:00 on 2 May at the household in Europe; 23:30 there on 1 May is earlier.
    ASSERT_EQ(ask({"log", "measurement", "stem", "2.1", "--plant", "7", "--date", "2026-05-02", "--time", "08:00",
                   "--zone", "Asia/Tokyo"})
                  .status,
              0);
    ASSERT_EQ(ask({"log", "measurement", "stem", "2.0", "--plant", "7", "--date", "2026-05-01", "--time", "23:30"}).status,
              0);
    const auto listed = ask({"list", "measurements", "--plant", "7", "--kind", "stem", "--json"}).json()["measurements"];
    ASSERT_EQ(listed.size(), 2U);
    EXPECT_EQ(listed[0]["value"], 2.0);
    EXPECT_EQ(listed[1]["date"], "2026-05-02");
    EXPECT_EQ(listed[1]["time"], "01:00");
    EXPECT_EQ(listed[1]["zone"], "Europe/Budapest");
}

TEST_F(MeasurementCommands, AreUndoneAndRedoneLikeEvents)
{
    ASSERT_EQ(ask({"log", "measurement", "stem", "2.1", "--plant", "7"}).status, 0);
    const auto undone = ask({"log", "undo", "--json"});
    ASSERT_EQ(undone.status, 0) << undone.err;
    EXPECT_EQ(undone.json()["undone"]["entry"], "measurement");
    EXPECT_TRUE(ask({"list", "measurements", "--plant", "7", "--kind", "stem", "--json"}).json()["measurements"].empty());
    EXPECT_EQ(ask({"log", "redo", "--json"}).json()["redone"]["kind"], "stem");
    ASSERT_EQ(ask({"log", "reading", "--spot", "5", "--low", "3.5"}).status, 0);
    EXPECT_EQ(ask({"log", "undo", "--json"}).json()["undone"]["entry"], "reading");
}

TEST_F(MeasurementCommands, WarnWhereTheUnitMayBeWrong)
{
    ASSERT_EQ(ask({"log", "measurement", "longest_leaf", "40", "--plant", "11"}).err, "");
    const auto doubted = ask({"log", "measurement", "longest_leaf", "16", "--plant", "11"});
    EXPECT_EQ(doubted.status, 0);
    EXPECT_NE(doubted.err.find("the last longest leaf was 40.0 cm"), std::string::npos) << doubted.err;
}

struct Case {
    std::vector<std::string> command;
    int status;
    std::string says;
};

TEST_F(MeasurementCommands, SayWhatIsWrong)
{
    for (const auto& [command, status, says] :
         {Case{{"log", "measurement", "hight", "3", "--plant", "3"}, 2, "there are height"},
          Case{{"log", "measurement", "height", "tall", "--plant", "3"}, 2, "43.5"},
          Case{{"log", "measurement", "height", "20000", "--plant", "3"}, 2, "10000"},
          Case{{"log", "measurement", "leaves", "3.5", "--plant", "3"}, 2, "whole number"},
          Case{{"log", "measurement", "yellow_share", "35", "--plant", "3"}, 2, "within 0 and 1"},
          Case{{"log", "measurement", "height", "35", "--plant", "Lemmon"}, 1, "did you mean"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--date", "2027-01-01"}, 2, "after today"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--time", "25:00"}, 2, "time of day"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--zone", "Asia/Tokyo"}, 2, "--time"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--time", "08:00", "--zone", "Moon"}, 1, "Moon"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--time", "23:00", "--zone", "Pacific/Honolulu"},
               2,
               "after today at home"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--photo", "abc"}, 2, "SHA-256"},
          Case{{"log", "measurement", "height", "35", "--plant", "3", "--litres", "-1"}, 2, "pot"},
          Case{{"log", "event", "died", "--spot", "5"}, 2, "which plant"},
          Case{{"log", "divided", "--plant", "11", "--into", "Lemon"}, 2, "taken"},
          Case{{"show", "plant", "nobody"}, 1, "there is no plant"},
          Case{{"list", "measurements", "--kind", "weight"}, 2, "there are height"}}) {
        const auto ran = ask(command);
        EXPECT_EQ(ran.status, status) << command[2] << ": " << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
        EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
    }
}

TEST_F(MeasurementCommands, APlantThatDiedIsListedUnderGoneAndKeepsItsPast)
{
    const auto before = ask({"list", "plants", "--json"}).json()["plants"].size();
    const auto gone_before = ask({"list", "plants", "--gone", "--json"}).json()["plants"].size();
    ASSERT_EQ(ask({"log", "event", "died", "--plant", "Rosemary", "--note", "root rot"}).status, 0);
    EXPECT_EQ(ask({"list", "plants", "--json"}).json()["plants"].size(), before - 1);
    const auto gone = ask({"list", "plants", "--gone", "--json"}).json()["plants"];
    ASSERT_EQ(gone.size(), gone_before + 1);
    EXPECT_EQ(gone.back()["gone"], "died");
    const auto shown = ask({"show", "plant", "Rosemary", "--json"});
    ASSERT_EQ(shown.status, 0) << shown.err;
    EXPECT_EQ(shown.json()["gone"]["how"], "died");
    EXPECT_FALSE(shown.json()["events"].empty());
    EXPECT_FALSE(shown.json()["measurements"].empty());
    EXPECT_FALSE(shown.json()["stays"]["actual"].back()["to"].is_null());
    // Its name stays taken, so that two histories are not mixed up.
    const auto again = ask({"add", "plant", "Salvia rosmarinus", "--name", "Rosemary"});
    EXPECT_TRUE(is_one_clear_error(again)) << again.err;
    EXPECT_EQ(ask({"log", "undo"}).status, 0);
    EXPECT_EQ(ask({"list", "plants", "--json"}).json()["plants"].size(), before);
}

TEST_F(MeasurementCommands, ADivisionShowsItsDescent)
{
    const auto ran = ask({"log", "divided", "--plant", "12", "--into", "Left half", "--into", "Right half", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    ASSERT_EQ(ran.json()["pieces"].size(), 2U);
    const auto piece = ask({"show", "plant", "Left half", "--json"}).json();
    EXPECT_EQ(piece["descent"]["parent"], 12);
    EXPECT_EQ(ask({"show", "plant", "12", "--json"}).json()["descent"]["pieces"].size(), 2U);
    EXPECT_NE(ask({"show", "plant", "Left half"}).out.find("Divided from "), std::string::npos);
}

TEST_F(MeasurementCommands, TheDemonstrationHasTreesOfDescent)
{
    const auto gone = ask({"list", "plants", "--gone", "--json"}).json()["plants"];
    std::vector<std::string> how;
    for (const auto& plant : gone) {
        how.push_back(plant["gone"]);
    }
    for (const auto* word : {"died", "given_away"}) {
        EXPECT_NE(std::find(how.begin(), how.end(), word), how.end()) << word;
    }
}

TEST(FolderWarning, IsSaidOfWhatIsNotThisMachinesDisk)
{
    EXPECT_FALSE(folder_warning(journal::FolderKind::Local, "/plants"));
    EXPECT_NE(folder_warning(journal::FolderKind::Network, "/plants")->find("network drive"), std::string::npos);
    EXPECT_NE(folder_warning(journal::FolderKind::UserSpace, "/plants")->find("synced"), std::string::npos);
}

TEST(FolderWarning, IsForCommandsThatWriteIntoTheHousehold)
{
    const auto writes = [](const char* line) {
        CLI::App program;
        Commands commands{program};
        add_all(commands);
        program.parse(line);
        return writes_into_household(program);
    };
    for (const char* line : {"add plant Lemon", "log undo", "pin 1 2", "unpin 1", "round done 1", "place remove", "moves --accept",
                             "tonight --low 3 --keep", "photo leaf.jpg --plant 1"}) {
        EXPECT_TRUE(writes(line)) << line;
    }
    for (const char* line : {"list plants", "round", "place", "moves", "tonight --low 3", "photo leaf.jpg", "check"}) {
        EXPECT_FALSE(writes(line)) << line;
    }
}

} // namespace
} // namespace lathhouse::cli
