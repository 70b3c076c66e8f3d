#pragma once

#include "app/models/tonight_facts.h"

#include <QString>

#include <chrono>
#include <optional>

namespace lathhouse::models {

/// When a photo was taken, as people type it, or why that is none.
struct TypedTaken {
    std::optional<std::chrono::local_seconds> value;
    calendar::Date date; ///< Of the value.
    QString trouble;
};

/// A date as YearWords reads it, with the time of day behind it where it is known, else noon; not after today.
TypedTaken typed_taken(const QString& typed, const TodayLook& look);

} // namespace lathhouse::models
