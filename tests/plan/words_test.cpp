#include "core/growth/recovery.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/cold_night.h"
#include "core/plan/pest_course.h"
#include "core/plan/spray_gate.h"

#include <gtest/gtest.h>

#include <set>
#include <string_view>
#include <vector>

namespace lathhouse::plan {
namespace {

/// The words of the values from the first to the last of an enumeration.
template <class Of>
std::set<std::string_view> words_up_to(Of last)
{
    std::set<std::string_view> words;
    for (int value = 0; value <= static_cast<int>(last); ++value) {
        words.insert(to_string(static_cast<Of>(value)));
    }
    return words;
}

// What other programs read of --json: every value has a word of its own, and these stay what they are.
TEST(Words, OfEachValueAreItsOwn)
{
    using Words = std::set<std::string_view>;
    EXPECT_EQ(words_up_to(SprayKind::Other), (Words{"soap", "oil", "neem", "alcohol", "systemic", "other"}));
    EXPECT_EQ(words_up_to(SprayVerdict::Never), (Words{"go", "note", "wait", "never"}));
    EXPECT_EQ(words_up_to(NightCourseBasis::SwingAssumed), (Words{"hours", "evening", "high", "usual", "assumed"}));
    EXPECT_EQ(words_up_to(ColdAct::ExpectGrowth), (Words{"look", "scratch_test", "expect_growth"}));
    EXPECT_EQ(words_up_to(PestState::Infested), (Words{"clean", "suspect", "infested"}));
    EXPECT_EQ(words_up_to(InMix::Mobile), (Words{"none", "bound", "between", "mobile"}));
    EXPECT_EQ(words_up_to(LeachAdvice::Yes), (Words{"no", "unsure", "yes"}));
    EXPECT_EQ(words_up_to(Closeness::Good), (Words{"weak", "fair", "good"}));
    EXPECT_EQ(words_up_to(growth::Verdict::TooEarly),
              (Words{"no_setback", "recovered", "recovering", "holding", "declining", "too_early"}));
    EXPECT_EQ(words_up_to(growth::TooEarlyWhy::Undecided),
              (Words{"", "few_before", "few_after", "clock_stands", "not_growing", "awaits_support", "undecided"}));
    EXPECT_EQ(words_up_to(SprayCheck::Place).size(), 25U);
    EXPECT_EQ(words_up_to(ColdOutcome::DeathLikely).size(), 7U);
    EXPECT_EQ(words_up_to(ColdDoubt::CourseAssumed).size(), 7U);
    EXPECT_EQ(words_up_to(DamageAct::Look).size(), 7U);
    for (const auto word : {"soap", "oil", "neem", "alcohol", "systemic", "other"}) {
        EXPECT_EQ(to_string(spray_kind_of(word).value()), word);
    }
    EXPECT_FALSE(spray_kind_of("water"));
}

} // namespace
} // namespace lathhouse::plan
