#pragma once

#include "core/growth/growth_clock.h"
#include "core/growth/recovery_model.h"
#include "core/growth/series.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace lathhouse::growth {

enum class Verdict { NoSetback, Recovered, Recovering, Holding, Declining, TooEarly };
std::string_view to_string(Verdict verdict); ///< "no_setback", "recovered" ...

/// Why it is too early.
enum class TooEarlyWhy {
    None,          ///< It is not.
    FewBefore,     ///< Fewer than 3 readings before the event: more to come cannot help.
    FewAfter,      ///< Fewer than 4 readings after it.
    ClockStands,   ///< The growth clock stood still, before the event or since.
    NotGrowing,    ///< No growth before the event that one could regain.
    AwaitsSupport, ///< Good news for the first time; one more reading has to bear it out.
    Undecided      ///< The readings fit more than one verdict.
};
std::string_view to_string(TooEarlyWhy why); ///< "", "few_before", "few_after" ...

/// The verdict of a model of all readings and of one of all but the last (nullopt where that one had too few).
///
/// A grower looks after every reading, so good news has a strict limit that the look before already supported;
/// the rule in full stands in docs/methods/growth-and-recovery.md.
struct Judgement {
    Verdict verdict;
    TooEarlyWhy why = TooEarlyWhy::None;
    friend bool operator==(const Judgement&, const Judgement&) = default;
};
Judgement judge(SeriesKind kind, const RecoveryModel& now, const std::optional<RecoveryModel>& look_before);

/// What a series says of a plant after an event.
struct Recovery {
    Judgement judgement{Verdict::TooEarly, TooEarlyWhy::FewAfter};
    int readings_before = 0; ///< On the event's date or before it.
    int readings_after = 0;
    /// A day of the clock, on the transformed scale (sizes: 0.01 is 1 % a day). These four are nullopt where
    /// there are too few readings to say.
    std::optional<double> rate_before;
    std::optional<double> rate_after; ///< Now, behind the last change.
    std::optional<double> share_regained;
    std::optional<double> step; ///< At the event, transformed.
    std::optional<double> share_low;  ///< The interval of the share, kIntervalLevel; open where nullopt.
    std::optional<double> share_high;
    std::optional<double> standard_error; ///< Of one reading, transformed, at a usual value; from the fit.
    /// Days of the clock in a calendar day, on average over the readings before the event and over those after it.
    double pace_before = 1.0;
    double pace_after = 1.0;
    bool declined = false; ///< It is undecided, and one of the looks before this one said declining.
    bool slows_before = false; ///< Growth was slowing before the event: the plant may be nearing its size.
    bool near_ceiling = false; ///< A share so near 1 that growth can hardly be seen in it any more.
    /// First date whose reading could give a verdict, if readings go on as they do; nullopt where there is a
    /// verdict, or none in sight.
    std::optional<calendar::Date> next_reading;
};
inline constexpr double kIntervalLevel = 0.9;

/// Judges a series.
///
/// readings: by date. A reading on the event's date counts as before it. spared: the clock of spared companions,
/// which runs on top of `clock`; may be null. The clock is scaled within so that a day of it is worth a calendar
/// day on average over the series, since the constants were set for that; rates come back a day of the clock.
Recovery recovery_of(SeriesKind kind, std::span<const SeriesReading> readings, calendar::Date event,
                     const GrowthClock& clock, const SparedClock* spared = nullptr);

/// A day of a fitted course, in the unit of the readings.
struct FittedDay {
    calendar::Date date;
    double middle;
    double low; ///< Where the middle lies, kIntervalLevel.
    double high;
    std::optional<double> undisturbed; ///< Had nothing happened; after the event alone.
    bool clock_stands; ///< Next to nothing counts on the growth clock from this day to the next one of the course.
};

/// What the model behind a judgement expects between the first and the last reading, for a chart: days at most
/// `step_days` apart, the event among them. Empty where nothing is judged for want of readings or growing time.
/// Arguments as recovery_of; step_days is 1 at least.
std::vector<FittedDay> fitted_course(SeriesKind kind, std::span<const SeriesReading> readings, calendar::Date event,
                                     const GrowthClock& clock, int step_days, const SparedClock* spared = nullptr);

} // namespace lathhouse::growth
