#include "app/models/journal_rows.h"

namespace lathhouse::models {

int JournalRows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant JournalRows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto& line = (*lines_)[static_cast<std::size_t>(found_[static_cast<std::size_t>(index.row())])];
    switch (role) {
    case Date:
    case Qt::DisplayRole:
        return lines_->words(line.date);
    case Who:
        return lines_->words(line.who);
    case What:
        return lines_->words(line.what);
    case Plant:
        return line.plant;
    case Sentence:
        return lines_->sentence(line);
    default:
        return {};
    }
}

QHash<int, QByteArray> JournalRows::roleNames() const
{
    return {{Date, "date"}, {Who, "who"}, {What, "what"}, {Plant, "plant"}, {Sentence, "sentence"}};
}

QVariant JournalRows::at(int row, const QString& role) const
{
    const int wanted = roleNames().key(role.toUtf8(), -1);
    return row >= 0 && row < count() && wanted >= 0 ? data(index(row), wanted) : QVariant{};
}

void JournalRows::show(std::shared_ptr<const JournalLines> lines, std::vector<int> found)
{
    const bool other_count = found.size() != found_.size();
    if (other_count) {
        beginResetModel();
    }
    lines_ = std::move(lines);
    found_ = std::move(found);
    if (other_count) {
        endResetModel();
        emit countChanged();
    } else if (!found_.empty()) {
        emit dataChanged(index(0), index(count() - 1)); // They keep their places in the list.
    }
}

} // namespace lathhouse::models
