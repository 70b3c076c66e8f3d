#include "app/models/cursor_reading.h"

#include "app/models/year_model.h"

#include <algorithm>

namespace lathhouse::models {

CursorReading::CursorReading(const YearModel& year) : year_(year)
{
}

std::size_t CursorReading::place() const
{
    return static_cast<std::size_t>(year_.cursorDay());
}

const YearDay& CursorReading::day() const
{
    return year_.year().days[place()];
}

QString CursorReading::shortDate() const
{
    return !year_.year().from_today ? year_.words().date_with_year(day().date) : year_.words().short_date(day().date);
}

QString CursorReading::longDate() const
{
    const calendar::Date date = day().date;
    const bool over_a_year_away = !year_.year().from_today || calendar::days_between(year_.today(), date) > 365;
    return over_a_year_away ? year_.words().long_date_with_year(date) : year_.words().long_date(date);
}

QString CursorReading::sentence() const
{
    return year_.night_sentence(place());
}

QString CursorReading::dayLength() const
{
    const int minutes = day().day_length_minutes;
    const QString length = year_.words().day_length(minutes);
    return minutes > 0 && minutes < 24 * 60 ? tr("%1 of day").arg(length) : length;
}

QString CursorReading::low() const
{
    return year_.words().temperature(day().low_middle);
}

QString CursorReading::spread() const
{
    return tr("%1 to %2").arg(year_.words().bare(day().low_cold), year_.words().bare(day().low_warm));
}

QString CursorReading::frostAfter() const
{
    return YearWords::chance(day().frost_after);
}

QString CursorReading::shelteredAfter() const
{
    const YearData& year = year_.year();
    if (!year.sheltered) {
        return {};
    }
    return tr("at %1 %2")
        .arg(text(year.spots[year.sheltered->spot].short_name), YearWords::chance(year.sheltered->frost_after[place()]));
}

bool CursorReading::in_first_half_of_season() const
{
    const int since_turn = calendar::DayOfYear::of(day().date).place() - year_.year().turn.place() - 1;
    const int count = calendar::DayOfYear::kCount;
    return (since_turn + count) % count < count / 2;
}

QString CursorReading::harmHeading() const
{
    const calendar::Date turn = year_.year().turn.in_year(2001);
    if (in_first_half_of_season()) {
        return tr("at its damage line, since %1").arg(year_.words().day_and_long_month(turn));
    }
    return tr("at its damage line, to %1").arg(year_.words().day_and_long_month(turn));
}

QString CursorReading::outdoors() const
{
    const auto& order = year_.order();
    const auto out = std::ranges::count_if(order, [this](std::size_t plant) { return is_outdoors(plant); });
    return tr("%1 of %2").arg(out).arg(order.size());
}

QString CursorReading::hardening() const
{
    const auto stepping =
        std::ranges::count_if(year_.order(), [this](std::size_t plant) { return step(plant).has_value(); });
    return stepping == 0 ? tr("none between") : tr("%1 between two lights").arg(stepping);
}

QString CursorReading::whyThere() const
{
    const auto row = static_cast<std::size_t>(year_.currentRow());
    if (row >= year_.order().size()) {
        return {};
    }
    const std::size_t plant = year_.order()[row];
    const YearStay* here = stay(plant);
    if (here == nullptr) {
        return {};
    }
    const YearData& year = year_.year();
    const QString name = text(year.plants[plant].name);
    const QString spot = text(year.spots[here->spot].name);
    const QString why = here->stays_in.empty() || here->first > 0 ? text(here->why) : text(here->stays_in);
    if (why.isEmpty()) {
        return {};
    }
    if (here->first == 0) {
        return tr("%1 at %2: %3.").arg(name, spot, why);
    }
    const calendar::Date since = year.days[static_cast<std::size_t>(here->first)].date;
    return tr("%1 to %2 on %3: %4.", "a plant, a spot, a date, the reason").arg(name, spot, year_.words().day_and_month(since), why);
}

const YearStay* CursorReading::stay(std::size_t plant) const
{
    for (const YearStay& stay : year_.stays(plant)) {
        if (year_.cursorDay() >= stay.first && year_.cursorDay() <= stay.last) {
            return &stay;
        }
    }
    return nullptr;
}

std::optional<std::pair<int, int>> CursorReading::step(std::size_t plant) const
{
    const int day = year_.cursorDay();
    for (const YearStay& stay : year_.stays(plant)) {
        if (stay.ladder_days <= 0) {
            continue;
        }
        const bool out = year_.year().spots[stay.spot].outdoors;
        const int begin = out ? stay.first - stay.ladder_days : stay.first;
        const int steps = out ? kStepsOut : kStepsIn;
        if (day >= begin && day < begin + stay.ladder_days) {
            return std::pair{1 + (day - begin) * steps / stay.ladder_days, steps};
        }
    }
    return std::nullopt;
}

QString CursorReading::step_words(std::size_t plant) const
{
    for (const YearStay& stay : year_.stays(plant)) {
        // Counted from the end, as the hand may have left fewer days than the plan has steps.
        const int before = stay.first - year_.cursorDay();
        const int known = static_cast<int>(stay.ladder_words.size());
        if (before > 0 && before <= std::min(stay.ladder_days, known)) {
            return text(stay.ladder_words[static_cast<std::size_t>(known - before)]);
        }
    }
    return {};
}

int CursorReading::colour(std::size_t plant) const
{
    const YearStay* here = stay(plant);
    if (here == nullptr) {
        return -1;
    }
    const YearSpot& spot = year_.year().spots[here->spot];
    return static_cast<int>(spot.colour) + (spot.turned ? kSpotColours : 0);
}

QString CursorReading::words(std::size_t plant) const
{
    if (const auto at = step(plant)) {
        const QString step = tr("step %1 of %2").arg(at->first).arg(at->second);
        const QString done = step_words(plant);
        return done.isEmpty() ? step : tr("%1: %2", "a step of hardening: what is done on it").arg(step, done);
    }
    const YearStay* here = stay(plant);
    if (here == nullptr) {
        return {};
    }
    const auto curve = year_.year().plants[plant].curves[here->spot];
    if (!is_outdoors(plant) || !curve) {
        return tr("indoors");
    }
    const HarmCurve& harm = year_.year().curves[*curve];
    return YearWords::chance_in_table(
        Probability::clamped(in_first_half_of_season() ? harm.before[place()] : harm.after[place()]));
}

bool CursorReading::is_outdoors(std::size_t plant) const
{
    const YearStay* here = stay(plant);
    return here != nullptr && year_.year().spots[here->spot].outdoors;
}

void CursorReading::say()
{
    const YearData& year = year_.year();
    const YearWords& in_words = year_.words();
    std::vector<ReadoutLine> lines;
    lines.push_back({tr("Night low, middle"), in_words.temperature(day().low_middle), true});
    lines.push_back({tr("9 nights in 10"),
                     tr("%1 to %2").arg(in_words.bare(day().low_cold), in_words.temperature(day().low_warm)), false});
    if (year.sheltered) {
        // The name as it was given: a noun is no noun of English in other languages.
        lines.push_back({tr("At %1").arg(text(year.spots[year.sheltered->spot].name)),
                         in_words.temperature(year.sheltered->low_middle[place()]), false});
    }
    if (year.strip.kind != YearStrip::Kind::FrostNights) {
        lines.push_back({year_.stripLabel(), strip_value(year, in_words, place()), true});
    }
    lines.push_back({tr("Frost this night"), YearWords::chance_in_table(day().frost), false});
    lines.push_back({tr("Frost after this night"), YearWords::chance_in_table(day().frost_after), true});
    if (year.sheltered) {
        // Under its full name two lines above; here the number needs the room.
        lines.push_back({tr("… %1").arg(text(year.spots[year.sheltered->spot].short_name)),
                         YearWords::chance_in_table(year.sheltered->frost_after[place()]), false});
    }
    lines.push_back({tr("Day length"), in_words.day_length(day().day_length_minutes), false});
    lines.push_back(
        {tr("Sun"),
         day().sunrise_minutes && day().sunset_minutes
             ? tr("%1 to %2").arg(in_words.clock(*day().sunrise_minutes), in_words.clock(*day().sunset_minutes))
             : tr("no rise or set"),
         false});
    if (day().light) {
        lines.push_back({tr("Daily light"), tr("%1 mol/m²").arg(in_words.decimal(day().light->moles(), 0)), false});
    }
    lines_.show(std::move(lines));
    emit changed();
    emit whyChanged();
}

} // namespace lathhouse::models
