#pragma once

#include "app/models/place_gives.h"
#include "app/models/sheet_model.h"
#include "core/geodesy/town_table.h"
#include "core/home/household.h"

#include <atomic>
#include <memory>
#include <optional>

namespace lathhouse::models {

/// Where a place form looks things up. The functions are called from a thread of the form.
struct PlaceDoor {
    std::function<Result<const geodesy::TownTable*>()> towns;
    std::function<Result<climate::PlaceClimate>(Position, std::optional<Metres>)> climate;
};

/// A town as a form keeps it.
struct TownChoice {
    std::string name;
    std::string where; ///< "Vienna, Austria".
    Position position;
    std::optional<Metres> elevation;
    std::string zone;
};

/// Where the pots are: found by the name of a town or typed as coordinates of any form, with the height and the time
/// zone proposed and open to correction; and what that place gives, changing as one types.
class PlaceForm : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    /// What is looked for; coordinates in any form fill the fields at once.
    Q_PROPERTY(QString find READ find WRITE setFind NOTIFY formChanged)
    /// Roles: words, detail, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* found READ found CONSTANT)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY formChanged)
    Q_PROPERTY(QString latitude READ latitude WRITE setLatitude NOTIFY formChanged)
    Q_PROPERTY(QString longitude READ longitude WRITE setLongitude NOTIFY formChanged)
    Q_PROPERTY(QString height READ height WRITE setHeight NOTIFY formChanged)
    Q_PROPERTY(QString heightUnit READ heightUnit CONSTANT)
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY formChanged)
    Q_PROPERTY(QString heightNote READ heightNote NOTIFY formChanged)
    Q_PROPERTY(QString zoneNote READ zoneNote NOTIFY formChanged)
    /// What is wrong at a field, a whole sentence; empty where nothing is.
    Q_PROPERTY(QString findTrouble READ findTrouble NOTIFY formChanged)
    Q_PROPERTY(QString positionTrouble READ positionTrouble NOTIFY formChanged)
    Q_PROPERTY(QString heightTrouble READ heightTrouble NOTIFY formChanged)
    Q_PROPERTY(QString zoneTrouble READ zoneTrouble NOTIFY formChanged)
    /// Whether a position is known, and whether what it gives is shown.
    Q_PROPERTY(bool placed READ placed NOTIFY formChanged)
    Q_PROPERTY(bool hasGiven READ hasGiven NOTIFY givenChanged)
    /// Why nothing is given; empty where it is, or where there is no place yet.
    Q_PROPERTY(QString givenTrouble READ givenTrouble NOTIFY givenChanged)
    /// Roles: label, value, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* figures READ figures CONSTANT)
    Q_PROPERTY(QString stations READ stations NOTIFY givenChanged)
    Q_PROPERTY(QString base READ base NOTIFY givenChanged)
    Q_PROPERTY(QString credits READ credits NOTIFY givenChanged)
    Q_PROPERTY(QString warning READ warning NOTIFY givenChanged)
    Q_PROPERTY(QString spoken READ spoken NOTIFY givenChanged)
    /// The town that stands in where the place is left out, by the computer's clock; empty where none does.
    Q_PROPERTY(QString guess READ guess NOTIFY formChanged)

public:
    PlaceForm(PlaceDoor door, YearWords words, calendar::Date today, QObject* parent = nullptr);

    QString find() const { return find_; }
    void setFind(const QString& find);
    SheetRows* found() { return &found_; }
    QString name() const { return name_; }
    void setName(const QString& name);
    QString latitude() const { return latitude_; }
    void setLatitude(const QString& latitude);
    QString longitude() const { return longitude_; }
    void setLongitude(const QString& longitude);
    QString height() const { return height_; }
    void setHeight(const QString& height);
    QString heightUnit() const;
    QString zone() const { return zone_; }
    void setZone(const QString& zone);
    QString heightNote() const;
    QString zoneNote() const { return zone_note_; }
    QString findTrouble() const { return find_trouble_; }
    QString positionTrouble() const { return position_trouble_; }
    QString heightTrouble() const { return height_trouble_; }
    QString zoneTrouble() const { return zone_trouble_; }
    bool placed() const { return position_.has_value(); }
    bool hasGiven() const { return climate_ != nullptr; }
    QString givenTrouble() const { return given_trouble_; }
    SheetRows* figures() { return &figures_; }
    QString stations() const { return given_.stations; }
    QString base() const { return given_.base; }
    QString credits() const { return given_.credits; }
    QString warning() const { return given_.warning; }
    QString spoken() const { return given_.spoken; }
    QString guess() const { return guess_ ? text(guess_->where) : QString{}; }

    const PlaceGives& given() const { return given_; }
    const YearWords& words() const { return words_; }
    /// What the place gives; nullptr before it is known.
    std::shared_ptr<const climate::PlaceClimate> climate() const { return climate_; }
    /// The place as typed. Errors: WrongUsage with what is missing or wrong, for people.
    Result<home::Place> place() const;
    /// As place(), with what is missing said at its field.
    bool check();
    /// The place that stands in where none was typed; nullopt where the clock tells none.
    std::optional<home::Place> guessed_place() const;
    /// Fills the form from a place that is known.
    void fill(const home::Place& place);

    /// Takes the town in that row of those found.
    Q_INVOKABLE void choose(int row);

signals:
    void formChanged();
    void givenChanged();

protected:
    void read() override; ///< Makes the tables ready, so that the first letter finds them so.

private:
    struct Looked;
    void search();
    void place_at(Position position);
    void reread_position();
    void look_up();
    void take(Looked looked);
    void forget_given();
    std::optional<Metres> typed_height() const;
    QString height_to_type(Metres height) const;
    /// Whether the position is still, nearly, that of the place the form was filled from, whose name, height and zone
    /// stay where nothing else is typed.
    bool as_filled() const;
    void follow_filled();
    QString coordinate(double degrees) const;

    PlaceDoor door_;
    YearWords words_;
    calendar::Date today_;
    QString find_, name_, latitude_, longitude_, height_, zone_;
    QString find_trouble_, position_trouble_, height_trouble_, zone_trouble_, zone_note_, height_from_, given_trouble_;
    bool own_height_ = false; ///< Typed by the grower, not proposed.
    bool own_zone_ = false;
    bool own_name_ = false;
    std::optional<Position> position_;
    std::vector<TownChoice> choices_;
    std::optional<TownChoice> guess_;
    SheetRows found_;
    SheetRows figures_;
    PlaceGives given_;
    std::shared_ptr<const climate::PlaceClimate> climate_;
    /// Numbers of what was asked last; older questions are not worked out.
    std::shared_ptr<std::atomic<int>> searched_ = std::make_shared<std::atomic<int>>(0);
    std::shared_ptr<std::atomic<int>> looked_ = std::make_shared<std::atomic<int>>(0);
    std::optional<home::Place> filled_; ///< What the form was filled from.
};

} // namespace lathhouse::models
