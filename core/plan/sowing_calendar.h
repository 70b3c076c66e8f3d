#pragma once

#include "core/plan/sowing.h"

#include <vector>

namespace lathhouse::plan {

/// A crop that can be sown within some days.
struct SowingNow {
    const plants::SeedKind* kind;
    SowingMethod method;
    DateSpan sow; ///< Its dates, of which the first may lie behind.
    std::optional<DateSpan> ready;
};

/// What of the reference can be sown from today for so many days, in the order of the reference.
std::vector<SowingNow> sowing_calendar(const climate::PlaceClimate& place, const SowingClimate& climate,
                                       const SowingWishes& wishes, calendar::Date today, int days);

} // namespace lathhouse::plan
