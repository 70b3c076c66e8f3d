#pragma once

#include "core/photo/outline.h"
#include "core/photo/picture.h"

#include <cstdint>
#include <vector>

namespace lathhouse::photo {

/// How a drawn plant grows: a crown on a stem, a bush from the mix, stiff upright blades, leaves that arch over.
enum class DrawnForm { Tree, Bush, Blades, Arching };

/// A plant in a clay pot beside a ruler of 40 cm, as it is drawn for the demonstration household. Lengths are true to
/// the ruler, and each leaf is drawn, so that what is measured in such a picture is what was put into it.
struct DrawnPlant {
    DrawnForm form = DrawnForm::Bush;
    int leaves = 40;
    double yellow_share = 0.0; ///< Of the leaves; those near the mix first.
    double cupped_share = 0.0; ///< Of the leaves; the youngest, curled to less than half their width.
    double height_cm = 30.0;   ///< From the rim to the highest point.
    double leaf_cm = 6.0;
    double rim_cm = 18.0;      ///< Of the pot, across.
    double frame_cm = 90.0;    ///< Height of the picture.
    bool outdoors = false;     ///< Before a railing, else before a wall.
    double shift_cm = 0.0;     ///< By how much the camera stood to one side.
    double light = 1.0;        ///< 0.7 to 1.1.
    int flowers = 0;           ///< Red ones.
    std::uint32_t seed = 1;    ///< Where leaves sit: the same for all pictures of one plant.
};

/// Without random numbers or anything of the machine: the same plant gives the same picture to the bit.
/// Precondition: sides of at least 32 pixels.
Picture drawn_plant(const DrawnPlant& plant, int width, int height);

/// Where things are in such a picture, in its pixels.
struct DrawnPlaces {
    Point ruler_bottom; ///< 0 cm.
    Point ruler_top;    ///< 40 cm.
    Point rim;          ///< Middle of the pot's rim, from which height is measured.
    Point top;          ///< Highest point of the plant.
    std::vector<Point> crown; ///< An outline round the leaves that keeps clear of pot and ruler.
};
inline constexpr double kDrawnRulerCm = 40.0;
/// reach_cm: how far from the rim upwards the outline goes, so that pictures of one plant can share one.
DrawnPlaces drawn_places(const DrawnPlant& plant, int width, int height, double reach_cm);

} // namespace lathhouse::photo
