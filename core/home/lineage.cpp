#include "core/home/lineage.h"

#include "core/base/parse.h"

namespace lathhouse::home {

std::string_view to_string(GoneHow how)
{
    switch (how) {
    case GoneHow::Died:
        return "died";
    case GoneHow::GivenAway:
        return "given_away";
    case GoneHow::Removed:
        return "removed";
    case GoneHow::Undone:
        break;
    }
    return "undone";
}

Result<std::vector<Plant>> pieces_of(const Plant& parent, std::span<const std::string> names)
{
    auto piece = parent;
    piece.pinned_spot.reset();
    std::vector<Plant> pieces;
    for (const auto& name : names) {
        if (trimmed(name).empty()) {
            return Error{ErrorCode::WrongUsage, said("a division needs a name for each new piece")};
        }
        piece.name = name;
        pieces.push_back(piece);
    }
    return pieces;
}

std::vector<std::string> pieces_in(std::string_view into)
{
    std::vector<std::string> names;
    for (const auto name : split(into, ',')) {
        if (!trimmed(name).empty()) {
            names.emplace_back(trimmed(name));
        }
    }
    return names;
}

} // namespace lathhouse::home
