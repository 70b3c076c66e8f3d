#pragma once

#include <QLocale>
#include <QString>

#include <array>
#include <optional>

namespace lathhouse::models {

/// A language that the window speaks.
struct WindowLanguage {
    const char* code;        ///< Of ISO 639, as `--language` takes it.
    const char16_t* own_name; ///< As those who speak it call it.
};

/// The first is the language of the source, for every other there is a table of translations in app/i18n.
inline constexpr std::array<WindowLanguage, 3> kWindowLanguages{
    {{"en", u"English"}, {"de", u"Deutsch"}, {"es", u"Español"}}};

/// No language: the source in brackets, a third longer, and read from right to left. Shows text that is not translated
/// and layouts that would break, before anybody translates the window into Hebrew or Arabic. What stands left of what
/// stays so: charts run from left to right, and their tables and panes stand where the charts have them.
inline constexpr const char* kMirror = "mirror";

/// Place among kWindowLanguages; nullopt for any other word.
std::optional<int> place_of_language(const QString& code);

/// The language that is in force: what was asked for at the start, else what was kept, else the first of the
/// desktop's languages that the window speaks, else English. Words that name no language count as not said.
QString language_in_force(const std::optional<QString>& asked, const QString& kept, const QLocale& desktop);

/// How dates and numbers are written in that language: as the desktop does where it speaks the same, else as is usual
/// in the desktop's region, else as is usual in the language.
QLocale locale_of_language(const QString& code, const QLocale& desktop);

} // namespace lathhouse::models
