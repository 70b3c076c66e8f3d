#pragma once

#include "core/journal/photo_import.h"

namespace lathhouse::journal {

/// Whether a photo that leaves the folder says where it was taken.
enum class PhotoPosition { IsTakenOut, Stays };

struct PhotoExport {
    std::vector<std::filesystem::path> files;
    std::vector<Said> refused; ///< Sentences about those that could not be written safely.
    bool cancelled = false;
};

/// Writes photos as `DATE_PLANT_ID.EXTENSION` into a folder, which is made. With PhotoPosition::Stays bit for bit, else
/// as photo::without_position. A photo whose place cannot be taken out is left out and named.
/// Errors: Unwritable.
Result<PhotoExport> export_photos(const PhotoBook& book, const home::Household& household,
                                  std::span<const home::Photo> photos, const std::filesystem::path& folder,
                                  PhotoPosition position, const ImportProgress& progress,
                                  const std::atomic<bool>& cancel);

/// How photos lie beside each other in one picture.
struct SheetForm {
    int height = 480; ///< Of each, pixels.
    int columns = 4;
};
/// What a sheet is made of, and of how many of a plant's photos unless somebody says otherwise (common practice, no source).
inline constexpr int kLeastSheetHeight = 64;
inline constexpr int kMostSheetHeight = 2000;
inline constexpr int kMostOnASheet = 60;
inline constexpr int kUsualOnASheet = 8;

/// Writes photos beside each other by their time, each with its date and the days since the first, into a picture, .jpg or
/// .png, which replaces one that is there. Nothing in it says where they were taken. Gives them in that order.
/// file_of: where a photo lies. Errors: NotFound without a photo; OutOfRange over 500 million pixels; Unreadable; as
/// photo::read_photo and photo::write_picture.
Result<std::vector<home::Photo>>
write_photo_sheet(std::vector<home::Photo> photos,
                  const std::function<Result<std::filesystem::path>(const home::Photo&)>& file_of,
                  const std::filesystem::path& file, const SheetForm& form = {});

} // namespace lathhouse::journal
