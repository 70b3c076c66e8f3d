#include "app/sheet/paper.h"

#include "app/chart/print_ink.h"
#include "app/sheet/print_text.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <utility>

namespace lathhouse::sheet {

namespace {

constexpr double kLongEdge = 1280.0;
constexpr double kMillimetresOfA4 = 297.0;

QString number_of_sheet(int number, int count)
{
    return tr("Sheet %1 of %2").arg(number).arg(count);
}

QPageSize paper_of(Paper paper)
{
    return QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
}

} // namespace

QSizeF page_size(Paper paper, Turn turn)
{
    const QSizeF millimetres = paper_of(paper).size(QPageSize::Millimeter) * (kLongEdge / kMillimetresOfA4);
    return turn == Turn::Across ? millimetres.transposed() : millimetres;
}

QByteArray dated(QByteArray pdf, calendar::Date today)
{
    const QByteArray mark = "(D:";
    constexpr qsizetype kDigits = 14; // YYYYMMDDhhmmss
    // As many digits as before, so that what stands behind keeps its place in the file.
    const QByteArray moment = QByteArray::fromStdString(calendar::to_text(today)).replace("-", "") + "000000";
    for (qsizetype at = pdf.indexOf(mark); at >= 0; at = pdf.indexOf(mark, at + 1)) {
        const qsizetype begin = at + mark.size();
        // The mark alone comes up by chance in packed pages and photos as well.
        const bool is_moment = pdf.size() - begin >= kDigits &&
                               std::all_of(pdf.cbegin() + begin, pdf.cbegin() + begin + kDigits,
                                           [](char byte) { return byte >= '0' && byte <= '9'; });
        if (is_moment) {
            pdf.replace(begin, kDigits, moment);
        }
    }
    return pdf;
}

Result<std::string> Pages::pdf(const QString& title, const QString& printed, calendar::Date today) const
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    constexpr int kDotsPerInch = 1200;
    writer.setResolution(kDotsPerInch);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Lathhouse"));
    writer.setPageLayout(QPageLayout(paper_of(paper_),
                                     turn_ == Turn::Across ? QPageLayout::Landscape : QPageLayout::Portrait,
                                     QMarginsF(0, 0, 0, 0)));
    QPainter painter;
    if (!painter.begin(&writer)) {
        return Error{ErrorCode::Unavailable, "a PDF cannot be made here; Qt's own PDF writer does not start"};
    }
    const QSizeF page = size();
    const qreal scale = writer.width() / page.width();
    const QFont foot = text_font(12);
    for (int place = 0; place < count(); ++place) {
        if (place > 0) {
            writer.newPage();
        }
        painter.save();
        painter.scale(scale, scale);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.save();
        draw_[static_cast<std::size_t>(place)](painter);
        painter.restore();
        painter.setFont(foot);
        painter.setPen(chart::print_ink().ink2);
        const qreal line = page.height() - kFootLine;
        painter.drawText(QPointF(kMargin, line), printed);
        const QString number = number_of_sheet(place + 1, count());
        painter.drawText(QPointF(page.width() - kMargin - text_width(foot, number), line), number);
        painter.restore();
    }
    painter.end();
    buffer.close();
    return dated(std::move(bytes), today).toStdString();
}

} // namespace lathhouse::sheet
