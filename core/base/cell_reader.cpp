#include "core/base/cell_reader.h"

#include "core/base/parse.h"

namespace lathhouse {

std::string CellReader::text(std::string_view column)
{
    const auto index = table_->require_column(column);
    if (!index) {
        if (!error_) {
            error_ = index.error();
        }
        return {};
    }
    return std::string{trimmed(table_->at(row_, *index))};
}

std::string CellReader::filled(std::string_view column)
{
    auto found = text(column);
    if (found.empty()) {
        fail_at(std::string{column} + " is blank");
    }
    return found;
}

std::optional<double> CellReader::number_if_any(std::string_view column)
{
    const auto written = text(column);
    if (written.empty()) {
        return std::nullopt;
    }
    const auto value = parse_number(written);
    if (!value) {
        fail_at(std::string{column} + " must be a number, not \"" + written + "\"");
    }
    return value;
}

double CellReader::number(std::string_view column)
{
    filled(column);
    return number_if_any(column).value_or(0.0);
}

std::vector<std::string> CellReader::list(std::string_view column)
{
    std::vector<std::string> pieces;
    const auto written = text(column);
    for (const auto piece : split(written, ';')) {
        if (const auto name = trimmed(piece); !name.empty()) {
            pieces.emplace_back(name);
        }
    }
    return pieces;
}

std::vector<std::string> CellReader::filled_list(std::string_view column)
{
    filled(column);
    return list(column);
}

bool CellReader::yes(std::string_view column)
{
    const auto written = text(column);
    if (written != "yes" && written != "no") {
        fail_at(std::string{column} + " must be yes or no, not \"" + written + "\"");
    }
    return written == "yes";
}

void CellReader::fail_at(std::string_view what)
{
    if (!error_) {
        error_ = table_->error_at(row_, Said{what});
    }
}

Result<void> CellReader::outcome() const
{
    if (error_) {
        return *error_;
    }
    return {};
}

} // namespace lathhouse
