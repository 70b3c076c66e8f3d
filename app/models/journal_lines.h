#pragma once

#include "app/models/year_words.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/measurement.h"
#include "core/home/seed_lot.h"
#include "core/home/thermometer.h"

#include <QString>

#include <vector>

namespace lathhouse::models {

/// All that a household's journal keeps, in any order of days; what came in later stands behind.
struct JournalRecords {
    home::Household household; ///< With its gone plants among the others.
    std::vector<home::Event> events;
    std::vector<home::Measurement> measurements;
    home::NightLog nights;
    home::SeedBook seeds;
};

/// A line of the journal as it is shown.
struct JournalLine {
    QString date;
    QString who; ///< The plant, the spot or the lot; empty where it is of several or of the household.
    QString what;
    home::PlantId plant = 0; ///< Of one plant; else 0.
    QString key; ///< All of it to be looked through: journal_key.
};
/// "26 November 2026, Lemon: Moved to Sill."
QString journal_sentence(const JournalLine& line);

/// Without case, and an apostrophe as a typewriter has it: what is looked for, and where.
QString journal_key(const QString& words);

/// Newest first; what was entered later on a day stands above. What was measured of a plant on a day is one line, so are the
/// readings of all thermometers of a night, and the forecasts that were kept on a day: there are many of them, and they
/// belong together.
std::vector<JournalLine> journal_lines(const JournalRecords& records, const YearWords& words);

} // namespace lathhouse::models
