#pragma once

#include "core/journal/photo_import.h"

namespace lathhouse::journal {

/// Whether a photo that leaves the folder says where it was taken.
enum class PhotoPosition { IsTakenOut, Stays };

struct PhotoExport {
    std::vector<std::filesystem::path> files;
    std::vector<std::string> refused; ///< Sentences about those that could not be written safely.
    bool cancelled = false;
};

/// Writes photos as `DATE_PLANT_ID.EXTENSION` into a folder, which is made. With PhotoPosition::Stays bit for bit, else
/// as photo::without_position. A photo whose place cannot be taken out is left out and named.
/// Errors: Unwritable.
Result<PhotoExport> export_photos(const PhotoBook& book, const home::Household& household,
                                  std::span<const home::Photo> photos, const std::filesystem::path& folder,
                                  PhotoPosition position, const ImportProgress& progress,
                                  const std::atomic<bool>& cancel);

} // namespace lathhouse::journal
