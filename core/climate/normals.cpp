#include "core/climate/normals.h"

#include "core/calendar/day_of_year.h"
#include "core/calendar/month_length.h"
#include "core/climate/cold_seasons.h"
#include "core/climate/frost_records.h"
#include "core/climate/normals_with_dates.h"

#include <algorithm>
#include <bitset>
#include <chrono>
#include <cmath>
#include <utility>

namespace lathhouse::climate {
namespace {

constexpr int kReadingsOfAYear = 20;
constexpr double kDaysOfYear = 365.2425;

/// Sums of whole tenths, exact.
struct Sums {
    long long count = 0;
    long long sum = 0;
    long long squares = 0;

    void add(int tenths)
    {
        ++count;
        sum += tenths;
        squares += static_cast<long long>(tenths) * tenths;
    }
    /// Without a branch for each day.
    void add(const std::array<DailyReading, 31>& readings)
    {
        for (const DailyReading reading : readings) {
            const int tenths = reading.known() ? reading.tenths() : 0;
            count += reading.known() ? 1 : 0;
            sum += tenths;
            squares += static_cast<long long>(tenths) * tenths;
        }
    }
    void add(const Sums& other)
    {
        count += other.count;
        sum += other.sum;
        squares += other.squares;
    }
    double mean() const { return static_cast<double>(sum) / static_cast<double>(count) / 10.0; }
    /// Population standard deviation in the unit itself.
    double deviation() const
    {
        const double n = static_cast<double>(count);
        const double scatter = static_cast<double>(count * squares - sum * sum);
        return std::sqrt(std::max(scatter, 0.0)) / n / 10.0;
    }
};

/// Lows within -99.9..199.9 C by tenth, to ask how they were read.
bool is_whole_fahrenheit(int tenths)
{
    const double fahrenheit = std::round(tenths * 0.18 + 32.0);
    return std::lround((fahrenheit - 32.0) / 0.18) == tenths;
}

const std::bitset<4096>& whole_fahrenheit_tenths()
{
    static const auto table = [] {
        std::bitset<4096> bits;
        for (int tenths = -2048; tenths < 2048; ++tenths) {
            bits[static_cast<std::size_t>(tenths + 2048)] = is_whole_fahrenheit(tenths);
        }
        return bits;
    }();
    return table;
}

/// Lag-one correlation of the lows' departures from a mean that follows the season (31-day running mean over
/// the places of the year), each in units of its month's spread.
std::optional<double> persistence_of(const DailyRecord& record, BasePeriod base,
                                     const Monthly<KelvinDelta>& spread)
{
    constexpr int kCount = calendar::DayOfYear::kCount;
    constexpr int kHalfWindow = 15;
    std::array<long, kCount> sum{};
    std::array<long, kCount> count{};
    const auto each_low = [&](auto&& on_day) {
        for (int year = base.first_year; year <= base.last_year; ++year) {
            for (int month = 1; month <= 12; ++month) {
                const auto* readings = record.month(year, month);
                if (readings == nullptr) {
                    on_day(0, month, DailyReading{});
                    continue;
                }
                const int before = calendar::places_before_month(month);
                const int days = calendar::days_in_month_of_leap_year(month) -
                                 (month == 2 && !std::chrono::year{year}.is_leap() ? 1 : 0);
                for (int day = 0; day < days; ++day) {
                    on_day(before + day, month, readings->low[static_cast<std::size_t>(day)]);
                }
            }
        }
    };
    each_low([&](int index, int, DailyReading low) {
        if (low.known()) {
            sum[static_cast<std::size_t>(index)] += low.tenths();
            ++count[static_cast<std::size_t>(index)];
        }
    });
    std::array<double, kCount> mean{};
    long window_sum = 0;
    long window_count = 0;
    for (int i = -kHalfWindow; i < kHalfWindow; ++i) {
        const auto at = static_cast<std::size_t>((i + kCount) % kCount);
        window_sum += sum[at];
        window_count += count[at];
    }
    for (int i = 0; i < kCount; ++i) {
        const auto in = static_cast<std::size_t>((i + kHalfWindow) % kCount);
        window_sum += sum[in];
        window_count += count[in];
        if (window_count == 0) {
            return std::nullopt;
        }
        mean[static_cast<std::size_t>(i)] =
            static_cast<double>(window_sum) / static_cast<double>(window_count);
        const auto out = static_cast<std::size_t>((i - kHalfWindow + kCount) % kCount);
        window_sum -= sum[out];
        window_count -= count[out];
    }
    std::array<double, 12> scale{};
    for (std::size_t month = 0; month < 12; ++month) {
        scale[month] = 1.0 / std::max(spread[month].kelvins() * 10.0, 1.0);
    }
    double products = 0.0;
    double squares = 0.0;
    double before = 0.0;
    bool has_before = false;
    each_low([&](int index, int month, DailyReading low) {
        if (!low.known()) {
            has_before = false;
            return;
        }
        const double z = (low.tenths() - mean[static_cast<std::size_t>(index)]) *
                         scale[static_cast<std::size_t>(month - 1)];
        if (has_before) {
            products += z * before;
            squares += 0.5 * (z * z + before * before);
        }
        before = z;
        has_before = true;
    });
    return squares > 0.0 ? std::optional{products / squares} : std::nullopt;
}

std::optional<Celsius> lowest_of_season(std::span<const ColdSeason> seasons)
{
    double sum = 0.0;
    int count = 0;
    for (const auto& season : seasons) {
        if (!season.counts) {
            continue;
        }
        int lowest = 32767;
        for (const auto& piece : season.pieces) {
            lowest = piece.known != 0 ? std::min(lowest, piece.lowest_tenths) : lowest;
        }
        sum += lowest;
        ++count;
    }
    return count >= kFewestSeasons ? std::optional{Celsius::from_degrees(sum / count / 10.0)} : std::nullopt;
}

} // namespace

Result<RecordNormals> normals_of(const DailyRecord& record, BasePeriod base, std::span<const Celsius> lines)
{
    return normals_with_dates(record, base, lines, standard_percents());
}

Result<RecordNormals> normals_with_dates(const DailyRecord& record, BasePeriod base, std::span<const Celsius> lines,
                                         std::vector<double> percents)
{
    MonthlyFigures figures{.low = in_every_month(Celsius::from_degrees(0.0)),
                           .high = in_every_month(Celsius::from_degrees(0.0)),
                           .low_spread = std::nullopt,
                           .mean_spread = std::nullopt,
                           .years = std::nullopt};
    auto low_spread = in_every_month(KelvinDelta::from_kelvins(0.0));
    auto mean_spread = low_spread;
    Monthly<std::optional<Millimetres>> rain{};
    long long lows = 0;
    long long whole_fahrenheit = 0;
    const auto& fahrenheit_tenths = whole_fahrenheit_tenths();
    int first_year = base.last_year + 1;
    int last_year = base.first_year - 1;

    struct YearOfLows {
        double days_times_lows = 0.0;
        int months = 0;
    };
    std::vector<YearOfLows> years(
        static_cast<std::size_t>(std::max(base.last_year - base.first_year + 1, 0)));
    for (int month = 1; month <= 12; ++month) {
        const auto m = static_cast<std::size_t>(month - 1);
        Sums low;
        Sums high;
        Sums fall;
        long long frosts = 0;
        int lowest = 32767;
        int years_of_low = 0;
        int years_of_high = 0;
        double spreads = 0.0;
        int years_of_mean = 0;
        for (int year = base.first_year; year <= base.last_year; ++year) {
            const auto* readings = record.month(year, month);
            if (readings == nullptr) {
                continue;
            }
            Sums lows_here;
            Sums highs_here;
            Sums doubled_means_here; // Low + high.
            Sums rain_here;
            int frosts_here = 0;
            lows_here.add(readings->low);
            highs_here.add(readings->high);
            rain_here.add(readings->rain);
            for (std::size_t day = 0; day < 31; ++day) {
                const auto a = readings->low[day];
                const auto b = readings->high[day];
                if (a.known()) {
                    frosts_here += a.tenths() < 0 ? 1 : 0;
                    lowest = std::min(lowest, a.tenths());
                    const int at = std::clamp(a.tenths(), -2048, 2047) + 2048;
                    whole_fahrenheit += fahrenheit_tenths[static_cast<std::size_t>(at)] ? 1 : 0;
                    if (b.known()) {
                        doubled_means_here.add(a.tenths() + b.tenths());
                    }
                }
            }
            lows += lows_here.count;
            if (lows_here.count >= kReadingsOfAYear) {
                low.add(lows_here);
                frosts += frosts_here;
                ++years_of_low;
                auto& of_year = years[static_cast<std::size_t>(year - base.first_year)];
                of_year.days_times_lows += calendar::kMeanDaysOfMonths[m] * lows_here.mean();
                ++of_year.months;
            }
            if (highs_here.count >= kReadingsOfAYear) {
                high.add(highs_here);
                ++years_of_high;
            }
            if (rain_here.count >= kReadingsOfAYear) {
                fall.add(rain_here);
            }
            if (doubled_means_here.count >= kReadingsOfAYear) {
                spreads += doubled_means_here.deviation() / 2.0;
                ++years_of_mean;
            }
            if (lows_here.count > 0) {
                first_year = std::min(first_year, year);
                last_year = std::max(last_year, year);
            }
        }
        if (years_of_low < kFewestYearsOfMonth || years_of_high < kFewestYearsOfMonth ||
            years_of_mean < kFewestYearsOfMonth) {
            return Error{ErrorCode::TooFewYears,
                         said("station %1 has lows and highs in %2 years of month %3; %4 are needed", record.station(),
                              std::min({years_of_low, years_of_high, years_of_mean}), month, kFewestYearsOfMonth)};
        }
        figures.low[m] = Celsius::from_degrees(low.mean());
        figures.high[m] = Celsius::from_degrees(high.mean());
        low_spread[m] = KelvinDelta::from_kelvins(low.deviation());
        mean_spread[m] = KelvinDelta::from_kelvins(spreads / years_of_mean);
        figures.lowest[m] = Celsius::from_degrees(lowest / 10.0);
        figures.frost_days[m] = calendar::kMeanDaysOfMonths[m] * static_cast<double>(frosts) / static_cast<double>(low.count);
        if (fall.count >= kFewestYearsOfMonth * kReadingsOfAYear) {
            rain[m] = Millimetres::from_millimetres(fall.mean() * calendar::kMeanDaysOfMonths[m]);
        }
    }
    figures.low_spread = low_spread;
    figures.mean_spread = mean_spread;
    figures.years = static_cast<int>(std::lround(static_cast<double>(lows) / kDaysOfYear));
    // Of lows read in tenths 18 % are whole degrees Fahrenheit by chance; of 1,158 stations of the United
    // States the least has 78 %.
    const bool fahrenheit = static_cast<double>(whole_fahrenheit) >= 0.75 * static_cast<double>(lows);
    figures.reading_step =
        fahrenheit ? KelvinDelta::from_fahrenheit_degrees(1.0) : KelvinDelta::from_kelvins(0.1);

    std::vector<std::pair<double, double>> yearly_means;
    for (std::size_t k = 0; k < years.size(); ++k) {
        if (years[k].months == 12) {
            yearly_means.emplace_back(base.first_year + static_cast<int>(k),
                                      years[k].days_times_lows / kDaysOfYear);
        }
    }
    FrostQuestion question;
    question.base = base;
    question.lines.assign(lines.begin(), lines.end());
    question.percents = std::move(percents);
    const auto turn = turn_of(record, base);
    const auto seasons = cold_seasons_of(record, base, turn);
    auto frost = frost_dates_of(record, question, turn, seasons);
    const double days = kDaysOfYear * (last_year - first_year + 1);
    return RecordNormals{record.station(),
                         base,
                         first_year,
                         last_year,
                         figures,
                         rain,
                         lowest_of_season(seasons),
                         persistence_of(record, base, low_spread),
                         low_trend(yearly_means),
                         Probability::clamped(static_cast<double>(lows) / days),
                         frost.thresholds ? std::move(*frost.thresholds) : std::vector<ThresholdDates>{}};
}

} // namespace lathhouse::climate
