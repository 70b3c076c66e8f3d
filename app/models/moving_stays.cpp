#include "app/models/moving_stays.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

/// A stay of either plan, or of both.
struct Pair {
    const YearStay* from;
    const YearStay* to;
};

/// The longest row of spots that both plans have, with what only one of them has in between.
std::vector<Pair> pairs_of(const std::vector<YearStay>& from, const std::vector<YearStay>& to)
{
    const std::size_t rows = from.size();
    const std::size_t columns = to.size();
    std::vector<std::vector<std::size_t>> common(rows + 1, std::vector<std::size_t>(columns + 1, 0));
    for (std::size_t row = rows; row-- > 0;) {
        for (std::size_t column = columns; column-- > 0;) {
            common[row][column] = from[row].spot == to[column].spot
                                      ? common[row + 1][column + 1] + 1
                                      : std::max(common[row + 1][column], common[row][column + 1]);
        }
    }
    std::vector<Pair> pairs;
    std::size_t row = 0;
    std::size_t column = 0;
    while (row < rows || column < columns) {
        if (row < rows && column < columns && from[row].spot == to[column].spot) {
            pairs.push_back({&from[row++], &to[column++]});
        } else if (column == columns || (row < rows && common[row + 1][column] >= common[row][column + 1])) {
            pairs.push_back({&from[row++], nullptr});
        } else {
            pairs.push_back({nullptr, &to[column++]});
        }
    }
    return pairs;
}

} // namespace

std::vector<YearStay> stays_between(const std::vector<YearStay>& from, const std::vector<YearStay>& to,
                                    double share)
{
    if (share >= 1.0 || from.empty() || to.empty()) {
        return to;
    }
    if (share <= 0.0) {
        return from;
    }
    std::vector<YearStay> moving;
    // First days; a stay that a plan lacks is empty there, and stands where the one before it has ended.
    int old_end = from.front().first;
    int new_end = to.front().first;
    const auto between = [share](int before, int after) {
        return before + static_cast<int>(std::lround(share * (after - before)));
    };
    int begin = between(old_end, new_end);
    for (const Pair& pair : pairs_of(from, to)) {
        old_end = pair.from != nullptr ? pair.from->last + 1 : old_end;
        new_end = pair.to != nullptr ? pair.to->last + 1 : new_end;
        const int end = between(old_end, new_end);
        if (end > begin) {
            YearStay stay = pair.to != nullptr ? *pair.to : *pair.from;
            stay.first = begin;
            stay.last = end - 1;
            moving.push_back(std::move(stay));
            begin = end;
        }
    }
    return moving;
}

bool looks_the_same(const std::vector<YearStay>& a, const std::vector<YearStay>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const YearStay& one, const YearStay& other) {
        return one.spot == other.spot && one.first == other.first && one.last == other.last &&
               one.ladder_days == other.ladder_days;
    });
}

} // namespace lathhouse::models
