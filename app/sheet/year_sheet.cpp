#include "app/sheet/year_sheet.h"

#include "app/chart/plant_bars.h"
#include "app/chart/print_ink.h"
#include "app/chart/year_painter.h"
#include "app/models/risk_dates.h"
#include "app/models/row_order.h"
#include "app/models/strip_words.h"
#include "app/models/year_note.h"
#include "app/sheet/print_marks.h"
#include "app/sheet/print_text.h"
#include "app/sheet/sowing_row.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <memory>
#include <optional>
#include <set>

namespace lathhouse::sheet {

namespace {

using models::text;

// In the unit of page_size.
constexpr qreal kPlotLeft = 190.0;
constexpr qreal kChartTop = 92.0;
constexpr qreal kMonthRow = 20.0;
constexpr qreal kSky = 38.0;
constexpr qreal kNights = 152.0;
constexpr qreal kNightsAtMost = 236.0;
constexpr qreal kFrost = 38.0;
constexpr qreal kHeading = 25.0;
constexpr qreal kBeforeSowings = 6.0; ///< Feed ticks of the last plant end above the rule.
constexpr qreal kLeastRow = 24.6;
constexpr qreal kUsualRow = 26.0;
constexpr qreal kTightRow = 18.5;    ///< A year on one sheet is worth closer rows and a lower chart of nights,
constexpr qreal kTightNights = 124.0; ///< as long as both can be read.
constexpr qreal kMostRow = 30.0;
constexpr int kMostRows = 14;
constexpr qreal kKeyLine = 19.0;
constexpr qreal kSwatch = 30.0;

struct Row {
    enum class Kind { Spot, Plant, Sowing } kind; ///< Spot: the heading of the plants that begin the year there.
    std::size_t place;                            ///< Among all of its kind.
};

/// What a page needs to be drawn, shared by all of them.
class YearSheet {
    Q_DECLARE_TR_FUNCTIONS(YearSheet)

public:
    YearSheet(YearSheetFacts facts, models::YearWords words, QSizeF page)
        : facts_(std::move(facts)), words_(std::move(words)), page_(page), ink_(chart::print_ink())
    {
        add_plants();
        for (std::size_t sowing = 0; sowing < facts_.sowings.size(); ++sowing) {
            rows_.push_back({Row::Kind::Sowing, sowing});
        }
        any_hazard_ = std::ranges::any_of(facts_.year.plants, [](const auto& plant) { return !plant.hazard.empty(); });
        any_ladder_ = std::ranges::any_of(facts_.solved.stays, [](const auto& stays) {
            return std::ranges::any_of(stays, [](const auto& stay) { return stay.ladder_days > 0; });
        });
        any_feed_ = std::ranges::any_of(facts_.solved.feeds, [](const auto& days) { return !days.empty(); });
        for (std::size_t plant = 0; plant < facts_.year.plants.size(); ++plant) {
            any_bracket_ = any_bracket_ ||
                           !dates_of(facts_.year, plant, facts_.solved.stays[plant], facts_.risk).empty();
        }
        share_out();
    }

    std::size_t sheets() const { return sheets_.size(); }

    void draw(QPainter& painter, std::size_t sheet) const
    {
        draw_title(painter);
        const auto& rows = sheets_[sheet];
        chart::YearFrame frame;
        frame.plot_left = kPlotLeft;
        frame.plot_right = right();
        frame.month_row = kMonthRow;
        frame.sky = kSky;
        frame.nights = nights_;
        frame.frost = kFrost;
        frame.lines_below = rows_height(rows) + 8.0;
        const chart::YearPainter bands(facts_.year, words_, frame);
        painter.save();
        painter.translate(0.0, kChartTop);
        bands.draw_bands(painter, ink_, false);
        draw_labels(painter, frame);
        painter.restore();
        draw_rows(painter, rows, kChartTop + frame.bottom() + 10.0);
        draw_foot(painter, rows);
    }

private:
    qreal right() const { return page_.width() - kMargin; }
    qreal foot_top() const { return page_.height() - foot_height_; }

    void add_plants()
    {
        std::optional<std::size_t> last;
        for (const std::size_t plant : order_of(facts_.order, facts_.year, facts_.solved)) {
            const auto spot = models::first_spot(facts_.solved, plant);
            if (facts_.order == models::RowOrder::BySpot && spot && spot != last) {
                rows_.push_back({Row::Kind::Spot, *spot});
                last = spot;
            }
            rows_.push_back({Row::Kind::Plant, plant});
        }
    }

    static std::size_t count_of(const std::vector<Row>& rows, Row::Kind kind)
    {
        return static_cast<std::size_t>(std::ranges::count(rows, kind, &Row::kind));
    }

    /// Which rows stand on which sheet; each has room for the keys of the spots that its plants stand in.
    void share_out()
    {
        foot_height_ = foot_height(rows_);
        nights_ = kNights;
        const qreal room = foot_top() - kChartTop - kMonthRow - kSky - kFrost - 18.0;
        const bool both = !facts_.sowings.empty() && !facts_.year.plants.empty();
        const qreal of_rows = room - nights_ - kHeading * (both ? 2.0 : 1.0) - (both ? kBeforeSowings : 0.0);
        if (rows_.size() > kMostRows || kLeastRow * static_cast<qreal>(rows_.size()) > of_rows) {
            const qreal tight = (of_rows + kNights - kTightNights) / static_cast<qreal>(rows_.size());
            if (tight >= kTightRow) {
                nights_ = kTightNights;
                row_ = std::min(tight, kLeastRow);
                sheets_.push_back(rows_);
                return;
            }
        }
        const auto fit = static_cast<std::size_t>(
            std::clamp(static_cast<int>(of_rows / kLeastRow), 1, kMostRows));
        const std::size_t count = std::max<std::size_t>(1, (rows_.size() + fit - 1) / fit);
        const std::size_t each = std::max<std::size_t>(1, (rows_.size() + count - 1) / count);
        for (std::size_t first = 0; first == 0 || first < rows_.size();) {
            std::size_t last = std::min(rows_.size(), first + each);
            if (last < rows_.size() && last > first + 1 && rows_[last - 1].kind == Row::Kind::Spot) {
                --last; // A heading stands with what it heads.
            }
            sheets_.emplace_back(rows_.begin() + static_cast<std::ptrdiff_t>(first),
                                 rows_.begin() + static_cast<std::ptrdiff_t>(last));
            first = std::max(last, std::size_t{1});
        }
        // Few plants leave room for taller rows, then for taller nights.
        row_ = std::clamp(of_rows / static_cast<qreal>(each), kLeastRow, each > 10 ? kUsualRow : kMostRow);
        nights_ = std::clamp(nights_ + of_rows - row_ * static_cast<qreal>(each), kNights, kNightsAtMost);
    }

    qreal rows_height(const std::vector<Row>& rows) const
    {
        const std::size_t sowings = count_of(rows, Row::Kind::Sowing);
        const bool both = sowings > 0 && sowings < rows.size();
        return row_ * static_cast<qreal>(rows.size()) + kHeading * (both ? 2.0 : 1.0) + (both ? kBeforeSowings : 0.0);
    }

    void draw_title(QPainter& painter) const
    {
        const models::YearData& year = facts_.year;
        write_line(painter, title_font(30), ink_.ink, {kMargin, 62.0},
                   tr("The year from %1").arg(words_.long_date_with_year(year.today)));
        const QFont small = ink_.small;
        QStringList whose{text(year.household)};
        if (!year.place.empty() && year.place != year.household) {
            whose.append(text(year.place));
        }
        if (year.demonstration) {
            whose.append(tr("an invented example"));
        }
        whose.append(year.plants.size() == 1 ? tr("1 plant") : tr("%1 plants").arg(year.plants.size()));
        if (!facts_.sowings.empty()) {
            whose.append(facts_.sowings.size() == 1 ? tr("1 sowing") : tr("%1 sowings").arg(facts_.sowings.size()));
        }
        write_line_to(painter, small, ink_.ink, {right(), 46.0}, whose.join(tr(" · ")));
        write_line_to(painter, small, ink_.ink, {right(), 63.0},
                      tr("Risk accepted: %1 for each plant, each way · %2")
                          .arg(models::YearWords::chance(facts_.risk), words_.unit()));
    }

    /// The names of the bands, left of the numbers of their axes.
    void draw_labels(QPainter& painter, const chart::YearFrame& frame) const
    {
        const auto label = [&](qreal top, const QString& head, const QString& rest) {
            write_line(painter, ink_.small_strong, ink_.ink, {kMargin, top + 12.0}, head);
            if (!rest.isEmpty()) {
                constexpr qreal kWidth = 104.0;
                write_wrapped(painter, ink_.small, ink_.ink2, {kMargin, top + 16.0}, kWidth, rest);
            }
        };
        label(frame.sky_top() + 2.0, tr("Day length"), QString{});
        write_line(painter, ink_.small, ink_.ink2, {kMargin, frame.sky_top() + 30.0}, tr("grey short, white long"));
        label(frame.nights_top() + 6.0, tr("Night lows"),
              tr("open air, %1; 9 nights in 10 lie in the grey band").arg(words_.unit()));
        label(frame.frost_top() + 8.0, models::strip_head(facts_.year, words_, false), QString{});
    }

    void draw_heading(QPainter& painter, qreal top, const QString& head, const QString& rest) const
    {
        painter.setPen(QPen(ink_.ink, 1.0));
        painter.drawLine(QPointF(kMargin, top), QPointF(right(), top));
        write_line(painter, title_font(16), ink_.ink, {kMargin, top + 16.0}, head);
        chart::write_with_halo(painter, {kPlotLeft + 8.0, top + 15.0}, rest, ink_.small, ink_.ink2, ink_.sheet);
    }

    void draw_rows(QPainter& painter, const std::vector<Row>& rows, qreal top) const
    {
        const std::size_t plants = count_of(rows, Row::Kind::Plant);
        qreal y = top;
        if (plants > 0 || count_of(rows, Row::Kind::Sowing) == 0) {
            const QString count = facts_.year.plants.size() == plants
                                      ? order_words()
                                      : tr("%1 of %2 on this sheet, %3").arg(plants).arg(facts_.year.plants.size()).arg(order_words());
            draw_heading(painter, y, tr("Plants"), plants == 0 ? tr("none yet") : count);
            y += kHeading;
        }
        bool in_sowings = false;
        for (const Row& row : rows) {
            if (row.kind == Row::Kind::Sowing && !in_sowings) {
                in_sowings = true;
                y += plants > 0 ? kBeforeSowings : 0.0;
                draw_heading(painter, y, tr("Sowings"),
                             tr("ring: sow · bracket: comes up · steps: hardening and planting out · slash: first ready"));
                y += kHeading;
            }
            switch (row.kind) {
            case Row::Kind::Spot: // Where the year begins; its bars show where it goes on.
                write_line(painter, ink_.small_strong, ink_.ink, {kMargin, y + row_ - 4.0},
                           text(facts_.year.spots[row.place].name));
                break;
            case Row::Kind::Plant:
                draw_plant(painter, row.place, y);
                break;
            case Row::Kind::Sowing:
                draw_sowing(painter, row.place, y);
                break;
            }
            y += row_;
        }
    }

    QString order_words() const
    {
        switch (facts_.order) {
        case models::RowOrder::BySpot:
            return tr("by the spot where the year begins");
        case models::RowOrder::ByName:
            return tr("by name");
        case models::RowOrder::ByDateOut:
            break;
        }
        return tr("in order of going out");
    }

    void draw_plant(QPainter& painter, std::size_t plant, qreal top) const
    {
        const models::YearPlant& known = facts_.year.plants[plant];
        const QRectF row(kPlotLeft, top, right() - kPlotLeft, row_);
        const QRectF bar(row.left(), chart::bar_top(row, bar_height()), row.width(), bar_height());
        const bool hazard = !known.hazard.empty();
        write_name(painter, text_font(13), ink_.ink,
                   {kMargin, bar.top() - 5.0, kPlotLeft - kMargin - (hazard ? 26.0 : 10.0), bar.height() + 10.0},
                   text(known.name));
        if (hazard) {
            draw_lozenge(painter, {kPlotLeft - 16.0, bar.center().y()});
        }
        const auto& stays = facts_.solved.stays[plant];
        const models::DaySpan whole{0, static_cast<int>(facts_.year.days.size())};
        chart::draw_plant_bar(painter, ink_,
                              {facts_.year, whole, stays, dates_of(facts_.year, plant, stays, facts_.risk)}, row,
                              bar_height());
        painter.setPen(QPen(ink_.ink, 2.0, Qt::SolidLine, Qt::FlatCap));
        for (const int day : facts_.solved.feeds[plant]) {
            const qreal x = x_of(day + 0.5);
            painter.drawLine(QPointF(x, bar.bottom() + 1.6), QPointF(x, bar.bottom() + 5.0));
        }
    }

    qreal bar_height() const { return row_ >= 28.0 ? 16.0 : row_ >= kLeastRow ? 15.0 : 12.0; }
    qreal x_of(qreal day) const
    {
        return kPlotLeft + (right() - kPlotLeft) * day / static_cast<qreal>(facts_.year.days.size());
    }
    qreal x_of(calendar::Date date) const
    {
        const int day = calendar::days_between(facts_.year.today, date);
        return x_of(std::clamp<qreal>(day, 0.0, static_cast<qreal>(facts_.year.days.size())));
    }

    void draw_sowing(QPainter& painter, std::size_t sowing, qreal top) const
    {
        const SowingRow row(ink_, words_, QRectF(kPlotLeft, top, right() - kPlotLeft, row_), bar_height(),
                            [this](calendar::Date date) { return x_of(date); });
        row.draw(painter, facts_.sowings[sowing]);
    }

    // --- The foot ---

    struct Columns {
        qreal spots, marks, sources; ///< Left edges.
        qreal spots_width, marks_width, sources_width;
    };
    Columns columns() const
    {
        const qreal all = right() - kMargin;
        const qreal gap = 28.0;
        const qreal spots = all * 0.36;
        const qreal marks = all * 0.27;
        return {kMargin,
                kMargin + spots + gap,
                kMargin + spots + marks + gap * 2.0,
                spots,
                marks,
                all - spots - marks - gap * 2.0};
    }

    /// Spots that the plants of these rows stand in, in the household's order.
    std::vector<std::size_t> spots_of(const std::vector<Row>& rows) const
    {
        std::set<std::size_t> used;
        for (const Row& row : rows) {
            if (row.kind == Row::Kind::Plant) {
                for (const auto& stay : facts_.solved.stays[row.place]) {
                    used.insert(stay.spot);
                }
            }
        }
        return {used.begin(), used.end()};
    }

    std::size_t key_columns(const std::vector<std::size_t>& spots) const
    {
        return spots.size() > 8 ? 3 : 2;
    }

    QString sources() const
    {
        return models::year_note(facts_.year, facts_.solved, words_) + QLatin1Char(' ') +
               tr("Look at the forecast before each move.");
    }
    QString credits() const
    {
        QStringList sentences;
        for (const auto& credit : facts_.year.credits) {
            sentences.append(text(credit));
        }
        return sentences.join(QLatin1Char(' '));
    }

    std::vector<QString> marks() const
    {
        std::vector<QString> all;
        if (any_ladder_) {
            all.push_back(tr("Stepped edge: hardening, or coming-in steps"));
        }
        if (any_bracket_) {
            all.push_back(tr("Bracket above an edge: date at 1 in 5 to 1 in 20"));
        }
        if (any_feed_) {
            all.push_back(tr("Short ticks below a bar: feed"));
        }
        if (any_hazard_) {
            all.push_back(QString{}); // The lozenge has a line of its own.
        }
        return all;
    }

    static QFont credit_font() { return text_font(10); }

    qreal foot_height(const std::vector<Row>& rows) const
    {
        const auto spots = spots_of(rows);
        const std::size_t lines = (spots.size() + key_columns(spots) - 1) / key_columns(spots);
        const Columns at = columns();
        const qreal keys = kKeyLine * static_cast<qreal>(std::max(lines, marks().size()));
        const qreal words = text_height(ink_.small, sources(), at.sources_width);
        const qreal small = text_height(credit_font(), credits(), right() - kMargin);
        return 32.0 + std::max(keys, words) + 8.0 + small + kFootLine + 22.0;
    }

    void draw_foot(QPainter& painter, const std::vector<Row>& rows) const
    {
        const Columns at = columns();
        qreal y = foot_top();
        painter.setPen(QPen(ink_.ink, 1.0));
        painter.drawLine(QPointF(kMargin, y), QPointF(right(), y));
        y += 20.0;
        write_line(painter, ink_.small_strong, ink_.ink, {at.spots, y}, tr("Spots"));
        write_line(painter, ink_.small_strong, ink_.ink, {at.marks, y}, tr("Marks"));
        write_line(painter, ink_.small_strong, ink_.ink, {at.sources, y}, tr("Where the numbers come from"));
        y += 8.0;
        draw_spot_key(painter, spots_of(rows), {at.spots, y}, at.spots_width);
        qreal line = y;
        for (const QString& mark : marks()) {
            if (mark.isEmpty()) {
                draw_lozenge(painter, {at.marks + 6.0, line + 8.0});
                write_line(painter, ink_.small, ink_.ink, {at.marks + 18.0, line + 12.5},
                           tr("deadly if eaten: keep from children and animals"));
            } else {
                write_line(painter, ink_.small, ink_.ink, {at.marks, line + 12.5}, mark);
            }
            line += kKeyLine;
        }
        write_wrapped(painter, ink_.small, ink_.ink, {at.sources, y}, at.sources_width, sources());
        const QString small = credits();
        const qreal height = text_height(credit_font(), small, right() - kMargin);
        write_wrapped(painter, credit_font(), ink_.ink2, {kMargin, page_.height() - kFootLine - 20.0 - height},
                      right() - kMargin, small);
    }

    void draw_spot_key(QPainter& painter, const std::vector<std::size_t>& spots, QPointF at, qreal width) const
    {
        const std::size_t across = key_columns(spots);
        const std::size_t down = (spots.size() + across - 1) / std::max<std::size_t>(1, across);
        const qreal column = width / static_cast<qreal>(across);
        for (std::size_t place = 0; place < spots.size(); ++place) {
            const models::YearSpot& spot = facts_.year.spots[spots[place]];
            const std::size_t before = place / down; // Whole columns to its left.
            const QRectF box(at.x() + column * static_cast<qreal>(before),
                             at.y() + kKeyLine * static_cast<qreal>(place % down) + 2.0, kSwatch, 13.0);
            draw_spot_plate(painter, ink_, spot, box);
            QString name = text(spot.name);
            if (spot.short_name != spot.name) {
                name += tr(" (%1)").arg(text(spot.short_name));
            }
            const qreal room = column - kSwatch - 12.0;
            write_name(painter, ink_.small, ink_.ink, {box.right() + 6.0, box.top() - 3.0, room, box.height() + 6.0},
                       text_width(ink_.small, name) <= room ? name : text(spot.name));
        }
    }

    YearSheetFacts facts_;
    models::YearWords words_;
    QSizeF page_;
    chart::ChartInk ink_;
    std::vector<Row> rows_;
    std::vector<std::vector<Row>> sheets_;
    qreal nights_ = kNights;
    qreal row_ = kUsualRow;
    qreal foot_height_ = 160.0;
    bool any_hazard_ = false;
    bool any_ladder_ = false;
    bool any_feed_ = false;
    bool any_bracket_ = false;
};

} // namespace

Pages year_sheet(YearSheetFacts facts, const models::YearWords& words, Paper paper)
{
    Pages pages(paper, Turn::Across);
    const auto sheet = std::make_shared<const YearSheet>(std::move(facts), words, pages.size());
    for (std::size_t place = 0; place < sheet->sheets(); ++place) {
        pages.add([sheet, place](QPainter& painter) { sheet->draw(painter, place); });
    }
    return pages;
}

} // namespace lathhouse::sheet
