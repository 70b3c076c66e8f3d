#include "core/base/csv.h"
#include "core/plan/cautions.h"
#include "core/plan/chemical_damage.h"
#include "core/plan/growing_rules.h"
#include "core/plan/spray_gate.h"
#include "core/plants/pest.h"
#include "core/plants/plant_kind.h"
#include "core/plants/seed_kind.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace lathhouse::plan {
namespace {

using testing::HasSubstr;

/// A table in memory that can be changed and written again.
struct OddTable {
    std::string file;
    std::vector<std::vector<std::string>> rows; ///< The head first.

    explicit OddTable(const std::string& path) : file(std::filesystem::path{path}.filename().string())
    {
        const auto text = read_text_file(std::filesystem::path{LATHHOUSE_SOURCE} / path).value();
        const auto table = CsvTable::parse(text, file).value();
        rows.push_back(table.column_names());
        for (std::size_t row = 0; row < table.row_count(); ++row) {
            std::vector<std::string> cells;
            for (std::size_t column = 0; column < table.column_names().size(); ++column) {
                cells.emplace_back(table.at(row, column));
            }
            rows.push_back(std::move(cells));
        }
    }
    std::string text() const
    {
        std::string text;
        for (const auto& row : rows) {
            for (std::size_t column = 0; column < row.size(); ++column) {
                text += (column == 0 ? "" : ",") + csv_field(row[column]);
            }
            text += '\n';
        }
        return text;
    }
};

/// Tables that are read together, and what reading them says; empty where they are taken.
struct Reader {
    std::vector<std::string> files;
    std::function<std::string(const std::vector<std::string>&)> read;
};

template <class Table>
std::string said_of(const Result<Table>& table)
{
    return table ? std::string{} : table.error().message;
}

const std::vector<Reader>& readers()
{
    using Texts = std::vector<std::string>;
    static const std::vector<Reader> all{
        {{"core/plan/data/damage_signs.csv", "core/plan/data/damage_modes.csv", "core/plan/data/damage_patterns.csv"},
         [](const Texts& of) { return said_of(DamageTable::parse(of[0], of[1], of[2])); }},
        {{"core/plan/data/spray_rules.csv", "core/plan/data/sensitive_kinds.csv"},
         [](const Texts& of) { return said_of(SprayRules::parse(of[0], of[1])); }},
        {{"core/plants/data/pests.csv", "core/plants/data/pest_clocks.csv"},
         [](const Texts& of) { return said_of(plants::PestTable::parse(of[0], of[1])); }},
        {{"core/plants/data/plants.csv", "core/plants/data/sources.csv"},
         [](const Texts& of) { return said_of(plants::PlantReference::parse(of[0], of[1])); }},
        {{"core/plants/data/seeds.csv"},
         [](const Texts& of) { return said_of(plants::SeedReference::parse(of[0], plants::PlantReference::built_in())); }},
        {{"core/plan/data/growing_rules.csv", "core/plan/data/growing_sources.csv"},
         [](const Texts& of) { return said_of(GrowingRules::parse(of[0], of[1])); }},
        {{"core/plan/data/cautions.csv", "core/plan/data/caution_sources.csv"},
         [](const Texts& of) { return said_of(CautionTable::parse(of[0], of[1])); }}};
    return all;
}

/// Has `change` change each table of each reader in turn, and gives what was said of it.
void with_each_table(const std::function<void(OddTable&, const std::function<std::string()>&)>& change)
{
    for (const auto& reader : readers()) {
        std::vector<OddTable> tables(reader.files.begin(), reader.files.end());
        const auto said = [&] {
            std::vector<std::string> texts;
            for (const auto& table : tables) {
                texts.push_back(table.text());
            }
            return reader.read(texts);
        };
        ASSERT_EQ(said(), "") << reader.files.front();
        for (auto& table : tables) {
            change(table, said);
        }
    }
}

TEST(ShippedTables, WithAColumnMissingAreRefusedByItsName)
{
    with_each_table([](OddTable& table, const std::function<std::string()>& said) {
        int refused = 0;
        const auto whole = table.rows;
        for (std::size_t column = 0; column < whole.front().size(); ++column) {
            table.rows = whole;
            table.rows.front()[column] = "other";
            if (const auto message = said(); !message.empty()) {
                ++refused;
                EXPECT_THAT(message, HasSubstr(table.file)) << whole.front()[column];
            }
        }
        table.rows = whole;
        EXPECT_GT(refused, 0) << table.file;
        table.rows.front().pop_back(); // Rows longer than the head.
        EXPECT_THAT(said(), HasSubstr(table.file));
        table.rows = whole;
    });
}

TEST(ShippedTables, WithAnOddCellAreRefusedByFileAndLineOrTaken)
{
    int refused = 0;
    with_each_table([&](OddTable& table, const std::function<std::string()>& said) {
        for (std::size_t column = 0; column < table.rows.front().size(); ++column) {
            for (const char* odd : {"", "strange", "-7.5", "9-3", "nan"}) {
                auto& cell = table.rows[1][column];
                const auto whole = cell;
                cell = odd;
                if (const auto message = said(); !message.empty()) {
                    ++refused;
                    EXPECT_THAT(message, HasSubstr(".csv")) << table.rows.front()[column] << ": " << odd;
                }
                cell = whole;
            }
        }
    });
    EXPECT_GT(refused, 150);
}

TEST(ShippedTables, WithARowTwiceAreRefusedWhereRowsHaveAName)
{
    std::vector<std::string> taken;
    with_each_table([&](OddTable& table, const std::function<std::string()>& said) {
        table.rows.push_back(table.rows[1]);
        if (said().empty()) {
            taken.push_back(table.file);
        }
        table.rows.pop_back();
    });
    // Of these the same row again changes nothing that is asked of them.
    EXPECT_LE(taken.size(), 5U) << testing::PrintToString(taken);
}

} // namespace
} // namespace lathhouse::plan
