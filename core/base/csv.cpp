#include "core/base/csv.h"

#include "core/base/parse.h"
#include "core/base/readable_file.h"
#include "core/base/temporary_folder.h"

#include <csv.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <memory>
#include <system_error>

#include <unistd.h>

namespace lathhouse {
namespace {

constexpr std::size_t kLeastBlock = 128; ///< Bytes; the library's own.

struct Collector {
    std::vector<std::string> fields;
    std::vector<std::vector<std::string>> rows;
};

void on_field(void* text, std::size_t length, void* collector)
{
    static_cast<Collector*>(collector)->fields.emplace_back(static_cast<const char*>(text), length);
}

void on_row(int, void* collector)
{
    auto& target = *static_cast<Collector*>(collector);
    target.rows.push_back(std::move(target.fields));
    target.fields.clear();
}

struct ParserCloser {
    void operator()(csv_parser* parser) const { csv_free(parser); }
};

/// Lines at which the rows begin, found apart since the library does not report them: a line end outside
/// quotes ends a row, and the library skips rows of nothing but blanks.
std::vector<std::size_t> row_lines(std::string_view text, std::size_t first_line, char separator)
{
    std::vector<std::size_t> lines;
    bool quoted = false;
    bool blank = true;
    std::size_t line = first_line;
    std::size_t start = first_line;
    for (const char letter : text) {
        const bool nothing = letter == '\n' || letter == '\r' || ((letter == ' ' || letter == '\t') && letter != separator);
        if (blank && !nothing) {
            blank = false;
            start = line;
        }
        quoted ^= letter == '"';
        if (letter == '\n') {
            ++line;
            if (!quoted && !blank) {
                lines.push_back(start);
                blank = true;
            }
        }
    }
    if (!blank) {
        lines.push_back(start);
    }
    return lines;
}

} // namespace

Result<CsvTable> CsvTable::parse(std::string_view text, std::string source_name, char separator)
{
    if (text.starts_with("\xEF\xBB\xBF")) {
        text.remove_prefix(3);
    }
    std::size_t first_line = 1;
    while (text.starts_with('#')) {
        const auto end = text.find('\n');
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        ++first_line;
    }

    csv_parser storage{};
    if (csv_init(&storage, CSV_STRICT | CSV_STRICT_FINI) != 0) {
        return Error{ErrorCode::Unavailable, said("could not start the reader of comma-separated files")};
    }
    const std::unique_ptr<csv_parser, ParserCloser> parser{&storage};
    csv_set_delim(parser.get(), static_cast<unsigned char>(separator));
    // Its buffer holds one field and grows by a block at a time, 128 bytes if not told: where a field has megabytes, each
    // growth copies all of it anew. No field is longer than the text.
    csv_set_blk_size(parser.get(), std::max<std::size_t>(text.size(), kLeastBlock));
    Collector collector;
    const auto parsed = csv_parse(parser.get(), text.data(), text.size(), on_field, on_row, &collector);
    if (parsed != text.size() || csv_fini(parser.get(), on_field, on_row, &collector) != 0) {
        const auto shown = text.substr(0, std::min(parsed, text.size()));
        const auto line = first_line + static_cast<std::size_t>(std::ranges::count(shown, '\n'));
        return Error{
            ErrorCode::Malformed,
            said("%1, line %2: a quotation mark is not closed or stands inside a field; write fields as RFC 4180 asks",
                 source_name, line)};
    }
    if (collector.rows.empty()) {
        return Error{ErrorCode::Malformed, said("%1 is empty; it needs a line of column names", source_name)};
    }

    CsvTable table;
    table.source_name_ = std::move(source_name);
    for (const auto& name : collector.rows.front()) {
        table.names_.emplace_back(trimmed(name));
        table.index_.emplace(table.names_.back(), table.names_.size() - 1);
    }
    const auto lines = row_lines(text, first_line, separator);
    table.rows_.reserve(collector.rows.size() - 1);
    for (std::size_t i = 1; i < collector.rows.size(); ++i) {
        Row row{std::move(collector.rows[i]), i < lines.size() ? lines[i] : first_line + i};
        if (row.fields.size() != table.names_.size()) {
            return Error{ErrorCode::Malformed, said("%1, line %2: %3 fields where the head has %4", table.source_name_,
                                                    row.line, row.fields.size(), table.names_.size())};
        }
        table.rows_.push_back(std::move(row));
    }
    return table;
}

Result<CsvTable> CsvTable::read(const std::filesystem::path& file)
{
    const auto text = read_text_file(file);
    if (!text) {
        return text.error();
    }
    return parse(*text, file.filename().string());
}

std::optional<std::size_t> CsvTable::column(std::string_view name) const
{
    const auto found = index_.find(std::string{name});
    if (found == index_.end()) {
        return std::nullopt;
    }
    return found->second;
}

Result<std::size_t> CsvTable::require_column(std::string_view name) const
{
    if (const auto found = column(name)) {
        return *found;
    }
    return Error{ErrorCode::Malformed, said("%1 has no column \"%2\"", source_name_, name)};
}

Result<std::optional<double>> CsvTable::number(std::size_t row, std::size_t column) const
{
    const auto text = trimmed(at(row, column));
    if (text.empty()) {
        return std::optional<double>{};
    }
    if (const auto value = parse_number(text)) {
        return std::optional<double>{*value};
    }
    return error_at(row, said("\"%1\" is no number (column %2)", text, names_[column]));
}

Error CsvTable::error_at(std::size_t row, const Said& what) const
{
    return Error{ErrorCode::Malformed, said("%1, line %2: %3", source_name_, line(row), what)};
}

std::string csv_field(std::string_view text)
{
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) {
        return std::string{text};
    }
    std::string quoted = "\"";
    for (const char letter : text) {
        if (letter == '"') {
            quoted += '"';
        }
        quoted += letter;
    }
    return quoted + '"';
}

Result<std::string> read_text_file(const std::filesystem::path& file)
{
    if (const auto there = must_be_a_file(file); !there) {
        return there.error();
    }
    std::ifstream input{file, std::ios::binary};
    if (!input.is_open()) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read; check its rights", file.string())};
    }
    // Piece by piece, since a pipe does not say its size, and by `read`, which tells a failing disk from the end.
    constexpr std::size_t kPiece = std::size_t{1} << 16;
    std::string text;
    while (input) {
        const auto end = text.size();
        text.resize(end + kPiece);
        input.read(text.data() + end, kPiece);
        text.resize(end + static_cast<std::size_t>(input.gcount()));
    }
    if (input.bad()) {
        return Error{ErrorCode::Unreadable, said("%1 cannot be read to its end; the disk may be failing", file.string())};
    }
    return text;
}

Result<void> write_file_whole(const std::filesystem::path& asked, std::string_view content)
{
    // Renaming would put a file in the place of a device, a pipe or a link.
    std::error_code unknown;
    if (std::filesystem::exists(asked, unknown) && !std::filesystem::is_regular_file(asked, unknown)) {
        return Error{ErrorCode::Unwritable,
                     said("%1 cannot be written (it is there and is no file); choose another name", asked.string())};
    }
    const bool leads_on = std::filesystem::is_symlink(asked, unknown) && std::filesystem::exists(asked, unknown);
    const auto file = leads_on ? std::filesystem::canonical(asked, unknown) : asked;
    auto beside = file;
    beside += "." + std::to_string(::getpid()) + ".part";
    const auto fail = [&](const Said& what) -> Error {
        std::error_code ignored;
        std::filesystem::remove(beside, ignored);
        return Error{ErrorCode::Unwritable, said("%1 cannot be written (%2); choose a folder where you may write", file.string(), what)};
    };
    {
        std::ofstream output{beside, std::ios::binary | std::ios::trunc};
        if (!output) {
            return fail(Said{std::strerror(errno)});
        }
        output.write(content.data(), static_cast<std::streamsize>(content.size()));
        output.flush();
        if (!output) {
            return fail(said("the disk may be full"));
        }
    }
    // Else a power cut could leave the new name with nothing in it, and the older file gone.
    if (!flush_to_disk(beside)) {
        return fail(said("the disk may be full"));
    }
    std::error_code failure;
    std::filesystem::rename(beside, file, failure);
    if (failure) {
        return fail(Said{failure.message()});
    }
    // The file is whole under its name now; a folder that may be written and not read cannot be flushed.
    static_cast<void>(flush_to_disk(with_name(file).parent_path()));
    return {};
}

} // namespace lathhouse
