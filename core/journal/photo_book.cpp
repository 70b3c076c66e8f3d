#include "core/journal/photo_book.h"

#include "core/base/csv.h"
#include "core/journal/household_store_inside.h"
#include "core/journal/row_reading.h"
#include "core/photo/exif.h"
#include "core/photo/thumbnail.h"

#include <algorithm>
#include <functional>
#include <unordered_map>

namespace lathhouse::journal {
namespace {

/// Stands for no offset while a row is bound: GCC 12 sees an optional as uninitialised there.
constexpr int kNoOffset = 9999;

std::filesystem::path below(const std::filesystem::path& folder, const std::string& sha256, const std::string& ending)
{
    return folder / sha256.substr(0, 2) / (sha256 + "." + ending);
}

/// Whatever bytes a file's name has, the table holds text.
std::string utf8_only(const std::string& name)
{
    std::string text;
    for (std::size_t i = 0; i < name.size();) {
        const auto lead = static_cast<unsigned char>(name[i]);
        const std::size_t length = lead < 0x80 ? 1 : lead >> 5 == 6 ? 2 : lead >> 4 == 14 ? 3 : lead >> 3 == 30 ? 4 : 0;
        bool sound = length > 0 && i + length <= name.size() && lead != 0;
        for (std::size_t k = 1; sound && k < length; ++k) {
            sound = (static_cast<unsigned char>(name[i + k]) & 0xC0) == 0x80;
        }
        text += sound ? name.substr(i, length) : "?";
        i += sound ? length : 1;
    }
    return text;
}

Error unknown_photo(home::PhotoId id)
{
    return {ErrorCode::NotFound, said("there is no photo %1; `lathhouse list photos` shows them", id)};
}

/// What has just been added is the latest of all entries.
void enter(SQLite::Database& database, const std::string& kind, int row)
{
    SQLite::Statement insert{database, "INSERT INTO entries (kind, row_id) VALUES (?, ?)"};
    (Row{insert} << kind << row).insert();
}

/// One row of a table of the photo's history, which is an entry of that kind. Errors: NotFound where a rule of the
/// tables says so.
Result<void> append_row(SQLite::Database& database, const std::filesystem::path& file, home::PhotoId photo,
                        const char* kind, const char* sql, const std::function<void(Row&)>& bind)
{
    try {
        SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement known{database, "SELECT 1 FROM photos WHERE id = ?"};
        known.bind(1, photo);
        if (!known.executeStep()) {
            return unknown_photo(photo);
        }
        SQLite::Statement statement{database, sql};
        Row row{statement};
        bind(row);
        row.insert();
        enter(database, kind, static_cast<int>(database.getLastInsertRowid()));
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return breaks_a_rule(thrown)
                   ? Error{ErrorCode::NotFound, said("there is no such plant; `lathhouse list plants` shows them")}
                   : error_of(thrown, file);
    }
}

} // namespace

const char* const kPhotoColumns = "SELECT id, sha256, extension, size_bytes, width_px, height_px, taken_at, "
                                  "zone_offset_minutes, taken_from, original_name, latitude_degrees, "
                                  "longitude_degrees, entered_at FROM photos_that_count ";

Result<home::Photo> photo_in(SQLite::Statement& row, const std::filesystem::path& file)
{
    const auto taken = photo::parse_local_time(row.getColumn(6).getString());
    const auto from = home::taken_from_of(row.getColumn(8).getString());
    const auto entered = read_instant(row.getColumn(12).getString());
    if (!taken || !from || !entered) {
        return Error{ErrorCode::Damaged, said("%1 is damaged (photo %2 cannot be read); restore a backup",
                                              file.string(), row.getColumn(0).getString())};
    }
    std::optional<Position> position;
    if (!row.getColumn(10).isNull()) {
        const auto latitude = Latitude::from_degrees(row.getColumn(10).getDouble());
        const auto longitude = Longitude::from_degrees(row.getColumn(11).getDouble());
        if (latitude && longitude) {
            position = Position{*latitude, *longitude};
        }
    }
    const auto offset = row.getColumn(7);
    return home::Photo{.id = row.getColumn(0).getInt(),
                       .sha256 = row.getColumn(1).getString(),
                       .extension = row.getColumn(2).getString(),
                       .bytes = row.getColumn(3).getInt64(),
                       .width = row.getColumn(4).getInt(),
                       .height = row.getColumn(5).getInt(),
                       .taken = *taken,
                       .zone_offset = offset.isNull() ? std::nullopt
                                                      : std::optional{std::chrono::minutes{offset.getInt()}},
                       .taken_from = *from,
                       .original_name = row.getColumn(9).getString(),
                       .position = position,
                       .entered = *entered};
}

namespace {

/// As kPhotoColumns, of those that are out of the lists. What was undone does not count.
const char* const kWithdrawnPhotos =
    "SELECT p.id, sha256, extension, size_bytes, width_px, height_px, coalesce(d.taken_at, p.taken_at) AS taken_at, "
    "iif(d.id IS NULL, zone_offset_minutes, NULL), iif(d.id IS NULL, taken_from, 'given'), original_name, "
    "latitude_degrees, longitude_degrees, p.entered_at "
    "FROM photos p LEFT JOIN photo_dates d ON d.id = (SELECT max(id) FROM photo_dates WHERE photo_id = p.id AND NOT coalesce("
    "(SELECT undone FROM photo_date_undos u WHERE photo_date_id = photo_dates.id ORDER BY u.id DESC LIMIT 1), 0)) "
    "WHERE NOT coalesce((SELECT undone FROM photo_undos u WHERE u.photo_id = p.id ORDER BY u.id DESC LIMIT 1), 0) "
    "AND p.id NOT IN (SELECT id FROM photos_that_count) ORDER BY 7, p.id";

/// The rows of a query, each with the plants that it shows. Errors: Damaged.
Result<std::vector<home::Photo>> photos_of(SQLite::Statement& rows, SQLite::Statement& shown, const std::filesystem::path& file)
{
    std::vector<home::Photo> photos;
    std::unordered_map<home::PhotoId, std::size_t> place;
    while (rows.executeStep()) {
        auto photo = photo_in(rows, file);
        if (!photo) {
            return photo.error();
        }
        place.emplace(photo->id, photos.size());
        photos.push_back(*std::move(photo));
    }
    while (shown.executeStep()) {
        if (const auto found = place.find(shown.getColumn(0).getInt()); found != place.end()) {
            photos[found->second].plants.push_back(shown.getColumn(1).getInt());
        }
    }
    return photos;
}

const char* const kPlantsShown = "SELECT photo_id, plant_id FROM photo_plants_that_count ORDER BY plant_id";

} // namespace

Result<std::vector<home::Photo>> PhotoBook::photos(std::optional<home::PlantId> plant) const
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Transaction together{inside.database}; // Both tables as they were at one moment.
        std::string query{kPhotoColumns};
        if (plant) {
            query.append("WHERE id IN (SELECT photo_id FROM photo_plants_that_count WHERE plant_id = ?) ");
        }
        query.append("ORDER BY taken_at, id");
        SQLite::Statement rows{inside.database, query};
        SQLite::Statement shown{inside.database,
                                plant ? "SELECT photo_id, plant_id FROM photo_plants_that_count WHERE photo_id IN "
                                        "(SELECT photo_id FROM photo_plants WHERE plant_id = ?) ORDER BY plant_id"
                                      : kPlantsShown};
        if (plant) {
            rows.bind(1, *plant);
            shown.bind(1, *plant);
        }
        return photos_of(rows, shown, inside.file);
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

Result<std::vector<home::Photo>> PhotoBook::withdrawn() const
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Transaction together{inside.database};
        SQLite::Statement rows{inside.database, kWithdrawnPhotos};
        SQLite::Statement shown{inside.database, kPlantsShown};
        return photos_of(rows, shown, inside.file);
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

Result<home::Photo> PhotoBook::photo(home::PhotoId id) const
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Transaction together{inside.database};
        std::string query{kPhotoColumns};
        query.append("WHERE id = ?");
        SQLite::Statement row{inside.database, query};
        row.bind(1, id);
        if (!row.executeStep()) {
            return unknown_photo(id);
        }
        auto photo = photo_in(row, inside.file);
        SQLite::Statement shown{inside.database,
                                "SELECT plant_id FROM photo_plants_that_count WHERE photo_id = ? ORDER BY plant_id"};
        shown.bind(1, id);
        while (photo && shown.executeStep()) {
            photo->plants.push_back(shown.getColumn(0).getInt());
        }
        return photo;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

Result<std::vector<PhotoBook::Kept>> PhotoBook::keep(std::span<const home::Photo> photos)
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Transaction transaction{inside.database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement known{inside.database, "SELECT id FROM photos WHERE sha256 = ?"};
        SQLite::Statement insert{inside.database,
                                 "INSERT INTO photos (sha256, extension, size_bytes, width_px, height_px, taken_at, "
                                 "zone_offset_minutes, taken_from, original_name, latitude_degrees, "
                                 "longitude_degrees, entered_at) "
                                 "VALUES (?, ?, ?, ?, ?, ?, nullif(?, " + std::to_string(kNoOffset) +
                                     "), ?, ?, ?, ?, ?)"};
        SQLite::Statement back{inside.database,
                               "INSERT INTO photo_withdrawals (photo_id, withdrawn, entered_at) SELECT ?1, 0, ?2 "
                               "WHERE ?1 NOT IN (SELECT id FROM photos_that_count)"};
        // One whose coming was undone comes in anew, which is an entry of its own.
        SQLite::Statement undone{inside.database,
                                 "INSERT INTO photo_undos (photo_id, undone, entered_at) SELECT ?1, 0, ?2 WHERE coalesce("
                                 "(SELECT undone FROM photo_undos WHERE photo_id = ?1 ORDER BY id DESC LIMIT 1), 0)"};
        const auto added = [](SQLite::Statement& statement) { return statement.exec() > 0; };
        const auto last = [&] { return static_cast<int>(inside.database.getLastInsertRowid()); };
        SQLite::Statement shows{inside.database,
                                "INSERT INTO photo_plants (photo_id, plant_id, shows, entered_at) SELECT ?1, ?2, 1, ?3 "
                                "WHERE NOT EXISTS (SELECT 1 FROM photo_plants_that_count "
                                "WHERE photo_id = ?1 AND plant_id = ?2)"};
        std::vector<Kept> kept;
        for (const auto& photo : photos) {
            known.reset();
            known.bind(1, photo.sha256);
            Kept one{0, known.executeStep()};
            const auto entered = calendar::to_text(photo.entered);
            if (one.was_known) {
                one.id = known.getColumn(0).getInt();
                Row{undone} << one.id << entered;
                if (added(undone)) {
                    enter(inside.database, "photo", one.id);
                }
                Row{back} << one.id << entered;
                if (added(back)) {
                    enter(inside.database, "photo_withdrawal", last());
                }
            } else {
                const int offset = photo.zone_offset ? static_cast<int>(photo.zone_offset->count()) : kNoOffset;
                const auto degrees = [&](auto part) {
                    return photo.position ? std::optional<double>{part(*photo.position)} : std::nullopt;
                };
                // Far below the two thousand million that fit: files of more than 256 MB are not taken.
                (Row{insert} << photo.sha256 << photo.extension << static_cast<int>(photo.bytes) << photo.width
                             << photo.height << photo::to_text(photo.taken) << offset
                             << std::string{home::to_string(photo.taken_from)} << utf8_only(photo.original_name)
                             << degrees([](const Position& at) { return at.latitude.degrees(); })
                             << degrees([](const Position& at) { return at.longitude.degrees(); }) << entered)
                    .insert();
                one.id = last();
                enter(inside.database, "photo", one.id);
            }
            for (const auto plant : photo.plants) {
                Row{shows} << one.id << plant << entered;
                if (added(shows) && one.was_known) { // What a new photo shows goes with it.
                    enter(inside.database, "photo_plant", last());
                }
            }
            kept.push_back(one);
        }
        transaction.commit();
        return kept;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::NotFound, said("no photo was added to %1 (%2); the plants must be of the household",
                                                   inside.file.string(), thrown.what())};
        }
        return error_of(thrown, inside.file);
    }
}

Result<void> PhotoBook::assign(home::PhotoId photo, home::PlantId plant, Shows shows, calendar::Instant now)
{
    return append_row(store_->inside_->database, store_->inside_->file, photo, "photo_plant",
                      "INSERT INTO photo_plants (photo_id, plant_id, shows, entered_at) VALUES (?, ?, ?, ?)",
                      [&](Row& row) { row << photo << plant << int{shows == Shows::Yes} << calendar::to_text(now); });
}

Result<void> PhotoBook::date(home::PhotoId photo, std::chrono::local_seconds taken, calendar::Instant now)
{
    return append_row(store_->inside_->database, store_->inside_->file, photo, "photo_date",
                      "INSERT INTO photo_dates (photo_id, taken_at, entered_at) VALUES (?, ?, ?)",
                      [&](Row& row) { row << photo << photo::to_text(taken) << calendar::to_text(now); });
}

Result<void> PhotoBook::withdraw(home::PhotoId photo, Withdrawn withdrawn, calendar::Instant now)
{
    return append_row(store_->inside_->database, store_->inside_->file, photo, "photo_withdrawal",
                      "INSERT INTO photo_withdrawals (photo_id, withdrawn, entered_at) VALUES (?, ?, ?)",
                      [&](Row& row) { row << photo << int{withdrawn == Withdrawn::Yes} << calendar::to_text(now); });
}

Result<void> PhotoBook::turn_added(std::span<const home::PhotoId> photos, HouseholdStore::Direction direction,
                                   calendar::Instant now)
{
    auto& inside = *store_->inside_;
    const int undo = direction == HouseholdStore::Direction::Undo ? 1 : 0;
    try {
        SQLite::Transaction transaction{inside.database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement turn{inside.database,
                               "INSERT INTO photo_undos (photo_id, undone, entered_at) SELECT id, ?2, ?3 FROM photos "
                               "WHERE id = ?1 AND ?2 <> coalesce((SELECT undone FROM photo_undos WHERE photo_id = ?1 "
                               "ORDER BY id DESC LIMIT 1), 0)"};
        SQLite::Statement known{inside.database, "SELECT 1 FROM photos WHERE id = ?"};
        std::vector<home::PhotoId> turned{photos.begin(), photos.end()};
        if (undo != 0) { // From the last to the first, so that a redo meets the first of them.
            std::ranges::reverse(turned);
        }
        for (const auto photo : turned) {
            known.reset();
            known.bind(1, photo);
            if (!known.executeStep()) {
                return unknown_photo(photo);
            }
            (Row{turn} << photo << undo << calendar::to_text(now)).insert();
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

Result<std::map<home::PlantId, home::PhotoId>> PhotoBook::pictures() const
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Statement rows{inside.database, "SELECT plant_id, photo_id FROM plant_pictures_that_count"};
        std::map<home::PlantId, home::PhotoId> pictures;
        while (rows.executeStep()) {
            pictures.emplace(rows.getColumn(0).getInt(), rows.getColumn(1).getInt());
        }
        return pictures;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

Result<void> PhotoBook::choose_picture(home::PlantId plant, std::optional<home::PhotoId> photo, calendar::Instant now)
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Transaction transaction{inside.database, SQLite::TransactionBehavior::IMMEDIATE};
        if (photo) {
            SQLite::Statement shown{inside.database, "SELECT 1 FROM photo_plants_that_count WHERE photo_id = ? AND plant_id "
                                                     "= ? AND photo_id IN (SELECT id FROM photos_that_count)"};
            shown.bind(1, *photo);
            shown.bind(2, plant);
            if (!shown.executeStep()) {
                return Error{ErrorCode::NotFound,
                             said("photo %1 does not show that plant; assign it to the plant first", *photo)};
            }
        }
        SQLite::Statement insert{inside.database,
                                 "INSERT INTO plant_pictures (plant_id, photo_id, entered_at) VALUES (?, ?, ?)"};
        (Row{insert} << plant << photo << calendar::to_text(now)).insert();
        enter(inside.database, "plant_picture", static_cast<int>(inside.database.getLastInsertRowid()));
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return breaks_a_rule(thrown)
                   ? Error{ErrorCode::NotFound, said("there is no such plant; `lathhouse list plants` shows them")}
                   : error_of(thrown, inside.file);
    }
}

Result<std::optional<home::PlantId>> PhotoBook::last_plant() const
{
    auto& inside = *store_->inside_;
    try {
        SQLite::Statement row{inside.database, "SELECT plant_id FROM photo_plants WHERE shows = 1 "
                                               "AND NOT coalesce((SELECT undone FROM photo_plant_undos u WHERE "
                                               "photo_plant_id = photo_plants.id ORDER BY u.id DESC LIMIT 1), 0) "
                                               "AND plant_id NOT IN (SELECT plant_id FROM gone_plants) "
                                               "ORDER BY id DESC LIMIT 1"};
        return row.executeStep() ? id_in(row.getColumn(0)) : std::optional<home::PlantId>{};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside.file);
    }
}

std::filesystem::path PhotoBook::file_of(const home::Photo& photo) const
{
    return below(folder() / "photos", photo.sha256, photo.extension);
}

std::filesystem::path PhotoBook::thumbnail_of(const home::Photo& photo) const
{
    return below(folder() / "thumbnails", photo.sha256, "jpg");
}

Result<std::filesystem::path> PhotoBook::thumbnail(const home::Photo& photo) const
{
    const auto file = thumbnail_of(photo);
    std::error_code failure;
    if (std::filesystem::is_regular_file(file, failure)) {
        return file;
    }
    const auto bytes = photo::read_bytes(file_of(photo));
    if (!bytes) {
        return bytes.error();
    }
    const auto small = photo::thumbnail_of(*bytes, photo.original_name);
    if (!small) {
        return small.error();
    }
    std::filesystem::create_directories(file.parent_path(), failure);
    const auto written =
        write_file_whole(file, {reinterpret_cast<const char*>(small->jpeg.data()), small->jpeg.size()});
    if (!written) {
        return written.error();
    }
    return file;
}

} // namespace lathhouse::journal
