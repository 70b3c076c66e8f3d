#pragma once

#include "core/base/result.h"
#include "core/home/jug.h"
#include "core/units/volume.h"

#include <span>
#include <string>
#include <string_view>

namespace lathhouse::plan {

/// A volume as a cook writes it: a number (decimal, "1/2", "1 1/2") and a measure, or a measure alone for one
/// of it. Measures: ml, L, cup (US), cup-metric, tbsp, tsp, floz-us, pint-us, pint-imp, quart-us, gal-us,
/// gal-imp; letters of either case.
/// Sizes: US measures by NIST Handbook 44, appendix C (cup 236.588 ml, tablespoon 14.787, teaspoon 4.929,
/// pint 473.176, quart 946.353, gallon 3785.41); imperial pint and gallon by the UK Weights and Measures Act
/// 1985 (568.261 and 4546.09 ml); metric cup 250 ml (common practice, no source). Errors: Malformed where it
/// is no such amount, with the measures that are known; OutOfRange for an amount that is not above 0 or above
/// 1,000 litres.
Result<Litres> read_amount(std::string_view text);
/// The same, or a number and a jug of the household by its name, without case: "2 blue can". The jugs are
/// named among what is known.
Result<Litres> read_amount(std::string_view text, std::span<const home::Jug> jugs);

/// Whether the word names a measure, one or several, so that no jug may be called so.
bool is_measure(std::string_view name);

/// A volume in the measures of a US kitchen: "3 cups", "1 1/2 gallons", below a cup tablespoons, below a
/// tablespoon teaspoons. Rounded to what can be measured: about a tenth.
std::string us_measure(Litres volume);

/// Teaspoons in the fractions that spoons come in: "1/8", "1/4", "1 1/2"; below 1/16 "less than 1/8".
std::string spoons(double teaspoons);

} // namespace lathhouse::plan
