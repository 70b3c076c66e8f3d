#include "app/models/row_order.h"

#include "app/models/year_words.h"

#include <algorithm>
#include <numeric>

namespace lathhouse::models {

namespace {

/// Day on which a plant goes out; after all of them where it stays in.
int going_out(const YearData& year, const SolvedYear& solved, std::size_t plant)
{
    const int never = static_cast<int>(year.days.size());
    if (plant >= solved.stays.size()) {
        return never;
    }
    const auto& stays = solved.stays[plant];
    const auto out =
        std::ranges::find_if(stays, [&year](const YearStay& stay) { return year.spots[stay.spot].outdoors; });
    return out == stays.end() ? never : out->first;
}

} // namespace

std::optional<std::size_t> first_spot(const SolvedYear& solved, std::size_t plant)
{
    return plant < solved.stays.size() && !solved.stays[plant].empty() ? std::optional{solved.stays[plant].front().spot}
                                                                       : std::nullopt;
}

std::vector<std::size_t> order_of(RowOrder order, const YearData& year, const SolvedYear& solved)
{
    std::vector<std::size_t> rows(year.plants.size());
    std::iota(rows.begin(), rows.end(), std::size_t{0});
    if (order == RowOrder::ByName) {
        std::ranges::stable_sort(rows, [&year](std::size_t a, std::size_t b) {
            return text(year.plants[a].name).localeAwareCompare(text(year.plants[b].name)) < 0;
        });
        return rows;
    }
    std::ranges::stable_sort(rows, {}, [&](std::size_t plant) { return going_out(year, solved, plant); });
    if (order == RowOrder::BySpot) {
        std::ranges::stable_sort(rows, {}, [&](std::size_t plant) {
            return first_spot(solved, plant).value_or(year.spots.size());
        });
    }
    return rows;
}

} // namespace lathhouse::models
