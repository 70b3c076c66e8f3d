#pragma once

#include "core/base/result.h"
#include "core/photo/outline.h"
#include "core/units/length.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::photo {

/// Two points in the upright picture.
struct Stretch {
    Point from;
    Point to;
    double pixels() const;
};

/// A stretch whose length is known: the rim of a pot, marks of the printed card.
struct Scale {
    Stretch stretch;
    Metres length;
};

/// A length measured by a scale that lies in the same plane, once or several times over.
struct PhotoLength {
    Metres mean;
    std::vector<Metres> readings; ///< In the order given, one at least.
    /// Standard error of one reading, from its repeats; nullopt for one reading.
    std::optional<Metres> one_reading;
    /// The change between two photos, each measured once, that is more than measuring: 2.77 times that (95 %).
    std::optional<Metres> real_change() const
    {
        return one_reading ? std::optional{Metres::from_metres(2.77 * one_reading->metres())} : std::nullopt;
    }
};

/// Repeats: each length is divided by each scale in turn where there are as many, else by the scales' mean.
/// What lies nearer to the camera than the scale comes out longer in the ratio of the distances.
/// Errors: WrongUsage without a scale or a length, or where a stretch has no length; OutOfRange for a scale's length
/// outside 1 mm to 10 m. Source of 2.77: 1.96 x the root of 2, the repeatability limit of ISO 5725-6.
Result<PhotoLength> length_of(std::span<const Stretch> lengths, std::span<const Scale> scales);

} // namespace lathhouse::photo
