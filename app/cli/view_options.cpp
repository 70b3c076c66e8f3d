#include "app/cli/view_options.h"

#include "core/base/parse.h"
#include "core/home/spot_light.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace lathhouse::cli {
namespace {

constexpr std::array<const char*, 16> kWinds{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                             "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};

/// "S", "sw", "200".
Result<Angle> facing_of(const std::string& text)
{
    std::string upper = text;
    std::ranges::transform(upper, upper.begin(),
                           [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    const auto found = std::ranges::find(kWinds, upper);
    if (found != kWinds.end()) {
        return Angle::from_degrees(22.5 * static_cast<double>(found - kWinds.begin()));
    }
    const auto degrees = parse_number(text);
    if (!degrees || !(*degrees >= -360.0 && *degrees <= 360.0)) {
        return Error{ErrorCode::WrongUsage,
                     "--facing takes degrees from north through east or a wind such as SW, not '" + text +
                         "'"};
    }
    return Angle::from_degrees(*degrees);
}

} // namespace

void add_view_options(CLI::App& command, ViewOptions& options)
{
    const auto metres = [&](const char* name, std::optional<double>& value, const char* description) {
        command.add_option(name, value, description)->type_name("M");
    };
    command
        .add_option(
            "--kind", options.kind,
            "indoors, open, roofed, screened or glazed (default: a window where it faces somewhere, else "
            "the open)")
        ->type_name("KIND");
    command
        .add_option("--facing", options.facing,
                    "Way the window or porch looks: degrees from north through east, or a wind such as SW")
        ->type_name("DEG");
    metres("--width", options.width, "Width of the glass or opening");
    metres("--height", options.height, "Height of the glass or opening");
    metres("--sill", options.sill, "Lower edge of the glass above the leaves; negative below them");
    metres("--distance", options.distance, "From the glass or opening inward to the leaves");
    metres("--sideways", options.sideways, "Middle of the window to the right of the pot, looking out");
    metres("--overhang", options.overhang, "Depth of a slab or roof above the window");
    command
        .add_option("--opposite", options.opposite,
                    "Height above the horizon of what stands opposite, in degrees")
        ->type_name("DEG");
    command
        .add_option("--behind", options.behind,
                    "In the open: height above the horizon of the wall behind, in degrees")
        ->type_name("DEG");
    command.add_option("--panes", options.panes, "Panes of glass one behind the other")->type_name("N");
    command
        .add_option("--passes", options.passes,
                    "Share that frame, dirt, mesh or a curtain lets through, 0 to 1")
        ->type_name("SHARE");
}

bool has_any(const ViewOptions& options)
{
    return !options.kind.empty() || !options.facing.empty() || options.width || options.height ||
           options.sill || options.distance || options.sideways || options.overhang || options.opposite ||
           options.behind || options.panes || options.passes;
}

Result<NamedView> view_of(const ViewOptions& options)
{
    std::optional<Angle> facing;
    if (!options.facing.empty()) {
        const auto read = facing_of(options.facing);
        if (!read) {
            return read.error();
        }
        facing = *read;
    }
    auto kind = facing ? home::SpotKind::Indoors : home::SpotKind::Open;
    if (!options.kind.empty()) {
        const auto named = home::spot_kind_of(options.kind);
        if (!named) {
            return Error{ErrorCode::WrongUsage,
                         "--kind takes indoors, open, roofed, screened or glazed, not '" + options.kind +
                             "'"};
        }
        kind = *named;
    }
    auto figures = home::usual_view(kind, facing);
    const bool through_opening = figures.shelter == sky::Shelter::Opening;
    if (through_opening && !facing) {
        return Error{
            ErrorCode::WrongUsage,
            "a window or porch needs --facing, degrees from north through east or a wind such as SW"};
    }
    if (!through_opening && (options.width || options.height || options.sill || options.distance ||
                             options.sideways || options.overhang)) {
        return Error{ErrorCode::WrongUsage,
                     "--width, --height, --sill, --distance, --sideways and --overhang "
                     "belong to a window or porch; say --facing or --kind"};
    }
    const auto set_metres = [](Metres& figure, const std::optional<double>& given) {
        figure = given ? Metres::from_metres(*given) : figure;
    };
    const auto set_angle = [](Angle& figure, const std::optional<double>& given) {
        figure = given ? Angle::from_degrees(*given) : figure;
    };
    set_metres(figures.width, options.width);
    set_metres(figures.height, options.height);
    set_metres(figures.sill, options.sill);
    set_metres(figures.distance, options.distance);
    set_metres(figures.sideways, options.sideways);
    set_metres(figures.overhang, options.overhang);
    set_angle(figures.opposite, options.opposite);
    set_angle(figures.behind, options.behind);
    figures.panes = options.panes.value_or(figures.panes);
    figures.passes = options.passes.value_or(figures.passes);
    return sky::SpotView::of(figures).transform([&](const auto& view) { return NamedView{kind, view}; });
}

std::string view_in_words(home::SpotKind kind, const sky::SpotView& view)
{
    const auto& figures = view.figures();
    const double degrees = std::fmod(figures.facing.degrees() + 360.0, 360.0);
    const auto wind = static_cast<std::size_t>(std::lround(degrees / 22.5)) % kWinds.size();
    const std::string facing = " facing " + words::number(degrees, 0) + "° (" + kWinds[wind] + ")";
    switch (kind) {
    case home::SpotKind::Indoors:
        return "behind a window" + facing;
    case home::SpotKind::Roofed:
        return "on a porch" + facing;
    case home::SpotKind::Screened:
        return "on a screened porch" + facing;
    case home::SpotKind::Glazed:
        return "under glass";
    case home::SpotKind::Open:
        break;
    }
    return figures.behind.degrees() > 0.0 ? "in the open before a wall" + facing : "in the open";
}

} // namespace lathhouse::cli
