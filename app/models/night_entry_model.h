#pragma once

#include "app/models/household_door.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/home/thermometer.h"

#include <QVariantMap>

namespace lathhouse::models {

/// A night with all that was read of it, at any spot: also of a room, with the high and with what a station near by had.
class NightEntryModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Every spot of the household; roles: name, hand.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    Q_PROPERTY(int spot READ spot WRITE setSpot NOTIFY spotChanged)
    /// Whether the nights kept of the chosen spot are listed.
    Q_PROPERTY(bool listed READ listed WRITE setListed NOTIFY readingsChanged)
    /// The newest first, the latest kFirstShown unless all are asked for. Roles: date, low, high, station, sky, note, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* readings READ readings CONSTANT)
    /// "12 nights are kept of South sill."
    Q_PROPERTY(QString kept READ kept NOTIFY readingsChanged)
    /// Nights that are kept and not listed yet.
    Q_PROPERTY(int more READ more NOTIFY readingsChanged)
    /// Which of the answers the error speaks of.
    Q_PROPERTY(int wrong READ wrong NOTIFY errorChanged)

public:
    enum Answer { None, Low, High, Station, Ago };
    Q_ENUM(Answer)
    /// A spot with the hand that it is drawn in.
    struct Spot {
        home::SpotId id;
        QString name;
        int hand;
        std::optional<climate::Monthly<Celsius>> usual_lows = {};
        friend bool operator==(const Spot&, const Spot&) = default;
    };

    NightEntryModel(std::function<Result<void>(const home::Reading&)> log, TodayLook look, QObject* parent = nullptr);

    SheetRows* spots() { return &rows_; }
    int spot() const { return spot_; }
    void setSpot(int spot); ///< Ignored outside the spots.
    int wrong() const { return wrong_; }
    static constexpr int kFirstShown = 30;
    bool listed() const { return listed_; }
    void setListed(bool listed);
    SheetRows* readings() { return &readings_; }
    QString kept() const;
    int more() const;
    /// The spots of the household as it is now; the one chosen stays chosen as long as it is there. readings: by night.
    void know(std::vector<Spot> spots, std::vector<home::Reading> readings = {});
    Q_INVOKABLE void listAll();
    /// What was typed of a night that is listed, as `keep` takes it: low, high, station, sky, ago, note. Kept again it takes
    /// that night's place; what is not changed keeps what the rounding on screen does not show. Empty where there is none.
    Q_INVOKABLE QVariantMap mend(int row);

    /// All as typed; blank where nothing was read, of `ago` for the night that ended this morning. sky: as
    /// HomeModel::logNight. Gives whether it is written; else `error` says what is wrong.
    Q_INVOKABLE bool keep(const QString& low, const QString& high, const QString& station, int sky, const QString& ago,
                          const QString& note);

signals:
    void spotChanged();
    void readingsChanged();

protected:
    void read() override {}

private:
    bool refuse(Answer answer, const QString& why, const QString& instead = {});
    void show_spots(std::vector<Spot> spots);
    void show_readings();
    /// Of the chosen spot, the newest first.
    std::vector<const home::Reading*> of_spot() const;
    void keep_what_was_not_touched(home::Reading& reading, const QString& low, const QString& high, const QString& station, int sky) const;

    std::function<Result<void>(const home::Reading&)> log_;
    TodayLook look_;
    std::vector<Spot> known_spots_;
    SheetRows rows_;
    int spot_ = 0;
    int wrong_ = None;
    std::vector<home::Reading> known_readings_;
    SheetRows readings_;
    std::optional<home::Reading> mended_;
    bool listed_ = false;
    bool all_ = false;
};

} // namespace lathhouse::models
