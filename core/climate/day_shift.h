#pragma once

#include <vector>

namespace lathhouse::climate {

/// How many days later than the model has it one end of the cold season stands, by the model's day (place in
/// the season from the turn, 0 to 365, with fractions): straight between the knots, the nearest outside.
class DayShift {
public:
    struct Knot {
        double season_place;
        double days;
    };
    DayShift() = default;
    /// Knots in any order. Their days are changed no more than it takes that no day overtakes an earlier one.
    explicit DayShift(std::vector<Knot> knots);

    bool empty() const { return knots_.empty(); }
    const std::vector<Knot>& knots() const { return knots_; }
    /// Days by which that place of the model's season is moved.
    double at(double season_place) const;
    /// The place of the model's season that stands for a place in the moved one.
    double model_place(double moved_place) const;

private:
    std::vector<Knot> knots_; ///< By place, apart.
};

} // namespace lathhouse::climate
