#include "core/home/demonstration_story.h"

#include "core/calendar/day_of_year.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace lathhouse::home {
namespace {

const calendar::Date kDayOfStory{2026, 11, 25};

struct StoryCase {
    const char* name;
    DemonstrationOptions options;
};
void PrintTo(const StoryCase& row, std::ostream* out)
{
    *out << row.name;
}

class EveryStory : public testing::TestWithParam<StoryCase> {
protected:
    static Story told() { return tell_story(GetParam().options, demonstration(GetParam().options).value()); }
    static calendar::Date begin()
    {
        return calendar::DayOfYear::of(GetParam().options.today)
            .in_year(GetParam().options.today.year() - GetParam().options.years);
    }
};

TEST_P(EveryStory, IsInOrderAndBetweenItsBeginningAndToday)
{
    const auto story = told();
    EXPECT_TRUE(std::ranges::is_sorted(story.events, {}, &Event::happened));
    EXPECT_TRUE(std::ranges::is_sorted(story.measurements, {}, &Measurement::measured));
    for (const auto& event : story.events) {
        EXPECT_GE(event.happened, begin());
        EXPECT_LE(event.happened, GetParam().options.today);
    }
    for (const auto& one : story.measurements) {
        EXPECT_GE(one.measured, begin());
        EXPECT_LE(one.measured, GetParam().options.today);
    }
}

TEST_P(EveryStory, MeasuresOnlyWhatIsSound)
{
    const auto options = GetParam().options;
    const auto made = demonstration(options).value();
    const auto story = tell_story(options, made);
    std::set<PlantId> known;
    for (const auto& plant : made.household.plants) {
        known.insert(plant.id);
    }
    for (const auto& plant : story.gone) {
        EXPECT_TRUE(known.insert(plant.id).second);
    }
    for (const auto& one : story.measurements) {
        const auto sound = check(one);
        EXPECT_TRUE(sound) << sound.error().message;
        EXPECT_TRUE(known.contains(one.plant));
    }
}

TEST_P(EveryStory, IsTheSameEachTime)
{
    const auto one = told();
    const auto other = told();
    EXPECT_EQ(one.events, other.events);
    EXPECT_EQ(one.measurements, other.measurements);
}

TEST_P(EveryStory, LeavesNoChemicalDamageOrIsolationOpen)
{
    const auto story = told();
    const auto last = [&](PlantId plant, EventKind kind) {
        std::optional<calendar::Date> found;
        for (const auto& event : story.events) {
            if (event.plant == plant && event.kind == kind) {
                found = event.happened;
            }
        }
        return found;
    };
    for (const auto& event : story.events) {
        if (event.kind == EventKind::ChemicalDamage) {
            EXPECT_GT(last(*event.plant, EventKind::NewGrowth), event.happened);
        }
        if (event.kind == EventKind::Isolated) {
            EXPECT_GT(last(*event.plant, EventKind::Released), event.happened);
        }
    }
}

TEST_P(EveryStory, CountsNoMoreSeedlingsThanWereSown)
{
    const auto story = told();
    for (const auto& count : story.counts) {
        const auto& tray = story.trays.at(static_cast<std::size_t>(count.tray));
        EXPECT_LE(count.emerged, tray.seeds);
        EXPECT_GE(count.on, tray.sown);
        EXPECT_LE(count.on, GetParam().options.today);
    }
}

INSTANTIATE_TEST_SUITE_P(
    All, EveryStory,
    testing::Values(StoryCase{"North", {.today = kDayOfStory}}, StoryCase{"NorthInSpring", {.today = {2026, 4, 10}}},
                    StoryCase{"NorthOnALeapDay", {.today = {2028, 2, 29}}},
                    StoryCase{"South", {.today = kDayOfStory, .hemisphere = Hemisphere::South}},
                    StoryCase{"SouthInWinter", {.today = {2026, 7, 1}, .hemisphere = Hemisphere::South}},
                    StoryCase{"WithoutHistory", {.today = kDayOfStory, .years = 0}},
                    StoryCase{"OneYear", {.today = kDayOfStory, .years = 1}},
                    StoryCase{"FiveYears", {.today = kDayOfStory, .years = 5}},
                    StoryCase{"SixtyPlants", {.today = kDayOfStory, .plants = 60, .spots = 20}}),
    [](const auto& row) { return std::string{row.param.name}; });

/// Mean of a plant's readings of that kind between two dates.
double mean_of(const Story& story, PlantId plant, MeasurementKind kind, calendar::Date from, calendar::Date to)
{
    double sum = 0.0;
    int count = 0;
    for (const auto& one : story.measurements) {
        if (one.plant == plant && one.kind == kind && one.measured >= from && one.measured <= to) {
            sum += one.value();
            ++count;
        }
    }
    EXPECT_GT(count, 0);
    return sum / std::max(count, 1);
}

class StoryOfTwoYears : public testing::TestWithParam<Hemisphere> {
protected:
    static Story told()
    {
        const DemonstrationOptions options{.today = kDayOfStory, .hemisphere = GetParam()};
        return tell_story(options, demonstration(options).value());
    }
    static calendar::Date drift(const Story& story)
    {
        const auto found = std::ranges::find(story.events, EventKind::ChemicalDamage, &Event::kind);
        EXPECT_NE(found, story.events.end());
        return found->happened;
    }
};

TEST_P(StoryOfTwoYears, ShowsTheDriftAndTheRecoveryInLeavesAndYellow)
{
    const auto story = told();
    const auto day = drift(story);
    const auto leaves = [&](int from, int to) {
        return mean_of(story, 8, MeasurementKind::Leaves, day + calendar::Days{from}, day + calendar::Days{to});
    };
    EXPECT_LT(leaves(21, 35), 0.9 * leaves(-14, 0));
    EXPECT_GT(leaves(100, 130), 1.08 * leaves(21, 35));
    const auto yellow = [&](int from, int to) {
        return mean_of(story, 8, MeasurementKind::YellowShare, day + calendar::Days{from}, day + calendar::Days{to});
    };
    EXPECT_GT(yellow(14, 28), 5.0 * yellow(-42, -1));
    EXPECT_LT(yellow(110, 130), 0.5 * yellow(14, 28));
}

TEST_P(StoryOfTwoYears, SparesPlantsThatStoodElsewhere)
{
    const auto story = told();
    const auto day = drift(story);
    const auto height = [&](int from, int to) {
        return mean_of(story, 5, MeasurementKind::Height, day + calendar::Days{from}, day + calendar::Days{to});
    };
    EXPECT_GT(height(21, 35), height(-14, 0));
}

TEST_P(StoryOfTwoYears, HasEnoughReadingsAroundTheDriftForAVerdict)
{
    const auto story = told();
    const auto day = drift(story);
    const auto count = [&](calendar::Date from, calendar::Date to) {
        return std::ranges::count_if(story.measurements, [&](const Measurement& one) {
            return one.plant == 3 && one.kind == MeasurementKind::Height && one.measured >= from &&
                   one.measured <= to;
        });
    };
    EXPECT_GE(count(day - calendar::Days{90}, day), 6);
    EXPECT_GE(count(day, day + calendar::Days{140}), 12);
}

TEST_P(StoryOfTwoYears, ShowsThePeaceLilyStandingStillAndGrowingOnAfterItWasRepotted)
{
    const DemonstrationOptions options{.today = kDayOfStory + calendar::Days{150}, .hemisphere = GetParam()};
    const auto made = demonstration(options).value();
    const auto story = tell_story(options, made);
    std::optional<calendar::Date> repotted; // The latest that has half a year after it.
    for (const auto& event : made.history) {
        if (event.plant == 12 && event.kind == EventKind::Repotted && event.happened + calendar::Days{180} <= options.today) {
            repotted = event.happened;
        }
    }
    ASSERT_TRUE(repotted);
    for (const auto kind : {MeasurementKind::Height, MeasurementKind::Width}) {
        const auto size = [&](int from, int to) {
            return mean_of(story, 12, kind, *repotted + calendar::Days{from}, *repotted + calendar::Days{to});
        };
        // Means over two weeks, of three readings each: right to about half a percent.
        EXPECT_GT(size(-14, 0), 1.03 * size(-70, -56));
        EXPECT_LT(size(11, 24), 1.022 * size(-7, 7));
        EXPECT_GT(size(91, 104), 1.028 * size(73, 87)) << "in as many days it usually grows by four in a hundred";
        EXPECT_GT(size(165, 178), 1.15 * size(11, 24));
    }
}

TEST_P(StoryOfTwoYears, HasEveryKindOfHappening)
{
    const auto story = told();
    for (const auto kind : {EventKind::ChemicalDamage, EventKind::NewGrowth, EventKind::ColdNight, EventKind::Died,
                            EventKind::PestFound, EventKind::Treated, EventKind::Isolated, EventKind::Released}) {
        EXPECT_TRUE(std::ranges::any_of(story.events, [&](const Event& event) { return event.kind == kind; }))
            << to_string(kind);
    }
    EXPECT_EQ(story.gone.size(), 1U);
    EXPECT_EQ(story.divisions.size(), 1U);
    EXPECT_EQ(story.lots.size(), 3U);
    EXPECT_EQ(story.counts.size(), 9U);
    EXPECT_FALSE(story.potted.empty());
    EXPECT_GE(story.measurements.size(), 500U);
}

INSTANTIATE_TEST_SUITE_P(Hemispheres, StoryOfTwoYears, testing::Values(Hemisphere::North, Hemisphere::South),
                         [](const auto& row) { return row.param == Hemisphere::North ? "North" : "South"; });

} // namespace
} // namespace lathhouse::home
