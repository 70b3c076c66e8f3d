#pragma once

#include "app/sheet/sheet_wish.h"
#include "core/base/result.h"
#include "core/calendar/date.h"

#include <QByteArray>
#include <QSizeF>
#include <QString>

#include <functional>
#include <string>
#include <vector>

class QPainter;

namespace lathhouse::sheet {

enum class Turn { Upright, Across };

/// Size of a page in the unit of all sheets: 1280 of them are the long edge of A4, so that the look's figures for
/// a window of 1280 px hold on paper.
QSizeF page_size(Paper paper, Turn turn);

/// The pages of one document, drawn one after the other once their number is known.
class Pages {
public:
    Pages(Paper paper, Turn turn) : paper_(paper), turn_(turn) {}

    QSizeF size() const { return page_size(paper_, turn_); }
    int count() const { return static_cast<int>(draw_.size()); }
    /// draw: gets a painter whose unit is that of page_size, at the upper left corner.
    void add(std::function<void(QPainter&)> draw) { draw_.push_back(std::move(draw)); }
    /// The document, with "Lathhouse · printed 14 March 2026" and "Sheet 1 of 4" at the foot of each page. Its date
    /// is that of `today`, so that equal pages give equal bytes.
    ///
    /// Errors: Unavailable where Qt makes no PDF.
    Result<std::string> pdf(const QString& title, const QString& printed, calendar::Date today) const;

private:
    Paper paper_;
    Turn turn_;
    std::vector<std::function<void(QPainter&)>> draw_;
};

/// A PDF of Qt with the moments in it ("(D:" and fourteen digits) set to the midnight that begins `today`; all else, packed
/// pages and photos too, is left as it is.
QByteArray dated(QByteArray pdf, calendar::Date today);

/// Left and right margin, and the foot's base line from the lower edge, in the unit of page_size.
constexpr double kMargin = 46.0;
constexpr double kFootLine = 30.0;

} // namespace lathhouse::sheet
