// What is logged on the page Plants of pests, of harm, and of plants that leave the list.
#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/logged_detail.h"
#include "app/models/plants_model.h"
#include "app/models/word_form.h"
#include "core/base/parse.h"
#include "core/home/lineage.h"

#include <algorithm>
#include <array>

namespace lathhouse::models {

QStringList PlantsModel::pests() const
{
    return pest_names();
}

std::optional<std::string> PlantsModel::piece_names(const QString& typed)
{
    if (targets().size() > 1) {
        fail_with(tr("One plant is divided at a time; take the marks off with Escape."));
        return std::nullopt;
    }
    const auto names = home::pieces_in(QString{typed}.replace(QLatin1Char(';'), QLatin1Char(',')).toStdString());
    if (names.empty()) {
        fail_with(tr("Write a name for each new plant, with a comma between them."));
        return std::nullopt;
    }
    std::string all;
    for (const auto& name : names) {
        const auto same = [&name](const std::string& other) { return lower_case(other) == lower_case(name); };
        if (facts_.ground->household.plant_called(name) != nullptr || std::ranges::count_if(names, same) > 1) {
            fail_with(tr("There is a plant called %1 already; write another name.").arg(text(name)));
            return std::nullopt;
        }
        all += (all.empty() ? "" : ", ") + name;
    }
    return all;
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
    const auto detailed = [&](home::EventKind kind) {
        event.kind = kind;
        const QString wrong = add_detail(event, detail, look_.words);
        if (!wrong.isEmpty()) {
            fail_with(wrong);
        }
        return wrong.isEmpty();
    };
    switch (what) {
    case LookedOver:
        event.details["found"] = "nothing";
        return write_event(event, tr("%1: looked over today, nothing found."), days_ago);
    case PestFound: {
        if (!detailed(home::EventKind::PestFound)) {
            return false;
        }
        constexpr std::array<const char*, 3> kAmounts{"few", "many", "heavy"};
        if (choice < 0 || choice >= static_cast<int>(kAmounts.size())) {
            fail_with(tr("Choose how many there are."));
            return false;
        }
        event.details["amount"] = kAmounts[static_cast<std::size_t>(choice)];
        return write_event(event, tr("%1: pests found today. It comes last in the round from now on."), days_ago);
    }
    case Treated:
        return detailed(home::EventKind::Treated) && write_event(event, tr("%1: treated today."), days_ago);
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
    case ColdNight:
        return detailed(home::EventKind::ColdNight) &&
               write_event(event, tr("%1: a cold night hurt it. Looks at it come into the round; no feed until new growth is logged."), days_ago);
    case ChemicalDamage:
        return detailed(home::EventKind::ChemicalDamage) &&
               write_event(event, tr("%1: hit by a spray. What helps and what waits comes into the round; nothing of it is eaten."), days_ago);
    case PlantedOut:
        event.kind = home::EventKind::PlantedOut;
        return write_event(event, tr("%1: planted out today. Its growth is judged from there on."), days_ago);
    case Divided: {
        event.kind = home::EventKind::Divided;
        const auto names = piece_names(detail);
        if (!names) {
            return false;
        }
        event.details["into"] = *names;
        return write_event(event, tr("%1: divided today. The new ones stand beside it; Move gives them another spot."), days_ago);
    }
    case TakenOff:
        event.kind = home::EventKind::Removed;
        return write_event(event, tr("%1: taken off the list today, with all of its past kept; Undo brings it back."), days_ago);
    default:
        fail_with(tr("Choose what happened."));
        return false;
    }
}

} // namespace lathhouse::models
