#include "app/models/ask_model.h"
#include "app/models/word_form.h"
#include "app/words/course_words.h"
#include "app/words/ladder_words.h"
#include "app/words/spray_words.h"
#include "core/plan/chemical_damage.h"
#include "core/plants/pest.h"
#include "tests/models/page_fixtures.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace lathhouse::models {
namespace {

/// What is asked of a plant by hand: the first lemon, whose page is open.
class AskModelTest : public testing::Test {
protected:
    AskModelTest()
        : household(std::make_shared<MemoryHousehold>(plain_facts())), plants(plants_in_memory(household), british_look()),
          model(plants)
    {
        plants.start();
        wait_for(plants);
        open("Citrus limon");
    }
    void open(const char* kind)
    {
        for (const auto& of : household->facts().as_told.plants) {
            if (of.kind == kind) {
                plants.openId(of.id);
                plant = of.id;
            }
        }
        ASSERT_EQ(plants.opened(), plant);
    }
    void ask(int what)
    {
        model.ask(what);
        wait_for(model);
        ASSERT_TRUE(model.open());
        ASSERT_GT(model.lines()->count() + model.questions()->count(), 0);
    }
    void log(home::EventKind kind, int days_ago, std::map<std::string, std::string> details = {})
    {
        const auto happened = kShownToday - calendar::Days{days_ago};
        ASSERT_TRUE(plants.keep({.events = {{.plant = plant, .kind = kind, .spot = {}, .happened = happened,
                                             .entered = calendar::start_of_day_utc(happened), .note = "", .details = std::move(details)}},
                                 .measurements = {}},
                                "logged"));
        wait_for(plants);
    }
    /// The key of the question with these words; -1 where none has them.
    int key_of(const char* label)
    {
        for (int row = 0; row < model.questions()->count(); ++row) {
            if (model.questions()->at(row, "label").toString() == QString::fromUtf8(label)) {
                return model.questions()->at(row, "key").toInt();
            }
        }
        ADD_FAILURE() << "no question " << label;
        return -1;
    }
    QVariant at(const char* label, const char* role)
    {
        const int key = key_of(label);
        for (int row = 0; row < model.questions()->count(); ++row) {
            if (model.questions()->at(row, "key").toInt() == key) {
                return model.questions()->at(row, QString::fromLatin1(role));
            }
        }
        return {};
    }
    void fill(const char* label, const char* value) { model.fill(key_of(label), QString::fromUtf8(value)); }
    /// Ticks the choice with these words.
    void tick(const char* sign)
    {
        for (int row = 0; row < model.questions()->count(); ++row) {
            const auto choice = model.questions()->at(row, "choices").toStringList().indexOf(QString::fromUtf8(sign));
            if (choice >= 0) {
                model.toggle(model.questions()->at(row, "key").toInt(), static_cast<int>(choice));
                return;
            }
        }
        ADD_FAILURE() << "no sign " << sign;
    }
    /// Words of every line of that kind, one below the other.
    QString said(int kind = -1)
    {
        QStringList all;
        for (int row = 0; row < model.lines()->count(); ++row) {
            if (kind < 0 || model.lines()->at(row, "kind").toInt() == kind) {
                all.append(model.lines()->at(row, "sentence").toString());
            }
        }
        return all.join(QLatin1Char('\n'));
    }
    bool says(const char* words, int kind = -1)
    {
        const bool there = said(kind).contains(QString::fromUtf8(words));
        EXPECT_TRUE(there) << "no \"" << words << "\" in:\n" << model.headline().toStdString() << '\n' << said().toStdString();
        return there;
    }

    std::shared_ptr<MemoryHousehold> household;
    PlantsModel plants;
    AskModel model;
    home::PlantId plant = 0;
};

TEST_F(AskModelTest, AColdNightIsAskedOfAKindThatIsNotInTheHousehold)
{
    ask(AskModel::AfterCold);
    fill("Lowest at the plant", "4");
    const QString own = said();
    fill("Another kind of plant", "Piece of lilly");
    EXPECT_TRUE(at("Another kind of plant", "trouble").toString().contains("No kind here is called")) << model.headline().toStdString();
    fill("Another kind of plant", "Peace lili");
    EXPECT_TRUE(at("Another kind of plant", "trouble").toString().contains("Did you mean"))
        << at("Another kind of plant", "trouble").toString().toStdString();
    fill("Another kind of plant", "peace lily");
    EXPECT_EQ(at("Another kind of plant", "trouble").toString(), "");
    const auto kind = *plants::PlantReference::built_in().find("Peace lily");
    EXPECT_TRUE(says(kind->common_names.front().c_str(), AskLine::Head));
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_TRUE(says(("Safe night " + words.temperature(kind->lines.safe_night) + ", damage begins at " +
                      words.temperature(kind->lines.damage_begins)).toUtf8().constData(),
                     AskLine::Plain));
    EXPECT_EQ(at("From sunset to sunrise", "note").toString(), "Blank: 12.0 h");
    EXPECT_FALSE(model.canWrite());
    EXPECT_TRUE(model.whyNot().contains("not among yours")) << model.whyNot().toStdString();
    fill("Lowest at the plant", "");
    EXPECT_EQ(model.headline(), "Write the lowest of the night at the plant.");
    fill("Lowest at the plant", "4");
    fill("Another kind of plant", " ");
    EXPECT_EQ(said(), own);
}

TEST_F(AskModelTest, ASprayIsAskedOfAKindThatIsNotInTheHousehold)
{
    ask(AskModel::Spray);
    const QString own = said();
    fill("Another kind of plant", "no such plant");
    EXPECT_TRUE(at("Another kind of plant", "trouble").toString().contains("No kind here is called"));
    EXPECT_EQ(model.headline(), "The answer stands here once what is marked is right.");
    fill("Another kind of plant", "Boston fern");
    model.fill(key_of("What is to be sprayed or wiped on"), "0");
    const auto fern = *plants::PlantReference::built_in().find("Boston fern");
    plan::SprayAnswers answers;
    answers.spray = plan::SprayKind::Soap;
    answers.plant = fern;
    const auto findings = plan::decide_spray(answers).findings;
    ASSERT_TRUE(std::ranges::any_of(findings, [](const auto& of) { return of.check == plan::SprayCheck::SensitiveKind; }));
    for (const auto& of : findings) {
        if (of.check == plan::SprayCheck::SensitiveKind) {
            EXPECT_TRUE(says(words::spray_finding(of, unit_system_of(british_look().words)).c_str()));
        }
    }
    EXPECT_FALSE(model.canWrite());
    EXPECT_TRUE(model.whyNot().contains("not among yours"));
    fill("Another kind of plant", "");
    EXPECT_EQ(said(), own);
}

TEST_F(AskModelTest, RowsAreSoundAndNothingIsAskedWithoutAPlant)
{
    QAbstractItemModelTester questions(model.questions());
    QAbstractItemModelTester lines(model.lines());
    plants.close();
    model.ask(AskModel::AfterCold);
    EXPECT_FALSE(model.open());
    open("Citrus limon");
    model.ask(99);
    EXPECT_FALSE(model.open());
    for (const int what : {AskModel::AfterCold, AskModel::Damage, AskModel::Spray, AskModel::Course, AskModel::Water, AskModel::Harden}) {
        ask(what);
        EXPECT_TRUE(model.title().contains("Lemon")) << model.title().toStdString();
    }
    model.leave();
    EXPECT_FALSE(model.open());
    model.write();
    EXPECT_EQ(household->facts().events.size(), plain_facts().events.size());
}

TEST_F(AskModelTest, AColdNightIsJudgedByThePlantsLinesAsItIsTyped)
{
    open("Spathiphyllum wallisii"); // Damage begins well above freezing.
    ask(AskModel::AfterCold);
    EXPECT_TRUE(model.headline().contains("lowest of the night"));
    EXPECT_FALSE(model.canWrite());
    fill("Lowest at the plant", "25");
    EXPECT_TRUE(model.headline().contains("nothing is to be expected")) << model.headline().toStdString();
    EXPECT_FALSE(model.canWrite()) << "no harm, nothing to write down";
    fill("Lowest at the plant", QString::fromUtf8("−2,5").toUtf8().constData());
    EXPECT_TRUE(model.headline().contains("Death is")) << model.headline().toStdString();
    says("Safe night");
    says("No feed until new growth has been logged.");
    says("Look on day 3, 7 and 14");
    says("Tue 19 May: Look at leaves", AskModel::Dated); // The third day after 16 May.
    says("Sat 23 May: Look at leaves", AskModel::Dated);
    says("Sat 30 May: Look at leaves", AskModel::Dated);
    says("Sources: ", AskModel::Quiet);
    EXPECT_TRUE(model.canWrite());
}

TEST_F(AskModelTest, SeveralNightsAreOneCaseAndAreWrittenDownAtOnce)
{
    ask(AskModel::AfterCold);
    fill("Lowest at the plant", "-3 -4,5; -5");
    fill("The last of them ended", "1");
    says("Nights add up", AskModel::Quiet);
    fill("High of the day", "9");
    const auto before = household->facts().events.size();
    model.write();
    wait_for(plants);
    EXPECT_FALSE(model.open());
    const auto events = household->facts().events;
    ASSERT_EQ(events.size(), before + 3);
    EXPECT_EQ(events.back().kind, home::EventKind::ColdNight);
    EXPECT_EQ(events.back().happened, kShownToday - calendar::Days{1});
    EXPECT_EQ(events.back().detail("low_c"), "-5.0");
    EXPECT_EQ(events.back().detail("high_c"), "9.0");
    EXPECT_EQ(events[before].happened, kShownToday - calendar::Days{3});
    EXPECT_EQ(events[before].detail("low_c"), "-3.0");
    // The journal answers from now on, and the same nights are not written twice.
    ask(AskModel::AfterCold);
    says("Fri 15 May: Low", AskModel::Dated);
    EXPECT_EQ(model.whyNot(), "As the journal has it.");
    fill("Lowest at the plant", "-5");
    fill("The last of them ended", "1");
    EXPECT_FALSE(model.canWrite());
    EXPECT_TRUE(model.whyNot().contains("already")) << model.whyNot().toStdString();
    model.leave();
    plants.undo();
    wait_for(plants);
    EXPECT_EQ(household->facts().events.size(), before);
}

TEST_F(AskModelTest, ALoggedColdNightWithoutItsLowestGivesItsDay)
{
    log(home::EventKind::ColdNight, 2);
    ask(AskModel::AfterCold);
    EXPECT_EQ(at("The last of them ended", "value"), "2");
    EXPECT_TRUE(model.headline().contains("Thu 14 May")) << model.headline().toStdString();
    fill("Lowest at the plant", "-6");
    EXPECT_TRUE(model.canWrite()) << "its lowest is news";
}

TEST_F(AskModelTest, WhatCannotBeAColdNightIsSaidInPlace)
{
    ask(AskModel::AfterCold);
    QSignalSpy wrong(&model, &AskModel::wrong);
    fill("Lowest at the plant", "icy");
    EXPECT_TRUE(at("Lowest at the plant", "trouble").toString().contains("icy"));
    EXPECT_EQ(model.lines()->count(), 0);
    model.write();
    ASSERT_EQ(wrong.count(), 1);
    EXPECT_EQ(wrong.front().front().toInt(), key_of("Lowest at the plant"));
    fill("Lowest at the plant", "4");
    fill("Two hours after sunset", "1");
    EXPECT_TRUE(at("Two hours after sunset", "trouble").toString().contains("exchange"));
    fill("Two hours after sunset", "");
    fill("From sunset to sunrise", "30");
    EXPECT_FALSE(at("From sunset to sunrise", "trouble").toString().isEmpty());
    fill("From sunset to sunrise", "");
    fill("The last of them ended", "soon");
    EXPECT_FALSE(at("The last of them ended", "trouble").toString().isEmpty());
    fill("The last of them ended", "");
    EXPECT_EQ(at("The last of them ended", "trouble").toString(), "");
    EXPECT_GT(model.lines()->count(), 0);
    fill("Lowest at the plant", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15");
    EXPECT_TRUE(at("Lowest at the plant", "trouble").toString().contains("14 nights"));
}

TEST_F(AskModelTest, SignsLookAlongAListAndAreNeverCertain)
{
    ask(AskModel::Damage);
    EXPECT_TRUE(model.headline().contains("not known"));
    tick("New leaves are cupped or drawn together");
    tick("Stems and leaf stalks twist or bend down");
    fill("From the spray to the first signs", "2");
    EXPECT_EQ(model.headline(), "It looks most like hormone weed-killers. That is not certain.");
    says("Fits well: hormone weed-killers. For it: ");
    says("do not wash the mix through");
    says("This is no diagnosis and no legal proof.");
    tick("New leaves are cupped or drawn together"); // Not so.
    EXPECT_FALSE(said().contains("cupped or drawn"));
}

TEST_F(AskModelTest, FoodAndPeopleStandFirstAndSourcesThatDifferAreBothShown)
{
    ask(AskModel::Damage);
    EXPECT_EQ(model.warning(), "Do not eat.");
    EXPECT_TRUE(model.lines()->at(0, "words").toString().startsWith("Do not eat anything of this plant"));
    EXPECT_EQ(model.lines()->at(0, "kind").toInt(), AskModel::Caution);
    says("ring the poison line, a doctor or a vet", AskModel::Caution);
    fill("Is any of it eaten?", "2");
    EXPECT_FALSE(said().contains("Do not eat"));
    EXPECT_EQ(model.warning(), "");
    fill("What was sprayed", "Glyphosate");
    EXPECT_EQ(model.headline(), "What is known of glyphosate, and what to do");
    says("Sources disagree: ", AskModel::Strong);
    says("No feed before ");
    fill("Is it still wet on the leaves?", "1");
    says("Put on gloves and rinse");
    fill("What was sprayed", "dicamba");
    fill("Mix in the pot", "2");
    says("4.0 L of water, twice the pot's volume");
    fill("What was sprayed", "blue stuff");
    says("is not in the table; read on the label");
    fill("Mix in the pot", "much");
    EXPECT_FALSE(at("Mix in the pot", "trouble").toString().isEmpty());
}

TEST_F(AskModelTest, DamageIsWrittenWithAllThatIsKnownAndAnsweredFromTheJournal)
{
    ask(AskModel::Damage);
    EXPECT_FALSE(at("Which, of those in the journal", "shown").toBool());
    fill("What was sprayed", "glyphosate");
    fill("It happened", "9");
    fill("From the spray to the first signs", "8");
    fill("Is any of it eaten?", "1");
    tick("New leaves are small and crowded or fern-like");
    model.write();
    wait_for(plants);
    const auto event = household->facts().events.back();
    EXPECT_EQ(event.kind, home::EventKind::ChemicalDamage);
    EXPECT_EQ(event.happened, kShownToday - calendar::Days{9});
    EXPECT_EQ(event.detail("product"), "glyphosate");
    EXPECT_EQ(event.detail("signs"), "fern_like_tips");
    EXPECT_EQ(event.detail("first_signs_days"), "8");
    EXPECT_EQ(event.detail("edible"), "yes");
    EXPECT_EQ(event.detail("still_wet"), "");

    ask(AskModel::Damage);
    EXPECT_TRUE(at("Which, of those in the journal", "shown").toBool());
    EXPECT_EQ(at("What was sprayed", "value"), "glyphosate");
    EXPECT_EQ(at("It happened", "value"), "9");
    EXPECT_EQ(model.whyNot(), "As the journal has it.");
    EXPECT_TRUE(said(AskModel::Past).contains("Photograph")) << said().toStdString();
    EXPECT_FALSE(model.canWrite());
    fill("It happened", "8");
    EXPECT_TRUE(model.whyNot().contains("another case")) << model.whyNot().toStdString();
    fill("It happened", "9");
    // More is known since: told anew, and it stays one case.
    fill("What was sprayed", "dicamba");
    model.write();
    wait_for(plants);
    EXPECT_EQ(household->facts().events.back().detail("product"), "dicamba");
    EXPECT_EQ(household->facts().events.back().detail("signs"), "fern_like_tips");
    ask(AskModel::Damage);
    EXPECT_EQ(at("Which, of those in the journal", "choices").toStringList().size(), 2);
    EXPECT_EQ(at("What was sprayed", "value"), "dicamba");
    fill("Which, of those in the journal", "1"); // Another.
    EXPECT_EQ(at("What was sprayed", "value"), "");
    EXPECT_TRUE(model.canWrite());
}

TEST_F(AskModelTest, DamageToldAnewKeepsWhatTheFormDoesNotAskAndWhatWasNotTouched)
{
    const auto& signs = plan::DamageTable::built_in().signs();
    ASSERT_EQ(signs[0].group, signs[1].group);
    const std::string seen = signs[1].key + ";" + signs[0].key; // In another order than the form has them.
    const auto happened = kShownToday - calendar::Days{9};
    ASSERT_TRUE(plants.keep({.events = {{.plant = plant, .kind = home::EventKind::ChemicalDamage, .spot = {}, .happened = happened,
                                         .entered = calendar::start_of_day_utc(happened), .note = "the neighbour sprayed",
                                         .details = {{"product", "glyphosate"}, {"signs", seen}, {"first_signs_days", "2.5"},
                                                     {"wind", "west"}}}},
                             .measurements = {}},
                            "logged"));
    wait_for(plants);
    ask(AskModel::Damage);
    EXPECT_EQ(model.whyNot(), "As the journal has it.");
    fill("What was sprayed", "dicamba");
    model.write();
    wait_for(plants);
    const auto event = household->facts().events.back();
    EXPECT_EQ(event.detail("product"), "dicamba");
    EXPECT_EQ(event.detail("first_signs_days"), "2.5");
    EXPECT_EQ(event.note, "the neighbour sprayed");
    EXPECT_EQ(event.detail("wind"), "west");
}

TEST_F(AskModelTest, ASprayWaitsForOpenQuestionsAndNeverBreaksALabel)
{
    open("Phalaenopsis hybrids");
    ask(AskModel::Spray);
    EXPECT_EQ(model.headline(), "Wait: questions are open.");
    says("Was the label read?");
    EXPECT_FALSE(at("Does the label forbid this plant, pest or place?", "shown").toBool());
    fill("Was the label read?", "1");
    EXPECT_TRUE(at("Does the label forbid this plant, pest or place?", "shown").toBool());
    fill("Does the label forbid this plant, pest or place?", "1");
    EXPECT_EQ(model.headline(), "Never: not like this.");
    says("The label forbids", AskModel::Caution);
}

TEST_F(AskModelTest, ASprayThatNothingSpeaksAgainstIsWrittenDownOnceDone)
{
    open("Phalaenopsis hybrids");
    ask(AskModel::Spray);
    for (const auto& [label, value] : std::initializer_list<std::pair<const char*, const char*>>{
             {"Was the label read?", "1"}, {"Does the label forbid this plant, pest or place?", "2"},
             {"How many hours ago was one leaf tried?", "30"}, {"Was the tried leaf hurt?", "2"},
             {"How warm does it get until it is dry?", "21"}, {"Is it sprayed outdoors?", "2"},
             {"Is there fresh air?", "1"}, {"Are children near?", "2"}, {"Are animals near, fish too?", "2"},
             {"Has anyone near asthma, or is anyone pregnant?", "2"}, {"Is it in direct sun?", "2"}, {"Is it dry or wilted?", "2"},
             {"Is it a seedling?", "2"}, {"Is any of it eaten?", "2"}}) {
        EXPECT_FALSE(model.canWrite()) << label;
        fill(label, value);
    }
    EXPECT_EQ(model.headline(), "Go: nothing speaks against it.") << said().toStdString();
    says("Gloves on");
    EXPECT_TRUE(model.warning().contains("label"));
    model.write();
    wait_for(plants);
    EXPECT_EQ(household->facts().events.back().kind, home::EventKind::Treated);
    EXPECT_EQ(household->facts().events.back().detail("with"), "soap");
}

TEST_F(AskModelTest, HeatDecidesByTheStricterSourceAndBothAreShown)
{
    ask(AskModel::Spray);
    fill("What is to be sprayed or wiped on", "2"); // Neem.
    fill("How warm does it get until it is dry?", "29");
    says("Sources disagree on the heat limit");
    says("Wait for other weather", AskModel::Strong);
    EXPECT_TRUE(at("How many hours ago was it mixed?", "shown").toBool());
    EXPECT_FALSE(at("Is a flame, stove or spark near?", "shown").toBool());
    fill("What is to be sprayed or wiped on", "3");
    fill("Is a flame, stove or spark near?", "1");
    EXPECT_EQ(model.headline(), "Never: not like this.");
    fill("How warm does it get until it is dry?", "hot");
    EXPECT_FALSE(at("How warm does it get until it is dry?", "trouble").toString().isEmpty());
}

TEST_F(AskModelTest, ACourseHasItsStepsItsEndAndWhatIsKnownOfThePest)
{
    ask(AskModel::Course);
    EXPECT_TRUE(model.headline().startsWith("Clean: ")) << model.headline().toStdString();
    EXPECT_FALSE(said().contains("Clear not before"));
    model.leave();
    log(home::EventKind::PestFound, 3, {{"pest", "mealybug"}, {"amount", "heavy"}});
    ask(AskModel::Course);
    EXPECT_TRUE(model.headline().startsWith("Infested: citrus mealybug found, last on 13 May")) << model.headline().toStdString();
    says("Citrus mealybug", AskModel::Head);
    says("A generation by ");
    says("Since the last find on Wed 13 May: treated 0 times, clean looks 0.");
    says("Heavily infested: throwing it away, bagged");
    says("Treat it (", AskModel::Dated);
    says("Look it over: ", AskModel::Dated);
    says("Clean plants first, suspect ones next", AskModel::Caution);
    says("Seen as: white cotton in the joints");
    says("Sources: ", AskModel::Quiet);
    fill("What is known of a pest", "1"); // The first of the table, whatever the plant has.
    const auto first = plants::PestTable::built_in().pests().front().botanical_name;
    says(first.c_str(), AskModel::Head);
}

TEST(CourseWords, InTheColdACourseCannotEnd)
{
    plan::Course course{};
    course.pest = &plants::PestTable::built_in().pests().front();
    course.state = plan::PestState::Infested;
    course.days_at_20_degrees = 41;
    course.generations = {{.study = "England", .sources = {}, .through = {}, .basis = plants::ClockBasis::Derived}};
    const auto said = words::course_ends(course);
    ASSERT_EQ(said.size(), 2U);
    EXPECT_EQ(said[0], "A generation by England (reckoned from its days at one temperature): never at these temperatures.");
    EXPECT_TRUE(said[1].starts_with("It cannot be declared clear at this temperature") && said[1].ends_with("about 41 days."));
    course.clear_not_before = kShownToday;
    course.clock_stands_today = true;
    EXPECT_EQ(words::course_ends(course).back(), "Today it is too cold for the clock to run.");
}

TEST_F(AskModelTest, EveryDayOfGoingOutAndComingInIsToldWithItsNotes)
{
    ask(AskModel::Harden);
    const auto& ladders = plants.facts().ground->parts->ladders;
    std::size_t items = 0;
    std::vector<const plan::Ladder*> own;
    for (const auto& ladder : ladders) {
        if (ladder.plant == plant) {
            own.push_back(&ladder);
            items += ladder.items.size();
        }
    }
    ASSERT_FALSE(own.empty()) << "the lemon comes in in autumn";
    EXPECT_EQ(model.questions()->count(), 0);
    const auto& household_shown = plants.facts().ground->household;
    EXPECT_EQ(model.headline(), upper_first(text(words::ladder_head(*own[0], household_shown, words::UnitSystem::Metric))));
    std::size_t dated = 0;
    for (int row = 0; row < model.lines()->count(); ++row) {
        const int kind = model.lines()->at(row, "kind").toInt();
        if (kind == AskModel::Dated || kind == AskModel::Past) {
            EXPECT_FALSE(model.lines()->at(row, "date").toString().isEmpty());
            ++dated;
        }
    }
    EXPECT_EQ(dated, items);
    for (const auto& note : words::ladder_notes(*own[0], household_shown, words::UnitSystem::Metric)) {
        EXPECT_TRUE(said().contains(upper_first(text(note)))) << note;
    }
    EXPECT_TRUE(said(AskModel::Quiet).contains("without a source"));
    EXPECT_FALSE(model.canWrite());
}

TEST_F(AskModelTest, APlantThatStaysWhereItIsHasNoDaysToTell)
{
    const auto& ground = *plants.facts().ground;
    const auto stays = std::ranges::find_if(ground.household.plants, [&](const home::Plant& of) {
        return std::ranges::find(ground.parts->ladders, of.id, &plan::Ladder::plant) == ground.parts->ladders.end();
    });
    ASSERT_NE(stays, ground.household.plants.end());
    plants.openId(stays->id);
    model.ask(AskModel::Harden);
    wait_for(model);
    EXPECT_TRUE(model.headline().startsWith("Neither goes out")) << model.headline().toStdString();
    EXPECT_EQ(model.lines()->count(), 0);
}

TEST_F(AskModelTest, WaterRootsAndWinterAreToldOfOnePlant)
{
    ask(AskModel::Water);
    EXPECT_TRUE(model.headline().startsWith("Look at the mix")) << model.headline().toStdString();
    says("A look is a finger in the mix or the pot lifted");
    says("draws about");
    says("In its pot, roots are at risk from ");
    says("Its winter by the plan: ");
    says("Empty saucers.", AskModel::Quiet);
    const auto fortnight = said(AskModel::Dated).count(QLatin1Char('\n'));
    fill("Looks of the next", "60");
    EXPECT_GT(said(AskModel::Dated).count(QLatin1Char('\n')), fortnight);
    fill("Looks of the next", "0");
    EXPECT_TRUE(at("Looks of the next", "trouble").toString().contains("365"));
    EXPECT_FALSE(model.canWrite());
}

TEST_F(AskModelTest, FromTheRoundNothingIsWrittenHereAndThePageNeedsNotBeOpen)
{
    PlantsModel fresh(plants_in_memory(household), british_look());
    AskModel of_round(fresh);
    of_round.ask_spray(plant);
    EXPECT_TRUE(of_round.open());
    wait_for(fresh);
    wait_for(of_round);
    EXPECT_TRUE(of_round.title().contains("Lemon")) << of_round.title().toStdString();
    EXPECT_GT(of_round.questions()->count(), 10);
}

} // namespace
} // namespace lathhouse::models
