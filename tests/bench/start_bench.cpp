#include "tests/bench/large_household.h"
#include "tests/bench/recorded_times.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

namespace lathhouse {
namespace {

constexpr int kTurns = 7;
constexpr int kMeasurements = 200'000;
const calendar::Date kToday{2026, 5, 16};

/// What the program prints; ends this one where it fails. It is the one built beside the benchmarks.
std::string said_by_program(const std::string& words)
{
    const std::string line = "'" LATHHOUSE_PROGRAM "' --on " + calendar::to_text(kToday) + " " + words + " 2>/dev/null </dev/null";
    FILE* said = popen(line.c_str(), "r");
    if (said == nullptr) {
        std::perror("start_bench");
        std::exit(1);
    }
    std::string text;
    char some[4096];
    for (std::size_t read = 0; (read = std::fread(some, 1, sizeof some, said)) > 0;) {
        text.append(some, read);
    }
    if (pclose(said) != 0) {
        std::fprintf(stderr, "start_bench: this failed: %s\n", line.c_str());
        std::exit(1);
    }
    return text;
}

/// First frame of the window from main on, and the memory that it has when all pages were open, as its self-test tells
/// them; and how long the command line takes for its list of plants, from the shell's word to the end.
void measure(RecordedTimes& taken, const std::filesystem::path& household, const std::string& name)
{
    const std::string home = "--home '" + household.string() + "' ";
    for (int turn = 0; turn < kTurns; ++turn) {
        const auto answer = nlohmann::json::parse(said_by_program(home + "window --self-test"));
        taken.add("first_frame/" + name, 0.001 * answer.at("first_frame_ms").get<double>());
        taken.tell("first_frame/" + name, "memory_mb", answer.at("memory_mb").get<double>());
        taken.time("list_plants/" + name, [&] { return !said_by_program(home + "list plants").empty(); });
    }
}

} // namespace
} // namespace lathhouse

/// How the program starts, in processes of its own: the window, drawn by software into memory, and the command line.
int main(int argc, char** argv)
{
    using namespace lathhouse;
    setenv("QT_QPA_PLATFORM", "offscreen", 1);
    setenv("QT_QUICK_BACKEND", "software", 1);
    RecordedTimes taken;
    for (int turn = 0; turn < kTurns; ++turn) {
        taken.time("says_version", [] { return !said_by_program("--version").empty(); });
        taken.time("shell", [] { return std::system("true") == 0; });
    }
    const LargeHousehold large(kMeasurements, kToday);
    // Beside the large one, so that it goes with it.
    const auto demonstration = large.folder().parent_path() / "demonstration";
    said_by_program("demo '" + demonstration.string() + "'");
    measure(taken, demonstration, "demonstration");
    measure(taken, large.folder(), "large");
    return taken.tell_all(argc, argv);
}
