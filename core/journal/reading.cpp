#include "core/journal/reading.h"

#include "core/base/temporary_folder.h"
#include "core/exchange/bag_path.h"
#include "core/journal/migrations.h"

#include <sqlite3.h>

#include <algorithm>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr int kWaitToReadMilliseconds = 3000;

/// A path as a URI of SQLite ("Uniform Resource Identifiers", https://www.sqlite.org/uri.html): what has a meaning
/// there is written as its number.
std::string uri_of(const fs::path& file)
{
    std::string uri = "file:";
    for (const char letter : fs::absolute(file).string()) {
        if (letter == '%' || letter == '?' || letter == '#') {
            constexpr std::string_view kDigits = "0123456789ABCDEF";
            uri += '%';
            uri += kDigits[static_cast<unsigned char>(letter) >> 4U];
            uri += kDigits[static_cast<unsigned char>(letter) & 0xFU];
        } else {
            uri += letter;
        }
    }
    return uri;
}

SQLite::Database opened(const std::string& name, int flags)
{
    SQLite::Database database{name, flags, kWaitToReadMilliseconds};
    SQLite::Statement{database, "SELECT count(*) FROM sqlite_schema"}.executeStep();
    return database;
}

bool has_content(const fs::path& file)
{
    std::error_code failure;
    const auto bytes = fs::file_size(file, failure);
    return !failure && bytes > 0;
}

} // namespace

Result<fs::path> database_of(const fs::path& folder)
{
    const auto whole = with_name(folder);
    std::error_code failure;
    if (!fs::exists(whole, failure)) {
        return Error{
            ErrorCode::NotFound,
            said("there is no folder %1; name a household's folder with --home, or make one with `lathhouse demo`",
                 whole.string())};
    }
    auto file = whole / kDatabaseName;
    if (!fs::is_regular_file(file, failure)) {
        return Error{ErrorCode::NotAHousehold,
                     said("%1 is not a household; it has no file %2 in it", whole.string(), kDatabaseName)};
    }
    return file;
}

Result<SQLite::Database> open_to_read(const fs::path& file)
{
    if (const auto header = check_header(file, known_migrations().back().version); !header) {
        return header.error();
    }
    try {
        return opened(file.string(), SQLite::OPEN_READONLY);
    } catch (const SQLite::Exception& thrown) {
        const int code = thrown.getErrorCode() & 0xFF;
        auto log = file;
        log += "-wal";
        if ((code != SQLITE_CANTOPEN && code != SQLITE_READONLY) || has_content(log)) {
            return error_of(thrown, file);
        }
    }
    // In a folder that is read-only the files beside the database cannot be made. Nobody can write to it either.
    try {
        return opened(uri_of(file) + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI);
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

Result<ReadDatabase> open_folder_to_read(const fs::path& folder)
{
    auto file = database_of(folder);
    if (!file) {
        return file.error();
    }
    auto database = open_to_read(*file);
    if (!database) {
        return database.error();
    }
    return ReadDatabase{std::move(*file), std::move(*database)};
}

bool has_photos_table(SQLite::Database& database)
{
    return database
               .execAndGet("SELECT count(*) FROM pragma_table_info('photos') WHERE name IN ('sha256', 'extension')")
               .getInt() == 2;
}

std::vector<ListedPhoto> listed_photos(SQLite::Database& database)
{
    std::vector<ListedPhoto> photos;
    if (!has_photos_table(database)) {
        return photos;
    }
    SQLite::Statement rows{database, "SELECT DISTINCT sha256, extension FROM photos ORDER BY sha256"};
    while (rows.executeStep()) {
        auto digest = rows.getColumn(0).getString();
        auto path = "photos/" + digest.substr(0, 2) + "/" + digest + "." + rows.getColumn(1).getString();
        photos.push_back({std::move(digest), std::move(path)});
    }
    return photos;
}

Result<std::vector<std::string>> photo_files(const fs::path& folder, std::vector<std::string>& odd)
{
    std::vector<std::string> files;
    std::error_code failure;
    const auto photos = folder / "photos";
    if (!fs::exists(photos, failure)) {
        return files;
    }
    for (fs::recursive_directory_iterator entry{photos, failure}, end; !failure && entry != end; entry.increment(failure)) {
        const auto path = entry->path().lexically_relative(folder).generic_string();
        const auto status = entry->symlink_status(failure);
        if (is_temporary_name(entry->path())) {
            entry.disable_recursion_pending(); // A backup that is being written below photos/ is not in itself.
            continue;
        }
        if (fs::is_directory(status)) {
            continue;
        }
        if (!fs::is_regular_file(status) || exchange::bag_path_fault(path)) {
            odd.push_back(path);
        } else {
            files.push_back(path);
        }
    }
    if (failure) {
        return Error{ErrorCode::Unreadable,
                     said("%1 cannot be read (%2); check its rights", photos.string(), failure.message())};
    }
    std::ranges::sort(files);
    return files;
}

Result<void> must_be_new_or_empty(const fs::path& folder)
{
    std::error_code failure;
    const auto status = fs::status(folder, failure);
    if (!fs::exists(status)) {
        return {};
    }
    if (!fs::is_directory(status)) {
        return Error{ErrorCode::Unwritable, said("%1 is a file; choose a new or an empty folder", folder.string())};
    }
    if (!fs::is_empty(folder, failure) || failure) {
        return Error{ErrorCode::Unwritable,
                     fs::exists(folder / kDatabaseName, failure)
                         ? said("%1 already holds a household; choose a new or an empty folder", folder.string())
                         : said("%1 is not empty; choose a new or an empty folder", folder.string())};
    }
    return {};
}

} // namespace lathhouse::journal
