#pragma once

#include "core/base/result.h"
#include "core/photo/outline.h"
#include "core/photo/picture.h"

#include <array>
#include <cstdint>

namespace lathhouse::photo {

using Histogram = std::array<std::uint64_t, 256>;

/// The value that parts a histogram in two so that the variance between the parts is largest; of equals the lowest.
/// 0 where all are one value. Source: N. Otsu, A threshold selection method from gray-level histograms, IEEE
/// Transactions SMC-9 (1979), 62-66, equation 18.
int otsu_threshold(const Histogram& histogram);
/// Share of the variance that this parting explains, 0 to 1: small where there are no two groups to part. NaN where
/// all are one value. Source: the same, equation 16.
double separation(const Histogram& histogram, int threshold);
/// Under this separation a picture has no two groups to part (an even spread has 0.75 at best).
inline constexpr double kPoorSeparation = 0.7;

struct GreenCover {
    std::size_t green; ///< Pixels whose excess green lies above the threshold.
    std::size_t all;   ///< Pixels of the region.
    int threshold;     ///< 0 to 255.
    double separation; ///< As above.
    double share() const { return static_cast<double>(green) / static_cast<double>(all); }
};

/// Excess green 2G - R - B, cut to 0 to 255, parted by Otsu. Precondition: the region is of a picture of this size and
/// not empty. Source of the index: D. M. Woebbecke and others, Transactions of the ASAE 38 (1995), 259-269 (from
/// memory), here on the values as stored.
GreenCover green_cover(const Picture& picture, const Region& region);

} // namespace lathhouse::photo
