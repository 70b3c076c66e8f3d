// What is done with the tasks of the page Round: ticking, putting off, leaving out, and taking that back.
#include "app/clock.h"
#include "app/models/round_model.h"
#include "app/words/phrase.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr int kLongestPostponement = 60; // Days.

} // namespace

void RoundModel::write(int row, home::Event event, QString said, bool ticks)
{
    clear_error();
    const std::string key = at(row).task.key;
    here_.add({key, plain_words(at(row)), ticks});
    say(std::move(said));
    run([record = source_.record, event = std::move(event)] { return record(event); },
        [this, key](const Result<void>& written) {
            if (written) {
                return;
            }
            here_.drop_written([&](const Written& of) { return of.key == key; });
            mark(key, false);
            say({});
            fail(words::phrase("this could not be written, so it counts as not done: %1", written.error().message));
        });
}

void RoundModel::tick(int row)
{
    if (!is_row(row) || at(row).done) {
        return;
    }
    write(row, plan::done_event(at(row).task, look_.today, now()), tr("Done: %1.").arg(plain_words(at(row))),
          true);
    mark(at(row).task.key, true);
}

bool RoundModel::is_open(int row)
{
    if (!is_row(row)) {
        return false;
    }
    if (at(row).done) {
        fail_with(tr("That is done already; Undo takes it back."));
        return false;
    }
    return true;
}

void RoundModel::postpone(int row, int days)
{
    if (!is_open(row)) {
        return;
    }
    if (at(row).is_hygiene()) {
        fail_with(tr("Washing cannot be put off: it stands between the classes so that pests do not travel."));
        return;
    }
    if (days < 1 || days > kLongestPostponement) {
        fail(words::phrase("a task can be put off by 1 to %1 days", std::to_string(kLongestPostponement)));
        return;
    }
    const auto& task = at(row).task;
    const calendar::Date until = look_.today + calendar::Days{days};
    QString said = tr("Put off to %1: %2.").arg(look_.words.short_date(until), plain_words(at(row)));
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
    if (!is_open(row)) {
        return;
    }
    if (at(row).is_hygiene()) {
        fail_with(tr("Washing cannot be left out: it stands between the classes so that pests do not travel."));
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
          tr("Left out: %1.").arg(plain_words(at(row))), false);
}

void RoundModel::tickCarries()
{
    std::vector<std::string> keys;
    for (const auto& row : rows_) {
        if (std::holds_alternative<plan::CarryInTonight>(row.task.matter) && !row.done) {
            keys.push_back(row.task.key);
        }
    }
    for (const auto& key : keys) {
        const auto there = std::ranges::find(rows_, key, [](const RoundRow& row) { return row.task.key; });
        tick(static_cast<int>(there - rows_.begin()));
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
    say(tr("Taken back: %1.").arg(last->words));
    run([take_back = source_.take_back, key = last->key, at = now()] { return take_back(key, at); },
        [this, last = *last](const Result<void>& undone) {
            if (undone) {
                mark(last.key, false);
                return;
            }
            here_.drop_undone([&](const Written& of) { return of.key == last.key; });
            say({});
            fail(undone.error().message);
        });
}

void RoundModel::forget()
{
    here_.forget();
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
    say(tr("Done again: %1.").arg(last->words));
    run([bring_back = source_.bring_back, key = last->key, at = now()] { return bring_back(key, at); },
        [this, last = *last](const Result<void>& redone) {
            if (redone) {
                if (last.ticks) {
                    mark(last.key, true);
                }
                return;
            }
            here_.drop_written([&](const Written& of) { return of.key == last.key; });
            say({});
            fail(redone.error().message);
        });
}

void RoundModel::mark(const std::string& key, bool done)
{
    if (done) {
        done_.insert(key);
    } else {
        done_.erase(key);
    }
    for (int row = 0; row < rowCount(); ++row) {
        if (at(row).task.key == key) {
            rows_[static_cast<std::size_t>(row)].done = done;
            emit dataChanged(index(row), index(row), {DoneRole, SentenceRole});
        }
    }
    emit roundChanged();
}

} // namespace lathhouse::models
