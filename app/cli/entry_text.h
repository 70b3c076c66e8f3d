#pragma once

#include "app/cli/commands.h"
#include "core/home/entry.h"
#include "core/journal/household_store.h"

#include <string>

namespace lathhouse::cli {

/// A household with its gone plants among the others, for looking back and for what is entered late.
Result<home::Household> with_gone_plants(const journal::HouseholdStore& store);

/// One line without its end: "2026-05-01  moved, Lemon to Balcony rail (early)".
std::string sentence_of(const home::Event& event, const home::Household& household);
std::string sentence_of(const home::Measurement& measurement, const home::Household& household,
                        words::UnitSystem units);
std::string sentence_of(const home::Reading& reading, const home::Household& household, words::UnitSystem units);
std::string sentence_of(const home::PhotoChange& change, const home::Household& household);
std::string sentence_of(const home::Entry& entry, const home::Household& household, words::UnitSystem units);

Json entry_json(const home::Event& event);
Json entry_json(const home::Measurement& measurement);
Json entry_json(const home::Reading& reading);
Json entry_json(const home::PhotoChange& change);
/// As the others, after `"entry": "event"`, `"measurement"`, `"reading"` or `"photo"`.
Json entry_json(const home::Entry& entry);

} // namespace lathhouse::cli
