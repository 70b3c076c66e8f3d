#pragma once

#include <libheif/heif.h>

#include <memory>

namespace lathhouse::photo {

/// Gives back what libheif made.
struct FreeHeif {
    void operator()(heif_context* context) const { heif_context_free(context); }
    void operator()(heif_image_handle* handle) const { heif_image_handle_release(handle); }
    void operator()(heif_image* image) const { heif_image_release(image); }
};
using HeifContext = std::unique_ptr<heif_context, FreeHeif>;
using HeifHandle = std::unique_ptr<heif_image_handle, FreeHeif>;

} // namespace lathhouse::photo
