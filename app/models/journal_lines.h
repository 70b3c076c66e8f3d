#pragma once

#include "app/models/year_words.h"
#include "core/home/event_list.h"
#include "core/home/household.h"
#include "core/home/measurement.h"
#include "core/home/seed_lot.h"
#include "core/home/thermometer.h"

#include <QByteArray>
#include <QHash>
#include <QString>

#include <vector>

namespace lathhouse::models {

/// All that a household's journal keeps, in any order of days; what came in later stands behind.
struct JournalRecords {
    home::Household household; ///< With its gone plants among the others.
    home::EventList events;
    std::vector<home::Measurement> measurements;
    home::NightLog nights;
    home::SeedBook seeds;
};

/// A line of the journal; its words are places among the texts of its JournalLines.
struct JournalLine {
    int date;
    int who; ///< The plant, the spot or the lot; empty where it is of several or of the household.
    int what;
    home::PlantId plant; ///< Of one plant; else 0.
};

/// The lines of a journal, as they are shown. There may be hundreds of thousands, many of which say the same: each text is kept once.
class JournalLines {
public:
    void add(const QString& date, const QString& who, const QString& what, home::PlantId plant);
    /// To be called once all are there.
    void close();

    std::size_t size() const { return lines_.size(); }
    const JournalLine& operator[](std::size_t at) const { return lines_[at]; }
    QString words(int text) const { return QString::fromUtf8(texts_[static_cast<std::size_t>(text)].words); }
    /// "26 November 2026, Lemon: Moved to Sill."
    QString sentence(const JournalLine& line) const;
    /// Places of the lines that have each of the words, in any order, whatever their case and however an apostrophe is written.
    std::vector<int> having(const QString& words) const;

private:
    struct Text {
        QByteArray words; ///< In UTF-8, as is the key: half of what they would take otherwise.
        QByteArray key;   ///< What is looked through.
    };
    int place_of(const QString& words);

    std::vector<Text> texts_;
    std::vector<JournalLine> lines_;
    QHash<QByteArray, int> places_; ///< Of the texts, while lines are added.
};

/// Newest first; what was entered later on a day stands above. What was measured of a plant on a day is one line, so are the
/// readings of all thermometers of a night, and the forecasts that were kept on a day: there are many of them, and they
/// belong together.
JournalLines journal_lines(const JournalRecords& records, const YearWords& words);

} // namespace lathhouse::models
