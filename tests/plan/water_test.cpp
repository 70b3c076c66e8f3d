#include "core/plan/water.h"

#include "core/plan/growing_rules.h"
#include "tests/plan/growing_sample.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lathhouse::plan {
namespace {

using namespace sample;
using calendar::Days;
using home::EventKind;

WaterLook look_of(const home::Household& home, const climate::PlaceClimate& climate,
                  const std::vector<home::Event>& events, calendar::Date from, int days = 30)
{
    const home::SpotClimate spots{home, climate};
    const auto looks = water_looks(home, climate, spots, events, {}, from, days);
    EXPECT_EQ(looks.size(), 1U);
    return looks.front();
}

// Beeson, HortScience 45 (2010) 1260: pots of 11.4 L (25.4 cm across) with young shrubs in Florida drew under 0.6 L
// a day and up to 1.3, at 4 to 5 mm of reference evapotranspiration.
TEST(DrawOfDay, LiesWithinWhatWasMeasuredOnPottedShrubs)
{
    const PotSize size{Litres::from_litres(11.4), false, Metres::from_metres(0.254)};
    home::SpotDay day{Celsius::from_degrees(20), Celsius::from_degrees(30), DailyLight::from_moles(40), 13.0,
                      Millimetres::from_millimetres(0), Millimetres::from_millimetres(4.5), true};
    const double least = draw_of_day(day, size, false).litres();
    EXPECT_GT(least, 0.16) << "that of a bare pot";
    EXPECT_LT(least, 1.3);
    EXPECT_LT(draw_of_day(day, size, true).litres(), 0.5 * least) << "a succulent draws little";
}

TEST(PotSize, IsTheGrowersOwnWhereItIsKnown)
{
    auto home = potted_household("Ficus benjamina", 48.0);
    auto& plant = home.plants.front();
    EXPECT_TRUE(pot_size(plant).from_weight);
    EXPECT_NEAR(pot_size(plant).volume.litres(), 3.0, 1e-12);
    plant.pot_volume = Litres::from_litres(11.4);
    const auto size = pot_size(plant);
    EXPECT_FALSE(size.from_weight);
    EXPECT_NEAR(size.width.metres(), 0.254, 0.254 / 6.0) << "published width of a pot of 11.4 L";
}

TEST(WaterLooks, AskForALookWhereNoWateringIsLogged)
{
    const auto look = look_of(potted_household("Ficus benjamina", 48.0), place(48.0, 6.0, 10.0), {}, date(2027, 6, 1));
    EXPECT_EQ(look.due, date(2027, 6, 1));
    EXPECT_EQ(look.why, LookWhy::NoWateringLogged);
    EXPECT_GE(look.every_days, 1);
    EXPECT_EQ(look.habit.intervals, 0);
    EXPECT_EQ(look.habit.factor, 1.0);
}

TEST(WaterLooks, AThinLeafedKindThatMustDryOutDrawsAsOthersDo)
{
    const auto climate = place(48.0, 6.0, 10.0, 0.0);
    const auto look = [&climate](const char* kind, bool own = false) {
        auto home = potted_household(kind, 48.0);
        home.plants.front().pot_volume = Litres::from_litres(1.5);
        EXPECT_TRUE(home.plants.front().must_dry);
        home.plants.front().kind = own ? "A kind of my own" : home.plants.front().kind;
        return look_of(home, climate, {}, date(2027, 6, 15));
    };
    const auto geranium = look("Pelargonium x hortorum");
    const auto aloe = look("Aloe vera");
    EXPECT_NEAR(geranium.pot.drawn_of_day.litres() / aloe.pot.drawn_of_day.litres(),
                growing_figure("draw_factor") / growing_figure("draw_succulent"), 1e-9);
    EXPECT_LT(geranium.every_days, aloe.every_days);
    EXPECT_NEAR(look("Pelargonium x hortorum", true).pot.drawn_of_day.litres(), aloe.pot.drawn_of_day.litres(), 1e-9);
}

TEST(WaterLooks, ComeSoonerInSummerAndForSmallPots)
{
    const auto climate = place(48.0, 6.0, 10.0, 0.0);
    auto home = potted_household("Citrus limon", 48.0, kOpen);
    home.plants.front().pot_volume = Litres::from_litres(10.0);
    const auto every = [&](calendar::Date on) { return look_of(home, climate, {}, on).every_days; };
    EXPECT_LT(every(date(2027, 7, 1)), every(date(2027, 3, 1)));
    const int large = every(date(2027, 7, 1));
    home.plants.front().pot_volume = Litres::from_litres(0.5);
    EXPECT_LT(every(date(2027, 7, 1)), large);
}

TEST(WaterLooks, NeverLieFartherApartThanTheKindAllows)
{
    auto home = potted_household("Spathiphyllum wallisii", 48.0, kDim);
    home.plants.front().pot_volume = Litres::from_litres(200.0);
    const auto look = look_of(home, place(48.0, 6.0, 10.0), {event(EventKind::Watered, date(2026, 12, 30))},
                              date(2027, 1, 1));
    EXPECT_EQ(look.every_days, static_cast<int>(growing_figure("look_keep_moist")));
    EXPECT_EQ(look.why, LookWhy::LongestGap);
}

TEST(WaterLooks, CountFromTheLastWatering)
{
    const auto climate = place(48.0, 6.0, 10.0);
    const auto home = potted_household("Ficus benjamina", 48.0);
    const auto watered = date(2027, 5, 30);
    const auto look = look_of(home, climate, {event(EventKind::Watered, watered)}, date(2027, 6, 1));
    EXPECT_EQ(look.last_watered, watered);
    ASSERT_TRUE(look.due);
    EXPECT_GT(*look.due, date(2027, 6, 1));
    ASSERT_GE(look.looks.size(), 2U);
    EXPECT_EQ(look.looks.front(), *look.due);
    EXPECT_GT(look.looks[1], look.looks[0]);
}

TEST(WaterLooks, TakeRainOffWhereTheSpotIsOpen)
{
    auto home = potted_household("Citrus limon", 48.0, kOpen);
    home.plants.front().pot_volume = Litres::from_litres(8.0);
    const auto dry = look_of(home, place(48.0, 6.0, 10.0, 0.0), {}, date(2027, 6, 1));
    const auto wet = look_of(home, place(48.0, 6.0, 10.0, 60.0), {}, date(2027, 6, 1));
    EXPECT_TRUE(wet.in_the_rain);
    EXPECT_GT(wet.every_days, dry.every_days);
    home.plants.front().spot = kSill;
    EXPECT_EQ(look_of(home, place(48.0, 6.0, 10.0, 0.0), {}, date(2027, 6, 1)).every_days,
              look_of(home, place(48.0, 6.0, 10.0, 60.0), {}, date(2027, 6, 1)).every_days);
}

TEST(WaterLooks, AskForAFingerInAWetSeason)
{
    const auto climate = place(15.0, 22.0, 1.0, 400.0);
    const auto home = potted_household("Hibiscus rosa-sinensis", 15.0, kOpen);
    const auto look =
        look_of(home, climate, {event(EventKind::Watered, date(2027, 5, 31))}, date(2027, 6, 1));
    EXPECT_EQ(look.why, LookWhy::WetSpell);
    const auto spells = wet_spells(home, home::SpotClimate{home, climate}, date(2027, 1, 1));
    ASSERT_EQ(spells.size(), 1U);
    EXPECT_EQ(calendar::days_between(spells.front().from, spells.front().to), 364);
    EXPECT_TRUE(wet_spells(home, home::SpotClimate{home, place(15.0, 22.0, 1.0, 20.0)}, date(2027, 1, 1)).empty());
}

TEST(WaterLooks, SayThatARestingPlantWantsHardlyAny)
{
    const auto look = look_of(potted_household("Caladium bicolor", 48.0), place(48.0, 6.0, 10.0), {}, date(2027, 1, 5));
    EXPECT_TRUE(look.rests);
    EXPECT_TRUE(look.nearly_dry);
}

TEST(WaterLooks, HaveNothingToSayOfAPlantThatStandsNowhere)
{
    auto home = potted_household("Ficus benjamina", 48.0);
    home.plants.front().spot = std::nullopt;
    const auto look = look_of(home, place(48.0, 6.0, 10.0), {}, date(2027, 6, 1));
    EXPECT_FALSE(look.due);
    EXPECT_TRUE(look.looks.empty());
}

TEST(WaterLooks, LearnFromTheGrowersOwnIntervals)
{
    const auto climate = place(48.0, 6.0, 10.0);
    auto home = potted_household("Ficus benjamina", 48.0);
    home.plants.front().pot_volume = Litres::from_litres(2.0);
    const int untaught = look_of(home, climate, {}, date(2027, 7, 1)).every_days;
    // The grower waters half as often as reckoned: the plant is small for its pot.
    std::vector<home::Event> events{moved(date(2027, 1, 1), kSill)};
    for (int at = 0; at < 8; ++at) {
        events.push_back(event(EventKind::Watered, date(2027, 5, 20) + Days{at * (2 * untaught)}));
    }
    const auto taught = look_of(home, climate, events, events.back().happened);
    EXPECT_EQ(taught.habit.intervals, 7);
    EXPECT_GT(taught.habit.factor, 1.3);
}

TEST(WateringHabit, IsNoneWithoutIntervals)
{
    const auto habit = learn_habit({});
    EXPECT_EQ(habit.intervals, 0);
    EXPECT_EQ(habit.factor, 1.0);
    EXPECT_NEAR(habit.spread, 0.5, 1e-12) << "that of plants about the reckoning";
}

// Normal prior (sd 0.5) and one look of sd 0.35: the posterior mean is x t2 / (t2 + s2), its sd sqrt(s2 t2 / (s2 + t2)).
TEST(WateringHabit, IsThePosteriorOfANormalMean)
{
    const double ratios[] = {2.0};
    const auto habit = learn_habit(ratios);
    EXPECT_NEAR(std::log(habit.factor), std::log(2.0) * 0.25 / (0.25 + 0.1225), 1e-12);
    EXPECT_NEAR(habit.spread, std::sqrt(0.25 * 0.1225 / (0.25 + 0.1225)), 1e-12);
}

TEST(WateringHabit, PassesOverWhatIsNoRatio)
{
    const double ratios[] = {std::nan(""), -1.0, 0.0, 1.5};
    EXPECT_EQ(learn_habit(ratios).intervals, 1);
    const double wild[] = {1000.0};
    EXPECT_LT(learn_habit(wild).factor, 3.0);
}

// Plants whose true factors spread as the prior says, with waterings as uneven as it says: the learnt factor must be
// nearer the truth than no learning, more so with more intervals, and within its own spread about as often as a normal
// distribution has it.
TEST(WateringHabit, ComesNearTheTruthInSimulatedPlants)
{
    std::mt19937 draws{20260814};
    std::normal_distribution<double> plants{0.0, 0.5};
    std::normal_distribution<double> intervals{0.0, 0.35};
    constexpr int kPlants = 2000;
    double untaught = 0.0;
    double after_two = 0.0;
    double after_ten = 0.0;
    int within = 0;
    for (int plant = 0; plant < kPlants; ++plant) {
        const double truth = plants(draws);
        std::vector<double> ratios;
        for (int at = 0; at < 10; ++at) {
            ratios.push_back(std::exp(truth + intervals(draws)));
        }
        const auto two = learn_habit(std::span{ratios}.first(2));
        const auto ten = learn_habit(ratios);
        untaught += std::abs(truth);
        after_two += std::abs(std::log(two.factor) - truth);
        after_ten += std::abs(std::log(ten.factor) - truth);
        within += std::abs(std::log(ten.factor) - truth) <= ten.spread ? 1 : 0;
    }
    RecordProperty("mean_error_untaught", std::to_string(untaught / kPlants));
    RecordProperty("mean_error_after_two", std::to_string(after_two / kPlants));
    RecordProperty("mean_error_after_ten", std::to_string(after_ten / kPlants));
    EXPECT_NEAR(untaught / kPlants, 0.399, 0.03) << "0.5 x sqrt(2 / pi)";
    EXPECT_LT(after_two / kPlants, 0.6 * untaught / kPlants);
    EXPECT_LT(after_ten / kPlants, 0.3 * untaught / kPlants);
    EXPECT_NEAR(within / static_cast<double>(kPlants), 0.683, 0.04);
}

TEST(WaterDue, NamesLooksThatWereNotMade)
{
    const auto climate = place(48.0, 6.0, 10.0);
    const auto home = potted_household("Ficus benjamina", 48.0);
    const std::vector<WaterLook> looks{
        look_of(home, climate, {event(EventKind::Watered, date(2027, 5, 31))}, date(2027, 6, 1))};
    const auto due = *looks.front().due;
    EXPECT_TRUE(due_on(looks, due - Days{1}).empty());
    ASSERT_EQ(due_on(looks, due).size(), 1U);
    EXPECT_EQ(due_on(looks, due + Days{3}).front().due, due);
}

TEST(WaterLooks, AreFurtherApartWhereThePlantIsSaidToDryOut)
{
    auto home = potted_household("Ficus benjamina", 48.0);
    const auto climate = place(48.0, 6.0, 10.0);
    const int usual = look_of(home, climate, {}, date(2027, 6, 1)).every_days;
    home.plants.front().must_dry = true;
    EXPECT_GT(look_of(home, climate, {}, date(2027, 6, 1)).every_days, usual);
}

} // namespace
} // namespace lathhouse::plan
