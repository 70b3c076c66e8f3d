#include "core/journal/plant_page.h"

#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "core/journal/photo_book.h"
#include "core/plan/plant_growth.h"
#include "tests/journal/temporary_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::journal {
namespace {

using home::MeasurementKind;

const calendar::Date kPageDay{2026, 3, 1};

class PlantPages : public WithFolder {
protected:
    PlantPages()
        : store_(HouseholdStore::create(folder_ / "home", home::demonstration({.today = kPageDay}).value().household).value())
    {
    }
    static calendar::Instant now() { return calendar::start_of_day_utc(kPageDay); }
    void put(const home::Measurement& one)
    {
        const auto recorded = store_.record(std::span{&one, 1});
        ASSERT_TRUE(recorded) << recorded.error().message;
    }
    static home::Measurement of(MeasurementKind kind, int day, home::PlantId plant = 4)
    {
        return {plant, kind, kPageDay + calendar::Days{day}, {1.0}, home::usual_method(kind), now()};
    }
    PlantPage page(const PlantAsked& asked = {}, home::PlantId plant = 4) const
    {
        const auto read = read_plant_page(folder_ / "home", plant, asked);
        EXPECT_TRUE(read) << read.error().message;
        return read ? *read : PlantPage{};
    }

    HouseholdStore store_;
};

TEST_F(PlantPages, TheNewestAreTheLastOfAllThatCounts)
{
    const auto kinds = home::every_measurement_kind();
    for (int number = 0; number < 60; ++number) {
        auto one = of(kinds[static_cast<std::size_t>(number) % 4], number * 7 % 20);
        if (number % 3 == 0) {
            one.time = std::chrono::hours{number % 24};
            one.time_zone = "Europe/Berlin";
        }
        put(one);
        if (number % 11 == 0) {
            ASSERT_TRUE(store_.turn_last(HouseholdStore::Direction::Undo, now()));
        }
    }
    put(of(MeasurementKind::Height, 99)); // Entered last, the newest of all.
    put(of(MeasurementKind::Height, -99)); // Entered after that, the oldest.
    put(of(MeasurementKind::Height, 100, 5));
    const auto all = store_.measurements(4).value();
    for (const std::size_t most : {std::size_t{0}, std::size_t{1}, std::size_t{8}, std::size_t{30}, std::size_t{1000}}) {
        const auto count = static_cast<std::ptrdiff_t>(std::min(most, all.size()));
        EXPECT_EQ(page({.newest = most}).newest, std::vector(all.rbegin(), all.rbegin() + count)) << most;
    }
}

TEST_F(PlantPages, TheSeriesIsOfTheKindAskedForElseOfTheOneThereIsMostOf)
{
    for (int day = 0; day < 3; ++day) {
        put(of(MeasurementKind::Leaves, day));
        put(of(MeasurementKind::Stem, -day));
    }
    put(of(MeasurementKind::Height, 0));
    ASSERT_TRUE(store_.turn_last(HouseholdStore::Direction::Undo, now()));
    put(of(MeasurementKind::Height, 1));
    for (const auto direction : {HouseholdStore::Direction::Undo, HouseholdStore::Direction::Redo}) {
        ASSERT_TRUE(store_.turn_last(direction, now()));
    }
    const auto usual = page();
    EXPECT_EQ(usual.kinds, (std::vector<MeasuredKind>{
                               {MeasurementKind::Leaves, 3}, {MeasurementKind::Stem, 3}, {MeasurementKind::Height, 1}}));
    EXPECT_EQ(usual.series, store_.measurements(4, MeasurementKind::Leaves).value());
    std::vector<MeasurementKind> order;
    for (const auto& kind : usual.kinds) {
        order.push_back(kind.kind);
    }
    EXPECT_EQ(order, plan::measures_of(store_.measurements(4).value(), 4));
    EXPECT_EQ(page({.kind = MeasurementKind::Stem}).series, store_.measurements(4, MeasurementKind::Stem).value());
    EXPECT_EQ(page({.kind = MeasurementKind::Flowers}).series, usual.series);
}

TEST_F(PlantPages, OfManyPhotosAFewAreSpreadOverTheirTime)
{
    PhotoBook book{store_};
    std::vector<home::Photo> many;
    for (int day = 0; day < 12; ++day) {
        const auto name = "p" + std::to_string(day);
        many.push_back({.id = 0,
                        .sha256 = sha256_of(name),
                        .extension = "jpg",
                        .bytes = 10,
                        .width = 40,
                        .height = 30,
                        // Not in the order of their numbers.
                        .taken = std::chrono::local_days{std::chrono::year{2026} / 1 / 1} + std::chrono::days{day * 5 % 11},
                        .zone_offset = {},
                        .taken_from = home::TakenFrom::Given,
                        .original_name = name + ".jpg",
                        .position = {},
                        .entered = now(),
                        .plants = {4, 5}});
    }
    const auto kept = book.keep(many).value();
    ASSERT_TRUE(book.withdraw(kept[3].id, PhotoBook::Withdrawn::Yes, now()));
    const auto all = book.photos(4).value();
    ASSERT_EQ(all.size(), 11U);
    for (const std::size_t most : {std::size_t{1}, std::size_t{2}, std::size_t{6}, std::size_t{11}, std::size_t{50}}) {
        const auto spread = page({.photos = most}).photos;
        EXPECT_EQ(spread.count, 11U);
        EXPECT_EQ(spread.oldest, all.front().date());
        ASSERT_EQ(spread.photos.size(), std::min(most, all.size()));
        EXPECT_EQ(spread.photos.back(), all.back());
        EXPECT_EQ(spread.photos.front(), most == 1 ? all.back() : all.front());
        EXPECT_TRUE(std::ranges::is_sorted(spread.photos, {}, &home::Photo::taken));
    }
    EXPECT_EQ(page({.photos = 11}).photos.photos, all);
}

TEST_F(PlantPages, OfAPlantOfWhichNothingIsKnownIsEmpty)
{
    const auto none = page({}, 7);
    EXPECT_TRUE(none.kinds.empty());
    EXPECT_TRUE(none.series.empty());
    EXPECT_TRUE(none.newest.empty());
    EXPECT_EQ(none.photos.count, 0U);
    EXPECT_FALSE(none.photos.oldest);
    EXPECT_EQ(read_plant_page(folder_ / "nowhere", 7, {}).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace lathhouse::journal
