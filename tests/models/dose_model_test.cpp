#include "app/models/dose_model.h"
#include "tests/models/page_fixtures.h"

#include <QSignalSpy>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

/// The form, with what it remembers in a file of its own.
class DoseModelTest : public testing::Test {
protected:
    DoseModelTest() : model(jugs_in_memory(), kept(), british_look().words) {}
    std::shared_ptr<KeptSettings> kept() const { return std::make_shared<KeptSettings>(folder.filePath("window.ini")); }
    void ask(double ppm = 100.0, std::optional<plants::FeedClass> feeder = plants::FeedClass::Medium)
    {
        model.ask({.plant = "Lemon", .ppm = ppm, .feeder = feeder});
        wait_for(model);
    }
    QTemporaryDir folder;
    DoseModel model;
};

TEST_F(DoseModelTest, DoseIsThatOfTheFormulaInGramsAndSpoons)
{
    ask();
    EXPECT_TRUE(model.open());
    EXPECT_EQ(model.title(), "How much feed for Lemon");
    EXPECT_EQ(model.strength(), "100");
    EXPECT_EQ(model.dose(), "") << "no feed is known yet";
    model.setFeed("20-10-20");
    model.setWater("2 L");
    // Grams a litre = ppm / (10 x %N): 0.5, so 1.0 g in two litres.
    EXPECT_EQ(model.dose(), "1.0 g of 20-10-20 into 2.0 L of water.");
    EXPECT_TRUE(model.remarks().join(' ').contains("Without the weight of a level teaspoon"));
    EXPECT_TRUE(model.remarks().join(' ').contains("Makes 100 ppm nitrogen, 22 ppm phosphorus, 83 ppm potassium."));
    model.setWeight("4,0"); // A comma is a decimal mark in every language.
    EXPECT_EQ(model.dose(), QString::fromUtf8("1.0 g of 20-10-20, about ¼ teaspoon, into 2.0 L of water."));
    EXPECT_FALSE(model.remarks().join(' ').contains("Without the weight"));
    EXPECT_FALSE(model.cautions().isEmpty());
}

TEST_F(DoseModelTest, LabelsAreReadAsPeopleWriteThem)
{
    ask();
    model.setWater("10 L");
    for (const char* label : {"8-8-6", "8 - 8 - 6", "8+8+6", "8/8/6", "8 8 6", "8–8–6", "8,0-8-6"}) {
        model.setFeed(QString::fromUtf8(label));
        EXPECT_TRUE(model.dose().startsWith("12.5 g of ")) << label << ": " << model.dose().toStdString(); // 1.25 g a litre
    }
}

TEST_F(DoseModelTest, AmericanKitchensGetSpoonsFirstAndTheirOwnCans)
{
    DoseModel us(jugs_in_memory(), kept(), british_look(Units::Us).words);
    us.ask({.plant = "Lemon", .ppm = 100.0, .feeder = {}});
    wait_for(us);
    us.setFeed("20-10-20");
    us.setWeight("4.93");
    for (const char* water : {"1 gallon", "1 gal", "4 quarts", "16 cups"}) {
        us.setWater(water);
        EXPECT_EQ(us.dose(), QString::fromUtf8("About ⅜ teaspoon (1.9 g) of 20-10-20 into 1 gallon of water.")) << water;
    }
    us.setWater(QString::fromUtf8("½ gallon"));
    EXPECT_TRUE(us.dose().contains(QString::fromUtf8("(0.95 g)"))) << us.dose().toStdString();
    EXPECT_EQ(us.cans()->at(0, "words").toString(), "1 quart");
}

TEST_F(DoseModelTest, ACanAndASpoonOfOnesOwnAreKeptAndTaken)
{
    ask();
    model.setFeed("20-10-20");
    model.setWeight("4");
    model.setCanName("blue can");
    model.setCanHolds("1,5 l");
    model.keepCan();
    wait_for(model);
    EXPECT_EQ(model.water(), "blue can");
    EXPECT_EQ(model.cans()->at(0, "words").toString(), "blue can");
    EXPECT_EQ(model.dose(), QString::fromUtf8("0.75 g of 20-10-20, about ¼ teaspoon, into 1.5 L (blue can) of water."));
    model.setCanName("mustard spoon");
    model.setCanHolds("0.9 ml");
    model.keepCan();
    wait_for(model);
    EXPECT_EQ(model.water(), "blue can") << "nobody waters with a spoon";
    EXPECT_TRUE(model.dose().contains(QString::fromUtf8("about 1 × mustard spoon"))) << model.dose().toStdString();
}

TEST_F(DoseModelTest, WhatIsWrongIsSaidInPlaceAndWhatWasTypedStays)
{
    ask();
    QSignalSpy wrong(&model, &DoseModel::wrong);
    const auto refused = [&](DoseModel::Field field) {
        model.keep();
        EXPECT_TRUE(model.open());
        EXPECT_EQ(model.troubleField(), field) << model.trouble().toStdString();
        EXPECT_TRUE(model.trouble().endsWith('.'));
    };
    refused(DoseModel::Feed);
    model.setFeed("0-10-10");
    EXPECT_EQ(model.trouble(), "") << "typing takes it away";
    refused(DoseModel::Feed);
    model.setFeed("20-10-20");
    model.setWeight("400");
    refused(DoseModel::Weight);
    model.setWeight("");
    model.setStrength("");
    refused(DoseModel::Strength);
    model.setStrength("9000");
    refused(DoseModel::Strength);
    model.setStrength("100");
    model.setWater("a splash");
    refused(DoseModel::Water);
    model.setWater("2");
    EXPECT_EQ(model.dose(), "1.0 g of 20-10-20 into 2.0 L of water.") << "a bare number is litres";
    model.setCanName("2 cans");
    model.keepCan();
    EXPECT_EQ(model.troubleField(), DoseModel::CanName);
    model.setCanName("cup");
    model.setCanHolds("1 L");
    model.keepCan();
    EXPECT_EQ(model.troubleField(), DoseModel::CanName) << "a measure's name";
    model.setCanName("big can");
    model.setCanHolds("lots");
    model.keepCan();
    EXPECT_EQ(model.troubleField(), DoseModel::CanHolds);
    EXPECT_EQ(model.canHolds(), "lots");
    EXPECT_EQ(wrong.count(), 9);
}

TEST_F(DoseModelTest, WhyThereIsNoDoseIsSaidWhileItIsTyped)
{
    ask();
    EXPECT_EQ(model.why(), "") << "blank is not wrong";
    model.setFeed("abc");
    EXPECT_TRUE(model.why().startsWith("Write the three numbers")) << model.why().toStdString();
    model.setFeed("200-300-400");
    EXPECT_TRUE(model.why().startsWith("The first number, nitrogen")) << model.why().toStdString();
    model.setFeed("");
    model.setStrength("5000");
    EXPECT_TRUE(model.why().startsWith("Nitrogen lies within")) << "though the feed is blank: " << model.why().toStdString();
    model.setFeed("20-10-20");
    model.setStrength("100");
    model.setWater("0 L");
    EXPECT_TRUE(model.why().startsWith("Write how much water")) << model.why().toStdString();
    model.setWater("2 L");
    EXPECT_EQ(model.why(), "");
    EXPECT_FALSE(model.dose().isEmpty());
}

TEST_F(DoseModelTest, WhatWasUsedIsRememberedAndEachFeedSaysItsDose)
{
    EXPECT_EQ(model.revision(), 0);
    EXPECT_EQ(model.line(100.0), "");
    ask();
    model.setFeed("20-10-20");
    model.setWater("2 L");
    model.keep();
    EXPECT_FALSE(model.open());
    EXPECT_GT(model.revision(), 0);
    EXPECT_EQ(model.line(150.0), "1.5 g of 20-10-20 into 2.0 L of water.");
    EXPECT_EQ(model.line(0.0), "") << "no strength, no dose";
    ask();
    model.setFeed("3-3-3");
    model.leave();
    EXPECT_TRUE(model.line(100.0).contains("20-10-20")) << "what was left is not used";
    DoseModel again(jugs_in_memory(), kept(), british_look().words);
    EXPECT_EQ(again.line(150.0), "1.5 g of 20-10-20 into 2.0 L of water.");
}

TEST_F(DoseModelTest, TooMuchForThePlantIsSaid)
{
    ask(400.0, plants::FeedClass::Light);
    model.setFeed("20-10-20");
    EXPECT_TRUE(model.remarks().join(' ').contains("too strong for a light feeder"));
    EXPECT_TRUE(model.remarks().join(' ').contains("above what greenhouses give"));
    ask(100.0, plants::FeedClass::None);
    model.setFeed("20-10-20");
    EXPECT_TRUE(model.remarks().join(' ').contains("needs none of it"));
}

TEST_F(DoseModelTest, OilAndSoapAreMeasuredByTheWater)
{
    model.ask_spray("Ficus");
    wait_for(model);
    model.setWater("1 L");
    model.setPercent("1");
    EXPECT_EQ(model.title(), "How much oil or soap for Ficus");
    EXPECT_EQ(model.dose(), "10 ml, about 2 teaspoons, into 1.0 L of water.");
    const auto cautions = model.cautions();
    model.setPercent("5");
    EXPECT_TRUE(model.remarks().join(' ').contains("burns leaves"));
    model.setSoap(true);
    EXPECT_NE(model.cautions(), cautions);
    model.setPercent("none");
    model.keep();
    EXPECT_EQ(model.troubleField(), DoseModel::Percent);
    model.setPercent("1");
    model.keep();
    EXPECT_FALSE(model.open());
    EXPECT_EQ(model.revision(), 0) << "a spray is not the feed";
}

} // namespace
} // namespace lathhouse::models
