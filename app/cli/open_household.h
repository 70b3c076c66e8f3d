#pragma once

#include "app/cli/household_options.h"
#include "core/journal/household_store.h"

namespace lathhouse::cli {

/// The household's folder, opened for reading or writing. Errors: NotFound with what to do where there
/// is none; as HouseholdStore::open.
inline Result<journal::HouseholdStore> store_of(const Globals& globals)
{
    if (!has_household(globals) && !globals.home_given) {
        return Error{ErrorCode::NotFound,
                     said("there is no household in %1 yet; name one with --home, or make an example with: lathhouse demo DIR",
                          globals.home.string())};
    }
    return journal::HouseholdStore::open(globals.home);
}

} // namespace lathhouse::cli
