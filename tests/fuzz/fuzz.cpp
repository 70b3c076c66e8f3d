// Gives every reader of the program inputs that nobody would write. fuzz [--seconds N] [--seed N] [--only NAME]
// Each reader runs in a process of its own, so that what ends one is counted and the others go on; the input that ended
// it is kept as fuzz-failure-NAME, and `fuzz --only NAME --input FILE` gives it again.

#include "tests/fuzz/mutation.h"
#include "tests/fuzz/readers.h"

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <optional>
#include <sstream>

#include <fcntl.h>
#include <signal.h>
#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using namespace lathhouse::fuzz;
namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::size_t kMostInput = std::size_t{2} << 20U;
constexpr int kHangSeconds = 60; ///< No input may take so long, also under the sanitizers on a busy machine.

/// What the child leaves for its parent to see.
struct Shared {
    volatile std::uint64_t inputs;
    volatile std::size_t length;
    char input[kMostInput];
};

std::string content_of(const fs::path& file)
{
    std::ostringstream text;
    text << std::ifstream{file, std::ios::binary}.rdbuf();
    return text.str();
}

std::vector<std::string> seeds_of(const Reader& reader)
{
    auto seeds = reader.seeds;
    const auto folder = fs::path{LATHHOUSE_SOURCE} / "tests/fuzz/corpus" / reader.name;
    std::error_code failure;
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator{folder, failure}) {
        files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    for (const auto& file : files) {
        seeds.push_back(content_of(file));
    }
    return seeds;
}

void run_reader(const Reader& reader, const std::vector<std::string>& seeds, std::uint64_t seed, double seconds, Shared& shared)
{
    const auto end = Clock::now() + std::chrono::duration<double>(seconds);
    for (std::uint64_t number = 0; Clock::now() < end; ++number) {
        std::mt19937_64 draw{seed * 1'000'003 + number};
        // The seeds themselves first: they must be read too.
        const auto input = number < seeds.size() ? seeds[number] : mutated(seeds, draw);
        shared.length = std::min(input.size(), kMostInput);
        std::memcpy(shared.input, input.data(), shared.length);
        reader.read(input);
        shared.inputs = number + 1;
    }
}

/// Whether the reader held.
bool fuzz(const Reader& reader, std::uint64_t seed, double seconds, Shared& shared)
{
    const auto seeds = seeds_of(reader);
    if (seeds.empty()) {
        std::printf("%-14s has no seeds\n", reader.name.c_str());
        return false;
    }
    shared.inputs = 0;
    const auto begin = Clock::now();
    std::fflush(stdout);
    const pid_t child = fork();
    if (child == 0) {
        run_reader(reader, seeds, seed, seconds, shared);
        _exit(0);
    }
    int status = 0;
    std::uint64_t seen = 0;
    auto since = Clock::now();
    bool hangs = false;
    while (waitpid(child, &status, WNOHANG) == 0) {
        if (shared.inputs != seen) {
            seen = shared.inputs;
            since = Clock::now();
        } else if (Clock::now() - since > std::chrono::seconds{kHangSeconds}) {
            hangs = true;
            kill(child, SIGKILL);
            waitpid(child, &status, 0);
            break;
        }
        usleep(20'000);
    }
    const double took = std::chrono::duration<double>(Clock::now() - begin).count();
    const bool held = !hangs && WIFEXITED(status) && WEXITSTATUS(status) == 0;
    std::printf("%-14s %9llu inputs in %5.1f s%s\n", reader.name.c_str(), static_cast<unsigned long long>(shared.inputs), took,
                held ? "" : hangs ? "  HANGS" : "  FAILED");
    if (!held) {
        const auto kept = "fuzz-failure-" + reader.name;
        std::ofstream{kept, std::ios::binary}.write(shared.input, static_cast<std::streamsize>(shared.length));
        std::printf("               the input is kept in %s\n", fs::absolute(kept).c_str());
    }
    return held;
}

} // namespace

int main(int argc, char** argv)
{
    double seconds = 60.0;
    std::uint64_t seed = 1;
    std::string only;
    std::string input;
    for (int index = 1; index + 1 < argc; index += 2) {
        const std::string option = argv[index];
        if (option == "--seconds") {
            seconds = std::atof(argv[index + 1]);
        } else if (option == "--seed") {
            seed = static_cast<std::uint64_t>(std::atoll(argv[index + 1]));
        } else if (option == "--only") {
            only = argv[index + 1];
        } else if (option == "--input") {
            input = argv[index + 1];
        } else {
            std::fprintf(stderr, "fuzz [--seconds N] [--seed N] [--only NAME [--input FILE]]\n");
            return 2;
        }
    }
    // In memory where there is such a place: most inputs are files for a moment.
    auto pattern = (fs::is_directory("/dev/shm") ? fs::path{"/dev/shm"} : fs::temp_directory_path()) / "lathhouse_fuzz_XXXXXX";
    auto scratch = pattern.string();
    if (mkdtemp(scratch.data()) == nullptr) {
        std::perror("fuzz");
        return 1;
    }
    int failures = 0;
    std::uint64_t inputs = 0;
    {
        auto readers = all_readers(scratch);
        std::erase_if(readers, [&](const Reader& reader) { return !only.empty() && reader.name != only; });
        if (!input.empty() && readers.size() == 1) {
            readers.front().read(content_of(input));
            std::printf("held\n");
        } else {
            void* memory = mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
            auto& shared = *static_cast<Shared*>(memory);
            for (const auto& reader : readers) {
                failures += fuzz(reader, seed, seconds / static_cast<double>(readers.size()), shared) ? 0 : 1;
                inputs += shared.inputs;
            }
            std::printf("%llu inputs to %zu readers, %d failed\n", static_cast<unsigned long long>(inputs), readers.size(), failures);
            failures += readers.empty() ? 1 : 0;
        }
    }
    std::error_code ignored;
    fs::remove_all(scratch, ignored);
    return failures == 0 ? 0 : 1;
}
