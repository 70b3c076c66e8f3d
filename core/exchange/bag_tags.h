#pragma once

#include "core/base/result.h"
#include "core/exchange/bag.h"

#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::exchange {

/// A line of a manifest.
struct ManifestLine {
    std::string sha256; ///< Lower case.
    std::string path;
};

/// Lines of `DIGEST  PATH`; CR, LF and % in a path as %0D, %0A and %25.
std::string manifest_text(const std::vector<ManifestLine>& lines);
/// Errors: Malformed with the line (no digest of 64 hexadecimal digits, a path that is not plain, the same twice).
Result<std::vector<ManifestLine>> read_manifest_text(std::string_view text);

/// Lines of `Label: value`.
std::string bag_info_text(const std::vector<BagLabel>& labels);
/// A line that begins with a blank goes on with the value before it. Lines without a colon are passed over.
std::vector<BagLabel> read_bag_info(std::string_view text);

/// The name of a bag's folder for an archive of that name: letters, digits, `-`, `_` and points alone.
std::string bag_folder_name(std::string_view archive_stem);

} // namespace lathhouse::exchange
