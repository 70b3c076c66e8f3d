#include "core/geodesy/coast_lines.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/base/shipped_file.h"
#include "core/geodesy/geodesic.h"
#include "core/units/angle.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <utility>

namespace lathhouse::geodesy {
namespace {

using Vector = std::array<double, 3>;

constexpr double kUnitsPerDegree = 100.0;

Vector on_sphere(Position position)
{
    const double up = Angle::from_degrees(position.latitude.degrees()).radians();
    const double across = Angle::from_degrees(position.longitude.degrees()).radians();
    return {std::cos(up) * std::cos(across), std::cos(up) * std::sin(across), std::sin(up)};
}

double dot(const Vector& a, const Vector& b)
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

double between(const Vector& a, const Vector& b)
{
    return std::hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/// Where on the straight chord from `start` to `end` the point nearest to `from` lies, 0..1, and the square
/// of its distance in Earth radii. Segments are short (some degrees at most), so that the chord stands for
/// the line.
struct Foot {
    double along;
    double squared;
};
Foot foot_on(const Vector& start, const Vector& end, const Vector& from)
{
    const Vector step{end[0] - start[0], end[1] - start[1], end[2] - start[2]};
    const Vector to{from[0] - start[0], from[1] - start[1], from[2] - start[2]};
    const double length = dot(step, step);
    const double along = length > 0.0 ? std::clamp(dot(to, step) / length, 0.0, 1.0) : 0.0;
    const Vector rest{to[0] - along * step[0], to[1] - along * step[1], to[2] - along * step[2]};
    return {along, dot(rest, rest)};
}

/// The point of the chord, brought back to the sphere.
Position point_on(const Vector& start, const Vector& end, double along)
{
    Vector point{};
    for (std::size_t i = 0; i < 3; ++i) {
        point[i] = start[i] + along * (end[i] - start[i]);
    }
    const double latitude = std::atan2(point[2], std::hypot(point[0], point[1]));
    const double longitude = std::atan2(point[1], point[0]);
    return {
        Latitude::from_degrees(std::clamp(Angle::from_radians(latitude).degrees(), -90.0, 90.0)).value(),
        Longitude::from_degrees(std::clamp(Angle::from_radians(longitude).degrees(), -180.0, 180.0)).value()};
}

std::optional<CoastLine> line_of(std::string_view text)
{
    CoastLine line;
    int longitude = 0;
    int latitude = 0;
    const char* at = text.data();
    const char* const end = at + text.size();
    const auto number = [&]() -> std::optional<int> {
        while (at != end && *at == ' ') {
            ++at;
        }
        int value = 0;
        const auto [rest, error] = std::from_chars(at, end, value);
        if (error != std::errc{} || std::abs(value) > 36000 || (rest != end && *rest != ' ')) {
            return std::nullopt;
        }
        at = rest;
        return value;
    };
    while (at != end) {
        const auto east = number();
        const auto north = number();
        if (!east || !north) {
            return std::nullopt;
        }
        longitude += *east;
        latitude += *north;
        // A line may step across the 180th meridian.
        longitude = longitude > 18000    ? longitude - 36000
                    : longitude < -18000 ? longitude + 36000
                                         : longitude;
        const auto up = Latitude::from_degrees(latitude / kUnitsPerDegree);
        const auto across = Longitude::from_degrees(longitude / kUnitsPerDegree);
        if (!up || !across) {
            return std::nullopt;
        }
        line.push_back({*up, *across});
    }
    return line.size() < 2 ? std::nullopt : std::optional{std::move(line)};
}

} // namespace

Result<std::filesystem::path> CoastLines::find()
{
    return find_shipped_file("coast.txt", "LATHHOUSE_COAST", "the file of coast lines");
}

Result<const CoastLines*> CoastLines::shipped()
{
    static const auto kLines = find().and_then(load);
    return kLines ? Result<const CoastLines*>{&*kLines} : kLines.error();
}

Result<CoastLines> CoastLines::load(const std::filesystem::path& file)
{
    return read_text_file(file).and_then([&](const std::string& text) { return parse(text, file.string()); });
}

Result<CoastLines> CoastLines::parse(std::string_view text, std::string_view name)
{
    std::vector<CoastLine> lines;
    std::size_t number = 0;
    for (const auto raw : split(text, '\n')) {
        ++number;
        const auto line = trimmed(raw);
        if (line.empty() || line.front() == '#') {
            continue;
        }
        auto points = line_of(line);
        if (!points) {
            return Error{ErrorCode::Malformed, said("%1, line %2: no line of coast; it needs pairs of whole numbers, "
                                                    "longitude first, in hundredths of a degree",
                                                    name, number)};
        }
        lines.push_back(*std::move(points));
    }
    if (lines.empty()) {
        return Error{ErrorCode::Malformed, said("%1 holds no line of coast", name)};
    }
    return of(std::move(lines));
}

CoastLines CoastLines::of(std::vector<CoastLine> lines)
{
    CoastLines coast;
    coast.lines_ = std::move(lines);
    std::erase_if(coast.lines_, [](const CoastLine& line) { return line.size() < 2; });
    coast.gather_segments();
    return coast;
}

void CoastLines::gather_segments()
{
    for (std::uint32_t i = 0; i < lines_.size(); ++i) {
        auto before = on_sphere(lines_[i].front());
        for (std::uint32_t k = 1; k < lines_[i].size(); ++k) {
            const auto next = on_sphere(lines_[i][k]);
            segments_.push_back({before, next, i, k});
            before = next;
        }
    }
    gather_runs();
}

void CoastLines::gather_runs()
{
    constexpr std::size_t kSegmentsOfRun = 32;
    for (std::size_t first = 0; first < segments_.size();) {
        std::size_t end = first;
        Vector sum{};
        while (end < segments_.size() && end - first < kSegmentsOfRun &&
               segments_[end].line == segments_[first].line) {
            for (std::size_t i = 0; i < 3; ++i) {
                sum[i] += segments_[end].start[i];
            }
            ++end;
        }
        Run run{sum, 0.0, first, end};
        for (double& part : run.centre) {
            part /= static_cast<double>(end - first);
        }
        for (std::size_t k = first; k < end; ++k) {
            run.radius = std::max({run.radius, between(run.centre, segments_[k].start),
                                   between(run.centre, segments_[k].end)});
        }
        runs_.push_back(run);
        first = end;
    }
}

Result<Metres> CoastLines::distance_to_coast(Position from) const
{
    if (segments_.empty()) {
        return Error{ErrorCode::NotFound, said("there are no coast lines to measure to")};
    }
    const auto here = on_sphere(from);
    // What is sure of a run before its segments are looked at: none is nearer than its ball.
    constexpr double kRounding = 1e-12;
    std::vector<double> nearest_of_run;
    nearest_of_run.reserve(runs_.size());
    double least = 5.0; // No chord of the unit sphere is longer than 2.
    for (const auto& run : runs_) {
        const double centre = between(run.centre, here);
        nearest_of_run.push_back(std::max(0.0, centre - run.radius - kRounding));
        least = std::min(least, (centre + run.radius) * (centre + run.radius));
    }
    const auto far = [&](std::size_t run, double squared) {
        return nearest_of_run[run] * nearest_of_run[run] > squared;
    };
    for (std::size_t run = 0; run < runs_.size(); ++run) {
        for (std::size_t i = runs_[run].first; i < runs_[run].end && !far(run, least); ++i) {
            least = std::min(least, foot_on(segments_[i].start, segments_[i].end, here).squared);
        }
    }
    // The sphere is within 0.6 % of the ellipsoid; geodetic latitudes used as if they were geocentric keep
    // that. All feet within 2 % of the least are measured truly.
    const double limit = least * 1.04 + 1e-12;
    std::vector<std::pair<std::size_t, Foot>> feet;
    for (std::size_t run = 0; run < runs_.size(); ++run) {
        for (std::size_t i = runs_[run].first; i < runs_[run].end && !far(run, limit); ++i) {
            const Foot foot = foot_on(segments_[i].start, segments_[i].end, here);
            if (foot.squared <= limit) {
                feet.emplace_back(i, foot);
            }
        }
    }
    auto nearest = Metres::from_kilometres(30000.0);
    for (const auto& [i, foot] : feet) {
        const auto& [start, end, line, point] = segments_[i];
        const Vector step{end[0] - start[0], end[1] - start[1], end[2] - start[2]};
        constexpr double kRoughRadius = 6.4e6; // Metres.
        const auto reach = Metres::from_metres(kRoughRadius * std::sqrt(dot(step, step)));
        if (distance(from, point_on(start, end, foot.along)) > nearest + reach) {
            continue;
        }
        // The foot on the ellipsoid lies a little beside that on the sphere: ternary search along the chord.
        double low = std::max(0.0, foot.along - 0.1);
        double high = std::min(1.0, foot.along + 0.1);
        for (int round = 0; round < 30; ++round) {
            const double third = (high - low) / 3.0;
            const auto first = distance(from, point_on(start, end, low + third));
            const auto second = distance(from, point_on(start, end, high - third));
            nearest = std::min({nearest, first, second});
            (first < second ? high : low) = first < second ? high - third : low + third;
        }
        nearest =
            std::min({nearest, distance(from, lines_[line][point - 1]), distance(from, lines_[line][point])});
    }
    return nearest;
}

} // namespace lathhouse::geodesy
