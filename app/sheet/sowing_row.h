#pragma once

#include "app/chart/chart_ink.h"
#include "app/models/year_words.h"
#include "app/sheet/year_sheet.h"

#include <QCoreApplication>
#include <QRectF>

#include <functional>
#include <utility>

class QPainter;

namespace lathhouse::sheet {

/// The season of one sowing as a row of the printed year.
class SowingRow {
    Q_DECLARE_TR_FUNCTIONS(YearSheet)

public:
    /// row: the row's plot; x_of: where a date stands in it.
    SowingRow(const chart::ChartInk& ink, const models::YearWords& words, const QRectF& row, qreal bar_height,
              std::function<qreal(calendar::Date)> x_of)
        : ink_(ink), words_(words), row_(row), bar_height_(bar_height), x_of_(std::move(x_of))
    {
    }

    void draw(QPainter& painter, const YearSheetFacts::Sowing& sowing) const;

private:
    qreal x_of(calendar::Date date) const { return x_of_(date); }

    const chart::ChartInk& ink_;
    const models::YearWords& words_;
    QRectF row_;
    qreal bar_height_;
    std::function<qreal(calendar::Date)> x_of_;
};

} // namespace lathhouse::sheet
