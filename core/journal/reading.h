#pragma once

#include "core/journal/database.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <string>
#include <type_traits>
#include <vector>

// Looking at a household without changing it; of use inside core/journal only.

namespace lathhouse::journal {

inline constexpr const char* kDatabaseName = "household.sqlite3";

/// The household's database file. Errors: NotFound (no such folder), NotAHousehold.
Result<std::filesystem::path> database_of(const std::filesystem::path& folder);

/// Opens to read alone, takes no step of the schema, and works in a folder that is read-only too.
/// Errors: as check_header and error_of.
Result<SQLite::Database> open_to_read(const std::filesystem::path& file);

/// A household's database while it is looked at.
struct ReadDatabase {
    std::filesystem::path file;
    SQLite::Database database;
};
/// Both of the above. Errors: as they.
Result<ReadDatabase> open_folder_to_read(const std::filesystem::path& folder);

/// Opens the household's database to read and gives what `work` makes of it; what SQLiteCpp throws in there ends here.
/// Errors: as open_folder_to_read and error_of.
template <class Work>
Result<std::invoke_result_t<Work, SQLite::Database&>> read_household(const std::filesystem::path& folder, Work work)
{
    auto household = open_folder_to_read(folder);
    if (!household) {
        return household.error();
    }
    try {
        return work(household->database);
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, household->file);
    }
}

/// A photo as the database knows it.
struct ListedPhoto {
    std::string sha256;
    std::string path; ///< Below the household's folder: `photos/ab/DIGEST.EXTENSION`.
};
/// None where the schema has no photos yet. Throws as SQLiteCpp does.
std::vector<ListedPhoto> listed_photos(SQLite::Database& database);
bool has_photos_table(SQLite::Database& database);

/// Regular files below `photos/` as paths below the household's folder, in their order; what is not yet whole is left
/// out. odd: gets what is neither a folder nor a regular file (links are not followed), or has a name that no archive
/// takes. Errors: Unreadable.
Result<std::vector<std::string>> photo_files(const std::filesystem::path& folder, std::vector<std::string>& odd);

/// What stands in the way of making a household in a new or an empty folder. Errors: Unwritable.
Result<void> must_be_new_or_empty(const std::filesystem::path& folder);

} // namespace lathhouse::journal
