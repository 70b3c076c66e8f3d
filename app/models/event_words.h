#pragma once

#include "core/home/history.h"
#include "core/home/household.h"

#include <QString>

namespace lathhouse::models {

/// "pest found": what happened, for people.
QString event_words(const home::Event& event, const home::Household& household);

} // namespace lathhouse::models
