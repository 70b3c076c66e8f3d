#pragma once

#include <bit>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <type_traits>

namespace lathhouse {

/// Writes numbers and texts one behind the other, little-endian.
class Packer {
public:
    template <class T>
    void integer(T value)
    {
        using Bits = std::make_unsigned_t<T>;
        auto bits = static_cast<Bits>(value);
        for (std::size_t i = 0; i < sizeof(T); ++i) {
            bytes_ += static_cast<char>(bits & 0xFF);
            bits = static_cast<Bits>(bits >> 8);
        }
    }
    /// At most 65,535 bytes.
    void text(std::string_view text)
    {
        integer(static_cast<std::uint16_t>(text.size()));
        bytes_ += text;
    }
    const std::string& bytes() const { return bytes_; }

private:
    std::string bytes_;
};

/// Reads what Packer wrote; past the end it gives zeros and empty texts and says so in `good`. Texts lie in
/// the bytes read.
class Unpacker {
public:
    explicit Unpacker(std::string_view bytes) : rest_(bytes) {}
    template <class T>
    T integer()
    {
        if (rest_.size() < sizeof(T)) {
            good_ = false;
            return T{};
        }
        using Bits = std::make_unsigned_t<T>;
        Bits bits = 0;
        if constexpr (std::endian::native == std::endian::little) {
            std::memcpy(&bits, rest_.data(), sizeof(T));
        } else {
            for (std::size_t i = sizeof(T); i-- > 0;) {
                bits = static_cast<Bits>((bits << 8) | static_cast<unsigned char>(rest_[i]));
            }
        }
        rest_.remove_prefix(sizeof(T));
        return static_cast<T>(bits);
    }
    std::string_view text()
    {
        const std::size_t size = integer<std::uint16_t>();
        if (size > rest_.size()) {
            good_ = false;
            return {};
        }
        const auto text = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return text;
    }
    /// Marks what was read as bad, as if it had ended too soon.
    void refuse() { good_ = false; }
    bool good() const { return good_; }
    bool at_end() const { return rest_.empty(); }
    std::size_t left() const { return rest_.size(); }

private:
    std::string_view rest_;
    bool good_ = true;
};

} // namespace lathhouse
