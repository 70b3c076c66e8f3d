#pragma once

#include "app/cli/commands.h"

#include <nlohmann/json.hpp>

#include <sstream>
#include <string>
#include <vector>

namespace lathhouse::cli {

struct Ran {
    int status;
    std::string out;
    std::string err;
    /// The answer as JSON. Precondition: it was asked for with --json.
    nlohmann::json json() const { return nlohmann::json::parse(out); }
};

/// Runs the program's command line inside the test.
inline Ran run_command(std::vector<std::string> arguments)
{
    std::vector<const char*> argv{"lathhouse"};
    for (const auto& argument : arguments) {
        argv.push_back(argument.c_str());
    }
    std::ostringstream out;
    std::ostringstream err;
    const int status = run(static_cast<int>(argv.size()), argv.data(), out, err,
                           [](const Globals&, const WindowRequest&) { return 42; });
    return {status, out.str(), err.str()};
}

/// One line, begins with the program's name, nothing on standard output.
inline bool is_one_clear_error(const Ran& ran)
{
    return ran.out.empty() && ran.err.starts_with("lathhouse: ") &&
           std::count(ran.err.begin(), ran.err.end(), '\n') == 1 && ran.err.back() == '\n';
}

} // namespace lathhouse::cli
