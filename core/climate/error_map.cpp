#include "core/climate/error_map.h"

#include <array>
#include <cmath>

namespace lathhouse::climate {

namespace {

struct ErrorClass {
    double from_kelvins;
    const char* words;
    const char* colour; ///< Light to dark, so that the order holds without colour.
    double width;
};
constexpr std::array kClasses{
    ErrorClass{0.0, "under 0.5 K", "#9ecae1", 3.0}, ErrorClass{0.5, "0.5 to 1 K", "#5aa469", 4.0},
    ErrorClass{1.0, "1 to 2 K", "#d95f0e", 5.5}, ErrorClass{2.0, "2 K and more", "#54123b", 8.0}};
constexpr double kPixelsPerDegree = 4.0;
constexpr double kNorthest = 85.0;
constexpr double kSouthest = -91.0;
constexpr double kMapWidth = 360.0 * kPixelsPerDegree;
constexpr double kMapHeight = (kNorthest - kSouthest) * kPixelsPerDegree;
constexpr double kHeight = kMapHeight + 50.0;

/// Tenths of a pixel as text, without a needless ".0".
std::string pixels(double value)
{
    const long tenths = std::lround(value * 10.0);
    const std::string whole = std::to_string(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + "." + std::to_string(std::abs(tenths % 10));
}

double x_of(double longitude)
{
    return (longitude + 180.0) * kPixelsPerDegree;
}

double y_of(double latitude)
{
    return (kNorthest - latitude) * kPixelsPerDegree;
}

std::string line(double x1, double y1, double x2, double y2)
{
    return "M" + pixels(x1) + " " + pixels(y1) + "L" + pixels(x2) + " " + pixels(y2);
}

std::string text(double x, double y, const std::string& words)
{
    return "<text x=\"" + pixels(x) + "\" y=\"" + pixels(y) + "\">" + words + "</text>\n";
}

} // namespace

std::string error_map_svg(const LeaveOneOut& result)
{
    std::string svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + pixels(kMapWidth) + " " +
                      pixels(kHeight) + "\" font-family=\"sans-serif\" font-size=\"16\">\n" +
                      "<title>Mean absolute error of the mean low at stations left out</title>\n" +
                      "<rect width=\"100%\" height=\"100%\" fill=\"#fbfaf5\"/>\n" +
                      "<path stroke=\"#d8d4c6\" fill=\"none\" d=\"";
    for (int longitude = -180; longitude <= 180; longitude += 30) {
        svg += line(x_of(longitude), 0.0, x_of(longitude), kMapHeight);
    }
    for (int latitude = -90; latitude <= 60; latitude += 30) {
        svg += line(0.0, y_of(latitude), kMapWidth, y_of(latitude));
    }
    svg += "\"/>\n";
    double legend = 20.0;
    for (std::size_t k = 0; k < kClasses.size(); ++k) {
        const double most = k + 1 < kClasses.size() ? kClasses[k + 1].from_kelvins : HUGE_VAL;
        std::string dots;
        int count = 0;
        for (const StationLeftOut& s : result.stations) {
            if (s.low_error.kelvins() >= kClasses[k].from_kelvins && s.low_error.kelvins() < most) {
                const Position& position = s.station->position;
                // A stroke of no length with round ends is a dot.
                dots += "M" + pixels(x_of(position.longitude.degrees())) + " " +
                        pixels(y_of(position.latitude.degrees())) + "h0";
                ++count;
            }
        }
        const std::string stroke = std::string{"<path stroke-linecap=\"round\" stroke=\""} +
                                   kClasses[k].colour + "\" stroke-width=\"" + pixels(kClasses[k].width) +
                                   "\" d=\"";
        svg += stroke + dots + "\"/>\n";
        svg += stroke + "M" + pixels(legend) + " " + pixels(kMapHeight + 25.0) + "h0\"/>\n";
        svg += text(legend + 12.0, kMapHeight + 31.0,
                    std::string{kClasses[k].words} + ": " + std::to_string(count) + " stations");
        legend += 260.0;
    }
    return svg + "</svg>\n";
}

} // namespace lathhouse::climate
