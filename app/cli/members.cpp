#include "app/cli/members.h"

#include "app/clock.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/cli/open_household.h"
#include "app/cli/subcommand.h"
#include "core/home/member.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace lathhouse::cli {
namespace {

struct MemberOptions {
    int id = 0;
    std::string kind;
    std::optional<std::string> name;
    std::vector<std::string> reaches;
    bool nowhere = false;
    bool gone = false;
};

std::string kind_in_words(home::MemberKind kind)
{
    return kind == home::MemberKind::OtherAnimal ? "another animal" : std::string{home::to_string(kind)};
}

/// "Mia, child"; "the cat" where nobody gave it a name.
std::string member_in_words(const home::Member& member)
{
    const auto kind = kind_in_words(member.kind);
    if (!member.name.empty()) {
        return member.name + ", " + kind;
    }
    return member.kind == home::MemberKind::OtherAnimal ? kind : "the " + kind;
}

/// Names of the spots that it reaches, with commas between; "no spot" for none.
std::string reach_in_words(const home::Member& member, const home::Household& home)
{
    std::string names;
    for (const auto& spot : home.spots) {
        if (std::ranges::binary_search(member.reaches, spot.id)) {
            names += (names.empty() ? "" : ", ") + spot.name;
        }
    }
    return names.empty() ? "no spot" : names;
}

Json json_of_member(const home::Member& member)
{
    return {{"id", member.id},
            {"kind", std::string{home::to_string(member.kind)}},
            {"name", member.name},
            {"reaches", member.reaches}};
}

/// Ids of the spots called so, rising, each once.
Result<std::vector<home::SpotId>> spots_reached(const home::Household& home, const std::vector<std::string>& called)
{
    std::vector<home::SpotId> ids;
    for (const auto& word : called) {
        const auto spot = spot_called(home, word);
        if (!spot) {
            return spot.error();
        }
        ids.push_back((*spot)->id);
    }
    std::ranges::sort(ids);
    const auto doubled = std::ranges::unique(ids);
    ids.erase(doubled.begin(), doubled.end());
    return ids;
}

/// What every command of members reads.
struct MembersRead {
    journal::HouseholdStore store;
    home::Household home;
    std::vector<home::Event> events;
};
/// Errors: as store_of and HouseholdStore::load.
Result<MembersRead> read_members(const Globals& globals)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    auto home = store->load();
    if (!home) {
        return home.error();
    }
    auto events = store->events();
    if (!events) {
        return events.error();
    }
    return MembersRead{std::move(*store), std::move(*home), std::move(*events)};
}

/// Writes what is said of a member and tells it.
Result<Answer> say_of_member(journal::HouseholdStore& store, const home::Household& home, const home::Member& member,
                             const Globals& globals)
{
    const auto sentence = member_in_words(member) + ": reaches " + reach_in_words(member, home);
    const auto event = home::event_of_member(member, globals.today, now(), sentence);
    if (const auto written = store.record(std::span{&event, 1}); !written) {
        return written.error();
    }
    return Answer{json_of_member(member),
                  sentence + " (member " + std::to_string(member.id) +
                      "). The plan keeps from there what is marked as hazardous; what is not known to be poisonous is no "
                      "proof.\n",
                  {}};
}

Result<Answer> add_member(const Globals& globals, const MemberOptions& options)
{
    auto read = read_members(globals);
    if (!read) {
        return read.error();
    }
    auto& [store, home, events] = *read;
    const auto reaches = spots_reached(home, options.reaches);
    if (!reaches) {
        return reaches.error();
    }
    const home::Member member{home::next_member_id(events),
                              home::member_kind_of(options.kind).value_or(home::MemberKind::OtherAnimal),
                              options.name.value_or(""), *reaches};
    return say_of_member(store, home, member, globals);
}

Result<Answer> change_member(const Globals& globals, const MemberOptions& options)
{
    const int asked = (options.name ? 1 : 0) + (options.reaches.empty() ? 0 : 1) + (options.nowhere ? 1 : 0) + (options.gone ? 1 : 0);
    if (asked == 0 || (options.gone && asked > 1) || (options.nowhere && !options.reaches.empty())) {
        return Error{ErrorCode::WrongUsage, "say what is other now: --name, --reaches SPOT or --nowhere; or --gone alone"};
    }
    auto read = read_members(globals);
    if (!read) {
        return read.error();
    }
    auto& [store, home, events] = *read;
    const auto members = home::members_of(events);
    const auto known = std::ranges::find(members, options.id, &home::Member::id);
    if (known == members.end()) {
        return Error{ErrorCode::NotFound,
                     "there is no member " + std::to_string(options.id) + "; `lathhouse list members` shows them"};
    }
    auto member = *known;
    if (options.gone) {
        const auto event = home::event_of_parting(member, globals.today, now(), member_in_words(member) + ": off the list");
        if (const auto written = store.record(std::span{&event, 1}); !written) {
            return written.error();
        }
        auto json = json_of_member(member);
        json["gone"] = true;
        return Answer{std::move(json), member_in_words(member) + " is off the list; marks made by hand stay.\n", {}};
    }
    member.name = options.name.value_or(member.name);
    if (options.nowhere || !options.reaches.empty()) {
        const auto reaches = spots_reached(home, options.reaches);
        if (!reaches) {
            return reaches.error();
        }
        member.reaches = *reaches;
    }
    return say_of_member(store, home, member, globals);
}

Result<Answer> list_members(const Globals& globals)
{
    const auto read = read_members(globals);
    if (!read) {
        return read.error();
    }
    const auto& [store, home, events] = *read;
    Json rows = Json::array();
    std::vector<std::vector<std::string>> cells{{"id", "kind", "name", "reaches"}};
    for (const auto& member : home::members_of(events)) {
        rows.push_back(json_of_member(member));
        cells.push_back({std::to_string(member.id), kind_in_words(member.kind), member.name, reach_in_words(member, home)});
    }
    return Answer{{{"members", rows}},
                  cells.size() == 1 ? "no child or animal is named; add one with: lathhouse add member Mia --kind child --reaches SPOT\n"
                                    : table(cells),
                  {}};
}

} // namespace

void add_member_command(Commands& commands, CLI::App& add)
{
    auto options = std::make_shared<MemberOptions>();
    CLI::App& command = add_subcommand(add, "member", "A child or an animal to be kept from what hurts it",
                                       "lathhouse add member Mia --kind child --reaches \"South sill\"");
    command.add_option("NAME", options->name, "May be left out");
    command.add_option("--kind", options->kind, "child, cat, dog or other_animal")
        ->required()
        ->type_name("KIND")
        ->check(CLI::IsMember({"child", "cat", "dog", "other_animal"}));
    command.add_option("--reaches", options->reaches, "Spot within its reach, by id or name; may be given more than once")
        ->type_name("ID");
    commands.on_run(command, [options](const Globals& globals) { return add_member(globals, *options); });
}

void add_member_list(Commands& commands, CLI::App& list)
{
    CLI::App& command = add_subcommand(list, "members", "Children and animals, and the spots within their reach",
                                       "lathhouse list members");
    commands.on_run(command, [](const Globals& globals) { return list_members(globals); });
}

void add_member_log(Commands& commands, CLI::App& log)
{
    auto options = std::make_shared<MemberOptions>();
    CLI::App& command = add_subcommand(log, "member", "What is other now with a child or an animal",
                                       "lathhouse log member 1 --gone");
    command.add_option("ID", options->id, "As `list members` shows it")->required();
    command.add_option("--name", options->name, "Another name")->type_name("NAME");
    command.add_option("--reaches", options->reaches, "Spots within its reach from now on; those before count no longer")
        ->type_name("ID");
    command.add_flag("--nowhere", options->nowhere, "No spot is within its reach");
    command.add_flag("--gone", options->gone, "Takes it off the list");
    commands.on_run(command, [options](const Globals& globals) { return change_member(globals, *options); });
}

} // namespace lathhouse::cli
