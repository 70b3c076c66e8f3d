#include "app/models/edge_by_hand.h"

#include "app/models/word_form.h"
#include "app/models/year_model.h"

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

EdgeByHand::EdgeByHand(YearModel& model) : model_(model)
{
    constexpr int kPauseOfKeys = 900;
    pause_.setSingleShot(true);
    pause_.setInterval(kPauseOfKeys);
    connect(&pause_, &QTimer::timeout, this, &EdgeByHand::drop);
}

const std::vector<YearStay>* EdgeByHand::stays(std::size_t plant) const
{
    return held_ && held_->plant == plant ? &held_->stays : nullptr;
}

std::optional<std::size_t> EdgeByHand::nearest(int row, int day, int within) const
{
    if (!model_.can_pin() || row < 0 || row >= static_cast<int>(model_.order().size())) {
        return std::nullopt;
    }
    const std::vector<YearStay>& stays = model_.planned(model_.order()[static_cast<std::size_t>(row)]);
    std::optional<std::size_t> nearest;
    for (std::size_t later = 1; later < stays.size(); ++later) {
        const int away = std::abs(stays[later].first - day);
        if (away <= within && (!nearest || away < std::abs(stays[*nearest].first - day))) {
            nearest = later;
        }
    }
    return nearest;
}

bool EdgeByHand::isNear(int row, int day, int within) const
{
    return nearest(row, day, within).has_value();
}

bool EdgeByHand::take(int row, int day, int within)
{
    const auto later = nearest(row, day, within);
    if (!later) {
        return false;
    }
    const std::size_t plant = model_.order()[static_cast<std::size_t>(row)];
    const std::vector<YearStay>& stays = model_.planned(plant);
    held_ = Held{row, plant, *later, stays[*later].first, stays[*later].first, stays};
    emit changed();
    return true;
}

void EdgeByHand::move(int day)
{
    if (!held_) {
        return;
    }
    const std::vector<YearStay>& stays = model_.planned(held_->plant);
    // Each of the two keeps a night at least; tonight stands where it is.
    day = std::clamp(day, std::max(1, stays[held_->later - 1].first + 1), stays[held_->later].last);
    if (day == held_->day) {
        return;
    }
    held_->day = day;
    held_->stays = with_edge_at(stays, held_->later, day);
    emit changed();
    emit model_.datesChanged();
}

QString EdgeByHand::words() const
{
    if (!held_) {
        return {};
    }
    const YearData& year = model_.year();
    const YearPlant& plant = year.plants[held_->plant];
    const YearStay& before = held_->stays[held_->later - 1];
    const YearStay& after = held_->stays[held_->later];
    const auto day = static_cast<std::size_t>(held_->day);
    QString words = tr("%1 to %2 on %3").arg(text(plant.name), text(year.spots[after.spot].name),
                                             model_.words().short_date(year.days[day].date));
    // Out: the nights that follow. In: those before.
    const auto chance = [&year, &plant](std::size_t spot, std::size_t at, bool going_out) {
        const HarmCurve& curve = year.curves[*plant.curves[spot]];
        return YearWords::chance(Probability::clamped(going_out ? curve.after[at] : curve.before[at]));
    };
    const auto turn = year.turn.in_year(2001);
    if (year.spots[after.spot].outdoors && plant.curves[after.spot]) {
        words += tr(": %1 of a harmful night after it, to %2")
                     .arg(chance(after.spot, day, true), model_.words().day_and_long_month(turn));
    } else if (year.spots[before.spot].outdoors && plant.curves[before.spot]) {
        words += tr(": %1 of a harmful night before it, since %2")
                     .arg(chance(before.spot, day - 1, false), model_.words().day_and_long_month(turn));
    }
    return words;
}

QString EdgeByHand::told() const
{
    const QString edge = words();
    return edge.isEmpty() ? edge : closed(tr("%1. Letting go pins it; Esc leaves it.").arg(edge));
}

void EdgeByHand::leave()
{
    pause_.stop();
    if (held_) {
        held_.reset();
        emit changed();
        emit model_.datesChanged();
    }
}

void EdgeByHand::drop()
{
    pause_.stop();
    if (!held_ || held_->day == held_->from) {
        leave();
        return;
    }
    const YearData& year = model_.year();
    const YearStay& before = held_->stays[held_->later - 1];
    const YearStay& after = held_->stays[held_->later];
    const auto date = [&year](int day) { return year.days[static_cast<std::size_t>(day)].date; };
    const home::PlantId plant = year.plants[held_->plant].id;
    // The nights that change hands, and one on either side, so that it is carried on that very day.
    const int first = std::min(held_->day - 1, held_->from);
    const int last = std::max(held_->day, held_->from - 1);
    std::vector<home::Pin> pins{
        {plant, year.spots[before.spot].id, date(first), date(held_->day - 1)},
        {plant, year.spots[after.spot].id, date(held_->day), date(last)}};
    // It stays as it was dropped until the new plan is there.
    const QString words = tr("%1 is carried from %2 to %3 on %4, by hand")
                              .arg(text(year.plants[held_->plant].name), text(year.spots[before.spot].name),
                                   text(year.spots[after.spot].name), model_.words().short_date(date(held_->day)));
    model_.pin(std::move(pins), words);
}

void EdgeByHand::nudge(int days)
{
    if (!held_ && !take(model_.currentRow(), model_.cursorDay(), model_.dayCount())) {
        return;
    }
    move(held_->day + days);
    pause_.start();
}

} // namespace lathhouse::models
