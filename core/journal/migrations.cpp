#include "core/journal/migrations.h"

#include "core/base/parse.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <functional>
#include <utility>
#include <vector>
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
std::string_view migration_0012_photo_entries();
std::string_view migration_0013_household_changes();
std::string_view migration_0014_pin_changes();
std::string_view migration_0015_undo_order();

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

/// Foreign keys are as they were afterwards, also where a step fails.
class WithoutForeignKeys {
public:
    explicit WithoutForeignKeys(SQLite::Database& database)
        : database_(database), were_on_(database.execAndGet("PRAGMA foreign_keys").getInt() != 0)
    {
        database_.exec("PRAGMA foreign_keys = OFF");
    }
    WithoutForeignKeys(const WithoutForeignKeys&) = delete;
    WithoutForeignKeys& operator=(const WithoutForeignKeys&) = delete;
    ~WithoutForeignKeys()
    {
        if (were_on_) {
            database_.tryExec("PRAGMA foreign_keys = ON");
        }
    }

private:
    SQLite::Database& database_;
    bool were_on_;
};

constexpr const char* kCopyName = "before-schema-";

/// Removes all but the two copies of the highest numbers. What cannot be removed stays; it does no harm.
void thin_out(const std::filesystem::path& folder)
{
    std::vector<std::pair<int, std::filesystem::path>> copies;
    std::error_code failure;
    for (std::filesystem::directory_iterator entry{folder, failure}, end; !failure && entry != end; entry.increment(failure)) {
        const auto name = entry->path().filename().string();
        const std::string_view front{kCopyName};
        if (!name.starts_with(front) || !name.ends_with(".sqlite3")) {
            continue;
        }
        const auto number = parse_integer(
            std::string_view{name}.substr(front.size(), name.size() - front.size() - std::string_view{".sqlite3"}.size()));
        if (number) {
            copies.emplace_back(*number, entry->path());
        }
    }
    std::ranges::sort(copies, std::greater{});
    for (std::size_t at = 2; at < copies.size(); ++at) {
        std::filesystem::remove(copies[at].second, failure);
    }
}

} // namespace

std::span<const Migration> known_migrations()
{
    static const std::array<Migration, 15> migrations{{{1, migration_0001_household()},
                                                      {2, migration_0002_open_air()},
                                                      {3, migration_0003_night_log()},
                                                      {4, migration_0004_own_record()},
                                                      {5, migration_0005_spot_views()},
                                                      {6, migration_0006_events()},
                                                      {7, migration_0007_pins()},
                                                      {8, migration_0008_jugs()},
                                                      {9, migration_0009_seeds()},
                                                      {10, migration_0010_measurements()},
                                                      {11, migration_0011_photos()},
                                                      {12, migration_0012_photo_entries()},
                                                      {13, migration_0013_household_changes()},
                                                      {14, migration_0014_pin_changes()},
                                                      {15, migration_0015_undo_order()}}};
    return migrations;
}

Result<void> bring_up_to_date(SQLite::Database& database, const std::filesystem::path& file,
                              std::span<const Migration> migrations)
{
    try {
        int present = version_of(database);
        if (migrations.empty() || present >= migrations.back().version) {
            return {};
        }
        if (present > 0) {
            const auto folder = file.parent_path() / "backups";
            std::error_code failure;
            std::filesystem::create_directories(folder, failure);
            if (failure) {
                return Error{
                    ErrorCode::Unwritable,
                    said("the folder %1 cannot be made for a copy; the household was left as it is", folder.string())};
            }
            const auto copy_now = [&] {
                return copy_verified(database, folder / (kCopyName + std::to_string(present + 1) + ".sqlite3"),
                                     present);
            };
            auto copied = copy_now();
            // Where another program took a step meanwhile, its own copy stands, and what is left is copied anew.
            while (!copied && version_of(database) > present) {
                present = version_of(database);
                if (present >= migrations.back().version) {
                    return {};
                }
                copied = copy_now();
            }
            if (!copied) {
                return copied.error();
            }
        }
        // A table is made anew by copying it, dropping it and renaming the copy, and foreign keys forbid the drop;
        // each step looks at all of them before it ends. Source: SQLite, "ALTER TABLE", section 7.
        const WithoutForeignKeys off{database};
        for (const auto& migration : migrations) {
            if (migration.version > present) {
                take_step(database, migration);
            }
        }
        if (present > 0) {
            thin_out(file.parent_path() / "backups");
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

} // namespace lathhouse::journal
