#include "app/sheet/paper.h"

#include "app/chart/print_ink.h"
#include "app/sheet/print_text.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

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

/// The same number of digits of another moment, so that what stands behind keeps its place in the file.
void set_dates(QByteArray& pdf, calendar::Date today)
{
    const QByteArray mark = "(D:";
    const QByteArray date = QByteArray::fromStdString(calendar::to_text(today)).replace("-", "");
    for (qsizetype at = pdf.indexOf(mark); at >= 0; at = pdf.indexOf(mark, at + 1)) {
        const qsizetype begin = at + mark.size();
        const qsizetype end = pdf.indexOf(')', begin);
        constexpr qsizetype kDigits = 14; // YYYYMMDDhhmmss
        if (end - begin >= kDigits) {
            pdf.replace(begin, kDigits, date + "000000");
        }
    }
}

} // namespace

QSizeF page_size(Paper paper, Turn turn)
{
    const QSizeF millimetres = paper_of(paper).size(QPageSize::Millimeter) * (kLongEdge / kMillimetresOfA4);
    return turn == Turn::Across ? millimetres.transposed() : millimetres;
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
    set_dates(bytes, today);
    return bytes.toStdString();
}

} // namespace lathhouse::sheet
