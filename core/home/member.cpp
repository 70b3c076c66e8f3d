#include "core/home/member.h"

#include "core/base/parse.h"

#include <algorithm>
#include <map>

namespace lathhouse::home {

namespace {

std::optional<int> id_of(const Event& event)
{
    if (event.kind != EventKind::Noted || event.plant) {
        return std::nullopt;
    }
    const auto id = parse_integer(event.detail("member"));
    return id && *id > 0 ? std::optional<int>{*id} : std::nullopt;
}

std::vector<SpotId> spots_in(std::string_view text)
{
    std::vector<SpotId> spots;
    for (const auto piece : split(text, ',')) {
        if (const auto id = parse_integer(trimmed(piece)); id && *id > 0) {
            spots.push_back(*id);
        }
    }
    std::ranges::sort(spots);
    spots.erase(std::ranges::unique(spots).begin(), spots.end());
    return spots;
}

Event event_with(std::map<std::string, std::string> details, calendar::Date on, calendar::Instant entered,
                 std::string note)
{
    return {.plant = std::nullopt,
            .kind = EventKind::Noted,
            .spot = std::nullopt,
            .happened = on,
            .entered = entered,
            .note = std::move(note),
            .details = std::move(details)};
}

} // namespace

std::string_view to_string(MemberKind kind)
{
    switch (kind) {
    case MemberKind::Child:
        return "child";
    case MemberKind::Cat:
        return "cat";
    case MemberKind::Dog:
        return "dog";
    case MemberKind::OtherAnimal:
        return "other_animal";
    }
    return "";
}

std::optional<MemberKind> member_kind_of(std::string_view word)
{
    for (const auto kind : kMemberKinds) {
        if (to_string(kind) == word) {
            return kind;
        }
    }
    return std::nullopt;
}

std::vector<Member> members_of(std::span<const Event> events)
{
    // Two changes of one day are in the order of their entry, which a stable order by the date keeps where the ids of
    // the events are not known.
    std::vector<const Event*> told;
    for (const auto& event : events) {
        if (id_of(event)) {
            told.push_back(&event);
        }
    }
    std::ranges::stable_sort(told, [](const Event* a, const Event* b) {
        return a->id && b->id ? *a->id < *b->id : a->happened < b->happened;
    });
    std::map<int, std::optional<Member>> members;
    for (const auto* event : told) {
        const int id = *id_of(*event);
        const auto kind = member_kind_of(event->detail("member_kind"));
        if (event->detail("gone") == "yes") {
            members[id] = std::nullopt;
        } else if (kind) {
            members[id] = Member{id, *kind, std::string{event->detail("name")}, spots_in(event->detail("reaches"))};
        }
    }
    std::vector<Member> there;
    for (auto& [id, member] : members) {
        if (member) {
            there.push_back(std::move(*member));
        }
    }
    return there;
}

int next_member_id(std::span<const Event> events)
{
    int highest = 0;
    for (const auto& event : events) {
        highest = std::max(highest, id_of(event).value_or(0));
    }
    return highest + 1;
}

Event event_of_member(const Member& member, calendar::Date on, calendar::Instant entered, std::string note)
{
    std::string reaches;
    for (const SpotId spot : member.reaches) {
        reaches += (reaches.empty() ? "" : ",") + std::to_string(spot);
    }
    return event_with({{"member", std::to_string(member.id)},
                       {"member_kind", std::string{to_string(member.kind)}},
                       {"name", member.name},
                       {"reaches", reaches}},
                      on, entered, std::move(note));
}

Event event_of_parting(const Member& member, calendar::Date on, calendar::Instant entered, std::string note)
{
    return event_with({{"member", std::to_string(member.id)}, {"gone", "yes"}}, on, entered, std::move(note));
}

bool tells_of_member(const Event& event)
{
    return id_of(event).has_value();
}

void put_in_reach(std::vector<Spot>& spots, std::span<const Member> members)
{
    for (auto& spot : spots) {
        spot.in_reach = spot.in_reach || std::ranges::any_of(members, [&](const Member& member) {
                            return std::ranges::binary_search(member.reaches, spot.id);
                        });
    }
}

} // namespace lathhouse::home
