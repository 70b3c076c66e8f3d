#include "core/exchange/icalendar.h"

#include "core/exchange/utf8.h"

#include <chrono>
#include <cstdint>
#include <cstdio>
#include <set>

namespace lathhouse::exchange {
namespace {

constexpr std::size_t kLongestLine = 75; // Octets, without the line end.

std::string escaped(std::string_view text)
{
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
        const auto length = sequence_at(text, at);
        if (length == 0) {
            result += "\xEF\xBF\xBD";
            ++at;
            continue;
        }
        const char letter = text[at];
        if (length > 1) {
            result += text.substr(at, length);
        } else if (letter == '\\' || letter == ';' || letter == ',') {
            (result += '\\') += letter;
        } else if (letter == '\n') {
            result += "\\n";
        } else if (letter == '\t' || (static_cast<unsigned char>(letter) >= 0x20 && letter != '\x7F')) {
            result += letter;
        }
        at += length;
    }
    return result;
}

/// Adds a content line; the text is UTF-8, and no sequence is cut.
void add_line(std::string& file, const std::string& line)
{
    std::size_t used = 0;
    for (std::size_t at = 0; at < line.size();) {
        const std::size_t length = std::max<std::size_t>(1, sequence_at(line, at));
        if (used + length > kLongestLine) {
            file += "\r\n ";
            used = 1;
        }
        file.append(line, at, length);
        used += length;
        at += length;
    }
    file += "\r\n";
}

std::string basic_date(calendar::Date date)
{
    auto text = calendar::to_text(date);
    std::erase(text, '-');
    return text;
}

std::string basic_instant(calendar::Instant instant)
{
    auto text = calendar::to_text(instant);
    std::erase(text, '-');
    std::erase(text, ':');
    return text;
}

} // namespace

std::string icalendar(const CalendarHead& head, std::span<const CalendarEvent> events)
{
    std::string file;
    add_line(file, "BEGIN:VCALENDAR");
    add_line(file, "VERSION:2.0");
    add_line(file, "PRODID:-//Lathhouse//Year of potted plants//EN");
    add_line(file, "CALSCALE:GREGORIAN");
    add_line(file, "NAME:" + escaped(head.name));
    std::set<calendar::Date> rung;
    const auto rings = [&](calendar::Date day) {
        return head.alarm_hours_before &&
               calendar::start_of_day_utc(day) - std::chrono::hours{*head.alarm_hours_before} > head.made + head.hour && rung.insert(day).second;
    };
    for (const auto& event : events) {
        add_line(file, "BEGIN:VEVENT");
        add_line(file, "UID:" + escaped(event.uid));
        add_line(file, "DTSTAMP:" + basic_instant(head.made));
        add_line(file, "LAST-MODIFIED:" + basic_instant(head.made));
        add_line(file, "DTSTART;VALUE=DATE:" + basic_date(event.from));
        add_line(file, "DTEND;VALUE=DATE:" + basic_date(event.to + calendar::Days{1}));
        add_line(file, "SUMMARY:" + escaped(event.summary));
        if (!event.description.empty()) {
            add_line(file, "DESCRIPTION:" + escaped(event.description));
        }
        if (!event.category.empty()) {
            add_line(file, "CATEGORIES:" + escaped(event.category));
        }
        // A day's task leaves the day free.
        add_line(file, "TRANSP:TRANSPARENT");
        if (rings(event.from)) {
            add_line(file, "BEGIN:VALARM");
            add_line(file, "ACTION:DISPLAY");
            add_line(file, "DESCRIPTION:" + escaped(event.summary));
            add_line(file, "TRIGGER:-PT" + std::to_string(*head.alarm_hours_before) + "H");
            add_line(file, "END:VALARM");
        }
        add_line(file, "END:VEVENT");
    }
    add_line(file, "END:VCALENDAR");
    return file;
}

std::string calendar_uid(std::string_view household, std::string_view matter)
{
    // FNV-1a with the published 64-bit offset and prime (draft-eastlake-fnv).
    std::uint64_t hash = 14695981039346656037ULL;
    const auto take = [&hash](std::string_view text) {
        for (const char letter : text) {
            hash = (hash ^ static_cast<unsigned char>(letter)) * 1099511628211ULL;
        }
    };
    take(household);
    take(std::string_view{"\0", 1});
    take(matter);
    char text[17];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return std::string{text} + "@lathhouse";
}

} // namespace lathhouse::exchange
