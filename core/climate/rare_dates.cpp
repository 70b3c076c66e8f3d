#include "core/climate/frost_records.h"
#include "core/climate/night_model.h"
#include "core/climate/normals.h"

#include <algorithm>

namespace lathhouse::climate {

void add_rare_dates(FrostRecord& answer, const DailyRecord& record, const FrostQuestion& question)
{
    const auto is_rare = [&](double percent) { return percent * answer.counted_seasons < 100.0; };
    if (!answer.thresholds || std::ranges::none_of(question.percents, is_rare)) {
        return;
    }
    const auto normals = normals_of(record, question.base, {});
    if (!normals) {
        return;
    }
    // The spread of the lows is known from the record, so that the latitude is not looked at.
    const auto model = NightModel::from_monthly(normals->monthly, Latitude::literal(0.0));
    for (ThresholdDates& dates : *answer.thresholds) {
        if (dates.state == ThresholdState::NoSeason || model.no_season()) {
            continue;
        }
        const SeasonChances season = model.season(dates.threshold);
        for (const double percent : question.percents) {
            if (is_rare(percent)) {
                const auto chance = Probability::clamped(percent / 100.0);
                dates.last.model_dates[percent] = season.last(chance);
                dates.first.model_dates[percent] = season.first(chance);
            }
        }
    }
}

} // namespace lathhouse::climate
