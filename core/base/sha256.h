#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace lathhouse {

/// The SHA-256 digest of bytes that are handed over piece by piece.
///
/// Source: FIPS 180-4, section 6.2, as OpenSSL's libcrypto computes it.
class Sha256 {
public:
    Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;
    ~Sha256();

    void update(std::string_view bytes);
    /// The digest of all bytes so far in 64 digits of lower case hexadecimal; afterwards it begins anew.
    std::string hex();

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// Digest of the bytes in one go, as `Sha256::hex`.
std::string sha256_of(std::string_view bytes);

/// Digest of a file, read in pieces of 1 MiB at most. Errors: NotFound, Unreadable (a folder too).
Result<std::string> sha256_of_file(const std::filesystem::path& file);

} // namespace lathhouse
