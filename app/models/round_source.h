#pragma once

#include "app/models/household_door.h"
#include "core/base/result.h"
#include "core/home/history.h"
#include "core/plan/round_parts.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Where the facts of a round come from, and where what is ticked goes. The functions are called one after
/// the other, in a thread of the model's own.
struct RoundSource {
    /// Why it cannot be had is a sentence for people.
    std::function<Result<plan::HouseholdFacts>()> load;
    /// Writes what was done with one task or with several at once, all or nothing.
    std::function<Result<void>(const std::vector<home::Event>&)> record;
    /// Takes back what was written last, given the task's key that it is thought to be, or those of several (`joined_keys`).
    /// Errors: NotFound where something else was written last.
    std::function<Result<void>(const std::string& key, calendar::Instant now)> take_back;
    /// Writes again what was taken back last. Errors as take_back.
    std::function<Result<void>(const std::string& key, calendar::Instant now)> bring_back;
    /// Whether what is ticked outlasts the window.
    bool keeps = true;
    /// A tray that was sown today. It is taken back by `sown_key`. Empty: sowings are ticked as all else is.
    std::function<Result<void>(const home::Tray&, const std::string& lot, calendar::Date today, calendar::Instant now)> sow = {};
    /// So many seedlings of a tray become plants today. Taken back by `potted_key`. Empty: ticked as all else is.
    std::function<Result<void>(home::TrayId, int plants, calendar::Date today, calendar::Instant now)> pot_up = {};
};

/// By what tasks are taken back that were written at once, in the order in which they were.
std::string joined_keys(const std::vector<std::string>& tasks);
/// By what a sowing from the round is taken back.
std::string sown_key(const std::string& lot, const std::string& seeds);
/// By what a potting from the round is taken back.
std::string potted_key(const std::string& tray, const std::string& plants);

/// The household in a folder: `load` reads it, ticks go into its journal.
RoundSource round_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load);
/// Facts without a folder: ticks stay in memory.
RoundSource round_in_memory(plan::HouseholdFacts facts);
/// The same facts for several pages.
RoundSource round_in_memory(std::shared_ptr<MemoryHousehold> household);
/// No household at all; `load` gives that error.
RoundSource no_round(Error why);

} // namespace lathhouse::models
