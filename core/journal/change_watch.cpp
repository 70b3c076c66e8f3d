#include "core/journal/change_watch.h"

#include "core/journal/reading.h"

#include <sys/stat.h>

#include <utility>

namespace lathhouse::journal {

struct ChangeWatch::Inside {
    std::filesystem::path file;
    std::pair<dev_t, ino_t> identity;
    SQLite::Database database;
    int version;
};

namespace {

/// Which file a path names now; zeros where it names none.
std::pair<dev_t, ino_t> identity_of(const std::filesystem::path& file)
{
    struct stat found = {};
    stat(file.c_str(), &found);
    return {found.st_dev, found.st_ino};
}

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
    const auto identity = identity_of(file);
    auto database = open_database(file);
    if (!database) {
        return database.error();
    }
    try {
        database->exec("PRAGMA query_only = ON");
        const int version = data_version(*database);
        return ChangeWatch(std::make_unique<Inside>(file, identity, std::move(*database), version));
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

bool ChangeWatch::changed()
{
    if (identity_of(inside_->file) != inside_->identity) { // The connection goes on seeing the file that was there before.
        return true;
    }
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
