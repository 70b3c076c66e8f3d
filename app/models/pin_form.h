#pragma once

#include "app/models/year_words.h"
#include "core/home/household_change.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lathhouse::models {

/// Where a hand keeps one plant: at a spot always, or from one evening to another.
class PinForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(QString plant READ plant NOTIFY filled)
    Q_PROPERTY(QStringList spots READ spots NOTIFY filled)
    /// What keeps it now, a sentence for each; empty where nothing does.
    Q_PROPERTY(QStringList kept READ kept NOTIFY filled)
    /// A date as it may be typed.
    Q_PROPERTY(QString example READ example CONSTANT)
    Q_PROPERTY(int spot MEMBER spot_ NOTIFY changed)
    /// Evenings as they are typed; both blank: always.
    Q_PROPERTY(QString from MEMBER from_ NOTIFY changed)
    Q_PROPERTY(QString to MEMBER to_ NOTIFY changed)
    /// What speaks against that spot; empty where nothing does.
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    /// What is wrong, a sentence, and at which field: 0 the spot, 1 the first evening, 2 the last; -1: none.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(int troubleField READ troubleField NOTIFY troubleChanged)

public:
    PinForm(YearWords words, calendar::Date today, QObject* parent = nullptr);

    /// Precondition: the plant is of the household.
    void fill(home::PlantId plant, const home::Household& household);
    /// The spot of that id is the chosen one, where there is one.
    void choose(home::SpotId spot);
    QString plant() const;
    QStringList spots() const;
    QStringList kept() const;
    QString example() const { return words_.date_with_year(today_); }
    QString caution() const;
    /// What speaks against a spot for a plant; empty where nothing does.
    static QString caution_of(const home::Plant& plant, const home::Spot& spot);
    QString trouble() const { return trouble_; }
    int troubleField() const { return trouble_field_; }

    /// What the form says, or nullopt with what is wrong.
    std::optional<home::HouseholdChange> change();
    /// All that keeps the plant is taken back. Precondition: something does.
    home::HouseholdChange taken_back() const;

signals:
    void filled();
    void changed();
    void troubleChanged();

private:
    std::optional<home::HouseholdChange> fail(int field, const QString& words);
    const home::Plant* pinned() const;
    const home::Spot* chosen() const;
    QString nights(const home::Pin& pin) const; ///< "from 1 December 2026 to 28 February 2027"

    YearWords words_;
    calendar::Date today_;
    std::vector<home::Household> household_; ///< As it was; one, once filled.
    home::PlantId plant_ = 0;
    int spot_ = 0;
    QString from_, to_, trouble_;
    int trouble_field_ = -1;
};

} // namespace lathhouse::models
