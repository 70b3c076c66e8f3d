#pragma once

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/units/length.h"
#include "core/units/light.h"
#include "core/units/position.h"
#include "core/units/temperature.h"

#include <string>
#include <vector>

namespace lathhouse::sky {

/// A month of one of the ten places of tests/data/sky/light_of_ten_places.csv; energies in MJ.
struct PlaceMonth {
    std::string place;
    Position position;
    Metres elevation;
    int month;
    Celsius low;
    Celsius high;
    double level;
    double diffuse;
    double walls[4]; ///< North, east, south, west.
};

inline std::vector<PlaceMonth> ten_places()
{
    std::vector<PlaceMonth> rows;
    const auto table = CsvTable::read(LATHHOUSE_TEST_DATA "/sky/light_of_ten_places.csv");
    for (std::size_t row = 0; table && row < table->row_count(); ++row) {
        const auto cell = [&](const char* name) {
            return table->number(row, table->require_column(name).value()).value().value();
        };
        rows.push_back({table->at(row, 0),
                        {Latitude::from_degrees(cell("latitude")).value(),
                         Longitude::from_degrees(cell("longitude")).value()},
                        Metres::from_metres(cell("elevation_m")),
                        static_cast<int>(cell("month")),
                        Celsius::from_degrees(cell("mean_low_c")),
                        Celsius::from_degrees(cell("mean_high_c")),
                        cell("horizontal_mj"),
                        cell("diffuse_mj"),
                        {cell("north_mj"), cell("east_mj"), cell("south_mj"), cell("west_mj")}});
    }
    return rows;
}

/// Number in the year of a day of the month, common year.
inline int ordinal_of(int month, int day)
{
    constexpr int kBefore[]{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    return kBefore[month - 1] + day;
}

} // namespace lathhouse::sky
