#include "app/models/window_language.h"

#include <QStringList>

#include <algorithm>

namespace lathhouse::models {

std::optional<int> place_of_language(const QString& code)
{
    const auto found = std::ranges::find_if(
        kWindowLanguages, [&](const WindowLanguage& language) { return code == QLatin1String(language.code); });
    return found == kWindowLanguages.end() ? std::nullopt
                                           : std::optional{static_cast<int>(found - kWindowLanguages.begin())};
}

QString language_in_force(const std::optional<QString>& asked, const QString& kept, const QLocale& desktop)
{
    if (asked && (*asked == QLatin1String(kMirror) || place_of_language(*asked))) {
        return *asked;
    }
    if (place_of_language(kept)) {
        return kept;
    }
    for (const QString& wanted : desktop.uiLanguages()) { // "de-AT", "de", "en-GB" ...
        const QString code = wanted.section(QLatin1Char('-'), 0, 0);
        if (place_of_language(code)) {
            return code;
        }
    }
    return QString::fromLatin1(kWindowLanguages.front().code);
}

QLocale locale_of_language(const QString& code, const QLocale& desktop)
{
    if (!place_of_language(code)) {
        return desktop;
    }
    const QLocale::Language language = QLocale(code).language();
    // A desktop without a language ("C") writes as the source does.
    if (desktop.language() == language || (desktop.language() == QLocale::C && language == QLocale::English)) {
        return desktop;
    }
    return QLocale(language, desktop.territory());
}

} // namespace lathhouse::models
