#include "app/models/photo_image.h"

#include "core/photo/resize.h"

#include <utility>

namespace lathhouse::models {

Result<ReadPhoto> read_for_window(const std::filesystem::path& file, const std::string& name,
                                  std::optional<int> longest_side)
{
    const auto bytes = photo::read_bytes(file);
    if (!bytes) {
        return bytes.error();
    }
    auto read = photo::read_photo(*bytes, name, longest_side);
    if (!read) {
        return read.error();
    }
    auto upright = longest_side ? photo::fitted_into(std::move(read->picture), *longest_side) : std::move(read->picture);
    auto picture = std::make_shared<const photo::Picture>(std::move(upright));
    // The image holds on to the picture as long as it or a copy of it lives.
    auto* keeper = new std::shared_ptr<const photo::Picture>(picture);
    QImage image(picture->rgb.data(), picture->width, picture->height, static_cast<qsizetype>(picture->width) * 3,
                 QImage::Format_RGB888, [](void* kept) { delete static_cast<std::shared_ptr<const photo::Picture>*>(kept); },
                 keeper);
    return ReadPhoto{read->facts, std::move(picture), std::move(image)};
}

} // namespace lathhouse::models
