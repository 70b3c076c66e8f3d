#include "core/photo/greenness.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lathhouse::photo {
namespace {

/// Counts excess green before it is cut to 0 to 255, which is done once at the end rather than at every pixel. Equal
/// values in a row would wait for each other in one table; four take turns.
class Counter {
public:
    void count(const std::uint8_t* pixel, std::size_t number)
    {
        std::size_t i = 0;
        for (; i + 4 <= number; i += 4, pixel += 12) {
            ++tables_[0][place(pixel)];
            ++tables_[1][place(pixel + 3)];
            ++tables_[2][place(pixel + 6)];
            ++tables_[3][place(pixel + 9)];
        }
        for (; i < number; ++i, pixel += 3) {
            ++tables_[0][place(pixel)];
        }
    }
    Histogram total() const
    {
        Histogram sum{};
        for (std::size_t at = 0; at < kPlaces; ++at) {
            const auto value = std::clamp(static_cast<int>(at) - kLowest, 0, 255);
            for (const auto& table : tables_) {
                sum[static_cast<std::size_t>(value)] += table[at];
            }
        }
        return sum;
    }

private:
    static constexpr int kLowest = 510; ///< 2G - R - B lies within -510 and 510.
    static constexpr std::size_t kPlaces = 1021;
    static std::size_t place(const std::uint8_t* pixel)
    {
        return static_cast<std::size_t>(2 * pixel[1] - pixel[0] - pixel[2] + kLowest);
    }
    std::array<std::array<std::uint32_t, kPlaces>, 4> tables_{};
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
    for (const auto& run : region.runs()) {
        counter.count(picture.at(run.begin, run.y), static_cast<std::size_t>(run.end - run.begin));
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
