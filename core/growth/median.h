#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace lathhouse::growth {

/// The middle value, of an even number the mean of the two. Precondition: not empty.
inline double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    if (values.size() % 2 == 1) {
        return *middle;
    }
    return (*std::max_element(values.begin(), middle) + *middle) / 2.0;
}

} // namespace lathhouse::growth
