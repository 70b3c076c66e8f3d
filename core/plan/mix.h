#pragma once

#include "core/base/result.h"
#include "core/plants/plant_kind.h"
#include "core/units/volume.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::plan {

/// Shares of a feed as its label gives them, percent by weight: nitrogen, phosphate (P2O5), potash (K2O).
struct FeedLabel {
    double nitrogen_percent;
    double phosphate_percent;
    double potash_percent;
    /// Phosphorus and potassium as elements: P2O5 x 0.4364, K2O x 0.8301 (from the atomic weights).
    double phosphorus_percent() const { return phosphate_percent * 0.4364; }
    double potassium_percent() const { return potash_percent * 0.8301; }
};

/// Reads "20-10-20". Errors: Malformed where it is not three numbers; OutOfRange where one is below 0, there
/// is no nitrogen, or they make more than 100 together.
Result<FeedLabel> read_feed_label(std::string_view text);

enum class FeedForm { Powder, Liquid };

/// What goes into the water.
struct Mix {
    std::optional<double> grams;
    std::optional<Litres> volume; ///< Of the feed or the oil; of a powder only where its density is known.
    std::optional<double> drops_about;    ///< Of 0.05 ml; liquids alone.
    std::optional<double> phosphorus_ppm; ///< mg of the element a litre.
    std::optional<double> potassium_ppm;  ///< mg of the element a litre.
    std::vector<std::string> warnings;    ///< Sentences: outside of what is usual.
};

/// Feed for `water` so that it holds `nitrogen_ppm` mg of nitrogen a litre: grams a litre = ppm / (10 x %N).
/// density: grams a millilitre of the feed, from its label or a kitchen scale.
/// Errors: OutOfRange for ppm outside 1 to 2,000 or a density outside 0.2 to 3.
/// Source: Texas A&M, nutrition calculations (ounces in 100 US gallons = ppm / (75 x N)), the same in metric
/// measures; UMass Extension, fertilizer calculations for greenhouse crops: 200 ppm from 20-20-20 is 13.5
/// ounces in 100 gallons.
Result<Mix> feed_mix(const FeedLabel& label, double nitrogen_ppm, Litres water, FeedForm form,
                     std::optional<double> density);

/// What nitrogen a class of plants gets of each feed, ppm: the plant table's own range.
/// nullopt for plants that are not fed.
std::optional<plants::Range> usual_nitrogen(plants::FeedClass feed);
/// A sentence where the nitrogen is outside of what the class gets; nullopt where it is within.
std::optional<std::string> nitrogen_warning(plants::FeedClass feed, double nitrogen_ppm);

/// What a percent mix is made of. Other: no range is known.
enum class SprayStuff { Other, Oil, Soap };

/// Oil or soap for `water`, percent of the water's volume.
/// Errors: OutOfRange for a percent that is not above 0 or is above 20.
Result<Mix> percent_mix(double percent, Litres water, SprayStuff stuff = SprayStuff::Other);

} // namespace lathhouse::plan
