#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/calendar/date.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace lathhouse::journal {

/// What to do with a file that has the backup's name.
enum class Existing { Refused, Replaced };

struct BackupMade {
    std::uint64_t files = 0;         ///< The database and the photos.
    std::uint64_t bytes = 0;         ///< Of the files.
    std::uint64_t archive_bytes = 0; ///< Of the backup.
    int schema = 0;
    std::vector<std::string> left_out; ///< Below `photos/`: links and the like.
    std::vector<std::string> missing;  ///< Photos that the journal names and the folder has not.
};

/// Writes a household into one zip that holds a bag (core/exchange/bag.h): the database as it was at one moment, also
/// while another program writes to it, and the files below `photos/` bit for bit. It is written beside the target under
/// another name, read back and compared, and only then gets its name; on any error nothing is left.
/// Not in it: thumbnails and the copies that steps of the schema have made.
///
/// Errors: NotFound, NotAHousehold, TooNew, Locked; Damaged where the database fails its check (`check` and
/// `export csv --salvage` help then); Unwritable (no room, no right, the file is there, told to stop), Unreadable.
Result<BackupMade> back_up(const std::filesystem::path& folder, const std::filesystem::path& archive, Existing existing,
                           calendar::Date today, const Progress& progress = {});

struct Restored {
    std::uint64_t files = 0;
    std::uint64_t bytes = 0;
    int schema = 0;
    std::string bagged_on;              ///< As the backup says.
    std::vector<std::string> oddities;  ///< Sentences about what does not hinder.
    std::vector<std::string> left_out;  ///< Files of the backup that no household has.
};

/// Makes the household of a backup in a new or an empty folder. Everything is unpacked beside it, compared with the
/// list in the backup and looked through as a database before the folder gets its name; on any error nothing is left.
/// An older household is brought up to date when it is first opened.
///
/// Errors: as exchange::Bag::open and unpack; NotAHousehold where the backup has no database of ours, TooNew, Damaged;
/// Unwritable where the folder is not empty or the disk has too little room.
Result<Restored> restore(const std::filesystem::path& archive, const std::filesystem::path& folder,
                         const Progress& progress = {});

} // namespace lathhouse::journal
