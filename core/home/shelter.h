#pragma once

#include "core/home/household.h"
#include "core/sky/spot_limits.h"

namespace lathhouse::home {

/// Between which a spot's offset to the open-air low and its standard deviation may lie, in kelvins (common practice, no
/// source); the tables of the journal have the same limits.
inline constexpr sky::FigureLimits kOffsetKelvins{-30.0, 30.0};
inline constexpr sky::FigureLimits kOffsetSpreadKelvins{0.0, 30.0};

/// What to think of a spot's night lows before the grower has logged any, against the open air of the place
/// (a screen 1.5 m above grass in the open):
///
/// | kind | mean K | spread K | rests on |
/// | --- | --- | --- | --- |
/// | open | 0.5 | 0.8 | common practice, no source: beside a house, above the ground |
/// | roofed | 1.5 | 1.0 | below |
/// | screened | 1.0 | 1.0 | common practice, no source |
/// | glazed, unheated | 3.0 | 1.5 | common practice, no source (1 to 5 K) |
/// | indoors | 0 | 0 | has its own temperature instead |
///
/// Accuracy: nobody has measured a porch; the spread says how little is known, and it goes into every chance.
/// Ten to twenty nights with a minimum thermometer replace it.
/// Source for roofed: forest shelter is the nearest thing measured: the night low rises as the visible share
/// of the sky falls, by about 3 K in the mean, up to 6 K on clear nights and 1 K under cloud (Can. J. For.
/// Res. 26(9), 1996; For. Ecol. Manage. 168:149-161, 2002). A roof is no canopy, and a deck loses heat below,
/// so half of that mean is taken.
climate::NightOffset prior_offset(SpotKind kind);

} // namespace lathhouse::home
