#pragma once

#include "app/words/words.h"
#include "core/plan/feeding.h"
#include "core/plan/growing_rules.h"
#include "core/plan/roots.h"
#include "core/plan/water.h"

#include <span>
#include <string>
#include <string_view>

namespace lathhouse::words {

/// "2.4 L", below a litre "350 ml"; in US measures "10 cups".
std::string volume(Litres value, UnitSystem units);
/// The same in a table, where all stand in one unit: "0.45 L" or "0.48 qt".
std::string water_of_day(Litres value, UnitSystem units);
/// "12 kg" or "26 lb".
std::string weight(double kilograms, UnitSystem units);
/// "7 days", "1 day".
std::string days(int count);

/// "just repotted, until 5 May" - the reason and what ends it, without a full stop.
std::string why(const plan::Withheld& withheld);
/// One word for a script: "repotted", "too_dark" ...
std::string_view to_string(plan::WithheldWhy why);
std::string_view to_string(plan::WithheldUntil until);

/// Why a look is due, in a few words.
std::string why(plan::LookWhy why);
std::string_view to_string(plan::LookWhy why);

/// What heat does to roots: "roots slow down".
std::string_view to_string(plan::HeatOnRoots heat);
/// "cool and dim" ...
std::string_view to_string(plan::WinterQuarters quarters);
std::string winter_words(plan::WinterQuarters quarters); ///< The same for the reader.
/// What wet weeks of the year ask for; spells: "3 Jun to 20 Jul".
std::string wet_season(const std::string& spells);
/// What to do about roots and winter quarters: sentences, empty where all is well.
std::vector<std::string> advice(const plan::RootsOfPlant& roots, const home::Household& household,
                                UnitSystem units);

/// The rules that looks, roots and winter quarters rest on.
std::span<const std::string_view> water_rules();
/// "Sources: Soluble Salts - House Plants (UC ANR Garden Web); common practice, no source.\n"
std::string sources_line(std::span<const plants::Source* const> sources);

} // namespace lathhouse::words
