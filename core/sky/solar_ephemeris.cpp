#include "core/sky/solar_ephemeris.h"

#include "core/sky/apparent_sun.h"

#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace lathhouse::sky {
namespace {
/// Days kept on either side: a solar day of a date reaches 12 h past it at either end of the longitudes and
/// half a day more to its far midnight; a civil date of a zone that suits no longitude there, as much again.
constexpr int kMarginDays = 2;

struct Node {
    double equation, sine;
};

Node node_at(double days_since_2000) // Days since 2000 January 1.5 UTC.
{
    const auto sun = apparent_sun((days_since_2000 + kTerrestrialLessUtcSeconds / 86400.0) / 36525.0);
    const double hour_angle = mean_sidereal_time(days_since_2000).radians() +
                              sun.nutation_in_longitude.radians() * std::cos(sun.true_obliquity.radians()) -
                              sun.right_ascension.radians();
    return {std::remainder(hour_angle + std::numbers::pi, 2.0 * std::numbers::pi),
            std::sin(sun.declination.radians())};
}

/// The cubic through values at -1, 0, 1 and 2, in powers of the step from 0.
void through(double before, double start, double end, double after, double (&cubic)[4])
{
    cubic[0] = start;
    cubic[1] = end - before / 3.0 - start / 2.0 - after / 6.0;
    cubic[2] = (before + end) / 2.0 - start;
    cubic[3] = (after - before) / 6.0 + (start - end) / 2.0;
}
} // namespace

SolarEphemeris::SolarEphemeris(calendar::Date first, calendar::Date last)
    : first_(first), last_(last), start_(calendar::start_of_day_utc(first) - std::chrono::days{kMarginDays})
{
    assert(first <= last);
    const int count = calendar::days_between(first, last) + 1 + 2 * kMarginDays;
    const double start = calendar::days_between(calendar::Date{2000, 1, 1}, first) - kMarginDays - 0.5;
    std::array<Node, 4> window{};
    for (int i = 0; i < 3; ++i) {
        window[static_cast<std::size_t>(i) + 1] = node_at(start + i - 1);
    }
    pieces_.resize(static_cast<std::size_t>(count));
    for (int day = 0; day < count; ++day) {
        window = {window[1], window[2], window[3], node_at(start + day + 2)};
        auto& piece = pieces_[static_cast<std::size_t>(day)];
        through(window[0].equation, window[1].equation, window[2].equation, window[3].equation,
                piece.equation);
        through(window[0].sine, window[1].sine, window[2].sine, window[3].sine, piece.sine);
    }
}

double SolarEphemeris::days_at(calendar::Instant instant) const
{
    return static_cast<double>((instant - start_).count()) / 86400.0;
}

double SolarEphemeris::days_at(calendar::Date date) const
{
    return calendar::days_between(first_, date) + kMarginDays;
}

calendar::Instant SolarEphemeris::instant_at(double days) const
{
    return start_ + std::chrono::seconds{std::llround(days * 86400.0)};
}

} // namespace lathhouse::sky
