#include "app/models/forecast_rows.h"

#include "app/models/translated.h"
#include "core/plan/tonight.h"

namespace lathhouse::models {

namespace {

QString missed(KelvinDelta by, const YearWords& words)
{
    return tr("%1 %2").arg(words.decimal(words.fahrenheit() ? by.fahrenheit_degrees() : by.kelvins(), 1), words.unit());
}

} // namespace

std::vector<SheetRows::Row> forecast_rows(const plan::HouseholdFacts& facts, const YearWords& words)
{
    std::vector<SheetRows::Row> rows;
    if (facts.log.forecasts.empty()) {
        return rows;
    }
    const auto record = plan::forecast_record(facts.as_told, facts.log, facts.climate.nights());
    for (std::size_t at = 0; at < record.scores.size(); ++at) {
        const auto& group = record.errors.groups()[at];
        const auto& scores = record.scores[at];
        if (scores.nights == 0) {
            continue;
        }
        const QString ahead = group.first == group.last ? tr("%1 days ahead").arg(group.first)
                                                        : tr("%1 to %2 days ahead").arg(group.first).arg(group.last);
        const QString error = tr("%1 × the usual").arg(words.decimal(group.factor, 2));
        const QString miss = missed(scores.learned, words);
        const QString season = missed(scores.season, words);
        rows.push_back({ahead, QString::number(scores.nights), error, miss, season,
                        tr("%1: %2 nights, error %3; missed by %4, the season alone by %5")
                            .arg(ahead)
                            .arg(scores.nights)
                            .arg(error, miss, season)});
    }
    return rows;
}

} // namespace lathhouse::models
