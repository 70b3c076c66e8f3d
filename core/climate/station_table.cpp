#include "core/climate/station_table.h"

#include "core/base/csv.h"
#include "core/base/packed.h"
#include "core/base/packed_head.h"
#include "core/base/shipped_file.h"
#include "core/climate/station_rows.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>

namespace lathhouse::climate {
namespace {

constexpr PackedKind kPackedStations{"LHSTATN\n", 2};
/// A value that does not exist.
constexpr std::int32_t kNone = std::numeric_limits<std::int32_t>::min();
constexpr std::int16_t kShortNone = std::numeric_limits<std::int16_t>::min();

/// Figures as whole numbers of a fraction of their unit.
class StationPacker : public Packer {
public:
    /// In 1/scale of the unit.
    void scaled(std::optional<double> value, double scale)
    {
        integer(value ? static_cast<std::int32_t>(std::lround(*value * scale)) : kNone);
    }
    void short_scaled(std::optional<double> value, double scale)
    {
        integer(value ? static_cast<std::int16_t>(std::lround(*value * scale)) : kShortNone);
    }
};

/// Reads what StationPacker wrote.
class StationUnpacker : public Unpacker {
public:
    using Unpacker::Unpacker;
    std::optional<double> scaled(double scale)
    {
        const auto value = integer<std::int32_t>();
        return value == kNone ? std::nullopt : std::optional{value / scale};
    }
    std::optional<double> short_scaled(double scale)
    {
        const auto value = integer<std::int16_t>();
        return value == kShortNone ? std::nullopt : std::optional{value / scale};
    }
    double need(std::optional<double> value)
    {
        if (!value) {
            refuse();
        }
        return value.value_or(0.0);
    }
};

void pack_dates(StationPacker& packer, const ThresholdDates& dates)
{
    packer.scaled(dates.threshold.degrees(), 100.0);
    packer.integer(static_cast<std::uint8_t>(dates.state));
    packer.scaled(dates.nights_per_year, 10.0);
    packer.scaled(dates.first.share_without.fraction(), 1e4);
    packer.integer(static_cast<std::int16_t>(dates.first.years.value_or(-1)));
    for (const double percent : station_row_percents()) {
        for (const auto* ends : {&dates.last, &dates.first}) {
            const auto found = ends->dates.find(percent);
            const bool there = found != ends->dates.end() && found->second;
            packer.integer(static_cast<std::int16_t>(there ? found->second->place() : 0));
        }
        const auto found = dates.free_days.find(percent);
        const bool there = found != dates.free_days.end() && found->second;
        packer.integer(static_cast<std::int16_t>(there ? *found->second : -1));
    }
}

ThresholdDates unpack_dates(StationUnpacker& unpacker)
{
    const auto line = Celsius::from_degrees(unpacker.need(unpacker.scaled(100.0)));
    const auto state = unpacker.integer<std::uint8_t>();
    if (state > static_cast<std::uint8_t>(ThresholdState::NoSeason)) {
        unpacker.refuse();
    }
    const double nights = unpacker.need(unpacker.scaled(10.0));
    const auto without = Probability::clamped(unpacker.need(unpacker.scaled(1e4)));
    const int seasons = unpacker.integer<std::int16_t>();
    const auto years = seasons >= 0 ? std::optional{seasons} : std::nullopt;
    ThresholdDates dates{
        line, static_cast<ThresholdState>(state), nights, {years, without, {}}, {years, without, {}}, {}};
    for (const double percent : station_row_percents()) {
        for (auto* ends : {&dates.last, &dates.first}) {
            const int place = unpacker.integer<std::int16_t>();
            auto& date = ends->dates.emplace_hint(ends->dates.end(), percent, std::nullopt)->second;
            if (place != 0) {
                if (const auto day = calendar::DayOfYear::from_place(place)) {
                    date = *day;
                } else {
                    unpacker.refuse();
                }
            }
        }
        const int days = unpacker.integer<std::int16_t>();
        auto& free = dates.free_days.emplace_hint(dates.free_days.end(), percent, std::nullopt)->second;
        if (days >= 0) {
            free = days;
        }
    }
    return dates;
}

void pack_station(StationPacker& packer, const Station& station)
{
    packer.text(station.id);
    packer.text(station.name);
    packer.text(station.country);
    packer.scaled(station.position.latitude.degrees(), 1e4);
    packer.scaled(station.position.longitude.degrees(), 1e4);
    packer.scaled(station.elevation.metres(), 10.0);
    packer.integer(static_cast<std::int16_t>(station.base.first_year));
    packer.integer(static_cast<std::int16_t>(station.base.last_year));
    packer.integer(static_cast<std::uint8_t>(station.source));
    packer.scaled(station.monthly.reading_step.kelvins(), 1e4);
    packer.integer(static_cast<std::int16_t>(station.monthly.years.value_or(-1)));
    const auto& monthly = station.monthly;
    packer.integer(static_cast<std::uint8_t>((monthly.low_spread ? 1 : 0) | (monthly.mean_spread ? 2 : 0)));
    for (std::size_t m = 0; m < 12; ++m) {
        packer.short_scaled(monthly.low[m].degrees(), 100.0);
        packer.short_scaled(monthly.high[m].degrees(), 100.0);
        if (monthly.low_spread) {
            packer.short_scaled((*monthly.low_spread)[m].kelvins(), 100.0);
        }
        if (monthly.mean_spread) {
            packer.short_scaled((*monthly.mean_spread)[m].kelvins(), 100.0);
        }
        packer.scaled(station.rain[m] ? std::optional{station.rain[m]->millimetres()} : std::nullopt, 10.0);
        packer.short_scaled(monthly.lowest[m] ? std::optional{monthly.lowest[m]->degrees()} : std::nullopt,
                            100.0);
        packer.short_scaled(monthly.frost_days[m], 100.0);
    }
    packer.scaled(station.persistence, 1e3);
    packer.scaled(station.trend ? std::optional{station.trend->kelvins_per_decade} : std::nullopt, 1e3);
    packer.scaled(station.trend ? std::optional{station.trend->standard_error} : std::nullopt, 1e3);
    packer.scaled(station.completeness ? std::optional{station.completeness->fraction()} : std::nullopt, 1e3);
    packer.scaled(
        station.lowest_of_season ? std::optional{station.lowest_of_season->degrees()} : std::nullopt, 100.0);
    packer.integer(static_cast<std::uint8_t>(station.dates.size()));
    for (const auto& dates : station.dates) {
        pack_dates(packer, dates);
    }
}

std::optional<Station> unpack_station(StationUnpacker& unpacker)
{
    std::string id{unpacker.text()};
    std::string name{unpacker.text()};
    std::string country{unpacker.text()};
    const auto latitude = Latitude::from_degrees(unpacker.need(unpacker.scaled(1e4)));
    const auto longitude = Longitude::from_degrees(unpacker.need(unpacker.scaled(1e4)));
    const auto elevation = Metres::from_metres(unpacker.need(unpacker.scaled(10.0)));
    const int first_year = unpacker.integer<std::int16_t>();
    const int last_year = unpacker.integer<std::int16_t>();
    const auto source = unpacker.integer<std::uint8_t>();
    if (!latitude || !longitude || source > static_cast<std::uint8_t>(StationSource::Own)) {
        return std::nullopt;
    }
    const auto step = KelvinDelta::from_kelvins(unpacker.need(unpacker.scaled(1e4)));
    const int years = unpacker.integer<std::int16_t>();
    const auto spreads = unpacker.integer<std::uint8_t>();

    const auto no_spread = in_every_month(KelvinDelta::from_kelvins(0.0));
    MonthlyFigures monthly{.low = in_every_month(Celsius::from_degrees(0.0)),
                           .high = in_every_month(Celsius::from_degrees(0.0)),
                           .low_spread = std::nullopt,
                           .mean_spread = std::nullopt,
                           .years = years >= 0 ? std::optional{years} : std::nullopt,
                           .reading_step = step};
    if ((spreads & 1U) != 0) {
        monthly.low_spread = no_spread;
    }
    if ((spreads & 2U) != 0) {
        monthly.mean_spread = no_spread;
    }
    Monthly<std::optional<Millimetres>> rain{};
    for (std::size_t m = 0; m < 12; ++m) {
        monthly.low[m] = Celsius::from_degrees(unpacker.need(unpacker.short_scaled(100.0)));
        monthly.high[m] = Celsius::from_degrees(unpacker.need(unpacker.short_scaled(100.0)));
        if (monthly.low_spread) {
            (*monthly.low_spread)[m] = KelvinDelta::from_kelvins(unpacker.need(unpacker.short_scaled(100.0)));
        }
        if (monthly.mean_spread) {
            (*monthly.mean_spread)[m] =
                KelvinDelta::from_kelvins(unpacker.need(unpacker.short_scaled(100.0)));
        }
        if (const auto value = unpacker.scaled(10.0)) {
            rain[m] = Millimetres::from_millimetres(*value);
        }
        if (const auto value = unpacker.short_scaled(100.0)) {
            monthly.lowest[m] = Celsius::from_degrees(*value);
        }
        monthly.frost_days[m] = unpacker.short_scaled(100.0);
    }
    Station station{.id = std::move(id),
                    .name = std::move(name),
                    .country = std::move(country),
                    .position = {*latitude, *longitude},
                    .elevation = elevation,
                    .base = {first_year, last_year},
                    .source = static_cast<StationSource>(source),
                    .monthly = monthly,
                    .rain = rain,
                    .lowest_of_season = std::nullopt,
                    .dates = {}};
    station.persistence = unpacker.scaled(1e3);
    const auto trend = unpacker.scaled(1e3);
    const auto trend_error = unpacker.scaled(1e3);
    if (trend && trend_error) {
        station.trend = LowTrend{*trend, *trend_error};
    }
    if (const auto value = unpacker.scaled(1e3)) {
        station.completeness = Probability::clamped(*value);
    }
    if (const auto value = unpacker.scaled(100.0)) {
        station.lowest_of_season = Celsius::from_degrees(*value);
    }
    const std::size_t lines = unpacker.integer<std::uint8_t>();
    station.dates.reserve(lines);
    for (std::size_t k = 0; k < lines && unpacker.good(); ++k) {
        station.dates.push_back(unpack_dates(unpacker));
    }
    return station;
}

Error damaged(std::string_view name)
{
    return Error{ErrorCode::Damaged, said("%1 is damaged or no packed station table; build or install it again", name)};
}

} // namespace

std::string pack_stations(std::span<const Station> stations)
{
    StationPacker rows;
    rows.integer(static_cast<std::uint32_t>(stations.size()));
    for (const auto& station : stations) {
        pack_station(rows, station);
    }
    return with_packed_head(kPackedStations, rows.bytes());
}

Result<StationTable> StationTable::unpack(std::string_view bytes, std::string_view name)
{
    const auto rows = packed_body(kPackedStations, bytes, name, damaged(name));
    if (!rows) {
        return rows.error();
    }
    StationUnpacker unpacker{*rows};
    const std::size_t count = unpacker.integer<std::uint32_t>();
    StationTable table;
    table.stations_.reserve(std::min(count, rows->size()));
    for (std::size_t i = 0; i < count; ++i) {
        auto station = unpack_station(unpacker);
        if (!station || !unpacker.good()) {
            return damaged(name);
        }
        table.stations_.push_back(*std::move(station));
    }
    if (!unpacker.at_end()) {
        return damaged(name);
    }
    return table;
}

Result<StationTable> StationTable::load(const std::filesystem::path& packed_file)
{
    const auto bytes = read_text_file(packed_file);
    if (!bytes) {
        return bytes.error();
    }
    return unpack(*bytes, packed_file.string());
}

StationTable StationTable::of(std::vector<Station> stations)
{
    StationTable table;
    table.stations_ = std::move(stations);
    return table;
}

Result<std::filesystem::path> StationTable::find()
{
    return find_shipped_file("stations.bin", "LATHHOUSE_STATIONS", "the station table");
}

const Station* StationTable::by_id(std::string_view id) const
{
    const auto found = std::ranges::find(stations_, id, &Station::id);
    return found == stations_.end() ? nullptr : &*found;
}

} // namespace lathhouse::climate
