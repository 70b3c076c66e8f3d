#include "app/cli/tables.h"

#include "app/cli/long_work.h"
#include "app/cli/shell_word.h"
#include "core/journal/household_csv.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct TablesOutOptions {
    std::string folder;
    bool salvage = false;
};

struct TablesInOptions {
    std::string folder;
    bool leave_out_broken = false;
};

std::string photos_in_words(std::uint64_t photos)
{
    return photos == 0 ? "no photo" : std::to_string(photos) + (photos == 1 ? " photo" : " photos");
}

std::string gap_in_words(const journal::LostRows& lost)
{
    std::string text = lost.table + ": ";
    if (lost.from.empty() && lost.to.empty()) {
        return text + "nothing could be read";
    }
    text += lost.from.empty() ? "rows before " + lost.to
                              : "rows after " + lost.from + (lost.to.empty() ? std::string{} : " and before " + lost.to);
    return text + " could not be read" + (lost.at_most == 0 ? std::string{} : " (at most " + std::to_string(lost.at_most) + ")");
}

Result<Answer> export_csv(const Globals& globals, const TablesOutOptions& options)
{
    LongWork work{"Exporting"};
    const auto written = journal::export_csv(
        globals.home, options.folder, options.salvage ? journal::Unreadable::IsPassedOver : journal::Unreadable::EndsIt,
        work.progress());
    if (!written) {
        return written.error();
    }
    Answer answer{{{"folder", options.folder},
                   {"tables", written->tables},
                   {"rows", written->rows},
                   {"photos", written->photos},
                   {"left_out", written->left_out}},
                  "Wrote " + std::to_string(written->tables) + " tables with " + std::to_string(written->rows) +
                      " rows and " + photos_in_words(written->photos) + " to " + options.folder +
                      ".\nThey hold your home's coordinates (household.csv), and where photos were taken (photos.csv, and "
                      "the photos themselves). A leading apostrophe marks a text that a spreadsheet could take for "
                      "a formula.\nA household is made of them again with: lathhouse --home NEW import csv " +
                      shell_word(options.folder) + "\n",
                  {}};
    for (const auto& path : written->left_out) {
        answer.warnings.push_back(path + " is a link or has a name that no archive takes; it was not copied");
    }
    if (options.salvage) {
        Json lost = Json::array();
        for (const auto& gap : written->lost) {
            lost.push_back({{"table", gap.table},
                            {"after", gap.from.empty() ? Json(nullptr) : Json(gap.from)},
                            {"before", gap.to.empty() ? Json(nullptr) : Json(gap.to)},
                            {"at_most", gap.at_most == 0 ? Json(nullptr) : Json(gap.at_most)}});
            answer.warnings.push_back(gap_in_words(gap));
        }
        answer.json["lost"] = lost;
        answer.text += written->lost.empty() ? "Every row could be read.\n"
                                             : "What was lost is named above; look at the rows around it. Rows that "
                                               "name lost ones are left out by: import csv --leave-out-broken\n";
    }
    return answer;
}

Result<Answer> import_csv(const Globals& globals, const TablesInOptions& options)
{
    LongWork work{"Importing"};
    const auto read = journal::import_csv(options.folder, globals.home,
                                          options.leave_out_broken ? journal::Broken::IsLeftOut : journal::Broken::EndsIt,
                                          work.progress());
    if (!read) {
        return read.error();
    }
    const auto home = globals.home.string();
    Answer answer{{{"folder", home},
                   {"tables", read->tables},
                   {"rows", read->rows},
                   {"photos", read->photos},
                   {"broken", read->broken},
                   {"missing_photos", read->missing_photos},
                   {"unknown", read->unknown}},
                  "Made the household " + home + " of " + std::to_string(read->tables) + " tables with " +
                      std::to_string(read->rows) + " rows and " + photos_in_words(read->photos) + ".\n",
                  {}};
    for (const auto& row : read->broken) {
        answer.warnings.push_back(row + " named a row that is not there and was left out");
    }
    for (const auto& path : read->missing_photos) {
        answer.warnings.push_back(path + " is named by the journal and is not there; put it beside the tables and import again");
    }
    for (const auto& name : read->unknown) {
        answer.warnings.push_back(name + " belongs to no table; it was passed over");
    }
    return answer;
}

} // namespace

void add_export_csv(Commands& commands, CLI::App& group)
{
    auto options = std::make_shared<TablesOutOptions>();
    CLI::App& command = *group.add_subcommand(
        "csv", "Every table as a comma-separated file (RFC 4180, UTF-8), photos beside; import csv reads them back");
    command.footer("Example:\n  lathhouse export csv tables");
    command.fallthrough();
    command.add_option("folder", options->folder, "A new or an empty folder")->required()->type_name("DIR");
    command.add_flag("--salvage", options->salvage, "Passes over what cannot be read of a damaged database, and says so");
    commands.on_run(command, [options](const Globals& globals) { return export_csv(globals, *options); });
}

void add_import(Commands& commands)
{
    CLI::App& group = commands.add("import", "Makes a household of what was exported", "lathhouse --home plants import csv tables");
    group.require_subcommand(1);
    auto options = std::make_shared<TablesInOptions>();
    CLI::App& command = *group.add_subcommand("csv", "Makes the household named by --home of tables that export csv wrote");
    command.footer("Example:\n  lathhouse --home plants import csv tables");
    command.fallthrough();
    command.add_option("folder", options->folder, "The folder with the tables")->required()->type_name("DIR");
    command.add_flag("--leave-out-broken", options->leave_out_broken,
                     "Leaves out rows that name others that are not there, and says so");
    commands.on_run(command, [options](const Globals& globals) { return import_csv(globals, *options); });
}

} // namespace lathhouse::cli
