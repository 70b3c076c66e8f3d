#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/units/volume.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// Something a grower can see: a row of core/plan/data/damage_signs.csv.
struct DamageSign {
    std::string key;   ///< "cupped_leaves".
    std::string group; ///< young, old, stem, root or where.
    std::string text;
};

enum class SignFit { Typical, Possible, Against };
/// Where in a pot what was sprayed is held.
enum class InMix { None, Bound, Between, Mobile };
enum class LeachAdvice { No, Unsure, Yes };
std::string_view to_string(InMix held);          ///< "none", "bound", "between", "mobile".
std::string_view to_string(LeachAdvice advice);  ///< "no", "unsure", "yes".

/// A way in which a plant may have been hurt: a weed-killer's mode of action, or another cause that looks
/// like one. A row of core/plan/data/damage_modes.csv with its rows of damage_patterns.csv.
struct DamageMode {
    struct Sign {
        std::string sign;
        SignFit fit;
        std::vector<std::string> sources;
    };
    std::string key;
    std::string name;
    std::vector<std::string> examples; ///< Active substances.
    bool is_weed_killer;
    bool is_systemic; ///< It travels in the plant.
    bool as_vapour;   ///< It may come as a vapour days later.
    double first_days_low;  ///< From the spray to the first signs.
    double first_days_high;
    InMix in_mix;
    std::optional<double> half_life_low_days;
    std::optional<double> half_life_high_days;
    LeachAdvice leach;
    std::vector<int> look_days;
    int hold_weeks; ///< Without feed at least, and then until new growth is logged.
    bool prune_dead_only;
    std::string outlook;
    std::string conflict; ///< What sources disagree on; empty where they do not.
    std::vector<std::string> sources;
    std::string confidence;
    std::string note;
    std::vector<Sign> signs;
};

class DamageTable {
public:
    static const DamageTable& built_in();
    /// Errors: Malformed with table and line: a blank or wrong cell, an unknown word, a sign or mode that is
    /// not there, a key given twice, ends of a range in the wrong order, a mode without a typical sign.
    static Result<DamageTable> parse(std::string_view signs_csv, std::string_view modes_csv,
                                     std::string_view patterns_csv);

    std::span<const DamageSign> signs() const { return signs_; }
    std::span<const DamageMode> modes() const { return modes_; }
    const DamageSign* sign(std::string_view key) const;
    /// By key, name or active substance, without case; nullptr for anything else.
    const DamageMode* mode(std::string_view name) const;

private:
    std::vector<DamageSign> signs_;
    std::vector<DamageMode> modes_;
};

/// How well a mode fits what was seen.
enum class Closeness { Weak, Fair, Good };
std::string_view to_string(Closeness closeness); ///< "weak", "fair", "good".

struct ModeFit {
    const DamageMode* mode;
    double score;
    Closeness closeness;
    std::vector<std::string> typical; ///< Keys of signs that were seen and belong to it.
    std::vector<std::string> possible;
    std::vector<std::string> against;
    std::optional<bool> time_fits; ///< nullopt where the time to the first signs is not known.
};

/// The modes that fit what was seen, best first; those that speak against themselves are left out.
///
/// A typical sign counts 2, a possible one 1, one against it -3; first signs within the mode's days count 1.5,
/// before a third of the first or after three times the last -2. Good: at least 4 and nothing against it;
/// fair: at least 2. The weights are our own: a list to look along, never a diagnosis.
std::vector<ModeFit> fitting_modes(std::span<const std::string> signs, std::optional<double> first_signs_days,
                                   const DamageTable& table = DamageTable::built_in());

enum class DamageAct { Rinse, Photograph, AskAndTell, Leach, Bioassay, ReadBioassay, Look };
std::string_view to_string(DamageAct act); ///< "rinse", "photograph", "ask_and_tell" ...

struct DamageStep {
    calendar::Date date;
    calendar::Date latest;
    std::optional<home::PlantId> plant;
    DamageAct act;
    int minutes; ///< Common practice, no source.
};

/// What is known of a case.
struct DamageCase {
    calendar::Date happened;
    std::string product = {}; ///< Key, name or active substance; empty or unknown to the table: not known.
    std::vector<std::string> signs = {};
    std::optional<double> first_signs_days = {};
    std::optional<bool> still_wet = {};
    std::optional<bool> from_compost = {};
    std::optional<bool> edible = {};
    std::optional<Litres> pot_volume = {};
    std::optional<home::PlantId> plant = {};
    std::optional<calendar::Date> new_growth = {}; ///< Logged since.
};

struct DamageCourse {
    DamageCase what;
    const DamageMode* mode;    ///< By the product, or nullptr where it is not known.
    std::vector<ModeFit> fits; ///< By the signs.
    LeachAdvice leach;
    std::optional<Litres> leach_water; ///< Twice the pot's volume, where leaching is advised.
    calendar::Date no_feed_before; ///< The hold, or the day of the new growth where that came later.
    bool feed_waits_for_growth; ///< No new growth is logged yet.
    std::vector<DamageStep> steps;
    std::vector<std::string> cases;   ///< For care_lines_for.
    std::vector<std::string> sources; ///< Keys of the rows used.
};

/// The course of one case. Where the product is not known, the most cautious of the fitting modes decides how
/// long feed is held, and nothing is leached.
DamageCourse damage_course(const DamageCase& what, const DamageTable& table = DamageTable::built_in());

/// The case of an event of kind chemical_damage. Its details: `product`, `signs` (keys with ';'),
/// `first_signs_days`, `still_wet`, `compost`, `edible` (yes or no), `wind`, `distance`. What cannot be read
/// stays unknown.
DamageCase case_of(const home::Event& event, const home::Household& household,
                   std::span<const home::Event> events);

/// Whether a later event of that kind, of the same plant and day, tells the same case with what is known since: it stands
/// in the place of the one at `index`.
bool is_told_anew(std::span<const home::Event> events, std::size_t index);

/// The courses of a household's events of that kind, each case once; plants that are gone have none.
std::vector<DamageCourse> damage_courses(const home::Household& household,
                                         std::span<const home::Event> events);

} // namespace lathhouse::plan
