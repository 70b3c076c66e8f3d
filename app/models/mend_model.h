#pragma once

#include "app/models/lot_form.h"
#include "app/models/mend_door.h"
#include "app/models/pin_form.h"
#include "app/models/plant_form.h"
#include "app/models/plants_form.h"
#include "app/models/spots_form.h"
#include "app/models/tonight_facts.h"

#include <vector>

namespace lathhouse::models {

/// Changing the household itself in the window: its place, its spots, its plants, a lot of seed. One form is open at a
/// time; what it keeps is one entry of the journal, which the window takes back as one.
class MendModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(Form form READ form NOTIFY formChanged)
    Q_PROPERTY(QString title READ title NOTIFY formChanged)
    Q_PROPERTY(QString keepWords READ keepWords NOTIFY formChanged)
    Q_PROPERTY(lathhouse::models::PlaceForm* place READ place CONSTANT)
    Q_PROPERTY(lathhouse::models::SpotsForm* spots READ spots CONSTANT)
    Q_PROPERTY(lathhouse::models::PlantsForm* plants READ plants CONSTANT)
    Q_PROPERTY(lathhouse::models::PlantForm* plant READ plant CONSTANT)
    Q_PROPERTY(lathhouse::models::LotForm* lot READ lot CONSTANT)
    Q_PROPERTY(lathhouse::models::PinForm* pin READ pin CONSTANT)
    /// Name of the household, beside its place.
    Q_PROPERTY(QString homeName READ homeName WRITE setHomeName NOTIFY homeNameChanged)
    /// Whether the spot of the form may be taken off the list.
    Q_PROPERTY(bool canRemove READ canRemove NOTIFY formChanged)

public:
    enum Form { None, AddPlants, AddSpots, EditSpot, EditPlace, EditPlant, AddLot, PinPlant };
    Q_ENUM(Form)

    MendModel(MendDoor door, TodayLook look, QObject* parent = nullptr);

    Form form() const { return form_; }
    QString title() const;
    QString keepWords() const;
    PlaceForm* place() { return &place_; }
    SpotsForm* spots() { return &spots_; }
    PlantsForm* plants() { return &plants_; }
    PlantForm* plant() { return &plant_; }
    LotForm* lot() { return &lot_; }
    PinForm* pin() { return &pin_; }
    QString homeName() const { return home_name_; }
    void setHomeName(const QString& name);
    bool canRemove() const { return form_ == EditSpot; }

    /// Reads the household and opens a form with it.
    Q_INVOKABLE void addPlants();
    Q_INVOKABLE void addSpots();
    /// By its place among the household's spots.
    Q_INVOKABLE void editSpot(int spot);
    Q_INVOKABLE void editPlace();
    Q_INVOKABLE void editPlant(int id);
    /// crop: the one that is looked at, may be empty.
    Q_INVOKABLE void addLot(const QString& crop = {});
    /// To keep a plant at a spot, always or on given nights.
    Q_INVOKABLE void pinPlant(int id);
    /// The same, with the spot of that id chosen: a move that is planned.
    Q_INVOKABLE void planMove(int plant, int spot);
    /// Writes what the form says and closes it; where something is wrong it says so and stays.
    Q_INVOKABLE void keep();
    /// Takes the spot of the form off the list.
    Q_INVOKABLE void removeSpot();
    /// Takes back all that keeps the plant of the form at a spot.
    Q_INVOKABLE void unpin();
    /// Closes the form without writing.
    Q_INVOKABLE void leave();

signals:
    void formChanged();
    void homeNameChanged();
    /// A lot of that name was written down.
    void lotAdded(const QString& name);
    /// What was wrong when keeping stands at a field of the form.
    void wrong();

protected:
    void read() override;

private:
    void open(Form form, int which);
    void show(Form form, int which, plan::HouseholdFacts facts, const std::vector<std::string>& gone);
    void close();
    void write(home::HouseholdChange change);
    void written_down();
    void keep_spots();
    void keep_spot();
    void keep_place();
    void keep_plants();
    void keep_lot();

    MendDoor door_;
    TodayLook look_;
    Form form_ = None;
    PlaceForm place_;
    SpotsForm spots_;
    PlantsForm plants_;
    PlantForm plant_;
    LotForm lot_;
    PinForm pin_;
    QString home_name_;
    std::vector<plan::HouseholdFacts> facts_; ///< As they were when the form was opened; at most one.
    home::SpotId spot_ = 0;
    home::SpotId planned_spot_ = 0; ///< Chosen in the form that is opened; 0: where the plant stands.
    bool keeping_place_ = false; ///< Asked for while the place is still looked up.
    QString crop_; ///< Of the lot to be added.
};

} // namespace lathhouse::models
