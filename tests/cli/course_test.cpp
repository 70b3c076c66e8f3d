#include "tests/cli/with_demonstration.h"

#include "app/cli/household_facts.h"
#include "core/journal/household_store.h"
#include "core/plan/pest_course.h"
#include "core/plan/spot_warmth.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace lathhouse::cli {
namespace {

const calendar::Date kToday{2026, 11, 10};

/// The demonstration in November, with events written into its journal.
class CourseCommand : public WithDemonstration {
protected:
    CourseCommand() : WithDemonstration("2026-11-10") {}
    void log(home::EventKind kind, home::PlantId plant, int days_ago,
             std::map<std::string, std::string> details) const
    {
        auto store = journal::HouseholdStore::open(home());
        ASSERT_TRUE(store);
        const auto date = kToday - calendar::Days{days_ago};
        const home::Event event{.plant = plant,
                                .kind = kind,
                                .spot = {},
                                .happened = date,
                                .entered = calendar::start_of_day_utc(date),
                                .note = "",
                                .details = std::move(details)};
        ASSERT_TRUE(store->record(std::span{&event, 1}));
    }
};

TEST_F(CourseCommand, SaysThatAllIsCleanWhereNothingWasFound)
{
    const auto ran = ask({"course", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["plants"].size(), 14U);
    for (const auto& plant : json["plants"]) {
        EXPECT_EQ(plant["state"], "clean");
    }
    EXPECT_TRUE(json["courses"].empty());
}

TEST_F(CourseCommand, GivesTheCourseOfAFindWithItsStudiesAndSources)
{
    log(home::EventKind::PestFound, 1, 2, {{"pest", "mealybug"}, {"amount", "many"}});
    const auto ran = ask({"course", "--plant", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    ASSERT_EQ(json["courses"].size(), 1U);
    const auto& course = json["courses"][0];
    EXPECT_EQ(course["state"], "infested");
    EXPECT_EQ(course["pest"], "Citrus mealybug");
    EXPECT_EQ(course["generations"].size(), 2U);
    EXPECT_FALSE(course["steps"].empty());
    EXPECT_EQ(json["isolation"].size(), 1U);
    bool kara = false;
    for (const auto& source : json["sources"]) {
        kara |= source["key"] == "KARA17" && source["year"] == 2017;
    }
    EXPECT_TRUE(kara);
    const auto text = ask({"course"}).out;
    EXPECT_NE(text.find("Infested:"), std::string::npos) << text;
    EXPECT_NE(text.find("Clear not before"), std::string::npos) << text;
    EXPECT_NE(text.find("Sources: "), std::string::npos) << text;
}

TEST_F(CourseCommand, ShowsOnlyThePestThatWasAskedFor)
{
    log(home::EventKind::PestFound, 1, 2, {{"pest", "mealybug"}});
    log(home::EventKind::PestFound, 2, 2, {{"pest", "thrips"}});
    const auto json = ask({"course", "--pest", "thrips", "--json"}).json();
    for (const auto& course : json["courses"]) {
        EXPECT_EQ(course["pest"], "Western flower thrips");
    }
    EXPECT_EQ(json["pest"]["botanical_name"], "Frankliniella occidentalis");
}

TEST_F(CourseCommand, ErrorsAreOneSentence)
{
    for (const auto& command : std::vector<std::vector<std::string>>{
             {"course", "--pest", "dragon"}, {"course", "--plant", "999"}, {"after-cold", "--plant", "999"},
             {"after-cold", "--plant", "1"}, {"damage", "--plant", "999"}, {"damage", "--plant", "1", "--days", "3"},
             {"damage", "--plant", "1", "--wet", "yes"}}) {
        const auto ran = ask(command);
        EXPECT_NE(ran.status, 0);
        EXPECT_TRUE(is_one_clear_error(ran)) << ran.out << ran.err;
    }
}

TEST_F(CourseCommand, DamageThatWasLoggedHasItsCourse)
{
    log(home::EventKind::ChemicalDamage, 1, 4, {{"product", "dicamba"}, {"signs", "cupped_leaves"}});
    const auto json = ask({"damage", "--plant", "1", "--json"}).json();
    ASSERT_EQ(json["courses"].size(), 1U);
    EXPECT_EQ(json["courses"][0]["mode"]["mode"], "auxin");
    EXPECT_EQ(json["courses"][0]["leach"], "yes");
    EXPECT_EQ(ask({"damage", "--plant", "2"}).status, 0);
}

TEST_F(CourseCommand, ColdNightsThatWereLoggedHaveTheirPrognosis)
{
    log(home::EventKind::ColdNight, 1, 1, {{"low_c", "-9"}, {"hours", "6"}});
    const auto ran = ask({"after-cold", "--plant", "1", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.json()["outcome"], "nothing");
    EXPECT_EQ(ran.json()["nights"][0]["course"], "hours");
}

/// The same in June, when plants stand outdoors.
class CourseInSummer : public WithDemonstration {
protected:
    CourseInSummer() : WithDemonstration("2026-06-10") {}
};

TEST_F(CourseInSummer, RunsByWhatTheThermometersTaughtAsTheRoundDoes)
{
    const Globals globals{.home = home(), .home_given = true, .today = calendar::Date{2026, 6, 10}};
    auto facts = household_facts(globals);
    ASSERT_TRUE(facts);
    const auto& plants = facts->as_told.plants;
    const auto outdoors = std::ranges::find_if(plants, [&](const home::Plant& one) {
        return one.spot && home::is_outdoors(facts->as_told.spot(*one.spot)->kind);
    });
    ASSERT_NE(outdoors, plants.end());
    const home::Plant plant = *outdoors;
    std::vector<home::Reading> readings; // Of a spot that is far warmer than its kind would have it.
    for (int ago = 1; ago <= 40; ++ago) {
        const auto night = globals.today - calendar::Days{ago};
        readings.push_back({*plant.spot, night, Celsius::from_degrees(22.0), {}, {}, {}, calendar::start_of_day_utc(night), ""});
    }
    const home::Event find{.plant = plant.id,
                           .kind = home::EventKind::PestFound,
                           .spot = {},
                           .happened = globals.today,
                           .entered = calendar::start_of_day_utc(globals.today),
                           .note = "",
                           .details = {{"pest", "mealybug"}, {"amount", "many"}}};
    {
        auto store = journal::HouseholdStore::open(home());
        ASSERT_TRUE(store);
        ASSERT_TRUE(store->record(std::span<const home::Reading>{readings}));
        ASSERT_TRUE(store->record(std::span{&find, 1}));
    }
    facts = household_facts(globals);
    ASSERT_TRUE(facts);
    const auto household = facts->household();
    const home::SpotClimate spots{household, facts->climate, facts->log};
    const auto plan = plan::plan_pest_courses(household, facts->events, plan::warmth_of(spots), globals.today);
    const auto course = std::ranges::find(plan.courses, plant.id, &plan::Course::plant);
    ASSERT_NE(course, plan.courses.end());
    ASSERT_TRUE(course->clear_not_before);
    const auto json = ask({"course", "--plant", std::to_string(plant.id), "--json"}).json();
    ASSERT_EQ(json["courses"].size(), 1U);
    EXPECT_EQ(json["courses"][0]["clear_not_before"], calendar::to_text(*course->clear_not_before));
}

class CourseInSpring : public WithDemonstration {
protected:
    CourseInSpring() : WithDemonstration("2026-05-22") {}
};

TEST_F(CourseInSpring, ThePlanSaysWhyAPlantWithPestsStaysWhereItIs)
{
    const auto plan_of = [&](home::PlantId id) {
        const auto json = ask({"moves", "--json"}).json();
        const auto found = std::ranges::find_if(json["plants"], [&](const auto& one) { return one["id"] == id; });
        return *found;
    };
    const int going = 5; // The hibiscus goes out in June.
    const auto before = plan_of(going)["stays"];
    ASSERT_EQ(before[0]["why"], "stands there");
    ASSERT_FALSE(before[1]["risk_out"].is_null());
    const auto logged = ask({"log", "event", "pest_found", "--plant", "5", "--detail", "pest=mealybug"});
    ASSERT_EQ(logged.status, 0) << logged.err;
    const auto course = ask({"course", "--plant", "5", "--json"}).json();
    const auto clear = course["courses"][0]["clear_not_before"].get<std::string>();
    ASSERT_LT(before[1]["from"].get<std::string>(), clear);
    const auto stays = plan_of(going)["stays"];
    EXPECT_TRUE(stays[0]["why"].get<std::string>().starts_with("stays apart until ")) << stays[0]["why"];
    EXPECT_NE(stays[0]["why"].get<std::string>().find(" at least: citrus mealybug found; it is carried to no clean plants"), std::string::npos);
    EXPECT_EQ(calendar::parse_date(stays[0]["to"].get<std::string>()).value() + calendar::Days{1}, calendar::parse_date(clear).value());
}

TEST(CourseCommandAlone, ShowsThePestWithoutAHousehold)
{
    const auto ran = run_command({"--home", "/no/such/folder", "course", "--pest", "spider mite"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Tetranychus urticae"), std::string::npos);
    EXPECT_NE(ran.out.find("20 d at 20"), std::string::npos) << ran.out;
}

} // namespace
} // namespace lathhouse::cli
