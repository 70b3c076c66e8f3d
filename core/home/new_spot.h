#pragma once

#include "core/base/result.h"
#include "core/home/household.h"
#include "core/home/spot_light.h"

#include <optional>
#include <string>

namespace lathhouse::home {

/// Night lows of a lived-in room where nobody measured one (common practice, no source).
inline constexpr Celsius kUsualRoomInWinter = Celsius::from_degrees(18.0);
inline constexpr Celsius kUsualRoomInSummer = Celsius::from_degrees(21.0);
/// Pots that a spot may hold at most (common practice, no source: more is a slip of the pen); the tables of the journal
/// take a hundred times as many.
inline constexpr int kMostPots = 1000;

/// Errors: OutOfRange, with a sentence, for less than 0 or more than kMostPots pots at the spot of that name.
Result<void> pots_can_fit(const std::string& name, int pots);

/// What a grower can say of a new spot without measuring.
struct SpotWish {
    std::string name;
    SpotKind kind = SpotKind::Indoors;
    std::optional<Angle> facing = {}; ///< As usual_view has it.
    int capacity = 0;
    bool in_reach = false;
    bool apart = false;
    bool windy = false;
    std::optional<Celsius> winter = {}; ///< Of a room; else kUsualRoomInWinter.
    std::optional<Celsius> summer = {};
    std::optional<sky::SpotFigures> measured = {}; ///< Else usual_view.
    std::optional<climate::NightOffset> offset = {}; ///< To the open-air low; else prior_offset.
    /// Measured or known otherwise; both together they take the place of the view, which the spot then has not.
    std::optional<DailyLight> light_in_summer = {};
    std::optional<DailyLight> light_in_winter = {};
};

/// A spot of that kind: its view (usual_view where nothing was measured), the light that comes from it in the months
/// of the longest and the shortest day, and the offset of its kind, where the wish does not say them.
/// Errors: OutOfRange with a sentence for a blank name, as pots_can_fit, a room below -60 or
/// above 60 C, or an impossible view. Offset and light it takes as they are; the tables of the journal have their limits.
/// Source: usual_view, months_at and prior_offset.
Result<Spot> make_spot(SpotId id, int walking_order, const SpotWish& wish, const YearOfSky& year);

} // namespace lathhouse::home
