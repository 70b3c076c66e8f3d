#include "core/plants/plant_kind.h"
#include "tests/cli/run_command.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace lathhouse::cli {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(ShowKind, GivesEveryFigureWithWhatItRestsOn)
{
    const auto json = run_command({"show", "kind", "Oleander", "--json"}).json();
    EXPECT_EQ(json["botanical_name"], "Nerium oleander");
    EXPECT_EQ(json["figures"]["damage_c"]["value"], -5);
    EXPECT_EQ(json["figures"]["lethal_c"]["value"], -9);
    EXPECT_EQ(json["figures"].size(), 19U);
    for (const auto& [name, figure] : json["figures"].items()) {
        EXPECT_TRUE(figure.contains("value")) << name;
        EXPECT_FALSE(figure["rests_on"].get<std::string>().empty()) << name;
    }
    EXPECT_EQ(json["evidence"], "published_number");
    EXPECT_EQ(json["confidence"], "medium");
    EXPECT_EQ(json["figures"]["to_pets"]["value"], "deadly");
}

TEST(ShowKind, WritesItsSourcesOut)
{
    const auto ran = run_command({"show", "kind", "Avocado"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("Circular 1034"));
    EXPECT_THAT(ran.out, HasSubstr("UF/IFAS"));
    EXPECT_THAT(ran.out, HasSubstr("2007"));
    EXPECT_THAT(ran.out, HasSubstr("common practice, no source"));
    EXPECT_THAT(ran.out, Not(HasSubstr("MEM")));
    const auto sources = run_command({"show", "kind", "Avocado", "--json"}).json()["sources"];
    ASSERT_EQ(sources.size(), 3U);
    EXPECT_EQ(sources[0]["year"], 2007);
    EXPECT_EQ(sources[0]["common_practice"], false);
    EXPECT_EQ(sources[2]["common_practice"], true);
    EXPECT_TRUE(sources[2]["year"].is_null());
}

TEST(ShowKind, SaysWhereNoTemperatureWasPublished)
{
    EXPECT_THAT(run_command({"show", "kind", "Iris sibirica"}).out,
                HasSubstr("No published temperature was found"));
    EXPECT_THAT(run_command({"show", "kind", "Peace lily"}).out,
                Not(HasSubstr("No published temperature was found")));
}

TEST(ShowKind, NeverCallsAPlantHarmless)
{
    EXPECT_THAT(run_command({"show", "kind", "Cast-iron plant"}).out,
                HasSubstr("not known to be poisonous, which is no proof"));
}

TEST(ShowKind, PutsTheCautionsBesideTheHazards)
{
    const auto json = run_command({"show", "kind", "Easter lily", "--json"}).json();
    bool lily = false;
    for (const auto& caution : json["cautions"]) {
        lily = lily || caution["id"] == "true-lily";
    }
    EXPECT_TRUE(lily);
    EXPECT_THAT(run_command({"show", "kind", "Easter lily"}).out, HasSubstr("Take care"));
}

TEST(ShowKind, TakesANameOfSeveralWordsWithoutQuotes)
{
    EXPECT_THAT(run_command({"show", "kind", "peace", "lily"}).out, HasSubstr("Spathiphyllum wallisii"));
}

TEST(ShowKind, ShowsFahrenheitOnlyInText)
{
    const auto ran = run_command({"--units", "us", "show", "kind", "Peace lily"});
    EXPECT_THAT(ran.out, HasSubstr("45\u202f°F"));
    const auto json = run_command({"--units", "us", "show", "kind", "Peace lily", "--json"}).json();
    EXPECT_EQ(json["figures"]["damage_c"]["value"], 7.2);
}

TEST(ShowKind, EveryKindCanBeShown)
{
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        const auto ran = run_command({"show", "kind", kind.botanical_name});
        EXPECT_EQ(ran.status, 0) << kind.botanical_name;
        EXPECT_THAT(ran.out, HasSubstr("Sources\n- ")) << kind.botanical_name;
    }
}

TEST(ShowKind, SuggestsForANearMiss)
{
    const auto ran = run_command({"show", "kind", "fushcia"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("Fuchsia"));
}

TEST(ShowKind, SuggestsForAPartOfAName)
{
    const auto ran = run_command({"show", "kind", "lavender"});
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("English lavender"));
    EXPECT_THAT(ran.err, HasSubstr("Spanish lavender"));
}

TEST(ShowKind, RefusesABlankName)
{
    const auto ran = run_command({"show", "kind", " "});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST(ShowKind, SuggestsNothingForNonsense)
{
    const auto ran = run_command({"show", "kind", "zzzzzzzz"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_clear_error(ran)) << ran.err;
}

TEST(ListKinds, ListsEveryKind)
{
    const auto json = run_command({"list", "kinds", "--json"}).json();
    EXPECT_EQ(json["kinds"].size(), plants::PlantReference::built_in().kinds().size());
    EXPECT_THAT(run_command({"list", "kinds"}).out, HasSubstr("273 of 273 kinds"));
}

TEST(ListKinds, NarrowsByEvidenceAndGroup)
{
    const auto json =
        run_command({"list", "kinds", "--evidence", "memory", "--group", "herb", "--json"}).json();
    ASSERT_FALSE(json["kinds"].empty());
    for (const auto& kind : json["kinds"]) {
        EXPECT_EQ(kind["evidence"], "memory");
        EXPECT_EQ(kind["group"], "herb");
    }
    EXPECT_EQ(run_command({"list", "kinds", "--evidence", "memory", "--json"}).json()["kinds"].size(), 46U);
}

TEST(ListKinds, MayFindNone)
{
    const auto ran = run_command({"list", "kinds", "--evidence", "published_test", "--group", "herb"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, testing::StartsWith("0 of "));
}

TEST(ListKinds, NamesTheWordsItKnows)
{
    const auto evidence = run_command({"list", "kinds", "--evidence", "rumour"});
    EXPECT_EQ(evidence.status, 2);
    EXPECT_TRUE(is_one_clear_error(evidence)) << evidence.err;
    EXPECT_THAT(evidence.err, HasSubstr("published_number"));
    const auto group = run_command({"list", "kinds", "--group", "weeds"});
    EXPECT_EQ(group.status, 2);
    EXPECT_THAT(group.err, HasSubstr("succulent"));
}

} // namespace
} // namespace lathhouse::cli
