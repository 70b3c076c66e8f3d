// What the page Year reads again, and what a hand decides on it.
#include "app/clock.h"
#include "app/models/year_model.h"

#include <QTimer>

#include <algorithm>
#include <cstdlib>

namespace lathhouse::models {

namespace {

/// The same days, with the later stay beginning on that day.
std::vector<YearStay> with_edge_at(std::vector<YearStay> stays, std::size_t later, int day)
{
    stays[later - 1].last = day - 1;
    stays[later].first = day;
    // The steps of hardening go along; they end with the stay that they lie in.
    if (stays[later].ladder_days > 0) {
        const int room = std::min(day - stays[later - 1].first, stays[later].last - day + 1);
        stays[later].ladder_days = std::min(stays[later].ladder_days, std::max(0, room));
    }
    return stays;
}

} // namespace

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
    if (from_) {
        load = [from = *from_, load_from = door_.load_from] { return load_from(from); };
    }
    reading_pool_.start([this, load, stop = risk_stop_, accepted = risk(), number = ++reading_] {
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
                    set_error(text(loaded->error().message));
                }
            },
            Qt::QueuedConnection);
    });
}

void YearModel::replace(HouseholdYear loaded, SolvedYear solved, int stop)
{
    leaveEdge();
    const calendar::Date cursor = at_cursor().date;
    const home::PlantId current =
        order_.empty() ? 0 : year_.plants[order_[static_cast<std::size_t>(current_row_)]].id;
    pool_.clear();
    ++generation_;
    nights_.begin_year();
    plants_.begin_order();
    year_ = std::move(loaded.year);
    solver_ = std::move(loaded.solver);
    known_.assign(known_.size(), std::nullopt);
    known_[static_cast<std::size_t>(stop)] = solved;
    solved_ = std::move(solved);
    order_ = order_of_going_out(year_, solved_);
    const auto row = std::ranges::find(order_, current, [this](std::size_t plant) { return year_.plants[plant].id; });
    current_row_ = row == order_.end() ? 0 : static_cast<int>(row - order_.begin());
    cursor_day_ = std::clamp(calendar::days_between(year_.today, cursor), 0, dayCount() - 1);
    view_.count = std::min(view_.count, dayCount());
    view_.first = std::clamp(view_.first, 0, dayCount() - view_.count);
    plants_.end_order();
    nights_.end_year();
    fill_readout();
    if (planning_) { // Of the old year; this one is planned.
        planning_ = false;
        emit planningChanged();
    }
    emit householdChanged();
    emit unitsChanged(); // Words of the strip.
    emit viewChanged();
    emit cursorChanged();
    emit currentRowChanged();
    emit planChanged();
    emit datesChanged();
    emit countsChanged();
    emit riskSpokenChanged();
    read_sowings();
    if (stop != risk_stop_) { // The slider was moved meanwhile.
        solve();
    } else {
        look_ahead_when_idle();
    }
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
        auto read = std::make_shared<Result<std::vector<YearSowing>>>(sowings());
        QMetaObject::invokeMethod(
            this,
            [this, read] {
                if (!*read) {
                    set_error(text(read->error().message));
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
        auto done = std::make_shared<Result<void>>(job());
        QMetaObject::invokeMethod(
            this,
            [this, done] {
                if (*done) {
                    set_error({});
                    emit written();
                    follow();
                } else {
                    leaveEdge();
                    set_error(text(done->error().message));
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

std::optional<std::size_t> YearModel::nearest_edge(int row, int day, int within) const
{
    if (!door_.pin || !year_.from_today || planning_ || row < 0 || row >= static_cast<int>(order_.size())) {
        return std::nullopt;
    }
    const std::size_t plant = order_[static_cast<std::size_t>(row)];
    const auto& stays = plant < solved_.stays.size() ? solved_.stays[plant] : std::vector<YearStay>{};
    std::optional<std::size_t> nearest;
    for (std::size_t later = 1; later < stays.size(); ++later) {
        const int away = std::abs(stays[later].first - day);
        if (away <= within && (!nearest || away < std::abs(stays[*nearest].first - day))) {
            nearest = later;
        }
    }
    return nearest;
}

bool YearModel::isNearEdge(int row, int day, int within) const
{
    return nearest_edge(row, day, within).has_value();
}

bool YearModel::takeEdge(int row, int day, int within)
{
    const auto later = nearest_edge(row, day, within);
    if (!later) {
        return false;
    }
    const std::size_t plant = order_[static_cast<std::size_t>(row)];
    const auto& stays = solved_.stays[plant];
    edge_ = Edge{row, plant, *later, stays[*later].first, stays[*later].first, stays};
    emit edgeChanged();
    return true;
}

void YearModel::moveEdge(int day)
{
    if (!edge_) {
        return;
    }
    const auto& stays = solved_.stays[edge_->plant];
    // Each of the two keeps a night at least; tonight stands where it is.
    day = std::clamp(day, std::max(1, stays[edge_->later - 1].first + 1), stays[edge_->later].last);
    if (day == edge_->day) {
        return;
    }
    edge_->day = day;
    edge_->stays = with_edge_at(stays, edge_->later, day);
    emit edgeChanged();
    emit datesChanged();
}

QString YearModel::edgeWords() const
{
    if (!edge_) {
        return {};
    }
    const YearPlant& plant = year_.plants[edge_->plant];
    const YearStay& before = edge_->stays[edge_->later - 1];
    const YearStay& after = edge_->stays[edge_->later];
    const auto day = static_cast<std::size_t>(edge_->day);
    QString words = tr("%1 to %2 on %3").arg(text(plant.name), text(year_.spots[after.spot].name),
                                             words_.short_date(year_.days[day].date));
    // Out: the nights that follow. In: those before.
    const auto chance = [this, &plant](std::size_t spot, std::size_t at, bool going_out) {
        const HarmCurve& curve = year_.curves[*plant.curves[spot]];
        return YearWords::chance(Probability::clamped(going_out ? curve.after[at] : curve.before[at]));
    };
    const auto turn = year_.turn.in_year(2001);
    if (year_.spots[after.spot].outdoors && plant.curves[after.spot]) {
        words += tr(": %1 of a harmful night after it, to %2")
                     .arg(chance(after.spot, day, true), words_.day_and_long_month(turn));
    } else if (year_.spots[before.spot].outdoors && plant.curves[before.spot]) {
        words += tr(": %1 of a harmful night before it, since %2")
                     .arg(chance(before.spot, day - 1, false), words_.day_and_long_month(turn));
    }
    return words;
}

void YearModel::leaveEdge()
{
    drop_->stop();
    if (edge_) {
        edge_.reset();
        emit edgeChanged();
        emit datesChanged();
    }
}

void YearModel::dropEdge()
{
    drop_->stop();
    if (!edge_ || edge_->day == edge_->from) {
        leaveEdge();
        return;
    }
    const YearStay& before = edge_->stays[edge_->later - 1];
    const YearStay& after = edge_->stays[edge_->later];
    const auto date = [this](int day) { return year_.days[static_cast<std::size_t>(day)].date; };
    const home::PlantId plant = year_.plants[edge_->plant].id;
    // The nights that change hands, and one on either side, so that it is carried on that very day.
    const int first = std::min(edge_->day - 1, edge_->from);
    const int last = std::max(edge_->day, edge_->from - 1);
    std::vector<home::Pin> pins{
        {plant, year_.spots[before.spot].id, date(first), date(edge_->day - 1)},
        {plant, year_.spots[after.spot].id, date(edge_->day), date(last)}};
    // It stays as it was dropped until the new plan is there.
    const QString words = tr("%1 is carried from %2 to %3 on %4, by hand")
                              .arg(text(year_.plants[edge_->plant].name), text(year_.spots[before.spot].name),
                                   text(year_.spots[after.spot].name), words_.short_date(date(edge_->day)));
    write([pin = door_.pin, pins = std::move(pins), words = words.toStdString(), at = now()] { return pin(pins, words, at); });
}

void YearModel::nudgeEdge(int days)
{
    if (!edge_ && !takeEdge(current_row_, cursor_day_, dayCount())) {
        return;
    }
    moveEdge(edge_->day + days);
    drop_->start();
}

void YearModel::unpin(int row)
{
    if (!door_.unpin || !year_.from_today || row < 0 || row >= static_cast<int>(order_.size())) {
        return;
    }
    const YearPlant& plant = year_.plants[order_[static_cast<std::size_t>(row)]];
    if (!plant.pinned.empty()) {
        const QString words = tr("%1 goes where the plan puts it").arg(text(plant.name));
        write([unpin = door_.unpin, id = plant.id, words = words.toStdString(), at = now()] { return unpin(id, words, at); });
    }
}

} // namespace lathhouse::models
