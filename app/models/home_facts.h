#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/climate/night_weather.h"

#include <QPointF>

#include <array>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// The map round the home: places as shares of its radius, north up (so south is positive).
struct PlaceMap {
    struct Station {
        QString name;
        QString away; ///< "33 km, 171 m"
        QPointF at;
        double weight; ///< 0..1
    };
    struct Town {
        QString name;
        QPointF at;
    };
    struct Ring {
        double share;
        QString words;
    };
    std::vector<std::vector<QPointF>> coast;
    std::vector<Station> stations; ///< Heaviest first.
    std::vector<Town> towns;
    std::vector<Ring> rings;
};

/// Light at a spot, month by month, and what the plants that stand there need.
struct SpotLight {
    struct Need {
        QString plant;
        double thrive; ///< Moles of light a day.
    };
    home::SpotId spot = 0;
    QString name;
    int hand = -1;
    QString facts; ///< What is known of its window or roof.
    std::optional<climate::Monthly<Celsius>> usual_lows = {}; ///< Of its nights.
    std::array<double, 12> moles{}; ///< Mean of each month.
    /// 1 day in 20 is darker, 1 in 20 brighter; nullopt where nothing is known of it, as under lamps.
    struct Days {
        std::array<double, 12> dark{};
        std::array<double, 12> bright{};
    };
    std::optional<Days> days = {};
    std::vector<Need> needs;
    std::vector<SheetRows::Row> months; ///< As HomeModel's `lightMonths`.
    std::vector<SheetRows::Row> plants; ///< As HomeModel's `lightPlants`.
};

/// How an outdoor spot's offset was learnt, night by night, in degrees of the shown unit.
struct OffsetCourse {
    struct Step {
        double mean, low, high; ///< What is known after so many nights, 9 in 10.
    };
    struct Night {
        double difference;
        climate::NightKind kind;
    };
    home::SpotId spot = 0;
    QString name;
    int hand = -1;
    std::vector<Step> steps;   ///< One more than there are nights; the first is the guess before any.
    std::vector<Night> nights; ///< Oldest first.
    QString now;               ///< "+2.1 °C now"
    QString range;             ///< "9 in 10: +0.6 to +3.7"
    QString kinds;             ///< "clear, calm: +2.8 °C; cloud or wind: +1.2 °C"
    std::vector<SheetRows::Row> rows; ///< As HomeModel's `nights`, newest first.
};

/// All that Home shows, in words; values only.
struct HomeFacts {
    QString place;     ///< The household's own word for it.
    QString position;  ///< "48.200° N, 20.500° E, 142 m"
    PlaceMap map;
    QString map_note;
    std::vector<SheetRows::Row> figures;  ///< Label, value, sentence.
    std::vector<SheetRows::Row> stations; ///< Name, away, weight, sentence.
    QString base;
    QString credits;
    QString warning; ///< May be empty.
    std::vector<SpotLight> light;
    std::vector<OffsetCourse> offsets; ///< Of the spots outdoors.
    std::optional<climate::Monthly<Celsius>> usual_lows; ///< In the open.
    std::vector<SheetRows::Row> forecasts; ///< As HomeModel's `forecasts`.
    std::vector<home::Reading> readings;   ///< Of every spot, by night.
};

HomeFacts home_facts(const plan::HouseholdFacts& facts, const TodayLook& look);

} // namespace lathhouse::models
