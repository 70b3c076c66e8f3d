#pragma once

#include "app/models/plants_facts.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace lathhouse::models {

/// The plants that are shown, in their order, and those that are marked: what both lists read.
struct ShownPlants {
    const PlantsFacts* facts = nullptr;
    std::vector<int> order; ///< Places among the cards.
    const std::set<home::PlantId>* marked = nullptr;
    bool with_free = true; ///< Free places are shown where nothing is filtered out.

    const PlantCard& card(int shown) const
    {
        return facts->cards[static_cast<std::size_t>(order[static_cast<std::size_t>(shown)])];
    }
    int count() const { return static_cast<int>(order.size()); }
    /// "Weeping fig, Living room, suspected: look. Poisonous to animals. Marked."
    QString sentence(int shown) const;
};

/// Lines of a shelf: a spot's plants, so many to a line. Each role has one value for each plant of the line.
class PlantShelves : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Plants")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role {
        FirstRole = Qt::UserRole + 1, ///< Place of its first plant among those shown.
        SpotRole,                     ///< Name of the spot in the first line of its shelf, else empty.
        HandRole,
        PlacesRole, ///< "5 of 8 places, 8 to 12 °C"
        SpokenRole, ///< Of the shelf.
        FreeRole,   ///< Free places to be drawn after its plants.
        NamesRole,
        StatesRole,
        HazardsRole,
        HabitsRole,
        FruitsRole,
        ClaysRole,
        PicturesRole, ///< Addresses of photos, empty for those that are drawn.
        MarksRole,
        SentencesRole,
        ShelfRole ///< Its place among the shelves.
    };

    explicit PlantShelves(const ShownPlants& shown, QObject* parent = nullptr) : QAbstractListModel(parent), shown_(shown) {}

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }

    /// Line of the shown plant; -1 where there is none.
    Q_INVOKABLE int lineOf(int shown) const;
    /// The plant a line above (-1) or below (1) in the same column or the last one there; the same at the ends.
    Q_INVOKABLE int beside(int shown, int lines) const;

    /// Lays the lines out anew.
    void lay_out(int columns);
    /// Only words and marks have changed.
    void refresh();

signals:
    void countChanged();

private:
    struct Line {
        int shelf;
        int first;
        int count;
        int free;
        bool opens; ///< It is the first of its shelf.
        int on_shelf; ///< Plants of the whole shelf that are shown.
        friend bool operator==(const Line&, const Line&) = default;
    };
    const ShownPlants& shown_;
    std::vector<Line> lines_;
};

/// The same plants one below the other.
class PlantTable : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Plants")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        BotanicalRole,
        SpotRole,
        HandRole,
        StateRole,
        NextRole,
        HazardRole,
        MarkedRole,
        SentenceRole
    };

    explicit PlantTable(const ShownPlants& shown, QObject* parent = nullptr) : QAbstractListModel(parent), shown_(shown) {}

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }

    void lay_out();
    void refresh();

signals:
    void countChanged();

private:
    const ShownPlants& shown_;
    int rows_ = 0;
};

} // namespace lathhouse::models
