#pragma once

#include <QSettings>
#include <QString>
#include <QVariant>

#include <optional>

namespace lathhouse::models {

/// What is of the person and the machine rather than of the household, in one small file of the desktop's folder for
/// such things (XDG_CONFIG_HOME/lathhouse/window.ini). Values of a damaged file are taken as not there.
class KeptSettings {
public:
    /// file: where it lies; empty: nothing is kept beyond the window.
    explicit KeptSettings(const QString& file);

    static QString usual_file();

    QVariant value(const QString& key) const { return settings_.value(key); }
    /// A whole number between two others; nullopt for anything else that may stand there.
    std::optional<int> number(const QString& key, int least, int most) const;
    bool is(const QString& key) const { return settings_.value(key).toString() == QLatin1String("true"); }
    /// Whether it could be written; what was set holds for this window all the same.
    bool keep(const QString& key, const QVariant& value);
    /// Reads what another window kept meanwhile.
    void refresh() { settings_.sync(); }
    /// Empty where nothing is kept.
    QString file() const { return keeps_ ? settings_.fileName() : QString{}; }

private:
    bool keeps_;
    mutable QSettings settings_;
};

} // namespace lathhouse::models
