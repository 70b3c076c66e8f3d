#include "app/models/people_door.h"

#include "app/models/event_turn.h"
#include "core/home/member.h"
#include "core/journal/household_store.h"

#include <map>

namespace lathhouse::models {

namespace {

bool same_words(const home::Event& a, const home::Event& b)
{
    return a.kind == b.kind && a.plant == b.plant && a.details == b.details && a.happened == b.happened &&
           a.entered == b.entered;
}

std::string name_of(const home::Event& event)
{
    std::string name = "member";
    for (const auto& [key, value] : event.details) {
        name += '\n' + key + '=' + value;
    }
    return name + '\n' + calendar::to_text(event.entered);
}

} // namespace

PeopleDoor people_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load)
{
    return {.load = std::move(load),
            .record = [folder](const home::Event& event) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->record(std::span{&event, 1}) : Result<void>{store.error()};
            },
            .take_back = [folder](const home::Event& event,
                                  calendar::Instant now) {
                return take_back_event(folder, [&event](const home::Event& last) { return same_words(last, event); }, now);
            },
            .bring_back = [folder](const home::Event& event,
                                   calendar::Instant now) {
                return bring_back_event(folder, [&event](const home::Event& last) { return same_words(last, event); }, now);
            }};
}

PeopleDoor people_in_memory(std::shared_ptr<MemoryHousehold> household)
{
    // What was marked by hand, so that a mark goes again with the member that made it.
    std::map<home::SpotId, bool> by_hand;
    for (const auto& spot : household->facts().as_told.spots) {
        by_hand[spot.id] = spot.in_reach;
    }
    return {.load = [household]() -> Result<plan::HouseholdFacts> { return household->facts(); },
            .record =
                [household, by_hand](const home::Event& event) {
                    return household->change(name_of(event), [&](plan::HouseholdFacts& facts) -> Result<void> {
                        facts.events.push_back(event);
                        for (auto& spot : facts.as_told.spots) {
                            const auto mark = by_hand.find(spot.id);
                            spot.in_reach = mark == by_hand.end() ? spot.in_reach : mark->second;
                        }
                        home::put_in_reach(facts.as_told.spots, home::members_of(facts.events));
                        return {};
                    });
                },
            .take_back = [household](const home::Event& event,
                                     calendar::Instant) { return household->take_back(name_of(event)); },
            .bring_back = [household](const home::Event& event,
                                      calendar::Instant) { return household->bring_back(name_of(event)); }};
}

} // namespace lathhouse::models
