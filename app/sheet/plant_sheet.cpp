#include "app/sheet/plant_sheet.h"

#include "app/chart/growth_painter.h"
#include "app/chart/night_ruler.h"
#include "app/chart/print_ink.h"
#include "app/chart/verdict_marks.h"
#include "app/sheet/flow.h"
#include "app/sheet/print_marks.h"
#include "app/sheet/print_text.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QUrl>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace lathhouse::sheet {

namespace {

QString words_of(const models::SheetRows::Row& row, std::size_t column)
{
    return row[column].toString();
}

/// A picture that fills a box, its middle kept; without a picture a frame.
void draw_picture(QPainter& painter, const chart::ChartInk& ink, const QImage& picture, const QRectF& box)
{
    if (!picture.isNull()) {
        const qreal scale = std::max(box.width() / picture.width(), box.height() / picture.height());
        const QSizeF part(box.width() / scale, box.height() / scale);
        painter.drawImage(box, picture,
                          QRectF((picture.width() - part.width()) / 2.0, (picture.height() - part.height()) / 2.0,
                                 part.width(), part.height()));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.edge, 0.8));
    painter.drawRect(box);
}

class PlantSheet {
    Q_DECLARE_TR_FUNCTIONS(PlantSheet)

public:
    PlantSheet(const models::PlantFacts& facts, const models::TodayLook& look, Flow& flow)
        : facts_(facts), look_(look), flow_(flow), wide_(flow.width()), ink_(chart::print_ink())
    {
    }

    void add_all()
    {
        add_hazards();
        add_photos();
        add_growth();
        add_needs();
        add_history();
        add_notes();
    }

private:
    void add_heading(const QString& words, const QString& note = {})
    {
        flow_.add_space(14.0);
        flow_.add_heading(30.0, [=, ink = ink_, wide = wide_](QPainter& painter, QPointF at) {
            draw_rule(painter, ink.ink, at.x(), at.x() + wide, at.y() + 1.0);
            write_line(painter, title_font(18), ink.ink, {at.x(), at.y() + 21.0}, words);
            write_line(painter, text_font(12), ink.ink2,
                       {at.x() + text_width(title_font(18), words) + 12.0, at.y() + 21.0}, note);
        });
    }

    void add_words(const QFont& font, const QColor& colour, const QString& words)
    {
        if (words.isEmpty()) {
            return;
        }
        flow_.add(text_height(font, words, wide_) + 3.0, [=, wide = wide_](QPainter& painter, QPointF at) {
            write_wrapped(painter, font, colour, at, wide, words);
        });
    }

    void add_hazards()
    {
        for (const auto& hazard : facts_.hazards) {
            const QString words = words_of(hazard, 0) + QLatin1Char(' ') + words_of(hazard, 1);
            const bool marked = hazard[2].toBool();
            const QFont font = marked ? strong_font(13) : text_font(13);
            const qreal width = wide_ - 20.0;
            flow_.add(text_height(font, words, width) + 4.0, [=, ink = ink_](QPainter& painter, QPointF at) {
                if (marked) {
                    draw_lozenge(painter, {at.x() + 6.0, at.y() + 10.0});
                }
                write_wrapped(painter, font, ink.ink, {at.x() + (marked ? 20.0 : 0.0), at.y()}, width, words);
            });
        }
    }

    void add_photos()
    {
        if (facts_.photos.empty()) {
            return;
        }
        struct Photo {
            QImage picture;
            QString date;
        };
        std::vector<Photo> photos;
        for (const auto& photo : facts_.photos) {
            QImage picture;
            if (const QUrl file = photo[0].toUrl(); file.isLocalFile()) {
                picture.load(file.toLocalFile());
            }
            photos.push_back({std::move(picture), words_of(photo, 1)});
        }
        add_heading(tr("Over time"), facts_.photos_note.isEmpty()
                                         ? facts_.photos_head
                                         : tr("%1, %2").arg(facts_.photos_head, facts_.photos_note));
        constexpr qreal kGap = 8.0;
        constexpr std::size_t kAcross = 6;
        const qreal side = (wide_ - kGap * (kAcross - 1)) / static_cast<qreal>(kAcross);
        flow_.add(side + 20.0, [=, ink = ink_](QPainter& painter, QPointF at) {
            qreal x = at.x();
            for (const auto& photo : photos) {
                draw_picture(painter, ink, photo.picture, {x, at.y(), side, side});
                write_line(painter, text_font(11), ink.ink2, {x, at.y() + side + 14.0}, photo.date);
                x += side + kGap;
            }
        });
    }

    void add_growth()
    {
        if (!facts_.chart) {
            return;
        }
        add_heading(facts_.chart_title, facts_.chart_note);
        constexpr qreal kHeight = 300.0;
        flow_.add(kHeight, [chart = *facts_.chart, look = look_, ink = ink_, wide = wide_](QPainter& painter, QPointF at) {
            chart::draw_growth(painter, ink, chart, look.words, look.today, {at.x(), at.y(), wide, kHeight});
        });
        add_verdict();
    }

    void add_verdict()
    {
        constexpr qreal kRing = 56.0;
        const bool judged = facts_.verdict >= 0;
        const qreal left = judged ? kRing + 16.0 : 0.0;
        const qreal width = wide_ - left;
        const QString next = QStringList{facts_.next_head, facts_.next_rest}.join(QLatin1Char(' ')).trimmed();
        const qreal words_height = text_height(text_font(13), facts_.verdict_words, width);
        const qreal next_height = text_height(strong_font(12), next, width);
        const qreal note_height = text_height(text_font(12), facts_.verdict_note, width);
        const qreal title = judged ? 26.0 : 0.0;
        const bool scaled = judged && !std::isnan(facts_.share);
        const qreal scale = scaled ? 50.0 : 0.0;
        flow_.add_space(8.0);
        flow_.add(std::max(judged ? kRing : 0.0, title + words_height + scale + next_height + note_height + 8.0),
                  [=, facts = facts_, ink = ink_](QPainter& painter, QPointF at) {
                      if (judged) {
                          chart::draw_verdict_ring(painter, ink, facts.verdict, facts.share, facts.share_low,
                                                   facts.share_high, {at.x(), at.y(), kRing, kRing});
                          write_line(painter, title_font(20), ink.ink, {at.x() + left, at.y() + 18.0}, facts.verdict_word);
                          write_line(painter, text_font(12), ink.ink2,
                                     {at.x() + left + text_width(title_font(20), facts.verdict_word) + 10.0, at.y() + 18.0},
                                     facts.verdict_after);
                      }
                      qreal y = at.y() + title;
                      y += write_wrapped(painter, text_font(13), ink.ink, {at.x() + left, y}, width, facts.verdict_words);
                      if (scaled) {
                          chart::draw_verdict_scale(painter, ink, facts.share, facts.share_low, facts.share_high,
                                                    {at.x() + left, y, std::min(width, 420.0), scale});
                          y += scale;
                      }
                      y += write_wrapped(painter, strong_font(12), ink.ink, {at.x() + left, y + 2.0}, width, next);
                      write_wrapped(painter, text_font(12), ink.ink2, {at.x() + left, y + 4.0}, width, facts.verdict_note);
                  });
    }

    void add_needs()
    {
        if (!facts_.needs) {
            return;
        }
        add_heading(tr("What it needs"));
        constexpr qreal kRuler = 92.0;
        flow_.add(kRuler, [needs = *facts_.needs, words = look_.words, ink = ink_, wide = wide_](QPainter& painter, QPointF at) {
            chart::draw_night_ruler(painter, ink, needs, words, {at.x(), at.y(), wide, kRuler});
        });
        add_words(text_font(13), ink_.ink, facts_.needs_spoken);
        add_words(text_font(13), ink_.ink, facts_.light_words);
    }

    /// Two entries a line where both are short.
    void add_history()
    {
        if (facts_.history.empty()) {
            return;
        }
        struct Line {
            QString date;
            QString what;
        };
        std::vector<Line> lines;
        for (const auto& row : facts_.history) {
            const QString note = words_of(row, 2);
            lines.push_back({words_of(row, 0), note.isEmpty() ? words_of(row, 1) : tr("%1: %2").arg(words_of(row, 1), note)});
        }
        add_heading(tr("What was written down"), tr("%1 entries, newest first").arg(lines.size()));
        constexpr qreal kDate = 118.0;
        constexpr qreal kGap = 16.0;
        const QFont font = text_font(12);
        const qreal half = (wide_ - kGap) / 2.0;
        const auto is_short = [&](const Line& line) { return text_width(font, line.what) <= half - kDate; };
        for (auto line = lines.begin(); line != lines.end();) {
            const auto next = std::next(line);
            const std::vector<Line> shown(line, next != lines.end() && is_short(*line) && is_short(*next) ? next + 1 : next);
            line += std::ssize(shown);
            const qreal width = (shown.size() > 1 ? half : wide_) - kDate;
            flow_.add(text_height(font, shown.front().what, width) + 2.0, [=, ink = ink_](QPainter& painter, QPointF at) {
                qreal x = at.x();
                for (const Line& one : shown) {
                    write_wrapped(painter, font, ink.ink2, {x, at.y()}, kDate, one.date);
                    write_wrapped(painter, font, ink.ink, {x + kDate, at.y()}, width, one.what);
                    x += half + kGap;
                }
            });
        }
    }

    void add_notes()
    {
        if (facts_.notes.isEmpty()) {
            return;
        }
        add_heading(tr("Where the numbers come from"));
        for (const QString& note : facts_.notes) {
            add_words(text_font(11), ink_.ink2, note);
        }
    }

    const models::PlantFacts& facts_;
    const models::TodayLook& look_;
    Flow& flow_;
    qreal wide_;
    chart::ChartInk ink_;
};

} // namespace

Pages plant_sheet(const models::PlantFacts& facts, const QString& household, const models::TodayLook& look, Paper paper)
{
    Pages pages(paper, Turn::Upright);
    const auto ink = chart::print_ink();
    const qreal wide = pages.size().width() - 2.0 * kMargin;
    QStringList chips;
    for (const auto& chip : facts.chips) {
        chips.append(words_of(chip, 0));
    }
    const QString state = chips.join(tr(" · "));
    const qreal state_height = text_height(text_font(13), state, wide);
    Flow flow(
        pages, 66.0 + state_height + 6.0,
        [=](QPainter& painter, QPointF at) {
            write_line(painter, title_font(30), ink.ink, {at.x(), at.y() + 26.0}, facts.name);
            write_line(painter, slanted_font(19), ink.ink2,
                       {at.x() + text_width(title_font(30), facts.name) + 14.0, at.y() + 26.0}, facts.botanical);
            write_line_to(painter, text_font(12), ink.ink2, {at.x() + wide, at.y() + 8.0}, household);
            write_line(painter, text_font(13), ink.ink2, {at.x(), at.y() + 48.0}, facts.since);
            write_wrapped(painter, text_font(13), ink.ink, {at.x(), at.y() + 56.0}, wide, state);
        },
        26.0,
        [=](QPainter& painter, QPointF at) {
            write_line(painter, title_font(16), ink.ink, {at.x(), at.y() + 14.0}, facts.name);
        });
    PlantSheet(facts, look, flow).add_all();
    flow.finish();
    return pages;
}

} // namespace lathhouse::sheet
