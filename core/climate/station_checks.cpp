#include "core/climate/station_checks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace lathhouse::climate {
namespace {

constexpr int kMostNeighbours = 10;
constexpr int kFewestNeighbours = 4;
constexpr double kFarthestNeighbourKilometres = 400.0;
constexpr double kMostHeightMetres = 600.0;
constexpr double kFarthestForBends = 700.0;
constexpr std::size_t kMostForBends = 8;
constexpr std::size_t kFewestForBends = 3;
constexpr double kMostBendKelvins = 4.5;
constexpr double kLapseKelvinsAMetre = 0.0055;

struct Point {
    std::array<double, 3> on_globe; ///< Unit vector.
    double height_metres;
    double mean_low;
    double mean_high;
    std::array<double, 12> low_bends;
    std::array<double, 12> high_bends;
};

double mean(const Monthly<Celsius>& values)
{
    double sum = 0.0;
    for (const auto value : values) {
        sum += value.degrees();
    }
    return sum / 12.0;
}

/// Each month less the mean of the months before and after it.
std::array<double, 12> bends(const Monthly<Celsius>& values)
{
    std::array<double, 12> bends{};
    for (std::size_t m = 0; m < 12; ++m) {
        bends[m] =
            values[m].degrees() - 0.5 * (values[(m + 11) % 12].degrees() + values[(m + 1) % 12].degrees());
    }
    return bends;
}

Point point_of(const Station& station)
{
    constexpr double kRadians = std::numbers::pi / 180.0;
    const double latitude = station.position.latitude.degrees() * kRadians;
    const double longitude = station.position.longitude.degrees() * kRadians;
    return {{std::cos(latitude) * std::cos(longitude), std::cos(latitude) * std::sin(longitude),
             std::sin(latitude)},
            station.elevation.metres(),
            mean(station.monthly.low),
            mean(station.monthly.high),
            bends(station.monthly.low),
            bends(station.monthly.high)};
}

double kilometres_between(const Point& a, const Point& b)
{
    double square = 0.0;
    for (std::size_t k = 0; k < 3; ++k) {
        square += (a.on_globe[k] - b.on_globe[k]) * (a.on_globe[k] - b.on_globe[k]);
    }
    constexpr double kEarthRadius = 6371.0; // A sphere will do to weigh neighbours.
    return 2.0 * kEarthRadius * std::asin(std::min(1.0, 0.5 * std::sqrt(square)));
}

struct Neighbour {
    double kilometres;
    const Point* point;
};

std::optional<std::string> fault_against(const Point& self, std::span<const Neighbour> neighbours,
                                         double Point::*value, const char* name, double limit,
                                         double scatters)
{
    std::array<double, kMostNeighbours> told{};
    double weights = 0.0;
    double sum = 0.0;
    for (std::size_t k = 0; k < neighbours.size(); ++k) {
        const auto& [kilometres, point] = neighbours[k];
        const double climb = self.height_metres - point->height_metres;
        told[k] = point->*value - kLapseKelvinsAMetre * climb;
        const double weight =
            1.0 / ((1.0 + std::pow(kilometres / 100.0, 2.0)) * (1.0 + std::pow(climb / 300.0, 2.0)));
        weights += weight;
        sum += weight * told[k];
    }
    const double foretold = sum / weights;
    std::vector<double> distances;
    for (std::size_t k = 0; k < neighbours.size(); ++k) {
        distances.push_back(std::fabs(told[k] - foretold));
    }
    std::ranges::nth_element(distances, distances.begin() + static_cast<long>(distances.size() / 2));
    const double scatter = 1.48 * distances[distances.size() / 2];
    const double away = self.*value - foretold;
    if (std::fabs(away) <= limit || std::fabs(away) <= scatters * scatter) {
        return std::nullopt;
    }
    std::array<char, 160> text{};
    std::snprintf(text.data(), text.size(),
                  "mean %s of the year is %.1f C where %zu neighbours let expect %.1f C", name, self.*value,
                  neighbours.size(), foretold);
    return text.data();
}

std::optional<std::string> fault_of_months(const Point& self, std::span<const Neighbour> neighbours,
                                           std::array<double, 12> Point::*values, const char* name)
{
    for (std::size_t m = 0; m < 12; ++m) {
        std::vector<double> theirs;
        for (const auto& neighbour : neighbours) {
            theirs.push_back((neighbour.point->*values)[m]);
        }
        std::ranges::nth_element(theirs, theirs.begin() + static_cast<long>(theirs.size() / 2));
        const double off = (self.*values)[m] - theirs[theirs.size() / 2];
        if (std::fabs(off) > kMostBendKelvins) {
            std::array<char, 160> text{};
            std::snprintf(text.data(), text.size(),
                          "mean %s of month %zu is %.1f K off the months beside it, judged by %zu neighbours",
                          name, m + 1, off, neighbours.size());
            return text.data();
        }
    }
    return std::nullopt;
}

std::vector<std::optional<std::string>> faults_of(const std::vector<Point>& points,
                                                  const std::vector<bool>& ignored)
{
    std::vector<std::optional<std::string>> faults(points.size());
    std::vector<Neighbour> neighbours;
    for (std::size_t i = 0; i < points.size(); ++i) {
        neighbours.clear();
        for (std::size_t j = 0; j < points.size(); ++j) {
            // A cheap test first: 700 km are a chord of 0.11.
            if (j == i || ignored[j] || std::fabs(points[i].on_globe[2] - points[j].on_globe[2]) > 0.111 ||
                std::fabs(points[i].height_metres - points[j].height_metres) > kMostHeightMetres) {
                continue;
            }
            const double kilometres = kilometres_between(points[i], points[j]);
            if (kilometres <= kFarthestForBends) {
                neighbours.push_back({kilometres, &points[j]});
            }
        }
        std::ranges::sort(neighbours, {}, &Neighbour::kilometres);
        const auto far = std::ranges::find_if(neighbours, [](const Neighbour& neighbour) {
            return neighbour.kilometres > kFarthestNeighbourKilometres;
        });
        const auto near_count = std::min(static_cast<std::size_t>(far - neighbours.begin()),
                                         static_cast<std::size_t>(kMostNeighbours));
        const auto near = std::span{neighbours}.first(near_count);
        if (near_count >= kFewestNeighbours) {
            faults[i] = fault_against(points[i], near, &Point::mean_low, "low", 7.0, 4.0);
            if (!faults[i]) {
                faults[i] = fault_against(points[i], near, &Point::mean_high, "high", 9.0, 0.0);
            }
        }
        const auto of_bends = std::span{neighbours}.first(std::min(neighbours.size(), kMostForBends));
        if (!faults[i] && of_bends.size() >= kFewestForBends) {
            faults[i] = fault_of_months(points[i], of_bends, &Point::low_bends, "low");
            if (!faults[i]) {
                faults[i] = fault_of_months(points[i], of_bends, &Point::high_bends, "high");
            }
        }
    }
    return faults;
}

} // namespace

std::optional<std::string> range_fault(const Station& station)
{
    const double height = station.elevation.metres();
    if (!(height >= -430.0 && height <= 6000.0)) {
        return "the height is outside -430 to 6000 m";
    }
    if (station.position.latitude.degrees() == 0.0 && station.position.longitude.degrees() == 0.0) {
        return "the position is 0, 0";
    }
    for (std::size_t m = 0; m < 12; ++m) {
        const double low = station.monthly.low[m].degrees();
        const double high = station.monthly.high[m].degrees();
        const std::string of_month = " of month " + std::to_string(m + 1);
        if (!(low >= -75.0 && low <= 40.0 && high >= -70.0 && high <= 55.0)) {
            return "the mean low or high" + of_month + " is no possible value";
        }
        if (high < low) {
            return "the mean high" + of_month + " is below the mean low";
        }
        if (high - low > 35.0) {
            return "the daily range" + of_month + " is over 35 K";
        }
        for (const auto* spread : {&station.monthly.low_spread, &station.monthly.mean_spread}) {
            if (*spread && !((**spread)[m].kelvins() >= 0.2 && (**spread)[m].kelvins() <= 20.0)) {
                return "the spread" + of_month + " is outside 0.2 to 20 K";
            }
        }
        const auto lowest = station.monthly.lowest[m];
        if (lowest && (*lowest > station.monthly.low[m] || lowest->degrees() < -90.0)) {
            return "the lowest value" + of_month + " is above the mean low or below -90 C";
        }
    }
    return std::nullopt;
}

std::vector<std::optional<std::string>> neighbour_faults(std::span<const Station> stations)
{
    std::vector<Point> points;
    points.reserve(stations.size());
    for (const auto& station : stations) {
        points.push_back(point_of(station));
    }
    const std::vector<bool> none_ignored(stations.size(), false);
    const auto suspects = faults_of(points, none_ignored);
    std::vector<bool> suspected(stations.size());
    std::transform(suspects.begin(), suspects.end(), suspected.begin(),
                   [](const auto& fault) { return fault.has_value(); });
    // A bad neighbour makes good stations look bad: suspects are asked again without each other's word.
    auto faults = faults_of(points, suspected);
    for (std::size_t i = 0; i < faults.size(); ++i) {
        if (!suspected[i]) {
            faults[i].reset();
        }
    }
    return faults;
}

} // namespace lathhouse::climate
