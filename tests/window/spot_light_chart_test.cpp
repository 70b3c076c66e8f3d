#include "app/chart/spot_light_painter.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QImage>

#include <algorithm>
#include <cmath>

namespace lathhouse::chart {
namespace {

/// A sill whose light has a summit in June; `share` of a bright one's.
models::SpotLight sill(const QString& name, int hand, double share, bool spread)
{
    models::SpotLight light{.spot = hand + 1, .name = name, .hand = hand, .facts = {}, .needs = {}, .months = {}, .plants = {}};
    for (std::size_t month = 0; month < 12; ++month) {
        light.moles[month] = share * (10.0 - 8.0 * std::cos((static_cast<double>(month) - 5.5) / 6.0 * 3.14159 + 3.14159));
    }
    if (spread) {
        light.days.emplace();
        for (std::size_t month = 0; month < 12; ++month) {
            light.days->dark[month] = 0.3 * light.moles[month];
            light.days->bright[month] = 1.6 * light.moles[month];
        }
    }
    light.needs.push_back({QStringLiteral("Lemon"), 12.0});
    return light;
}

ChartInk plain_ink()
{
    ChartInk ink;
    ink.sheet = Qt::white;
    ink.ink = Qt::black;
    ink.ink2 = ink.edge = Qt::darkGray;
    ink.rule = ink.band = Qt::lightGray;
    ink.leaf = Qt::darkGreen;
    ink.spots = {QColor(200, 0, 0), QColor(0, 0, 200)};
    ink.tints = {QColor(255, 200, 200), QColor(200, 200, 255)};
    return ink;
}

const models::YearWords& british()
{
    static const models::YearWords words(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    return words;
}

bool stands(const SpotLightParts& parts, const QString& words)
{
    for (std::size_t label = 0; label < parts.labels.size(); ++label) {
        if (parts.labels[label].lines.front() == words) {
            return parts.places[label].has_value();
        }
    }
    return false;
}

bool is_named(const SpotLightParts& parts, const QString& words)
{
    return std::ranges::any_of(parts.labels, [&](const ChartLabel& label) { return label.lines.front() == words; });
}

TEST(SpotLightChart, NoWordsStandOverOthersNorLeaveTheRoom)
{
    const auto south = sill(QStringLiteral("South sill"), 0, 1.0, true);
    const auto east = sill(QStringLiteral("East sill of the long room"), 1, 0.6, true);
    for (const double width : {160.0, 300.0, 520.0, 900.0, 1600.0}) {
        for (const double height : {60.0, 160.0, 300.0}) {
            const QRectF room(0.0, 0.0, width, height);
            const auto parts = spot_light_parts(plain_ink(), south, &east, british(), room);
            std::vector<QRectF> boxes;
            for (std::size_t label = 0; label < parts.labels.size(); ++label) {
                if (parts.places[label]) {
                    boxes.push_back(parts.labels[label].wish.box(*parts.places[label]));
                }
            }
            for (std::size_t one = 0; one < boxes.size(); ++one) {
                EXPECT_TRUE(room.contains(boxes[one])) << width << " x " << height;
                for (std::size_t other = 0; other < one; ++other) {
                    EXPECT_FALSE(boxes[one].intersects(boxes[other])) << width << " x " << height;
                }
            }
        }
    }
}

TEST(SpotLightChart, NamesItsBandAndBothSpotsWhereThereIsRoom)
{
    const auto south = sill(QStringLiteral("South sill"), 0, 1.0, true);
    const auto east = sill(QStringLiteral("East sill"), 1, 0.6, true);
    const auto parts = spot_light_parts(plain_ink(), south, &east, british(), {0.0, 0.0, 1100.0, 300.0});
    for (const char* words : {"South sill", "East sill", "1 day in 20 is brighter", "1 day in 20 is darker", "mean of the month"}) {
        EXPECT_TRUE(stands(parts, QString::fromLatin1(words))) << words;
    }
    EXPECT_EQ(parts.bright.size(), 12);
    EXPECT_EQ(parts.beside.size(), 12);
    for (qsizetype month = 0; month < 12; ++month) { // Upwards is brighter.
        EXPECT_LT(parts.bright[month].y(), parts.line[month].y());
        EXPECT_GT(parts.dark[month].y(), parts.line[month].y());
    }
    // In a narrow one the band has one label.
    const auto narrow = spot_light_parts(plain_ink(), south, &east, british(), {0.0, 0.0, 380.0, 240.0});
    EXPECT_TRUE(is_named(narrow, QStringLiteral("9 days in 10 within")));
    EXPECT_FALSE(is_named(narrow, QStringLiteral("1 day in 20 is brighter")));
}

TEST(SpotLightChart, HasNoBandWhereNothingIsKnownOfTheDays)
{
    const auto lamps = sill(QStringLiteral("Lamp shelf"), 0, 0.5, false);
    const auto south = sill(QStringLiteral("South sill"), 1, 1.0, true);
    const auto parts = spot_light_parts(plain_ink(), lamps, &south, british(), {0.0, 0.0, 1100.0, 300.0});
    EXPECT_TRUE(parts.bright.isEmpty());
    EXPECT_TRUE(parts.dark.isEmpty()) << "the one beside has no band of its own";
    EXPECT_EQ(parts.labels.size(), 2U);
    EXPECT_TRUE(stands(parts, QStringLiteral("Lamp shelf")));
}

TEST(SpotLightChart, DrawsTheOneInABandAndTheOtherInDashes)
{
    const auto south = sill(QStringLiteral("South sill"), 0, 1.0, true);
    auto east = sill(QStringLiteral("East sill"), 1, 0.6, true);
    east.moles.fill(30.0); // Level, above the chosen one's line.
    const QRectF room(0.0, 0.0, 900.0, 300.0);
    QImage image(900, 300, QImage::Format_ARGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    draw_spot_light(painter, plain_ink(), south, &east, british(), room);
    painter.end();
    const auto parts = spot_light_parts(plain_ink(), south, &east, british(), room);
    // Just above the lower edge of the band, between two months, where nothing else is.
    const QPointF in_band = 0.5 * (parts.dark[3] + parts.dark[4]) - QPointF(0.0, 6.0);
    EXPECT_EQ(image.pixelColor(in_band.toPoint()), plain_ink().tints[0]);
    int dashes = 0;
    bool on = false;
    const int y = static_cast<int>(std::round(parts.beside.front().y()));
    for (int x = static_cast<int>(parts.beside.front().x()); x < static_cast<int>(parts.beside.back().x()); ++x) {
        const QColor colour = image.pixelColor(x, y);
        const bool blue = colour.blue() > 150 && colour.red() < 120;
        dashes += blue && !on ? 1 : 0;
        on = blue;
    }
    EXPECT_GT(dashes, 15);
}

} // namespace
} // namespace lathhouse::chart
