#pragma once

#include "core/climate/place_climate.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/new_plant.h"
#include "core/home/spot_climate.h"
#include "core/plan/year_plan.h"
#include "tests/climate/plain_place.h"
#include "tests/plan/short_names.h"

#include <vector>

// Places and households for the tests of feeding and water.

namespace lathhouse::plan::sample {

inline calendar::Date date(int year, int month, int day)
{
    return calendar::make_date(year, month, day).value();
}

/// A place whose lows swing about `mean_low` and whose days are 10 K warmer; rain the same in every month.
inline climate::PlaceClimate place(double latitude, double mean_low, double swing, double rain_mm = 50.0)
{
    const int warmest = latitude >= 0.0 ? 7 : 1;
    const auto low = wave(mean_low, swing, warmest);
    const auto high = wave(mean_low + 10.0, swing, warmest);
    auto here = climate::plain_place(latitude, 200.0,
                                     {low,
                                      high,
                                      climate::in_every_month(KelvinDelta::from_kelvins(4.0)),
                                      std::nullopt,
                                      {},
                                      {},
                                      std::nullopt});
    here.rain = climate::in_every_month(std::optional{Millimetres::from_millimetres(rain_mm)});
    return here;
}

constexpr home::SpotId kSill = 1;
constexpr home::SpotId kOpen = 2;
constexpr home::SpotId kDim = 3;

inline home::Spot growing_spot(home::SpotId id, home::SpotKind kind, double summer_moles, double winter_moles)
{
    const bool inside = kind == home::SpotKind::Indoors;
    return {.id = id,
            .name = "Spot " + std::to_string(id),
            .short_name = "",
            .kind = kind,
            .offset = {KelvinDelta::from_kelvins(0.0), KelvinDelta::from_kelvins(1.0)},
            .winter = inside ? std::optional{Celsius::from_degrees(17.0)} : std::nullopt,
            .summer = inside ? std::optional{Celsius::from_degrees(21.0)} : std::nullopt,
            .light_in_summer = DailyLight::from_moles(summer_moles),
            .light_in_winter = DailyLight::from_moles(winter_moles),
            .capacity = 20,
            .in_reach = false,
            .walking_order = id};
}

/// One plant of a kind on a bright sill; an open spot and a dim one are there as well.
inline home::Household potted_household(const char* kind, double latitude, home::SpotId stands = kSill)
{
    home::OwnFigures own;
    own.pot_kilograms = 4.0;
    auto plant =
        home::make_plant(1, **plants::PlantReference::built_in().find(kind), own).value();
    plant.spot = stands;
    return {"Test",
            false,
            {"Here", {*Latitude::from_degrees(latitude), Longitude::literal(20.0)}, std::nullopt, "UTC"},
            {growing_spot(kSill, home::SpotKind::Indoors, 8.0, 2.0), growing_spot(kOpen, home::SpotKind::Open, 35.0, 8.0),
             growing_spot(kDim, home::SpotKind::Indoors, 0.5, 0.3)},
            {plant}};
}

inline home::Event event(home::EventKind kind, calendar::Date on, std::map<std::string, std::string> details = {})
{
    return {.plant = 1,
            .kind = kind,
            .spot = std::nullopt,
            .happened = on,
            .entered = calendar::start_of_day_utc(on),
            .note = "",
            .details = std::move(details)};
}

inline home::Event moved(calendar::Date on, home::SpotId to)
{
    auto made = event(home::EventKind::Moved, on);
    made.spot = to;
    return made;
}

inline std::vector<PlantYear> stays_of(std::vector<Stay> stays)
{
    return {{1, std::move(stays)}};
}

inline Stay stay(home::SpotId spot, calendar::Date from, calendar::Date to)
{
    return {spot, from, to, {ReasonKind::StandsThere, {}, {}}, {}, {}};
}

} // namespace lathhouse::plan::sample
