#pragma once

#include "app/words/words.h"
#include "core/home/learned_offset.h"
#include "core/plan/tonight.h"

#include <string>

namespace lathhouse::words {

/// Why a plant should come in or may stay: "1 in 4 for a night at or below 2.0 °C, where damage begins".
std::string why(const plan::PlantNight& night, const plan::NightAhead& ahead,
                const home::Household& household, UnitSystem units);
/// One sentence on a room whose logged low or high a plant does not like.
std::string room_remark(const plan::RoomRemark& remark, const home::Household& household, UnitSystem units);

/// "1.9 °C milder than the open air", "0.4 °C colder than the open air".
std::string against_open_air(KelvinDelta offset, UnitSystem units);
/// "your 14 readings say 1.9 °C milder than the open air, 1.4 to 2.4"; the interval holds 9 in 10.
std::string learned(const home::LearnedOffset& offset, UnitSystem units);
/// Ends of the interval that holds 9 in 10 of what an offset may be.
std::pair<KelvinDelta, KelvinDelta> nine_in_ten(climate::NightOffset offset);

} // namespace lathhouse::words
