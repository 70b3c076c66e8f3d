#include "app/cli/demo.h"
#include "app/cli/shell_word.h"

#include "core/home/demonstration.h"
#include "core/journal/demonstration_folder.h"
#include "core/journal/photo_book.h"

#include <cstdint>
#include <memory>
#include <optional>

namespace lathhouse::cli {
namespace {

struct DemoOptions {
    std::string folder;
    std::optional<int> plants;
    std::optional<int> spots;
    std::optional<int> photos;
    int years = 2;
    std::uint32_t seed = 1;
    std::string hemisphere = "north";
};

Result<Answer> write_demonstration(const DemoOptions& options, const Globals& globals)
{
    auto store = journal::create_demonstration(
        options.folder,
        {.today = globals.today,
         .hemisphere = options.hemisphere == "south" ? home::Hemisphere::South : home::Hemisphere::North,
         .plants = options.plants,
         .spots = options.spots,
         .years = options.years,
         .seed = options.seed},
        options.photos);
    if (!store) {
        return store.error();
    }
    const auto household = store->load();
    if (!household) {
        return household.error();
    }
    const auto events = store->events();
    if (!events) {
        return events.error();
    }
    const auto measurements = store->measurements();
    if (!measurements) {
        return measurements.error();
    }
    const auto photos = journal::PhotoBook{*store}.photos();
    if (!photos) {
        return photos.error();
    }
    const auto plants = household->plants.size();
    const auto spots = household->spots.size();
    const auto entries = events->size() + measurements->size();
    const auto& folder = options.folder;
    return Answer{
        {{"folder", folder},
         {"plants", plants},
         {"spots", spots},
         {"events", events->size()},
         {"measurements", measurements->size()},
         {"photos", photos->size()}},
        "An invented household with " + std::to_string(plants) + " plants in " + std::to_string(spots) +
            " spots, " + std::to_string(entries) + " journal entries and " + std::to_string(photos->size()) +
            " drawn photos is in " + folder +
            ".\nSee its year with: lathhouse --home " + shell_word(folder) + " moves\n",
        {}};
}

} // namespace

void add_demo(Commands& commands)
{
    auto options = std::make_shared<DemoOptions>();
    CLI::App& command =
        commands.add("demo", "Writes a demonstration household, invented and dated relative to today",
                     "lathhouse demo balcony --hemisphere south");
    command.add_option("DIR", options->folder, "A new or an empty folder")->required();
    command.add_option("--plants", options->plants, "Number of plants (default 14, chosen by hand)")
        ->type_name("N");
    command.add_option("--spots", options->spots, "Number of spots (default 6, chosen by hand)")
        ->type_name("N");
    command.add_option("--photos", options->photos, "Number of drawn photos (default those of the story, none with --plants or --spots)")
        ->type_name("N")
        ->check(CLI::NonNegativeNumber);
    command.add_option("--years", options->years, "Years of history (default 2)")->type_name("N");
    command.add_option("--seed", options->seed, "Another number gives another household (default 1)")
        ->type_name("N");
    command.add_option("--hemisphere", options->hemisphere, "north or south")
        ->check(CLI::IsMember({"north", "south"}));
    commands.on_run(command,
                    [options](const Globals& globals) { return write_demonstration(*options, globals); });
}

} // namespace lathhouse::cli
