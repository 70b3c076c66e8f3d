#include "core/home/learned_offset.h"

#include "core/climate/student.h"
#include "core/home/demonstration.h"
#include "core/home/shelter.h"
#include "tests/climate/sample_figures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <random>

namespace lathhouse::home {
namespace {

using climate::NightKind;

constexpr KelvinDelta kelvins(double value)
{
    return KelvinDelta::from_kelvins(value);
}
calendar::Date night(int number)
{
    return calendar::Date{2026, 9, 1} + calendar::Days{number};
}
const climate::NightModel& inland()
{
    static const auto model =
        climate::NightModel::from_monthly(climate::inland_figures(), Latitude::literal(45.0));
    return model;
}

/// Half the width of the interval that holds 90 %.
double reach90(climate::NightOffset offset)
{
    return 1.6449 * offset.spread.kelvins();
}

/// What twenty nights of a porch would show: forecasts for the next night with the error that published
/// shares imply at their worst (1.62 K, Student's t with five degrees of freedom; trade rule R160), single
/// nights that scatter by 0.7 K, a porch that is `clear` warmer on clear calm nights and `other` on the rest.
struct Simulated {
    double clear = 2.3;
    double other = 2.3;
    bool kinds_logged = false;
    int nights = 20;
};
std::vector<OffsetEvidence> simulate(const Simulated& porch, std::mt19937& random)
{
    std::student_t_distribution<double> tail{climate::kTailFreedom};
    std::normal_distribution<double> scatter{0.0, 0.7};
    std::vector<OffsetEvidence> evidence;
    for (int at = 0; at < porch.nights; ++at) {
        const bool clear = at % 2 == 0;
        const double offset = (clear ? porch.clear : porch.other) + scatter(random);
        const double forecast_error = 1.62 * climate::kUnitStudentScale * tail(random);
        const auto kind = !porch.kinds_logged ? NightKind::Unknown
                          : clear             ? NightKind::ClearCalm
                                              : NightKind::Other;
        evidence.push_back({night(at), kelvins(offset - forecast_error), kelvins(1.9), kind, false});
    }
    return evidence;
}

struct Outcome {
    double covered = 0.0;
    double median_width = 0.0;
    double bias = 0.0;
};
template <class Pick>
Outcome repeat(const Simulated& porch, climate::NightOffset prior, double truth, Pick pick)
{
    constexpr int kRuns = 2000;
    std::mt19937 random{20261125};
    Outcome outcome;
    std::vector<double> widths;
    for (int run = 0; run < kRuns; ++run) {
        const climate::NightOffset found = pick(learn_offset(prior, simulate(porch, random)));
        outcome.covered += std::abs(found.mean.kelvins() - truth) <= reach90(found) ? 1.0 / kRuns : 0.0;
        outcome.bias += (found.mean.kelvins() - truth) / kRuns;
        widths.push_back(2.0 * reach90(found));
    }
    std::ranges::nth_element(widths, widths.begin() + kRuns / 2);
    outcome.median_width = widths[kRuns / 2];
    return outcome;
}

TEST(LearnedOffset, TwentyNightsBringARoofedPorchWithinTheBar)
{
    const auto outcome =
        repeat({}, prior_offset(SpotKind::Roofed), 2.3, [](const LearnedOffset& of) { return of.usual; });
    RecordProperty("median_width_kelvin", std::to_string(outcome.median_width));
    RecordProperty("covered", std::to_string(outcome.covered));
    std::cout << "width " << outcome.median_width << " covered " << outcome.covered << " bias "
              << outcome.bias << '\n';
    EXPECT_LT(outcome.median_width, 1.2);
    EXPECT_GE(outcome.covered, 0.85);
    EXPECT_LE(outcome.covered, 0.95);
}

TEST(LearnedOffset, CoversTheTruthWhereTheKindsOfNightDiffer)
{
    const Simulated porch{.clear = 3.2, .other = 1.2, .kinds_logged = true, .nights = 30};
    const auto prior = prior_offset(SpotKind::Roofed);
    const auto clear = repeat(porch, prior, 3.2, [](const LearnedOffset& of) { return of.clear_calm; });
    const auto other = repeat(porch, prior, 1.2, [](const LearnedOffset& of) { return of.other; });
    std::cout << "clear " << clear.covered << ' ' << clear.median_width << " other " << other.covered << ' '
              << other.median_width << '\n';
    EXPECT_GE(clear.covered, 0.85);
    EXPECT_GE(other.covered, 0.85);
}

TEST(LearnedOffset, BeforeReadingsIsThePrior)
{
    const auto prior = prior_offset(SpotKind::Roofed);
    const auto before = before_readings(prior);
    EXPECT_NEAR(before.usual.mean.kelvins(), prior.mean.kelvins(), 1e-12);
    EXPECT_NEAR(before.usual.spread.kelvins(), prior.spread.kelvins(), 1e-12);
    EXPECT_GT(before.clear_calm.mean, before.other.mean);
    EXPECT_EQ(before.nights, 0);
}

TEST(LearnedOffset, KnowsMoreTheMoreNights)
{
    std::mt19937 random{3};
    double before = prior_offset(SpotKind::Roofed).spread.kelvins();
    for (const int nights : {1, 5, 10, 20, 100}) {
        const auto learned =
            learn_offset(prior_offset(SpotKind::Roofed), simulate({.nights = nights}, random));
        EXPECT_LT(learned.usual.spread.kelvins(), before) << nights;
        EXPECT_EQ(learned.nights, nights);
        before = learned.usual.spread.kelvins();
    }
}

TEST(LearnedOffset, KindsOfNightAreTakenApart)
{
    std::mt19937 random{5};
    const auto learned =
        learn_offset(prior_offset(SpotKind::Roofed),
                     simulate({.clear = 4.0, .other = 0.5, .kinds_logged = true, .nights = 200}, random));
    EXPECT_NEAR(learned.clear_calm.mean.kelvins(), 4.0, 0.5);
    EXPECT_NEAR(learned.other.mean.kelvins(), 0.5, 0.5);
    EXPECT_EQ(learned.clear_calm_nights, 100);
    EXPECT_EQ(learned.other_nights, 100);
    // A night whose kind is not known is less sure than either.
    EXPECT_GT(learned.of_night(NightKind::Unknown).spread, learned.of_night(NightKind::Other).spread);
}

TEST(LearnedOffset, OneWildReadingMovesLittle)
{
    std::mt19937 random{9};
    auto evidence = simulate({}, random);
    const auto without = learn_offset(prior_offset(SpotKind::Roofed), evidence);
    evidence.push_back({night(40), kelvins(25.0), kelvins(1.9), NightKind::Unknown, false});
    const auto with = learn_offset(prior_offset(SpotKind::Roofed), evidence);
    EXPECT_NEAR(with.usual.mean.kelvins(), without.usual.mean.kelvins(), 0.1);
}

TEST(LearnedOffset, ASureReferenceWeighsMore)
{
    const auto one = [](double error) {
        const std::vector<OffsetEvidence> evidence{
            {night(0), kelvins(4.0), kelvins(error), NightKind::Unknown, false}};
        return learn_offset(prior_offset(SpotKind::Roofed), evidence).usual.mean.kelvins();
    };
    EXPECT_GT(one(0.5), one(1.9));
    EXPECT_GT(one(1.9), one(4.0));
}

// The season's mean errs for days on end: neighbouring nights must not count as so many measurements.
TEST(LearnedOffset, TwentyNightsAgainstTheSeasonSayLittle)
{
    std::vector<OffsetEvidence> season;
    for (int at = 0; at < 20; ++at) {
        season.push_back({night(at), kelvins(5.0), kelvins(4.5), NightKind::Unknown, true});
    }
    auto apart = season;
    for (int at = 0; at < 20; ++at) {
        apart[static_cast<std::size_t>(at)].night = night(30 * at);
    }
    const auto prior = prior_offset(SpotKind::Roofed);
    const auto together = learn_offset(prior, season);
    EXPECT_GT(together.usual.spread.kelvins(), 0.85); // Of 1.0 before.
    EXPECT_LT(learn_offset(prior, apart).usual.spread, together.usual.spread);
}

// Generalized least squares by hand: two nights, correlation 0.7, spread 4, scatter 0.7, prior 1.5 and 1.0;
// the sum of the inverse of [[16.49, 11.2], [11.2, 16.49]] is 2 / (16.49 + 11.2).
TEST(LearnedOffset, TwoSeasonNightsAgreeWithTheFormula)
{
    const std::vector<OffsetEvidence> evidence{
        {night(0), kelvins(3.0), kelvins(4.0), NightKind::Unknown, true},
        {night(1), kelvins(5.0), kelvins(4.0), NightKind::Unknown, true}};
    const double information = 2.0 / (16.49 + 11.2);
    const auto learned = learn_offset(prior_offset(SpotKind::Roofed), evidence);
    EXPECT_NEAR(learned.usual.spread.kelvins(), 1.0 / std::sqrt(1.0 + information), 1e-9);
    EXPECT_NEAR(learned.usual.mean.kelvins(), (1.5 + information * 4.0) / (1.0 + information), 1e-9);
}

NightLog log_of(std::optional<double> forecast, std::optional<double> station)
{
    NightLog log;
    const auto day = calendar::Date{2026, 10, 5};
    const auto entered = calendar::start_of_day_utc(day);
    Reading reading{5, day, Celsius::from_degrees(4.0), {}, {}, {}, entered, ""};
    if (station) {
        reading.station_low = Celsius::from_degrees(*station);
    }
    log.readings.push_back(reading);
    if (forecast) {
        log.forecasts.push_back(
            {day - calendar::Days{1}, day, Celsius::from_degrees(*forecast), {}, {}, entered});
    }
    return log;
}

TEST(OffsetEvidence, TakesTheBestReferenceThatIsThere)
{
    const auto season = offset_evidence(5, log_of({}, {}), inland()).at(0);
    EXPECT_TRUE(season.season_only);
    const auto station = offset_evidence(5, log_of({}, 1.0), inland()).at(0);
    EXPECT_FALSE(station.season_only);
    EXPECT_NEAR(station.difference.kelvins(), 3.0, 1e-12);
    EXPECT_EQ(station.reference_error, kStationError);
    const auto forecast = offset_evidence(5, log_of(2.0, {}), inland()).at(0);
    EXPECT_LT(forecast.reference_error, station.reference_error);
    const auto both = offset_evidence(5, log_of(2.0, 1.0), inland()).at(0);
    EXPECT_LT(both.reference_error, forecast.reference_error);
    EXPECT_LT(both.difference, station.difference);
    EXPECT_TRUE(offset_evidence(6, log_of(2.0, 1.0), inland()).empty());
}

TEST(OffsetEvidence, TeachesTheSpotsThatWereReadAloneAndIndoorsNothing)
{
    auto household = demonstration({.today = night(0)}).value().household;
    auto spot = household.spots.front();
    household.spots.clear();
    spot.offset = prior_offset(SpotKind::Roofed);
    for (const auto& [id, kind] : {std::pair{5, SpotKind::Roofed}, std::pair{6, SpotKind::Roofed}, std::pair{7, SpotKind::Indoors}}) {
        spot.id = id;
        spot.kind = kind;
        household.spots.push_back(spot);
    }
    auto log = log_of(2.0, 1.0);
    auto indoors = log.readings.front();
    indoors.spot = 7;
    log.readings.push_back(indoors);
    const auto learned = with_learned_offsets(household, log, inland());
    EXPECT_EQ(learned.spot(5)->offset.mean, offset_of(*household.spot(5), log, inland()).usual.mean);
    EXPECT_LT(learned.spot(5)->offset.spread, household.spot(5)->offset.spread);
    EXPECT_EQ(learned.spot(6)->offset.mean, household.spot(6)->offset.mean);
    EXPECT_EQ(learned.spot(7)->offset.mean, household.spot(7)->offset.mean);
    EXPECT_EQ(offset_of(*household.spot(6), log, inland()).nights, 0);
}

TEST(OffsetEvidence, TheLastForecastOfANightCounts)
{
    auto log = log_of(2.0, {});
    const auto day = log.readings[0].night;
    log.forecasts.insert(
        log.forecasts.begin(),
        {day - calendar::Days{5}, day, Celsius::from_degrees(-6.0), {}, {}, log.readings[0].entered});
    EXPECT_EQ(log.last_forecast(day)->low, Celsius::from_degrees(2.0));
    EXPECT_EQ(log.last_forecast(day + calendar::Days{1}), nullptr);
}

TEST(LearnedOffset, OfNightsAgainstTheSeasonAloneTheNewestHundredAndTwentyCount)
{
    std::mt19937 random{7};
    auto evidence = simulate({.nights = 150}, random);
    for (auto& one : evidence) {
        one.season_only = true;
    }
    const climate::NightOffset prior{kelvins(1.0), kelvins(2.0)};
    const auto all = learn_offset(prior, evidence);
    const auto newest = learn_offset(prior, std::span{evidence}.last(120));
    EXPECT_EQ(all.usual.mean, newest.usual.mean);
    EXPECT_NE(all.usual.mean, learn_offset(prior, std::span{evidence}.last(100)).usual.mean);
}

} // namespace
} // namespace lathhouse::home
