#include "core/plan/chemical_damage.h"

#include "core/base/csv.h"
#include "core/home/demonstration.h"
#include "core/home/new_plant.h"
#include "core/plan/care_lines.h"
#include "core/plants/plant_kind.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

const Date kDay{2026, 5, 4};

std::string best(std::vector<std::string> signs, std::optional<double> days = {})
{
    const auto fits = fitting_modes(signs, days);
    return fits.empty() ? "" : fits.front().mode->key;
}

// Descriptions of injury as extension services publish them, in the words of our signs.
struct Described {
    const char* name;
    std::vector<std::string> signs;
    std::optional<double> days;
    const char* mode;
};
void PrintTo(const Described& row, std::ostream* out)
{
    *out << row.name;
}
class PublishedInjury : public testing::TestWithParam<Described> {};
TEST_P(PublishedInjury, IsNamedFirst)
{
    EXPECT_EQ(best(GetParam().signs, GetParam().days), GetParam().mode);
}
INSTANTIATE_TEST_SUITE_P(
    Extension, PublishedInjury,
    testing::Values(
        // Univ. Maryland, herbicide damage on flowers: growth stops, yellow then brown in one to two weeks.
        Described{"MarylandGlyphosate",
                  {"growth_stopped", "new_leaves_pale", "whole_leaves_brown", "several_kinds_hit"},
                  9.0,
                  "glyphosate"},
        // Montana State, glyphosate: narrow or strapped new leaves, brooms on woody plants.
        Described{"MontanaGlyphosateOnWood", {"strap_leaves", "witches_broom", "new_leaves_pale"}, {}, "glyphosate"},
        // Ohio State, 2,4-D and dicamba: twisting and cupping of new growth within hours to days.
        Described{"OhioAuxin", {"twisted_stems", "cupped_leaves", "grasses_spared"}, 2.0, "auxin"},
        // NPIC and Oregon State: cupped and fern-like growth in one batch of compost or manure.
        Described{"OregonCompost",
                  {"cupped_leaves", "fern_like_tips", "only_newly_potted_hit"},
                  14.0,
                  "pyralid"},
        // NC State, photosystem I: wet look within hours, spots, new growth unharmed.
        Described{"CarolinaDiquat", {"water_soaked", "brown_spots", "new_leaves_clean"}, 0.3, "contact"},
        // NC State, natural oils and acids: burn or spots, new growth normal.
        Described{"CarolinaVinegar", {"brown_spots", "whole_leaves_brown", "new_leaves_clean"}, 0.5, "natural"},
        // NC State, triazines: between veins and at the edge of older leaves, about seven days, roots sound.
        Described{"CarolinaSimazine",
                  {"yellow_between_veins", "old_leaves_yellow_edges", "begins_on_old_leaves", "roots_fine"},
                  7.0,
                  "photosynthesis"},
        // NC State, carotenoid inhibitors: white new shoots with pink edges.
        Described{"CarolinaClomazone", {"new_leaves_white", "fades_from_top"}, 6.0, "pigment"},
        // Univ. Maryland: trifluralin, swollen short roots without side roots.
        Described{"MarylandTrifluralin", {"short_thick_roots", "swollen_stem_base"}, {}, "root"},
        // Univ. Florida AG374: stunted, pale youngest leaves, red veins, about two weeks.
        Described{"FloridaAls", {"growth_stopped", "new_leaves_pale", "purple_veins", "fades_from_top"}, 12.0, "als"},
        // New Mexico State: bleached after one day of full sun.
        Described{"NewMexicoSun", {"bleached_sunny_side"}, 1.0, "sun"}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(FittingModes, TheTimeMovesGlyphosateAndBurnersApart)
{
    const std::vector<std::string> brown{"whole_leaves_brown", "several_kinds_hit"};
    const auto place = [&](const char* key, double days) {
        const auto fits = fitting_modes(brown, days);
        return std::ranges::find_if(fits, [&](const ModeFit& fit) { return fit.mode->key == key; }) -
               fits.begin();
    };
    EXPECT_LT(place("natural", 0.5), place("glyphosate", 0.5));
    EXPECT_LT(place("glyphosate", 10.0), place("natural", 10.0));
}

TEST(FittingModes, WithoutSignsNothingFits)
{
    EXPECT_TRUE(fitting_modes({}, 7.0).empty());
}

TEST(FittingModes, ASignAgainstItKeepsAModeFromFittingWell)
{
    const std::vector<std::string> signs{"twisted_stems", "cupped_leaves", "strap_leaves", "brown_spots"};
    for (const auto& fit : fitting_modes(signs, 1.0)) {
        EXPECT_FALSE(fit.closeness == Closeness::Good && !fit.against.empty()) << fit.mode->key;
    }
}

TEST(DamageTable, EveryRowNamesSourcesOfTheSourceTable)
{
    const auto& reference = plants::PlantReference::built_in();
    for (const auto& mode : DamageTable::built_in().modes()) {
        for (const auto& key : mode.sources) {
            EXPECT_NE(reference.source(key), nullptr) << mode.key << " " << key;
        }
        for (const auto& sign : mode.signs) {
            for (const auto& key : sign.sources) {
                EXPECT_NE(reference.source(key), nullptr) << mode.key << " " << key;
            }
        }
    }
    for (const auto& line : care_lines()) {
        for (const auto& key : line.sources) {
            EXPECT_NE(reference.source(key), nullptr) << line.id << " " << key;
        }
    }
}

TEST(DamageTable, EverySignBelongsToSomeMode)
{
    for (const auto& sign : DamageTable::built_in().signs()) {
        EXPECT_TRUE(std::ranges::any_of(DamageTable::built_in().modes(), [&](const DamageMode& mode) {
            return std::ranges::find(mode.signs, sign.key, &DamageMode::Sign::sign) != mode.signs.end();
        })) << sign.key;
    }
}

TEST(DamageTable, OnlyWhatMovesIsWashedOut)
{
    for (const auto& mode : DamageTable::built_in().modes()) {
        if (mode.is_weed_killer && mode.leach == LeachAdvice::Yes) {
            EXPECT_EQ(mode.in_mix, InMix::Mobile) << mode.key;
        }
        if (mode.in_mix == InMix::Bound) {
            EXPECT_EQ(mode.leach, LeachAdvice::No) << mode.key;
        }
    }
}

TEST(DamageTable, RefusesASignOrModeThatIsNotThere)
{
    const auto folder = std::filesystem::path{LATHHOUSE_SOURCE} / "core/plan/data";
    const auto signs = read_text_file(folder / "damage_signs.csv").value();
    const auto modes = read_text_file(folder / "damage_modes.csv").value();
    const auto patterns = read_text_file(folder / "damage_patterns.csv").value();
    ASSERT_TRUE(DamageTable::parse(signs, modes, patterns));
    EXPECT_FALSE(DamageTable::parse(signs, modes, patterns + "auxin,blue_leaves,typical,MEM\n"));
    EXPECT_FALSE(DamageTable::parse(signs, modes, patterns + "magic,limp_leaves,typical,MEM\n"));
    EXPECT_FALSE(DamageTable::parse(signs, modes, patterns + "auxin,limp_leaves,maybe,MEM\n"));
    EXPECT_FALSE(DamageTable::parse(signs + "limp_leaves,old,Twice\n", modes, patterns));
}

bool has(const DamageCourse& course, DamageAct act)
{
    return std::ranges::find(course.steps, act, &DamageStep::act) != course.steps.end();
}

TEST(DamageCourse, DicambaIsWashedOutWithTwiceThePot)
{
    const auto course = damage_course(
        {.happened = kDay, .product = "Dicamba", .pot_volume = Litres::from_litres(3.0)});
    ASSERT_NE(course.mode, nullptr);
    EXPECT_EQ(course.mode->key, "auxin");
    EXPECT_EQ(course.leach, LeachAdvice::Yes);
    ASSERT_TRUE(course.leach_water);
    EXPECT_NEAR(course.leach_water->litres(), 6.0, 1e-9);
    EXPECT_TRUE(has(course, DamageAct::Leach));
}

TEST(DamageCourse, GlyphosateIsNotWashedOutAndIsLookedAtForAYear)
{
    const auto course = damage_course({.happened = kDay, .product = "glyphosate"});
    EXPECT_EQ(course.leach, LeachAdvice::No);
    EXPECT_FALSE(has(course, DamageAct::Leach));
    EXPECT_TRUE(std::ranges::any_of(course.steps, [](const DamageStep& step) {
        return step.act == DamageAct::Look && step.date == kDay + Days{365};
    }));
    EXPECT_FALSE(course.mode->conflict.empty()) << "pruning: sources disagree";
}

TEST(DamageCourse, LooksFallOnDays3And7And14And28)
{
    const auto course = damage_course({.happened = kDay});
    for (const int day : {3, 7, 14, 28}) {
        EXPECT_TRUE(std::ranges::any_of(course.steps, [&](const DamageStep& step) {
            return step.act == DamageAct::Look && step.date == kDay + Days{day};
        })) << day;
    }
}

TEST(DamageCourse, AnUnknownProductIsNotWashedOut)
{
    const auto course =
        damage_course({.happened = kDay, .product = "something", .pot_volume = Litres::from_litres(3.0)});
    EXPECT_EQ(course.mode, nullptr);
    EXPECT_EQ(course.leach, LeachAdvice::No);
    EXPECT_FALSE(course.leach_water);
    EXPECT_NE(std::ranges::find(course.cases, "unknown"), course.cases.end());
}

TEST(DamageCourse, IsRinsedOnlyWhileItIsWet)
{
    EXPECT_TRUE(has(damage_course({.happened = kDay, .still_wet = true}), DamageAct::Rinse));
    EXPECT_FALSE(has(damage_course({.happened = kDay, .still_wet = false}), DamageAct::Rinse));
    EXPECT_FALSE(has(damage_course({.happened = kDay}), DamageAct::Rinse));
}

TEST(DamageCourse, FeedIsHeldUntilNewGrowthIsLogged)
{
    DamageCase what{.happened = kDay, .product = "2,4-D"};
    EXPECT_TRUE(damage_course(what).feed_waits_for_growth);
    what.new_growth = kDay + Days{20};
    const auto early = damage_course(what);
    EXPECT_FALSE(early.feed_waits_for_growth);
    EXPECT_EQ(early.no_feed_before, kDay + Days{56}) << "eight weeks are held all the same";
    what.new_growth = kDay + Days{80};
    EXPECT_EQ(damage_course(what).no_feed_before, kDay + Days{80});
}

TEST(DamageCourse, WhatIsToldAnewOfADayStandsInThePlaceOfWhatWasThere)
{
    const auto household = home::demonstration({.today = kDay}).value().household;
    const auto event = [&](std::size_t plant, Date happened, std::map<std::string, std::string> details) {
        return home::Event{.plant = household.plants[plant].id,
                           .kind = home::EventKind::ChemicalDamage,
                           .spot = {},
                           .happened = happened,
                           .entered = calendar::start_of_day_utc(happened),
                           .note = "",
                           .details = std::move(details)};
    };
    const std::vector events{event(0, kDay, {}), event(1, kDay, {}), event(0, kDay - Days{1}, {}),
                             event(0, kDay, {{"product", "glyphosate"}})};
    const auto courses = damage_courses(household, events);
    ASSERT_EQ(courses.size(), 3U);
    EXPECT_EQ(courses[0].what.plant, household.plants[1].id);
    EXPECT_EQ(courses[1].what.happened, kDay - Days{1});
    ASSERT_NE(courses[2].mode, nullptr);
    EXPECT_EQ(courses[2].mode->key, "glyphosate");
}

TEST(DamageCourse, ReadsAnEventAndLeavesOutWhatItCannotRead)
{
    auto household = home::demonstration({.today = kDay}).value().household;
    const auto plant = household.plants.front().id;
    const home::Event event{.plant = plant,
                            .kind = home::EventKind::ChemicalDamage,
                            .spot = {},
                            .happened = kDay,
                            .entered = calendar::start_of_day_utc(kDay),
                            .note = "",
                            .details = {{"product", "glyphosate"},
                                        {"signs", "strap_leaves; nonsense"},
                                        {"first_signs_days", "soon"},
                                        {"edible", "yes"}}};
    const std::vector events{event};
    const auto courses = damage_courses(household, events);
    ASSERT_EQ(courses.size(), 1U);
    EXPECT_EQ(courses.front().what.signs, (std::vector<std::string>{"strap_leaves"}));
    EXPECT_FALSE(courses.front().what.first_signs_days);
    EXPECT_NE(std::ranges::find(courses.front().cases, "food"), courses.front().cases.end());
    const auto steps_on = [&](int day) {
        return std::ranges::count(courses.front().steps, kDay + Days{day}, &DamageStep::date);
    };
    EXPECT_GT(steps_on(7), 0);
    EXPECT_EQ(steps_on(6), 0);
}

TEST(DamageCourse, WhatIsGrownForFoodCountsAsFoodUnlessItIsSaidNotTo)
{
    const auto case_with = [](const char* kind, std::map<std::string, std::string> details) {
        home::Event event{1, home::EventKind::ChemicalDamage, {}, kDay, calendar::start_of_day_utc(kDay), "", std::move(details)};
        home::OwnFigures own;
        auto household = home::Household{"", false, {"", {Latitude::literal(48.0), Longitude::literal(20.0)}, {}, "UTC"}, {}, {}};
        household.plants.push_back(home::make_plant(1, **plants::PlantReference::built_in().find(kind), own).value());
        const std::vector<home::Event> grew{{1, home::EventKind::NewGrowth, {}, kDay + Days{40}, calendar::start_of_day_utc(kDay), ""},
                                            {1, home::EventKind::NewGrowth, {}, kDay + Days{30}, calendar::start_of_day_utc(kDay), ""},
                                            {1, home::EventKind::NewGrowth, {}, kDay - Days{3}, calendar::start_of_day_utc(kDay), ""}};
        return case_of(event, household, grew);
    };
    for (const char* kind : {"Tomato", "Basil", "Citrus limon", "Dragon fruit", "Tea plant", "Nasturtium"}) {
        EXPECT_EQ(case_with(kind, {}).edible, true) << kind;
        EXPECT_EQ(case_with(kind, {{"edible", "no"}}).edible, false) << kind;
    }
    EXPECT_FALSE(case_with("Weeping fig", {}).edible);
    EXPECT_EQ(case_with("Weeping fig", {{"edible", "yes"}}).edible, true);
    EXPECT_EQ(case_with("Tomato", {}).new_growth, kDay + Days{30}); // The first since then.
}

TEST(CareLines, ShowOnlyTheCasesThatAreSo)
{
    const auto shows = [](const std::set<std::string>& cases, const char* id) {
        return std::ranges::any_of(care_lines_for("chemical", cases),
                                   [&](const CareLine* line) { return line->id == id; });
    };
    EXPECT_TRUE(shows({"wet"}, "c01"));
    EXPECT_FALSE(shows({"dry"}, "c01"));
    EXPECT_TRUE(shows({}, "c10"));
    EXPECT_FALSE(shows({}, "c09"));
    EXPECT_FALSE(parse_care_lines("id,topic,list,applies,text,sources\na,garden,now,any,Text.,MEM\n"));
    EXPECT_FALSE(parse_care_lines("id,topic,list,applies,text,sources\na,cold,now,any,,MEM\n"));
}

TEST(DamageCourse, WhereTheProductIsNotKnownTheMostPatientOfTheLikelyOnesCounts)
{
    const std::vector<std::string> signs{"twisted_stems", "cupped_leaves", "strap_leaves"};
    int weeks = 8;
    bool any = false;
    for (const auto& fit : fitting_modes(signs, 3.0)) {
        if (fit.closeness == Closeness::Good) {
            any = true;
            weeks = std::max(weeks, fit.mode->hold_weeks);
        }
    }
    EXPECT_TRUE(any);
    const auto course = damage_course({.happened = kDay, .signs = signs, .first_signs_days = 3.0});
    EXPECT_EQ(course.mode, nullptr);
    EXPECT_EQ(course.no_feed_before, kDay + calendar::Days{7 * weeks});
}

} // namespace
} // namespace lathhouse::plan
