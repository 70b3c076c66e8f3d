#include "app/clock.h"
#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "app/words/round_words.h"
#include "core/base/parse.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

constexpr int kLongestRound = 60; // Days.

struct RoundOptions {
    int days = 1;
};

/// The round of one date with what its words need.
struct DayRound {
    calendar::Date date;
    std::vector<plan::Task> tasks;
};

Json json_of(const DayRound& round, const home::Household& household, words::UnitSystem units, std::size_t& order)
{
    Json tasks = Json::array();
    for (const auto& task : round.tasks) {
        tasks.push_back({{"order", ++order},
                         {"date", calendar::to_text(round.date)},
                         {"class", plan::to_string(task.state)},
                         {"spot", task.spot ? Json(*task.spot) : Json(nullptr)},
                         {"plant", task.plant ? Json(*task.plant) : Json(nullptr)},
                         {"task", words::task(task, household, units)},
                         {"why", words::task_why(task, household, units)},
                         {"latest", calendar::to_text(task.latest)},
                         {"minutes", task.minutes},
                         {"key", task.key},
                         {"cautions", words::task_cautions(task, household)}});
    }
    return tasks;
}

/// Cautions are said once a round, with a letter at the tasks that they belong to.
class Cautions {
public:
    std::string letters_of(const std::vector<std::string>& texts)
    {
        std::string letters;
        for (const auto& text : texts) {
            auto known = std::ranges::find(texts_, text);
            if (known == texts_.end()) {
                texts_.push_back(text);
                known = texts_.end() - 1;
            }
            const auto at = known - texts_.begin();
            const auto letter = static_cast<char>('a' + at % 26);
            letters += (letters.empty() ? " [" : ", ") + std::string(static_cast<std::size_t>(at / 26 + 1), letter);
        }
        return letters.empty() ? letters : letters + "]";
    }
    void say(std::ostream& text) const
    {
        for (std::size_t at = 0; at < texts_.size(); ++at) {
            text << "[" << std::string(at / 26 + 1, static_cast<char>('a' + at % 26)) << "] " << texts_[at] << '\n';
        }
    }

private:
    std::vector<std::string> texts_;
};

void say_day(std::ostream& text, const DayRound& round, const home::Household& household, words::UnitSystem units,
             std::size_t& order, Cautions& cautions)
{
    int minutes = 0;
    for (const auto& task : round.tasks) {
        minutes += task.minutes;
    }
    text << words::full_day(round.date) << ", ";
    if (round.tasks.empty()) {
        text << "nothing is due\n";
        return;
    }
    text << round.tasks.size() << (round.tasks.size() == 1 ? " task" : " tasks") << ", about " << minutes
         << " minutes\n";
    std::optional<plan::PestState> state;
    const home::Spot* spot = nullptr; // The one whose name stands above.
    for (const auto& task : round.tasks) {
        if (state != task.state) {
            state = task.state;
            spot = nullptr;
            text << "  " << words::round_class(task.state) << '\n';
        }
        if (const auto* here = task.spot ? household.spot(*task.spot) : nullptr; here != nullptr && here != spot) {
            spot = here;
            text << "    " << here->name << '\n';
        }
        const auto* plant = task.plant ? household.plant(*task.plant) : nullptr;
        text << "    " << words::right_aligned(std::to_string(++order), 4) << "  "
             << words::padded(plant != nullptr ? plant->name : std::string{}, 18) << "  "
             << words::task(task, household, units) << " (" << words::task_why(task, household, units);
        if (task.latest > round.date) {
            text << "; can wait until " << words::day(task.latest);
        }
        text << ")" << cautions.letters_of(words::task_cautions(task, household)) << '\n';
    }
}

std::vector<DayRound> rounds(const Globals& globals, const plan::HouseholdFacts& facts, int days)
{
    const auto nights = facts.climate.nights();
    const auto parts = plan::round_parts(facts, nights, globals.today, plan::kUsualRisk);
    const auto household = facts.household();
    std::vector<DayRound> all;
    for (int day = 0; day < days; ++day) {
        const auto date = globals.today + calendar::Days{day};
        all.push_back({date, plan::round_of(household, facts.events, parts, date)});
    }
    return all;
}

Result<Answer> round(const Globals& globals, const RoundOptions& options)
{
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    const auto all = rounds(globals, *facts, options.days);
    const auto household = facts->household();
    Json tasks = Json::array();
    std::ostringstream text;
    Cautions cautions;
    std::size_t in_json = 0;
    std::size_t in_text = 0;
    for (const auto& day : all) {
        for (const auto& task : json_of(day, household, globals.units, in_json)) {
            tasks.push_back(task);
        }
        say_day(text, day, household, globals.units, in_text, cautions);
    }
    text << '\n';
    cautions.say(text);
    if (plan::nights_of_forecast(facts->log.forecasts, globals.today).empty()) {
        text << "No forecast is kept, so tonight is not in the round: `lathhouse tonight --low C`.\n";
    }
    text << "`lathhouse round done N` ticks a task, `postpone N --until DATE` and `skip N --why TEXT` leave it; "
            "`lathhouse log undo` takes that back.\n";
    return Answer{{{"tasks", tasks}}, std::move(text).str(), texts(facts->climate.warnings)};
}

struct TickOptions {
    std::string which; ///< Number of today's round, or the key.
    std::string until;
    std::string why;
};

Result<Answer> tick(const Globals& globals, const TickOptions& options, home::EventKind kind)
{
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    const auto all = rounds(globals, *facts, 1);
    const auto& tasks = all.front().tasks;
    const auto number = parse_integer(options.which);
    const auto found = std::ranges::find_if(tasks, [&](const plan::Task& task) {
        return task.key == options.which || (number && &task - tasks.data() + 1 == *number);
    });
    if (found == tasks.end()) {
        return Error{ErrorCode::NotFound, "today's round has no task " + options.which + "; it has " +
                                              std::to_string(tasks.size()) + ", see `lathhouse round`"};
    }
    auto event = plan::done_event(*found, globals.today, now());
    if (kind != home::EventKind::TaskDone) {
        event = {found->plant, kind, std::nullopt, globals.today, now(), options.why, {{"task", found->key}}};
    }
    if (kind == home::EventKind::TaskPostponed) {
        const auto until = date_of(options.until, globals.today);
        if (!until) {
            return until.error();
        }
        if (*until <= globals.today) {
            return Error{ErrorCode::OutOfRange, "--until " + options.until + " is not after today"};
        }
        event.details["until"] = calendar::to_text(*until);
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (const auto recorded = store->record(std::span<const home::Event>{&event, 1}); !recorded) {
        return recorded.error();
    }
    std::vector<std::string> warnings;
    if (kind == home::EventKind::TaskPostponed && *calendar::parse_date(event.details["until"]) > found->latest) {
        warnings.push_back("it can wait until " + words::day(found->latest) + " at most");
    }
    const auto household = facts->household();
    const char* said = kind == home::EventKind::TaskDone        ? "Done: "
                       : kind == home::EventKind::TaskPostponed ? "Put off: "
                                                                : "Left out: ";
    return Answer{{{"task", found->key}, {"event", home::to_string(event.kind)}},
                  said + words::task(*found, household, globals.units) + "\n", std::move(warnings)};
}

void declare_tick(Commands& commands, CLI::App& group, const char* name, const char* description,
                  home::EventKind kind)
{
    auto options = std::make_shared<TickOptions>();
    CLI::App& command = *group.add_subcommand(name, description);
    command.fallthrough();
    command.add_option("task", options->which, "Its number in today's round, or its key")
        ->required()
        ->type_name("N");
    std::string example = std::string{"lathhouse round "} + name + " 1";
    if (kind == home::EventKind::TaskPostponed) {
        command.add_option("--until", options->until, "First date on which it is due again")
            ->required()
            ->type_name("YYYY-MM-DD");
        example += " --until 2027-05-20";
    } else if (kind == home::EventKind::TaskSkipped) {
        command.add_option("--why", options->why, "The reason, for the journal")->required();
        example += " --why \"the pot is still wet\"";
    }
    command.footer("Example:\n  " + example);
    commands.on_run(command,
                    [options, kind](const Globals& globals) { return tick(globals, *options, kind); });
}

} // namespace

void add_round(Commands& commands)
{
    auto options = std::make_shared<RoundOptions>();
    CLI::App& command = commands.add("round", "What to do today, in an order in which pests do not travel",
                                     "lathhouse round --days 7");
    command.add_option("--days", options->days, "Of so many days from today (default 1)")
        ->check(CLI::Range(1, kLongestRound));
    commands.on_run(command, [options](const Globals& globals) { return round(globals, *options); });
    declare_tick(commands, command, "done", "Ticks a task of today's round", home::EventKind::TaskDone);
    declare_tick(commands, command, "postpone", "Puts a task off", home::EventKind::TaskPostponed);
    declare_tick(commands, command, "skip", "Leaves a task out", home::EventKind::TaskSkipped);
}

} // namespace lathhouse::cli
