#include "app/sheet/sheet_printer.h"

#include "app/cli/household_facts.h"
#include "app/models/household_year.h"
#include "core/photo/scale_card.h"
#include "tests/sheet/printed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QSignalSpy>
#include <QTest>

#include <memory>

namespace lathhouse::sheet {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

/// What the window has, on the demonstration household in its folder.
class Printing : public testing::Test {
protected:
    static void SetUpTestSuite()
    {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static int count = 1;
        static char name[] = "sheet_test";
        static char* arguments[] = {name, nullptr};
        application_ = std::make_unique<QGuiApplication>(count, arguments);
    }
    static void TearDownTestSuite() { application_.reset(); }

    Printing()
    {
        const cli::Globals globals{.home = usual().home(),
                                   .home_given = true,
                                   .today = *calendar::parse_date("2026-03-14"),
                                   .units = words::UnitSystem::Metric};
        printer_ = std::make_unique<SheetPrinter>(
            models::plants_in_folder(usual().home(), [globals] { return cli::household_facts(globals); }), globals.today,
            models::YearWords(models::Units::Metric));
    }
    void print(const char* page, int plant, const std::string& file)
    {
        printer_->print(QString::fromLatin1(page), plant, QUrl::fromLocalFile(QString::fromStdString(file)));
        ASSERT_TRUE(QTest::qWaitFor([this] { return !printer_->working(); }, 60'000));
    }

    static std::unique_ptr<QGuiApplication> application_;
    std::unique_ptr<SheetPrinter> printer_;
};
std::unique_ptr<QGuiApplication> Printing::application_;

TEST_F(Printing, KeepsTheScaleCardAsADrawing)
{
    EXPECT_TRUE(printer_->hasSheet("card", 0));
    EXPECT_TRUE(printer_->suggestedFile("card", "").toLocalFile().endsWith("scale-card.svg"));
    print("card", 0, usual().file("card"));
    EXPECT_EQ(printer_->error(), "");
    EXPECT_THAT(printer_->said().toStdString(), HasSubstr("card.svg"));
    EXPECT_EQ(content_of(usual().file("card.svg")), photo::scale_card_svg());
}

TEST_F(Printing, KeepsTheSheetAndSaysWhere)
{
    print("year", 0, usual().file("window"));
    EXPECT_EQ(printer_->error(), "");
    EXPECT_THAT(printer_->said().toStdString(), HasSubstr("window.pdf"));
    EXPECT_THAT(content_of(usual().file("window.pdf")), StartsWith("%PDF-"));
}

TEST_F(Printing, GivesEachPageItsSheet)
{
    EXPECT_TRUE(printer_->hasSheet("year", 0));
    EXPECT_TRUE(printer_->hasSheet("round", 0));
    EXPECT_TRUE(printer_->hasSheet("seeds", 0));
    EXPECT_TRUE(printer_->hasSheet("plants", 3));
    EXPECT_FALSE(printer_->hasSheet("plants", 0));
    EXPECT_FALSE(printer_->hasSheet("home", 0));
    print("plants", 1, usual().file("one-plant.pdf"));
    EXPECT_THAT(usual().words_of("one-plant.pdf"), HasSubstr("What it needs"));
}

TEST_F(Printing, TheYearStandsInTheOrderThatIsShown)
{
    const cli::Globals globals{.home = usual().home(),
                               .home_given = true,
                               .today = *calendar::parse_date("2026-03-14"),
                               .units = words::UnitSystem::Metric};
    const auto facts = cli::household_facts(globals);
    ASSERT_TRUE(facts);
    auto shown = models::household_year(*facts, globals.today, models::Units::Metric);
    models::YearModel year(std::move(shown.year), std::move(shown.solver), models::YearWords(models::Units::Metric));
    ASSERT_TRUE(QTest::qWaitFor([&year] { return !year.planning(); }, 60'000));
    printer_->setYear(&year);
    year.plants()->setRowOrder(2);
    print("year", 0, usual().file("by-name.pdf"));
    const auto words = usual().words_of("by-name.pdf");
    EXPECT_THAT(words, HasSubstr("by name"));
    std::size_t before = 0;
    for (const QString& name : year.plants()->names()) { // Only the beginning of long ones may be printed.
        const auto at = words.find(name.left(10).toStdString(), before);
        EXPECT_NE(at, std::string::npos) << name.toStdString();
        before = at == std::string::npos ? before : at;
    }
    year.plants()->setRowOrder(1);
    print("year", 0, usual().file("by-spot.pdf"));
    const auto by_spot = usual().words_of("by-spot.pdf");
    EXPECT_THAT(by_spot, HasSubstr("by the spot where the year begins"));
    const auto first = year.plants()->data(year.plants()->index(0), models::PlantRows::GroupRole).toString().toStdString();
    EXPECT_LT(by_spot.find(first, by_spot.find("Plants ")), by_spot.find(year.plants()->names().first().left(10).toStdString()));
}

TEST_F(Printing, SaysWhyASheetIsNotKept)
{
    const auto file = usual().file("no-such-folder/year.pdf");
    print("round", 0, file);
    EXPECT_THAT(printer_->error().toStdString(), HasSubstr("cannot be written"));
    EXPECT_EQ(printer_->said(), "");
    EXPECT_FALSE(std::filesystem::exists(file));
    printer_->dismiss();
    EXPECT_EQ(printer_->error(), "");
}

TEST_F(Printing, ProposesANameThatEveryFolderTakes)
{
    EXPECT_THAT(printer_->suggestedFile("plants", "Angel's trumpet").fileName().toStdString(),
                testing::Eq("angel-s-trumpet-2026-03-14.pdf"));
    EXPECT_THAT(printer_->suggestedFile("year", "").fileName().toStdString(), testing::Eq("year-2026-03-14.pdf"));
}

TEST_F(Printing, RefusesWhatIsNoFolderOfThisComputer)
{
    printer_->print("year", 0, QUrl("https://example.org/year.pdf"));
    EXPECT_THAT(printer_->error().toStdString(), HasSubstr("is none"));
    EXPECT_FALSE(printer_->working());
}

} // namespace
} // namespace lathhouse::sheet
