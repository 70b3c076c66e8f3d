#pragma once

#include "app/models/home_facts.h"
#include "core/climate/place_climate.h"

namespace lathhouse::models {

/// The map round a place, and what is to be said below it (why there is none, where it cannot be drawn).
struct DrawnMap {
    PlaceMap map;
    QString note;
};
/// From the shipped coast lines and towns, loaded once.
DrawnMap place_map(const climate::PlaceClimate& climate, const YearWords& words);

} // namespace lathhouse::models
