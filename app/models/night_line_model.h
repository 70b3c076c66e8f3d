#pragma once

#include "app/models/household_door.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"

namespace lathhouse::models {

/// Nights at or below a line of the grower's own, in the open air at home or at a spot outdoors: how many a year, the dates of the last and the first
/// by their chance, and the chance of one between two dates.
class NightLineModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Where: the open air at home, then the spots outdoors.
    Q_PROPERTY(QStringList places READ places NOTIFY placesChanged)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY placesChanged)
    /// "86.5 nights a year at or below 0.0 °C."
    Q_PROPERTY(QString head READ head NOTIFY answered)
    /// Roles: chance, last, first, free, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* dates READ dates CONSTANT)
    /// What the dates rest on.
    Q_PROPERTY(QString basis READ basis NOTIFY answered)
    /// The chance of a night between the two dates; empty where none were asked for.
    Q_PROPERTY(QString between READ between NOTIFY answered)
    /// Whether nothing was worked out because the further chance is none.
    Q_PROPERTY(bool chanceWrong READ chanceWrong NOTIFY chanceWrongChanged)

public:
    NightLineModel(std::function<Result<plan::HouseholdFacts>()> load, TodayLook look, QObject* parent = nullptr);

    /// A spot outdoors.
    struct Place {
        home::SpotId spot;
        QString name;
        friend bool operator==(const Place&, const Place&) = default;
    };
    /// The spots of the household as it is now; the one chosen stays chosen as long as it is there.
    void know(std::vector<Place> spots);

    QStringList places() const;
    int place() const { return place_; }
    void setPlace(int place); ///< Ignored outside the places.
    QString head() const { return head_; }
    SheetRows* dates() { return &dates_; }
    QString basis() const { return basis_; }
    QString between() const { return between_; }
    bool chanceWrong() const { return chance_wrong_; }

    /// line: a temperature as it is typed. from, to: dates as they are typed, both or none. chance: one more chance to give dates
    /// for, as it is typed ("12", "1 in 12"), or blank. Gives whether it is worked out; else `error` says what is wrong.
    Q_INVOKABLE bool ask(const QString& line, const QString& from = {}, const QString& to = {}, const QString& chance = {});

signals:
    void placesChanged();
    void answered();
    void chanceWrongChanged();

protected:
    void read() override {}

private:
    void set_chance_wrong(bool wrong);

    std::function<Result<plan::HouseholdFacts>()> load_;
    TodayLook look_;
    std::vector<Place> spots_;
    int place_ = 0;
    bool chance_wrong_ = false;
    QString head_;
    QString basis_;
    QString between_;
    SheetRows dates_;
};

} // namespace lathhouse::models
