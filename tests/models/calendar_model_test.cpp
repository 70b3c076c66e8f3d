#include "app/cli/round_calendar.h"
#include "app/models/calendar_model.h"
#include "tests/models/page_fixtures.h"

#include <QFile>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

CalendarDoor calendar_of(plan::HouseholdFacts facts)
{
    return [facts = std::move(facts)](const std::filesystem::path& file, words::UnitSystem units, int days, std::optional<int> alarm) {
        return cli::write_round_calendar(facts, kShownToday, calendar::start_of_day_utc(kShownToday), days, alarm, units, file);
    };
}

TEST(CalendarModel, WritesTheTasksAndAsksBeforeItReplacesAFile)
{
    const QTemporaryDir folder;
    CalendarModel model(calendar_of(plain_facts()), british_look());
    model.setDays("60");
    model.write("  ");
    EXPECT_TRUE(model.error().contains("which file")) << model.error().toStdString();
    model.write(folder.filePath("tasks"));
    wait_for(model);
    EXPECT_TRUE(model.error().isEmpty()) << model.error().toStdString();
    EXPECT_TRUE(model.said().contains("tasks.ics")) << model.said().toStdString();
    QFile file(folder.filePath("tasks.ics"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR"));
    EXPECT_TRUE(text.contains("BEGIN:VEVENT"));
    EXPECT_FALSE(text.contains("GEO:")); // Where the home is stands nowhere in it.
    model.write(folder.filePath("tasks.ics"));
    EXPECT_TRUE(model.fileIsThere());
    EXPECT_TRUE(model.error().contains("there already"));
    EXPECT_TRUE(model.said().isEmpty());
    model.write(folder.filePath("tasks.ics"), true);
    wait_for(model);
    EXPECT_FALSE(model.fileIsThere());
    EXPECT_TRUE(model.said().contains("tasks.ics"));
}

TEST(CalendarModel, AnAlarmSoundsSoManyHoursBeforeTheDay)
{
    const QTemporaryDir folder;
    CalendarModel model(calendar_of(plain_facts()), british_look());
    model.setDays("60");
    const auto written = [&](int alarm) {
        model.setAlarm(alarm);
        model.write(folder.filePath("tasks.ics"), true);
        wait_for(model);
        QFile file(folder.filePath("tasks.ics"));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    EXPECT_FALSE(written(-1).contains("VALARM"));
    EXPECT_TRUE(written(6).contains("TRIGGER:-PT6H"));
    model.setAlarm(73);
    EXPECT_EQ(model.alarm(), 6);
    EXPECT_FALSE(written(-1).contains("VALARM"));
}

TEST(CalendarModel, AnAlarmThatWouldHaveSoundedByNowIsLeftOut)
{
    const QTemporaryDir folder;
    const auto file = folder.filePath("tasks.ics");
    auto facts = plain_facts();
    facts.as_told.place.time_zone = "Europe/Vienna"; // Two hours before UTC in May.
    const auto alarms_at = [&](int utc_hour) {
        const auto at = calendar::start_of_day_utc(kShownToday) + std::chrono::hours{utc_hour};
        EXPECT_TRUE(cli::write_round_calendar(facts, kShownToday, at, 60, 6, words::UnitSystem::Metric, file.toStdString()));
        QFile written(file);
        EXPECT_TRUE(written.open(QIODevice::ReadOnly));
        const auto text = written.readAll();
        EXPECT_TRUE(text.contains("DTSTART;VALUE=DATE:20260517")) << "nothing begins tomorrow";
        return text.count("BEGIN:VALARM");
    };
    const auto all = alarms_at(15);
    EXPECT_EQ(alarms_at(16), all - 1); // Six in the evening there.
    facts.as_told.place.time_zone = "no such zone";
    EXPECT_EQ(alarms_at(1), all - 1);
}

TEST(CalendarModel, HoldsSoManyDaysAsAreAskedFor)
{
    const QTemporaryDir folder;
    int asked = 0;
    CalendarModel model(
        [&asked](const std::filesystem::path&, words::UnitSystem, int days, std::optional<int>) -> Result<std::size_t> {
            asked = days;
            return std::size_t{1};
        },
        british_look());
    const auto days_of = [&](const QString& typed) {
        asked = 0;
        model.setDays(typed);
        model.write(folder.filePath("tasks"));
        wait_for(model);
        return asked;
    };
    EXPECT_EQ(days_of(""), 365);
    EXPECT_EQ(days_of(" 14 "), 14);
    EXPECT_EQ(days_of("730"), 730);
    EXPECT_FALSE(model.daysWrong());
    for (const auto* wrong : {"0", "731", "2.5", "-3", "a month"}) {
        EXPECT_EQ(days_of(wrong), 0) << wrong;
        EXPECT_TRUE(model.daysWrong()) << wrong;
        EXPECT_TRUE(model.error().contains("1 to 730")) << model.error().toStdString();
    }
    model.setDays("30");
    EXPECT_FALSE(model.daysWrong());
    EXPECT_EQ(days_of("30"), 30);
    EXPECT_TRUE(model.error().isEmpty());
}

TEST(CalendarModel, AShorterSpellHoldsFewerTasks)
{
    const QTemporaryDir folder;
    CalendarModel model(calendar_of(plain_facts()), british_look());
    const auto events = [&](const QString& days) {
        model.setDays(days);
        model.write(folder.filePath("tasks.ics"), true);
        wait_for(model);
        QFile file(folder.filePath("tasks.ics"));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll().count("BEGIN:VEVENT");
    };
    const auto month = events("30");
    EXPECT_GT(month, 0);
    EXPECT_GT(events("60"), month);
}

TEST(CalendarModel, AFolderThatCannotBeWrittenIsASentence)
{
    CalendarModel model(calendar_of(plain_facts()), british_look());
    model.write("/no/such/folder/tasks.ics");
    wait_for(model);
    EXPECT_FALSE(model.error().isEmpty());
    EXPECT_TRUE(model.said().isEmpty());
}

} // namespace
} // namespace lathhouse::models
