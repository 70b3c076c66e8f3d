#include "core/photo/leaf_colour.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::photo {
namespace {

constexpr double kFirstYellow = 15.0; // Degrees of hue.
constexpr double kFirstGreen = 60.0;
constexpr double kLastGreen = 170.0;
constexpr double kPalest = 0.25;  // Saturation.
constexpr double kDarkest = 0.12; // Value.
constexpr double kOverexposed = 250.0;
constexpr double kTooDark = 20.0;

} // namespace

double light_of(double stored)
{
    return stored <= 0.04045 ? stored / 12.92 : std::pow((stored + 0.055) / 1.055, 2.4);
}

double stored_of(double light)
{
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1.0 / 2.4) - 0.055;
}

WhiteBalance::WhiteBalance() : factor_{1.0, 1.0, 1.0} {}

Result<WhiteBalance> WhiteBalance::from_grey(const Picture& picture, const Region& grey)
{
    std::array<double, 3> stored{};
    std::array<double, 3> light{};
    std::array<double, 256> curve{};
    for (std::size_t value = 0; value < curve.size(); ++value) {
        curve[value] = light_of(static_cast<double>(value) / 255.0);
    }
    for (const auto& run : grey.runs()) {
        for (int x = run.begin; x < run.end; ++x) {
            const auto* pixel = picture.at(x, run.y);
            for (std::size_t channel = 0; channel < 3; ++channel) {
                stored[channel] += pixel[channel];
                light[channel] += curve[pixel[channel]];
            }
        }
    }
    const auto pixels = static_cast<double>(grey.pixels());
    for (const double sum : stored) {
        if (sum / pixels > kOverexposed || sum / pixels < kTooDark) {
            return Error{ErrorCode::OutOfRange, said("the grey area is too bright or too dark to tell the colour of "
                                                     "the light; take the photo in even light, or name another area")};
        }
    }
    // Lightness as the eye weighs the colours (Rec. 709) stays.
    const double lightness = 0.2126 * light[0] + 0.7152 * light[1] + 0.0722 * light[2];
    WhiteBalance balance;
    for (std::size_t channel = 0; channel < 3; ++channel) {
        balance.factor_[channel] = lightness / light[channel];
    }
    if (balance.strength() > kStrongestCast) {
        return Error{ErrorCode::OutOfRange, said("that area is not grey: its strongest colour has %1 times the light of its weakest, "
                                                 "and no lamp makes that of grey; take another, such as the patch of the card",
                                                 std::lround(balance.strength()))};
    }
    return balance;
}

Picture WhiteBalance::applied(Picture picture) const
{
    std::array<std::array<std::uint8_t, 256>, 3> tables{};
    for (std::size_t channel = 0; channel < 3; ++channel) {
        for (std::size_t value = 0; value < 256; ++value) {
            const double light = factor_[channel] * light_of(static_cast<double>(value) / 255.0);
            tables[channel][value] =
                static_cast<std::uint8_t>(std::lround(255.0 * stored_of(std::clamp(light, 0.0, 1.0))));
        }
    }
    for (std::size_t i = 0; i < picture.rgb.size(); ++i) {
        picture.rgb[i] = tables[i % 3][picture.rgb[i]];
    }
    return picture;
}

double WhiteBalance::strength() const
{
    const auto [least, most] = std::minmax({factor_[0], factor_[1], factor_[2]});
    return most / least;
}

LeafColours leaf_colours(const Picture& picture, const Region& region)
{
    LeafColours colours{0, 0, region.pixels()};
    for (const auto& run : region.runs()) {
        for (int x = run.begin; x < run.end; ++x) {
            const auto* pixel = picture.at(x, run.y);
            const int red = pixel[0];
            const int green = pixel[1];
            const int blue = pixel[2];
            const int most = std::max({red, green, blue});
            const int spread = most - std::min({red, green, blue});
            if (spread < kPalest * most || most < kDarkest * 255.0 || spread == 0) {
                continue;
            }
            double hue = 0.0;
            if (most == red) {
                hue = 60.0 * (green - blue) / spread;
            } else if (most == green) {
                hue = 60.0 * (blue - red) / spread + 120.0;
            } else {
                continue; // Blues.
            }
            if (hue >= kFirstYellow && hue < kFirstGreen) {
                ++colours.yellow;
            } else if (hue >= kFirstGreen && hue < kLastGreen) {
                ++colours.green;
            }
        }
    }
    return colours;
}

} // namespace lathhouse::photo
