#include "core/calendar/date.h"

#include "core/base/parse.h"

#include <date/date.h>

namespace lathhouse::calendar {
namespace {
constexpr int kFirstYear = 1901;
constexpr int kLastYear = 2199;
const Date& epoch()
{
    static const Date day{1970, 1, 1};
    return day;
}
} // namespace

Result<Date> make_date(int year, int month, int day)
{
    if (year < kFirstYear || year > kLastYear) {
        return Error{ErrorCode::OutOfRange, said("the year %1 lies outside 1901 to 2199", year)};
    }
    const std::chrono::year_month_day candidate{std::chrono::year{year},
                                                std::chrono::month{static_cast<unsigned>(month)},
                                                std::chrono::day{static_cast<unsigned>(day)}};
    if (month < 1 || day < 1 || !candidate.ok()) {
        return Error{ErrorCode::OutOfRange, said("the calendar has no day %1 in month %2 of %3", day, month, year)};
    }
    return Date{static_cast<unsigned short>(year), static_cast<unsigned short>(month),
                static_cast<unsigned short>(day)};
}

Result<Date> parse_date(std::string_view text)
{
    const auto pieces = split(text, '-');
    if (text.size() == 10 && pieces.size() == 3 && pieces[0].size() == 4 && pieces[1].size() == 2 &&
        text.find_first_not_of("0123456789-") == std::string_view::npos) {
        const auto year = parse_integer(pieces[0]);
        const auto month = parse_integer(pieces[1]);
        const auto day = parse_integer(pieces[2]);
        if (year && month && day) {
            return make_date(*year, *month, *day);
        }
    }
    return Error{ErrorCode::Malformed, said("\"%1\" is no date; write it as 2027-05-09", text)};
}

std::string to_text(Date date)
{
    return boost::gregorian::to_iso_extended_string(date);
}

std::string to_text(Instant instant)
{
    return date::format("%FT%TZ", instant);
}

Instant start_of_day_utc(Date date)
{
    return Instant{std::chrono::days{days_between(epoch(), date)}};
}

Date utc_date(Instant instant)
{
    return epoch() + Days{std::chrono::floor<std::chrono::days>(instant).time_since_epoch().count()};
}

int days_between(Date from, Date to)
{
    return static_cast<int>((to - from).days());
}

int ordinal_of_year(Date date)
{
    return date.day_of_year();
}

} // namespace lathhouse::calendar
