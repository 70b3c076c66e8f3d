#include "core/plan/tray_progress.h"

#include "tests/plan/invented_climate.h"

#include <gtest/gtest.h>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const plants::SeedKind& tomato()
{
    return **plants::SeedReference::built_in().find("tomato");
}

constexpr Celsius kRoom = Celsius::from_degrees(20.0);

home::SeedBook book(std::vector<home::Tray> trays = {}, std::vector<home::TrayCount> counts = {})
{
    home::SeedBook made;
    made.lots = {{1, "Balcony", "Solanum lycopersicum", {}, 90.0, 60, {}}};
    made.trays = std::move(trays);
    made.counts = std::move(counts);
    return made;
}

home::Tray tray(Date sown, std::optional<Celsius> mix = {})
{
    return {1, 1, sown, 20, {}, mix, {}};
}

TrayProgress progress(const home::SeedBook& of, Date today)
{
    return progress_of(of.trays.front(), of, tomato(), home::lot_rate(of.lots.front(), of, tomato()).rate, kRoom, today);
}

SowingPlan plan_on(Date date)
{
    const auto place = place_of(kInland);
    const SowingClimate climate{place, date};
    return plan_sowing(tomato(), place, climate, {});
}

std::vector<SowingTask> due(const home::SeedBook& of, Date date)
{
    return due_on(date, of.lots.front(), of, plan_on(date), kRoom);
}

bool has(const std::vector<SowingTask>& tasks, SowingTaskKind kind)
{
    return std::ranges::any_of(tasks, [&](const SowingTask& task) { return task.kind == kind; });
}

TEST(TrayProgress, ExpectsHalfOfTheLotsShareByTheMiddleDay)
{
    const auto of = progress(book({tray(Date{2027, 3, 1})}), Date{2027, 3, 9}); // Eight days at 20 C.
    EXPECT_NEAR(of.expected_by_now, 20 * 0.9 / 2, 1e-9);
    EXPECT_FALSE(of.counted);
    EXPECT_FALSE(of.behind);
}

TEST(TrayProgress, AColdTrayIsNotExpectedAtAll)
{
    const auto of = progress(book({tray(Date{2027, 3, 1}, Celsius::from_degrees(4.0))}), Date{2027, 4, 9});
    EXPECT_FALSE(of.expected_on);
    EXPECT_EQ(of.expected_by_now, 0.0);
}

TEST(TrayProgress, FewLateAreBehindAndFewEarlyAreNot)
{
    const auto counted = [](Date on, int emerged) {
        return progress(book({tray(Date{2027, 3, 1})}, {{1, on, emerged, false}}), on).behind;
    };
    EXPECT_FALSE(counted(Date{2027, 3, 6}, 0));
    EXPECT_TRUE(counted(Date{2027, 3, 20}, 3));
    EXPECT_FALSE(counted(Date{2027, 3, 20}, 18));
}

TEST(SowingTasks, AskForTheSowingOnlyInItsTime)
{
    const auto season = *plan_on(Date{2027, 1, 10}).season;
    EXPECT_FALSE(has(due(book(), season.sow_indoors->from - Days{1}), SowingTaskKind::SowIndoors));
    const auto tasks = due(book(), season.sow_indoors->from);
    ASSERT_TRUE(has(tasks, SowingTaskKind::SowIndoors));
    EXPECT_GT(tasks.front().wait_until, tasks.front().from);
    EXPECT_GT(tasks.front().minutes, 0);
    // Once it is sown it is not asked for again.
    EXPECT_FALSE(has(due(book({tray(season.sow_indoors->from)}), season.sow_indoors->from + Days{3}),
                     SowingTaskKind::SowIndoors));
}

TEST(SowingTasks, SayWhenItIsTheLastUsefulDay)
{
    const auto season = *plan_on(Date{2027, 1, 10}).season;
    const auto last = season.sow_indoors->to;
    const auto of = book();
    const auto place = place_of(kInland);
    const SowingOutlook outlook{Date{2027, 1, 10}, of, place, SowingWishes{}.risk};
    const auto sowing_on = [&](Date date) {
        const auto tasks = outlook.due(date);
        return *std::ranges::find(tasks, SowingTaskKind::SowIndoors, &SowingTask::kind);
    };
    EXPECT_FALSE(sowing_on(last - Days{1}).last_day);
    EXPECT_TRUE(sowing_on(last).last_day);
}

TEST(SowingTasks, AskToCountPotUpHardenAndPlantOutInTurn)
{
    const auto season = *plan_on(Date{2027, 1, 10}).season;
    const auto sown = season.sow_indoors->from;
    EXPECT_FALSE(has(due(book({tray(sown)}), sown + Days{3}), SowingTaskKind::CountTray));
    EXPECT_TRUE(has(due(book({tray(sown)}), sown + Days{8}), SowingTaskKind::CountTray));
    const auto counted = book({tray(sown)}, {{1, sown + Days{12}, 15, true}});
    EXPECT_FALSE(has(due(counted, sown + Days{13}), SowingTaskKind::CountTray));
    EXPECT_TRUE(has(due(counted, sown + Days{13}), SowingTaskKind::PotUp));
    auto potted = counted;
    potted.potted = {{1, {101, 102}}};
    EXPECT_FALSE(has(due(potted, sown + Days{13}), SowingTaskKind::PotUp));
    EXPECT_TRUE(has(due(potted, season.plant_out->from - Days{5}), SowingTaskKind::Harden));
    EXPECT_TRUE(has(due(potted, season.plant_out->from + Days{1}), SowingTaskKind::PlantOut));
}

TEST(SowingTasks, OfAHouseholdAreThoseOfItsLotsByName)
{
    const auto season = *plan_on(Date{2027, 1, 10}).season;
    auto of = book();
    of.lots.push_back({2, "Unknown", "Planta exemplaris", {}, {}, 10, {}});
    const auto place = place_of(kInland);
    const auto date = season.sow_indoors->from;
    const auto tasks = SowingOutlook{date, of, place, SowingWishes{}.risk}.due(date);
    ASSERT_FALSE(tasks.empty());
    for (const auto& task : tasks) {
        EXPECT_EQ(task.lot, 1);
        EXPECT_EQ(task.name, "Balcony");
    }
    EXPECT_EQ(has(tasks, SowingTaskKind::SowIndoors), has(due(of, date), SowingTaskKind::SowIndoors));
    EXPECT_TRUE((SowingOutlook{date, {}, place, SowingWishes{}.risk}.due(date)).empty());
    // Seen from January the sowing stands on its first day, and is gone once its days are over.
    const SowingOutlook from_january{Date{2027, 1, 10}, of, place, SowingWishes{}.risk};
    EXPECT_FALSE(has(from_january.due(date - Days{1}), SowingTaskKind::SowIndoors));
    EXPECT_TRUE(has(from_january.due(date), SowingTaskKind::SowIndoors));
    EXPECT_FALSE(has(from_january.due(season.sow_indoors->to + Days{1}), SowingTaskKind::SowIndoors));
}

TEST(SowingTasks, AnEmptyLotIsNotSown)
{
    const auto season = *plan_on(Date{2027, 1, 10}).season;
    auto empty = book({{1, 1, Date{2026, 3, 1}, 60, {}, {}, {}}}, {{1, Date{2026, 4, 1}, 50, true}});
    empty.potted = {{1, {5}}};
    EXPECT_FALSE(has(due(empty, season.sow_indoors->from), SowingTaskKind::SowIndoors));
}

} // namespace
} // namespace lathhouse::plan
