#include "core/home/history.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lathhouse::home {
namespace {

constexpr std::array<std::pair<EventKind, std::string_view>, 26> kEventKinds{
    {{EventKind::Moved, "moved"},
     {EventKind::Watered, "watered"},
     {EventKind::Fed, "fed"},
     {EventKind::Leached, "leached"},
     {EventKind::Repotted, "repotted"},
     {EventKind::Pruned, "pruned"},
     {EventKind::Flowered, "flowered"},
     {EventKind::NewGrowth, "new_growth"},
     {EventKind::Inspected, "inspected"},
     {EventKind::Noted, "noted"},
     {EventKind::Treated, "treated"},
     {EventKind::PestFound, "pest_found"},
     {EventKind::Isolated, "isolated"},
     {EventKind::Released, "released"},
     {EventKind::ColdNight, "cold_night"},
     {EventKind::ChemicalDamage, "chemical_damage"},
     {EventKind::Sown, "sown"},
     {EventKind::Emerged, "emerged"},
     {EventKind::PlantedOut, "planted_out"},
     {EventKind::Divided, "divided"},
     {EventKind::Died, "died"},
     {EventKind::GivenAway, "given_away"},
     {EventKind::Removed, "removed"},
     {EventKind::TaskDone, "task_done"},
     {EventKind::TaskPostponed, "task_postponed"},
     {EventKind::TaskSkipped, "task_skipped"}}};

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

std::vector<EventKind> every_event_kind()
{
    std::vector<EventKind> kinds;
    for (const auto& [kind, word] : kEventKinds) {
        kinds.push_back(kind);
    }
    return kinds;
}

std::string_view Event::detail(const std::string& name) const
{
    const auto found = details.find(name);
    return found == details.end() ? std::string_view{} : std::string_view{found->second};
}

} // namespace lathhouse::home
