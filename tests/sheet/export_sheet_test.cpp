#include "tests/sheet/printed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <vector>

namespace lathhouse::sheet {
namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

bool is_one_sentence(const Ran& ran)
{
    return ran.out.empty() && ran.err.starts_with("lathhouse: ") && std::count(ran.err.begin(), ran.err.end(), '\n') == 1;
}

/// A long name may stand on two lines with others beside it, so its words are looked for one by one.
void expect_words(const std::string& sheet, const std::string& name)
{
    std::istringstream words{name};
    for (std::string word; words >> word;) {
        EXPECT_THAT(sheet, HasSubstr(word)) << name;
    }
}

/// Latitude and longitude of the home as they could be printed.
std::vector<std::string> coordinates(const Demonstration& shown)
{
    std::vector<std::string> all;
    const auto add = [&all](double degrees) {
        for (const int decimals : {1, 2}) {
            std::ostringstream text;
            text.setf(std::ios::fixed);
            text.precision(decimals);
            text << std::abs(degrees);
            for (const char* after : {"°", ",", " N", " S", " E", " W"}) {
                all.push_back(text.str() + after);
            }
        }
    };
    const auto place = shown.json("show place");
    add(place["latitude"]);
    add(place["longitude"]);
    return all;
}

TEST(YearSheet, NamesEveryPlantItsSourcesAndTheRisk)
{
    const auto ran = usual().run("export sheet year " + usual().file("year.pdf"));
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, StartsWith("Wrote 1 page to "));
    EXPECT_EQ(ran.err, "");
    const auto words = usual().words_of("year.pdf");
    for (const auto& plant : usual().json("list plants")["plants"]) {
        expect_words(words, plant["name"]);
    }
    EXPECT_THAT(words, HasSubstr("The year from Saturday"));
    EXPECT_THAT(words, HasSubstr("Risk accepted: 1 in 10 for each plant, each way"));
    EXPECT_THAT(words, HasSubstr("stations,"));
    EXPECT_THAT(words, HasSubstr("chances, not promises"));
    EXPECT_THAT(words, HasSubstr("Where the numbers come from"));
    EXPECT_THAT(words, EndsWith("Sheet 1 of 1"));
}

TEST(YearSheet, HasTheSizeOfThePaperAskedFor)
{
    ASSERT_EQ(usual().run("export sheet year " + usual().file("a4.pdf")).status, 0);
    EXPECT_THAT(usual().facts_of("a4.pdf"), HasSubstr("(A4)"));
    EXPECT_THAT(usual().facts_of("a4.pdf"), HasSubstr("Title: The year from Saturday"));
    ASSERT_EQ(usual().run("export sheet year " + usual().file("letter.pdf") + " --paper letter").status, 0);
    EXPECT_THAT(usual().facts_of("letter.pdf"), HasSubstr("792 x 612 pts (letter)"));
}

TEST(YearSheet, OfSixtyPlantsHasSheetsThatNameEachOnce)
{
    const Demonstration many{"--plants 60 --spots 20"};
    ASSERT_EQ(many.made.status, 0) << many.made.err;
    const auto answer = many.json("export sheet year " + many.file("year.pdf"));
    const int pages = answer["pages"];
    EXPECT_GE(pages, 5);
    const auto words = many.words_of("year.pdf");
    EXPECT_THAT(many.facts_of("year.pdf"), HasSubstr("Pages: " + std::to_string(pages) + " "));
    for (const auto& plant : many.json("list plants")["plants"]) {
        expect_words(words, plant["name"]);
    }
    for (int page = 1; page <= pages; ++page) {
        EXPECT_THAT(words, HasSubstr("Sheet " + std::to_string(page) + " of " + std::to_string(pages)));
    }
}

TEST(YearSheet, TellsAnotherRisk)
{
    ASSERT_EQ(usual().run("export sheet year " + usual().file("risk.pdf") + " --risk 5").status, 0);
    EXPECT_THAT(usual().words_of("risk.pdf"), HasSubstr("Risk accepted: 1 in 20"));
}

TEST(YearSheet, OfTheSouthIsPrintedToo)
{
    const Demonstration south{"--hemisphere south"};
    ASSERT_EQ(south.run("export sheet year " + south.file("year.pdf")).status, 0);
    EXPECT_THAT(south.words_of("year.pdf"), HasSubstr("Night lows"));
}

TEST(RoundSheet, HasEveryTaskOfItsDaysWithItsCautions)
{
    ASSERT_EQ(usual().run("export sheet round " + usual().file("round.pdf") + " --days 3").status, 0);
    const auto words = usual().words_of("round.pdf");
    const auto tasks = usual().json("round --days 3")["tasks"];
    ASSERT_FALSE(tasks.empty());
    std::map<std::string, int> wanted;
    for (const auto& task : tasks) {
        const std::string what = task["task"];
        ++wanted[what.substr(1, 14)]; // Sentences begin with a capital here, and may break further on.
        for (const auto& caution : task["cautions"]) {
            expect_words(words, caution);
        }
    }
    for (const auto& [what, count] : wanted) {
        int found = 0;
        for (auto at = words.find(what); at != std::string::npos; at = words.find(what, at + 1)) {
            ++found;
        }
        EXPECT_GE(found, count) << what;
    }
    EXPECT_THAT(words, HasSubstr("Saturday"));
    EXPECT_THAT(words, HasSubstr("Monday"));
    EXPECT_THAT(words, Not(HasSubstr("Tuesday 17")));
}

TEST(PlantSheet, TellsNamesHazardsGrowthAndWhatWasWrittenDown)
{
    const auto plants = usual().json("list plants")["plants"];
    constexpr std::size_t kEach = 2; // Every other plant: a sheet takes three processes.
    for (std::size_t at = 0; at < plants.size(); at += kEach) {
        const auto& plant = plants[at];
        const std::string id = std::to_string(plant["id"].get<int>());
        const auto ran = usual().run("export sheet plant " + usual().file("plant.pdf") + " --plant " + id);
        ASSERT_EQ(ran.status, 0) << ran.err;
        const auto words = usual().words_of("plant.pdf");
        expect_words(words, plant["name"]);
        expect_words(words, plant["kind"]);
        EXPECT_THAT(words, HasSubstr("What it needs"));
        EXPECT_THAT(words, HasSubstr("What was written down"));
        EXPECT_THAT(words, HasSubstr("lethal at"));
        EXPECT_THAT(usual().facts_of("plant.pdf"), HasSubstr("Title: " + plant["name"].get<std::string>()));
    }
}

TEST(SeedSheet, NamesEveryLotWithItsDates)
{
    ASSERT_EQ(usual().run("export sheet seeds " + usual().file("seeds.pdf")).status, 0);
    const auto words = usual().words_of("seeds.pdf");
    const auto lots = usual().json("list lots")["lots"];
    ASSERT_FALSE(lots.empty());
    for (const auto& lot : lots) {
        expect_words(words, lot["name"]);
    }
    EXPECT_THAT(words, HasSubstr("Last useful sowing"));
    EXPECT_THAT(words, HasSubstr("not promises"));
}

/// A word as it lies on its page.
struct Laid {
    int page;
    double left, top, right, bottom;
    std::string word;
};
std::vector<Laid> laid(const std::string& file, const Folder& folder)
{
    std::vector<Laid> all;
    std::istringstream lines{run_shell("pdftotext -bbox " + file + " -", folder).out};
    int page = 0;
    for (std::string line; std::getline(lines, line);) {
        page += line.find("<page ") != std::string::npos ? 1 : 0;
        Laid of{page, 0, 0, 0, 0, {}};
        std::array<char, 200> word{};
        if (std::sscanf(line.c_str(), " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\">%199[^<]", &of.left, &of.top,
                        &of.right, &of.bottom, word.data()) == 5) {
            of.word = word.data();
            all.push_back(of);
        }
    }
    return all;
}

TEST(SeedSheet, NothingIsPrintedOverAnotherLine)
{
    const Demonstration own{""};
    const std::string name = "Tomato from the garden of the old house behind the mill, saved by hand for many years, red and "
                             "round, second harvest of a wet summer";
    const auto added = own.run("add lot --crop tomato --packed 2026 --seeds 40 --name '" + name + "' --json");
    ASSERT_EQ(added.status, 0) << added.err;
    const auto lot = nlohmann::json::parse(added.out)["id"].get<int>();
    const auto sown = own.run("log sown --lot " + std::to_string(lot) + " --seeds 12 --date 2026-03-09 --spot 'South sill'");
    ASSERT_EQ(sown.status, 0) << sown.err;
    ASSERT_EQ(own.run("export sheet seeds " + own.file("long.pdf")).status, 0);
    const auto words = laid(own.file("long.pdf"), own.folder);
    ASSERT_GT(words.size(), 100U);
    for (std::size_t one = 0; one < words.size(); ++one) {
        for (std::size_t other = one + 1; other < words.size(); ++other) {
            const auto& a = words[one];
            const auto& b = words[other];
            const double wide = std::min(a.right, b.right) - std::max(a.left, b.left);
            const double high = std::min(a.bottom, b.bottom) - std::max(a.top, b.top);
            const bool over = a.page == b.page && wide > 1.0 && high > 0.4 * std::min(a.bottom - a.top, b.bottom - b.top);
            EXPECT_FALSE(over) << a.word << " and " << b.word << " on page " << a.page;
        }
    }
}

TEST(AnySheet, TellsNoCoordinates)
{
    const std::vector<std::string> sheets{"year", "round", "seeds", "plant"};
    for (const auto& sheet : sheets) {
        const std::string option = sheet == "plant" ? " --plant 1" : "";
        ASSERT_EQ(usual().run("export sheet " + sheet + " " + usual().file("any.pdf") + option).status, 0);
        const auto words = usual().words_of("any.pdf") + usual().facts_of("any.pdf");
        for (const auto& figure : coordinates(usual())) {
            EXPECT_THAT(words, Not(HasSubstr(figure))) << sheet;
        }
    }
}

TEST(AnySheet, IsTheSameForTheSameHousehold)
{
    ASSERT_EQ(usual().run("export sheet year " + usual().file("one.pdf")).status, 0);
    ASSERT_EQ(usual().run("export sheet year " + usual().file("two.pdf")).status, 0);
    EXPECT_TRUE(content_of(usual().file("one.pdf")) == content_of(usual().file("two.pdf")));
}

TEST(AnySheet, IsWholeOrNotThere)
{
    const auto file = usual().file("nowhere/year.pdf");
    const auto ran = usual().run("export sheet year " + file);
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_sentence(ran)) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("nowhere/year.pdf cannot be written"));
    EXPECT_FALSE(std::filesystem::exists(file));
}

TEST(AnySheet, LeavesTheFileAloneThatItCannotReplace)
{
    const auto folder = usual().file("taken.pdf"); // A folder stands where the file should.
    std::filesystem::create_directories(folder + "/inside");
    const auto ran = usual().run("export sheet year " + folder);
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_sentence(ran)) << ran.err;
    EXPECT_TRUE(std::filesystem::is_directory(folder + "/inside"));
    for (const auto& entry : std::filesystem::directory_iterator(usual().folder.path())) {
        EXPECT_THAT(entry.path().string(), Not(EndsWith(".part")));
    }
}

struct WrongUse {
    const char* name;
    const char* arguments;
    int status;
    const char* says;
};
void PrintTo(const WrongUse& use, std::ostream* out)
{
    *out << use.name;
}
class SheetUsedWrongly : public testing::TestWithParam<WrongUse> {};

TEST_P(SheetUsedWrongly, IsTold)
{
    const auto ran = usual().run(std::string{"export sheet "} + GetParam().arguments);
    EXPECT_EQ(ran.status, GetParam().status);
    EXPECT_TRUE(is_one_sentence(ran)) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr(GetParam().says));
}

INSTANTIATE_TEST_SUITE_P(
    Cases, SheetUsedWrongly,
    testing::Values(WrongUse{"NoSuchSheet", "garden /dev/null", 2, "year"},
                    WrongUse{"NoFile", "year", 2, "file"},
                    WrongUse{"NoSuchPaper", "year /tmp/x.pdf --paper a5", 2, "--paper"},
                    WrongUse{"PlantWithoutAName", "plant /tmp/x.pdf", 2, "--plant with its id or name"},
                    WrongUse{"NoSuchPlant", "plant /tmp/x.pdf --plant Lemmon", 1, "Lemon"},
                    WrongUse{"PlantForTheYear", "year /tmp/x.pdf --plant Lemon", 2, "--plant goes with"},
                    WrongUse{"DaysForTheYear", "year /tmp/x.pdf --days 7", 2, "--days goes with"},
                    WrongUse{"NoDays", "round /tmp/x.pdf --days 0", 2, "--days"},
                    WrongUse{"RiskForTheRound", "round /tmp/x.pdf --risk 10", 2, "--risk goes with"}),
    [](const auto& use) { return std::string{use.param.name}; });

TEST(AnySheet, NeedsAHousehold)
{
    const Folder empty;
    const auto ran = run_program("--home " + empty.path().string() + "/none export sheet year /tmp/x.pdf", empty);
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(is_one_sentence(ran)) << ran.err;
}

} // namespace
} // namespace lathhouse::sheet
