#pragma once

#include "app/cli/commands.h"
#include "core/home/seed_lot.h"

#include <string>
#include <vector>

namespace lathhouse::cli {

/// A lot of the household with its kind and what its trays have taught.
struct LotKnown {
    home::SeedBook book;
    home::SeedLot lot;
    const plants::SeedKind* kind;
    home::LotRate rate;
    home::LotJudgement judgement;
};
/// Errors: as household_with_log where there is no household; NotFound for an unknown lot.
Result<LotKnown> lot_known(const Globals& globals, const std::string& id_or_name);

/// The same of a lot of a book. Errors: as SeedReference::find, for a crop that the reference no longer knows.
Result<LotKnown> lot_known(home::SeedBook book, const home::SeedLot& lot, calendar::Date today);

Json lot_json(const LotKnown& lot);
/// "62 % (label 80 %, 9 of 18 counted; 9 in 10 sure of 45 % to 76 %)".
std::string rate_in_words(const LotKnown& lot);
/// What is wrong with the lot, whole sentences; empty where nothing is. needed: seeds for what was asked.
std::vector<std::string> lot_notes(const LotKnown& lot, std::optional<int> needed);

/// `add lot`.
void add_seed_adders(Commands& commands, CLI::App& group);
/// `log sown`, `log count`, `log potted`.
void add_seed_logs(Commands& commands, CLI::App& group);
/// `list lots`.
void add_seed_lists(Commands& commands, CLI::App& group);
/// `show lot`.
void add_seed_shows(Commands& commands, CLI::App& group);

} // namespace lathhouse::cli
