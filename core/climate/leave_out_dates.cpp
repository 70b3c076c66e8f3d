#include "core/climate/leave_out_dates.h"

#include "core/climate/place_nights.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace lathhouse::climate {

namespace {

constexpr double kMostWithout = 0.05;

using Dates = std::map<double, std::optional<calendar::DayOfYear>>;

void add_errors(std::map<double, DateErrors>& errors, const Dates& truth, const Dates& of_model,
                const Dates& carried)
{
    for (const auto& [percent, day] : truth) {
        const auto model_day = of_model.find(percent);
        const auto carried_day = carried.find(percent);
        if (!day || model_day == of_model.end() || !model_day->second || carried_day == carried.end() ||
            !carried_day->second) {
            continue;
        }
        DateErrors& sum = errors[percent];
        const double off = calendar::short_way(*day, *carried_day->second);
        sum.from_model += std::abs(calendar::short_way(*day, *model_day->second));
        sum.carried += std::abs(off);
        sum.carried_bias += off;
        ++sum.count;
    }
}

void divide(std::map<double, DateErrors>& errors)
{
    for (auto& [percent, sum] : errors) {
        sum.from_model /= sum.count;
        sum.carried /= sum.count;
        sum.carried_bias /= sum.count;
    }
}

} // namespace

Result<LeaveOutDates> leave_out_dates(std::span<const Station> stations, Celsius line, std::size_t every,
                                      std::size_t start)
{
    std::vector<const Station*> chosen;
    for (const Station& station : stations) {
        if (station.source == StationSource::UsDaily) {
            chosen.push_back(&station);
        }
    }
    std::map<std::pair<const Station*, double>, DateResiduals> known;
    const ResidualsOf residuals_of = [&known](const Station& station, Celsius asked) {
        const auto key = std::pair{&station, asked.degrees()};
        const auto found = known.find(key);
        return found != known.end() ? found->second
                                    : known.emplace(key, date_residuals(station, asked)).first->second;
    };
    LeaveOutDates result{};
    for (std::size_t i = start; i < chosen.size(); i += every) {
        const Station& station = *chosen[i];
        const auto truth = std::ranges::find_if(station.dates, [line](const auto& dates) {
            return std::abs((dates.threshold - line).kelvins()) < 0.005;
        });
        if (truth == station.dates.end() || truth->state != ThresholdState::Ordinary ||
            truth->first.share_without.fraction() >= kMostWithout) {
            continue;
        }
        const auto place = climate_among(chosen, station.position, station.elevation, &station);
        if (!place) {
            continue;
        }
        const PlaceNights nights = PlaceNights::of(*place, residuals_of);
        if (nights.dates_from(line) == DatesFrom::Model) {
            continue;
        }
        const ThresholdDates of_model = nights.model().dates(line);
        const ThresholdDates of_neighbours = nights.dates(line);
        add_errors(result.last, truth->last.dates, of_model.last.dates, of_neighbours.last.dates);
        add_errors(result.first, truth->first.dates, of_model.first.dates, of_neighbours.first.dates);
        result.expected_from_model += place->expected_error_days;
        result.expected_carried += place->expected_error_days_carried;
        ++result.stations;
    }
    if (result.stations == 0) {
        return Error{ErrorCode::NoStation,
                     said("no station with dates of that line has neighbours; nothing can be measured")};
    }
    divide(result.last);
    divide(result.first);
    result.expected_from_model /= result.stations;
    result.expected_carried /= result.stations;
    return result;
}

} // namespace lathhouse::climate
