#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace lathhouse::journal {

/// What a damaged database did not give.
struct LostRows {
    std::string table;
    std::string from; ///< The last row before the gap as its id; empty where the gap begins the table.
    std::string to;   ///< The first row after it; empty where it ends the table.
    /// How many rows the gap can have held at most; 0 where that is not known.
    std::uint64_t at_most = 0;
};

struct CsvWritten {
    int tables = 0;
    std::uint64_t rows = 0;
    std::uint64_t photos = 0;
    std::vector<std::string> left_out; ///< Files below `photos/` that were not copied.
    std::vector<LostRows> lost;        ///< Only where it was asked to save what can be read.
};

/// Whether a row that cannot be read ends the export, or is passed over and told of.
enum class Unreadable { EndsIt, IsPassedOver };

/// Writes every table of the household as a comma-separated file (cells as core/exchange/csv_cell.h says; a head line;
/// lines ended by CR LF; RFC 4180), `about.csv` with the schema, and the files below `photos/`, all as they were at one
/// moment. The folder must be new or empty and appears once it is whole.
/// Errors: NotFound, NotAHousehold, TooNew, Damaged, Locked; Unreadable; Unwritable (no room, no right, told to stop).
Result<CsvWritten> export_csv(const std::filesystem::path& folder, const std::filesystem::path& target,
                              Unreadable unreadable = Unreadable::EndsIt, const Progress& progress = {});

/// Whether rows that name others that are not there end the import, or are left out.
enum class Broken { EndsIt, IsLeftOut };

struct CsvRead {
    int tables = 0;
    std::uint64_t rows = 0;
    std::uint64_t photos = 0;
    std::vector<std::string> broken;         ///< Rows that were left out: "events, row 7".
    std::vector<std::string> missing_photos; ///< The journal names them and the folder had none.
    std::vector<std::string> unknown;        ///< Files that no table has.
};

/// Makes a household in a new or an empty folder of what `export_csv` wrote, by this or an older version; tables may
/// have been edited. It appears once it is whole and was opened for a trial.
/// Errors: NotFound; Malformed with file and line (a table that is missing, a column that is missing or unknown, a cell
/// or row that breaks the rules of its table, a row that names another that is not there); TooNew; Damaged for a photo
/// that is not what its name says; Unwritable.
Result<CsvRead> import_csv(const std::filesystem::path& source, const std::filesystem::path& folder,
                           Broken broken = Broken::EndsIt, const Progress& progress = {});

} // namespace lathhouse::journal
