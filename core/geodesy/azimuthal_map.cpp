#include "core/geodesy/azimuthal_map.h"

#include "core/geodesy/geodesic.h"

#include <proj.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdio>
#include <utility>

namespace lathhouse::geodesy {

struct AzimuthalMap::Projection {
    PJ_CONTEXT* context = nullptr;
    PJ* way = nullptr;
};

void AzimuthalMap::Destroy::operator()(Projection* projection) const
{
    proj_destroy(projection->way);
    proj_context_destroy(projection->context);
    delete projection;
}

AzimuthalMap::AzimuthalMap(Position middle, std::unique_ptr<Projection, Destroy> projection)
    : middle_(middle), projection_(std::move(projection))
{
}

Metres MapPoint::from_middle() const
{
    return Metres::from_metres(std::hypot(east.metres(), north.metres()));
}

Result<AzimuthalMap> AzimuthalMap::around(Position middle)
{
    std::unique_ptr<Projection, Destroy> projection{new Projection};
    projection->context = proj_context_create();
    if (projection->context != nullptr) {
        proj_log_level(projection->context, PJ_LOG_NONE);
        proj_context_set_enable_network(projection->context, 0);
        std::array<char, 128> definition{};
        std::snprintf(definition.data(), definition.size(), "+proj=aeqd +lat_0=%.9f +lon_0=%.9f +ellps=WGS84",
                      middle.latitude.degrees(), middle.longitude.degrees());
        projection->way = proj_create(projection->context, definition.data());
    }
    if (projection->way == nullptr) {
        return Error{ErrorCode::Unavailable, said("PROJ could not be started, so there is no map")};
    }
    return AzimuthalMap{middle, std::move(projection)};
}

std::optional<MapPoint> AzimuthalMap::point(Position position) const
{
    const auto made = proj_trans(projection_->way, PJ_FWD,
                                 proj_coord(proj_torad(position.longitude.degrees()),
                                            proj_torad(position.latitude.degrees()), 0.0, 0.0));
    proj_errno_reset(projection_->way);
    if (!std::isfinite(made.xy.x) || !std::isfinite(made.xy.y)) {
        return std::nullopt;
    }
    return MapPoint{Metres::from_metres(made.xy.x), Metres::from_metres(made.xy.y)};
}

namespace {

/// The part of a straight way that lies within a circle round the middle, as shares of the way.
std::optional<std::pair<double, double>> share_within(MapPoint from, MapPoint to, double radius)
{
    const double x = from.east.metres();
    const double y = from.north.metres();
    const double dx = to.east.metres() - x;
    const double dy = to.north.metres() - y;
    // |from + t step|^2 = radius^2
    const double a = dx * dx + dy * dy;
    const double b = x * dx + y * dy;
    const double c = x * x + y * y - radius * radius;
    if (a == 0.0) {
        return c <= 0.0 ? std::optional{std::pair{0.0, 1.0}} : std::nullopt;
    }
    const double root = b * b - a * c;
    if (root <= 0.0) {
        return std::nullopt;
    }
    const double enter = std::max(0.0, (-b - std::sqrt(root)) / a);
    const double leave = std::min(1.0, (-b + std::sqrt(root)) / a);
    return enter < leave ? std::optional{std::pair{enter, leave}} : std::nullopt;
}

MapPoint along(MapPoint from, MapPoint to, double share)
{
    return {from.east + share * (to.east - from.east), from.north + share * (to.north - from.north)};
}

} // namespace

std::vector<std::vector<MapPoint>> AzimuthalMap::lines_within(std::span<const std::vector<Position>> lines,
                                                              Metres radius) const
{
    assert(radius.metres() > 0.0 && radius.kilometres() <= 15000.0);
    std::vector<std::vector<MapPoint>> found;
    std::vector<MapPoint> stroke;
    const auto finish = [&] {
        if (stroke.size() > 1) {
            found.push_back(stroke);
        }
        stroke.clear();
    };
    for (const auto& line : lines) {
        std::optional<MapPoint> before;
        std::optional<double> before_away;
        for (std::size_t i = 0; i + 1 < line.size(); ++i) {
            const double away = before_away ? *before_away : rough_distance(middle_, line[i]).metres();
            const double next_away = rough_distance(middle_, line[i + 1]).metres();
            before_away = next_away;
            const double length = rough_distance(line[i], line[i + 1]).metres();
            if (std::min(away, next_away) > 1.02 * (radius.metres() + length)) {
                before.reset();
                finish();
                continue;
            }
            const auto from = before ? before : point(line[i]);
            const auto to = point(line[i + 1]);
            before = to;
            const auto share = from && to ? share_within(*from, *to, radius.metres()) : std::nullopt;
            if (!share) {
                finish();
                continue;
            }
            if (stroke.empty() || share->first > 0.0) {
                finish();
                stroke.push_back(along(*from, *to, share->first));
            }
            stroke.push_back(along(*from, *to, share->second));
            if (share->second < 1.0) {
                finish();
            }
        }
        finish();
    }
    return found;
}

std::vector<Metres> ring_radii(Metres radius, double metres_per_unit)
{
    const double units = radius.metres() / metres_per_unit;
    const double power = std::pow(10.0, std::floor(std::log10(units)));
    double step = power;
    for (const double candidate : {0.2, 0.25, 0.5, 1.0, 2.0, 2.5}) {
        step = candidate * power;
        if (units / step < 6.0) {
            break;
        }
    }
    std::vector<Metres> rings;
    for (int k = 1; k * step <= units * (1.0 + 1e-9); ++k) {
        rings.push_back(Metres::from_metres(k * step * metres_per_unit));
    }
    return rings;
}

} // namespace lathhouse::geodesy
