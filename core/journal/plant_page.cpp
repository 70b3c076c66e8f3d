#include "core/journal/plant_page.h"

#include "core/journal/reading.h"
#include "core/journal/row_reading.h"
#include "core/photo/exif.h"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <iterator>
#include <span>
#include <string>
#include <tuple>
#include <utility>

namespace lathhouse::journal {

namespace {

class PlantPageReader {
public:
    PlantPageReader(ReadDatabase& household, home::PlantId plant)
        : database_(household.database), file_(household.file), plant_(plant)
    {
    }

    std::vector<MeasuredKind> kinds()
    {
        // As measurements_that_count has it, but those that are undone are gathered once, and not asked for row by row.
        SQLite::Statement rows{database_, "SELECT kind, count(*) FROM measurements WHERE plant_id = ? AND id NOT IN ("
                                          "SELECT measurement_id FROM measurement_undos u WHERE undone = 1 AND NOT EXISTS ("
                                          "SELECT 1 FROM measurement_undos v WHERE v.measurement_id = u.measurement_id AND "
                                          "v.id > u.id)) GROUP BY kind"};
        rows.bind(1, plant_);
        std::vector<MeasuredKind> kinds;
        while (rows.executeStep()) {
            if (const auto kind = home::measurement_kind_of(rows.getColumn(0).getString())) {
                kinds.push_back({*kind, rows.getColumn(1).getInt()});
            }
        }
        std::ranges::sort(kinds, {}, [](const MeasuredKind& of) { return std::pair{-of.count, of.kind}; });
        return kinds;
    }

    Result<std::vector<home::Measurement>> series(home::MeasurementKind kind)
    {
        SQLite::Statement rows{database_, std::string{kMeasurementColumns} + kOfKind +
                                              "ORDER BY measured_on, coalesce(measured_time, '12:00'), id"};
        std::vector<home::Measurement> series;
        const auto read = append(rows, kind, series);
        return read ? Result<std::vector<home::Measurement>>{std::move(series)} : read.error();
    }

    /// The index goes by kind, so the newest of each kind are asked for: a few rows, whatever the plant's past.
    Result<std::vector<home::Measurement>> newest(std::span<const MeasuredKind> kinds, std::size_t most)
    {
        SQLite::Statement rows{database_, std::string{kMeasurementColumns} + kOfKind +
                                              "ORDER BY measured_on DESC, coalesce(measured_time, '12:00') DESC, id DESC "
                                              "LIMIT ?3"};
        std::vector<home::Measurement> newest;
        for (const auto& of : kinds) {
            rows.reset();
            rows.bind(3, static_cast<std::int64_t>(most));
            if (const auto read = append(rows, of.kind, newest); !read) {
                return read.error();
            }
        }
        std::ranges::sort(newest, std::greater{}, [](const home::Measurement& of) {
            return std::tuple{of.measured, of.time.value_or(std::chrono::hours{12}), of.id};
        });
        newest.erase(std::next(newest.begin(), static_cast<std::ptrdiff_t>(std::min(most, newest.size()))), newest.end());
        return newest;
    }

    Result<home::PhotoSpread> photos(std::size_t most)
    {
        SQLite::Statement rows{database_, "SELECT id, taken_at FROM photos_that_count WHERE id IN (SELECT photo_id FROM "
                                          "photo_plants_that_count WHERE plant_id = ?) ORDER BY taken_at, id"};
        rows.bind(1, plant_);
        std::vector<home::PhotoId> ids;
        home::PhotoSpread spread;
        while (rows.executeStep()) {
            if (ids.empty()) {
                const auto taken = photo::parse_local_time(rows.getColumn(1).getString());
                if (!taken) {
                    return unreadable_photo(rows.getColumn(0).getInt());
                }
                spread.oldest = calendar::utc_date(calendar::Instant{taken->time_since_epoch()});
            }
            ids.push_back(rows.getColumn(0).getInt());
        }
        spread.count = ids.size();
        SQLite::Statement one{database_, std::string{kPhotoColumns} + "WHERE id = ?"};
        SQLite::Statement shown{database_, "SELECT plant_id FROM photo_plants_that_count WHERE photo_id = ? ORDER BY plant_id"};
        for (const auto place : home::spread_places(ids.size(), most)) {
            one.reset();
            one.bind(1, ids[place]);
            if (!one.executeStep()) {
                return unreadable_photo(ids[place]);
            }
            auto photo = photo_in(one, file_);
            if (!photo) {
                return photo.error();
            }
            shown.reset();
            shown.bind(1, ids[place]);
            while (shown.executeStep()) {
                photo->plants.push_back(shown.getColumn(0).getInt());
            }
            spread.photos.push_back(std::move(*photo));
        }
        return spread;
    }

private:
    static constexpr const char* kOfKind = "FROM measurements_that_count WHERE plant_id = ?1 AND kind = ?2 ";

    Result<void> append(SQLite::Statement& rows, home::MeasurementKind kind, std::vector<home::Measurement>& list)
    {
        rows.bind(1, plant_);
        rows.bind(2, std::string{home::to_string(kind)});
        while (rows.executeStep()) {
            auto measurement = measurement_in(rows, file_);
            if (!measurement) {
                return measurement.error();
            }
            list.push_back(std::move(*measurement));
        }
        return {};
    }

    Error unreadable_photo(home::PhotoId id) const
    {
        return {ErrorCode::Damaged,
                said("%1 is damaged (photo %2 cannot be read); restore a backup", file_.string(), id)};
    }

    SQLite::Database& database_;
    const std::filesystem::path& file_;
    home::PlantId plant_;
};

} // namespace

std::optional<home::MeasurementKind> shown_kind(const std::vector<MeasuredKind>& kinds,
                                                std::optional<home::MeasurementKind> asked)
{
    if (kinds.empty()) {
        return std::nullopt;
    }
    return asked && std::ranges::find(kinds, *asked, &MeasuredKind::kind) != kinds.end() ? *asked : kinds.front().kind;
}

Result<PlantPage> read_plant_page(const std::filesystem::path& folder, home::PlantId plant, const PlantAsked& asked)
{
    auto household = open_folder_to_read(folder);
    if (!household) {
        return household.error();
    }
    try {
        SQLite::Transaction one_moment{household->database};
        PlantPageReader reader{*household, plant};
        PlantPage page{.kinds = reader.kinds(), .series = {}, .newest = {}, .photos = {}};
        if (const auto kind = shown_kind(page.kinds, asked.kind)) {
            auto series = reader.series(*kind);
            if (!series) {
                return series.error();
            }
            page.series = std::move(*series);
        }
        auto newest = reader.newest(page.kinds, asked.newest);
        if (!newest) {
            return newest.error();
        }
        page.newest = std::move(*newest);
        auto photos = reader.photos(asked.photos);
        if (!photos) {
            return photos.error();
        }
        page.photos = std::move(*photos);
        return page;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, household->file);
    }
}

} // namespace lathhouse::journal
