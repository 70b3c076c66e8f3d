#include "core/journal/household_holdings.h"

#include "core/journal/reading.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <string>
#include <system_error>

namespace lathhouse::journal {

namespace {

/// One number of a query over a table or view; 0 where the schema has none of that name.
std::uint64_t one_number(SQLite::Database& database, const std::string& from, const std::string& what)
{
    SQLite::Statement there{database, "SELECT count(*) FROM sqlite_schema WHERE name = ?"};
    there.bind(1, from);
    if (!there.executeStep() || there.getColumn(0).getInt() == 0) {
        return 0;
    }
    const auto number = database.execAndGet("SELECT " + what + " FROM " + from).getInt64();
    return number < 0 ? 0 : static_cast<std::uint64_t>(number);
}

} // namespace

Result<Holdings> holdings_of(const std::filesystem::path& folder)
{
    auto holdings = read_household(folder, [](SQLite::Database& database) {
        Holdings counted;
        SQLite::Transaction one_moment{database};
        // Spots that were taken off the list keep their rows; in older schemas none could be.
        const bool may_be_gone =
            database.execAndGet("SELECT count(*) FROM pragma_table_info('spots') WHERE name = 'gone'").getInt() > 0;
        counted.spots = one_number(database, "spots", may_be_gone ? "count(*) - coalesce(sum(gone), 0)" : "count(*)");
        const auto all = one_number(database, "plants", "count(*)");
        const auto gone = one_number(database, "gone_plants", "count(DISTINCT plant_id)");
        counted.plants = all > gone ? all - gone : 0;
        counted.events = one_number(database, "events_that_count", "count(*)");
        counted.measurements = one_number(database, "measurements_that_count", "count(*)");
        counted.readings = one_number(database, "readings_that_count", "count(*)");
        counted.photos = one_number(database, "photos_that_count", "count(*)");
        // Files of photos that were taken out of the lists stay in the folder and in every backup.
        counted.photo_bytes = one_number(database, "photos", "coalesce(sum(size_bytes), 0)");
        counted.placed_photos = one_number(database, "photos", "count(latitude_degrees)");
        return counted;
    });
    if (!holdings) {
        return holdings;
    }
    std::error_code failure;
    const auto bytes = std::filesystem::file_size(folder / kDatabaseName, failure);
    holdings->database_bytes = failure ? 0 : bytes;
    return holdings;
}

} // namespace lathhouse::journal
