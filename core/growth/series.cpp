#include "core/growth/series.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace lathhouse::growth {
namespace {

constexpr std::array<std::pair<SeriesKind, std::string_view>, 4> kKinds{{{SeriesKind::Size, "size"},
                                                                         {SeriesKind::Count, "count"},
                                                                         {SeriesKind::Share, "share"},
                                                                         {SeriesKind::Yellow, "yellow"}}};
constexpr double kMostShare = 0.98;
constexpr double kLeastShare = 0.02;
constexpr double kLeastYellow = 0.01;
constexpr double kLeafReading = 0.5; // Half a leaf: what a count of whole leaves cannot see.

double logit(double share)
{
    return std::log(share / (1.0 - share));
}

} // namespace

std::string_view to_string(SeriesKind kind)
{
    return std::ranges::find(kKinds, kind, [](const auto& row) { return row.first; })->second;
}

std::optional<SeriesKind> series_kind_of(std::string_view word)
{
    const auto* found = std::ranges::find(kKinds, word, [](const auto& row) { return row.second; });
    return found == kKinds.end() ? std::nullopt : std::optional{found->first};
}

std::optional<std::string_view> fault_of(SeriesKind kind, double value)
{
    switch (kind) {
    case SeriesKind::Size:
        if (!(value > 0.0)) {
            return "a size must be above 0; leave the line out where nothing was measured";
        }
        break;
    case SeriesKind::Count:
        if (!(value >= 0.0)) {
            return "a count cannot be negative";
        }
        break;
    case SeriesKind::Share:
    case SeriesKind::Yellow:
        if (!(value >= 0.0 && value <= 1.0)) {
            return "a share must lie within 0 and 1; write 45 percent as 0.45";
        }
        break;
    }
    return std::isfinite(value) ? std::nullopt : std::optional<std::string_view>{"it is no finite number"};
}

Result<std::vector<Measured>> measured_from(const CsvTable& table, SeriesKind kind)
{
    const auto dates = table.require_column("date");
    if (!dates) {
        return dates.error();
    }
    const auto values = table.require_column("value");
    if (!values) {
        return values.error();
    }
    std::vector<Measured> measured;
    measured.reserve(table.row_count());
    for (std::size_t row = 0; row < table.row_count(); ++row) {
        const auto date = calendar::parse_date(table.at(row, *dates));
        if (!date) {
            return table.error_at(row, Said{date.error()});
        }
        const auto value = table.number(row, *values);
        if (!value) {
            return value.error();
        }
        if (!*value) {
            return table.error_at(row, said("the value is missing; fill it in or leave the line out"));
        }
        if (const auto fault = fault_of(kind, **value)) {
            return table.error_at(row, said("the value is %1; %2", table.at(row, *values), *fault));
        }
        measured.push_back({*date, **value});
    }
    return measured;
}

std::vector<SeriesReading> readings_of(std::vector<Measured> measured)
{
    std::ranges::stable_sort(measured, {}, &Measured::date);
    std::vector<SeriesReading> readings;
    for (std::size_t at = 0; at < measured.size();) {
        double sum = 0.0;
        auto end = at;
        for (; end < measured.size() && measured[end].date == measured[at].date; ++end) {
            sum += measured[end].value;
        }
        readings.push_back({measured[at].date, sum / static_cast<double>(end - at), static_cast<int>(end - at)});
        at = end;
    }
    return readings;
}

double transformed(SeriesKind kind, double value)
{
    switch (kind) {
    case SeriesKind::Size: return std::log(value);
    case SeriesKind::Count: return std::log1p(value);
    case SeriesKind::Share: return logit(std::clamp(value, kLeastShare, kMostShare));
    case SeriesKind::Yellow: return logit(std::clamp(value, kLeastYellow, kMostShare));
    }
    return value;
}

double back_transformed(SeriesKind kind, double scaled)
{
    switch (kind) {
    case SeriesKind::Size: return std::exp(scaled);
    case SeriesKind::Count: return std::expm1(scaled);
    case SeriesKind::Share:
    case SeriesKind::Yellow: return 1.0 / (1.0 + std::exp(-scaled));
    }
    return scaled;
}

double usual_spread(SeriesKind kind)
{
    switch (kind) {
    case SeriesKind::Size: return 0.02;
    case SeriesKind::Count: return 0.03;
    case SeriesKind::Share:
    case SeriesKind::Yellow: return 0.1;
    }
    return 0.02;
}

double spread_ratio(SeriesKind kind, double value)
{
    switch (kind) {
    case SeriesKind::Size: return 1.0;
    case SeriesKind::Count: {
        const double reading = kLeafReading / ((1.0 + value) * usual_spread(kind));
        return std::sqrt(1.0 + reading * reading);
    }
    case SeriesKind::Share: {
        const double share = std::clamp(value, kLeastShare, kMostShare);
        return 1.0 / (4.0 * share * (1.0 - share));
    }
    case SeriesKind::Yellow: {
        const double share = std::clamp(value, 0.03, 0.95);
        return 0.5 + 0.12 / (share * (1.0 - share));
    }
    }
    return 1.0;
}

} // namespace lathhouse::growth
