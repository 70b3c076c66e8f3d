#include "app/cli/all_commands.h"
#include "app/cli/long_work.h"
#include "core/journal/household_check.h"

#include <array>
#include <set>

namespace lathhouse::cli {
namespace {

using journal::FindingKind;

std::string what_it_is(FindingKind kind)
{
    switch (kind) {
    case FindingKind::DatabaseDamaged:
        return "The database is damaged";
    case FindingKind::BrokenReference:
        return "An entry leads nowhere";
    case FindingKind::PhotoMissing:
        return "A photo is missing";
    case FindingKind::PhotoAltered:
        return "A photo was altered";
    case FindingKind::PhotoUnreadable:
        return "A photo cannot be read";
    case FindingKind::PhotoUnknown:
        return "A photo is not in the journal";
    case FindingKind::MeasuredPhotoUnknown:
        return "A measurement's photo is unknown";
    case FindingKind::FileUnknown:
        return "A file is not the program's";
    case FindingKind::LeftOver:
        return "Something unfinished is left over";
    }
    return "";
}

std::string what_to_do(FindingKind kind)
{
    switch (kind) {
    case FindingKind::DatabaseDamaged:
        return "copy the folder as it is, restore the latest backup into a new folder; without one, `lathhouse export "
               "csv DIR --salvage` saves what can be read and `lathhouse import csv DIR` makes a household of it";
    case FindingKind::BrokenReference:
        return "restore a backup from before it; without one, `lathhouse export csv DIR` and `lathhouse import csv DIR "
               "--leave-out-broken` make a household without such entries";
    case FindingKind::PhotoMissing:
        return "put the file back from a backup or the camera, by importing it again";
    case FindingKind::PhotoAltered:
        return "put the original back from a backup; the altered one can be kept elsewhere first";
    case FindingKind::PhotoUnreadable:
        return "look at the rights of the file and the health of the disk; put it back from a backup";
    case FindingKind::PhotoUnknown:
        return "import it if you want it in the journal; else it can be moved away";
    case FindingKind::MeasuredPhotoUnknown:
        return "the value stands as it is; import the photo (`lathhouse add photos FILE`) to see again what was measured, "
               "or measure anew in a photo that is there";
    case FindingKind::FileUnknown:
        return "leave it or move it away; backups do not hold it unless it is below photos/";
    case FindingKind::LeftOver:
        return "delete it when no other lathhouse is at work on the folder";
    }
    return "";
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
                text += what_it_is(kind) + ": " + finding.where + (finding.what.empty() ? "" : " (" + finding.what + ")") + "\n";
                findings.push_back({{"kind", std::string{journal::to_string(kind)}},
                                    {"fault", journal::is_fault(kind)},
                                    {"where", finding.where},
                                    {"what", finding.what},
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
    return Answer{{{"sound", sound},
                   {"schema", report->schema == 0 ? Json(nullptr) : Json(report->schema)},
                   {"steps_due", report->steps_due},
                   {"photos", report->photos},
                   {"photo_bytes", report->photo_bytes},
                   {"findings", findings}},
                  text,
                  {}};
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
