#include "core/photo/photo_length.h"

#include <cmath>
#include <vector>

namespace lathhouse::photo {

double Stretch::pixels() const
{
    return std::hypot(to.x - from.x, to.y - from.y);
}

Result<PhotoLength> length_of(std::span<const Stretch> lengths, std::span<const Scale> scales)
{
    if (lengths.empty() || scales.empty()) {
        return Error{ErrorCode::WrongUsage, "a length is measured by a scale: two points and their distance in cm"};
    }
    double mean_scale = 0.0;
    for (const auto& scale : scales) {
        if (!(scale.length.metres() >= 0.001 && scale.length.metres() <= 10.0)) {
            return Error{ErrorCode::OutOfRange, "the scale's length must lie within 0.1 and 1000 cm"};
        }
        if (!(scale.stretch.pixels() >= 1.0)) {
            return Error{ErrorCode::WrongUsage, "the two points of the scale must lie apart"};
        }
        mean_scale += scale.length.metres() / scale.stretch.pixels() / static_cast<double>(scales.size());
    }
    std::vector<double> readings;
    double sum = 0.0;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (!(lengths[i].pixels() > 0.0)) {
            return Error{ErrorCode::WrongUsage, "the two points of a length must lie apart"};
        }
        const double scale = scales.size() == lengths.size() ? scales[i].length.metres() / scales[i].stretch.pixels()
                                                             : mean_scale;
        readings.push_back(lengths[i].pixels() * scale);
        sum += readings.back();
    }
    PhotoLength length{Metres::from_metres(sum / static_cast<double>(readings.size())), readings.size(), {}};
    if (readings.size() > 1) {
        double squares = 0.0;
        for (const double reading : readings) {
            squares += (reading - length.mean.metres()) * (reading - length.mean.metres());
        }
        length.one_reading =
            Metres::from_metres(std::sqrt(squares / static_cast<double>(readings.size() - 1)));
    }
    return length;
}

} // namespace lathhouse::photo
