#pragma once

#include "core/units/scalar.h"

namespace lathhouse {

/// Sum of a day's photosynthetic light on a surface: moles of photons of 400-700 nm per square metre and day.
class DailyLight : public detail::Scalar<DailyLight> {
public:
    static constexpr DailyLight from_moles(double moles) { return DailyLight{moles}; }
    constexpr double moles() const { return raw_; }

private:
    friend class detail::Scalar<DailyLight>;
    explicit constexpr DailyLight(double moles) : Scalar(moles) {}
};

/// Energy of a day's sunlight on a surface, all wavelengths: megajoules per square metre and day.
class DailyRadiation : public detail::Scalar<DailyRadiation> {
public:
    static constexpr DailyRadiation from_megajoules(double megajoules) { return DailyRadiation{megajoules}; }
    constexpr double megajoules() const { return raw_; }

private:
    friend class detail::Scalar<DailyRadiation>;
    explicit constexpr DailyRadiation(double megajoules) : Scalar(megajoules) {}
};

} // namespace lathhouse
