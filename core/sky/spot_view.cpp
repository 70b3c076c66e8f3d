#include "core/sky/spot_view.h"

#include "core/sky/glazing.h"
#include "core/sky/spot_limits.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace lathhouse::sky {
namespace {

constexpr double kBuildingReflectance = 0.3;
constexpr Angle kRightAngle = Angle::from_degrees(90.0);

/// A direction as seen by one who looks straight out.
struct Outlook {
    double out;   ///< Negative behind the wall.
    double right; ///< To the right hand.
    double up;
};
Outlook outlook(Direction direction, Angle facing)
{
    const auto out = level_direction(facing);
    const auto right = level_direction(facing + kRightAngle);
    return {direction.east * out.east + direction.north * out.north,
            direction.east * right.east + direction.north * right.north, direction.up};
}

/// Height on the opening's plane below which the building hides the sky, as the leaves see it.
double top_of_building(const SpotFigures& spot)
{
    return spot.distance.metres() * std::tan(spot.opposite.radians());
}

/// Height on the opening's plane above which the slab hides the sky.
double edge_of_overhang(const SpotFigures& spot)
{
    const double top = (spot.sill + spot.height).metres();
    const double distance = spot.distance.metres();
    const double seen = top * distance / (distance + spot.overhang.metres());
    return top > 0.0 ? seen : top;
}

/// The part of the opening between two heights; empty where they cross.
SeenRectangle part_between(const SpotFigures& spot, double bottom, double top)
{
    const double lowest = spot.sill.metres();
    const double highest = (spot.sill + spot.height).metres();
    bottom = std::clamp(bottom, lowest, highest);
    top = std::clamp(top, bottom, highest);
    return {spot.sideways - 0.5 * spot.width, spot.sideways + 0.5 * spot.width, Metres::from_metres(bottom),
            Metres::from_metres(top)};
}

/// View factor of a part of the opening, times what panes, frames and screens let through: taken in pieces,
/// since light on a slant loses more in the glass.
double passed(const SpotFigures& spot, const SeenRectangle& part,
              double (*view_factor)(const SeenRectangle&, Metres))
{
    if (spot.panes == 0) {
        return spot.passes * view_factor(part, spot.distance);
    }
    constexpr int kPieces = 8;
    // Pieces of one angle each, seen from the leaves.
    const auto cut = [&](Metres from, Metres to, int place) {
        const double first = std::atan(from / spot.distance);
        const double last = std::atan(to / spot.distance);
        return std::tan(first + (last - first) * place / kPieces) * spot.distance;
    };
    double sum = 0.0;
    for (int across = 0; across < kPieces; ++across) {
        for (int along = 0; along < kPieces; ++along) {
            const SeenRectangle piece{
                cut(part.left, part.right, across), cut(part.left, part.right, across + 1),
                cut(part.bottom, part.top, along), cut(part.bottom, part.top, along + 1)};
            const double slant = std::hypot(0.5 * (piece.left + piece.right).metres(),
                                            0.5 * (piece.bottom + piece.top).metres());
            sum += view_factor(piece, spot.distance) *
                   glass_transmittance(spot.panes,
                                       Angle::from_radians(std::atan2(slant, spot.distance.metres())));
        }
    }
    return spot.passes * sum;
}

/// Light of the day on the building that stands opposite, on the side turned to us, per its surface.
DailyRadiation light_on_building(const SpotFigures& spot, const MeanDay& day)
{
    return radiation_on_wall(day, spot.facing + 2.0 * kRightAngle);
}

/// `sentence`: of what, least, most and value.
Result<void> within(double value, FigureLimits limits, Sentence<0> what, Sentence<4> sentence)
{
    if (value >= limits.least && value <= limits.most) {
        return {};
    }
    const auto text = [](double number) {
        std::string digits = std::to_string(number);
        digits.erase(digits.find_last_not_of('0') + 1);
        return digits.ends_with('.') ? digits.substr(0, digits.size() - 1) : digits;
    };
    return Error{ErrorCode::OutOfRange, put_together(sentence.source, {said_now(what), Said{text(limits.least)},
                                                                       Said{text(limits.most)}, Said{text(value)}})};
}

} // namespace

std::string_view to_string(Shelter shelter)
{
    return shelter == Shelter::Opening ? "opening" : "open_sky";
}

std::optional<Shelter> shelter_of(std::string_view word)
{
    for (const auto shelter : {Shelter::Opening, Shelter::OpenSky}) {
        if (to_string(shelter) == word) {
            return shelter;
        }
    }
    return std::nullopt;
}

Result<SpotView> SpotView::of(const SpotFigures& figures)
{
    struct Limit {
        double value;
        FigureLimits limits;
        Sentence<0> what;
        Sentence<4> sentence;
    };
    constexpr Sentence<4> kDegrees = said_later<4>("%1 must lie within %2 and %3 degrees, not %4");
    constexpr Sentence<4> kMetres = said_later<4>("%1 must lie within %2 and %3 m, not %4");
    constexpr Sentence<4> kNumber = said_later<4>("%1 must lie within %2 and %3, not %4");
    const Limit limits[] = {
        {figures.facing.degrees(), {-360.0, 360.0}, said_later("the direction a spot faces"), kDegrees},
        {figures.width.metres(), kOpeningSize, said_later("the width of a window or opening"), kMetres},
        {figures.height.metres(), kOpeningSize, said_later("the height of a window or opening"), kMetres},
        {figures.sill.metres(), kAsideOfOpening, said_later("the sill's height above the leaves"), kMetres},
        {figures.distance.metres(), kOpeningSize, said_later("the distance from the window or opening"), kMetres},
        {figures.sideways.metres(), kAsideOfOpening, said_later("the distance sideways of the window's middle"), kMetres},
        {figures.overhang.metres(), kOverhangDepth, said_later("the depth of an overhang"), kMetres},
        {figures.opposite.degrees(), kHeightInDegrees, said_later("the height of what stands opposite"), kDegrees},
        {figures.behind.degrees(), kHeightInDegrees, said_later("the height of the wall behind"), kDegrees},
        {static_cast<double>(figures.panes), kPanesOfGlass, said_later("the number of panes"), kNumber},
        {figures.passes, kShareLetThrough, said_later("the share of light let through"), kNumber},
    };
    for (const auto& limit : limits) {
        if (const auto good = within(limit.value, limit.limits, limit.what, limit.sentence); !good) {
            return good.error();
        }
    }
    return SpotView{figures};
}

bool SpotView::sees(Direction direction) const
{
    const auto [out, right, up] = outlook(direction, figures_.facing);
    if (up <= 0.0) {
        return false;
    }
    if (figures_.shelter == Shelter::OpenSky) {
        return up > std::abs(out) * std::tan((out > 0.0 ? figures_.opposite : figures_.behind).radians());
    }
    if (out <= 0.0) {
        return false;
    }
    const double along = figures_.distance.metres() * right / out;
    const double height = figures_.distance.metres() * up / out;
    const auto sky = part_between(figures_, top_of_building(figures_), edge_of_overhang(figures_));
    return along > sky.left.metres() && along < sky.right.metres() && height > sky.bottom.metres() &&
           height < sky.top.metres();
}

SpotOptics::SpotOptics(const SpotView& view) : view_(view)
{
    const auto& spot = view_.figures();
    if (spot.shelter == Shelter::OpenSky) {
        // Strips without end, seen from below: (1 - cos) / 2 of a level leaf's light, sin / 2 of an upright
        // one's; the limits of the rectangle's view factors.
        const double glass = spot.passes * glass_transmittance_of_sky(spot.panes);
        const double opposite = 0.5 * (1.0 - std::cos(spot.opposite.radians()));
        const double behind = 0.5 * (1.0 - std::cos(spot.behind.radians()));
        level_ = {glass * (1.0 - opposite - behind), glass * opposite, glass * behind};
        const double hidden = 0.5 * std::sin(spot.opposite.radians());
        facing_ = {glass * (0.5 - hidden), glass * hidden, glass * 0.5};
        return;
    }
    const double building = top_of_building(spot);
    const double overhang = edge_of_overhang(spot);
    const auto ground_part = part_between(spot, spot.sill.metres(), std::min(0.0, overhang));
    const auto building_part = part_between(spot, 0.0, std::min(building, overhang));
    const auto sky_part = part_between(spot, building, overhang);
    level_ = {passed(spot, sky_part, view_factor_level), passed(spot, building_part, view_factor_level), 0.0};
    facing_ = {passed(spot, sky_part, view_factor_facing), passed(spot, building_part, view_factor_facing),
               passed(spot, ground_part, view_factor_facing)};

    // What enters: the opening's middle sees strips without end.
    const double slab = spot.overhang.metres() > 0.0
                            ? std::sin(std::atan2(0.5 * spot.height.metres(), spot.overhang.metres()))
                            : 1.0;
    const double hidden = std::min(std::sin(spot.opposite.radians()), slab);
    const double glass = spot.passes * glass_transmittance_of_sky(spot.panes);
    opening_ = {glass * 0.5 * (slab - hidden), glass * 0.5 * hidden, glass * 0.5};

    // Split flux. Reflectances and the least size of a room: common practice of daylighting.
    constexpr double kCeiling = 0.7;
    constexpr double kWalls = 0.5;
    constexpr double kFloor = 0.2;
    const double glass_reflects = spot.panes > 0 ? 0.15 : 0.0;
    const double width = std::max(4.0, spot.width.metres());
    const double height = std::max(2.5, spot.height.metres());
    const double depth = std::max(spot.panes > 0 ? 5.0 : 1.5, spot.distance.metres() + 0.5);
    const double opening = (spot.width * spot.height.metres()).metres();
    const double level = width * depth;
    const double walls = 2.0 * (width + depth) * height - opening;
    const double area = 2.0 * level + walls + opening;
    const double mean = (level * (kCeiling + kFloor) + walls * kWalls + opening * glass_reflects) / area;
    const double half_walls = (0.5 * width + depth) * height; // Without the wall that holds the opening.
    const double lower = (level * kFloor + half_walls * kWalls) / (level + half_walls);
    const double upper = (level * kCeiling + half_walls * kWalls) / (level + half_walls);
    const double spread = opening / (area * (1.0 - mean));
    thrown_down_ = spread * lower;
    thrown_up_ = spread * upper;
}

LightAtSpot SpotOptics::on(const MeanDay& day) const
{
    return view_.figures().shelter == Shelter::OpenSky ? under_sky(day) : behind_opening(day);
}

LightAtSpot SpotOptics::under_sky(const MeanDay& day) const
{
    const auto& spot = view_.figures();
    const double glass = spot.passes * glass_transmittance_of_sky(spot.panes);
    const auto behind = kBuildingReflectance * radiation_on_wall(day, spot.facing);
    const auto opposite = kBuildingReflectance * light_on_building(spot, day);
    const auto ground = kGroundReflectance * day.global();
    LightAtSpot light{level_.sky * day.diffuse() + level_.building * opposite + level_.ground * behind,
                      facing_.sky * day.diffuse() + facing_.building * opposite + facing_.ground * ground,
                      0.0};
    for (const auto& [sun, beam] : day.steps()) {
        if (view_.sees(sun)) {
            light.sun_hours += day.hours_of_step();
            light.level = light.level + glass * sun.up * beam;
            light.facing = light.facing + glass * std::max(0.0, outlook(sun, spot.facing).out) * beam;
        }
    }
    return light;
}

LightAtSpot SpotOptics::behind_opening(const MeanDay& day) const
{
    const auto& spot = view_.figures();
    const auto building = kBuildingReflectance * light_on_building(spot, day);
    const auto ground = kGroundReflectance * day.global();
    LightAtSpot light{level_.sky * day.diffuse() + level_.building * building,
                      facing_.sky * day.diffuse() + facing_.building * building + facing_.ground * ground,
                      0.0};
    DailyRadiation enters = opening_.sky * day.diffuse() + opening_.building * building;
    for (const auto& [sun, beam] : day.steps()) {
        const auto [out, right, up] = outlook(sun, spot.facing);
        if (out <= 0.0 || up <= out * std::tan(spot.opposite.radians())) {
            continue;
        }
        const double glass =
            spot.passes * glass_transmittance(spot.panes, Angle::from_radians(std::acos(std::min(1.0, out))));
        const double shade = spot.overhang.metres() * up / out / spot.height.metres();
        enters = enters + glass * out * std::max(0.0, 1.0 - shade) * beam;
        if (view_.sees(sun)) {
            light.sun_hours += day.hours_of_step();
            light.level = light.level + glass * up * beam;
            light.facing = light.facing + glass * out * beam;
        }
    }
    const auto inside = thrown_down_ * enters + thrown_up_ * opening_.ground * ground;
    light.level = light.level + inside;
    light.facing = light.facing + inside;
    return light;
}

} // namespace lathhouse::sky
