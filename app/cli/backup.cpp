#include "app/cli/all_commands.h"
#include "app/cli/long_work.h"
#include "app/cli/shell_word.h"
#include "core/journal/household_backup.h"

#include <memory>

namespace lathhouse::cli {
namespace {

struct BackupOptions {
    std::string file;
    bool replace = false;
};

struct RestoreOptions {
    std::string file;
    std::string folder;
};

std::string megabytes(std::uint64_t bytes)
{
    return words::number(static_cast<double>(bytes) / 1e6, 1) + " MB";
}

std::string files_in_words(std::uint64_t files)
{
    // One of them is the database.
    return files == 1 ? "the journal and no photo"
                      : "the journal and " + std::to_string(files - 1) + (files == 2 ? " photo" : " photos");
}

Result<Answer> back_up(const Globals& globals, const BackupOptions& options)
{
    LongWork work{"Backing up"};
    const auto made =
        journal::back_up(globals.home, options.file,
                         options.replace ? journal::Existing::Replaced : journal::Existing::Refused, globals.today,
                         work.progress());
    if (!made) {
        return made.error();
    }
    Answer answer{{{"file", options.file},
                   {"files", made->files},
                   {"bytes", made->bytes},
                   {"archive_bytes", made->archive_bytes},
                   {"schema", made->schema},
                   {"verified", true},
                   {"left_out", made->left_out},
                   {"missing", made->missing}},
                  "Wrote " + options.file + " (" + megabytes(made->archive_bytes) + "): " + files_in_words(made->files) +
                      ", read back and compared.\nIt holds your home's coordinates, and photos with the position that "
                      "a camera may have written into them: keep it where you would keep a key, and give it to "
                      "nobody who need not know where you live.\nBring it back with: lathhouse restore " +
                      shell_word(options.file) + " DIR\n",
                  {}};
    for (const auto& path : made->left_out) {
        answer.warnings.push_back(path + " is a link or has a name that no archive takes; it is not in the backup");
    }
    for (const auto& path : made->missing) {
        answer.warnings.push_back(path + " is named by the journal and not in the folder; it is not in the backup");
    }
    return answer;
}

Result<Answer> restore(const RestoreOptions& options)
{
    LongWork work{"Restoring"};
    const auto restored = journal::restore(options.file, options.folder, work.progress());
    if (!restored) {
        return restored.error();
    }
    Answer answer{{{"folder", options.folder},
                   {"files", restored->files},
                   {"bytes", restored->bytes},
                   {"schema", restored->schema},
                   {"backed_up_on", restored->bagged_on.empty() ? Json(nullptr) : Json(restored->bagged_on)},
                   {"left_out", restored->left_out},
                   {"oddities", restored->oddities}},
                  "The household" +
                      (restored->bagged_on.empty() ? std::string{} : " as it was on " + restored->bagged_on) +
                      " is in " + options.folder + ": " + files_in_words(restored->files) +
                      ", each compared with the backup's list.\nOpen it with: lathhouse --home " + shell_word(options.folder) +
                      "\n",
                  restored->oddities};
    for (const auto& path : restored->left_out) {
        answer.warnings.push_back("data/" + path + " is in the backup and belongs to no household; it is left out");
    }
    return answer;
}

} // namespace

void add_backup(Commands& commands)
{
    auto options = std::make_shared<BackupOptions>();
    CLI::App& command = commands.add("backup",
                                     "Writes the household into one file, a BagIt bag (RFC 8493) in a zip, and reads it "
                                     "back. It holds the home's coordinates and the photos with their positions.",
                                     "lathhouse backup plants-2027-03-01.zip");
    command.add_option("file", options->file, "The file to write, outside the household's folder")
        ->required()
        ->type_name("FILE.zip");
    command.add_flag("--replace", options->replace, "Replaces a file that is there, once the new one is whole");
    commands.on_run(command, [options](const Globals& globals) { return back_up(globals, *options); });
}

void add_restore(Commands& commands)
{
    auto options = std::make_shared<RestoreOptions>();
    CLI::App& command = commands.add("restore", "Makes the household of a backup in a new or an empty folder",
                                     "lathhouse restore plants-2027-03-01.zip plants");
    command.add_option("file", options->file, "A backup")->required()->type_name("FILE.zip");
    command.add_option("folder", options->folder, "A new or an empty folder")->required()->type_name("DIR");
    commands.on_run(command, [options](const Globals&) { return restore(*options); });
}

} // namespace lathhouse::cli
