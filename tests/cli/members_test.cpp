#include "tests/cli/with_demonstration.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;

class MemberCommands : public WithDemonstration {
protected:
    MemberCommands() : WithDemonstration("2027-01-10")
    {
        already_ = run({"list", "members", "--json"}).json()["members"].size();
    }
    Ran run(const std::vector<std::string>& words) const { return ask(words); }
    nlohmann::json last() const { return run({"list", "members", "--json"}).json()["members"].back(); }

    std::size_t already_ = 0;
};

TEST_F(MemberCommands, AddedIsListedWithItsSpots)
{
    const auto ran = run({"add", "member", "Mia", "--kind", "child", "--reaches", "South sill", "--reaches", "South sill"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Mia, child: reaches South sill"));
    EXPECT_EQ(run({"list", "members", "--json"}).json()["members"].size(), already_ + 1);
    EXPECT_EQ(last()["name"], "Mia");
    EXPECT_EQ(last()["kind"], "child");
    EXPECT_EQ(last()["reaches"].size(), 1U);
    EXPECT_THAT(run({"list", "members"}).out, HasSubstr("South sill"));
}

TEST_F(MemberCommands, AnAnimalNeedsNoName)
{
    EXPECT_THAT(run({"add", "member", "--kind", "cat"}).out, HasSubstr("the cat: reaches no spot"));
    EXPECT_EQ(last()["name"], "");
}

TEST_F(MemberCommands, IsChangedTakenOffAndBroughtBack)
{
    ASSERT_EQ(run({"add", "member", "Mia", "--kind", "child", "--reaches", "South sill"}).status, 0);
    const auto id = std::to_string(last()["id"].get<int>());
    EXPECT_EQ(run({"log", "member", id, "--name", "Mina", "--nowhere"}).status, 0);
    EXPECT_EQ(last()["name"], "Mina");
    EXPECT_TRUE(last()["reaches"].empty());
    EXPECT_THAT(run({"log", "member", id, "--gone"}).out, HasSubstr("off the list"));
    EXPECT_EQ(run({"list", "members", "--json"}).json()["members"].size(), already_);
    EXPECT_EQ(run({"log", "undo"}).status, 0);
    EXPECT_EQ(last()["name"], "Mina");
}

TEST_F(MemberCommands, WrongUseChangesNothing)
{
    EXPECT_EQ(run({"add", "member", "Mia", "--kind", "dragon"}).status, 2);
    EXPECT_EQ(run({"add", "member", "Mia"}).status, 2);
    EXPECT_NE(run({"add", "member", "Mia", "--kind", "child", "--reaches", "Moon"}).status, 0);
    EXPECT_THAT(run({"log", "member", "99", "--gone"}).err, HasSubstr("list members"));
    EXPECT_EQ(run({"log", "member", "99"}).status, 2);
    EXPECT_EQ(run({"log", "member", "1", "--gone", "--name", "x"}).status, 2);
    EXPECT_EQ(run({"list", "members", "--json"}).json()["members"].size(), already_);
}

} // namespace
} // namespace lathhouse::cli
