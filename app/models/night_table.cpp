#include "app/models/night_table.h"

#include "app/models/year_model.h"

namespace lathhouse::models {

NightTable::NightTable(YearModel* year) : QAbstractListModel(year), year_(year) {}

int NightTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(year_->year().days.size());
}

QVariant NightTable::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto place = static_cast<std::size_t>(index.row());
    const YearDay& day = year_->year().days[place];
    const YearWords& words = year_->words();
    switch (role) {
    case Qt::DisplayRole:
    case DateRole:
        return words.short_date(day.date);
    case LowRole:
        return words.temperature(day.low_middle);
    case SpreadRole:
        return tr("%1 to %2").arg(words.bare(day.low_cold), words.bare(day.low_warm));
    case StripRole:
        return strip_value(year_->year(), words, place);
    case FrostAfterRole:
        return YearWords::chance_in_table(day.frost_after);
    case DayLengthRole:
        return words.day_length(day.day_length_minutes);
    case SentenceRole:
        return year_->night_sentence(place);
    default:
        return {};
    }
}

QHash<int, QByteArray> NightTable::roleNames() const
{
    return {{DateRole, "date"},
            {LowRole, "low"},
            {SpreadRole, "spread"},
            {StripRole, "strip"},
            {FrostAfterRole, "frostAfter"},
            {DayLengthRole, "dayLength"},
            {SentenceRole, "sentence"}};
}

} // namespace lathhouse::models
