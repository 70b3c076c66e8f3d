#pragma once

#include <random>
#include <span>
#include <string>

namespace lathhouse::fuzz {

/// One of the seeds with up to eight changes: bits, bytes, runs doubled, cut and moved, numbers made extreme, words of
/// file forms put in, another seed's tail put on. Equal draws give an equal input. Precondition: seeds not empty.
std::string mutated(std::span<const std::string> seeds, std::mt19937_64& draw);

} // namespace lathhouse::fuzz
