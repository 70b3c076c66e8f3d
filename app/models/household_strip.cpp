#include "app/models/household_strip.h"

#include "core/climate/figures.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr double kWorthShowing = 0.05;
/// Below this on every night of the year there is no frost to draw, whatever the season's turn.
constexpr double kNoFrost = 0.001;

bool has_frost(const YearData& year)
{
    return year.frost.state != FrostMarks::State::Never &&
           std::any_of(year.days.begin(), year.days.end(),
                       [](const YearDay& day) { return day.frost.fraction() >= kNoFrost; });
}

bool worth_showing(const std::vector<double>& chances)
{
    return std::any_of(chances.begin(), chances.end(), [](double chance) { return chance >= kWorthShowing; });
}

} // namespace

YearStrip strip_of(const YearData& year, const home::Household& household,
                   const climate::PlaceClimate& climate, const climate::NightModel& nights)
{
    if (has_frost(year)) {
        return {};
    }
    const auto tenderest = std::max_element(household.plants.begin(), household.plants.end(),
                                            [](const home::Plant& a, const home::Plant& b) {
                                                return a.lines.damage_begins < b.lines.damage_begins;
                                            });
    if (tenderest != household.plants.end()) {
        YearStrip tender{.kind = YearStrip::Kind::TenderNights,
                         .plant = tenderest->name,
                         .line = tenderest->lines.damage_begins};
        for (const YearDay& day : year.days) {
            tender.shares.push_back(
                nights.chance_on(calendar::DayOfYear::of(day.date), tender.line).fraction());
        }
        if (worth_showing(tender.shares)) {
            return tender;
        }
    }
    const climate::DailyCurve heat = climate::chances_of_heat(climate.monthly);
    YearStrip hot{.kind = YearStrip::Kind::HotDays};
    for (const YearDay& day : year.days) {
        hot.shares.push_back(heat[static_cast<std::size_t>(calendar::DayOfYear::of(day.date).place() - 1)]);
    }
    if (worth_showing(hot.shares)) {
        return hot;
    }
    YearStrip rain{.kind = YearStrip::Kind::Rain};
    for (const auto& month : climate.rain) {
        if (!month) {
            return {};
        }
        rain.most_millimetres = std::max(rain.most_millimetres, month->millimetres());
    }
    if (rain.most_millimetres <= 0.0) {
        return {};
    }
    for (const YearDay& day : year.days) {
        const auto month = static_cast<std::size_t>(day.date.month() - 1);
        rain.shares.push_back(climate.rain[month]->millimetres() / rain.most_millimetres);
    }
    return rain;
}

} // namespace lathhouse::models
