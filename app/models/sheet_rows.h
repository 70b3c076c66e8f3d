#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lathhouse::models {

/// Rows of ready words under named roles, for the lists of a page. Every row has a value for every role.
class SheetRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    using Row = std::vector<QVariant>;

    explicit SheetRows(std::vector<QByteArray> roles, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }
    /// The value under a role's name; invalid outside the rows and for a name that is none.
    Q_INVOKABLE QVariant at(int row, const QString& role) const;

    /// Rows of the same number keep their places in the list; else it is built anew.
    void show(std::vector<Row> rows);

signals:
    void countChanged();

private:
    std::vector<QByteArray> roles_;
    std::vector<Row> rows_;
};

} // namespace lathhouse::models
