#include "core/photo/resize.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::photo {
namespace {

/// One new pixel's share of the old ones: from `first`, with these weights (sum 1).
struct Cover {
    int first;
    std::vector<float> weights;
};

std::vector<Cover> covers(int from, int to)
{
    std::vector<Cover> all;
    const double step = static_cast<double>(from) / to;
    for (int i = 0; i < to; ++i) {
        const double begin = i * step;
        const double end = std::min<double>((i + 1) * step, from);
        Cover cover{std::min(static_cast<int>(begin), from - 1), {}};
        for (int old = cover.first; old < from && (old < end || cover.weights.empty()); ++old) {
            const double share = std::min<double>(end, old + 1) - std::max<double>(begin, old);
            cover.weights.push_back(static_cast<float>(std::max(share, 1e-6) / step));
        }
        float sum = 0.0F;
        for (const float weight : cover.weights) {
            sum += weight;
        }
        for (float& weight : cover.weights) {
            weight /= sum;
        }
        all.push_back(std::move(cover));
    }
    return all;
}

} // namespace

Picture resized(const Picture& picture, int width, int height)
{
    if (picture.width == width && picture.height == height) {
        return picture;
    }
    const auto across = covers(picture.width, width);
    const auto down = covers(picture.height, height);
    Picture small{width, height};
    std::vector<float> row(static_cast<std::size_t>(picture.width) * 3);
    for (int y = 0; y < height; ++y) {
        std::ranges::fill(row, 0.0F);
        const auto& cover = down[static_cast<std::size_t>(y)];
        for (std::size_t k = 0; k < cover.weights.size(); ++k) {
            const auto* old = picture.at(0, cover.first + static_cast<int>(k));
            for (std::size_t i = 0; i < row.size(); ++i) {
                row[i] += cover.weights[k] * static_cast<float>(old[i]);
            }
        }
        for (int x = 0; x < width; ++x) {
            const auto& columns = across[static_cast<std::size_t>(x)];
            for (std::size_t channel = 0; channel < 3; ++channel) {
                float sum = 0.0F;
                for (std::size_t k = 0; k < columns.weights.size(); ++k) {
                    sum += columns.weights[k] * row[3 * (static_cast<std::size_t>(columns.first) + k) + channel];
                }
                small.at(x, y)[channel] = static_cast<std::uint8_t>(std::clamp(std::lround(sum), 0L, 255L));
            }
        }
    }
    return small;
}

Picture fitted_into(Picture picture, int longest_side)
{
    const int side = std::max(picture.width, picture.height);
    if (side <= longest_side) {
        return picture;
    }
    const auto scaled = [&](int length) {
        return std::max(1, static_cast<int>(std::lround(static_cast<double>(length) * longest_side / side)));
    };
    return resized(picture, scaled(picture.width), scaled(picture.height));
}

} // namespace lathhouse::photo
