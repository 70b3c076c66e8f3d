#pragma once

#include "core/calendar/date.h"
#include "core/home/history.h"

#include <filesystem>
#include <functional>

namespace lathhouse::models {

/// Whether an event is the one that a page wrote.
using TellsOfIt = std::function<bool(const home::Event&)>;

/// Takes back the event that was entered last, or lets the one count again that was taken back last, where it is the
/// one that is meant. Errors: NotFound (something_else_came) where another program wrote in between; then nothing is
/// changed. As HouseholdStore::open and turn_back.
Result<void> take_back_event(const std::filesystem::path& folder, const TellsOfIt& is_it, calendar::Instant now);
Result<void> bring_back_event(const std::filesystem::path& folder, const TellsOfIt& is_it, calendar::Instant now);

} // namespace lathhouse::models
