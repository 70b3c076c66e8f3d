#include "tests/models/year_filler.h"

#include "app/models/risk_dates.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lathhouse::models {

namespace {

double normal_share(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

/// Middle and spread of the night lows on a day of the year, invented.
double middle(double place)
{
    return 2.8 + 11.7 * std::cos((place - 204.0) / 366.0 * 2.0 * std::numbers::pi);
}
double spread(double place)
{
    return 3.9 - 1.6 * std::cos((place - 204.0) / 366.0 * 2.0 * std::numbers::pi);
}

HarmCurve curve_for(const std::vector<YearDay>& days, calendar::DayOfYear turn, double line, double offset)
{
    // Nights taken as independent in steps of three days: enough for something to look at.
    const int count = calendar::DayOfYear::kCount;
    std::vector<double> none_up_to(static_cast<std::size_t>(count));
    std::vector<double> none_after(static_cast<std::size_t>(count));
    const auto chance = [&](int since_turn) {
        const double place = turn.place() + 1 + since_turn;
        return normal_share((line - middle(place) - offset) / spread(place));
    };
    double none = 1.0;
    for (int day = 0; day < count; ++day) {
        none *= std::pow(1.0 - chance(day), 1.0 / 3.0);
        none_up_to[static_cast<std::size_t>(day)] = none;
    }
    none = 1.0;
    for (int day = count - 1; day >= 0; --day) {
        none_after[static_cast<std::size_t>(day)] = none;
        none *= std::pow(1.0 - chance(day), 1.0 / 3.0);
    }
    HarmCurve curve;
    for (const YearDay& day : days) {
        const int since = (calendar::DayOfYear::of(day.date).place() - turn.place() - 1 + count) % count;
        curve.before.push_back(1.0 - none_up_to[static_cast<std::size_t>(since)]);
        curve.after.push_back(1.0 - none_after[static_cast<std::size_t>(since)]);
    }
    curve.deciding_after = curve.after;
    curve.deciding_before = curve.before;
    return curve;
}

std::optional<std::size_t> chosen_day(const HarmCurve& curve, const std::vector<YearDay>& days,
                                      calendar::DayOfYear turn, double risk, bool going_out)
{
    for (const RiskDate& date : risk_dates(curve, days, turn, Probability::clamped(risk))) {
        if (date.going_out == going_out) {
            return date.chosen;
        }
    }
    return std::nullopt;
}

} // namespace

YearData filled_year(calendar::Date today)
{
    const auto turn = calendar::DayOfYear::wrapped(213);
    YearData year{.household = "Demonstration household",
                  .place = "a continental town",
                  .demonstration = true,
                  .today = today,
                  .turn = turn,
                  .days = {},
                  .frost = {},
                  .spots = {},
                  .plants = {},
                  .curves = {},
                  .sheltered = std::nullopt,
                  .stations = 4,
                  .nearest_kilometres = 11.2,
                  .farthest_kilometres = 51.7,
                  .base_period = "1991–2020",
                  .expected_error_days = 3.2,
                  .credits = {"Invented numbers."},
                  .warnings = {}};
    for (int day = 0; day < 365; ++day) {
        const calendar::Date date = today + calendar::Days(day);
        const double place = calendar::DayOfYear::of(date).place();
        const double length = 737.0 + 312.0 * std::cos((place - 173.0) / 366.0 * 2.0 * std::numbers::pi);
        const double low = middle(place);
        const double sd = spread(place);
        year.days.push_back({.date = date,
                             .low_cold = Celsius::from_degrees(low - 1.645 * sd),
                             .low_middle = Celsius::from_degrees(low),
                             .low_warm = Celsius::from_degrees(low + 1.645 * sd),
                             .frost = Probability::clamped(normal_share(-low / sd)),
                             .frost_after = Probability::literal(0.0),
                             .day_length_minutes = static_cast<int>(length),
                             .sunrise_minutes = 760 - static_cast<int>(length / 2.0),
                             .sunset_minutes = 760 + static_cast<int>(length / 2.0),
                             .light = DailyLight::from_moles(8.0 + 32.0 * (length - 425.0) / 624.0)});
    }
    const HarmCurve frost = curve_for(year.days, turn, 0.0, 0.0);
    const HarmCurve balcony_frost = curve_for(year.days, turn, 0.0, 2.1);
    year.sheltered = ShelteredNights{4, {}, {}};
    for (std::size_t day = 0; day < year.days.size(); ++day) {
        year.days[day].frost_after = Probability::clamped(frost.after[day]);
        year.sheltered->low_middle.push_back(year.days[day].low_middle + KelvinDelta::from_kelvins(2.1));
        year.sheltered->frost_after.push_back(Probability::clamped(balcony_frost.after[day]));
    }
    year.frost = {FrostMarks::State::Ordinary, chosen_day(frost, year.days, turn, 0.5, true),
                  chosen_day(frost, year.days, turn, 0.1, true),
                  chosen_day(frost, year.days, turn, 0.1, false),
                  chosen_day(frost, year.days, turn, 0.5, false)};
    year.spots = {{"South sill", "S sill", false, std::nullopt, 0},
                  {"East sill", "E sill", false, std::nullopt, 1},
                  {"Cool landing", "Landing", false, std::nullopt, 2},
                  {"Living room", "Room", false, std::nullopt, 6},
                  {"Balcony", "Balcony", true, KelvinDelta::from_kelvins(2.1), 3},
                  {"Rail", "Rail", true, KelvinDelta::from_kelvins(0.5), 4}};
    struct Invented {
        const char* name;
        double line;
        const char* hazard;
    };
    constexpr Invented kPlants[] = {
        {"Meyer lemon", -3.0, ""},      {"Olive", -5.0, ""},
        {"Fuchsia", -2.0, ""},          {"Angel’s trumpet", -1.0, "deadly if eaten"},
        {"Zonal geranium", -1.0, ""},   {"Jade plant", 0.0, ""},
        {"Tropical hibiscus", 4.0, ""}, {"Holiday cactus", 3.0, ""},
        {"Weeping fig", 6.0, ""},       {"Snake plant", 8.0, ""},
        {"Moth orchid", 12.0, ""},      {"Peace lily", 11.0, ""},
        {"Bay laurel", -6.0, ""},       {"Oleander", -4.0, "deadly if eaten"}};
    for (const Invented& plant : kPlants) {
        std::vector<std::optional<std::size_t>> curves(year.spots.size());
        for (std::size_t spot = 4; spot < 6; ++spot) {
            curves[spot] = year.curves.size();
            year.curves.push_back(curve_for(year.days, turn, plant.line, year.spots[spot].offset->kelvins()));
        }
        year.plants.push_back({plant.name, plant.hazard, Celsius::from_degrees(plant.line), curves});
        year.plants.back().id = static_cast<home::PlantId>(year.plants.size());
    }
    return year;
}

SolvedYear filled_plan(const YearData& year, Probability risk)
{
    SolvedYear plan{{}, 0.008, {}};
    const int last_day = static_cast<int>(year.days.size()) - 1;
    for (std::size_t plant = 0; plant < year.plants.size(); ++plant) {
        const std::size_t inside = std::array<std::size_t, 4>{2, 1, 0, 3}[plant % 4];
        const std::size_t outside = plant % 3 == 1 ? 5 : 4;
        const HarmCurve& curve = year.curves[*year.plants[plant].curves[outside]];
        const auto out = chosen_day(curve, year.days, year.turn, risk.fraction(), true);
        const auto in = chosen_day(curve, year.days, year.turn, risk.fraction(), false);
        if (!out || !in || *out >= *in || year.plants[plant].damage_begins.degrees() > 10.0) {
            plan.stays.push_back({{inside, 0, last_day, 0, "stays in", std::nullopt, std::nullopt}});
            continue;
        }
        const int first_out = static_cast<int>(*out);
        const int last_out = static_cast<int>(*in) - 1;
        std::vector<std::string> steps;
        for (int step = 1; step <= std::min(14, first_out); ++step) {
            steps.push_back(std::to_string(step) + " hours, morning sun");
        }
        plan.stays.push_back(
            {{inside, 0, first_out - 1, 0, "winter", std::nullopt, std::nullopt},
             {outside, first_out, last_out, std::min(14, first_out), "nights are warm enough", risk, risk, {}, std::move(steps)},
             {inside, last_out + 1, last_day, 10, "nights grow cold", std::nullopt, std::nullopt}});
    }
    return plan;
}

} // namespace lathhouse::models
