#include "core/base/csv.h"
#include "core/base/temporary_folder.h"
#include "core/exchange/csv_cell.h"
#include "core/journal/household_csv.h"
#include "core/journal/reading.h"
#include "core/journal/row_salvage.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <system_error>
#include <utility>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr const char* kLineEnd = "\r\n";

/// A text file that is written line by line.
class TextFile {
public:
    explicit TextFile(fs::path path) : path_(std::move(path)), file_(std::fopen(path_.c_str(), "wb"), &std::fclose) {}
    Result<void> write(const std::string& text)
    {
        return file_ && std::fwrite(text.data(), 1, text.size(), file_.get()) == text.size() ? Result<void>{} : fault();
    }
    Result<void> finish() { return file_ && std::fflush(file_.get()) == 0 ? Result<void>{} : fault(); }

private:
    Error fault() const
    {
        const bool full = errno == ENOSPC || errno == EFBIG || errno == EDQUOT;
        return full ? Error{ErrorCode::Unwritable, said("%1 could not be written (the disk is full, or files may not "
                                                        "grow so large); make room or choose another place",
                                                        path_.filename().string())}
                    : Error{ErrorCode::Unwritable, said("%1 could not be written (%2); choose another place",
                                                        path_.filename().string(), std::strerror(errno))};
    }
    fs::path path_;
    std::unique_ptr<std::FILE, int (*)(std::FILE*)> file_;
};

std::string head_of(const TableShape& table)
{
    std::string head;
    for (const auto& column : table.columns) {
        head += (head.empty() ? "" : ",") + csv_field(column.name);
    }
    return head + kLineEnd;
}

Result<void> write_table(SQLite::Database& database, const TableShape& table, const fs::path& database_file,
                         const fs::path& folder, Unreadable unreadable, CsvWritten& written)
{
    TextFile file{folder / (table.name + ".csv")};
    if (auto head = file.write(head_of(table)); !head) {
        return head;
    }
    const TakeRow take = [&](const std::vector<exchange::Cell>& row) {
        std::string line;
        for (std::size_t column = 0; column < row.size(); ++column) {
            line += (column == 0 ? "" : ",") + exchange::csv_cell(row[column], table.columns[column]);
        }
        ++written.rows;
        return file.write(line + kLineEnd);
    };
    const auto rows = unreadable == Unreadable::IsPassedOver ? salvage_rows(database, table, take, written.lost)
                                                             : read_rows(database, table, database_file, take);
    if (!rows) {
        return rows;
    }
    ++written.tables;
    return file.finish();
}

Result<void> write_about(const fs::path& folder, int schema)
{
    TextFile about{folder / "about.csv"};
    const std::string text = std::string{"name,value\r\nform,1\r\nschema,"} + std::to_string(schema) + kLineEnd +
                             "made_by,Lathhouse" + kLineEnd;
    if (auto wrote = about.write(text); !wrote) {
        return wrote;
    }
    return about.finish();
}

Result<void> copy_photos(const fs::path& home, const fs::path& folder, CsvWritten& written, const Progress& progress)
{
    const auto photos = photo_files(home, written.left_out);
    if (!photos) {
        return photos.error();
    }
    for (const auto& photo : *photos) {
        if (!goes_on(progress, written.photos, photos->size())) {
            return Error{ErrorCode::Unwritable, said("stopped; nothing was kept of it")};
        }
        std::error_code failure;
        fs::create_directories((folder / photo).parent_path(), failure);
        if (!failure) {
            fs::copy_file(home / photo, folder / photo, failure);
        }
        if (failure) {
            return Error{ErrorCode::Unwritable, said("%1 could not be copied (%2); make room or choose another place",
                                                     photo, failure.message())};
        }
        ++written.photos;
    }
    return {};
}

} // namespace

Result<CsvWritten> export_csv(const fs::path& folder, const fs::path& target, Unreadable unreadable,
                              const Progress& progress)
{
    const auto database_file = database_of(folder);
    if (!database_file) {
        return database_file.error();
    }
    const auto whole = with_name(target);
    if (auto free = must_be_new_or_empty(whole); !free) {
        return free.error();
    }
    auto temporary = TemporaryFolder::beside(whole);
    if (!temporary) {
        return temporary.error();
    }
    const auto unnamed = temporary->path() / "tables";
    std::error_code failure;
    if (!fs::create_directory(unnamed, failure)) {
        return Error{ErrorCode::Unwritable, said("%1 cannot be made (%2)", whole.string(), failure.message())};
    }
    CsvWritten written;
    {
        auto database = open_to_read(*database_file);
        if (!database) {
            return database.error();
        }
        try {
            if (unreadable == Unreadable::EndsIt) {
                if (auto sound = quick_check(*database, *database_file); !sound) {
                    return Error{sound.error().code,
                                 said("%1 is damaged; `export csv DIR --salvage` saves what can be read", database_file->string())};
                }
            }
            SQLite::Transaction moment{*database}; // All tables as they were at one moment.
            for (const auto& table : table_shapes(*database)) {
                const auto wrote = write_table(*database, table, *database_file, unnamed, unreadable, written);
                if (!wrote) {
                    return wrote.error();
                }
            }
            if (auto about = write_about(unnamed, database->execAndGet("PRAGMA user_version").getInt()); !about) {
                return about.error();
            }
        } catch (const SQLite::Exception& thrown) {
            return error_of(thrown, *database_file);
        }
    }
    if (auto copied = copy_photos(database_file->parent_path(), unnamed, written, progress); !copied) {
        return copied.error();
    }
    if (auto flushed = flush_all_to_disk(unnamed); !flushed) {
        return flushed.error();
    }
    if (auto named = rename_unless_there(unnamed, whole); !named) {
        return named.error();
    }
    return written;
}

} // namespace lathhouse::journal
