#include "core/journal/photo_export.h"

#include "core/base/csv.h"
#include "core/photo/encode.h"
#include "core/photo/picture_sheet.h"
#include "core/photo/without_position.h"

#include <algorithm>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr int kMostMegapixels = 500; // Of a sheet, which takes three bytes each: a photo may be as long and thin as a hair.

/// Letters and digits of the name; everything that could mean something to a file system becomes a dash.
std::string file_name_of(const home::Photo& photo, const home::Household& household)
{
    std::string name = "photo";
    if (!photo.plants.empty()) {
        if (const auto* plant = household.plant(photo.plants.front())) {
            name = plant->name;
        }
    }
    for (char& letter : name) {
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                           (letter >= '0' && letter <= '9') || static_cast<unsigned char>(letter) >= 0x80;
        letter = plain ? letter : '-';
    }
    return calendar::to_text(photo.date()) + "_" + name + "_" + std::to_string(photo.id) + "." + photo.extension;
}

} // namespace

Result<PhotoExport> export_photos(const PhotoBook& book, const home::Household& household,
                                  std::span<const home::Photo> photos, const fs::path& folder, PhotoPosition position,
                                  const ImportProgress& progress, const std::atomic<bool>& cancel)
{
    std::error_code failure;
    fs::create_directories(folder, failure);
    if (!fs::is_directory(folder, failure)) {
        return Error{ErrorCode::Unwritable,
                     said("%1 cannot be made; choose a folder where you may write", folder.string())};
    }
    PhotoExport report;
    for (const auto& photo : photos) {
        if (cancel.load()) {
            report.cancelled = true;
            break;
        }
        auto bytes = photo::read_bytes(book.file_of(photo));
        if (bytes && position == PhotoPosition::IsTakenOut) {
            bytes = photo::without_position(*bytes, "photo " + std::to_string(photo.id));
        }
        if (!bytes) {
            report.refused.emplace_back(bytes.error());
            continue;
        }
        const auto file = folder / file_name_of(photo, household);
        const auto written =
            write_file_whole(file, {reinterpret_cast<const char*>(bytes->data()), bytes->size()});
        if (!written) {
            return written.error();
        }
        report.files.push_back(file);
        if (progress) {
            progress(report.files.size() + report.refused.size(), photos.size());
        }
    }
    return report;
}

Result<std::vector<home::Photo>> write_photo_sheet(std::vector<home::Photo> photos,
                                                  const std::function<Result<fs::path>(const home::Photo&)>& file_of,
                                                  const fs::path& file, const SheetForm& form)
{
    if (photos.empty()) {
        return Error{ErrorCode::NotFound, said("there is no photo to show")};
    }
    std::ranges::stable_sort(photos, {}, &home::Photo::taken);
    double pixels = 0.0;
    for (const auto& one : photos) {
        pixels += static_cast<double>(form.height) * form.height * one.width / one.height;
    }
    if (pixels > 1e6 * kMostMegapixels) {
        return Error{ErrorCode::OutOfRange, said("the picture would have over %1 million pixels; choose fewer photos or a "
                                                 "smaller height",
                                                 kMostMegapixels)};
    }
    std::vector<photo::Captioned> pictures;
    for (const auto& one : photos) {
        const auto path = file_of(one);
        if (!path) {
            return path.error();
        }
        const auto bytes = photo::read_bytes(*path);
        if (!bytes) {
            return bytes.error();
        }
        // A little larger than needed, so that it is only made smaller.
        const int side = form.height * std::max(one.width, one.height) / one.height * 4 / 3 + 1;
        auto picture = photo::read_photo(*bytes, one.original_name, side);
        if (!picture) {
            return picture.error();
        }
        const auto days = calendar::days_between(photos.front().date(), one.date());
        pictures.push_back({std::move(picture->picture),
                            calendar::to_text(one.date()) + (days > 0 ? "  +" + std::to_string(days) + " d" : "")});
    }
    if (const auto written = photo::write_picture(file, photo::picture_sheet(pictures, form.height, form.columns));
        !written) {
        return written.error();
    }
    return photos;
}

} // namespace lathhouse::journal
