#include "core/climate/daily_records.h"

#include "core/base/csv.h"
#include "core/calendar/month_length.h"
#include "core/climate/daily_lines.h"
#include "core/climate/fixed_width_line.h"

#include <boost/interprocess/file_mapping.hpp>
#include <boost/interprocess/mapped_region.hpp>

#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstring>
#include <system_error>
#include <thread>
#include <unordered_set>

namespace lathhouse::climate {
namespace {

/// Part of a file, read block by block into memory that stays near the processor. To copy a block costs a fraction of
/// what the first touch of each page of a mapping does.
class BlockReader {
public:
    /// Of an open file, from one byte to before another.
    BlockReader(int handle, std::size_t begin, std::size_t end) : handle_(handle), begin_(begin), end_(end) {}

    std::size_t at() const { return begin_; }
    bool failed() const { return failed_; }
    /// So many bytes from `at` on, at most `end`; fewer at the end and where reading fails. Valid until the next call.
    std::string_view ahead(std::size_t count)
    {
        if (held_.size() < std::min(count, end_ - begin_)) {
            fill();
        }
        return held_.substr(0, count);
    }
    void skip(std::size_t count)
    {
        begin_ += count;
        held_.remove_prefix(std::min(count, held_.size()));
    }

private:
    void fill()
    {
        std::memmove(block_.data(), held_.data(), held_.size());
        std::size_t size = held_.size();
        while (!failed_ && size < std::min(block_.size(), end_ - begin_)) {
            const auto got = ::pread(handle_, block_.data() + size, std::min(block_.size(), end_ - begin_) - size,
                                     static_cast<off_t>(begin_ + size));
            if (got > 0) {
                size += static_cast<std::size_t>(got);
            } else {
                failed_ = got == 0 || errno != EINTR;
            }
        }
        held_ = {block_.data(), failed_ ? 0 : size};
    }

    int handle_;
    std::size_t begin_;
    std::size_t end_;
    std::vector<char> block_ = std::vector<char>(128 * 1024);
    std::string_view held_;
    bool failed_ = false;
};

std::optional<std::string> repeated(std::span<const std::string> stations)
{
    std::unordered_set<std::string_view> seen;
    for (const auto& station : stations) {
        if (!seen.insert(station).second) {
            return station;
        }
    }
    return std::nullopt;
}

} // namespace

DailyMonth& DailyRecord::month_to_write(int year, int month)
{
    const int index = year * 12 + month - 1;
    if (months_.empty()) {
        first_month_ = index;
    }
    if (index < first_month_) {
        months_.insert(months_.begin(), static_cast<std::size_t>(first_month_ - index), DailyMonth{});
        first_month_ = index;
    }
    const auto at = static_cast<std::size_t>(index - first_month_);
    if (at >= months_.size()) {
        months_.resize(at + 1);
    }
    return months_[at];
}

void DailyRecord::restart(std::string_view station)
{
    station_ = station;
    months_.clear();
}

struct DailyFile::Mapping {
    boost::interprocess::file_mapping file;
    boost::interprocess::mapped_region region;
    std::string rows; ///< The comma-separated forms whole: from a mapping that shrinks under them one would not come back.
};

Result<DailyFile> DailyFile::open(const std::filesystem::path& path)
{
    std::error_code failure;
    const auto status = std::filesystem::status(path, failure);
    if (!std::filesystem::exists(status)) {
        return Error{ErrorCode::NotFound, said("there is no file %1", path.string())};
    }
    if (std::filesystem::is_directory(status)) {
        return Error{ErrorCode::Unreadable, said("%1 is a folder; name a file of daily records in it", path.string())};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return Error{ErrorCode::Unreadable,
                     said("%1 is no ordinary file; save the records to a file first", path.string())};
    }
    if (std::filesystem::file_size(path, failure) == 0 && !failure) {
        return Error{ErrorCode::Malformed, said("%1 is empty; it needs daily records", path.string())};
    }
    DailyFile file;
    file.name_ = path.string();
    try {
        namespace ipc = boost::interprocess;
        auto mapping = std::make_shared<Mapping>();
        mapping->file = ipc::file_mapping{path.c_str(), ipc::read_only};
        mapping->region = ipc::mapped_region{mapping->file, ipc::read_only};
        file.text_ = {static_cast<const char*>(mapping->region.get_address()), mapping->region.get_size()};
        file.mapping_ = std::move(mapping);
    } catch (const boost::interprocess::interprocess_exception& error) {
        return Error{ErrorCode::Unreadable,
                     said("%1 cannot be read (%2); check its rights", path.string(), error.what())};
    }

    constexpr std::size_t kLongestHead = 16384;
    auto begin = file.text_.substr(0, kLongestHead);
    const auto line = take_line(begin);
    if (line.size() >= fixed_width::kHeadLength && line.size() < kLongestHead &&
        line.find(',') == std::string_view::npos && fixed_width::head_of(line.data())) {
        file.form_ = Form::FixedWidth;
        return file;
    }
    auto head = line;
    if (head.starts_with("\xEF\xBB\xBF")) {
        head.remove_prefix(3);
    }
    std::vector<std::string_view> fields;
    if (line.size() < kLongestHead && split_row(head, fields) && fields.size() >= 3) {
        if (std::ranges::find(fields, "STATION") != fields.end() &&
            std::ranges::find(fields, "DATE") != fields.end()) {
            if (std::ranges::find(fields, "TMIN") == fields.end()) {
                return Error{ErrorCode::Malformed, said("%1 has no column TMIN; lows are needed", file.name_)};
            }
            return read_rows(std::move(file), Form::RowPerDay, path);
        }
        const bool named = fields[0] == "ID";
        if (fields.size() >= 4 && (named || (fields[1].size() == 8 && digits(fields[1].data(), 8) > 0))) {
            return read_rows(std::move(file), Form::RowPerElement, path);
        }
    }
    return Error{ErrorCode::Malformed, said("%1, line 1: this is no daily record; give GHCN-Daily's fixed-width lines "
                                            "or one of its comma-separated forms",
                                            file.name_)};
}

Result<DailyFile> DailyFile::read_rows(DailyFile file, Form form, const std::filesystem::path& path)
{
    auto text = read_text_file(path);
    if (!text) {
        return text.error();
    }
    auto rows = std::make_shared<Mapping>();
    rows->rows = std::move(*text);
    file.text_ = rows->rows;
    file.mapping_ = std::move(rows);
    file.form_ = form;
    return file;
}

Error DailyFile::bad_line(const char* at, const Said& what) const
{
    const auto line = 1 + std::count(text_.data(), at, '\n');
    return Error{ErrorCode::Malformed, said("%1, line %2: %3", name_, line, what)};
}

std::vector<DailyFile::Piece> DailyFile::pieces(std::size_t wanted) const
{
    if (form_ != Form::FixedWidth) {
        return {text_};
    }
    std::vector<Piece> pieces;
    auto rest = text_;
    for (std::size_t left = wanted; left > 1 && !rest.empty(); --left) {
        std::size_t at = rest.find('\n', rest.size() / left);
        const auto station_at = [&](std::size_t begin) { return rest.substr(begin, 11); };
        std::string_view station;
        while (at != std::string_view::npos && at + 1 < rest.size()) {
            const auto here = station_at(at + 1);
            if (!station.empty() && here != station) {
                break;
            }
            station = here;
            at = rest.find('\n', at + 1);
        }
        if (at == std::string_view::npos || at + 1 >= rest.size()) {
            break;
        }
        pieces.push_back(rest.substr(0, at + 1));
        rest.remove_prefix(at + 1);
    }
    if (!rest.empty()) {
        pieces.push_back(rest);
    }
    return pieces;
}

Result<void> DailyFile::read_fixed_width(Piece piece, std::vector<std::string>& stations,
                                         const OnStation& on_station) const
{
    StationGatherer gatherer{stations, on_station};
    // Months of a station that had a line, by element: a month given twice would silently lose one of both.
    std::array<std::vector<bool>, 3> seen;
    std::size_t stations_before = stations.size();
    const auto end = static_cast<std::size_t>(piece.data() - text_.data()) + piece.size();
    BlockReader blocks{mapping_->file.get_mapping_handle().handle, end - piece.size(), end};
    for (auto ahead = blocks.ahead(fixed_width::kLength + 1); !ahead.empty();
         ahead = blocks.ahead(fixed_width::kLength + 1)) {
        const char* line = ahead.data();
        const char* place = text_.data() + blocks.at();
        if (ahead.size() > fixed_width::kLength && ahead[fixed_width::kLength] == '\n') {
            blocks.skip(fixed_width::kLength + 1);
        } else { // The last line without its end, one that ends as in DOS, or one of another form.
            auto rest = text_.substr(blocks.at(), end - blocks.at());
            line = rest.data();
            const auto length = take_line(rest).size();
            if (length != fixed_width::kLength) {
                return bad_line(
                    place, said("%1 characters where a line of GHCN-Daily has 269; the line is cut or has another form",
                                length));
            }
            blocks.skip(static_cast<std::size_t>(rest.data() - line));
        }
        const auto head = fixed_width::head_of(line);
        if (!head) {
            return bad_line(place, said("\"%1\" is no station, year, month and element",
                                        std::string_view{line, fixed_width::kHeadLength}));
        }
        const auto element = element_of(head->element);
        auto& record = gatherer.record_of(head->station);
        if (element == Element::Other) {
            continue;
        }
        if (stations.size() != stations_before) {
            stations_before = stations.size();
            for (auto& months : seen) {
                months.assign(static_cast<std::size_t>((kLastYearOfRecords - kFirstYearOfRecords + 1) * 12), false);
            }
        }
        auto known = seen[static_cast<std::size_t>(element)]
                         [static_cast<std::size_t>((head->year - kFirstYearOfRecords) * 12 + head->month - 1)];
        if (known) {
            return bad_line(place, said("%1 of that month stands twice for station %2", head->element, head->station));
        }
        known = true;
        const int days = calendar::days_in_month(head->year, head->month);
        auto& readings = readings_of(record.month_to_write(head->year, head->month), element);
        if (!fixed_width::read_values(line, days, readings)) {
            return bad_line(place, fixed_width::fault_of_values(line, days));
        }
    }
    if (blocks.failed()) {
        return Error{ErrorCode::Unreadable, said("%1 could not be read to its end; was it changed meanwhile?", name_)};
    }
    gatherer.finish();
    return {};
}

Result<void> DailyFile::read_piece(Piece piece, std::vector<std::string>& stations,
                                   const OnStation& on_station) const
{
    switch (form_) {
    case Form::FixedWidth:
        return read_fixed_width(piece, stations, on_station);
    case Form::RowPerElement:
        return read_row_per_element(stations, on_station);
    case Form::RowPerDay:
        return read_row_per_day(stations, on_station);
    }
    return {};
}

Result<void> DailyFile::for_each_station(const OnStation& on_station) const
{
    const std::array<Piece, 1> whole = {text_};
    return for_each_station_of(whole, 1, [&](std::size_t, const DailyRecord& record) { on_station(record); });
}

Result<void>
DailyFile::for_each_station_of(std::span<const Piece> pieces, int threads,
                               const std::function<void(std::size_t, const DailyRecord&)>& on_station) const
{
    std::vector<Result<void>> results(pieces.size());
    std::vector<std::vector<std::string>> stations(pieces.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < pieces.size(); i = next++) {
            results[i] =
                read_piece(pieces[i], stations[i], [&](const DailyRecord& record) { on_station(i, record); });
        }
    };
    {
        std::vector<std::jthread> helpers;
        for (int i = 1; i < threads && static_cast<std::size_t>(i) < pieces.size(); ++i) {
            helpers.emplace_back(work);
        }
        work();
    }
    std::vector<std::string> all;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!results[i]) {
            return results[i].error();
        }
        all.insert(all.end(), stations[i].begin(), stations[i].end());
    }
    if (const auto station = repeated(all)) {
        return Error{
            ErrorCode::Malformed,
            said("%1: the lines of station %2 do not stand together; sort the file by station", name_, *station)};
    }
    return {};
}

} // namespace lathhouse::climate
