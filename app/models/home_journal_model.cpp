#include "app/models/home_journal_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/event_words.h"
#include "app/models/logged_detail.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <array>
#include <ranges>
#include <span>

namespace lathhouse::models {

struct HomeJournalModel::Facts {
    QStringList spots;
    std::vector<home::SpotId> ids;
    std::shared_ptr<const std::vector<JournalLine>> lines;
};

namespace {

using JournalRead = Result<JournalRecords>; // Qt's lupdate takes a qualified result for the class of the function.

JournalRead journal_in(const std::filesystem::path& folder)
{
    const auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    auto household = store->load();
    if (!household) {
        return household.error();
    }
    auto gone = store->gone_plants();
    if (!gone) {
        return gone.error();
    }
    for (auto& plant : *gone) {
        household->plants.push_back(std::move(plant.plant));
    }
    auto events = store->events();
    if (!events) {
        return events.error();
    }
    auto measurements = store->measurements();
    if (!measurements) {
        return measurements.error();
    }
    auto nights = store->night_log();
    if (!nights) {
        return nights.error();
    }
    auto seeds = store->seeds();
    if (!seeds) {
        return seeds.error();
    }
    return JournalRecords{*std::move(household), *std::move(events), *std::move(measurements), *std::move(nights), *std::move(seeds)};
}

JournalRead journal_in_memory(const PlantDoor& door)
{
    auto book = door.load();
    if (!book) {
        return book.error();
    }
    JournalRecords records{std::move(book->facts.as_told), std::move(book->facts.events), {}, std::move(book->facts.log),
                           std::move(book->facts.seeds)};
    for (auto& gone : book->gone) {
        records.household.plants.push_back(std::move(gone.plant));
    }
    for (const auto& plant : records.household.plants) {
        const auto of_plant = book->archive->measurements(plant.id);
        records.measurements.insert(records.measurements.end(), of_plant->begin(), of_plant->end());
    }
    return records;
}

using home::EventKind;

/// What can happen at a spot without a plant being meant, as the chips have it.
constexpr std::array kAtASpot{EventKind::Noted,     EventKind::Inspected,  EventKind::Treated,      EventKind::Watered,
                              EventKind::Fed,       EventKind::Leached,    EventKind::Repotted,     EventKind::Pruned,
                              EventKind::Flowered,  EventKind::NewGrowth,  EventKind::PestFound,    EventKind::Isolated,
                              EventKind::Released,  EventKind::ColdNight,  EventKind::ChemicalDamage, EventKind::Sown,
                              EventKind::Emerged,   EventKind::PlantedOut};
/// What can happen to all of the household.
constexpr std::array kAtHome{EventKind::Noted, EventKind::ColdNight, EventKind::ChemicalDamage};

} // namespace

HomeJournalModel::HomeJournalModel(PlantDoor door, std::optional<std::filesystem::path> folder, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), folder_(std::move(folder)), look_(std::move(look)),
      all_(std::make_shared<const std::vector<JournalLine>>())
{
}

void HomeJournalModel::look()
{
    if (known()) {
        follow();
    } else {
        start();
    }
}

void HomeJournalModel::read()
{
    work<Facts>(
        [door = door_, folder = folder_, words = look_.words]() -> Result<Facts> {
            const auto made = folder ? journal_in(*folder) : journal_in_memory(door);
            if (!made) {
                return made.error();
            }
            Facts facts;
            for (const auto& spot : made->household.spots) {
                facts.spots.append(text(spot.name));
                facts.ids.push_back(spot.id);
            }
            facts.lines = std::make_shared<const std::vector<JournalLine>>(journal_lines(*made, words));
            return facts;
        },
        [this](Result<Facts> made) {
            if (!made) {
                wrong_ = Nothing;
                fail(made.error());
                return;
            }
            all_ = std::move(made->lines);
            ids_ = std::move(made->ids);
            const bool others = !known() || made->spots != spots_; // Chips that stay keep the keyboard's focus.
            spots_ = made->spots;
            set_known();
            if (others) {
                emit spotsChanged();
            }
            show();
        });
}

void HomeJournalModel::setFind(const QString& words)
{
    if (words != find_) {
        find_ = words;
        show();
    }
}

void HomeJournalModel::show()
{
    const QStringList wanted = journal_key(find_).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<int> found;
    found.reserve(all_->size());
    for (std::size_t at = 0; at < all_->size(); ++at) {
        if (std::ranges::all_of(wanted, [&](const QString& word) { return (*all_)[at].key.contains(word); })) {
            found.push_back(static_cast<int>(at));
        }
    }
    rows_.show(all_, std::move(found));
    emit journalChanged();
}

QString HomeJournalModel::line() const
{
    if (!known()) {
        return {};
    }
    const QString all = look_.words.whole(static_cast<int>(all_->size()));
    if (find_.trimmed().isEmpty()) {
        return all_->empty() ? tr("Nothing is in the journal yet.")
               : all_->size() == 1 ? tr("One line.")
                                  : tr("%1 lines, the newest first.").arg(all);
    }
    return rows_.count() == 0 ? tr("None of %1 lines has these words.").arg(all)
                              : tr("Lines with these words: %1 of %2.").arg(look_.words.whole(rows_.count()), all);
}

QStringList HomeJournalModel::places() const
{
    return known() ? spots_ + QStringList{tr("the whole household")} : QStringList{};
}

std::optional<home::EventKind> HomeJournalModel::kind_of(int place, int sort) const
{
    const bool at_home = place == spots_.size();
    const auto sorts = at_home ? std::span<const EventKind>{kAtHome} : std::span<const EventKind>{kAtASpot};
    const bool there = place >= 0 && place <= spots_.size() && sort >= 0 && sort < static_cast<int>(sorts.size());
    return there ? std::optional{sorts[static_cast<std::size_t>(sort)]} : std::nullopt;
}

QStringList HomeJournalModel::sorts(int place) const
{
    QStringList all;
    for (int sort = 0; kind_of(place, sort); ++sort) {
        all.append(sort_words(*kind_of(place, sort)));
    }
    return all;
}

QString HomeJournalModel::asked(int place, int sort) const
{
    const auto kind = kind_of(place, sort);
    return kind ? detail_asked(*kind) : QString{};
}

QString HomeJournalModel::heed(int place, int sort) const
{
    const auto kind = kind_of(place, sort);
    if (kind == EventKind::Treated) {
        return tr("The label and local advice come first, and say how long to keep away.");
    }
    if (kind == EventKind::ChemicalDamage) {
        return place < spots_.size()
                   ? tr("Nothing that it may have touched is eaten. Plants that stood there that day get no feed and are not hardened for "
                        "a while. Each one that was hit is logged on its own page: from there its course begins.")
                   : tr("Nothing that it may have touched is eaten. It names no spot, so it counts for the plants that stood outdoors "
                        "that day: they get no feed and are not hardened for a while. Each one that was hit is logged on its own page: from "
                        "there its course begins.");
    }
    if (kind == EventKind::PestFound) {
        return tr("Every plant that stood there that day is suspect from then on: it is looked over, and set apart. Where the pest is on a "
                  "plant itself, log it on that plant’s own page: from there it counts as infested and its treatment begins.");
    }
    if (kind == EventKind::ColdNight) {
        return place < spots_.size()
                   ? tr("It counts for every plant that stood there that night: one whose line was reached is looked over in the days "
                        "after, and gets no feed until new growth is logged.")
                   : tr("It names no spot, so it counts for every plant that stood outdoors that night: one whose line was reached is "
                        "looked over in the days after, and gets no feed until new growth is logged.");
    }
    if (kind == EventKind::Isolated) {
        return tr("Plants that stood there that day get no feed until they are released. A plant counts as set apart from pests where that "
                  "is logged on its own page.");
    }
    return {};
}

bool HomeJournalModel::isNote(int place, int sort) const
{
    return kind_of(place, sort) == EventKind::Noted;
}

QStringList HomeJournalModel::choices(int place, int sort) const
{
    return kind_of(place, sort) == EventKind::PestFound ? pest_names() : QStringList{};
}

bool HomeJournalModel::log(int place, int sort, const QString& detail, const QString& note, const QString& days_ago)
{
    clear_error();
    say({});
    const auto refuse = [this](Answer answer, const QString& sentence) {
        wrong_ = answer;
        fail_with(sentence);
        return false;
    };
    const auto kind = kind_of(place, sort);
    if (!kind) {
        return refuse(Nothing, tr("Say where it happened, and what."));
    }
    const auto days = typed_days_ago(days_ago.trimmed());
    if (!days) {
        return refuse(Days, tr("Write how many days ago it happened, 0 to %1.").arg(kLongestDaysAgo));
    }
    home::Event event{.plant = {}, .kind = *kind, .spot = {}, .happened = look_.today - calendar::Days{*days}, .entered = now(),
                      .note = note.trimmed().toStdString()};
    if (place < spots_.size()) {
        event.spot = ids_[static_cast<std::size_t>(place)];
    }
    if (event.kind == EventKind::Noted && event.note.empty()) {
        return refuse(Words, tr("Write what is to be kept."));
    }
    if (const QString wrong = add_detail(event, detail, look_.words); !wrong.isEmpty()) {
        return refuse(Detail, wrong);
    }
    work<void>(
        [record = door_.record, event] { return record({.events = {event}, .measurements = {}}); },
        [this, day = look_.words.long_date(event.happened), at = places()[place]](const Result<void>& kept) {
            if (!kept) {
                wrong_ = Nothing;
                fail(kept.error());
                return;
            }
            say(tr("Kept: %1, %2. Undo above the pages takes it back.").arg(upper_first(at), day));
            emit written();
            read();
        });
    return true;
}

} // namespace lathhouse::models
