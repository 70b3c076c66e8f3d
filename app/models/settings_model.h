#pragma once

#include "app/models/evening_notice.h"
#include "app/models/kept_settings.h"
#include "app/models/shown_units.h"
#include "app/models/year_words.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>

namespace lathhouse::models {

/// What the surroundings of the program ask for; it goes before what is kept. nullopt: they say nothing.
struct AskedSettings {
    std::optional<QString> theme;      ///< "light", "dark" or "contrast"; LATHHOUSE_THEME.
    std::optional<int> text_percent;   ///< LATHHOUSE_TEXT.
    std::optional<bool> reduced_motion; ///< LATHHOUSE_MOTION.
    std::optional<bool> touch = {};     ///< LATHHOUSE_TOUCH.
    std::optional<Units> units;        ///< --units on the command line: degrees and measures.
    std::optional<QString> language = {};   ///< --language on the command line.
};

/// The units of a region, where nothing was chosen yet: by Qt's table, Fahrenheit and US measures in the United States.
Units usual_units(const QLocale& region);

/// How the window looks and in which units it speaks: chosen here, kept for the person, in force at once.
class SettingsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    /// "light", "dark" or "contrast": what is in force.
    Q_PROPERTY(QString scheme READ scheme NOTIFY themeChanged)
    /// 0 as the desktop, 1 light, 2 dark, 3 high contrast.
    Q_PROPERTY(int theme READ theme WRITE setTheme NOTIFY themeChanged)
    /// Why the choice has no effect now, a sentence; empty where it has.
    Q_PROPERTY(QString themeFixed READ themeFixed CONSTANT)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY textChanged)
    Q_PROPERTY(QString textFixed READ textFixed CONSTANT)
    Q_PROPERTY(bool reducedMotion READ reducedMotion WRITE setReducedMotion NOTIFY motionChanged)
    Q_PROPERTY(QString motionFixed READ motionFixed CONSTANT)
    /// Whether what is pressed is large enough for fingers: what is in force.
    Q_PROPERTY(bool touch READ touch NOTIFY touchChanged)
    /// 0 from the first touch of the window on, 1 always, 2 never.
    Q_PROPERTY(int touchFrom READ touchFrom WRITE setTouchFrom NOTIFY touchChanged)
    Q_PROPERTY(QString touchFixed READ touchFixed CONSTANT)
    /// 0 Celsius, 1 Fahrenheit.
    Q_PROPERTY(int degrees READ degrees WRITE setDegrees NOTIFY unitsChanged)
    /// 0 metric measures, 1 US measures.
    Q_PROPERTY(int units READ units WRITE setUnits NOTIFY unitsChanged)
    Q_PROPERTY(QString unitsFixed READ unitsFixed CONSTANT)
    Q_PROPERTY(QString unitsExample READ unitsExample NOTIFY unitsChanged)
    Q_PROPERTY(QString dates READ dates CONSTANT)
    /// As the desktop, then each language by its own name.
    Q_PROPERTY(QStringList languages READ languages CONSTANT)
    /// Place among `languages`. In force from the next start on: half of what is open would stay in the old one.
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY languageChanged)
    /// That it is not in force yet; empty where it is.
    Q_PROPERTY(QString languageNote READ languageNote NOTIFY languageChanged)
    Q_PROPERTY(QString languageFixed READ languageFixed CONSTANT)
    /// null where the window shows none.
    Q_PROPERTY(lathhouse::models::EveningNotice* notice READ notice CONSTANT)
    /// What could not be kept; empty where all is.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    /// Where it is kept.
    Q_PROPERTY(QString place READ place CONSTANT)

public:
    static constexpr int kSmallestText = 85;
    static constexpr int kUsualText = 100;
    static constexpr int kLargestText = 200;

    /// units: shared with the words of every page.
    SettingsModel(std::shared_ptr<KeptSettings> kept, AskedSettings asked, ShownUnits units,
                  QLocale locale = QLocale{}, QObject* parent = nullptr);

    QString scheme() const;
    int theme() const { return theme_; }
    void setTheme(int theme); ///< Ignored outside 0..3.
    QString themeFixed() const;
    int textPercent() const { return asked_.text_percent.value_or(text_percent_); }
    void setTextPercent(int percent); ///< Brought within 85 to 200.
    QString textFixed() const;
    bool reducedMotion() const { return asked_.reduced_motion.value_or(reduced_motion_); }
    void setReducedMotion(bool reduced);
    QString motionFixed() const;
    bool touch() const { return asked_.touch.value_or(touch_from_ == 1 || (touch_from_ == 0 && touched_)); }
    int touchFrom() const { return touch_from_; }
    void setTouchFrom(int from); ///< Ignored outside 0..2.
    QString touchFixed() const;
    /// Tells of a finger on the window.
    void set_touched();
    int degrees() const { return units_.degrees() == Units::Us ? 1 : 0; }
    void setDegrees(int degrees); ///< Ignored outside 0..1.
    int units() const { return units_.measures() == Units::Us ? 1 : 0; }
    void setUnits(int units); ///< Ignored outside 0..1.
    QString unitsFixed() const;
    QString unitsExample() const;
    QString dates() const;
    QStringList languages() const;
    int language() const { return language_; }
    void setLanguage(int language); ///< Ignored where there is none of that number.
    QString languageNote() const;
    QString languageFixed() const;
    EveningNotice* notice() const { return notice_; }
    /// Given before the settings are shown.
    void join(EveningNotice* notice) { notice_ = notice; }
    QString trouble() const { return trouble_; }
    QString place() const { return kept_->file(); }

    /// Tells of the desktop's own choice, at the start and when it changes.
    void set_desktop_dark(bool dark);

signals:
    void themeChanged();
    void textChanged();
    void motionChanged();
    void touchChanged();
    /// All that was said in the units before is to be said anew.
    void unitsChanged();
    void languageChanged();
    void troubleChanged();

private:
    void keep(const QString& key, const QVariant& value);
    void keep_units();

    std::shared_ptr<KeptSettings> kept_;
    AskedSettings asked_;
    ShownUnits units_;
    YearWords words_;
    QLocale locale_;
    int theme_ = 0;
    int language_ = 0;
    int spoken_ = 0; ///< What was chosen when the window was opened.
    int text_percent_ = kUsualText;
    bool reduced_motion_ = false;
    int touch_from_ = 0;
    bool touched_ = false;
    bool desktop_dark_ = false;
    EveningNotice* notice_ = nullptr;
    QString trouble_;
};

} // namespace lathhouse::models
