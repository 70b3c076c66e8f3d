#pragma once

#include "core/climate/neighbour_dates.h"

#include <span>

namespace lathhouse::climate {

/// Mean absolute error of the dates of one kind at stations that are left out, days.
struct DateErrors {
    double from_model;   ///< The model from monthly figures alone.
    double carried;      ///< With the neighbours' own counts.
    double carried_bias; ///< Answer less truth.
    int count;
};

/// Dates of the last and first night at stations with a daily record, each foretold without its own figures.
struct LeaveOutDates {
    int stations;
    std::map<double, DateErrors> last; ///< By percent chance, those of the stations' rows.
    std::map<double, DateErrors> first;
    double expected_from_model; ///< Mean of what the answers say of their error at the middle chance.
    double expected_carried;
};

/// line: one of station_row_lines(). every: 1 for all stations, 2 for every second, ... beginning with the
/// `start`-th; all the others stand for them. Only stations of the source UsDaily with ordinary dates and
/// under 5 % of seasons without such a night. Errors: NoStation where none is left.
Result<LeaveOutDates> leave_out_dates(std::span<const Station> stations, Celsius line, std::size_t every = 1,
                                      std::size_t start = 0);

} // namespace lathhouse::climate
