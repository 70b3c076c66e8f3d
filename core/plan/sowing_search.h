#pragma once

#include "core/plan/sowing.h"

#include <optional>
#include <set>
#include <vector>

// Of use inside core/plan only: the days on which a kind can go out.

namespace lathhouse::plan {

/// A sowing is looked for over a common year.
inline constexpr int kDaysOfAYear = 365;

/// Which sort of the row's range of days is meant.
enum class SowingPace { Quick, Usual, Slow };
enum class RainRule { Minded, Ignored };

/// Days on end, counted from the climate's date, on which a kind can be planted or sown out.
struct SowingRun {
    int first;
    int last;
    bool all_year;
};

class SowingSearch {
public:
    /// extra_weeks: indoors, beyond the row's; they count as days grown.
    SowingSearch(const plants::SeedKind& kind, const SowingClimate& climate, Probability risk, SowingPace pace,
                 RainRule rain, int extra_weeks);

    const plants::SeedKind& kind() const { return *kind_; }
    const SowingClimate& climate() const { return *climate_; }
    bool minds_rain() const { return rain_ == RainRule::Minded; }
    /// Days indoors before planting out.
    int days_indoors() const { return days_indoors_; }
    /// First day out that is possible by today's date.
    int first_day(SowingMethod method) const { return method == SowingMethod::Indoors ? days_indoors_ : 0; }

    /// What stands against that day; empty where it will do.
    std::set<SowingLimit> limits(SowingMethod method, int day) const;
    /// The first run of days that will do and begin within a year; nullopt where there is none or the kind is
    /// not raised that way.
    std::optional<SowingRun> run_of(SowingMethod method) const { return run_from(method, first_day(method)); }
    /// The same from a day on that is not tied to today's sowing: for seedlings that are there already.
    std::optional<SowingRun> run_from(SowingMethod method, int start) const;
    /// When a usual sort put out that day is ready.
    std::optional<int> usual_ready(SowingMethod method, int day) const;
    /// For quick to slow sorts; nullopt where not even a quick one gets there.
    std::optional<DateSpan> ready(SowingMethod method, int day) const;
    bool slow_sort_holds(SowingMethod method, int day, Probability risk) const;
    bool is_wet(SowingMethod method, int day) const;
    /// The reason and its figures, without ways out.
    NoDate diagnose() const;

private:
    /// Warm days wanted outdoors.
    double needed(SowingMethod method, SowingPace pace) const;
    std::optional<int> ready_day(SowingMethod method, int day, SowingPace pace) const;
    bool is_raised(SowingMethod method) const;

    const plants::SeedKind* kind_;
    const SowingClimate* climate_;
    Probability risk_;
    SowingPace pace_;
    RainRule rain_;
    int extra_weeks_;
    int days_indoors_;
    std::vector<double> grown_;      ///< Days of full growth before each day ahead.
    std::vector<int> next_cool_;     ///< First day from each on with a usual night at or below the safe one.
    std::vector<int> next_hot_;      ///< First day from each on that is too hot.
    std::vector<int> next_wet_;      ///< First day from each on in a wet month.
};

} // namespace lathhouse::plan
