#include "core/photo/sha256.h"

#include <openssl/evp.h>

#include <array>
#include <cassert>

namespace lathhouse::photo {

std::string sha256_of(ByteView bytes)
{
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned length = 0;
    [[maybe_unused]] const int done = EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr);
    assert(done == 1 && length == 32); // It can only fail where the library lacks the algorithm.
    std::string text;
    for (unsigned i = 0; i < length; ++i) {
        constexpr std::string_view kDigits = "0123456789abcdef";
        text += kDigits[digest[i] >> 4];
        text += kDigits[digest[i] & 15];
    }
    return text;
}

} // namespace lathhouse::photo
