#include "app/models/mend_model.h"

#include "app/clock.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

MendModel::MendModel(MendDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), place_(door_.place, look_.words, look_.today),
      spots_(look_.words), plants_(look_.words), plant_(look_.words), lot_(look_.today),
      pin_(look_.words, look_.today)
{
    connect(&place_, &PlaceForm::workingChanged, this, [this] {
        if (!place_.working() && std::exchange(keeping_place_, false)) {
            keep();
        }
    });
}

void MendModel::read()
{
    set_known();
}

QString MendModel::title() const
{
    switch (form_) {
    case None:
        return {};
    case AddPlants:
        return tr("Add plants");
    case AddSpots:
        return tr("Add spots");
    case EditSpot:
        return tr("Change a spot");
    case EditPlace:
        return tr("Change the place");
    case EditPlant:
        return tr("Change a plant");
    case AddLot:
        return tr("Add a lot of seed");
    case PinPlant:
        return tr("Keep %1 at a spot").arg(pin_.plant());
    }
    return {};
}

QString MendModel::keepWords() const
{
    switch (form_) {
    case AddPlants:
        return tr("Add the plants");
    case AddSpots:
        return tr("Add the spots");
    case AddLot:
        return tr("Add the lot");
    case PinPlant:
        return tr("Keep it there");
    default:
        return tr("Keep the change");
    }
}

void MendModel::setHomeName(const QString& name)
{
    if (name != home_name_) {
        home_name_ = name;
        emit homeNameChanged();
    }
}

void MendModel::addPlants()
{
    open(AddPlants, 0);
}
void MendModel::addSpots()
{
    open(AddSpots, 0);
}
void MendModel::editSpot(int spot)
{
    open(EditSpot, spot);
}
void MendModel::editPlace()
{
    open(EditPlace, 0);
}
void MendModel::editPlant(int id)
{
    open(EditPlant, id);
}
void MendModel::addLot(const QString& crop)
{
    crop_ = crop;
    open(AddLot, 0);
}

void MendModel::pinPlant(int id)
{
    open(PinPlant, id);
}

void MendModel::planMove(int plant, int spot)
{
    open(PinPlant, plant);
    planned_spot_ = spot;
}

void MendModel::open(Form form, int which)
{
    clear_error();
    planned_spot_ = 0;
    using Read = std::pair<plan::HouseholdFacts, std::vector<std::string>>;
    work<Read>(
        [door = door_]() -> Result<Read> {
            auto facts = door.load();
            if (!facts) {
                return facts.error();
            }
            auto gone = door.gone_names();
            if (!gone) {
                return gone.error();
            }
            return Read{std::move(*facts), std::move(*gone)};
        },
        [this, form, which](Result<Read> read) {
            if (!read) {
                fail(read.error());
                return;
            }
            show(form, which, std::move(read->first), read->second);
        });
}

void MendModel::show(Form form, int which, plan::HouseholdFacts facts, const std::vector<std::string>& gone)
{
    const auto& home = facts.as_told;
    std::vector<std::string> spot_names;
    for (const auto& spot : home.spots) {
        spot_names.push_back(spot.name);
    }
    const auto year = std::make_shared<const home::YearOfSky>(facts.climate);
    if (form == AddPlants) {
        plants_.clear();
        std::vector<std::string> names = gone;
        std::vector<StandingPlace> places;
        for (const auto& plant : home.plants) {
            names.push_back(plant.name);
        }
        for (const auto& spot : home.spots) {
            const auto standing = std::ranges::count_if(home.plants, [&](const home::Plant& plant) { return plant.spot == spot.id; });
            places.push_back({spot.id, text(spot.name), spot.capacity - static_cast<int>(standing), spot.in_reach,
                              spot.kind == home::SpotKind::Indoors});
        }
        plants_.set_taken(std::move(names));
        plants_.set_places(std::move(places));
    } else if (form == AddSpots) {
        spots_.clear();
        spots_.set_taken(std::move(spot_names));
        spots_.set_year(year);
    } else if (form == EditSpot) {
        if (which < 0 || which >= static_cast<int>(home.spots.size())) {
            return;
        }
        const auto& spot = home.spots[static_cast<std::size_t>(which)];
        spot_ = spot.id;
        std::erase(spot_names, spot.name);
        spots_.clear();
        spots_.set_taken(std::move(spot_names));
        spots_.fill(spot);
        spots_.set_year(year);
    } else if (form == EditPlace) {
        place_.start();
        place_.fill(home.place);
        setHomeName(text(home.name));
    } else if (form == EditPlant || form == PinPlant) {
        const auto* plant = home.plant(which);
        if (plant == nullptr) {
            fail_with(tr("The plant is no longer there."));
            return;
        }
        if (form == EditPlant) {
            plant_.fill(*plant, home, gone);
        } else {
            pin_.fill(which, home);
            if (planned_spot_ != 0) {
                pin_.choose(planned_spot_);
            }
        }
    } else if (form == AddLot) {
        std::vector<std::string> taken;
        for (const auto& lot : facts.seeds.lots) {
            taken.push_back(lot.name);
        }
        lot_.clear(std::move(taken), crop_);
    }
    facts_ = {std::move(facts)};
    form_ = form;
    set_known();
    emit formChanged();
}

void MendModel::close()
{
    form_ = None;
    keeping_place_ = false;
    facts_.clear();
    emit formChanged();
}

void MendModel::leave()
{
    clear_error();
    plants_.looked()->close();
    close();
}

void MendModel::keep()
{
    clear_error();
    if (facts_.empty() || working()) {
        return;
    }
    switch (form_) {
    case None:
        return;
    case AddPlants:
        keep_plants();
        return;
    case AddSpots:
        keep_spots();
        return;
    case EditSpot:
        keep_spot();
        return;
    case EditPlace:
        keep_place();
        return;
    case EditPlant:
        if (!plant_.right()) {
            emit wrong();
            return;
        }
        write({.words = tr("Changed %1").arg(text(plant_.plant().name)).toStdString(), .plants = {plant_.plant()}});
        return;
    case AddLot:
        keep_lot();
        return;
    case PinPlant:
        if (auto change = pin_.change()) {
            write(std::move(*change));
        } else {
            emit wrong();
        }
        return;
    }
}

void MendModel::unpin()
{
    clear_error();
    if (form_ == PinPlant && !working() && !pin_.kept().isEmpty()) {
        write(pin_.taken_back());
    }
}

void MendModel::keep_plants()
{
    auto made = plants_.make([](int number) { return number > 0 ? std::optional{number} : std::nullopt; });
    if (!made) {
        fail(made.error());
        return;
    }
    if (made->empty()) {
        fail_with(tr("Pick a kind first."));
        emit wrong();
        return;
    }
    for (auto& plant : *made) {
        plant.id = 0; // New.
    }
    const QString words = made->size() == 1 ? tr("Added %1").arg(text(made->front().name)) : tr("Added %1 plants").arg(made->size());
    write({.words = words.toStdString(), .plants = std::move(*made)});
}

void MendModel::keep_spots()
{
    if (spots_.drafts().empty()) {
        fail_with(tr("Press one of the spots first."));
        emit wrong();
        return;
    }
    if (const auto right = spots_.check(); !right) {
        emit wrong();
        return;
    }
    const home::YearOfSky year(facts_.front().climate);
    int order = 0;
    for (const auto& spot : facts_.front().as_told.spots) {
        order = std::max(order, spot.walking_order);
    }
    home::HouseholdChange change{.words = {}};
    for (const auto& draft : spots_.drafts()) {
        const auto spot = home::make_spot(0, ++order, spots_.wish(draft), year);
        if (!spot) {
            fail(spot.error());
            return;
        }
        change.spots.push_back(*spot);
    }
    change.words = (change.spots.size() == 1 ? tr("Added the spot %1").arg(text(change.spots.front().name))
                                             : tr("Added %1 spots").arg(change.spots.size()))
                       .toStdString();
    write(std::move(change));
}

void MendModel::keep_spot()
{
    if (const auto right = spots_.check(); !right) {
        emit wrong();
        return;
    }
    const auto& draft = spots_.drafts().front();
    const auto* before = facts_.front().as_told.spot(spot_);
    const auto wish = spots_.wish(draft);
    auto spot = home::make_spot(spot_, before->walking_order, wish, home::YearOfSky(facts_.front().climate));
    if (!spot) {
        fail(spot.error());
        return;
    }
    if (before->name == spot->name) {
        spot->short_name = before->short_name;
    }
    if (spot->view && spot->view == before->view) { // The same window has the light that was said of it.
        spot->light_in_summer = before->light_in_summer;
        spot->light_in_winter = before->light_in_winter;
    }
    // Figures that were not touched keep what the rounding on screen does not show.
    const auto same = [this](const std::optional<Celsius>& a, const std::optional<Celsius>& b) {
        return a && b && look_.words.bare(*a) == look_.words.bare(*b);
    };
    if (same(before->winter, spot->winter)) {
        spot->winter = before->winter;
    }
    if (same(before->summer, spot->summer)) {
        spot->summer = before->summer;
    }
    write({.words = tr("Changed the spot %1").arg(text(spot->name)).toStdString(), .spots = {*spot}});
}

void MendModel::removeSpot()
{
    clear_error();
    if (form_ != EditSpot || facts_.empty() || working()) {
        return;
    }
    const auto* spot = facts_.front().as_told.spot(spot_);
    write({.words = tr("Took %1 off the list").arg(text(spot->name)).toStdString(), .spots_gone = {spot_}});
}

void MendModel::keep_place()
{
    keeping_place_ = place_.working(); // Its zone, its height and whether it has a climate are not known yet.
    if (keeping_place_) {
        return;
    }
    if (!place_.check()) {
        emit wrong();
        return;
    }
    auto place = place_.place();
    if (!place) {
        fail(place.error());
        return;
    }
    if (place_.givenTrouble() != QString{}) { // Without a climate there would be no year.
        fail_with(place_.givenTrouble());
        return;
    }
    home::HouseholdChange change{.words = tr("Changed the place to %1").arg(text(place->name)).toStdString(), .place = *place};
    if (!home_name_.trimmed().isEmpty() && home_name_.trimmed().toStdString() != facts_.front().as_told.name) {
        change.name = home_name_.trimmed().toStdString();
    }
    write(std::move(change));
}

void MendModel::keep_lot()
{
    const auto lot = lot_.lot();
    if (!lot) {
        emit wrong();
        return;
    }
    work<void>([add = door_.add_lot, lot = *lot, today = look_.today] { return add(lot, today, now()); },
               [this, name = lot->name](const Result<void>& added) {
                   if (!added) {
                       fail(added.error());
                       return;
                   }
                   written_down();
                   say(tr("Added the lot %1.").arg(text(name)));
                   emit lotAdded(text(name));
               });
}

void MendModel::write(home::HouseholdChange change)
{
    work<void>([make = door_.change, change, today = look_.today] { return make(change, today, now()); },
               [this, words = change.words](const Result<void>& made) {
                   if (!made) {
                       fail(made.error());
                       return;
                   }
                   written_down();
                   say(text(words) + QLatin1Char('.'));
               });
}

void MendModel::written_down()
{
    close();
    emit written();
}

} // namespace lathhouse::models
