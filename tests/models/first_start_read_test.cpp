#include "tests/cli/run_command.h"
#include "tests/models/start_fixtures.h"

#include <QSignalSpy>

#include <nlohmann/json.hpp>

namespace lathhouse::models {
namespace {

/// What the first start wrote is what the command line reads, and its year has moves.
TEST(FirstStartRead, TheCommandLineHasTheHouseholdAndItsYear)
{
    const FreshFolder folder;
    FirstStartModel model(shipped_door(), folder.path(), british_words(), kStartToday);
    QSignalSpy made(&model, &FirstStartModel::made);
    model.start();
    model.place()->setFind(QStringLiteral("48.2, 20.8"));
    wait_until_still(*model.place());
    ASSERT_TRUE(model.next());
    model.spots()->addReady(0);
    model.spots()->addReady(5);
    ASSERT_TRUE(model.next());
    for (const char* name : {"Citrus limon", "Ficus benjamina", "Nerium oleander"}) {
        model.plants()->setFind(QString::fromLatin1(name));
        model.plants()->pick(0);
    }
    ASSERT_TRUE(model.next());
    wait_until_still(model);
    ASSERT_EQ(made.count(), 1) << model.error().toStdString();

    const auto home = folder.path().string();
    const auto listed = cli::run_command({"--home", home, "--on", "2026-03-14", "--json", "list", "plants"});
    ASSERT_EQ(listed.status, 0) << listed.err;
    EXPECT_EQ(nlohmann::json::parse(listed.out)["plants"].size(), 3U);
    const auto check = cli::run_command({"--home", home, "check"});
    EXPECT_EQ(check.status, 0) << check.out << check.err;
    const auto moves = cli::run_command({"--home", home, "--on", "2026-03-14", "moves"});
    ASSERT_EQ(moves.status, 0) << moves.err;
    EXPECT_NE(moves.out.find("Roofed balcony"), std::string::npos) << moves.out;
}

} // namespace
} // namespace lathhouse::models
