#include "app/chart/label_places.h"

#include <gtest/gtest.h>

namespace lathhouse::chart {
namespace {

const QRectF kRoom(0, 0, 400, 100);

LabelWish wish(std::vector<QPointF> homes, qreal width = 100.0)
{
    return {.size = {width, 15.0}, .ascent = 12.0, .room = kRoom, .homes = std::move(homes)};
}

TEST(LabelPlaces, FirstHomeWithRoomIsTaken)
{
    const auto places = places_at_home({wish({{50, 40}}), wish({{60, 45}, {200, 45}}), wish({{70, 42}})});
    EXPECT_EQ(places[0], QPointF(50, 40));
    EXPECT_EQ(places[1], QPointF(200, 45));
    EXPECT_FALSE(places[2].has_value());
}

TEST(LabelPlaces, RoomIsNeverLeft)
{
    const auto places = places_at_home({wish({{350, 40}}), wish({{50, 5}}), wish({{50, 99}})});
    for (const auto& place : places) {
        EXPECT_FALSE(place.has_value());
    }
}

TEST(LabelPlaces, WordsStepToTheNearerSideOfTheCursor)
{
    const std::vector<LabelWish> wishes{wish({{150, 40}})};
    const auto home = places_at_home(wishes);
    EXPECT_EQ(places_beside(wishes, home, 20.0)[0], QPointF(150, 40));
    EXPECT_EQ(places_beside(wishes, home, 160.0)[0], QPointF(160 + kClearOfCursor, 40));
    EXPECT_EQ(places_beside(wishes, home, 240.0)[0], QPointF(240 - kClearOfCursor - 100, 40));
}

TEST(LabelPlaces, NoPlaceIsUnderTheCursorOrAnotherLabel)
{
    const std::vector<LabelWish> wishes{wish({{150, 40}}), wish({{255, 45}, {20, 45}}), wish({{150, 80}}, 200.0),
                                        wish({{10, 60}}, 60.0)};
    const auto home = places_at_home(wishes);
    for (int x = 0; x <= 400; ++x) {
        const auto places = places_beside(wishes, home, x);
        for (std::size_t one = 0; one < wishes.size(); ++one) {
            if (!places[one]) {
                continue;
            }
            const QRectF box = wishes[one].box(*places[one]);
            EXPECT_TRUE(kRoom.contains(box)) << x;
            EXPECT_FALSE(box.left() < x && x < box.right()) << x;
            for (std::size_t other = 0; other < one; ++other) {
                EXPECT_FALSE(places[other] && box.intersects(wishes[other].box(*places[other]))) << x;
            }
        }
    }
}

TEST(LabelPlaces, WordsOnACurveFollowIt)
{
    LabelWish on_slope = wish({{150, 40}});
    on_slope.base_at = [](qreal middle) { return middle / 5.0; };
    const std::vector<LabelWish> wishes{on_slope};
    const auto place = places_beside(wishes, places_at_home(wishes), 160.0)[0];
    ASSERT_TRUE(place.has_value());
    EXPECT_DOUBLE_EQ(place->y(), (160.0 + kClearOfCursor + 50.0) / 5.0);
}

TEST(LabelPlaces, WordsThatHadNoRoomStayOut)
{
    const std::vector<LabelWish> wishes{wish({{50, 40}}), wish({{60, 45}})};
    EXPECT_FALSE(places_beside(wishes, places_at_home(wishes), 390.0)[1].has_value());
}

} // namespace
} // namespace lathhouse::chart
