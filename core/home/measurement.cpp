#include "core/home/measurement.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <utility>

namespace lathhouse::home {
namespace {

constexpr std::array<std::pair<MeasurementKind, Sentence<0>>, 9> kKinds{
    {{MeasurementKind::Height, said_later("height")},
     {MeasurementKind::Width, said_later("width")},
     {MeasurementKind::Leaves, said_later("leaves")},
     {MeasurementKind::NewLeaves, said_later("new_leaves")},
     {MeasurementKind::LongestLeaf, said_later("longest_leaf")},
     {MeasurementKind::Stem, said_later("stem")},
     {MeasurementKind::Flowers, said_later("flowers")},
     {MeasurementKind::GreenCover, said_later("green_cover")},
     {MeasurementKind::YellowShare, said_later("yellow_share")}}};

constexpr std::array<std::pair<MeasurementMethod, std::string_view>, 4> kMethods{
    {{MeasurementMethod::Ruler, "ruler"},
     {MeasurementMethod::Count, "count"},
     {MeasurementMethod::Eye, "eye"},
     {MeasurementMethod::Photo, "photo"}}};

constexpr std::size_t kMostRepeats = 100;
constexpr double kLargestPotLitres = 1000.0;

double most_of(MeasurementUnit unit)
{
    switch (unit) {
    case MeasurementUnit::Centimetres:
        return 10'000.0;
    case MeasurementUnit::Count:
        return 1'000'000.0;
    case MeasurementUnit::Share:
        break;
    }
    return 1.0;
}

std::string shortest(double number)
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), number).ptr;
    return {text.data(), end};
}

Sentence<0> word_of(MeasurementKind kind)
{
    return std::ranges::find_if(kKinds, [kind](const auto& one) { return one.first == kind; })->second;
}

Error wrong(const Measurement& measurement, const Said& what)
{
    return {ErrorCode::OutOfRange, said("the measurement %1 of %2 %3", said_now(word_of(measurement.kind)),
                                        calendar::to_text(measurement.measured), what)};
}

} // namespace

std::string_view to_string(MeasurementKind kind)
{
    return word_of(kind).source;
}

std::optional<MeasurementKind> measurement_kind_of(std::string_view word)
{
    const auto found = std::ranges::find_if(kKinds, [word](const auto& one) { return one.second.source == word; });
    return found == kKinds.end() ? std::nullopt : std::optional{found->first};
}

std::vector<MeasurementKind> every_measurement_kind()
{
    std::vector<MeasurementKind> kinds;
    for (const auto& one : kKinds) {
        kinds.push_back(one.first);
    }
    return kinds;
}

std::string_view to_string(MeasurementUnit unit)
{
    switch (unit) {
    case MeasurementUnit::Centimetres:
        return "cm";
    case MeasurementUnit::Count:
        return "count";
    case MeasurementUnit::Share:
        break;
    }
    return "share";
}

MeasurementUnit unit_of(MeasurementKind kind)
{
    switch (kind) {
    case MeasurementKind::Height:
    case MeasurementKind::Width:
    case MeasurementKind::LongestLeaf:
    case MeasurementKind::Stem:
        return MeasurementUnit::Centimetres;
    case MeasurementKind::Leaves:
    case MeasurementKind::NewLeaves:
    case MeasurementKind::Flowers:
        return MeasurementUnit::Count;
    case MeasurementKind::GreenCover:
    case MeasurementKind::YellowShare:
        break;
    }
    return MeasurementUnit::Share;
}

std::string_view to_string(MeasurementMethod method)
{
    return std::ranges::find(kMethods, method, &std::pair<MeasurementMethod, std::string_view>::first)->second;
}

std::optional<MeasurementMethod> measurement_method_of(std::string_view word)
{
    const auto found =
        std::ranges::find(kMethods, word, &std::pair<MeasurementMethod, std::string_view>::second);
    return found == kMethods.end() ? std::nullopt : std::optional{found->first};
}

MeasurementMethod usual_method(MeasurementKind kind)
{
    switch (unit_of(kind)) {
    case MeasurementUnit::Centimetres:
        return MeasurementMethod::Ruler;
    case MeasurementUnit::Count:
        return MeasurementMethod::Count;
    case MeasurementUnit::Share:
        break;
    }
    return MeasurementMethod::Eye;
}

double Measurement::value() const
{
    return std::accumulate(repeats.begin(), repeats.end(), 0.0) / static_cast<double>(repeats.size());
}

std::optional<double> Measurement::standard_error() const
{
    if (repeats.size() < 2) {
        return std::nullopt;
    }
    const double mean = value();
    const double squares = std::accumulate(repeats.begin(), repeats.end(), 0.0, [&](double sum, double one) {
        return sum + (one - mean) * (one - mean);
    });
    const auto count = static_cast<double>(repeats.size());
    return std::sqrt(squares / (count - 1.0) / count);
}

Result<void> check(const Measurement& measurement)
{
    const auto unit = unit_of(measurement.kind);
    const double most = most_of(unit);
    if (measurement.repeats.empty() || measurement.repeats.size() > kMostRepeats) {
        return wrong(measurement, said("has %1 readings; it needs one at least and %2 at most",
                                       measurement.repeats.size(), kMostRepeats));
    }
    for (const double reading : measurement.repeats) {
        if (!(reading >= 0.0 && reading <= most)) { // Written so that NaN fails too.
            return wrong(
                measurement,
                unit == MeasurementUnit::Centimetres
                    ? said("has a reading of %1; it lies within 0 and %2 cm", shortest(reading), shortest(most))
                : unit == MeasurementUnit::Share
                    ? said("has a reading of %1 %; a share lies within 0 and 100 %", shortest(100.0 * reading))
                    : said("has a reading of %1; it lies within 0 and %2", shortest(reading), shortest(most)));
        }
        if (unit == MeasurementUnit::Count && reading != std::floor(reading)) {
            return wrong(measurement, said("has a reading of %1; a count is a whole number", shortest(reading)));
        }
    }
    if (measurement.pot &&
        !(measurement.pot->litres() > 0.0 && measurement.pot->litres() <= kLargestPotLitres)) {
        return wrong(measurement, said("names a pot of no possible size; a pot has up to 1000 litres"));
    }
    if (measurement.time && (measurement.time_zone.empty() || *measurement.time < std::chrono::minutes{0} ||
                             *measurement.time >= std::chrono::hours{24})) {
        return wrong(measurement, said("has a time outside the day or without its zone"));
    }
    const auto is_hex = [](char letter) {
        return (letter >= '0' && letter <= '9') || (letter >= 'a' && letter <= 'f');
    };
    if (measurement.photo && (measurement.photo->size() != 64 || !std::ranges::all_of(*measurement.photo, is_hex))) {
        return wrong(measurement, said("names a photo that is no SHA-256 of 64 small hex digits"));
    }
    return {};
}

} // namespace lathhouse::home
