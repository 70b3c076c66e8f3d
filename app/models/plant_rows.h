#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::models {

class YearModel;

/// Plants of the year, in order of going out. What they say of a date follows the cursor.
class PlantRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    /// Of all of them, for the room that they need.
    Q_PROPERTY(QStringList names READ names NOTIFY countChanged)

public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        HazardRole,        ///< Words, or empty.
        SentenceRole,      ///< The plant's whole year, to be read aloud.
        CursorColourRole,  ///< Spot colour at the cursor.
        CursorWordsRole,   ///< Chance of harm, step or "indoors" at the cursor.
        CursorOutdoorsRole, ///< Stands outdoors at the cursor.
        PinnedRole          ///< Where a hand keeps it, in words; or empty.
    };
    Q_ENUM(Role)

    explicit PlantRows(YearModel* year);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }
    QStringList names() const;

    void begin_order() { beginResetModel(); }
    void end_order();
    void cursor_moved();
    void dates_moved();

signals:
    void countChanged();

private:
    YearModel* year_;
};

} // namespace lathhouse::models
