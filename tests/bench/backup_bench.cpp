// Times a backup, a restore and a check of a household with photos beside cp -r, zip -0 and sha256sum on the same files, in
// turn: backup_bench [--files N] [--megabytes EACH] [Google Benchmark's own] (default 300 files of 1 MB, of random bytes as
// photos are nearly).
#include "core/base/sha256.h"
#include "core/home/demonstration.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_check.h"
#include "core/journal/household_store.h"
#include "tests/bench/recorded_times.h"

#include <cstdlib>
#include <fstream>
#include <random>

namespace fs = std::filesystem;
using namespace lathhouse;

int main(int argc, char** argv)
{
    int files = 300;
    double each = 1.0;
    for (int i = 1; i + 1 < argc; ++i) {
        const std::string option = argv[i];
        if (option == "--files") {
            files = std::atoi(argv[i + 1]);
        } else if (option == "--megabytes") {
            each = std::atof(argv[i + 1]);
        }
    }
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
    const auto shell = [&](const std::string& command) {
        return [command = "cd '" + folder.string() + "' && " + command] { return std::system(command.c_str()) == 0; };
    };
    RecordedTimes taken;
    for (int round = 0; round < 3; ++round) {
        taken.time("cp", shell("rm -rf copy && cp -r home copy && sync copy"));
        taken.time("zip", shell("rm -f plain.zip && zip -q -0 -r plain.zip home && sync plain.zip"));
        taken.time("sha256sum", shell("find home/photos -type f | xargs sha256sum > /dev/null"));
        taken.time("backup", [&] {
            return journal::back_up(folder / "home", folder / "plants.zip", journal::Existing::Replaced, today).has_value();
        });
        taken.time("restore", [&] {
            fs::remove_all(folder / "new");
            return journal::restore(folder / "plants.zip", folder / "new").has_value();
        });
        taken.time("check", [&] { return journal::check_household(folder / "new").has_value(); });
    }
    taken.tell("backup", "megabytes", files * each);
    fs::remove_all(folder);
    return taken.tell_all(argc, argv);
}
