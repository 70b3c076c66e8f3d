#pragma once

#include "core/base/result.h"
#include "core/plants/plant_kind.h"
#include "core/units/temperature.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace lathhouse::plants {

/// What frost does to a young plant after hardening.
enum class FrostClass {
    Tender,    ///< Killed by frost.
    HalfHardy, ///< Stands a light frost.
    Hardy,     ///< Stands frost down to its own line.
};
enum class SeedLight { Indifferent, LightNeeded, LightHelps, Dark, DarkOrLight, Cover, LightCover };
enum class Photoperiod { None, DayNeutral, ShortDay, LongDay, LongDayBolts, Vernalisation, ByCultivar };
/// What the germination percentage rests on.
enum class GerminationBasis { FederalLaw, StateHerbLaw, StateFlowerLaw, Memory };
enum class ReadyFrom { Sowing, Transplant };
enum class ReadyWhat { Harvest, Flower, Leaves };

/// Straight line of the emergence rate against temperature, fitted to the kind's table.
struct ThermalTime {
    Celsius base;
    double degree_days; ///< Above the base, to emergence.
    Celsius up_to;      ///< The line holds up to there.
    double error_percent; ///< Mean absolute error of the fit at the table's temperatures.
    bool moist_only;    ///< Measured as water and warmth together: holds while the mix is kept moist.
};

/// One row of the reference of seeds.
struct SeedKind {
    std::vector<std::string> names; ///< Common names; the first is the one to show.
    std::string botanical_name;     ///< Not found twice.
    std::string type;               ///< veg, herb, flower or foliage.
    FrostClass frost;
    double depth_mm; ///< 0: on the surface.
    Celsius germ_least;
    Celsius germ_best_low;
    Celsius germ_best_high;
    Celsius germ_most;
    /// Share of the way to emergence in a day at 0, 5 ... 40 C, sown 13 mm deep: 1 / days, 0 where nothing
    /// germinated, nullopt where it was not tested.
    std::array<std::optional<double>, 9> rate_at;
    /// Only where the table's fit may be used.
    std::optional<ThermalTime> thermal_time;
    Range days_typical; ///< To germinate in the best range.
    std::optional<Range> weeks_indoors; ///< Before planting out; nullopt: sown where it is to stand.
    /// Of the soil for sowing outdoors: the least, and what is worth waiting for; nullopt: not sown outdoors.
    std::optional<Celsius> soil_least;
    std::optional<Celsius> soil_warm;
    SeedLight light;
    std::string before_sowing; ///< Soak, nick; empty where nothing is needed.
    double germination_percent; ///< The least that may be sold, or common practice: see the basis.
    GerminationBasis basis;
    Range spacing_cm;
    Range ready_days; ///< To flower or harvest, growing at its best temperature or warmer.
    ReadyFrom ready_from;
    ReadyWhat ready_what;
    Photoperiod photoperiod;
    std::string photoperiod_note;
    Celsius growth_best; ///< Least daily mean at which it grows at its full pace.
    Celsius growth_most; ///< Daily mean above which it grows badly, bolts or sets nothing.
    std::optional<int> succession_days; ///< Between harvests that follow one another; nullopt: sown once.
    int keeps_years;    ///< Stored dry and cool, before germination usually falls.
    Celsius safe_night; ///< After hardening; the kind's own floor.
    std::vector<std::string> memory; ///< Columns of the table that rest on common practice.
    std::string sources;             ///< Keys of the source table, separated by ';'.
    std::string confidence;          ///< high, medium or low.

    const std::string& name() const { return names.front(); }
    bool has_table() const;
    /// The night that begins to damage it after hardening: its floor where that is frost hardy; at most 0 C for
    /// a half-hardy kind; at most 2.2 C for a tender one, where frost forms on leaves; but 5 C for tender kinds
    /// whose floor is 12 C or more (cucumber, pepper, basil), since chilling hurts them before frost does.
    ///
    /// Source: 2.2 C as the screen temperature of frost (NWSJAN); 5 C as the upper end of the damaging range of
    /// tomato and cucumber (FROSTCL). That the floor is the line for hardy kinds is common practice, to the safe
    /// side: hardened lettuce is damaged at -2 to -4 C, cole crops and roots at -4 to -7 C (FROSTCL).
    Celsius damaging_night() const;
    /// Daily mean below which it stands still: 3.9 C for hardy and half-hardy kinds, 7.8 C for tender ones (MSUTB:
    /// "39 F or below" and "46 F or above" for plants that tolerate and that do not tolerate cold).
    Celsius growth_base() const;
};

/// The reference of seeds that the program knows.
class SeedReference {
public:
    /// The table that is built into the program. Every row is checked by a test.
    static const SeedReference& built_in();
    /// Reads the form of core/plants/data/seeds.csv; sources: a reference of plants whose source table has the
    /// keys. Errors: Malformed with table and line: a missing column, no number where one should be, an unknown
    /// word or source, a name given twice, temperatures out of order.
    static Result<SeedReference> parse(std::string_view seeds_csv, const PlantReference& sources);

    std::span<const SeedKind> kinds() const { return kinds_; }
    /// By botanical or any common name, without case; a plural s or es at the end is forgiven.
    /// Errors: NotFound, with up to three near names.
    Result<const SeedKind*> find(std::string_view name) const;
    std::vector<std::string> near_names(std::string_view name, std::size_t count) const;

private:
    std::vector<SeedKind> kinds_;
    std::unordered_map<std::string, std::size_t> by_name_;
};

std::string_view to_string(FrostClass frost);        ///< "tender", "half_hardy", "hardy".
std::string_view to_string(SeedLight light);         ///< As in the column light.
std::string_view to_string(Photoperiod photoperiod); ///< As in the column photoperiod.
std::string_view to_string(GerminationBasis basis);  ///< The key of the source: "FSA", "NHSEED", "VAFLOWER", "MEM".
std::string_view to_string(ReadyWhat what);          ///< "harvest", "flower", "leaves".

} // namespace lathhouse::plants
