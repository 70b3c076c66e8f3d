#include "core/base/sha256.h"

#include "core/base/readable_file.h"

#include <openssl/evp.h>

#include <array>
#include <cassert>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace lathhouse {
namespace {

constexpr std::size_t kPiece = std::size_t{1} << 20;

/// The library fails here only where memory is out or its build has no SHA-256; a digest that is silently wrong would
/// be worse than an end.
void must(int outcome)
{
    if (outcome != 1) {
        std::fputs("lathhouse: the cryptographic library cannot compute SHA-256\n", stderr);
        std::abort();
    }
}

} // namespace

struct Sha256::Inside {
    Inside() : context(EVP_MD_CTX_new())
    {
        must(context != nullptr ? 1 : 0);
        must(EVP_DigestInit_ex(context, EVP_sha256(), nullptr));
    }
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    ~Inside() { EVP_MD_CTX_free(context); }
    EVP_MD_CTX* context;
};

Sha256::Sha256() : inside_(std::make_unique<Inside>()) {}
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;
Sha256::~Sha256() = default;

void Sha256::update(std::string_view bytes)
{
    must(EVP_DigestUpdate(inside_->context, bytes.data(), bytes.size()));
}

std::string Sha256::hex()
{
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned int length = 0;
    must(EVP_DigestFinal_ex(inside_->context, digest.data(), &length));
    must(EVP_DigestInit_ex(inside_->context, EVP_sha256(), nullptr));
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(std::size_t{length} * 2);
    for (unsigned int index = 0; index < length; ++index) {
        text += kDigits[digest[index] >> 4U];
        text += kDigits[digest[index] & 0xFU];
    }
    return text;
}

std::string sha256_of(std::string_view bytes)
{
    Sha256 digest;
    digest.update(bytes);
    return digest.hex();
}

std::string sha256_of(std::span<const std::uint8_t> bytes)
{
    return sha256_of(std::string_view{reinterpret_cast<const char*>(bytes.data()), bytes.size()});
}

Result<std::string> sha256_of_file(const std::filesystem::path& file)
{
    if (const auto there = must_be_a_file(file); !there) {
        return there.error();
    }
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> input{std::fopen(file.c_str(), "rb"), &std::fclose};
    if (!input) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; check its rights", file.string())};
    }
    Sha256 digest;
    std::vector<char> piece(kPiece);
    while (const std::size_t length = std::fread(piece.data(), 1, piece.size(), input.get())) {
        digest.update({piece.data(), length});
    }
    if (std::ferror(input.get()) != 0) {
        return Error{ErrorCode::Unreadable,
                     said("%1 cannot be read to its end; the disk may be failing", file.string())};
    }
    return digest.hex();
}

} // namespace lathhouse
