#include "core/plan/pot_size.h"

#include "core/plan/growing_rules.h"

#include <cmath>

namespace lathhouse::plan {

PotSize pot_size(const home::Plant& plant)
{
    const auto volume =
        plant.pot_volume.value_or(Litres::from_litres(plant.pot_kilograms * growing_figure("pot_litres_per_kg")));
    const double cubic_metres = volume.litres() / 1000.0;
    return {volume, !plant.pot_volume,
            Metres::from_metres(std::cbrt(cubic_metres / growing_figure("pot_shape")))};
}

} // namespace lathhouse::plan
