#pragma once

#include "core/photo/photo_file.h"

#include <QImage>

#include <filesystem>
#include <memory>
#include <optional>

namespace lathhouse::models {

/// A photo as it is shown and measured: pixels after EXIF orientation.
struct ReadPhoto {
    photo::PhotoFacts facts;
    std::shared_ptr<const photo::Picture> picture;
    QImage image; ///< The same pixels; it refers to the picture's memory.
};

/// Errors: as photo::read_photo. longest_side: as there.
Result<ReadPhoto> read_for_window(const std::filesystem::path& file, const std::string& name,
                                  std::optional<int> longest_side = {});

} // namespace lathhouse::models
