#include "app/models/typed_position.h"

#include "app/models/typed_decimal.h"
#include "core/geodesy/read_position.h"

#include <QRegularExpression>

namespace lathhouse::models {

namespace {

/// "48,2 16,4": decimal commas with a blank or a semicolon between the two.
QString with_points(const QString& text)
{
    static const QRegularExpression kCommas(QStringLiteral(R"(^\s*([-−+]?\d+),(\d+)\s*°?\s*[;\s]\s*([-−+]?\d+),(\d+)\s*°?\s*$)"));
    const auto match = kCommas.match(text);
    if (!match.hasMatch()) {
        return text;
    }
    return match.captured(1) + QLatin1Char('.') + match.captured(2) + QStringLiteral(", ") + match.captured(3) +
           QLatin1Char('.') + match.captured(4);
}

} // namespace

Result<Position> typed_position(const QString& text)
{
    QString plain = with_points(text).trimmed();
    plain.replace(QChar(0x2212), QLatin1Char('-'));
    return geodesy::read_position(plain.toStdString());
}

std::optional<double> typed_coordinate(const QString& typed, Side side)
{
    QString rest = typed.trimmed().toUpper();
    rest.replace(QChar(0x2212), QLatin1Char('-'));
    if (rest.isEmpty()) {
        return std::nullopt;
    }
    const QString letters = side == Side::Latitude ? QStringLiteral("NS") : QStringLiteral("EW");
    QChar letter;
    if (letters.contains(rest.back())) {
        letter = rest.back();
        rest.chop(1);
    } else if (letters.contains(rest.front())) {
        letter = rest.front();
        rest.remove(0, 1);
    }
    QString bare = rest;
    bare.remove(QChar(0xB0));
    std::optional<double> degrees = typed_decimal(bare);
    if (!degrees) {
        const QString whole = side == Side::Latitude ? rest + QStringLiteral(" N 0 E") : QStringLiteral("0 N ") + rest + QStringLiteral(" E");
        if (const auto position = geodesy::read_position(whole.toStdString())) {
            degrees = side == Side::Latitude ? position->latitude.degrees() : position->longitude.degrees();
        }
    }
    if (degrees && (letter == QLatin1Char('S') || letter == QLatin1Char('W'))) {
        degrees = -*degrees;
    }
    return degrees;
}

} // namespace lathhouse::models
