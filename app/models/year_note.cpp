#include "app/models/year_note.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/tonight_words.h"

#include <QStringList>

#include <cmath>

namespace lathhouse::models {

QString year_note(const YearData& year, const SolvedYear& solved, const YearWords& words)
{
    QStringList sentences;
    const QString near = words.whole(static_cast<int>(std::lround(year.nearest_kilometres)));
    const QString far = words.whole(static_cast<int>(std::lround(year.farthest_kilometres)));
    if (year.stations == 1) {
        sentences.append(tr("One station, %1 km away, %2, dates right to about %3 days.")
                             .arg(near, text(year.base_period))
                             .arg(std::lround(year.expected_error_days)));
    } else {
        sentences.append(tr("%1 stations, %2 to %3 km away, %4, dates right to about %5 days.")
                             .arg(year.stations)
                             .arg(near, far, text(year.base_period))
                             .arg(std::lround(year.expected_error_days)));
    }
    if (year.sheltered && year.spots[year.sheltered->spot].offset) {
        const YearSpot& spot = year.spots[year.sheltered->spot];
        const auto [low, high] = words::nine_in_ten({*spot.offset, spot.offset_spread});
        sentences.append(tr("%1 %2 (9 in 10: %3 to %4).")
                             .arg(text(spot.name), words.difference(*spot.offset), words.difference(low), words.difference(high)));
    }
    if (!solved.stays.empty()) {
        sentences.append(tr("Plan within %1 % of the best.").arg(words.decimal(solved.gap * 100.0, 1)));
    }
    sentences.append(tr("All dates are chances, not promises."));
    for (const auto* warnings : {&year.warnings, &solved.warnings}) {
        for (const std::string& warning : *warnings) {
            const QString said = upper_first(text(warning));
            sentences.append(said.endsWith(QLatin1Char('.')) ? said : said + QLatin1Char('.'));
        }
    }
    return sentences.join(QLatin1Char(' '));
}

} // namespace lathhouse::models
