#pragma once

#include "core/home/history.h"
#include "core/home/household.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

/// Whom a plant of the household could hurt.
enum class MemberKind { Child, Cat, Dog, OtherAnimal };
inline constexpr MemberKind kMemberKinds[] = {MemberKind::Child, MemberKind::Cat, MemberKind::Dog,
                                              MemberKind::OtherAnimal};
std::string_view to_string(MemberKind kind); ///< "child", "cat", "dog", "other_animal".
/// The kind of that word; nullopt for any other word.
std::optional<MemberKind> member_kind_of(std::string_view word);

/// A child or an animal to be kept from what hurts it.
struct Member {
    int id;
    MemberKind kind;
    std::string name;            ///< May be empty: "the cat" is enough for many.
    std::vector<SpotId> reaches; ///< Spots at which it gets at the plants; rising, each once.
    friend bool operator==(const Member&, const Member&) = default;
};

/// Members as the journal tells of them: what was said last of each counts, and who was taken off the list is not
/// there. By id. Details of such an event (a note of no plant): "member", the id; "member_kind"; "name"; "reaches", ids
/// of spots with commas between; "gone", "yes" where it is taken off the list. What is no such event is passed over.
std::vector<Member> members_of(std::span<const Event> events);

/// One more than the highest id that was ever given.
int next_member_id(std::span<const Event> events);

/// The event that says it from that day on. note: a sentence for whoever reads the journal without this program.
Event event_of_member(const Member& member, calendar::Date on, calendar::Instant entered, std::string note);
/// The event that takes a member off the list.
Event event_of_parting(const Member& member, calendar::Date on, calendar::Instant entered, std::string note);
/// Whether an event says something of a member.
bool tells_of_member(const Event& event);

/// Marks the spots that a member reaches as within reach. Those that were marked by hand stay so.
void put_in_reach(std::vector<Spot>& spots, std::span<const Member> members);

} // namespace lathhouse::home
