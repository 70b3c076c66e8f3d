// Dates from monthly figures against dates counted from the daily records of the same stations.

#include "core/base/csv.h"
#include "core/climate/monthly_form.h"
#include "core/climate/night_model.h"
#include "core/climate/station_rows.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <map>
#include <set>
#include <span>

namespace lathhouse::climate {
namespace {

using calendar::DayOfYear;

enum class Known { SpreadOfLows, MeansWithLowestAndFrostDays, SpreadOfMeans, Nothing };

const char* to_text(Known known)
{
    switch (known) {
    case Known::SpreadOfLows:
        return "SpreadOfLows";
    case Known::MeansWithLowestAndFrostDays:
        return "MeansWithLowestAndFrostDays";
    case Known::SpreadOfMeans:
        return "SpreadOfMeans";
    case Known::Nothing:
        break;
    }
    return "Nothing";
}

/// What is left of the figures when no more than that is known.
MonthlyFigures only(Known known, MonthlyFigures figures)
{
    if (known != Known::SpreadOfLows) {
        figures.low_spread.reset();
    }
    if (known != Known::MeansWithLowestAndFrostDays) {
        figures.lowest.fill(std::nullopt);
        figures.frost_days.fill(std::nullopt);
        figures.years.reset();
    }
    if (known == Known::Nothing) {
        figures.mean_spread.reset();
    }
    return figures;
}

struct ErrorSum {
    double absolute = 0.0;
    double signed_sum = 0.0;
    int count = 0;
    void add(double error)
    {
        absolute += std::abs(error);
        signed_sum += error;
        ++count;
    }
    double mean_absolute() const { return absolute / count; }
    double bias() const { return signed_sum / count; }
};

/// Key: (line in tenths, "last10" ...).
using ErrorTable = std::map<std::pair<int, std::string>, ErrorSum>;

struct RecordRow {
    double share_without;
    std::map<int, std::string> dates;
};
using Records = std::map<std::tuple<std::string, int, std::string>, RecordRow>;

Records read_records(const std::filesystem::path& file)
{
    const auto table = CsvTable::read(file);
    Records records;
    if (!table) {
        return records;
    }
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        RecordRow record{std::stod(table->at(row, *table->column("share_without"))), {}};
        for (int percent = 10; percent < 100; percent += 10) {
            record.dates[percent] = table->at(row, *table->column("p" + std::to_string(percent)));
        }
        const int tenths =
            static_cast<int>(std::lround(10.0 * std::stod(table->at(row, *table->column("threshold_c")))));
        records[{table->at(row, *table->column("station")), tenths,
                 table->at(row, *table->column("which"))}] = record;
    }
    return records;
}

/// Adds a station's errors at one line, in days: the model's dates less the counted ones.
void compare(const NightModel& model, int tenths, const RecordRow& last, const RecordRow& first,
             ErrorTable& errors)
{
    constexpr double kMostWithout = 0.05; // Stations with such nights in almost every season.
    if (last.share_without >= kMostWithout) {
        return;
    }
    const SeasonChances chances = model.season(Celsius::from_degrees(tenths / 10.0));
    const SeasonTurn turn = chances.turn();
    for (const int percent : {10, 50, 90}) {
        const auto chance = Probability::clamped(percent / 100.0);
        const auto add = [&](const char* which, const std::optional<DayOfYear>& ours,
                             const std::string& theirs) {
            if (ours && !theirs.empty()) {
                errors[{tenths, which + std::to_string(percent)}].add(
                    turn.season_index(*ours) - turn.season_index(DayOfYear::parse(theirs).value()));
            }
        };
        add("last", chances.last(chance), last.dates.at(percent));
        add("first", chances.first(chance), first.dates.at(percent));
    }
}

/// Against the outside counts, from the outside monthly figures.
ErrorTable measure(const std::vector<MonthlyPlace>& places, const Records& records, Known known)
{
    ErrorTable errors;
    for (MonthlyPlace place : places) {
        place.figures.reading_step = KelvinDelta::from_kelvins(0.5556);
        const auto model = NightModel::from_monthly(only(known, place.figures), place.position.latitude);
        for (const int tenths : {0, 22, 100}) {
            const auto last = records.find({place.station, tenths, "last"});
            const auto first = records.find({place.station, tenths, "first"});
            if (last != records.end() && first != records.end()) {
                compare(model, tenths, last->second, first->second, errors);
            }
        }
    }
    return errors;
}

RecordRow row_of(const EndDates& ends)
{
    RecordRow row{ends.share_without.fraction(), {}};
    for (const auto& [percent, day] : ends.dates) {
        row.dates[static_cast<int>(percent)] = day ? day->to_text() : "";
    }
    return row;
}

/// Against the counts that the shipped table keeps, from its own figures: stations of the United States with
/// at least twenty counted seasons.
ErrorTable measure_table(std::span<const Station> stations, Known known)
{
    ErrorTable errors;
    for (const Station& station : stations) {
        if (station.source != StationSource::UsDaily) {
            continue;
        }
        const auto model = NightModel::from_monthly(only(known, station.monthly), station.position.latitude);
        for (const ThresholdDates& dates : station.dates) {
            const int tenths = static_cast<int>(std::lround(10.0 * dates.threshold.degrees()));
            if (dates.first.years.value_or(0) >= 20) {
                compare(model, tenths, row_of(dates.last), row_of(dates.first), errors);
            }
        }
    }
    return errors;
}

void print(const char* from, Known known, const ErrorTable& errors)
{
    std::set<int> lines;
    for (const auto& [key, sum] : errors) {
        lines.insert(key.first);
    }
    for (const int tenths : lines) {
        std::printf("%s %-28s %5.1f C:", from, to_text(known), tenths / 10.0);
        for (const char* key : {"last10", "last50", "last90", "first10", "first50", "first90"}) {
            const ErrorSum& sum = errors.at({tenths, key});
            std::printf("  %s %.2f (%+.2f)", key, sum.mean_absolute(), sum.bias());
        }
        std::printf("  places %d\n", errors.at({tenths, "last50"}).count);
    }
}

/// Mean absolute errors in days that may not be passed at 0 C. The bias may not pass 1.5 days, where the
/// figures hold any spread.
struct Bars {
    Known known;
    double last50, first50, last10, first10;
};
void PrintTo(const Bars& bars, std::ostream* out)
{
    *out << to_text(bars.known);
}

void expect_within(const ErrorTable& errors, const Bars& bars)
{
    const auto expect = [&](const char* key, double most) {
        const ErrorSum& sum = errors.at({0, key});
        EXPECT_LE(sum.mean_absolute(), most) << key;
        if (bars.known != Known::Nothing) {
            EXPECT_LE(std::abs(sum.bias()), 1.5) << key;
        }
    };
    expect("last50", bars.last50);
    expect("first50", bars.first50);
    expect("last10", bars.last10);
    expect("first10", bars.first10);
}

class DatesFromMonthlyFigures : public testing::TestWithParam<Bars> {};

TEST_P(DatesFromMonthlyFigures, ComeNearTheCountsOfTheShippedTable)
{
    const auto stations =
        read_station_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data/stations.csv");
    ASSERT_TRUE(stations.has_value()) << stations.error().message;
    const ErrorTable errors = measure_table(*stations, GetParam().known);
    ASSERT_GT(errors.at({0, "last50"}).count, 500);
    print("table", GetParam().known, errors);
    expect_within(errors, GetParam());
}

TEST_P(DatesFromMonthlyFigures, ComeNearTheOutsideCounts)
{
    const std::filesystem::path checks = LATHHOUSE_CHECKS;
    if (checks.empty()) {
        GTEST_SKIP() << "needs the outside check values";
    }
    if (GetParam().known == Known::MeansWithLowestAndFrostDays) {
        GTEST_SKIP() << "the outside monthly figures hold neither lowest values nor frost days";
    }
    const auto table = CsvTable::read(checks / "monthly_1991_2018.csv");
    ASSERT_TRUE(table.has_value());
    const auto places = read_monthly_form(*table);
    ASSERT_TRUE(places.has_value()) << places.error().message;
    const Records records = read_records(checks / "frost_records_1991_2018.csv");
    ASSERT_FALSE(records.empty());
    const ErrorTable errors = measure(*places, records, GetParam().known);
    print("outside", GetParam().known, errors);
    expect_within(errors, GetParam());
}

INSTANTIATE_TEST_SUITE_P(Inputs, DatesFromMonthlyFigures,
                         testing::Values(Bars{Known::SpreadOfLows, 3.3, 3.0, 4.4, 3.8},
                                         Bars{Known::MeansWithLowestAndFrostDays, 3.6, 2.9, 5.0, 3.7},
                                         Bars{Known::SpreadOfMeans, 5.0, 3.6, 6.5, 4.5},
                                         // No bar is set for this; held to what was measured.
                                         Bars{Known::Nothing, 9.0, 7.6, 10.9, 8.6}),
                         [](const auto& row) { return std::string{to_text(row.param.known)}; });

} // namespace
} // namespace lathhouse::climate
