#include "app/words/sowing_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "app/words/growing_words.h"
#include "app/words/us_units.h"

#include <cmath>

namespace lathhouse::words {
namespace {

using plan::SowingLimit;

/// What a limit means for a kind, as the rest of "because ...".
std::string because(SowingLimit limit, const plants::SeedKind& kind, bool begins, UnitSystem units)
{
    switch (limit) {
    case SowingLimit::Today:
        return phrase("the season is already on");
    case SowingLimit::DamagingNight: {
        const auto line = temperature(kind.damaging_night(), units);
        return begins ? phrase("before that a night at or below %1, which damages it, is still likelier than the risk", line)
                      : phrase("later a night at or below %1, which damages it, becomes likelier than the risk before it is "
                               "ready",
                               line);
    }
    case SowingLimit::CoolNights: {
        const auto line = temperature(kind.safe_night, units);
        return begins ? phrase("usual nights are at or below its safe %1 until then", line)
                      : phrase("usual nights would be at or below its safe %1 before it is ready", line);
    }
    case SowingLimit::ColdSoil:
        return begins ? phrase("the soil is too cold until then") : phrase("the soil gets too cold");
    case SowingLimit::HotSoil:
        return phrase("the soil is hotter than the seed stands (%1)", temperature(kind.germ_most, units));
    case SowingLimit::Heat: {
        const auto line = temperature(kind.growth_most, units);
        return begins ? phrase("until then it would stand in days hotter than it bears (mean %1 and more)", line)
                      : phrase("later it would stand in days hotter than it bears (mean %1 and more)", line);
    }
    case SowingLimit::Rain:
        return phrase("months of more than %1 of rain wash out seed beds",
                      rain(Millimetres::from_millimetres(plan::kWetMonthMillimetres), units));
    case SowingLimit::SlowGrowth:
        return phrase("in short or cool days it would hardly grow");
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

std::string apart(const plants::Range& centimetres, UnitSystem units)
{
    const bool range = centimetres.high > centimetres.low;
    if (units.us_measures()) {
        const auto inches = [](double length) {
            constexpr double kWhole = 3.0; // From here on halves of an inch are of no matter.
            const double of = length / kCentimetresInAnInch;
            return number(of, of < kWhole ? 1 : 0);
        };
        return range ? phrase("%1 to %2 in apart", inches(centimetres.low), inches(centimetres.high))
                     : phrase("%1 in apart", inches(centimetres.low));
    }
    return range ? phrase("%1 to %2 cm apart", number(centimetres.low, 0), number(centimetres.high, 0))
                 : phrase("%1 cm apart", number(centimetres.low, 0));
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
    const bool planted = season.plant_out && season.plant_out->from == season.first_out();
    const auto first = day(season.first_out());
    const auto since = [&] { return reasons(season.begins_by, kind, true, units); };
    const std::string text = season.begins_by.contains(SowingLimit::Today)
                                 ? phrase("It can go on from today, since the season is on.")
                             : planted ? phrase("Plant out not before %1, since %2.", first, since())
                                       : phrase("Sow outdoors not before %1, since %2.", first, since());
    return text + " " +
           phrase("On %1 the chance of a damaging night still to come is %2, a usual night has %3, the soil %4.",
                  day(season.first_out()), chance(season.damage_chance), temperature(season.usual_low, units),
                  temperature(season.soil, units));
}

std::string sowing_ends(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& season = *plan.season;
    if (!season.last_useful) {
        return phrase("Nothing ends the season here: any day of the year will do.");
    }
    return phrase("Sow not later than %1, since %2.", day(*season.last_useful),
                  reasons(season.ends_by, *plan.kind, false, units));
}

std::string no_sowing_date(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& none = *plan.no_date;
    const auto& kind = *plan.kind;
    std::string why_not;
    switch (none.reason) {
    case SowingLimit::Heat:
        why_not = phrase("even the coolest time of the year has days of %1 on average, and it grows badly above %2",
                         temperature(none.coolest_day_mean, units), temperature(kind.growth_most, units));
        break;
    case SowingLimit::CoolNights:
        why_not = phrase("usual nights never stay above its safe %1 (the mildest reach %2)",
                         temperature(kind.safe_night, units), temperature(none.mildest_usual_low, units));
        break;
    case SowingLimit::ColdSoil:
        why_not = phrase("the soil reaches %1 at best, and it needs %2", temperature(none.warmest_soil, units),
                         temperature(kind.soil_least.value_or(kind.germ_least), units));
        break;
    default:
        why_not = phrase("it needs %1 of full growth outdoors, and the longest stretch that is neither too cold at the "
                         "risk nor too hot for it has %2, many of them too cool or too short for full growth",
                         days(none.days_needed), days(none.longest_stretch_days));
        break;
    }
    return phrase("No date exists here for %1 in the open: %2.", table_text(kind.name()), why_not);
}

std::string way_out(const plan::Way& way)
{
    std::string text;
    switch (way.kind) {
    case plan::WayKind::QuickSort:
        text = phrase("a quick sort");
        break;
    case plan::WayKind::BiggerTransplants:
        text = phrase("bigger transplants, %1 weeks longer indoors", std::to_string(way.extra_weeks));
        break;
    case plan::WayKind::UnderGlass:
        text = phrase("in an unheated greenhouse or frame");
        break;
    case plan::WayKind::GlassAndBigger:
        text = way.extra_weeks > 0 ? phrase("a quick sort in an unheated greenhouse, %1 weeks longer indoors first",
                                            std::to_string(way.extra_weeks))
                                   : phrase("a quick sort in an unheated greenhouse");
        break;
    case plan::WayKind::GreaterRisk:
        text = phrase("accept a risk of %1", chance(way.risk));
        break;
    case plan::WayKind::RaisedIndoorsOnly:
        return phrase("keep it on a bright sill or under lamps, or choose another crop (`lathhouse sowing --calendar` "
                      "names those that can be sown)");
    }
    const auto& season = *way.season;
    if (season.sow_indoors) {
        text = phrase("%1: sow indoors %2, plant out %3", text, full_day(season.sow_indoors->from),
                      full_day(season.plant_out->from));
    } else {
        text = phrase("%1: sow %2", text, full_day(season.sow_outdoors->from));
    }
    const auto& ready = season.ready ? season.ready : season.ready_outdoors;
    if (ready) {
        text = phrase("%1, ready from %2", text, full_day(ready->from));
    }
    return text;
}

std::string how_to_sow(const plants::SeedKind& kind, UnitSystem units)
{
    std::string text;
    if (kind.depth_mm == 0.0) {
        text = phrase("On the surface, pressed in");
    } else if (units.us_measures()) {
        text = phrase("About %1 in deep", number(kind.depth_mm / (10.0 * kCentimetresInAnInch), 1));
    } else {
        text = phrase("%1 mm deep", number(kind.depth_mm, 0));
    }
    switch (kind.light) {
    case plants::SeedLight::LightNeeded:
        text = phrase("%1, uncovered: it needs light to germinate", text);
        break;
    case plants::SeedLight::LightHelps:
        text = phrase("%1, barely covered: light helps", text);
        break;
    case plants::SeedLight::Dark:
        text = phrase("%1, dark until it is up", text);
        break;
    case plants::SeedLight::Cover:
        text = phrase("%1, covered", text);
        break;
    case plants::SeedLight::LightCover:
        text = phrase("%1, covered thinly", text);
        break;
    case plants::SeedLight::Indifferent:
    case plants::SeedLight::DarkOrLight:
        break;
    }
    if (!kind.before_sowing.empty()) {
        text += "; " + table_text(kind.before_sowing);
    }
    const auto whole = [&](Celsius value) {
        return number(units.fahrenheit() ? value.fahrenheit() : value.degrees(), 0);
    };
    const auto mix = phrase("mix at %1 to %2", whole(kind.germ_best_low), whole(kind.germ_best_high)) +
                     (units.fahrenheit() ? " \u00b0F" : " \u00b0C");
    return text + "; " + mix + "; " + apart(kind.spacing_cm, units) + ".";
}

std::vector<std::string> sowing_notes(const plan::SowingPlan& plan, UnitSystem units)
{
    const auto& kind = *plan.kind;
    std::vector<std::string> notes;
    if (!kind.photoperiod_note.empty()) {
        notes.push_back(phrase("Day length: %1.", table_text(kind.photoperiod_note)));
    }
    if (kind.before_sowing.starts_with("soak") || kind.before_sowing.starts_with("nick")) {
        notes.push_back(phrase("Many such seeds and their seedlings are poisonous: keep packets from children and animals."));
    }
    if (kind.botanical_name == "Phaseolus vulgaris" || kind.botanical_name == "Phaseolus coccineus" ||
        kind.botanical_name == "Phaseolus lunatus") {
        notes.push_back(phrase("Raw beans are poisonous: keep seed from children; cook the harvest."));
    }
    notes.push_back(phrase("Dressed (coloured) seed is poisonous: gloves, never eaten, the packet's words come first."));
    if (!plan.season) {
        return notes;
    }
    const auto& season = *plan.season;
    if (season.emerge_indoors && season.emerge_indoors->warmed) {
        notes.push_back(phrase("The room is too cool for the seed: warm the mix to %1 (a heat mat made for plants; water and "
                               "mains apart).",
                               temperature(season.emerge_indoors->mix, units)));
    }
    const auto& first = season.emerge_indoors ? season.emerge_indoors : season.emerge_outdoors;
    if (first && first->basis == plan::EmergenceBasis::TypicalDays) {
        notes.push_back(phrase("Emergence from the usual days; cooler than the best range it is an estimate (common practice)."));
    }
    if (kind.thermal_time && kind.thermal_time->moist_only) {
        notes.push_back(phrase("The days to emergence hold only while the mix is kept moist."));
    }
    if (season.slow_sorts_at_risk) {
        notes.push_back(phrase("A slow sort would still stand there when damaging nights come: choose a quick or usual one."));
    }
    if (season.needs_roof) {
        notes.push_back(phrase("It falls into months of heavy rain: trays and pots under a roof, saucers empty."));
    }
    return notes;
}

std::string germination_basis(const plants::SeedKind& kind)
{
    const auto percent = number(kind.germination_percent, 0);
    switch (kind.basis) {
    case plants::GerminationBasis::FederalLaw:
        return phrase("%1 % (least that may be sold unmarked, 7 CFR 201.31)", percent);
    case plants::GerminationBasis::StateHerbLaw:
        return phrase("%1 % (least by New Hampshire law)", percent);
    case plants::GerminationBasis::StateFlowerLaw:
        return phrase("%1 % (least by state flower seed law)", percent);
    case plants::GerminationBasis::Memory:
        break;
    }
    return phrase("%1 % (common practice, no source)", percent);
}

} // namespace lathhouse::words
