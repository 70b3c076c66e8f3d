#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/spot_draft.h"
#include "app/models/year_words.h"

#include <optional>
#include <vector>

namespace lathhouse::models {

/// The parts in which the measures of a spot are asked.
enum class MeasuresOf { Window, Light, Nights };

/// What is typed of the measures of a spot, in the shown units, and what it makes.
class SpotMeasures {
public:
    /// Both are kept by reference.
    SpotMeasures(const SpotDraft& draft, const YearWords& words) : draft_(draft), words_(words) {}

    /// Whether a spot of that kind has it.
    bool asked(SpotMeasure measure) const;
    /// As SpotsForm's lists of measures.
    std::vector<SheetRows::Row> rows(MeasuresOf part) const;
    /// Why what is typed cannot be, in the unit in which it was typed; empty where it can.
    QString trouble(SpotMeasure measure) const;
    QString first_trouble() const;

    // What is typed, where there is no trouble; nullopt where nothing was measured.
    std::optional<sky::SpotFigures> figures() const;
    std::optional<climate::NightOffset> offset() const;
    std::optional<DailyLight> light(SpotMeasure measure) const; ///< SummerLight or WinterLight.

    /// What stands in the field for what the spot has that is changed; blank where that is the usual.
    QString kept(SpotMeasure measure) const;

private:
    struct Typed {
        double value; ///< In the unit in which it is kept.
        double step;  ///< Of the unit in which it was typed, in that of the value.
        QString unit;
    };
    std::optional<Typed> typed(SpotMeasure measure) const;
    /// Typed, or as it was where the field still shows that; nullopt where it is blank.
    std::optional<double> value(SpotMeasure measure) const;
    std::optional<double> usual(SpotMeasure measure) const;
    std::optional<double> base(SpotMeasure measure) const;
    bool window_as_it_was() const;
    QString shown(SpotMeasure measure, double value) const;
    QString unit(SpotMeasure measure) const;
    double step(SpotMeasure measure) const;
    QString label(SpotMeasure measure) const;
    QString note(SpotMeasure measure) const;

    const SpotDraft& draft_;
    const YearWords& words_;
};

} // namespace lathhouse::models
