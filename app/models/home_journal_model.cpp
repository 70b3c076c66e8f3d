#include "app/models/home_journal_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/event_words.h"
#include "app/models/word_form.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <ranges>

namespace lathhouse::models {

struct HomeJournalModel::Facts {
    QStringList spots;
    std::vector<home::SpotId> ids;
    std::vector<SheetRows::Row> rows;
};

namespace {

constexpr std::size_t kSentence = 3; ///< Place of that role.

/// The household with its gone plants among the others, and what happened, oldest first.
struct JournalRead {
    home::Household household;
    std::vector<home::Event> events;
};

Result<JournalRead> journal_in(const std::filesystem::path& folder)
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
    return JournalRead{*std::move(household), *std::move(events)};
}

/// Whom it happened to: the plant, else the spot; empty where it is of the household.
QString journal_who(const home::Event& event, const home::Household& household)
{
    if (event.plant) {
        const auto* plant = household.plant(*event.plant);
        return plant != nullptr                 ? text(plant->name)
               : !event.detail("name").empty() ? text(std::string{event.detail("name")}) // Gone from memory.
                                                : HomeJournalModel::tr("plant %1").arg(*event.plant);
    }
    const auto* spot = event.spot ? household.spot(*event.spot) : nullptr;
    return spot != nullptr ? text(spot->name) : QString{};
}

QString journal_what(const home::Event& event, const home::Household& household)
{
    if (event.detail("change") == "household") { // What was changed stands in its words.
        return text(event.note);
    }
    const bool of_round = event.kind == home::EventKind::TaskDone || event.kind == home::EventKind::TaskPostponed ||
                          event.kind == home::EventKind::TaskSkipped;
    const QString what = !of_round                                  ? event_words(event, household)
                         : event.kind == home::EventKind::TaskDone ? HomeJournalModel::tr("ticked in the round")
                         : event.kind == home::EventKind::TaskPostponed ? HomeJournalModel::tr("put off in the round")
                                                                         : HomeJournalModel::tr("left out in the round");
    return event.note.empty() ? upper_first(what) : HomeJournalModel::tr("%1: %2").arg(upper_first(what), text(event.note));
}

SheetRows::Row journal_row(const home::Event& event, const home::Household& household, const YearWords& words)
{
    const QString date = words.date_with_year(event.happened);
    const QString who = journal_who(event, household);
    const QString what = journal_what(event, household);
    return {date, who, what,
            who.isEmpty() ? HomeJournalModel::tr("%1: %2.").arg(date, what)
                          : HomeJournalModel::tr("%1, %2: %3.").arg(date, who, what)};
}

} // namespace

HomeJournalModel::HomeJournalModel(std::function<Result<plan::HouseholdFacts>()> load, std::optional<std::filesystem::path> folder,
                                   Record record, TodayLook look, QObject* parent)
    : SheetModel(parent), load_(std::move(load)), folder_(std::move(folder)), record_(std::move(record)), look_(std::move(look)),
      rows_({"date", "who", "what", "sentence"})
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
        [load = load_, folder = folder_, words = look_.words]() -> Result<Facts> {
            const auto made = folder ? journal_in(*folder) : load().transform([](const plan::HouseholdFacts& facts) {
                return JournalRead{facts.as_told, facts.events};
            });
            if (!made) {
                return made.error();
            }
            Facts facts;
            for (const auto& spot : made->household.spots) {
                facts.spots.append(text(spot.name));
                facts.ids.push_back(spot.id);
            }
            // What was entered later on a day stands above.
            std::vector<const home::Event*> events;
            for (const auto& event : made->events | std::views::reverse) {
                events.push_back(&event);
            }
            std::ranges::stable_sort(events, std::greater{}, &home::Event::happened);
            facts.rows.reserve(events.size());
            for (const auto* event : events) {
                facts.rows.push_back(journal_row(*event, made->household, words));
            }
            return facts;
        },
        [this](Result<Facts> made) {
            if (!made) {
                wrong_ = Nothing;
                fail(made.error());
                return;
            }
            all_ = std::move(made->rows);
            ids_ = std::move(made->ids);
            if (made->spots != spots_) { // Chips that stay keep the keyboard's focus.
                spots_ = made->spots;
                emit spotsChanged();
            }
            set_known();
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
    const QStringList wanted = find_.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<SheetRows::Row> found;
    std::ranges::copy_if(all_, std::back_inserter(found), [&](const SheetRows::Row& row) {
        const QString sentence = row[kSentence].toString();
        return std::ranges::all_of(wanted, [&](const QString& word) { return sentence.contains(word, Qt::CaseInsensitive); });
    });
    rows_.show(std::move(found));
    emit journalChanged();
}

QString HomeJournalModel::line() const
{
    if (!known()) {
        return {};
    }
    const QString all = look_.words.whole(static_cast<int>(all_.size()));
    if (find_.trimmed().isEmpty()) {
        return all_.empty() ? tr("Nothing is in the journal yet.")
               : all_.size() == 1 ? tr("One line.")
                                  : tr("%1 lines, the newest first.").arg(all);
    }
    return rows_.count() == 0 ? tr("None of %1 lines has these words.").arg(all)
                              : tr("Lines with these words: %1 of %2.").arg(look_.words.whole(rows_.count()), all);
}

bool HomeJournalModel::log(int spot, int what, const QString& words, const QString& days_ago)
{
    clear_error();
    say({});
    const auto refuse = [this](Answer answer, const QString& sentence) {
        wrong_ = answer;
        fail_with(sentence);
        return false;
    };
    if (spot < 0 || spot >= spots_.size()) {
        return refuse(Nothing, tr("Say at which spot it happened."));
    }
    const auto days = typed_days_ago(days_ago.trimmed());
    if (!days) {
        return refuse(Days, tr("Write how many days ago it happened, 0 to %1.").arg(kLongestDaysAgo));
    }
    const std::string said = words.trimmed().toStdString();
    if (what == Note && said.empty()) {
        return refuse(Words, tr("Write what is to be kept."));
    }
    home::Event event{{}, home::EventKind::Noted, ids_[static_cast<std::size_t>(spot)], look_.today - calendar::Days{*days}, now(), {}, {}};
    if (what == Treated) {
        event.kind = home::EventKind::Treated;
        if (!said.empty()) {
            event.details["with"] = said;
        }
    } else {
        event.kind = what == LookedOver ? home::EventKind::Inspected : home::EventKind::Noted;
        event.note = said;
    }
    work<void>(
        [record = record_, event] { return record({.events = {event}, .measurements = {}}); },
        [this, day = look_.words.long_date(event.happened), at = spots_[spot]](const Result<void>& kept) {
            if (!kept) {
                wrong_ = Nothing;
                fail(kept.error());
                return;
            }
            say(tr("Kept: %1, %2. Undo above the pages takes it back.").arg(at, day));
            emit written();
            read();
        });
    return true;
}

} // namespace lathhouse::models
