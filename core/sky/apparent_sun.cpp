#include "core/sky/apparent_sun.h"

#include "core/sky/turn.h"

#include <array>
#include <cmath>
#include <numbers>
#include <span>

namespace lathhouse::sky {
namespace {
constexpr double kRadiansInDegree = std::numbers::pi / 180.0;
constexpr double kRadiansInArcsecond = kRadiansInDegree / 3600.0;

/// One term A cos(B + C tau) of VSOP87, A in 1e-8 rad or 1e-8 au, tau in thousands of Julian years.
struct Term {
    double amplitude, phase, rate;
};

constexpr std::array kLongitude0{
    Term{175347046.0, 0.0, 0.0},       Term{3341656.0, 4.6692568, 6283.07585},
    Term{34894.0, 4.6261, 12566.1517}, Term{3497.0, 2.7441, 5753.3849},
    Term{3418.0, 2.8289, 3.5231},      Term{3136.0, 3.6277, 77713.7715},
    Term{2676.0, 4.4181, 7860.4194},   Term{2343.0, 6.1352, 3930.2097},
    Term{1324.0, 0.7425, 11506.7698},  Term{1273.0, 2.0371, 529.691},
    Term{1199.0, 1.1096, 1577.3435},   Term{990.0, 5.233, 5884.927},
    Term{902.0, 2.045, 26.298},        Term{857.0, 3.508, 398.149},
    Term{780.0, 1.179, 5223.694},      Term{753.0, 2.533, 5507.553},
    Term{505.0, 4.583, 18849.228},     Term{492.0, 4.205, 775.523},
    Term{357.0, 2.92, 0.067},          Term{317.0, 5.849, 11790.629},
    Term{284.0, 1.899, 796.298},       Term{271.0, 0.315, 10977.079},
    Term{243.0, 0.345, 5486.778},      Term{206.0, 4.806, 2544.314},
    Term{205.0, 1.869, 5573.143},      Term{202.0, 2.458, 6069.777},
    Term{156.0, 0.833, 213.299},       Term{132.0, 3.411, 2942.463},
    Term{126.0, 1.083, 20.775},        Term{115.0, 0.645, 0.98},
    Term{103.0, 0.636, 4694.003},      Term{102.0, 0.976, 15720.839},
    Term{102.0, 4.267, 7.114},         Term{99.0, 6.21, 2146.17},
    Term{98.0, 0.68, 155.42},          Term{86.0, 5.98, 161000.69},
    Term{85.0, 1.3, 6275.96},          Term{85.0, 3.67, 71430.7},
    Term{80.0, 1.81, 17260.15},        Term{79.0, 3.04, 12036.46},
    Term{75.0, 1.76, 5088.63},         Term{74.0, 3.5, 3154.69},
    Term{74.0, 4.68, 801.82},          Term{70.0, 0.83, 9437.76},
};
constexpr std::array kLongitude1{
    Term{628331966747.0, 0.0, 0.0},   Term{206059.0, 2.678235, 6283.07585},
    Term{4303.0, 2.6351, 12566.1517}, Term{425.0, 1.59, 3.523},
    Term{119.0, 5.796, 26.298},       Term{109.0, 2.966, 1577.344},
    Term{93.0, 2.59, 18849.23},       Term{72.0, 1.14, 529.69},
};
constexpr std::array kLongitude2{
    Term{52919.0, 0.0, 0.0},
    Term{8720.0, 1.0721, 6283.0758},
    Term{309.0, 0.867, 12566.152},
};
constexpr std::array kLongitude3{Term{289.0, 5.844, 6283.076}};
constexpr std::array kLongitude4{Term{114.0, 3.142, 0.0}};
constexpr std::array kLatitude0{
    Term{280.0, 3.199, 84334.662}, Term{102.0, 5.422, 5507.553}, Term{80.0, 3.88, 5223.69},
    Term{44.0, 3.7, 2352.87},      Term{32.0, 4.0, 1577.34},
};
constexpr std::array kDistance0{
    Term{100013989.0, 0.0, 0.0},        Term{1670700.0, 3.0984635, 6283.07585},
    Term{13956.0, 3.05525, 12566.1517}, Term{3084.0, 5.1985, 77713.7715},
    Term{1628.0, 1.1739, 5753.3849},    Term{1576.0, 2.8469, 7860.4194},
    Term{925.0, 5.453, 11506.77},       Term{542.0, 4.564, 3930.21},
    Term{472.0, 3.661, 5884.927},       Term{346.0, 0.964, 5507.553},
    Term{329.0, 5.9, 5223.694},         Term{307.0, 0.299, 5573.143},
    Term{243.0, 4.273, 11790.629},      Term{212.0, 5.847, 1577.344},
    Term{186.0, 5.022, 10977.079},      Term{175.0, 3.012, 18849.228},
    Term{110.0, 5.055, 5486.778},       Term{98.0, 0.89, 6069.78},
    Term{86.0, 5.69, 15720.84},         Term{86.0, 1.27, 161000.69},
};
constexpr std::array kDistance1{
    Term{103019.0, 1.10749, 6283.07585},
    Term{1721.0, 1.0644, 12566.1517},
    Term{702.0, 3.142, 0.0},
};
constexpr std::array kDistance2{Term{4359.0, 5.7846, 6283.0758}, Term{124.0, 5.579, 12566.152}};

double sum(std::span<const Term> terms, double tau)
{
    double total = 0.0;
    for (const auto& term : terms) {
        total += term.amplitude * std::cos(term.phase + term.rate * tau);
    }
    return total;
}

/// One term of the nutation: whole multiples of the Moon's elongation D, the Sun's anomaly M, the Moon's
/// anomaly M', its argument of latitude F and its node; coefficients in 0.0001" and 0.0001" a century.
struct NutationTerm {
    double elongation, sun, moon, latitude, node;
    double longitude, longitude_rate, obliquity, obliquity_rate;
};
constexpr std::array kNutation{
    NutationTerm{0, 0, 0, 0, 1, -171996, -174.2, 92025, 8.9},
    NutationTerm{-2, 0, 0, 2, 2, -13187, -1.6, 5736, -3.1},
    NutationTerm{0, 0, 0, 2, 2, -2274, -0.2, 977, -0.5},
    NutationTerm{0, 0, 0, 0, 2, 2062, 0.2, -895, 0.5},
    NutationTerm{0, 1, 0, 0, 0, 1426, -3.4, 54, -0.1},
    NutationTerm{0, 0, 1, 0, 0, 712, 0.1, -7, 0},
    NutationTerm{-2, 1, 0, 2, 2, -517, 1.2, 224, -0.6},
    NutationTerm{0, 0, 0, 2, 1, -386, -0.4, 200, 0},
    NutationTerm{0, 0, 1, 2, 2, -301, 0, 129, -0.1},
    NutationTerm{-2, -1, 0, 2, 2, 217, -0.5, -95, 0.3},
    NutationTerm{-2, 0, 1, 0, 0, -158, 0, 0, 0},
    NutationTerm{-2, 0, 0, 2, 1, 129, 0.1, -70, 0},
    NutationTerm{0, 0, -1, 2, 2, 123, 0, -53, 0},
    NutationTerm{2, 0, 0, 0, 0, 63, 0, 0, 0},
    NutationTerm{0, 0, 1, 0, 1, 63, 0.1, -33, 0},
    NutationTerm{2, 0, -1, 2, 2, -59, 0, 26, 0},
    NutationTerm{0, 0, -1, 0, 1, -58, -0.1, 32, 0},
    NutationTerm{0, 0, 1, 2, 1, -51, 0, 27, 0},
    NutationTerm{-2, 0, 2, 0, 0, 48, 0, 0, 0},
    NutationTerm{0, 0, -2, 2, 1, 46, 0, -24, 0},
    NutationTerm{2, 0, 0, 2, 2, -38, 0, 16, 0},
    NutationTerm{0, 0, 2, 2, 2, -31, 0, 13, 0},
    NutationTerm{0, 0, 2, 0, 0, 29, 0, 0, 0},
    NutationTerm{-2, 0, 1, 2, 2, 29, 0, -12, 0},
    NutationTerm{0, 0, 0, 2, 0, 26, 0, 0, 0},
    NutationTerm{-2, 0, 0, 2, 0, -22, 0, 0, 0},
    NutationTerm{0, 0, -1, 2, 1, 21, 0, -10, 0},
    NutationTerm{0, 2, 0, 0, 0, 17, -0.1, 0, 0},
    NutationTerm{2, 0, -1, 0, 1, 16, 0, -8, 0},
    NutationTerm{-2, 2, 0, 2, 2, -16, 0.1, 7, 0},
    NutationTerm{0, 1, 0, 0, 1, -15, 0, 9, 0},
    NutationTerm{-2, 0, 1, 0, 1, -13, 0, 7, 0},
    NutationTerm{0, -1, 0, 0, 1, -12, 0, 6, 0},
    NutationTerm{0, 0, 2, -2, 0, 11, 0, 0, 0},
    NutationTerm{2, 0, -1, 2, 1, -10, 0, 5, 0},
};

struct Nutation {
    double longitude, obliquity; ///< Radians.
};

/// Meeus, chapter 22: arguments in degrees, t in Julian centuries.
Nutation nutation(double t)
{
    const double elongation = 297.85036 + t * (445267.111480 + t * (-0.0019142 + t / 189474.0));
    const double sun = 357.52772 + t * (35999.050340 + t * (-0.0001603 - t / 300000.0));
    const double moon = 134.96298 + t * (477198.867398 + t * (0.0086972 + t / 56250.0));
    const double latitude = 93.27191 + t * (483202.017538 + t * (-0.0036825 + t / 327270.0));
    const double node = 125.04452 + t * (-1934.136261 + t * (0.0020708 + t / 450000.0));
    double in_longitude = 0.0;
    double in_obliquity = 0.0;
    for (const auto& term : kNutation) {
        const double argument =
            kRadiansInDegree * (term.elongation * elongation + term.sun * sun + term.moon * moon +
                                term.latitude * latitude + term.node * node);
        in_longitude += (term.longitude + term.longitude_rate * t) * std::sin(argument);
        in_obliquity += (term.obliquity + term.obliquity_rate * t) * std::cos(argument);
    }
    constexpr double kUnit = 1e-4 * kRadiansInArcsecond;
    return {in_longitude * kUnit, in_obliquity * kUnit};
}

double within_turn(double radians)
{
    const double rest = std::fmod(radians, kTurn);
    return rest < 0.0 ? rest + kTurn : rest;
}
} // namespace

ApparentSun apparent_sun(double julian_centuries)
{
    const double t = julian_centuries;
    const double tau = t / 10.0;
    const double longitude =
        1e-8 *
        (sum(kLongitude0, tau) +
         tau * (sum(kLongitude1, tau) +
                tau * (sum(kLongitude2, tau) + tau * (sum(kLongitude3, tau) + tau * sum(kLongitude4, tau)))));
    const double latitude = 1e-8 * sum(kLatitude0, tau);
    const double distance =
        1e-8 * (sum(kDistance0, tau) + tau * (sum(kDistance1, tau) + tau * sum(kDistance2, tau)));

    const auto nodding = nutation(t);
    // Meeus 22.2.
    const double mean_obliquity =
        kRadiansInArcsecond * (84381.448 + t * (-46.8150 + t * (-0.00059 + t * 0.001813)));
    const double obliquity = mean_obliquity + nodding.obliquity;
    // Opposite to the Earth's place, turned to the FK5 equinox (-0.09033"), held back by the light's time.
    const double apparent = longitude + std::numbers::pi - 0.09033 * kRadiansInArcsecond + nodding.longitude -
                            20.4898 * kRadiansInArcsecond / distance;
    const double beta = -latitude;
    const double right_ascension = std::atan2(
        std::sin(apparent) * std::cos(obliquity) - std::tan(beta) * std::sin(obliquity), std::cos(apparent));
    const double declination = std::asin(std::sin(beta) * std::cos(obliquity) +
                                         std::cos(beta) * std::sin(obliquity) * std::sin(apparent));
    return {Angle::from_radians(within_turn(longitude)),
            Angle::from_radians(within_turn(apparent)),
            Angle::from_radians(within_turn(right_ascension)),
            Angle::from_radians(declination),
            distance,
            Angle::from_radians(nodding.longitude),
            Angle::from_radians(nodding.obliquity),
            Angle::from_radians(obliquity)};
}

Angle mean_sidereal_time(double days)
{
    const double t = days / 36525.0;
    const double whole_turns = std::floor(days);
    // The whole turns are left out before the multiplication, so that no digits are lost to them.
    const double degrees = 280.46061837 + 360.0 * (days - whole_turns) + 0.98564736629 * days +
                           t * t * (0.000387933 - t / 38710000.0);
    return Angle::from_radians(within_turn(degrees * kRadiansInDegree));
}

} // namespace lathhouse::sky
