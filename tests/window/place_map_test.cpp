#include "app/chart/home_painters.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {
namespace {

/// Stations all round and close together, so that their words cannot all stand.
models::PlaceMap crowded(int stations)
{
    models::PlaceMap map;
    for (int i = 0; i < stations; ++i) {
        const double turn = i * 2.4;
        const double away = 0.08 + 0.9 * i / stations;
        map.stations.push_back({QStringLiteral("Station of a long name %1").arg(i), QStringLiteral("33 km"),
                                QPointF(std::cos(turn) * away, std::sin(turn) * away), 1.0 / (i + 1)});
    }
    for (int i = 0; i < 30; ++i) {
        map.towns.push_back({QStringLiteral("Town %1").arg(i), QPointF(std::cos(i) * 0.03 * i, std::sin(i) * 0.03 * i)});
    }
    map.rings = {{0.33, "20 km"}, {0.66, "40 km"}, {1.0, "60 km"}};
    return map;
}

TEST(PlaceMapWords, NoneStandsOverAnotherNorOverAMark)
{
    for (const int side : {240, 440, 620}) {
        for (const int stations : {1, 5, 12, 40}) {
            const auto words = place_map_labels({}, crowded(stations), QRectF(0, 0, side, side));
            ASSERT_EQ(words.labels.size(), words.places.size());
            std::vector<QRectF> boxes;
            for (std::size_t i = 0; i < words.labels.size(); ++i) {
                if (words.places[i]) {
                    boxes.push_back(words.labels[i].wish.box(*words.places[i]));
                }
            }
            EXPECT_FALSE(boxes.empty());
            for (std::size_t a = 0; a < boxes.size(); ++a) {
                for (std::size_t b = a + 1; b < boxes.size(); ++b) {
                    EXPECT_FALSE(boxes[a].intersects(boxes[b])) << side << ' ' << stations << ' ' << a << ' ' << b;
                }
            }
            // The home and the four winds always stand; of triangles that lie over each other the heavier one.
            for (const QRectF& box : boxes) {
                EXPECT_TRUE(std::none_of(words.marks.begin(), words.marks.begin() + 5,
                                         [&](const QRectF& mark) { return mark.intersects(box); }));
            }
        }
    }
}

TEST(PlaceMapWords, TheHeavyStandAndTheLightAreLeftOut)
{
    const auto words = place_map_labels({}, crowded(40), QRectF(0, 0, 440, 440));
    EXPECT_TRUE(words.places[0]) << "home";
    const auto standing = [&](std::size_t from, std::size_t to) {
        return std::count_if(words.places.begin() + static_cast<std::ptrdiff_t>(from),
                             words.places.begin() + static_cast<std::ptrdiff_t>(to),
                             [](const LabelPlace& place) { return place.has_value(); });
    };
    EXPECT_LT(standing(1, 41), 40) << "not all have room";
}

TEST(PlaceMapWords, ARoomTooSmallHasNone)
{
    EXPECT_TRUE(place_map_labels({}, crowded(3), QRectF(0, 0, 20, 20)).labels.empty());
}

} // namespace
} // namespace lathhouse::chart
