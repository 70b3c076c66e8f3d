#include "tests/cli/with_demonstration.h"

#include "core/base/csv.h"
#include "tests/cli/json_keys.h"

#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <set>

namespace lathhouse::cli {
namespace {

/// The demonstration on 10 September 2026: ten of its plants stand outdoors, on spots 5 (roofed) and 6
/// (open).
class Tonight : public WithDemonstration {
protected:
    Tonight() : WithDemonstration("2026-09-10") {}
};

const nlohmann::json& plant(const nlohmann::json& night, int id)
{
    for (const auto& of : night["plants"]) {
        if (of["id"] == id) {
            return of;
        }
    }
    throw std::out_of_range("no such plant in the answer");
}

TEST_F(Tonight, HasTheFixedForm)
{
    const auto ran = ask({"tonight", "--low", "2.5", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = ran.json();
    EXPECT_EQ(keys(answer), std::set<std::string>{"nights"});
    ASSERT_EQ(answer["nights"].size(), 1U);
    const auto& night = answer["nights"][0];
    EXPECT_EQ(keys(night), (std::set<std::string>{"date", "plants"}));
    EXPECT_EQ(night["date"], "2026-09-11");
    ASSERT_GE(night["plants"].size(), 10U);
    for (const auto& of : night["plants"]) {
        EXPECT_EQ(keys(of),
                  (std::set<std::string>{"id", "spot", "chance_damage", "chance_lethal", "carry_in", "why"}));
        EXPECT_LE(of["chance_lethal"].get<double>(), of["chance_damage"].get<double>());
        EXPECT_FALSE(of["why"].get<std::string>().empty());
        EXPECT_EQ(of["carry_in"].get<bool>(),
                  of["chance_damage"].get<double>() > 0.1 || of["chance_lethal"].get<double>() > 0.01);
    }
}

TEST_F(Tonight, AMildNightLeavesThemOut)
{
    const auto ran = ask({"tonight", "--low", "19"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Nothing needs to come in."), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("chances, not promises"), std::string::npos);
    EXPECT_NE(ran.out.find("demonstration household"), std::string::npos);
}

TEST_F(Tonight, AFrostBringsTheTenderOnesIn)
{
    const auto ran = ask({"tonight", "--low", "-2", "--sky", "clear", "--wind", "calm"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Carry in:"), std::string::npos) << ran.out;
    const auto night = ask({"tonight", "--low", "-2", "--json"}).json()["nights"][0];
    EXPECT_TRUE(plant(night, 1)["carry_in"].get<bool>()); // Weeping fig, damage at 5 C or above.
    EXPECT_GT(plant(night, 1)["chance_damage"].get<double>(), 0.8);
}

TEST_F(Tonight, ColderForecastsGiveHigherChances)
{
    double before = 0.0;
    for (const char* low : {"14", "9", "5", "0", "-5"}) {
        const auto night = ask({"tonight", "--low", low, "--json"}).json()["nights"][0];
        const double chance = plant(night, 1)["chance_damage"].get<double>();
        EXPECT_GT(chance, before) << low;
        before = chance;
    }
}

TEST_F(Tonight, AFileOfTenNightsIsAnsweredNightByNight)
{
    std::string text = "date,low_c\n";
    for (int day = 11; day <= 25; ++day) { // Longer than ten nights.
        text += "2026-09-" + std::to_string(day) + ",4.5\n";
    }
    const auto ran = ask({"tonight", "--forecast", file("lows.csv", text), "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto nights = ran.json()["nights"];
    ASSERT_EQ(nights.size(), 10U);
    EXPECT_EQ(nights[0]["date"], "2026-09-11");
    EXPECT_EQ(nights[9]["date"], "2026-09-20");
    // The same low says less the further ahead: in September the season is milder than that.
    EXPECT_GT(plant(nights[0], 1)["chance_damage"].get<double>(),
              plant(nights[9], 1)["chance_damage"].get<double>());
}

TEST_F(Tonight, ReadsWhatOthersWrite)
{
    const auto expected = ask({"tonight", "--low", "3.5", "--json"}).json();
    const std::vector<std::vector<std::string>> forms{
        {file("plain.csv", "date,low_c\n2026-09-11,3.5\n")},
        {file("marked.csv", "\xEF\xBB\xBF"
                            "date,low_c\r\n2026-09-11,3.5\r\n")},
        {file("comma.csv", "date;low_c\n2026-09-11;3,5\n")},
        {file("tabs.csv", "date\tlow_c\n2026-09-11\t3.5\n")},
        {file("fahrenheit.csv", "date,low_f\n2026-09-11,38.3\n")},
        {file("mapped.csv", "Day,Sky,Tmin\n2026-09-11T06:00,overcast,3.5\n"), "--columns",
         "date=Day,low_c=Tmin"},
        {file("nights.json", R"({"issued":"2026-09-10","nights":[{"date":"2026-09-11","low_c":3.5}]})")},
        {file("list.json", R"([{"date":"2026-09-11","low_c":3.5}])")},
        {file("lists.json", R"({"daily":{"time":["2026-09-11"],"min":[3.5]}})"), "--columns",
         "date=daily.time,low_c=daily.min"}};
    for (const auto& form : forms) {
        std::vector<std::string> command{"tonight", "--json", "--forecast"};
        command.insert(command.end(), form.begin(), form.end());
        const auto ran = ask(command);
        ASSERT_EQ(ran.status, 0) << form[0] << ran.err;
        EXPECT_EQ(ran.json(), expected) << form[0];
    }
}

struct HostileForecast {
    const char* name;
    const char* text;
    const char* says;
};
TEST_F(Tonight, RefusesHostileFilesInOneLine)
{
    for (const HostileForecast& hostile :
         {HostileForecast{"empty.csv", "", "empty"},
          HostileForecast{"blank.csv", " \n\n", "empty"},
          HostileForecast{"head.csv", "date,low_c\n", "no row"},
          HostileForecast{"letters.csv", "date,low_c\n2026-09-11,cold\n", "line 2"},
          HostileForecast{"nan.csv", "date,low_c\n2026-09-11,NaN\n", "NaN"},
          HostileForecast{"infinite.csv", "date,low_c\n2026-09-11,1e999\n", "1e999"},
          HostileForecast{"blank_low.csv", "date,low_c\n2026-09-11,\n", "missing"},
          HostileForecast{"hot.csv", "date,low_c\n2026-09-11,400\n", "-90 to 60"},
          HostileForecast{"date.csv", "date,low_c\n11.9.2026,3\n", "line 2"},
          HostileForecast{"twice.csv", "date,low_c\n2026-09-11,3\n2026-09-11,4\n", "twice"},
          HostileForecast{"cut.csv", "date,low_c\n2026-09-11\n", "line 2"},
          HostileForecast{"quote.csv", "date,low_c\n\"2026-09-11,3\n", "quotation"},
          HostileForecast{"names.csv", "day,tmin\n2026-09-11,3\n", "--columns"},
          HostileForecast{"past.csv", "date,low_c\n2026-09-01,3\n", "2026-09-10"},
          HostileForecast{"far.csv", "date,low_c\n2027-09-01,3\n", "2026-09-20"},
          HostileForecast{"sky.csv", "date,low_c,sky\n2026-09-11,3,blue\n", "clear or cloudy"},
          HostileForecast{"broken.json", "{\"nights\":[{\"date\":", "JSON"},
          HostileForecast{"nothing.json", "{}", "date"},
          HostileForecast{"numbers.json", "[1,2,3]", "date"},
          HostileForecast{"uneven.json", R"({"date":["2026-09-11","2026-09-12"],"low_c":[1,2,3]})", "values"},
          HostileForecast{"null.json", R"([{"date":"2026-09-11","low_c":null}])", "missing"}}) {
        const auto ran = ask({"tonight", "--forecast", file(hostile.name, hostile.text)});
        EXPECT_EQ(ran.status, 2) << hostile.name << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << hostile.name << ran.err;
        EXPECT_NE(ran.err.find(hostile.says), std::string::npos) << hostile.name << ": " << ran.err;
    }
}

TEST_F(Tonight, RefusesAMillionRowsAndDeepNesting)
{
    std::string rows = "date,low_c\n";
    while (rows.size() < 17'000'000) {
        rows += "2026-09-11,3.5\n2026-09-12,3.5\n2026-09-13,3.5\n";
    }
    const std::string short_rows = "date,low_c\n" + std::string(1'000'000, '\n');
    for (const auto& [name, text] : {std::pair{"million.csv", rows}, std::pair{"short.csv", short_rows},
                                     std::pair{"deep.json", std::string(1'000'000, '[')},
                                     std::pair{"zeros.csv", "date" + std::string(1000, '\0')}}) {
        const auto ran = ask({"tonight", "--forecast", file(name, text)});
        EXPECT_EQ(ran.status, 2) << name;
        EXPECT_TRUE(is_one_clear_error(ran)) << name << ran.err;
    }
}

TEST_F(Tonight, RefusesAFileThatIsNotThereAndAFolder)
{
    EXPECT_EQ(ask({"tonight", "--forecast", "/no/such/file.csv"}).status, 1);
    EXPECT_EQ(ask({"tonight", "--forecast", folder().string()}).status, 1);
}

TEST_F(Tonight, RefusesWrongUse)
{
    const std::vector<std::vector<std::string>> commands{
        {"tonight"},
        {"tonight", "--low", "100"},
        {"tonight", "--low", "nan"},
        {"tonight", "--low", "1", "--forecast", "x.csv"},
        {"tonight", "--sky", "clear"},
        {"tonight", "--keep"},
        {"tonight", "--low", "1", "--risk", "80"},
        {"tonight", "--low", "1", "--sky", "blue"},
        {"tonight", "--forecast", "x.csv", "--columns", "low_c"},
        {"tonight", "--forecast", "x.csv", "--columns", "lowest=Tmin"},
        {"tonight", "--forecast", "x.csv", "--issued", "2027-01-01"}};
    for (const auto& command : commands) {
        const auto ran = ask(command);
        EXPECT_EQ(ran.status, 2) << command.back() << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << command.back() << ran.err;
    }
}

TEST_F(Tonight, FrostOnLeavesIsSaidInTheOpenOnClearCalmNights)
{
    const auto why = [&](std::vector<std::string> more, int id) {
        std::vector<std::string> command{"tonight", "--low", "1.5", "--json"};
        command.insert(command.end(), more.begin(), more.end());
        return plant(ask(command).json()["nights"][0], id)["why"].get<std::string>();
    };
    const int on_the_rail = 3; // Lemon.
    const int under_the_roof = 1;
    EXPECT_NE(why({"--sky", "clear", "--wind", "calm"}, on_the_rail).find("frost on leaves"),
              std::string::npos);
    EXPECT_NE(why({}, on_the_rail).find("if it turns clear and calm"), std::string::npos);
    EXPECT_EQ(why({"--sky", "cloudy"}, on_the_rail).find("frost on leaves"), std::string::npos);
    EXPECT_EQ(why({"--sky", "clear", "--wind", "calm"}, under_the_roof).find("frost on leaves"),
              std::string::npos);
    EXPECT_NE(why({"--sky", "clear", "--wind", "calm", "--dew-point", "-9"}, on_the_rail).find("dry air"),
              std::string::npos);
}

/// Fifteen mornings of a balcony that is 3 C milder than was forecast.
class TonightWithReadings : public Tonight {
protected:
    TonightWithReadings()
    {
        std::string forecasts = "issued,date,low_c\n";
        std::string readings = "date,low_c,sky,wind\n";
        for (int day = 11; day <= 25; ++day) {
            const int forecast = 6 + day % 5;
            const auto date = "2026-09-" + std::to_string(day);
            forecasts +=
                "2026-09-" + std::to_string(day - 1) + "," + date + "," + std::to_string(forecast) + "\n";
            readings +=
                date + "," + std::to_string(forecast + 3) + (day % 2 == 0 ? ",clear,calm\n" : ",cloudy,\n");
        }
        const auto kept = ask({"log", "forecast", file("forecasts.csv", forecasts)}, "2026-09-25");
        EXPECT_EQ(kept.status, 0) << kept.err;
        const auto logged =
            ask({"log", "readings", file("readings.csv", readings), "--spot", "5"}, "2026-09-25");
        EXPECT_EQ(logged.status, 0) << logged.err;
    }
};

TEST_F(TonightWithReadings, ListSpotsShowsTheLearnedOffsetBesideTheFirst)
{
    const auto spots = ask({"list", "spots", "--json"}).json()["spots"];
    EXPECT_GT(spots[4]["offset_c"].get<double>(), 1.9);
    EXPECT_LT(spots[4]["offset_sd_c"].get<double>(), 0.5);
    EXPECT_EQ(spots[5]["offset_c"], 0.5);
    const auto text = ask({"list", "spots"}).out;
    EXPECT_NE(text.find("15 readings; before +1.5"), std::string::npos) << text;
}

TEST_F(TonightWithReadings, ShowSpotGivesTheIntervalAndTheKindsOfNight)
{
    const auto spot = ask({"show", "spot", "5", "--json"}).json();
    EXPECT_EQ(spot["offset"]["readings"], 15);
    EXPECT_EQ(spot["clear_calm"]["readings"], 7);
    EXPECT_EQ(spot["other"]["readings"], 8);
    EXPECT_LT(spot["offset"]["interval_c"][0], spot["offset"]["offset_c"]);
    EXPECT_EQ(spot["prior"]["offset_c"], 1.5);
    const auto text = ask({"show", "spot", "roofed balcony"}).out;
    EXPECT_NE(text.find("Your 15 readings say "), std::string::npos) << text;
}

TEST_F(TonightWithReadings, TheLearnedOffsetIsUsedAndNamed)
{
    const auto ran = ask({"tonight", "--low", "4"}, "2026-09-25");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Roofed balcony: your 15 readings say "), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("milder than the open air"), std::string::npos) << ran.out;
}

TEST_F(TonightWithReadings, MovesUseTheLearnedOffset)
{
    // A milder balcony: the weeping fig on it may stay out longer, or at least no shorter.
    const auto last_out = [](const nlohmann::json& answer) {
        std::string last;
        for (const auto& stay : answer["plants"][0]["stays"]) {
            if (stay["spot"] == 5) {
                last = stay["to"];
                break;
            }
        }
        return last;
    };
    const auto with = ask({"moves", "--json"}, "2026-09-25");
    ASSERT_EQ(with.status, 0) << with.err;
    const auto other = (folder() / "other").string();
    ASSERT_EQ(run_command({"--on", "2026-09-10", "demo", other, "--photos", "0"}).status, 0);
    const auto without = run_command({"--home", other, "--on", "2026-09-25", "moves", "--json"});
    EXPECT_NE(with.json()["plants"], without.json()["plants"]);
    EXPECT_GE(last_out(with.json()), last_out(without.json()));
}

TEST_F(TonightWithReadings, ForecastsAreScored)
{
    const auto ran = ask({"show", "forecasts", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto lead = ran.json()["leads"][0];
    EXPECT_EQ(lead["nights"], 15);
    // These forecasts were right to a few tenths once the balcony is taken off.
    EXPECT_LT(lead["error_factor"].get<double>(), 0.85);
    EXPECT_LT(lead["score_c"].get<double>(), lead["score_usual_error_c"].get<double>());
    EXPECT_LT(lead["score_usual_error_c"].get<double>(), lead["score_season_c"].get<double>());
}

TEST_F(TonightWithReadings, TheLastReadingOfANightCounts)
{
    ASSERT_EQ(
        ask({"log", "reading", "--spot", "5", "--low", "7.25", "--date", "2026-09-20", "--note", "corrected"},
            "2026-09-25")
            .status,
        0);
    const auto readings = ask({"list", "readings", "--spot", "5", "--json"}).json()["readings"];
    ASSERT_EQ(readings.size(), 15U);
    EXPECT_EQ(readings[9]["date"], "2026-09-20");
    EXPECT_EQ(readings[9]["low_c"], 7.25);
    EXPECT_EQ(readings[9]["note"], "corrected");
    EXPECT_TRUE(readings[9]["high_c"].is_null());
}

TEST_F(Tonight, AKeptForecastAnswersWithoutBeingTypedAgain)
{
    ASSERT_EQ(ask({"tonight", "--low", "3", "--low", "5", "--keep"}).status, 0);
    const auto again = ask({"tonight", "--json"});
    ASSERT_EQ(again.status, 0) << again.err;
    EXPECT_EQ(again.json(), ask({"tonight", "--low", "3", "--low", "5", "--json"}).json());
}

TEST_F(Tonight, AForecastOfADayToComeIsNotKept)
{
    const auto lows = file("lows.csv", "date,low_c,issued\n2026-09-11,3,2026-09-10\n2026-09-12,3,2026-09-11\n");
    ASSERT_EQ(ask({"tonight", "--forecast", lows}).status, 0);
    const auto ran = ask({"tonight", "--forecast", lows, "--keep"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_EQ(ask({"tonight"}).status, 2) << "nothing was kept";
}

TEST_F(Tonight, ARoomsLoggedLowsAreHeldAgainstItsPlants)
{
    for (const char* date : {"2026-09-08", "2026-09-09", "2026-09-10"}) {
        ASSERT_EQ(
            ask({"log", "reading", "--spot", "living room", "--low", "9.5", "--high", "41", "--date", date})
                .status,
            0);
    }
    const auto night = ask({"tonight", "--low", "15", "--json"}).json()["nights"][0];
    const auto& peace_lily = plant(night, 12); // Stands in the living room.
    EXPECT_EQ(peace_lily["spot"], 4);
    EXPECT_FALSE(peace_lily["carry_in"].get<bool>());
    EXPECT_NE(peace_lily["why"].get<std::string>().find("indoors"), std::string::npos);
    const auto text = ask({"tonight", "--low", "15"}).out;
    EXPECT_NE(text.find("Living room fell to"), std::string::npos) << text;
    EXPECT_NE(text.find("Living room rose to"), std::string::npos) << text;
}

TEST_F(Tonight, LogRefusesWhatCannotBe)
{
    struct Refused {
        std::vector<std::string> command;
        int status;
    };
    for (const Refused& refused :
         {Refused{{"log", "reading", "--spot", "99", "--low", "3"}, 1},
          Refused{{"log", "reading", "--spot", "5", "--low", "300"}, 2},
          Refused{{"log", "reading", "--spot", "5", "--low", "-80"}, 2},
          Refused{{"log", "reading", "--spot", "living room", "--low", "-80"}, 2},
          Refused{{"log", "readings", file("slip.csv", "date,low_c,spot\n2026-09-08,4,5\n2026-09-09,-80,5\n")}, 2},
          Refused{{"log", "reading", "--spot", "5", "--low", "3", "--high", "1"}, 2},
          Refused{{"log", "reading", "--spot", "5", "--low", "3", "--date", "2026-09-11"}, 2},
          Refused{{"log", "reading", "--spot", "5"}, 2}, Refused{{"log"}, 2},
          Refused{{"log", "readings", file("none.csv", "date,low_c\n2026-09-09,4\n")}, 2},
          Refused{{"log", "readings", file("where.csv", "date,low_c,spot\n2026-09-09,4,attic\n")}, 2},
          Refused{{"log", "readings", file("half.csv", "date,low_c,spot\n2026-09-09,4,5\n2026-09-08,x,5\n")},
                  2},
          Refused{{"log", "forecast", file("old.csv", "date,low_c\n2020-01-01,4\n")}, 2},
          Refused{{"show", "spot", "nowhere"}, 1}}) {
        const auto ran = ask(refused.command);
        EXPECT_EQ(ran.status, refused.status) << refused.command.back() << ran.err;
        EXPECT_TRUE(is_one_clear_error(ran)) << refused.command.back() << ran.err;
    }
    EXPECT_TRUE(ask({"list", "readings", "--json"}).json()["readings"].empty()); // Nothing half written.
}

TEST_F(Tonight, AsksAboutALowThatIsASlipOfThePen)
{
    const auto asked = ask({"tonight", "--low", "-80", "--keep"});
    EXPECT_EQ(asked.status, 2);
    EXPECT_TRUE(is_one_clear_error(asked)) << asked.err;
    EXPECT_NE(asked.err.find("did you mean \u22128.0"), std::string::npos) << asked.err;
    EXPECT_NE(asked.err.find("--sure"), std::string::npos) << asked.err;
    EXPECT_EQ(ask({"tonight"}).status, 2) << "nothing was kept";
    EXPECT_EQ(ask({"tonight", "--low", "-80", "--sure"}).status, 0);
    EXPECT_EQ(ask({"log", "reading", "--spot", "5", "--low", "-80", "--sure"}).status, 0);
    EXPECT_EQ(ask({"list", "readings", "--json"}).json()["readings"].size(), 1u);
}

TEST(Night, WithAForecastLiesBetweenForecastAndSeason)
{
    const std::vector<std::string> place{"night",      "--at",        "45.5,-122.7", "--date",
                                         "2027-04-20", "--threshold", "0",           "--json"};
    const auto with = [&](std::vector<std::string> more) {
        auto command = place;
        command.insert(command.end(), more.begin(), more.end());
        const auto ran = run_command(command);
        EXPECT_EQ(ran.status, 0) << ran.err;
        return ran.json();
    };
    const auto season = with({});
    const auto tomorrow = with({"--forecast", "-3", "--lead", "1"});
    const auto next_week = with({"--forecast", "-3", "--lead", "7"});
    const auto far = with({"--forecast", "-3", "--lead", "14"});
    EXPECT_GT(tomorrow["chance"].get<double>(), 0.8);
    EXPECT_GT(tomorrow["median_c"].get<double>(), -3.0);
    EXPECT_LT(tomorrow["median_c"].get<double>(), next_week["median_c"].get<double>());
    EXPECT_LT(next_week["median_c"].get<double>(), season["median_c"].get<double>());
    EXPECT_EQ(far, season);
    const auto width = [](const nlohmann::json& of) {
        return of["p95_c"].get<double>() - of["p05_c"].get<double>();
    };
    EXPECT_LT(width(tomorrow), width(next_week));
    EXPECT_LT(width(next_week), width(season));
}

TEST(Night, RefusesALeadWithoutAForecastAndANightThatIsOver)
{
    const auto lead = run_command({"night", "--at", "45.5,-122.7", "--date", "2027-04-20", "--lead", "2"});
    EXPECT_EQ(lead.status, 2);
    EXPECT_TRUE(is_one_clear_error(lead)) << lead.err;
    const auto over = run_command(
        {"--on", "2027-04-21", "night", "--at", "45.5,-122.7", "--date", "2027-04-20", "--forecast", "2"});
    EXPECT_EQ(over.status, 2);
    EXPECT_TRUE(is_one_clear_error(over)) << over.err;
}

} // namespace
} // namespace lathhouse::cli
