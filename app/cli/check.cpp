#include "app/cli/all_commands.h"
#include "app/cli/long_work.h"
#include "app/words/finding_words.h"
#include "core/journal/household_check.h"

#include <array>
#include <set>

namespace lathhouse::cli {
namespace {

using journal::FindingKind;

using words::what_it_is;
using words::what_to_do;

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
