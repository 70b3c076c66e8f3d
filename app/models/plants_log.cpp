// What is logged on the page Plants: for which plants, what happened, and taking it back.
#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/event_words.h"
#include "app/models/gone_in_memory.h"
#include "app/models/logged_detail.h"
#include "app/models/pin_form.h"
#include "app/models/plants_model.h"
#include "app/models/word_form.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"

#include <algorithm>
#include <array>

namespace lathhouse::models {

std::vector<home::PlantId> PlantsModel::targets() const
{
    if (opened_ != 0) {
        return {opened_};
    }
    if (!marked_.empty()) {
        return {marked_.begin(), marked_.end()};
    }
    if (current_ >= 0 && current_ < shownCount()) {
        return {shown().card(current_).id};
    }
    return {};
}

bool PlantsModel::is_refused(const std::vector<home::PlantId>& plants)
{
    for (const auto id : plants) {
        if (const auto* card = card_of(id); card != nullptr && card->gone) {
            fail_with(tr("%1 is gone (%2): its page opens, and notes are taken.").arg(card->name, card->state));
            return true;
        }
    }
    return false;
}

QString PlantsModel::target_words(const std::vector<home::PlantId>& plants) const
{
    if (plants.empty()) {
        return {};
    }
    const auto* only = plants.size() == 1 ? card_of(plants.front()) : nullptr;
    return only != nullptr ? only->name : tr("%1 plants").arg(plants.size());
}

QString PlantsModel::target() const
{
    return target_words(targets());
}

QStringList PlantsModel::sorts() const
{
    using home::EventKind;
    // By What, which has one that is no event: Measured.
    constexpr std::array kSorts{EventKind::Watered,  EventKind::Fed,       EventKind::Noted,     EventKind::Noted,
                                EventKind::NewGrowth, EventKind::Flowered, EventKind::Repotted,  EventKind::Pruned,
                                EventKind::Died,     EventKind::GivenAway, EventKind::Inspected, EventKind::PestFound,
                                EventKind::Treated,  EventKind::Isolated,  EventKind::Released,  EventKind::Leached,
                                EventKind::ColdNight, EventKind::ChemicalDamage, EventKind::Removed, EventKind::PlantedOut,
                                EventKind::Divided};
    static_assert(kSorts.size() == Divided + 1);
    QStringList all;
    for (std::size_t what = 0; what < kSorts.size(); ++what) {
        all.append(what == Measured ? tr("Measured") : sort_words(kSorts[what]));
    }
    return all;
}

QString PlantsModel::dateAgo(int days) const
{
    return days < 0 || days > kLongestDaysAgo ? QString{} : past_date(look_.today - calendar::Days{days}, look_.today, look_.words);
}

bool PlantsModel::log(int what, const QString& number, int measure, const QString& note, int days_ago)
{
    if (what == Measured) {
        return logMeasured(number, measure, -1, {}, {}, note, days_ago);
    }
    clear_error();
    if (dateAgo(days_ago).isEmpty()) {
        fail_with(tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo));
        return false;
    }
    if (targets().empty()) {
        fail_with(tr("Choose a plant first: arrow keys, or a click."));
        return false;
    }
    const std::string written_note = note.trimmed().toStdString();
    home::Event event{.plant = {}, .kind = home::EventKind::Noted, .spot = {}, .happened = look_.today,
                      .entered = now(), .note = written_note};
    QString done;
    switch (what) {
    case Watered:
        event.kind = home::EventKind::Watered;
        done = tr("%1: watered today.");
        break;
    case Fed:
        event.kind = home::EventKind::Fed;
        done = tr("%1: fed today.");
        if (const QString wrong = add_detail(event, number, look_.words); !wrong.isEmpty()) {
            fail_with(wrong);
            return false;
        }
        break;
    case NewGrowth:
        event.kind = home::EventKind::NewGrowth;
        done = tr("%1: new growth seen today.");
        break;
    case Flowered:
        event.kind = home::EventKind::Flowered;
        done = tr("%1: in flower today.");
        break;
    case Repotted:
        event.kind = home::EventKind::Repotted;
        done = tr("%1: repotted today.");
        break;
    case Pruned:
        event.kind = home::EventKind::Pruned;
        done = tr("%1: pruned today.");
        break;
    case Died:
        event.kind = home::EventKind::Died;
        done = tr("%1: died today. Off the lists, with all of the past kept; Undo brings it back.");
        break;
    case GivenAway:
        event.kind = home::EventKind::GivenAway;
        done = tr("%1: given away today. Off the lists, with all of the past kept; Undo brings it back.");
        break;
    case Noted:
        if (written_note.empty()) {
            fail_with(tr("Write the note first."));
            return false;
        }
        done = tr("%1: noted.");
        break;
    default:
        fail_with(tr("Choose what happened."));
        return false;
    }
    return write_event(event, done, days_ago);
}

bool PlantsModel::write_event(const home::Event& event, const QString& done_today, int days_ago)
{
    const auto plants = targets();
    if (event.kind != home::EventKind::Noted && is_refused(plants)) {
        return false;
    }
    const QString whom = target_words(plants);
    PlantEntries entries;
    for (const auto id : plants) {
        entries.events.push_back(event);
        entries.events.back().plant = id;
        entries.events.back().happened = look_.today - calendar::Days{days_ago};
    }
    const bool kept = write(std::move(entries),
                            days_ago == 0 ? done_today.arg(whom)
                                          : tr("%1: %2, on %3.").arg(whom, event_words(event, facts_.ground->household), dateAgo(days_ago)));
    if (kept && ends_plant(event.kind)) {
        clearMarks();
        close();
    }
    return kept;
}

bool PlantsModel::moveTo(int spot)
{
    clear_error();
    const auto plants = targets();
    if (plants.empty()) {
        fail_with(tr("Choose a plant first: arrow keys, or a click."));
        return false;
    }
    if (is_refused(plants)) {
        return false;
    }
    if (spot < 0 || spot >= spots_.rowCount()) {
        fail_with(tr("There is no spot of that number."));
        return false;
    }
    const auto& shelf = facts_.shelves[static_cast<std::size_t>(spot)];
    PlantEntries entries;
    for (const auto id : plants) {
        const auto* plant = facts_.ground->household.plant(id);
        if (plant != nullptr && plant->spot != shelf.spot) {
            entries.events.push_back({id, home::EventKind::Moved, shelf.spot, look_.today, now(), ""});
        }
    }
    const QString whom = target_words(plants);
    if (entries.events.empty()) {
        fail_with(tr("%1 stands at %2 already.").arg(whom, shelf.name));
        return false;
    }
    QString said = tr("%1 moved to %2 today.").arg(whom, shelf.name);
    const auto standing = std::ranges::count_if(facts_.cards, [&](const PlantCard& card) { return card.shelf == spot; });
    if (standing + static_cast<int>(entries.events.size()) > shelf.capacity) {
        said += tr(" It has %1 places.").arg(shelf.capacity);
    }
    const auto& household = facts_.ground->household;
    for (const auto& moved : entries.events) {
        const auto* there = household.spot(*moved.spot);
        const QString caution = there != nullptr ? PinForm::caution_of(*household.plant(*moved.plant), *there) : QString{};
        if (!caution.isEmpty()) {
            said += QLatin1Char(' ') + caution;
        }
    }
    return write(std::move(entries), std::move(said));
}

const home::Event* PlantsModel::moved() const
{
    const Written* last = here_.last();
    return last != nullptr && last->words == said() && last->entries.events.size() == 1 &&
                   last->entries.events.front().kind == home::EventKind::Moved
               ? &last->entries.events.front()
               : nullptr;
}

int PlantsModel::movedPlant() const
{
    return moved() != nullptr ? moved()->plant.value_or(0) : 0;
}

int PlantsModel::movedSpot() const
{
    return moved() != nullptr ? moved()->spot.value_or(0) : 0;
}

bool PlantsModel::keep(PlantEntries entries, QString words)
{
    clear_error();
    return write(std::move(entries), std::move(words));
}

void PlantsModel::keep_imported(home::PhotoChange added, QString words)
{
    if (!added.photos.empty()) {
        here_.add({{.events = {}, .measurements = {}, .photos = std::move(added)}, words});
    }
    say(std::move(words));
    emit written();
    read();
}

bool PlantsModel::write(PlantEntries entries, QString said)
{
    here_.add({entries, said});
    say(std::move(said));
    write_and_read([record = door_.record, entries] { return record(entries); },
                   [this, entries](const Error& error) {
                       here_.drop_written([&](const Written& of) {
                           return of.entries.events == entries.events && of.entries.measurements == entries.measurements &&
                                  of.entries.photos == entries.photos;
                       });
                       say({});
                       fail(words::phrase("this was not kept: %1", words::refusal(error)));
                   });
    return true;
}

void PlantsModel::undo()
{
    clear_error();
    const auto last = here_.undo();
    if (!last) {
        fail_with(tr("Nothing was logged on this page yet that could be taken back; Undo above the pages takes back what the journal had before."));
        return;
    }
    say(tr("Taken back: %1").arg(last->words));
    write_and_read([back = door_.take_back, last = *last, at = now()] { return back(last.entries, at); },
                   [this](const Error& error) {
                       here_.forget_undone();
                       say({});
                       fail(error);
                   });
}

void PlantsModel::forget()
{
    here_.forget();
    say({});
}

void PlantsModel::redo()
{
    clear_error();
    const auto last = here_.redo();
    if (!last) {
        fail_with(tr("Nothing was taken back last on this page that could be done again."));
        return;
    }
    say(tr("Done again: %1").arg(last->words));
    write_and_read([again = door_.bring_back, last = *last, at = now()] { return again(last.entries, at); },
                   [this](const Error& error) {
                       here_.forget_written();
                       say({});
                       fail(error);
                   });
}

} // namespace lathhouse::models
