#pragma once

#include "core/journal/database.h"

#include <span>
#include <string_view>

namespace lathhouse::journal {

/// One numbered step of the schema. Once shipped it is never edited.
struct Migration {
    int version; ///< `user_version` after it; 1 for the first, then rising by one.
    std::string_view sql;
};

/// The steps that the program knows, oldest first.
std::span<const Migration> known_migrations();

/// Takes the file through the steps that it lacks, each in one transaction with its number, so that a step
/// that fails leaves nothing behind. A file that has had a step before is first copied to
/// `backups/before-schema-N.sqlite3` beside it (N: the first step taken), checked throughout, and nothing happens
/// where the copy fails. Once all steps are taken the two latest of such copies are kept and older ones removed.
/// Errors: Unwritable, Locked, Damaged.
Result<void> bring_up_to_date(SQLite::Database& database, const std::filesystem::path& file,
                              std::span<const Migration> migrations);

} // namespace lathhouse::journal
