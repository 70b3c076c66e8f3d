#pragma once

#include "core/base/result.h"
#include "core/sky/mean_day.h"
#include "core/sky/view_factor.h"
#include "core/units/angle.h"
#include "core/units/length.h"

#include <optional>
#include <string_view>

namespace lathhouse::sky {

/// How the sky reaches a pot.
enum class Shelter {
    Opening, ///< Through one upright opening: a window, the open side of a porch.
    OpenSky, ///< From above, less what stands behind and opposite (and less glass, in a glasshouse).
};
std::string_view to_string(Shelter shelter); ///< "opening", "open_sky".
std::optional<Shelter> shelter_of(std::string_view word);

/// What a grower measures at a spot. Heights are from the leaves, midway up the plant.
struct SpotFigures {
    Shelter shelter = Shelter::Opening;
    Angle facing = Angle::from_degrees(180.0); ///< Where the opening looks, or the house wall behind the pot.
    Metres width = Metres::from_metres(1.2);   ///< Of the glass or the opening.
    Metres height = Metres::from_metres(1.4);
    Metres sill = Metres::from_metres(-0.2); ///< The opening's lower edge above the leaves; negative below.
    Metres distance = Metres::from_metres(0.2); ///< From the opening's plane inward to the leaves.
    Metres sideways =
        Metres::from_metres(0.0); ///< The opening's middle to the right of the pot, looking out.
    Metres overhang = Metres::from_metres(0.0); ///< Depth of a wide slab above the opening.
    Angle opposite = Angle::from_degrees(0.0);  ///< Height above the horizon of a wide building or trees.
    Angle behind = Angle::from_degrees(0.0);    ///< OpenSky: the same of the wall at the pot's back.
    int panes = 0;
    double passes = 1.0; ///< Share that frames, dirt, mesh, slats or a curtain let through.
    friend bool operator==(const SpotFigures&, const SpotFigures&) = default;
};

/// The figures of a spot, all of them possible.
class SpotView {
public:
    /// Errors: OutOfRange with the figure and its limits: sizes and distance 0.05 to 30 m, sill and sideways
    /// within 20 m, overhang to 10 m, opposite and behind 0 to 89 degrees, panes 0 to 4, passes 0 to 1.
    static Result<SpotView> of(const SpotFigures& figures);

    const SpotFigures& figures() const { return figures_; }
    /// Whether light from that direction comes straight to the leaves.
    bool sees(Direction direction) const;
    friend bool operator==(const SpotView&, const SpotView&) = default;

private:
    explicit SpotView(const SpotFigures& figures) : figures_(figures) {}
    SpotFigures figures_;
};

/// A day's light at a spot.
struct LightAtSpot {
    DailyRadiation level;  ///< On a level leaf, as meters are held and daily light is stated.
    DailyRadiation facing; ///< On an upright leaf turned to the opening.
    double sun_hours;      ///< Hours in which the Sun, if it shines, shines on the leaves.
};

/// Light at a spot, with all that does not change from day to day worked out once.
///
/// Sum of the Sun's beam where the leaves see it, an evenly bright sky and what the ground and the building
/// opposite throw back, each by its view factor, through the panes; and the light that the surfaces behind
/// the opening throw to and fro (split flux: what comes down lights floor and lower walls, what comes up the
/// ceiling and upper walls; BRE Digest 310).
/// Taken for granted: one opening; a room of 4 m by 5 m by 2.5 m, or as large as the opening and the distance
/// ask, with reflectances of 0.7 (ceiling), 0.5 (walls), 0.2 (floor); behind the open side of a porch a room
/// 1.5 m deep; ground 0.2, buildings 0.3 (common practice of daylighting). What the slab above the opening
/// throws down is left out.
/// Accuracy: of the outdoor light 10 % on walls; behind a window nothing was measured against, expect 30 %.
class SpotOptics {
public:
    explicit SpotOptics(const SpotView& view);
    LightAtSpot on(const MeanDay& day) const;

private:
    LightAtSpot behind_opening(const MeanDay& day) const;
    LightAtSpot under_sky(const MeanDay& day) const;

    SpotView view_;
    /// Of the sky's, the building's and the ground's evenly spread light: what reaches a level and a facing
    /// leaf straight, and what enters the opening altogether, by its area.
    struct Parts {
        double sky = 0.0;
        double building = 0.0;
        double ground = 0.0;
    };
    Parts level_;
    Parts facing_;
    Parts opening_;
    double thrown_down_ = 0.0; ///< Light on any surface inside, for light 1 on the opening that comes down.
    double thrown_up_ = 0.0;   ///< The same for light that comes up from the ground.
};

} // namespace lathhouse::sky
