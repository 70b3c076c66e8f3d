#pragma once

#include "app/models/year_data.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// In which order the plants of the year stand below one another.
enum class RowOrder { ByDateOut, BySpot, ByName };

/// Places of the plants in that order. By date those that stay in come last; by spot they follow the household's own order
/// of spots, each plant at the one where the year begins for it, and at a spot the date out decides; by name as the
/// language sorts. Without a plan, by date and by spot, they keep the household's order.
std::vector<std::size_t> order_of(RowOrder order, const YearData& year, const SolvedYear& solved);

/// Where the year begins for a plant: its first stay. None without a plan.
std::optional<std::size_t> first_spot(const SolvedYear& solved, std::size_t plant);

} // namespace lathhouse::models
