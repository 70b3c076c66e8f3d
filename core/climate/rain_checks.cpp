#include "core/climate/rain_checks.h"

#include "core/climate/whole_number.h"
#include "core/geodesy/geodesic.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace lathhouse::climate {

namespace {

constexpr double kWettestYear = 11'873.0;
constexpr double kWetYear = 5'000.0;
constexpr double kTimesWettestYear = 2.5;
constexpr double kYearKilometres = 400.0;
constexpr double kMonthKilometres = 700.0;
constexpr std::size_t kMostGauges = 10;
constexpr std::size_t kFewestGauges = 4;
constexpr double kDryMillimetres = 30.0;
constexpr double kLeastRatio = 1.5;
constexpr double kTimesOwnRatio = 3.0;

struct Gauge {
    const Station* station;
    double kilometres;
};

std::vector<Gauge> neighbours_of(std::span<const Station> stations, const Station& self)
{
    std::vector<Gauge> found;
    for (const Station& other : stations) {
        if (&other == &self) {
            continue;
        }
        const double kilometres = geodesy::rough_distance(self.position, other.position).kilometres();
        if (kilometres < kMonthKilometres) {
            found.push_back({&other, kilometres});
        }
    }
    const auto count = std::min(kMostGauges, found.size());
    std::ranges::partial_sort(found, found.begin() + static_cast<std::ptrdiff_t>(count), {},
                              &Gauge::kilometres);
    found.resize(count);
    return found;
}

std::optional<double> year_of(const Station& station)
{
    double sum = 0.0;
    for (const auto& rain : station.rain) {
        if (!rain) {
            return std::nullopt;
        }
        sum += rain->millimetres();
    }
    return sum;
}

std::optional<std::string> year_fault(const Station& self, std::span<const Gauge> neighbours)
{
    const auto year = year_of(self);
    if (!year) {
        return std::nullopt;
    }
    if (*year > kWettestYear) {
        return "rain alone is left out: " + whole(*year) +
               " mm a year, more than the wettest place known has";
    }
    double wettest = 0.0;
    std::size_t count = 0;
    for (const Gauge& neighbour : neighbours) {
        const auto there = year_of(*neighbour.station);
        if (there && neighbour.kilometres < kYearKilometres) {
            wettest = std::max(wettest, *there);
            ++count;
        }
    }
    if (count >= kFewestGauges && *year > kWetYear && *year > kTimesWettestYear * wettest) {
        return "rain alone is left out: " + whole(*year) + " mm a year where the wettest of " +
               std::to_string(count) + " neighbours has " + whole(wettest) + " mm";
    }
    return std::nullopt;
}

std::optional<double> ratio_to_wettest(const Station& self, std::span<const Gauge> neighbours,
                                       std::size_t month)
{
    double wettest = 0.0;
    std::size_t count = 0;
    for (const Gauge& neighbour : neighbours) {
        if (const auto& rain = neighbour.station->rain[month]) {
            wettest = std::max(wettest, rain->millimetres());
            ++count;
        }
    }
    if (count < kFewestGauges || !self.rain[month]) {
        return std::nullopt;
    }
    return (self.rain[month]->millimetres() + kDryMillimetres) / (wettest + kDryMillimetres);
}

} // namespace

std::vector<RainFault> rain_faults(std::span<const Station> stations)
{
    std::vector<RainFault> faults;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const Station& self = stations[i];
        if (self.source != StationSource::WorldMonthly) {
            continue;
        }
        const auto neighbours = neighbours_of(stations, self);
        if (auto reason = year_fault(self, neighbours)) {
            RainFault fault{i, {}, *std::move(reason)};
            fault.months.fill(true);
            faults.push_back(std::move(fault));
            continue;
        }
        Monthly<std::optional<double>> ratios{};
        std::vector<double> known;
        for (std::size_t m = 0; m < 12; ++m) {
            ratios[m] = ratio_to_wettest(self, neighbours, m);
            if (ratios[m]) {
                known.push_back(*ratios[m]);
            }
        }
        if (known.size() < 6) {
            continue; // Too few months to say what is usual here.
        }
        std::ranges::nth_element(known, known.begin() + static_cast<std::ptrdiff_t>(known.size() / 2));
        const double usual = known[known.size() / 2];
        RainFault fault{i, {}, ""};
        for (std::size_t m = 0; m < 12; ++m) {
            if (ratios[m] && *ratios[m] > kLeastRatio && *ratios[m] > kTimesOwnRatio * usual) {
                fault.months[m] = true;
                fault.reason += (fault.reason.empty() ? "rain alone is left out: month " : ", month ") +
                                std::to_string(m + 1) + " has " + whole(self.rain[m]->millimetres()) + " mm";
            }
        }
        if (!fault.reason.empty()) {
            fault.reason += ", out of keeping with its neighbours";
            faults.push_back(std::move(fault));
        }
    }
    return faults;
}

} // namespace lathhouse::climate
