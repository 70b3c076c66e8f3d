#include "app/words/demonstration_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "core/home/demonstration.h"
#include "core/home/demonstration_story.h"
#include "core/plants/plant_kind.h"

#include <gtest/gtest.h>

#include <set>

namespace lathhouse::words {
namespace {

/// Somebody who reads German; nobody is left reading so.
class GermanReader : public testing::Test {
protected:
    void SetUp() override { speak_to({.language = "de", .phrase = {}, .decimal_mark = ','}); }
    void TearDown() override { speak_to({}); }
};

home::Demonstration shown(home::Hemisphere hemisphere)
{
    return home::demonstration({.today = calendar::Date{2026, 5, 16}, .hemisphere = hemisphere}).value();
}

TEST_F(GermanReader, FindsPlaceSpotsAndPlantsNamedInGerman)
{
    auto household = shown(home::Hemisphere::North).household;
    name_for_reader(household);
    EXPECT_EQ(household.place.name, "Eine Stadt im Binnenland");
    EXPECT_NE(household.spot_called("Wohnzimmer"), nullptr);
    EXPECT_EQ(household.plant(3)->name, "Zitrone");
}

TEST(DemonstrationWords, AreLeftAsTheyAreForWhoReadsEnglish)
{
    auto household = shown(home::Hemisphere::North).household;
    const auto before = household.plants.front().name;
    name_for_reader(household);
    EXPECT_EQ(household.plants.front().name, before);
    EXPECT_NE(household.spot_called("Living room"), nullptr);
}

TEST(DemonstrationWords, NamesInSpanishBeginLarge)
{
    speak_to({.language = "es", .phrase = {}, .decimal_mark = ','});
    auto household = shown(home::Hemisphere::North).household;
    name_for_reader(household);
    EXPECT_EQ(household.plant(6)->name, "Árbol de jade");
    EXPECT_EQ(household.plant(3)->name, "Limonero");
    EXPECT_EQ(household.plant(2)->name, "Brugmansia") << "a shelf has no room for the longer names";
    speak_to({});
}

TEST_F(GermanReader, FindsNumbersOfANoteWhereTheLanguageHasThem)
{
    std::vector<home::Event> history{
        {1, home::EventKind::Noted, {}, calendar::Date{2026, 1, 2}, {}, "dropped 31 leaves after the move"}};
    name_for_reader(history);
    EXPECT_EQ(history.front().note, "verlor nach dem Umzug 31 Blätter");
}

TEST(DemonstrationWords, EverythingThatItsGrowerWroteIsKnownInEveryLanguage)
{
    std::set<std::string> texts;
    for (const auto hemisphere : {home::Hemisphere::North, home::Hemisphere::South}) {
        const auto made = shown(hemisphere);
        const auto story = home::tell_story({.today = calendar::Date{2026, 5, 16}, .hemisphere = hemisphere}, made);
        texts.insert({made.household.name, made.household.place.name});
        for (const auto& spot : made.household.spots) {
            texts.insert({spot.name, spot.short_name});
        }
        for (const auto* events : {&made.history, &story.events}) {
            for (const auto& event : *events) {
                texts.insert(event.note.starts_with("dropped ") ? "dropped %1 leaves after the move" : event.note);
                if (event.details.contains("product")) {
                    texts.insert(event.details.at("product"));
                }
            }
        }
        for (const auto& of : story.lots) {
            texts.insert({of.lot.name, of.lot.note});
        }
    }
    texts.erase("");
    for (const auto& text : texts) {
        EXPECT_GE(foreign_texts(text).size(), 2U) << text; // A semicolon parts names of a kind.
    }
}

} // namespace
} // namespace lathhouse::words
