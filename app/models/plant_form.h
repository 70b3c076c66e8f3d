#pragma once

#include "app/models/year_words.h"
#include "core/home/household.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lathhouse::models {

/// What the grower says of one plant: its name, pot, own lines and whether it is kept at a spot.
class PlantForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(QString kind READ kind NOTIFY filled)
    Q_PROPERTY(QString name MEMBER name_ NOTIFY changed)
    Q_PROPERTY(QString volume MEMBER volume_ NOTIFY changed) ///< Litres, or quarts of the US.
    Q_PROPERTY(QString weight MEMBER weight_ NOTIFY changed) ///< Kilograms, or pounds.
    Q_PROPERTY(int shade MEMBER shade_ NOTIFY changed)       ///< Place in home::PotShade.
    Q_PROPERTY(QString safe MEMBER safe_ NOTIFY changed)
    Q_PROPERTY(QString damage MEMBER damage_ NOTIFY changed)
    Q_PROPERTY(QString lethal MEMBER lethal_ NOTIFY changed)
    Q_PROPERTY(QString heat MEMBER heat_ NOTIFY changed)
    Q_PROPERTY(bool outdoors MEMBER outdoors_ NOTIFY changed)
    Q_PROPERTY(bool poisonous MEMBER poisonous_ NOTIFY changed)
    /// Spots by name, the first is none; and the one at which it is kept always.
    Q_PROPERTY(QStringList spots READ spots NOTIFY filled)
    Q_PROPERTY(int pinned MEMBER pinned_ NOTIFY changed)
    Q_PROPERTY(QString nameTrouble READ nameTrouble NOTIFY changed)
    Q_PROPERTY(QString volumeTrouble READ volumeTrouble NOTIFY changed)
    Q_PROPERTY(QString weightTrouble READ weightTrouble NOTIFY changed)
    Q_PROPERTY(QString linesTrouble READ linesTrouble NOTIFY changed)
    Q_PROPERTY(QString unit READ unit CONSTANT)
    Q_PROPERTY(QString volumeUnit READ volumeUnit CONSTANT)
    Q_PROPERTY(QString weightUnit READ weightUnit CONSTANT)

public:
    explicit PlantForm(YearWords words, QObject* parent = nullptr);

    void fill(const home::Plant& plant, const home::Household& household, std::vector<std::string> gone_names);
    QString kind() const { return text(plant_kind_); }
    QStringList spots() const { return spots_; }
    QString nameTrouble() const;
    QString volumeTrouble() const;
    QString weightTrouble() const;
    QString linesTrouble() const;
    QString unit() const { return words_.unit(); }
    QString volumeUnit() const;
    QString weightUnit() const;
    bool right() const;
    /// The plant as the form says; only where it is right.
    home::Plant plant() const;

signals:
    void filled();
    void changed();

private:
    std::optional<Celsius> temperature(const QString& typed) const;
    double volume_step() const; ///< Litres.
    double weight_step() const; ///< Kilograms.
    QString pot_volume(const home::Plant& plant) const; ///< As the form shows it.
    QString pot_weight(const home::Plant& plant) const;

    YearWords words_;
    std::vector<home::Plant> plant_; ///< As it was; one, once filled.
    std::string plant_kind_;
    std::vector<std::string> taken_;
    std::vector<home::SpotId> spot_ids_;
    QStringList spots_;
    QString name_, volume_, weight_, safe_, damage_, lethal_, heat_;
    int shade_ = 0;
    int pinned_ = 0;
    bool outdoors_ = false;
    bool poisonous_ = false;
};

} // namespace lathhouse::models
