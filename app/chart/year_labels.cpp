#include "app/chart/year_painter.h"
#include "app/models/strip_words.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {

namespace {

/// Left end of words that are to stand about their middle.
qreal centred(qreal middle, const ChartLabel& label)
{
    return middle - label.wish.size.width() / 2.0;
}

} // namespace

QRectF YearPainter::room_of_labels() const
{
    return QRectF(frame_.plot_left, 0, frame_.width(), frame_.bottom()).adjusted(2, 0, -2, 0);
}

bool YearPainter::is_below_the_band(const QRectF& box) const
{
    for (std::size_t day = 0; day < year_.days.size(); ++day) {
        const qreal at = x(static_cast<qreal>(day) + 0.5);
        if (at >= box.left() && at <= box.right() && low_y(year_.days[day].low_cold) > box.top()) {
            return false;
        }
    }
    return true;
}

std::vector<ChartLabel> YearPainter::labels(const ChartInk& ink, bool narrow) const
{
    std::vector<ChartLabel> labels;
    if (year_.days.empty()) {
        return labels;
    }
    add_frost_dates(labels, ink, narrow);
    add_day_lengths(labels, ink, narrow);
    add_words(labels, ink, narrow);
    return labels;
}

void YearPainter::add_frost_dates(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const
{
    const models::FrostMarks& frost = year_.frost;
    if (frost.state != models::FrostMarks::State::Ordinary) {
        QString words;
        switch (frost.state) {
        case models::FrostMarks::State::Never:
            // Without dates, but not without a chance: what the read-out tells must not be denied here.
            words = std::any_of(year_.days.begin(), year_.days.end(),
                                [](const models::YearDay& day) { return day.frost_after.fraction() >= 0.001; })
                        ? tr("frost in under 1 winter in 10")
                        : tr("no frost at this place");
            break;
        case models::FrostMarks::State::AlwaysPossible:
            words = tr("frost in every month, no safe window");
            break;
        default:
            words = tr("chance per night, no season here");
            break;
        }
        ChartLabel label{.lines = {words}, .font = ink.small, .colour = ink.ink};
        measure(label);
        label.wish.room = room_of_labels();
        label.wish.homes = {
            {centred((frame_.plot_left + frame_.plot_right) / 2.0, label), frame_.frost_top() - 10.0}};
        labels.push_back(std::move(label));
        return;
    }
    const auto date = [this](std::size_t day) { return words_.day_and_month(year_.days[day].date); };
    const qreal zero = low_y(Celsius::from_degrees(0.0));
    const qreal line = QFontMetricsF(ink.small).height();
    bool brief = narrow;
    const auto label_of = [&](std::optional<std::size_t> half, std::optional<std::size_t> tenth, bool last, bool in_one_line) {
        ChartLabel label{.lines = {},
                         .font = ink.small,
                         .colour = ink.ink,
                         .right_aligned = !last,
                         .part = last ? ChartLabel::Part::LastFrost : ChartLabel::Part::FirstFrost};
        if (half) {
            const QString words =
                last ? (brief ? tr("last frost: half by %1,") : tr("last frost: half the springs by %1,"))
                     : (brief ? tr("first frost: half by %1,") : tr("first frost: half the autumns by %1,"));
            label.lines.append(words.arg(date(*half)));
        }
        if (tenth) {
            const QString words = last ? (!half   ? tr("last frost: 1 year in 10 after %1")
                                          : brief ? tr("1 in 10 after %1")
                                                   : tr("1 spring in 10 after %1"))
                                       : (!half   ? tr("first frost: 1 year in 10 by %1")
                                          : brief ? tr("1 in 10 by %1")
                                                   : tr("1 autumn in 10 by %1"));
            label.lines.append(words.arg(date(*tenth)));
        }
        if (in_one_line) {
            label.lines = {label.lines.join(QLatin1Char(' '))};
        }
        measure(label);
        return label;
    };
    const qreal bottom = std::max(zero, frame_.frost_top());
    const auto middle_of = [this](std::size_t day) { return x(static_cast<qreal>(day) + 0.5); };
    constexpr qreal kAfterLast = 25.0;
    constexpr qreal kAfterLastInOne = 9.0; // A long line begins sooner, so that it ends before the first frost.
    // Fewer words where the warm side has no room for more.
    const auto has_room = [&](std::optional<std::size_t> half, std::optional<std::size_t> tenth, bool last) {
        if (!tenth) {
            return true;
        }
        const qreal width = label_of(half, tenth, last, false).wish.size.width();
        const qreal from = last ? middle_of(*tenth) + kAfterLast : middle_of(*tenth) - 9.0 - width;
        const bool in_sight = last ? from < room_of_labels().right() - 40.0 : from + width > room_of_labels().left() + 40.0;
        constexpr qreal kBesideToday = 16.0; // The cursor stands there, and words keep clear of it.
        return !in_sight || (from >= room_of_labels().left() + kBesideToday && from + width <= room_of_labels().right());
    };
    brief = brief || !has_room(frost.last_half, frost.last_tenth, true) || !has_room(frost.first_half, frost.first_tenth, false);
    // Where summer stands in the middle both have their words in it: one below the other, each in one line where two
    // lines of both are too high and one has the width.
    bool in_one_line = false;
    if (frost.last_half && frost.last_tenth && frost.first_half && frost.first_tenth && *frost.last_tenth < *frost.first_tenth) {
        const qreal begins = middle_of(*frost.last_tenth);
        const qreal ends = middle_of(*frost.first_tenth) - 9.0;
        const auto width_of = [&](bool last, bool one) {
            return last ? label_of(frost.last_half, frost.last_tenth, true, one).wish.size.width()
                        : label_of(frost.first_half, frost.first_tenth, false, one).wish.size.width();
        };
        const auto meet_in_two = [&] {
            return begins + kAfterLast + width_of(true, false) > ends - width_of(false, false) && zero + 7.0 + 5.2 * line > bottom;
        };
        const auto fit_in_one = [&] {
            return begins + kAfterLastInOne + width_of(true, true) <= room_of_labels().right() &&
                   ends - width_of(false, true) >= room_of_labels().left();
        };
        // Fewer words where one would have no room, or be struck by the other's date and lie in its winter.
        constexpr qreal kTouch = 4.0;
        const auto struck = [&] {
            return begins + kAfterLastInOne + width_of(true, true) > ends + 9.0 + kTouch || ends - width_of(false, true) < begins - kTouch;
        };
        brief = brief || (meet_in_two() && (!fit_in_one() || struck()));
        in_one_line = meet_in_two() && fit_in_one();
    }
    const qreal after_last = in_one_line ? kAfterLastInOne : kAfterLast;
    const auto add = [&](std::optional<std::size_t> half, std::optional<std::size_t> tenth, bool last) {
        if (!tenth && !half) {
            return;
        }
        ChartLabel label = label_of(half, tenth, last, in_one_line);
        const QSizeF size = label.wish.size;
        const qreal tenth_x = middle_of(tenth.value_or(half.value_or(0)));
        const qreal half_x = middle_of(half.value_or(tenth.value_or(0)));
        const qreal warm_side = last ? tenth_x + after_last : tenth_x - 9.0 - size.width();
        const qreal cold_side = last ? half_x - 9.0 - size.width() : half_x + 9.0;
        label.wish.room = room_of_labels();
        label.wish.room.setBottom(bottom);
        // Below the frost line; last beside its date on the warm side, first one row lower, so that the two never
        // meet. Where that has no room, above the line under the nights of summer.
        const qreal below = zero + 7.0 + (last ? 1.0 : in_one_line ? 2.1 : 3.2) * line;
        for (const qreal y : {below, zero + 4.0 + line}) {
            label.wish.homes.emplace_back(warm_side, y);
            label.wish.homes.emplace_back(cold_side, y);
        }
        const qreal above = zero - 7.0 - size.height() + label.wish.ascent;
        if (is_below_the_band({{warm_side, above - label.wish.ascent}, size})) {
            label.wish.homes.emplace_back(warm_side, above);
        }
        labels.push_back(std::move(label));
    };
    add(frost.last_half, frost.last_tenth, true);
    add(frost.first_half, frost.first_tenth, false);
}

void YearPainter::add_day_lengths(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const
{
    const auto add = [&](std::size_t day, bool below) {
        const models::YearDay& extreme = year_.days[day];
        const QPointF dot(x(static_cast<qreal>(day) + 0.5), sky_y(day));
        const QString date =
            narrow ? words_.day_and_month(extreme.date) : words_.day_and_long_month(extreme.date);
        const bool stays = extreme.day_length_minutes <= 0 || extreme.day_length_minutes >= 24 * 60;
        ChartLabel label{
            .lines = {stays ? words_.day_length(extreme.day_length_minutes)
                            : tr("%1 on %2").arg(words_.day_length(extreme.day_length_minutes), date)},
            .font = ink.small,
            .colour = ink.ink,
            .halo = false};
        measure(label);
        const QFontMetricsF metrics(ink.small);
        const qreal y =
            below ? std::min(dot.y() + 6.0 + metrics.ascent(), frame_.nights_top() - 3.0)
                  : std::max(dot.y() - 8.0 - metrics.descent(), frame_.sky_top() + metrics.ascent());
        const qreal width = label.wish.size.width();
        label.wish.room = room_of_labels();
        label.wish.homes = {
            {std::clamp(dot.x() - width / 2.0, frame_.plot_left + 6.0,
                        std::max(frame_.plot_left + 6.0, frame_.plot_right - width - 6.0)),
             y}};
        labels.push_back(std::move(label));
    };
    const auto [longest, shortest] = longest_and_shortest();
    if (in_view(longest)) {
        add(longest, true);
    }
    if (has_seasons_of_light() && in_view(shortest)) {
        add(shortest, false);
    }
}

void YearPainter::add_words(std::vector<ChartLabel>& labels, const ChartInk& ink, bool narrow) const
{
    // Of the days in view.
    const auto begin = year_.days.begin() + frame_.view.first;
    const auto end = begin + frame_.view.count;
    const auto by_middle = [](const models::YearDay& a, const models::YearDay& b) {
        return a.low_middle < b.low_middle;
    };
    const auto warmest =
        static_cast<std::size_t>(std::max_element(begin, end, by_middle) - year_.days.begin());
    const auto coldest =
        static_cast<std::size_t>(std::min_element(begin, end, by_middle) - year_.days.begin());
    auto least = static_cast<std::size_t>(frame_.view.first);
    for (std::size_t day = least; in_view(day); ++day) {
        if (models::strip_share(year_, day) < models::strip_share(year_, least)) {
            least = day;
        }
    }
    const QFontMetricsF metrics(ink.small);
    const auto label_of = [&](const QString& words, bool strong) {
        ChartLabel label{.lines = {words},
                         .font = strong ? ink.small_strong : ink.small,
                         .colour = strong ? ink.ink : ink.ink2};
        measure(label);
        label.wish.room = room_of_labels();
        return label;
    };
    const auto day_at = [this](qreal at) {
        const qreal day =
            frame_.view.first + (at - frame_.plot_left) / frame_.width() * frame_.view.count;
        return static_cast<std::size_t>(std::clamp(day, 0.0, static_cast<qreal>(year_.days.size() - 1)));
    };
    /// Words about the middle of a curve, on it, above or below it by `drop`.
    const auto along = [&](ChartLabel& label, Celsius models::YearDay::* curve, qreal drop,
                           const std::vector<qreal>& middles) {
        label.wish.base_at = [this, day_at, curve, drop](qreal middle) {
            return low_y(year_.days[day_at(middle)].*curve) + drop;
        };
        for (const qreal middle : middles) {
            label.wish.homes.emplace_back(centred(middle, label), label.wish.base_at(middle));
        }
        labels.push_back(std::move(label));
    };
    // The middle line is named on the slope into the cold, where it stands alone.
    const auto slope = [&](qreal share) {
        const qreal day = static_cast<qreal>(warmest) +
                          share * (static_cast<qreal>(coldest) - static_cast<qreal>(warmest));
        return x(std::clamp(day, 0.0, static_cast<qreal>(year_.days.size() - 1)));
    };
    const qreal left = frame_.plot_left;
    const qreal width = frame_.width();
    const qreal on_the_line = metrics.ascent() / 2.0 - 1.0;
    ChartLabel middle = label_of(tr("middle night low"), true);
    std::vector<qreal> beside_the_middle{slope(0.82), slope(0.7), slope(0.9), slope(0.6), slope(0.5),
                                         left + width * 0.8, left + width * 0.2, left + width * 0.5};
    /// Whether the frost line leaves words alone that stand at the curve.
    const auto is_unstruck = [&](qreal at, Celsius models::YearDay::* curve, qreal drop) {
        const qreal zero = low_y(Celsius::from_degrees(0.0));
        const qreal base = low_y(year_.days[day_at(at)].*curve) + drop;
        return !draws_frost_line() || base + metrics.descent() < zero || base - metrics.ascent() > zero;
    };
    std::ranges::stable_partition(beside_the_middle,
                                  [&](qreal at) { return is_unstruck(at, &models::YearDay::low_middle, on_the_line); });
    along(middle, &models::YearDay::low_middle, on_the_line, beside_the_middle);
    if (draws_frost_line()) {
        ChartLabel line = label_of(tr("frost line"), true);
        const qreal y = low_y(Celsius::from_degrees(0.0)) - 5.0;
        for (const qreal at : {slope(1.0), slope(0.9), slope(1.1), left + width * 0.5, left + width * 0.2}) {
            line.wish.homes.emplace_back(centred(at, line), y);
        }
        labels.push_back(std::move(line));
    }
    const qreal warm_x = x(static_cast<qreal>(warmest));
    const std::vector<qreal> near_warmest{warm_x, std::clamp(warm_x, left + width * 0.16, left + width * 0.84),
                                          left + width * 0.7, left + width * 0.3};
    // Below the band, where the frost line does not strike them through; else they are left out.
    const qreal below = metrics.ascent() + 2.0;
    std::vector<qreal> below_the_band = near_warmest;
    std::erase_if(below_the_band, [&](qreal at) { return !is_unstruck(at, &models::YearDay::low_cold, below); });
    if (narrow) {
        ChartLabel band = label_of(tr("9 nights in 10 within"), false);
        band.wish.room.setBottom(frame_.frost_top()); // It names nothing of the strip below.
        along(band, &models::YearDay::low_cold, below, below_the_band);
    } else {
        ChartLabel warmer = label_of(tr("1 night in 20 is warmer"), false);
        along(warmer, &models::YearDay::low_warm, -5.0, near_warmest);
        ChartLabel colder = label_of(tr("1 night in 20 is colder"), false);
        colder.wish.room.setBottom(frame_.frost_top());
        along(colder, &models::YearDay::low_cold, below, below_the_band);
    }
    // The strip's own words, where it is lowest; shorter ones where the long ones have no room.
    const qreal y = frame_.bottom() - 10.0;
    ChartLabel strip = label_of(models::strip_note(year_, words_, narrow), false);
    if (strip.wish.size.width() > width * 0.8) {
        strip = label_of(models::strip_note(year_, words_, true), false);
    }
    const qreal half = strip.wish.size.width() / 2.0;
    const qreal least_x = std::clamp(x(static_cast<qreal>(least)), left + half + 8.0,
                                     std::max(left + half + 8.0, left + width - half - 8.0));
    strip.wish.homes = {{centred(least_x, strip), y}, {centred(left + width / 2.0, strip), y}};
    labels.push_back(std::move(strip));
}

} // namespace lathhouse::chart
