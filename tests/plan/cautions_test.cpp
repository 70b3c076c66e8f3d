#include "core/plan/cautions.h"

#include "core/base/csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

namespace lathhouse::plan {
namespace {

using plants::PlantReference;

constexpr std::string_view kSources = "key,title,publisher,year\nAA,A title,A publisher,2001\n";
constexpr std::string_view kHead = "id,topic,text,shown_when,kinds,sources\n";

Result<CautionTable> one_row(std::string_view row, std::string_view sources = kSources)
{
    return CautionTable::parse(std::string{kHead} + std::string{row} + "\n", sources);
}

std::set<std::string> ids(const std::vector<const Caution*>& cautions)
{
    std::set<std::string> found;
    for (const auto* caution : cautions) {
        found.insert(caution->id);
    }
    return found;
}

std::set<std::string> ids_for(std::string_view plant)
{
    return ids(cautions_for_plant(**PlantReference::built_in().find(plant)));
}

TEST(Cautions, BuiltInTableIsTheShippedOne)
{
    const std::filesystem::path folder = std::filesystem::path{LATHHOUSE_SOURCE} / "core/plan/data";
    const auto parsed = CautionTable::parse(read_text_file(folder / "cautions.csv").value(),
                                            read_text_file(folder / "caution_sources.csv").value());
    ASSERT_TRUE(parsed) << parsed.error().message;
    EXPECT_EQ(parsed->cautions().size(), cautions().size());
    EXPECT_EQ(cautions().size(), 42U);
}

TEST(Cautions, EveryTopicHasARow)
{
    EXPECT_EQ(caution_topics().size(), 37U);
    for (const auto topic : caution_topics()) {
        EXPECT_FALSE(cautions_for(topic).empty()) << to_string(topic);
        EXPECT_FALSE(to_string(topic).empty());
    }
}

TEST(Cautions, EveryRowIsShortAndOfWholeSentences)
{
    for (const auto& caution : cautions()) {
        EXPECT_LE(caution.text.size(), 240U) << caution.id;
        EXPECT_TRUE(caution.text.ends_with('.')) << caution.id;
        EXPECT_TRUE(caution.text.front() >= 'A' && caution.text.front() <= 'Z') << caution.id;
        EXPECT_EQ(caution.text.find('!'), std::string::npos) << caution.id;
        EXPECT_FALSE(caution.shown_when.ends_with('.')) << caution.id;
    }
}

TEST(Cautions, EveryRowHasSourcesThatAreWrittenOut)
{
    for (const auto& caution : cautions()) {
        ASSERT_FALSE(caution.sources.empty()) << caution.id;
        for (const auto& key : caution.sources) {
            EXPECT_NE(caution_source(key), nullptr) << key;
        }
    }
}

TEST(Cautions, EverySourceIsUsed)
{
    std::set<std::string> used;
    for (const auto& caution : cautions()) {
        used.insert(caution.sources.begin(), caution.sources.end());
    }
    for (const auto& source : CautionTable::built_in().sources()) {
        EXPECT_TRUE(used.contains(source.key)) << source.key;
    }
}

// A selector that no kind answers would be a spelling mistake that nobody sees. Hemerocallis, Datura and
// Zamiaceae are named for plants that growers may add themselves.
TEST(Cautions, EverySelectorFindsAKind)
{
    const std::set<std::string> beyond_the_reference{"genus:Hemerocallis", "genus:Datura", "family:Zamiaceae",
                                                     "hazard:prickl", "hazard:spiny"};
    for (const auto& caution : cautions()) {
        for (const auto& selector : caution.kinds) {
            std::string row = "one,label,Text.,always,";
            row.append(selector).append(",AA");
            const auto alone = one_row(row);
            ASSERT_TRUE(alone) << selector;
            const bool any =
                std::ranges::any_of(PlantReference::built_in().kinds(), [&](const plants::PlantKind& kind) {
                    return !alone->for_plant(kind).empty();
                });
            EXPECT_TRUE(any || beyond_the_reference.contains(selector)) << selector;
        }
    }
}

TEST(Cautions, EveryHarmfulKindHasACaution)
{
    for (const auto& kind : PlantReference::built_in().kinds()) {
        if (kind.to_people != plants::Toxicity::NotKnownToBe ||
            kind.to_pets != plants::Toxicity::NotKnownToBe) {
            EXPECT_TRUE(ids(cautions_for_plant(kind)).contains("toxic-plant")) << kind.botanical_name;
        }
    }
}

struct PlantCase {
    const char* name;
    const char* plant;
    std::set<std::string> expected;
};
void PrintTo(const PlantCase& row, std::ostream* out)
{
    *out << row.name;
}
class CautionsOfAPlant : public testing::TestWithParam<PlantCase> {};
TEST_P(CautionsOfAPlant, FollowItsHazards)
{
    EXPECT_EQ(ids_for(GetParam().plant), GetParam().expected);
}
INSTANTIATE_TEST_SUITE_P(
    Kinds, CautionsOfAPlant,
    testing::Values(PlantCase{"Arum", "Dumb cane", {"toxic-plant", "oxalate"}},
                    PlantCase{"TrueLily", "Lilium longiflorum", {"toxic-plant", "true-lily"}},
                    PlantCase{"PeaceLilyIsNoLily", "Peace lily", {"toxic-plant", "oxalate"}},
                    PlantCase{"Cycad", "Sago palm", {"toxic-plant", "cycad", "spines"}},
                    PlantCase{"Oleander", "Oleander", {"toxic-plant", "heart-poison"}},
                    PlantCase{"MilkAndSpines", "Crown of thorns", {"toxic-plant", "milky-sap", "spines"}},
                    PlantCase{"SapInTheSun", "Patio fig", {"toxic-plant", "sap-in-sun"}},
                    PlantCase{"Citrus", "Lemon", {"toxic-plant", "sap-in-sun", "spines"}},
                    PlantCase{"Harmless", "Cast-iron plant", {}}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Cautions, ReadsARow)
{
    const auto table = one_row("one,bees,Do so.,before a spray,genus:Lilium;toxic,AA");
    ASSERT_TRUE(table) << table.error().message;
    const auto& caution = table->cautions().front();
    EXPECT_EQ(caution.topic, CautionTopic::Bees);
    EXPECT_THAT(caution.kinds, testing::ElementsAre("genus:Lilium", "toxic"));
    EXPECT_EQ(table->source("AA")->year, 2001);
    EXPECT_EQ(table->for_topic(CautionTopic::Bees).size(), 1U);
    EXPECT_TRUE(table->for_topic(CautionTopic::Soap).empty());
}

struct BadCase {
    const char* name;
    const char* row;
    const char* says;
};
void PrintTo(const BadCase& row, std::ostream* out)
{
    *out << row.name;
}
class BadCaution : public testing::TestWithParam<BadCase> {};
TEST_P(BadCaution, IsNamedWithItsLine)
{
    const auto table = one_row(GetParam().row);
    ASSERT_FALSE(table);
    EXPECT_EQ(table.error().code, ErrorCode::Malformed);
    EXPECT_THAT(table.error().message, testing::HasSubstr(GetParam().says));
    EXPECT_THAT(table.error().message, testing::HasSubstr("cautions.csv, line "));
}
INSTANTIATE_TEST_SUITE_P(
    Rows, BadCaution,
    testing::Values(BadCase{"UnknownTopic", "one,beez,Do so.,always,,AA", "\"beez\" is not known"},
                    BadCase{"NoText", "one,bees,,always,,AA", "text is blank"},
                    BadCase{"NoSource", "one,bees,Do so.,always,,", "sources is blank"},
                    BadCase{"UnlistedSource", "one,bees,Do so.,always,,BB", "the source BB is not in"},
                    BadCase{"UnknownSelector", "one,bees,Do so.,always,genius:Lilium,AA", "genius:Lilium"},
                    BadCase{"EmptySelector", "one,bees,Do so.,always,genus:,AA", "\"genus:\" must be"},
                    BadCase{"SameId", "one,bees,Do so.,always,,AA\none,soap,Do so.,always,,AA",
                            "the id one is given twice"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Cautions, RefusesAKeyGivenTwice)
{
    const auto table = one_row("one,bees,Do so.,always,,AA", "key,title,publisher,year\nAA,A,,\nAA,B,,\n");
    ASSERT_FALSE(table);
    EXPECT_THAT(table.error().message, testing::HasSubstr("the key AA is given twice"));
}

TEST(Cautions, RefusesAYearThatIsNoNumber)
{
    const auto table = one_row("one,bees,Do so.,always,,AA", "key,title,publisher,year\nAA,A,,soon\n");
    ASSERT_FALSE(table);
    EXPECT_THAT(table.error().message, testing::HasSubstr("\"soon\""));
}

TEST(Cautions, RefusesAMissingColumn)
{
    const auto table = CautionTable::parse("id,topic,text,shown_when,sources\na,bees,B.,c,AA\n", kSources);
    ASSERT_FALSE(table);
    EXPECT_THAT(table.error().message, testing::HasSubstr("kinds"));
}

} // namespace
} // namespace lathhouse::plan
