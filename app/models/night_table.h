#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::models {

class YearModel;

/// The chart of the year as rows of words, one for each date.
class NightTable : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")

public:
    enum Role {
        DateRole = Qt::UserRole + 1,
        LowRole,
        SpreadRole,
        StripRole, ///< As the strip of the chart: frost this night, or what decides there.
        FrostAfterRole,
        DayLengthRole,
        SentenceRole ///< The whole row, to be read aloud.
    };
    Q_ENUM(Role)

    explicit NightTable(YearModel* year);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

    void begin_year() { beginResetModel(); }
    void end_year() { endResetModel(); }

private:
    YearModel* year_;
};

} // namespace lathhouse::models
