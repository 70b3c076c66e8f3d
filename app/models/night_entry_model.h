#pragma once

#include "app/models/household_door.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"

namespace lathhouse::models {

/// A night with all that was read of it, at any spot: also of a room, with the high and with what a station near by had.
class NightEntryModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Every spot of the household; roles: name, hand.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    Q_PROPERTY(int spot READ spot WRITE setSpot NOTIFY spotChanged)
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
        friend bool operator==(const Spot&, const Spot&) = default;
    };

    NightEntryModel(std::function<Result<void>(const home::Reading&)> log, TodayLook look, QObject* parent = nullptr);

    SheetRows* spots() { return &rows_; }
    int spot() const { return spot_; }
    void setSpot(int spot); ///< Ignored outside the spots.
    int wrong() const { return wrong_; }
    /// The spots of the household as it is now; the one chosen stays chosen as long as it is there.
    void know(std::vector<Spot> spots);

    /// All as typed; blank where nothing was read, of `ago` for the night that ended this morning. sky: as
    /// HomeModel::logNight. Gives whether it is written; else `error` says what is wrong.
    Q_INVOKABLE bool keep(const QString& low, const QString& high, const QString& station, int sky, const QString& ago,
                          const QString& note);

signals:
    void spotChanged();

protected:
    void read() override {}

private:
    bool refuse(Answer answer, const QString& why);

    std::function<Result<void>(const home::Reading&)> log_;
    TodayLook look_;
    std::vector<Spot> known_spots_;
    SheetRows rows_;
    int spot_ = 0;
    int wrong_ = None;
};

} // namespace lathhouse::models
