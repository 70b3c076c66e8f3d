#include "core/climate/day_shift.h"

#include <algorithm>
#include <iterator>

namespace lathhouse::climate {

DayShift::DayShift(std::vector<Knot> knots) : knots_(std::move(knots))
{
    std::ranges::stable_sort(knots_, {}, &Knot::season_place);
    const auto doubled = std::ranges::unique(
        knots_, [](const Knot& a, const Knot& b) { return b.season_place - a.season_place < 1e-9; });
    knots_.erase(doubled.begin(), doubled.end());
    for (std::size_t k = 1; k < knots_.size(); ++k) {
        const double apart = knots_[k].season_place - knots_[k - 1].season_place;
        knots_[k].days = std::max(knots_[k].days, knots_[k - 1].days - apart);
    }
}

double DayShift::at(double season_place) const
{
    if (knots_.empty()) {
        return 0.0;
    }
    const auto above = std::ranges::lower_bound(knots_, season_place, {}, &Knot::season_place);
    if (above == knots_.end()) {
        return knots_.back().days;
    }
    if (above == knots_.begin()) {
        return above->days;
    }
    const auto below = std::prev(above);
    const double share = (season_place - below->season_place) / (above->season_place - below->season_place);
    return below->days + share * (above->days - below->days);
}

double DayShift::model_place(double moved_place) const
{
    if (knots_.empty()) {
        return moved_place;
    }
    const auto moved = [](const Knot& knot) { return knot.season_place + knot.days; };
    const auto above = std::ranges::lower_bound(knots_, moved_place, {}, moved);
    if (above == knots_.end()) {
        return moved_place - knots_.back().days;
    }
    if (above == knots_.begin()) {
        return moved_place - above->days;
    }
    const auto below = std::prev(above);
    // The knot above is the first that is not before the place, so that the two differ.
    const double share = (moved_place - moved(*below)) / (moved(*above) - moved(*below));
    return below->season_place + share * (above->season_place - below->season_place);
}

} // namespace lathhouse::climate
