#pragma once

#include <array>

namespace lathhouse::climate {

/// A point of a sum that stands for an integral over a standard normal distribution.
struct QuadratureNode {
    double at; ///< In standard deviations.
    double weight;
};

// Gauss-Hermite nodes (Abramowitz and Stegun, table 25.10): with n of them exact for polynomials up to the degree 2n - 1.
inline constexpr std::array<QuadratureNode, 1> kOneNode{{{0.0, 1.0}}};
inline constexpr std::array<QuadratureNode, 3> kThreeNodes{
    {{-1.7320508075688772, 1.0 / 6.0}, {0.0, 2.0 / 3.0}, {1.7320508075688772, 1.0 / 6.0}}};
inline constexpr std::array<QuadratureNode, 5> kFiveNodes{{{-2.856970013872806, 0.011257411327720689},
                                                           {-1.355626179974266, 0.22207592200561265},
                                                           {0.0, 0.53333333333333333},
                                                           {1.355626179974266, 0.22207592200561265},
                                                           {2.856970013872806, 0.011257411327720689}}};

} // namespace lathhouse::climate
