#include "app/models/kept_facts.h"

#include "core/journal/household_store.h"
#include "tests/models/page_fixtures.h"

#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <span>
#include <thread>
#include <vector>

namespace lathhouse::models {
namespace {

/// A folder that is read as the window reads it, counted.
class KeptFacts : public testing::Test {
protected:
    KeptFacts()
    {
        auto pattern = (std::filesystem::temp_directory_path() / "lathhouse_kept_XXXXXX").string();
        EXPECT_NE(mkdtemp(pattern.data()), nullptr);
        folder = std::filesystem::path{pattern} / "home";
        EXPECT_TRUE(journal::HouseholdStore::create(folder, plain_facts().as_told, plain_facts().events));
        kept = kept_facts(folder, [this]() -> Result<plan::HouseholdFacts> {
            ++reads;
            const auto store = journal::HouseholdStore::open(folder);
            if (!store) {
                return store.error();
            }
            auto facts = plain_facts();
            facts.events = store->events().value();
            return facts;
        });
    }
    ~KeptFacts() override
    {
        std::error_code failure;
        std::filesystem::remove_all(folder.parent_path(), failure);
    }
    void water()
    {
        const home::Event watered{plain_facts().as_told.plants.front().id, home::EventKind::Watered, {}, kShownToday,
                                  calendar::start_of_day_utc(kShownToday), ""};
        EXPECT_TRUE(journal::HouseholdStore::open(folder)->record(std::span{&watered, 1}));
    }
    std::filesystem::path folder;
    std::atomic<int> reads = 0;
    std::function<Result<plan::HouseholdFacts>()> kept;
};

TEST_F(KeptFacts, AreReadOnceForAllAndAgainAfterAChange)
{
    const auto first = kept();
    ASSERT_TRUE(first) << first.error().message;
    const auto second = kept();
    ASSERT_TRUE(second);
    EXPECT_EQ(reads, 1);
    EXPECT_EQ(&first->events.front(), &second->events.front()) << "what happened is there twice";
    water();
    const auto third = kept();
    ASSERT_TRUE(third);
    EXPECT_EQ(reads, 2);
    EXPECT_EQ(third->events.size(), first->events.size() + 1);
    EXPECT_EQ(third->events.back().kind, home::EventKind::Watered);
    ASSERT_TRUE(kept());
    EXPECT_EQ(reads, 2);
}

TEST_F(KeptFacts, AreReadOnceForThreadsThatAskAtATime)
{
    std::vector<std::jthread> pages;
    std::atomic<int> answered = 0;
    for (int page = 0; page < 6; ++page) {
        pages.emplace_back([&] { answered += kept() ? 1 : 0; });
    }
    pages.clear();
    EXPECT_EQ(answered, 6);
    EXPECT_EQ(reads, 1);
}

TEST_F(KeptFacts, ThatAreChangedByOneLeaveThoseOfOthers)
{
    auto first = *kept();
    const auto before = first.events.size();
    first.events.push_back(first.events.front());
    EXPECT_EQ(first.events.size(), before + 1);
    EXPECT_EQ(kept()->events.size(), before);
    EXPECT_EQ(reads, 1);
}

TEST_F(KeptFacts, AnErrorIsNotKept)
{
    ASSERT_TRUE(kept());
    std::filesystem::rename(folder, folder.parent_path() / "away");
    EXPECT_FALSE(kept());
    std::filesystem::rename(folder.parent_path() / "away", folder);
    EXPECT_TRUE(kept());
}

TEST_F(KeptFacts, AnotherFileInTheFolderIsRead)
{
    ASSERT_TRUE(kept());
    const auto file = folder / "household.sqlite3";
    std::filesystem::copy_file(file, folder / "other.sqlite3");
    std::filesystem::rename(folder / "other.sqlite3", file);
    water();
    EXPECT_EQ(kept()->events.back().kind, home::EventKind::Watered);
    EXPECT_EQ(reads, 2);
}

} // namespace
} // namespace lathhouse::models
