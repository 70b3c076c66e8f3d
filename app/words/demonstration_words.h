#pragma once

#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/seed_lot.h"

#include <vector>

namespace lathhouse::words {

/// The demonstration's own names for the reader: core invents it in English. The place, spots, and plants that are called
/// as growers call their kind; what else it is called stands in data/table_texts.csv. Nothing is changed for who reads
/// English, and what somebody has named himself never comes here.
void name_for_reader(home::Household& demonstration);

/// What its grower wrote down of it.
void name_for_reader(std::vector<home::Event>& history);
void name_for_reader(home::SeedBook& seeds);

} // namespace lathhouse::words
