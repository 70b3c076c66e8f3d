#pragma once

#include "core/plan/mix.h"

namespace lathhouse::plan {

/// What ions a solution holds, millimoles of charge a litre.
struct Ions {
    double potassium = 0.0;
    double ammonium = 0.0;
    double calcium = 0.0;
    double nitrate = 0.0;
    double dihydrogen_phosphate = 0.0;
    double chloride = 0.0;
};

/// Electrical conductivity at 25 C, mS/cm.
///
/// Sum of the ions' equivalent conductivities at infinite dilution, lowered by Onsager's limiting law for
/// salts of single charges, Lambda = Lambda0 - (60.2 + 0.229 Lambda0) sqrt(c).
/// Source: CRC Handbook of Chemistry and Physics, ionic conductivity at infinite dilution (Vanysek).
/// Accuracy: 0.01 mol/L of potassium chloride comes out 0.7 % below the calibration standard of 1.413 mS/cm;
/// too high for salts of double charges such as sulphates.
double conductivity(const Ions& ions);

/// What a meter would show of a feed, above what the water itself shows, mS/cm.
struct ConductivityHint {
    double least;   ///< The nitrogen that no other salt needs is urea, which does not conduct.
    double usual;   ///< It is ammonium nitrate.
    double highest; ///< It is calcium nitrate.
};

/// Of a feed by its label, at `nitrogen_ppm` mg of nitrogen a litre: phosphate as ammonium dihydrogen
/// phosphate, potash as nitrate, each as far as the nitrogen reaches and then as potassium dihydrogen
/// phosphate and potassium chloride. Sulphates, magnesium and trace elements are not on the label and left
/// out. A hint: the label's own figure goes before it.
/// Precondition: as feed_mix.
ConductivityHint conductivity_of(const FeedLabel& label, double nitrogen_ppm);

} // namespace lathhouse::plan
