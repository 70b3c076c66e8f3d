#include "core/photo/greenness.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace lathhouse::photo {
namespace {

/// Equal values in a row would wait for each other in one table; four take turns.
class Counter {
public:
    void count(const std::uint8_t* values, std::size_t number)
    {
        std::size_t i = 0;
        for (; i + 4 <= number; i += 4) {
            ++tables_[0][values[i]];
            ++tables_[1][values[i + 1]];
            ++tables_[2][values[i + 2]];
            ++tables_[3][values[i + 3]];
        }
        for (; i < number; ++i) {
            ++tables_[0][values[i]];
        }
    }
    Histogram total() const
    {
        Histogram sum{};
        for (std::size_t value = 0; value < sum.size(); ++value) {
            for (const auto& table : tables_) {
                sum[value] += table[value];
            }
        }
        return sum;
    }

private:
    std::array<std::array<std::uint32_t, 256>, 4> tables_{};
};

/// Sums of a histogram up to a value.
struct Moments {
    double count = 0.0;
    double sum = 0.0;
};

double between(const Moments& low, const Moments& all)
{
    const double above = all.count - low.count;
    if (low.count == 0.0 || above == 0.0) {
        return 0.0;
    }
    const double gap = low.sum / low.count - (all.sum - low.sum) / above;
    return low.count * above * gap * gap;
}

Moments moments_of(const Histogram& histogram, int last)
{
    Moments moments;
    for (int value = 0; value <= last; ++value) {
        const auto count = static_cast<double>(histogram[static_cast<std::size_t>(value)]);
        moments.count += count;
        moments.sum += count * value;
    }
    return moments;
}

} // namespace

int otsu_threshold(const Histogram& histogram)
{
    const auto all = moments_of(histogram, 255);
    Moments low;
    double best = 0.0;
    int threshold = 0;
    for (int value = 0; value < 256; ++value) {
        const auto count = static_cast<double>(histogram[static_cast<std::size_t>(value)]);
        low.count += count;
        low.sum += count * value;
        if (const double variance = between(low, all); variance > best) {
            best = variance;
            threshold = value;
        }
    }
    return threshold;
}

double separation(const Histogram& histogram, int threshold)
{
    const auto all = moments_of(histogram, 255);
    const double mean = all.sum / all.count;
    double total = 0.0;
    for (int value = 0; value < 256; ++value) {
        total += static_cast<double>(histogram[static_cast<std::size_t>(value)]) * (value - mean) * (value - mean);
    }
    if (!(total > 0.0)) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    return between(moments_of(histogram, threshold), all) / all.count / total;
}

GreenCover green_cover(const Picture& picture, const Region& region)
{
    Counter counter;
    std::vector<std::uint8_t> excess(static_cast<std::size_t>(picture.width));
    for (const auto& run : region.runs()) {
        const auto length = static_cast<std::size_t>(run.end - run.begin);
        const auto* pixel = picture.at(run.begin, run.y);
        auto* out = excess.data();
        for (std::size_t i = 0; i < length; ++i) {
            const int value = 2 * pixel[3 * i + 1] - pixel[3 * i] - pixel[3 * i + 2];
            out[i] = static_cast<std::uint8_t>(std::clamp(value, 0, 255));
        }
        counter.count(out, length);
    }
    const auto histogram = counter.total();
    GreenCover cover{0, region.pixels(), otsu_threshold(histogram), 0.0};
    cover.separation = separation(histogram, cover.threshold);
    for (std::size_t value = static_cast<std::size_t>(cover.threshold) + 1; value < histogram.size(); ++value) {
        cover.green += histogram[value];
    }
    return cover;
}

} // namespace lathhouse::photo
