// What the page Year reads again, and what a hand decides on it.
#include "app/clock.h"
#include "app/models/behind_window.h"
#include "app/models/year_model.h"
#include "app/words/refusal.h"

#include <algorithm>

namespace lathhouse::models {

void YearModel::set_error(QString sentence)
{
    if (sentence != error_) {
        error_ = std::move(sentence);
        emit errorChanged();
    }
}

void YearModel::follow()
{
    if (!door_.load) {
        return;
    }
    std::function<Result<HouseholdYear>()> load = door_.load;
    if (const auto from = begin_.date()) {
        load = [from = *from, load_from = door_.load_from] { return load_from(from); };
    }
    reading_pool_.start([this, load, stop = risk_stop_, accepted = risk(), number = ++reading_] {
        stay_behind_window();
        if (number != reading_) {
            return; // The one that waits behind reads the same.
        }
        auto loaded = std::make_shared<Result<HouseholdYear>>(load());
        auto solved = std::make_shared<SolvedYear>();
        if (*loaded) {
            *solved = (*loaded)->solver(accepted);
        }
        QMetaObject::invokeMethod(
            this,
            [this, loaded, solved, stop, number] {
                if (number != reading_) {
                    return;
                }
                if (*loaded) {
                    set_error({});
                    replace(std::move(**loaded), std::move(*solved), stop);
                } else {
                    set_error(text(words::refusal(loaded->error())));
                }
            },
            Qt::QueuedConnection);
    });
}

void YearModel::replace(HouseholdYear loaded, SolvedYear solved, int stop)
{
    edge_.leave();
    const calendar::Date cursor = at_cursor().date;
    const home::PlantId current = plants_.idAt(current_row_);
    nights_.begin_year();
    plants_.begin_order();
    year_ = std::move(loaded.year);
    const bool waited = planning(); // For a plan of the old year; this one is planned.
    planner_.replace(std::move(loaded.solver), solved, stop);
    solved_ = std::move(solved);
    plants_.sort();
    current_row_ = plants_.row_of(current).value_or(0);
    cursor_day_ = std::clamp(calendar::days_between(year_.today, cursor), 0, dayCount() - 1);
    plants_.end_order();
    nights_.end_year();
    if (waited) {
        emit planningChanged();
    }
    emit householdChanged();
    emit unitsChanged(); // Words of the strip.
    view_.fit();
    emit cursorChanged();
    emit currentRowChanged();
    emit planChanged();
    emit datesChanged();
    cursor_.say();
    emit riskSpokenChanged();
    read_sowings();
    if (stop != risk_stop_) { // The slider was moved meanwhile.
        planner_.want(risk_stop_);
    } else {
        planner_.look_ahead_when_idle();
    }
}

void YearModel::take(const SolvedYear& solved)
{
    const bool first_plan = solved_.stays.empty();
    solved_ = solved;
    if (first_plan) {
        const int row = current_row_; // Nobody chose a plant before there was a plan: the row stays.
        reorder();
        setCurrentRow(row);
    } else if (plants_.is_out_of_groups()) {
        reorder();
    } else { // With every move of the slider rows would change places.
        plants_.dates_moved();
    }
    emit planChanged();
    emit datesChanged();
    cursor_.say();
    emit riskSpokenChanged();
    if (first_plan) {
        read_sowings();
    }
}

void YearModel::reorder()
{
    edge_.leave();
    const home::PlantId current = plants_.idAt(current_row_);
    plants_.begin_order();
    plants_.sort();
    current_row_ = plants_.row_of(current).value_or(0);
    plants_.end_order();
    emit currentRowChanged();
}

void YearModel::read_sowings()
{
    if (!door_.sowings) {
        return;
    }
    std::function<Result<std::vector<YearSowing>>()> sowings = door_.sowings;
    if (!year_.from_today) {
        sowings = [from = year_.today, sowings_from = door_.sowings_from] { return sowings_from(from); };
    }
    reading_pool_.start([this, sowings] {
        stay_behind_window();
        auto read = std::make_shared<Result<std::vector<YearSowing>>>(sowings());
        QMetaObject::invokeMethod(
            this,
            [this, read] {
                if (!*read) {
                    set_error(text(words::refusal(read->error())));
                    return;
                }
                sowings_ = std::move(**read);
                std::vector<SheetRows::Row> rows;
                for (const YearSowing& sowing : sowings_) {
                    rows.push_back({text(sowing.name), text(sowing.sentence)});
                }
                sowing_rows_.show(std::move(rows));
                emit sowingsChanged();
            },
            Qt::QueuedConnection);
    });
}

const YearSowing* YearModel::sowing(int row) const
{
    return row >= 0 && row < static_cast<int>(sowings_.size()) ? &sowings_[static_cast<std::size_t>(row)] : nullptr;
}

void YearModel::write(std::function<Result<void>()> job)
{
    reading_pool_.start([this, job = std::move(job)] {
        stay_behind_window();
        auto done = std::make_shared<Result<void>>(job());
        QMetaObject::invokeMethod(
            this,
            [this, done] {
                if (*done) {
                    set_error({});
                    emit written();
                    follow();
                } else {
                    edge_.leave();
                    set_error(text(words::refusal(done->error())));
                }
            },
            Qt::QueuedConnection);
    });
}

QString YearModel::keptLine() const
{
    if (!solved_.accepted) {
        return door_.accept ? tr("No plan is kept yet. A kept plan changes only where it pays, and each change is named.")
                            : QString{};
    }
    const QString since = words_.date_with_year(*solved_.accepted);
    const auto count = solved_.changes.size();
    return count == 0   ? tr("As in the plan kept on %1.").arg(since)
           : count == 1 ? tr("One stay is otherwise than in the plan kept on %1:").arg(since)
                        : tr("%1 stays are otherwise than in the plan kept on %2:").arg(count).arg(since);
}

QStringList YearModel::changes() const
{
    QStringList sentences;
    for (const std::string& change : solved_.changes) {
        sentences.append(text(change));
    }
    return sentences;
}

void YearModel::keepPlan()
{
    if (!canKeep()) {
        return;
    }
    home::AcceptedPlan plan{now(), {}};
    for (std::size_t plant = 0; plant < solved_.stays.size(); ++plant) {
        for (const YearStay& stay : solved_.stays[plant]) {
            plan.stays.push_back({year_.plants[plant].id, year_.spots[stay.spot].id,
                                  year_.days[static_cast<std::size_t>(stay.first)].date,
                                  year_.days[static_cast<std::size_t>(stay.last)].date});
        }
    }
    write([accept = door_.accept, plan = std::move(plan)] { return accept(plan); });
}

const std::vector<int>& YearModel::feeds(std::size_t plant) const
{
    static const std::vector<int> kNone;
    return plant < solved_.feeds.size() ? solved_.feeds[plant] : kNone;
}

void YearModel::pin(std::vector<home::Pin> pins, const QString& words)
{
    write([pin = door_.pin, pins = std::move(pins), words = words.toStdString(), at = now()] { return pin(pins, words, at); });
}

void YearModel::unpin(int row)
{
    if (!door_.unpin || !year_.from_today || row < 0 || row >= static_cast<int>(order().size())) {
        return;
    }
    const YearPlant& plant = year_.plants[order()[static_cast<std::size_t>(row)]];
    if (!plant.pinned.empty()) {
        const QString words = tr("%1 goes where the plan puts it").arg(text(plant.name));
        write([unpin = door_.unpin, id = plant.id, words = words.toStdString(), at = now()] { return unpin(id, words, at); });
    }
}

} // namespace lathhouse::models
