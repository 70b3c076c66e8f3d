#include "core/home/demonstration_photos.h"

#include "core/photo/greenness.h"
#include "core/photo/leaf_colour.h"
#include "core/photo/photo_length.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <map>

namespace lathhouse::home {
namespace {

constexpr PlantId kPhotographedLemon = 3;
const DemonstrationOptions kPhotographed{.today = calendar::Date{2026, 11, 25}};

std::vector<DemonstrationPhoto> photographed(std::optional<int> count = {}, DemonstrationOptions options = kPhotographed)
{
    const auto made = demonstration(options).value();
    return demonstration_photos(options, made, tell_story(options, made), count);
}

/// What our own photo code measures in a picture.
struct SeenInPicture {
    double green;
    double yellow_of_leaf;
};
SeenInPicture seen_in(const DemonstrationPhoto& photo)
{
    const auto picture = photo::drawn_plant(photo.drawn, 640, 480);
    const auto places = photo::drawn_places(photo.drawn, 640, 480, photo.reach_cm);
    const auto region = photo::Region::outline(places.crown, 640, 480).value();
    return {photo::green_cover(picture, region).share(),
            photo::leaf_colours(picture, region).yellow_of_leaf().value_or(0.0)};
}

class PhotographedDrift : public testing::Test {
protected:
    PhotographedDrift()
    {
        const auto made = demonstration(kPhotographed).value();
        const auto story = tell_story(kPhotographed, made);
        const auto drift = std::ranges::find_if(story.events, [](const Event& event) {
            return event.plant == kPhotographedLemon && event.kind == EventKind::ChemicalDamage;
        });
        for (const auto& photo : demonstration_photos(kPhotographed, made, story)) {
            if (photo.plant == kPhotographedLemon) {
                by_day_[calendar::days_between(drift->happened, photo.taken)] = photo;
            }
        }
    }
    SeenInPicture on(int day) const { return seen_in(by_day_.at(day)); }
    std::map<int, DemonstrationPhoto> by_day_;
};

TEST_F(PhotographedDrift, YellowsWithinWeeksAndIsOverByTheAutumn)
{
    EXPECT_LT(on(-6).yellow_of_leaf, 0.10);
    EXPECT_GT(on(22).yellow_of_leaf, 0.30);
    EXPECT_GT(on(22).yellow_of_leaf, on(8).yellow_of_leaf);
    EXPECT_LT(on(71).yellow_of_leaf, on(36).yellow_of_leaf);
    EXPECT_LT(on(120).yellow_of_leaf, 0.12);
}

TEST_F(PhotographedDrift, LosesGreenCoverAndGrowsItAgain)
{
    EXPECT_LT(on(29).green, 0.8 * on(-6).green);
    EXPECT_GT(on(92).green, 1.15 * on(29).green);
    EXPECT_GT(on(120).green, 0.9 * on(-6).green);
}

TEST_F(PhotographedDrift, ShowsTheShareOfYellowThatTheStoryTells)
{
    for (const auto& [day, photo] : by_day_) {
        EXPECT_NEAR(seen_in(photo).yellow_of_leaf, photo.drawn.yellow_share, 0.12) << "day " << day;
    }
}

TEST(PhotographedRepotting, ShowsTheSmallPotBeforeAndTheLargeOneAfter)
{
    const auto made = demonstration(kPhotographed).value();
    const auto repotted = std::ranges::find_if(made.history, [](const Event& event) {
        return event.plant == 12 && event.kind == EventKind::Repotted && event.happened.year() == 2026;
    });
    ASSERT_NE(repotted, made.history.end());
    std::vector<DemonstrationPhoto> before;
    std::vector<DemonstrationPhoto> after;
    for (const auto& photo : photographed()) {
        if (photo.plant == 12) {
            (photo.taken < repotted->happened ? before : after).push_back(photo);
        }
    }
    ASSERT_GE(before.size(), 4U);
    ASSERT_GE(after.size(), 5U);
    EXPECT_LT(before.back().drawn.rim_cm, after.front().drawn.rim_cm);
    EXPECT_GT(after.back().drawn.height_cm, 1.1 * before.back().drawn.height_cm);
}

TEST_F(PhotographedDrift, IsTrueToItsRuler)
{
    for (const auto& [day, photo] : by_day_) {
        const auto places = photo::drawn_places(photo.drawn, 640, 480, photo.reach_cm);
        const std::array lengths{photo::Stretch{places.rim, places.top}};
        const std::array scales{photo::Scale{{places.ruler_bottom, places.ruler_top}, Metres::from_metres(0.4)}};
        EXPECT_NEAR(photo::length_of(lengths, scales)->mean.metres() * 100.0, photo.drawn.height_cm, 0.01) << day;
    }
}

TEST_F(PhotographedDrift, TheHighestLeafEndsWhereHeightIsMeasured)
{
    const auto& photo = by_day_.at(-6);
    const auto picture = photo::drawn_plant(photo.drawn, 640, 480);
    const auto top = photo::drawn_places(photo.drawn, 640, 480, photo.reach_cm).top;
    const auto green_at = [&](int y) {
        const auto* pixel = picture.at(static_cast<int>(top.x), y);
        return 2 * pixel[1] - pixel[0] - pixel[2];
    };
    EXPECT_LT(green_at(static_cast<int>(top.y) - 2), 12);
    EXPECT_GT(green_at(static_cast<int>(top.y) + 6), 40);
}

TEST(DemonstrationPhotos, AreOfTheJournalsTimeInOrderAndNoTwoAlike)
{
    const auto photos = photographed();
    EXPECT_GT(photos.size(), 50U);
    EXPECT_LT(photos.size(), 80U);
    EXPECT_TRUE(std::ranges::is_sorted(photos, {}, &DemonstrationPhoto::taken));
    std::vector<std::string> names;
    for (const auto& photo : photos) {
        EXPECT_GE(photo.taken, (calendar::Date{2024, 11, 25}));
        EXPECT_LE(photo.taken, kPhotographed.today);
        names.push_back(photo.name);
    }
    std::ranges::sort(names);
    EXPECT_TRUE(std::ranges::unique(names).empty());
}

TEST(DemonstrationPhotos, AreAsManyAsAskedFor)
{
    for (const int count : {0, 1, 7, 400}) {
        EXPECT_EQ(photographed(count).size(), static_cast<std::size_t>(count));
    }
    auto generated = kPhotographed;
    generated.plants = 60;
    EXPECT_TRUE(photographed({}, generated).empty());
    EXPECT_EQ(photographed(150, generated).size(), 150U);
}

TEST(DemonstrationPhotos, AreTheSameEachTime)
{
    const auto photos = photographed();
    const auto again = photographed();
    ASSERT_EQ(photos.size(), again.size());
    EXPECT_EQ(photo::drawn_plant(photos[9].drawn, 320, 240).rgb, photo::drawn_plant(again[9].drawn, 320, 240).rgb);
}

TEST(DemonstrationPhotos, HaveTheirSouthernStoryToo)
{
    auto south = kPhotographed;
    south.hemisphere = Hemisphere::South;
    EXPECT_GT(photographed({}, south).size(), 40U);
}

} // namespace
} // namespace lathhouse::home
