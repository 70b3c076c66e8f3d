#pragma once

#include "core/base/result.h"
#include "core/plants/plant_kind.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// What a caution warns of. Each has at least one row of core/plan/data/cautions.csv.
enum class CautionTopic {
    Label,
    HomemadeMix,
    TestLeaf,
    Soap,
    Oil,
    Neem,
    AlcoholWipe,
    SystemicInsecticide,
    SprayWeather,
    Bees,
    Ventilation,
    Breathing, ///< Pregnancy, asthma and others who should leave the spraying to somebody else.
    ChildOrAnimal,
    ToxicPlant,
    TrueLily,
    Cycad,
    Oxalate,
    MilkySap,
    SapInSunlight,
    HeartAndNervePoison,
    SpinyPlant,
    HeavyPot,
    LadderAndRail,
    WeedKillerDrift,
    FoodAfterWeedKiller,
    Leachate,
    SaltyWater,
    LampsAndWater,
    FertiliserStorage,
    MixDust,
    FrostDates,
    Forecast,
    PorchOffset,
    LateDamage,
    LocalRules,
    MovingPlants, ///< Plant-health rules on taking plants from one region to another.
    NotADiagnosis,
};

/// One short text for the grower, to be shown where the task is.
struct Caution {
    std::string id; ///< Not found twice in the table.
    CautionTopic topic;
    std::string text;       ///< Whole sentences.
    std::string shown_when; ///< The occasion, as "with ..." or "before ...".
    /// Kinds that it is for: "family:Araceae", "genus:Lilium", "hazard:spine" (a piece of the kind's hazards)
    /// or "toxic" (harms people or pets in any degree). Empty where it is for a task and not for a plant.
    std::vector<std::string> kinds;
    std::vector<std::string> sources; ///< Keys; plants::kCommonPractice where there is no source.
};

/// The cautions and the publications behind them.
class CautionTable {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const CautionTable& built_in();
    /// Reads the form of core/plan/data/cautions.csv and caution_sources.csv. Errors: Malformed with table
    /// and line: a missing column, a blank cell, an unknown topic or selector, a source that is not in the
    /// table, an id or a key given twice.
    static Result<CautionTable> parse(std::string_view cautions_csv, std::string_view sources_csv);

    std::span<const Caution> cautions() const { return cautions_; }
    std::span<const plants::Source> sources() const { return sources_; }
    const plants::Source* source(std::string_view key) const;
    /// In the table's order; the pointers live as long as the table.
    std::vector<const Caution*> for_topic(CautionTopic topic) const;
    /// What the kind's family, genus, hazards and toxicity call for. The weight of its pot is the caller's.
    std::vector<const Caution*> for_plant(const plants::PlantKind& kind) const;

private:
    std::vector<Caution> cautions_;
    std::vector<plants::Source> sources_;
};

// Of the table that is built in.
std::span<const Caution> cautions();
std::vector<const Caution*> cautions_for(CautionTopic topic);
std::vector<const Caution*> cautions_for_plant(const plants::PlantKind& kind);
const plants::Source* caution_source(std::string_view key);

/// As in the column `topic`: "label", "homemade_mix" and so on.
std::string_view to_string(CautionTopic topic);
/// Every topic, in the order of the enumeration.
std::span<const CautionTopic> caution_topics();

} // namespace lathhouse::plan
