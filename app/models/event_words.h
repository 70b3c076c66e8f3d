#pragma once

#include "app/models/year_words.h"
#include "core/home/entry.h"
#include "core/home/household.h"

#include <QString>

namespace lathhouse::models {

/// "pest found": what happened, for people.
QString event_words(const home::Event& event, const home::Household& household);

/// "Pest found": a sort of event, as what is logged is chosen by it.
QString sort_words(home::EventKind kind);

/// "Lemon: moved to Sill, 26 November 2026": what was entered, for whoever takes it back. household: with plants that are
/// gone among the others.
QString entry_words(const home::Entry& entry, const home::Household& household, const YearWords& words);

} // namespace lathhouse::models
