#pragma once

#include "core/climate/place_nights.h"
#include "core/home/household.h"

#include <compare>
#include <map>
#include <span>
#include <tuple>

namespace lathhouse::plan {

/// Season chances of one place, kept for the lines and offsets already asked for, so that another risk is a
/// look-up.
class ColdChances {
public:
    explicit ColdChances(climate::PlaceNights nights) : nights_(std::move(nights)) {}
    const climate::PlaceNights& place_nights() const { return nights_; }
    /// The nights before any counted date moves them: means and spreads.
    const climate::NightModel& nights() const { return nights_.model(); }
    const climate::SeasonChances& season(Celsius line, climate::NightOffset offset) const;
    /// Works out what will be asked for, side by side.
    struct Asked {
        Celsius line;
        climate::NightOffset offset;
    };
    void prepare(std::span<const Asked> asked) const;
    /// The same for the lines of all plants at all spots outdoors.
    void prepare(const home::Household& household) const;

private:
    climate::PlaceNights nights_;
    using Key = std::tuple<double, double, double>;
    static Key key_of(Celsius line, climate::NightOffset offset);
    mutable std::map<Key, climate::SeasonChances> kept_;
};

} // namespace lathhouse::plan
