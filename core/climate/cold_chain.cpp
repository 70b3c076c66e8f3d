#include "core/climate/cold_chain.h"

#include "core/climate/chain_by_night.h"
#include "core/climate/normal.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstring>
#include <limits>
#include <mutex>

namespace lathhouse::climate {

namespace {

constexpr std::size_t kStates = 104; // A multiple of the block of targets below.
constexpr double kStep = 0.1;
constexpr double kLowest = -5.5; // Middle of the first state.
/// A transition further than this many standard deviations out is left off: less than 1e-6 of a row.
constexpr double kReach = 5.0;
constexpr float kNeverCold = -100.0F;
constexpr float kNoChanceLeft = 1e-8F;

// Four floats worked on at once, or eight where the processor turns out to have registers for them. The
// attributes are understood by GCC and Clang; where there are no such registers they take it apart. What
// comes out is the same to the last bit: each case is summed in the same order.
using Quad = float __attribute__((vector_size(16)));
#if defined(__x86_64__)
using Oct = float __attribute__((vector_size(32)));
#endif

double middle(std::size_t state)
{
    return kLowest + kStep * static_cast<double>(state);
}

struct ChainTable {
    std::array<float, kStates> start{};
    /// By target, then source: a target's sum runs over neighbouring memory.
    std::array<std::array<float, kStates>, kStates> to_from{};
    /// First source and one past the last that reach a target.
    std::array<std::size_t, kStates> first_source{};
    std::array<std::size_t, kStates> end_source{};
};

ChainTable make_table(double persistence)
{
    ChainTable result;
    const double spread = std::sqrt(1.0 - persistence * persistence);
    const auto lower_edge = [](std::size_t state) {
        return state == 0 ? -std::numeric_limits<double>::infinity() : middle(state) - kStep / 2.0;
    };
    const auto upper_edge = [](std::size_t state) {
        return state + 1 == kStates ? std::numeric_limits<double>::infinity() : middle(state) + kStep / 2.0;
    };
    result.first_source.fill(kStates);
    for (std::size_t to = 0; to < kStates; ++to) {
        result.start[to] = static_cast<float>(normal_below(upper_edge(to)) - normal_below(lower_edge(to)));
    }
    for (std::size_t from = 0; from < kStates; ++from) {
        // The middle of the state's own mass, not of its width: halves the grid's error.
        const double mass = normal_below(upper_edge(from)) - normal_below(lower_edge(from));
        const double centre =
            persistence * (normal_density(lower_edge(from)) - normal_density(upper_edge(from))) / mass;
        std::array<double, kStates> row{};
        double sum = 0.0;
        for (std::size_t to = 0; to < kStates; ++to) {
            if (std::abs(middle(to) - centre) <= kReach * spread) {
                row[to] = normal_below((upper_edge(to) - centre) / spread) -
                          normal_below((lower_edge(to) - centre) / spread);
                sum += row[to];
            }
        }
        for (std::size_t to = 0; to < kStates; ++to) {
            if (row[to] > 0.0) {
                result.to_from[to][from] = static_cast<float>(row[to] / sum);
                result.first_source[to] = std::min(result.first_source[to], from);
                result.end_source[to] = from + 1;
            }
        }
    }
    return result;
}

/// The table of a persistence, made when it is first asked for.
const ChainTable& chain_table(double persistence)
{
    constexpr std::size_t kTables = 29; // One a hundredth.
    constexpr double kLeast = 0.60;
    static std::array<std::once_flag, kTables> made;
    static std::array<ChainTable, kTables> tables;
    const double hundredths = std::round((persistence - kLeast) * 100.0);
    const auto which = static_cast<std::size_t>(std::clamp(hundredths, 0.0, kTables - 1.0));
    std::call_once(made[which],
                   [which] { tables[which] = make_table(kLeast + 0.01 * static_cast<double>(which)); });
    return tables[which];
}

/// First state of which a part lies above the barrier; kStates where none does.
std::size_t first_state_above(float barrier)
{
    const double place = std::floor((static_cast<double>(barrier) - kLowest) / kStep + 0.5);
    return place <= 0.0 ? 0 : std::min(static_cast<std::size_t>(place), kStates);
}

/// Of each night, the table that leads to it from the night before.
using TablesOfNights = std::vector<const ChainTable*>;

/// One night on: `next` for the targets from `lowest_target` (a multiple of Targets) up, out of the sources
/// from `lowest_source` up.
template <class Floats, std::size_t Groups, std::size_t Targets>
[[gnu::always_inline]] inline void advance(const ChainTable& table, const Floats* now, Floats* next,
                                           std::size_t lowest_source, std::size_t lowest_target)
{
    for (std::size_t to = lowest_target; to < kStates; to += Targets) {
        std::size_t first = kStates;
        std::size_t end = 0;
        std::array<const float*, Targets> factors{};
        for (std::size_t t = 0; t < Targets; ++t) {
            first = std::min(first, table.first_source[to + t]);
            end = std::max(end, table.end_source[to + t]);
            factors[t] = table.to_from[to + t].data();
        }
        Floats sums[Targets][Groups] = {};
        for (std::size_t from = std::max(first, lowest_source); from < end; ++from) {
            const Floats* source = now + from * Groups;
            for (std::size_t t = 0; t < Targets; ++t) {
                const float factor = factors[t][from];
                for (std::size_t q = 0; q < Groups; ++q) {
                    sums[t][q] += factor * source[q];
                }
            }
        }
        for (std::size_t t = 0; t < Targets; ++t) {
            for (std::size_t q = 0; q < Groups; ++q) {
                next[(to + t) * Groups + q] = sums[t][q];
            }
        }
    }
}

template <class Floats, std::size_t Groups, std::size_t Targets>
[[gnu::always_inline]] inline void run(const TablesOfNights& tables, const BarrierPaths& barriers,
                                       BarrierPaths& result)
{
    static_assert(kStates % Targets == 0);
    constexpr std::size_t kWidth = sizeof(Floats) / sizeof(float);
    constexpr std::size_t kLanes = Groups * kWidth;

    // Before the first night that can be cold the chain is as it began; after the last one nothing changes.
    std::size_t first_night = barriers.nights();
    std::size_t end_night = 0;
    for (std::size_t night = 0; night < barriers.nights(); ++night) {
        const float* row = barriers.row(night);
        if (*std::max_element(row, row + kLanes) > static_cast<float>(kLowest - kStep / 2.0)) {
            first_night = std::min(first_night, night);
            end_night = night + 1;
        }
    }
    for (std::size_t night = 0; night < std::min(first_night, barriers.nights()); ++night) {
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            result.at(night, lane) = 1.0F;
        }
    }
    std::array<Floats, kStates * Groups> one{};
    std::array<Floats, kStates * Groups> two{};
    Floats* now = one.data();
    Floats* next = two.data();
    for (std::size_t state = 0; state < kStates; ++state) {
        for (std::size_t q = 0; q < Groups; ++q) {
            now[state * Groups + q] = Floats{} + tables.front()->start[state]; // All begin alike.
        }
    }
    std::size_t lowest_kept = 0;
    for (std::size_t night = first_night; night < end_night; ++night) {
        const float* row = barriers.row(night);
        const float mildest = *std::min_element(row, row + barriers.cases());
        const std::size_t kept_now = first_state_above(mildest);
        if (night > first_night) {
            advance<Floats, Groups, Targets>(*tables[night], now, next, lowest_kept,
                                             kept_now / Targets * Targets);
            std::swap(now, next);
        }
        // States below every barrier count as empty from here on and are never read again.
        const std::size_t all_kept =
            std::min(kStates, first_state_above(*std::max_element(row, row + kLanes)) + 1);
        Floats sum[Groups] = {};
        Floats barrier[Groups];
        for (std::size_t q = 0; q < Groups; ++q) {
            std::memcpy(&barrier[q], row + q * kWidth, sizeof(Floats));
        }
        constexpr float kPerStep = static_cast<float>(1.0 / kStep);
        for (std::size_t state = kept_now; state < kStates; ++state) {
            Floats* values = now + state * Groups;
            if (state < all_kept) {
                const float top = static_cast<float>(middle(state) + kStep / 2.0);
                for (std::size_t q = 0; q < Groups; ++q) {
                    Floats part = (top - barrier[q]) * kPerStep;
                    part = part < 0.0F ? Floats{} : part;
                    part = part > 1.0F ? Floats{} + 1.0F : part;
                    values[q] *= part;
                }
            }
            for (std::size_t q = 0; q < Groups; ++q) {
                sum[q] += values[q];
            }
        }
        lowest_kept = kept_now;
        float most = 0.0F;
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            const float chance = std::min(sum[lane / kWidth][lane % kWidth], 1.0F);
            result.at(night, lane) = chance;
            most = std::max(most, lane < barriers.cases() ? chance : 0.0F);
        }
        if (most < kNoChanceLeft) {
            end_night = night + 1; // What follows is copied from this night: no chance.
        }
    }
    for (std::size_t night = std::max(end_night, first_night); night < barriers.nights(); ++night) {
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            result.at(night, lane) = night == 0 ? 1.0F : result.at(night - 1, lane);
        }
    }
}

#if defined(__x86_64__)
[[gnu::target("avx2")]] void run_eight_at_once(const TablesOfNights& tables, const BarrierPaths& barriers,
                                               BarrierPaths& result)
{
    run<Oct, 2, 4>(tables, barriers, result);
}
#endif

void run_sixteen(const TablesOfNights& tables, const BarrierPaths& barriers, BarrierPaths& result)
{
#if defined(__x86_64__)
    static const bool eight_at_once = __builtin_cpu_supports("avx2");
    if (eight_at_once) {
        run_eight_at_once(tables, barriers, result);
        return;
    }
#endif
    run<Quad, 4, 2>(tables, barriers, result);
}

} // namespace

BarrierPaths::BarrierPaths(std::size_t nights, std::size_t cases)
    : nights_(nights), cases_(cases), lanes_(cases <= 4   ? 4
                                             : cases <= 8 ? 8
                                                          : 16),
      values_(nights * lanes_, kNeverCold)
{
    assert(cases >= 1 && cases <= kMostCases);
}

BarrierPaths BarrierPaths::reversed() const
{
    BarrierPaths result{nights_, cases_};
    for (std::size_t night = 0; night < nights_; ++night) {
        std::copy_n(row(nights_ - 1 - night), lanes_,
                    result.values_.begin() + static_cast<std::ptrdiff_t>(night * lanes_));
    }
    return result;
}

BarrierPaths none_so_far(const BarrierPaths& barriers, std::span<const double> persistence)
{
    assert(persistence.size() == barriers.nights());
    BarrierPaths result{barriers.nights(), barriers.cases()};
    if (persistence.empty()) {
        return result;
    }
    TablesOfNights tables(persistence.size());
    std::ranges::transform(persistence, tables.begin(),
                           [](double of_night) { return &chain_table(of_night); });
    switch (barriers.lanes()) {
    case 4:
        run<Quad, 1, 4>(tables, barriers, result);
        break;
    case 8:
        run<Quad, 2, 4>(tables, barriers, result);
        break;
    default:
        run_sixteen(tables, barriers, result);
        break;
    }
    return result;
}

BarrierPaths none_so_far(const BarrierPaths& barriers, double persistence)
{
    return none_so_far(barriers, std::vector<double>(barriers.nights(), persistence));
}

} // namespace lathhouse::climate
