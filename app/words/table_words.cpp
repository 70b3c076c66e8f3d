#include "app/words/table_words.h"

#include "core/base/csv.h"
#include "core/base/parse.h"
#include "core/geodesy/place_name.h"

#include <cassert>
#include <map>
#include <string_view>

namespace lathhouse::words {

std::string_view embedded_kind_names();
std::string_view embedded_table_texts();

namespace {

/// Rows by their first cell, then by the head of the column.
using Translations = std::map<std::string, std::map<std::string, std::string>>;

Translations read_translations(std::string_view text, const char* name)
{
    Translations all;
    const auto table = CsvTable::parse(text, name);
    assert(table.has_value()); // It is built in, and a test reads every row.
    if (!table) {
        return all;
    }
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        auto& of = all[table->at(row, 0)];
        for (std::size_t column = 1; column < table->column_names().size(); ++column) {
            of[table->column_names()[column]] = table->at(row, column);
        }
    }
    return all;
}

const Translations& kind_names()
{
    static const Translations kAll = read_translations(embedded_kind_names(), "kind_names.csv");
    return kAll;
}

const Translations& table_texts()
{
    static const Translations kAll = read_translations(embedded_table_texts(), "table_texts.csv");
    return kAll;
}

std::string cell_of(const Translations& all, const std::string& key)
{
    const auto row = all.find(key);
    if (language().empty() || row == all.end()) {
        return {};
    }
    const auto cell = row->second.find(language());
    return cell == row->second.end() ? std::string{} : cell->second;
}

std::vector<std::string> in_every_language(const Translations& all, const std::string& key)
{
    std::vector<std::string> names;
    if (const auto row = all.find(key); row != all.end()) {
        for (const auto& [tongue, cell] : row->second) {
            for (const auto name : split(cell, ';')) {
                if (!name.empty()) {
                    names.emplace_back(name);
                }
            }
        }
    }
    return names;
}

} // namespace

std::string table_text(const std::string& text)
{
    auto said = cell_of(table_texts(), text);
    return said.empty() ? text : said;
}

std::string common_name(const std::string& botanical_name, const std::string& usual)
{
    const auto names = cell_of(kind_names(), botanical_name);
    return names.empty() ? usual : std::string{split(names, ';').front()};
}

std::vector<std::string> common_names(const std::string& botanical_name)
{
    std::vector<std::string> names;
    const auto cell = cell_of(kind_names(), botanical_name);
    for (const auto name : split(cell, ';')) {
        if (!name.empty()) {
            names.emplace_back(name);
        }
    }
    return names;
}

std::vector<std::string> foreign_names(const std::string& botanical_name)
{
    return in_every_language(kind_names(), botanical_name);
}

std::vector<std::string> foreign_texts(const std::string& text)
{
    return in_every_language(table_texts(), text);
}

std::string english_text(const std::string& said)
{
    const auto wanted = geodesy::name_key(said);
    for (const auto& [english, row] : table_texts()) {
        for (const auto& [tongue, cell] : row) {
            if (geodesy::name_key(cell) == wanted) {
                return english;
            }
        }
    }
    return said;
}

} // namespace lathhouse::words
