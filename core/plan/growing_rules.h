#pragma once

#include "core/plants/plant_kind.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// One row of the table of rules for feeding, water, mixes and roots.
struct GrowingRule {
    std::string id;
    std::string topic; ///< feed, leach, water, roots or mix.
    std::optional<double> low;
    std::optional<double> high;
    std::optional<double> used; ///< The figure that the program takes.
    std::string unit;           ///< "rule" where there is no figure.
    std::string rule;
    std::string conditions;
    std::vector<std::string> sources; ///< Keys.
    std::string confidence;           ///< high, medium or low.
};

/// The rules that the program works by.
class GrowingRules {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const GrowingRules& built_in();
    /// Errors: Malformed with table and line: a missing column, no number where one should be, an id given
    /// twice, a figure outside its range, a source that is not in the table.
    static Result<GrowingRules> parse(std::string_view rules_csv, std::string_view sources_csv);

    std::span<const GrowingRule> rules() const { return rules_; }
    std::span<const plants::Source> sources() const { return sources_; }
    const GrowingRule* find(std::string_view id) const;
    /// The figure in use of a rule. Precondition: the table has it, as a test makes sure.
    double figure(std::string_view id) const;
    const plants::Source* source(std::string_view key) const;
    /// The sources of the rules named, each once, in the order of the table of sources; unknown ids are
    /// passed over.
    std::vector<const plants::Source*> sources_of(std::span<const std::string_view> ids) const;

private:
    std::vector<GrowingRule> rules_;
    std::vector<plants::Source> sources_;
};

/// The figure in use of a rule of the built-in table.
double growing_figure(std::string_view id);

} // namespace lathhouse::plan
