#include "app/models/strip_words.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/words.h"

#include <cmath>

namespace lathhouse::models {

namespace {

/// A line without a decimal that says nothing: "12 °C".
QString line_words(Celsius line, const YearWords& words)
{
    const double shown = words.shown(line);
    const int decimals = words.fahrenheit() || std::abs(shown - std::round(shown)) < 0.05 ? 0 : 1;
    return words.decimal(shown, decimals) + QChar(0x202F) + words.unit();
}

QString heat_line(const YearWords& words)
{
    return line_words(Celsius::from_degrees(30.0), words);
}

QString rain(double millimetres, const YearWords& words)
{
    return text(words::rain(Millimetres::from_millimetres(millimetres),
                            unit_system_of(words)));
}

} // namespace

double strip_share(const YearData& year, std::size_t day)
{
    return day < year.strip.shares.size() ? year.strip.shares[day] : year.days[day].frost.fraction();
}

QString strip_head(const YearData& year, const YearWords& words, bool narrow)
{
    switch (year.strip.kind) {
    case YearStrip::Kind::FrostNights:
        return narrow ? tr("Frost") : tr("Frost nights");
    case YearStrip::Kind::TenderNights:
        return (narrow ? tr("To %1") : tr("Nights to %1")).arg(line_words(year.strip.line, words));
    case YearStrip::Kind::HotDays:
        return (narrow ? tr("Over %1") : tr("Days over %1")).arg(heat_line(words));
    case YearStrip::Kind::Rain:
        return tr("Rain");
    }
    return {};
}

QString strip_note(const YearData& year, const YearWords& words, bool narrow)
{
    switch (year.strip.kind) {
    case YearStrip::Kind::FrostNights:
        return narrow ? tr("chance of a frost night") : tr("chance that a night has frost, open air");
    case YearStrip::Kind::TenderNights:
        return (narrow ? tr("chance of harm to %1") : tr("chance that a night in the open harms the tenderest, %1"))
            .arg(text(year.strip.plant));
    case YearStrip::Kind::HotDays:
        return narrow ? tr("chance of a hot day") : tr("chance that a day goes above %1").arg(heat_line(words));
    case YearStrip::Kind::Rain:
        return narrow ? tr("rain of the month") : tr("rain of the month, mean of the years");
    }
    return {};
}

QString strip_label(const YearData& year, const YearWords& words)
{
    switch (year.strip.kind) {
    case YearStrip::Kind::FrostNights:
        return tr("Frost this night");
    case YearStrip::Kind::TenderNights:
        return tr("To %1 this night").arg(line_words(year.strip.line, words));
    case YearStrip::Kind::HotDays:
        return tr("Over %1 this day").arg(heat_line(words));
    case YearStrip::Kind::Rain:
        return tr("Rain of the month");
    }
    return {};
}

QString strip_value(const YearData& year, const YearWords& words, std::size_t day)
{
    const double share = strip_share(year, day);
    if (year.strip.kind == YearStrip::Kind::Rain) {
        return rain(share * year.strip.most_millimetres, words);
    }
    return YearWords::chance_in_table(Probability::clamped(share));
}

QString strip_top(const YearData& year, const YearWords& words)
{
    return year.strip.kind == YearStrip::Kind::Rain ? rain(year.strip.most_millimetres, words) : tr("sure");
}

QString strip_middle(const YearData& year, const YearWords& words)
{
    return year.strip.kind == YearStrip::Kind::Rain ? rain(year.strip.most_millimetres / 2.0, words)
                                                    : tr("1 in 2");
}

} // namespace lathhouse::models
