// Times a backup, a restore and a check of a household with photos beside cp -r, zip -0 and sha256sum on the same files, in
// one run: backup_bench [FILES [MEGABYTES-EACH]] (default 1000 files of 1 MB, of random bytes as photos are nearly).
#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_check.h"
#include "core/journal/household_store.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>

namespace fs = std::filesystem;
using namespace lathhouse;

namespace {

template <class Work>
void timed(const char* what, double megabytes, Work work)
{
    const auto begin = std::chrono::steady_clock::now();
    const bool done = work();
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    std::printf("%-28s %7.2f s %8.0f MB/s%s\n", what, seconds, megabytes / seconds, done ? "" : "  FAILED");
}

} // namespace

int main(int argc, char** argv)
{
    const int files = argc > 1 ? std::atoi(argv[1]) : 1000;
    const double each = argc > 2 ? std::atof(argv[2]) : 1.0;
    auto pattern = (fs::temp_directory_path() / "lathhouse_bench_XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
        return 1;
    }
    const fs::path folder = pattern;
    const auto today = calendar::make_date(2027, 3, 1).value();
    const auto demonstration = home::demonstration({.today = today}).value();
    if (!journal::HouseholdStore::create(folder / "home", demonstration.household, demonstration.history)) {
        return 1;
    }
    std::mt19937_64 draw{1};
    std::string content(static_cast<std::size_t>(each * 1e6), '\0');
    for (int file = 0; file < files; ++file) {
        for (std::size_t at = 0; at + 8 <= content.size(); at += 8) {
            const auto value = draw();
            std::copy_n(reinterpret_cast<const char*>(&value), 8, content.begin() + static_cast<std::ptrdiff_t>(at));
        }
        const auto digest = sha256_of(content);
        const auto below = folder / "home/photos" / digest.substr(0, 2);
        fs::create_directories(below);
        std::ofstream{below / (digest + ".jpg"), std::ios::binary} << content;
    }
    const double megabytes = files * each;
    const auto shell = [&](const std::string& command) {
        return [command = "cd " + folder.string() + " && " + command] { return std::system(command.c_str()) == 0; };
    };
    for (int round = 0; round < 3; ++round) {
        timed("cp -r", megabytes, shell("rm -rf copy && cp -r home copy && sync copy"));
        timed("zip -0", megabytes, shell("rm -f plain.zip && zip -q -0 -r plain.zip home && sync plain.zip"));
        timed("sha256sum", megabytes, shell("find home/photos -type f | xargs sha256sum > /dev/null"));
        timed("backup, read back", megabytes, [&] {
            return journal::back_up(folder / "home", folder / "plants.zip", journal::Existing::Replaced, today).has_value();
        });
        timed("restore, compared", megabytes, [&] {
            fs::remove_all(folder / "new");
            return journal::restore(folder / "plants.zip", folder / "new").has_value();
        });
        timed("check", megabytes, [&] { return journal::check_household(folder / "new").has_value(); });
    }
    fs::remove_all(folder);
    return 0;
}
