#include "core/home/history.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lathhouse::home {
namespace {

constexpr std::array<std::pair<EventKind, std::string_view>, 8> kEventKinds{
    {{EventKind::Moved, "moved"},
     {EventKind::Watered, "watered"},
     {EventKind::Fed, "fed"},
     {EventKind::Repotted, "repotted"},
     {EventKind::Pruned, "pruned"},
     {EventKind::Flowered, "flowered"},
     {EventKind::Inspected, "inspected"},
     {EventKind::Noted, "noted"}}};

} // namespace

std::string_view to_string(EventKind kind)
{
    const auto found = std::ranges::find(kEventKinds, kind, &std::pair<EventKind, std::string_view>::first);
    return found == kEventKinds.end() ? std::string_view{} : found->second;
}

std::optional<EventKind> event_kind_of(std::string_view word)
{
    const auto found = std::ranges::find(kEventKinds, word, &std::pair<EventKind, std::string_view>::second);
    return found == kEventKinds.end() ? std::nullopt : std::optional{found->first};
}

} // namespace lathhouse::home
