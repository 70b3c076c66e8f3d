#pragma once

#include "core/base/result.h"
#include "core/plants/plant_kind.h"
#include "core/units/temperature.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// What is to be sprayed or wiped on. Other: what the table has no rules of its own for.
enum class SprayKind { Soap, Oil, Neem, Alcohol, Systemic, Other };
std::string_view to_string(SprayKind kind); ///< "soap", "oil", "neem", "alcohol", "systemic", "other".
std::optional<SprayKind> spray_kind_of(std::string_view word);

/// What is asked before a spray.
enum class SprayCheck {
    Label,        ///< The label was read.
    LabelForbids, ///< It forbids the plant, the pest or the place.
    TestLeaf,     ///< Hours since one leaf was tried.
    TestLeafHurt,
    TemperatureLow,
    TemperatureHigh,
    DirectSun,
    DryOrWilted,
    JustRepotted,
    Seedling,
    Windy,
    RainSoon,
    OpenFlowersOutdoors,
    OpenFlowers,
    ChildNear,
    AnimalNear,
    AsthmaOrPregnant,
    NoFreshAir,
    FlameNear,
    Edible,
    EdibleNotOnLabel,
    Homemade,
    MixedHours,   ///< Hours since it was mixed.
    SensitiveKind, ///< The kind of plant is known to be hurt by it.
    Place          ///< Whether it is done outdoors; asked, never broken.
};
std::string_view to_string(SprayCheck check); ///< As in the column `check`; "sensitive_kind" and "place".

/// From harmless to forbidding. Note: nothing against it, and yet something to keep.
enum class SprayVerdict { Go, Note, Wait, Never };
std::string_view to_string(SprayVerdict verdict); ///< "go", "note", "wait", "never".

/// One row of core/plan/data/spray_rules.csv.
struct SprayRule {
    std::string id;
    std::optional<SprayKind> spray; ///< nullopt: any.
    SprayCheck check;
    std::optional<double> low;
    std::optional<double> high;
    SprayVerdict verdict;
    std::vector<std::string> sources;
    std::string confidence;
    std::string note;
};

/// One row of core/plan/data/sensitive_kinds.csv.
struct SensitiveKind {
    SprayKind spray;
    std::string name; ///< A genus, family, group, botanical or common name.
    bool avoid;       ///< Else careful: only after a test leaf that stood two days.
    std::vector<std::string> sources;
    std::string note;
};

class SprayRules {
public:
    static const SprayRules& built_in();
    /// Errors: Malformed with table and line: an unknown word, a blank, an id given twice, a limit that is
    /// missing where the check needs one.
    static Result<SprayRules> parse(std::string_view rules_csv, std::string_view kinds_csv);

    std::span<const SprayRule> rules() const { return rules_; }
    std::span<const SensitiveKind> sensitive() const { return sensitive_; }

private:
    std::vector<SprayRule> rules_;
    std::vector<SensitiveKind> sensitive_;
};

/// What the grower has answered; what is not known stays open, and an open question means waiting.
struct SprayAnswers {
    SprayKind spray = SprayKind::Other;
    const plants::PlantKind* plant = nullptr;
    std::optional<bool> outdoors = {};
    std::optional<bool> label_read = {};
    std::optional<bool> label_forbids = {};
    std::optional<double> test_leaf_hours = {};
    std::optional<bool> test_leaf_hurt = {};
    std::optional<Celsius> temperature = {}; ///< The warmest until it is dry.
    std::optional<bool> direct_sun = {};
    std::optional<bool> dry_or_wilted = {};
    std::optional<double> days_since_repotting = {};
    std::optional<bool> seedling = {};
    std::optional<bool> windy = {};
    std::optional<bool> rain_soon = {};
    std::optional<bool> open_flowers = {};
    std::optional<bool> child_near = {};
    std::optional<bool> animal_near = {};
    std::optional<bool> asthma_or_pregnant = {};
    std::optional<bool> fresh_air = {};
    std::optional<bool> flame_near = {};
    std::optional<bool> edible = {};
    std::optional<bool> crop_on_label = {};
    std::optional<bool> homemade = {};
    std::optional<double> mixed_hours = {};
};

/// Something that is not as it should be, or has to be kept.
struct SprayFinding {
    SprayCheck check;
    SprayVerdict verdict;
    std::optional<double> given; ///< The figure it failed by.
    std::optional<double> low;
    std::optional<double> high;
    std::vector<std::string> sources;
    std::string note;
};

/// Two limits of different sources for one question.
struct SprayConflict {
    SprayCheck check;
    double strict;
    std::vector<std::string> strict_sources;
    double usual;
    std::vector<std::string> usual_sources;
};

struct SprayDecision {
    SprayVerdict verdict; ///< The worst of the findings; at least Wait while a question is open.
    std::vector<SprayFinding> findings; ///< Worst first.
    std::vector<SprayCheck> open;       ///< Not answered, in the table's order; the label first.
    std::vector<SprayConflict> conflicts;
    std::vector<std::string> sources; ///< Keys of every row that was used, once each.
};

/// Whether to spray now. The product's label stands above every row.
SprayDecision decide_spray(const SprayAnswers& answers, const SprayRules& rules = SprayRules::built_in());

/// Days after trying a leaf on which to look at it: first and last (SOAPMTL: 24 to 48 hours).
inline constexpr int kTestLeafFirstDay = 1;
inline constexpr int kTestLeafLastDay = 2;

} // namespace lathhouse::plan
