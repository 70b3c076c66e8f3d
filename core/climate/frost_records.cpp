#include "core/climate/frost_records.h"

#include "core/calendar/day_of_year.h"
#include "core/calendar/month_length.h"
#include "core/climate/sampling_interval.h"

#include <algorithm>
#include <bit>
#include <chrono>
#include <cmath>

namespace lathhouse::climate {
namespace {

/// A night of a season.
struct Night {
    int season_index;
    long serial; ///< Days since 1970.
};

struct SeasonEnds {
    std::optional<Night> first;
    std::optional<Night> last;
};

/// What one line needs of all counted seasons.
struct LineCount {
    std::vector<SeasonEnds> ends;              ///< One a counted season.
    std::array<int, 12> nights{};              ///< At or below the line, by month.
    std::array<int, 12> seasons_with_nights{}; ///< Seasons with any, by month.
};

std::int16_t tenths_of(Celsius line)
{
    // 2.2 C must be 22 although 2.2 x 10 may be a little less in binary.
    const double tenths = std::floor(line.degrees() * 10.0 + 1e-6);
    return static_cast<std::int16_t>(std::clamp(tenths, -32767.0, 32766.0));
}

Night night_of(const SeasonPiece& piece, int day, SeasonTurn turn)
{
    using namespace std::chrono;
    const auto place = calendar::DayOfYear::wrapped(calendar::places_before_month(piece.month) + day);
    const sys_days date = year{piece.year} / month{static_cast<unsigned>(piece.month)} /
                          std::chrono::day{static_cast<unsigned>(day)};
    return {turn.season_index(place), static_cast<long>(date.time_since_epoch().count())};
}

/// Bits 0..30: days of the piece with a low at or below the line.
std::uint32_t nights_of(const SeasonPiece& piece, std::int16_t line_tenths)
{
    if (piece.known == 0 || piece.lowest_tenths > line_tenths) {
        return 0;
    }
    if (piece.highest_tenths <= line_tenths) {
        return piece.known;
    }
    std::uint32_t nights = 0;
    for (int day = 1; day <= 31; ++day) {
        const bool cold = piece.readings->low[static_cast<std::size_t>(day - 1)].at_or_below(line_tenths);
        nights |= static_cast<std::uint32_t>(cold) << (day - 1);
    }
    return nights & piece.known; // Days beyond the piece are not its own.
}

void count(const ColdSeason& season, SeasonTurn turn, std::int16_t line_tenths, LineCount& result)
{
    SeasonEnds ends;
    std::uint32_t months_with_nights = 0;
    for (const auto& piece : season.pieces) {
        const auto nights = nights_of(piece, line_tenths);
        if (nights == 0) {
            continue;
        }
        if (!ends.first) {
            ends.first = night_of(piece, std::countr_zero(nights) + 1, turn);
        }
        ends.last = night_of(piece, 32 - std::countl_zero(nights), turn);
        result.nights[static_cast<std::size_t>(piece.month - 1)] += std::popcount(nights);
        months_with_nights |= std::uint32_t{1} << (piece.month - 1);
    }
    for (std::size_t month = 0; month < 12; ++month) {
        result.seasons_with_nights[month] += (months_with_nights >> month) & 1U;
    }
    result.ends.push_back(ends);
}

template <class Order>
std::vector<std::optional<int>> sorted_places(const std::vector<SeasonEnds>& ends,
                                              std::optional<Night> SeasonEnds::*end, Order order)
{
    std::vector<std::optional<int>> places;
    for (const auto& season : ends) {
        const auto& night = season.*end;
        places.push_back(night ? std::optional{night->season_index} : std::nullopt);
    }
    std::ranges::sort(places, order);
    return places;
}

/// Gaps after everything.
bool gaps_last(std::optional<int> a, std::optional<int> b)
{
    return a && (!b || *a < *b);
}

/// The day of the element with that number, from 1; nullopt outside 1..N and for a season without.
std::optional<calendar::DayOfYear> day_of(const std::vector<std::optional<int>>& places,
                                          std::optional<int> element, SeasonTurn turn)
{
    if (!element || *element < 1 || *element > static_cast<int>(places.size())) {
        return std::nullopt;
    }
    const auto& place = places[static_cast<std::size_t>(*element - 1)];
    return place ? std::optional{turn.day_at(*place)} : std::nullopt;
}

/// Date and sampling interval for one percent chance.
void add_date(EndDates& ends, double percent, int element, const RankInterval& ranks,
              const std::vector<std::optional<int>>& places, SeasonTurn turn)
{
    ends.dates[percent] = day_of(places, element, turn);
    ends.intervals.insert_or_assign(percent, DateInterval{day_of(places, ranks.lower, turn),
                                                          day_of(places, ranks.upper, turn), ranks.coverage});
}

std::vector<std::optional<int>> free_days(std::span<const ColdSeason* const> seasons,
                                          const std::vector<SeasonEnds>& ends)
{
    std::vector<std::optional<int>> lengths;
    for (std::size_t i = 1; i < seasons.size(); ++i) {
        if (seasons[i]->first_year != seasons[i - 1]->first_year + 1) {
            continue;
        }
        const auto& last = ends[i - 1].last;
        const auto& first = ends[i].first;
        lengths.push_back(last && first ? std::optional{static_cast<int>(first->serial - last->serial)}
                                        : std::nullopt);
    }
    std::ranges::sort(lengths, gaps_last);
    return lengths;
}

} // namespace

FrostRecord frost_dates_of(const DailyRecord& record, const FrostQuestion& question)
{
    const SeasonTurn turn = question.turn ? *question.turn : turn_of(record, question.base);
    return frost_dates_of(record, question, turn, cold_seasons_of(record, question.base, turn));
}

FrostRecord frost_dates_of(const DailyRecord& record, const FrostQuestion& question, SeasonTurn turn,
                           std::span<const ColdSeason> seasons)
{
    std::vector<const ColdSeason*> counted;
    for (const auto& season : seasons) {
        if (season.counts) {
            counted.push_back(&season);
        }
    }
    const auto n = counted.size();
    FrostRecord answer{record.station(), turn, static_cast<int>(n), std::nullopt};
    if (answer.counted_seasons < kFewestSeasons) {
        return answer;
    }

    std::array<int, 12> observed{};
    for (const auto* season : counted) {
        for (const auto& piece : season->pieces) {
            observed[static_cast<std::size_t>(piece.month - 1)] += std::popcount(piece.known);
        }
    }
    const auto means = mean_lows_of(record, question.base);
    auto mean_low = in_every_month(Celsius::from_degrees(0.0));
    std::ranges::transform(means, mean_low.begin(), [](const auto& mean) { return *mean; });
    const bool seasonless = has_no_season(mean_low);

    // The same for every line, and dear: by percent asked, for `last` and `first`.
    std::vector<std::pair<RankInterval, RankInterval>> ranks;
    for (const double percent : question.percents) {
        const auto chance = Probability::clamped(percent / 100.0);
        ranks.emplace_back(interval_of_quantile(answer.counted_seasons, chance.complement()),
                           interval_of_quantile(answer.counted_seasons, chance));
    }

    answer.thresholds.emplace().reserve(question.lines.size());
    for (const auto line : question.lines) {
        LineCount result;
        result.ends.reserve(n);
        for (const auto* season : counted) {
            count(*season, turn, tenths_of(line), result);
        }
        double nights_per_year = 0.0;
        for (std::size_t month = 0; month < 12; ++month) {
            nights_per_year += calendar::kMeanDaysOfMonths[month] * result.nights[month] / observed[month];
        }
        const auto without =
            std::ranges::count_if(result.ends, [](const SeasonEnds& ends) { return !ends.first; });
        const auto share_without =
            Probability::clamped(static_cast<double>(without) / static_cast<double>(n));
        const bool every_month = std::ranges::all_of(
            result.seasons_with_nights, [&](int with) { return static_cast<std::size_t>(2 * with) >= n; });
        const auto state = seasonless                               ? ThresholdState::NoSeason
                           : static_cast<std::size_t>(without) == n ? ThresholdState::Never
                           : every_month                            ? ThresholdState::NoWindow
                                                                    : ThresholdState::Ordinary;
        ThresholdDates dates{line,
                             state,
                             nights_per_year,
                             {answer.counted_seasons, share_without, {}, {}, {}},
                             {answer.counted_seasons, share_without, {}, {}, {}},
                             {}};
        // nullopt sorts before every number, as the rule wants it for `last`.
        const auto lasts = sorted_places(result.ends, &SeasonEnds::last, std::less{});
        const auto firsts = sorted_places(result.ends, &SeasonEnds::first, gaps_last);
        const auto lengths = free_days(counted, result.ends);
        for (std::size_t k = 0; k < question.percents.size(); ++k) {
            const double percent = question.percents[k];
            if (seasonless) {
                dates.last.dates[percent] = std::nullopt;
                dates.first.dates[percent] = std::nullopt;
                dates.free_days[percent] = std::nullopt;
                continue;
            }
            const int seasons_counted = answer.counted_seasons;
            add_date(dates.last, percent, element_of_last(percent, seasons_counted), ranks[k].first, lasts,
                     turn);
            add_date(dates.first, percent, element_of_first(percent, seasons_counted), ranks[k].second, firsts,
                     turn);
            // Lengths follow the rule of `last`: element N - floor(p N / 100).
            const int pairs = static_cast<int>(lengths.size());
            const int element = element_of_last(percent, pairs);
            dates.free_days[percent] = element >= 1 && element <= pairs
                                           ? lengths[static_cast<std::size_t>(element - 1)]
                                           : std::nullopt;
        }
        answer.thresholds->push_back(std::move(dates));
    }
    return answer;
}

} // namespace lathhouse::climate
