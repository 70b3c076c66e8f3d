#include "app/models/settings_model.h"

#include "app/models/window_language.h"
#include "app/models/word_form.h"

#include "app/words/growing_words.h"
#include "app/words/us_units.h"
#include "core/units/volume.h"

#include <QDate>

#include <algorithm>
#include <array>

namespace lathhouse::models {

namespace {

constexpr std::array kThemes{"desktop", "light", "dark", "contrast"};
constexpr std::array kTouchFrom{"first", "always", "never"};

/// The first where there is none of that name.
template <std::size_t Count>
int place_of(const QString& name, const std::array<const char*, Count>& names)
{
    const auto found = std::ranges::find_if(names, [&](const char* one) { return name == QLatin1String(one); });
    return found == names.end() ? 0 : static_cast<int>(found - names.begin());
}

} // namespace

Units usual_units(const QLocale& region)
{
    return region.measurementSystem() == QLocale::ImperialUSSystem ? Units::Us : Units::Metric;
}

SettingsModel::SettingsModel(std::shared_ptr<KeptSettings> kept, AskedSettings asked, ShownUnits units, QLocale locale,
                             QObject* parent)
    : QObject(parent), kept_(std::move(kept)), asked_(std::move(asked)), units_(std::move(units)),
      words_(units_, locale), locale_(std::move(locale)), theme_(place_of(kept_->value("theme").toString(), kThemes)),
      language_(place_of_language(kept_->value("language").toString()).value_or(-1) + 1), spoken_(language_),
      text_percent_(kept_->number("text_percent", kSmallestText, kLargestText).value_or(kUsualText)),
      reduced_motion_(kept_->is("reduced_motion")), touch_from_(place_of(kept_->value("touch").toString(), kTouchFrom))
{
    const QString measures = kept_->value("units").toString();
    const QString degrees = kept_->value("degrees").toString();
    if (asked_.units) {
        units_.show(*asked_.units);
        return;
    }
    if (measures == QLatin1String("us") || measures == QLatin1String("metric")) {
        units_.show(measures == QLatin1String("us") ? Units::Us : Units::Metric);
    }
    if (degrees == QLatin1String("celsius") || degrees == QLatin1String("fahrenheit")) {
        units_.show_degrees(degrees == QLatin1String("fahrenheit") ? Units::Us : Units::Metric);
    }
}

QString SettingsModel::scheme() const
{
    if (asked_.theme) {
        return *asked_.theme;
    }
    if (theme_ == 0) {
        return desktop_dark_ ? QStringLiteral("dark") : QStringLiteral("light");
    }
    return QString::fromLatin1(kThemes[static_cast<std::size_t>(theme_)]);
}

void SettingsModel::setTheme(int theme)
{
    if (theme >= 0 && theme < static_cast<int>(kThemes.size()) && theme != theme_) {
        theme_ = theme;
        keep("theme", QString::fromLatin1(kThemes[static_cast<std::size_t>(theme)]));
        emit themeChanged();
    }
}

QString SettingsModel::themeFixed() const
{
    return asked_.theme ? tr("LATHHOUSE_THEME=%1 goes before what is chosen here, while it is set.").arg(*asked_.theme)
                        : QString{};
}

void SettingsModel::setTextPercent(int percent)
{
    percent = std::clamp(percent, kSmallestText, kLargestText);
    if (percent != text_percent_) {
        text_percent_ = percent;
        keep("text_percent", percent);
        emit textChanged();
    }
}

QString SettingsModel::textFixed() const
{
    return asked_.text_percent
               ? tr("LATHHOUSE_TEXT=%1 goes before what is chosen here, while it is set.").arg(*asked_.text_percent)
               : QString{};
}

void SettingsModel::setReducedMotion(bool reduced)
{
    if (reduced != reduced_motion_) {
        reduced_motion_ = reduced;
        keep("reduced_motion", reduced ? QStringLiteral("true") : QStringLiteral("false"));
        emit motionChanged();
    }
}

QString SettingsModel::motionFixed() const
{
    return asked_.reduced_motion
               ? tr("LATHHOUSE_MOTION=%1 goes before what is chosen here, while it is set.")
                     .arg(*asked_.reduced_motion ? QStringLiteral("reduced") : QStringLiteral("full"))
               : QString{};
}

void SettingsModel::setTouchFrom(int from)
{
    if (from >= 0 && from < static_cast<int>(kTouchFrom.size()) && from != touch_from_) {
        touch_from_ = from;
        keep("touch", QString::fromLatin1(kTouchFrom[static_cast<std::size_t>(from)]));
        emit touchChanged();
    }
}

QString SettingsModel::touchFixed() const
{
    return asked_.touch ? tr("LATHHOUSE_TOUCH=%1 goes before what is chosen here, while it is set.")
                              .arg(*asked_.touch ? QStringLiteral("on") : QStringLiteral("off"))
                        : QString{};
}

void SettingsModel::set_touched()
{
    if (!touched_) {
        touched_ = true;
        emit touchChanged();
    }
}

void SettingsModel::setUnits(int units)
{
    if (units < 0 || units > 1 || units == this->units()) {
        return;
    }
    units_.show_measures(units == 1 ? Units::Us : Units::Metric);
    keep_units();
}

void SettingsModel::setDegrees(int degrees)
{
    if (degrees < 0 || degrees > 1 || degrees == this->degrees()) {
        return;
    }
    units_.show_degrees(degrees == 1 ? Units::Us : Units::Metric);
    keep_units();
}

void SettingsModel::keep_units()
{
    // Both, since the one that was not touched may have been the region's, and is now as good as chosen.
    keep("units", units() == 1 ? QStringLiteral("us") : QStringLiteral("metric"));
    keep("degrees", degrees() == 1 ? QStringLiteral("fahrenheit") : QStringLiteral("celsius"));
    emit unitsChanged();
}

QString SettingsModel::unitsFixed() const
{
    return asked_.units ? tr("Opened with --units; what is chosen here is in force now and at the next start without it.")
                        : QString{};
}

QString SettingsModel::unitsExample() const
{
    const auto system = unit_system_of(units_);
    return tr("A night of %1, a pot of %2, a station %3 away, a plant of %4.")
        .arg(words_.temperature(Celsius::from_degrees(4.5)), text(words::volume(Litres::from_litres(3.0), system)),
             text(words::distance(Metres::from_kilometres(12.0), system)),
             system.us_measures() ? tr("%1 in").arg(words_.decimal(45.0 / words::kCentimetresInAnInch, 1)) : tr("%1 cm").arg(words_.decimal(45.0, 0)));
}

QString SettingsModel::dates() const
{
    const calendar::Date day{2026, 5, 30};
    return tr("Dates as %1, numbers as %2, weeks from %3: as is usual in the language and the desktop’s region (%4). A "
              "change of either is in force at the next start.")
        .arg(words_.short_date(day), words_.decimal(1.5, 1), locale_.dayName(locale_.firstDayOfWeek()), locale_.name());
}

QStringList SettingsModel::languages() const
{
    QStringList names{tr("As the desktop")};
    for (const WindowLanguage& language : kWindowLanguages) {
        names.append(QString::fromUtf16(language.own_name));
    }
    return names;
}

void SettingsModel::setLanguage(int language)
{
    if (language < 0 || language > static_cast<int>(kWindowLanguages.size()) || language == language_) {
        return;
    }
    language_ = language;
    keep("language", language == 0 ? QStringLiteral("desktop")
                                   : QString::fromLatin1(kWindowLanguages[static_cast<std::size_t>(language - 1)].code));
    emit languageChanged();
}

QString SettingsModel::languageNote() const
{
    return language_ == spoken_ ? QString{} : tr("The window speaks it from the next start on.");
}

QString SettingsModel::languageFixed() const
{
    return asked_.language ? tr("Opened with --language; what is chosen here is in force at the next start without it.")
                           : QString{};
}

void SettingsModel::set_desktop_dark(bool dark)
{
    if (dark != desktop_dark_) {
        desktop_dark_ = dark;
        emit themeChanged();
    }
}

void SettingsModel::keep(const QString& key, const QVariant& value)
{
    const QString before = trouble_;
    trouble_ = kept_->keep(key, value)
                   ? QString{}
                   : tr("It holds for this window and could not be kept in %1; see that the folder can be written.")
                         .arg(kept_->file());
    if (trouble_ != before) {
        emit troubleChanged();
    }
}

} // namespace lathhouse::models
