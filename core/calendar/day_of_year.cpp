#include "core/calendar/day_of_year.h"

#include "core/base/parse.h"

#include <array>
#include <cassert>
#include <cstdio>

namespace lathhouse::calendar {
namespace {
constexpr std::array<int, 13> kBeforeMonth = {0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335, 366};
constexpr int kLeapPlace = 60; ///< 29 February.
}

int days_in_month_of_leap_year(int month)
{
    assert(month >= 1 && month <= 12);
    const auto i = static_cast<std::size_t>(month);
    return kBeforeMonth[i] - kBeforeMonth[i - 1];
}

int short_way(DayOfYear from, DayOfYear to)
{
    const int days = (to.place() - from.place() + DayOfYear::kCount) % DayOfYear::kCount;
    return days > DayOfYear::kCount / 2 ? days - DayOfYear::kCount : days;
}

int places_before_month(int month)
{
    assert(month >= 1 && month <= 12);
    return kBeforeMonth[static_cast<std::size_t>(month - 1)];
}

Result<DayOfYear> DayOfYear::from_place(int place)
{
    if (place < 1 || place > kCount) {
        return Error{ErrorCode::OutOfRange, said("a day of the year lies within 1 and 366")};
    }
    return DayOfYear{place};
}

Result<DayOfYear> DayOfYear::from_month_day(int month, int day)
{
    if (month < 1 || month > 12 || day < 1 || day > days_in_month_of_leap_year(month)) {
        return Error{ErrorCode::OutOfRange, said("no year has day %1 in month %2", day, month)};
    }
    return DayOfYear{places_before_month(month) + day};
}

DayOfYear DayOfYear::of(Date date)
{
    const auto parts = date.year_month_day();
    return DayOfYear{places_before_month(parts.month.as_number()) + parts.day.as_number()};
}

Result<DayOfYear> DayOfYear::parse(std::string_view text)
{
    const auto pieces = split(text, '-');
    if (text.size() == 5 && pieces.size() == 2 && pieces[0].size() == 2 &&
        text.find_first_not_of("0123456789-") == std::string_view::npos) {
        const auto month = parse_integer(pieces[0]);
        const auto day = parse_integer(pieces[1]);
        if (month && day) {
            return from_month_day(*month, *day);
        }
    }
    return Error{ErrorCode::Malformed, said("\"%1\" is no day of the year; write it as 07-31", text)};
}

int DayOfYear::month() const
{
    int month = 12;
    while (places_before_month(month) >= place_) {
        --month;
    }
    return month;
}

int DayOfYear::day() const
{
    return place_ - places_before_month(month());
}

Date DayOfYear::in_year(int year) const
{
    const bool skipped = place_ == kLeapPlace && !boost::gregorian::gregorian_calendar::is_leap_year(
                                                     static_cast<unsigned short>(year));
    return Date{static_cast<unsigned short>(year), static_cast<unsigned short>(skipped ? 3 : month()),
                static_cast<unsigned short>(skipped ? 1 : day())};
}

Date DayOfYear::next_on_or_after(Date from) const
{
    const int year = static_cast<int>(from.year());
    const Date candidate = in_year(year);
    return candidate >= from ? candidate : in_year(year + 1);
}

std::string DayOfYear::to_text() const
{
    std::array<char, 8> text{};
    std::snprintf(text.data(), text.size(), "%02d-%02d", month() % 100, day() % 100);
    return text.data();
}

} // namespace lathhouse::calendar
