#pragma once

#include "core/base/result.h"
#include "core/units/light.h"
#include "core/units/temperature.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plants {

/// The three lines of a plant: nights at or below them stress, damage and kill it.
struct ColdLines {
    Celsius safe_night;
    Celsius damage_begins;
    Celsius lethal;
    friend constexpr bool operator==(const ColdLines&, const ColdLines&) = default;
};

enum class LightClass { Low, Medium, High };
enum class FeedClass { None, Light, Medium, Heavy };
/// What the cold lines rest on.
enum class Evidence { PublishedNumber, PublishedTest, PublishedGroupFigure, PublishedRating, Memory };
enum class Toxicity { NotKnownToBe, Irritant, Low, Toxic, Deadly };

/// One row of the reference of plants.
struct PlantKind {
    std::string botanical_name;
    std::vector<std::string> common_names; ///< The first is the one to show.
    std::string family;
    std::string group;
    ColdLines lines;
    Celsius comfort_low;
    Celsius comfort_high;
    Celsius heat_limit;
    LightClass light;
    DailyLight light_to_survive;
    DailyLight light_to_thrive;
    std::string drying_class;
    bool must_dry; ///< Rain on it counts as stress.
    std::string rest;
    FeedClass feed;
    Toxicity to_people;
    Toxicity to_pets;
    std::string hazards;
    Evidence cold_evidence;
    std::string confidence;
    std::string sources; ///< Keys of the source table, separated by ';'.
    std::string note;
};

/// The reference of plants that the program knows.
class PlantReference {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const PlantReference& built_in();

    std::span<const PlantKind> kinds() const { return kinds_; }
    /// By botanical name or any common name, without case. Errors: NotFound, with up to three near names.
    Result<const PlantKind*> find(std::string_view name) const;

private:
    std::vector<PlantKind> kinds_;
};

} // namespace lathhouse::plants
