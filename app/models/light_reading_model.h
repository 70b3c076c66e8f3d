#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/units/light_source.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <array>

namespace lathhouse::models {

/// A day's light by what a meter reads at a spot, and how long a lamp must burn there to make up to a day's light that is
/// wanted. Answers change with each word.
class LightReadingModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    Q_PROPERTY(QString reading MEMBER reading_ NOTIFY changed)
    /// A Unit.
    Q_PROPERTY(int unit MEMBER unit_ NOTIFY changed)
    /// Names of the units, by Unit; and of the lights, by LightSource.
    Q_PROPERTY(QStringList units READ units CONSTANT)
    Q_PROPERTY(QStringList sources READ sources CONSTANT)
    Q_PROPERTY(int source MEMBER source_ NOTIFY changed)
    /// Whether the source matters: photons are counted in any light alike.
    Q_PROPERTY(bool bySource READ bySource NOTIFY changed)
    Q_PROPERTY(QString hours MEMBER hours_ NOTIFY changed) ///< Of the reading in a day; blank: 8.
    Q_PROPERTY(QString target MEMBER target_ NOTIFY changed) ///< Moles a day.
    Q_PROPERTY(QString lamp MEMBER lamp_ NOTIFY changed) ///< Micromoles at the leaves.
    /// What the reading makes, or what a meter would read of a day's moles; empty where none is typed or it cannot be taken.
    Q_PROPERTY(QString daily READ daily NOTIFY answered)
    /// That beside the light by which the plan reckons this month.
    Q_PROPERTY(QString against READ against NOTIFY answered)
    Q_PROPERTY(QString readingTrouble READ readingTrouble NOTIFY answered)
    Q_PROPERTY(QString hoursTrouble READ hoursTrouble NOTIFY answered)
    /// Hours of the lamp on top of what was read.
    Q_PROPERTY(QString lampNow READ lampNow NOTIFY answered)
    /// Hours of the lamp by the light of the spot in each month; roles: month, moles, hours, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* months READ months CONSTANT)
    Q_PROPERTY(QString targetTrouble READ targetTrouble NOTIFY answered)
    Q_PROPERTY(QString lampTrouble READ lampTrouble NOTIFY answered)
    /// Said where the lamp would burn too long.
    Q_PROPERTY(QString tooLong READ tooLong NOTIFY answered)
    Q_PROPERTY(QString caution READ caution CONSTANT)

public:
    enum Unit { Lux, FootCandles, Micromoles, Moles };
    Q_ENUM(Unit)

    explicit LightReadingModel(TodayLook look, QObject* parent = nullptr);

    /// The spot that is shown, with its moles of light a day in each month; a blank name where there is none.
    void know(const QString& spot, const std::array<double, 12>& moles);

    QStringList units() const;
    QStringList sources() const;
    bool bySource() const { return unit_ != Micromoles; }
    QString daily() const { return daily_; }
    QString against() const { return against_; }
    QString readingTrouble() const { return reading_trouble_; }
    QString hoursTrouble() const { return hours_trouble_; }
    QString lampNow() const { return lamp_now_; }
    SheetRows* months() { return &months_; }
    QString targetTrouble() const { return target_trouble_; }
    QString lampTrouble() const { return lamp_trouble_; }
    QString tooLong() const { return too_long_; }
    QString caution() const;

signals:
    void changed();
    void answered();

private:
    void answer();
    std::optional<DailyLight> read_meter();
    void tell_lamp(std::optional<DailyLight> read);
    QString hours_words(double hours) const;

    TodayLook look_;
    QString spot_;
    std::array<double, 12> moles_{};
    QString reading_, hours_, target_, lamp_;
    int unit_ = Lux;
    int source_ = 0;
    QString daily_, against_, reading_trouble_, hours_trouble_, lamp_now_, target_trouble_, lamp_trouble_, too_long_;
    SheetRows months_;
};

} // namespace lathhouse::models
