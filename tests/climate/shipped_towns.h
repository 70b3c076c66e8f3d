#pragma once

#include "core/geodesy/town_table.h"

#include <filesystem>

namespace lathhouse::climate {

/// The shipped towns, packed and read once. A table that cannot be read stops the tests.
inline std::span<const geodesy::Town> shipped_towns()
{
    static const auto table =
        geodesy::TownTable::unpack(
            geodesy::pack_towns(
                geodesy::read_town_rows(std::filesystem::path{LATHHOUSE_SOURCE} / "climate-data").value()),
            "towns")
            .value();
    return table.towns();
}

} // namespace lathhouse::climate
