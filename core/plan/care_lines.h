#pragma once

#include "core/base/result.h"

#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// One sentence of what to do or to leave after damage: a row of core/plan/data/care_lines.csv.
struct CareLine {
    std::string id;
    std::string topic;   ///< "chemical" or "cold".
    std::string list;    ///< "now", "leave", "ask", "photograph", "write_down", "tell", ...
    std::string applies; ///< "any", or the case in which it is shown.
    std::string text;
    std::vector<std::string> sources;
};

/// The table that is built into the program. Every row is checked by a test.
std::span<const CareLine> care_lines();
/// Errors: Malformed with the line: a blank cell, an unknown topic or list, an id given twice.
Result<std::vector<CareLine>> parse_care_lines(std::string_view csv);
/// The lines of a topic for everybody and for the cases given, in the table's order.
std::vector<const CareLine*> care_lines_for(std::string_view topic, const std::set<std::string>& cases);

} // namespace lathhouse::plan
