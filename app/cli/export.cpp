#include "app/cli/all_commands.h"
#include "app/clock.h"
#include "app/cli/household_facts.h"
#include "app/cli/photo_options.h"
#include "app/cli/round_calendar.h"
#include "app/cli/tables.h"
#include "app/words/calendar_words.h"
#include "core/base/csv.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct CalendarOptions {
    std::string file;
    int days = words::kUsualCalendarDays;
    std::optional<int> alarm;
};

Result<Answer> export_calendar(const Globals& globals, const CalendarOptions& options)
{
    const auto facts = household_facts(globals);
    if (!facts) {
        return facts.error();
    }
    const auto events = write_round_calendar(*facts, globals.today, now(), options.days, options.alarm, globals.units, options.file);
    if (!events) {
        return events.error();
    }
    return Answer{{{"file", options.file}, {"events", *events}},
                  "Wrote " + std::to_string(*events) + " days and spells to " + options.file +
                      ". It names your plants and spots; your place's coordinates are not in it. Export again "
                      "whenever the plan changes: the same matters keep their names, so that they are moved, not "
                      "doubled. Looks at the water are not in it.\n",
                  texts(facts->climate.warnings)};
}

} // namespace

void add_export(Commands& commands)
{
    CLI::App& group = commands.add("export", "Writes what others can read",
                                   "lathhouse export calendar plants.ics");
    group.require_subcommand(1);
    add_photo_exports(commands, group);
    auto options = std::make_shared<CalendarOptions>();
    CLI::App& command = *group.add_subcommand("calendar", "The year's tasks as a calendar file (RFC 5545)");
    command.footer("Example:\n  lathhouse export calendar plants.ics --alarm 6");
    command.fallthrough();
    command.add_option("file", options->file, "The file to write; one that is there is replaced")
        ->required()
        ->type_name("FILE.ics");
    command.add_option("--days", options->days, "From today (default 365)")->check(CLI::Range(1, words::kMostCalendarDays));
    command.add_option("--alarm", options->alarm, "An alarm so many hours before midnight of the day")
        ->check(CLI::Range(0, 72));
    commands.on_run(command, [options](const Globals& globals) { return export_calendar(globals, *options); });
    add_export_csv(commands, group);
}

} // namespace lathhouse::cli
