#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/year_words.h"
#include "core/plan/round_parts.h"

#include <QString>
#include <QStringList>

#include <map>
#include <string>
#include <vector>

namespace lathhouse::models {

/// How a page of today is shown.
struct TodayLook {
    calendar::Date today;
    YearWords words;
    /// Hand of each spot by its name: colour, kSpotColours more where turned.
    std::map<std::string, int> hands = {};

    int hand_of(const std::string& spot) const;
};

/// A coming night's low at one spot.
struct ComingNight {
    calendar::Date night; ///< The morning on which it ends.
    Celsius low5, low25, low50, low75, low95;
    bool forecast; ///< Else the season alone.
    QString day;   ///< "Sun".
};

/// Where damage begins for plants that stand at the spot.
struct DamageMark {
    Celsius line;
    QString plants;
    QString brief; ///< The same where there is little room.
};

/// What the chart of the ten nights shows.
struct TenNights {
    std::vector<ComingNight> nights;
    std::vector<DamageMark> marks; ///< Warmest first.
};

/// Tonight's low at one spot, on the ruler of the night.
struct SpotNight {
    int hand;             ///< As `TodayLook::hand_of`.
    QString head;         ///< "Roofed balcony, middle 3.4 °C"
    QString spread;       ///< "9 in 10: 0.6 to 6.2"
    double middle_at;     ///< Its place on the ruler.
    std::vector<double> heights; ///< Of the curve at equal steps over the whole ruler, 0..1, 1 the highest of all spots.
};

/// A mark of the ruler of the night.
struct RulerTick {
    double at; ///< 0..1.
    QString words; ///< "−4", with the unit at the last.
    bool freezing;
};

/// All that the right side of Round shows, in words; values only, so that a thread can make it.
struct TonightFacts {
    bool has_spot = false;     ///< The household has an outdoor spot.
    bool has_forecast = false; ///< Of tonight.
    QString low;               ///< "8.3 °C"
    QString where;             ///< "on the balcony"
    QString spread;            ///< "9 nights in 10 like this: 5.9 to 10.7"
    QString carry_head;        ///< "Nothing to carry in." or "Carry in two plants."
    QString closest;           ///< The rest of that sentence; may be empty.
    QString why;               ///< Why tonight is as it is: forecast, spot, readings.
    QString missing;           ///< What the forecast lacks; empty where nothing does.
    QString chart_title;
    QString chart_note;
    TenNights ten;
    QStringList ruler;                   ///< Words of the ruler's ends and of freezing.
    double ruler_zero = -1.0;            ///< Place of freezing on the ruler, 0..1; negative: not on it.
    std::vector<RulerTick> ticks;        ///< Of the ruler.
    std::vector<SpotNight> spots;        ///< Where plants stand outdoors, most plants first.
    QString spots_line;                  ///< The same to be read aloud.
    std::vector<SheetRows::Row> plants;  ///< As TonightModel::kPlantRoles.
    std::vector<SheetRows::Row> nights;  ///< As TonightModel::kNightRoles.
    std::vector<SheetRows::Row> week;    ///< As TonightModel::kWeekRoles.
    int carries = 0;
};

/// What tonight is looked at for.
struct TonightChoice {
    Probability risk = plan::kUsualRisk; ///< Of a damaging night that may stand; the tasks of the days to come keep to the usual one, as the round does.
    int days = 7;                        ///< Of which tasks are told.
};

TonightFacts tonight_facts(const plan::HouseholdFacts& facts, const TodayLook& look, const TonightChoice& choice = {});

} // namespace lathhouse::models
