#include "core/plan/chemical_damage.h"

#include "core/base/parse.h"
#include "core/plan/growth_index.h"
#include "core/plan/source_keys.h"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr std::array<std::string_view, 3> kCloseness{"weak", "fair", "good"};
constexpr std::array<std::string_view, 7> kFirstAid{"rinse",    "photograph",    "ask_and_tell", "leach",
                                                "bioassay", "read_bioassay", "look"};

std::optional<bool> time_fits(const DamageMode& mode, std::optional<double> days)
{
    if (!days) {
        return std::nullopt;
    }
    return *days >= mode.first_days_low && *days <= mode.first_days_high;
}

double score_of_time(const DamageMode& mode, std::optional<double> days)
{
    if (!days) {
        return 0.0;
    }
    if (*time_fits(mode, days)) {
        return 1.5;
    }
    return *days < mode.first_days_low / 3.0 || *days > mode.first_days_high * 3.0 ? -2.0 : 0.0;
}

ModeFit fit_of(const DamageMode& mode, const std::set<std::string>& signs, std::optional<double> days)
{
    ModeFit fit{&mode, score_of_time(mode, days), Closeness::Weak, {}, {}, {}, time_fits(mode, days)};
    for (const auto& sign : mode.signs) {
        if (!signs.contains(sign.sign)) {
            continue;
        }
        switch (sign.fit) {
        case SignFit::Typical:
            fit.score += 2.0;
            fit.typical.push_back(sign.sign);
            break;
        case SignFit::Possible:
            fit.score += 1.0;
            fit.possible.push_back(sign.sign);
            break;
        case SignFit::Against:
            fit.score -= 3.0;
            fit.against.push_back(sign.sign);
            break;
        }
    }
    if (fit.score >= 4.0 && fit.against.empty()) {
        fit.closeness = Closeness::Good;
    } else if (fit.score >= 2.0) {
        fit.closeness = Closeness::Fair;
    }
    return fit;
}

std::optional<bool> yes_or_no(std::string_view word)
{
    const auto written = lower_case(trimmed(word));
    if (written == "yes") {
        return true;
    }
    return written == "no" ? std::optional{false} : std::nullopt;
}

bool is_grown_for_food(const home::Plant& plant)
{
    constexpr std::array<std::string_view, 3> kFoodGroups{"citrus_fruit", "herb", "vegetable"};
    // Fruit, leaves or flowers of these are eaten as well, though their group is another.
    constexpr std::array<std::string_view, 7> kFoodKinds{
        "Selenicereus undatus", "Opuntia ficus-indica",  "Musa acuminata",      "Camellia sinensis",
        "Tropaeolum majus",     "Calendula officinalis", "Viola x wittrockiana"};
    const auto* kind = kind_of(plant);
    return kind != nullptr && (std::ranges::find(kFoodGroups, kind->group) != kFoodGroups.end() ||
                               std::ranges::find(kFoodKinds, kind->botanical_name) != kFoodKinds.end());
}

std::vector<std::string> cases_of(const DamageCourse& course)
{
    std::vector<std::string> cases;
    const auto& what = course.what;
    if (what.still_wet) {
        cases.push_back(*what.still_wet ? "wet" : "dry");
    }
    if (what.edible.value_or(false)) {
        cases.push_back("food");
    }
    const bool compost = what.from_compost.value_or(course.mode != nullptr && course.mode->key == "pyralid");
    cases.push_back(compost ? "compost" : "neighbour");
    cases.push_back(course.mode == nullptr ? "unknown" : std::string{to_string(course.mode->in_mix)});
    return cases;
}

void add_steps(DamageCourse& course, const std::vector<int>& look_days, bool trace_in_mix)
{
    const auto day = course.what.happened;
    const auto add = [&](DamageAct act, int from, int until, int minutes) {
        course.steps.push_back({day + Days{from}, day + Days{until}, course.what.plant, act, minutes});
    };
    if (course.what.still_wet.value_or(false)) {
        add(DamageAct::Rinse, 0, 0, 10);
    }
    add(DamageAct::Photograph, 0, 1, 5);
    add(DamageAct::AskAndTell, 0, 3, 15);
    if (course.leach == LeachAdvice::Yes) {
        add(DamageAct::Leach, 1, 4, 20);
    }
    if (trace_in_mix) {
        // WSUBIO, CALREC: two to three weeks to three sets of leaves, two to six weeks in all.
        add(DamageAct::Bioassay, 7, 28, 15);
        add(DamageAct::ReadBioassay, 21, 49, 5);
    }
    for (const int look : look_days) {
        add(DamageAct::Look, look, look + std::max(1, look / 7), 5);
    }
    std::ranges::stable_sort(course.steps, {}, &DamageStep::date);
}

} // namespace

std::string_view to_string(Closeness closeness)
{
    return kCloseness[static_cast<std::size_t>(closeness)];
}

std::string_view to_string(DamageAct act)
{
    return kFirstAid[static_cast<std::size_t>(act)];
}

std::vector<ModeFit> fitting_modes(std::span<const std::string> signs, std::optional<double> first_signs_days,
                                   const DamageTable& table)
{
    const std::set<std::string> seen{signs.begin(), signs.end()};
    std::vector<ModeFit> fits;
    for (const auto& mode : table.modes()) {
        auto fit = fit_of(mode, seen, first_signs_days);
        // The time alone makes no case.
        if (fit.score > 0.0 && !(fit.typical.empty() && fit.possible.empty())) {
            fits.push_back(std::move(fit));
        }
    }
    std::ranges::stable_sort(fits, std::ranges::greater{}, &ModeFit::score);
    return fits;
}

DamageCourse damage_course(const DamageCase& what, const DamageTable& table)
{
    DamageCourse course{what, table.mode(what.product), {}, LeachAdvice::No, {}, what.happened,
                        true, {},                       {}, {}};
    course.fits = fitting_modes(what.signs, what.first_signs_days, table);
    for (const auto& fit : course.fits) {
        add_keys(course.sources, fit.mode->sources);
        for (const auto& sign : fit.mode->signs) {
            if (std::ranges::find(what.signs, sign.sign) != what.signs.end()) {
                add_keys(course.sources, sign.sources);
            }
        }
    }
    std::vector<int> look_days;
    int hold_weeks = 0;
    bool trace = false;
    if (course.mode != nullptr) {
        add_keys(course.sources, course.mode->sources);
        look_days = course.mode->look_days;
        hold_weeks = course.mode->hold_weeks;
        course.leach = course.mode->leach;
        trace = course.mode->is_weed_killer && course.mode->in_mix != InMix::None;
    } else {
        // Nobody knows: what asks for the most patience among the likely ones, and no water through the mix.
        look_days = {3, 7, 14, 28, 90};
        hold_weeks = 8;
        for (const auto& fit : course.fits) {
            if (fit.closeness == Closeness::Good) {
                hold_weeks = std::max(hold_weeks, fit.mode->hold_weeks);
            }
        }
        trace = true;
    }
    if (course.leach == LeachAdvice::Yes && what.pot_volume) {
        course.leach_water = *what.pot_volume * 2.0;
    }
    const auto hold_ends = what.happened + Days{7 * hold_weeks};
    const bool grown = what.new_growth && *what.new_growth > what.happened;
    course.feed_waits_for_growth = !grown;
    course.no_feed_before = grown ? std::max(hold_ends, *what.new_growth) : hold_ends;
    add_steps(course, look_days, trace);
    course.cases = cases_of(course);
    return course;
}

DamageCase case_of(const home::Event& event, const home::Household& household,
                   std::span<const home::Event> events)
{
    DamageCase what{.happened = event.happened,
                    .product = std::string{event.detail("product")},
                    .signs = {},
                    .first_signs_days = parse_number(event.detail("first_signs_days")),
                    .still_wet = yes_or_no(event.detail("still_wet")),
                    .from_compost = yes_or_no(event.detail("compost")),
                    .edible = yes_or_no(event.detail("edible")),
                    .pot_volume = {},
                    .plant = event.plant,
                    .new_growth = {}};
    for (const auto piece : split(event.detail("signs"), ';')) {
        if (DamageTable::built_in().sign(trimmed(piece)) != nullptr) {
            what.signs.emplace_back(trimmed(piece));
        }
    }
    const auto* plant = event.plant ? household.plant(*event.plant) : nullptr;
    if (plant != nullptr) {
        what.pot_volume = plant->pot_volume;
        if (!what.edible && is_grown_for_food(*plant)) {
            what.edible = true;
        }
    }
    for (const auto& other : events) {
        if (other.kind == home::EventKind::NewGrowth && other.plant == event.plant &&
            other.happened > event.happened) {
            what.new_growth = what.new_growth ? std::min(*what.new_growth, other.happened) : other.happened;
        }
    }
    return what;
}

bool is_told_anew(std::span<const home::Event> events, std::size_t index)
{
    const auto& event = events[index];
    return event.plant && std::ranges::any_of(events.subspan(index + 1), [&](const home::Event& later) {
               return later.kind == event.kind && later.plant == event.plant && later.happened == event.happened;
           });
}

std::vector<DamageCourse> damage_courses(const home::Household& household,
                                         std::span<const home::Event> events)
{
    std::vector<DamageCourse> courses;
    for (std::size_t index = 0; index < events.size(); ++index) {
        const auto& plant = events[index].plant;
        const bool gone = plant && household.plant(*plant) == nullptr;
        if (events[index].kind == home::EventKind::ChemicalDamage && !gone && !is_told_anew(events, index)) {
            courses.push_back(damage_course(case_of(events[index], household, events)));
        }
    }
    return courses;
}

} // namespace lathhouse::plan
