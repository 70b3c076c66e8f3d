// What becomes of a tray's seedlings on the page Seeds.
#include "app/clock.h"
#include "app/models/seeds_model.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/base/parse.h"

namespace lathhouse::models {

bool SeedsModel::pot(int tray_row, const QString& plants, const QString& name, int spot)
{
    clear_error();
    if (!facts_.sheet || !facts_.ground || tray_row < 0 || tray_row >= trays_.rowCount()) {
        return false;
    }
    const home::TrayId tray = facts_.sheet->counted[static_cast<std::size_t>(tray_row)].tray;
    const auto number = parse_integer(plants.trimmed().toStdString());
    if (!number || *number < 1) {
        fail_with(tr("Write how many seedlings were potted, such as 6."));
        return false;
    }
    if (const int left = trays_.at(tray_row, QStringLiteral("toPot")).toInt(); *number > left) {
        fail_with(tr("The tray has %1 seedlings; count it anew where there are more.").arg(left));
        return false;
    }
    const auto on = day_meant();
    if (!on) {
        return false;
    }
    const auto at_spot = spot_at(spot);
    if (const auto* of = facts_.ground->facts.seeds.tray(tray); !at_spot && (of == nullptr || !of->spot)) {
        fail_with(tr("Say where they stand: of the tray that is not known."));
        return false;
    }
    here_.forget(); // What was counted before is no longer what came last.
    say(*number == 1
            ? tr("Potted from tray %1: 1 plant, now under Plants. Undo above the pages takes it back.").arg(tray)
            : tr("Potted from tray %1: %2 plants, now under Plants. Undo above the pages takes it back.").arg(tray).arg(*number));
    const Potting potting{
        .tray = tray, .plants = *number, .on = *on, .name = name.trimmed().toStdString(), .spot = at_spot};
    write_and_read([pot_up = door_.pot_up, potting, at = now()] { return pot_up(potting, at); },
                   [this](const Error& error) {
                       say({});
                       fail(words::phrase("this was not kept: %1", words::refusal(error)));
                   });
    return true;
}

} // namespace lathhouse::models
