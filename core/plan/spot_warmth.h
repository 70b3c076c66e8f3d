#pragma once

#include "core/home/spot_climate.h"
#include "core/plan/pest_course.h"

namespace lathhouse::plan {

/// The usual days of a household's spots as plan_pest_courses asks for them. The climate must outlive it.
inline SpotWarmth warmth_of(const home::SpotClimate& climate)
{
    return [&climate](home::SpotId spot, calendar::Date date) {
        const auto day = climate.on(spot, date);
        return DayWarmth{day.low, day.high};
    };
}

} // namespace lathhouse::plan
