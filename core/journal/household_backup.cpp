#include "core/journal/household_backup.h"

#include "core/base/temporary_folder.h"
#include "core/exchange/bag.h"
#include "core/journal/last_backup.h"
#include "core/journal/migrations.h"
#include "core/journal/reading.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <system_error>
#include <thread>
#include <utility>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

/// A copy of the database as it was at one moment, in one file that needs none beside it.
/// Source: SQLite, "Online Backup API": all pages in one step, during which the pages read are those of one moment.
Result<int> snapshot(const fs::path& database_file, const fs::path& copy)
{
    auto source = open_to_read(database_file);
    if (!source) {
        return source.error();
    }
    try {
        int schema = 0;
        {
            SQLite::Database written{copy.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
            constexpr int kTries = 50;
            int outcome = SQLITE_BUSY;
            {
                SQLite::Backup backup{written, *source};
                for (int tries = 0; tries < kTries && (outcome == SQLITE_BUSY || outcome == SQLITE_LOCKED); ++tries) {
                    if (tries > 0) {
                        std::this_thread::sleep_for(std::chrono::milliseconds{100});
                    }
                    outcome = backup.executeStep(-1);
                }
            }
            if (outcome != SQLITE_DONE) {
                return Error{ErrorCode::Locked,
                             said("%1 is held by another program; close that one or try again in a moment",
                                  database_file.string())};
            }
            written.exec("PRAGMA journal_mode = DELETE");
            schema = written.execAndGet("PRAGMA user_version").getInt();
            if (auto sound = quick_check(written, database_file); !sound) {
                return Error{ErrorCode::Damaged,
                             said("%1 is damaged and was not backed up; `lathhouse check` says where, and `lathhouse "
                                  "export csv DIR --salvage` saves what can be read",
                                  database_file.string())};
            }
        }
        return schema;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, database_file);
    }
}

std::string text_of(int number)
{
    return std::to_string(number);
}

/// Whether it is a file that a household has: the database, or a photo.
bool belongs(const exchange::BagEntry& file)
{
    return file.path == kDatabaseName || file.path.starts_with("photos/");
}

} // namespace

Result<BackupMade> back_up(const fs::path& folder, const fs::path& archive, Existing existing, calendar::Date today,
                           const Progress& progress)
{
    const auto database_file = database_of(folder);
    if (!database_file) {
        return database_file.error();
    }
    const auto target = with_name(archive);
    std::error_code failure;
    const auto there = fs::status(target, failure);
    if (fs::is_directory(there)) {
        return Error{ErrorCode::Unwritable, said("%1 is a folder; name a file in it", target.string())};
    }
    if (fs::exists(there) && existing == Existing::Refused) {
        return Error{ErrorCode::Unwritable,
                     said("%1 is there already; choose another name, or say --replace", target.string())};
    }
    auto temporary = TemporaryFolder::beside(target);
    if (!temporary) {
        return temporary.error();
    }
    BackupMade made;
    const auto copy = temporary->path() / kDatabaseName;
    // The database first: every photo that it then names has been in its place before.
    const auto schema = snapshot(*database_file, copy);
    if (!schema) {
        return schema.error();
    }
    made.schema = *schema;
    const auto photos = photo_files(database_file->parent_path(), made.left_out);
    if (!photos) {
        return photos.error();
    }
    std::int64_t last_entry = 0;
    try {
        SQLite::Database written{copy.string(), SQLite::OPEN_READONLY};
        if (written.execAndGet("SELECT count(*) FROM sqlite_schema WHERE name = 'entries'").getInt() == 1) {
            last_entry = written.execAndGet("SELECT coalesce(max(id), 0) FROM entries").getInt64();
        }
        for (const auto& photo : listed_photos(written)) {
            if (!std::ranges::binary_search(*photos, photo.path)) {
                made.missing.push_back(photo.path);
            }
        }
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, copy);
    }
    std::vector<exchange::BagFile> files{{kDatabaseName, copy, exchange::ZipWriter::Squeeze::Yes}};
    for (const auto& photo : *photos) {
        files.push_back({photo, database_file->parent_path() / photo});
    }
    const std::vector<exchange::BagLabel> labels{
        {"Bag-Software-Agent", "Lathhouse"},
        {"External-Description", "A household of potted plants: its database and photos"},
        {"Lathhouse-Schema", text_of(made.schema)}};
    const auto unnamed = temporary->path() / target.filename();
    const auto written = exchange::write_bag(unnamed, files, labels, today, progress);
    if (!written) {
        return written.error();
    }
    if (existing == Existing::Replaced) {
        fs::rename(unnamed, target, failure);
        if (failure) {
            return Error{ErrorCode::Unwritable,
                         said("%1 could not be replaced (%2)", target.string(), failure.message())};
        }
    } else if (auto named = rename_unless_there(unnamed, target); !named) {
        return named.error();
    }
    // Without it a power cut now could still lose the name.
    if (auto flushed = flush_to_disk(target.parent_path()); !flushed) {
        return flushed.error();
    }
    made.files = written->files;
    made.bytes = written->bytes;
    made.archive_bytes = written->archive_bytes;
    remember_backup(database_file->parent_path(), today, target, last_entry);
    return made;
}

Result<Restored> restore(const fs::path& archive, const fs::path& folder, const Progress& progress)
{
    const auto target = with_name(folder);
    if (auto free = must_be_new_or_empty(target); !free) {
        return free.error();
    }
    auto bag = exchange::Bag::open(archive);
    if (!bag) {
        return bag.error();
    }
    if (std::ranges::find(bag->files(), kDatabaseName, &exchange::BagEntry::path) == bag->files().end()) {
        return Error{ErrorCode::NotAHousehold,
                     said("%1 has no data/%2 in it; it is no backup of a household", archive.string(), kDatabaseName)};
    }
    auto temporary = TemporaryFolder::beside(target);
    if (!temporary) {
        return temporary.error();
    }
    std::error_code failure;
    if (const auto space = fs::space(temporary->path(), failure); !failure && space.available < bag->bytes()) {
        return Error{ErrorCode::Unwritable,
                     said("%1 has room for %2 MB and the household needs %3 MB; make room or choose another place",
                          target.parent_path().string(), space.available / 1'000'000, bag->bytes() / 1'000'000 + 1)};
    }
    const auto unnamed = temporary->path() / "household";
    fs::create_directories(unnamed / "photos", failure);
    if (failure) {
        return Error{ErrorCode::Unwritable, said("%1 cannot be made (%2)", target.string(), failure.message())};
    }
    fs::permissions(unnamed, fs::perms::owner_all, failure); // As a new household's folder; where the disk knows rights.
    if (auto unpacked = bag->unpack(&unnamed, &belongs, progress); !unpacked) {
        return unpacked.error();
    }
    Restored restored{.bagged_on = bag->label("Bagging-Date"), .oddities = bag->oddities(), .left_out = {}};
    const auto file = unnamed / kDatabaseName;
    // Errors name the backup: the file looked at is gone when they are read.
    const auto in_backup = [&](const Error& error) -> Error {
        switch (error.code) {
        case ErrorCode::TooNew:
            return {
                error.code,
                said("%1 was made by a newer version of this program; restore it with that one, nothing was made here",
                     archive.string())};
        case ErrorCode::NotAHousehold:
            return {error.code, said("%1 holds a database that is no household of this program", archive.string())};
        default:
            return {error.code, said("%1 holds a database that cannot be used; use another backup", archive.string())};
        }
    };
    if (auto header = check_header(file, known_migrations().back().version); !header) {
        return in_backup(header.error());
    }
    try {
        auto database = open_database(file);
        if (!database) {
            return in_backup(database.error());
        }
        if (auto sound = quick_check(*database, file); !sound) {
            return in_backup(sound.error());
        }
        restored.schema = database->execAndGet("PRAGMA user_version").getInt();
        database->exec("PRAGMA journal_mode = WAL");
    } catch (const SQLite::Exception& thrown) {
        return in_backup(error_of(thrown, file));
    }
    for (const auto& entry : bag->files()) {
        if (belongs(entry)) {
            ++restored.files;
            restored.bytes += entry.bytes;
        } else {
            restored.left_out.push_back(entry.path);
        }
    }
    if (auto flushed = flush_all_to_disk(unnamed); !flushed) {
        return flushed.error();
    }
    if (auto named = rename_unless_there(unnamed, target); !named) {
        return named.error();
    }
    if (auto flushed = flush_to_disk(target.parent_path()); !flushed) {
        return flushed.error();
    }
    return restored;
}

} // namespace lathhouse::journal
