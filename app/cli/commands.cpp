#include "app/cli/commands.h"

#include "core/base/parse.h"
#include "core/calendar/day_of_year.h"

#include <cmath>

namespace lathhouse::cli {

CLI::App& Commands::add(const std::string& name, const std::string& description, const std::string& example)
{
    CLI::App& command = *program_.add_subcommand(name, description);
    command.footer("Example:\n  " + example);
    command.fallthrough();
    return command;
}

void Commands::on_run(CLI::App& command, Action action)
{
    actions_.emplace_back(&command, std::move(action));
}

std::optional<Action> Commands::chosen() const
{
    for (const auto& [command, action] : actions_) {
        // A command that has commands of its own counts as asked for only where none of them is.
        if (command->parsed() && command->get_subcommands().empty()) {
            return action;
        }
    }
    return std::nullopt;
}

int exit_status(const Error& error)
{
    switch (error.code) {
    case ErrorCode::OutOfRange:
    case ErrorCode::Malformed:
    case ErrorCode::WrongUsage:
        return 2;
    default:
        return 1;
    }
}

Json json_number(double value)
{
    if (!std::isfinite(value)) {
        return nullptr;
    }
    const double rounded = std::round(value * 1e6) / 1e6;
    return rounded == 0.0 ? 0.0 : rounded; // No "-0.0".
}

Json json_day(const std::optional<calendar::DayOfYear>& day)
{
    return day ? Json(day->to_text()) : Json(nullptr);
}

Json json_date(const std::optional<calendar::Date>& date)
{
    return date ? Json(calendar::to_text(*date)) : Json(nullptr);
}

CLI::Option* add_numbers(CLI::App& command, const std::string& name, std::vector<double>& values,
                         const std::string& description)
{
    return command.add_option(name, values, description)
        ->expected(1)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

Result<climate::BasePeriod> parse_base_period(std::string_view text)
{
    const auto pieces = split(text, '-');
    if (pieces.size() == 2) {
        const auto first = parse_integer(pieces[0]);
        const auto last = parse_integer(pieces[1]);
        if (first && last) {
            if (*first > *last || *first < 1700 || *last > 2199) {
                return Error{ErrorCode::OutOfRange,
                             "the base period " + std::string{text} +
                                 " must run from an earlier to a later year of 1700 to 2199"};
            }
            return climate::BasePeriod{*first, *last};
        }
    }
    return Error{ErrorCode::Malformed,
                 "\"" + std::string{text} + "\" is no base period; write it as 1991-2020"};
}

} // namespace lathhouse::cli
