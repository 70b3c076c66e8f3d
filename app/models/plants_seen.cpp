// What is logged on the page Plants of pests, of harm, and of plants that leave the list.
#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/plants_model.h"
#include "app/models/typed_number.h"
#include "app/models/word_form.h"
#include "app/words/table_words.h"
#include "core/plants/pest.h"

#include <array>

namespace lathhouse::models {

QStringList PlantsModel::pests() const
{
    QStringList names;
    for (const auto& pest : plants::PestTable::built_in().pests()) {
        names.append(upper_first(text(words::table_text(pest.name))));
    }
    return names;
}

bool PlantsModel::logSeen(int what, const QString& detail, int choice, const QString& note, int days_ago)
{
    clear_error();
    if (targets().empty()) {
        fail_with(tr("Choose a plant first: arrow keys, or a click."));
        return false;
    }
    if (dateAgo(days_ago).isEmpty()) {
        fail_with(tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo));
        return false;
    }
    home::Event event{.plant = {}, .kind = home::EventKind::Inspected, .spot = {}, .happened = look_.today,
                      .entered = now(), .note = note.trimmed().toStdString()};
    const std::string said = detail.trimmed().toStdString();
    switch (what) {
    case LookedOver:
        event.details["found"] = "nothing";
        return write_event(event, tr("%1: looked over today, nothing found."), days_ago);
    case PestFound: {
        event.kind = home::EventKind::PestFound;
        if (said.empty()) {
            fail_with(tr("Choose which pest was found, or write it."));
            return false;
        }
        // A pest that the tables do not know is kept as it was written; the course then runs by the citrus mealybug's clock.
        const auto known = plants::PestTable::built_in().find(words::english_text(said));
        const auto written = known ? known : plants::PestTable::built_in().find(said);
        event.details["pest"] = written ? (*written)->name : said;
        constexpr std::array<const char*, 3> kAmounts{"few", "many", "heavy"};
        if (choice < 0 || choice >= static_cast<int>(kAmounts.size())) {
            fail_with(tr("Choose how many there are."));
            return false;
        }
        event.details["amount"] = kAmounts[static_cast<std::size_t>(choice)];
        return write_event(event, tr("%1: pests found today. It comes last in the round from now on."), days_ago);
    }
    case Treated:
        event.kind = home::EventKind::Treated;
        if (!said.empty()) {
            event.details["with"] = said;
        }
        return write_event(event, tr("%1: treated today."), days_ago);
    case SetApartNow:
        event.kind = home::EventKind::Isolated;
        event.details["why"] = choice == 1 ? "roots" : "pests";
        return write_event(event, tr("%1: set apart today."), days_ago);
    case Released:
        event.kind = home::EventKind::Released;
        return write_event(event, tr("%1: back among the others today."), days_ago);
    case WashedThrough:
        event.kind = home::EventKind::Leached;
        return write_event(event, tr("%1: washed through with water today."), days_ago);
    case ColdNight: {
        event.kind = home::EventKind::ColdNight;
        if (!said.empty()) {
            const auto low = typed_temperature(detail, look_.words);
            if (!low.value) {
                fail_with(low.trouble);
                return false;
            }
            event.details["low_c"] = QString::number(low.value->degrees(), 'f', 1).toStdString();
        }
        return write_event(event, tr("%1: a cold night hurt it. Looks at it come into the round; no feed until new growth is logged."), days_ago);
    }
    case ChemicalDamage:
        event.kind = home::EventKind::ChemicalDamage;
        if (!said.empty()) {
            event.details["product"] = said;
        }
        return write_event(event, tr("%1: hit by a spray. What helps and what waits comes into the round; nothing of it is eaten."), days_ago);
    case TakenOff:
        event.kind = home::EventKind::Removed;
        return write_event(event, tr("%1: taken off the list today, with all of its past kept; Undo brings it back."), days_ago);
    default:
        fail_with(tr("Choose what happened."));
        return false;
    }
}

} // namespace lathhouse::models
