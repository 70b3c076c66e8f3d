// Dates from monthly figures against dates counted from the daily records of the same stations.

#include "core/base/csv.h"
#include "core/climate/monthly_form.h"
#include "core/climate/night_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <map>

namespace lathhouse::climate {
namespace {

using calendar::DayOfYear;

enum class Known { SpreadOfLows, SpreadOfMeans, Nothing };

const char* to_text(Known known)
{
    return known == Known::SpreadOfLows    ? "spread of lows"
           : known == Known::SpreadOfMeans ? "spread of means"
                                           : "nothing";
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

ErrorTable measure(const std::vector<MonthlyPlace>& places, const Records& records, Known known)
{
    ErrorTable errors;
    for (MonthlyPlace place : places) {
        place.figures.reading_step = KelvinDelta::from_kelvins(0.5556);
        if (known != Known::SpreadOfLows) {
            place.figures.low_spread.reset();
        }
        if (known == Known::Nothing) {
            place.figures.mean_spread.reset();
        }
        const auto model = NightModel::from_monthly(place.figures, place.position.latitude);
        for (const int tenths : {0, 22, 100}) {
            const auto last = records.find({place.station, tenths, "last"});
            const auto first = records.find({place.station, tenths, "first"});
            if (last == records.end() || first == records.end() || last->second.share_without >= 0.05) {
                continue;
            }
            const SeasonChances chances = model.season(Celsius::from_degrees(tenths / 10.0));
            for (const int percent : {10, 50, 90}) {
                const auto chance = Probability::clamped(percent / 100.0);
                const auto compare = [&](const char* which, const std::optional<DayOfYear>& ours,
                                         const std::string& theirs) {
                    if (!ours || theirs.empty()) {
                        return;
                    }
                    const SeasonTurn turn = chances.turn();
                    errors[{tenths, which + std::to_string(percent)}].add(
                        turn.season_index(*ours) - turn.season_index(DayOfYear::parse(theirs).value()));
                };
                compare("last", chances.last(chance), last->second.dates.at(percent));
                compare("first", chances.first(chance), first->second.dates.at(percent));
            }
        }
    }
    return errors;
}

struct Bars {
    Known known;
    double last50, first50, last10, first10;
};
void PrintTo(const Bars& bars, std::ostream* out)
{
    *out << to_text(bars.known);
}

class DatesFromMonthlyFigures : public testing::TestWithParam<Bars> {};

TEST_P(DatesFromMonthlyFigures, ComeNearTheRecords)
{
    const std::filesystem::path checks = LATHHOUSE_CHECKS;
    if (checks.empty()) {
        GTEST_SKIP() << "needs the outside check values";
    }
    const auto table = CsvTable::read(checks / "monthly_1991_2018.csv");
    ASSERT_TRUE(table.has_value());
    const auto places = read_monthly_form(*table);
    ASSERT_TRUE(places.has_value()) << places.error().message;
    const Records records = read_records(checks / "frost_records_1991_2018.csv");
    ASSERT_FALSE(records.empty());

    const ErrorTable errors = measure(*places, records, GetParam().known);
    for (const int tenths : {0, 22, 100}) {
        std::printf("%-15s %4.1f C:", to_text(GetParam().known), tenths / 10.0);
        for (const char* key : {"last10", "last50", "last90", "first10", "first50", "first90"}) {
            const ErrorSum& sum = errors.at({tenths, key});
            std::printf("  %s %.2f (%+.2f)", key, sum.mean_absolute(), sum.bias());
        }
        std::printf("  places %d\n", errors.at({tenths, "last50"}).count);
    }
    EXPECT_LE(errors.at({0, "last50"}).mean_absolute(), GetParam().last50);
    EXPECT_LE(errors.at({0, "first50"}).mean_absolute(), GetParam().first50);
    EXPECT_LE(errors.at({0, "last10"}).mean_absolute(), GetParam().last10);
    EXPECT_LE(errors.at({0, "first10"}).mean_absolute(), GetParam().first10);
}

INSTANTIATE_TEST_SUITE_P(Inputs, DatesFromMonthlyFigures,
                         testing::Values(Bars{Known::SpreadOfLows, 3.4, 3.0, 4.5, 3.8},
                                         Bars{Known::SpreadOfMeans, 5.0, 3.6, 6.5, 4.5},
                                         Bars{Known::Nothing, 9.0, 7.6, 10.9, 8.6}),
                         [](const auto& row) {
                             return std::string{row.param.known == Known::SpreadOfLows    ? "SpreadOfLows"
                                                : row.param.known == Known::SpreadOfMeans ? "SpreadOfMeans"
                                                                                          : "Nothing"};
                         });

} // namespace
} // namespace lathhouse::climate
