#pragma once

#include "app/models/dose_wish.h"
#include "app/models/plants_facts.h"
#include "app/models/sheet_rows.h"
#include "core/plan/plant_growth.h"

#include <QStringList>

#include <limits>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// What the chart of a plant's growth shows.
struct GrowthChartData {
    struct Mark {
        calendar::Date date;
        QString words;
    };
    plan::PlantGrowth growth;
    std::vector<Mark> events; ///< Lozenges on full-height lines; the judged one among them.
    std::vector<Mark> moves;  ///< "went out", "came in", or where to.
    std::optional<calendar::Date> next_reading;
    QString unit;  ///< "cm"; empty for counts.
    double factor; ///< From the kept unit to the shown one.
    bool logarithmic;
    bool percent; ///< Shares are shown in parts of a hundred.
    bool counts = false; ///< Nothing lies between one and two of them.
};

/// The nights of a plant and of its spot on one ruler.
struct NightNeeds {
    Celsius lethal;
    Celsius damage;
    Celsius safe;
    Celsius heat;
    std::optional<Celsius> here; ///< Usual low at its spot today.
};

/// A plant's page, in words; values only, so that a thread can make it.
struct PlantFacts {
    home::PlantId id = 0;
    QString name;
    QString botanical;
    QString since; ///< "with you since May 2024; pot 9 L, about 6 kg"
    std::vector<SheetRows::Row> chips;  ///< text, hand, reason.
    /// Its next feed, where it may be fed or its strength is to be said; else nullopt.
    std::optional<DoseWish> feed;
    QString feed_line; ///< "Feed on 12 May, 100 ppm nitrogen. The label comes first."
    std::vector<SheetRows::Row> photos; ///< source, date, words, newest, sentence, photo.
    QString photos_head;
    QString photos_note;
    std::vector<home::MeasurementKind> measures;
    std::vector<SheetRows::Row> kinds; ///< text, on.
    std::optional<GrowthChartData> chart;
    std::vector<calendar::Date> judgeable; ///< Of what happened between its readings; the newest first.
    std::vector<SheetRows::Row> judged;    ///< text, on; of each of those.
    std::vector<home::PlantId> companions; ///< Of the same kind, measured as it is.
    std::vector<SheetRows::Row> spared;    ///< name, on; of each of those.
    QString chart_title;
    QString chart_note;
    QString chart_spoken;
    int verdict = -1; ///< growth::Verdict; -1 without one.
    /// Regained, with its interval; not a number: nothing can be said, or the interval is open there.
    double share = std::numeric_limits<double>::quiet_NaN();
    double share_low = std::numeric_limits<double>::quiet_NaN();
    double share_high = std::numeric_limits<double>::quiet_NaN();
    QString verdict_word;
    QString verdict_after; ///< "after chemical damage on 9 July 2025"
    QString verdict_words;
    QString next_head; ///< "Measure again on Sat 30 May."
    QString next_rest;
    QString verdict_note; ///< "From 22 readings, 8 before and 14 after ..."
    std::optional<NightNeeds> needs;
    QString needs_spoken;
    QString light_words;
    std::vector<SheetRows::Row> hazards; ///< strong, rest, rust.
    QString warning; ///< What comes before all else: "Do not eat."; empty where nothing is to be warned of.
    QString warning_why;
    QStringList notes;                   ///< Sources and what they rest on.
    std::vector<SheetRows::Row> readings; ///< date, value, change, by, sentence.
    std::vector<SheetRows::Row> history;  ///< date, what, note, sentence; the newest of it, newest first.
    std::size_t history_count = 0;        ///< Of all that happened.
    QString left; ///< "Gone: died on 3 May 2026. All that is known of it stays."; empty where it is there.
    bool gone = false; ///< It is none of the household's plants, nor was it.
};

/// What the page of a plant was asked of its growth besides the measure.
struct JudgeAsked {
    std::optional<calendar::Date> event;
    std::vector<home::PlantId> spared;
};

/// asked: the measure, how much of what happened, how many photos (spread over time). Errors: as PlantArchive::page.
Result<PlantFacts> plant_facts(const PlantsGround& ground, home::PlantId id, const journal::PlantAsked& asked, const PlantDoor& door,
                               const TodayLook& look, const JudgeAsked& judge = {});

} // namespace lathhouse::models
