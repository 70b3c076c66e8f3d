#include "core/journal/change_watch.h"

#include "core/journal/reading.h"

namespace lathhouse::journal {

struct ChangeWatch::Inside {
    SQLite::Database database;
    int version;
};

namespace {

int data_version(SQLite::Database& database)
{
    return database.execAndGet("PRAGMA data_version").getInt();
}

} // namespace

ChangeWatch::ChangeWatch(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
ChangeWatch::ChangeWatch(ChangeWatch&&) noexcept = default;
ChangeWatch& ChangeWatch::operator=(ChangeWatch&&) noexcept = default;
ChangeWatch::~ChangeWatch() = default;

Result<ChangeWatch> ChangeWatch::open(const std::filesystem::path& folder)
{
    const auto file = folder / kDatabaseName;
    auto database = open_database(file);
    if (!database) {
        return database.error();
    }
    try {
        database->exec("PRAGMA query_only = ON");
        const int version = data_version(*database);
        return ChangeWatch(std::make_unique<Inside>(std::move(*database), version));
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

bool ChangeWatch::changed()
{
    try {
        const int now = data_version(inside_->database);
        const bool is_other = now != inside_->version;
        inside_->version = now;
        return is_other;
    } catch (const SQLite::Exception&) {
        return true;
    }
}

} // namespace lathhouse::journal
