#include "core/growth/repeatability.h"

#include <cmath>
#include <map>

namespace lathhouse::growth {

std::optional<Repeatability> repeatability_of(SeriesKind kind, std::span<const Measured> measured)
{
    std::map<calendar::Date, std::vector<double>> dates;
    for (const auto& of : measured) {
        dates[of.date].push_back(transformed(kind, of.value));
    }
    double squares = 0.0;
    int freedom = 0;
    for (const auto& [date, values] : dates) {
        double mean = 0.0;
        for (const double value : values) {
            mean += value / static_cast<double>(values.size());
        }
        for (const double value : values) {
            squares += (value - mean) * (value - mean);
        }
        freedom += static_cast<int>(values.size()) - 1;
    }
    if (freedom == 0) {
        return std::nullopt;
    }
    return Repeatability{std::sqrt(squares / freedom), freedom};
}

bool is_real_change(SeriesKind kind, double from, double to, double standard_error)
{
    return std::abs(transformed(kind, to) - transformed(kind, from)) > kRealChange * standard_error;
}

} // namespace lathhouse::growth
