#include "app/cli/log_event.h"

#include "app/clock.h"
#include "app/cli/entry_text.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/open_household.h"
#include "core/home/history.h"
#include "core/journal/household_store.h"

#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct EventOptions {
    std::string kind;
    std::vector<std::string> plants;
    std::string spot;
    std::string date;
    std::string note;
    std::vector<std::string> details;
};

std::string kinds_in_words()
{
    std::string text;
    for (const auto kind : home::every_event_kind()) {
        text += (text.empty() ? "" : ", ") + std::string{home::to_string(kind)};
    }
    return text;
}

/// Reads name=value pairs. Errors: WrongUsage.
Result<std::map<std::string, std::string>> details_of(const std::vector<std::string>& pairs)
{
    std::map<std::string, std::string> details;
    for (const auto& pair : pairs) {
        const auto equals = pair.find('=');
        if (equals == 0 || equals == std::string::npos) {
            return Error{ErrorCode::WrongUsage, "--detail " + pair + " is no NAME=VALUE"};
        }
        if (!details.emplace(pair.substr(0, equals), pair.substr(equals + 1)).second) {
            return Error{ErrorCode::WrongUsage, "--detail " + pair.substr(0, equals) +
                                                    " is given twice and can be kept once; log another event for the other"};
        }
    }
    return details;
}

/// What makes an event of that kind complete. Errors: WrongUsage with a sentence.
Result<void> is_complete(const home::Event& event)
{
    using home::EventKind;
    if (event.kind == EventKind::Moved && (!event.plant || !event.spot)) {
        return Error{ErrorCode::WrongUsage, "a move needs --plant and --spot, where it went"};
    }
    if (event.kind == EventKind::PestFound && event.detail("pest").empty()) {
        return Error{ErrorCode::WrongUsage,
                     "say which pest was found with --detail pest=NAME, for example pest=mealybug"};
    }
    const bool ends = event.kind == EventKind::Died || event.kind == EventKind::GivenAway ||
                      event.kind == EventKind::Removed;
    if (ends && !event.plant) {
        return Error{ErrorCode::WrongUsage, "say which plant it was with --plant; seedlings of a tray are counted with "
                                            "`lathhouse log count`"};
    }
    const bool of_household = event.kind == EventKind::Noted || event.kind == EventKind::ColdNight ||
                              event.kind == EventKind::ChemicalDamage;
    if (!event.plant && !event.spot && !of_household) {
        return Error{ErrorCode::WrongUsage, "say what it happened to with --plant or --spot"};
    }
    return {};
}

Result<Answer> log_event(const Globals& globals, const EventOptions& options)
{
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    // Things come to mind after a plant is gone, so those are known too.
    const auto home = with_gone_plants(*store);
    if (!home) {
        return home.error();
    }
    const auto kind = home::event_kind_of(options.kind);
    if (!kind) {
        return Error{ErrorCode::WrongUsage,
                     "no kind of event is called \"" + options.kind + "\"; there are " + kinds_in_words()};
    }
    const auto date = past_date_of("--date", options.date, globals.today, "the journal keeps what has happened");
    if (!date) {
        return date.error();
    }
    const auto details = details_of(options.details);
    if (!details) {
        return details.error();
    }
    home::Event event{{}, *kind, {}, *date, now(), options.note, *details};
    const auto spot = spot_asked(*home, options.spot);
    if (!spot) {
        return spot.error();
    }
    event.spot = *spot;
    std::vector<home::Event> events;
    for (const auto& name : options.plants) {
        const auto plant = plant_called(*home, name);
        if (!plant) {
            return plant.error();
        }
        event.plant = (*plant)->id;
        events.push_back(event);
    }
    if (events.empty()) {
        events.push_back(event);
    }
    if (const auto complete = is_complete(events.front()); !complete) {
        return complete.error();
    }
    if (const auto recorded = store->record(std::span<const home::Event>{events}); !recorded) {
        return recorded.error();
    }
    const auto count = events.size();
    std::string counts;
    if (event.kind == home::EventKind::ChemicalDamage && !event.plant) {
        counts = event.spot ? "It counts for the plants that stood there on that day.\n"
                            : "It names no spot, so it counts for the plants that stood outdoors on that day.\n";
    }
    return Answer{{{"logged", count}},
                  "Logged " + options.kind + (count > 1 ? " for " + std::to_string(count) + " plants" : "") +
                      " on " + calendar::to_text(*date) + ".\n" + counts,
                  {}};
}

Result<Answer> turn_back(const Globals& globals, bool undo)
{
    const auto turned = turn_last_entry(globals, undo);
    if (!turned) {
        return turned.error();
    }
    if (!*turned) {
        return Error{ErrorCode::NotFound,
                     undo ? "there is nothing to undo in " + globals.home.string()
                          : "there is nothing to redo; what was entered after an undo ends it"};
    }
    const auto& [entry, home] = **turned;
    return Answer{{{undo ? "undone" : "redone", entry_json(entry)}},
                  (undo ? "Undone: " : "Counts again: ") + sentence_of(entry, home, globals.units) + "\n",
                  {}};
}

struct HistoryOptions {
    std::string plant;
    std::string kind;
    std::size_t count = 30;
};

Result<Answer> history(const Globals& globals, const HistoryOptions& options)
{
    const auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto home = with_gone_plants(*store);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_asked(*home, options.plant);
    if (!plant) {
        return plant.error();
    }
    const auto kind = home::event_kind_of(options.kind);
    if (!options.kind.empty() && !kind) {
        return Error{ErrorCode::WrongUsage,
                     "no kind of event is called \"" + options.kind + "\"; there are " + kinds_in_words()};
    }
    auto events = store->events(*plant != nullptr ? std::optional{(*plant)->id} : std::nullopt);
    if (!events) {
        return events.error();
    }
    if (kind) {
        std::erase_if(*events, [&](const home::Event& event) { return event.kind != *kind; });
    }
    const auto first = events->size() - std::min(events->size(), options.count);
    Json json = Json::array();
    std::ostringstream text;
    for (auto at = first; at < events->size(); ++at) {
        json.push_back(entry_json((*events)[at]));
        text << sentence_of((*events)[at], *home) << '\n';
    }
    if (first > 0) {
        text << first << " earlier entries; --count " << events->size() << " shows all.\n";
    } else if (events->empty()) {
        text << (*plant == nullptr && !kind ? "Nothing is in the journal yet.\n" : "The journal has nothing of that.\n");
    }
    return Answer{{{"events", json}, {"earlier", first}}, std::move(text).str(), {}};
}

} // namespace

void add_log_event(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<EventOptions>();
    CLI::App& command = *group.add_subcommand("event", "Something that happened to plants, at a spot or at home");
    command.footer("Example:\n  lathhouse log event pest_found --plant Lemon --detail pest=mealybug");
    command.fallthrough();
    command.add_option("kind", options->kind, kinds_in_words())->required()->type_name("KIND");
    command.add_option("--plant", options->plants, "Plant by id or name; may be given more than once")
        ->type_name("ID");
    command.add_option("--spot", options->spot, "Spot by id or name: where it went or happened")->type_name("ID");
    command.add_option("--date", options->date, "When it happened (default: today)")->type_name("YYYY-MM-DD");
    command.add_option("--note", options->note, "Anything worth keeping");
    command.add_option("--detail", options->details, "What else is known, such as pest=mealybug or ppm=100")
        ->type_name("NAME=VALUE");
    commands.on_run(command, [options](const Globals& globals) { return log_event(globals, *options); });

    for (const bool undo : {true, false}) {
        CLI::App& turn = *group.add_subcommand(undo ? "undo" : "redo",
                                               undo ? "Takes back the entry that was made last"
                                                    : "Lets the entry that was undone last count again");
        turn.footer(std::string{"Example:\n  lathhouse log "} + (undo ? "undo" : "redo"));
        turn.fallthrough();
        commands.on_run(turn, [undo](const Globals& globals) { return turn_back(globals, undo); });
    }

    auto shown = std::make_shared<HistoryOptions>();
    CLI::App& show = *group.add_subcommand("show", "What the journal holds, the latest last");
    show.footer("Example:\n  lathhouse log show --plant Lemon");
    show.fallthrough();
    show.add_option("--plant", shown->plant, "Of one plant, by id or name")->type_name("ID");
    show.add_option("--kind", shown->kind, "Of one kind of event")->type_name("KIND");
    show.add_option("--count", shown->count, "The last so many (default 30)")->check(CLI::Range(1, 1000000));
    commands.on_run(show, [shown](const Globals& globals) { return history(globals, *shown); });
}

Result<std::optional<TurnedEntry>> turn_last_entry(const Globals& globals, bool undo)
{
    using Direction = journal::HouseholdStore::Direction;
    auto store = store_of(globals);
    if (!store) {
        return store.error();
    }
    const auto entry = store->turn_last(undo ? Direction::Undo : Direction::Redo, now());
    if (!entry) {
        return entry.error();
    }
    if (!*entry) {
        return std::optional<TurnedEntry>{};
    }
    return with_gone_plants(*store).transform([&](const home::Household& home) {
        return std::optional{TurnedEntry{**entry, home}};
    });
}

} // namespace lathhouse::cli
