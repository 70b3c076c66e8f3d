#pragma once

#include "core/calendar/day_of_year.h"
#include "core/climate/daily_records.h"

#include <chrono>
#include <cmath>
#include <numbers>
#include <string>

namespace lathhouse::climate {

/// How an invented record runs.
struct SampleCourse {
    double mean_low = 5.0;    ///< Of the year, degrees.
    double swing = 10.0;      ///< Half the difference of the warmest and the coldest time.
    double range = 10.0;      ///< High less low, mean of the year.
    double range_swing = 0.0; ///< How much more of it there is in the warm season.
    int warmest_month = 7;    ///< Middle of the warm season.
    double weather = 4.0;     ///< Size of a steady quasi-random wobble from day to day.
};

/// An invented record, every day of the years; equal input gives equal days.
inline DailyRecord sample_record(int first_year, int last_year, SampleCourse course = {})
{
    DailyRecord record{"SAMPLE"};
    int serial = 0;
    for (int year = first_year; year <= last_year; ++year) {
        for (int month = 1; month <= 12; ++month) {
            auto& readings = record.month_to_write(year, month);
            const int days = calendar::days_in_month_of_leap_year(month) -
                             (month == 2 && !std::chrono::year{year}.is_leap() ? 1 : 0);
            for (int day = 1; day <= days; ++day, ++serial) {
                const double place = (month - 1) * 30.5 + day - (course.warmest_month - 0.5) * 30.5;
                const double wobble =
                    course.weather * (std::sin(serial * 0.9) + std::sin(serial * 0.37 + 1.0)) / 1.4;
                const double season = std::cos(2.0 * std::numbers::pi * place / 366.0);
                const double low = course.mean_low + course.swing * season + wobble;
                const double high = low + course.range + course.range_swing * season;
                const auto d = static_cast<std::size_t>(day - 1);
                readings.low[d] = *DailyReading::from_tenths(static_cast<int>(std::lround(low * 10.0)));
                readings.high[d] = *DailyReading::from_tenths(static_cast<int>(std::lround(high * 10.0)));
                readings.rain[d] = *DailyReading::from_tenths(day % 3 == 0 ? 60 : 0);
            }
        }
    }
    return record;
}

/// The same with every value changed, as by reading it in a wrong unit.
template <class Change>
DailyRecord changed(DailyRecord record, Change change)
{
    for (int year = record.first_year(); year <= record.last_year(); ++year) {
        for (int month = 1; month <= 12; ++month) {
            auto& readings = record.month_to_write(year, month);
            for (auto* element : {&readings.low, &readings.high}) {
                for (auto& reading : *element) {
                    if (reading.known()) {
                        reading = *DailyReading::from_tenths(
                            static_cast<int>(std::lround(change(reading.tenths() / 10.0) * 10.0)));
                    }
                }
            }
        }
    }
    return record;
}

} // namespace lathhouse::climate
