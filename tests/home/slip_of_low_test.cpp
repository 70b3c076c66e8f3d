#include "core/home/thermometer.h"

#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

climate::Monthly<Celsius> rising_months()
{
    auto lows = climate::in_every_month(Celsius::from_degrees(0.0));
    for (std::size_t m = 0; m < lows.size(); ++m) {
        lows[m] = Celsius::from_degrees(static_cast<double>(m));
    }
    return lows;
}

TEST(SlipOfLow, IsFurtherThanFortyKelvinsFromWhatSuchANightHas)
{
    const auto usual = Celsius::from_degrees(-4.0);
    EXPECT_FALSE(is_slip_of_low(Celsius::from_degrees(-8.0), usual));
    EXPECT_TRUE(is_slip_of_low(Celsius::from_degrees(-80.0), usual));
    EXPECT_TRUE(is_slip_of_low(Celsius::from_degrees(60.0), usual));
    // Verkhoyansk: January lows of -48 on average, -67.8 on record (1892; WMO archive of extremes: -67.8 C).
    EXPECT_FALSE(is_slip_of_low(Celsius::from_degrees(-67.8), Celsius::from_degrees(-48.0)));
}

TEST(SlipOfLow, ANightIsOfTheMonthOfItsMorning)
{
    EXPECT_EQ(of_night(rising_months(), calendar::Date{2027, 1, 31}), Celsius::from_degrees(0.0));
    EXPECT_EQ(of_night(rising_months(), calendar::Date{2027, 2, 1}), Celsius::from_degrees(1.0));
    EXPECT_EQ(of_night(rising_months(), calendar::Date{2028, 2, 29}), Celsius::from_degrees(1.0));
}

TEST(SlipOfLow, ARoomHasItsOwnWinterAndAPorchTheOpenAirs)
{
    const auto light = DailyLight::from_moles(5.0);
    Spot spot{.id = 1,
              .name = "Sill",
              .short_name = "Sill",
              .kind = SpotKind::Indoors,
              .offset = {},
              .winter = {},
              .summer = {},
              .light_in_summer = light,
              .light_in_winter = light,
              .capacity = 1,
              .in_reach = false,
              .walking_order = 1};
    EXPECT_EQ(usual_lows(spot, rising_months()), rising_months()) << "nothing is known of the room";
    spot.winter = Celsius::from_degrees(18.0);
    EXPECT_EQ(usual_lows(spot, rising_months())[6], Celsius::from_degrees(18.0));
    spot.kind = SpotKind::Roofed;
    EXPECT_EQ(usual_lows(spot, rising_months()), rising_months());
}

} // namespace
} // namespace lathhouse::home
