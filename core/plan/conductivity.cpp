#include "core/plan/conductivity.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::plan {
namespace {

// S cm2 a mole of charge.
constexpr double kPotassium = 73.48;
constexpr double kAmmonium = 73.5;
constexpr double kCalcium = 59.47;
constexpr double kNitrate = 71.42;
constexpr double kDihydrogenPhosphate = 36.0;
constexpr double kChloride = 76.31;

// Grams a mole.
constexpr double kNitrogenMass = 14.007;
constexpr double kPhosphorusMass = 30.974;
constexpr double kPotassiumMass = 39.098;

} // namespace

double conductivity(const Ions& ions)
{
    const double charge = ions.nitrate + ions.dihydrogen_phosphate + ions.chloride; // Millimoles a litre.
    if (!(charge > 0.0)) {
        return 0.0;
    }
    const double sum = ions.potassium * kPotassium + ions.ammonium * kAmmonium + ions.calcium * kCalcium +
                       ions.nitrate * kNitrate + ions.dihydrogen_phosphate * kDihydrogenPhosphate +
                       ions.chloride * kChloride;
    const double at_dilution = sum / charge;
    const double equivalent =
        at_dilution - (60.2 + 0.229 * at_dilution) * std::sqrt(charge / 1000.0);
    return std::max(0.0, equivalent) * charge / 1000.0;
}

ConductivityHint conductivity_of(const FeedLabel& label, double nitrogen_ppm)
{
    const double grams_a_litre = nitrogen_ppm / (10.0 * label.nitrogen_percent);
    const double nitrogen = nitrogen_ppm / kNitrogenMass;
    const double phosphorus = 10.0 * grams_a_litre * label.phosphorus_percent() / kPhosphorusMass;
    const double potassium = 10.0 * grams_a_litre * label.potassium_percent() / kPotassiumMass;

    Ions bound;
    bound.potassium = potassium;
    bound.dihydrogen_phosphate = phosphorus;
    bound.ammonium = std::min(phosphorus, nitrogen);
    const double potassium_phosphate = std::min(phosphorus - bound.ammonium, potassium);
    bound.nitrate = std::min(potassium - potassium_phosphate, nitrogen - bound.ammonium);
    bound.chloride = potassium - potassium_phosphate - bound.nitrate;
    const double left = nitrogen - bound.ammonium - bound.nitrate;

    auto ammonium_nitrate = bound;
    ammonium_nitrate.ammonium += left / 2.0;
    ammonium_nitrate.nitrate += left / 2.0;
    auto calcium_nitrate = bound;
    calcium_nitrate.calcium += left;
    calcium_nitrate.nitrate += left;
    return {conductivity(bound), conductivity(ammonium_nitrate), conductivity(calcium_nitrate)};
}

} // namespace lathhouse::plan
