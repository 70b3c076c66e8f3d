#include "app/models/home_journal_model.h"
#include "core/journal/demonstration_folder.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTimer>

#include <cstdio>
#include <ctime>
#include <set>

#include <set>

namespace lathhouse::models {
namespace {

class HomeJournalModelTest : public testing::Test {
protected:
    HomeJournalModelTest()
        : household(std::make_shared<MemoryHousehold>(with_seeds(with_cold_night(plain_facts(), kShownToday), kShownToday)))
    {
        open();
    }
    void open()
    {
        model = std::make_unique<HomeJournalModel>(plants_in_memory(household, measured), std::nullopt, british_look());
        model->look();
        wait_for(*model);
    }
    int sort(int place, const char* words) const { return static_cast<int>(model->sorts(place).indexOf(words)); }
    QString at(int row, const char* role) const { return model->rows()->at(row, role).toString(); }
    /// Places of the rows that say so.
    std::vector<int> rows_with(const QString& words) const
    {
        std::vector<int> rows;
        for (int row = 0; row < model->rows()->count(); ++row) {
            if (at(row, "sentence").contains(words)) {
                rows.push_back(row);
            }
        }
        return rows;
    }
    std::shared_ptr<MemoryHousehold> household;
    std::vector<home::Measurement> measured;
    std::unique_ptr<HomeJournalModel> model;
};

/// Every event is a line, and so are the thermometers of a night and the forecasts that were kept on a day.
int lines_of(const std::vector<home::Event>& events, const home::NightLog& log)
{
    std::set<calendar::Date> nights;
    for (const auto& reading : log.readings) {
        nights.insert(reading.night);
    }
    std::set<calendar::Date> issued;
    for (const auto& forecast : log.forecasts) {
        issued.insert(forecast.issued);
    }
    return static_cast<int>(events.size() + nights.size() + issued.size());
}

/// What the thread that asks has computed so far, whatever else the machine does. Source: POSIX, clock_gettime(3).
double thread_milliseconds()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

TEST_F(HomeJournalModelTest, HoldsAllThatHappenedNewestFirst)
{
    const QAbstractItemModelTester tester(model->rows());
    const auto facts = household->facts();
    ASSERT_GT(facts.events.size(), 5U);
    ASSERT_GT(facts.log.readings.size(), 5U);
    ASSERT_EQ(model->rows()->count(), lines_of(facts.events, facts.log));
    std::set<calendar::Date> days;
    for (const auto& event : facts.events) {
        days.insert(event.happened);
    }
    for (const auto& reading : facts.log.readings) {
        days.insert(reading.night);
    }
    for (const auto& forecast : facts.log.forecasts) {
        days.insert(forecast.issued);
    }
    EXPECT_EQ(at(0, "date"), british_look().words.date_with_year(*days.rbegin()));
    EXPECT_EQ(at(model->rows()->count() - 1, "date"), british_look().words.date_with_year(*days.begin()));
    for (int row = 0; row < model->rows()->count(); ++row) {
        EXPECT_FALSE(at(row, "what").isEmpty());
        EXPECT_TRUE(at(row, "sentence").contains(at(row, "who")));
    }
}

TEST_F(HomeJournalModelTest, FindsRowsThatHaveEveryWordInAnyCase)
{
    const int all = model->rows()->count();
    QString who;
    for (int row = 0; row < all && who.isEmpty(); ++row) {
        who = at(row, "who");
    }
    ASSERT_FALSE(who.isEmpty());
    model->setFind(QStringLiteral("  2026 ") + who.toUpper());
    ASSERT_GT(model->rows()->count(), 0);
    EXPECT_LT(model->rows()->count(), all);
    for (int row = 0; row < model->rows()->count(); ++row) {
        EXPECT_TRUE(at(row, "sentence").contains(who)) << at(row, "sentence").toStdString();
    }
    model->setFind("no such words");
    EXPECT_EQ(model->rows()->count(), 0);
    EXPECT_TRUE(model->line().startsWith("None of"));
    model->setFind({});
    EXPECT_EQ(model->rows()->count(), all);
}

TEST_F(HomeJournalModelTest, LogsAtASpotAndShowsItUntilItIsTakenBack)
{
    const int all = model->rows()->count();
    QSignalSpy written(model.get(), &SheetModel::written);
    ASSERT_TRUE(model->log(1, sort(1, "Note"), {}, "the glass was washed", {}));
    wait_for(*model);
    EXPECT_EQ(model->error(), "");
    EXPECT_EQ(written.count(), 1);
    ASSERT_EQ(model->rows()->count(), all + 1);
    EXPECT_EQ(at(0, "who"), model->spots()[1]);
    EXPECT_EQ(at(0, "what"), "Note: the glass was washed");
    ASSERT_TRUE(model->log(0, sort(0, "Treated"), "soap", "underside", "2"));
    wait_for(*model);
    const auto event = household->facts().events.back();
    EXPECT_EQ(event.detail("with"), "soap");
    EXPECT_EQ(event.note, "underside");
    EXPECT_EQ(event.happened, kShownToday - calendar::Days{2});
    EXPECT_FALSE(event.plant);
    ASSERT_TRUE(household->take_back_last());
    ASSERT_TRUE(household->take_back_last());
    model->look();
    wait_for(*model);
    EXPECT_EQ(model->rows()->count(), all);
}

TEST_F(HomeJournalModelTest, EverySortThatMakesSenseAtASpotIsLoggedAsTheCommandLogsIt)
{
    const auto sorts = model->sorts(0);
    EXPECT_EQ(sorts.size(), 18);
    const int spot = static_cast<int>(model->spots().size()) - 1;
    std::set<home::EventKind> kinds;
    for (int of = 0; of < sorts.size(); ++of) {
        const bool pest = sorts[of] == "Pest found";
        EXPECT_EQ(model->choices(spot, of).isEmpty(), !pest) << sorts[of].toStdString();
        EXPECT_EQ(model->isNote(spot, of), of == 0);
        ASSERT_TRUE(model->log(spot, of, pest ? model->choices(spot, of).front() : QString{}, "seen", {})) << sorts[of].toStdString();
        wait_for(*model);
        EXPECT_EQ(model->error(), "") << sorts[of].toStdString();
        const auto event = household->facts().events.back();
        EXPECT_EQ(event.spot, household->facts().as_told.spots.back().id);
        EXPECT_FALSE(event.plant);
        EXPECT_EQ(event.detail("pest").empty(), !pest);
        kinds.insert(event.kind);
    }
    EXPECT_EQ(kinds.size(), 18U);
    using home::EventKind;
    for (const auto kind : {EventKind::Moved, EventKind::Divided, EventKind::Died, EventKind::GivenAway, EventKind::Removed, EventKind::TaskDone}) {
        EXPECT_FALSE(kinds.contains(kind)) << home::to_string(kind) << " is of a plant";
    }
}

TEST_F(HomeJournalModelTest, WhatIsAskedBesideIsKeptByTheNameThatTheProgramReads)
{
    const auto kept = [this](const char* what, const QString& detail, const char* name) {
        EXPECT_TRUE(model->log(0, sort(0, what), detail, {}, {})) << what << model->error().toStdString();
        wait_for(*model);
        return std::string{household->facts().events.back().detail(name)};
    };
    EXPECT_EQ(kept("Fed", "100", "ppm"), "100");
    EXPECT_EQ(kept("Pest found", "red spider mite", "pest"), "Two-spotted spider mite");
    EXPECT_EQ(kept("Pest found", "something grey", "pest"), "something grey");
    EXPECT_EQ(kept("Cold night", "-1.5", "low_c"), "-1.5");
    EXPECT_EQ(kept("Hit by a spray", "glyphosate", "product"), "glyphosate");
    EXPECT_EQ(model->asked(0, sort(0, "Watered")), "");
    EXPECT_FALSE(model->asked(0, sort(0, "Fed")).isEmpty());
    EXPECT_TRUE(model->heed(0, sort(0, "Treated")).startsWith("The label"));
    EXPECT_EQ(model->heed(0, sort(0, "Watered")), "");
    const int home = static_cast<int>(model->places().size()) - 1;
    EXPECT_TRUE(model->heed(0, sort(0, "Pest found")).contains("suspect from then on"));
    EXPECT_TRUE(model->heed(home, sort(home, "Cold night")).contains("stood outdoors that night"));
    EXPECT_TRUE(model->heed(0, sort(0, "Hit by a spray")).contains("stood there that day"));
    EXPECT_TRUE(model->heed(home, sort(home, "Hit by a spray")).contains("stood outdoors that day"));
    const auto refused = [this](const char* what, const QString& detail) {
        EXPECT_FALSE(model->log(0, sort(0, what), detail, {}, {})) << what;
        EXPECT_EQ(model->wrong(), HomeJournalModel::Detail);
        EXPECT_FALSE(model->error().isEmpty());
    };
    const auto before = household->facts().events.size();
    refused("Fed", "much");
    refused("Fed", "2001");
    refused("Pest found", "  ");
    refused("Cold night", "cold");
    EXPECT_EQ(household->facts().events.size(), before);
}

TEST_F(HomeJournalModelTest, LogsWhatConcernsTheWholeHousehold)
{
    const int home = static_cast<int>(model->spots().size());
    ASSERT_EQ(model->places().size(), home + 1);
    EXPECT_EQ(model->sorts(home), (QStringList{"Note", "Cold night", "Hit by a spray"}));
    ASSERT_TRUE(model->log(home, sort(home, "Cold night"), "-3", "all windows iced", {}));
    wait_for(*model);
    const auto event = household->facts().events.back();
    EXPECT_FALSE(event.plant);
    EXPECT_FALSE(event.spot);
    EXPECT_EQ(event.detail("low_c"), "-3.0");
    EXPECT_EQ(at(0, "who"), "");
    EXPECT_TRUE(model->said().startsWith("Kept: The whole household")) << model->said().toStdString();
}

TEST_F(HomeJournalModelTest, RefusesWhatIsNotWhole)
{
    const auto before = household->facts().events.size();
    EXPECT_FALSE(model->log(0, sort(0, "Note"), {}, "  ", {}));
    EXPECT_EQ(model->wrong(), HomeJournalModel::Words);
    EXPECT_FALSE(model->error().isEmpty());
    for (const char* days : {"-1", "3651", "some"}) {
        EXPECT_FALSE(model->log(0, sort(0, "Looked over"), {}, {}, days)) << days;
        EXPECT_EQ(model->wrong(), HomeJournalModel::Days);
    }
    EXPECT_FALSE(model->log(99, 0, {}, {}, {}));
    EXPECT_FALSE(model->log(0, 99, {}, {}, {}));
    EXPECT_FALSE(model->log(-1, -1, {}, {}, {}));
    EXPECT_EQ(household->facts().events.size(), before);
}

TEST_F(HomeJournalModelTest, ReadsAFolderWithPlantsThatAreGone)
{
    const QTemporaryDir folder;
    const auto home = std::filesystem::path{folder.path().toStdString()} / "home";
    auto store = journal::create_demonstration(home, {.today = kShownToday});
    ASSERT_TRUE(store);
    const auto plant = store->load()->plants.front();
    const auto later = calendar::start_of_day_utc(kShownToday + calendar::Days{1});
    const home::Event died{plant.id, home::EventKind::Died, {}, kShownToday, later, "frost", {}};
    ASSERT_TRUE(store->record(std::span{&died, 1}));
    HomeJournalModel of(plants_in_memory(household), home, british_look());
    of.look();
    wait_for(of);
    EXPECT_TRUE(of.rows()->at(0, "what").toString().contains("frost"));
    EXPECT_EQ(of.rows()->at(0, "who").toString(), text(plant.name));
    EXPECT_EQ(of.rows()->at(0, "plant").toInt(), plant.id);
    const auto kept = store->measurements();
    ASSERT_TRUE(kept);
    std::set<std::pair<calendar::Date, home::PlantId>> together;
    for (const auto& one : *kept) {
        together.emplace(one.measured, one.plant);
    }
    ASSERT_GT(together.size(), 5U);
    EXPECT_EQ(of.rows()->count(), lines_of(*store->events(), *store->night_log()) + static_cast<int>(together.size()));
}

TEST_F(HomeJournalModelTest, WhatWasMeasuredOfAPlantOnADayIsOneLine)
{
    const auto plant = household->facts().as_told.plants.front();
    const auto day = kShownToday - calendar::Days{1};
    const auto of = [&](home::MeasurementKind kind, double value, const char* note) {
        home::Measurement one{plant.id, kind, day, {value}, home::usual_method(kind), {}};
        one.note = note;
        return one;
    };
    measured = {of(home::MeasurementKind::Height, 34.0, "to the tip"), of(home::MeasurementKind::Leaves, 12.0, "")};
    open();
    const auto rows = rows_with("Measured");
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(at(rows.front(), "who"), text(plant.name));
    EXPECT_EQ(at(rows.front(), "what"), "Measured: height 34.0 cm (to the tip), leaves 12");
    EXPECT_EQ(at(rows.front(), "sentence"), "15 May 2026, " + text(plant.name) + ": Measured: height 34.0 cm (to the tip), leaves 12.");
    model->setFind("HEIGHT 34.0");
    EXPECT_EQ(model->rows()->count(), 1);
}

TEST_F(HomeJournalModelTest, ThermometersOfANightAreOneLineAmongWhatHappened)
{
    const auto night = kShownToday + calendar::Days{1};
    ASSERT_TRUE(household->change("nights", [&](plan::HouseholdFacts& facts) -> Result<void> {
        const auto read = [&](std::size_t spot, double low, const char* note) {
            facts.log.readings.push_back({facts.as_told.spots[spot].id, night, Celsius::from_degrees(low), {}, {}, {}, {}, note});
        };
        read(0, 12.5, "");
        read(1, 3.0, "by the wall");
        facts.log.forecasts.push_back({night, night, Celsius::from_degrees(4.0), {}, {}, {}});
        facts.log.forecasts.push_back({night, night + calendar::Days{1}, Celsius::from_degrees(5.0), {}, {}, {}});
        return {};
    }));
    model->look();
    wait_for(*model);
    const auto& spots = household->facts().as_told.spots;
    EXPECT_EQ(at(0, "date"), "17 May 2026");
    const auto lows = rows_with("Lowest of the night: " + text(spots[0].name));
    ASSERT_EQ(lows.size(), 1U);
    EXPECT_EQ(at(lows.front(), "who"), "");
    EXPECT_EQ(at(lows.front(), "what"), "Lowest of the night: " + text(spots[0].name) + " 12.5\u202f°C, " + text(spots[1].name) +
                                            " 3.0\u202f°C (by the wall)");
    const auto kept = rows_with("Forecast kept: night to Sun 17 May 4.0\u202f°C, night to Mon 18 May 5.0\u202f°C");
    EXPECT_EQ(kept.size(), 1U);
    // One alone stands under its spot.
    const auto alone = rows_with("Lowest of the night: ");
    EXPECT_TRUE(std::ranges::any_of(alone, [&](int row) { return !at(row, "who").isEmpty(); }));
}

TEST_F(HomeJournalModelTest, WhatWasEnteredLaterOnADayStandsAboveWhateverItIs)
{
    const auto day = kShownToday + calendar::Days{2};
    const auto at_hour = [&](int hour) { return calendar::start_of_day_utc(day) + std::chrono::hours{hour}; };
    ASSERT_TRUE(household->change("a day", [&](plan::HouseholdFacts& facts) -> Result<void> {
        const auto plant = facts.as_told.plants.front().id;
        facts.events.push_back({plant, home::EventKind::Watered, {}, day, at_hour(8), "", {}});
        facts.events.push_back({plant, home::EventKind::Pruned, {}, day, at_hour(12), "", {}});
        facts.log.readings.push_back({facts.as_told.spots[0].id, day, Celsius::from_degrees(9.0), {}, {}, {}, at_hour(10), ""});
        return {};
    }));
    model->look();
    wait_for(*model);
    EXPECT_EQ(at(0, "what"), "Pruned");
    EXPECT_TRUE(at(1, "what").startsWith("Lowest of the night"));
    EXPECT_EQ(at(2, "what"), "Watered");
}

TEST_F(HomeJournalModelTest, TicksOfTheRoundNameTheirTaskAndSeedsTheirLot)
{
    ASSERT_FALSE(household->facts().seeds.lots.empty());
    const auto lot = household->facts().seeds.lots.front();
    ASSERT_TRUE(household->change("ticks", [&](plan::HouseholdFacts& facts) -> Result<void> {
        const auto day = kShownToday + calendar::Days{3};
        facts.events.push_back({facts.as_told.plants.front().id, home::EventKind::TaskSkipped, {}, day, {}, "still wet", {{"task", "water/1/2026-05-19"}}});
        facts.events.push_back({{}, home::EventKind::TaskDone, {}, day, {}, "", {{"task", "seeds/" + std::to_string(lot.id) + "/0l"}}});
        return {};
    }));
    model->look();
    wait_for(*model);
    EXPECT_EQ(at(0, "who"), text(lot.name));
    EXPECT_EQ(at(0, "what"), "Ticked in the round: sow indoors");
    EXPECT_EQ(at(1, "who"), text(household->facts().as_told.plants.front().name));
    EXPECT_EQ(at(1, "what"), "Left out in the round: feel whether the mix is dry (still wet)");
}

TEST_F(HomeJournalModelTest, TellsWhyItCannotBeRead)
{
    HomeJournalModel of(no_plants(Error{ErrorCode::NotFound, "the folder is gone"}), std::nullopt, british_look());
    of.look();
    wait_for(of);
    EXPECT_FALSE(of.known());
    EXPECT_FALSE(of.error().isEmpty());
    EXPECT_EQ(of.line(), "");
}

TEST_F(HomeJournalModelTest, IsLookedThroughAtOnceWithTwentyThousandLines)
{
    ASSERT_TRUE(household->change("many", [](plan::HouseholdFacts& facts) -> Result<void> {
        const auto plant = facts.as_told.plants.front().id;
        for (int day = 0; day < 20'000; ++day) {
            facts.events.push_back({plant, home::EventKind::Watered, {}, kShownToday - calendar::Days{day % 4000}, {}, "", {}});
        }
        return {};
    }));
    model->look();
    wait_for(*model);
    ASSERT_GT(model->rows()->count(), 20'000);
    QElapsedTimer time;
    time.start();
    model->setFind("watered 2020");
    EXPECT_LT(time.elapsed(), 1000) << "of an unoptimized build";
    EXPECT_GT(model->rows()->count(), 100);
    RecordProperty("find_ms", static_cast<int>(time.elapsed()));
}

TEST_F(HomeJournalModelTest, TheWindowGoesOnWithTwoHundredThousandMeasurements)
{
    const auto plants = household->facts().as_told.plants;
    for (int number = 0; number < 200'000; ++number) {
        measured.push_back({plants[static_cast<std::size_t>(number) % plants.size()].id, home::MeasurementKind::Height,
                            kShownToday - calendar::Days{number / static_cast<int>(plants.size())}, {20.0 + number % 30},
                            home::MeasurementMethod::Ruler, {}});
    }
    double longest = 0.0;
    double last = thread_milliseconds();
    QTimer often; // How long the window would have stood still, by what its thread has computed in between.
    QObject::connect(&often, &QTimer::timeout, [&] {
        longest = std::max(longest, thread_milliseconds() - last);
        last = thread_milliseconds();
    });
    model = std::make_unique<HomeJournalModel>(plants_in_memory(household, measured), std::nullopt, british_look());
    last = thread_milliseconds();
    often.start(0);
    model->look();
    wait_for(*model);
    QTest::qWait(20);
    ASSERT_GT(model->rows()->count(), 200'000);
    EXPECT_LT(longest, 100.0) << "to take over what a thread has read";
    RecordProperty("longest_ms", std::to_string(longest));
    const double begun = thread_milliseconds();
    model->setFind("height 2020");
    const double found = thread_milliseconds() - begun;
    EXPECT_GT(model->rows()->count(), 100);
    EXPECT_LT(found, 100.0) << "of a key in the field";
    RecordProperty("find_ms", std::to_string(found));
    std::printf("longest %.1f ms, find %.1f ms\n", longest, found);
}

} // namespace
} // namespace lathhouse::models
