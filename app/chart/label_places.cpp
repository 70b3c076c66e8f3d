#include "app/chart/label_places.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::chart {

namespace {

constexpr qreal kBetweenLabels = 4.0;

bool is_free(const QRectF& box, const QRectF& room, const std::vector<QRectF>& taken)
{
    const QRectF with_margin = box.adjusted(-kBetweenLabels, 0, kBetweenLabels, 0);
    return room.contains(with_margin) &&
           std::none_of(taken.begin(), taken.end(),
                        [&with_margin](const QRectF& other) { return other.intersects(with_margin); });
}

bool is_crossed(const QRectF& box, qreal cursor_x)
{
    return box.left() - kClearOfCursor < cursor_x && cursor_x < box.right() + kClearOfCursor;
}

} // namespace

std::vector<LabelPlace> places_at_home(const std::vector<LabelWish>& wishes)
{
    std::vector<LabelPlace> places;
    std::vector<QRectF> taken;
    for (const LabelWish& wish : wishes) {
        const auto home = std::find_if(wish.homes.begin(), wish.homes.end(), [&](QPointF at) {
            return is_free(wish.box(at), wish.room, taken);
        });
        if (home == wish.homes.end()) {
            places.emplace_back();
            continue;
        }
        taken.push_back(wish.box(*home));
        places.emplace_back(*home);
    }
    return places;
}

std::vector<LabelPlace> places_beside(const std::vector<LabelWish>& wishes,
                                      const std::vector<LabelPlace>& at_home, qreal cursor_x)
{
    std::vector<LabelPlace> places = at_home;
    std::vector<QRectF> taken;
    for (std::size_t label = 0; label < wishes.size(); ++label) {
        if (at_home[label] && !is_crossed(wishes[label].box(*at_home[label]), cursor_x)) {
            taken.push_back(wishes[label].box(*at_home[label]));
        }
    }
    for (std::size_t label = 0; label < wishes.size(); ++label) {
        const LabelWish& wish = wishes[label];
        if (!at_home[label] || !is_crossed(wish.box(*at_home[label]), cursor_x)) {
            continue;
        }
        const qreal width = wish.size.width();
        std::array<qreal, 2> lefts{cursor_x + kClearOfCursor, cursor_x - kClearOfCursor - width};
        const qreal home = at_home[label]->x();
        if (std::abs(lefts[1] - home) < std::abs(lefts[0] - home)) {
            std::swap(lefts[0], lefts[1]);
        }
        std::vector<QPointF> tries;
        for (const qreal left : lefts) {
            const qreal base = wish.base_at ? wish.base_at(left + width / 2.0) : at_home[label]->y();
            tries.emplace_back(left, base);
        }
        std::copy_if(wish.homes.begin(), wish.homes.end(), std::back_inserter(tries),
                     [&](QPointF at) { return !is_crossed(wish.box(at), cursor_x); });
        const auto free = std::find_if(tries.begin(), tries.end(), [&](QPointF at) {
            return is_free(wish.box(at), wish.room, taken);
        });
        if (free == tries.end()) {
            places[label].reset();
            continue;
        }
        taken.push_back(wish.box(*free));
        places[label] = *free;
    }
    return places;
}

} // namespace lathhouse::chart
