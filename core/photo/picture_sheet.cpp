#include "core/photo/picture_sheet.h"

#include "core/photo/resize.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <vector>

namespace lathhouse::photo {
namespace {

constexpr int kLetterWidth = 5;
constexpr int kLetterHeight = 7;
constexpr std::uint8_t kInk = 32;

/// Seven rows of five dots, drawn for this program.
const std::map<char, std::array<const char*, 7>>& letters()
{
    static const std::map<char, std::array<const char*, 7>> drawn{
        {'0', {".###.", "#...#", "#..##", "#.#.#", "##..#", "#...#", ".###."}},
        {'1', {"..#..", ".##..", "..#..", "..#..", "..#..", "..#..", ".###."}},
        {'2', {".###.", "#...#", "....#", "..##.", ".#...", "#....", "#####"}},
        {'3', {"####.", "....#", "....#", ".###.", "....#", "....#", "####."}},
        {'4', {"...#.", "..##.", ".#.#.", "#..#.", "#####", "...#.", "...#."}},
        {'5', {"#####", "#....", "####.", "....#", "....#", "#...#", ".###."}},
        {'6', {".###.", "#....", "#....", "####.", "#...#", "#...#", ".###."}},
        {'7', {"#####", "....#", "...#.", "..#..", "..#..", ".#...", ".#..."}},
        {'8', {".###.", "#...#", "#...#", ".###.", "#...#", "#...#", ".###."}},
        {'9', {".###.", "#...#", "#...#", ".####", "....#", "....#", ".###."}},
        {'-', {".....", ".....", ".....", ".###.", ".....", ".....", "....."}},
        {'+', {".....", "..#..", "..#..", "#####", "..#..", "..#..", "....."}},
        {'/', {"....#", "...#.", "...#.", "..#..", ".#...", ".#...", "#...."}},
        {':', {".....", "..#..", "..#..", ".....", "..#..", "..#..", "....."}},
        {'d', {"....#", "....#", ".####", "#...#", "#...#", "#...#", ".####"}},
        {' ', {".....", ".....", ".....", ".....", ".....", ".....", "....."}}};
    return drawn;
}

void write(Picture& sheet, const std::string& text, int left, int top, int dot)
{
    for (const char letter : text) {
        const auto found = letters().find(letter);
        if (found == letters().end()) {
            continue;
        }
        for (int y = 0; y < kLetterHeight * dot; ++y) {
            for (int x = 0; x < kLetterWidth * dot; ++x) {
                const bool inked = found->second[static_cast<std::size_t>(y / dot)][x / dot] == '#';
                if (inked && left + x < sheet.width && top + y < sheet.height) {
                    std::fill_n(sheet.at(left + x, top + y), 3, kInk);
                }
            }
        }
        left += (kLetterWidth + 1) * dot;
    }
}

void paste(Picture& sheet, const Picture& picture, int left, int top)
{
    for (int y = 0; y < picture.height; ++y) {
        std::copy_n(picture.at(0, y), static_cast<std::size_t>(picture.width) * 3, sheet.at(left, top + y));
    }
}

int width_of(const Picture& picture, int height)
{
    return std::max(1, static_cast<int>(std::lround(static_cast<double>(picture.width) * height / picture.height)));
}

} // namespace

Picture picture_sheet(std::span<const Captioned> pictures, int height, int columns)
{
    const int dot = std::max(1, height / 160);
    const int gap = 8 * dot;
    const int caption = (kLetterHeight + 6) * dot;
    std::vector<int> lefts;
    int width = 0;
    int along = gap;
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        if (i % static_cast<std::size_t>(columns) == 0) {
            along = gap;
        }
        lefts.push_back(along);
        const int text = static_cast<int>(pictures[i].caption.size()) * (kLetterWidth + 1) * dot;
        along += std::max(width_of(pictures[i].picture, height), text) + gap;
        width = std::max(width, along);
    }
    const int rows = (static_cast<int>(pictures.size()) + columns - 1) / columns;
    Picture sheet{width, rows * (height + caption + gap) + gap, 255};
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        const int top = gap + static_cast<int>(i) / columns * (height + caption + gap);
        paste(sheet, resized(pictures[i].picture, width_of(pictures[i].picture, height), height), lefts[i], top);
        write(sheet, pictures[i].caption, lefts[i], top + height + 3 * dot, dot);
    }
    return sheet;
}

} // namespace lathhouse::photo
