#pragma once

#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/climate/place_months.h"
#include "core/plan/round_parts.h"

namespace lathhouse::models {

/// The twelve months of the place, and what a pot in the open meets in them. Worked out when it is opened, kept until it is
/// closed.
class PlaceMonthsModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    Q_PROPERTY(bool open READ open WRITE setOpen NOTIFY openChanged)
    /// Width of a pot as typed, in `potUnit`; blank: the usual one.
    Q_PROPERTY(QString pot READ pot WRITE setPot NOTIFY potChanged)
    Q_PROPERTY(QString potTrouble READ potTrouble NOTIFY potChanged)
    Q_PROPERTY(QString potUnit READ potUnit CONSTANT)
    Q_PROPERTY(QString usualPot READ usualPot CONSTANT)
    // Twelve rows each. Roles: month, then
    Q_PROPERTY(lathhouse::models::SheetRows* air READ air CONSTANT) ///< low, high, coldest, frost, warmth; sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* sky READ sky CONSTANT) ///< rain, day, light, water; sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* ground READ ground CONSTANT) ///< soil5, soil10, potLow, potHigh, drinks; sentence.
    /// Of the whole year, in words.
    Q_PROPERTY(QString year READ year NOTIFY answered)
    Q_PROPERTY(QString ofPot READ ofPot NOTIFY answered)

public:
    PlaceMonthsModel(std::function<Result<plan::HouseholdFacts>()> load, TodayLook look, QObject* parent = nullptr);

    bool open() const { return open_; }
    void setOpen(bool open); ///< Closed, it holds nothing.
    void renew(); ///< The household changed; worked out again where it is open.
    QString pot() const { return pot_; }
    void setPot(const QString& pot);
    QString potTrouble() const;
    QString potUnit() const;
    QString usualPot() const;
    SheetRows* air() { return &air_; }
    SheetRows* sky() { return &sky_; }
    SheetRows* ground() { return &ground_; }
    QString year() const { return year_; }
    QString ofPot() const { return of_pot_; }

signals:
    void openChanged();
    void potChanged();
    void answered();

protected:
    void read() override;

private:
    /// Nothing where it is none.
    std::optional<double> pot_centimetres() const;
    void clear();

    std::function<Result<plan::HouseholdFacts>()> load_;
    TodayLook look_;
    bool open_ = false;
    QString pot_;
    QString year_;
    QString of_pot_;
    SheetRows air_;
    SheetRows sky_;
    SheetRows ground_;
};

} // namespace lathhouse::models
