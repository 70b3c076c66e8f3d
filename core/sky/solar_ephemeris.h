#pragma once

#include "core/calendar/date.h"
#include "core/units/angle.h"

#include <vector>

namespace lathhouse::sky {

/// The Sun's place over a span of dates, computed once and good for every place on Earth.
///
/// At 0h UTC of each day the apparent place is evaluated; between, a cubic through the four nearest days
/// stands for it. Accuracy: the cubic adds less than 0.01".
class SolarEphemeris {
public:
    /// first, last: dates that may be asked for at any longitude; two days on either side are held besides.
    /// Precondition: first <= last.
    SolarEphemeris(calendar::Date first, calendar::Date last);

    calendar::Date first() const { return first_; }
    calendar::Date last() const { return last_; }

    /// Days (of 86,400 s) from the ephemeris' own start, a 0h UTC, to the instant.
    double days_at(calendar::Instant instant) const;
    /// Days from the start to 0h UTC of the date.
    double days_at(calendar::Date date) const;
    /// The nearest whole second.
    calendar::Instant instant_at(double days) const;

    /// Smooth part of the Greenwich hour angle in radians: hour angle = 2 pi days - pi + this. It is the
    /// equation of time. Precondition: days within the span.
    double equation_of_time(double days) const
    {
        double step;
        const auto& piece = piece_at(days, step);
        return piece.equation[0] +
               step * (piece.equation[1] + step * (piece.equation[2] + step * piece.equation[3]));
    }
    /// Sine of the Sun's apparent declination. Precondition: days within the span.
    double sine_declination(double days) const
    {
        double step;
        const auto& piece = piece_at(days, step);
        return piece.sine[0] + step * (piece.sine[1] + step * (piece.sine[2] + step * piece.sine[3]));
    }
    /// The days between which the two functions above may be asked.
    double earliest() const { return 0.0; }
    double latest() const { return static_cast<double>(pieces_.size()); }

private:
    /// Cubics in the days since 0h UTC of one date.
    struct Piece {
        double equation[4];
        double sine[4];
    };
    const Piece& piece_at(double days, double& step) const
    {
        auto index = static_cast<std::ptrdiff_t>(days);
        const auto end = static_cast<std::ptrdiff_t>(pieces_.size());
        index = index < 0 ? 0 : (index >= end ? end - 1 : index);
        step = days - static_cast<double>(index);
        return pieces_[static_cast<std::size_t>(index)];
    }

    calendar::Date first_;
    calendar::Date last_;
    calendar::Instant start_;
    std::vector<Piece> pieces_;
};

} // namespace lathhouse::sky
