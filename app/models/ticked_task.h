#pragma once

#include "core/home/history.h"

#include <QString>

#include <optional>

namespace lathhouse::models {

/// A task of the round by what the journal keeps of it: "carry it in for the night"; empty where its key says nothing that is
/// known.
QString ticked_task(const home::Event& event);
/// "ticked in the round: feed", "put off in the round: feed"; empty for any other event.
QString ticked_words(const home::Event& event);

/// The lot or the tray whose seeds the task was of, as the journal numbers them.
struct TickedSeeds {
    int number;
    bool is_tray;
};
/// nullopt for a task of anything else.
std::optional<TickedSeeds> ticked_seeds(const home::Event& event);

} // namespace lathhouse::models
