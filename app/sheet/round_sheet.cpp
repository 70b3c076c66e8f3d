#include "app/sheet/round_sheet.h"

#include "app/chart/print_ink.h"
#include "app/models/household_year.h"
#include "app/models/word_form.h"
#include "app/sheet/flow.h"
#include "app/sheet/print_marks.h"
#include "app/sheet/print_text.h"
#include "app/words/round_words.h"
#include "core/plan/cold_night.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace lathhouse::sheet {

namespace {

using models::text;
using models::upper_first;

// Columns from the left margin, in the unit of page_size.
constexpr qreal kPlantAt = 30.0;
constexpr qreal kTaskAt = 190.0;
constexpr qreal kWaitWidth = 150.0;
constexpr qreal kGap = 14.0;
constexpr qreal kPad = 5.0;

/// Blocks of one round after another. They are drawn when this is gone, so that they hold what they need.
class RoundSheet {
    Q_DECLARE_TR_FUNCTIONS(RoundSheet)

public:
    RoundSheet(const RoundSheetFacts& facts, const models::YearWords& words, Flow& flow)
        : facts_(facts), words_(words), flow_(flow), ink_(chart::print_ink())
    {
    }

    void add_day(const RoundSheetFacts::Day& day)
    {
        letters_.clear();
        flow_.add_space(16.0);
        int minutes = 0;
        for (const auto& line : day.lines) {
            minutes += line.minutes;
        }
        const auto tasks = day.lines.size();
        const QString note = tasks == 0   ? tr("nothing is due")
                             : tasks == 1 ? tr("1 task, about %1 min").arg(minutes)
                                          : tr("%1 tasks, about %2 min").arg(tasks).arg(minutes);
        const QString date = words_.long_date(day.date);
        const auto heading = [ink = ink_, wide = flow_width_, date, note](QPainter& painter, QPointF at) {
            draw_rule(painter, ink.ink, at.x(), at.x() + wide, at.y() + 1.0, 1.5);
            write_line(painter, title_font(20), ink.ink, {at.x(), at.y() + 24.0}, date);
            write_line_to(painter, text_font(13), ink.ink2, {at.x() + wide, at.y() + 23.0}, note);
        };
        if (tasks == 0) {
            flow_.add(32.0, heading);
            return;
        }
        flow_.add_heading(34.0, heading);
        // Where all are clean, the class says nothing.
        const bool classes = std::ranges::any_of(
            day.lines, [](const auto& line) { return line.hygiene || line.state != plan::PestState::Clean; });
        std::optional<plan::PestState> state;
        constexpr std::size_t kNowhere = static_cast<std::size_t>(-1);
        std::size_t spot = kNowhere;
        for (const auto& line : day.lines) {
            if (line.hygiene) {
                add_washing(line);
                spot = kNowhere;
                continue;
            }
            if (classes && state != line.state) {
                state = line.state;
                spot = kNowhere;
                add_class(*state);
            }
            const std::size_t here = line.spot.value_or(kNowhere);
            if (here != spot && here != kNowhere) {
                spot = here;
                add_spot(spot);
            }
            add_task(line);
        }
    }

private:
    void add_class(plan::PestState state)
    {
        const int laths = static_cast<int>(state) + 1;
        const QString name = upper_first(text(words::round_class(state)));
        flow_.add_heading(30.0, [laths, name, ink = ink_](QPainter& painter, QPointF at) {
            draw_laths(painter, laths, {at.x() + 1.0, at.y() + 24.0});
            write_line(painter, title_font(17), ink.ink, {at.x() + kPlantAt, at.y() + 23.0}, name);
        });
    }

    void add_spot(std::size_t place)
    {
        const models::YearSpot spot = facts_.spots[place];
        flow_.add_heading(26.0, [spot, ink = ink_](QPainter& painter, QPointF at) {
            draw_spot_plate(painter, ink, spot, {at.x() + kPlantAt, at.y() + 8.0, 30.0, 13.0});
            write_line(painter, strong_font(13), ink.ink, {at.x() + kPlantAt + 40.0, at.y() + 19.0}, text(spot.name));
        });
    }

    void add_washing(const RoundSheetFacts::Line& line)
    {
        const QFont font = strong_font(13);
        const qreal width = flow_width_ - kPlantAt - 12.0;
        const QString words = upper_first(line.what) + (line.why.isEmpty() ? QString{} : tr(": %1").arg(line.why));
        const qreal height = text_height(font, words, width) + 2.0 * kPad;
        flow_.add_space(6.0);
        flow_.add(height, [font, width, words, height, ink = ink_, wide = flow_width_](QPainter& painter, QPointF at) {
            painter.setPen(QPen(ink.ink, 1.0));
            painter.setBrush(ink.band);
            painter.drawRect(QRectF(at.x(), at.y(), wide, height));
            draw_tick_box(painter, {at.x() + 6.0, at.y() + kPad + 2.0});
            write_wrapped(painter, font, ink.ink, {at.x() + kPlantAt, at.y() + kPad}, width, words);
        });
        flow_.add_space(4.0);
    }

    /// The letter of a caution within the day, and whether it is the first time that it is said.
    std::pair<QString, bool> letter_of(const QString& caution)
    {
        auto known = std::ranges::find(letters_, caution);
        const bool is_new = known == letters_.end();
        if (is_new) {
            letters_.push_back(caution);
            known = letters_.end() - 1;
        }
        const auto at = known - letters_.begin();
        return {QString(static_cast<int>(at / 26 + 1), QChar(u'a' + static_cast<char16_t>(at % 26))), is_new};
    }

    void add_task(const RoundSheetFacts::Line& line)
    {
        struct Caution {
            QString words;
            qreal height;
        };
        const QFont plain = text_font(13);
        const QFont small = text_font(12);
        const qreal task_width = flow_width_ - kTaskAt - kWaitWidth - kGap;
        const qreal caution_width = flow_width_ - kTaskAt - 18.0;
        const QString what = upper_first(line.what);
        const QString why = upper_first(line.why);
        std::vector<Caution> cautions;
        QStringList again;
        for (const auto& caution : line.cautions) {
            const auto [letter, is_new] = letter_of(caution);
            if (is_new) {
                const QString words = tr("%1  %2").arg(letter, caution);
                cautions.push_back({words, text_height(small, words, caution_width)});
            } else {
                again.append(letter);
            }
        }
        const QString letters = again.join(QStringLiteral(", "));
        // Beside the reason where there is room.
        const qreal letters_at = text_width(small, why) + 22.0;
        const bool beside = letters_at + text_width(small, letters) <= task_width;
        if (!again.isEmpty() && !beside) {
            const QString words = tr("%1: as said above").arg(letters);
            cautions.push_back({words, text_height(small, words, caution_width)});
        }
        const qreal what_height = text_height(plain, what, task_width);
        const qreal why_height = text_height(small, why, task_width);
        qreal height = std::max(what_height + why_height, kTickBox + 4.0) + 2.0 * kPad;
        for (const auto& caution : cautions) {
            height += caution.height + 2.0;
        }
        const QString wait = line.can_wait;
        const QString minutes = tr("%1 min").arg(line.minutes);
        flow_.add(height, [=, plant = line.plant, ink = ink_, wide = flow_width_](QPainter& painter, QPointF at) {
            const qreal right = at.x() + wide;
            qreal y = at.y() + kPad;
            draw_rule(painter, ink.rule, at.x() + kPlantAt, right, at.y(), 0.8);
            draw_tick_box(painter, {at.x() + 6.0, y + 2.0});
            write_name(painter, strong_font(13), ink.ink,
                       {at.x() + kPlantAt, y - 2.0, kTaskAt - kPlantAt - 10.0, 22.0}, plant);
            write_wrapped(painter, plain, ink.ink, {at.x() + kTaskAt, y}, task_width, what);
            write_wrapped(painter, small, ink.ink2, {at.x() + kTaskAt, y + what_height}, task_width, why);
            if (beside && !letters.isEmpty()) {
                const qreal base = y + what_height + 13.0;
                draw_lozenge(painter, {at.x() + kTaskAt + letters_at - 10.0, base - 4.0});
                write_line(painter, small, ink.ink, {at.x() + kTaskAt + letters_at, base}, letters);
            }
            write_line_to(painter, small, ink.ink2, {right, y + 13.0}, minutes);
            if (!wait.isEmpty()) {
                write_line_to(painter, small, ink.ink2, {right, y + 29.0}, wait);
            }
            y += std::max(what_height + why_height, kTickBox + 4.0);
            for (const auto& caution : cautions) {
                draw_lozenge(painter, {at.x() + kTaskAt + 6.0, y + 10.0});
                write_wrapped(painter, small, ink.ink, {at.x() + kTaskAt + 18.0, y + 2.0}, caution_width,
                              caution.words);
                y += caution.height + 2.0;
            }
        });
    }

    const RoundSheetFacts& facts_;
    const models::YearWords& words_;
    Flow& flow_;
    chart::ChartInk ink_;
    qreal flow_width_ = flow_.width();
    std::vector<QString> letters_;
};

} // namespace

RoundSheetFacts round_sheet_facts(const plan::HouseholdFacts& facts, calendar::Date today, int days,
                                  const models::YearWords& words)
{
    const auto nights = facts.climate.nights();
    const auto parts = plan::round_parts(facts, nights, today, plan::kUsualRisk);
    const auto household = facts.household();
    const auto units = models::unit_system_of(words);
    RoundSheetFacts sheet{text(household.name), models::year_spots(household), {},
                          !plan::nights_of_forecast(facts.log.forecasts, today).empty()};
    for (int ahead = 0; ahead < days; ++ahead) {
        RoundSheetFacts::Day day{today + calendar::Days{ahead}, {}};
        for (const auto& task : plan::round_of(household, facts.events, parts, day.date)) {
            const auto* plant = task.plant ? household.plant(*task.plant) : nullptr;
            RoundSheetFacts::Line line{task.state,
                                       std::holds_alternative<plan::Hygiene>(task.matter),
                                       {},
                                       plant != nullptr ? text(plant->name) : QString{},
                                       text(words::task(task, household, units)),
                                       text(words::task_why(task, household, units)),
                                       {},
                                       task.latest > day.date
                                           ? tr("can wait until %1").arg(words.day_and_month(task.latest))
                                           : QString{},
                                       task.minutes};
            if (task.spot) {
                const auto at = std::ranges::find(household.spots, *task.spot, &home::Spot::id);
                if (at != household.spots.end()) {
                    line.spot = static_cast<std::size_t>(at - household.spots.begin());
                }
            }
            for (const auto& caution : words::task_cautions(task, household)) {
                line.cautions.push_back(text(caution));
            }
            day.lines.push_back(std::move(line));
        }
        sheet.days.push_back(std::move(day));
    }
    return sheet;
}

Pages round_sheet(const RoundSheetFacts& facts, const models::YearWords& words, Paper paper)
{
    Pages pages(paper, Turn::Upright);
    const auto ink = chart::print_ink();
    const qreal width = pages.size().width() - 2.0 * kMargin;
    const auto first = facts.days.front().date;
    const auto last = facts.days.back().date;
    const QString title = facts.days.size() == 1 ? tr("The round of %1").arg(words.long_date_with_year(first))
                                                 : tr("The round from %1").arg(words.long_date_with_year(first));
    const QString span = facts.days.size() == 1 ? facts.household
                                                : tr("%1 · %2 days, to %3")
                                                      .arg(facts.household)
                                                      .arg(facts.days.size())
                                                      .arg(words.long_date(last));
    const QString rule = facts.has_forecast
                             ? tr("In walking order: clean plants first, then suspect, then infested ones. A letter: the caution above it.")
                             : tr("In walking order: clean plants first, then suspect, then infested ones. A letter: the "
                                  "caution above it. No forecast is kept, so tonight is not in it.");
    const auto head = [=](QPainter& painter, QPointF at) {
        write_line(painter, title_font(28), ink.ink, {at.x(), at.y() + 24.0}, title);
        write_line(painter, text_font(13), ink.ink2, {at.x(), at.y() + 46.0}, span);
        write_line(painter, text_font(12), ink.ink2, {at.x(), at.y() + 64.0}, rule);
    };
    const auto again = [=](QPainter& painter, QPointF at) {
        write_line(painter, title_font(16), ink.ink, {at.x(), at.y() + 14.0}, title);
        draw_rule(painter, ink.rule, at.x(), at.x() + width, at.y() + 22.0, 0.8);
    };
    Flow flow(pages, 76.0, head, 26.0, again);
    RoundSheet sheet(facts, words, flow);
    for (const auto& day : facts.days) {
        sheet.add_day(day);
    }
    flow.finish();
    return pages;
}

} // namespace lathhouse::sheet
