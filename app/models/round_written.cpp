// What is done with the tasks of the page Round: ticking, putting off, leaving out, and taking that back.
#include "app/clock.h"
#include "app/models/round_model.h"
#include "app/models/word_form.h"
#include "app/potting.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/base/parse.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr int kLongestPostponement = 60; // Days.

} // namespace

void RoundModel::write(int row, home::Event event, QString said, bool ticks)
{
    write({{at(row).task.key}, plain_words(at(row)), ticks}, std::move(said),
          [record = source_.record, event = std::move(event)] { return record({event}); });
}

void RoundModel::write(Written what, QString said, std::function<Result<void>()> record)
{
    clear_error();
    const std::vector<std::string> keys = what.keys;
    here_.add(std::move(what));
    say(std::move(said));
    run(std::move(record), [this, keys](const Result<void>& written) {
        if (written) {
            return;
        }
        here_.drop_written([&](const Written& of) { return of.keys == keys; });
        mark(keys, false);
        say({});
        fail(words::phrase("this could not be written, so it counts as not done: %1", words::refusal(written.error())));
    });
}

void RoundModel::tick(int row)
{
    if (!is_row(row) || at(row).done) {
        return;
    }
    if ((at(row).is_sowing() && source_.sow) || (at(row).is_potting() && source_.pot_up)) {
        clear_error();
        sowing_ = at(row).task.key;
        emit seedsAskedChanged();
        return;
    }
    write(row, plan::done_event(at(row).task, look_.today, now()), closed(tr("Done: %1.").arg(plain_words(at(row)))),
          true);
    mark({at(row).task.key}, true);
}

void RoundModel::unfold(int row)
{
    if (is_row(row) && fold_.open(at(row).task.state)) {
        fold_.renew(rows_, look_.today);
        emit dataChanged(index(0), index(rowCount() - 1), {FoldedRole, MoreRole});
    }
}

QString RoundModel::seedsAsked() const
{
    const auto there = std::ranges::find(rows_, sowing_, [](const RoundRow& row) { return row.task.key; });
    if (sowing_.empty() || there == rows_.end()) {
        return {};
    }
    const auto& task = std::get<plan::SowingTask>(there->task.matter);
    if (there->is_potting()) {
        return tr("How many seedlings of %1 were potted, each in a pot of its own? %2 are in the tray.")
            .arg(text(task.name))
            .arg(seedlings_left(seeds_, *task.tray));
    }
    const auto left = seeds_.seeds_left(*task.lot);
    return left ? tr("How many seeds of %1 went into the tray? %2 are left.").arg(text(task.name)).arg(*left)
                : tr("How many seeds of %1 went into the tray?").arg(text(task.name));
}

void RoundModel::leaveSowing()
{
    if (!sowing_.empty()) {
        sowing_.clear();
        emit seedsAskedChanged();
    }
}

bool RoundModel::pot(const RoundRow& row, int plants)
{
    const auto& task = std::get<plan::SowingTask>(row.task.matter);
    if (const int left = seedlings_left(seeds_, *task.tray); plants > left) {
        fail_with(tr("The tray has %1 seedlings; count it anew where there are more.").arg(left));
        return false;
    }
    const std::string key = row.task.key;
    const auto tray_row = std::ranges::find(seeds_.trays, *task.tray, &home::Tray::id);
    const bool stands = tray_row != seeds_.trays.end() && tray_row->spot.has_value();
    const QString words = plants == 1 ? tr("%1, 1 plant").arg(plain_words(row))
                                      : tr("%1, %2 plants").arg(plain_words(row)).arg(plants);
    write({{key}, words, true, potted_key(std::to_string(*task.tray), std::to_string(plants))},
          (stands ? tr("Done: %1. They stand under Plants.") : tr("Done: %1. They stand at no spot yet: say where under Plants, so that they are in plan and round.")).arg(words),
          [pot_up = source_.pot_up, tray = *task.tray, plants, today = look_.today, at = now()] {
              return pot_up(tray, plants, today, at);
          });
    mark({key}, true);
    leaveSowing();
    return true;
}

bool RoundModel::sow(const QString& seeds)
{
    clear_error();
    const auto there = std::ranges::find(rows_, sowing_, [](const RoundRow& row) { return row.task.key; });
    if (sowing_.empty() || there == rows_.end() || there->done) { // Done meanwhile, by another program say.
        leaveSowing();
        return false;
    }
    const auto number = parse_integer(seeds.trimmed().toStdString());
    if (!number || *number < 1) {
        fail_with(there->is_potting() ? tr("Write how many seedlings were potted, such as 6.")
                                      : tr("Write how many seeds went into the tray, such as 12."));
        return false;
    }
    if (there->is_potting()) {
        return pot(*there, *number);
    }
    const auto& task = std::get<plan::SowingTask>(there->task.matter);
    if (const auto left = seeds_.seeds_left(*task.lot); left && *number > *left) {
        fail_with(tr("Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.").arg(*left));
        return false;
    }
    const home::Tray tray{.id = 0, .lot = *task.lot, .sown = look_.today, .seeds = *number, .spot = {}, .mix = {}, .note = {}};
    const std::string key = sowing_;
    const QString words = *number == 1 ? tr("%1, 1 seed").arg(plain_words(*there))
                                       : tr("%1, %2 seeds").arg(plain_words(*there)).arg(*number);
    write({{key}, words, true, sown_key(task.name, std::to_string(*number))},
          tr("Done: %1. The tray stands under Seeds.").arg(words),
          [sow = source_.sow, tray, lot = task.name, today = look_.today, at = now()] { return sow(tray, lot, today, at); });
    mark({key}, true);
    leaveSowing();
    return true;
}

void RoundModel::askDose(int row)
{
    if (!is_row(row)) {
        return;
    }
    if (at(row).is_treating()) {
        emit sprayDoseAsked(text(at(row).plant));
    } else if (at(row).feed_ppm() > 0.0) {
        emit feedDoseAsked({.plant = text(at(row).plant), .ppm = at(row).feed_ppm(), .feeder = at(row).feeder});
    }
}

void RoundModel::askSpray(int row)
{
    if (is_row(row) && at(row).is_treating() && at(row).task.plant) {
        emit sprayAsked(*at(row).task.plant);
    }
}

QString RoundModel::put_off_refusal(int row) const
{
    return is_row(row) && at(row).done         ? tr("That is done already; Undo takes it back.")
           : is_row(row) && at(row).is_hygiene() ? tr("Washing cannot be put off: it stands between the classes so that pests do not travel.")
                                                 : QString{};
}

QString RoundModel::skip_refusal(int row) const
{
    return is_row(row) && at(row).is_hygiene() && !at(row).done
               ? tr("Washing cannot be left out: it stands between the classes so that pests do not travel.")
               : put_off_refusal(row);
}

void RoundModel::postpone(int row, int days)
{
    if (days < 1 || days > kLongestPostponement) {
        clear_error();
        fail(words::phrase("a task can be put off by 1 to %1 days", std::to_string(kLongestPostponement)));
        return;
    }
    put_off(row, look_.today + calendar::Days{days});
}

void RoundModel::postponeUntil(int row, const QString& typed)
{
    clear_error();
    if (const auto days = parse_integer(typed.trimmed().toStdString())) {
        postpone(row, *days);
        return;
    }
    const auto until = look_.words.typed_date(typed);
    if (!until || *until <= look_.today) {
        const QString example = look_.words.date_with_year(look_.today + calendar::Days{2 * kLongestPostponement});
        fail_with(until ? tr("A task is put off to a day after today, such as %1.").arg(example)
                        : tr("Write for how many days it is put off, or until which date, such as %1.").arg(example));
        return;
    }
    put_off(row, *until);
}

void RoundModel::put_off(int row, calendar::Date until)
{
    if (!is_row(row)) {
        return;
    }
    if (const QString why = put_off_refusal(row); !why.isEmpty()) {
        fail_with(why);
        return;
    }
    const auto& task = at(row).task;
    const bool far = until > look_.today + calendar::Days{kLongestPostponement}; // Its year is said.
    QString said = closed(tr("Put off to %1: %2.").arg(far ? look_.words.date_with_year(until) : look_.words.short_date(until), plain_words(at(row))));
    if (until > task.latest) {
        said += tr(" It can wait until %1 at most.").arg(look_.words.short_date(task.latest));
    }
    write(row,
          {task.plant,
           home::EventKind::TaskPostponed,
           std::nullopt,
           look_.today,
           now(),
           "",
           {{"task", task.key}, {"until", calendar::to_text(until)}}},
          std::move(said), false);
}

void RoundModel::skip(int row, const QString& reason)
{
    if (!is_row(row)) {
        return;
    }
    if (const QString why = skip_refusal(row); !why.isEmpty()) {
        fail_with(why);
        return;
    }
    if (reason.trimmed().isEmpty()) {
        fail_with(tr("Say why it is left out, so that the journal knows."));
        return;
    }
    const auto& task = at(row).task;
    write(row,
          {task.plant,
           home::EventKind::TaskSkipped,
           std::nullopt,
           look_.today,
           now(),
           reason.trimmed().toStdString(),
           {{"task", task.key}}},
          closed(tr("Left out: %1.").arg(plain_words(at(row)))), false);
}

void RoundModel::tickWashing()
{
    for (int row = 0; row < rowCount(); ++row) {
        if (at(row).is_hygiene() && !at(row).done) {
            setCurrentRow(row);
            tick(row);
            return;
        }
    }
}

int RoundModel::carryOf(int plant) const
{
    const auto there = carry_row(plant);
    return there == rows_.end() ? 0 : there->done ? 2 : 1;
}

void RoundModel::tickCarry(int plant)
{
    if (const auto there = carry_row(plant); there != rows_.end()) {
        tick(static_cast<int>(there - rows_.begin()));
    }
}

void RoundModel::tickCarries()
{
    std::vector<std::string> keys;
    std::vector<home::Event> events;
    int only = 0;
    for (int row = 0; row < rowCount(); ++row) {
        if (at(row).is_carry_in() && !at(row).done) {
            keys.push_back(at(row).task.key);
            events.push_back(plan::done_event(at(row).task, look_.today, now()));
            only = row;
        }
    }
    if (keys.size() == 1) {
        tick(only);
    } else if (!keys.empty()) {
        const QString words = tr("%1 plants carried in").arg(keys.size());
        write({keys, words, true}, closed(tr("Done: %1.").arg(words)),
              [record = source_.record, events = std::move(events)] { return record(events); });
        mark(keys, true);
    }
}

void RoundModel::undo()
{
    clear_error();
    const auto last = here_.undo();
    if (!last) {
        fail_with(tr("Nothing was done in this window yet that could be taken back; Undo above the pages takes back what the journal had before."));
        return;
    }
    say(closed(tr("Taken back: %1.").arg(last->words)));
    run([take_back = source_.take_back, key = last->turn_key(), at = now()] { return take_back(key, at); },
        [this, last = *last](const Result<void>& undone) {
            if (undone) {
                mark(last.keys, false);
                return;
            }
            here_.drop_undone([&](const Written& of) { return of.keys == last.keys; });
            say({});
            fail(undone.error());
        });
}

void RoundModel::forget()
{
    here_.forget();
    done_.clear(); // The journal says what of it stays.
    say({});
}

void RoundModel::redo()
{
    clear_error();
    const auto last = here_.redo();
    if (!last) {
        fail_with(tr("Nothing was taken back last in this window that could be done again."));
        return;
    }
    say(closed(tr("Done again: %1.").arg(last->words)));
    run([bring_back = source_.bring_back, key = last->turn_key(), at = now()] { return bring_back(key, at); },
        [this, last = *last](const Result<void>& redone) {
            if (redone) {
                if (last.ticks) {
                    mark(last.keys, true);
                }
                return;
            }
            here_.drop_written([&](const Written& of) { return of.keys == last.keys; });
            say({});
            fail(redone.error());
        });
}

void RoundModel::mark(const std::vector<std::string>& keys, bool done)
{
    for (const auto& key : keys) {
        if (done) {
            done_.insert_or_assign(key, now());
        } else {
            done_.erase(key);
        }
    }
    for (int row = 0; row < rowCount(); ++row) {
        if (std::ranges::find(keys, at(row).task.key) != keys.end()) {
            auto& marked = rows_[static_cast<std::size_t>(row)];
            marked.done = done;
            marked.done_at = done ? std::optional{now()} : std::nullopt;
            emit dataChanged(index(row), index(row), {DoneRole, DoneAtRole, OverdueRole, SentenceRole});
        }
    }
    fold_.renew(rows_, look_.today);
    if (!rows_.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1), {FoldedRole, MoreRole});
    }
    emit roundChanged();
}

} // namespace lathhouse::models
