#include "core/plan/move_grid.h"

#include "core/base/side_by_side.h"

#include <algorithm>
#include <cassert>
#include <cstring>

namespace lathhouse::plan {
namespace {

constexpr std::uint64_t kWorkOfAnyPath = 200; // What a path costs besides its cells, in cells.
constexpr std::size_t kLanes = kSpotsAtOnce;  // Floats that the plainest of today's machines takes at a time.
// That many floats as one value, which stays in a register through a loop; GCC and Clang know the attribute.
using LanesAtOnce = float __attribute__((vector_size(kLanes * sizeof(float))));

} // namespace

MoveGrid::MoveGrid(const MoveProblem& nightly, std::size_t nights_of_a_block)
    : block_nights(nights_of_a_block), whole_nights(nightly.nights),
      problem(nights_of_a_block == 1 && nightly.spots % kLanes == 0 ? nightly : own_)
{
    if (&problem == &nightly) {
        return;
    }
    const std::size_t real = nightly.spots - 1;
    own_.plants = nightly.plants;
    own_.nights = (nightly.nights + block_nights - 1) / block_nights;
    own_.spots = (nightly.spots + kLanes - 1) / kLanes * kLanes;
    own_.zones = nightly.zones;
    own_.least_stay = std::max<std::size_t>(1, (nightly.least_stay + block_nights - 1) / block_nights);
    own_.zone.assign(own_.spots, real > 0 ? nightly.zone[real - 1] : nightly.zone.back());
    std::copy_n(nightly.zone.begin(), real, own_.zone.begin());
    own_.zone.back() = nightly.zone.back();
    own_.capacity.assign(own_.spots, 0);
    std::copy_n(nightly.capacity.begin(), real, own_.capacity.begin());
    own_.size = nightly.size;
    own_.trouble = nightly.trouble;
    own_.step = nightly.step;
    own_.start = nightly.start;
    own_.cost.resize(own_.plants * own_.nights * own_.spots);
    side_by_side(own_.plants, [&](std::size_t plant) {
        for (std::size_t night = 0; night < nightly.nights; ++night) {
            const float* from = &nightly.cost[(plant * nightly.nights + night) * nightly.spots];
            float* to = &own_.cost[(plant * own_.nights + night / block_nights) * own_.spots];
            for (std::size_t spot = 0; spot < real; ++spot) {
                to[spot] += from[spot]; // A sum with a closed night is itself closed.
            }
            for (std::size_t pad = real; pad + 1 < own_.spots; ++pad) {
                to[pad] = kForbidden;
            }
            to[own_.nowhere()] += from[real];
        }
    });
}

MovePath MoveGrid::nightly_path(const MovePath& path, std::size_t nowhere) const
{
    MovePath nights(whole_nights);
    for (std::size_t night = 0; night < whole_nights; ++night) {
        const std::uint16_t spot = path[block_of(night)];
        nights[night] = spot == problem.nowhere() ? static_cast<std::uint16_t>(nowhere) : spot;
    }
    return nights;
}

PathFinder::PathFinder(const MoveGrid& grid) : grid_(&grid)
{
    const std::size_t cells = grid.cells();
    any_.resize(cells);
    free_.resize(cells);
    arrival_.resize(cells);
    running_.resize(cells);
    shut_before_.resize(cells);
    last_shut_.resize(grid.problem.spots);
    arrives_.resize(grid.problem.spots);
    lanes_ = (grid.problem.zones + kLanes - 1) / kLanes * kLanes;
    best_free_.resize(grid.problem.nights * lanes_);
    carried_.resize(grid.problem.nights * lanes_);
    step_.assign(grid.problem.zones * lanes_, 0.0F);
    for (std::size_t from = 0; from < grid.problem.zones; ++from) {
        std::copy_n(&grid.problem.step[from * grid.problem.zones], grid.problem.zones, &step_[from * lanes_]);
    }
    zone_begin_.assign(grid.problem.zones + 1, grid.problem.spots);
    for (std::size_t spot = grid.problem.spots; spot-- > 0;) {
        zone_begin_[grid.problem.zone[spot]] = spot;
    }
}

double PathFinder::find(std::size_t plant, std::span<const float> price, std::span<const int> slack,
                        MovePath* path)
{
    const auto& problem = grid_->problem;
    const std::size_t spots = problem.spots / kLanes * kLanes; // Which it is; the compiler learns it here.
    const std::size_t zones = problem.zones;
    const std::size_t lanes = lanes_ / kLanes * kLanes;
    const std::size_t blocks = problem.nights;
    const std::size_t stay = problem.least_stay;
    const auto size = static_cast<float>(problem.size[plant]);
    const float trouble = problem.trouble[plant];
    work_ += blocks * spots + kWorkOfAnyPath;

    std::ranges::fill(last_shut_, -1);
    for (std::size_t block = 0; block < blocks; ++block) {
        const std::size_t row = block * spots;
        const float* cost = &problem.cost[(plant * blocks + block) * spots];
        float* weight = &arrival_[row]; // Holds the cells' weights until the arrivals are known.
        if (price.empty()) {
            std::copy_n(cost, spots, weight);
        } else {
            const float* dear = &price[row];
#pragma GCC ivdep
            for (std::size_t spot = 0; spot < spots; ++spot) {
                weight[spot] = cost[spot] + size * dear[spot];
            }
        }
        if (!slack.empty()) {
            const int* left = &slack[row];
            const int needed = problem.size[plant];
#pragma GCC ivdep
            for (std::size_t spot = 0; spot < spots; ++spot) {
                const float open = weight[spot];
                const float value = left[spot] < needed ? kForbidden : open;
                weight[spot] = value;
            }
            weight[spots - 1] = cost[spots - 1]; // There is always room nowhere.
        }

        float* any = &any_[row];
        float* free = &free_[row];
        float* running = &running_[row];
        std::int32_t* shut = &shut_before_[row];
        if (block == 0) {
            for (std::size_t spot = 0; spot < spots; ++spot) {
                const bool carried = problem.start[plant] && *problem.start[plant] != spot;
                const float arrives = carried ? problem.carry(plant, *problem.start[plant], spot) : 0.0F;
                const float here = arrives + weight[spot];
                last_shut_[spot] = weight[spot] >= kForbidden ? 0 : -1;
                shut[spot] = last_shut_[spot];
                running[spot] = weight[spot] >= kForbidden ? 0.0F : weight[spot];
                any[spot] = here;
                free[spot] = !carried || stay == 1 || spot == problem.nowhere() ? here : kForbidden;
                arrival_[row + spot] = here;
            }
        } else {
            const float* any_before = any - spots;
            const float* free_before = free - spots;
            const float* running_before = running - spots;
            // What it costs to arrive in each zone. The least so far is compared first: so it is one instruction.
            float* best = &best_free_[(block - 1) * lanes_];
            for (std::size_t at = 0; at < zones; ++at) {
                float least = free_before[zone_begin_[at]];
                for (std::size_t spot = zone_begin_[at] + 1; spot < zone_begin_[at + 1]; ++spot) {
                    const float other = free_before[spot];
                    least = least < other ? least : other;
                }
                best[at] = least;
            }
            float* carried = &carried_[block * lanes_];
            for (std::size_t to = 0; to < lanes; to += kLanes) {
                LanesAtOnce least = LanesAtOnce{} + 4.0F * kForbidden;
                for (std::size_t from = 0; from < zones; ++from) {
                    LanesAtOnce through;
                    std::memcpy(&through, &step_[from * lanes_ + to], sizeof through);
                    through = (best[from] + trouble) + through;
                    least = least < through ? least : through;
                }
                std::memcpy(carried + to, &least, sizeof least);
            }
            float* arrives = arrives_.data();
            for (std::size_t at = 0; at < zones; ++at) {
                for (std::size_t spot = zone_begin_[at]; spot < zone_begin_[at + 1]; ++spot) {
                    arrives[spot] = carried[at];
                }
            }
            const auto now = static_cast<std::int32_t>(block);
            std::int32_t* last_shut = last_shut_.data();
            // Values first, one store each: so the compiler can take several spots at a time.
#pragma GCC ivdep
            for (std::size_t spot = 0; spot < spots; ++spot) {
                const float here = weight[spot];
                const float stayed = any_before[spot];
                const float came = arrives[spot];
                const std::int32_t shut_then = last_shut[spot];
                const std::int32_t shut_now = here >= kForbidden ? now : shut_then;
                const float open = here >= kForbidden ? 0.0F : here;
                last_shut[spot] = shut_now;
                shut[spot] = shut_now;
                running[spot] = running_before[spot] + open;
                any[spot] = (stayed < came ? stayed : came) + here;
                free[spot] = free_before[spot] + here;
                weight[spot] = came + here;
            }
            if (block + 1 >= stay) { // Those that came a least stay ago are free to leave from now on.
                const std::size_t first = block + 1 - stay;
                const float* matured = &arrival_[first * spots];
                const float* running_then = &running_[first * spots];
                const auto oldest = static_cast<std::int32_t>(first);
#pragma GCC ivdep
                for (std::size_t spot = 0; spot < spots; ++spot) {
                    const float leaves = matured[spot] + (running[spot] - running_then[spot]);
                    const float still = free[spot];
                    const float less = leaves < still ? leaves : still;
                    const float value = shut[spot] < oldest ? less : still;
                    free[spot] = value;
                }
            }
            free[spots - 1] = std::min(free[spots - 1], any[spots - 1]);
        }
    }
    const float* last = &any_[(blocks - 1) * spots];
    const double found = static_cast<double>(*std::min_element(last, last + spots));
    if (path != nullptr) {
        walk_back(plant, *path);
    }
    return found;
}

std::size_t PathFinder::arrived_from(std::size_t plant, std::size_t block, std::size_t spot) const
{
    const auto& problem = grid_->problem;
    const std::size_t to = problem.zone[spot];
    const float* best = &best_free_[(block - 1) * lanes_];
    std::size_t zone = 0;
    float least = 8.0F * kForbidden;
    for (std::size_t from = 0; from < problem.zones; ++from) {
        const float through = best[from] + problem.trouble[plant] + problem.step[from * problem.zones + to];
        if (through < least) {
            least = through;
            zone = from;
        }
    }
    const float* free = &free_[(block - 1) * problem.spots];
    for (std::size_t from = 0; from < problem.spots; ++from) {
        if (problem.zone[from] == zone && free[from] == best[zone]) {
            return from;
        }
    }
    assert(false);
    return problem.nowhere();
}

void PathFinder::walk_back(std::size_t plant, MovePath& path) const
{
    const auto& problem = grid_->problem;
    const std::size_t spots = problem.spots;
    const std::size_t stay = problem.least_stay;
    path.resize(problem.nights);
    const float* last = &any_[(problem.nights - 1) * spots];
    auto spot = static_cast<std::size_t>(std::min_element(last, last + spots) - last);
    bool free_to_leave = false;
    std::size_t block = problem.nights - 1;
    while (true) {
        const std::size_t at = block * spots + spot;
        if (free_to_leave && spot == problem.nowhere() && any_[at] == free_[at]) {
            free_to_leave = false; // Nowhere need not be stayed at: any time spent there will do.
        }
        path[block] = static_cast<std::uint16_t>(spot);
        if (block == 0) {
            return;
        }
        if (!free_to_leave) {
            const float arrives = carried_[block * lanes_ + problem.zone[spot]];
            if (any_[at - spots] <= arrives) {
                --block;
                continue;
            }
            spot = arrived_from(plant, block, spot);
            free_to_leave = true;
            --block;
            continue;
        }
        if (block + 1 >= stay) {
            const std::size_t first = block + 1 - stay;
            const std::size_t then = first * spots + spot;
            const bool open = shut_before_[at] < static_cast<std::int32_t>(first);
            if (open && free_[at] == arrival_[then] + (running_[at] - running_[then])) {
                for (std::size_t between = first; between <= block; ++between) {
                    path[between] = static_cast<std::uint16_t>(spot);
                }
                if (first == 0) {
                    return;
                }
                spot = arrived_from(plant, first, spot);
                block = first - 1;
                continue;
            }
        }
        --block;
    }
}

} // namespace lathhouse::plan
