#include "app/models/event_words.h"

#include "app/models/ticked_task.h"
#include "app/models/typed_path.h"
#include "app/words/phrase.h"
#include "tests/models/page_fixtures.h"

#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

/// What the window says of an entry that was taken back.
std::string said_back(const home::Entry& entry)
{
    return entry_words(entry, plain_facts().as_told, british_look().words).toStdString();
}

home::Event entered(home::EventKind kind, std::map<std::string, std::string> details,
                    std::optional<home::PlantId> plant = {})
{
    return {.plant = plant, .kind = kind, .spot = {}, .happened = kShownToday, .entered = {}, .note = "", .details = std::move(details)};
}

TEST(EntryWords, SayASowingItsLotAndItsCountInWords)
{
    EXPECT_EQ(said_back(entered(home::EventKind::Sown, {{"lot", "Old tin"}, {"crop", "Tomato"}, {"seeds", "12"}})),
              "12 seeds of Tomato sown, of the lot Old tin, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::Sown, {{"lot", "Old tin"}, {"crop", "Tomato"}, {"seeds", "1"}})),
              "1 seed of Tomato sown, of the lot Old tin, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::Noted, {{"lot", "Old tin"}, {"crop", "Tomato"}})),
              "the lot Old tin of Tomato, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::Emerged,
                               {{"tray", "3"}, {"lot", "Old tin"}, {"emerged", "9"}, {"sown", "12"}})),
              "9 of 12 seeds of the lot Old tin had come up, 16 May 2026");
}

TEST(EntryWords, NameThePlantBeforeWhatHappenedToIt)
{
    const auto home = plain_facts().as_told;
    const auto& plant = home.plants.front();
    EXPECT_EQ(said_back(entered(home::EventKind::Isolated, {}, plant.id)), plant.name + ": set apart, 16 May 2026");
    const home::PhotoChange photo{home::PhotoChangeKind::Assigned, {7}, plant.id, "lemon.jpg", kShownToday, {}};
    EXPECT_EQ(said_back(photo), "the photograph lemon.jpg of 16 May 2026 shows " + plant.name);
}

TEST(EventWords, NameAPestThatWasWrittenByAnotherNameInTheReadersLanguage)
{
    const auto found = entered(home::EventKind::PestFound, {{"pest", "mealybug"}});
    EXPECT_EQ(event_words(found, plain_facts().as_told), "mealybug found");
    words::speak_to({.language = "de", .phrase = {}, .decimal_mark = ','});
    EXPECT_EQ(event_words(found, plain_facts().as_told), "Zitrus-Wolllaus found");
    words::speak_to({});
}

TEST(EventWords, NameAProductOfTheTableInTheReadersLanguage)
{
    const auto damage = entered(home::EventKind::ChemicalDamage, {{"product", "glyphosate"}});
    EXPECT_EQ(event_words(damage, plain_facts().as_told), "damage by glyphosate");
    words::speak_to({.language = "de", .phrase = {}, .decimal_mark = ','});
    EXPECT_EQ(event_words(damage, plain_facts().as_told), "damage by Glyphosat");
    words::speak_to({});
}

TEST(EntryWords, NameTheTaskOfTheRoundThatWasTicked)
{
    const auto home = plain_facts().as_told;
    const auto& plant = home.plants.front();
    EXPECT_EQ(said_back(entered(home::EventKind::TaskDone, {{"task", "water/1/2026-05-16"}}, plant.id)),
              plant.name + ": ticked in the round: feel whether the mix is dry, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::TaskPostponed, {{"task", "feed/1/2026-05-16"}, {"until", "2026-05-20"}}, plant.id)),
              plant.name + ": put off in the round: feed, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::TaskSkipped, {{"task", "seeds/2/1l"}})), "left out in the round: sow outdoors, 16 May 2026");
    EXPECT_EQ(said_back(entered(home::EventKind::TaskDone, {{"task", "wash/0/2026-05-16"}})),
              "ticked in the round: wash hands and tools, 16 May 2026");
    for (const char* unknown : {"", "juggle/1/2026-05-16", "seeds/2/", "seeds/2/9l", "water"}) {
        EXPECT_EQ(said_back(entered(home::EventKind::TaskDone, {{"task", unknown}})), "ticked in the round, 16 May 2026") << unknown;
    }
}

TEST(TickedTask, IsNamedWhateverTheRoundHas)
{
    const auto& facts = plain_facts();
    const auto household = facts.household();
    const auto nights = facts.climate.nights();
    int named = 0;
    for (int month = 0; month < 12; month += 2) {
        const auto today = kShownToday + calendar::Days{30 * month};
        const auto parts = plan::round_parts(facts, nights, today, plan::kUsualRisk);
        for (int day = 0; day < 60; ++day) {
            for (const auto& task : plan::round_of(household, {}, parts, today + calendar::Days{day})) {
                EXPECT_FALSE(ticked_task(entered(home::EventKind::TaskDone, {{"task", task.key}})).isEmpty()) << task.key;
                ++named;
            }
        }
    }
    EXPECT_GT(named, 50);
}

TEST(EntryWords, AreTheHouseholdsOwnForAChangeOfIt)
{
    auto change = entered(home::EventKind::Noted, {{"change", "household"}});
    change.note = "Lemon is called Old lemon";
    EXPECT_EQ(said_back(change), "Lemon is called Old lemon, 16 May 2026");
}

TEST(EntryWords, CountNightsThatCameTogether)
{
    const auto home = plain_facts().as_told;
    const auto& spot = home.spots.front();
    const home::Reading night{spot.id, kShownToday, Celsius::from_degrees(3.0), {}, {}, {}, {}, {}};
    home::NightsTogether nights{{night, night}};
    nights.readings.front().night = kShownToday - calendar::Days{9};
    EXPECT_EQ(said_back(nights), spot.name + ": lowest of 2 nights, 7 May 2026 to 16 May 2026");
    nights.readings.back().spot = home.spots.back().id;
    EXPECT_EQ(said_back(nights), "lowest of 2 nights at several spots, 7 May 2026 to 16 May 2026");
}

TEST(TypedPath, SaysWhichFolderWouldBeMade)
{
    const QTemporaryDir folder;
    EXPECT_EQ(will_make_words(folder.filePath("one.zip")), "");
    EXPECT_EQ(will_make_words("  "), "");
    EXPECT_TRUE(will_make_words(folder.filePath("new/one.zip")).contains(folder.filePath("new") + " is not there yet"));
}

} // namespace
} // namespace lathhouse::models
