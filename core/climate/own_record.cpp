#include "core/climate/own_record.h"

#include "core/climate/date_error.h"
#include "core/climate/frost_records.h"
#include "core/climate/normals.h"
#include "core/climate/record_check.h"
#include "core/climate/station_rows.h"
#include "core/climate/whole_number.h"
#include "core/geodesy/geodesic.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::climate {
namespace {

bool has_low(const DailyRecord& record, int year)
{
    for (int month = 1; month <= 12; ++month) {
        const auto* readings = record.month(year, month);
        if (readings != nullptr && std::ranges::any_of(readings->low, &DailyReading::known)) {
            return true;
        }
    }
    return false;
}

/// Mean absolute error to expect of a month's mean low because the years of the record are no other years:
/// from the scatter of the years' own means, 0.8 of a standard deviation as in a normal distribution.
double sampling_error_kelvins(const DailyRecord& days, BasePeriod base)
{
    constexpr int kReadings = 20;
    constexpr double kMeanOfDeviation = 0.8;
    double sum = 0.0;
    for (int month = 1; month <= 12; ++month) {
        double means = 0.0;
        double squares = 0.0;
        int years = 0;
        for (int year = base.first_year; year <= base.last_year; ++year) {
            const auto* readings = days.month(year, month);
            double tenths = 0.0;
            int count = 0;
            for (std::size_t day = 0; readings != nullptr && day < readings->low.size(); ++day) {
                if (readings->low[day].known()) {
                    tenths += readings->low[day].tenths();
                    ++count;
                }
            }
            if (count >= kReadings) {
                const double mean = tenths / count / 10.0;
                means += mean;
                squares += mean * mean;
                ++years;
            }
        }
        if (years >= 2) {
            const double variance = (squares - means * means / years) / (years - 1);
            sum += std::sqrt(std::max(variance, 0.0) / years);
        }
    }
    return kMeanOfDeviation * sum / 12.0;
}

} // namespace

BasePeriod base_of_own(const DailyRecord& record)
{
    constexpr int kNormal = 30;
    int last = record.last_year();
    while (last > record.first_year() && !has_low(record, last)) {
        --last;
    }
    int first = record.first_year();
    while (first < last && !has_low(record, first)) {
        ++first;
    }
    return {std::max(first, last - kNormal + 1), last};
}

Result<DailyRecord> read_record_file(const RecordFile& asked)
{
    const auto own_table = [&asked](const DayTableColumns& columns) {
        return read_day_table(asked.file, columns, asked.units,
                              asked.station.value_or(asked.file.stem().string()));
    };
    if (asked.columns) {
        return own_table(*asked.columns);
    }
    const auto file = DailyFile::open(asked.file);
    if (!file) {
        // A file that is there and has another form is a table of the grower's own.
        return file.error().code == ErrorCode::Malformed ? own_table({}) : file.error();
    }
    if (asked.units == TableUnits::Us) {
        if (file->form() == DailyFile::Form::RowPerDay) {
            return own_table({"DATE", "TMIN", "TMAX", std::nullopt});
        }
        return Error{ErrorCode::WrongUsage,
                     said("%1 is in GHCN-Daily's form, which is always in degrees Celsius; leave out --fahrenheit",
                          asked.file.string())};
    }
    std::vector<DailyRecord> found;
    std::vector<std::string> names;
    const auto read = file->for_each_station([&](const DailyRecord& record) {
        names.push_back(record.station());
        if (found.empty() && (!asked.station || record.station() == *asked.station)) {
            found.push_back(record);
        }
    });
    if (!read) {
        return read.error();
    }
    if (!asked.station && names.size() > 1) {
        return Error{ErrorCode::WrongUsage, said("%1 holds %2 stations; choose one with --station, such as %3",
                                                 asked.file.string(), names.size(), names.front())};
    }
    if (found.empty()) {
        const auto from = asked.file.string();
        const auto wanted = asked.station.value_or("");
        return Error{ErrorCode::NotFound,
                     names.size() > 1 ? said("%1 has no station %2; it has %3 and others", from, wanted, names.front())
                                      : said("%1 has no station %2; it has %3", from, wanted, names.front())};
    }
    return std::move(found.front());
}

Result<OwnStation> station_of(std::shared_ptr<const OwnRecord> record)
{
    auto days = check_record(record->days).record;
    auto normals = normals_of(days, base_of_own(days), station_row_lines());
    if (!normals) {
        return normals.error();
    }
    Station station{.id = record->days.station(),
                    .name = record->name,
                    .country = "",
                    .position = record->position,
                    .elevation = record->elevation,
                    .base = {normals->first_year, normals->last_year},
                    .source = StationSource::Own,
                    .monthly = normals->monthly,
                    .rain = normals->rain,
                    .lowest_of_season = normals->lowest_of_season,
                    .dates = std::move(normals->dates),
                    .persistence = normals->persistence,
                    .completeness = normals->completeness};
    return OwnStation{std::move(record), std::move(days), std::move(station)};
}

Result<PlaceClimate> climate_from_own(const std::shared_ptr<const OwnRecord>& record, Position position,
                                      std::optional<Metres> elevation)
{
    const double kilometres = geodesy::distance(record->position, position).kilometres();
    const double height = elevation ? std::abs((record->elevation - *elevation).metres()) : 0.0;
    if (kilometres > kOwnReachKilometres || height > kOwnReachHeightMetres) {
        return Error{ErrorCode::NoStation, said("the own record %1 was kept %2 km away and %3 m off in height; it "
                                                "speaks for places within %4 km and %5 m",
                                                record->name, whole(kilometres), whole(height),
                                                whole(kOwnReachKilometres), whole(kOwnReachHeightMetres))};
    }
    auto computed = station_of(record);
    if (!computed) {
        return computed.error();
    }
    const auto own = std::make_shared<const OwnStation>(*std::move(computed));
    auto place = climate_among(std::span{&own->station, 1}, position, elevation);
    if (!place) {
        return place.error();
    }
    // The method's own error counts only as far as it grows away from the record; at its place the years
    // tell.
    const auto at_home = climate_among(std::span{&own->station, 1}, record->position, record->elevation);
    const double there = place->expected_error.kelvins();
    const double here = at_home ? at_home->expected_error.kelvins() : 0.0;
    const double away = std::sqrt(std::max(there * there - here * here, 0.0));
    const double error = std::hypot(sampling_error_kelvins(own->days, own->station.base), away);
    place->expected_error = KelvinDelta::from_kelvins(error);
    place->expected_error_days = error_days_of_model(place->monthly, place->expected_error);
    place->expected_error_days_carried = error_days_carried(place->expected_error);
    place->own = own;
    return place;
}

std::optional<std::vector<ThresholdDates>> dates_from_own(const OwnStation& own,
                                                          std::span<const Celsius> lines,
                                                          std::span<const double> further_percents)
{
    FrostQuestion question;
    question.base = base_of_own(own.days);
    question.lines.assign(lines.begin(), lines.end());
    question.percents.insert(question.percents.end(), further_percents.begin(), further_percents.end());
    const auto answer = frost_dates_of(own.days, question);
    if (!answer.thresholds) {
        return std::nullopt;
    }
    const double least = 100.0 / answer.counted_seasons;
    const bool beyond = std::ranges::any_of(
        further_percents, [least](double percent) { return percent < least || percent > 100.0 - least; });
    return beyond ? std::nullopt : answer.thresholds;
}

} // namespace lathhouse::climate
