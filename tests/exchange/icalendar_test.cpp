#include "core/exchange/icalendar.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>

#include <libical/ical.h>

namespace lathhouse::exchange {
namespace {

using Component = std::unique_ptr<icalcomponent, void (*)(icalcomponent*)>;

const calendar::Date kDay{2027, 2, 28};
const CalendarHead kHead{"Home", calendar::start_of_day_utc(kDay), std::nullopt};

CalendarEvent event(std::string summary, std::string description = "")
{
    return {"one@lathhouse", kDay, kDay, std::move(summary), std::move(description), ""};
}

/// Read by libical, an implementation of RFC 5545 that is not ours.
Component read(const std::string& file)
{
    return {icalparser_parse_string(file.c_str()), icalcomponent_free};
}

icalcomponent* first_event(const Component& calendar)
{
    return icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
}

TEST(Icalendar, IsReadBackByLibical)
{
    auto one = event("Lemon: first night out", "Nights allow it.\nFrost dates are chances; not promises, ever.");
    one.to = kDay + calendar::Days{1};
    one.category = "Moves";
    const auto calendar = read(icalendar(kHead, std::vector{one}));
    ASSERT_NE(calendar, nullptr);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    EXPECT_NE(icalrestriction_check(calendar.get()), 0);
    auto* const back = first_event(calendar);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(one.summary, icalcomponent_get_summary(back));
    EXPECT_EQ(one.description, icalcomponent_get_description(back));
    EXPECT_STREQ(icalcomponent_get_uid(back), "one@lathhouse");
    const auto start = icalcomponent_get_dtstart(back);
    EXPECT_TRUE(start.is_date);
    EXPECT_STREQ(icaltime_as_ical_string(start), "20270228");
    // The end is the day after the last: two days from 28 February 2027 end before 2 March.
    EXPECT_STREQ(icaltime_as_ical_string(icalcomponent_get_dtend(back)), "20270302");
}

TEST(Icalendar, NoLineIsLongerThan75OctetsAndNoLetterIsCut)
{
    std::string summary;
    for (int i = 0; i < 60; ++i) {
        summary += "Ä,ö;\\ß🌱";
    }
    const auto file = icalendar(kHead, std::vector{event(summary)});
    std::istringstream lines{file};
    for (std::string line; std::getline(lines, line);) {
        ASSERT_TRUE(line.ends_with('\r'));
        EXPECT_LE(line.size() - 1, 75u);
        // A continuation byte never begins a folded line.
        EXPECT_NE(static_cast<unsigned char>(line[line[0] == ' ' ? 1 : 0]) & 0xC0, 0x80);
    }
    EXPECT_EQ(summary, icalcomponent_get_summary(first_event(read(file))));
}

TEST(Icalendar, HostileTextCannotAddALine)
{
    const auto file = icalendar(kHead, std::vector{event("a\r\nEND:VEVENT\r\nBEGIN:VEVENT\x01\x7f\xff")});
    const auto calendar = read(file);
    EXPECT_EQ(icalcomponent_count_components(calendar.get(), ICAL_VEVENT_COMPONENT), 1);
    EXPECT_STREQ(icalcomponent_get_summary(first_event(calendar)), "a\nEND:VEVENT\nBEGIN:VEVENT\xEF\xBF\xBD");
}

TEST(Icalendar, AnAlarmIsThereWhenAskedFor)
{
    auto head = kHead;
    EXPECT_EQ(icalendar(head, std::vector{event("x")}).find("VALARM"), std::string::npos);
    head.alarm_hours_before = 6;
    auto tomorrow = event("x");
    tomorrow.from = tomorrow.to = kDay + calendar::Days{1};
    const auto calendar = read(icalendar(head, std::vector{tomorrow}));
    auto* const alarm = icalcomponent_get_first_component(first_event(calendar), ICAL_VALARM_COMPONENT);
    ASSERT_NE(alarm, nullptr);
    auto* const trigger = icalcomponent_get_first_property(alarm, ICAL_TRIGGER_PROPERTY);
    EXPECT_EQ(icaldurationtype_as_int(icalproperty_get_trigger(trigger).duration), -6 * 3600);
}

TEST(Icalendar, AnAlarmSoundsOnceADayAndNotInThePast)
{
    auto head = kHead;
    head.alarm_hours_before = 6;
    std::vector<CalendarEvent> events;
    for (const int ahead : {0, 0, 1, 1, 1, 2}) {
        events.push_back(event("x"));
        events.back().from = events.back().to = kDay + calendar::Days{ahead};
    }
    const auto alarms = [&] {
        const auto file = icalendar(head, events);
        int count = 0;
        for (auto at = file.find("BEGIN:VALARM"); at != std::string::npos; at = file.find("BEGIN:VALARM", at + 1)) {
            ++count;
        }
        return count;
    };
    EXPECT_EQ(alarms(), 2) << "that of today would have sounded yesterday";
    head.alarm_hours_before = 24;
    EXPECT_EQ(alarms(), 1) << "that of tomorrow sounded as today began";
    head.alarm_hours_before = 6;
    head.hour = std::chrono::hours{17};
    EXPECT_EQ(alarms(), 2);
    head.hour = std::chrono::hours{18};
    EXPECT_EQ(alarms(), 1) << "that of tomorrow sounded at six today";
}

TEST(Icalendar, TextsOfOtherCalendarsSurviveTheRoundTrip)
{
    const std::filesystem::path folder{std::string{LATHHOUSE_CHECKS} + "/ical"};
    if (std::string{LATHHOUSE_CHECKS}.empty() || !std::filesystem::exists(folder)) {
        GTEST_SKIP() << "needs the samples of calendar files, which are not part of the repository";
    }
    int texts = 0;
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        if (entry.path().extension() != ".ics") {
            continue;
        }
        std::ifstream stream{entry.path(), std::ios::binary};
        std::ostringstream whole;
        whole << stream.rdbuf();
        const auto sample = read(whole.str());
        for (auto* one = sample ? icalcomponent_get_first_component(sample.get(), ICAL_VEVENT_COMPONENT) : nullptr;
             one != nullptr; one = icalcomponent_get_next_component(sample.get(), ICAL_VEVENT_COMPONENT)) {
            for (const char* text : {icalcomponent_get_summary(one), icalcomponent_get_description(one)}) {
                if (text != nullptr && *text != '\0') {
                    const auto back = read(icalendar(kHead, std::vector{event(text)}));
                    EXPECT_STREQ(icalcomponent_get_summary(first_event(back)), text) << entry.path().filename();
                    ++texts;
                }
            }
        }
    }
    EXPECT_GT(texts, 10);
}

TEST(CalendarUid, IsTheSameForTheSameMatterOnly)
{
    EXPECT_EQ(calendar_uid("Home", "move/3"), calendar_uid("Home", "move/3"));
    EXPECT_NE(calendar_uid("Home", "move/3"), calendar_uid("Home", "move/4"));
    EXPECT_NE(calendar_uid("Homem", "ove/3"), calendar_uid("Home", "move/3"));
    // The published value of an empty text shows the constants right: FNV-1a 64 of one zero byte.
    EXPECT_EQ(calendar_uid("", ""), "af63bd4c8601b7df@lathhouse");
}

} // namespace
} // namespace lathhouse::exchange
