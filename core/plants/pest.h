#pragma once

#include "core/base/result.h"
#include "core/units/temperature.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plants {

/// What a clock of a pest measures.
enum class PestStage {
    Generation,     ///< From egg to egg, or from egg to the grown insect.
    Nymph,          ///< From hatching to the grown female; with Preoviposition it makes a generation.
    Preoviposition, ///< From the grown female to her first young.
    Hatch,          ///< The egg, which contact sprays do not kill.
    Crawler         ///< The stage that a treatment reaches; the next treatment has to fall within it.
};

/// What a clock's figures rest on.
enum class ClockBasis {
    Published, ///< Base and degree days as the study gives them.
    Derived,   ///< Days at one temperature as published, times what it is above the base.
    Memory     ///< Common practice without a source.
};

/// Degree days above a base that one stage of a pest takes.
struct PestClock {
    std::string study; ///< The study's short name; rows of one study belong together.
    PestStage stage;
    Celsius base;
    double degree_days; ///< Kelvin days.
    ClockBasis basis;
    std::string source; ///< Key of the source table.
    std::string confidence;
    std::string note;
};

/// A pest as a grower meets it.
struct Pest {
    std::string name;                     ///< Not found twice in the table.
    std::string botanical_name;           ///< Scientific name.
    std::vector<std::string> other_names; ///< "mealybug" without more is the citrus mealybug.
    Celsius upper_limit;                  ///< Warmth above it hastens nothing.
    std::optional<Celsius> lives_above;   ///< Below it few or none get on.
    std::optional<Celsius> dies_above;
    int gap_days; ///< No longer between two treatments, however cool it is.
    std::vector<std::string> look_at;
    std::vector<std::string> found_as;
    std::vector<std::string> spreads_by; ///< "walks", "flies", "hands" ...
    bool hides_in_mix;                   ///< A part of its life is in the mix, where leaf sprays miss it.
    std::vector<std::string> treated_with;
    std::vector<std::string> sources;
    std::string confidence;
    std::string note;
    std::vector<PestClock> clocks;

    bool flies() const;
    /// The clock of the first study that has that stage; nullptr where none has.
    const PestClock* clock(PestStage stage) const;
    /// The studies that give a whole generation, each as the phases that follow one another.
    std::vector<std::vector<const PestClock*>> generations() const;
};

/// The pests that the program knows.
class PestTable {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const PestTable& built_in();
    /// Reads the form of core/plants/data/pests.csv and pest_clocks.csv. Errors: Malformed with table and
    /// line: a missing column, a blank or a wrong cell, a name given twice, a clock of no pest, a clock whose
    /// base is not below the pest's upper limit, a derived clock that is not days times warmth (2 %), a pest
    /// without a generation or without a crawler stage.
    static Result<PestTable> parse(std::string_view pests_csv, std::string_view clocks_csv);

    std::span<const Pest> pests() const { return pests_; }
    /// By name, scientific or other name, without case. Errors: NotFound, with the names there are.
    Result<const Pest*> find(std::string_view name) const;

private:
    std::vector<Pest> pests_;
};

} // namespace lathhouse::plants
