#include "app/clock.h"
#include "app/cli/counted.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/cli/list.h"
#include "app/cli/long_work.h"
#include "app/cli/photo_options.h"
#include "core/journal/photo_import.h"

#include <algorithm>
#include <chrono>
#include <iostream>
#include <memory>
#include <thread>

namespace lathhouse::cli {
namespace {

struct AddOptions {
    std::vector<std::string> paths;
    std::vector<std::string> plants;
    bool last_plant = false;
    std::string pattern;
    std::string taken;
    bool watch = false;
    double every = 2.0;
};

std::string names_of(const home::Household& household, const std::vector<home::PlantId>& plants)
{
    std::string names;
    for (const auto id : plants) {
        const auto* plant = household.plant(id);
        names += (names.empty() ? "" : ", ") + (plant != nullptr ? plant->name : "plant " + std::to_string(id) + " (gone)");
    }
    return names;
}

/// How the plants of a file are found. Errors: as plant_called, NotFound where no photo has a plant yet.
Result<journal::ImportWishes> import_wishes(const AddOptions& options,
                                            const home::Household& household, journal::HouseholdStore& store)
{
    journal::ImportWishes wishes{
        .plants = {}, .taken = {}, .time_zone = household.place.time_zone, .entered = now()};
    std::vector<home::PlantId> always;
    for (const auto& name : options.plants) {
        const auto plant = plant_called(household, name);
        if (!plant) {
            return plant.error();
        }
        always.push_back((*plant)->id);
    }
    if (options.last_plant) {
        const auto last = journal::PhotoBook{store}.last_plant();
        if (!last) {
            return last.error();
        }
        if (!*last) {
            return Error{ErrorCode::NotFound, "no photo has been given to a plant yet; name it with --plant"};
        }
        always.push_back(**last);
    }
    if (!options.pattern.empty() && options.pattern.find("{plant}") == std::string::npos) {
        return Error{ErrorCode::WrongUsage, "--pattern must have {plant} in it, such as '{plant}_*'"};
    }
    wishes.plants = [always, pattern = options.pattern, plants = household.plants](const std::filesystem::path& file) {
        auto shown = always;
        if (!pattern.empty()) {
            if (const auto found = journal::plant_by_name(pattern, file, plants)) {
                shown.push_back(*found);
            }
        }
        return shown;
    };
    if (!options.taken.empty()) {
        const auto taken = photo::parse_local_time(options.taken);
        if (!taken) {
            return Error{taken.error().code, "--taken: " + taken.error().message};
        }
        wishes.taken = *taken;
    }
    return wishes;
}

Result<Answer> answer_of(const journal::ImportReport& report, const home::Household& household)
{
    using journal::ImportOutcome;
    const auto added = report.count(ImportOutcome::Added);
    const auto known = report.count(ImportOutcome::Known);
    if (report.stopped) {
        return Error{report.stopped->code, report.stopped->message + "; " + counted(added, "photo", "photos") +
                                               " had been added and stay, and a second run goes on from there"};
    }
    if (report.files.size() == 1 && report.files.front().outcome == ImportOutcome::Refused) {
        return Error{ErrorCode::Malformed, report.files.front().trouble.text};
    }
    Json photos = Json::array();
    Json refused = Json::array();
    std::vector<std::string> warnings;
    std::size_t undated = 0;
    std::size_t placed = 0;
    std::size_t without_plant = 0;
    for (const auto& file : report.files) {
        if (!file.trouble.text.empty()) {
            warnings.push_back(file.trouble.text);
        }
        if (file.outcome == ImportOutcome::Refused) {
            refused.push_back({{"file", file.file.string()}, {"why", file.trouble.text}});
            continue;
        }
        auto row = photo_json(*file.photo);
        row["file"] = file.file.string();
        row["known"] = file.outcome == ImportOutcome::Known;
        photos.push_back(std::move(row));
        undated += file.outcome == ImportOutcome::Added && file.photo->taken_from == home::TakenFrom::FileTime ? 1 : 0;
        placed += file.photo->position ? 1 : 0;
        without_plant += file.outcome == ImportOutcome::Added && file.photo->plants.empty() ? 1 : 0;
    }
    std::string text = "Added " + counted(added, "photo", "photos");
    text += known > 0 ? "; " + counted(known, "was", "were") + " there already" : "";
    text += refused.empty() ? "" : "; refused " + std::to_string(refused.size());
    text += report.cancelled ? "; stopped before the end, and a second run goes on from there.\n" : ".\n";
    if (added == 1 && report.files.size() == 1) {
        const auto& photo = *report.files.front().photo;
        text += "Photo " + std::to_string(photo.id) + ", taken " + words::photo_time(photo.taken) +
                (photo.plants.empty() ? "" : ", shows " + names_of(household, photo.plants)) + ".\n";
    }
    if (undated > 0) {
        text += counted(undated, "photo names", "photos name") +
                " no date, so the file's own was taken; set it with: lathhouse log photo ID --taken 2027-05-09\n";
    }
    if (without_plant > 0) {
        text += counted(without_plant, "photo shows", "photos show") +
                " no plant yet; say which with: lathhouse log photo ID --plant NAME\n";
    }
    if (placed > 0) {
        text += counted(placed, "photo says", "photos say") +
                " where it was taken; exports leave that out unless asked for.\n";
    }
    return Answer{{{"added", added},
                   {"known", known},
                   {"refused", refused},
                   {"cancelled", report.cancelled},
                   {"photos", photos}},
                  text, warnings};
}

/// Looks again and again until Ctrl-C; what came is in the report.
Result<journal::ImportReport> watch(const AddOptions& options, journal::HouseholdStore& store,
                                    journal::ImportWishes& wishes)
{
    std::error_code failure;
    if (options.paths.size() != 1 || !std::filesystem::is_directory(options.paths.front(), failure)) {
        return Error{ErrorCode::WrongUsage, "--watch takes one folder"};
    }
    std::cerr << "lathhouse: watching " << options.paths.front() << "; end with Ctrl-C\n";
    journal::FolderWatch folder{options.paths.front()};
    journal::ImportReport all;
    while (!LongWork::stop_asked()) {
        const auto files = folder.settled();
        if (!files) {
            return files.error();
        }
        wishes.entered = now();
        auto report = journal::import_photos(store, *files, wishes, {}, LongWork::stop_asked());
        for (auto& file : report.files) {
            std::cerr << "lathhouse: "
                      << (file.outcome == journal::ImportOutcome::Refused ? "refused " + file.trouble.text
                          : file.outcome == journal::ImportOutcome::Known ? "known " + file.file.string()
                                                                          : "added " + file.file.string())
                      << '\n';
            file.trouble = {}; // It has been said.
            all.files.push_back(std::move(file));
        }
        if (report.stopped) {
            all.stopped = report.stopped;
            break;
        }
        const auto wake = std::chrono::steady_clock::now() + std::chrono::duration<double>{options.every};
        while (!LongWork::stop_asked() && std::chrono::steady_clock::now() < wake) {
            std::this_thread::sleep_for(std::chrono::milliseconds{50});
        }
    }
    return all;
}

Result<Answer> add_photos(const Globals& globals, const AddOptions& options)
{
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household) {
        return household.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (!(options.every >= 0.1 && options.every <= 3600.0)) {
        return Error{ErrorCode::OutOfRange, "--every must lie within 0.1 and 3600 seconds"};
    }
    auto wishes = import_wishes(options, *household, *store);
    if (!wishes) {
        return wishes.error();
    }
    LongWork work{"Photos"};
    if (options.watch) {
        const auto report = watch(options, *store, *wishes);
        return report ? answer_of(*report, *household) : Result<Answer>{report.error()};
    }
    std::vector<std::filesystem::path> files;
    for (const auto& path : options.paths) {
        const auto found = journal::photo_files_in(path);
        if (!found) {
            return found.error();
        }
        files.insert(files.end(), found->begin(), found->end());
    }
    if (files.empty()) {
        return Error{ErrorCode::NotFound, "no photo in " + options.paths.front() +
                                              "; names end in .jpg, .jpeg, .png, .webp, .heic or .heif"};
    }
    const auto report = journal::import_photos(
        *store, files, *wishes, [&work](std::size_t done, std::size_t total) { work.count(done, total); },
        LongWork::stop_asked());
    return answer_of(report, *household);
}

struct LogOptions {
    home::PhotoId photo = 0;
    std::vector<std::string> plants;
    std::vector<std::string> not_plants;
    std::string taken;
    bool withdraw = false;
    bool bring_back = false;
};

Result<Answer> log_photo(const Globals& globals, const LogOptions& options)
{
    if (options.plants.empty() && options.not_plants.empty() && options.taken.empty() && !options.withdraw &&
        !options.bring_back) {
        return Error{ErrorCode::WrongUsage,
                     "say what is so with --plant, --not-plant, --taken, --withdraw or --bring-back"};
    }
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household) {
        return household.error();
    }
    // Everything is read before anything is written.
    std::vector<std::pair<home::PlantId, journal::PhotoBook::Shows>> plants;
    for (const auto shows : {journal::PhotoBook::Shows::Yes, journal::PhotoBook::Shows::No}) {
        for (const auto& name : shows == journal::PhotoBook::Shows::Yes ? options.plants : options.not_plants) {
            const auto plant = plant_called(*household, name);
            if (!plant) {
                return plant.error();
            }
            plants.emplace_back((*plant)->id, shows);
        }
    }
    std::optional<std::chrono::local_seconds> taken;
    if (!options.taken.empty()) {
        const auto time = photo::parse_local_time(options.taken);
        if (!time) {
            return Error{time.error().code, "--taken: " + time.error().message};
        }
        taken = *time;
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    journal::PhotoBook book{*store};
    using Withdrawn = journal::PhotoBook::Withdrawn;
    Result<void> done;
    if (options.bring_back) {
        done = book.withdraw(options.photo, Withdrawn::No, now());
    }
    if (done && taken) {
        done = book.date(options.photo, *taken, now());
    }
    for (std::size_t i = 0; done && i < plants.size(); ++i) {
        done = book.assign(options.photo, plants[i].first, plants[i].second, now());
    }
    if (done && options.withdraw) {
        done = book.withdraw(options.photo, Withdrawn::Yes, now());
    }
    if (!done) {
        return done.error();
    }
    if (options.withdraw) {
        return Answer{{{"id", options.photo}, {"withdrawn", true}},
                      "Photo " + std::to_string(options.photo) +
                          " is out of the lists; its file stays, and --bring-back shows it again.\n",
                      {}};
    }
    const auto photo = book.photo(options.photo);
    if (!photo) {
        return photo.error();
    }
    return Answer{photo_json(*photo),
                  "Photo " + std::to_string(photo->id) + ", taken " + words::photo_time(photo->taken) + ", shows " +
                      (photo->plants.empty() ? "no plant" : names_of(*household, photo->plants)) + ".\n",
                  {}};
}

/// Photos with the household, for showing.
struct Shown {
    home::Household household;
    journal::HouseholdStore store;
};
Result<Shown> opened(const Globals& globals)
{
    auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household) {
        return household.error();
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    return Shown{*std::move(household), *std::move(store)};
}

struct ListedPhotos {
    std::string plant;
    bool withdrawn = false;
};

Result<Answer> list_photos(const Globals& globals, const ListedPhotos& options)
{
    auto shown = opened(globals);
    if (!shown) {
        return shown.error();
    }
    const auto plant = plant_asked(shown->household, options.plant);
    if (!plant) {
        return plant.error();
    }
    const journal::PhotoBook book{shown->store};
    auto photos = options.withdrawn ? book.withdrawn() : book.photos(*plant != nullptr ? std::optional{(*plant)->id} : std::nullopt);
    if (!photos) {
        return photos.error();
    }
    if (options.withdrawn && *plant != nullptr) {
        std::erase_if(*photos, [&](const home::Photo& photo) { return std::ranges::find(photo.plants, (*plant)->id) == photo.plants.end(); });
    }
    Json list = Json::array();
    std::vector<std::vector<std::string>> rows{{"id", "taken", "size", "form", "shows", "file"}};
    for (const auto& photo : *photos) {
        list.push_back(photo_json(photo));
        rows.push_back({std::to_string(photo.id),
                        words::photo_time(photo.taken) + (photo.taken_from == home::TakenFrom::FileTime ? "?" : ""),
                        std::to_string(photo.width) + " x " + std::to_string(photo.height), photo.extension,
                        names_of(shown->household, photo.plants), photo.original_name});
    }
    return Answer{{{"photos", list}},
                  !photos->empty()       ? table(rows)
                  : options.withdrawn    ? "no photo is out of the lists\n"
                  : *plant != nullptr    ? "no photo of that plant yet; give it one with: lathhouse log photo ID --plant NAME\n"
                                         : "no photos yet; add some with: lathhouse add photos FOLDER\n",
                  {}};
}

Result<Answer> show_photo(const Globals& globals, home::PhotoId id)
{
    auto shown = opened(globals);
    if (!shown) {
        return shown.error();
    }
    const journal::PhotoBook book{shown->store};
    const auto photo = book.photo(id);
    if (!photo) {
        return photo.error();
    }
    std::vector<std::string> warnings;
    const auto thumbnail = book.thumbnail(*photo);
    if (!thumbnail) {
        warnings.push_back(thumbnail.error().message);
    }
    auto json = photo_json(*photo);
    json["path"] = book.file_of(*photo).string();
    json["thumbnail"] = thumbnail ? Json(thumbnail->string()) : Json(nullptr);
    std::string text = "Photo " + std::to_string(photo->id) + " (" + photo->original_name + "), " +
                       std::to_string(photo->width) + " x " + std::to_string(photo->height) + " pixels\n";
    text += "Taken " + words::photo_time(photo->taken);
    text += photo->taken_from == home::TakenFrom::Exif       ? ", as the camera says\n"
            : photo->taken_from == home::TakenFrom::FileTime ? ", by the file's time: the photo itself does not say\n"
                                                             : ", as you said\n";
    text += "Shows " + (photo->plants.empty() ? "no plant yet" : names_of(shown->household, photo->plants)) + "\n";
    if (photo->position) {
        text += "It says where it was taken (" + words::position(*photo->position) +
                "); exports leave that out unless asked for.\n";
    }
    text += book.file_of(*photo).string() + "\n";
    return Answer{std::move(json), text, warnings};
}

} // namespace

Json photo_json(const home::Photo& photo)
{
    return {{"id", photo.id},
            {"sha256", photo.sha256},
            {"form", photo.extension},
            {"bytes", photo.bytes},
            {"width_px", photo.width},
            {"height_px", photo.height},
            {"taken", photo::to_text(photo.taken)},
            {"zone_offset_minutes", photo.zone_offset ? Json(photo.zone_offset->count()) : Json(nullptr)},
            {"taken_from", home::to_string(photo.taken_from)},
            {"original_name", photo.original_name},
            {"latitude", photo.position ? json_number(photo.position->latitude.degrees()) : Json(nullptr)},
            {"longitude", photo.position ? json_number(photo.position->longitude.degrees()) : Json(nullptr)},
            {"entered", calendar::to_text(photo.entered)},
            {"plants", photo.plants}};
}

void add_photo_adder(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<AddOptions>();
    CLI::App& command = *group.add_subcommand("photos", "Photos from files and folders, kept unaltered");
    command.alias("photo");
    command.footer("Example:\n  lathhouse add photos ~/Pictures/plants --pattern '{plant}_*'");
    command.fallthrough();
    command.add_option("path", options->paths, "Files and folders")->required()->type_name("PATH");
    command.add_option("--plant", options->plants, "A plant that all of them show; may be given again")
        ->type_name("PLANT")
        ->allow_extra_args(false);
    command.add_flag("--last-plant", options->last_plant, "They show the plant that a photo was last given to");
    command.add_option("--pattern", options->pattern,
                       "How file names name the plant: {plant} is its name or id, * is anything")
        ->type_name("PATTERN");
    command.add_option("--taken", options->taken, "When those were taken that do not say so themselves")
        ->type_name("YYYY-MM-DD");
    command.add_flag("--watch", options->watch, "Goes on looking for new photos in the folder until Ctrl-C");
    command.add_option("--every", options->every, "With --watch: seconds between looks (default 2)")->type_name("S");
    commands.on_run(command, [options](const Globals& globals) { return add_photos(globals, *options); });
}

void add_photo_log(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<LogOptions>();
    CLI::App& command = *group.add_subcommand("photo", "What a photo shows and when it was taken");
    command.footer("Example:\n  lathhouse log photo 12 --plant Lemon");
    command.fallthrough();
    command.add_option("id", options->photo, "The photo, as `list photos` numbers them")->required()->type_name("ID");
    command.add_option("--plant", options->plants, "It shows this plant; may be given again")->type_name("PLANT")->allow_extra_args(false);
    command.add_option("--not-plant", options->not_plants, "It does not show this plant")->type_name("PLANT")->allow_extra_args(false);
    command.add_option("--taken", options->taken, "When it was taken")->type_name("YYYY-MM-DD[Thh:mm:ss]");
    command.add_flag("--withdraw", options->withdraw, "Takes it out of the lists; the file stays");
    command.add_flag("--bring-back", options->bring_back, "Puts it into the lists again");
    commands.on_run(command, [options](const Globals& globals) { return log_photo(globals, *options); });
}

void add_photo_list(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<ListedPhotos>();
    CLI::App& command = *group.add_subcommand("photos", "Photos, oldest first");
    command.fallthrough();
    command.add_option("--plant", options->plant, "Only those of this plant")->type_name("PLANT");
    command.add_flag("--withdrawn", options->withdrawn, "Those that are out of the lists instead");
    commands.on_run(command, [options](const Globals& globals) { return list_photos(globals, *options); });
}

void add_photo_show(Commands& commands, CLI::App& group)
{
    auto id = std::make_shared<home::PhotoId>(0);
    CLI::App& command = *group.add_subcommand("photo", "What is known of a photo, and its small picture");
    command.fallthrough();
    command.add_option("id", *id, "The photo, as `list photos` numbers them")->required()->type_name("ID");
    commands.on_run(command, [id](const Globals& globals) { return show_photo(globals, *id); });
}

} // namespace lathhouse::cli
