#pragma once

#include "app/models/readout_rows.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <cstddef>
#include <optional>
#include <utility>

namespace lathhouse::models {

class YearModel;
struct YearDay;
struct YearStay;

/// What the page Year says of the night and day at its cursor, and of each plant then.
class CursorReading : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to a YearModel")
    Q_PROPERTY(QString shortDate READ shortDate NOTIFY changed)
    Q_PROPERTY(QString longDate READ longDate NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString dayLength READ dayLength NOTIFY changed)
    Q_PROPERTY(QString low READ low NOTIFY changed)
    Q_PROPERTY(QString spread READ spread NOTIFY changed)
    Q_PROPERTY(QString frostAfter READ frostAfter NOTIFY changed)
    Q_PROPERTY(QString shelteredAfter READ shelteredAfter NOTIFY changed)
    Q_PROPERTY(QString harmHeading READ harmHeading NOTIFY changed)
    Q_PROPERTY(QString outdoors READ outdoors NOTIFY changed)
    Q_PROPERTY(QString hardening READ hardening NOTIFY changed)
    Q_PROPERTY(QString whyThere READ whyThere NOTIFY whyChanged)
    Q_PROPERTY(lathhouse::models::ReadoutRows* lines READ lines CONSTANT)

public:
    explicit CursorReading(const YearModel& year);

    QString shortDate() const;
    QString longDate() const;
    QString sentence() const;
    QString dayLength() const;
    QString low() const;
    QString spread() const;
    QString frostAfter() const;
    QString shelteredAfter() const;
    QString harmHeading() const;
    QString outdoors() const;
    QString hardening() const;
    /// Of the chosen plant: where the plan has it on that day, since when, and why; empty before the first plan.
    QString whyThere() const;
    ReadoutRows* lines() { return &lines_; }

    /// Colour of the plant's spot, kSpotColours more where its pattern is turned; -1 before the first plan.
    int colour(std::size_t plant) const;
    /// Chance of harm, step of a ladder with its hours and light, or that it is indoors.
    QString words(std::size_t plant) const;
    bool is_outdoors(std::size_t plant) const;
    /// Says it anew: the cursor, the year, its plan or the units are others.
    void say();

signals:
    void changed();
    void whyChanged();

private:
    std::size_t place() const;
    const YearDay& day() const;
    const YearStay* stay(std::size_t plant) const;
    /// 1-based step of a ladder with the number of steps; nullopt on other days.
    std::optional<std::pair<int, int>> step(std::size_t plant) const;
    /// Hours and light of the step of hardening; empty on other days.
    QString step_words(std::size_t plant) const;
    bool in_first_half_of_season() const;

    const YearModel& year_;
    ReadoutRows lines_;
};

} // namespace lathhouse::models
