#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace lathhouse::models {

/// A line of the read-out: what, and how much.
struct ReadoutLine {
    QString label;
    QString value;
    bool strong = false;
};

/// The numbers of the night and day at the cursor. The number of lines stays while the year does.
class ReadoutRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")

public:
    enum Role { LabelRole = Qt::UserRole + 1, ValueRole, StrongRole };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    void show(std::vector<ReadoutLine> lines);

private:
    std::vector<ReadoutLine> lines_;
};

} // namespace lathhouse::models
