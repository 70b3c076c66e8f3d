#include "core/climate/place_nights.h"

#include "core/base/side_by_side.h"
#include "core/climate/own_record.h"
#include "core/climate/station_rows.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

namespace lathhouse::climate {

namespace {

/// Where a chance that rises through the season reaches c, with a fraction of a day; nullopt where it never
/// does, or has already on the first day.
template <class ChanceAt>
std::optional<double> crossing(ChanceAt chance_at, double c)
{
    double before = chance_at(0);
    if (before >= c) {
        return std::nullopt;
    }
    for (int place = 1; place < calendar::DayOfYear::kCount; ++place) {
        const double here = chance_at(place);
        if (here >= c) {
            return place - 1 + (c - before) / (here - before);
        }
        before = here;
    }
    return std::nullopt;
}

/// Places in the model's season where the beginning and the end reach a chance.
class Crossings {
public:
    explicit Crossings(const SeasonChances& season) : season_(&season) {}
    std::optional<double> beginning(double percent) const
    {
        return crossing(
            [this](int place) { return season_->on_or_before(season_->turn().day_at(place)).fraction(); },
            percent / 100.0);
    }
    std::optional<double> end(double percent) const
    {
        return crossing(
            [this](int place) { return -season_->after(season_->turn().day_at(place)).fraction(); },
            -percent / 100.0);
    }

private:
    const SeasonChances* season_;
};

/// The grower's own record is counted for any line: half a degree apart, what lies between hardly shows.
std::vector<Celsius> own_lines()
{
    constexpr int kColdestHalf = -24;
    constexpr int kWarmestHalf = 28;
    std::vector<Celsius> lines;
    for (int half = kColdestHalf; half <= kWarmestHalf; ++half) {
        lines.push_back(Celsius::from_degrees(0.5 * half));
    }
    return lines;
}

/// The counted dates of the station that stands at the place; empty where none does.
std::vector<ThresholdDates> counted_there(const PlaceClimate& place)
{
    if (!station_stands_at(place)) {
        return {};
    }
    if (place.own) {
        return dates_from_own(*place.own, own_lines(), {}).value_or(std::vector<ThresholdDates>{});
    }
    return std::ranges::min(place.stations, {}, &StationInUse::distance).station->dates;
}

double mixed(double a, double b, double share_of_b)
{
    return a + share_of_b * (b - a);
}

} // namespace

double counted_error_days(int seasons)
{
    constexpr double kDaysInUsualSeasons = 2.5;
    constexpr double kUsualSeasons = 25.0;
    return kDaysInUsualSeasons * std::sqrt(kUsualSeasons / std::max(1, seasons));
}

bool station_stands_at(const PlaceClimate& place)
{
    if (place.stations.empty()) {
        return false;
    }
    const auto& nearest = std::ranges::min(place.stations, {}, &StationInUse::distance);
    const double height_off = std::abs((nearest.station->elevation - place.elevation).metres());
    return nearest.distance.kilometres() <= kSamePlaceKilometres &&
           (!place.elevation_given || height_off <= kSameHeightMetres);
}

PlaceNights::PlaceNights(NightModel model) : model_(std::move(model)), coldest_place_(0.0)
{
    double coldest = model_.mean_low(model_.turn().day_at(0)).degrees();
    for (int place = 1; place < calendar::DayOfYear::kCount; ++place) {
        if (const double low = model_.mean_low(model_.turn().day_at(place)).degrees(); low < coldest) {
            coldest = low;
            coldest_place_ = place;
        }
    }
}

PlaceNights PlaceNights::of(const PlaceClimate& place)
{
    std::vector<const Station*> near;
    const bool counted_here = place.own || !counted_there(place).empty(); // Then no neighbour is asked.
    for (const StationInUse& use : place.stations) {
        if (!counted_here && carries_dates(use) && !use.station->dates.empty()) {
            near.push_back(use.station);
        }
    }
    std::vector<std::vector<DateResiduals>> found(near.size());
    side_by_side(near.size(), [&](std::size_t at) { found[at] = residuals_of_rows(*near[at]); });
    return of(place, [&](const Station& station, Celsius line) {
        const auto at = static_cast<std::size_t>(std::ranges::find(near, &station) - near.begin());
        for (std::size_t row = 0; at < near.size() && row < station.dates.size(); ++row) {
            if (std::abs((station.dates[row].threshold - line).kelvins()) < 0.005) {
                return found[at][row];
            }
        }
        return DateResiduals{};
    });
}

PlaceNights PlaceNights::of(const PlaceClimate& place, const ResidualsOf& residuals_of)
{
    PlaceNights nights{place.nights()};
    if (nights.model_.no_season()) {
        return nights;
    }
    const auto counted = counted_there(place);
    if (!counted.empty()) {
        nights.from_ = DatesFrom::Station;
        nights.counted_seasons_ = counted.front().last.years.value_or(1);
        std::vector<std::optional<LineShift>> shifts(counted.size());
        side_by_side(counted.size(),
                     [&](std::size_t at) { shifts[at] = nights.shift_to_counted(counted[at]); });
        for (auto& shift : shifts) {
            if (shift) {
                nights.lines_.push_back(std::move(*shift));
            }
        }
        return nights;
    }
    if (place.own) { // Another place's count of few years is no better than the model with its figures.
        return nights;
    }
    for (const Celsius line : station_row_lines()) {
        if (const auto residuals = residuals_around(place, line, residuals_of)) {
            nights.lines_.push_back(nights.shift_by(line, *residuals));
            nights.from_ = DatesFrom::Neighbours;
        }
    }
    return nights;
}

std::optional<PlaceNights::LineShift> PlaceNights::shift_to_counted(const ThresholdDates& counted) const
{
    if (counted.state != ThresholdState::Ordinary) {
        return std::nullopt;
    }
    const SeasonChances season = model_.season(counted.threshold);
    const Crossings model{season};
    LineShift shift{counted.threshold.degrees(), {}, {}, counted.nights_per_year - season.nights_per_year()};
    // The date of a chance is the day in which it is crossed: the middle of that day meets it.
    const auto add = [&season](Knots& knots, double percent, std::optional<double> crossed,
                               const std::optional<calendar::DayOfYear>& day) {
        if (crossed && day) {
            knots[percent] = {*crossed, season.turn().season_index(*day) - 0.5 - *crossed};
        }
    };
    for (const auto& [percent, day] : counted.first.dates) {
        add(shift.beginning, percent, model.beginning(percent), day);
    }
    for (const auto& [percent, day] : counted.last.dates) {
        add(shift.end, percent, model.end(percent), day);
    }
    return shift;
}

PlaceNights::LineShift PlaceNights::shift_by(Celsius line, const DateResiduals& residuals) const
{
    const SeasonChances season = model_.season(line);
    const Crossings model{season};
    LineShift shift{line.degrees(), {}, {}, kCarriedShare * residuals.nights_per_year.value_or(0.0)};
    for (const auto& [percent, days] : residuals.first) {
        if (const auto crossed = model.beginning(percent)) {
            shift.beginning[percent] = {*crossed, kCarriedShare * days};
        }
    }
    for (const auto& [percent, days] : residuals.last) {
        if (const auto crossed = model.end(percent)) {
            shift.end[percent] = {*crossed, kCarriedShare * days};
        }
    }
    return shift;
}

PlaceNights::Knots PlaceNights::between(const Knots& a, const Knots& b, double share)
{
    Knots both;
    for (const auto& [percent, knot] : a) {
        if (const auto other = b.find(percent); other != b.end()) {
            both[percent] = {mixed(knot.season_place, other->second.season_place, share),
                             mixed(knot.days, other->second.days, share)};
        }
    }
    return both;
}

PlaceNights::Shift PlaceNights::shift_of(const LineShift& line, double share)
{
    const auto of_knots = [share](const Knots& knots) {
        std::vector<DayShift::Knot> scaled;
        for (const auto& [percent, knot] : knots) {
            scaled.push_back({knot.season_place, share * knot.days});
        }
        return DayShift{std::move(scaled)};
    };
    return {of_knots(line.beginning), of_knots(line.end), share * line.nights_per_year};
}

PlaceNights::Shift PlaceNights::shift_at(double line) const
{
    if (lines_.empty()) {
        return {};
    }
    const auto fade = [](double beyond) { return std::max(0.0, 1.0 - beyond / kFadeKelvins); };
    const auto above = std::ranges::lower_bound(lines_, line, {}, &LineShift::line_degrees);
    if (above == lines_.end()) {
        return shift_of(lines_.back(), fade(line - lines_.back().line_degrees));
    }
    if (above == lines_.begin()) {
        return shift_of(*above, fade(above->line_degrees - line));
    }
    const auto below = std::prev(above);
    const double share = (line - below->line_degrees) / (above->line_degrees - below->line_degrees);
    return shift_of({line, between(below->beginning, above->beginning, share),
                     between(below->end, above->end, share),
                     mixed(below->nights_per_year, above->nights_per_year, share)},
                    1.0);
}

DatesFrom PlaceNights::dates_from(Celsius line) const
{
    const Shift shift = shift_at(line.degrees());
    const auto moves = [](const DayShift& end) {
        return std::ranges::any_of(end.knots(), [](const auto& knot) { return knot.days != 0.0; });
    };
    return moves(shift.beginning) || moves(shift.end) ? from_ : DatesFrom::Model;
}

double PlaceNights::expected_error_days(const PlaceClimate& place, Celsius line) const
{
    switch (dates_from(line)) {
    case DatesFrom::Station:
        return counted_error_days(counted_seasons_);
    case DatesFrom::Neighbours:
        return place.expected_error_days_carried;
    case DatesFrom::Model:
        break;
    }
    return place.expected_error_days;
}

SeasonChances PlaceNights::season(Celsius line, NightOffset offset) const
{
    const SeasonChances of_model = model_.season(line, offset);
    if (lines_.empty()) {
        return of_model;
    }
    const Shift shift = shift_at(line.degrees() - offset.mean.kelvins());
    return of_model.moved(shift.beginning, shift.end,
                          std::clamp(of_model.nights_per_year() + shift.nights_per_year, 0.0, 365.2425));
}

double PlaceNights::model_place(calendar::DayOfYear day, const Shift& shift) const
{
    // Up to the coldest day a night belongs to the beginning of the season, then to its end.
    const auto turn = model_.turn();
    const double place = turn.season_index(day);
    return (place < coldest_place_ ? shift.beginning : shift.end).model_place(place);
}

Probability PlaceNights::chance_on(calendar::DayOfYear day, Celsius line, NightOffset offset) const
{
    if (lines_.empty()) {
        return model_.chance_on(day, line, offset);
    }
    const double place = model_place(day, shift_at(line.degrees() - offset.mean.kelvins()));
    const double before = std::floor(place);
    const auto chance = [&](double at) {
        return model_.chance_on(model_.turn().day_at(static_cast<int>(at)), line, offset).fraction();
    };
    return Probability::clamped(mixed(chance(before), chance(before + 1.0), place - before));
}

Probability PlaceNights::chance_among(std::span<const calendar::DayOfYear> nights, Celsius line,
                                      NightOffset offset) const
{
    if (lines_.empty()) {
        return model_.chance_among(nights, line, offset);
    }
    const Shift shift = shift_at(line.degrees() - offset.mean.kelvins());
    // The days before the places that stand for the nights, those after them, and how far on they lie.
    std::vector<calendar::DayOfYear> before;
    std::vector<calendar::DayOfYear> after;
    double share = 0.0;
    for (const calendar::DayOfYear night : nights) {
        const double place = model_place(night, shift);
        const int whole = static_cast<int>(std::floor(place));
        before.push_back(model_.turn().day_at(whole));
        after.push_back(model_.turn().day_at(whole + 1));
        share += (place - whole) / static_cast<double>(nights.size());
    }
    return Probability::clamped(mixed(model_.chance_among(before, line, offset).fraction(),
                                      model_.chance_among(after, line, offset).fraction(), share));
}

Probability PlaceNights::chance_within(calendar::DayOfYear first, int count, Celsius line,
                                       NightOffset offset) const
{
    std::vector<calendar::DayOfYear> nights;
    for (int night = 0; night < count; ++night) {
        nights.push_back(calendar::DayOfYear::wrapped(first.place() + night));
    }
    return chance_among(nights, line, offset);
}

ThresholdDates PlaceNights::dates(Celsius line, std::span<const double> further_percents, NightOffset offset) const
{
    ThresholdDates dates = model_.dates(line, further_percents, offset);
    if (lines_.empty() || dates.state == ThresholdState::Never || dates.state == ThresholdState::NoSeason) {
        return dates;
    }
    const SeasonChances chances = season(line, offset);
    std::vector<double> percents;
    for (auto& [percent, day] : dates.last.dates) {
        percents.push_back(percent);
        day = chances.last(Probability::clamped(percent / 100.0));
    }
    for (auto& [percent, day] : dates.first.dates) {
        day = chances.first(Probability::clamped(percent / 100.0));
    }
    dates.free_days = chances.free_days(percents);
    dates.nights_per_year = chances.nights_per_year();
    return dates;
}

} // namespace lathhouse::climate
