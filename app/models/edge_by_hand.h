#pragma once

#include "app/models/year_data.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <cstddef>
#include <optional>
#include <vector>

namespace lathhouse::models {

class YearModel;

/// The edge between two stays of a plant that a hand has taken up, to drop it on another day: then the plant is pinned so.
class EdgeByHand : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    /// The row of its plant; -1 where none is taken up.
    Q_PROPERTY(int row READ row NOTIFY changed)
    /// First night of the later stay.
    Q_PROPERTY(int day READ day NOTIFY changed)
    /// What dropping it there would mean.
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString told READ told NOTIFY changed)

public:
    explicit EdgeByHand(YearModel& model);

    int row() const { return held_ ? held_->row : -1; }
    int day() const { return held_ ? held_->day : -1; }
    QString words() const;
    QString told() const; ///< The same, with what the keys and the mouse do with it.
    /// Stays of the plant as they would be; null for one whose edge is not held.
    const std::vector<YearStay>* stays(std::size_t plant) const;

    /// Takes up the edge between two stays of that row that is nearest to the day, at most so many days away.
    Q_INVOKABLE bool take(int row, int day, int within);
    /// Whether there is one, without taking it.
    Q_INVOKABLE bool isNear(int row, int day, int within) const;
    Q_INVOKABLE void move(int day);
    /// Keeps the plant by hand so that it changes spots on that day, or leaves all as it was.
    Q_INVOKABLE void drop();
    Q_INVOKABLE void leave();
    /// Moves the edge of the current row that is nearest to the cursor; it is dropped after a pause.
    Q_INVOKABLE void nudge(int days);

signals:
    void changed();

private:
    struct Held {
        int row;
        std::size_t plant;
        std::size_t later; ///< Place of the later one of the two stays.
        int from;          ///< First night of it by the plan.
        int day;
        std::vector<YearStay> stays; ///< As they would be.
    };
    std::optional<std::size_t> nearest(int row, int day, int within) const;

    YearModel& model_;
    std::optional<Held> held_;
    QTimer pause_;
};

} // namespace lathhouse::models
