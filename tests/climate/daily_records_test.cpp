#include "core/climate/daily_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <unistd.h>

#include <cstdio>
#include <fstream>

namespace lathhouse::climate {
namespace {

using testing::HasSubstr;

class DailyFileTest : public testing::Test {
protected:
    DailyFileTest()
        : folder_(std::filesystem::temp_directory_path() / ("daily_records_" + std::to_string(::getpid())))
    {
        std::filesystem::create_directories(folder_);
    }
    ~DailyFileTest() override { std::filesystem::remove_all(folder_); }

    std::filesystem::path write(const std::string& content)
    {
        const auto file = folder_ / "records.txt";
        std::ofstream{file, std::ios::binary} << content;
        return file;
    }
    Result<std::vector<DailyRecord>> read(const std::string& content)
    {
        const auto file = DailyFile::open(write(content));
        if (!file) {
            return file.error();
        }
        return for_stations_of(*file, [](const DailyRecord& record) { return record; });
    }
    const std::filesystem::path& folder() const { return folder_; }

private:
    std::filesystem::path folder_;
};

/// A line of the fixed-width form; days not given are missing.
std::string line(const std::string& station, const std::string& month, const std::string& element,
                 const std::vector<std::string>& fields)
{
    std::string text = station + month + element;
    for (std::size_t day = 0; day < 31; ++day) {
        text += day < fields.size() ? fields[day] : "-9999   ";
    }
    return text + "\n";
}

const std::string kStation = "XX000000001";

TEST_F(DailyFileTest, ReadsTheFixedWidthForm)
{
    const auto records = read(
        line(kStation, "199901", "TMIN", {"  -12  0", "99999 X0", "  100   ", "-9999   "}) +
        line(kStation, "199901", "TMAX", {"  256  0"}) + line(kStation, "199901", "SNWD", {"  256  0"}) +
        line(kStation, "199903", "PRCP", {"    0T 0"}) + line("XX000000002", "200112", "TMIN", {"    1   "}));
    ASSERT_TRUE(records) << records.error().message;
    ASSERT_EQ(records->size(), 2U);
    const auto& first = records->front();
    EXPECT_EQ(first.station(), kStation);
    const auto* january = first.month(1999, 1);
    ASSERT_NE(january, nullptr);
    EXPECT_EQ(january->low[0].tenths(), -12);
    EXPECT_FALSE(january->low[1].known()) << "a value with a quality flag is missing";
    EXPECT_EQ(january->low[2].tenths(), 100);
    EXPECT_FALSE(january->low[3].known());
    EXPECT_EQ(january->high[0].tenths(), 256);
    EXPECT_EQ(first.month(1999, 3)->rain[0].tenths(), 0);
    EXPECT_EQ(first.month(1999, 4), nullptr);
    EXPECT_EQ(records->back().station(), "XX000000002");
    EXPECT_EQ(records->back().first_year(), 2001);
}

TEST_F(DailyFileTest, MonthsMayComeInAnyOrder)
{
    const auto records =
        read(line(kStation, "200001", "TMIN", {"    2   "}) + line(kStation, "199812", "TMIN", {"    1   "}));
    ASSERT_TRUE(records);
    EXPECT_EQ(records->front().first_year(), 1998);
    EXPECT_EQ(records->front().last_year(), 2000);
    EXPECT_EQ(records->front().month(2000, 1)->low[0].tenths(), 2);
}

struct BadField {
    const char* name;
    const char* field;
};
void PrintTo(const BadField& row, std::ostream* out)
{
    *out << row.name;
}
class BadFields : public DailyFileTest, public testing::WithParamInterface<BadField> {};
TEST_P(BadFields, AreNamedWithTheirLine)
{
    const auto records = read(line(kStation, "199901", "TMAX", {}) +
                              line(kStation, "199901", "TMIN", {"    1   ", GetParam().field}));
    ASSERT_FALSE(records);
    EXPECT_EQ(records.error().code, ErrorCode::Malformed);
    EXPECT_THAT(records.error().message, HasSubstr("records.txt, line 2: "));
    EXPECT_THAT(records.error().message, HasSubstr("day 2"));
}
INSTANTIATE_TEST_SUITE_P(Fields, BadFields,
                         testing::Values(BadField{"Letter", "  1a2   "}, BadField{"Blank", "        "},
                                         BadField{"TwoSigns", " --12   "}, BadField{"SignOnly", "    -   "},
                                         BadField{"BlankInside", " 1 12   "},
                                         BadField{"SignInside", " 1-12   "},
                                         BadField{"LeftAligned", "12      "}, BadField{"Point", " 12.5   "},
                                         BadField{"TooLarge", "99999   "}, BadField{"Plus", "  +12   "},
                                         BadField{"HighBit", "  \xB1"
                                                             "12   "}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST_F(DailyFileTest, EveryNumberOfFiveLettersIsRead)
{
    for (int value = -3000; value < 3000; value += 28) {
        std::vector<std::string> fields;
        for (int day = 0; day < 28; ++day) {
            char text[16];
            std::snprintf(text, sizeof text, "%5d   ", value + day);
            fields.emplace_back(text);
        }
        const auto records = read(line(kStation, "199902", "TMIN", fields));
        ASSERT_TRUE(records) << records.error().message;
        for (int day = 0; day < 28; ++day) {
            ASSERT_EQ(records->front().month(1999, 2)->low[static_cast<std::size_t>(day)].tenths(),
                      value + day);
        }
    }
}

TEST_F(DailyFileTest, NumbersAtTheEdgesAreRead)
{
    const auto records = read(line(kStation, "199901", "TMIN",
                                   {"-9998   ", "-1000   ", "10000   ", "32766   ", "00012   ", "-0012   ", "    0   "}));
    ASSERT_TRUE(records) << records.error().message;
    const auto& low = records->front().month(1999, 1)->low;
    const std::array expected{-9998, -1000, 10000, 32766, 12, -12, 0};
    for (std::size_t day = 0; day < expected.size(); ++day) {
        EXPECT_EQ(low[day].tenths(), expected[day]);
    }
    EXPECT_FALSE(low[30].known());
    EXPECT_FALSE(read(line(kStation, "199901", "TMIN", {"32767   "})));
}

TEST_F(DailyFileTest, EveryDayOfALineIsJudged)
{
    for (std::size_t bad = 0; bad < 31; ++bad) {
        std::vector<std::string> fields(31, "   12   ");
        fields[bad] = "   1x   ";
        const auto records = read(line(kStation, "199901", "TMIN", fields));
        ASSERT_FALSE(records);
        EXPECT_THAT(records.error().message, HasSubstr("day " + std::to_string(bad + 1)));
        fields[bad] = "  999 G ";
        const auto flagged = read(line(kStation, "199901", "TMIN", fields));
        ASSERT_TRUE(flagged);
        for (std::size_t day = 0; day < 31; ++day) {
            EXPECT_EQ(flagged->front().month(1999, 1)->low[day].known(), day != bad);
        }
    }
}

/// Lines of a hundred years, more than are read at once.
std::string lines_of_a_century()
{
    std::string text;
    for (int month = 0; month < 1200; ++month) {
        char year_and_month[16];
        std::snprintf(year_and_month, sizeof year_and_month, "%04d%02d", 1900 + month / 12, month % 12 + 1);
        char field[16];
        std::snprintf(field, sizeof field, "%5d   ", month - 600);
        text += line(kStation, year_and_month, "TMIN", {field});
    }
    return text;
}

TEST_F(DailyFileTest, ManyLinesAreReadWhateverTheirEnds)
{
    const auto plain = lines_of_a_century();
    std::string of_dos;
    for (const char letter : plain) {
        of_dos += letter == '\n' ? std::string{"\r\n"} : std::string(1, letter);
    }
    for (const auto& text : {plain, of_dos}) {
        const auto records = read(text);
        ASSERT_TRUE(records) << records.error().message;
        for (int month = 0; month < 1200; ++month) {
            ASSERT_EQ(records->front().month(1900 + month / 12, month % 12 + 1)->low[0].tenths(), month - 600);
        }
    }
}

TEST_F(DailyFileTest, FileCutWhileItIsOpenIsUnreadable)
{
    const auto path = write(lines_of_a_century());
    const auto file = DailyFile::open(path);
    ASSERT_TRUE(file);
    std::filesystem::resize_file(path, 700 * 270 + 100);
    const auto read = file->for_each_station([](const DailyRecord&) {});
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Unreadable);
    EXPECT_THAT(read.error().message, HasSubstr("changed"));
}

TEST_F(DailyFileTest, RowsOfAFileThatIsCutMeanwhileAreReadAsTheyWere)
{
    std::string rows = "STATION,DATE,TMIN\n";
    for (int year = 1900; year < 2000; ++year) {
        for (int month = 1; month <= 12; ++month) {
            const auto two = (month < 10 ? "-0" : "-") + std::to_string(month);
            rows += "USC00000001," + std::to_string(year) + two + "-01,-12\n";
        }
    }
    const auto path = write(rows);
    const auto file = DailyFile::open(path);
    ASSERT_TRUE(file) << file.error().message;
    std::filesystem::resize_file(path, 10);
    int months = 0;
    const auto read = file->for_each_station([&](const DailyRecord& record) {
        for (int month = 0; month < 1200; ++month) {
            months += record.month(1900 + month / 12, month % 12 + 1)->low[0].tenths() == -12 ? 1 : 0;
        }
    });
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(months, 1200);
}

TEST_F(DailyFileTest, DaysThatTheMonthLacksAreRefused)
{
    const std::vector<std::string> fields(29, "    1   ");
    EXPECT_TRUE(read(line(kStation, "200002", "TMIN", fields)));
    const auto common = read(line(kStation, "200102", "TMIN", fields));
    ASSERT_FALSE(common);
    EXPECT_THAT(common.error().message, HasSubstr("day 29"));
}

TEST_F(DailyFileTest, CutLineIsNamed)
{
    const auto whole = line(kStation, "199901", "TMIN", {});
    const auto records = read(whole + whole.substr(0, 200));
    ASSERT_FALSE(records);
    EXPECT_THAT(records.error().message, HasSubstr("line 2: 200 characters"));
}

TEST_F(DailyFileTest, LongLineIsNamed)
{
    auto longer = line(kStation, "199901", "TMIN", {});
    longer.insert(longer.size() - 1, "xx");
    const auto records = read(line(kStation, "199901", "TMAX", {}) + longer);
    ASSERT_FALSE(records);
    EXPECT_THAT(records.error().message, HasSubstr("line 2: 271 characters"));
}

TEST_F(DailyFileTest, LastLineMayLackItsEndAndLinesMayEndAsInDos)
{
    auto text = line(kStation, "199901", "TMIN", {"    1   "});
    text.pop_back();
    EXPECT_TRUE(read(text));
    EXPECT_TRUE(read(text + "\r\n" + line(kStation, "199902", "TMIN", {}).substr(0, 269) + "\r\n"));
}

TEST_F(DailyFileTest, MonthGivenTwiceIsRefused)
{
    const auto records = read(line(kStation, "199901", "TMIN", {}) + line(kStation, "199901", "TMIN", {}));
    ASSERT_FALSE(records);
    EXPECT_THAT(records.error().message, HasSubstr("twice"));
}

TEST_F(DailyFileTest, DayGivenTwiceIsRefused)
{
    const std::string element = "XX000000001,19990101,TMIN,-12,,,S,\nXX000000001,19990101,TMAX,30,,,S,\n";
    ASSERT_TRUE(read(element)) << "two elements of a day";
    const auto rows = read(element + "XX000000001,19990101,TMIN,-13,,,S,\n");
    ASSERT_FALSE(rows);
    EXPECT_THAT(rows.error().message, HasSubstr("line 3: TMIN of that day stands twice for station XX000000001"));
    const std::string days = "STATION,DATE,TMAX,TMIN\nA,1999-01-01,10,-1\n";
    const auto table = read(days + "A,1999-01-02,11,1\nA,1999-01-01,10,-2\n");
    ASSERT_FALSE(table);
    EXPECT_THAT(table.error().message, HasSubstr("line 4: TMIN of that day stands twice for station A"));
    // What was a gap may be filled by a later line.
    EXPECT_EQ(read(days + "A,1999-01-02,,\nA,1999-01-02,11,1\n")->front().month(1999, 1)->low[1].tenths(), 1);
}

TEST_F(DailyFileTest, StationThatComesBackIsRefused)
{
    const auto records =
        read(line(kStation, "199901", "TMIN", {}) + line("XX000000002", "199901", "TMIN", {}) +
             line(kStation, "199902", "TMIN", {}));
    ASSERT_FALSE(records);
    EXPECT_THAT(records.error().message, HasSubstr(kStation));
}

TEST_F(DailyFileTest, PiecesAreWholeStations)
{
    std::string text;
    for (int station = 100; station < 140; ++station) {
        for (int month = 1; month <= 9; ++month) {
            text += line("XX000000" + std::to_string(station), "19990" + std::to_string(month), "TMIN",
                         {"    1   "});
        }
    }
    const auto file = DailyFile::open(write(text));
    ASSERT_TRUE(file);
    for (const std::size_t wanted : {1U, 2U, 7U, 40U, 500U}) {
        const auto pieces = file->pieces(wanted);
        EXPECT_LE(pieces.size(), wanted);
        std::size_t total = 0;
        for (const auto piece : pieces) {
            EXPECT_EQ(piece.size() % (9 * 270), 0U);
            total += piece.size();
        }
        EXPECT_EQ(total, text.size());
    }
    const auto records = for_stations_of(*file, [](const DailyRecord& record) { return record.station(); });
    ASSERT_TRUE(records);
    ASSERT_EQ(records->size(), 40U);
    EXPECT_TRUE(std::ranges::is_sorted(*records));
}

TEST_F(DailyFileTest, ReadsARowForEachDayAndElement)
{
    const auto records = read("XX000000001,19990101,TMIN,-12,,,S,0700\n"
                              "XX000000001,19990101,SNOW,12,,,S,\n"
                              "XX000000001,19990102,TMIN,-15,,I,S,0700\n"
                              "XX000000001,19990131,TMAX,100,,,S\n"
                              "XX000000002,19990201,PRCP,5\n");
    ASSERT_TRUE(records) << records.error().message;
    ASSERT_EQ(records->size(), 2U);
    EXPECT_EQ(records->front().month(1999, 1)->low[0].tenths(), -12);
    EXPECT_FALSE(records->front().month(1999, 1)->low[1].known());
    EXPECT_EQ(records->front().month(1999, 1)->high[30].tenths(), 100);
    EXPECT_EQ(records->back().month(1999, 2)->rain[0].tenths(), 5);
}

TEST_F(DailyFileTest, BadRowsAreNamedWithTheirLine)
{
    const std::string good = "XX000000001,19990101,TMIN,-12,,,S,0700\n";
    for (const char* bad : {"XX000000001,19990230,TMIN,-12,,,S,0700\n", "XX000000001,19990101,TMIN,x,,,S,\n",
                            "XX000000001,19990101,TMIN\n", ",19990101,TMIN,5\n", "\n\n"}) {
        const auto records = read(good + bad);
        ASSERT_FALSE(records) << bad;
        EXPECT_EQ(records.error().code, ErrorCode::Malformed);
        EXPECT_THAT(records.error().message, HasSubstr("line 2: "));
    }
}

TEST_F(DailyFileTest, ReadsARowForEachDayInTenths)
{
    const auto records =
        read("\"STATION\",\"DATE\",\"NAME\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMIN\","
             "\"TMIN_ATTRIBUTES\"\n"
             "\"XX000000001\",\"1999-01-01\",\"A, B\",\"5\",\",,S\",\"  100\",\"  -12\",\",,S\"\n"
             "\"XX000000001\",\"1999-01-02\",\"A, B\",,,,\"-30\",\",I,S\"\n");
    ASSERT_TRUE(records) << records.error().message;
    const auto* january = records->front().month(1999, 1);
    EXPECT_EQ(january->low[0].tenths(), -12);
    EXPECT_EQ(january->high[0].tenths(), 100);
    EXPECT_EQ(january->rain[0].tenths(), 5);
    EXPECT_FALSE(january->low[1].known());
    EXPECT_FALSE(january->high[1].known());
}

TEST_F(DailyFileTest, BadRowsOfATableAreNamedWithTheirLine)
{
    const std::string good = "STATION,DATE,TMAX,TMIN\nA,1999-01-01,10,-1\n";
    struct Case {
        const char* row;
        const char* says;
    };
    for (const auto& [row, says] : {Case{"A,1999-01-02,10\n", "has not the 4 fields"}, Case{"A,\"1999-01-02,10,1\n", "line 3"},
                                    Case{" ,1999-01-02,10,1\n", "names no station"}, Case{"A,1999-02-30,10,1\n", "is no day"},
                                    Case{"A,2.1.1999,10,1\n", "is no day"}, Case{"A,1999-01-02,warm,1\n", "\"warm\" is no value"},
                                    Case{"A,1999-01-02,10,99999999\n", "is no value"}}) {
        const auto records = read(good + row);
        ASSERT_FALSE(records) << row;
        EXPECT_EQ(records.error().code, ErrorCode::Malformed);
        EXPECT_THAT(records.error().message, HasSubstr(says));
        EXPECT_THAT(records.error().message, HasSubstr("line 3"));
    }
    const auto without = read("STATION,DATE,TMAX\nA,1999-01-01,10\n");
    ASSERT_FALSE(without);
    EXPECT_THAT(without.error().message, HasSubstr("TMIN"));
    EXPECT_FALSE(read(good + "A,1999-01-02,10,-9999\n")->front().month(1999, 1)->low[1].known());
}

TEST_F(DailyFileTest, DecimalPointMeansWholeDegrees)
{
    const auto records = read("STATION,DATE,TMAX,TMIN,PRCP\nA,1999-01-01,10,-1.2,0.5\nA,1999-01-02,11,3,\n");
    ASSERT_TRUE(records) << records.error().message;
    EXPECT_EQ(records->front().month(1999, 1)->low[0].tenths(), -12);
    EXPECT_EQ(records->front().month(1999, 1)->high[1].tenths(), 110);
    EXPECT_EQ(records->front().month(1999, 1)->rain[0].tenths(), 5);
}

TEST_F(DailyFileTest, MissingFileIsNotFound)
{
    EXPECT_EQ(DailyFile::open(folder() / "none.dly").error().code, ErrorCode::NotFound);
}

TEST_F(DailyFileTest, FolderIsUnreadable)
{
    EXPECT_EQ(DailyFile::open(folder()).error().code, ErrorCode::Unreadable);
}

TEST_F(DailyFileTest, EmptyFileIsMalformed)
{
    EXPECT_THAT(DailyFile::open(write("")).error().message, HasSubstr("is empty"));
}

TEST_F(DailyFileTest, TwoGigabytesOfZerosAreRefusedAtTheFirstLine)
{
    const auto file = write("");
    std::filesystem::resize_file(file, std::uintmax_t{2} << 30);
    const auto opened = DailyFile::open(file);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::Malformed);
    EXPECT_THAT(opened.error().message, HasSubstr("line 1"));
}

} // namespace
} // namespace lathhouse::climate
