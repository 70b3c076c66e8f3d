#include "core/units/light_source.h"

#include <gtest/gtest.h>

namespace lathhouse {
namespace {

TEST(PhotonFlux, OfFullSunlightIsThatOfTheTables)
{
    // Published table after Thimijan and Heins (1983): sunlight 0.200 micromoles to the foot-candle, so
    // 10,020 foot-candles are 2000.
    EXPECT_NEAR(PhotonFlux::from_daylight_foot_candles(10020.0).micromoles(), 2000.0, 5.0);
    EXPECT_NEAR(PhotonFlux::from_daylight_lux(108000.0).micromoles(), 2000.0, 1e-9);
}
TEST(PhotonFlux, GoesToFootCandlesAndBack)
{
    EXPECT_NEAR(PhotonFlux::from_daylight_foot_candles(250.0).daylight_foot_candles(), 250.0, 1e-9);
}
TEST(DailyLightOf, AThousandFootCandlesForEightHours)
{
    // 10,764 lux / 54 x 28,800 s = 5.74 mol.
    EXPECT_NEAR(daily_light_of(PhotonFlux::from_daylight_foot_candles(1000.0), 8.0).moles(), 5.741, 0.001);
}
TEST(FluxOfLux, ByThePublishedFigureOfTheLight)
{
    // After Thimijan and Heins (1983): 108,000 lux of the Sun, 148,000 of cool white tubes and 164,000 of sodium are 2000 each.
    EXPECT_NEAR(flux_of_lux(108000.0, LightSource::Daylight).micromoles(), 2000.0, 1e-9);
    EXPECT_NEAR(flux_of_lux(148000.0, LightSource::FluorescentTube).micromoles(), 2000.0, 1e-9);
    EXPECT_NEAR(flux_of_lux(164000.0, LightSource::HighPressureSodium).micromoles(), 2000.0, 1e-9);
    // White diodes: 67, common practice, no source.
    EXPECT_NEAR(flux_of_lux(134000.0, LightSource::WhiteLed).micromoles(), 2000.0, 1e-9);
    EXPECT_NEAR(flux_of_foot_candles(1000.0, LightSource::FluorescentTube).micromoles(), 10763.91 / 74.0, 0.01);
}
TEST(EvenLightOf, IsTheWayBack)
{
    const auto light = daily_light_of(PhotonFlux::from_micromoles(150.0), 12.0);
    EXPECT_NEAR(even_light_of(light, 12.0).micromoles(), 150.0, 1e-9);
}
TEST(LampHours, FillTheGapAndNoMore)
{
    const auto lamp = PhotonFlux::from_micromoles(100.0); // 0.36 mol an hour.
    EXPECT_NEAR(lamp_hours(DailyLight::from_moles(2.4), DailyLight::from_moles(6.0), lamp), 10.0, 1e-9);
    EXPECT_EQ(lamp_hours(DailyLight::from_moles(7.0), DailyLight::from_moles(6.0), lamp), 0.0);
}

} // namespace
} // namespace lathhouse
