#include "app/models/readout_rows.h"

namespace lathhouse::models {

int ReadoutRows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant ReadoutRows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const ReadoutLine& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case LabelRole:
        return line.label;
    case ValueRole:
        return line.value;
    case StrongRole:
        return line.strong;
    default:
        return {};
    }
}

QHash<int, QByteArray> ReadoutRows::roleNames() const
{
    return {{LabelRole, "label"}, {ValueRole, "value"}, {StrongRole, "strong"}};
}

void ReadoutRows::show(std::vector<ReadoutLine> lines)
{
    if (lines.size() != lines_.size()) {
        beginResetModel();
        lines_ = std::move(lines);
        endResetModel();
        return;
    }
    lines_ = std::move(lines);
    if (!lines_.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

} // namespace lathhouse::models
