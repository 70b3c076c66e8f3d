#pragma once

namespace lathhouse::sky {

/// Between which a figure of a spot may lie, both included.
struct FigureLimits {
    double least;
    double most;
};

// In metres.
inline constexpr FigureLimits kOpeningSize{0.05, 30.0}; ///< Width, height, and the distance behind it.
inline constexpr FigureLimits kAsideOfOpening{-20.0, 20.0}; ///< Sill above the leaves, and the middle to the right.
inline constexpr FigureLimits kOverhangDepth{0.0, 10.0};
inline constexpr FigureLimits kHeightInDegrees{0.0, 89.0}; ///< Of what stands opposite or behind.
inline constexpr FigureLimits kPanesOfGlass{0.0, 4.0};
inline constexpr FigureLimits kShareLetThrough{0.0, 1.0};

} // namespace lathhouse::sky
