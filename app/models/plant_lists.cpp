#include "app/models/plant_lists.h"

#include "app/models/word_form.h"

#include <algorithm>

namespace lathhouse::models {

QString ShownPlants::sentence(int shown) const
{
    const PlantCard& of = card(shown);
    QStringList parts{of.name};
    if (!of.gone) {
        parts.append(of.spot.isEmpty() ? PlantShelves::tr("at no spot") : of.spot);
    }
    if (!of.state.isEmpty()) {
        parts.append(of.state);
    }
    QString words = parts.join(QStringLiteral(", ")) + QLatin1Char('.');
    if (!of.hazard.isEmpty()) {
        words += QLatin1Char(' ') + upper_first(of.hazard) + QLatin1Char('.');
    }
    if (!of.next.isEmpty()) {
        words += QLatin1Char(' ') + upper_first(of.next) + QLatin1Char('.');
    }
    if (marked->contains(of.id)) {
        words += PlantShelves::tr(" Marked.");
    }
    return words;
}

int PlantShelves::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

QVariant PlantShelves::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const Line& line = lines_[static_cast<std::size_t>(index.row())];
    const PlantShelf& shelf = shown_.facts->shelves[static_cast<std::size_t>(line.shelf)];
    const auto each = [&](auto value) {
        QList<decltype(value(shown_.card(0), 0))> values;
        for (int at = line.first; at < line.first + line.count; ++at) {
            values.append(value(shown_.card(at), at));
        }
        return QVariant::fromValue(values);
    };
    const auto places = [&] {
        QString words;
        if (shelf.capacity <= 0 || !shown_.with_free) {
            words = line.on_shelf == 1 ? tr("1 plant") : tr("%1 plants").arg(line.on_shelf);
        } else if (line.on_shelf > shelf.capacity) {
            words = shelf.capacity == 1 ? tr("%1 plants, room for 1").arg(line.on_shelf)
                                        : tr("%1 plants, room for %2").arg(line.on_shelf).arg(shelf.capacity);
        } else if (line.on_shelf == shelf.capacity) {
            words = tr("%1 of %2 places, full").arg(line.on_shelf).arg(shelf.capacity);
        } else {
            words = tr("%1 of %2 places").arg(line.on_shelf).arg(shelf.capacity);
        }
        return shelf.nights.isEmpty() ? words : tr("%1, %2").arg(words, shelf.nights);
    };
    switch (role) {
    case FirstRole:
        return line.first;
    case Qt::DisplayRole:
    case SpotRole:
        return line.opens ? shelf.name : QString{};
    case HandRole:
        return shelf.hand;
    case PlacesRole:
        return places();
    case SpokenRole:
        return tr("%1, %2").arg(shelf.name, places());
    case FreeRole:
        return line.free;
    case NamesRole:
        return each([](const PlantCard& of, int) { return of.name; });
    case StatesRole:
        return each([](const PlantCard& of, int) { return of.state; });
    case HazardsRole:
        return each([](const PlantCard& of, int) { return of.hazard; });
    case HabitsRole:
        return each([](const PlantCard& of, int) { return static_cast<int>(of.habit); });
    case FruitsRole:
        return each([](const PlantCard& of, int) { return of.fruit; });
    case ClaysRole:
        return each([](const PlantCard& of, int) { return of.clay; });
    case PicturesRole:
        return each([](const PlantCard& of, int) { return of.picture; });
    case MarksRole:
        return each([this](const PlantCard& of, int) { return shown_.marked->contains(of.id); });
    case SentencesRole:
        return each([this](const PlantCard&, int at) { return shown_.sentence(at); });
    case ShelfRole:
        return line.shelf;
    default:
        return {};
    }
}

QHash<int, QByteArray> PlantShelves::roleNames() const
{
    return {{FirstRole, "first"},   {SpotRole, "spot"},       {HandRole, "hand"},     {PlacesRole, "places"},
            {SpokenRole, "spoken"}, {FreeRole, "free"},       {NamesRole, "names"},   {StatesRole, "states"},
            {HazardsRole, "hazards"}, {HabitsRole, "habits"}, {FruitsRole, "fruits"}, {ClaysRole, "clays"},
            {PicturesRole, "pictures"},
            {MarksRole, "marks"},   {SentencesRole, "sentences"}, {ShelfRole, "shelf"}};
}

int PlantShelves::lineOf(int shown) const
{
    const auto there = std::ranges::find_if(
        lines_, [shown](const Line& line) { return shown >= line.first && shown < line.first + line.count; });
    return there == lines_.end() ? -1 : static_cast<int>(there - lines_.begin());
}

int PlantShelves::beside(int shown, int lines) const
{
    const int from = lineOf(shown);
    if (from < 0) {
        return shown;
    }
    const int column = shown - lines_[static_cast<std::size_t>(from)].first;
    int to = from;
    const int step = lines < 0 ? -1 : 1;
    // Lines without a plant are passed over.
    for (int at = from + step, left = std::abs(lines); at >= 0 && at < rowCount() && left > 0; at += step) {
        if (lines_[static_cast<std::size_t>(at)].count > 0) {
            to = at;
            --left;
        }
    }
    const Line& line = lines_[static_cast<std::size_t>(to)];
    return line.first + std::min(column, line.count - 1);
}

void PlantShelves::lay_out(int columns)
{
    std::vector<Line> lines;
    int shown = 0;
    for (int shelf = 0; shown_.facts != nullptr && shelf < static_cast<int>(shown_.facts->shelves.size()); ++shelf) {
        const int capacity = shown_.facts->shelves[static_cast<std::size_t>(shelf)].capacity;
        const int begin = shown;
        while (shown < shown_.count() && shown_.card(shown).shelf == shelf) {
            ++shown;
        }
        const int plants = shown - begin;
        if (plants == 0 && (!shown_.with_free || capacity <= 0)) {
            continue;
        }
        const std::size_t first_line = lines.size();
        for (int at = begin; at < shown || at == begin; at += columns) {
            lines.push_back({shelf, at, std::min(columns, shown - at), 0, lines.size() == first_line, plants});
        }
        if (shown_.with_free) { // As many as the last line still takes.
            Line& last = lines.back();
            last.free = std::clamp(capacity - plants, 0, columns - last.count);
        }
    }
    if (lines == lines_) {
        refresh();
        return;
    }
    const bool same_number = lines.size() == lines_.size();
    if (same_number) {
        lines_ = std::move(lines);
        refresh();
        return;
    }
    beginResetModel();
    lines_ = std::move(lines);
    endResetModel();
    emit countChanged();
}

void PlantShelves::refresh()
{
    if (!lines_.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

int PlantTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : rows_;
}

QVariant PlantTable::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const PlantCard& of = shown_.card(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case NameRole:
        return of.name;
    case BotanicalRole:
        return of.botanical;
    case SpotRole:
        return of.spot.isEmpty() ? tr("no spot yet") : of.spot;
    case HandRole:
        return shown_.facts->shelves[static_cast<std::size_t>(of.shelf)].hand;
    case StateRole:
        return of.state;
    case NextRole:
        return of.next;
    case HazardRole:
        return of.hazard;
    case MarkedRole:
        return shown_.marked->contains(of.id);
    case SentenceRole:
        return shown_.sentence(index.row());
    default:
        return {};
    }
}

QHash<int, QByteArray> PlantTable::roleNames() const
{
    return {{NameRole, "name"},   {BotanicalRole, "botanical"}, {SpotRole, "spot"},     {HandRole, "hand"},        {StateRole, "state"},
            {NextRole, "next"},   {HazardRole, "hazard"},       {MarkedRole, "marked"}, {SentenceRole, "sentence"}};
}

void PlantTable::lay_out()
{
    if (shown_.count() == rows_) {
        refresh();
        return;
    }
    beginResetModel();
    rows_ = shown_.count();
    endResetModel();
    emit countChanged();
}

void PlantTable::refresh()
{
    if (rows_ > 0) {
        emit dataChanged(index(0), index(rows_ - 1));
    }
}

} // namespace lathhouse::models
