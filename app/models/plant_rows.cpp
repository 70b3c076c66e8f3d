#include "app/models/plant_rows.h"

#include "app/models/year_model.h"

namespace lathhouse::models {

PlantRows::PlantRows(YearModel* year) : QAbstractListModel(year), year_(year) {}

int PlantRows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(year_->order().size());
}

QVariant PlantRows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const std::size_t plant = year_->order()[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case NameRole:
        return text(year_->year().plants[plant].name);
    case HazardRole:
        return text(year_->year().plants[plant].hazard);
    case SentenceRole:
        return year_->plant_sentence(plant);
    case CursorColourRole:
        return year_->cursor()->colour(plant);
    case CursorWordsRole:
        return year_->cursor()->words(plant);
    case CursorOutdoorsRole:
        return year_->cursor()->is_outdoors(plant);
    case PinnedRole:
        return text(year_->year().plants[plant].pinned);
    default:
        return {};
    }
}

QHash<int, QByteArray> PlantRows::roleNames() const
{
    return {{NameRole, "name"},
            {HazardRole, "hazard"},
            {SentenceRole, "sentence"},
            {CursorColourRole, "cursorColour"},
            {CursorWordsRole, "cursorWords"},
            {CursorOutdoorsRole, "cursorOutdoors"},
            {PinnedRole, "pinned"}};
}

QStringList PlantRows::names() const
{
    QStringList names;
    for (const std::size_t plant : year_->order()) {
        names.append(text(year_->year().plants[plant].name));
    }
    return names;
}

void PlantRows::end_order()
{
    endResetModel();
    emit countChanged();
}

void PlantRows::cursor_moved()
{
    if (rowCount() > 0) {
        emit dataChanged(index(0), index(rowCount() - 1),
                         {CursorColourRole, CursorWordsRole, CursorOutdoorsRole});
    }
}

void PlantRows::dates_moved()
{
    if (rowCount() > 0) {
        emit dataChanged(index(0), index(rowCount() - 1),
                         {SentenceRole, CursorColourRole, CursorWordsRole, CursorOutdoorsRole});
    }
}

} // namespace lathhouse::models
