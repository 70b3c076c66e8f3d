#include "core/home/lineage.h"

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

} // namespace lathhouse::home
