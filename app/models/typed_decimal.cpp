#include "app/models/typed_decimal.h"

#include "core/base/parse.h"

namespace lathhouse::models {

std::optional<double> typed_decimal(const QString& typed)
{
    QString number = typed.trimmed();
    number.remove(QChar(0x202F));
    number.replace(QChar(0x2212), QLatin1Char('-')).replace(QLatin1Char(','), QLatin1Char('.'));
    return parse_number(number.toStdString());
}

} // namespace lathhouse::models
