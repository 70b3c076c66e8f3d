#include "core/journal/database.h"

#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lathhouse::journal {
namespace {

/// How long another program may hold the file before we say so.
constexpr int kBusyMilliseconds = 4000;

int big_endian(const std::array<char, 100>& header, std::size_t offset)
{
    std::uint32_t value = 0;
    for (std::size_t index = offset; index < offset + 4; ++index) {
        value = value << 8 | static_cast<unsigned char>(header[index]);
    }
    return static_cast<int>(value);
}

/// Errors are one line.
std::string one_line(std::string text)
{
    std::ranges::replace(text, '\n', ' ');
    return text;
}

/// Reads the beginning of a file; how many bytes there were, nullopt where it cannot be opened.
///
/// Through SQLite, and not as any other file: closing a handle drops all locks that this process holds on the file, those
/// of its other connections too (https://www.sqlite.org/howtocorrupt.html, section 2.2). Another program would then take
/// itself for the last user and remove the journal under them. SQLite closes its own handles when no lock is left.
std::optional<std::size_t> first_bytes(const std::filesystem::path& file, std::array<char, 100>& bytes)
{
    sqlite3* opened = nullptr;
    const int result = sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READONLY, nullptr);
    const std::unique_ptr<sqlite3, int (*)(sqlite3*)> closing{opened, &sqlite3_close};
    sqlite3_file* handle = nullptr;
    if (result != SQLITE_OK || sqlite3_file_control(opened, "main", SQLITE_FCNTL_FILE_POINTER, &handle) != SQLITE_OK ||
        handle == nullptr || handle->pMethods == nullptr) {
        return std::nullopt;
    }
    sqlite3_int64 size = 0;
    if (handle->pMethods->xFileSize(handle, &size) != SQLITE_OK) {
        return std::nullopt;
    }
    const auto whole = static_cast<sqlite3_int64>(bytes.size());
    const int count = static_cast<int>(std::min(size, whole));
    // A folder opens as a file does, and cannot be read.
    return handle->pMethods->xRead(handle, bytes.data(), count, 0) == SQLITE_OK ? static_cast<std::size_t>(count) : 0;
}

/// The tables with their numbers of rows.
std::vector<std::pair<std::string, int>> row_counts(SQLite::Database& database)
{
    std::vector<std::pair<std::string, int>> counts;
    SQLite::Statement tables{database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"};
    while (tables.executeStep()) {
        counts.emplace_back(tables.getColumn(0).getString(), 0);
    }
    for (auto& [name, count] : counts) {
        count = database.execAndGet("SELECT count(*) FROM \"" + name + "\"").getInt();
    }
    return counts;
}

} // namespace

Error error_of(const SQLite::Exception& thrown, const std::filesystem::path& file)
{
    const std::string name = file.string();
    switch (thrown.getErrorCode() & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ErrorCode::Locked,
                said("%1 is held by another program; close that one or try again in a moment", name)};
    case SQLITE_NOTADB:
        return {ErrorCode::NotAHousehold, said("%1 is not a household; it was not made by this program", name)};
    case SQLITE_CORRUPT:
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
        return {ErrorCode::Damaged,
                said("%1 is damaged (%2); restore a backup, the file was left as it is", name, thrown.what())};
    case SQLITE_FULL:
        return {ErrorCode::Unwritable, said("%1 could not be written, the disk is full; make room and repeat", name)};
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN:
        return {
            ErrorCode::Unwritable,
            said("%1 cannot be written; its folder must be one where you may write, or copy it to such a one", name)};
    case SQLITE_IOERR:
        return {ErrorCode::Unwritable,
                said("%1 could not be read or written (%2); the disk may be full or failing", name, thrown.what())};
    default:
        return {ErrorCode::Damaged, said("%1 could not be used (%2); restore a backup", name, thrown.what())};
    }
}

bool breaks_a_rule(const SQLite::Exception& thrown)
{
    return (thrown.getErrorCode() & 0xFF) == SQLITE_CONSTRAINT;
}

Result<void> check_header(const std::filesystem::path& file, int newest_version)
{
    constexpr std::string_view kMagic{"SQLite format 3\0", 16};
    std::array<char, 100> header{};
    const auto first = first_bytes(file, header);
    if (!first) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; you need the right to read it", file.string())};
    }
    const std::size_t read = *first;
    if (std::string_view{header.data(), std::min(read, kMagic.size())} != kMagic) {
        return Error{ErrorCode::NotAHousehold,
                     said("%1 is not a household; it was not made by this program", file.string())};
    }
    if (read < header.size()) {
        return Error{ErrorCode::Damaged,
                     said("%1 is damaged (cut off after %2 bytes); restore a backup, the file was left as it is",
                          file.string(), read)};
    }
    if (big_endian(header, 68) != kApplicationId) {
        return Error{ErrorCode::NotAHousehold, said("%1 is the database of another program", file.string())};
    }
    if (const int version = big_endian(header, 60); version > newest_version) {
        return Error{ErrorCode::TooNew, said("%1 was written by a newer version of this program (schema %2, this one "
                                             "knows %3); it was left untouched",
                                             file.string(), version, newest_version)};
    }
    return {};
}

Result<SQLite::Database> open_database(const std::filesystem::path& file)
{
    try {
        SQLite::Database database{file.string(), SQLite::OPEN_READWRITE, kBusyMilliseconds};
        database.exec("PRAGMA foreign_keys = ON");
        // The first read of the file itself; faults of rights, locks and form show here.
        SQLite::Statement{database, "SELECT count(*) FROM sqlite_schema"}.executeStep();
        return database;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

Result<void> quick_check(SQLite::Database& database, const std::filesystem::path& file)
{
    try {
        database.exec("PRAGMA ignore_check_constraints = ON");
        SQLite::Statement check{database, "PRAGMA quick_check(1)"};
        check.executeStep();
        const auto finding = one_line(check.getColumn(0).getString());
        check.reset();
        database.exec("PRAGMA ignore_check_constraints = OFF");
        if (finding != "ok") {
            return Error{ErrorCode::Damaged, said("%1 is damaged (%2); restore a backup, the file was left as it is",
                                                  file.string(), finding)};
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

Result<void> copy_verified(SQLite::Database& database, const std::filesystem::path& copy, std::optional<int> version)
{
    auto unnamed = copy;
    // Two programs, or two threads, may copy at once.
    unnamed += ".part-" + std::to_string(getpid()) + "-" + std::to_string(std::hash<const void*>{}(&database));
    std::error_code failure;
    std::filesystem::remove(unnamed, failure);
    try {
        SQLite::Statement vacuum{database, "VACUUM INTO ?"};
        vacuum.bind(1, unnamed.string());
        vacuum.exec();
        SQLite::Database written{unnamed.string(), SQLite::OPEN_READONLY};
        const auto finding = written.execAndGet("PRAGMA integrity_check(1)").getString();
        if (finding != "ok") {
            std::filesystem::remove(unnamed, failure);
            return Error{ErrorCode::Damaged,
                         said("the copy %1 did not come out sound (%2); the household was left as it is", copy.string(),
                              one_line(finding))};
        }
        const bool is_that_version =
            !version || written.execAndGet("PRAGMA user_version").getInt() == *version;
        if (!is_that_version || row_counts(written) != row_counts(database)) {
            std::filesystem::remove(unnamed, failure);
            return Error{ErrorCode::Unwritable, said("the copy %1 differs from what was copied", copy.string())};
        }
    } catch (const SQLite::Exception& thrown) {
        std::filesystem::remove(unnamed, failure);
        return error_of(thrown, copy);
    }
    std::filesystem::rename(unnamed, copy, failure);
    if (failure) {
        std::filesystem::remove(unnamed, failure);
        return Error{ErrorCode::Unwritable, said("the copy %1 could not be given its name", copy.string())};
    }
    return {};
}

} // namespace lathhouse::journal
