#pragma once

#include "core/units/angle.h"

namespace lathhouse::sky {

/// Share of unpolarised light that goes through clear panes one behind the other.
///
/// panes: 0 (an opening) to 4. incidence: between the light and the panes' normal, 0..90 degrees.
/// Reflection at the surfaces of glass of refractive index 1.526, with what is thrown back and forth between
/// them; a pane absorbs 3 % of what crosses it straight (clear float glass of 4 mm, in light: common
/// practice, no source), more on a slant. Coated panes let less through. Source: Duffie and Beckman, Solar
/// Engineering of Thermal Processes, 5.1-5.3 (Fresnel, Snell, Bouguer).
double glass_transmittance(int panes, Angle incidence);

/// The same for light from a whole half of the sky, as for a beam at 60 degrees.
/// Source: Duffie and Beckman, 5.4.
double glass_transmittance_of_sky(int panes);

} // namespace lathhouse::sky
