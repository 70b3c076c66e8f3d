#include "app/models/light_reading_model.h"
#include "tests/models/page_fixtures.h"

namespace lathhouse::models {
namespace {

class LightReading : public testing::Test {
protected:
    LightReading() : model(british_look()) {}
    void type(const char* property, const QVariant& value) { ASSERT_TRUE(model.setProperty(property, value)) << property; }
    LightReadingModel model;
};

TEST_F(LightReading, LuxOfEachLightMakeADaysLight)
{
    EXPECT_EQ(model.daily(), QString{});
    // Published for daylight: 10,800 lux are 200 micromoles, which over 8 h make 200 * 8 * 3600 / 1e6 = 5.76 moles.
    type("reading", "10800");
    EXPECT_TRUE(model.daily().startsWith("200 µmol per m² and s; over 8.0 h they make 5.76 moles")) << model.daily().toStdString();
    type("source", static_cast<int>(LightSource::FluorescentTube)); // 10,800 / 74 = 145.9; 145.9 * 12 * 0.0036 = 6.30
    type("hours", "12");
    EXPECT_TRUE(model.daily().startsWith("146 µmol per m² and s; over 12.0 h they make 6.30 moles")) << model.daily().toStdString();
    type("source", static_cast<int>(LightSource::WhiteLed));
    EXPECT_TRUE(model.daily().contains("about 15 %"));
    type("unit", LightReadingModel::Micromoles); // Photons are photons.
    EXPECT_FALSE(model.bySource());
    for (const char* typed : {"100,5 µmol", "100.5 \u03bcmol", "100.5 umol"}) {
        type("reading", typed);
        EXPECT_TRUE(model.daily().contains(" µmol per m² and s; over 12.0 h they make 4.34 moles")) << typed << model.daily().toStdString();
    }
    EXPECT_FALSE(model.daily().contains("about 15 %"));
}

TEST_F(LightReading, FootCandlesAreOfASquareFoot)
{
    type("unit", LightReadingModel::FootCandles);
    type("reading", "1000"); // Published: 0.200 micromoles to the foot-candle of daylight, rounded.
    EXPECT_TRUE(model.daily().startsWith("199 µmol per m² and s; over 8.0 h they make 5.74 moles")) << model.daily().toStdString();
}

TEST_F(LightReading, ADaysMolesAreWhatAMeterReads)
{
    type("unit", LightReadingModel::Moles);
    type("reading", "5.76"); // Back the way of the first test: 200 micromoles, 10,800 lux of daylight; a foot-candle is 10.764 lux.
    EXPECT_TRUE(model.daily().contains("over 8.0 h that is 200 µmol per m² and s: a meter reads 10,800 lux, or 1,003 foot-candles"))
        << model.daily().toStdString();
    EXPECT_TRUE(model.bySource());
    type("source", static_cast<int>(LightSource::FluorescentTube)); // 200 * 74
    EXPECT_TRUE(model.daily().contains("14,800 lux")) << model.daily().toStdString();
    type("reading", "81");
    EXPECT_TRUE(model.readingTrouble().contains("from 0 to 80"));
}

TEST_F(LightReading, SaysWhatCannotBeTaken)
{
    type("reading", "bright");
    EXPECT_FALSE(model.readingTrouble().isEmpty());
    EXPECT_EQ(model.daily(), QString{});
    type("reading", "-1");
    EXPECT_FALSE(model.readingTrouble().isEmpty());
    type("reading", "500");
    EXPECT_EQ(model.readingTrouble(), QString{});
    type("hours", "25");
    EXPECT_FALSE(model.hoursTrouble().isEmpty());
    EXPECT_EQ(model.daily(), QString{});
    type("hours", "");
    EXPECT_FALSE(model.daily().isEmpty());
    type("target", "10");
    EXPECT_TRUE(model.lampTrouble().contains("too"));
    type("lamp", "0");
    EXPECT_TRUE(model.lampTrouble().contains("3000"));
    type("target", "81");
    type("lamp", "100");
    EXPECT_TRUE(model.targetTrouble().contains("80 moles"));
    EXPECT_EQ(model.months()->rowCount(), 0);
    type("target", "");
    EXPECT_TRUE(model.targetTrouble().contains("too"));
}

TEST_F(LightReading, ALampMakesUpWhatASpotLacksInEachMonth)
{
    std::array<double, 12> moles{};
    moles.fill(10.0);
    moles[0] = 2.8;  // 7.2 moles of 200 micromoles: 7.2e6 / (200 * 3600) = 10 h.
    moles[4] = 0.5;  // This month.
    moles[11] = 4.24; // 8 h.
    model.know("Living room", moles);
    type("target", "10");
    type("lamp", "200");
    ASSERT_EQ(model.months()->rowCount(), 12);
    EXPECT_EQ(model.months()->at(0, "hours").toString(), "10.0 h");
    EXPECT_EQ(model.months()->at(5, "hours").toString(), "none needed");
    EXPECT_EQ(model.months()->at(11, "hours").toString(), "8.0 h");
    EXPECT_EQ(model.tooLong(), QString{}) << "13.2 h in May";
    type("lamp", "150");
    EXPECT_TRUE(model.tooLong().contains("16 h")) << "17.6 h in May";
    type("lamp", "50");
    EXPECT_EQ(model.months()->at(0, "hours").toString(), "too weak");
    EXPECT_EQ(model.lampNow(), QString{});
    type("lamp", "200");
    type("unit", LightReadingModel::Micromoles);
    type("reading", "100"); // 2.88 moles in 8 h; 7.12 more in 9.9 h.
    EXPECT_TRUE(model.lampNow().contains("9.9 h")) << model.lampNow().toStdString();
    EXPECT_TRUE(model.against().contains("0.5 moles a day at Living room in May")) << model.against().toStdString();
    type("reading", "2000");
    EXPECT_TRUE(model.lampNow().contains("enough"));
    EXPECT_TRUE(model.caution().contains("residual current"));
}

} // namespace
} // namespace lathhouse::models
