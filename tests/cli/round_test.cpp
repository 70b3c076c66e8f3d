#include "tests/cli/with_demonstration.h"

#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <set>

namespace lathhouse::cli {
namespace {

class RoundCommand : public WithDemonstration {
protected:
    RoundCommand() : WithDemonstration("2027-05-10") {}
};

TEST_F(RoundCommand, HasItsTasksInTheOrderOfTheClasses)
{
    ASSERT_EQ(ask({"log", "event", "pest_found", "--plant", "2", "--detail", "pest=mealybug"}).status, 0);
    const auto ran = ask({"round", "--days", "3", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto tasks = ran.json()["tasks"];
    ASSERT_GT(tasks.size(), 3u);
    int order = 0;
    std::string date;
    int highest = 0;
    const std::map<std::string, int> classes{{"clean", 0}, {"suspect", 1}, {"infested", 2}};
    for (const auto& task : tasks) {
        EXPECT_EQ(task["order"], ++order);
        if (task["date"] != date) {
            date = task["date"];
            highest = 0;
        }
        EXPECT_GE(classes.at(task["class"]), highest);
        highest = classes.at(task["class"]);
        EXPECT_TRUE(task["cautions"].is_array());
        EXPECT_FALSE(task["task"].get<std::string>().empty());
    }
}

TEST_F(RoundCommand, TicksPostponesSkipsAndUndoes)
{
    const auto count = [&] { return ask({"round", "--json"}).json()["tasks"].size(); };
    const auto before = count();
    ASSERT_GT(before, 2u);
    ASSERT_EQ(ask({"round", "done", "1"}).status, 0);
    ASSERT_EQ(ask({"round", "postpone", "1", "--until", "2027-05-12"}).status, 0);
    ASSERT_EQ(ask({"round", "skip", "1", "--why", "rain is coming"}).status, 0);
    EXPECT_LT(count(), before);
    for (int i = 0; i < 3; ++i) {
        ASSERT_EQ(ask({"log", "undo"}).status, 0);
    }
    EXPECT_EQ(count(), before);
}

TEST_F(RoundCommand, RefusesWhatIsNotThere)
{
    const auto none = ask({"round", "done", "9999"});
    EXPECT_EQ(none.status, 1);
    EXPECT_TRUE(is_one_clear_error(none)) << none.err;
    const auto past = ask({"round", "postpone", "1", "--until", "2027-05-10"});
    EXPECT_EQ(past.status, 2);
    EXPECT_TRUE(is_one_clear_error(past)) << past.err;
}

TEST_F(RoundCommand, ACalendarExportedTwiceHasTheSameNames)
{
    const auto file = (folder() / "plants.ics").string();
    const auto names = [&](const std::string& on) {
        EXPECT_EQ(ask({"export", "calendar", file, "--alarm", "6"}, on).status, 0);
        const auto text = read_text_file(file).value();
        std::set<std::string> uids;
        std::size_t count = 0;
        for (auto at = text.find("UID:"); at != std::string::npos; at = text.find("UID:", at + 1)) {
            uids.insert(text.substr(at + 4, 16));
            ++count;
        }
        EXPECT_EQ(uids.size(), count);
        EXPECT_GT(count, 10u);
        return uids;
    };
    const auto first = names("2027-05-10");
    EXPECT_EQ(first, names("2027-05-10"));
    EXPECT_EQ(ask({"export", "calendar", (folder() / "no" / "where.ics").string()}).status, 1);
}

TEST_F(RoundCommand, HardenGivesTheDaysBeforeAndAfterEachCarry)
{
    const auto ran = ask({"harden", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto ladders = ran.json()["ladders"];
    ASSERT_GT(ladders.size(), 4u);
    bool in = false;
    for (const auto& ladder : ladders) {
        in = in || ladder["direction"] == "in";
        EXPECT_GE(ladder["steps"].size(), 5u);
    }
    EXPECT_TRUE(in);
    EXPECT_EQ(ask({"harden", "--plant", "Nobody"}).status, 1);
}

TEST_F(RoundCommand, AnAcceptedPlanIsComparedWith)
{
    ASSERT_EQ(ask({"moves", "--accept", "--effort", "fast"}).status, 0);
    const auto again = ask({"moves", "--effort", "fast", "--json"}).json();
    EXPECT_TRUE(again["changes"].is_array());
    const auto text = ask({"moves", "--risk", "40", "--effort", "fast"}).out;
    EXPECT_NE(text.find("Against the plan accepted on "), std::string::npos);
}

} // namespace
} // namespace lathhouse::cli
