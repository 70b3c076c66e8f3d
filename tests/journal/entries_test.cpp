#include "core/home/demonstration.h"
#include "core/home/lineage.h"
#include "core/home/measurement.h"
#include "core/home/planned_stays.h"
#include "core/journal/household_store.h"
#include "tests/journal/temporary_folder.h"
#include "tests/journal/short_names.h"

namespace lathhouse::journal {
namespace {

using home::EventKind;


class Entries : public WithFolder {
protected:
    HouseholdStore made() const
    {
        const auto invented = home::demonstration({.today = kDate}).value();
        return HouseholdStore::create(folder_ / "home", invented.household).value();
    }
    static calendar::Instant now() { return calendar::start_of_day_utc(kDate); }
    static void put(HouseholdStore& store, EventKind kind, home::PlantId plant,
                    std::optional<home::SpotId> spot = {}, calendar::Instant entered = now())
    {
        const home::Event event{plant, kind, spot, kDate, entered, {}};
        const auto recorded = store.record(std::span{&event, 1});
        ASSERT_TRUE(recorded) << recorded.error().message;
    }
    static void measure(HouseholdStore& store, double height, calendar::Instant entered = now())
    {
        const home::Measurement one{
            4, home::MeasurementKind::Height, kDate, {height}, home::MeasurementMethod::Ruler, entered};
        ASSERT_TRUE(store.record(std::span{&one, 1}));
    }
    static void read(HouseholdStore& store, double low)
    {
        const home::Reading one{5, kDate, Celsius::from_degrees(low), {}, {}, {}, now(), {}};
        ASSERT_TRUE(store.record(std::span{&one, 1}));
    }
};

TEST_F(Entries, OfEveryKindAreUndoneLastFirstAndRedoneAfterARestart)
{
    {
        auto store = made();
        put(store, EventKind::Watered, 4);
        measure(store, 30.0);
        read(store, 3.5);
        EXPECT_TRUE(std::holds_alternative<home::Reading>(*store.turn_last(kUndo, now()).value()));
        EXPECT_TRUE(std::holds_alternative<home::Measurement>(*store.turn_last(kUndo, now()).value()));
        EXPECT_TRUE(std::holds_alternative<home::Event>(*store.turn_last(kUndo, now()).value()));
        EXPECT_FALSE(store.turn_last(kUndo, now()).value());
        EXPECT_TRUE(store.measurements()->empty());
        EXPECT_TRUE(store.night_log()->readings.empty());
    }
    auto store = HouseholdStore::open(folder_ / "home").value();
    EXPECT_TRUE(std::holds_alternative<home::Event>(*store.turn_last(kRedo, now()).value()));
    EXPECT_TRUE(std::holds_alternative<home::Measurement>(*store.turn_last(kRedo, now()).value()));
    EXPECT_TRUE(std::holds_alternative<home::Reading>(*store.turn_last(kRedo, now()).value()));
    EXPECT_FALSE(store.turn_last(kRedo, now()).value());
    EXPECT_EQ(store.measurements()->size(), 1U);
    EXPECT_EQ(store.night_log()->readings.size(), 1U);
}

TEST_F(Entries, NightsOfAFileAreUndoneAndRedoneAsOne)
{
    auto store = made();
    read(store, 9.0);
    const auto later = now() + std::chrono::seconds{1};
    std::vector<home::Reading> file;
    for (int night = 0; night < 5; ++night) {
        file.push_back({5, kDate - calendar::Days{night}, Celsius::from_degrees(2.0 + night), {}, {}, {}, later, {}});
    }
    ASSERT_TRUE(store.record(std::span<const home::Reading>{file}));
    read(store, 7.0); // Of another moment.
    EXPECT_TRUE(std::holds_alternative<home::Reading>(*store.turn_last(kUndo, later).value()));
    const auto undone = store.turn_last(kUndo, later).value();
    ASSERT_TRUE(std::holds_alternative<home::NightsTogether>(*undone));
    EXPECT_EQ(std::get<home::NightsTogether>(*undone).readings, file) << "in the order of entry";
    ASSERT_EQ(store.night_log()->readings.size(), 1U);
    EXPECT_EQ(store.night_log()->readings.front().low, Celsius::from_degrees(9.0));
    const auto redone = store.turn_last(kRedo, later).value();
    ASSERT_TRUE(std::holds_alternative<home::NightsTogether>(*redone));
    EXPECT_EQ(std::get<home::NightsTogether>(*redone).readings, file);
    EXPECT_EQ(store.night_log()->readings.size(), 5U);
}

TEST_F(Entries, MadeAfterAnUndoEndTheRedo)
{
    auto store = made();
    measure(store, 30.0);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    put(store, EventKind::Watered, 4);
    EXPECT_FALSE(store.turn_last(kRedo, now()).value());
}

TEST_F(Entries, AreToldApartByOrderWhereTheClockWasSetBack)
{
    auto store = made();
    measure(store, 30.0);
    put(store, EventKind::Watered, 4, {}, now() - std::chrono::hours{24 * 3650});
    EXPECT_TRUE(std::holds_alternative<home::Event>(*store.turn_last(kUndo, now()).value()));
    EXPECT_EQ(store.measurements()->size(), 1U);
}

TEST_F(Entries, AReadingUndoneLetsTheOneBeforeCountAgain)
{
    auto store = made();
    read(store, 3.5);
    read(store, 13.5);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(store.night_log()->readings.front().low, Celsius::from_degrees(3.5));
}

TEST_F(Entries, ThePlanAcceptedLastHoldsThoughTheClockWasSetBack)
{
    auto store = made();
    ASSERT_TRUE(store.accept({now(), {{4, 1, kDate, kDate}}}));
    ASSERT_TRUE(store.accept({now() - std::chrono::hours{48}, {{4, 2, kDate, kDate}}}));
    ASSERT_EQ((*store.accepted_plan())->stays.size(), 1U);
    EXPECT_EQ((*store.accepted_plan())->stays.front().spot, 2);
    ASSERT_TRUE(store.accept({now(), {{4, 3, kDate, kDate}}}));
    ASSERT_EQ((*store.accepted_plan())->stays.size(), 1U);
    EXPECT_EQ((*store.accepted_plan())->stays.front().spot, 3);
}

TEST_F(Entries, APlantThatIsGoneKeepsItsPast)
{
    auto store = made();
    const auto before = store.load()->plants.size();
    measure(store, 30.0);
    for (const auto kind : {EventKind::Died, EventKind::GivenAway, EventKind::Removed}) {
        put(store, kind, 4);
        EXPECT_EQ(store.load()->plants.size(), before - 1);
        EXPECT_EQ(store.load()->plant(4), nullptr);
        ASSERT_EQ(store.gone_plants()->size(), 1U);
        EXPECT_EQ(home::to_string(store.gone_plants()->front().how), home::to_string(kind));
        EXPECT_EQ(store.gone_plants()->front().on, kDate);
        EXPECT_EQ(store.measurements(4)->size(), 1U);
        ASSERT_TRUE(store.turn_last(kUndo, now()).value());
        EXPECT_NE(store.load()->plant(4), nullptr);
        EXPECT_TRUE(store.gone_plants()->empty());
    }
}

TEST_F(Entries, ADivisionKeepsItsParentAndIsUndoneAsAWhole)
{
    auto store = made();
    auto piece = *store.load()->plant(11);
    piece.name = "Small half";
    const auto before = store.load()->plants.size();
    const auto ids = store.divide(11, std::span{&piece, 1}, kDate, now(), "by knife");
    ASSERT_TRUE(ids) << ids.error().message;
    ASSERT_EQ(store.descents()->size(), 1U);
    EXPECT_EQ(store.descents()->front().plant, ids->front());
    EXPECT_EQ(store.descents()->front().parent, 11);
    EXPECT_EQ(store.stays(ids->front())->actual.size(), 1U);
    EXPECT_EQ(store.load()->plants.size(), before + 1);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_EQ(store.load()->plants.size(), before);
    EXPECT_EQ(store.gone_plants()->front().how, home::GoneHow::Undone);
    EXPECT_TRUE(store.events()->empty()) << "its coming is undone with it";
    EXPECT_FALSE(store.turn_last(kUndo, now()).value()) << "and not by itself";
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    EXPECT_EQ(store.load()->plants.size(), before + 1);
    EXPECT_EQ(store.load()->plant(ids->front())->spot, piece.spot);
}

TEST_F(Entries, APieceOfADivisionThatWasUndoneLeavesItsNameFree)
{
    auto store = made();
    auto piece = *store.load()->plant(11);
    piece.name = "Small half";
    const auto first = store.divide(11, std::span{&piece, 1}, kDate, now(), {});
    ASSERT_TRUE(first);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    ASSERT_TRUE(store.turn_last(kRedo, now()).value());
    ASSERT_NE(store.load()->plant_called("Small half"), nullptr) << "redone, it has its name again";
    EXPECT_EQ(store.load()->plant_called("Small half")->id, first->front());
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    const auto second = store.divide(11, std::span{&piece, 1}, kDate, now(), {});
    ASSERT_TRUE(second) << second.error().message;
    EXPECT_NE(second->front(), first->front());
    EXPECT_EQ(store.load()->plant_called("Small half")->id, second->front());
    EXPECT_EQ(store.gone_plants()->size(), 1U);
    ASSERT_TRUE(store.turn_last(kUndo, now()).value());
    EXPECT_TRUE(store.add(piece, kDate, now())) << "also for a plant that comes otherwise";
}

TEST_F(Entries, ADivisionIsRefusedWithoutHalfOfIt)
{
    auto store = made();
    auto piece = *store.load()->plant(11);
    EXPECT_EQ(store.divide(11, std::span{&piece, 1}, kDate, now(), {}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store.divide(11, {}, kDate, now(), {}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store.divide(999, std::span{&piece, 1}, kDate, now(), {}).error().code, ErrorCode::NotFound);
    EXPECT_TRUE(store.events()->empty());
    EXPECT_TRUE(store.descents()->empty());
}

TEST_F(Entries, StaysPlannedAndActualAreKeptApart)
{
    auto store = made();
    ASSERT_TRUE(store.accept({now(), {{4, 1, kDate, kDate + calendar::Days{5}}}}));
    put(store, EventKind::Moved, 4, 6);
    const auto stays = store.stays(4).value();
    EXPECT_EQ(stays.actual, (std::vector<home::ActualStay>{{6, kDate, {}}}));
    EXPECT_EQ(stays.planned,
              (std::vector<home::KeptPlannedStay>{{1, kDate, kDate + calendar::Days{5}, now()}}));
}

} // namespace
} // namespace lathhouse::journal
