#include "core/climate/station_weights.h"

#include "core/geodesy/geodesic.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {

namespace {

constexpr double kMeanKelvins = 20.0; // The mean is as good as unknown.
constexpr Covariance kDaily{.most_stations = 16,
                            .choice_kilometres_up = 50.0,
                            .wide_range_kilometres = 1700.0,
                            .wide_kelvins = 9.9,
                            .near_range_kilometres = 410.0,
                            .near_kelvins = 0.8,
                            .own_kelvins = 0.67,
                            .lapse_per_kilometre = 1.3,
                            .poleward_per_degree = 1.8,
                            .kilometres_per_kilometre_up = 56.0,
                            .usual_departure = 1.8};
constexpr Covariance kMonthly{.most_stations = 50,
                              .choice_kilometres_up = 100.0,
                              .wide_range_kilometres = 2100.0,
                              .wide_kelvins = 9.9,
                              .near_range_kilometres = 180.0,
                              .near_kelvins = 1.2,
                              .own_kelvins = 0.5,
                              .lapse_per_kilometre = 1.6,
                              .poleward_per_degree = 0.25,
                              .kilometres_per_kilometre_up = 400.0,
                              .usual_departure = 1.8};

struct Site {
    Position position;
    double kilometres_up; ///< Above the place asked for.
    double degrees_north; ///< Of the place asked for.
};

double covariance(const Covariance& fitted, const Site& a, const Site& b)
{
    const double distance = geodesy::rough_distance(a.position, b.position).kilometres();
    const double up = fitted.kilometres_per_kilometre_up * (a.kilometres_up - b.kilometres_up);
    const double wide = distance / fitted.wide_range_kilometres;
    return kMeanKelvins * kMeanKelvins +
           fitted.wide_kelvins * fitted.wide_kelvins * (1.0 + wide) * std::exp(-wide) +
           fitted.near_kelvins * fitted.near_kelvins *
               std::exp(-std::hypot(distance, up) / fitted.near_range_kilometres) +
           fitted.lapse_per_kilometre * fitted.lapse_per_kilometre * a.kilometres_up * b.kilometres_up +
           fitted.poleward_per_degree * fitted.poleward_per_degree * a.degrees_north * b.degrees_north;
}

using Matrix = std::vector<std::vector<double>>;

/// Replaces the lower half of a symmetric positive definite matrix by its Cholesky factor.
void factor(Matrix& a)
{
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = a[i][j];
            for (std::size_t k = 0; k < j; ++k) {
                sum -= a[i][k] * a[j][k];
            }
            a[i][j] = i == j ? std::sqrt(sum) : sum / a[j][j];
        }
    }
}

/// Solves A x = b with the factor of A.
std::vector<double> solve(const Matrix& factor, std::vector<double> b)
{
    const std::size_t n = b.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            b[i] -= factor[i][k] * b[k];
        }
        b[i] /= factor[i][i];
    }
    for (std::size_t i = n; i-- > 0;) {
        for (std::size_t k = i + 1; k < n; ++k) {
            b[i] -= factor[k][i] * b[k];
        }
        b[i] /= factor[i][i];
    }
    return b;
}

/// Diagonal of the inverse, with the factor of the matrix.
std::vector<double> diagonal_of_inverse(const Matrix& factor)
{
    const std::size_t n = factor.size();
    std::vector<double> diagonal(n, 0.0);
    std::vector<double> column(n);
    for (std::size_t c = 0; c < n; ++c) { // Column c of the factor's inverse: zero above c.
        for (std::size_t i = c; i < n; ++i) {
            double sum = i == c ? 1.0 : 0.0;
            for (std::size_t k = c; k < i; ++k) {
                sum -= factor[i][k] * column[k];
            }
            column[i] = sum / factor[i][i];
            diagonal[c] += column[i] * column[i];
        }
    }
    return diagonal;
}

double mean_low(const Station& station)
{
    double sum = 0.0;
    for (const Celsius low : station.monthly.low) {
        sum += low.degrees();
    }
    return sum / 12.0;
}

/// Variance of each station alone, larger where its neighbours foretell another low than it has.
std::vector<double> own_variances(const Covariance& fitted, const Matrix& among,
                                  const std::vector<double>& lows)
{
    const double own = fitted.own_kelvins * fitted.own_kelvins;
    Matrix factored = among;
    for (std::size_t i = 0; i < factored.size(); ++i) {
        factored[i][i] += own;
    }
    factor(factored);
    const std::vector<double> weighted = solve(factored, lows);
    const std::vector<double> inverse = diagonal_of_inverse(factored);
    std::vector<double> variances(lows.size(), own);
    for (std::size_t i = 0; i < lows.size(); ++i) {
        // Its departure from what the others foretell, in units of what is usual: Dubrule (1983).
        const double departure = std::abs(weighted[i]) / std::sqrt(inverse[i]);
        variances[i] *= std::max(1.0, departure / fitted.usual_departure);
    }
    return variances;
}

struct Candidate {
    const Station* station;
    double cost;
};

std::vector<Candidate> nearest(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out,
                               const Covariance& fitted)
{
    std::vector<Candidate> candidates;
    candidates.reserve(stations.size());
    for (const Station* station : stations) {
        if (station == leave_out) {
            continue;
        }
        const double up = elevation ? std::abs((station->elevation - *elevation).kilometres()) : 0.0;
        candidates.push_back({station, geodesy::rough_distance(position, station->position).kilometres() +
                                           fitted.choice_kilometres_up * up});
    }
    const auto count = std::min(fitted.most_stations, candidates.size());
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

const Covariance& covariance_of(StationSource source)
{
    return source == StationSource::WorldMonthly ? kMonthly : kDaily;
}

StationWeights station_weights(std::span<const Station* const> stations, Position position,
                               std::optional<Metres> elevation, const Station* leave_out,
                               std::optional<Covariance> given)
{
    if (stations.empty()) {
        return {{}, 0.0};
    }
    const Covariance& fitted = given ? *given : covariance_of(stations.front()->source);
    const std::vector<Candidate> candidates = nearest(stations, position, elevation, leave_out, fitted);
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
    Matrix among(n, std::vector<double>(n));
    std::vector<double> to_place(n);
    std::vector<double> lows(n);
    for (std::size_t i = 0; i < n; ++i) {
        to_place[i] = covariance(fitted, sites[i], place);
        lows[i] = mean_low(*candidates[i].station) + Lapse::kLowPerKilometre * sites[i].kilometres_up;
        for (std::size_t j = 0; j <= i; ++j) {
            among[i][j] = covariance(fitted, sites[i], sites[j]);
        }
    }
    const double centre = lows.front(); // The mean is as good as unknown, but not of any size.
    for (double& low : lows) {
        low -= centre;
    }
    const std::vector<double> own = own_variances(fitted, among, lows);
    for (std::size_t i = 0; i < n; ++i) {
        among[i][i] += own[i];
    }
    factor(among);
    const std::vector<double> shares = solve(among, to_place);
    std::vector<double> slope(n);
    for (std::size_t i = 0; i < n; ++i) {
        slope[i] = fitted.lapse_per_kilometre * fitted.lapse_per_kilometre * sites[i].kilometres_up;
    }
    const std::vector<double> lapse_shares = solve(among, std::move(slope));

    double explained = 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        explained += shares[i] * to_place[i];
        sum += shares[i];
    }
    const double variance =
        covariance(fitted, place, place) + fitted.own_kelvins * fitted.own_kelvins - explained;
    StationWeights result{{}, std::sqrt(std::max(variance, 0.0))};
    for (std::size_t i = 0; i < n; ++i) {
        const Station& station = *candidates[i].station;
        result.stations.push_back(
            {&station, geodesy::distance(position, station.position), shares[i] / sum, 0.0, lapse_shares[i]});
    }
    std::ranges::stable_sort(result.stations, std::greater{}, &WeightedStation::share);
    set_positive_shares(result.stations);
    return result;
}

} // namespace lathhouse::climate
