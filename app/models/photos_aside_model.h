#pragma once

#include "app/models/plant_door.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"

namespace lathhouse::models {

/// The photos that no plant's page shows: those that were taken out of the lists, to be brought back, and those of no plant
/// that is there, to be given to one or taken out of the lists. A part of Home's section Data.
class PhotosAsideModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// The newest of them, at most kMostShown; roles: source, name, words, out, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* rows READ rows CONSTANT)
    /// How many there are; that there are none.
    Q_PROPERTY(QString line READ line NOTIFY asideChanged)
    /// Names of the plants that one may be given to.
    Q_PROPERTY(QStringList plants READ plants NOTIFY asideChanged)

public:
    static constexpr std::size_t kMostShown = 60;

    PhotosAsideModel(PlantDoor door, TodayLook look, QObject* parent = nullptr);

    SheetRows* rows() { return &rows_; }
    QString line() const;
    QStringList plants() const;

    /// Reads what is shown, again where it was read before.
    Q_INVOKABLE void look();
    Q_INVOKABLE void bringBack(int row);
    Q_INVOKABLE void withdraw(int row);
    /// It shows that one of the plants.
    Q_INVOKABLE void giveTo(int row, int plant);

signals:
    void asideChanged();

protected:
    void read() override;

private:
    struct Facts;
    /// The photo of a row; nullptr where there is none, or it is out of the lists and ought not, or the reverse.
    const home::Photo* photo(int row, bool out) const;
    void change(const home::Photo& photo, home::PhotoChangeKind kind, std::optional<home::PlantId> plant, QString said);
    QString called(const home::Photo& photo) const;

    PlantDoor door_;
    TodayLook look_;
    std::vector<home::Photo> photos_; ///< Of the rows.
    std::vector<bool> out_;           ///< Whether each is out of the lists.
    std::vector<std::pair<home::PlantId, std::string>> plants_;
    std::size_t all_ = 0; ///< Those that are not shown among them.
    SheetRows rows_;
};

} // namespace lathhouse::models
