#pragma once

#include "app/models/kept_settings.h"
#include "app/models/row_order.h"

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>
#include <vector>

namespace lathhouse::models {

class YearModel;

/// Plants of the year in the order that is chosen, which is kept for the person. What they say of a date follows the
/// cursor.
class PlantRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    /// Of all of them, for the room that they need.
    Q_PROPERTY(QStringList names READ names NOTIFY countChanged)
    /// 0 in order of going out, 1 by spot, 2 by name.
    Q_PROPERTY(int rowOrder READ rowOrder WRITE setRowOrder NOTIFY rowOrderChanged)
    /// How many there are and how they stand, and the same where it has little room; empty without plants.
    Q_PROPERTY(QString line READ line NOTIFY lineChanged)
    Q_PROPERTY(QString shortLine READ shortLine NOTIFY lineChanged)
    /// What the marks at the bars mean, where there are any.
    Q_PROPERTY(QString marks READ marks NOTIFY lineChanged)

public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        HazardRole,        ///< Words, or empty.
        SentenceRole,      ///< The plant's whole year, to be read aloud.
        CursorColourRole,  ///< Spot colour at the cursor.
        CursorWordsRole,   ///< Chance of harm, step or "indoors" at the cursor.
        CursorOutdoorsRole, ///< Stands outdoors at the cursor.
        GroupRole,          ///< Name of the spot where the year begins for the plant; empty without a plan.
        PinnedRole          ///< Where a hand keeps it, in words; or empty.
    };
    Q_ENUM(Role)

    explicit PlantRows(YearModel* year);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }
    QStringList names() const;
    int rowOrder() const { return static_cast<int>(chosen_); }
    void setRowOrder(int order); ///< Ignored outside 0..2.
    QString line() const;
    QString shortLine() const;
    QString marks() const;
    /// Number of the row's plant in the household; 0 where there is no such row.
    Q_INVOKABLE int idAt(int row) const;
    std::optional<int> row_of(home::PlantId id) const;
    /// Places of the plants, as their rows stand.
    const std::vector<std::size_t>& order() const { return order_; }
    /// Takes the order that was kept, and keeps what is chosen from now on.
    void remember(std::shared_ptr<KeptSettings> kept);

    void begin_order() { beginResetModel(); }
    void sort();
    /// Whether rows stand by spot and the plan begins the year elsewhere than where they stand.
    bool is_out_of_groups() const;
    void end_order();
    void cursor_moved();
    void dates_moved();

signals:
    void countChanged();
    void rowOrderChanged();
    void lineChanged();

private:
    std::optional<std::size_t> spot_of(std::size_t plant) const;

    YearModel* year_;
    std::vector<std::size_t> order_;
    RowOrder chosen_ = RowOrder::ByDateOut;
    std::shared_ptr<KeptSettings> kept_;
};

} // namespace lathhouse::models
