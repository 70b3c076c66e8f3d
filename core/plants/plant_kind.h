#pragma once

#include "core/base/result.h"
#include "core/units/light.h"
#include "core/units/temperature.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace lathhouse::plants {

/// The three lines of a plant: nights at or below them stress, damage and kill it.
struct ColdLines {
    Celsius safe_night;
    Celsius damage_begins;
    Celsius lethal;
    friend constexpr bool operator==(const ColdLines&, const ColdLines&) = default;
};

/// Very high: at least four hours of direct sun besides.
enum class LightClass { Low, Medium, High, VeryHigh };
enum class FeedClass { None, Light, Medium, Heavy };
/// What the cold lines rest on.
enum class Evidence { PublishedNumber, PublishedTest, PublishedGroupFigure, PublishedRating, Memory };
enum class Toxicity { NotKnownToBe, Irritant, Low, Toxic, Deadly };

/// Between two figures, both included.
struct Range {
    double low;
    double high;
    friend constexpr bool operator==(const Range&, const Range&) = default;
};

/// One row of the reference of plants.
struct PlantKind {
    std::string botanical_name;            ///< Not found twice in the reference.
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
    std::string drying_class; ///< keep_moist, top_inch or dry_right_out.
    bool must_dry;            ///< It dries right out between waterings, so rain on it counts as stress.
    std::string growth_season;
    std::string rest; ///< Empty where it has none.
    std::string photoperiod;
    FeedClass feed;
    Range feed_nitrogen_ppm; ///< Of each feed; 0 where it is not fed.
    Range repot_years;       ///< Between two repottings.
    Toxicity to_people;
    Toxicity to_pets;
    std::string hazards;
    bool sulks; ///< Sheds leaves after every move, whatever the temperature.
    Evidence cold_evidence;
    std::string confidence; ///< high, medium or low.
    std::string sources;    ///< Keys of the source table, separated by ';'.
    std::string note;
};

/// Where a figure was published.
struct Source {
    std::string key;
    std::string title;
    std::string publisher; ///< Empty for common practice.
    std::optional<int> year;
};

/// The key that stands for common practice without a source; said wherever such a figure is shown.
inline constexpr std::string_view kCommonPractice = "MEM";

/// The reference of plants that the program knows.
class PlantReference {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const PlantReference& built_in();
    /// Reads the form of core/plants/data/plants.csv and sources.csv. Errors: Malformed with table and line:
    /// a missing column, no number where one should be, an unknown word, a source that is not in the table, a
    /// name given twice, or lines out of the order lethal <= damage <= safe night.
    static Result<PlantReference> parse(std::string_view plants_csv, std::string_view sources_csv);

    std::span<const PlantKind> kinds() const { return kinds_; }
    std::span<const Source> sources() const { return sources_; }
    const Source* source(std::string_view key) const;
    /// By botanical name or any common name, without case. Errors: NotFound, with up to three near names.
    Result<const PlantKind*> find(std::string_view name) const;
    /// Names of kinds that are written much like `name`, nearest first: at most `count`, and none that needs
    /// more changed letters than a third of the longer name.
    std::vector<std::string> near_names(std::string_view name, std::size_t count) const;

private:
    std::vector<PlantKind> kinds_;
    std::vector<Source> sources_;
    std::unordered_map<std::string, std::size_t> by_name_; ///< Every name in lower case, with its kind.
};

std::string_view to_string(LightClass light);  ///< "low", "medium", "high", "very_high".
std::string_view to_string(FeedClass feed);    ///< "none", "light", "medium", "heavy".
std::string_view to_string(Toxicity toxicity); ///< "none", "irritant", "low", "toxic", "deadly".
std::string_view to_string(Evidence evidence); ///< As in the column cold_evidence.

} // namespace lathhouse::plants
