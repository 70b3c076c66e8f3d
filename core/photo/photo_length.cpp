#include "core/photo/photo_length.h"

#include <cmath>
#include <utility>

namespace lathhouse::photo {

double Stretch::pixels() const
{
    return std::hypot(to.x - from.x, to.y - from.y);
}

Result<PhotoLength> length_of(std::span<const Stretch> lengths, std::span<const Scale> scales)
{
    if (lengths.empty() || scales.empty()) {
        return Error{ErrorCode::WrongUsage,
                     said("a length is measured by a scale: two points and their distance in cm")};
    }
    double mean_scale = 0.0;
    for (const auto& scale : scales) {
        if (!(scale.length.metres() >= 0.001 && scale.length.metres() <= 10.0)) {
            return Error{ErrorCode::OutOfRange, said("the scale's length must lie within 0.1 and 1000 cm")};
        }
        if (!(scale.stretch.pixels() >= 1.0)) {
            return Error{ErrorCode::WrongUsage, said("the two points of the scale must lie apart")};
        }
        mean_scale += scale.length.metres() / scale.stretch.pixels() / static_cast<double>(scales.size());
    }
    std::vector<Metres> readings;
    double sum = 0.0;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        if (!(lengths[i].pixels() > 0.0)) {
            return Error{ErrorCode::WrongUsage, said("the two points of a length must lie apart")};
        }
        const double scale = scales.size() == lengths.size() ? scales[i].length.metres() / scales[i].stretch.pixels()
                                                             : mean_scale;
        readings.push_back(Metres::from_metres(lengths[i].pixels() * scale));
        sum += readings.back().metres();
    }
    const auto count = static_cast<double>(readings.size());
    const double mean = sum / count;
    std::optional<Metres> one_reading;
    if (readings.size() > 1) {
        double squares = 0.0;
        for (const auto reading : readings) {
            squares += (reading.metres() - mean) * (reading.metres() - mean);
        }
        one_reading = Metres::from_metres(std::sqrt(squares / (count - 1.0)));
    }
    return PhotoLength{Metres::from_metres(mean), std::move(readings), one_reading};
}

} // namespace lathhouse::photo
