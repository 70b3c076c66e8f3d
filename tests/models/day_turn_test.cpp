#include "app/models/day_turn.h"

#include "app/models/year_words.h"

#include <QSignalSpy>
#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

TodayLook of_the_sixteenth()
{
    return {calendar::Date{2026, 5, 16}, YearWords(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)), {}};
}

TEST(DayTurn, SaysThatTheDayIsOverAndBeginsTheNewOne)
{
    QDate now(2026, 5, 16);
    bool starts = false;
    int asked = 0;
    DayTurn day(of_the_sixteenth(),
                [&] {
                    ++asked;
                    return starts;
                },
                [&now] { return now; });
    QSignalSpy turned(&day, &DayTurn::turned);
    QSignalSpy begun(&day, &DayTurn::begun);
    day.look();
    EXPECT_EQ(day.words(), QString{});
    now = QDate(2026, 5, 17);
    day.look();
    day.look();
    EXPECT_EQ(turned.count(), 1) << "said once";
    EXPECT_EQ(day.words(), "It is Sunday 17 May now; these pages are of Saturday 16 May.");
    day.begin();
    EXPECT_EQ(begun.count(), 0);
    EXPECT_TRUE(day.error().contains("start the program again")) << day.error().toStdString();
    starts = true;
    day.begin();
    EXPECT_EQ(begun.count(), 1);
    EXPECT_EQ(asked, 2);
}

TEST(DayTurn, AClockThatIsSetBackSaysNothing)
{
    QDate now(2026, 5, 16);
    DayTurn day(of_the_sixteenth(), [] { return true; }, [&now] { return now; });
    now = QDate(2026, 5, 15);
    day.look();
    EXPECT_EQ(day.words(), QString{});
}

} // namespace
} // namespace lathhouse::models
