#include "app/cli/commands.h"

#include "app/cli/all_commands.h"
#include "app/cli/export_sheet.h"
#include "app/cli/folder_warning.h"
#include "app/cli/household_options.h"
#include "app/cli/moves.h"
#include "core/base/parse.h"
#include "core/calendar/time_zone.h"
#include "core/journal/folder_kind.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <memory>

namespace lathhouse::cli {
namespace {

std::filesystem::path data_folder()
{
    if (const char* set = std::getenv("XDG_DATA_HOME"); set != nullptr && *set != '\0') {
        return std::filesystem::path{set} / "lathhouse";
    }
    const char* home = std::getenv("HOME");
    return std::filesystem::path{home != nullptr ? home : "."} / ".local/share/lathhouse";
}

/// By the clock at the household's place, so that a trip to another time zone does not change what day it is there.
calendar::Date date_of_the_clock(const std::filesystem::path& home)
{
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    if (const auto name = journal::HouseholdStore::time_zone_in(home)) {
        if (const auto there = calendar::TimeZone::named(*name)) {
            return there->local_date(now);
        }
    }
    const auto zone = calendar::TimeZone::of_system();
    return zone ? zone->local_date(now) : calendar::utc_date(now);
}

int report(std::ostream& err, const Error& error)
{
    err << "lathhouse: " << error.message << '\n';
    return exit_status(error);
}

bool has_display()
{
    return std::ranges::any_of(std::array{"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"},
                               [](const char* name) {
                                   const char* set = std::getenv(name);
                                   return set != nullptr && *set != '\0';
                               });
}

/// Of a command that writes into the household, what is to be said of the folder that it lies in.
std::vector<std::string> warnings_of_folder(const Globals& globals, const CLI::App& program)
{
    const auto kind = writes_into_household(program) && has_household(globals) ? journal::folder_kind(globals.home) : std::nullopt;
    const auto warning = kind ? folder_warning(*kind, globals.home) : std::nullopt;
    return warning ? std::vector{*warning} : std::vector<std::string>{};
}

/// Usage errors of the option reader in our one-line form.
std::string sentence_of_misuse(const CLI::ParseError& error)
{
    std::string text = error.what();
    for (char& letter : text) {
        letter = letter == '\n' ? ' ' : letter;
    }
    const auto line = std::string{trimmed(text)};
    return line + "; --help shows the options";
}

} // namespace

int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err,
        const OpenWindow& open_window)
{
    return run(argc, argv, out, err, open_window, no_sheets());
}

int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err,
        const OpenWindow& open_window, const PrintSheet& print_sheet)
{
    CLI::App program{
        "Plans the year of plants kept in pots: when each may go out and must come in, with a stated "
        "risk, from the night lows of its place.",
        "lathhouse"};
    program.set_version_flag("--version", "lathhouse 0.1.0");
    program.require_subcommand(0, 1);
    program.footer("Frost dates are chances, not promises. Every command has --help with an example.");

    std::string home;
    std::string today;
    std::string units = "metric";
    bool json = false;
    program.add_option("--home", home, "The household's folder")->type_name("DIR");
    program.add_option("--on", today, "The date that counts as today")->type_name("YYYY-MM-DD");
    program.add_option("--units", units, "metric or us")->check(CLI::IsMember({"metric", "us"}));
    program.add_flag("--json", json, "One JSON document instead of text");

    Commands commands{program};
    add_all(commands);
    add_export_sheet(commands, *program.get_subcommand("export"), print_sheet);

    auto window = std::make_shared<WindowRequest>();
    CLI::App& window_command =
        commands.add("window", "Opens the window", "lathhouse window --picture year.png");
    window_command.add_option("--page", window->page, "Page to show: round, year, plants, seeds, home, plant:ID, home:SECTION or start (default year)")->type_name("NAME");
    window_command.add_flag("--self-test", window->self_test,
                            "Loads every page on the demonstration household without a display");
    // Read by whoever opens the window, before Qt is there; here it is only checked.
    std::string language;
    window_command.add_option("--language", language, "Language of the window: en, de, es; mirror tries its layout with long text from right to left (default: the one chosen in it, else the desktop's)")
        ->check(CLI::IsMember({"en", "de", "es", "mirror"}))
        ->type_name("CODE");
    window_command.add_option("--picture", window->picture, "Saves what the page shows")
        ->type_name("FILE.png");

    try {
        program.parse(argc, argv);
    } catch (const CLI::CallForHelp&) {
        const auto asked = program.get_subcommands();
        out << (asked.empty() ? program.help() : asked.front()->help());
        return 0;
    } catch (const CLI::CallForVersion&) {
        out << program.version() << '\n';
        return 0;
    } catch (const CLI::ParseError& error) {
        return report(err, Error{ErrorCode::WrongUsage, sentence_of_misuse(error)});
    }

    Globals globals{.home = home.empty() ? data_folder() : std::filesystem::path{home},
                    .home_given = !home.empty(),
                    .today = {},
                    .units = units == "us" ? words::UnitSystem::UsCustomary : words::UnitSystem::Metric};
    if (today.empty()) {
        globals.today = date_of_the_clock(globals.home);
    } else {
        const auto date = calendar::parse_date(today);
        if (!date) {
            return report(err, Error{date.error().code, "--on: " + date.error().message});
        }
        globals.today = *date;
    }

    auto action = commands.chosen();
    if (!action && (window_command.parsed() || has_display())) {
        return open_window(globals, *window);
    }
    if (!action) { // No command and no display: the main job as text.
        action = [](const Globals& all) -> Result<Answer> {
            const auto household = household_of(all, WithoutHousehold::ShowsDemonstration);
            if (!household) {
                return household.error();
            }
            return moves_of(all, *household, all.today, Probability::literal(0.1));
        };
    }
    const auto answer = (*action)(globals);
    if (!answer) {
        return report(err, answer.error());
    }
    for (const auto& warning : warnings_of_folder(globals, program)) {
        err << "lathhouse: warning: " << warning << '\n';
    }
    for (const auto& warning : answer->warnings) {
        err << "lathhouse: warning: " << warning << '\n';
    }
    if (json) {
        // Names and notes may hold bytes that are not UTF-8, where they came with a command or a table.
        out << answer->json.dump(-1, ' ', false, Json::error_handler_t::replace) << '\n';
    } else {
        out << answer->text;
    }
    out.flush();
    if (!out) {
        return report(err,
                      Error{ErrorCode::Unwritable, "the answer could not be written; the disk may be full"});
    }
    // That a household is not sound is an answer and no error, and yet scripts must see it.
    return answer->json.contains("sound") && answer->json["sound"] == false ? 1 : 0;
}

} // namespace lathhouse::cli
