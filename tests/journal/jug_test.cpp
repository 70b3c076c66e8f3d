#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "core/journal/migrations.h"
#include "tests/journal/temporary_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>

namespace lathhouse::journal {
namespace {

class Jugs : public WithFolder {
protected:
    HouseholdStore make() const
    {
        const auto made = home::demonstration({.today = calendar::Date{2026, 11, 25}}).value();
        return HouseholdStore::create(folder_ / "home", made.household, {}).value();
    }
    static home::Jug jug(const char* name, double litres)
    {
        return home::make_jug(name, Litres::from_litres(litres)).value();
    }
    calendar::Instant now_ = calendar::start_of_day_utc(calendar::Date{2026, 11, 25});
};

TEST_F(Jugs, AreNoneAtFirst)
{
    const auto jugs = make().jugs();
    ASSERT_TRUE(jugs) << jugs.error().message;
    EXPECT_TRUE(jugs->empty());
}

TEST_F(Jugs, AreKeptByName)
{
    auto store = make();
    ASSERT_TRUE(store.keep_jug(jug("red can", 5.0), now_));
    ASSERT_TRUE(store.keep_jug(jug("blue can", 1.5), now_));
    const auto jugs = HouseholdStore::open(folder_ / "home")->jugs();
    ASSERT_TRUE(jugs);
    EXPECT_EQ(*jugs, (std::vector<home::Jug>{jug("blue can", 1.5), jug("red can", 5.0)}));
}

TEST_F(Jugs, AreFollowedByOneOfTheSameNameAndStayInTheFile)
{
    auto store = make();
    ASSERT_TRUE(store.keep_jug(jug("blue can", 1.5), now_));
    ASSERT_TRUE(store.keep_jug(jug("Blue Can", 1.8), now_));
    EXPECT_EQ(*store.jugs(), std::vector<home::Jug>{jug("Blue Can", 1.8)});
    SQLite::Database file{(folder_ / "home" / "household.sqlite3").string()};
    EXPECT_EQ(file.execAndGet("SELECT count(*) FROM jugs").getInt(), 2);
}

TEST_F(Jugs, TableHoldsNoneThatIsWrong)
{
    make();
    SQLite::Database file{(folder_ / "home" / "household.sqlite3").string(), SQLite::OPEN_READWRITE};
    for (const char* row : {"('', 1.0, '2026-11-25T00:00:00Z')", "('can', 0.0, '2026-11-25T00:00:00Z')",
                            "('can', 2000.0, '2026-11-25T00:00:00Z')", "('can', 1.0, 'yesterday')"}) {
        EXPECT_THROW(file.exec(std::string{"INSERT INTO jugs (name, volume_litres, entered_at) VALUES "} + row),
                     SQLite::Exception)
            << row;
    }
}

TEST_F(Jugs, AreThereInAFileOfAnOlderSchema)
{
    const auto file = folder_ / "household.sqlite3";
    SQLite::Database database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    const auto steps = known_migrations();
    const auto with_jugs = std::ranges::find_if(steps, [](const Migration& step) {
        return std::string{step.sql}.find("CREATE TABLE jugs") != std::string::npos;
    });
    ASSERT_NE(with_jugs, steps.end());
    const auto before = static_cast<std::size_t>(with_jugs - steps.begin());
    ASSERT_TRUE(bring_up_to_date(database, file, steps.first(before)));
    ASSERT_TRUE(bring_up_to_date(database, file, steps));
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM jugs_that_count").getInt(), 0);
}

} // namespace
} // namespace lathhouse::journal
