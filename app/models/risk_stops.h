#pragma once

#include "core/units/probability.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>
#include <cstddef>

namespace lathhouse::models {

/// The risks that the slider of the page Year stops at: one in so many seasons.
inline constexpr std::array kRiskStops{50, 20, 10, 5, 3};

/// Of them the usual one, 1 in 10.
inline constexpr int kUsualStop = 2;

inline Probability risk_at(int stop)
{
    return Probability::clamped(1.0 / kRiskStops[static_cast<std::size_t>(stop)]);
}

/// They in words: "1 in 10".
inline QStringList risk_stops()
{
    QStringList stops;
    for (const int stop : kRiskStops) {
        stops.append(QCoreApplication::translate("lathhouse::models::YearModel", "1 in %1").arg(stop));
    }
    return stops;
}

} // namespace lathhouse::models
