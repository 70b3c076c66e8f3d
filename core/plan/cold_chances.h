#pragma once

#include "core/climate/night_model.h"

#include <compare>
#include <map>
#include <tuple>

namespace lathhouse::plan {

/// Season chances of one place, kept for the lines and offsets already asked for, so that another risk is a
/// look-up.
class ColdChances {
public:
    explicit ColdChances(climate::NightModel nights) : nights_(std::move(nights)) {}
    const climate::NightModel& nights() const { return nights_; }
    const climate::SeasonChances& season(Celsius line, climate::NightOffset offset) const;

private:
    climate::NightModel nights_;
    mutable std::map<std::tuple<double, double, double>, climate::SeasonChances> kept_;
};

} // namespace lathhouse::plan
