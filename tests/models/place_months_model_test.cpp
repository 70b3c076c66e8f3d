#include "app/models/home_model.h"
#include "app/models/place_months_model.h"
#include "tests/models/page_fixtures.h"

namespace lathhouse::models {
namespace {

/// The twelve months of the place, on the page Home.
class PlaceMonthsPage : public testing::Test {
protected:
    PlaceMonthsPage() : model([] { return Result<plan::HouseholdFacts>{plain_facts()}; }, british_look()) {}
    void open()
    {
        model.setOpen(true);
        wait_for(model);
    }
    PlaceMonthsModel model;
};

TEST_F(PlaceMonthsPage, HoldsNothingUntilItIsOpened)
{
    EXPECT_EQ(model.air()->rowCount(), 0);
    open();
    EXPECT_EQ(model.error(), QString{});
    for (SheetRows* table : {model.air(), model.sky(), model.ground()}) {
        EXPECT_EQ(table->rowCount(), 12);
        EXPECT_EQ(table->at(0, "month").toString(), "January");
        EXPECT_TRUE(table->at(11, "sentence").toString().startsWith("December: "));
    }
    EXPECT_FALSE(model.year().isEmpty());
    model.setOpen(false);
    EXPECT_EQ(model.air()->rowCount(), 0);
    EXPECT_EQ(model.year(), QString{});
}

TEST_F(PlaceMonthsPage, FiguresAreThoseOfTheStationsAndOfThePot)
{
    const auto facts = plain_facts();
    const auto months = climate::PlaceMonths::of(facts.climate, Metres::from_metres(0.3));
    const auto words = british_look().words;
    open();
    EXPECT_EQ(model.air()->at(6, "low").toString(), words.temperature(facts.climate.monthly.low[6]));
    EXPECT_EQ(model.air()->at(6, "high").toString(), words.temperature(facts.climate.monthly.high[6]));
    EXPECT_EQ(model.sky()->at(6, "light").toString(), words.decimal(months.light[6].daily_light.moles(), 1));
    EXPECT_EQ(model.ground()->at(6, "potHigh").toString(), words.temperature(months.pot[6].high));
    const QString drinks = model.ground()->at(6, "drinks").toString();
    EXPECT_EQ(drinks, words.decimal(months.pot_water[6], 2) + " L");
    model.setPot("60");
    wait_for(model);
    EXPECT_NE(model.ground()->at(6, "drinks").toString(), drinks);
    EXPECT_TRUE(model.ofPot().contains("60 cm"));
}

TEST(PlaceMonthsModel, AnAmericanKitchenReadsItsOwnMeasures)
{
    PlaceMonthsModel us([] { return Result<plan::HouseholdFacts>{plain_facts()}; }, british_look(Units::Us));
    us.setOpen(true);
    wait_for(us);
    for (int month = 0; month < 12; ++month) {
        const QString drinks = us.ground()->at(month, "drinks").toString();
        EXPECT_TRUE(drinks.endsWith("qt")) << drinks.toStdString();
    }
}

TEST_F(PlaceMonthsPage, APotThatCannotBeIsRefusedInTheUnitThatWasTyped)
{
    EXPECT_EQ(model.potTrouble(), QString{});
    EXPECT_EQ(model.usualPot(), "30");
    model.setPot("101");
    EXPECT_EQ(model.potTrouble(), "A pot is 5 to 100 cm across.");
    model.setPot("1 in");
    EXPECT_EQ(model.potTrouble(), "A pot is 2 to 39 in across.");
    model.setPot("wide");
    EXPECT_FALSE(model.potTrouble().isEmpty());
    model.setPot("12 in");
    EXPECT_EQ(model.potTrouble(), QString{});
}

} // namespace
} // namespace lathhouse::models
