#include "core/home/seed_lot.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lathhouse::home {
namespace {

using calendar::Date;
using testing::HasSubstr;

constexpr int kLot = 1;
const Date kSowingDay{2027, 4, 20};

const plants::SeedKind& tomato()
{
    return **plants::SeedReference::built_in().find("tomato");
}

SeedLot packet()
{
    return {kLot, "Balcony tomato", "Solanum lycopersicum", 2026, 90.0, 60, {}};
}

/// One lot of 60, a tray of 20 sown on 1 March with ten up on 9 March and 12 in the end, and a young tray of ten.
SeedBook book()
{
    SeedBook made;
    made.lots = {packet()};
    made.trays = {{1, kLot, Date{2027, 3, 1}, 20, {}, {}, {}}, {2, kLot, Date{2027, 4, 15}, 10, {}, {}, {}}};
    made.counts = {{1, Date{2027, 3, 9}, 10, false}, {1, Date{2027, 3, 25}, 12, false}, {2, Date{2027, 4, 19}, 1, false}};
    return made;
}

TEST(SeedLot, SeedsLeftAreThoseNotSown)
{
    EXPECT_EQ(book().seeds_left(kLot), 30);
    auto uncounted = book();
    uncounted.lots.front().seeds.reset();
    EXPECT_EQ(uncounted.seeds_left(kLot), std::nullopt);
}

TEST(SeedLot, IsFoundByNumberOrNameWithoutCase)
{
    EXPECT_NE(book().lot_called("1"), nullptr);
    EXPECT_NE(book().lot_called("balcony TOMATO"), nullptr);
    EXPECT_EQ(book().lot_called("2"), nullptr);
}

/// Label 90 % as good as 20 seeds: 18 and 2; twelve of twenty came: Beta(30, 10).
TEST(LotRate, LearnsFromTraysWhoseCountingIsOver)
{
    const auto known = lot_rate(packet(), book(), tomato());
    EXPECT_EQ(known.sown, 20);
    EXPECT_EQ(known.emerged, 12);
    EXPECT_EQ(known.waiting, 10);
    EXPECT_NEAR(known.rate.mean(), 30.0 / 40.0, 1e-12);
}

TEST(LotRate, AnEarlyCountDoesNotSpoilTheName)
{
    auto early = book();
    early.counts = {{1, Date{2027, 3, 5}, 0, false}};
    EXPECT_NEAR(lot_rate(packet(), early, tomato()).rate.mean(), 0.9, 1e-12);
    early.counts.front().last = true; // The grower waits no more.
    EXPECT_NEAR(lot_rate(packet(), early, tomato()).rate.mean(), 18.0 / 40.0, 1e-12);
}

TEST(LotRate, WithoutALabelTheLawfulLeastIsTheStart)
{
    auto plain = packet();
    plain.stated_percent.reset();
    const auto known = lot_rate(plain, {}, tomato());
    EXPECT_EQ(known.start, RateStart::Minimum);
    EXPECT_NEAR(known.rate.mean(), 0.75, 1e-12); // 7 CFR 201.31.
    EXPECT_NEAR(known.rate.weight_seeds(), 8.0, 1e-12);
}

TEST(LotJudgement, PastUseIsWhatSurelyLiesBelowTheLaw)
{
    EXPECT_EQ(judge(packet(), book(), tomato(), kSowingDay).state, LotState::Good);
    auto bad = book();
    bad.counts = {{1, Date{2027, 3, 25}, 3, true}}; // Beta(21, 19): upper end 0.65 < 0.75.
    const auto judged = judge(packet(), bad, tomato(), kSowingDay);
    EXPECT_EQ(judged.state, LotState::PastUse);
    EXPECT_LT(judged.interval.high.fraction(), 0.75);
}

TEST(LotJudgement, OldSeedIsDoubtfulUntilItIsCounted)
{
    auto old = packet();
    old.packed_year = 2019;
    EXPECT_EQ(judge(old, {}, tomato(), kSowingDay).state, LotState::Doubtful);
    EXPECT_EQ(judge(old, {}, tomato(), kSowingDay).age_years, 8);
    EXPECT_EQ(judge(old, book(), tomato(), kSowingDay).state, LotState::Good);
}

TEST(LotJudgement, AnEmptyLotSaysSo)
{
    auto all = book();
    all.trays.push_back({3, kLot, Date{2027, 4, 16}, 30, {}, {}, {}});
    EXPECT_EQ(judge(packet(), all, tomato(), kSowingDay).state, LotState::Empty);
}

TEST(SeedLot, BadFactsGetASentence)
{
    const auto says = [](const SeedLot& lot) {
        const auto checked = check(lot, kSowingDay);
        return checked ? std::string{} : checked.error().message;
    };
    EXPECT_EQ(says(packet()), "");
    auto lot = packet();
    lot.seeds = 0;
    EXPECT_THAT(says(lot), HasSubstr("0 seeds"));
    lot = packet();
    lot.stated_percent = 120.0;
    EXPECT_THAT(says(lot), HasSubstr("100 percent"));
    lot = packet();
    lot.packed_year = 2031;
    EXPECT_THAT(says(lot), HasSubstr("2028"));
    lot.packed_year = 2028;
    EXPECT_EQ(says(lot), "") << "packets that are sold in autumn carry the next year";
    EXPECT_EQ(judge(lot, {}, tomato(), kSowingDay).age_years, 0);
    lot = packet();
    lot.name = " ";
    EXPECT_THAT(says(lot), HasSubstr("name"));
}

TEST(Tray, CannotTakeMoreThanTheLotHas)
{
    const auto says = [](Tray tray) {
        const auto checked = check(tray, book(), kSowingDay);
        return checked ? std::string{} : checked.error().message;
    };
    const Tray good{0, kLot, kSowingDay, 30, {}, {}, {}};
    EXPECT_EQ(says(good), "");
    auto tray = good;
    tray.seeds = 31;
    EXPECT_THAT(says(tray), HasSubstr("30 seeds left"));
    tray = good;
    tray.seeds = 0;
    EXPECT_THAT(says(tray), HasSubstr("at least one"));
    tray = good;
    tray.sown = kSowingDay + calendar::Days{1};
    EXPECT_THAT(says(tray), HasSubstr("after today"));
    tray = good;
    tray.lot = 9;
    EXPECT_THAT(says(tray), HasSubstr("no such lot"));
    tray = good;
    tray.mix = Celsius::from_degrees(210.0);
    EXPECT_THAT(says(tray), HasSubstr("60 degrees"));
    // Of a lot that nobody counted there is no other end.
    auto uncounted = book();
    uncounted.lots.front().seeds.reset();
    tray = good;
    tray.seeds = 10'000'000;
    EXPECT_TRUE(check(tray, uncounted, kSowingDay));
    ++tray.seeds;
    EXPECT_THAT(check(tray, uncounted, kSowingDay).error().message, HasSubstr("cannot be sown at once"));
}

TEST(TrayCount, GoesUpOnlyAndNeverAboveTheSeeds)
{
    const auto says = [](TrayCount count) {
        const auto checked = check(count, book(), kSowingDay);
        return checked ? std::string{} : checked.error().message;
    };
    EXPECT_EQ(says({1, Date{2027, 3, 15}, 11, false}), "");
    EXPECT_THAT(says({1, Date{2027, 3, 15}, 21, false}), HasSubstr("of 20 seeds"));
    EXPECT_THAT(says({1, Date{2027, 3, 15}, -1, false}), HasSubstr("of 20 seeds"));
    EXPECT_THAT(says({1, Date{2027, 3, 15}, 9, false}), HasSubstr("10 were counted"));
    EXPECT_THAT(says({1, Date{2027, 3, 15}, 13, false}), HasSubstr("12 were counted"));
    EXPECT_THAT(says({1, Date{2027, 2, 15}, 1, false}), HasSubstr("between the sowing"));
    EXPECT_THAT(says({7, kSowingDay, 1, false}), HasSubstr("no such tray"));
}

} // namespace
} // namespace lathhouse::home
