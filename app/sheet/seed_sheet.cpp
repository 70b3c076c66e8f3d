#include "app/sheet/seed_sheet.h"

#include "app/chart/print_ink.h"
#include "app/sheet/flow.h"
#include "app/sheet/print_marks.h"
#include "app/sheet/print_text.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace lathhouse::sheet {

namespace {

/// Places of a lot's values in its row of models::SeedFacts.
enum LotColumn { Id, Name, Botanical, Packed, SeedsLeft, Mean, Low, High, Tested, Share, Basis, Next };
/// The same of a tray, and of a date.
enum TrayColumn { TrayId, TrayHead, Emerged, Sown, Expected, Over };
enum DateColumn { Label, Value, Why };

QString words_of(const models::SheetRows::Row& row, int column)
{
    return row[static_cast<std::size_t>(column)].toString();
}

constexpr qreal kLabelWidth = 150.0;
constexpr qreal kValueWidth = 160.0;
constexpr qreal kColumnGap = 12.0;

class SeedSheet {
    Q_DECLARE_TR_FUNCTIONS(SeedSheet)

public:
    SeedSheet(const SeedSheetFacts& facts, Flow& flow)
        : facts_(facts), flow_(flow), wide_(flow.width()), ink_(chart::print_ink())
    {
    }

    void add_all()
    {
        if (facts_.list.lots.empty()) {
            const QString words = tr("No lot of seed is kept yet. A packet is entered on the page Seeds, or with: lathhouse add "
                                     "lot.");
            flow_.add(24.0, [ink = ink_, words](QPainter& painter, QPointF at) {
                write_line(painter, text_font(13), ink.ink, {at.x(), at.y() + 14.0}, words);
            });
            return;
        }
        for (std::size_t lot = 0; lot < facts_.list.lots.size(); ++lot) {
            add_lot(facts_.list.lots[lot], facts_.sheets[lot]);
        }
        add_sources();
    }

private:
    void add_lot(const models::SheetRows::Row& row, const std::optional<models::SowingSheet>& sheet)
    {
        const bool known = row[Mean].toDouble() >= 0.0;
        QStringList facts;
        if (!words_of(row, Packed).isEmpty()) {
            facts.append(tr("packed %1").arg(words_of(row, Packed)));
        }
        if (!words_of(row, SeedsLeft).isEmpty()) {
            facts.append(tr("%1 seeds left").arg(words_of(row, SeedsLeft)));
        }
        if (known) {
            facts.append(tr("%1 come up, 9 in 10: %2 to %3 %, %4")
                             .arg(words_of(row, Share))
                             .arg(qRound(row[Low].toDouble() * 100.0))
                             .arg(qRound(row[High].toDouble() * 100.0))
                             .arg(words_of(row, Basis)));
        }
        flow_.add_space(14.0);
        const QString name = words_of(row, Name);
        const QString botanical = words_of(row, Botanical);
        const QString next = words_of(row, Next);
        // The name wraps before the date; the botanical name stands beside it where there is room, else below.
        const qreal name_width = wide_ - text_width(strong_font(13), next) - 16.0;
        const qreal of_name = text_width(title_font(20), name);
        const bool beside = of_name + 12.0 + text_width(slanted_font(16), botanical) <= name_width;
        const qreal name_height = std::max(text_height(title_font(20), name, name_width), 27.0);
        const qreal botanical_at = beside ? 25.0 : name_height + 22.0;
        const qreal line_at = beside ? name_height + 17.0 : botanical_at + 19.0;
        flow_.add_heading(line_at + 10.0, [=, ink = ink_, wide = wide_, line = facts.join(tr(" · "))](QPainter& painter, QPointF at) {
            draw_rule(painter, ink.ink, at.x(), at.x() + wide, at.y() + 1.0, 1.5);
            if (beside) {
                write_line(painter, title_font(20), ink.ink, {at.x(), at.y() + 25.0}, name);
            } else {
                write_wrapped(painter, title_font(20), ink.ink, {at.x(), at.y() + 4.0}, name_width, name);
            }
            write_line(painter, slanted_font(16), ink.ink2, {at.x() + (beside ? of_name + 12.0 : 0.0), at.y() + botanical_at}, botanical);
            write_line_to(painter, strong_font(13), ink.ink, {at.x() + wide, at.y() + 24.0}, next);
            write_line(painter, text_font(12), ink.ink2, {at.x(), at.y() + line_at}, line);
        });
        if (!sheet) {
            add_words(text_font(12), tr("The tables have no such crop, so nothing is known of its sowing."));
            return;
        }
        add_words(strong_font(12), tr("%1; %2.").arg(sheet->amount, sheet->sure));
        for (const auto& date : sheet->dates) {
            add_date(date);
        }
        for (const QString& note : sheet->notes) {
            if (!note.isEmpty()) {
                add_words(text_font(12), note);
            }
        }
        for (const auto& tray : sheet->trays) {
            add_tray(tray);
        }
    }

    void add_words(const QFont& font, const QString& words)
    {
        const qreal height = text_height(font, words, wide_);
        flow_.add(height + 3.0, [ink = ink_, wide = wide_, font, words](QPainter& painter, QPointF at) {
            write_wrapped(painter, font, ink.ink, at, wide, words);
        });
    }

    void add_date(const models::SheetRows::Row& row)
    {
        const QFont font = text_font(12);
        const qreal why_at = kLabelWidth + kValueWidth + 2.0 * kColumnGap;
        const qreal why_width = wide_ - why_at;
        const QString why = words_of(row, Why);
        const qreal height = std::max(text_height(font, why, why_width), 17.0) + 2.0;
        flow_.add(height, [=, ink = ink_, wide = wide_, label = words_of(row, Label), value = words_of(row, Value)](
                              QPainter& painter, QPointF at) {
            draw_rule(painter, ink.rule, at.x(), at.x() + wide, at.y(), 0.8);
            write_line(painter, font, ink.ink2, {at.x(), at.y() + 14.0}, label);
            write_line(painter, strong_font(12), ink.ink, {at.x() + kLabelWidth + kColumnGap, at.y() + 14.0}, value);
            write_wrapped(painter, font, ink.ink2, {at.x() + why_at, at.y()}, why_width, why);
        });
    }

    /// With empty fields for the next counts.
    void add_tray(const models::SheetRows::Row& row)
    {
        const bool over = row[Over].toBool();
        const QString counted = tr("%1 of %2 up").arg(row[Emerged].toInt()).arg(row[Sown].toInt());
        const QFont small = text_font(12);
        const QString expected = words_of(row, Expected);
        constexpr qreal kFields = 210.0;
        const qreal words_at = kLabelWidth + kColumnGap;
        const qreal words_width = wide_ - words_at - (over ? 0.0 : kFields);
        const qreal head_width = wide_ - 12.0;
        const QString head = words_of(row, TrayHead);
        // Below the head, which has the whole width: however long it is, nothing lies beside it.
        const qreal below = std::max(text_height(strong_font(12), head, head_width), 17.0) + 3.0;
        const qreal height = below + std::max(text_height(small, expected, words_width - 56.0), 26.0) + 4.0;
        flow_.add_space(4.0);
        flow_.add(height, [=, ink = ink_, wide = wide_](QPainter& painter, QPointF at) {
            painter.setBrush(ink.band);
            painter.setPen(Qt::NoPen);
            painter.drawRect(QRectF(at.x(), at.y(), wide, height));
            write_wrapped(painter, strong_font(12), ink.ink, {at.x() + 6.0, at.y() + 2.0}, head_width, head);
            write_line(painter, strong_font(12), ink.ink, {at.x() + 6.0, at.y() + below + 14.0}, counted);
            write_wrapped(painter, small, ink.ink2, {at.x() + words_at + 50.0, at.y() + below}, words_width - 56.0, expected);
            if (over) {
                return;
            }
            constexpr int kCounts = 3;
            constexpr qreal kField = 62.0;
            for (int count = 0; count < kCounts; ++count) {
                const QRectF field(at.x() + wide - kFields + 6.0 + count * (kField + 6.0), at.y() + below, kField, height - below - 4.0);
                painter.setBrush(ink.sheet);
                painter.setPen(QPen(ink.edge, 0.8));
                painter.drawRect(field);
                write_line(painter, text_font(9), ink.ink2, {field.left() + 4.0, field.top() + 10.0},
                           count == 0 ? tr("date, up") : QString{});
            }
        });
    }

    void add_sources()
    {
        QStringList all;
        for (const auto& sheet : facts_.sheets) {
            if (sheet && !all.contains(sheet->sources)) {
                all.append(sheet->sources);
            }
        }
        if (all.isEmpty()) {
            return;
        }
        flow_.add_space(14.0);
        flow_.add_heading(22.0, [ink = ink_, wide = wide_](QPainter& painter, QPointF at) {
            draw_rule(painter, ink.ink, at.x(), at.x() + wide, at.y() + 1.0);
            write_line(painter, ink.small_strong, ink.ink, {at.x(), at.y() + 17.0}, tr("Where the numbers come from"));
        });
        add_words(text_font(10), tr("Dates are chances from the nights and soil of the place, not promises."));
        for (const QString& one : all) {
            add_words(text_font(10), one);
        }
    }

    const SeedSheetFacts& facts_;
    Flow& flow_;
    qreal wide_;
    chart::ChartInk ink_;
};

} // namespace

Pages seed_sheet(const SeedSheetFacts& facts, const models::TodayLook& look, Paper paper)
{
    Pages pages(paper, Turn::Upright);
    const auto ink = chart::print_ink();
    const QString title = tr("Seeds on %1").arg(look.words.long_date_with_year(look.today));
    const QString whose = tr("%1 · by the date of sowing").arg(facts.household);
    Flow flow(
        pages, 52.0,
        [=](QPainter& painter, QPointF at) {
            write_line(painter, title_font(28), ink.ink, {at.x(), at.y() + 24.0}, title);
            write_line(painter, text_font(13), ink.ink2, {at.x(), at.y() + 46.0}, whose);
        },
        26.0,
        [=](QPainter& painter, QPointF at) {
            write_line(painter, title_font(16), ink.ink, {at.x(), at.y() + 14.0}, title);
        });
    SeedSheet(facts, flow).add_all();
    flow.finish();
    return pages;
}

} // namespace lathhouse::sheet
