#include "tests/plan/random_moves.h"

#include <algorithm>
#include <numeric>

namespace lathhouse::plan {

MoveProblem make_moves(const RandomMoves& wanted)
{
    std::mt19937 engine{wanted.seed};
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(engine()) / 4294967296.0;
    };
    MoveProblem moves;
    moves.plants = wanted.plants;
    moves.nights = wanted.nights;
    moves.spots = wanted.spots + 1;
    moves.least_stay = wanted.least_stay;
    const std::size_t kinds = std::min<std::size_t>(3, wanted.spots);
    moves.zones = kinds + 1;
    for (std::size_t spot = 0; spot < wanted.spots; ++spot) {
        moves.zone.push_back(spot * kinds / wanted.spots);
    }
    moves.zone.push_back(kinds);
    for (std::size_t plant = 0; plant < wanted.plants; ++plant) {
        moves.size.push_back(1 + static_cast<int>(between(0.0, wanted.greatest_size - 1.0e-9)));
        moves.trouble.push_back(static_cast<float>(between(1.0, 3.0)));
        const bool stands = between(0.0, 1.0) < 0.5;
        moves.start.push_back(stands ? std::optional{static_cast<std::size_t>(
                                           between(0.0, static_cast<double>(wanted.spots) - 1.0e-9))}
                                     : std::nullopt);
    }
    const int all = std::accumulate(moves.size.begin(), moves.size.end(), 0);
    for (std::size_t spot = 0; spot < wanted.spots; ++spot) {
        moves.capacity.push_back(
            static_cast<int>(between(0.5, 1.6) * all / static_cast<double>(wanted.spots) + 0.5));
    }
    moves.capacity.push_back(0);
    moves.step.assign(moves.zones * moves.zones, 1.0F);
    for (std::size_t from = 0; from < kinds; ++from) {
        for (std::size_t to = 0; to < kinds; ++to) {
            moves.step[from * moves.zones + to] = from == to ? 0.0F : static_cast<float>(between(0.2, 1.5));
        }
    }
    for (std::size_t plant = 0; plant < wanted.plants; ++plant) {
        std::vector<double> taste(wanted.spots);
        std::ranges::generate(taste, [&] { return between(0.0, 1.0); });
        std::vector<std::size_t> closed_until(wanted.spots, 0);
        for (std::size_t night = 0; night < wanted.nights; ++night) {
            for (std::size_t spot = 0; spot < wanted.spots; ++spot) {
                if (night >= closed_until[spot] && between(0.0, 1.0) < 0.02) {
                    closed_until[spot] = night + 1 + static_cast<std::size_t>(between(0.0, 6.0));
                }
                const double wave =
                    std::cos(0.35 * static_cast<double>(night) + static_cast<double>(spot * spot));
                moves.cost.push_back(
                    night < closed_until[spot]
                        ? kForbidden
                        : static_cast<float>(0.6 + taste[spot] + 0.5 * wave + between(0.0, 0.2)));
            }
            moves.cost.push_back(kNowhereBase + kNowhereBySize * static_cast<float>(moves.size[plant]));
        }
    }
    return moves;
}

} // namespace lathhouse::plan
