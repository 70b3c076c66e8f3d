#pragma once

#include "core/home/new_spot.h"

#include <QtGlobal>

#include <array>
#include <cstddef>

namespace lathhouse::models {

// Directions as a spot is drafted: eight from north.
inline constexpr int kFacings = 8;
inline constexpr int kNorth = 0;
inline constexpr int kEast = 2;
inline constexpr int kSouth = 4;
inline constexpr int kWest = 6;
inline constexpr int kNowhere = -1;
inline constexpr int kToTheNoonSun = -2;

/// A spot that most homes have, to be added with one press.
struct ReadySpot {
    const char* name;
    const char* reason;
    home::SpotKind kind;
    int facing; ///< kToTheNoonSun: where the sun stands at noon, by the hemisphere.
    int pots;
};

/// The numbers of pots are a start for the grower to correct (common practice, no source).
inline constexpr std::array<ReadySpot, 9> kReadySpots{
    {{QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "South sill"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "A window that faces south"), home::SpotKind::Indoors, kSouth, 5},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "East sill"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "A window that faces east"), home::SpotKind::Indoors, kEast, 5},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "West sill"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "A window that faces west"), home::SpotKind::Indoors, kWest, 5},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "North sill"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "A window that faces north"), home::SpotKind::Indoors, kNorth, 5},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Cool landing"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "A stairwell or unheated room with a window; say its winter nights"), home::SpotKind::Indoors, kToTheNoonSun, 6},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Roofed balcony"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Outdoors under a roof: a balcony, a porch"), home::SpotKind::Roofed, kToTheNoonSun, 8},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Open step"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Outdoors under the open sky: a step, a rail, a bed before the house"), home::SpotKind::Open, kNowhere, 8},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Screened porch"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Outdoors behind mesh"), home::SpotKind::Screened, kToTheNoonSun, 8},
     {QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Glasshouse"), QT_TRANSLATE_NOOP("lathhouse::models::SpotsForm", "Under glass, not heated"), home::SpotKind::Glazed, kNowhere, 12}}};
inline constexpr std::size_t kCoolLanding = 4;
/// Night lows of an unheated stairwell in winter (common practice, no source).
inline constexpr Celsius kCoolInWinter = Celsius::from_degrees(10.0);

} // namespace lathhouse::models
