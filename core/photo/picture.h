#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace lathhouse::photo {

/// A picture in memory: rows from the top, three bytes a pixel (red, green, blue; sRGB as the file has it).
struct Picture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgb;

    Picture() = default;
    Picture(int picture_width, int picture_height, std::uint8_t fill = 0)
        : width(picture_width), height(picture_height),
          rgb(static_cast<std::size_t>(picture_width) * static_cast<std::size_t>(picture_height) * 3, fill)
    {
    }
    std::size_t pixels() const { return static_cast<std::size_t>(width) * static_cast<std::size_t>(height); }
    const std::uint8_t* at(int x, int y) const { return rgb.data() + offset(x, y); }
    std::uint8_t* at(int x, int y) { return rgb.data() + offset(x, y); }

private:
    std::size_t offset(int x, int y) const
    {
        return (static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)) * 3;
    }
};

} // namespace lathhouse::photo
