#include "app/words/sowing_words.h"

#include "app/words/growing_words.h"
#include "core/base/parse.h"

#include <cmath>

namespace lathhouse::words {
namespace {

using plan::SowingLimit;

std::string joined(const std::vector<std::string>& pieces)
{
    std::string text;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == pieces.size() ? " and " : ", ") + pieces[i];
    }
    return text;
}

/// What a limit means for a kind, as the rest of "because ...".
std::string because(SowingLimit limit, const plants::SeedKind& kind, bool begins, UnitSystem units)
{
    switch (limit) {
    case SowingLimit::Today:
        return "the season is already on";
    case SowingLimit::DamagingNight:
        return std::string{begins ? "before that" : "later"} + " a night at or below " +
               temperature(kind.damaging_night(), units) + ", which damages it, " +
               (begins ? "is still likelier than the risk" : "becomes likelier than the risk before it is ready");
    case SowingLimit::CoolNights:
        return std::string{begins ? "usual nights are" : "usual nights would be"} + " at or below its safe " +
               temperature(kind.safe_night, units) + (begins ? " until then" : " before it is ready");
    case SowingLimit::ColdSoil:
        return begins ? "the soil is too cold until then" : "the soil gets too cold";
    case SowingLimit::HotSoil:
        return "the soil is hotter than the seed stands (" + temperature(kind.germ_most, units) + ")";
    case SowingLimit::Heat:
        return std::string{begins ? "until then" : "later"} + " it would stand in days hotter than it bears (mean " +
               temperature(kind.growth_most, units) + " and more)";
    case SowingLimit::Rain:
        return "months of more than " +
               rain(Millimetres::from_millimetres(plan::kWetMonthMillimetres), units) + " of rain wash out seed beds";
    case SowingLimit::SlowGrowth:
        return "in short or cool days it would hardly grow";
    }
    return {};
}

std::string reasons(const std::set<SowingLimit>& limits, const plants::SeedKind& kind, bool begins,
                    UnitSystem units)
{
    std::vector<std::string> pieces;
    for (const auto limit : limits) {
        pieces.push_back(because(limit, kind, begins, units));
    }
    return joined(pieces);
}

} // namespace

std::string_view to_string(SowingLimit limit)
{
    switch (limit) {
    case SowingLimit::Today:
        return "today";
    case SowingLimit::DamagingNight:
        return "damaging_night";
    case SowingLimit::CoolNights:
        return "cool_nights";
    case SowingLimit::ColdSoil:
        return "cold_soil";
    case SowingLimit::HotSoil:
        return "hot_soil";
    case SowingLimit::Heat:
        return "heat";
    case SowingLimit::Rain:
        return "rain";
    case SowingLimit::SlowGrowth:
        break;
    }
    return "slow_growth";
}

std::string_view to_string(plan::WayKind way)
{
    switch (way) {
    case plan::WayKind::QuickSort:
        return "quick_sort";
    case plan::WayKind::BiggerTransplants:
        return "bigger_transplants";
    case plan::WayKind::UnderGlass:
        return "under_glass";
    case plan::WayKind::GlassAndBigger:
        return "glass_and_bigger";
    case plan::WayKind::GreaterRisk:
        return "greater_risk";
    case plan::WayKind::RaisedIndoorsOnly:
        break;
    }
    return "raised_indoors_only";
}

std::string_view to_string(plan::EmergenceBasis basis)
{
    switch (basis) {
    case plan::EmergenceBasis::Table:
        return "table";
    case plan::EmergenceBasis::ThermalTime:
        return "thermal_time";
    case plan::EmergenceBasis::TypicalDays:
        break;
    }
    return "typical_days";
}

std::string sowing_begins(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& season = *plan.season;
    const auto& kind = *plan.kind;
    std::string text = season.begins_by.contains(SowingLimit::Today)
                           ? std::string{"It can go on from today, since the season is on"}
                           : "Not earlier, since " + reasons(season.begins_by, kind, true, units);
    text += ". On " + day(season.first_out()) + " the chance of a damaging night still to come is " +
            chance(season.damage_chance) + ", a usual night has " + temperature(season.usual_low, units) +
            ", the soil " + temperature(season.soil, units) + ".";
    return text;
}

std::string sowing_ends(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& season = *plan.season;
    if (!season.last_useful) {
        return "Nothing ends the season here: any day of the year will do.";
    }
    return "Not later than " + day(*season.last_useful) + ", since " +
           reasons(season.ends_by, *plan.kind, false, units) + ".";
}

std::string no_sowing_date(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& none = *plan.no_date;
    const auto& kind = *plan.kind;
    std::string text = "No date exists here for " + kind.name() + " in the open: ";
    switch (none.reason) {
    case SowingLimit::Heat:
        text += "even the coolest time of the year has days of " + temperature(none.coolest_day_mean, units) +
                " on average, and it grows badly above " + temperature(kind.growth_most, units);
        break;
    case SowingLimit::CoolNights:
        text += "usual nights never stay above its safe " + temperature(kind.safe_night, units) +
                " (the mildest reach " + temperature(none.mildest_usual_low, units) + ")";
        break;
    case SowingLimit::ColdSoil:
        text += "the soil reaches " + temperature(none.warmest_soil, units) + " at best, and it needs " +
                temperature(kind.soil_least.value_or(kind.germ_least), units);
        break;
    default:
        text += "it needs " + days(none.days_needed) + " of full growth outdoors, and the longest stretch that is "
                "neither too cold at the risk nor too hot for it has " + days(none.longest_stretch_days) +
                ", many of them too cool or too short for full growth";
        break;
    }
    return text + ".";
}

std::string way_out(const plan::Way& way)
{
    std::string text;
    switch (way.kind) {
    case plan::WayKind::QuickSort:
        text = "a quick sort";
        break;
    case plan::WayKind::BiggerTransplants:
        text = "bigger transplants, " + std::to_string(way.extra_weeks) + " weeks longer indoors";
        break;
    case plan::WayKind::UnderGlass:
        text = "in an unheated greenhouse or frame";
        break;
    case plan::WayKind::GlassAndBigger:
        text = "a quick sort in an unheated greenhouse";
        if (way.extra_weeks > 0) {
            text += ", " + std::to_string(way.extra_weeks) + " weeks longer indoors first";
        }
        break;
    case plan::WayKind::GreaterRisk:
        text = "accept a risk of " + chance(way.risk);
        break;
    case plan::WayKind::RaisedIndoorsOnly:
        return "keep it on a bright sill or under lamps, or choose another crop (`lathhouse sowing --calendar` "
               "names those that can be sown)";
    }
    const auto& season = *way.season;
    if (season.sow_indoors) {
        text += ": sow indoors " + full_day(season.sow_indoors->from) + ", plant out " + full_day(season.plant_out->from);
    } else {
        text += ": sow " + full_day(season.sow_outdoors->from);
    }
    const auto& ready = season.ready ? season.ready : season.ready_outdoors;
    if (ready) {
        text += ", ready from " + full_day(ready->from);
    }
    return text;
}

std::string how_to_sow(const plants::SeedKind& kind, UnitSystem units)
{
    std::string text;
    if (kind.depth_mm == 0.0) {
        text = "On the surface, pressed in";
    } else if (units == UnitSystem::UsCustomary) {
        text = "About " + number(kind.depth_mm / 25.4, 1) + " in deep";
    } else {
        text = number(kind.depth_mm, 0) + " mm deep";
    }
    switch (kind.light) {
    case plants::SeedLight::LightNeeded:
        text += ", uncovered: it needs light to germinate";
        break;
    case plants::SeedLight::LightHelps:
        text += ", barely covered: light helps";
        break;
    case plants::SeedLight::Dark:
        text += ", dark until it is up";
        break;
    case plants::SeedLight::Cover:
        text += ", covered";
        break;
    case plants::SeedLight::LightCover:
        text += ", covered thinly";
        break;
    case plants::SeedLight::Indifferent:
    case plants::SeedLight::DarkOrLight:
        break;
    }
    if (!kind.before_sowing.empty()) {
        text += "; " + kind.before_sowing;
    }
    const auto whole = [&](Celsius value) {
        return number(units == UnitSystem::UsCustomary ? value.fahrenheit() : value.degrees(), 0);
    };
    text += "; mix at " + whole(kind.germ_best_low) + " to " + whole(kind.germ_best_high) +
            (units == UnitSystem::UsCustomary ? " \u00b0F" : " \u00b0C");
    text += "; " + number(kind.spacing_cm.low, 0) +
            (kind.spacing_cm.high > kind.spacing_cm.low ? " to " + number(kind.spacing_cm.high, 0) : "") +
            " cm apart";
    return text + ".";
}

std::vector<std::string> sowing_notes(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& kind = *plan.kind;
    std::vector<std::string> notes;
    if (!kind.photoperiod_note.empty()) {
        notes.push_back("Day length: " + kind.photoperiod_note + ".");
    }
    if (kind.before_sowing.starts_with("soak") || kind.before_sowing.starts_with("nick")) {
        notes.push_back("Many such seeds and their seedlings are poisonous: keep packets from children and animals.");
    }
    if (kind.botanical_name == "Phaseolus vulgaris" || kind.botanical_name == "Phaseolus coccineus" ||
        kind.botanical_name == "Phaseolus lunatus") {
        notes.push_back("Raw beans are poisonous: keep seed from children; cook the harvest.");
    }
    notes.push_back("Dressed (coloured) seed is poisonous: gloves, never eaten, the packet's words come first.");
    if (!plan.season) {
        return notes;
    }
    const auto& season = *plan.season;
    if (season.emerge_indoors && season.emerge_indoors->warmed) {
        notes.push_back("The room is too cool for the seed: warm the mix to " +
                        temperature(season.emerge_indoors->mix, units) +
                        " (a heat mat made for plants; water and mains apart).");
    }
    const auto& first = season.emerge_indoors ? season.emerge_indoors : season.emerge_outdoors;
    if (first && first->basis == plan::EmergenceBasis::TypicalDays) {
        notes.push_back("Emergence from the usual days; cooler than the best range it is an estimate (common practice).");
    }
    if (kind.thermal_time && kind.thermal_time->moist_only) {
        notes.push_back("The days to emergence hold only while the mix is kept moist.");
    }
    if (season.slow_sorts_at_risk) {
        notes.push_back("A slow sort would still stand there when damaging nights come: choose a quick or usual one.");
    }
    if (season.needs_roof) {
        notes.push_back("It falls into months of heavy rain: trays and pots under a roof, saucers empty.");
    }
    return notes;
}

std::string germination_basis(const plants::SeedKind& kind)
{
    const auto percent = number(kind.germination_percent, 0) + " % ";
    switch (kind.basis) {
    case plants::GerminationBasis::FederalLaw:
        return percent + "(least that may be sold unmarked, 7 CFR 201.31)";
    case plants::GerminationBasis::StateHerbLaw:
        return percent + "(least by New Hampshire law)";
    case plants::GerminationBasis::StateFlowerLaw:
        return percent + "(least by state flower seed law)";
    case plants::GerminationBasis::Memory:
        break;
    }
    return percent + "(common practice, no source)";
}

} // namespace lathhouse::words
