#include "core/plan/kitchen_measures.h"
#include "core/plan/mix.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lathhouse::plan {
namespace {

// UMass Extension, fertilizer calculations for greenhouse crops: 200 ppm of nitrogen takes 13.5 ounces of
// 20-20-20, or 18 of 15-15-15, in 100 US gallons. One ounce is 28.3495 g; tolerance: the table's half ounce
// / 2.
TEST(FeedMix, AgreesWithThePublishedTable)
{
    const auto tank = read_amount("100 gal-us").value();
    const auto twenty = feed_mix(*read_feed_label("20-20-20"), 200.0, tank, FeedForm::Powder, std::nullopt);
    const auto fifteen = feed_mix(*read_feed_label("15-15-15"), 200.0, tank, FeedForm::Powder, std::nullopt);
    EXPECT_NEAR(*twenty->grams / 28.3495, 13.5, 0.25);
    EXPECT_NEAR(*fifteen->grams / 28.3495, 18.0, 0.25);
}

TEST(FeedMix, RefusesStrengthsAndDensitiesThatNoFeedHas)
{
    const auto label = *read_feed_label("20-20-20");
    for (const double ppm : {0.0, -5.0, 2000.1, std::nan("")}) {
        const auto mix = feed_mix(label, ppm, Litres::from_litres(1.0), FeedForm::Powder, std::nullopt);
        ASSERT_FALSE(mix) << ppm;
        EXPECT_EQ(mix.error().code, ErrorCode::OutOfRange);
    }
    for (const double density : {0.0, 0.19, 3.01}) {
        EXPECT_FALSE(feed_mix(label, 100.0, Litres::from_litres(1.0), FeedForm::Powder, density)) << density;
    }
}

TEST(FeedMix, TurnsTheLabelsOxidesIntoElements)
{
    // 100 g of P2O5 hold 43.64 g of P and 100 g of K2O 83.01 g of K (IUPAC atomic
    // weights 30.974, 39.098, 15.999).
    const auto label = read_feed_label("10-100-0");
    EXPECT_FALSE(label) << "more than everything";
    const auto mix =
        feed_mix(*read_feed_label("20-10-20"), 150.0, Litres::from_litres(2.0), FeedForm::Powder, {});
    EXPECT_NEAR(*mix->grams, 1.5, 1e-12);
    EXPECT_NEAR(*mix->phosphorus_ppm, 75.0 * 2 * 30.974 / (2 * 30.974 + 5 * 15.999), 0.01);
    EXPECT_NEAR(*mix->potassium_ppm, 150.0 * 2 * 39.098 / (2 * 39.098 + 15.999), 0.02);
    EXPECT_FALSE(mix->volume) << "a powder has no spoons without its density";
    EXPECT_FALSE(mix->drops_about);
}

TEST(FeedMix, GivesSpoonsOfAPowderAndDropsOfALiquidByTheirDensity)
{
    const auto label = *read_feed_label("20-10-20");
    const auto powder = feed_mix(label, 100.0, Litres::from_litres(4.0), FeedForm::Powder, 1.0);
    EXPECT_NEAR(powder->volume->millilitres(), 2.0, 1e-12);
    EXPECT_FALSE(powder->drops_about);
    const auto liquid = feed_mix(label, 100.0, Litres::from_litres(4.0), FeedForm::Liquid, 1.25);
    EXPECT_NEAR(*liquid->drops_about, 32.0, 1e-9);
}

TEST(FeedMix, WarnsAboveWhatGreenhousesGive)
{
    const auto label = *read_feed_label("20-10-20");
    const auto warnings = [&](double ppm) {
        return feed_mix(label, ppm, Litres::from_litres(1.0), FeedForm::Powder, 1.0)->warnings.size();
    };
    EXPECT_EQ(warnings(250.0), 0U);
    EXPECT_EQ(warnings(251.0), 1U);
}

// Common practice for a spray: one US teaspoon in four US cups of water is 0.52 percent.
TEST(PercentMix, MakesATeaspoonInFourCups)
{
    const auto mix = percent_mix(0.52, read_amount("4 cups").value());
    EXPECT_NEAR(mix->volume->teaspoons(), 1.0, 0.005);
    EXPECT_NEAR(*mix->drops_about, 98.4, 0.1);
}

TEST(PercentMix, RefusesFourHundredPercent)
{
    const auto mix = percent_mix(400.0, Litres::from_litres(1.0));
    ASSERT_FALSE(mix);
    EXPECT_EQ(mix.error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(percent_mix(0.0, Litres::from_litres(1.0)));
    EXPECT_FALSE(percent_mix(std::numeric_limits<double>::quiet_NaN(), Litres::from_litres(1.0)));
}

struct AmountCase {
    const char* name;
    const char* text;
    double millilitres;
};
void PrintTo(const AmountCase& row, std::ostream* out)
{
    *out << row.name;
}
class Amounts : public testing::TestWithParam<AmountCase> {};

// NIST Handbook 44, appendix C; UK Weights and Measures Act 1985.
TEST_P(Amounts, AreReadAsACookWritesThem)
{
    const auto amount = read_amount(GetParam().text);
    ASSERT_TRUE(amount) << amount.error().message;
    EXPECT_NEAR(amount->millilitres(), GetParam().millilitres, 0.001 * GetParam().millilitres);
}
INSTANTIATE_TEST_SUITE_P(
    Measures, Amounts,
    testing::Values(AmountCase{"Litres", "2 L", 2000}, AmountCase{"NoBlank", "500ml", 500},
                    AmountCase{"OneCup", "cup", 236.588}, AmountCase{"Half", "1/2 gal-us", 1892.7},
                    AmountCase{"WholeAndPart", "1 1/2 pint-imp", 852.39},
                    AmountCase{"Gallon", "GAL-IMP", 4546.09}, AmountCase{"Spoons", "3 tsp", 14.787},
                    AmountCase{"Metric", "2 cup-metric", 500}, AmountCase{"Pint", "pint-us", 473.18},
                    AmountCase{"Ounce", "8 floz-us", 236.588}, AmountCase{"Tablespoon", "tbsp", 14.787}),
    [](const auto& row) { return std::string{row.param.name}; });

TEST(Amount, RefusesWhatIsNone)
{
    for (const char* text : {"", "two litres", "3", "1/0 L", "-1 L", "nan L", "1 jugful", "2 L L", "1e9 L"}) {
        const auto amount = read_amount(text);
        EXPECT_FALSE(amount) << text;
    }
}

TEST(FeedLabel, RefusesWhatIsNone)
{
    for (const char* text : {"", "20", "20-10", "20-10-20-5", "a-b-c", "0-10-20", "-5-1-1", "60-30-30"}) {
        EXPECT_FALSE(read_feed_label(text)) << text;
    }
}

TEST(Spoons, ComeInTheFractionsThatSpoonsHave)
{
    EXPECT_EQ(spoons(0.03), "less than 1/8");
    EXPECT_EQ(spoons(0.13), "1/8");
    EXPECT_EQ(spoons(0.52), "1/2");
    EXPECT_EQ(spoons(0.97), "1");
    EXPECT_EQ(spoons(1.6), "1 1/2");
    EXPECT_EQ(spoons(3.7), "3 1/2");
}

} // namespace
} // namespace lathhouse::plan
