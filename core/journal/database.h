#pragma once

#include "core/base/result.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <optional>

// Of use inside core/journal (and its tests) only: nothing else sees SQLite.

namespace lathhouse::journal {

/// Marks a database file as ours in its header (bytes 68-71): "LatH".
inline constexpr int kApplicationId = 0x4C617448;

/// What SQLite threw, as a sentence about the file.
Error error_of(const SQLite::Exception& thrown, const std::filesystem::path& file);

/// Whether what was to be written breaks a rule of the tables, rather than the file being at fault.
bool breaks_a_rule(const SQLite::Exception& thrown);

/// Looks at the file's first hundred bytes, without opening it as a database, so that nothing beside it is
/// touched. newest_version: the latest schema that this program knows.
/// Errors: NotAHousehold (no database, or another program's), Damaged (cut off), TooNew, Unreadable.
/// Source: SQLite, "Database File Format", 1.3: the magic text, user version at byte 60, application at 68.
Result<void> check_header(const std::filesystem::path& file, int newest_version);

/// Opens a file that is there, with foreign keys on. Errors: as `error_of`.
Result<SQLite::Database> open_database(const std::filesystem::path& file);

/// Runs SQLite's quick check of the file's form, without asking every row's rules again: about 5 ms a
/// megabyte rather than 35. Errors: Damaged with its first finding.
Result<void> quick_check(SQLite::Database& database, const std::filesystem::path& file);

/// Writes a copy in one piece, checks all of it (form, indexes, every row's rules) and that each table has as many
/// rows, and only then gives it its name; an older file of that name is replaced.
/// Where `version` is given, a copy of another version of the tables is an error.
/// Errors: Unwritable, Damaged.
Result<void> copy_verified(SQLite::Database& database, const std::filesystem::path& copy,
                           std::optional<int> version = std::nullopt);

} // namespace lathhouse::journal
