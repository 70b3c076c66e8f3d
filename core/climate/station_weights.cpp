#include "core/climate/station_weights.h"

#include "core/geodesy/geodesic.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

// Fitted by a coarse search on the leave-one-out error of both base periods; the optimum is flat.
constexpr std::size_t kMostStations = 40;
constexpr double kWideRangeKilometres = 700.0; // Of the smooth part, a Matern function of order 3/2.
constexpr double kWideKelvins = 5.0;
constexpr double kNearRangeKilometres = 100.0; // Of the part that neighbours share, exponential.
constexpr double kNearKelvins = 1.0;
constexpr double kOwnKelvins = 1.0;        // Of each station alone: its hollow, its slope, its screen.
constexpr double kMeanKelvins = 20.0;      // The mean is as good as unknown.
constexpr double kLapsePerKilometre = 1.8; // How far the lapse may differ from the usual one.
constexpr double kPolewardPerDegree = 0.6; // How steeply it may cool to the poles.
constexpr double kKilometresPerKilometreUp =
    80.0; // A kilometre of height parts neighbours like this on the flat.
/// In the choice of stations a kilometre of height counts as so many on the flat.
constexpr double kChoiceKilometresUp = 50.0;

struct Site {
    Position position;
    double kilometres_up; ///< Above the place asked for.
    double degrees_north; ///< Of the place asked for.
};

double covariance(const Site& a, const Site& b)
{
    const double distance = geodesy::rough_distance(a.position, b.position).kilometres();
    const double up = kKilometresPerKilometreUp * (a.kilometres_up - b.kilometres_up);
    const double wide = distance / kWideRangeKilometres;
    return kMeanKelvins * kMeanKelvins + kWideKelvins * kWideKelvins * (1.0 + wide) * std::exp(-wide) +
           kNearKelvins * kNearKelvins * std::exp(-std::hypot(distance, up) / kNearRangeKilometres) +
           kLapsePerKilometre * kLapsePerKilometre * a.kilometres_up * b.kilometres_up +
           kPolewardPerDegree * kPolewardPerDegree * a.degrees_north * b.degrees_north;
}

/// Solves A x = b in place, A symmetric and positive definite, given by rows (only the lower half is read).
void solve_by_cholesky(std::vector<std::vector<double>>& a, std::vector<double>& b)
{
    const std::size_t n = b.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = a[i][j];
            for (std::size_t k = 0; k < j; ++k) {
                sum -= a[i][k] * a[j][k];
            }
            a[i][j] = i == j ? std::sqrt(sum) : sum / a[j][j];
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            b[i] -= a[i][k] * b[k];
        }
        b[i] /= a[i][i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            b[i] -= a[k][i] * b[k];
        }
        b[i] /= a[i][i];
    }
}

struct Candidate {
    const Station* station;
    double cost;
};

std::vector<Candidate> nearest(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out)
{
    std::vector<Candidate> candidates;
    candidates.reserve(stations.size());
    for (const Station* station : stations) {
        if (station == leave_out) {
            continue;
        }
        const double up = elevation ? std::abs((station->elevation - *elevation).kilometres()) : 0.0;
        candidates.push_back({station, geodesy::rough_distance(position, station->position).kilometres() +
                                           kChoiceKilometresUp * up});
    }
    const auto count = std::min(kMostStations, candidates.size());
    std::ranges::partial_sort(candidates, candidates.begin() + static_cast<std::ptrdiff_t>(count), {},
                              &Candidate::cost);
    candidates.resize(count);
    return candidates;
}

void set_positive_shares(std::vector<WeightedStation>& stations)
{
    constexpr double kLeastShare = 0.01;
    double sum = 0.0;
    for (const WeightedStation& s : stations) {
        sum += s.share >= kLeastShare ? s.share : 0.0;
    }
    for (WeightedStation& s : stations) {
        s.positive_share = s.share >= kLeastShare ? s.share / sum : 0.0;
    }
}

} // namespace

StationWeights station_weights(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out)
{
    const std::vector<Candidate> candidates = nearest(stations, position, elevation, leave_out);
    if (candidates.empty()) {
        return {{}, 0.0};
    }
    const Site place{position, 0.0, 0.0};
    std::vector<Site> sites;
    for (const Candidate& candidate : candidates) {
        const Station& station = *candidate.station;
        sites.push_back({station.position, elevation ? (station.elevation - *elevation).kilometres() : 0.0,
                         station.position.latitude.degrees() - position.latitude.degrees()});
    }
    const std::size_t n = sites.size();
    std::vector<std::vector<double>> among(n, std::vector<double>(n));
    std::vector<double> to_place(n);
    for (std::size_t i = 0; i < n; ++i) {
        to_place[i] = covariance(sites[i], place);
        for (std::size_t j = 0; j <= i; ++j) {
            among[i][j] = covariance(sites[i], sites[j]);
        }
        among[i][i] += kOwnKelvins * kOwnKelvins;
    }
    std::vector<double> shares = to_place;
    solve_by_cholesky(among, shares);

    double explained = 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        explained += shares[i] * to_place[i];
        sum += shares[i];
    }
    const double variance = covariance(place, place) + kOwnKelvins * kOwnKelvins - explained;
    StationWeights result{{}, std::sqrt(std::max(variance, 0.0))};
    for (std::size_t i = 0; i < n; ++i) {
        const Station& station = *candidates[i].station;
        result.stations.push_back(
            {&station, geodesy::distance(position, station.position), shares[i] / sum, 0.0});
    }
    std::ranges::stable_sort(result.stations, std::greater{}, &WeightedStation::share);
    set_positive_shares(result.stations);
    return result;
}

} // namespace lathhouse::climate
