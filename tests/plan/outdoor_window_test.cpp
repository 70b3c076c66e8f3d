// The dates of the plan are those that the place's counted dates give.

#include "core/climate/station_rows.h"
#include "core/home/demonstration.h"
#include "core/plan/year_plan.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace lathhouse::plan {
namespace {

/// A town between stations with daily records.
climate::PlaceClimate between_stations()
{
    static const auto stations =
        climate::read_station_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/stations.csv")
            .value();
    return climate::climate_among(std::span{stations},
                                  Position{Latitude::literal(41.3), Longitude::literal(-92.1)},
                                  Metres::from_metres(230.0))
        .value();
}

struct WindowLine {
    const char* name;
    double degrees;
};
void PrintTo(const WindowLine& row, std::ostream* out)
{
    *out << row.name;
}
class OutdoorWindows : public testing::TestWithParam<WindowLine> {};

TEST_P(OutdoorWindows, AreThoseOfThePlacesDates)
{
    const auto climate = between_stations();
    const auto nights = climate::PlaceNights::of(climate);
    const auto line = Celsius::from_degrees(GetParam().degrees);
    ASSERT_EQ(nights.dates_from(line), climate::DatesFrom::Neighbours);
    const ColdChances chances{nights};
    const auto household = home::demonstration({.today = calendar::Date(2027, 1, 10)}).value().household;
    auto plant = household.plants.front();
    plant.lines = {line, line, Celsius::from_degrees(-40.0)};
    auto spot = household.spots.back();
    spot.offset = {};
    for (const double percent : {10.0, 50.0}) {
        const auto window = outdoor_window(plant, spot, chances, Probability::clamped(percent / 100.0));
        ASSERT_EQ(window.state, OutdoorWindow::State::Ordinary);
        const auto dates = nights.dates(line);
        // The first evening out is the date after which such a night is no likelier; the last night out is
        // the one before the date by which it is.
        EXPECT_EQ(window.out, dates.last.dates.at(percent)) << percent;
        EXPECT_EQ(calendar::DayOfYear::wrapped(window.in->place() + 1), dates.first.dates.at(percent))
            << percent;
    }
}

INSTANTIATE_TEST_SUITE_P(Lines, OutdoorWindows,
                         testing::Values(WindowLine{"Frost", 0.0}, WindowLine{"Cool", 2.2},
                                         WindowLine{"Between", 3.4}, WindowLine{"Mild", 7.0}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(OutdoorWindows, MoveWithTheCountsOfNeighbours)
{
    const auto climate = between_stations();
    const ColdChances moved{climate::PlaceNights::of(climate)};
    const ColdChances model{climate.nights()};
    const auto line = Celsius::from_degrees(-5.0);
    const auto day = moved.nights().turn().day_at(75);
    EXPECT_NE(moved.season(line, {}).on_or_before(day), model.season(line, {}).on_or_before(day));
}

} // namespace
} // namespace lathhouse::plan
