#include "app/chart/print_ink.h"

#include <QFontDatabase>

namespace lathhouse::chart {

namespace {

QString family_or(const char* first, const char* fallback)
{
    const QString wanted = QString::fromLatin1(first);
    return QFontDatabase::families().contains(wanted) ? wanted : QString::fromLatin1(fallback);
}

} // namespace

QString text_family()
{
    return family_or("Open Sans", "DejaVu Sans");
}

QString title_family()
{
    return family_or("Gentium Plus", "DejaVu Serif");
}

QFont print_font(const QString& family, int size, int weight)
{
    QFont font(family);
    font.setPixelSize(size);
    font.setWeight(static_cast<QFont::Weight>(weight));
    font.setHintingPreference(QFont::PreferNoHinting);
    // Letters set apart, by the least that Qt counts, are not joined into one; joined ones are lost to who searches or
    // copies the text.
    constexpr qreal kLeast = 0.02;
    font.setLetterSpacing(QFont::AbsoluteSpacing, kLeast);
    return font;
}

ChartInk print_ink()
{
    const QColor black(0, 0, 0);
    const QColor white(255, 255, 255);
    const QColor dark("#333333");
    const QColor strip("#DDDDDD");
    const QColor band("#EDEDED");
    const QColor hatch("#808080"); // The greys of hatching lie within the three by their thin lines.
    ChartInk ink;
    ink.sheet = white;
    ink.rule = QColor("#BBBBBB");
    ink.edge = hatch;
    ink.ink = black;
    ink.ink2 = dark;
    ink.caution = black;
    ink.cold = black;
    ink.warm = black;
    ink.band = band;
    ink.dusk = strip;
    ink.dawn = band;
    ink.straw = white;
    ink.well = band;
    ink.action = black;
    ink.select = band;
    ink.cold_wash = band;
    ink.leaf = black;
    ink.leaf_wash = band;
    ink.sky_coloured = true;
    ink.paper = true;
    for (int spot = 0; spot < models::kSpotColours; ++spot) {
        ink.spots.append(black);
        ink.tints.append(white);
    }
    constexpr int kSmall = 12;
    ink.small = print_font(text_family(), kSmall);
    ink.small_strong = print_font(text_family(), kSmall, QFont::DemiBold);
    return ink;
}

} // namespace lathhouse::chart
