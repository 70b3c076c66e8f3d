#pragma once

#include "app/models/journal_lines.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <vector>

namespace lathhouse::models {

/// Lines of the journal, all or those that were found. There may be hundreds of thousands: each is put into words under a role
/// whenever it is looked at, and nothing is copied.
class JournalRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the journal")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role { Date = Qt::UserRole + 1, Who, What, Plant, Sentence };

    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return static_cast<int>(found_.size()); }
    /// The value under a role's name; invalid outside the rows and for a name that is none.
    Q_INVOKABLE QVariant at(int row, const QString& role) const;

    /// found: places among the lines, in the order in which they are shown.
    void show(std::shared_ptr<const JournalLines> lines, std::vector<int> found);

signals:
    void countChanged();

private:
    std::shared_ptr<const JournalLines> lines_;
    std::vector<int> found_;
};

} // namespace lathhouse::models
