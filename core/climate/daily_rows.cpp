#include "core/climate/daily_lines.h"

#include "core/base/parse.h"
#include "core/calendar/month_length.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::climate {


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
            return bad_line(at, said("a row has station, day, element, value and up to four flags"));
        }
        if (fields[0].empty() || fields[0].size() > 64) {
            return bad_line(at, said("the row names no station"));
        }
        const int year = fields[1].size() == 8 ? digits(fields[1].data(), 4) : -1;
        const int month = year >= 0 ? digits(fields[1].data() + 4, 2) : -1;
        const int day = year >= 0 ? digits(fields[1].data() + 6, 2) : -1;
        if (year < kFirstYearOfRecords || year > kLastYearOfRecords || month < 1 || month > 12 || day < 1 ||
            day > calendar::days_in_month(year, month)) {
            return bad_line(at, said("\"%1\" is no day; write it as 19910131", fields[1]));
        }
        auto& record = gatherer.record_of(fields[0]);
        const auto element = element_of(fields[2]);
        if (element == Element::Other) {
            continue;
        }
        const auto value = parse_integer(fields[3]);
        const auto reading = value ? DailyReading::from_tenths(*value) : std::nullopt;
        if (!reading) {
            return bad_line(at, said("\"%1\" is no value in tenths", fields[3]));
        }
        const bool flagged = fields.size() > 5 && !trimmed(fields[5]).empty();
        auto& place =
            readings_of(record.month_to_write(year, month), element)[static_cast<std::size_t>(day - 1)];
        if (place.known()) {
            return bad_line(at, said("%1 of that day stands twice for station %2", fields[2], fields[0]));
        }
        place = *value == kMissingReading || flagged ? DailyReading{} : *reading;
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
            return bad_line(at, said("the row has not the %1 fields that the head names", names.size()));
        }
        const auto station = trimmed(fields[station_column]);
        if (station.empty()) {
            return bad_line(at, said("the row names no station"));
        }
        const auto date = trimmed(fields[date_column]);
        const bool dashed = date.size() == 10 && date[4] == '-' && date[7] == '-';
        const int year = dashed ? digits(date.data(), 4) : -1;
        const int month = dashed ? digits(date.data() + 5, 2) : -1;
        const int day = dashed ? digits(date.data() + 8, 2) : -1;
        if (year < kFirstYearOfRecords || year > kLastYearOfRecords || month < 1 || month > 12 || day < 1 ||
            day > calendar::days_in_month(year, month)) {
            return bad_line(at, said("\"%1\" is no day; write it as 1991-01-31", date));
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
            const bool missing = number && *number == kMissingReading;
            if (!reading && !missing) {
                return bad_line(at, said("\"%1\" is no value", text));
            }
            if (columns.attributes) {
                const auto flags = split(fields[*columns.attributes], ',');
                if (flags.size() > 1 && !trimmed(flags[1]).empty()) {
                    continue;
                }
            }
            auto& place = readings_of(target, columns.element)[static_cast<std::size_t>(day - 1)];
            if (place.known()) {
                return bad_line(at, said("%1 of that day stands twice for station %2", names[*columns.value], station));
            }
            place = missing ? DailyReading{} : *reading;
        }
    }
    gatherer.finish();
    return {};
}
} // namespace lathhouse::climate
