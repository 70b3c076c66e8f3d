#include "app/words/tonight_words.h"

#include "app/words/phrase.h"

#include <cmath>

namespace lathhouse::words {
namespace {

/// Empty where no leaf freezes.
std::string leaf_frost(plan::LeafFrost frost, const plan::NightAhead& ahead)
{
    // Leaves in the open can be 5 K below the air; where that is above the dew point nothing white forms.
    const bool dry = ahead.dew_point && ahead.forecast &&
                     ahead.forecast->low - *ahead.dew_point > KelvinDelta::from_kelvins(5.0);
    // Where the air itself is to freeze, frost is no news; that leaves are colder still is.
    const bool air_freezes = ahead.forecast && ahead.forecast->low <= Celsius::from_degrees(0.0);
    if (air_freezes && frost != plan::LeafFrost::None) {
        return frost == plan::LeafFrost::Likely
                   ? phrase("clear and calm, so leaves get colder than the air: cover it or bring it under a roof")
                   : phrase("if it turns clear and calm, leaves get colder than the air: cover it or bring it under a roof");
    }
    switch (frost) {
    case plan::LeafFrost::None:
        return {};
    case plan::LeafFrost::IfClearAndCalm:
        return dry ? phrase("if it turns clear and calm, leaves may freeze, without white frost in such dry air: cover it or bring "
                            "it under a roof")
                   : phrase("if it turns clear and calm, frost on leaves though the air stays above freezing: cover it or bring it "
                            "under a roof");
    case plan::LeafFrost::Likely:
        return dry ? phrase("clear and calm, so leaves may freeze, without white frost in such dry air: cover it or bring it under "
                            "a roof")
                   : phrase("clear and calm, so frost on leaves though the air stays above freezing: cover it or bring it under a "
                            "roof");
    }
    return {};
}

std::string size(KelvinDelta difference, UnitSystem units)
{
    return number(
        std::abs(!units.fahrenheit() ? difference.kelvins() : difference.fahrenheit_degrees()), 1);
}

const char* unit(UnitSystem units)
{
    return !units.fahrenheit() ? "\u202F°C" : "\u202F°F";
}

std::string why_of_chances(const plan::PlantNight& night, const plants::ColdLines& lines, UnitSystem units)
{
    const auto damage = chance(night.damage);
    const auto line = temperature(lines.damage_begins, units);
    switch (night.reason) {
    case plan::NightReason::WithinRisk:
        return phrase("%1 for a night at or below %2, where damage begins: within the risk", damage, line);
    case plan::NightReason::DamageLikely:
        return phrase("%1 for a night at or below %2, where damage begins", damage, line);
    case plan::NightReason::DeathLikely:
        return phrase("%1 for a night at or below %2, which can kill it", chance(night.lethal), temperature(lines.lethal, units));
    case plan::NightReason::RoomHolds:
        return phrase("indoors; by the room's logged lows %1 for a night at or below %2", damage, line);
    case plan::NightReason::RoomTooCold:
        return phrase("indoors, and by the room's logged lows %1 for a night at or below %2, where damage begins: find it a warmer "
                      "room",
                      damage, line);
    }
    return {};
}

bool is_indoors(plan::NightReason reason)
{
    return reason == plan::NightReason::RoomHolds || reason == plan::NightReason::RoomTooCold;
}

} // namespace

std::string why(const plan::PlantNight& night, const plan::NightAhead& ahead,
                const home::Household& household, UnitSystem units)
{
    const auto text = why_of_chances(night, household.plant(night.plant)->lines, units);
    const auto frost = is_indoors(night.reason) ? std::string{} : leaf_frost(night.leaf_frost, ahead);
    return frost.empty() ? text : phrase("%1; %2", text, frost);
}

std::string room_remark(const plan::RoomRemark& remark, const home::Household& household, UnitSystem units)
{
    const auto& plant = household.plant(remark.plant)->name;
    const auto& spot = household.spot(remark.spot)->name;
    const auto logged = temperature(remark.logged, units);
    const auto line = temperature(remark.line, units);
    switch (remark.trouble) {
    case plan::RoomTrouble::AtSafeNight:
        return plant + ": " + spot + " fell to " + logged + " on " + day(remark.night) +
               ", at or below its safe night of " + line;
    case plan::RoomTrouble::AtDamage:
        return plant + ": " + spot + " fell to " + logged + " on " + day(remark.night) +
               ", at or below the " + line + " where damage begins";
    case plan::RoomTrouble::AtHeatLimit:
        return plant + ": " + spot + " rose to " + logged + " on " + day(remark.night) +
               ", at or above the " + line + " where heat harms it";
    }
    return {};
}

std::string against_open_air(KelvinDelta offset, UnitSystem units)
{
    const bool colder = offset.kelvins() < 0.0;
    const auto by = size(offset, units) + unit(units);
    return colder ? phrase("%1 colder than the open air", by) : phrase("%1 milder than the open air", by);
}

std::pair<KelvinDelta, KelvinDelta> nine_in_ten(climate::NightOffset offset)
{
    constexpr double kNinetyFifth = 1.6448536; // Of the standard normal distribution.
    return {offset.mean - kNinetyFifth * offset.spread, offset.mean + kNinetyFifth * offset.spread};
}

std::string learned(const home::LearnedOffset& offset, UnitSystem units)
{
    const auto [low, high] = nine_in_ten(offset.usual);
    const auto end = [&](KelvinDelta value, bool mixed) {
        return size(value, units) + (mixed ? value.kelvins() < 0.0 ? " colder" : " milder" : "");
    };
    const bool mixed = (low.kelvins() < 0.0) != (high.kelvins() < 0.0);
    const bool colder = high.kelvins() < 0.0;
    const std::string count = offset.nights == 1 ? "your one reading says "
                                                 : "your " + std::to_string(offset.nights) + " readings say ";
    return count + against_open_air(offset.usual.mean, units) + ", " + end(colder ? high : low, mixed) +
           " to " + end(colder ? low : high, mixed);
}

} // namespace lathhouse::words
