#include "app/cli/map_svg.h"

#include "app/words/us_units.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::cli {
namespace {

constexpr double kRadius = 400.0; // Of the map's circle, in the picture's units.
constexpr double kMiddle = 430.0; // Of the circle, from the left and from the top below the title.
constexpr double kListLeft = 870.0;
constexpr double kWidth = 1240.0;
constexpr double kHeight = 900.0;
constexpr std::size_t kListed = 26;

std::string tenths(double value)
{
    const long whole = std::lround(value * 10.0);
    return (whole < 0 ? "-" : "") + std::to_string(std::abs(whole) / 10) + '.' +
           std::to_string(std::abs(whole) % 10);
}

/// Text as XML takes it; characters that XML does not know are left out.
std::string escaped(std::string_view text)
{
    std::string safe;
    for (const char byte : text) {
        switch (byte) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        default:
            if (static_cast<unsigned char>(byte) >= 0x20) {
                safe += byte;
            }
        }
    }
    return safe;
}

class Picture {
public:
    Picture(const climate::StationMap& map, words::UnitSystem units) : map_(map), units_(units) {}

    void coast()
    {
        svg_ += "<path class=\"coast\" d=\"";
        for (const auto& line : map_.coast) {
            char step = 'M';
            for (const auto& point : line) {
                svg_ += step + tenths(x(point)) + ' ' + tenths(y(point));
                step = 'L';
            }
        }
        svg_ += "\"/>\n";
    }
    void rings()
    {
        for (const auto ring : rings_of(map_, units_)) {
            const double size = kRadius * (ring / map_.radius);
            svg_ += "<circle class=\"ring\" cx=\"" + tenths(kMiddle) + "\" cy=\"" + tenths(kMiddle) +
                    "\" r=\"" + tenths(size) + "\"/>\n";
            if (size < kRadius - 14.0) {
                text("ringname", kMiddle, kMiddle - size - 4.0, words::distance(ring, units_));
            }
        }
    }
    void towns()
    {
        for (const auto& mark : map_.towns) {
            const double left = x(mark.at);
            const double top = y(mark.at);
            svg_ += "<rect class=\"town\" x=\"" + tenths(left - 2.5) + "\" y=\"" + tenths(top - 2.5) +
                    "\" width=\"5\" height=\"5\"/>\n";
            // Names of the right half run to the left, so that they stay within the circle.
            const bool to_left = runs_to_left(mark.at);
            text(to_left ? "townname left" : "townname", left + (to_left ? -7.0 : 7.0), top + 4.0,
                 mark.town->name);
        }
    }
    void stations()
    {
        std::size_t number = 0;
        for (const auto& mark : map_.stations) {
            ++number;
            const double size = 3.0 + 22.0 * std::sqrt(std::clamp(mark.use.weight, 0.0, 1.0));
            svg_ += "<circle class=\"station\" cx=\"" + tenths(x(mark.at)) + "\" cy=\"" + tenths(y(mark.at)) +
                    "\" r=\"" + tenths(size) + "\"><title>" + escaped(mark.use.station->name) +
                    "</title></circle>\n";
            if (number <= kListed) {
                const bool inside = size > 8.0;
                // Beside small circles, on the side away from where the names of towns run.
                const bool to_left = !runs_to_left(mark.at);
                const double shift = inside ? 0.0 : to_left ? -size - 2.0 : size + 2.0;
                text(inside    ? "number"
                     : to_left ? "number beside left"
                               : "number beside",
                     x(mark.at) + shift, y(mark.at) + 4.0, std::to_string(number));
            }
        }
    }
    void home()
    {
        svg_ += "<path class=\"home\" d=\"M" + tenths(kMiddle - 8.0) + ' ' + tenths(kMiddle) + 'h' + "16M" +
                tenths(kMiddle) + ' ' + tenths(kMiddle - 8.0) + "v16\"/>\n<circle class=\"home\" cx=\"" +
                tenths(kMiddle) + "\" cy=\"" + tenths(kMiddle) + "\" r=\"4\"/>\n";
    }
    void list()
    {
        double top = 80.0;
        text("head", kListLeft, top, "Stations used");
        text("head right", kWidth - 95.0, top, "distance");
        text("head right", kWidth - 20.0, top, "weight");
        std::size_t number = 0;
        for (const auto& mark : map_.stations) {
            if (number == kListed) {
                break;
            }
            ++number;
            top += 27.0;
            text("row right", kListLeft + 18.0, top, std::to_string(number));
            text("row", kListLeft + 28.0, top, shortened(mark.use.station->name));
            text("row right", kWidth - 95.0, top, words::distance(mark.use.distance, units_));
            text("row right", kWidth - 20.0, top, words::number(100.0 * mark.use.weight, 0) + "\u202F%");
        }
        const auto more = map_.stations.size() - number;
        if (more > 0) {
            text("row", kListLeft + 28.0, top += 27.0, std::to_string(more) + " more on the map");
        }
        if (map_.stations_beyond > 0) {
            text("row", kListLeft + 28.0, top += 27.0,
                 std::to_string(map_.stations_beyond) + " more beyond the map");
        }
    }
    /// style: classes of the style sheet; "left" and "right" end at the position.
    void text(const std::string& style, double left, double top, std::string_view content)
    {
        svg_ += "<text class=\"" + style + "\" x=\"" + tenths(left) + "\" y=\"" + tenths(top) + "\">" +
                escaped(content) + "</text>\n";
    }
    void add(std::string_view part) { svg_ += part; }
    std::string take() { return std::move(svg_); }

private:
    bool runs_to_left(geodesy::MapPoint point) const { return x(point) > kMiddle + 0.4 * kRadius; }
    double x(geodesy::MapPoint point) const { return kMiddle + kRadius * (point.east / map_.radius); }
    double y(geodesy::MapPoint point) const { return kMiddle - kRadius * (point.north / map_.radius); }
    /// Station names are plain ASCII in both sources; others may be cut within a letter, so bytes that
    /// continue one are taken along.
    static std::string shortened(const std::string& name)
    {
        constexpr std::size_t kLongest = 19;
        if (name.size() <= kLongest) {
            return name;
        }
        std::size_t end = kLongest;
        while (end < name.size() && (static_cast<unsigned char>(name[end]) & 0xC0U) == 0x80U) {
            ++end;
        }
        return name.substr(0, end) + "\u2026";
    }

    const climate::StationMap& map_;
    words::UnitSystem units_;
    std::string svg_;
};

constexpr std::string_view kStyle =
    "<style>\n"
    "text{font-family:'Open Sans','DejaVu Sans',sans-serif;font-size:14px;fill:#2b2a26}\n"
    ".title{font-size:20px;font-weight:bold}.head{font-weight:bold}.small{font-size:12px;fill:#5b584f}\n"
    ".sea{fill:#fbf8f0;stroke:#8d8672;stroke-width:1.5}\n"
    ".coast{fill:none;stroke:#3f6f8a;stroke-width:1.3;stroke-linejoin:round}\n"
    ".ring{fill:none;stroke:#b9b19b;stroke-width:1;stroke-dasharray:3 5}\n"
    ".ringname{font-size:12px;fill:#5b584f;text-anchor:middle}\n"
    ".town{fill:#5b584f}.townname{font-size:12px;font-style:italic;fill:#5b584f}\n"
    ".station{fill:#c8622a;fill-opacity:.55;stroke:#7c3410;stroke-width:1.2}\n"
    ".number{font-size:12px;font-weight:bold;text-anchor:middle}.beside{text-anchor:start;font-weight:normal}"
    "\n"
    ".home{fill:#1c4f3a;stroke:#1c4f3a;stroke-width:2}\n"
    ".left,.right{text-anchor:end}\n"
    "</style>\n";

} // namespace

std::vector<Metres> rings_of(const climate::StationMap& map, words::UnitSystem units)
{
    return geodesy::ring_radii(map.radius, units.us_measures() ? words::kMetresInAMile : 1000.0);
}

std::string map_svg(const climate::StationMap& map, const std::string& title, const std::string& credits,
                    words::UnitSystem units)
{
    Picture picture{map, units};
    picture.add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
                "viewBox=\"0 0 " +
                tenths(kWidth) + ' ' + tenths(kHeight) +
                "\" width=\"1240\" height=\"900\" role=\"img\">\n<title>" + escaped(title) +
                "</title>\n<desc>Climate stations round the place; distances and directions from its "
                "middle are true.</desc>\n");
    picture.add(kStyle);
    picture.add("<rect width=\"100%\" height=\"100%\" fill=\"#f4efe2\"/>\n<circle class=\"sea\" cx=\"" +
                tenths(kMiddle) + "\" cy=\"" + tenths(kMiddle) + "\" r=\"" + tenths(kRadius) + "\"/>\n");
    picture.coast();
    picture.rings();
    picture.towns();
    picture.stations();
    picture.home();
    picture.text("title", kListLeft, 44.0, title);
    picture.list();
    picture.text("small", 30.0, kHeight - 32.0,
                 "The circle's rim is " + words::distance(map.radius, units) +
                     " away. Distances and directions from the middle are true (azimuthal equidistant). The "
                     "larger a circle, the more its station counts.");
    picture.text("small", 30.0, kHeight - 14.0, credits);
    picture.add("</svg>\n");
    return picture.take();
}

} // namespace lathhouse::cli
