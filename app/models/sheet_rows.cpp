#include "app/models/sheet_rows.h"

#include <algorithm>

namespace lathhouse::models {

SheetRows::SheetRows(std::vector<QByteArray> roles, QObject* parent)
    : QAbstractListModel(parent), roles_(std::move(roles))
{
}

int SheetRows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant SheetRows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const int place = role == Qt::DisplayRole ? 0 : role - Qt::UserRole - 1;
    return place >= 0 && place < static_cast<int>(row.size()) ? row[static_cast<std::size_t>(place)] : QVariant{};
}

QHash<int, QByteArray> SheetRows::roleNames() const
{
    QHash<int, QByteArray> names;
    for (std::size_t place = 0; place < roles_.size(); ++place) {
        names.insert(Qt::UserRole + 1 + static_cast<int>(place), roles_[place]);
    }
    return names;
}

QVariant SheetRows::at(int row, const QString& role) const
{
    const auto there = std::ranges::find(roles_, role.toUtf8());
    if (there == roles_.end() || row < 0 || row >= rowCount()) {
        return {};
    }
    return rows_[static_cast<std::size_t>(row)][static_cast<std::size_t>(there - roles_.begin())];
}

void SheetRows::show(std::vector<Row> rows)
{
    Q_ASSERT(std::ranges::all_of(rows, [this](const Row& row) { return row.size() == roles_.size(); }));
    if (rows.size() != rows_.size()) {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
        emit countChanged();
        return;
    }
    rows_ = std::move(rows);
    if (!rows_.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

} // namespace lathhouse::models
