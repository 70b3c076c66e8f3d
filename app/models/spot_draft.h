#pragma once

#include "core/home/household.h"

#include <QString>

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace lathhouse::models {

/// What may be measured at a spot, in the order in which it is asked.
enum class SpotMeasure : std::uint8_t {
    Width,
    Height,
    Distance,
    Sill,
    Sideways,
    Overhang,
    Opposite,
    Behind,
    Panes,
    Passes,
    SummerLight,
    WinterLight,
    Milder, ///< Nights against the open air.
    Spread, ///< To how much that is right.
};
inline constexpr std::size_t kSpotMeasures = 14;

/// A spot as it is typed.
struct SpotDraft {
    int number; ///< Of its own among the drafts; plants know it by that.
    QString name;
    home::SpotKind kind = home::SpotKind::Indoors;
    int facing = -1; ///< 0 north, 2 east, 4 south, 6 west; negative: nowhere in particular.
    QString pots;
    QString winter; ///< Night low of a room in the shown unit; blank: the usual one.
    QString summer;
    bool in_reach = false;
    bool apart = false;
    bool windy = false;
    /// By SpotMeasure; blank: the usual ones of the kind.
    std::array<QString, kSpotMeasures> measures{};
    /// The spot that is there and is changed; the figures of its window hold while kind and side stay.
    std::optional<home::Spot> base = {};
    int base_facing = -1;

    QString& of(SpotMeasure measure) { return measures[static_cast<std::size_t>(measure)]; }
    const QString& of(SpotMeasure measure) const { return measures[static_cast<std::size_t>(measure)]; }
};

/// The way it faces, where that counts.
std::optional<Angle> side_of(const SpotDraft& draft);

} // namespace lathhouse::models
