#include "core/base/csv.h"
#include "core/climate/leave_one_out.h"
#include "core/climate/leave_out_dates.h"
#include "core/climate/low_trend.h"
#include "core/climate/neighbour_dates.h"
#include "core/climate/rain_checks.h"
#include "core/climate/station_rows.h"
#include "tests/climate/sample_figures.h"
#include "tests/climate/position_at.h"
#include "tests/climate/shipped_stations.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <filesystem>

namespace lathhouse::climate {
namespace {

/// Measured once for all tests: it takes seconds.
const LeaveOneOut& left_out(StationSource source)
{
    static const LeaveOneOut us = leave_one_out(shipped(), StationSource::UsDaily).value();
    static const LeaveOneOut world = leave_one_out(shipped(), StationSource::WorldMonthly).value();
    return source == StationSource::UsDaily ? us : world;
}

/// An invented station with the inland sample's figures.
Station made(const char* id, Position position, double metres, double rain_mm = 50.0)
{
    MonthlyFigures figures = inland_figures();
    figures.mean_spread = figures.low_spread;
    Monthly<std::optional<Millimetres>> rain{};
    rain.fill(Millimetres::from_millimetres(rain_mm));
    return {id,
            id,
            "",
            position,
            Metres::from_metres(metres),
            {2003, 2021},
            StationSource::WorldMonthly,
            figures,
            rain,
            std::nullopt,
            {}};
}

struct Judged {
    const char* name;
    StationSource source;
    double bar; ///< Of all stations, the project's.
};
void PrintTo(const Judged& row, std::ostream* out)
{
    *out << row.name;
}
class LeaveOneOutHalves : public testing::TestWithParam<Judged> {};

TEST_P(LeaveOneOutHalves, ErrByLessThanTheBar)
{
    // The covariance was fitted on the even places of the source's rows and is judged on the odd ones.
    const auto& result = left_out(GetParam().source);
    double sums[2] = {0.0, 0.0};
    int counts[2] = {0, 0};
    std::size_t row = 0;
    std::size_t next = 0;
    for (const Station& station : shipped()) {
        if (station.source != GetParam().source) {
            continue;
        }
        if (next < result.stations.size() && result.stations[next].station == &station) {
            sums[row % 2] += result.stations[next].low_error.kelvins();
            ++counts[row % 2];
            ++next;
        }
        ++row;
    }
    ASSERT_EQ(next, result.stations.size());
    std::printf("leave one out, %s: fitted half %.3f, judged half %.3f, all %.3f K\n", GetParam().name,
                sums[0] / counts[0], sums[1] / counts[1], result.low_error.kelvins());
    EXPECT_LE(result.low_error.kelvins(), GetParam().bar);
    EXPECT_LE(sums[1] / counts[1], GetParam().bar);
}

TEST_P(LeaveOneOutHalves, SayTheirErrorTruly)
{
    // Stations not fitted on (the fit took the even rows of the file of errors), in five groups by what is
    // said of the error: it is what happens, within 15 %, and nine in ten stay within twice of it.
    std::vector<const StationLeftOut*> judged;
    const auto& result = left_out(GetParam().source);
    for (std::size_t i = 1; i < result.stations.size(); i += 2) {
        judged.push_back(&result.stations[i]);
    }
    std::ranges::sort(judged, {}, [](const auto* s) { return s->expected; });
    int within = 0;
    int within_twice = 0;
    for (std::size_t group = 0; group < 5; ++group) {
        double said = 0.0;
        double happened = 0.0;
        for (std::size_t i = group * judged.size() / 5; i < (group + 1) * judged.size() / 5; ++i) {
            said += judged[i]->expected.kelvins();
            happened += judged[i]->low_error.kelvins();
            within += judged[i]->low_error <= judged[i]->expected ? 1 : 0;
            within_twice += judged[i]->low_error.kelvins() <= 2.0 * judged[i]->expected.kelvins() ? 1 : 0;
        }
        EXPECT_NEAR(happened / said, 1.0, 0.15) << "group " << group;
    }
    const auto count = static_cast<double>(judged.size());
    std::printf("%s: %.3f within what is said, %.3f within twice that\n", GetParam().name, within / count,
                within_twice / count);
    EXPECT_NEAR(within / count, 0.62, 0.06);
    EXPECT_NEAR(within_twice / count, 0.91, 0.03);
}

INSTANTIATE_TEST_SUITE_P(Sources, LeaveOneOutHalves,
                         testing::Values(Judged{"UnitedStates", StationSource::UsDaily, 0.85},
                                         Judged{"World", StationSource::WorldMonthly, 1.15}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(LeaveOneOut, FileHasARowForEachStation)
{
    const auto& result = left_out(StationSource::UsDaily);
    const auto table = CsvTable::parse(leave_one_out_text(result), "errors").value();
    ASSERT_EQ(table.row_count(), result.stations.size());
    const auto column = table.require_column("low_mae_c").value();
    double sum = 0.0;
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        sum += table.number(row, column).value().value();
    }
    EXPECT_NEAR(sum / result.count, result.low_error.kelvins(), 0.001);
}

TEST(BasePeriods, AreTooFarApartToBlend)
{
    const auto offset = base_offset(shipped(), StationSource::WorldMonthly, StationSource::UsDaily);
    ASSERT_TRUE(offset) << offset.error().message;
    std::printf("2003-2021 reports less 1991-2018 daily records: %.2f K, scatter %.2f K, %d stations\n",
                offset->mean.kelvins(), offset->scatter.kelvins(), offset->count);
    EXPECT_GT(offset->count, 100);
    EXPECT_GT(offset->mean.kelvins(), 0.5);
}

TEST(BasePeriods, AreNotComparedByTooFewStations)
{
    const auto refused = base_offset(std::span{shipped()}.first(5), StationSource::WorldMonthly, StationSource::UsDaily);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NoStation);
}

// --- Dates carried from neighbours.

TEST(CarriedDates, AreNotMeasuredWithoutNeighbours)
{
    const auto refused = leave_out_dates(std::span{shipped()}.first(1), Celsius::from_degrees(0.0));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NoStation);
}

TEST(CarriedDates, BeatTheModelAtStationsLeftOut)
{
    const auto result = leave_out_dates(shipped(), Celsius::from_degrees(0.0), 9, 1);
    ASSERT_TRUE(result) << result.error().message;
    double from_model = 0.0;
    double carried_error = 0.0;
    for (const auto* ends : {&result->last, &result->first}) {
        for (const auto& [percent, errors] : *ends) {
            std::printf("%s %g %%: model %.2f, carried %.2f (%+.2f) days, %d stations\n",
                        ends == &result->last ? "last" : "first", percent, errors.from_model, errors.carried,
                        errors.carried_bias, errors.count);
            from_model += errors.from_model / 6.0;
            carried_error += errors.carried / 6.0;
        }
    }
    EXPECT_LT(carried_error, from_model);
    const double middle = 0.5 * (result->last.at(50.0).carried + result->first.at(50.0).carried);
    EXPECT_NEAR(result->expected_carried / middle, 1.0, 0.25);
}

TEST(CarriedDates, FarStationsCarryNone)
{
    Station neighbour = made("A", at(45, 16), 200);
    neighbour.dates = {NightModel::from_monthly(neighbour.monthly, neighbour.position.latitude)
                           .dates(Celsius::from_degrees(0.0))};
    const std::vector<Station> stations{neighbour};
    const auto place = climate_among(stations, at(45, 11), Metres::from_metres(200)).value();
    EXPECT_FALSE(residuals_around(place, Celsius::from_degrees(0.0)).has_value());
}

// --- Places where no station can speak.

struct FarPlace {
    const char* name;
    double latitude, longitude, metres;
};
void PrintTo(const FarPlace& row, std::ostream* out)
{
    *out << row.name;
}
class FarPlaces : public testing::TestWithParam<FarPlace> {};

TEST_P(FarPlaces, AreAnsweredWithAWarningOrNotAtAll)
{
    const auto& row = GetParam();
    const auto place =
        climate_among(shipped(), at(row.latitude, row.longitude), Metres::from_metres(row.metres));
    if (!place) {
        EXPECT_EQ(place.error().code, ErrorCode::NoStation);
        return;
    }
    EXPECT_THAT(place->warnings, testing::Not(testing::IsEmpty()));
    EXPECT_GT(place->expected_error.kelvins(), 1.3);
}

INSTANTIATE_TEST_SUITE_P(Everywhere, FarPlaces,
                         testing::Values(FarPlace{"SouthPacific", -48.0, -125.0, 0.0},
                                         FarPlace{"NorthAtlantic", 47.0, -38.0, 0.0},
                                         FarPlace{"IndianOcean", -30.0, 85.0, 0.0},
                                         FarPlace{"AntarcticPlateau", -80.0, 77.0, 4000.0},
                                         FarPlace{"AntarcticCoast", -75.0, -110.0, 50.0},
                                         FarPlace{"Everest", 27.988, 86.925, 8849.0},
                                         FarPlace{"Aconcagua", -32.653, -70.011, 6961.0},
                                         FarPlace{"MontBlanc", 45.833, 6.865, 4806.0}),
                         [](const auto& row) { return std::string{row.param.name}; });

// --- Trend and rain.

TEST(LeastSquares, GivesTheCertifiedSlope)
{
    // NIST Statistical Reference Datasets, Norris (public domain): certified values.
    const auto table =
        CsvTable::read(std::filesystem::path{LATHHOUSE_TEST_DATA} / "climate/nist_norris.csv").value();
    std::vector<std::pair<double, double>> points;
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        points.emplace_back(table.number(row, 1).value().value(), table.number(row, 0).value().value());
    }
    ASSERT_EQ(points.size(), 36U);
    const auto slope = least_squares_slope(points);
    ASSERT_TRUE(slope.has_value());
    EXPECT_NEAR(slope->slope, 1.00211681802045, 1e-12);
    EXPECT_NEAR(slope->standard_error, 0.429796848199937e-3, 1e-13);
}

TEST(LowTrend, NeedsFifteenYears)
{
    std::vector<std::pair<double, double>> years;
    for (int year = 2000; year < 2014; ++year) {
        years.emplace_back(year, 5.0 + 0.03 * (year - 2000));
    }
    EXPECT_FALSE(low_trend(years).has_value());
    years.emplace_back(2014, 5.42);
    EXPECT_NEAR(low_trend(years)->kelvins_per_decade, 0.3, 1e-9);
}

TEST(ShippedStations, MostDailyRecordsHaveATrendAndItIsWarming)
{
    int with = 0;
    int daily = 0;
    double sum = 0.0;
    for (const Station& station : shipped()) {
        daily += station.source == StationSource::UsDaily ? 1 : 0;
        if (station.trend) {
            ++with;
            sum += station.trend->kelvins_per_decade;
        }
    }
    EXPECT_GT(with, daily / 2);
    EXPECT_GT(sum / with, 0.0);
    EXPECT_LT(sum / with, 0.6);
}

std::vector<Station> made_row(std::size_t count)
{
    static constexpr std::array kIds{"A", "B", "C", "D", "E", "F", "G"};
    std::vector<Station> stations;
    for (std::size_t k = 0; k < count; ++k) {
        stations.push_back(made(kIds[k], at(50.0, 100.0 + static_cast<double>(k)), 100.0));
    }
    return stations;
}

TEST(RainChecks, OneWildMonthIsFoundAndTheOthersStay)
{
    auto stations = made_row(6);
    stations[2].rain[0] = Millimetres::from_millimetres(606.0);
    const auto faults = rain_faults(stations);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].station, 2U);
    EXPECT_TRUE(faults[0].months[0]);
    EXPECT_FALSE(faults[0].months[1]);
    EXPECT_THAT(faults[0].reason, testing::HasSubstr("month 1 has 606 mm"));
}

TEST(RainChecks, AWetHillIsNoFault)
{
    auto stations = made_row(6);
    stations[2].rain.fill(Millimetres::from_millimetres(330.0));
    EXPECT_THAT(rain_faults(stations), testing::IsEmpty());
}

TEST(RainChecks, AYearWetterThanAnyKnownIsAFault)
{
    auto stations = made_row(2);
    stations[0].rain.fill(Millimetres::from_millimetres(1000.0));
    const auto faults = rain_faults(stations);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_TRUE(std::ranges::all_of(faults[0].months, [](bool at_fault) { return at_fault; }));
}

TEST(ShippedStations, NoRainIsAtFault)
{
    for (const auto& fault : rain_faults(shipped())) {
        ADD_FAILURE() << shipped()[fault.station].id << ": " << fault.reason;
    }
}

TEST(DateResiduals, BetweenTwoLinesOfTheRowLieOnAStraightLine)
{
    int compared = 0;
    for (const auto& station : shipped()) {
        if (station.dates.size() < 2 || compared == 20) {
            continue;
        }
        const auto low = station.dates[0].threshold;
        const auto high = station.dates[1].threshold;
        const auto at_low = date_residuals(station, low);
        const auto at_high = date_residuals(station, high);
        const auto between = date_residuals(station, low + (high - low) * 0.25);
        for (const auto& [percent, days] : between.last) {
            EXPECT_NEAR(days, 0.75 * at_low.last.at(percent) + 0.25 * at_high.last.at(percent), 1e-6) << station.id;
            ++compared;
        }
        EXPECT_EQ(between.nights_per_year.has_value(), at_low.nights_per_year && at_high.nights_per_year) << station.id;
        // Beyond the row's ends nothing was counted.
        EXPECT_TRUE(date_residuals(station, low - KelvinDelta::from_kelvins(5.0)).last.empty()) << station.id;
        EXPECT_TRUE(date_residuals(station, station.dates.back().threshold + KelvinDelta::from_kelvins(5.0)).last.empty());
    }
    EXPECT_GT(compared, 0);
}

} // namespace
} // namespace lathhouse::climate
