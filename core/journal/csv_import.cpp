#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/base/sha256.h"
#include "core/base/temporary_folder.h"
#include "core/exchange/csv_cell.h"
#include "core/journal/household_csv.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "core/journal/reading.h"
#include "core/journal/table_shape.h"

#include <algorithm>
#include <set>
#include <system_error>
#include <utility>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

Error not_an_export(const fs::path& source, const Said& what)
{
    return {ErrorCode::Malformed, said("%1 %2; name a folder that `lathhouse export csv` made", source.string(), what)};
}

/// The schema that `about.csv` names.
Result<int> schema_of(const fs::path& source)
{
    const auto about = CsvTable::read(source / "about.csv");
    if (!about) {
        return about.error().code == ErrorCode::NotFound ? not_an_export(source, said("has no about.csv"))
                                                         : about.error();
    }
    const auto names = about->require_column("name");
    const auto values = about->require_column("value");
    if (!names || !values) {
        return names ? values.error() : names.error();
    }
    for (std::size_t row = 0; row < about->row_count(); ++row) {
        if (about->at(row, *names) == "schema") {
            const auto value = about->number(row, *values);
            if (!value) {
                return value.error();
            }
            if (!*value || **value < 1 || **value > 1e6 || **value != static_cast<int>(**value)) {
                return about->error_at(row, said("the schema must be a whole number from 1"));
            }
            return static_cast<int>(**value);
        }
    }
    return not_an_export(source, said("has an about.csv that names no schema"));
}

/// The places of the table's columns in the file. Errors: Malformed.
Result<std::vector<std::size_t>> places_of(const TableShape& table, const CsvTable& file)
{
    std::vector<std::size_t> places;
    for (const auto& column : table.columns) {
        const auto place = file.require_column(column.name);
        if (!place) {
            return place.error();
        }
        places.push_back(*place);
    }
    if (file.column_names().size() != table.columns.size()) {
        for (const auto& name : file.column_names()) {
            if (std::ranges::find(table.columns, name, &exchange::Column::name) == table.columns.end()) {
                return Error{ErrorCode::Malformed,
                             said("%1 has a column \"%2\" that is not known", file.source_name(), name)};
            }
        }
        return Error{ErrorCode::Malformed, said("%1 has a column twice", file.source_name())};
    }
    return places;
}

Result<std::uint64_t> read_table(SQLite::Database& database, const TableShape& table, const fs::path& source)
{
    const auto file = CsvTable::read(source / (table.name + ".csv"));
    if (!file) {
        return file.error().code == ErrorCode::NotFound
                   ? not_an_export(source, said("has no %1.csv (an empty table still has its head line)", table.name))
                   : file.error();
    }
    const auto places = places_of(table, *file);
    if (!places) {
        return places.error();
    }
    std::string marks;
    for (std::size_t column = 0; column < table.columns.size(); ++column) {
        marks += column == 0 ? "?" : ", ?";
    }
    // Some steps of the schema may come with rows of their own; what counts is what the export has.
    database.exec("DELETE FROM " + in_quotes(table.name));
    SQLite::Statement insert{database, "INSERT INTO " + in_quotes(table.name) + " (" + table.column_list() + ") VALUES (" + marks + ")"};
    for (std::size_t row = 0; row < file->row_count(); ++row) {
        insert.reset();
        for (std::size_t column = 0; column < table.columns.size(); ++column) {
            const auto cell = exchange::read_csv_cell(file->at(row, (*places)[column]), table.columns[column]);
            if (!cell) {
                return file->error_at(row, Said{cell.error()});
            }
            bind_cell(insert, static_cast<int>(column) + 1, *cell);
        }
        try {
            insert.exec();
        } catch (const SQLite::Exception& thrown) {
            if (breaks_a_rule(thrown)) {
                return file->error_at(row, said("the row breaks a rule of the table (%1)", thrown.what()));
            }
            throw;
        }
    }
    return file->row_count();
}

/// What the triggers write stands in the tables already. Their texts, to be put on again.
std::vector<std::string> take_triggers_off(SQLite::Database& database)
{
    std::vector<std::string> names;
    std::vector<std::string> texts;
    SQLite::Statement triggers{database, "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY rowid"};
    while (triggers.executeStep()) {
        names.push_back(triggers.getColumn(0).getString());
        texts.push_back(triggers.getColumn(1).getString());
    }
    triggers.reset();
    for (const auto& name : names) {
        database.exec("DROP TRIGGER " + in_quotes(name));
    }
    return texts;
}

/// Takes out rows that name others that are not there, and those that named these, until none is left.
Result<void> see_to_references(SQLite::Database& database, Broken broken, CsvRead& read)
{
    for (;;) {
        std::vector<std::pair<std::string, std::int64_t>> rows;
        SQLite::Statement check{database, "PRAGMA foreign_key_check"};
        while (check.executeStep()) {
            const auto table = check.getColumn(0).getString();
            if (broken == Broken::EndsIt || check.getColumn(1).isNull()) {
                return Error{
                    ErrorCode::Malformed,
                    said("%1.csv: row %2 names a row of %3.csv that is not there; mend it, or say --leave-out-broken",
                         table, check.getColumn(1).getString(), check.getColumn(2).getString())};
            }
            rows.emplace_back(table, check.getColumn(1).getInt64());
        }
        if (rows.empty()) {
            return {};
        }
        std::ranges::sort(rows);
        const auto repeated = std::ranges::unique(rows);
        rows.erase(repeated.begin(), repeated.end());
        for (const auto& [table, row] : rows) {
            SQLite::Statement remove{database, "DELETE FROM " + in_quotes(table) + " WHERE rowid = ?"};
            remove.bind(1, row);
            remove.exec();
            read.broken.push_back(table + ", row " + std::to_string(row));
            --read.rows;
        }
    }
}

Result<void> make_database(const fs::path& file, const fs::path& source, int schema, Broken broken, CsvRead& read)
{
    SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
    const auto steps = known_migrations();
    if (auto made = bring_up_to_date(database, file, steps.first(static_cast<std::size_t>(schema))); !made) {
        return made;
    }
    SQLite::Transaction transaction{database};
    const auto tables = table_shapes(database);
    const auto triggers = take_triggers_off(database);
    for (const auto& table : tables) {
        const auto rows = read_table(database, table, source);
        if (!rows) {
            return rows.error();
        }
        if (table.name == "household" && *rows == 0) {
            return not_an_export(source, said("gives no household (household.csv needs one row)"));
        }
        ++read.tables;
        read.rows += *rows;
    }
    for (const auto& trigger : triggers) {
        database.exec(trigger);
    }
    std::set<std::string> known{"about.csv", "photos"};
    for (const auto& table : tables) {
        known.insert(table.name + ".csv");
    }
    std::error_code failure;
    for (fs::directory_iterator entry{source, failure}, end; !failure && entry != end; entry.increment(failure)) {
        if (const auto name = entry->path().filename().string(); !known.contains(name)) {
            read.unknown.push_back(name);
        }
    }
    std::ranges::sort(read.unknown);
    if (auto whole = see_to_references(database, broken, read); !whole) {
        return whole;
    }
    transaction.commit();
    database.exec("PRAGMA journal_mode = WAL");
    return {};
}

/// Copies what the export has below `photos/`, as it is, once it is what its name says.
Result<void> take_photos(const fs::path& source, const fs::path& home, CsvRead& read, const Progress& progress)
{
    const auto photos = photo_files(source, read.unknown);
    if (!photos) {
        return photos.error();
    }
    for (const auto& photo : *photos) {
        if (!goes_on(progress, read.photos, photos->size())) {
            return Error{ErrorCode::Unwritable, said("stopped; nothing was kept of it")};
        }
        std::error_code failure;
        fs::create_directories((home / photo).parent_path(), failure);
        if (!failure) {
            fs::copy_file(source / photo, home / photo, failure);
        }
        if (failure) {
            return Error{ErrorCode::Unwritable, said("%1 could not be copied (%2); make room or choose another place",
                                                     photo, failure.message())};
        }
        const auto digest = sha256_of_file(home / photo);
        if (!digest) {
            return digest.error();
        }
        const auto stem = fs::path{photo}.stem().string();
        if (stem.size() == digest->size() && stem != *digest) {
            return Error{ErrorCode::Damaged,
                         said("%1 is not the photo that its name says; put the original in its place or take it away",
                              (source / photo).string())};
        }
        ++read.photos;
    }
    return {};
}

} // namespace

Result<CsvRead> import_csv(const fs::path& source, const fs::path& folder, Broken broken, const Progress& progress)
{
    std::error_code failure;
    if (!fs::is_directory(source, failure)) {
        return Error{ErrorCode::NotFound, said("there is no folder %1", source.string())};
    }
    const auto target = with_name(folder);
    if (auto free = must_be_new_or_empty(target); !free) {
        return free.error();
    }
    const auto schema = schema_of(source);
    if (!schema) {
        return schema.error();
    }
    if (*schema > known_migrations().back().version) {
        return Error{ErrorCode::TooNew, said("%1 was made by a newer version of this program (schema %2, this one "
                                             "knows %3); import it with that one",
                                             source.string(), *schema, known_migrations().back().version)};
    }
    auto temporary = TemporaryFolder::beside(target);
    if (!temporary) {
        return temporary.error();
    }
    const auto unnamed = temporary->path() / "household";
    fs::create_directories(unnamed / "photos", failure);
    if (failure) {
        return Error{ErrorCode::Unwritable, said("%1 cannot be made (%2)", target.string(), failure.message())};
    }
    fs::permissions(unnamed, fs::perms::owner_all, failure); // As a new household's folder; where the disk knows rights.
    CsvRead read;
    try {
        if (auto made = make_database(unnamed / kDatabaseName, source, *schema, broken, read); !made) {
            return made.error();
        }
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, target / kDatabaseName);
    }
    if (auto taken = take_photos(source, unnamed, read, progress); !taken) {
        return taken.error();
    }
    {
        // Opening takes the steps of the schema that the export had not, and shows whether the program can read it all.
        const auto store = HouseholdStore::open(unnamed);
        if (!store) {
            return not_an_export(source, said("gives no household that can be opened (%1)", store.error()));
        }
        if (const auto household = store->load(); !household) {
            return not_an_export(source, said("gives no household (%1)", household.error()));
        }
        if (const auto events = store->events(); !events) {
            return not_an_export(source, said("gives no household (%1)", events.error()));
        }
    }
    fs::remove_all(unnamed / "backups", failure); // The copy before a step of a household that nobody had yet.
    try {
        SQLite::Database database{(unnamed / kDatabaseName).string(), SQLite::OPEN_READONLY};
        for (const auto& photo : listed_photos(database)) {
            if (!fs::exists(unnamed / photo.path, failure)) {
                read.missing_photos.push_back(photo.path);
            }
        }
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, target / kDatabaseName);
    }
    if (auto flushed = flush_all_to_disk(unnamed); !flushed) {
        return flushed.error();
    }
    if (auto named = rename_unless_there(unnamed, target); !named) {
        return named.error();
    }
    return read;
}

} // namespace lathhouse::journal
