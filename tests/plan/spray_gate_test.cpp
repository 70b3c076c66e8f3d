#include "core/plan/spray_gate.h"

#include "core/base/csv.h"
#include "tests/plan/short_names.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <string>

namespace lathhouse::plan {
namespace {

/// Everything asked and answered as it should be, indoors.
SprayAnswers fine(SprayKind spray)
{
    SprayAnswers answers;
    answers.spray = spray;
    answers.outdoors = false;
    answers.label_read = true;
    answers.label_forbids = false;
    answers.test_leaf_hours = 48.0;
    answers.test_leaf_hurt = false;
    answers.temperature = Celsius::from_degrees(20.0);
    answers.direct_sun = false;
    answers.dry_or_wilted = false;
    answers.seedling = false;
    answers.open_flowers = false;
    answers.child_near = false;
    answers.animal_near = false;
    answers.asthma_or_pregnant = false;
    answers.fresh_air = true;
    answers.flame_near = false;
    answers.edible = false;
    return answers;
}

bool has(const SprayDecision& decision, SprayCheck check)
{
    return std::ranges::find(decision.findings, check, &SprayFinding::check) != decision.findings.end();
}

bool asks(const SprayDecision& decision, SprayCheck check)
{
    return std::ranges::find(decision.open, check) != decision.open.end();
}

TEST(SprayGate, LetsGoWhenAllIsAsItShouldBe)
{
    for (const auto spray : {SprayKind::Soap, SprayKind::Oil, SprayKind::Neem, SprayKind::Alcohol,
                             SprayKind::Systemic, SprayKind::Other}) {
        const auto decision = decide_spray(fine(spray));
        EXPECT_EQ(decision.verdict, SprayVerdict::Go) << to_string(spray);
        EXPECT_TRUE(decision.open.empty()) << to_string(spray);
    }
}

TEST(SprayGate, WaitsAndAsksTheLabelFirstWhenNothingIsKnown)
{
    const auto decision = decide_spray({.spray = SprayKind::Soap});
    EXPECT_EQ(decision.verdict, SprayVerdict::Wait);
    ASSERT_FALSE(decision.open.empty());
    EXPECT_EQ(decision.open.front(), SprayCheck::Label);
    EXPECT_TRUE(asks(decision, SprayCheck::TestLeaf));
    EXPECT_TRUE(asks(decision, SprayCheck::Place));
}

// The limits 27 and 32 C (80 to 85 F and 90 F in the sources): both are shown for oil and neem.
TEST(SprayGate, BothHeatLimitsOfNeemAndOilAreShown)
{
    for (const auto spray : {SprayKind::Oil, SprayKind::Neem}) {
        const auto decision = decide_spray(fine(spray));
        ASSERT_EQ(decision.conflicts.size(), 1U);
        EXPECT_EQ(decision.conflicts.front().strict, 27.0);
        EXPECT_EQ(decision.conflicts.front().usual, 32.0);
        EXPECT_NE(decision.conflicts.front().strict_sources, decision.conflicts.front().usual_sources);
    }
    EXPECT_TRUE(decide_spray(fine(SprayKind::Soap)).conflicts.empty());
}

TEST(SprayGate, TheStricterHeatLimitDecides)
{
    auto answers = fine(SprayKind::Neem);
    answers.temperature = Celsius::from_degrees(29.0);
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Wait);
    EXPECT_EQ(std::ranges::count(decide_spray(answers).findings, SprayCheck::TemperatureHigh,
                                 &SprayFinding::check),
              1);
    answers.temperature = Celsius::from_degrees(33.0);
    EXPECT_EQ(std::ranges::count(decide_spray(answers).findings, SprayCheck::TemperatureHigh,
                                 &SprayFinding::check),
              2);
    answers.spray = SprayKind::Soap;
    answers.temperature = Celsius::from_degrees(29.0);
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Go);
    answers.temperature = Celsius::from_degrees(4.0);
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Wait);
}

// Montreal Space for Life and the Dillon county column: ferns, crown of thorns, jade and others for soap.
TEST(SprayGate, NeverSoapOnKindsThatSoapHurts)
{
    for (const char* name : {"Boston fern", "Crown of thorns", "Jade plant"}) {
        auto answers = fine(SprayKind::Soap);
        answers.plant = &plant_kind(name);
        EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Never) << name;
    }
}

TEST(SprayGate, ACarefulKindNeedsALeafThatStoodTwoDays)
{
    auto answers = fine(SprayKind::Soap);
    answers.plant = &plant_kind("Pelargonium x hortorum");
    answers.test_leaf_hours = 30.0;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Wait);
    answers.test_leaf_hours = 50.0;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Go);
    EXPECT_TRUE(has(decide_spray(answers), SprayCheck::SensitiveKind));
}

TEST(SprayGate, BeesDecideOutdoorsAlone)
{
    auto answers = fine(SprayKind::Soap);
    answers.open_flowers = true;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Go);
    answers.outdoors = true;
    answers.windy = false;
    answers.rain_soon = false;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Wait);
    answers.spray = SprayKind::Systemic;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Never);
}

TEST(SprayGate, NeverOnACropThatTheLabelDoesNotName)
{
    auto answers = fine(SprayKind::Soap);
    answers.edible = true;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Wait) << "the label is asked for the crop";
    EXPECT_TRUE(asks(decide_spray(answers), SprayCheck::EdibleNotOnLabel));
    answers.crop_on_label = true;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Go);
    EXPECT_TRUE(has(decide_spray(answers), SprayCheck::Edible)) << "its waiting time is kept";
    answers.crop_on_label = false;
    EXPECT_EQ(decide_spray(answers).verdict, SprayVerdict::Never);
}

struct OneWrong {
    const char* name;
    std::optional<bool> SprayAnswers::*answer;
    bool value;
    SprayKind spray;
    SprayVerdict verdict;
};
void PrintTo(const OneWrong& row, std::ostream* out)
{
    *out << row.name;
}
class SprayGateOneWrong : public testing::TestWithParam<OneWrong> {};
TEST_P(SprayGateOneWrong, StopsIt)
{
    auto answers = fine(GetParam().spray);
    answers.*GetParam().answer = GetParam().value;
    EXPECT_EQ(decide_spray(answers).verdict, GetParam().verdict);
}
INSTANTIATE_TEST_SUITE_P(
    Each, SprayGateOneWrong,
    testing::Values(
        OneWrong{"LabelUnread", &SprayAnswers::label_read, false, SprayKind::Soap, SprayVerdict::Wait},
        OneWrong{"LabelForbids", &SprayAnswers::label_forbids, true, SprayKind::Soap, SprayVerdict::Never},
        OneWrong{"LeafHurt", &SprayAnswers::test_leaf_hurt, true, SprayKind::Soap, SprayVerdict::Never},
        OneWrong{"Sun", &SprayAnswers::direct_sun, true, SprayKind::Oil, SprayVerdict::Wait},
        OneWrong{"Dry", &SprayAnswers::dry_or_wilted, true, SprayKind::Oil, SprayVerdict::Wait},
        OneWrong{"Seedling", &SprayAnswers::seedling, true, SprayKind::Neem, SprayVerdict::Wait},
        OneWrong{"Child", &SprayAnswers::child_near, true, SprayKind::Soap, SprayVerdict::Wait},
        OneWrong{"Animal", &SprayAnswers::animal_near, true, SprayKind::Soap, SprayVerdict::Wait},
        OneWrong{"Asthma", &SprayAnswers::asthma_or_pregnant, true, SprayKind::Soap, SprayVerdict::Wait},
        OneWrong{"NoAir", &SprayAnswers::fresh_air, false, SprayKind::Soap, SprayVerdict::Wait},
        OneWrong{"Flame", &SprayAnswers::flame_near, true, SprayKind::Alcohol, SprayVerdict::Never}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(SprayRules, EveryRowNamesSourcesOfTheSourceTable)
{
    const auto& reference = plants::PlantReference::built_in();
    for (const auto& rule : SprayRules::built_in().rules()) {
        for (const auto& key : rule.sources) {
            EXPECT_NE(reference.source(key), nullptr) << rule.id << " " << key;
        }
    }
    for (const auto& row : SprayRules::built_in().sensitive()) {
        for (const auto& key : row.sources) {
            EXPECT_NE(reference.source(key), nullptr) << row.name << " " << key;
        }
    }
}

TEST(SprayRules, RefusesWhatItCannotUse)
{
    const std::filesystem::path folder = std::filesystem::path{LATHHOUSE_SOURCE} / "core/plan/data";
    const auto rules = read_text_file(folder / "spray_rules.csv").value();
    const auto kinds = read_text_file(folder / "sensitive_kinds.csv").value();
    ASSERT_TRUE(SprayRules::parse(rules, kinds));
    const auto refused = [&](std::string from, std::string to) {
        auto changed = rules;
        changed.replace(changed.find(from), from.size(), to);
        return !SprayRules::parse(changed, kinds);
    };
    EXPECT_TRUE(refused("soap_hot,soap,temperature_high,,32", "soap_hot,soap,temperature_high,,"));
    EXPECT_TRUE(refused("soap_hot,soap,temperature_high", "soap_hot,soap,temperature_top"));
    EXPECT_TRUE(refused("soap_hot,soap,", "soap_cold,soap,"));
    EXPECT_TRUE(refused("wait,LABELSC", "perhaps,LABELSC"));
}

} // namespace
} // namespace lathhouse::plan
