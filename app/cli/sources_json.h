#pragma once

#include "app/cli/commands.h"
#include "core/plants/plant_kind.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::cli {

/// {"key","title","publisher","year"}; publisher null for common practice, year null where none is known.
Json source_json(const plants::Source& source);
/// [{"key","title","publisher","year"}], each key once in the order given; title null for a key that the
/// source table lacks.
Json sources_json(const std::vector<std::string>& keys);
/// The same of rules of growing_rules.csv.
Json sources_json(std::span<const std::string_view> rules);

} // namespace lathhouse::cli
