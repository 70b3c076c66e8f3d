#include "core/climate/error_map.h"

#include "tests/climate/shipped_stations.h"

#include <gmock/gmock.h>

#include <array>
#include <cmath>
#include <span>
#include <string>

namespace lathhouse::climate {
namespace {

using testing::HasSubstr;

/// Stations left out with those errors in their mean low.
LeaveOneOut with_errors(std::span<const double> errors)
{
    const auto none = KelvinDelta::from_kelvins(0.0);
    const auto here = Metres::from_metres(0.0);
    LeaveOneOut result{{}, static_cast<int>(errors.size()), none, none, none, none};
    for (std::size_t at = 0; at < errors.size(); ++at) {
        result.stations.push_back(
            {&shipped().at(at), {0.0, here, here, here}, KelvinDelta::from_kelvins(errors[at]), none, none, none});
    }
    return result;
}

std::size_t count_of(const std::string& text, const std::string& piece)
{
    std::size_t count = 0;
    for (auto at = text.find(piece); at != std::string::npos; at = text.find(piece, at + 1)) {
        ++count;
    }
    return count;
}

TEST(ErrorMap, HasADotAStationInTheClassOfItsError)
{
    const std::array errors{0.0, 0.49, 0.5, 1.0, 1.5, 1.99, 2.0, 70.0};
    const auto svg = error_map_svg(with_errors(errors));
    EXPECT_THAT(svg, HasSubstr("under 0.5 K: 2 stations"));
    EXPECT_THAT(svg, HasSubstr("0.5 to 1 K: 1 stations"));
    EXPECT_THAT(svg, HasSubstr("1 to 2 K: 3 stations"));
    EXPECT_THAT(svg, HasSubstr("2 K and more: 2 stations"));
    EXPECT_EQ(count_of(svg, "h0"), errors.size() + 4); // And one a class in the legend.
    EXPECT_TRUE(svg.starts_with("<svg ") && svg.ends_with("</svg>\n"));
}

TEST(ErrorMap, PutsAStationWhereItLies)
{
    const auto svg = error_map_svg(with_errors(std::array{0.1}));
    const auto& at = shipped().front().position;
    // 4 pixels a degree from 180 degrees west and 85 degrees north, to a tenth.
    const auto pixels = [](double value) {
        const long tenths = std::lround(value * 10.0);
        return std::to_string(tenths / 10) + (tenths % 10 == 0 ? "" : "." + std::to_string(tenths % 10));
    };
    EXPECT_THAT(svg, HasSubstr("M" + pixels((at.longitude.degrees() + 180.0) * 4.0) + " " +
                               pixels((85.0 - at.latitude.degrees()) * 4.0) + "h0"));
}

TEST(ErrorMap, OfNoStationsIsEmpty)
{
    EXPECT_THAT(error_map_svg(with_errors({})), HasSubstr("under 0.5 K: 0 stations"));
}

} // namespace
} // namespace lathhouse::climate
