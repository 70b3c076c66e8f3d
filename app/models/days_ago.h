#pragma once

#include "app/models/year_words.h"

#include <QString>

#include <optional>

namespace lathhouse::models {

/// What is written down now may have happened so many days ago at most: ten years.
inline constexpr int kLongestDaysAgo = 3650;

/// As typed into a field; an empty one is today. nullopt where it is no whole number of 0 to kLongestDaysAgo.
inline std::optional<int> typed_days_ago(const QString& typed)
{
    if (typed.isEmpty()) {
        return 0;
    }
    bool whole = false;
    const int days = typed.toInt(&whole);
    return whole && days >= 0 && days <= kLongestDaysAgo ? std::optional{days} : std::nullopt;
}

/// A day that was, with its year where that is another than today's.
inline QString past_date(calendar::Date date, calendar::Date today, const YearWords& words)
{
    return date.year() == today.year() ? words.long_date(date) : words.long_date_with_year(date);
}

} // namespace lathhouse::models
