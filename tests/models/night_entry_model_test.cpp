#include "app/models/card_model.h"
#include "app/models/forecast_rows.h"
#include "app/models/home_model.h"
#include "app/models/tonight_model.h"
#include "core/plan/tonight.h"
#include "tests/models/page_fixtures.h"

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

namespace lathhouse::models {
namespace {

/// Nights that are written with all that was read of them, on the page Home.
class NightEntry : public testing::Test {
protected:
    NightEntry() : household(std::make_shared<MemoryHousehold>(plain_facts())), model(door_to_memory(household), british_look())
    {
        model.start();
        settle();
        entry().setSpot(place_of(home::SpotKind::Indoors));
    }
    void settle()
    {
        wait_for(model);
        wait_for(entry());
        wait_for(model);
    }
    NightEntryModel& entry() { return *model.entry(); }
    int place_of(home::SpotKind kind) const
    {
        const auto spots = household->facts().as_told.spots;
        return static_cast<int>(std::ranges::find(spots, kind, &home::Spot::kind) - spots.begin());
    }
    std::optional<home::Reading> read_at(int spot, int days_ago) const
    {
        const auto facts = household->facts();
        for (const auto& reading : facts.log.readings) {
            if (reading.spot == facts.as_told.spots[static_cast<std::size_t>(spot)].id &&
                reading.night == kShownToday - calendar::Days{days_ago}) {
                return reading;
            }
        }
        return std::nullopt;
    }
    std::shared_ptr<MemoryHousehold> household;
    HomeModel model;
};

TEST_F(NightEntry, KeepsEverythingThatWasReadAlsoInARoom)
{
    ASSERT_EQ(entry().spots()->rowCount(), static_cast<int>(household->facts().as_told.spots.size()));
    ASSERT_TRUE(entry().keep("15,5", "22", "-1.5", 1, "2", " by the door ")) << entry().error().toStdString();
    settle();
    const auto kept = read_at(entry().spot(), 2);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->low, Celsius::from_degrees(15.5));
    EXPECT_EQ(kept->high, Celsius::from_degrees(22.0));
    EXPECT_EQ(kept->station_low, Celsius::from_degrees(-1.5));
    EXPECT_EQ(kept->weather, weather_of_chip(1));
    EXPECT_EQ(kept->note, "by the door");
    EXPECT_TRUE(entry().said().startsWith("Kept: 15.5 °C at ") || entry().said().contains("15.5")) << entry().said().toStdString();
}

TEST_F(NightEntry, BlankIsThisMorningAndNothingMore)
{
    ASSERT_TRUE(entry().keep("15", "", " ", 0, "", ""));
    settle();
    const auto kept = read_at(entry().spot(), 0);
    ASSERT_TRUE(kept);
    EXPECT_FALSE(kept->high);
    EXPECT_FALSE(kept->station_low);
    EXPECT_EQ(kept->note, "");
}

TEST_F(NightEntry, AtASpotOutdoorsTeachesItsOffset)
{
    const int outdoors = place_of(home::SpotKind::Roofed);
    entry().setSpot(outdoors);
    ASSERT_EQ(entry().spot(), outdoors);
    const auto id = household->facts().as_told.spots[static_cast<std::size_t>(outdoors)].id;
    const auto nights = [&] {
        const auto& offsets = model.facts().offsets;
        return std::ranges::find(offsets, id, &OffsetCourse::spot)->nights.size();
    };
    const auto before = nights();
    ASSERT_TRUE(entry().keep("6", "", "4", 1, "", ""));
    settle();
    EXPECT_EQ(nights(), before + 1) << "the page has read it";
}

TEST_F(NightEntry, WhatIsNoneIsASentenceAtItsAnswer)
{
    const auto refused = [this](int answer, const char* low, const char* high, const char* station, const char* ago) {
        EXPECT_FALSE(entry().keep(low, high, station, 0, ago, ""));
        EXPECT_FALSE(entry().error().isEmpty());
        EXPECT_EQ(entry().wrong(), answer) << entry().error().toStdString();
    };
    refused(NightEntryModel::Low, "", "", "", "");
    refused(NightEntryModel::Low, "cool", "", "", "");
    refused(NightEntryModel::Low, "-80", "", "", "");
    refused(NightEntryModel::High, "10", "warm", "", "");
    refused(NightEntryModel::High, "10", "8", "", "");
    refused(NightEntryModel::High, "10", "80", "", "");
    refused(NightEntryModel::Station, "10", "", "far", "");
    refused(NightEntryModel::Ago, "10", "", "", "-1");
    refused(NightEntryModel::Ago, "10", "", "", "yesterday");
    settle();
    EXPECT_FALSE(household->take_back_last()) << "nothing was written";
}

TEST_F(NightEntry, KeepsTheChosenSpotAsLongAsItIsThere)
{
    entry().know({{4, "Rail", 0}, {5, "Sill", 1}});
    entry().setSpot(1);
    entry().know({{5, "Sill", 1}, {6, "Porch", 2}});
    EXPECT_EQ(entry().spot(), 0);
    entry().setSpot(9);
    EXPECT_EQ(entry().spot(), 0);
    entry().know({});
    EXPECT_FALSE(entry().keep("3", "", "", 0, "", ""));
}

TEST(ForecastRows, AreThoseOfTheRecordByHowFarAheadTheyWereMade)
{
    auto facts = with_cold_night(plain_facts(), kShownToday);
    facts.log.forecasts.clear();
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_TRUE(forecast_rows(facts, words).empty());
    for (const auto& reading : facts.log.readings) {
        if (home::is_outdoors(facts.as_told.spot(reading.spot)->kind) &&
            (facts.log.forecasts.empty() || facts.log.forecasts.back().night != reading.night)) {
            facts.log.forecasts.push_back({.issued = reading.night - calendar::Days{1}, .night = reading.night,
                                           .low = reading.low + KelvinDelta::from_kelvins(1.0), .weather = {}, .dew_point = {},
                                           .entered = {}});
        }
    }
    ASSERT_GT(facts.log.forecasts.size(), 5U);
    const auto record = plan::forecast_record(facts.as_told, facts.log, facts.climate.nights());
    ASSERT_GT(record.scores[0].nights, 5);
    const auto rows = forecast_rows(facts, words);
    ASSERT_EQ(rows.size(), 1U) << "none was made farther ahead";
    EXPECT_EQ(rows[0][0].toString(), "0 to 2 days ahead");
    EXPECT_EQ(rows[0][1].toString(), QString::number(record.scores[0].nights));
    EXPECT_EQ(rows[0][2].toString(), words.decimal(record.errors.groups()[0].factor, 2) + QString::fromUtf8(" × the usual"));
    EXPECT_TRUE(rows[0][3].toString().startsWith(words.decimal(record.scores[0].learned.kelvins(), 1)));
    EXPECT_TRUE(rows[0][4].toString().startsWith(words.decimal(record.scores[0].season.kelvins(), 1)));
}

TEST(CardModelTest, WritesTheCardOnceAndReplacesItWhereThatIsSaid)
{
    const QTemporaryDir folder;
    CardModel card;
    const auto write = [&](const QString& path, bool replace = false) {
        card.write(path, replace);
        wait_for(card);
        return card.error();
    };
    EXPECT_FALSE(write(" ").isEmpty());
    ASSERT_EQ(write(folder.filePath("card")), "");
    EXPECT_TRUE(card.said().contains(folder.filePath("card.svg"))) << card.said().toStdString();
    QFile written{folder.filePath("card.svg")};
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.readAll().contains("<svg"));
    EXPECT_TRUE(write(folder.filePath("card.svg")).contains("there already"));
    EXPECT_TRUE(card.fileIsThere());
    EXPECT_EQ(write(folder.filePath("card.svg"), true), "");
    EXPECT_FALSE(card.fileIsThere());
    EXPECT_FALSE(write(folder.filePath("no/such/card.svg")).isEmpty());
}

TEST_F(NightEntry, NightsOfARoomAreListedAndPutRight)
{
    const int room = entry().spot();
    ASSERT_TRUE(entry().keep("15,5", "22", "-1.5", 1, "2", "by the door"));
    settle();
    ASSERT_TRUE(entry().keep("16", "", "", 0, "1", ""));
    settle();
    EXPECT_EQ(entry().readings()->rowCount(), 0); // Not listed until it is asked for.
    entry().setListed(true);
    ASSERT_EQ(entry().readings()->rowCount(), 2);
    EXPECT_EQ(entry().kept(), "2 nights are kept of " + entry().spots()->at(room, "name").toString() + ".");
    EXPECT_TRUE(entry().readings()->at(0, "low").toString().startsWith("16.0")); // The newest first.
    EXPECT_EQ(entry().readings()->at(1, "sky").toString(), "clear, calm");
    EXPECT_TRUE(entry().readings()->at(1, "sentence").toString().contains("by the door"));
    const auto was = entry().mend(1);
    EXPECT_EQ(was["low"].toString(), "15.5");
    EXPECT_EQ(was["ago"].toString(), "2");
    ASSERT_TRUE(entry().keep("14.5", was["high"].toString(), was["station"].toString(), was["sky"].toInt(), was["ago"].toString(), "by the window"));
    settle();
    ASSERT_EQ(entry().readings()->rowCount(), 2);
    const auto kept = read_at(room, 2);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->low, Celsius::from_degrees(14.5));
    EXPECT_EQ(kept->high, Celsius::from_degrees(22.0));
    EXPECT_EQ(kept->note, "by the window");
    EXPECT_TRUE(entry().mend(2).isEmpty());
}

TEST_F(NightEntry, WhatWasNotTouchedKeepsWhatTheScreenDoesNotShow)
{
    const auto id = household->facts().as_told.spots[static_cast<std::size_t>(entry().spot())].id;
    const home::Reading fine{id, kShownToday - calendar::Days{3}, Celsius::from_degrees(15.04), Celsius::from_degrees(21.96),
                             {climate::Sky::Clear, climate::Wind::Windy}, {}, {}, "old"};
    entry().know({{id, "Sill", 0}}, {fine});
    entry().setListed(true);
    const auto was = entry().mend(0);
    EXPECT_EQ(was["sky"].toInt(), 2);
    ASSERT_TRUE(entry().keep(was["low"].toString(), was["high"].toString(), "", was["sky"].toInt(), was["ago"].toString(), "new"));
    settle();
    const auto facts = household->facts();
    const auto kept = std::ranges::find_if(facts.log.readings, [&](const auto& of) { return of.spot == id && of.night == fine.night; });
    ASSERT_NE(kept, facts.log.readings.end());
    EXPECT_EQ(kept->low, fine.low);
    EXPECT_EQ(kept->high, fine.high);
    EXPECT_EQ(kept->weather, fine.weather);
    EXPECT_EQ(kept->note, "new");
}

TEST_F(NightEntry, ManyNightsAreListedWhenTheyAreAskedFor)
{
    const auto id = household->facts().as_told.spots.front().id;
    std::vector<home::Reading> many;
    for (int days = 40; days > 0; --days) {
        many.push_back({id, kShownToday - calendar::Days{days}, Celsius::from_degrees(days), {}, {}, {}, {}, ""});
    }
    entry().know({{id, "Sill", 0}}, std::move(many));
    entry().setListed(true);
    EXPECT_EQ(entry().readings()->rowCount(), NightEntryModel::kFirstShown);
    EXPECT_EQ(entry().more(), 10);
    entry().listAll();
    EXPECT_EQ(entry().readings()->rowCount(), 40);
    EXPECT_EQ(entry().more(), 0);
    entry().setListed(false);
    EXPECT_EQ(entry().readings()->rowCount(), 0);
}

} // namespace
} // namespace lathhouse::models
