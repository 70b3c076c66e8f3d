#pragma once

#include <algorithm>
#include <cstddef>
#include <functional>
#include <thread>
#include <vector>

namespace lathhouse {

/// Calls `work(index)` for every index below `count`, on as many threads as the machine has cores. The calls
/// must not touch what another one writes, and must not throw. Which thread does which is left open.
inline void side_by_side(std::size_t count, const std::function<void(std::size_t)>& work)
{
    const std::size_t threads =
        std::min(count, static_cast<std::size_t>(std::max(1U, std::thread::hardware_concurrency())));
    std::vector<std::jthread> others;
    const auto share = [&](std::size_t first) {
        for (std::size_t index = first; index < count; index += threads) {
            work(index);
        }
    };
    for (std::size_t thread = 1; thread < threads; ++thread) {
        others.emplace_back(share, thread);
    }
    if (count > 0) {
        share(0);
    }
}

} // namespace lathhouse
