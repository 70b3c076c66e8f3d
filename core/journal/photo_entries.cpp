#include "core/journal/household_store_inside.h"
#include "core/photo/exif.h"

#include <array>
#include <string_view>

namespace lathhouse::journal {
namespace {

/// Where an entry's row says what was done: its photo, its plant, whether it was yes or no, and when.
struct PhotoEntry {
    std::string_view kind;
    const char* row;
    home::PhotoChangeKind yes;
    home::PhotoChangeKind no;
};
constexpr std::array<PhotoEntry, 5> kPhotoEntries{
    {{"photo", "SELECT id, NULL, 1, entered_at FROM photos WHERE id = ?", home::PhotoChangeKind::Added,
      home::PhotoChangeKind::Added},
     {"photo_date", "SELECT photo_id, NULL, 1, entered_at FROM photo_dates WHERE id = ?", home::PhotoChangeKind::Dated,
      home::PhotoChangeKind::Dated},
     {"photo_plant", "SELECT photo_id, plant_id, shows, entered_at FROM photo_plants WHERE id = ?",
      home::PhotoChangeKind::Assigned, home::PhotoChangeKind::TakenOff},
     {"photo_withdrawal", "SELECT photo_id, NULL, withdrawn, entered_at FROM photo_withdrawals WHERE id = ?",
      home::PhotoChangeKind::Withdrawn, home::PhotoChangeKind::BroughtBack},
     {"plant_picture", "SELECT photo_id, plant_id, photo_id IS NOT NULL, entered_at FROM plant_pictures WHERE id = ?",
      home::PhotoChangeKind::Chosen, home::PhotoChangeKind::DrawingChosen}}};

} // namespace

Result<home::PhotoChange> photo_change_of(SQLite::Database& database, const std::filesystem::path& file,
                                          const std::string& kind, int id)
{
    const Error unreadable{
        ErrorCode::Damaged,
        said("%1 is damaged (an entry of kind \"%2\" cannot be read); restore a backup", file.string(), kind)};
    for (const auto& entry : kPhotoEntries) {
        if (entry.kind != kind) {
            continue;
        }
        SQLite::Statement row{database, entry.row};
        row.bind(1, id);
        if (!row.executeStep()) {
            return unreadable;
        }
        const auto entered = read_instant(row.getColumn(3).getString());
        if (!entered) {
            return unreadable;
        }
        home::PhotoChange change{.kind = row.getColumn(2).getInt() != 0 ? entry.yes : entry.no,
                                 .photos = {},
                                 .plant = id_in(row.getColumn(1)),
                                 .name = {},
                                 .taken = calendar::utc_date(*entered),
                                 .entered = *entered};
        if (!row.getColumn(0).isNull()) {
            change.photos.push_back(row.getColumn(0).getInt());
            SQLite::Statement photo{database, "SELECT original_name, taken_at FROM photos WHERE id = ?"};
            photo.bind(1, change.photos.front());
            if (!photo.executeStep()) {
                return unreadable;
            }
            change.name = photo.getColumn(0).getString();
            const auto taken = photo::parse_local_time(photo.getColumn(1).getString());
            if (!taken) {
                return unreadable;
            }
            change.taken = calendar::utc_date(calendar::Instant{taken->time_since_epoch()});
        }
        return change;
    }
    return Error{ErrorCode::Damaged,
                 said("%1 is damaged (an entry of no known kind, \"%2\"); restore a backup", file.string(), kind)};
}

} // namespace lathhouse::journal
