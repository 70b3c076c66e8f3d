#include "app/cli/all_commands.h"
#include "app/cli/folder_warning.h"
#include "app/cli/long_work.h"
#include "app/words/finding_words.h"
#include "core/journal/household_check.h"
#include "core/journal/last_backup.h"

#include <array>
#include <filesystem>
#include <set>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

namespace lathhouse::cli {
namespace {

using journal::FindingKind;

using words::what_it_is;
using words::what_to_do;

/// A path as one would write it here: what lies below the folder one is in without the way there.
std::string seen_from_here(const std::filesystem::path& file)
{
    std::error_code failure;
    const auto near = file.lexically_relative(std::filesystem::current_path(failure));
    return failure || near.empty() || near.begin()->string() == ".." ? file.string() : near.string();
}

/// "Last backup on 2026-11-20 to /backups/plants.zip; 3 entries since." and the same for programs. A damaged database
/// tells of none.
std::pair<std::string, Json> last_backup(const std::filesystem::path& folder)
{
    const auto known = journal::last_backup_of(folder);
    if (!known) {
        return {"", nullptr};
    }
    if (!*known) {
        return {"No backup of it is known; make one with: lathhouse backup FILE.zip\n", nullptr};
    }
    const auto& backup = **known;
    const auto since = backup.entries_since;
    const std::string on = calendar::to_text(backup.on);
    return {"Last backup on " + on + " to " + seen_from_here(backup.file) + "; " +
                (since == 0 ? "nothing was entered since" : std::to_string(since) + (since == 1 ? " entry" : " entries") + " since") + ".\n",
            {{"on", on}, {"file", backup.file.string()}, {"entries_since", since}}};
}

Result<Answer> check(const Globals& globals)
{
    LongWork work{"Checking"};
    const auto report = journal::check_household(globals.home, work.progress());
    if (!report) {
        return report.error();
    }
    Json findings = Json::array();
    std::string text;
    for (const auto kind : {FindingKind::DatabaseDamaged, FindingKind::BrokenReference, FindingKind::PhotoMissing,
                            FindingKind::PhotoAltered, FindingKind::PhotoUnreadable, FindingKind::PhotoUnknown,
                            FindingKind::MeasuredPhotoUnknown, FindingKind::FileUnknown, FindingKind::LeftOver}) {
        bool any = false;
        for (const auto& finding : report->findings) {
            if (finding.kind == kind) {
                any = true;
                text += what_it_is(kind) + ": " + finding.where + (finding.what.text.empty() ? "" : " (" + finding.what.text + ")") + "\n";
                findings.push_back({{"kind", std::string{journal::to_string(kind)}},
                                    {"fault", journal::is_fault(kind)},
                                    {"where", finding.where},
                                    {"what", finding.what.text},
                                    {"to_do", what_to_do(kind)}});
            }
        }
        if (any) {
            text += "  What to do: " + what_to_do(kind) + ".\n";
        }
    }
    const bool sound = report->sound();
    text += sound ? std::string{"The household is sound: the database and its references hold"}
                  : std::string{"The household has faults; nothing was changed. The database was looked at"};
    text += ", " + std::to_string(report->photos) + (report->photos == 1 ? " photo" : " photos") +
            " compared with their digests.\n";
    if (report->steps_due) {
        text += "It was written by an older version; it is brought up to date when it is next opened, after a copy.\n";
    }
    const auto [backup_words, backup] = last_backup(globals.home);
    text += backup_words;
    const auto kind = journal::folder_kind(globals.home);
    const auto warning = kind ? folder_warning(*kind, globals.home) : std::nullopt;
    return Answer{{{"sound", sound},
                   {"schema", report->schema == 0 ? Json(nullptr) : Json(report->schema)},
                   {"steps_due", report->steps_due},
                   {"photos", report->photos},
                   {"photo_bytes", report->photo_bytes},
                   {"last_backup", backup},
                   {"folder", kind ? Json(std::string{journal::to_string(*kind)}) : Json(nullptr)},
                   {"findings", findings}},
                  text,
                  warning ? std::vector{*warning} : std::vector<std::string>{}};
}

} // namespace

void add_check(Commands& commands)
{
    CLI::App& command = commands.add("check",
                                     "Looks through the household: database, references, photos against their names, "
                                     "what else is there. Changes nothing. Exit status 1 where something is wrong",
                                     "lathhouse --home balcony check");
    commands.on_run(command, [](const Globals& globals) { return check(globals); });
}

} // namespace lathhouse::cli
