#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/climate/own_record.h"
#include "core/home/household.h"

#include <functional>
#include <optional>

namespace lathhouse::models {

/// The shipped table's climate of a place, without any record of the household's own.
using ShippedClimate = std::function<Result<climate::PlaceClimate>(Position, std::optional<Metres>)>;

/// What there is to say of a household's own record of days, in words; values only.
struct RecordFacts {
    bool is_there = false;
    QString title;                       ///< "Porch, 2001 to 2020"
    QString origin;                      ///< From which file, when, kept where.
    std::vector<SheetRows::Row> figures; ///< Label, value, sentence.
    std::vector<SheetRows::Row> months;  ///< As HomeRecordModel's `months`.
    QString verdict;                     ///< How it lies to the shipped table, sentences.
    bool doubtful = false;               ///< The verdict is to be heeded.
    QString use;                         ///< Whether it answers before the shipped table, and why not.
    std::optional<QString> implausible;  ///< Why it cannot be of this place.
};

RecordFacts record_facts(const home::Household& household, const ShippedClimate& shipped, const YearWords& words);

} // namespace lathhouse::models
