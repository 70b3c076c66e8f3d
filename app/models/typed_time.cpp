#include "app/models/typed_time.h"

#include <QRegularExpression>

namespace lathhouse::models {

std::optional<std::chrono::minutes> typed_time(const QString& typed)
{
    static const QRegularExpression kForm(QStringLiteral("^\\s*(\\d{1,2})\\s*[:.]\\s*(\\d{2})\\s*(?:([ap])\\.?\\s?m\\.?)?\\s*$"),
                                          QRegularExpression::CaseInsensitiveOption);
    const auto match = kForm.match(typed);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    int hours = match.captured(1).toInt();
    const int minutes = match.captured(2).toInt();
    const QString half = match.captured(3).toLower();
    if (!half.isEmpty()) {
        if (hours < 1 || hours > 12) {
            return std::nullopt;
        }
        hours = hours % 12 + (half == QLatin1String("p") ? 12 : 0); // 12 am is midnight.
    }
    if (hours > 23 || minutes > 59) {
        return std::nullopt;
    }
    return std::chrono::hours{hours} + std::chrono::minutes{minutes};
}

} // namespace lathhouse::models
