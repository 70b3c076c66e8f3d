#include "core/climate/record_check.h"

#include "core/calendar/month_length.h"
#include "core/climate/cold_seasons.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace lathhouse::climate {
namespace {

/// World extremes (WMO archive of weather and climate extremes, from memory): Vostok 1983, Furnace Creek
/// 1913; a day's rain at Foc-Foc, La Reunion, 1966.
constexpr int kLowestTenths = -892;
constexpr int kHighestTenths = 567;
constexpr int kMostRainTenths = 18250;
constexpr int kStuckDays = 20;
constexpr double kFarOffDeviations = 6.0;
constexpr int kFewestForSpread = 100;

calendar::Date date_of(int year, int month, int day)
{
    return {static_cast<unsigned short>(year), static_cast<unsigned short>(month),
            static_cast<unsigned short>(day)};
}

/// Calls `on_day(year, month, day, month's readings)` for every day from the record's first month to its
/// last.
template <class OnDay>
void each_day(const DailyRecord& record, OnDay on_day)
{
    if (record.empty()) {
        return;
    }
    for (int year = record.first_year(); year <= record.last_year(); ++year) {
        for (int month = 1; month <= 12; ++month) {
            const auto* readings = record.month(year, month);
            for (int day = 1; readings != nullptr && day <= calendar::days_in_month(year, month); ++day) {
                on_day(year, month, day, *readings);
            }
        }
    }
}

bool impossible(DailyReading reading)
{
    return reading.known() && (reading.tenths() < kLowestTenths || reading.tenths() > kHighestTenths);
}

struct Spread {
    double sum = 0.0;
    double squares = 0.0;
    int count = 0;
    void add(double value)
    {
        sum += value;
        squares += value * value;
        ++count;
    }
    double mean() const { return sum / count; }
    double deviation() const { return std::sqrt(std::max(squares / count - mean() * mean(), 0.0)); }
    bool is_far_off(DailyReading reading) const
    {
        return reading.known() && count >= kFewestForSpread &&
               std::abs(reading.tenths() - mean()) > kFarOffDeviations * std::max(deviation(), 5.0);
    }
};

void find_stuck(const DailyRecord& record, std::vector<Doubt>& doubts)
{
    std::vector<std::pair<calendar::Date, DailyReading>> lows;
    each_day(record, [&](int year, int month, int day, const DailyMonth& readings) {
        if (const auto low = readings.low[static_cast<std::size_t>(day - 1)]; low.known()) {
            lows.emplace_back(date_of(year, month, day), low);
        }
    });
    for (std::size_t begin = 0; begin < lows.size();) {
        std::size_t end = begin + 1;
        while (end < lows.size() && lows[end].second == lows[begin].second) {
            ++end;
        }
        if (end - begin >= kStuckDays) {
            doubts.push_back(
                {DoubtKind::Stuck, lows[begin].first, lows[end - 1].first, lows[begin].second, {}});
        }
        begin = end;
    }
}

void find_far_off(const DailyRecord& record, std::vector<Doubt>& doubts)
{
    Monthly<Spread> lows{};
    Monthly<Spread> highs{};
    each_day(record, [&](int, int month, int day, const DailyMonth& readings) {
        const auto m = static_cast<std::size_t>(month - 1);
        const auto d = static_cast<std::size_t>(day - 1);
        if (readings.low[d].known()) {
            lows[m].add(readings.low[d].tenths());
        }
        if (readings.high[d].known()) {
            highs[m].add(readings.high[d].tenths());
        }
    });
    each_day(record, [&](int year, int month, int day, const DailyMonth& readings) {
        const auto m = static_cast<std::size_t>(month - 1);
        const auto d = static_cast<std::size_t>(day - 1);
        const auto low = readings.low[d];
        const auto high = readings.high[d];
        if (lows[m].is_far_off(low) || highs[m].is_far_off(high)) {
            const auto date = date_of(year, month, day);
            doubts.push_back({DoubtKind::FarOff, date, date, low, high});
        }
    });
}

/// Mean of each month's readings over all years, degrees.
Monthly<std::optional<double>> means_of(const DailyRecord& record,
                                        std::array<DailyReading, 31> DailyMonth::*element)
{
    Monthly<Spread> sums{};
    each_day(record, [&](int, int month, int day, const DailyMonth& readings) {
        if (const auto reading = (readings.*element)[static_cast<std::size_t>(day - 1)]; reading.known()) {
            sums[static_cast<std::size_t>(month - 1)].add(reading.tenths() / 10.0);
        }
    });
    Monthly<std::optional<double>> means{};
    std::ranges::transform(sums, means.begin(), [](const Spread& sum) {
        return sum.count > 0 ? std::optional{sum.mean()} : std::nullopt;
    });
    return means;
}

struct Means {
    Monthly<std::optional<double>> low;
    Monthly<std::optional<double>> high;
};

/// Mean distance from the table in kelvins of all monthly means there are, each changed first.
template <class Change>
double distance(const Means& means, const PlaceClimate& table, Change change)
{
    double sum = 0.0;
    int count = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        if (means.low[m]) {
            sum += std::abs(change(*means.low[m]) - table.monthly.low[m].degrees());
            ++count;
        }
        if (means.high[m]) {
            sum += std::abs(change(*means.high[m]) - table.monthly.high[m].degrees());
            ++count;
        }
    }
    return count > 0 ? sum / count : 0.0;
}

/// What the numbers would have to be to lie near the table; nullopt where as they stand they do.
std::optional<Said> other_unit(const Means& means, const PlaceClimate& table)
{
    constexpr double kFarAway = 8.0;
    constexpr double kMuchNearer = 0.4;
    const double now = distance(means, table, [](double value) { return value; });
    if (now <= kFarAway) {
        return std::nullopt;
    }
    struct Unit {
        double distance;
        Sentence<0> words;
    };
    const std::array units{
        Unit{distance(means, table, [](double value) { return (value - 32.0) / 1.8; }),
             said_later("the values look like degrees Fahrenheit taken for Celsius; import them with --fahrenheit")},
        Unit{distance(means, table, [](double value) { return value * 1.8 + 32.0; }),
             said_later("the values look like degrees Celsius taken for Fahrenheit; import them without --fahrenheit")},
        Unit{distance(means, table, [](double value) { return value / 10.0; }),
             said_later("the values look like tenths of a degree taken for whole ones; divide them by ten first")},
        Unit{distance(means, table, [](double value) { return value * 10.0; }),
             said_later("the values look like whole degrees taken for tenths; write them with a decimal point")}};
    const auto& nearest = std::ranges::min(units, {}, &Unit::distance);
    return nearest.distance < kMuchNearer * now ? std::optional{said_now(nearest.words)} : std::nullopt;
}

/// Correlation of the monthly mean temperatures with the table's; nullopt where either has no season (under 5
/// K) or months are missing.
std::optional<double> course_agreement(const Means& means, const PlaceClimate& table)
{
    Spread record;
    Spread known;
    double products = 0.0;
    Monthly<double> ours{};
    Monthly<double> theirs{};
    for (std::size_t m = 0; m < 12; ++m) {
        if (!means.low[m] || !means.high[m]) {
            return std::nullopt;
        }
        ours[m] = (*means.low[m] + *means.high[m]) / 2.0;
        theirs[m] = (table.monthly.low[m].degrees() + table.monthly.high[m].degrees()) / 2.0;
        record.add(ours[m]);
        known.add(theirs[m]);
        products += ours[m] * theirs[m];
    }
    constexpr double kSeason = 5.0;
    const auto swing = [](const Monthly<double>& values) {
        return std::ranges::max(values) - std::ranges::min(values);
    };
    if (swing(ours) < kSeason || swing(theirs) < kSeason) {
        return std::nullopt;
    }
    return (products / 12.0 - record.mean() * known.mean()) / (record.deviation() * known.deviation());
}

/// Without its sign and unit.
std::string kelvins(double value)
{
    const auto tenths = std::lround(std::abs(value) * 10.0);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

constexpr std::array<Sentence<0>, 12> kMonthNames{
    said_later("January"), said_later("February"), said_later("March"), said_later("April"),
    said_later("May"), said_later("June"), said_later("July"), said_later("August"),
    said_later("September"), said_later("October"), said_later("November"), said_later("December")};

} // namespace

CheckedRecord check_record(const DailyRecord& record)
{
    CheckedRecord checked{record, {}};
    auto& doubts = checked.doubts;
    each_day(record, [&](int year, int month, int day, const DailyMonth& readings) {
        const auto d = static_cast<std::size_t>(day - 1);
        const auto low = readings.low[d];
        const auto high = readings.high[d];
        const auto date = date_of(year, month, day);
        auto& target = checked.record.month_to_write(year, month);
        const auto rain = readings.rain[d];
        if (rain.known() && (rain.tenths() < 0 || rain.tenths() > kMostRainTenths)) {
            doubts.push_back({DoubtKind::Impossible, date, date, {}, {}});
            target.rain[d] = {};
        }
        if (impossible(low) || impossible(high)) {
            doubts.push_back({DoubtKind::Impossible, date, date, low, high});
            target.low[d] = impossible(low) ? DailyReading{} : low;
            target.high[d] = impossible(high) ? DailyReading{} : high;
        } else if (low.known() && high.known() && low.tenths() > high.tenths()) {
            doubts.push_back({DoubtKind::LowAboveHigh, date, date, low, high});
            target.low[d] = {};
            target.high[d] = {};
        } else if (low.known() && high.known() && low.tenths() == 0 && high.tenths() == 0) {
            doubts.push_back({DoubtKind::Nought, date, date, low, high});
            target.low[d] = {};
            target.high[d] = {};
        }
    });
    find_stuck(checked.record, doubts);
    find_far_off(checked.record, doubts);
    std::ranges::stable_sort(doubts, {}, &Doubt::kind);
    return checked;
}

std::optional<RecordSummary> summary_of(const DailyRecord& record)
{
    std::vector<calendar::Date> lows;
    int highs = 0;
    each_day(record, [&](int year, int month, int day, const DailyMonth& readings) {
        if (readings.low[static_cast<std::size_t>(day - 1)].known()) {
            lows.push_back(date_of(year, month, day));
        }
        highs += readings.high[static_cast<std::size_t>(day - 1)].known() ? 1 : 0;
    });
    if (lows.empty()) {
        return std::nullopt;
    }
    RecordSummary summary{lows.front(),
                          lows.back(),
                          calendar::days_between(lows.front(), lows.back()) + 1,
                          static_cast<int>(lows.size()),
                          highs,
                          {},
                          {},
                          0,
                          0};
    for (std::size_t i = 1; i < lows.size(); ++i) {
        if (calendar::days_between(lows[i - 1], lows[i]) > kSpoilingRun) {
            summary.gaps.push_back({lows[i - 1] + calendar::Days{1}, lows[i] - calendar::Days{1}});
        }
        for (int year = lows[i - 1].year() + 1; year < lows[i].year(); ++year) {
            summary.years_without.push_back(year);
        }
    }
    const BasePeriod all{lows.front().year(), lows.back().year()};
    const auto seasons = cold_seasons_of(record, all, turn_of(record, all));
    summary.seasons = static_cast<int>(seasons.size());
    summary.counted_seasons = static_cast<int>(std::ranges::count_if(seasons, &ColdSeason::counts));
    return summary;
}

Comparison compare_with_table(const DailyRecord& as_read, const PlaceClimate& table)
{
    constexpr double kYearOfLows = 7.0;
    constexpr double kYearOfHighs = 9.0;
    constexpr double kMonth = 3.0;
    constexpr double kErrors = 3.0;
    constexpr double kImpossibleShare = 0.1;
    const auto checked = check_record(as_read);
    const Means means{means_of(checked.record, &DailyMonth::low),
                      means_of(checked.record, &DailyMonth::high)};
    const Means raw{means_of(as_read, &DailyMonth::low), means_of(as_read, &DailyMonth::high)};
    Comparison result{{}, Verdict::Plausible, {}};
    Spread lows;
    Spread highs;
    for (std::size_t m = 0; m < 12; ++m) {
        auto& month = result.months[m];
        if (means.low[m]) {
            month.low = Celsius::from_degrees(*means.low[m]);
            month.low_difference = *month.low - table.monthly.low[m];
            lows.add(month.low_difference->kelvins());
        }
        if (means.high[m]) {
            month.high = Celsius::from_degrees(*means.high[m]);
            month.high_difference = *month.high - table.monthly.high[m];
            highs.add(month.high_difference->kelvins());
        }
    }
    const auto implausible = [&](Said reason) {
        result.verdict = Verdict::Implausible;
        result.reasons.push_back(std::move(reason));
    };
    if (auto unit = other_unit(raw, table)) {
        implausible(*std::move(unit));
        return result;
    }
    int readings = 0;
    each_day(as_read, [&](int, int, int day, const DailyMonth& month) {
        readings += month.low[static_cast<std::size_t>(day - 1)].known() ? 1 : 0;
    });
    const auto impossibles = std::ranges::count(checked.doubts, DoubtKind::Impossible, &Doubt::kind);
    if (static_cast<double>(impossibles) > kImpossibleShare * readings) {
        implausible(said("%1 of its days have values that were never read on land", impossibles));
    }
    if (const auto agreement = course_agreement(means, table); agreement && *agreement < -0.5) {
        implausible(said("it is warmest when the place is coldest: check the dates, and the sign of the latitude"));
    }
    if (lows.count > 0 && std::abs(lows.mean()) > kYearOfLows) {
        const auto by = kelvins(lows.mean());
        implausible(lows.mean() > 0.0
                        ? said("its lows lie %1 K above the place's on average: check unit, position and height", by)
                        : said("its lows lie %1 K below the place's on average: check unit, position and height", by));
    }
    if (highs.count > 0 && std::abs(highs.mean()) > kYearOfHighs) {
        const auto by = kelvins(highs.mean());
        implausible(highs.mean() > 0.0
                        ? said("its highs lie %1 K above the place's on average: check unit, position, height and "
                               "whether the thermometer stood in the sun",
                               by)
                        : said("its highs lie %1 K below the place's on average: check unit, position, height and "
                               "whether the thermometer stood in the sun",
                               by));
    }
    if (result.verdict == Verdict::Implausible) {
        return result;
    }
    const double limit = std::max(kMonth, kErrors * table.expected_error.kelvins());
    const auto doubt = [&](Sentence<2> above, Sentence<2> below,
                           std::optional<KelvinDelta> MonthCompared::*difference) {
        const auto far = [&](std::size_t m) {
            const auto& value = result.months[m].*difference;
            return value ? std::abs(value->kelvins()) : 0.0;
        };
        std::size_t worst = 0;
        for (std::size_t m = 1; m < 12; ++m) {
            worst = far(m) > far(worst) ? m : worst;
        }
        if (far(worst) > limit) {
            const double by = (result.months[worst].*difference)->kelvins();
            result.verdict = Verdict::Doubtful;
            result.reasons.push_back(
                put_together((by > 0.0 ? above : below).source, {said_now(kMonthNames[worst]), Said{kelvins(by)}}));
        }
    };
    doubt(said_later<2>("its lows of %1 lie %2 K above the table's; a hollow, a warm wall, another height or a faulty "
                        "thermometer would do that"),
          said_later<2>("its lows of %1 lie %2 K below the table's; a hollow, a warm wall, another height or a faulty "
                        "thermometer would do that"),
          &MonthCompared::low_difference);
    doubt(said_later<2>("its highs of %1 lie %2 K above the table's; a hollow, a warm wall, another height or a faulty "
                        "thermometer would do that"),
          said_later<2>("its highs of %1 lie %2 K below the table's; a hollow, a warm wall, another height or a faulty "
                        "thermometer would do that"),
          &MonthCompared::high_difference);
    return result;
}

} // namespace lathhouse::climate
