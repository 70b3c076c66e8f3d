#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/household.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::home {

enum class MeasurementKind {
    Height,      ///< From the mix to the highest living point, not stretched.
    Width,       ///< Across the leaves at the widest.
    Leaves,      ///< Living leaves on the plant.
    NewLeaves,   ///< Leaves unfurled since the reading before.
    LongestLeaf, ///< Blade of the longest leaf.
    Stem,        ///< Thickness of the stem where it leaves the mix.
    Flowers,     ///< Open flowers.
    GreenCover,  ///< Green share of an outline in a photo.
    YellowShare, ///< Yellow and brown share of the plant.
};
/// "height", "width", "leaves", "new_leaves", "longest_leaf", "stem", "flowers", "green_cover", "yellow_share".
std::string_view to_string(MeasurementKind kind);
std::optional<MeasurementKind> measurement_kind_of(std::string_view word);
/// Every kind, in the order of the list above.
std::vector<MeasurementKind> every_measurement_kind();

enum class MeasurementUnit { Centimetres, Count, Share };
std::string_view to_string(MeasurementUnit unit); ///< "cm", "count", "share".
/// Each kind has one unit, so that no two readings of a series differ in it. A share lies within 0 and 1.
MeasurementUnit unit_of(MeasurementKind kind);

enum class MeasurementMethod { Ruler, Count, Eye, Photo };
std::string_view to_string(MeasurementMethod method); ///< "ruler", "count", "eye", "photo".
std::optional<MeasurementMethod> measurement_method_of(std::string_view word);
/// What a kind is usually measured with: lengths by ruler, counts by counting, shares by eye.
MeasurementMethod usual_method(MeasurementKind kind);

using MeasurementId = int;

/// What was measured of a plant on one occasion. Never changed, only followed by others or undone.
struct Measurement {
    PlantId plant;
    MeasurementKind kind;
    calendar::Date measured;                      ///< Local date.
    std::vector<double> repeats;                  ///< Each single reading in the kind's unit; one at least.
    MeasurementMethod method;
    calendar::Instant entered;
    std::optional<std::chrono::minutes> time = {}; ///< Local time of day.
    std::string time_zone = {};                    ///< IANA name in which date and time are meant, with a time.
    std::string by = {};                           ///< Who measured; empty where nobody was named.
    std::optional<Litres> pot = {};                ///< The pot that it stood in.
    std::string mix = {};                          ///< What it stood in.
    std::optional<std::string> photo = {};         ///< SHA-256 of the photo that was measured, 64 hex digits.
    std::string note = {};
    std::optional<MeasurementId> id = {}; ///< Given by the journal.
    friend bool operator==(const Measurement&, const Measurement&) = default;

    double value() const; ///< Mean of the repeats, in the kind's unit.
    /// Standard error of the mean of the repeats; nullopt with fewer than two.
    std::optional<double> standard_error() const;
};

/// Errors: OutOfRange with a sentence for no repeat or more than 100, a reading that is no number or out of
/// range (0 to 10,000 cm, 0 to 1,000,000, 0 to 1), a single count that is not whole, a pot of no possible size,
/// a time without a zone or outside the day, a photo that is no SHA-256.
Result<void> check(const Measurement& measurement);

} // namespace lathhouse::home
