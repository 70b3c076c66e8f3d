#pragma once

#include "core/base/result.h"
#include "core/photo/outline.h"
#include "core/photo/picture.h"

#include <optional>

namespace lathhouse::photo {

/// The strongest colour of an area over its weakest, in linear light, beyond which it is not grey. Between warm lamps and
/// cameras that allow for them no grey comes out stronger: the light of 2200 K, as candle-like lamps have it, taken by a camera that is
/// set for 3000 K, has 5.5 (Planck's law through the colour-matching functions of CIE 1931 and the primaries of IEC 61966-2-1). The two
/// temperatures are common practice, no source; terracotta in daylight has 5 to 11.
inline constexpr double kStrongestCast = 5.5;

/// What the light did to red, green and blue, learned from an area that is grey in truth.
class WhiteBalance {
public:
    /// None: colours stay as stored.
    WhiteBalance();
    /// From the mean of each colour over the area, in linear light, so that it comes out grey of the same lightness.
    /// Errors: OutOfRange where the area is overexposed or too dark to tell (a mean of a colour above 250 or below 20), or
    /// plainly not grey (kStrongestCast).
    static Result<WhiteBalance> from_grey(const Picture& picture, const Region& grey);
    Picture applied(Picture picture) const;
    /// How strong it is: the largest of the three factors over the smallest.
    double strength() const;

private:
    double factor_[3];
};

/// The curve of sRGB between stored values and light, 0 to 1. Source: IEC 61966-2-1.
double light_of(double stored);
double stored_of(double light);

/// Pixels by hue: yellow and brown are hues of 15 up to 60 degrees, green of 60 up to 170; paler than saturation 0.25
/// or darker than value 0.12 (of hue, saturation, value) is neither. These limits are common practice, no source.
struct LeafColours {
    std::size_t yellow; ///< Yellow and brown.
    std::size_t green;
    std::size_t all;
    double yellow_share() const { return static_cast<double>(yellow) / static_cast<double>(all); }
    /// Of what is yellow, brown or green; nullopt where nothing is.
    std::optional<double> yellow_of_leaf() const
    {
        return yellow + green == 0 ? std::nullopt
                                   : std::optional{static_cast<double>(yellow) / static_cast<double>(yellow + green)};
    }
};
LeafColours leaf_colours(const Picture& picture, const Region& region);

} // namespace lathhouse::photo
