#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/home/measurement.h"
#include "core/journal/photo_book.h"
#include "tests/journal/temporary_folder.h"

#include <gmock/gmock.h>

#include <span>

namespace lathhouse::journal {
namespace {

using home::PhotoChange;
using home::PhotoChangeKind;
using Direction = HouseholdStore::Direction;

class PhotoEntries : public WithFolder {
protected:
    PhotoEntries()
        : store_(HouseholdStore::create(folder_ / "home",
                                        home::demonstration({.today = calendar::Date{2026, 11, 25}}).value().household)
                     .value()),
          book_(store_)
    {
    }
    home::Photo photo(const std::string& content, int minute, std::vector<home::PlantId> plants = {}) const
    {
        return {.id = 0,
                .sha256 = sha256_of(content),
                .extension = "jpg",
                .bytes = 10,
                .width = 40,
                .height = 30,
                .taken = std::chrono::local_days{std::chrono::year{2026} / 6 / 1},
                .zone_offset = {},
                .taken_from = home::TakenFrom::Given,
                .original_name = content + ".jpg",
                .position = {},
                .entered = at(minute),
                .plants = std::move(plants)};
    }
    static calendar::Instant at(int minute)
    {
        return calendar::start_of_day_utc(calendar::Date{2026, 11, 25}) + std::chrono::minutes{minute};
    }
    std::vector<home::PhotoId> keep(const std::vector<home::Photo>& photos)
    {
        std::vector<home::PhotoId> ids;
        const auto all = book_.keep(photos).value();
        for (const auto& kept : all) {
            ids.push_back(kept.id);
        }
        return ids;
    }
    std::vector<std::string> names(std::optional<home::PlantId> plant = {}) const
    {
        std::vector<std::string> found;
        const auto photos = book_.photos(plant).value();
        for (const auto& of : photos) {
            found.push_back(of.original_name);
        }
        return found;
    }
    PhotoChange turn(Direction direction)
    {
        const auto turned = store_.turn_last(direction, at(100));
        EXPECT_TRUE(turned) << turned.error().message;
        return std::get<PhotoChange>(**turned);
    }

    HouseholdStore store_;
    PhotoBook book_;
};

TEST_F(PhotoEntries, PhotosThatCameInTogetherGoTogether)
{
    keep({photo("a", 0, {1})});
    const auto three = keep({photo("b", 1, {1}), photo("c", 1, {1, 2}), photo("d", 1)});
    const auto undone = turn(Direction::Undo);
    EXPECT_EQ(undone.kind, PhotoChangeKind::Added);
    EXPECT_EQ(undone.photos, three);
    EXPECT_EQ(undone.name, "b.jpg");
    EXPECT_EQ(names(), std::vector<std::string>{"a.jpg"});
    EXPECT_TRUE(names(2).empty());
    EXPECT_EQ(turn(Direction::Undo).photos.size(), 1U);
    EXPECT_FALSE(store_.turn_last(Direction::Undo, at(100)).value());
    EXPECT_EQ(turn(Direction::Redo).name, "a.jpg");
    EXPECT_EQ(turn(Direction::Redo).photos, three);
    EXPECT_FALSE(store_.turn_last(Direction::Redo, at(100)).value());
    EXPECT_EQ(names().size(), 4U);
    EXPECT_EQ(names(2), std::vector<std::string>{"c.jpg"});
}

TEST_F(PhotoEntries, AssignmentsDatesAndWithdrawalsAreTakenBackInTheirOrder)
{
    const auto id = keep({photo("a", 0, {1})}).front();
    ASSERT_TRUE(book_.assign(id, 2, PhotoBook::Shows::Yes, at(1)));
    ASSERT_TRUE(book_.assign(id, 1, PhotoBook::Shows::No, at(2)));
    ASSERT_TRUE(book_.date(id, std::chrono::local_days{std::chrono::year{2025} / 1 / 2}, at(3)));
    ASSERT_TRUE(book_.withdraw(id, PhotoBook::Withdrawn::Yes, at(4)));
    EXPECT_TRUE(names().empty());
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Withdrawn);
    EXPECT_EQ(book_.photo(id)->date(), (calendar::Date{2025, 1, 2}));
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Dated);
    EXPECT_EQ(book_.photo(id)->date(), (calendar::Date{2026, 6, 1}));
    const auto off = turn(Direction::Undo);
    EXPECT_EQ(off.kind, PhotoChangeKind::TakenOff);
    EXPECT_EQ(off.plant, 1);
    EXPECT_EQ(book_.photo(id)->plants, (std::vector{1, 2}));
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Assigned);
    EXPECT_EQ(book_.photo(id)->plants, std::vector{1});
    for (const auto kind : {PhotoChangeKind::Assigned, PhotoChangeKind::TakenOff, PhotoChangeKind::Dated,
                            PhotoChangeKind::Withdrawn}) {
        EXPECT_EQ(turn(Direction::Redo).kind, kind);
    }
    EXPECT_TRUE(names().empty());
}

TEST_F(PhotoEntries, ThoseOutOfTheListsAreToldWithWhatTheyShowed)
{
    const auto ids = keep({photo("a", 0, {1, 2}), photo("b", 1, {1})});
    EXPECT_TRUE(book_.withdrawn().value().empty());
    ASSERT_TRUE(book_.withdraw(ids[0], PhotoBook::Withdrawn::Yes, at(2)));
    ASSERT_TRUE(book_.date(ids[0], std::chrono::local_days{std::chrono::year{2025} / 3 / 2}, at(3)));
    const auto out = book_.withdrawn().value();
    ASSERT_EQ(out.size(), 1U);
    EXPECT_EQ(out[0].id, ids[0]);
    EXPECT_EQ(out[0].original_name, "a.jpg");
    EXPECT_EQ(out[0].plants, (std::vector<home::PlantId>{1, 2}));
    EXPECT_EQ(out[0].date(), calendar::Date(2025, 3, 2));
    EXPECT_EQ(names(), std::vector<std::string>{"b.jpg"});
    turn(Direction::Undo); // Its date.
    turn(Direction::Undo); // That it went out.
    EXPECT_TRUE(book_.withdrawn().value().empty());
    turn(Direction::Redo);
    EXPECT_EQ(book_.withdrawn().value().size(), 1U);
    ASSERT_TRUE(book_.withdraw(ids[0], PhotoBook::Withdrawn::No, at(4)));
    EXPECT_TRUE(book_.withdrawn().value().empty());
    // Photos that were never to have come in are not among them.
    ASSERT_TRUE(book_.turn_added(std::vector{ids[1]}, Direction::Undo, at(5)));
    EXPECT_TRUE(book_.withdrawn().value().empty());
}

TEST_F(PhotoEntries, StandInOneOrderWithMeasurements)
{
    const auto id = keep({photo("a", 0, {1})}).front();
    home::Measurement height{.plant = 1,
                             .kind = home::MeasurementKind::Height,
                             .measured = calendar::Date{2026, 11, 25},
                             .repeats = {20.0},
                             .method = home::MeasurementMethod::Photo,
                             .entered = at(1)};
    ASSERT_TRUE(store_.record(std::span{&height, 1}));
    ASSERT_TRUE(book_.assign(id, 2, PhotoBook::Shows::Yes, at(0))); // The clock was set back meanwhile.
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Assigned);
    EXPECT_TRUE(std::holds_alternative<home::Measurement>(**store_.turn_last(Direction::Undo, at(9))));
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Added);
}

TEST_F(PhotoEntries, WhatIsEnteredAfterAnUndoEndsTheRedo)
{
    keep({photo("a", 0)});
    turn(Direction::Undo);
    keep({photo("b", 1)});
    EXPECT_FALSE(store_.turn_last(Direction::Redo, at(9)).value());
    // What was undone comes in anew, which can be undone again.
    const auto again = book_.keep(std::vector{photo("a", 2, {2})}).value().front();
    EXPECT_TRUE(again.was_known);
    EXPECT_EQ(names(2), std::vector<std::string>{"a.jpg"});
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Assigned);
    EXPECT_EQ(turn(Direction::Undo).name, "a.jpg");
    EXPECT_EQ(names(), std::vector<std::string>{"b.jpg"});
}

TEST_F(PhotoEntries, PhotosThatCameInCanBeTakenBackByTheirNumbers)
{
    const auto ids = keep({photo("a", 0), photo("b", 0)});
    keep({photo("c", 1)});
    ASSERT_TRUE(book_.turn_added(ids, Direction::Undo, at(2)));
    EXPECT_EQ(names(), std::vector<std::string>{"c.jpg"});
    ASSERT_TRUE(book_.turn_added(ids, Direction::Undo, at(3)));
    ASSERT_TRUE(book_.turn_added(ids, Direction::Redo, at(4)));
    EXPECT_EQ(names().size(), 3U);
    const std::vector unknown{ids[0], 999};
    EXPECT_EQ(book_.turn_added(unknown, Direction::Undo, at(5)).error().code, ErrorCode::NotFound);
    EXPECT_EQ(names().size(), 3U);
}

TEST_F(PhotoEntries, ARedoBringsBackWhatWasUndoneLastThoughThatWasOutOfOrder)
{
    const auto ids = keep({photo("a", 0), photo("b", 0), photo("c", 0)});
    const home::Event watered{1, home::EventKind::Watered, {}, calendar::Date{2026, 11, 25}, at(1), {}};
    ASSERT_TRUE(store_.record(std::span{&watered, 1}));
    ASSERT_TRUE(book_.turn_added(ids, Direction::Undo, at(60))); // Before the event, which came after them.
    ASSERT_TRUE(*store_.turn_last(Direction::Undo, at(2)));       // The clock was set back meanwhile.
    const auto redone = store_.turn_last(Direction::Redo, at(3)).value();
    ASSERT_TRUE(redone);
    EXPECT_TRUE(std::holds_alternative<home::Event>(*redone));
    EXPECT_TRUE(names().empty()) << "the photos stay away";
    EXPECT_FALSE(store_.turn_last(Direction::Redo, at(4)).value()) << "what was entered after them counts";
    ASSERT_TRUE(book_.turn_added(ids, Direction::Redo, at(5)));
    EXPECT_EQ(names().size(), 3U);
}

TEST_F(PhotoEntries, PhotosTakenBackTogetherByTheirNumbersAreRedoneTogether)
{
    const auto ids = keep({photo("a", 0), photo("b", 0), photo("c", 0)});
    ASSERT_TRUE(book_.turn_added(ids, Direction::Undo, at(1)));
    EXPECT_EQ(turn(Direction::Redo).photos, ids);
    EXPECT_EQ(names().size(), 3U);
    EXPECT_EQ(turn(Direction::Undo).photos, ids);
    EXPECT_EQ(turn(Direction::Redo).photos, ids);
}

TEST_F(PhotoEntries, APhotoStandsForItsPlantUntilItIsTakenOff)
{
    const auto ids = keep({photo("a", 0, {1}), photo("b", 0, {1})});
    ASSERT_TRUE(book_.choose_picture(1, ids[0], at(1)));
    ASSERT_TRUE(book_.choose_picture(1, ids[1], at(2)));
    EXPECT_EQ(book_.pictures()->at(1), ids[1]);
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::Chosen);
    EXPECT_EQ(book_.pictures()->at(1), ids[0]);
    ASSERT_TRUE(book_.choose_picture(1, {}, at(3)));
    EXPECT_TRUE(book_.pictures()->empty());
    EXPECT_EQ(turn(Direction::Undo).kind, PhotoChangeKind::DrawingChosen);
    ASSERT_TRUE(book_.assign(ids[0], 1, PhotoBook::Shows::No, at(4)));
    EXPECT_TRUE(book_.pictures()->empty());
    EXPECT_EQ(book_.choose_picture(1, ids[0], at(5)).error().code, ErrorCode::NotFound);
    EXPECT_EQ(book_.choose_picture(1, 999, at(5)).error().code, ErrorCode::NotFound);
    EXPECT_EQ(book_.choose_picture(999, {}, at(5)).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace lathhouse::journal
