#pragma once

#include "app/words/words.h"
#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/climate/station_table.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::cli {

using Json = nlohmann::ordered_json;

/// What holds for every command.
struct Globals {
    std::filesystem::path home; ///< The household's folder.
    bool home_given = false;    ///< Named by the caller rather than the user's data folder.
    calendar::Date today;
    words::UnitSystem units = words::UnitSystem::Metric;
};

/// As they are said in English.
inline std::vector<std::string> texts(const std::vector<Said>& all)
{
    std::vector<std::string> said;
    for (const auto& one : all) {
        said.push_back(one.text);
    }
    return said;
}

/// What a command has to say. Both forms are made; one is printed.
struct Answer {
    Json json;
    std::string text;                  ///< Ends with a line end.
    std::vector<std::string> warnings; ///< One line each on standard error, before the answer.
};

/// What a command does once its options are read.
using Action = std::function<Result<Answer>(const Globals&)>;

/// The program's commands. A command's file has one function `void add_NAME(Commands&)` that declares its
/// options on the CLI::App it gets from `add` and hands over its action; options live in a shared_ptr that
/// the action captures.
class Commands {
public:
    explicit Commands(CLI::App& program) : program_(program) {}
    /// example: a command line that works as it stands, shown by --help.
    CLI::App& add(const std::string& name, const std::string& description, const std::string& example);
    /// Declares what the command does. A command that only groups others has no action.
    void on_run(CLI::App& command, Action action);
    /// The action of the command that was asked for; nullopt where none was.
    std::optional<Action> chosen() const;

private:
    CLI::App& program_;
    std::vector<std::pair<CLI::App*, Action>> actions_;
};

/// Opens the window (arguments: what the caller still has to say to it). Absent in builds without one.
struct WindowRequest {
    std::string page;
    bool self_test = false;
    std::optional<std::filesystem::path> picture;
};
using OpenWindow = std::function<int(const Globals&, const WindowRequest&)>;

/// The whole command line. Returns the exit status: 0, 1 (could not be done) or 2 (wrong usage, malformed
/// content).
int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err,
        const OpenWindow& open_window);

/// 2 for what the caller wrote wrongly (usage, malformed content, a value out of range), else 1.
int exit_status(const Error& error);

// --- What several commands need
// ---------------------------------------------------------------------------------

/// Number for JSON: at most six decimals, so that equal input gives equal text. NaN and infinity give null.
Json json_number(double value);
Json json_day(const std::optional<calendar::DayOfYear>& day); ///< "MM-DD" or null.
Json json_date(const std::optional<calendar::Date>& date);   ///< "YYYY-MM-DD" or null.

/// A place named on the command line.
struct PlaceOptions {
    std::string at;
    std::string town; ///< Given by name instead.
    std::optional<double> elevation_metres;
};
/// Declares `--at` and `--place`. required: help says so; that one of them is given is checked by
/// position_of.
void add_position_options(CLI::App& command, PlaceOptions& options, bool required);
/// As add_position_options, and `--elevation`.
void add_place_options(CLI::App& command, PlaceOptions& options, bool required);
/// Whether the caller named a place.
bool is_given(const PlaceOptions& options);
/// Errors: WrongUsage where none or both of `--at` and `--place` are given; as read_position and
/// TownTable::only.
Result<Position> position_of(const PlaceOptions& options);
/// As given, else the height of the town that was named.
std::optional<Metres> elevation_of(const PlaceOptions& options);

/// Declares a repeatable option of one number each; negative numbers are taken with and without '='.
CLI::Option* add_numbers(CLI::App& command, const std::string& name, std::vector<double>& values,
                         const std::string& description);
/// Reads "1991-2020". Errors: Malformed, OutOfRange (last before first).
Result<climate::BasePeriod> parse_base_period(std::string_view text);
/// The shipped table, loaded once. Errors: as StationTable::find and load.
Result<const climate::StationTable*> stations();

} // namespace lathhouse::cli
