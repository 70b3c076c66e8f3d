#pragma once

#include "core/calendar/date.h"
#include "core/growth/series.h"

#include <span>
#include <vector>

namespace lathhouse::growth {

inline constexpr double kDaysOfWeek = 7.0;

/// Time as a plant feels it: a day counts as much as one grows on it, so that a winter is no relapse.
class GrowthClock {
public:
    /// Every day counts as one.
    static GrowthClock calendar();
    /// steps: how much each day counts, first that of `from`; none negative. Outside them every day counts as
    /// the nearest one that is there.
    static GrowthClock of_days(calendar::Date from, std::vector<double> steps);

    /// Days of the clock from the end of one date to the end of another; negative where `to` is earlier.
    double days_between(calendar::Date from, calendar::Date to) const;
    bool is_calendar() const { return sums_.empty(); }

private:
    double at(calendar::Date date) const;
    calendar::Date from_{1970, 1, 1};
    std::vector<double> sums_; ///< Of the days up to and with that one.
};

/// Dates on which companions were read, at least, for a clock to be made of them.
inline constexpr std::size_t kLeastOfSpared = 4;

/// A clock that runs as companions of the same kind grew that were spared the event: as they slow by age or
/// season, the clock slows.
///
/// A straight line and then a parabola is fitted to the mean of the companions on each date (student_fit), the
/// bend held near nought by a prior of 0.05 of the line's slope a week; the clock runs with the parabola's slope,
/// 1 at the event and never under a twentieth of it.
class SparedClock {
public:
    /// companions: readings of each, one series a plant. base: what their own time is taken on.
    /// nullopt with fewer than kLeastOfSpared dates or where the base clock stood still.
    static std::optional<SparedClock> of(SeriesKind kind, std::span<const std::vector<SeriesReading>> companions,
                                         calendar::Date event, const GrowthClock& base);
    /// Weeks of the companions' clock since the event, of weeks of the base clock since it.
    double weeks_of(double base_weeks) const;

private:
    double slope_ = 1.0; ///< At the event.
    double bend_ = 0.0;  ///< Half the change of the slope a week.
};

} // namespace lathhouse::growth
