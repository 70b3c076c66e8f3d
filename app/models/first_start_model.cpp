#include "app/models/first_start_model.h"

#include "app/clock.h"
#include "app/words/refusal.h"
#include "core/base/parse.h"
#include "core/home/history.h"
#include "core/journal/household_store.h"

#include <algorithm>
#include <map>

namespace lathhouse::models {

namespace {

/// All that is to be written; the light of the spots follows from the climate of the place.
struct Wanted {
    std::filesystem::path folder;
    std::string name;
    home::Place place;
    std::vector<std::pair<int, home::SpotWish>> spots; ///< With their numbers among the drafts.
    std::vector<home::Plant> plants;                   ///< Their spots are numbers of drafts.
    calendar::Date today;
    calendar::Instant entered;
};

Result<bool> write_household(const Wanted& wanted, const PlaceDoor& door)
{
    home::Household household{.name = wanted.name,
                              .demonstration = false,
                              .place = wanted.place,
                              .spots = {},
                              .plants = wanted.plants};
    const auto climate = door.climate(wanted.place.position, wanted.place.elevation);
    if (!climate) {
        return climate.error();
    }
    const home::YearOfSky year(*climate);
    std::map<int, home::SpotId> ids;
    for (const auto& [number, wish] : wanted.spots) {
        const int id = static_cast<int>(household.spots.size()) + 1;
        const auto spot = home::make_spot(id, id, wish, year);
        if (!spot) {
            return spot.error();
        }
        ids[number] = id;
        household.spots.push_back(*spot);
    }
    std::vector<home::Event> history;
    for (auto& plant : household.plants) {
        if (plant.spot) {
            plant.spot = ids.contains(*plant.spot) ? std::optional{ids[*plant.spot]} : std::nullopt;
        }
        if (plant.spot) {
            history.push_back({plant.id, home::EventKind::Moved, plant.spot, wanted.today, wanted.entered, "added"});
        }
    }
    const auto store = journal::HouseholdStore::create(wanted.folder, household, history);
    return store ? Result<bool>{true} : Result<bool>{store.error()};
}

} // namespace

FirstStartModel::FirstStartModel(PlaceDoor door, std::filesystem::path folder, YearWords words, calendar::Date today,
                                 QObject* parent)
    : SheetModel(parent), folder_(std::move(folder)), door_(door), today_(today), place_(std::move(door), words, today),
      spots_(words), plants_(words)
{
    connect(&place_, &PlaceForm::givenChanged, this, &FirstStartModel::follow_place);
    connect(&place_, &PlaceForm::formChanged, this, &FirstStartModel::wordsChanged);
    connect(&spots_, &SpotsForm::spotsChanged, this, &FirstStartModel::follow_spots);
    connect(&plants_, &PlantsForm::pickedChanged, this, &FirstStartModel::wordsChanged);
    connect(&place_, &PlaceForm::workingChanged, this, [this] {
        if (finishing_ && !place_.working()) {
            finish();
        }
    });
}

void FirstStartModel::read()
{
    place_.start();
    set_known();
}

void FirstStartModel::follow_place()
{
    const auto climate = place_.climate();
    spots_.set_year(climate ? std::make_shared<const home::YearOfSky>(*climate) : nullptr);
    emit wordsChanged();
}

void FirstStartModel::follow_spots()
{
    std::vector<StandingPlace> places;
    for (const auto& draft : spots_.drafts()) {
        places.push_back({draft.number, draft.name, parse_integer(draft.pots.toStdString()).value_or(0), draft.in_reach,
                          draft.kind == home::SpotKind::Indoors});
    }
    plants_.set_places(std::move(places));
    emit wordsChanged();
}

void FirstStartModel::setStep(int step)
{
    if (step >= 0 && step < kSteps && step != step_) {
        step_ = step;
        clear_error();
        emit stepChanged();
        emit wordsChanged();
    }
}

void FirstStartModel::setHomeName(const QString& name)
{
    if (name != home_name_) {
        home_name_ = name;
        emit wordsChanged();
    }
}

QString FirstStartModel::placeWords() const
{
    if (!place_.placed()) {
        return left_out_[0] && !place_.guess().isEmpty() ? tr("near %1, by the clock").arg(place_.guess())
                                                         : tr("where the pots stand");
    }
    const QString name = place_.name().trimmed();
    return name.isEmpty() ? tr("by its coordinates") : name;
}

QString FirstStartModel::spotsWords() const
{
    const auto count = spots_.drafts().size();
    return left_out_[1]  ? tr("left out")
           : count == 0  ? tr("sills, shelves, balcony")
           : count == 1  ? tr("1 spot")
                         : tr("%1 spots").arg(count);
}

QString FirstStartModel::plantsWords() const
{
    const int count = plants_.total();
    return count == 0 ? tr("a few are enough to begin") : count == 1 ? tr("1 plant") : tr("%1 plants").arg(count);
}

QString FirstStartModel::leaveWords() const
{
    if (step_ == 0 && place_.placed()) {
        return {};
    }
    if (step_ == 0) {
        return place_.guess().isEmpty() ? tr("This computer’s clock tells no place, so the year needs one.")
                                        : tr("The year is then that of %1, by this computer’s clock, until you change it.").arg(place_.guess());
    }
    return step_ == 1 ? spots_.drafts().empty() ? tr("Spots can be added later under Home. Plants then stand nowhere yet.")
                                                : tr("Spots can be added later under Home.")
                      : tr("Plants can be added later under Plants.");
}

bool FirstStartModel::next()
{
    clear_error();
    if (step_ == 0 && !place_.check()) {
        return false;
    }
    if (step_ == 1) {
        if (const auto right = spots_.check(); !right) {
            fail_with(text(words::refusal(right.error())));
            return false;
        }
    }
    go_on(true);
    return true;
}

void FirstStartModel::leaveOut()
{
    clear_error();
    if (step_ == 0 && !place_.guessed_place()) {
        fail_with(tr("Without a place there is no year, and this computer’s clock tells none. Type the nearest town, or "
                     "look at the example household."));
        return;
    }
    go_on(false);
}

void FirstStartModel::go_on(bool used)
{
    left_out_[static_cast<std::size_t>(step_)] = !used;
    if (step_ + 1 < kSteps) {
        setStep(step_ + 1);
    } else {
        finish();
    }
}

void FirstStartModel::back()
{
    setStep(step_ - 1);
}

void FirstStartModel::openExample()
{
    emit exampleAsked();
}

void FirstStartModel::finish()
{
    // What was typed last may still be looked up: its time zone and its height belong to the place.
    finishing_ = uses(0) && place_.working();
    if (finishing_ || working()) {
        return;
    }
    if (uses(0) && !place_.check()) {
        setStep(0);
        return;
    }
    if (uses(1)) {
        if (const auto right = spots_.check(); !right) {
            setStep(1);
            fail_with(text(words::refusal(right.error())));
            return;
        }
    }
    write();
}

void FirstStartModel::write()
{
    const auto place = uses(0) ? place_.place() : Result<home::Place>{place_.guessed_place().value()};
    Wanted wanted{.folder = folder_,
                  .name = home_name_.trimmed().isEmpty() ? tr("Home").toStdString() : home_name_.trimmed().toStdString(),
                  .place = *place,
                  .spots = {},
                  .plants = {},
                  .today = today_,
                  .entered = now()};
    if (uses(1)) {
        for (const auto& draft : spots_.drafts()) {
            wanted.spots.emplace_back(draft.number, spots_.wish(draft));
        }
    }
    if (uses(2)) {
        auto plants = plants_.make([](int number) { return number > 0 ? std::optional{number} : std::nullopt; });
        if (!plants) {
            fail(plants.error());
            return;
        }
        wanted.plants = std::move(*plants);
    }
    work<bool>([wanted = std::move(wanted), door = door_] { return write_household(wanted, door); },
               [this](const Result<bool>& written_down) {
                   if (!written_down) {
                       fail(written_down.error());
                       return;
                   }
                   emit made();
               });
}

} // namespace lathhouse::models
