#include "app/words/phrase.h"

#include "app/words/growing_words.h"
#include "app/words/ladder_words.h"
#include "app/words/spray_words.h"
#include "app/words/table_words.h"
#include "app/words/tonight_words.h"
#include "app/words/words.h"
#include "core/base/csv.h"
#include "core/home/demonstration.h"
#include "core/home/history.h"
#include "core/home/measurement.h"
#include "core/plan/care_lines.h"
#include "core/plan/cautions.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/spray_gate.h"
#include "core/plants/pest.h"
#include "core/plants/plant_kind.h"
#include "core/plants/seed_kind.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

namespace lathhouse::words {
namespace {

/// Somebody who reads backwards; nobody is left reading so.
class OtherReader : public testing::Test {
protected:
    void SetUp() override
    {
        speak_to({.language = "de",
                  .phrase =
                      [](const char* source) {
                          const std::map<std::string, std::string> known{
                              {"1 in %1", "%1:1"},
                              {"%1 %2", "%2-%1"},
                              {"almost sure", "sicher"},
                              {"Sources: %1.", "Quellen: %1."},
                              {"the rest is common practice without a source", "der Rest ohne Quelle"}};
                          const auto found = known.find(source);
                          return found == known.end() ? std::string{} : found->second;
                      },
                  .decimal_mark = ','});
    }
    void TearDown() override { speak_to({}); }
};

/// Somebody to whom every sentence is said in brackets.
class BracketReader : public testing::Test {
protected:
    void SetUp() override
    {
        speak_to({.language = "de", .phrase = [](const char* source) { return "[" + std::string{source} + "]"; }, .decimal_mark = ','});
    }
    void TearDown() override { speak_to({}); }
};

TEST_F(BracketReader, IsToldWhyAPlantComesInInItsOwnLanguage)
{
    const auto demonstration = home::demonstration({.today = calendar::Date{2027, 4, 1}});
    ASSERT_TRUE(demonstration);
    const plan::NightAhead dry{.night = calendar::Date{2027, 4, 2},
                               .forecast = climate::ForecastLow{Celsius::from_degrees(3.0), 1},
                               .weather = {},
                               .dew_point = Celsius::from_degrees(-9.0)};
    const plan::NightAhead damp{.night = calendar::Date{2027, 4, 2}, .forecast = {}, .weather = {}, .dew_point = {}};
    for (const auto reason : {plan::NightReason::WithinRisk, plan::NightReason::DamageLikely, plan::NightReason::DeathLikely,
                              plan::NightReason::RoomHolds, plan::NightReason::RoomTooCold}) {
        for (const auto frost : {plan::LeafFrost::None, plan::LeafFrost::IfClearAndCalm, plan::LeafFrost::Likely}) {
            for (const auto& ahead : {dry, damp}) {
                const plan::PlantNight night{1, 1, Probability::literal(0.1), Probability::literal(0.01), false, reason, frost};
                const auto said = why(night, ahead, demonstration->household, UnitSystem::Metric);
                EXPECT_TRUE(said.starts_with('[') && said.ends_with(']')) << said;
            }
        }
    }
}

TEST_F(BracketReader, IsToldHowAPlantHardensInItsOwnLanguage)
{
    auto demonstration = home::demonstration({.today = calendar::Date{2027, 4, 1}});
    ASSERT_TRUE(demonstration);
    auto& household = demonstration->household;
    auto& plant = household.plants.front();
    plant.pot_kilograms = kHeavyKilograms;
    plant.hazardous = true;
    std::size_t notes = 0;
    for (const auto direction : {plan::Direction::Out, plan::Direction::In}) {
        for (const double change : {-3.0, 0.0, 3.0}) {
            const plan::Ladder ladder{plant.id, 1, 2, direction, calendar::Date{2027, 5, 1}, calendar::Date{2027, 5, 9}, change,
                                      KelvinDelta::from_kelvins(2.0 * change), {}, {calendar::Date{2027, 5, 4}}, true};
            const auto head = ladder_head(ladder, household, UnitSystem::UsCustomary);
            EXPECT_TRUE(head.starts_with('[') && head.ends_with(']')) << head;
            for (const auto& note : ladder_notes(ladder, household, UnitSystem::UsCustomary)) {
                EXPECT_TRUE(note.starts_with('[') && note.ends_with(']')) << note;
                ++notes;
            }
        }
    }
    EXPECT_EQ(notes, 3 * (6U + 4U));
}

TEST(Phrase, StandsAsInTheSourceWhereNobodyElseReads)
{
    EXPECT_EQ(phrase("stands there"), "stands there");
    EXPECT_EQ(phrase("%2 before %1, %3 left", std::string{"a"}, std::string{"b %1"}), "b %1 before a, %3 left");
    EXPECT_EQ(phrase("%1 % of it", std::string{"7"}), "7 % of it");
    EXPECT_EQ(number(1.5, 1), "1.5");
    EXPECT_EQ(table_text("spines"), "spines");
    EXPECT_EQ(common_name("Citrus limon", "Lemon"), "Lemon");
    EXPECT_THAT(common_names("Citrus limon"), testing::IsEmpty());
}

TEST(Phrase, EndsWithOnePointWhereAPartBringsItsOwn)
{
    const std::string day = "3. Sept.";
    EXPECT_EQ(phrase("Look on %1.", day), "Look on 3. Sept.");
    EXPECT_EQ(phrase("Not before %2. Then %1.\n", day, day), "Not before 3. Sept. Then 3. Sept.\n");
    EXPECT_EQ(phrase("Look on %1.", std::string{"3 Sep"}), "Look on 3 Sep.");
    EXPECT_EQ(phrase("Kept as %1.csv", day), "Kept as 3. Sept..csv");
    EXPECT_EQ(phrase("Kept in %1.", std::string{".."}), "Kept in ...");
}

TEST(Phrase, JoinsWithTheLastWord)
{
    EXPECT_EQ(joined({}), "");
    EXPECT_EQ(joined({"a"}), "a");
    EXPECT_EQ(joined({"a", "b"}), "a and b");
    EXPECT_EQ(joined({"a", "b", "c"}), "a, b and c");
}

TEST_F(OtherReader, HearsWholeSentencesInTheirOwnOrder)
{
    EXPECT_EQ(chance(Probability::literal(0.1)), "10:1");
    EXPECT_EQ(chance(Probability::literal(0.99)), "sicher");
    EXPECT_EQ(day(calendar::Date{2026, 5, 30}), "May-30");
    EXPECT_EQ(chance(Probability::literal(0.0)), "under 1 in 1000") << "what has no translation stays";
}

TEST_F(OtherReader, HasADecimalCommaAndNoMinusZero)
{
    EXPECT_EQ(number(-8.25, 1), "\u22128,2");
    EXPECT_EQ(number(-0.04, 1), "0,0");
    EXPECT_EQ(number(12.0, 0), "12");
}

TEST_F(OtherReader, HearsNamesAndTextsOfTheTables)
{
    EXPECT_THAT(common_names("Spathiphyllum wallisii"), testing::ElementsAre("Einblatt", "Friedenslilie"));
    EXPECT_THAT(common_names("Nothing known"), testing::IsEmpty());
    EXPECT_EQ(table_text("Dies at -2 C; does not grow below 15 C."), "Erfriert bei \u22122 °C; wächst unter 15 °C nicht.");
    EXPECT_EQ(common_name("Citrus limon", "Lemon"), "Zitrone");
    EXPECT_EQ(table_text("spines"), "Stacheln");
    EXPECT_EQ(table_text("a text of nobody"), "a text of nobody");
}

TEST_F(OtherReader, HearsTheGroupThatASprayHurtsAndKeepsBotanicalNames)
{
    plan::SprayFinding finding{};
    finding.check = plan::SprayCheck::SensitiveKind;
    finding.verdict = plan::SprayVerdict::Never;
    for (const auto& [note, said] : {std::pair{"fern: Ferns.", "(Farn: Farne.)"}, std::pair{"Impatiens", "(Impatiens)"},
                                     std::pair{"Crassulaceae: The wax bloom comes off.", "(Crassulaceae: Der Wachsreif geht ab.)"}}) {
        finding.note = note;
        EXPECT_THAT(spray_finding(finding, UnitSystem::Metric), testing::HasSubstr(said)) << note;
    }
}

TEST_F(OtherReader, HearsWhatHasNoSourceInTheirOwnWords)
{
    const plants::Source memory{.key = std::string{plants::kCommonPractice}, .title = {}, .publisher = {}, .year = {}};
    const std::array<const plants::Source*, 1> sources{&memory};
    EXPECT_EQ(sources_line(sources), "Quellen: der Rest ohne Quelle.\n");
}

TEST(TableWords, CropsAreMeantInEveryLanguage)
{
    EXPECT_EQ(english_text("tomate"), "Tomato");
    EXPECT_EQ(english_text("Fleissiges Lieschen"), "Impatiens") << "written without the keys of a German keyboard";
    EXPECT_EQ(english_text("Nesselkraut"), "Nesselkraut") << "as it was said where it is none";
    EXPECT_EQ(english_text("fleißiges lieschen"), "Impatiens");
    EXPECT_EQ(english_text("tomato"), "tomato");
}

TEST(TableWords, NamesAreFoundInEveryLanguage)
{
    const auto names = foreign_names("Cyclamen persicum");
    EXPECT_THAT(names, testing::IsSupersetOf({std::string{"Alpenveilchen"}, std::string{"ciclamen"}}));
    EXPECT_TRUE(foreign_names("Nothing known").empty());
}

CsvTable table(const char* file)
{
    auto read = CsvTable::read(std::string{LATHHOUSE_SOURCE "/app/words/data/"} + file);
    EXPECT_TRUE(read.has_value()) << (read ? "" : read.error().message);
    return *read;
}

TEST(TableWords, EveryKindHasItsRowAndNoOtherHas)
{
    const auto names = table("kind_names.csv");
    std::set<std::string> rows;
    for (std::size_t row = 0; row < names.row_count(); ++row) {
        EXPECT_TRUE(rows.insert(names.at(row, 0)).second) << names.at(row, 0) << " stands twice";
    }
    std::set<std::string> kinds;
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        kinds.insert(kind.botanical_name);
    }
    EXPECT_EQ(rows, kinds);
}

TEST(TableWords, CautionsHazardsNotesCropsPestsAndCareAreAllTranslated)
{
    std::set<std::string> texts;
    for (const auto& caution : plan::cautions()) {
        texts.insert(caution.text);
    }
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        texts.insert(kind.hazards);
        texts.insert(kind.note);
        texts.insert(kind.confidence);
        texts.insert(kind.growth_season);
    }
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        texts.insert({kind.name(), kind.before_sowing, kind.photoperiod_note, kind.confidence});
    }
    for (const auto& pest : plants::PestTable::built_in().pests()) {
        texts.insert(pest.name);
        texts.insert(pest.look_at.begin(), pest.look_at.end());
        texts.insert(pest.treated_with.begin(), pest.treated_with.end());
        texts.insert(pest.found_as.begin(), pest.found_as.end());
        texts.insert(pest.spreads_by.begin(), pest.spreads_by.end());
        texts.insert(pest.note);
        for (const auto& clock : pest.clocks) {
            texts.insert(clock.study);
        }
    }
    for (const auto& line : plan::care_lines()) {
        texts.insert(line.text);
    }
    for (const auto& sign : plan::DamageTable::built_in().signs()) {
        texts.insert(sign.text);
    }
    for (const auto& mode : plan::DamageTable::built_in().modes()) {
        texts.insert({mode.name, mode.outlook, mode.conflict, mode.note});
        texts.insert(mode.examples.begin(), mode.examples.end());
    }
    for (const auto& kind : plan::SprayRules::built_in().sensitive()) {
        texts.insert(kind.note);
    }
    texts.erase("");
    const auto translated = table("table_texts.csv");
    std::set<std::string> rows;
    for (std::size_t row = 0; row < translated.row_count(); ++row) {
        EXPECT_TRUE(rows.insert(translated.at(row, 0)).second) << translated.at(row, 0) << " stands twice";
        for (std::size_t column = 1; column < translated.column_names().size(); ++column) {
            EXPECT_FALSE(translated.at(row, column).empty()) << translated.at(row, 0);
        }
    }
    for (const auto& text : texts) {
        EXPECT_TRUE(rows.contains(text)) << text;
    }
}

} // namespace
} // namespace lathhouse::words
