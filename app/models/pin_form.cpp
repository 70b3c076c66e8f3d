#include "app/models/pin_form.h"

#include <algorithm>

namespace lathhouse::models {

PinForm::PinForm(YearWords words, calendar::Date today, QObject* parent) : QObject(parent), words_(std::move(words)), today_(today)
{
    connect(this, &PinForm::changed, this, [this] {
        if (!trouble_.isEmpty()) {
            fail(-1, {});
        }
    });
}

void PinForm::fill(home::PlantId plant, const home::Household& household)
{
    household_ = {household};
    plant_ = plant;
    const auto& spots = household_.front().spots;
    const auto stands = std::ranges::find_if(spots, [this](const home::Spot& spot) { return spot.id == pinned()->spot; });
    spot_ = stands == spots.end() ? 0 : static_cast<int>(stands - spots.begin());
    from_.clear();
    to_.clear();
    fail(-1, {});
    emit filled();
    emit changed();
}

void PinForm::choose(home::SpotId spot)
{
    for (std::size_t at = 0; !household_.empty() && at < household_.front().spots.size(); ++at) {
        if (household_.front().spots[at].id == spot) {
            spot_ = static_cast<int>(at);
            emit changed();
        }
    }
}

const home::Plant* PinForm::pinned() const
{
    return household_.empty() ? nullptr : household_.front().plant(plant_);
}

const home::Spot* PinForm::chosen() const
{
    return household_.empty() || spot_ < 0 || spot_ >= static_cast<int>(household_.front().spots.size())
               ? nullptr
               : &household_.front().spots[static_cast<std::size_t>(spot_)];
}

QString PinForm::plant() const
{
    return pinned() != nullptr ? text(pinned()->name) : QString{};
}

QStringList PinForm::spots() const
{
    QStringList names;
    if (!household_.empty()) {
        for (const auto& spot : household_.front().spots) {
            names.append(text(spot.name));
        }
    }
    return names;
}

QString PinForm::nights(const home::Pin& pin) const
{
    return pin.from == pin.to ? tr("on %1").arg(words_.date_with_year(pin.from))
                              : tr("from %1 to %2").arg(words_.date_with_year(pin.from), words_.date_with_year(pin.to));
}

QStringList PinForm::kept() const
{
    QStringList said;
    if (pinned() == nullptr) {
        return said;
    }
    const auto& home = household_.front();
    if (pinned()->pinned_spot && home.spot(*pinned()->pinned_spot) != nullptr) {
        said.append(tr("It is kept at %1 always.").arg(text(home.spot(*pinned()->pinned_spot)->name)));
    }
    for (const auto& pin : home.pins) {
        if (pin.plant == plant_ && pin.to >= today_ && home.spot(pin.spot) != nullptr) {
            said.append(tr("It is kept at %1 %2.").arg(text(home.spot(pin.spot)->name), nights(pin)));
        }
    }
    return said;
}

QString PinForm::caution() const
{
    return pinned() != nullptr && chosen() != nullptr ? caution_of(*pinned(), *chosen()) : QString{};
}

QString PinForm::caution_of(const home::Plant& plant, const home::Spot& spot)
{
    return plant.hazardous && spot.in_reach
               ? tr("%1 is poisonous or spiny, and a child or an animal gets at the plants of %2. Choose another spot.")
                     .arg(text(plant.name), text(spot.name))
               : QString{};
}

std::optional<home::HouseholdChange> PinForm::fail(int field, const QString& words)
{
    trouble_field_ = field;
    trouble_ = words;
    emit troubleChanged();
    return std::nullopt;
}

std::optional<home::HouseholdChange> PinForm::change()
{
    fail(-1, {});
    if (pinned() == nullptr || chosen() == nullptr) {
        return fail(0, tr("Choose a spot first."));
    }
    const QString first = from_.trimmed();
    const QString last = to_.trimmed();
    const QString where = text(chosen()->name);
    if (first.isEmpty() && last.isEmpty()) {
        if (pinned()->pinned_spot == chosen()->id) {
            return fail(0, tr("%1 is kept at %2 always already.").arg(plant(), where));
        }
        auto kept = *pinned();
        kept.pinned_spot = chosen()->id;
        return home::HouseholdChange{.words = tr("%1 is kept at %2 always").arg(plant(), where).toStdString(), .plants = {kept}};
    }
    if (first.isEmpty() || last.isEmpty()) {
        return fail(first.isEmpty() ? 1 : 2, tr("Write both evenings, or leave both blank to keep it there always."));
    }
    const auto from = words_.typed_date(first);
    const auto to = words_.typed_date(last);
    if (!from || !to) {
        return fail(from ? 2 : 1, tr("“%1” is no date. Write it such as %2.").arg(from ? last : first, example()));
    }
    if (*to < *from) {
        return fail(2, tr("The last evening lies before the first; exchange the two."));
    }
    if (*to < today_) {
        return fail(2, tr("The last evening is over; nothing is left to keep it for."));
    }
    const home::Pin pin{plant_, chosen()->id, *from, *to};
    if (const auto* other = home::contradicting(household_.front(), pin)) {
        const auto* there = household_.front().spot(other->spot);
        return fail(1, tr("%1 is kept at %2 %3 already, and it cannot stand in two places. Take that back first, or choose other evenings.")
                           .arg(plant(), there != nullptr ? text(there->name) : QString{}, nights(*other)));
    }
    return home::HouseholdChange{.words = tr("%1 is kept at %2 %3").arg(plant(), where, nights(pin)).toStdString(), .pins = {pin}};
}

home::HouseholdChange PinForm::taken_back() const
{
    return {.words = tr("%1 is pinned no longer").arg(plant()).toStdString(), .unpinned = {plant_}};
}

} // namespace lathhouse::models
