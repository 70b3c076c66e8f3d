#pragma once

#include "core/geodesy/town_table.h"

namespace lathhouse::geodesy {

inline TownRow town_row(std::uint32_t id, const char* name, std::vector<std::string> keys,
                        const char* country, const char* region, double latitude, double longitude,
                        std::uint32_t population, const char* zone)
{
    return {id,
            name,
            std::move(keys),
            country,
            region,
            {Latitude::from_degrees(latitude).value(), Longitude::from_degrees(longitude).value()},
            Metres::from_metres(100.0),
            population,
            zone};
}

/// A few towns, some with names that others bear as well; population figures are invented.
inline TownRows sample_towns()
{
    return {{town_row(1, "Springfield", {}, "US", "MO", 37.215, -93.298, 166810, "America/Chicago"),
             town_row(2, "Springfield", {}, "US", "MA", 42.101, -72.590, 154341, "America/New_York"),
             town_row(3, "Springfield Lakes", {}, "AU", "04", -27.663, 152.924, 12000, "Australia/Brisbane"),
             town_row(4, "Paris", {"lutetia"}, "FR", "11", 48.853, 2.349, 2138551, "Europe/Paris"),
             town_row(5, "Paris", {}, "US", "TX", 33.661, -95.556, 24839, "America/Chicago"),
             town_row(6, "Łódź", {"lodz dialect"}, "PL", "74", 51.750, 19.467, 768755, "Europe/Warsaw"),
             town_row(7, "Saint-Étienne", {}, "FR", "84", 45.434, 4.390, 176280, "Europe/Paris"),
             town_row(8, "Munich", {"munchen", "monaco di baviera"}, "DE", "02", 48.137, 11.575, 1260391,
                      "Europe/Berlin")},
            {{"AU", "04", "Queensland", "Australia/Brisbane"},
             {"DE", "02", "Bavaria", "Europe/Berlin"},
             {"FR", "11", "Île-de-France", "Europe/Paris"},
             {"FR", "84", "Auvergne-Rhône-Alpes", "Europe/Paris"},
             {"PL", "74", "Łódź Voivodeship", "Europe/Warsaw"},
             {"US", "MA", "Massachusetts", "America/New_York"},
             {"US", "MO", "Missouri", "America/Chicago"},
             {"US", "TX", "Texas", "America/Chicago"}}};
}

inline TownTable sample_table()
{
    return std::move(TownTable::unpack(pack_towns(sample_towns()), "sample")).value();
}

} // namespace lathhouse::geodesy
