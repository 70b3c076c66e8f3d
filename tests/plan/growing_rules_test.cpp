#include "core/plan/growing_rules.h"

#include "core/base/csv.h"

#include <gtest/gtest.h>

#include <array>

namespace lathhouse::plan {
namespace {

std::string shipped(const char* name)
{
    return read_text_file(std::filesystem::path{LATHHOUSE_SOURCE} / "core/plan/data" / name).value();
}

Result<GrowingRules> with_change(const std::string& from, const std::string& to)
{
    auto rules = shipped("growing_rules.csv");
    const auto place = rules.find(from);
    EXPECT_NE(place, std::string::npos) << from;
    rules.replace(place, from.size(), to);
    return GrowingRules::parse(rules, shipped("growing_sources.csv"));
}

TEST(GrowingRules, BuiltInTableIsTheShippedOne)
{
    const auto parsed = GrowingRules::parse(shipped("growing_rules.csv"), shipped("growing_sources.csv"));
    ASSERT_TRUE(parsed) << parsed.error().message;
    EXPECT_EQ(parsed->rules().size(), GrowingRules::built_in().rules().size());
}

TEST(GrowingRules, HaveEveryFigureThatTheProgramTakes)
{
    constexpr std::array kFigures{
        "feed_heavy_days",   "feed_medium_days", "feed_light_days",  "feed_dim_days",    "feed_dim_light",
        "feed_succulent",    "feed_day_length",  "lamp_light",       "feed_index_open",  "feed_index_close",
        "feed_after_repotting", "feed_after_purchase", "feed_after_move", "feed_home_share", "feed_young_share", "feed_greenhouse_ppm",
        "leach_months",      "leach_volumes",    "pot_litres_per_kg", "pot_shape",       "available_share",
        "draw_factor",       "draw_succulent",   "dry_keep_moist",   "dry_top_inch",     "dry_right_out",
        "look_keep_moist",   "look_top_inch",    "look_right_out",   "wet_month_rain",   "roots_zones",
        "roots_air",         "roots_slow",       "roots_stop",       "roots_injury",     "pot_dark_excess",
        "pot_light_less",    "neem_percent",     "oil_percent_most", "soap_percent"};
    for (const char* id : kFigures) {
        const auto* rule = GrowingRules::built_in().find(id);
        ASSERT_NE(rule, nullptr) << id;
        EXPECT_TRUE(rule->used) << id;
    }
}

TEST(GrowingRules, FromMemoryAreNeverCalledSure)
{
    for (const auto& rule : GrowingRules::built_in().rules()) {
        if (rule.sources == std::vector<std::string>{std::string{plants::kCommonPractice}}) {
            EXPECT_NE(rule.confidence, "high") << rule.id;
        }
    }
}

TEST(GrowingRules, EverySourceIsUsed)
{
    for (const auto& source : GrowingRules::built_in().sources()) {
        bool used = false;
        for (const auto& rule : GrowingRules::built_in().rules()) {
            used = used || std::ranges::find(rule.sources, source.key) != rule.sources.end();
        }
        EXPECT_TRUE(used) << source.key;
    }
}

TEST(GrowingRules, AreReadWithTheirSources)
{
    constexpr std::array<std::string_view, 2> kIds{"leach_months", "pot_light_less"};
    const auto sources = GrowingRules::built_in().sources_of(kIds);
    ASSERT_EQ(sources.size(), 2U);
    EXPECT_EQ(sources[0]->key, "ARSPOT");
    EXPECT_EQ(sources[1]->key, "UCSALT");
    EXPECT_EQ(GrowingRules::built_in().figure("leach_volumes"), 2.0);
}

TEST(GrowingRules, AreRefusedWhereARowIsWrong)
{
    EXPECT_FALSE(with_change("UCSALT,high", "NOWHERE,high"));
    EXPECT_FALSE(with_change("4,6,5,months", "4,6,7,months"));
    EXPECT_FALSE(with_change("4,6,5,months", "4,six,5,months"));
    EXPECT_FALSE(with_change("leach_volumes,", "leach_months,"));
    EXPECT_FALSE(with_change("used,unit", "used,units"));
    const auto wrong = with_change("UCSALT,high", "UCSALT,certain");
    ASSERT_FALSE(wrong);
    EXPECT_NE(wrong.error().message.find("growing_rules.csv, line "), std::string::npos) << wrong.error().message;
}

} // namespace
} // namespace lathhouse::plan
