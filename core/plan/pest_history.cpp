#include "core/plan/pest_history.h"

#include "core/base/parse.h"

#include <algorithm>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

/// The pest whose clock stands in for one that nobody named.
const plants::Pest& stand_in()
{
    return plants::PestTable::built_in().pests().front();
}

PestAmount amount_of(std::string_view word)
{
    const auto written = lower_case(trimmed(word));
    if (written == "heavy") {
        return PestAmount::Heavy;
    }
    return written == "many" ? PestAmount::Many : PestAmount::Few;
}

} // namespace

PestHistory::PestHistory(const home::Household& household, std::span<const home::Event> events, Date today)
    : household_(household), today_(today)
{
    for (const auto& plant : household.plants) {
        plants_[plant.id];
    }
    std::vector<const home::Event*> in_order;
    for (const auto& event : events) {
        if (event.happened <= today) {
            in_order.push_back(&event);
        }
        // A plant that is gone is in the journal alone; what walked on it may have walked on to its neighbours.
        if (event.plant && household.plant(*event.plant) == nullptr) {
            plants_[*event.plant].gone = true;
        }
    }
    std::ranges::stable_sort(in_order, {}, [](const home::Event* event) { return event->happened; });
    // Where plants stand has to be known before a look or a find at a spot is shared out.
    for (const auto* event : in_order) {
        const bool moves = event->kind == home::EventKind::Moved || event->kind == home::EventKind::Isolated;
        if (moves && event->plant && event->spot && plants_.contains(*event->plant)) {
            auto& of = plants_[*event->plant];
            of.stays.push_back({event->happened, *event->spot});
            of.was_moved |= event->kind == home::EventKind::Moved;
        }
    }
    for (const auto* event : in_order) {
        take(*event);
    }
    for (auto& [id, of] : plants_) {
        std::ranges::sort(of.clean_looks);
        std::ranges::sort(of.treatments);
    }
    const bool any_apart = std::ranges::any_of(
        plants_, [&](const auto& entry) { return set_apart_on(entry.first, today_); });
    std::ranges::stable_partition(pests_, &PestOfHistory::is_known);
    if (any_apart) {
        pests_.push_back({"(precaution)", "", &stand_in(), false, true});
    }
}

std::string PestHistory::key_of(const std::string& name)
{
    const auto found = plants::PestTable::built_in().find(name);
    const bool known = found.has_value();
    const std::string key = known ? (*found)->name : "? " + lower_case(trimmed(name));
    if (std::ranges::find(pests_, key, &PestOfHistory::key) == pests_.end()) {
        pests_.push_back({key, std::string{trimmed(name)}, known ? *found : &stand_in(), known, false});
    }
    return key;
}

void PestHistory::take_find(const home::Event& event, const std::string& name)
{
    const auto key = key_of(name);
    if (event.plant) {
        plants_[*event.plant].finds[key].push_back({event.happened, amount_of(event.detail("amount"))});
    } else if (event.spot) {
        finds_at_spots_[key].push_back({event.happened, *event.spot});
    }
}

void PestHistory::take(const home::Event& event)
{
    if (event.plant && !plants_.contains(*event.plant)) {
        return;
    }
    switch (event.kind) {
    case home::EventKind::PestFound:
        take_find(event, std::string{event.detail("pest")});
        break;
    case home::EventKind::Inspected: {
        const auto found = lower_case(trimmed(event.detail("found")));
        if (!found.empty() && found != "nothing" && found != "none") {
            const auto named = event.detail("pest");
            take_find(event, named.empty() ? found : std::string{named});
        } else if (event.plant) {
            plants_[*event.plant].clean_looks.push_back(event.happened);
        } else if (event.spot) {
            for (auto& [id, of] : plants_) {
                if (spot_on(id, event.happened) == event.spot) {
                    of.clean_looks.push_back(event.happened);
                }
            }
        }
        break;
    }
    case home::EventKind::Treated:
        if (event.plant) {
            plants_[*event.plant].treatments.push_back(event.happened);
        }
        break;
    case home::EventKind::Isolated:
    case home::EventKind::Released:
        if (event.plant) {
            plants_[*event.plant].apart.push_back(
                {event.happened, event.kind == home::EventKind::Isolated});
        }
        break;
    case home::EventKind::Died:
    case home::EventKind::GivenAway:
    case home::EventKind::Removed:
        if (event.plant) {
            plants_[*event.plant].gone = true;
            plants_[*event.plant].gone_on = event.happened;
        }
        break;
    default:
        break;
    }
}

std::vector<home::PlantId> PestHistory::living_or_gone() const
{
    std::vector<home::PlantId> ids;
    for (const auto& [id, of] : plants_) {
        ids.push_back(id);
    }
    return ids;
}

std::vector<home::PlantId> PestHistory::living() const
{
    auto ids = living_or_gone();
    std::erase_if(ids, [&](home::PlantId id) { return !is_living(id); });
    return ids;
}

bool PestHistory::is_living(home::PlantId plant) const
{
    const auto found = plants_.find(plant);
    return found != plants_.end() && !found->second.gone;
}

std::optional<home::SpotId> PestHistory::spot_on(home::PlantId plant, Date date) const
{
    const auto& of = plants_.at(plant);
    if (of.gone_on && date > *of.gone_on) {
        return std::nullopt;
    }
    // Before its first logged move nobody knows where it stood; one that was never moved has its spot.
    const auto* known = household_.plant(plant);
    auto spot = of.was_moved || known == nullptr ? std::nullopt : known->spot;
    for (const auto& [from, where] : of.stays) {
        if (from <= date) {
            spot = where;
        }
    }
    return spot;
}

bool PestHistory::set_apart_on(home::PlantId plant, Date date) const
{
    bool apart = false;
    for (const auto& [from, is_apart] : plants_.at(plant).apart) {
        if (from <= date) {
            apart = is_apart;
        }
    }
    return apart;
}

bool PestHistory::is_apart_on(home::PlantId plant, Date date) const
{
    if (set_apart_on(plant, date)) {
        return true;
    }
    const auto spot = spot_on(plant, date);
    const auto* where = spot ? household_.spot(*spot) : nullptr;
    return where != nullptr && where->apart;
}

std::vector<PestHistory::Find> PestHistory::finds(home::PlantId plant, const PestOfHistory& pest) const
{
    const auto& of = plants_.at(plant);
    const auto found = of.finds.find(pest.key);
    return found == of.finds.end() ? std::vector<Find>{} : found->second;
}

std::vector<Date> PestHistory::clean_looks(home::PlantId plant) const
{
    return plants_.at(plant).clean_looks;
}

int PestHistory::treatments_after(home::PlantId plant, Date since) const
{
    return static_cast<int>(
        std::ranges::count_if(plants_.at(plant).treatments, [&](Date date) { return date >= since; }));
}

std::optional<Date> PestHistory::last_treatment(home::PlantId plant, Date since) const
{
    const auto& treatments = plants_.at(plant).treatments;
    return treatments.empty() || treatments.back() < since ? std::nullopt
                                                           : std::optional{treatments.back()};
}

PestAmount PestHistory::amount(home::PlantId plant, const PestOfHistory& pest, Date since) const
{
    auto most = PestAmount::Few;
    for (const auto& find : finds(plant, pest)) {
        if (find.date >= since) {
            most = std::max(most, find.amount);
        }
    }
    return most;
}

bool PestHistory::released_after(home::PlantId plant, Date since) const
{
    const auto& apart = plants_.at(plant).apart;
    return !apart.empty() && !apart.back().second && apart.back().first >= since;
}

std::vector<PestHistory::Contact> PestHistory::contacts(const PestOfHistory& pest,
                                                        std::span<const Source> sources) const
{
    std::map<home::PlantId, Contact> last;
    const auto touch = [&](const Contact& contact) {
        const auto found = last.find(contact.plant);
        if (found == last.end()) {
            last.emplace(contact.plant, contact);
        } else if (contact.last > found->second.last) {
            found->second = contact;
        }
    };
    const auto plants = living();
    if (pest.is_precaution) {
        for (const auto plant : plants) {
            if (set_apart_on(plant, today_)) {
                touch({plant, plants_.at(plant).apart.back().first, PestReason::SetApart, {}});
            }
        }
    }
    for (const auto& source : sources) {
        for (auto day = source.from; day <= std::min(source.to, today_); day += Days{1}) {
            const auto spot = spot_on(source.plant, day);
            if (!spot || set_apart_on(source.plant, day)) {
                continue;
            }
            for (const auto plant : plants) {
                if (plant != source.plant && spot_on(plant, day) == spot && !set_apart_on(plant, day)) {
                    touch({plant, day, PestReason::SharedSpot, source.plant});
                }
            }
        }
    }
    if (const auto found = finds_at_spots_.find(pest.key); found != finds_at_spots_.end()) {
        for (const auto& [day, spot] : found->second) {
            for (const auto plant : plants) {
                if (spot_on(plant, day) == spot) {
                    touch({plant, day, PestReason::FoundAtSpot, {}});
                }
            }
        }
    }
    std::vector<Contact> contacts;
    for (const auto& [id, contact] : last) {
        contacts.push_back(contact);
    }
    return contacts;
}

} // namespace lathhouse::plan
