#pragma once

#include "core/climate/forecast_errors.h"
#include "core/climate/night_model.h"
#include "core/climate/night_weather.h"
#include "core/home/thermometer.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::home {

/// How one logged low compares with the open air of that night.
struct OffsetEvidence {
    calendar::Date night;
    KelvinDelta difference;      ///< Spot less the reference night.
    KelvinDelta reference_error; ///< Standard deviation of the reference about the open air.
    climate::NightKind kind;
    /// The reference is the season's mean alone: its errors follow one another from night to night.
    bool season_only;
};

/// What is known of a spot's offset to the open air, and from how many nights.
struct LearnedOffset {
    climate::NightOffset usual;      ///< Of the mean of all nights, half of them taken as clear and calm.
    climate::NightOffset clear_calm; ///< Of the mean of clear calm nights.
    climate::NightOffset other;      ///< Of the mean of cloudy or windy nights.
    int nights = 0;                  ///< Of the log.
    int clear_calm_nights = 0;
    int other_nights = 0;

    /// For one night of that kind: what is not known of the mean, and how single nights scatter about it.
    climate::NightOffset of_night(climate::NightKind kind) const;
};

/// Standard deviation of single nights about a spot's mean offset on nights of their kind. Common practice,
/// no source.
inline constexpr KelvinDelta kNightScatter = KelvinDelta::from_kelvins(0.7);

/// How far a station 10 to 40 km away is from the open air here on a single night, the mean difference of the
/// month apart.
/// Source: lows of the same date at 320 pairs of stations of the United States 10 to 40 km apart, 1995, 2005
/// and 2012 (GHCN-Daily, NOAA): the lower quarter of the pairs has 2.0 K, the middle 2.5 K; the lower one is
/// taken, since some of the pairs are read at different hours.
inline constexpr KelvinDelta kStationError = KelvinDelta::from_kelvins(2.0);

/// Offsets before any reading: on clear calm nights 1.5 times the prior mean, on others half of it, so that
/// their mean is the prior; each with the spread that makes the spread of the mean the prior's, correlation
/// 0.5. Forest shelter has 6 K on clear nights, 3 K in the mean, 1 K under cloud (shelter.h); 1.5 and 0.5 are
/// the cautious side of that, the rest is common practice without a source.
LearnedOffset before_readings(climate::NightOffset prior);

/// Offsets after readings: the two means are jointly normal, each night is a measurement of one of them (of
/// their mean where its kind is not known), with the reference's error and the scatter of nights as noise.
/// That noise is heavy-tailed (Student's t, five degrees of freedom) so that a bust of the forecast does not
/// move the mean, and its size is learned as well, the assumed one counting for six nights. Nights that have
/// only the season's mean to compare with are weighted together, their anomalies correlated by 0.70 to the
/// power of the days between (as in the night model); at most the last 120 of them are used.
///
/// Source: normal regression with a conjugate prior, the t by weights (expectation maximization; expected
/// information (n + 1)/(n + 3) of the t: Lange, Little & Taylor, J. Amer. Statist. Assoc. 84 (1989) 881-896,
/// from memory). Measured coverage: docs/methods/tonight.md.
LearnedOffset learn_offset(climate::NightOffset prior, std::span<const OffsetEvidence> evidence);

/// Each night's reading at the spot against the open air of that night: the last forecast kept for it, the
/// station's low noted with it, both by the inverse of their variances where both are there, or else the
/// season's mean.
std::vector<OffsetEvidence> offset_evidence(SpotId spot, const NightLog& log,
                                            const climate::NightModel& nights);

/// What is known of the spot's offset; the prior where it is indoors or has no readings.
LearnedOffset offset_of(const Spot& spot, const NightLog& log, const climate::NightModel& nights);

/// The household with each spot's offset as learned.
Household with_learned_offsets(Household household, const NightLog& log, const climate::NightModel& nights);

/// A kept forecast with the low that came: of the thermometers outdoors, less their spots' offsets. (A
/// station is not the open air here: its low would be scored against the wrong place.)
struct ForecastOutcome {
    const KeptForecast* forecast;
    Celsius low;        ///< Of the open air.
    KelvinDelta spread; ///< Standard deviation of how far that low is known.
};
std::vector<ForecastOutcome> forecast_outcomes(const Household& as_told, const NightLog& log,
                                               const climate::NightModel& nights);

/// Misses of the outcomes by the usual errors, for ForecastErrors::learned.
std::vector<climate::ForecastMiss> forecast_misses(std::span<const ForecastOutcome> outcomes,
                                                   const climate::NightModel& nights);

} // namespace lathhouse::home
