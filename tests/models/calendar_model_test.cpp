#include "app/cli/round_calendar.h"
#include "app/models/calendar_model.h"
#include "tests/models/page_fixtures.h"

#include <QFile>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

CalendarDoor calendar_of(plan::HouseholdFacts facts)
{
    return [facts = std::move(facts)](const std::filesystem::path& file, words::UnitSystem units, std::optional<int> alarm) {
        constexpr int kDays = 60;
        return cli::write_round_calendar(facts, kShownToday, kDays, alarm, units, file);
    };
}

TEST(CalendarModel, WritesTheTasksAndAsksBeforeItReplacesAFile)
{
    const QTemporaryDir folder;
    CalendarModel model(calendar_of(plain_facts()), british_look());
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
