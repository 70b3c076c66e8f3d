#include "core/journal/last_backup.h"

#include "core/base/csv.h"
#include "core/journal/reading.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <system_error>

namespace lathhouse::journal {

namespace {

std::filesystem::path memo_of(const std::filesystem::path& folder)
{
    return folder / "backups" / "last-backup.json";
}

/// What was entered after that entry; 0 in a schema that has no order of entry yet.
Result<std::uint64_t> entries_after(const std::filesystem::path& folder, std::int64_t entry)
{
    auto household = open_folder_to_read(folder);
    if (!household) {
        return household.error();
    }
    auto& [file, database] = *household;
    try {
        if (database.execAndGet("SELECT count(*) FROM sqlite_schema WHERE name = 'entries'").getInt() == 0) {
            return std::uint64_t{0};
        }
        SQLite::Statement row{database, "SELECT count(*) FROM entries WHERE id > ?"};
        row.bind(1, entry);
        row.executeStep();
        return static_cast<std::uint64_t>(std::max<std::int64_t>(0, row.getColumn(0).getInt64()));
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

} // namespace

void remember_backup(const std::filesystem::path& folder, calendar::Date on, const std::filesystem::path& file,
                     std::int64_t last_entry)
{
    std::error_code failure;
    const auto memo = memo_of(folder);
    std::filesystem::create_directories(memo.parent_path(), failure);
    const nlohmann::json json{{"on", calendar::to_text(on)},
                              {"file", std::filesystem::absolute(file, failure).lexically_normal().string()},
                              {"last_entry", last_entry}};
    // What a file's name has that is no UTF-8 is replaced: it is read by people, nobody opens the backup by it.
    const auto kept = write_file_whole(memo, json.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + "\n");
    static_cast<void>(kept.has_value());
}

Result<std::optional<LastBackup>> last_backup_of(const std::filesystem::path& folder)
{
    const auto text = read_text_file(memo_of(folder));
    const auto json = text ? nlohmann::json::parse(*text, nullptr, false) : nlohmann::json{};
    if (!json.is_object() || !json.contains("on") || !json["on"].is_string() || !json.contains("file") ||
        !json["file"].is_string() || !json.contains("last_entry") || !json["last_entry"].is_number_integer()) {
        return std::optional<LastBackup>{};
    }
    const auto on = calendar::parse_date(json["on"].get<std::string>());
    if (!on) {
        return std::optional<LastBackup>{};
    }
    const auto since = entries_after(folder, json["last_entry"].get<std::int64_t>());
    if (!since) {
        return since.error();
    }
    return std::optional{LastBackup{*on, json["file"].get<std::string>(), *since}};
}

Result<std::uint64_t> entries_of(const std::filesystem::path& folder)
{
    return entries_after(folder, 0);
}

} // namespace lathhouse::journal
