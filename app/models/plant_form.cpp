#include "app/models/plant_form.h"

#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"
#include "app/words/us_units.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

constexpr double kMostLitres = 1000.0;
constexpr double kMostKilograms = 2000.0;

/// With as many decimals as it needs, two at most.
QString shown(double value, const YearWords& words)
{
    const auto is_whole = [](double number) { return std::abs(number - std::round(number)) < 1e-6; };
    return decimal_to_type(words, value, is_whole(value) ? 0 : is_whole(value * 10.0) ? 1 : 2);
}

} // namespace

PlantForm::PlantForm(YearWords words, QObject* parent) : QObject(parent), words_(std::move(words)) {}

double PlantForm::volume_step() const
{
    return words_.units() == Units::Us ? words::kLitresInAQuart : 1.0;
}
double PlantForm::weight_step() const
{
    return words_.units() == Units::Us ? words::kKilogramsInAPound : 1.0;
}
QString PlantForm::volumeUnit() const
{
    return words_.units() == Units::Us ? tr("qt") : tr("L");
}
QString PlantForm::weightUnit() const
{
    return words_.units() == Units::Us ? tr("lb") : tr("kg");
}

QString PlantForm::pot_volume(const home::Plant& plant) const
{
    return plant.pot_volume ? shown(plant.pot_volume->litres() / volume_step(), words_) : QString{};
}
QString PlantForm::pot_weight(const home::Plant& plant) const
{
    return shown(plant.pot_kilograms / weight_step(), words_);
}

void PlantForm::fill(const home::Plant& plant, const home::Household& household, std::vector<std::string> gone_names)
{
    plant_ = {plant};
    plant_kind_ = plant.kind;
    taken_ = std::move(gone_names);
    for (const auto& other : household.plants) {
        if (other.id != plant.id) {
            taken_.push_back(other.name);
        }
    }
    spots_ = {tr("nowhere: the plan carries it")};
    spot_ids_ = {0};
    pinned_ = 0;
    for (const auto& spot : household.spots) {
        spots_.append(text(spot.name));
        spot_ids_.push_back(spot.id);
        if (plant.pinned_spot == spot.id) {
            pinned_ = static_cast<int>(spot_ids_.size()) - 1;
        }
    }
    name_ = text(plant.name);
    volume_ = pot_volume(plant);
    weight_ = pot_weight(plant);
    shade_ = static_cast<int>(plant.pot_shade);
    safe_ = words_.bare(plant.lines.safe_night);
    damage_ = words_.bare(plant.lines.damage_begins);
    lethal_ = words_.bare(plant.lines.lethal);
    heat_ = words_.bare(plant.heat_limit);
    outdoors_ = plant.wants_open_air;
    poisonous_ = plant.hazardous;
    emit filled();
    emit changed();
}

std::optional<Celsius> PlantForm::temperature(const QString& typed) const
{
    return typed_plant_line(typed, words_);
}

QString PlantForm::nameTrouble() const
{
    const QString name = name_.trimmed();
    if (name.isEmpty()) {
        return tr("A plant needs a name.");
    }
    const bool taken = std::ranges::any_of(taken_, [&](const std::string& other) {
        return text(other).compare(name, Qt::CaseInsensitive) == 0;
    });
    return taken ? tr("There is, or was, a plant “%1”; give this one another name, so that their histories stay apart.").arg(name)
                 : QString{};
}

QString PlantForm::volumeTrouble() const
{
    if (volume_.trimmed().isEmpty()) {
        return {};
    }
    const auto litres = typed_decimal(volume_);
    return litres && *litres > 0.0 && *litres * volume_step() <= kMostLitres
               ? QString{}
               : tr("The pot’s volume is a number above 0, such as 12, or is left blank.");
}

QString PlantForm::weightTrouble() const
{
    const auto kilograms = typed_decimal(weight_);
    return kilograms && *kilograms > 0.0 && *kilograms * weight_step() <= kMostKilograms ? QString{}
                                                                                       : tr("The weight of plant and pot is a number above 0, such as 4.");
}

QString PlantForm::linesTrouble() const
{
    const auto safe = temperature(safe_);
    const auto damage = temperature(damage_);
    const auto lethal = temperature(lethal_);
    const auto heat = temperature(heat_);
    if (!safe || !damage || !lethal || !heat) {
        return tr("Each line is a temperature, such as %1.").arg(words_.bare(Celsius::from_degrees(4.0)));
    }
    if (!(*lethal <= *damage && *damage <= *safe)) {
        return tr("The lines rise from what kills over where harm begins to the safe night.");
    }
    return *heat > *safe ? QString{} : tr("Heat cannot harm below the safe night.");
}

bool PlantForm::right() const
{
    return !plant_.empty() && nameTrouble().isEmpty() && volumeTrouble().isEmpty() && weightTrouble().isEmpty() && linesTrouble().isEmpty();
}

home::Plant PlantForm::plant() const
{
    home::Plant plant = plant_.front();
    // A figure that was not touched keeps what the rounding on screen does not show.
    const auto line = [this](const QString& typed, Celsius& figure) {
        if (typed != words_.bare(figure)) {
            figure = temperature(typed).value_or(figure);
        }
    };
    plant.name = name_.trimmed().toStdString();
    line(safe_, plant.lines.safe_night);
    line(damage_, plant.lines.damage_begins);
    line(lethal_, plant.lines.lethal);
    line(heat_, plant.heat_limit);
    if (volume_ != pot_volume(plant)) {
        const auto litres = typed_decimal(volume_);
        plant.pot_volume = litres ? std::optional{Litres::from_litres(*litres * volume_step())} : std::nullopt;
    }
    if (weight_ != pot_weight(plant)) {
        plant.pot_kilograms = typed_decimal(weight_).value_or(plant.pot_kilograms / weight_step()) * weight_step();
    }
    plant.pot_shade = static_cast<home::PotShade>(std::clamp(shade_, 0, 2));
    plant.wants_open_air = outdoors_;
    plant.hazardous = poisonous_;
    plant.pinned_spot = pinned_ > 0 && pinned_ < static_cast<int>(spot_ids_.size())
                            ? std::optional{spot_ids_[static_cast<std::size_t>(pinned_)]}
                            : std::nullopt;
    return plant;
}

} // namespace lathhouse::models
