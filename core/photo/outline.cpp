#include "core/photo/outline.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace lathhouse::photo {

Region Region::frame(int width, int height)
{
    Region region;
    for (int y = 0; y < height; ++y) {
        region.runs_.push_back({y, 0, width});
    }
    return region;
}

Result<Region> Region::outline(std::span<const Point> corners, int width, int height)
{
    if (corners.size() < 3) {
        return Error{ErrorCode::WrongUsage, said("an outline has at least three corners")};
    }
    for (const auto& corner : corners) {
        if (!(corner.x >= 0 && corner.x <= width && corner.y >= 0 && corner.y <= height)) {
            return Error{ErrorCode::OutOfRange,
                         said("a corner of the outline lies outside of the upright picture, which has %1 x %2 pixels",
                              width, height)};
        }
    }
    Region region;
    std::vector<double> crossings;
    for (int y = 0; y < height; ++y) {
        const double middle = y + 0.5;
        crossings.clear();
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const auto& from = corners[i];
            const auto& to = corners[(i + 1) % corners.size()];
            // Half open, so that a corner on the line is counted once.
            if ((from.y <= middle) != (to.y <= middle)) {
                crossings.push_back(from.x + (middle - from.y) / (to.y - from.y) * (to.x - from.x));
            }
        }
        std::ranges::sort(crossings);
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
            const int begin = static_cast<int>(std::ceil(crossings[i] - 0.5));
            const int end = static_cast<int>(std::ceil(crossings[i + 1] - 0.5));
            if (begin < end) {
                region.runs_.push_back({y, begin, std::min(end, width)});
            }
        }
    }
    if (region.runs_.empty()) {
        return Error{ErrorCode::WrongUsage, said("no pixel lies inside of the outline; draw it larger")};
    }
    return region;
}

std::size_t Region::pixels() const
{
    std::size_t count = 0;
    for (const auto& run : runs_) {
        count += static_cast<std::size_t>(run.end - run.begin);
    }
    return count;
}

} // namespace lathhouse::photo
