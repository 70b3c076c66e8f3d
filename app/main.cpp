#include "app/clock.h"
#include "app/cli/commands.h"
#include "app/cli/export_sheet.h"
#include "app/cli/household_facts.h"
#include "app/cli/household_options.h"
#include "app/cli/log_event.h"
#include "app/cli/round_calendar.h"
#include "app/cli/shipped_climate.h"
#include "app/desktop.h"
#include "app/free_memory.h"
#include "app/i18n/tongue.h"
#include "app/models/event_words.h"
#include "app/models/kept_facts.h"
#include "app/models/mend_door.h"
#include "app/models/plant_door.h"
#include "app/models/round_source.h"
#include "app/models/settings_model.h"
#include "app/models/window_language.h"
#include "app/models/year_door.h"
#include "app/print_command.h"
#include "app/start_window.h"
#include "app/window.h"
#include "app/words/demonstration_words.h"
#include "core/base/parse.h"
#include "core/geodesy/town_table.h"
#include "core/home/demonstration.h"
#include "core/home/demonstration_photos.h"
#include "core/home/demonstration_story.h"
#include "core/journal/change_watch.h"

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <future>
#include <iostream>
#include <memory>

namespace {

using namespace lathhouse;

/// The household to show, with what its round is made of.
struct Shown {
    home::Household household;
    std::vector<home::Event> history; ///< Of the demonstration; a folder's is read by the round itself.
    std::vector<home::Measurement> measurements; ///< Of the same.
    std::vector<home::DemonstrationPhoto> photos; ///< Of the same, drawn when they are looked at.
    home::SeedBook seeds; ///< Of the same.
    bool from_folder;
};

/// Packets and trays as a journal would number them.
home::SeedBook seeds_of(const home::Story& story)
{
    home::SeedBook seeds;
    for (const auto& [lot, on] : story.lots) {
        seeds.lots.push_back(lot);
        seeds.lots.back().id = static_cast<home::LotId>(seeds.lots.size());
    }
    for (home::Tray tray : story.trays) {
        tray.id = static_cast<home::TrayId>(seeds.trays.size()) + 1;
        tray.lot += 1;
        seeds.trays.push_back(std::move(tray));
    }
    for (home::TrayCount count : story.counts) {
        count.tray += 1;
        seeds.counts.push_back(count);
    }
    std::ranges::stable_sort(seeds.counts, {}, &home::TrayCount::tray);
    return seeds;
}

/// The demonstration with what its grower wrote down of the plants that are still there.
Shown with_story(const home::DemonstrationOptions& options, const home::Demonstration& shown, const home::Story& story)
{
    Shown all{shown.household, shown.history, {}, home::demonstration_photos(options, shown, story), seeds_of(story), false};
    for (const auto& event : story.events) {
        if (!event.plant || shown.household.plant(*event.plant) != nullptr) {
            all.history.push_back(event);
        }
    }
    std::ranges::stable_sort(all.history, {}, &home::Event::happened);
    for (const auto& of : story.measurements) {
        if (shown.household.plant(of.plant) != nullptr) {
            all.measurements.push_back(of);
        }
    }
    return all;
}

/// The caller's household; the demonstration where it is asked for, where there is none, and for a self-test that names none.
Result<Shown> household_to_show(const cli::Globals& globals, const cli::WindowRequest& request, bool example)
{
    if (example || (!globals.home_given && (request.self_test || !cli::has_household(globals)))) {
        const home::DemonstrationOptions options{.today = globals.today};
        return home::demonstration(options).transform([&](const home::Demonstration& shown) {
            return with_story(options, shown, home::tell_story(options, shown));
        });
    }
    return cli::household_of(globals, cli::WithoutHousehold::IsAnError)
        .transform([](const home::Household& own) {
            return Shown{own, {}, {}, {}, {}, true};
        });
}

/// Where the pages read and write.
struct Doors {
    models::RoundSource round;
    models::HouseholdDoor others;
    models::PlantDoor plants;
    models::PeopleDoor people;
    models::RecordDoor record;
    models::YearDoor year;
    models::MendDoor mend;
    models::TurnLast turn;
    models::JugDoor jugs;
    std::function<bool()> written_elsewhere = {};
};

/// Asks the folder whether anyone wrote into it.
std::function<bool()> watch_of(const std::filesystem::path& folder)
{
    auto watch = journal::ChangeWatch::open(folder);
    if (!watch) { // The pages say what is wrong with the folder.
        return {};
    }
    return [kept = std::make_shared<journal::ChangeWatch>(std::move(*watch))] { return kept->changed(); };
}

/// Undo and redo of the window in its own words.
models::TurnLast turn_in_folder(const cli::Globals& globals, const models::ShownUnits& units)
{
    return [globals, units](models::Turn turn) {
        return cli::turn_last_entry(globals, turn == models::Turn::Undo)
            .transform([&](const std::optional<cli::TurnedEntry>& turned) {
                return turned ? std::optional{models::entry_words(turned->entry, turned->household, models::YearWords{units})
                                                  .toStdString()}
                              : std::nullopt;
            });
    };
}

Doors doors_of(const cli::Globals& globals, const Shown& shown, const climate::PlaceClimate& climate,
               const models::ShownUnits& units)
{
    if (shown.from_folder) {
        const auto load = models::kept_facts(globals.home, [globals] { return cli::household_facts(globals); });
        return {models::round_in_folder(globals.home, load), models::door_to_folder(globals.home, load),
                models::plants_in_folder(globals.home, load),
                models::people_in_folder(globals.home, load),
                models::record_in_folder(globals.home, cli::shipped_climate),
                models::year_in_folder(globals.home, load, globals.today, units),
                models::mend_in_folder(globals.home, load, {geodesy::TownTable::shipped, cli::shipped_climate}),
                turn_in_folder(globals, units),
                models::jugs_in_folder(globals.home), watch_of(globals.home)};
    }
    const auto household = std::make_shared<models::MemoryHousehold>(plan::HouseholdFacts{
        .as_told = shown.household, .log = {}, .events = shown.history, .climate = climate, .seeds = shown.seeds});
    return {models::round_in_memory(household), models::door_to_memory(household),
            models::plants_in_memory(household, shown.measurements, shown.photos),
            models::people_in_memory(household),
            models::record_in_memory(
                [household]() -> Result<home::Household> { return household->facts().as_told; },
                [household](std::shared_ptr<const climate::OwnRecord> record) {
                    return household->change("record", [&](plan::HouseholdFacts& facts) -> Result<void> {
                        facts.as_told.own_record = record;
                        auto answering = cli::climate_of(facts.as_told);
                        if (!answering) {
                            return answering.error();
                        }
                        facts.climate = std::move(answering).value();
                        return {};
                    });
                },
                cli::shipped_climate),
            models::year_in_memory(household, globals.today, units),
            models::mend_in_memory(household, {geodesy::TownTable::shipped, cli::shipped_climate}), models::turn_in_memory(household),
            models::jugs_in_memory()};
}

/// The doors, and the year that stands behind one of them.
struct ReadToShow {
    Doors doors;
    models::HouseholdYear year;
};

/// Waits for `spoken`, the language, before anything is put into words. Errors: as climate_of and household_facts.
Result<ReadToShow> read_to_show(const cli::Globals& globals, Shown& shown, const models::ShownUnits& units, const std::future<void>& spoken)
{
    const auto climate = cli::climate_of(shown.household);
    if (!climate) {
        return climate.error();
    }
    spoken.wait();
    if (!shown.from_folder) {
        words::name_for_reader(shown.household);
        words::name_for_reader(shown.history);
        words::name_for_reader(shown.seeds);
    }
    auto doors = doors_of(globals, shown, *climate, units);
    auto year = doors.year.load();
    if (!year) {
        return year.error();
    }
    return ReadToShow{std::move(doors), std::move(year).value()};
}

struct PageAsked {
    std::string page;
    int plant = 0;
    int home_section = 0;
    int step = 0; ///< Of the first start, from 0.
};

/// The page of `--page`, of one plant with "plant:ID", of a section of Home with "home:NAME". Errors: WrongUsage with what it takes.
Result<PageAsked> page_asked(const std::string& word)
{
    constexpr std::string_view kPlant = "plant:";
    if (word.empty()) {
        return PageAsked{"year"};
    }
    if (word.starts_with(kPlant)) {
        const auto id = parse_integer(word.substr(kPlant.size()));
        if (id && *id > 0) {
            return PageAsked{"plants", *id};
        }
    }
    constexpr std::string_view kHome = "home:";
    std::string names;
    for (const auto& name : home_sections()) {
        names += (names.empty() ? "" : ", ") + name;
    }
    if (word.starts_with(kHome)) {
        const auto section = std::ranges::find(home_sections(), word.substr(kHome.size()));
        if (section != home_sections().end()) {
            return PageAsked{.page = "home", .home_section = static_cast<int>(section - home_sections().begin())};
        }
        return Error{ErrorCode::WrongUsage, "Home has no section \"" + word.substr(kHome.size()) + "\"; it has " + names};
    }
    if (std::ranges::find(window_pages(), word) != window_pages().end()) {
        return PageAsked{word};
    }
    constexpr std::string_view kStart = "start:";
    if (word == kStart.substr(0, kStart.size() - 1)) {
        return PageAsked{"start"};
    }
    if (word.starts_with(kStart)) {
        const auto step = parse_integer(word.substr(kStart.size()));
        if (step && *step >= 1 && *step <= models::FirstStartModel::kSteps) {
            return PageAsked{.page = "start", .step = *step - 1};
        }
    }
    return Error{ErrorCode::WrongUsage, "there is no page \"" + word +
                                            "\"; --page takes round, year, plants, seeds, home, plant:ID with the "
                                            "number of a plant, home:SECTION (" +
                                            names + "), or start"};
}

/// Whether a household can be made in the caller's folder: it is not there yet, or empty.
bool may_be_made(const cli::Globals& globals)
{
    std::error_code failure;
    return !std::filesystem::exists(globals.home, failure) ||
           (std::filesystem::is_directory(globals.home, failure) && std::filesystem::is_empty(globals.home, failure));
}

/// The first start is for whoever has no household and asks for nothing in particular. Errors: WrongUsage where it is
/// asked for and there is one already.
Result<bool> first_start_due(const cli::Globals& globals, const cli::WindowRequest& request, const PageAsked& asked)
{
    if (asked.page == "start") {
        if (cli::has_household(globals)) {
            return Error{ErrorCode::WrongUsage, "there is a household in " + globals.home.string() +
                                                    " already; it is changed on the pages Home and Plants, or name "
                                                    "another folder with --home"};
        }
        return true;
    }
    return !request.self_test && !request.picture && request.page.empty() && !cli::has_household(globals) &&
           may_be_made(globals);
}

bool units_asked(int argc, char** argv)
{
    return std::any_of(argv, argv + argc, [](const char* word) { return std::string_view{word}.starts_with("--units"); });
}

/// What was asked for, else the region's; what was chosen in the window goes before the latter.
models::Units units_of(const cli::Globals& globals, bool asked)
{
    return !asked                        ? models::usual_units(QLocale::system())
           : globals.units.us_measures() ? models::Units::Us
                                         : models::Units::Metric;
}

StartAnswer ask_first(const cli::Globals& globals, const cli::WindowRequest& request, const PageAsked& asked,
                      const Tongue& tongue, models::Units units)
{
    StartOptions options{.door = {geodesy::TownTable::shipped, cli::shipped_climate},
                         .folder = globals.home,
                         .today = globals.today,
                         .units = units,
                         .step = asked.step,
                         .self_test = request.self_test,
                         .picture = std::nullopt,
                         .untranslated = [&tongue] { return tongue.missing(); }};
    if (request.picture) {
        options.picture = request.picture->string();
    }
    return run_start_window(options);
}

/// The word after `--language` (or in it, behind a '='), which the command line has checked already.
std::optional<std::string> language_asked(int argc, char** argv)
{
    constexpr std::string_view kOption = "--language";
    for (int place = 1; place < argc; ++place) {
        const std::string_view word{argv[place]};
        if (word == kOption && place + 1 < argc) {
            return argv[place + 1];
        }
        if (word.starts_with(kOption) && word.size() > kOption.size() && word[kOption.size()] == '=') {
            return std::string{word.substr(kOption.size() + 1)};
        }
    }
    return std::nullopt;
}

/// What was chosen in the window is nothing to a self-test.
QString language_of(const std::optional<std::string>& asked, bool self_test)
{
    const QString kept =
        self_test ? QString{}
                  : models::KeptSettings(models::KeptSettings::usual_file()).value(QStringLiteral("language")).toString();
    return models::language_in_force(asked ? std::optional{QString::fromStdString(*asked)} : std::nullopt, kept,
                                     QLocale::system());
}

int report(const Error& error)
{
    std::cerr << "lathhouse: " << error.message << '\n';
    return cli::exit_status(error);
}

} // namespace

int main(int argc, char** argv)
{
    const auto open_window = [argc, argv](const cli::Globals& globals, const cli::WindowRequest& request) {
        auto opened = std::chrono::steady_clock::now();
        const auto asked = page_asked(request.page);
        if (!asked) {
            return report(asked.error());
        }
        bound_free_memory();
        int none = 1; // The command line has been read; Qt gets the program's name alone.
        const auto due = first_start_due(globals, request, *asked);
        if (!due) {
            return report(due.error());
        }
        const auto language = language_asked(argc, argv);
        const bool given_units = units_asked(argc, argv);
        std::optional<Desktop> desktop;
        std::optional<Tongue> tongue;
        const auto open_desktop = [&] {
            if (!desktop) {
                desktop.emplace(none, argv, request.self_test || request.picture);
                tongue.emplace(language_of(language, request.self_test));
            }
        };
        bool example = false;
        if (*due) {
            open_desktop();
            const auto answer = ask_first(globals, request, *asked, *tongue, units_of(globals, given_units));
            if (answer.choice == StartChoice::Left) {
                return answer.status;
            }
            example = answer.choice == StartChoice::Example;
            opened = std::chrono::steady_clock::now(); // What it took to answer is not waiting.
        }
        auto to_show = household_to_show(globals, request, example);
        if (!to_show) {
            return report(to_show.error());
        }
        const models::ShownUnits units{units_of(globals, given_units)};
        // The year is worked out while Qt finds its screen and fonts and the window's parts are compiled, each about a tenth of a
        // second; it is said in the window's language.
        std::promise<void> speaks;
        auto reading = std::async(std::launch::async, [&, spoken = speaks.get_future()] {
            return read_to_show(globals, *to_show, units, spoken);
        });
        open_desktop();
        speaks.set_value();
        auto engine = std::make_unique<WindowEngine>();
        auto read = reading.get();
        if (!read) {
            return report(read.error());
        }
        auto& [doors, shown] = *read;
        const models::CalendarDoor write_calendar = [load = doors.others.load, today = globals.today](
                                                        const std::filesystem::path& file, words::UnitSystem measures,
                                                        int days, std::optional<int> alarm) -> Result<std::size_t> {
            const auto facts = load();
            return facts ? cli::write_round_calendar(*facts, today, now(), days, alarm, measures, file) : Result<std::size_t>{facts.error()};
        };
        WindowOptions options{.year = std::move(shown.year),
                              .solver = std::move(shown.solver),
                              .year_door = std::move(doors.year),
                              .round = std::move(doors.round),
                              .door = std::move(doors.others),
                              .plants = std::move(doors.plants),
                              .mend = std::move(doors.mend),
                              .turn = std::move(doors.turn),
                              .written_elsewhere = std::move(doors.written_elsewhere),
                              .calendar = write_calendar,
                              .people = std::move(doors.people),
                              .record = std::move(doors.record),
                              .jugs = std::move(doors.jugs),
                              .units = units,
                              .units_given = given_units,
                              .language = language,
                              .untranslated = [&tongue] { return tongue->missing(); },
                              .opened = opened,
                              .page = asked->page == "start" ? "year" : asked->page,
                              .plant = asked->plant,
                              .home_section = asked->home_section,
                              .self_test = request.self_test,
                              .picture = std::nullopt,
                              .engine = std::move(engine)};
        if (to_show->from_folder) {
            options.folder = std::filesystem::absolute(globals.home);
        }
        if (request.picture) {
            options.picture = request.picture->string();
        }
        return run_window(none, argv, std::move(options));
    };
    const auto print_sheet = [argv](const cli::Globals& globals, const sheet::SheetWish& wish,
                                    const std::filesystem::path& file) {
        const auto door = models::plants_in_folder(globals.home, [globals] { return cli::household_facts(globals); });
        return print_to_file(argv, door, wish, globals.today, globals.units, file);
    };
    return cli::run(argc, argv, std::cout, std::cerr, open_window, print_sheet);
}
