#include "app/models/plant_rows.h"

#include "app/models/year_model.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr auto kOrderKey = "year/rows";

} // namespace

PlantRows::PlantRows(YearModel* year) : QAbstractListModel(year), year_(year) {}

int PlantRows::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(order_.size());
}

QVariant PlantRows::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const std::size_t plant = order_[static_cast<std::size_t>(index.row())];
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
    case GroupRole: {
        const auto spot = spot_of(plant);
        return spot ? text(year_->year().spots[*spot].name) : QString{};
    }
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
            {GroupRole, "group"},
            {PinnedRole, "pinned"}};
}

QStringList PlantRows::names() const
{
    QStringList names;
    for (const std::size_t plant : order_) {
        names.append(text(year_->year().plants[plant].name));
    }
    return names;
}

std::optional<std::size_t> PlantRows::spot_of(std::size_t plant) const
{
    return first_spot(year_->solved(), plant);
}

void PlantRows::sort()
{
    order_ = order_of(chosen_, year_->year(), year_->solved());
}

bool PlantRows::is_out_of_groups() const
{
    return chosen_ == RowOrder::BySpot && !std::ranges::is_sorted(order_, {}, [this](std::size_t plant) {
        return spot_of(plant).value_or(year_->year().spots.size());
    });
}

void PlantRows::setRowOrder(int order)
{
    if (order < 0 || order > static_cast<int>(RowOrder::ByName) || order == rowOrder()) {
        return;
    }
    chosen_ = static_cast<RowOrder>(order);
    if (kept_) {
        kept_->keep(QLatin1String(kOrderKey), order);
    }
    year_->reorder();
    emit rowOrderChanged();
    emit lineChanged();
}

void PlantRows::remember(std::shared_ptr<KeptSettings> kept)
{
    kept_ = std::move(kept);
    setRowOrder(kept_->number(QLatin1String(kOrderKey), 0, static_cast<int>(RowOrder::ByName)).value_or(0));
}

int PlantRows::idAt(int row) const
{
    return row >= 0 && row < rowCount() ? static_cast<int>(year_->year().plants[order_[static_cast<std::size_t>(row)]].id) : 0;
}

std::optional<int> PlantRows::row_of(home::PlantId id) const
{
    const auto row =
        std::ranges::find(order_, id, [this](std::size_t plant) { return year_->year().plants[plant].id; });
    return row == order_.end() ? std::nullopt : std::optional{static_cast<int>(row - order_.begin())};
}

QString PlantRows::line() const
{
    if (order_.empty()) {
        return {};
    }
    switch (chosen_) {
    case RowOrder::BySpot:
        return tr("%1 by the spot where the year begins").arg(order_.size());
    case RowOrder::ByName:
        return tr("%1 by name").arg(order_.size());
    case RowOrder::ByDateOut:
        break;
    }
    return tr("%1 in order of going out").arg(order_.size());
}

QString PlantRows::shortLine() const
{
    if (order_.empty()) {
        return {};
    }
    switch (chosen_) {
    case RowOrder::BySpot:
        return tr("%1 by spot").arg(order_.size());
    case RowOrder::ByName:
        return tr("%1 by name").arg(order_.size());
    case RowOrder::ByDateOut:
        break;
    }
    return tr("%1 by date out").arg(order_.size());
}

QString PlantRows::marks() const
{
    const bool hardened = std::ranges::any_of(year_->solved().stays, [](const auto& stays) {
        return std::ranges::any_of(stays, [](const YearStay& stay) { return stay.ladder_days > 0; });
    });
    const bool bracketed =
        std::ranges::any_of(order_, [this](std::size_t plant) { return !year_->dates(plant).empty(); });
    QString marks = hardened ? tr("stepped edge: hardening") : QString{};
    if (bracketed) {
        marks += (marks.isEmpty() ? QString{} : QStringLiteral(" · ")) + tr("bracket: date at 1 in 5 to 1 in 20");
    }
    const bool fed = std::ranges::any_of(order_, [this](std::size_t plant) { return !year_->feeds(plant).empty(); });
    if (fed) {
        marks += (marks.isEmpty() ? QString{} : QStringLiteral(" · ")) + tr("tick below the bar: feed");
    }
    return marks;
}

void PlantRows::end_order()
{
    endResetModel();
    emit countChanged();
    emit lineChanged();
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
                         {SentenceRole, CursorColourRole, CursorWordsRole, CursorOutdoorsRole, GroupRole});
        emit lineChanged();
    }
}

} // namespace lathhouse::models
