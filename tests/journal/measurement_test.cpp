#include "core/home/measurement.h"

#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "core/journal/leading_measures.h"
#include "core/plan/plant_growth.h"
#include "tests/journal/temporary_folder.h"
#include "tests/journal/short_names.h"

namespace lathhouse::journal {
namespace {

using home::Measurement;
using home::MeasurementKind;
using home::MeasurementMethod;


class Measurements : public WithFolder {
protected:
    HouseholdStore made() const
    {
        const auto invented = home::demonstration({.today = kDate}).value();
        return HouseholdStore::create(folder_ / "home", invented.household).value();
    }
    static calendar::Instant now() { return calendar::start_of_day_utc(kDate); }
    static Measurement height(double centimetres, calendar::Date on = kDate)
    {
        return {4, MeasurementKind::Height, on, {centimetres}, MeasurementMethod::Ruler, now()};
    }
    static int put(HouseholdStore& store, const Measurement& one)
    {
        const auto recorded = store.record(std::span{&one, 1});
        EXPECT_TRUE(recorded) << recorded.error().message;
        return recorded ? recorded->front() : 0;
    }
};

TEST_F(Measurements, ComeBackAsTheyWereEntered)
{
    auto store = made();
    Measurement one{.plant = 4,
                    .kind = MeasurementKind::LongestLeaf,
                    .measured = kDate,
                    .repeats = {12.3, 12.1, 12.45},
                    .method = MeasurementMethod::Photo,
                    .entered = now(),
                    .time = std::chrono::minutes{8 * 60 + 5},
                    .time_zone = "Asia/Tokyo",
                    .by = "Ada",
                    .pot = Litres::from_litres(3.5),
                    .mix = "bark and pumice",
                    .photo = std::string(64, 'a'),
                    .note = "after rain; \u00e4"};
    one.id = put(store, one);
    EXPECT_EQ(store.measurements(4)->front(), one);
}

TEST_F(Measurements, KeepEveryKind)
{
    auto store = made();
    for (const auto kind : home::every_measurement_kind()) {
        put(store, {4, kind, kDate, {1.0}, home::usual_method(kind), now()});
        ASSERT_EQ(store.measurements(4, kind)->size(), 1u) << home::to_string(kind);
    }
    EXPECT_EQ(store.measurements(4)->size(), home::every_measurement_kind().size());
    EXPECT_TRUE(store.measurements(5)->empty());
}

TEST_F(Measurements, LeadWithTheKindThatAPlantHasMostOf)
{
    auto store = made();
    const auto of = [](int plant, MeasurementKind kind, int days) {
        return Measurement{plant, kind, kDate + calendar::Days{days}, {1.0}, home::usual_method(kind), now()};
    };
    for (const auto& one : {of(4, MeasurementKind::Height, 0), of(4, MeasurementKind::Leaves, 2), of(4, MeasurementKind::Leaves, 1),
                            of(5, MeasurementKind::Width, 0), of(5, MeasurementKind::Height, 0)}) {
        put(store, one);
    }
    put(store, of(5, MeasurementKind::Width, 1));
    ASSERT_TRUE(store.turn_last(kUndo, now()));
    const auto leading = leading_measurements(store);
    ASSERT_TRUE(leading) << leading.error().message;
    ASSERT_EQ(leading->size(), 3u);
    EXPECT_EQ((*leading)[0].measured, kDate + calendar::Days{1});
    EXPECT_EQ((*leading)[1].kind, MeasurementKind::Leaves);
    EXPECT_EQ((*leading)[2].kind, MeasurementKind::Height) << "as many of either, the first of the kinds leads";
    const auto all = *store.measurements();
    for (const auto& one : *leading) {
        EXPECT_EQ(one.kind, plan::measures_of(all, one.plant).front());
    }
}

TEST_F(Measurements, AreOrderedByWhenTheyWereTakenNotByTheClockOfTheirEntry)
{
    auto store = made();
    auto late = height(30, kDate);
    late.entered = now() - std::chrono::hours{24 * 365 * 5}; // The clock was set wrong.
    put(store, late);
    put(store, height(20, kDate - calendar::Days{7}));
    put(store, height(31, kDate));
    std::vector<double> values;
    const auto kept = store.measurements(4);
    ASSERT_TRUE(kept);
    for (const auto& one : *kept) {
        values.push_back(one.value());
    }
    EXPECT_EQ(values, (std::vector{20.0, 30.0, 31.0}));
}

TEST_F(Measurements, AreRefusedAllTogetherWhereOneIsWrong)
{
    auto store = made();
    auto stranger = height(20);
    stranger.plant = 999;
    const std::vector two{height(20), stranger};
    EXPECT_EQ(store.record(std::span{two}).error().code, ErrorCode::NotFound);
    const std::vector wrong{height(20), height(-1)};
    EXPECT_EQ(store.record(std::span{wrong}).error().code, ErrorCode::OutOfRange);
    EXPECT_TRUE(store.measurements()->empty());
}

} // namespace
} // namespace lathhouse::journal
