#include "core/journal/household_check.h"

#include "core/base/sha256.h"
#include "core/base/temporary_folder.h"
#include "core/journal/migrations.h"
#include "core/journal/reading.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <memory>
#include <optional>
#include <set>
#include <system_error>
#include <utility>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr int kMostFindings = 100; // Of one look at the database; a broken file has thousands.

void look_at_form(SQLite::Database& database, CheckReport& report)
{
    SQLite::Statement rows{database, "PRAGMA integrity_check(" + std::to_string(kMostFindings) + ")"};
    while (rows.executeStep()) {
        auto found = rows.getColumn(0).getString();
        if (found != "ok") {
            std::ranges::replace(found, '\n', ' ');
            report.findings.push_back({FindingKind::DatabaseDamaged, kDatabaseName, Said{found}});
        }
    }
}

void look_at_references(SQLite::Database& database, CheckReport& report)
{
    SQLite::Statement rows{database, "PRAGMA foreign_key_check"};
    for (int found = 0; found < kMostFindings && rows.executeStep(); ++found) {
        const auto row = rows.getColumn(1).isNull() ? std::string{"a row"} : "row " + rows.getColumn(1).getString();
        report.findings.push_back({FindingKind::BrokenReference, rows.getColumn(0).getString() + ", " + row,
                                   said("names a row of %1 that is not there", rows.getColumn(2).getString())});
    }
}

/// Measurements name their photo by its digest, which no foreign key looks after.
void look_at_measured_photos(SQLite::Database& database, CheckReport& report)
{
    constexpr int kFirstWithPhotos = 11;
    if (report.schema < kFirstWithPhotos) {
        return;
    }
    SQLite::Statement rows{database, "SELECT id, photo_sha256, kind, measured_on FROM measurements_that_count WHERE "
                                     "photo_sha256 IS NOT NULL AND photo_sha256 NOT IN (SELECT sha256 FROM photos) "
                                     "ORDER BY id"};
    for (int found = 0; found < kMostFindings && rows.executeStep(); ++found) {
        report.findings.push_back({FindingKind::MeasuredPhotoUnknown, "measurements, row " + rows.getColumn(0).getString(),
                                   said("%1 of %2 was measured in the photo %3", rows.getColumn(2).getString(),
                                        rows.getColumn(3).getString(), rows.getColumn(1).getString())});
    }
}

/// nullopt where the database cannot be read at all.
std::optional<std::vector<ListedPhoto>> look_at_database(const fs::path& file, CheckReport& report, bool& knows_photos)
{
    auto database = open_to_read(file);
    if (!database) {
        report.findings.push_back({FindingKind::DatabaseDamaged, kDatabaseName, Said{database.error()}});
        return std::nullopt;
    }
    const auto damaged = [&](const SQLite::Exception& thrown) {
        report.findings.push_back({FindingKind::DatabaseDamaged, kDatabaseName, Said{thrown.what()}});
    };
    try {
        report.schema = database->execAndGet("PRAGMA user_version").getInt();
        report.steps_due = report.schema < known_migrations().back().version;
        look_at_form(*database, report);
    } catch (const SQLite::Exception& thrown) {
        damaged(thrown);
    }
    try {
        look_at_references(*database, report);
        look_at_measured_photos(*database, report);
    } catch (const SQLite::Exception& thrown) {
        damaged(thrown);
    }
    try {
        knows_photos = has_photos_table(*database);
        return listed_photos(*database);
    } catch (const SQLite::Exception& thrown) {
        damaged(thrown);
        return std::nullopt;
    }
}

/// The digest that a photo's name says; empty where it is named in another way.
std::string digest_in(const std::string& path)
{
    constexpr std::size_t kDigits = 64;
    const fs::path photo{path};
    const auto stem = photo.stem().string();
    const bool ours = stem.size() == kDigits && stem.find_first_not_of("0123456789abcdef") == std::string::npos &&
                      photo.has_extension() && path.starts_with("photos/" + stem.substr(0, 2) + "/" + stem);
    return ours ? stem : std::string{};
}

/// nullopt where told to stop.
std::optional<Result<std::string>> digest_of(const fs::path& file, std::uint64_t& done, std::uint64_t whole,
                                             const Progress& progress)
{
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> input{std::fopen(file.c_str(), "rb"), &std::fclose};
    if (!input) {
        return Result<std::string>{Error{ErrorCode::Unreadable, said("it cannot be read")}};
    }
    Sha256 digest;
    std::vector<char> piece(std::size_t{1} << 20);
    while (const std::size_t length = std::fread(piece.data(), 1, piece.size(), input.get())) {
        digest.update({piece.data(), length});
        done += length;
        if (!goes_on(progress, done, whole)) {
            return std::nullopt;
        }
    }
    if (std::ferror(input.get()) != 0) {
        return Result<std::string>{Error{ErrorCode::Unreadable, said("it cannot be read to its end")}};
    }
    return Result<std::string>{digest.hex()};
}

void look_at_folder(const fs::path& folder, CheckReport& report)
{
    constexpr std::array kOurs{"household.sqlite3", "household.sqlite3-wal", "household.sqlite3-shm",
                               "household.sqlite3-journal", "photos", "thumbnails", "backups"};
    std::error_code failure;
    for (fs::directory_iterator entry{folder, failure}, end; !failure && entry != end; entry.increment(failure)) {
        const auto name = entry->path().filename().string();
        if (is_temporary_name(entry->path())) {
            report.findings.push_back({FindingKind::LeftOver, name, {}});
        } else if (std::ranges::find(kOurs, name) == kOurs.end()) {
            report.findings.push_back({FindingKind::FileUnknown, name, {}});
        }
    }
    for (const char* below : {"photos", "backups"}) {
        for (fs::recursive_directory_iterator entry{folder / below, failure}, end; !failure && entry != end;
             entry.increment(failure)) {
            std::error_code ignored;
            if (is_temporary_name(entry->path()) && entry->is_regular_file(ignored)) {
                report.findings.push_back(
                    {FindingKind::LeftOver, entry->path().lexically_relative(folder).generic_string(), {}});
            }
        }
        failure.clear();
    }
}

} // namespace

std::string_view to_string(FindingKind kind)
{
    switch (kind) {
    case FindingKind::DatabaseDamaged:
        return "database_damaged";
    case FindingKind::BrokenReference:
        return "broken_reference";
    case FindingKind::PhotoMissing:
        return "photo_missing";
    case FindingKind::PhotoAltered:
        return "photo_altered";
    case FindingKind::PhotoUnreadable:
        return "photo_unreadable";
    case FindingKind::PhotoUnknown:
        return "photo_unknown";
    case FindingKind::MeasuredPhotoUnknown:
        return "measured_photo_unknown";
    case FindingKind::FileUnknown:
        return "file_unknown";
    case FindingKind::LeftOver:
        return "left_over";
    }
    return "";
}

bool is_fault(FindingKind kind)
{
    return kind != FindingKind::PhotoUnknown && kind != FindingKind::FileUnknown && kind != FindingKind::LeftOver;
}

bool CheckReport::sound() const
{
    return std::ranges::none_of(findings, [](const Finding& finding) { return is_fault(finding.kind); });
}

Result<CheckReport> check_household(const fs::path& folder, const Progress& progress)
{
    const auto file = database_of(folder);
    if (!file) {
        return file.error();
    }
    const auto home = file->parent_path();
    const auto header = check_header(*file, known_migrations().back().version);
    if (!header && header.error().code != ErrorCode::Damaged) {
        return header.error(); // Another program's, or a newer version's: not ours to judge.
    }
    CheckReport report;
    bool knows_photos = false;
    const auto listed = look_at_database(*file, report, knows_photos);
    std::vector<std::string> odd;
    const auto photos = photo_files(home, odd);
    if (!photos) {
        return photos.error();
    }
    for (const auto& path : odd) {
        report.findings.push_back(
            {FindingKind::FileUnknown, path, said("it is a link or has a name that no archive takes")});
    }
    std::set<std::string> known;
    if (listed) {
        for (const auto& photo : *listed) {
            known.insert(photo.path);
            if (!std::ranges::binary_search(*photos, photo.path)) {
                report.findings.push_back({FindingKind::PhotoMissing, photo.path, {}});
            }
        }
    }
    std::error_code failure;
    std::uint64_t whole = 0;
    for (const auto& photo : *photos) {
        const auto bytes = fs::file_size(home / photo, failure);
        whole += failure ? 0 : bytes;
    }
    for (const auto& photo : *photos) {
        const auto named = digest_in(photo);
        if (named.empty()) {
            report.findings.push_back(
                {FindingKind::FileUnknown, photo, said("it is not named as a photo of a household")});
            continue;
        }
        const auto digest = digest_of(home / photo, report.photo_bytes, whole, progress);
        if (!digest) {
            return Error{ErrorCode::Unavailable, said("stopped; nothing was changed")};
        }
        ++report.photos;
        if (!*digest) {
            report.findings.push_back({FindingKind::PhotoUnreadable, photo, Said{digest->error()}});
        } else if (**digest != named) {
            report.findings.push_back(
                {FindingKind::PhotoAltered, photo, said("its content has the digest %1", **digest)});
        } else if (listed && knows_photos && !known.contains(photo)) {
            report.findings.push_back({FindingKind::PhotoUnknown, photo, {}});
        }
    }
    look_at_folder(home, report);
    return report;
}

} // namespace lathhouse::journal
