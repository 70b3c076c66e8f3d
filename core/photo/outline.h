#pragma once

#include "core/base/result.h"
#include "core/photo/picture.h"

#include <span>
#include <vector>

namespace lathhouse::photo {

/// A place in the upright picture, pixels from its top left corner; the first pixel's middle is at 0.5, 0.5.
struct Point {
    double x;
    double y;
    friend bool operator==(const Point&, const Point&) = default;
};

/// Pixels beside each other in one row: from `begin` up to but not including `end`.
struct Run {
    int y;
    int begin;
    int end;
};

/// Which pixels of a picture are looked at.
class Region {
public:
    static Region frame(int width, int height);
    /// The pixels whose middle lies inside of the polygon, which is closed by itself; where it crosses itself, by the
    /// even-odd rule. Errors: WrongUsage under three corners or where no pixel lies inside; OutOfRange for a corner
    /// outside of the picture.
    static Result<Region> outline(std::span<const Point> corners, int width, int height);

    std::span<const Run> runs() const { return runs_; } ///< From the top, in a row from the left.
    std::size_t pixels() const;

private:
    std::vector<Run> runs_;
};

} // namespace lathhouse::photo
