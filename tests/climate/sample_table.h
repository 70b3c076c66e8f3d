#pragma once

#include "tests/climate/sample_record.h"

#include <cstdio>
#include <string>

namespace lathhouse::climate {

/// A grower's own table of an invented record near the demonstration household's place: lows about 5.5 C in the year,
/// swinging by 10 K. Columns Day, Min, Max, Rain.
inline std::string sample_table(int first_year, int last_year, bool fahrenheit = false,
                                SampleCourse course = {.mean_low = 5.5, .range = 9.8, .range_swing = 3.4, .weather = 5.0})
{
    const auto record = sample_record(first_year, last_year, course);
    std::string text = "Day,Min,Max,Rain\n";
    for (int year = first_year; year <= last_year; ++year) {
        for (int month = 1; month <= 12; ++month) {
            const auto* readings = record.month(year, month);
            for (std::size_t d = 0; d < 31; ++d) {
                if (!readings->low[d].known()) {
                    continue;
                }
                const auto shown = [fahrenheit](DailyReading reading) {
                    const double celsius = reading.tenths() / 10.0;
                    return fahrenheit ? celsius * 1.8 + 32.0 : celsius;
                };
                char line[64];
                std::snprintf(line, sizeof line, "%04d-%02d-%02zu,%.1f,%.1f,\n", year, month, d + 1,
                              shown(readings->low[d]), shown(readings->high[d]));
                text += line;
            }
        }
    }
    return text;
}

} // namespace lathhouse::climate
