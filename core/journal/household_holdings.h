#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>

namespace lathhouse::journal {

/// How much a household's folder holds, of what counts: what was undone or taken out of the lists is not in it.
struct Holdings {
    std::uint64_t spots = 0;
    std::uint64_t plants = 0; ///< Those that are gone are not among them.
    std::uint64_t events = 0;
    std::uint64_t measurements = 0;
    std::uint64_t readings = 0; ///< Of thermometers, one a spot and night.
    std::uint64_t photos = 0;
    std::uint64_t photo_bytes = 0;     ///< As the journal knows them; the files themselves are not looked at.
    std::uint64_t placed_photos = 0;   ///< Photos in which the camera wrote where they were taken.
    std::uint64_t database_bytes = 0;  ///< Of the database's file alone.
};

/// Counts without changing anything, in one look at the database. A table that an older schema has not yet counts as
/// empty. Errors: NotFound, NotAHousehold, TooNew, Damaged, Locked, Unreadable.
Result<Holdings> holdings_of(const std::filesystem::path& folder);

} // namespace lathhouse::journal
