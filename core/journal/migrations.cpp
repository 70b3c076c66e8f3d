#include "core/journal/migrations.h"

#include <sqlite3.h>

#include <array>
#include <string>

namespace lathhouse::journal {

// As the build has embedded them.
std::string_view migration_0001_household();
std::string_view migration_0002_open_air();
std::string_view migration_0003_night_log();
std::string_view migration_0004_own_record();
std::string_view migration_0005_spot_views();
std::string_view migration_0006_events();
std::string_view migration_0007_pins();
std::string_view migration_0008_jugs();
std::string_view migration_0009_seeds();
std::string_view migration_0010_measurements();
std::string_view migration_0011_photos();

namespace {

int version_of(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA user_version").getInt();
}

void take_step(SQLite::Database& database, const Migration& migration)
{
    SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
    if (version_of(database) >= migration.version) {
        return; // Another program took the step while we waited; the transaction rolls back empty.
    }
    database.exec(std::string{migration.sql});
    SQLite::Statement check{database, "SELECT \"table\" FROM pragma_foreign_key_check"};
    if (check.executeStep()) {
        const auto table = check.getColumn(0).getString();
        throw SQLite::Exception{"a row of " + table + " names something that is not there", SQLITE_CONSTRAINT};
    }
    database.exec("PRAGMA user_version = " + std::to_string(migration.version));
    transaction.commit();
}

} // namespace

std::span<const Migration> known_migrations()
{
    static const std::array<Migration, 11> migrations{{{1, migration_0001_household()},
                                                      {2, migration_0002_open_air()},
                                                      {3, migration_0003_night_log()},
                                                      {4, migration_0004_own_record()},
                                                      {5, migration_0005_spot_views()},
                                                      {6, migration_0006_events()},
                                                      {7, migration_0007_pins()},
                                                      {8, migration_0008_jugs()},
                                                      {9, migration_0009_seeds()},
                                                      {10, migration_0010_measurements()},
                                                       {11, migration_0011_photos()}}};
    return migrations;
}

Result<void> bring_up_to_date(SQLite::Database& database, const std::filesystem::path& file,
                              std::span<const Migration> migrations)
{
    try {
        const int present = version_of(database);
        if (migrations.empty() || present >= migrations.back().version) {
            return {};
        }
        if (present > 0) {
            const auto folder = file.parent_path() / "backups";
            std::error_code failure;
            std::filesystem::create_directories(folder, failure);
            if (failure) {
                return Error{ErrorCode::Unwritable,
                             "the folder " + folder.string() +
                                 " cannot be made for a copy; the household was left as "
                                 "it is"};
            }
            const auto copied = copy_verified(
                database, folder / ("before-schema-" + std::to_string(present + 1) + ".sqlite3"));
            if (!copied) {
                return copied.error();
            }
        }
        // A table is made anew by copying it, dropping it and renaming the copy, and foreign keys forbid the drop;
        // each step looks at all of them before it ends. Source: SQLite, "ALTER TABLE", section 7.
        const bool keys = database.execAndGet("PRAGMA foreign_keys").getInt() != 0;
        database.exec("PRAGMA foreign_keys = OFF");
        for (const auto& migration : migrations) {
            if (migration.version > present) {
                take_step(database, migration);
            }
        }
        database.exec(keys ? "PRAGMA foreign_keys = ON" : "PRAGMA foreign_keys = OFF");
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

} // namespace lathhouse::journal
