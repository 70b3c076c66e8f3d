#include "core/home/jug.h"

#include "core/base/parse.h"

#include <algorithm>

namespace lathhouse::home {

Result<Jug> make_jug(std::string_view name, Litres volume)
{
    const auto trim = trimmed(name);
    const auto is_letter = [](char of) {
        return (of >= 'a' && of <= 'z') || (of >= 'A' && of <= 'Z') || static_cast<unsigned char>(of) >= 0x80;
    };
    if (trim.empty() || trim.size() > 40 || !is_letter(trim.front()) ||
        std::ranges::any_of(trim, [](char of) { return (of >= '0' && of <= '9') || of == '/'; })) {
        return Error{ErrorCode::OutOfRange, said("\"%1\" cannot name a jug; take 1 to 40 characters without digits, "
                                                 "the first a letter, such as \"blue can\"",
                                                 trim.substr(0, 40))};
    }
    if (!(volume.litres() > 0.0 && volume.litres() <= 1000.0)) {
        return Error{ErrorCode::OutOfRange, said("a jug must hold more than 0 and at most 1000 L")};
    }
    return Jug{std::string{trim}, volume};
}

} // namespace lathhouse::home
