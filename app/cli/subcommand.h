#pragma once

#include "app/cli/commands.h"

#include <CLI/CLI.hpp>

#include <string>

namespace lathhouse::cli {

/// A command within a group; example: a command line that works as it stands.
inline CLI::App& add_subcommand(CLI::App& group, const char* name, const char* description, const char* example)
{
    CLI::App& command = *group.add_subcommand(name, description);
    command.footer(std::string{"Example:\n  "} + example);
    command.fallthrough();
    return command;
}

} // namespace lathhouse::cli
