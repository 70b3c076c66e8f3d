#include "app/cli/counted.h"
#include "app/cli/household_options.h"
#include "app/cli/long_work.h"
#include "app/cli/photo_options.h"
#include "app/cli/subcommand.h"
#include "core/base/csv.h"
#include "core/home/photo_spread.h"
#include "core/journal/photo_export.h"
#include "core/photo/scale_card.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct ExportOptions {
    std::string folder;
    std::string plant;
    bool with_position = false;
};

Result<Answer> export_photos(const Globals& globals, const ExportOptions& options)
{
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household) {
        return household.error();
    }
    const auto plant = plant_asked(*household, options.plant);
    if (!plant) {
        return plant.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const journal::PhotoBook book{*store};
    const auto photos = book.photos(*plant != nullptr ? std::optional{(*plant)->id} : std::nullopt);
    if (!photos) {
        return photos.error();
    }
    LongWork work{"Photos"};
    const auto report = journal::export_photos(
        book, *household, *photos, options.folder,
        options.with_position ? journal::PhotoPosition::Stays : journal::PhotoPosition::IsTakenOut,
        [&work](std::size_t done, std::size_t total) { work.count(done, total); }, LongWork::stop_asked());
    if (!report) {
        return report.error();
    }
    Json files = Json::array();
    for (const auto& file : report->files) {
        files.push_back(file.string());
    }
    std::vector<std::string> refused;
    for (const auto& one : report->refused) {
        refused.push_back(one.text);
    }
    return Answer{{{"files", files}, {"with_position", options.with_position}, {"cancelled", report->cancelled}},
                  "Wrote " + counted(report->files.size(), "photo", "photos") + " to " + options.folder +
                      (options.with_position ? ", unaltered: some may say where they were taken.\n"
                                             : "; where they were taken has been taken out, the pixels are untouched.\n") +
                      (report->cancelled ? "Stopped before the end.\n" : ""),
                  std::move(refused)};
}

struct SheetOptions {
    std::string file;
    std::vector<int> photos;
    std::string plant;
    int count = journal::kUsualOnASheet;
    int height = journal::SheetForm{}.height;
    int columns = journal::SheetForm{}.columns;
};

Result<std::vector<home::Photo>> photos_asked(const Globals& globals, const SheetOptions& options,
                                              const journal::PhotoBook& book)
{
    std::vector<home::Photo> photos;
    for (const int id : options.photos) {
        auto photo = book.photo(id);
        if (!photo) {
            return photo.error();
        }
        photos.push_back(*std::move(photo));
    }
    if (!options.plant.empty()) {
        const auto household = household_of(globals, WithoutHousehold::IsAnError);
        if (!household) {
            return household.error();
        }
        const auto plant = plant_called(*household, options.plant);
        if (!plant) {
            return plant.error();
        }
        const auto all = book.photos((*plant)->id);
        if (!all) {
            return all.error();
        }
        for (const auto place : home::spread_places(all->size(), static_cast<std::size_t>(options.count))) {
            photos.push_back((*all)[place]);
        }
    }
    if (photos.empty()) {
        return Error{ErrorCode::NotFound, "there is no photo of it yet; give one to the plant with: lathhouse log photo "
                                          "ID --plant NAME"};
    }
    return photos;
}

Result<Answer> export_sheet(const Globals& globals, const SheetOptions& options)
{
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    const journal::PhotoBook book{*store};
    const auto photos = photos_asked(globals, options, book);
    if (!photos) {
        return photos.error();
    }
    const auto written = journal::write_photo_sheet(
        *photos, [&book](const home::Photo& one) { return Result<std::filesystem::path>{book.file_of(one)}; }, options.file,
        {.height = options.height, .columns = options.columns});
    if (!written) {
        return written.error();
    }
    Json shown = Json::array();
    for (const auto& one : *written) {
        shown.push_back(one.id);
    }
    return Answer{{{"file", options.file}, {"photos", shown}},
                  "Wrote " + (photos->size() == 1 ? "1 photo" : std::to_string(photos->size()) + " photos beside each other") + " to " + options.file +
                      "; nothing in it says where they were taken.\n",
                  {}};
}

Result<Answer> export_card(const std::string& file)
{
    if (const auto written = write_file_whole(file, photo::scale_card_svg()); !written) {
        return written.error();
    }
    return Answer{{{"file", file}},
                  "Wrote the scale card to " + file +
                      ". Print it at 100 %, check with a ruler that its targets are 100 mm apart, and give --scale "
                      "their middles and 10.\n",
                  {}};
}

void add_sheet_options(CLI::App& command, SheetOptions& options)
{
    command.add_option("file", options.file, "The picture to write, .jpg or .png")->required()->type_name("FILE");
    command.add_option("--height", options.height, "Of each photo, pixels (default 480)")
        ->check(CLI::Range(journal::kLeastSheetHeight, journal::kMostSheetHeight));
}

} // namespace

void add_photo_exports(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ExportOptions>();
    CLI::App& photos = add_subcommand(group, "photos", "Photos as files, without where they were taken",
                                "lathhouse export photos lemon-photos --plant Lemon");
    photos.add_option("folder", options->folder, "Where to; it is made")->required()->type_name("DIR");
    photos.add_option("--plant", options->plant, "Only those of this plant")->type_name("PLANT");
    photos.add_flag("--with-position", options->with_position, "Unaltered, with the place where they were taken");
    commands.on_run(photos, [options](const Globals& globals) { return export_photos(globals, *options); });

    auto pair = std::make_shared<SheetOptions>();
    CLI::App& comparison = add_subcommand(group, "comparison", "Two photos side by side, the earlier on the left",
                                    "lathhouse export comparison lemon.jpg --photo 3 --photo 17");
    add_sheet_options(comparison, *pair);
    comparison.add_option("--photo", pair->photos, "Before and after, as `list photos` numbers them")
        ->required()
        ->allow_extra_args(false)
        ->type_name("ID");
    commands.on_run(comparison, [pair](const Globals& globals) -> Result<Answer> {
        if (pair->photos.size() != 2) {
            return Error{ErrorCode::WrongUsage, "a comparison takes --photo twice"};
        }
        return export_sheet(globals, *pair);
    });

    auto row = std::make_shared<SheetOptions>();
    CLI::App& strip = add_subcommand(group, "strip", "A plant's photos over time in one picture",
                               "lathhouse export strip lemon.png --plant Lemon --count 6");
    add_sheet_options(strip, *row);
    strip.add_option("--plant", row->plant, "Plant by id or name")->required()->type_name("PLANT");
    strip.add_option("--count", row->count, "At most so many, evenly over its photos (default 8)")
        ->check(CLI::Range(1, journal::kMostOnASheet));
    strip.add_option("--columns", row->columns, "So many in a row (default 4)")
        ->check(CLI::Range(1, journal::kMostOnASheet));
    commands.on_run(strip, [row](const Globals& globals) { return export_sheet(globals, *row); });

    auto file = std::make_shared<std::string>();
    CLI::App& card = add_subcommand(group, "card", "A scale card with a ruler and a grey patch, to print",
                              "lathhouse export card card.svg");
    card.add_option("file", *file, "The file to write")->required()->type_name("FILE.svg");
    commands.on_run(card, [file](const Globals&) { return export_card(*file); });
}

} // namespace lathhouse::cli
