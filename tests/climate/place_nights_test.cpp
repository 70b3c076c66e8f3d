#include "core/climate/place_nights.h"

#include "core/climate/own_record.h"
#include "tests/climate/counted_station.h"
#include "tests/climate/sample_figures.h"
#include "tests/climate/sample_record.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::climate {
namespace {

constexpr Position kTownNear{Latitude::literal(45.3), Longitude::literal(11.0)};
constexpr Celsius kFrost = Celsius::from_degrees(0.0);

int days_later(const std::optional<calendar::DayOfYear>& a, const std::optional<calendar::DayOfYear>& b)
{
    return a->place() - b->place();
}

// --- Moving in time.

TEST(DayShift, IsStraightBetweenKnotsAndTheNearestOutside)
{
    const DayShift shift{{{100.0, 4.0}, {140.0, 8.0}}};
    EXPECT_DOUBLE_EQ(shift.at(0.0), 4.0);
    EXPECT_DOUBLE_EQ(shift.at(120.0), 6.0);
    EXPECT_DOUBLE_EQ(shift.at(300.0), 8.0);
    EXPECT_DOUBLE_EQ(DayShift{}.at(7.0), 0.0);
    EXPECT_DOUBLE_EQ(DayShift{}.model_place(7.0), 7.0);
}

TEST(DayShift, IsUndoneByTheModelsPlace)
{
    const DayShift shift{{{100.0, 4.0}, {140.0, -8.0}, {150.0, 3.0}}};
    for (double place = 0.0; place < 366.0; place += 3.5) {
        EXPECT_NEAR(shift.model_place(place + shift.at(place)), place, 1e-9) << place;
    }
}

TEST(DayShift, LetsNoDayOvertakeAnEarlierOne)
{
    const DayShift shift{{{100.0, 40.0}, {110.0, -40.0}}};
    for (double place = 90.0; place < 130.0; place += 1.0) {
        EXPECT_LE(place + shift.at(place), place + 1.0 + shift.at(place + 1.0) + 1e-9) << place;
    }
}

TEST(SeasonChances, MovedKeepTheirShareAndTheirOrder)
{
    const auto season = NightModel::from_monthly(inland_figures(), kHere.latitude).season(kFrost);
    const auto moved = season.moved(DayShift{{{60.0, 12.0}, {110.0, -30.0}}}, DayShift{{{250.0, -9.5}}}, 3.0);
    EXPECT_EQ(moved.share_without(), season.share_without());
    EXPECT_DOUBLE_EQ(moved.nights_per_year(), 3.0);
    for (int place = 1; place < 366; ++place) {
        const auto day = season.turn().day_at(place);
        const auto before = season.turn().day_at(place - 1);
        EXPECT_GE(moved.on_or_before(day), moved.on_or_before(before)) << place;
        EXPECT_LE(moved.after(day), moved.after(before)) << place;
    }
}

// --- A place near a station that counts other dates than its own figures give.

TEST(PlaceNights, CarryMostOfWhatTheModelMissesAtANeighbour)
{
    const Station neighbour = station_with({counted_dates(inland_figures(), kFrost, 10, -10)});
    const std::vector<Station> stations{neighbour};
    const auto place = climate_among(stations, kTownNear, kHeight).value();
    const auto nights = PlaceNights::of(place);
    EXPECT_EQ(nights.dates_from(kFrost), DatesFrom::Neighbours);
    const auto model = nights.model().dates(kFrost);
    const auto moved = nights.dates(kFrost);
    for (const double percent : {10.0, 30.0, 50.0, 90.0}) {
        EXPECT_EQ(days_later(moved.last.dates.at(percent), model.last.dates.at(percent)), 7) << percent;
        EXPECT_EQ(days_later(moved.first.dates.at(percent), model.first.dates.at(percent)), -7) << percent;
    }
    // The season without such nights is 14 days shorter.
    EXPECT_NEAR(*moved.free_days.at(50.0), *model.free_days.at(50.0) - 14, 1);
}

TEST(PlaceNights, MeetTheDatesOfAStationAtThePlace)
{
    const Station here = station_with({counted_dates(inland_figures(), kFrost, 6, 9)});
    const std::vector<Station> stations{here};
    const auto nights = PlaceNights::of(climate_among(stations, kHere, kHeight).value());
    EXPECT_EQ(nights.dates_from(kFrost), DatesFrom::Station);
    const auto dates = nights.dates(kFrost);
    EXPECT_EQ(dates.last.dates, here.dates.front().last.dates);
    EXPECT_EQ(dates.first.dates, here.dates.front().first.dates);
}

TEST(PlaceNights, AskTheNeighboursWhereTheStationAtThePlaceHasNoDates)
{
    Station bare = station_with({});
    Station neighbour = station_with({counted_dates(inland_figures(), kFrost, 10, -10)});
    neighbour.position = kTownNear;
    bare.id = "B";
    const std::vector<Station> stations{bare, neighbour};
    const auto between = Position{Latitude::literal(45.04), Longitude::literal(11.0)};
    auto place = climate_among(stations, between, kHeight).value();
    for (auto& use : place.stations) { // As if the bare one were far lighter.
        use.weight = use.station->dates.empty() ? 0.3 : 0.7;
    }
    EXPECT_TRUE(station_stands_at(place));
    EXPECT_EQ(PlaceNights::of(place).dates_from(kFrost), DatesFrom::Neighbours);
}

TEST(PlaceNights, FadeBeyondTheLinesThatWereCounted)
{
    const Station here = station_with({counted_dates(inland_figures(), kFrost, 10, 10)});
    const std::vector<Station> stations{here};
    const auto nights = PlaceNights::of(climate_among(stations, kHere, kHeight).value());
    const auto shift = [&nights](double line) {
        const auto at = Celsius::from_degrees(line);
        return days_later(nights.dates(at).last.dates.at(50.0), nights.model().dates(at).last.dates.at(50.0));
    };
    EXPECT_NEAR(shift(PlaceNights::kFadeKelvins / 2.0), 5, 1);
    EXPECT_NEAR(shift(-PlaceNights::kFadeKelvins / 2.0), 5, 1);
    EXPECT_EQ(shift(PlaceNights::kFadeKelvins + 0.1), 0);
    EXPECT_EQ(nights.dates_from(Celsius::from_degrees(PlaceNights::kFadeKelvins + 0.1)), DatesFrom::Model);
}

TEST(PlaceNights, TakeASpotsLineAsThatOfTheOpenAir)
{
    // Five kelvins warmer than the open air: a line of 5 C there is one of 0 C outside.
    const Station here = station_with({counted_dates(inland_figures(), kFrost, 10, 10)});
    const std::vector<Station> stations{here};
    const auto nights = PlaceNights::of(climate_among(stations, kHere, kHeight).value());
    const NightOffset offset{KelvinDelta::from_kelvins(5.0), KelvinDelta::from_kelvins(1.0)};
    const auto line = Celsius::from_degrees(5.0);
    const auto half = Probability::literal(0.5);
    EXPECT_NEAR(
        days_later(nights.season(line, offset).last(half), nights.model().season(line, offset).last(half)),
        10, 1);
}

TEST(PlaceNights, SayTheSameOfASeasonAndOfItsNights)
{
    const Station here = station_with({counted_dates(inland_figures(), kFrost, 8, -8)});
    const std::vector<Station> stations{here};
    const auto nights = PlaceNights::of(climate_among(stations, kHere, kHeight).value());
    const auto season = nights.season(kFrost);
    const auto turn = season.turn();
    for (const int place : {40, 70, 90}) { // From the turn into the autumn: a night by then.
        const auto chance = nights.chance_within(turn.day_at(0), place + 1, kFrost);
        EXPECT_NEAR(chance.fraction(), season.on_or_before(turn.day_at(place)).fraction(), 0.02) << place;
    }
    for (const int place : {240, 265, 290}) { // From a spring day to the turn: a night after it.
        const auto chance = nights.chance_within(turn.day_at(place + 1), 365 - place, kFrost);
        EXPECT_NEAR(chance.fraction(), season.after(turn.day_at(place)).fraction(), 0.02) << place;
    }
    // A night of spring is as likely as the model has it eight days before.
    const auto day = turn.day_at(260);
    EXPECT_NEAR(nights.chance_on(day, kFrost).fraction(),
                nights.model().chance_on(turn.day_at(252), kFrost).fraction(), 0.01);
}

TEST(PlaceNights, AreTheModelsWhereNothingIsCounted)
{
    const std::vector<Station> stations{station_with({})};
    const auto nights = PlaceNights::of(climate_among(stations, kTownNear, kHeight).value());
    EXPECT_EQ(nights.dates_from(kFrost), DatesFrom::Model);
    const auto ours = nights.season(kFrost);
    const auto model = nights.model().season(kFrost);
    for (int place = 0; place < 366; place += 5) {
        const auto day = ours.turn().day_at(place);
        EXPECT_EQ(ours.after(day), model.after(day));
        EXPECT_EQ(nights.chance_on(day, kFrost), nights.model().chance_on(day, kFrost));
    }
}

TEST(PlaceNights, MeetTheDatesOfTheGrowersOwnRecordAtAnyLine)
{
    const auto record = std::make_shared<const OwnRecord>(OwnRecord{.name = "Porch",
                                                                    .file = "porch.csv",
                                                                    .position = kHere,
                                                                    .elevation = kHeight,
                                                                    .imported = {2026, 11, 25},
                                                                    .days = sample_record(1991, 2020)});
    const auto place = climate_from_own(record, kHere, kHeight).value();
    const auto nights = PlaceNights::of(place);
    for (const double degrees : {-1.5, 0.0, 3.0, 7.0}) {
        const std::vector<Celsius> line{Celsius::from_degrees(degrees)};
        const auto counted = dates_from_own(*place.own, line, {}).value().front();
        const auto ours = nights.dates(line.front());
        for (const double percent : {10.0, 20.0, 50.0, 90.0}) {
            if (counted.last.dates.at(percent)) {
                EXPECT_NEAR(days_later(ours.last.dates.at(percent), counted.last.dates.at(percent)), 0, 1)
                    << degrees << ' ' << percent;
            }
        }
    }
}

TEST(PlaceNights, SayHowFarTheirDatesMayBeWrong)
{
    const std::vector<Station> counted{station_with({counted_dates(inland_figures(), kFrost, 6, 9)})};
    const auto here = climate_among(counted, kHere, kHeight).value();
    const auto near = climate_among(counted, kTownNear, kHeight).value();
    const auto far = Celsius::from_degrees(9.0);
    EXPECT_EQ(PlaceNights::of(near).expected_error_days(near, kFrost), near.expected_error_days_carried);
    EXPECT_EQ(PlaceNights::of(near).expected_error_days(near, far), near.expected_error_days);
    EXPECT_GT(PlaceNights::of(here).expected_error_days(here, kFrost), 0.0);
    EXPECT_LT(counted_error_days(28), counted_error_days(10));
}

} // namespace
} // namespace lathhouse::climate
