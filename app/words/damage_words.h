#pragma once

#include "app/words/words.h"
#include "core/plan/care_lines.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/cold_night.h"

#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::words {

/// What a mode is, in whole sentences.
struct ModeWords {
    std::string name;
    std::string told;     ///< First signs, what becomes of it in plant and mix, the outlook.
    std::string note;     ///< Empty where there is none.
    std::string conflict; ///< What sources disagree on; empty where they do not.
};
ModeWords mode_words(const plan::DamageMode& mode);
/// The same as text of several lines.
std::string damage_mode(const plan::DamageMode& mode);
/// "fits well: hormone weed-killers", "for it: ...", "against it: ...", "the time fits": without full stops.
std::vector<std::string> fit_words(const plan::ModeFit& fit, const plan::DamageTable& table);
/// The same in one line.
std::string mode_fit(const plan::ModeFit& fit, const plan::DamageTable& table);
std::string damage_step(plan::DamageAct act);
/// Lines of care under one head: "Now", "Leave" ...
struct CareList {
    std::string head;
    std::vector<const plan::CareLine*> lines; ///< Not empty; their texts are said by table_text.
};
/// The care lines of a topic for these cases, list by list.
std::vector<CareList> care_lists(std::string_view topic, const std::set<std::string>& cases);
/// The same as text, each list under its head.
std::string care_lines(std::string_view topic, const std::set<std::string>& cases);
/// The cases of a cold night for the care lines; kind: nullptr for one of the grower's own.
std::set<std::string> cold_cases(const plan::ColdPrognosis& prognosis, const plants::PlantKind* kind);
/// What to expect after cold, one sentence that says how sure it is.
std::string cold_outcome(plan::ColdOutcome outcome);
std::string cold_doubt(plan::ColdDoubt doubt);
std::string cold_step(plan::ColdAct act);

} // namespace lathhouse::words
