#include "app/chart/axis.h"
#include "app/chart/year_painter.h"

#include <gtest/gtest.h>

namespace lathhouse::chart {
namespace {

TEST(Axis, StandsOnRoundNumbersAroundWhatItShows)
{
    const Axis axis(0.3, 9.1, 6);
    EXPECT_EQ(axis.step(), 2.0);
    EXPECT_EQ(axis.bottom(), 0.0);
    EXPECT_EQ(axis.top(), 10.0);
}

TEST(Axis, OfWhatIsCountedHasNoHalves)
{
    EXPECT_EQ(Axis(5.0, 7.0, 6).step(), 0.5);
    const Axis counts(5.2, 6.9, 6, 1.0);
    EXPECT_EQ(counts.step(), 1.0);
    EXPECT_EQ(counts.bottom(), 5.0);
    EXPECT_EQ(counts.top(), 7.0);
    EXPECT_EQ(Axis(0.0, 60.0, 6, 1.0).step(), 10.0);
}

TEST(MonthHead, OfJanuaryHasTheYearWhereItFits)
{
    const models::YearWords words(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto letters = [](const QString& of) { return static_cast<qreal>(of.size()); };
    EXPECT_EQ(month_head(words, calendar::Date{2027, 1, 4}, 6.0, letters), "Jan 27");
    EXPECT_EQ(month_head(words, calendar::Date{2027, 1, 4}, 5.0, letters), "Jan");
    EXPECT_EQ(month_head(words, calendar::Date{2027, 1, 4}, 2.0, letters), "");
    EXPECT_EQ(month_head(words, calendar::Date{2027, 2, 1}, 20.0, letters), "Feb");
}

} // namespace
} // namespace lathhouse::chart
