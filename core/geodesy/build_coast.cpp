#include "core/geodesy/coast_lines.h"

#include "core/base/csv.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace lathhouse::geodesy {
namespace {

struct Point {
    double longitude, latitude; ///< Degrees; the longitude may run past 180 where a line crosses it.
};

/// Arcs of a quantised topology in degrees. Errors as of build_coast_text.
Result<std::vector<std::vector<Point>>> arcs_of(const nlohmann::json& topology, const std::string& name)
{
    const auto wrong = [&](const char* what) {
        return Error{ErrorCode::Malformed, name + " is no TopoJSON of land areas: " + what};
    };
    if (!topology.is_object() || !topology.contains("type") || topology["type"] != "Topology" ||
        !topology.contains("arcs") || !topology["arcs"].is_array() || !topology.contains("objects") ||
        !topology["objects"].contains("land")) {
        return wrong("it needs \"arcs\" and an object \"land\"");
    }
    if (!topology.contains("transform")) {
        return wrong("it is not quantised (no \"transform\")");
    }
    std::vector<std::vector<Point>> arcs;
    try {
        const auto scale = topology["transform"].at("scale").get<std::array<double, 2>>();
        const auto shift = topology["transform"].at("translate").get<std::array<double, 2>>();
        for (const auto& arc : topology["arcs"]) {
            std::vector<Point> points;
            double x = 0.0;
            double y = 0.0;
            for (const auto& step : arc) {
                x += step.at(0).get<double>();
                y += step.at(1).get<double>();
                points.push_back({x * scale[0] + shift[0], y * scale[1] + shift[1]});
            }
            arcs.push_back(std::move(points));
        }
    } catch (const nlohmann::json::exception&) {
        return wrong("an arc or the transform has another form");
    }
    return arcs;
}

/// Whether the way from one point to the next is a seam of the areas and no coast.
bool is_seam(Point from, Point to)
{
    constexpr double kNear = 0.001;
    const bool both_on_date_line = std::abs(std::abs(from.longitude) - 180.0) < kNear &&
                                   std::abs(std::abs(to.longitude) - 180.0) < kNear;
    constexpr double kPole = -89.9;
    return both_on_date_line || from.latitude < kPole || to.latitude < kPole;
}

/// The Caspian Sea is a hole in the land of the source; here it counts as a lake.
bool is_of_the_caspian(const std::vector<Point>& arc)
{
    return std::ranges::all_of(arc, [](Point point) {
        return point.longitude >= 46.0 && point.longitude <= 56.0 && point.latitude >= 36.0 &&
               point.latitude <= 48.0;
    });
}

/// The stretches of an arc between seams, longitudes unrolled.
std::vector<std::vector<Point>> stretches(const std::vector<Point>& arc)
{
    std::vector<std::vector<Point>> found;
    std::vector<Point> stretch;
    const auto finish = [&] {
        if (stretch.size() > 1) {
            found.push_back(stretch);
        }
        stretch.clear();
    };
    for (std::size_t i = 0; i < arc.size(); ++i) {
        if (i > 0 && is_seam(arc[i - 1], arc[i])) {
            finish();
        }
        auto point = arc[i];
        if (!stretch.empty()) {
            point.longitude =
                stretch.back().longitude + std::remainder(point.longitude - stretch.back().longitude, 360.0);
        }
        stretch.push_back(point);
    }
    finish();
    return found;
}

/// Distance of a point from the line through two others, in degrees as if on a plane whose parallels are as
/// short as there.
double off_line(Point point, Point from, Point to)
{
    constexpr double kRadian = 3.14159265358979323846 / 180.0;
    const double narrow = std::cos(point.latitude * kRadian);
    const double x = (to.longitude - from.longitude) * narrow;
    const double y = to.latitude - from.latitude;
    const double px = (point.longitude - from.longitude) * narrow;
    const double py = point.latitude - from.latitude;
    const double squared = x * x + y * y;
    const double along = squared > 0.0 ? std::clamp((px * x + py * y) / squared, 0.0, 1.0) : 0.0;
    return std::hypot(px - along * x, py - along * y);
}

/// Marks the points to keep between two that are kept. Source: Douglas and Peucker, Cartographica 10 (1973)
/// 112-122; from memory.
void keep_between(const std::vector<Point>& line, std::size_t first, std::size_t last, double tolerance,
                  std::vector<char>& kept)
{
    double farthest = tolerance;
    std::size_t at = first;
    for (std::size_t i = first + 1; i < last; ++i) {
        const double off = off_line(line[i], line[first], line[last]);
        if (off > farthest) {
            farthest = off;
            at = i;
        }
    }
    if (at != first) {
        kept[at] = 1;
        keep_between(line, first, at, tolerance, kept);
        keep_between(line, at, last, tolerance, kept);
    }
}

std::string text_of(const std::vector<Point>& line, double tolerance)
{
    std::vector<char> kept(line.size(), 0);
    kept.front() = kept.back() = 1;
    // A ring has no length from its first point to its last: the middle point is kept as well.
    const auto middle = line.size() / 2;
    kept[middle] = 1;
    keep_between(line, 0, middle, tolerance, kept);
    keep_between(line, middle, line.size() - 1, tolerance, kept);
    constexpr double kPerDegree = 100.0;
    std::string text;
    long longitude = 0;
    long latitude = 0;
    std::size_t points = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const long east = std::lround(line[i].longitude * kPerDegree);
        const long north = std::lround(line[i].latitude * kPerDegree);
        if (kept[i] == 0 || (points > 0 && east == longitude && north == latitude)) {
            continue;
        }
        text += (points == 0 ? "" : " ") + std::to_string(east - longitude) + ' ' +
                std::to_string(north - latitude);
        longitude = east;
        latitude = north;
        ++points;
    }
    return points > 1 ? text + '\n' : std::string{};
}

} // namespace

Result<std::string> build_coast_text(const std::filesystem::path& topology, double tolerance_degrees)
{
    const auto content = read_text_file(topology);
    if (!content) {
        return content.error();
    }
    const auto arcs = arcs_of(nlohmann::json::parse(*content, nullptr, false), topology.string());
    if (!arcs) {
        return arcs.error();
    }
    std::string text =
        "# Coast lines of the world, from Natural Earth 1:50m land (public domain), made by the program's "
        "own\n"
        "# command `coast --build`. Each line: longitude and latitude of a first point in hundredths of a\n"
        "# degree, then the steps from point to point.\n";
    for (const auto& arc : *arcs) {
        if (is_of_the_caspian(arc)) {
            continue;
        }
        for (const auto& stretch : stretches(arc)) {
            text += text_of(stretch, tolerance_degrees);
        }
    }
    return text;
}

} // namespace lathhouse::geodesy
