#include "core/climate/cold_seasons.h"

#include "core/calendar/day_of_year.h"
#include "core/calendar/month_length.h"

#include <algorithm>
#include <bit>
#include <chrono>

namespace lathhouse::climate {
namespace {

struct Missing {
    int days = 0;
    int longest_run = 0;
};

/// Fills what is known of the piece's lows.
void look_at_lows(SeasonPiece& piece)
{
    int lowest = 32767;
    int highest = -32767;
    for (int day = piece.first_day; day <= piece.last_day && piece.readings != nullptr; ++day) {
        const auto low = piece.readings->low[static_cast<std::size_t>(day - 1)];
        if (low.known()) {
            piece.known |= std::uint32_t{1} << (day - 1);
            lowest = std::min(lowest, low.tenths());
            highest = std::max(highest, low.tenths());
        }
    }
    if (piece.known != 0) {
        piece.lowest_tenths = lowest;
        piece.highest_tenths = highest;
    }
}

Missing missing_lows(const SeasonPiece& piece)
{
    if (piece.first_day > piece.last_day) {
        return {};
    }
    const std::uint32_t up_to_last = (std::uint32_t{1} << piece.last_day) - 1;
    const std::uint32_t before_first = (std::uint32_t{1} << (piece.first_day - 1)) - 1;
    std::uint32_t gaps = ~piece.known & up_to_last & ~before_first;
    Missing missing{std::popcount(gaps), 0};
    // Each step shortens every run of ones by one.
    for (; gaps != 0; gaps &= gaps << 1) {
        ++missing.longest_run;
    }
    return missing;
}

} // namespace

std::vector<ColdSeason> cold_seasons_of(const DailyRecord& record, BasePeriod base, SeasonTurn turn)
{
    const int turn_month = turn.last_day().month();
    const int turn_day = turn.last_day().day();
    const bool at_months_end = turn_day == calendar::days_in_month_of_leap_year(turn_month);
    const bool at_years_end = at_months_end && turn_month == 12;
    const int first = at_years_end ? base.first_year - 1 : base.first_year;

    std::vector<ColdSeason> seasons;
    for (int year = first; year + 1 <= base.last_year; ++year) {
        ColdSeason season{year, true, {}};
        season.pieces.reserve(13);
        const auto add = [&](int piece_year, int month, int first_day, int last_day) {
            season.pieces.push_back({piece_year, month, first_day,
                                     std::min(last_day, calendar::days_in_month(piece_year, month)),
                                     record.month(piece_year, month), 0, 0, 0});
            look_at_lows(season.pieces.back());
        };
        if (!at_months_end) {
            add(year, turn_month, turn_day + 1, 31);
        }
        for (int k = 0; k < (at_months_end ? 12 : 11); ++k) {
            const int month_index = turn_month + k; // From 0 for January of `year`.
            add(year + month_index / 12, month_index % 12 + 1, 1, 31);
        }
        if (!at_months_end) {
            add(year + 1, turn_month, 1, turn_day);
        }
        std::array<Missing, 12> by_month{};
        for (const auto& piece : season.pieces) {
            const auto missing = missing_lows(piece);
            auto& month = by_month[static_cast<std::size_t>(piece.month - 1)];
            month.days += missing.days;
            month.longest_run = std::max(month.longest_run, missing.longest_run);
        }
        season.counts = std::ranges::all_of(by_month, [](const Missing& missing) {
            return missing.days <= kMostMissingDays && missing.longest_run < kSpoilingRun;
        });
        seasons.push_back(std::move(season));
    }
    return seasons;
}

Monthly<std::optional<Celsius>> mean_lows_of(const DailyRecord& record, BasePeriod base)
{
    Monthly<std::optional<Celsius>> means;
    for (int month = 1; month <= 12; ++month) {
        long sum = 0;
        long count = 0;
        for (int year = base.first_year; year <= base.last_year; ++year) {
            const auto* readings = record.month(year, month);
            if (readings == nullptr) {
                continue;
            }
            for (const auto low : readings->low) {
                if (low.known()) {
                    sum += low.tenths();
                    ++count;
                }
            }
        }
        if (count > 0) {
            means[static_cast<std::size_t>(month - 1)] =
                Celsius::from_degrees(static_cast<double>(sum) / static_cast<double>(count) / 10.0);
        }
    }
    return means;
}

SeasonTurn turn_of(const DailyRecord& record, BasePeriod base)
{
    const auto means = mean_lows_of(record, base);
    const auto mean_of = [&](std::array<std::size_t, 3> months) -> std::optional<double> {
        double sum = 0.0;
        int count = 0;
        for (const auto month : months) {
            if (means[month]) {
                sum += means[month]->degrees();
                ++count;
            }
        }
        return count > 0 ? std::optional{sum / count} : std::nullopt;
    };
    const auto december_to_february = mean_of({11, 0, 1});
    const auto june_to_august = mean_of({5, 6, 7});
    auto lows = in_every_month(Celsius::from_degrees(0.0));
    if (december_to_february && june_to_august) {
        for (const std::size_t month : {11, 0, 1}) {
            lows[month] = Celsius::from_degrees(*december_to_february);
        }
        for (const std::size_t month : {5, 6, 7}) {
            lows[month] = Celsius::from_degrees(*june_to_august);
        }
    }
    return SeasonTurn::of_lows(lows);
}

} // namespace lathhouse::climate
