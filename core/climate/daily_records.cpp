#include "core/climate/daily_records.h"

#include "core/base/parse.h"
#include "core/calendar/month_length.h"

#include <boost/interprocess/file_mapping.hpp>
#include <boost/interprocess/mapped_region.hpp>

#include <algorithm>
#include <atomic>
#include <bit>
#include <chrono>
#include <cmath>
#include <cstring>
#include <fstream>
#include <system_error>
#include <thread>
#include <unordered_set>

namespace lathhouse::climate {
namespace {

constexpr int kFirstYear = 1700;
constexpr int kLastYear = 2199;
constexpr std::size_t kLineLength = 269; ///< Of the fixed-width form, without its line end.
constexpr std::size_t kHeadLength = 21;
constexpr std::size_t kFieldLength = 8;
constexpr int kMissing = -9999;

enum class Element { Low, High, Rain, Other };

Element element_of(std::string_view name)
{
    if (name == "TMIN") {
        return Element::Low;
    }
    if (name == "TMAX") {
        return Element::High;
    }
    if (name == "PRCP") {
        return Element::Rain;
    }
    return Element::Other;
}

std::array<DailyReading, 31>& readings_of(DailyMonth& month, Element element)
{
    return element == Element::Low ? month.low : element == Element::High ? month.high : month.rain;
}

/// The number of `count` decimal digits, or -1.
constexpr int digits(const char* text, int count)
{
    int number = 0;
    for (int i = 0; i < count; ++i) {
        if (text[i] < '0' || text[i] > '9') {
            return -1;
        }
        number = number * 10 + (text[i] - '0');
    }
    return number;
}

struct Head {
    std::string_view station;
    int year;
    int month;
    std::string_view element;
};

std::optional<Head> head_of(const char* line)
{
    const auto is_name_letter = [](char letter) {
        return (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9') || letter == '_' ||
               letter == '-' || (letter >= 'a' && letter <= 'z');
    };
    if (!std::all_of(line, line + 11, is_name_letter) || !std::all_of(line + 17, line + 21, is_name_letter)) {
        return std::nullopt;
    }
    const Head head{{line, 11}, digits(line + 11, 4), digits(line + 15, 2), {line + 17, 4}};
    if (head.year < kFirstYear || head.year > kLastYear || head.month < 1 || head.month > 12) {
        return std::nullopt;
    }
    return head;
}

struct FieldValue {
    int number;
    bool well_formed;
};

/// A right-aligned whole number in the first five of eight characters, without branches: the letters are
/// handled as bytes of one word, the first letter lowest. A blank XOR '0' is 0x10, a minus 0x1D, a digit
/// 0..9; only the first two have bit 4 set.
FieldValue field_value(std::uint64_t letters)
{
    constexpr std::uint64_t kFive = 0xFF'FFFF'FFFFULL;
    const std::uint64_t x = (letters ^ 0x3030303030ULL) & kFive;
    const std::uint64_t no_digit = ((x >> 4) & 0x0101010101ULL) * 0xFF;
    const std::uint64_t d = x & ~no_digit;
    // Of the letters before the digits all are blanks but the last, which may be a minus.
    const std::uint64_t sign = (x & no_digit) ^ (0x1010101010ULL & no_digit);
    const std::uint64_t place_of_sign = (no_digit + 1) >> 8;
    const bool negative = sign != 0;
    const bool well_formed = (no_digit & (no_digit + 1)) == 0 && no_digit != kFive &&
                             (!negative || sign == 0x0D * place_of_sign) &&
                             (((d + 0x0606060606ULL) | d) & 0xF0F0F0F0F0ULL) == 0;
    // Eight digits at once: pairs, then fours, then all.
    std::uint64_t y = d << 24;
    y = y * 10 + (y >> 8);
    y = (((y & 0x000000FF'000000FFULL) * 0x000F4240'00000064ULL) +
         (((y >> 16) & 0x000000FF'000000FFULL) * 0x00002710'00000001ULL)) >>
        32;
    const int number = static_cast<int>(y & 0xFFFFFFFFULL);
    return {negative ? -number : number, well_formed};
}

/// Fills the readings of a line. Returns whether all values are well formed and within the month.
bool read_values(const char* line, int days, std::array<DailyReading, 31>& readings)
{
    static_assert(std::endian::native == std::endian::little);
    bool good = true;
    for (int day = 0; day < 31; ++day) {
        const char* field = line + kHeadLength + static_cast<std::size_t>(day) * kFieldLength;
        std::uint64_t letters = 0;
        std::memcpy(&letters, field, kFieldLength);
        const auto value = field_value(letters);
        const bool missing = value.number == kMissing;
        const auto reading = DailyReading::from_tenths(value.number);
        const bool flagged = field[6] != ' '; // Flagged values are missing, however absurd they are.
        good &= value.well_formed && (reading || flagged) && (day < days || missing);
        readings[static_cast<std::size_t>(day)] = missing || flagged || !reading ? DailyReading{} : *reading;
    }
    return good;
}

/// What is wrong with a line that read_values refused.
std::string fault_of_values(const char* line, int days)
{
    for (int day = 0; day < 31; ++day) {
        const char* field = line + kHeadLength + static_cast<std::size_t>(day) * kFieldLength;
        std::uint64_t letters = 0;
        std::memcpy(&letters, field, kFieldLength);
        const auto value = field_value(letters);
        const std::string shown = "\"" + std::string{field, 5} + "\" on day " + std::to_string(day + 1);
        if (!value.well_formed) {
            return shown + " is no number";
        }
        if (!DailyReading::from_tenths(value.number) && field[6] == ' ') {
            return shown + " is no possible value";
        }
        if (day >= days && value.number != kMissing) {
            return shown + " belongs to a day that the month does not have";
        }
    }
    return "the values are not of the form that GHCN-Daily has";
}

/// Fields of one row with the quotes of RFC 4180 taken off; false where a quote is left open. Quoted fields
/// with doubled quotes inside are rare and kept as they stand.
bool split_row(std::string_view line, std::vector<std::string_view>& fields)
{
    fields.clear();
    for (;;) {
        if (line.starts_with('"')) {
            const auto close = line.find('"', 1);
            if (close == std::string_view::npos) {
                return false;
            }
            fields.push_back(line.substr(1, close - 1));
            line.remove_prefix(close + 1);
            if (line.empty()) {
                return true;
            }
            if (line.front() != ',') {
                return false;
            }
        } else {
            const auto comma = line.find(',');
            fields.push_back(line.substr(0, comma));
            if (comma == std::string_view::npos) {
                return true;
            }
            line.remove_prefix(comma);
        }
        line.remove_prefix(1);
    }
}

/// The next line without its line end; moves `rest` behind it.
std::string_view take_line(std::string_view& rest)
{
    const auto end = rest.find('\n');
    auto line = rest.substr(0, end);
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    if (line.ends_with('\r')) {
        line.remove_suffix(1);
    }
    return line;
}

/// Gathers rows into records, one station after another.
class StationGatherer {
public:
    StationGatherer(std::vector<std::string>& stations, const DailyFile::OnStation& on_station)
        : stations_(stations), on_station_(on_station)
    {
    }
    DailyRecord& record_of(std::string_view station)
    {
        if (!begun_ || record_.station() != station) {
            finish();
            record_.restart(station);
            stations_.emplace_back(station);
            begun_ = true;
        }
        return record_;
    }
    void finish()
    {
        if (begun_) {
            on_station_(record_);
        }
        begun_ = false;
    }

private:
    std::vector<std::string>& stations_;
    const DailyFile::OnStation& on_station_;
    DailyRecord record_{""};
    bool begun_ = false;
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
};

Result<DailyFile> DailyFile::open(const std::filesystem::path& path)
{
    std::error_code failure;
    const auto status = std::filesystem::status(path, failure);
    if (!std::filesystem::exists(status)) {
        return Error{ErrorCode::NotFound, "there is no file " + path.string()};
    }
    if (std::filesystem::is_directory(status)) {
        return Error{ErrorCode::Unreadable,
                     path.string() + " is a folder; name a file of daily records in it"};
    }
    if (!std::filesystem::is_regular_file(status)) {
        return Error{ErrorCode::Unreadable,
                     path.string() + " is no ordinary file; save the records to a file first"};
    }
    if (std::filesystem::file_size(path, failure) == 0 && !failure) {
        return Error{ErrorCode::Malformed, path.string() + " is empty; it needs daily records"};
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
                     path.string() + " cannot be read (" + error.what() + "); check its rights"};
    }

    constexpr std::size_t kLongestHead = 16384;
    auto begin = file.text_.substr(0, kLongestHead);
    const auto line = take_line(begin);
    if (line.size() >= kHeadLength && line.size() < kLongestHead &&
        line.find(',') == std::string_view::npos && head_of(line.data())) {
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
                return Error{ErrorCode::Malformed, file.name_ + " has no column TMIN; lows are needed"};
            }
            file.form_ = Form::RowPerDay;
            return file;
        }
        const bool named = fields[0] == "ID";
        if (fields.size() >= 4 && (named || (fields[1].size() == 8 && digits(fields[1].data(), 8) > 0))) {
            file.form_ = Form::RowPerElement;
            return file;
        }
    }
    return Error{ErrorCode::Malformed,
                 file.name_ + ", line 1: this is no daily record; give GHCN-Daily's fixed-width lines or one "
                              "of its comma-separated forms"};
}

Error DailyFile::bad_line(const char* at, std::string_view what) const
{
    const auto line = 1 + std::count(text_.data(), at, '\n');
    return Error{ErrorCode::Malformed, name_ + ", line " + std::to_string(line) + ": " + std::string{what}};
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
    auto rest = piece;
    while (!rest.empty()) {
        const char* line = rest.data();
        std::size_t length = kLineLength;
        if (rest.size() > kLineLength && rest[kLineLength] == '\n') {
            rest.remove_prefix(kLineLength + 1);
        } else {
            length = take_line(rest).size();
        }
        if (length != kLineLength) {
            return bad_line(line, std::to_string(length) + " characters where a line of GHCN-Daily has 269; "
                                                           "the line is cut or has another form");
        }
        const auto head = head_of(line);
        if (!head) {
            return bad_line(line, "\"" + std::string{line, kHeadLength} +
                                      "\" is no station, year, month and element");
        }
        const auto element = element_of(head->element);
        auto& record = gatherer.record_of(head->station);
        if (element == Element::Other) {
            continue;
        }
        if (stations.size() != stations_before) {
            stations_before = stations.size();
            for (auto& months : seen) {
                months.assign(static_cast<std::size_t>((kLastYear - kFirstYear + 1) * 12), false);
            }
        }
        auto known = seen[static_cast<std::size_t>(element)]
                         [static_cast<std::size_t>((head->year - kFirstYear) * 12 + head->month - 1)];
        if (known) {
            return bad_line(line, std::string{head->element} + " of that month stands twice for station " +
                                      std::string{head->station});
        }
        known = true;
        const int days = calendar::days_in_month(head->year, head->month);
        if (!read_values(line, days, readings_of(record.month_to_write(head->year, head->month), element))) {
            return bad_line(line, fault_of_values(line, days));
        }
    }
    gatherer.finish();
    return {};
}

Result<void> DailyFile::read_row_per_element(std::vector<std::string>& stations,
                                             const OnStation& on_station) const
{
    StationGatherer gatherer{stations, on_station};
    std::vector<std::string_view> fields;
    auto rest = text_;
    if (rest.starts_with("\xEF\xBB\xBF")) {
        rest.remove_prefix(3);
    }
    bool first = true;
    while (!rest.empty()) {
        const char* at = rest.data();
        const auto line = take_line(rest);
        if (line.empty() && rest.empty()) {
            break;
        }
        const bool whole = split_row(line, fields);
        if (std::exchange(first, false) && whole && fields[0] == "ID") {
            continue;
        }
        if (!whole || fields.size() < 4 || fields.size() > 8) {
            return bad_line(at, "a row has station, day, element, value and up to four flags");
        }
        if (fields[0].empty() || fields[0].size() > 64) {
            return bad_line(at, "the row names no station");
        }
        const int year = fields[1].size() == 8 ? digits(fields[1].data(), 4) : -1;
        const int month = year >= 0 ? digits(fields[1].data() + 4, 2) : -1;
        const int day = year >= 0 ? digits(fields[1].data() + 6, 2) : -1;
        if (year < kFirstYear || year > kLastYear || month < 1 || month > 12 || day < 1 ||
            day > calendar::days_in_month(year, month)) {
            return bad_line(at, "\"" + std::string{fields[1]} + "\" is no day; write it as 19910131");
        }
        auto& record = gatherer.record_of(fields[0]);
        const auto element = element_of(fields[2]);
        if (element == Element::Other) {
            continue;
        }
        const auto value = parse_integer(fields[3]);
        const auto reading = value ? DailyReading::from_tenths(*value) : std::nullopt;
        if (!reading) {
            return bad_line(at, "\"" + std::string{fields[3]} + "\" is no value in tenths");
        }
        const bool flagged = fields.size() > 5 && !trimmed(fields[5]).empty();
        auto& place =
            readings_of(record.month_to_write(year, month), element)[static_cast<std::size_t>(day - 1)];
        place = *value == kMissing || flagged ? DailyReading{} : *reading;
    }
    gatherer.finish();
    return {};
}

Result<void> DailyFile::read_row_per_day(std::vector<std::string>& stations,
                                         const OnStation& on_station) const
{
    auto body = text_;
    if (body.starts_with("\xEF\xBB\xBF")) {
        body.remove_prefix(3);
    }
    std::vector<std::string_view> names;
    split_row(take_line(body), names);
    const auto column = [&](std::string_view name) -> std::optional<std::size_t> {
        const auto found = std::ranges::find(names, name);
        if (found == names.end()) {
            return std::nullopt;
        }
        return static_cast<std::size_t>(found - names.begin());
    };
    struct ElementColumns {
        Element element;
        std::optional<std::size_t> value;
        std::optional<std::size_t> attributes;
    };
    const std::array<ElementColumns, 3> elements = {
        ElementColumns{Element::Low, column("TMIN"), column("TMIN_ATTRIBUTES")},
        ElementColumns{Element::High, column("TMAX"), column("TMAX_ATTRIBUTES")},
        ElementColumns{Element::Rain, column("PRCP"), column("PRCP_ATTRIBUTES")}};
    const std::size_t station_column = *column("STATION");
    const std::size_t date_column = *column("DATE");

    std::vector<std::string_view> fields;
    bool whole_units = false;
    for (auto rest = body; !rest.empty() && !whole_units;) {
        if (!split_row(take_line(rest), fields) || fields.size() != names.size()) {
            continue; // Reported below, with its line.
        }
        whole_units = std::ranges::any_of(elements, [&](const ElementColumns& columns) {
            return columns.value && fields[*columns.value].find('.') != std::string_view::npos;
        });
    }

    StationGatherer gatherer{stations, on_station};
    while (!body.empty()) {
        const char* at = body.data();
        const auto line = take_line(body);
        if (line.empty() && body.empty()) {
            break;
        }
        if (!split_row(line, fields) || fields.size() != names.size()) {
            return bad_line(at, "the row has not the " + std::to_string(names.size()) +
                                    " fields that the head names");
        }
        const auto station = trimmed(fields[station_column]);
        if (station.empty()) {
            return bad_line(at, "the row names no station");
        }
        const auto date = trimmed(fields[date_column]);
        const bool dashed = date.size() == 10 && date[4] == '-' && date[7] == '-';
        const int year = dashed ? digits(date.data(), 4) : -1;
        const int month = dashed ? digits(date.data() + 5, 2) : -1;
        const int day = dashed ? digits(date.data() + 8, 2) : -1;
        if (year < kFirstYear || year > kLastYear || month < 1 || month > 12 || day < 1 ||
            day > calendar::days_in_month(year, month)) {
            return bad_line(at, "\"" + std::string{date} + "\" is no day; write it as 1991-01-31");
        }
        auto& target = gatherer.record_of(station).month_to_write(year, month);
        for (const auto& columns : elements) {
            const auto text = columns.value ? trimmed(fields[*columns.value]) : std::string_view{};
            if (text.empty()) {
                continue;
            }
            const auto number = parse_number(text);
            const double tenths = number ? std::round(*number * (whole_units ? 10.0 : 1.0)) : 0.0;
            const auto reading = number && std::fabs(tenths) < 1e6
                                     ? DailyReading::from_tenths(static_cast<int>(tenths))
                                     : std::nullopt;
            const bool missing = number && *number == kMissing;
            if (!reading && !missing) {
                return bad_line(at, "\"" + std::string{text} + "\" is no value");
            }
            if (columns.attributes) {
                const auto flags = split(fields[*columns.attributes], ',');
                if (flags.size() > 1 && !trimmed(flags[1]).empty()) {
                    continue;
                }
            }
            readings_of(target, columns.element)[static_cast<std::size_t>(day - 1)] =
                missing ? DailyReading{} : *reading;
        }
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
        return Error{ErrorCode::Malformed, name_ + ": the lines of station " + *station +
                                               " do not stand together; sort the file by station"};
    }
    return {};
}

} // namespace lathhouse::climate
