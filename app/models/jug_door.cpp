#include "app/models/jug_door.h"

#include "core/base/parse.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <memory>
#include <mutex>

namespace lathhouse::models {

JugDoor jugs_in_folder(std::filesystem::path folder)
{
    return {.load = [folder]() -> Result<std::vector<home::Jug>> {
                const auto store = journal::HouseholdStore::open(folder);
                return store ? store->jugs() : Result<std::vector<home::Jug>>{store.error()};
            },
            .keep = [folder](const home::Jug& jug, calendar::Instant now) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->keep_jug(jug, now) : Result<void>{store.error()};
            }};
}

JugDoor jugs_in_memory()
{
    struct Kept {
        std::mutex guard;
        std::vector<home::Jug> jugs;
    };
    const auto kept = std::make_shared<Kept>();
    return {.load = [kept]() -> Result<std::vector<home::Jug>> {
                const std::lock_guard lock(kept->guard);
                return kept->jugs;
            },
            .keep = [kept](const home::Jug& jug, calendar::Instant) -> Result<void> {
                const std::lock_guard lock(kept->guard);
                std::erase_if(kept->jugs, [&](const home::Jug& of) { return lower_case(of.name) == lower_case(jug.name); });
                kept->jugs.push_back(jug);
                std::ranges::sort(kept->jugs, {}, &home::Jug::name);
                return {};
            }};
}

} // namespace lathhouse::models
