#pragma once

#include "app/models/year_data.h"

#include <cstddef>
#include <vector>

namespace lathhouse::models {

/// A passing of the risk chosen, within one cold season: the first evening out, or the first one in again.
struct RiskDate {
    bool going_out;           ///< Else coming in.
    std::size_t chosen;       ///< At the risk asked for.
    std::size_t at_fifth;     ///< At 1 in 5.
    std::size_t at_twentieth; ///< At 1 in 20.
};

/// Dates at which the curve passes the risk among the days, with the bracket of 1 in 5 to 1 in 20.
std::vector<RiskDate> risk_dates(const HarmCurve& curve, const std::vector<YearDay>& days,
                                 calendar::DayOfYear turn, Probability risk);

/// The same for the outdoor spot that the plan gives a plant; empty where it stays in.
std::vector<RiskDate> dates_of(const YearData& year, std::size_t plant, const std::vector<YearStay>& stays,
                               Probability risk);

} // namespace lathhouse::models
