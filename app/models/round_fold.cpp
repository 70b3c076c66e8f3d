#include "app/models/round_fold.h"

#include "app/models/year_words.h"

#include <QStringList>

#include <map>

namespace lathhouse::models {

void RoundFold::renew(const std::vector<RoundRow>& rows, calendar::Date today)
{
    constexpr int kShown = 6;
    folded_.assign(rows.size(), false);
    std::map<plan::PestState, int> seen;
    std::map<plan::PestState, std::vector<std::size_t>> away;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        const auto& task = rows[at].task;
        const bool waits = task.due >= today && task.latest > today && rows[at].cautions.empty() && !rows[at].done;
        if (!rows[at].is_hygiene() && ++seen[task.state] > kShown && waits && !opened_.contains(task.state)) {
            away[task.state].push_back(at);
        }
    }
    for (const auto& [state, places] : away) {
        for (const std::size_t at : places) {
            folded_[at] = places.size() > 1;
        }
    }
}

QString RoundFold::more(const std::vector<RoundRow>& rows, std::size_t row) const
{
    if (rows[row].is_hygiene() || hides(row)) {
        return {};
    }
    int hidden = 0;
    QStringList spots;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        if (rows[at].is_hygiene() || rows[at].task.state != rows[row].task.state) {
            continue;
        }
        if (hides(at)) {
            ++hidden;
            const QString spot = text(rows[at].spot);
            if (!spot.isEmpty() && !spots.contains(spot)) {
                spots.append(spot);
            }
        } else if (at > row) {
            return {}; // They are told of at the last one that is shown.
        }
    }
    return hidden == 0        ? QString{}
           : spots.isEmpty() ? tr("%1 more").arg(hidden)
                             : tr("%1 more: %2").arg(QString::number(hidden), spots.join(QStringLiteral(", ")));
}

} // namespace lathhouse::models
