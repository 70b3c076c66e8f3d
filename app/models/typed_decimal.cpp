#include "app/models/typed_decimal.h"

#include "core/base/parse.h"

namespace lathhouse::models {

std::optional<double> typed_decimal(const QString& typed, std::initializer_list<const char*> units)
{
    QString number = typed.trimmed();
    for (const char* unit : units) {
        const QString behind = QString::fromUtf8(unit);
        if (number.endsWith(behind, Qt::CaseInsensitive)) {
            number.chop(behind.size());
            break;
        }
    }
    number.remove(QChar(0x202F));
    number.replace(QChar(0x2212), QLatin1Char('-')).replace(QLatin1Char(','), QLatin1Char('.'));
    return parse_number(number.trimmed().toStdString());
}

QString decimal_to_type(const YearWords& words, double number, int decimals)
{
    const QString shown = words.decimal(number, decimals);
    const qsizetype whole = decimals > 0 ? shown.size() - decimals - 1 : shown.size();
    QString typed;
    for (qsizetype at = 0; at < shown.size(); ++at) {
        if (at >= whole || at == 0 || shown.at(at).isDigit()) { // The first may be a minus.
            typed.append(shown.at(at));
        }
    }
    return typed;
}

} // namespace lathhouse::models
