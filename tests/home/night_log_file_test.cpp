#include "core/home/night_log_file.h"

#include "core/home/demonstration.h"

#include <gmock/gmock.h>

namespace lathhouse::home {
namespace {

using calendar::Date;
using testing::HasSubstr;

const Date kIssued{2026, 4, 10};
const calendar::Instant kEntered = calendar::start_of_day_utc(kIssued);

Result<std::vector<KeptForecast>> forecast(const std::string& text)
{
    const auto rows = NamedRows::parse(text, "nights.csv", kForecastColumns);
    return rows ? forecast_from(*rows, kIssued, kEntered) : rows.error();
}

/// With spot 3, the demonstration's landing, for rows that name none.
Result<std::vector<Reading>> readings(const std::string& text, std::optional<SpotId> spot = 3)
{
    static const auto household = demonstration({.today = kIssued}).value().household;
    const auto rows = NamedRows::parse(text, "log.csv", kReadingColumns);
    return rows ? readings_from(*rows, household, spot, kIssued, kEntered) : rows.error();
}

template <class Rows>
std::string refusal(const Rows& rows)
{
    return rows ? "taken" : rows.error().message;
}

TEST(ForecastFile, IsReadInEitherUnitByNight)
{
    const auto nights = forecast("date,low_c,dew_point_c,sky,wind,issued\n"
                                 "2026-04-12T06:00,-1.5,-4,Clear,calm,\n"
                                 "2026-04-11,2,,cloudy,WINDY,2026-04-09\n");
    ASSERT_TRUE(nights) << nights.error().message;
    ASSERT_EQ(nights->size(), 2U);
    EXPECT_EQ(nights->at(0), (KeptForecast{Date{2026, 4, 9}, Date{2026, 4, 11}, Celsius::from_degrees(2.0),
                                           {climate::Sky::Cloudy, climate::Wind::Windy}, std::nullopt, kEntered}));
    EXPECT_EQ(nights->at(1), (KeptForecast{kIssued, Date{2026, 4, 12}, Celsius::from_degrees(-1.5),
                                           {climate::Sky::Clear, climate::Wind::Calm}, Celsius::from_degrees(-4.0), kEntered}));
    const auto fahrenheit = forecast("date,low_f,dew_point_f\n2026-04-11,50,41\n");
    ASSERT_TRUE(fahrenheit);
    EXPECT_NEAR(fahrenheit->front().low.degrees(), 10.0, 1e-9);
    EXPECT_NEAR(fahrenheit->front().dew_point->degrees(), 5.0, 1e-9);
}

TEST(ForecastFile, NumbersTellSkyAndWind)
{
    const auto weather = [](const std::string& columns, const std::string& values) {
        return forecast("date,low_c," + columns + "\n2026-04-11,1," + values + "\n").value().front().weather;
    };
    EXPECT_EQ(weather("cloud_percent", "29.9").sky, climate::Sky::Clear);
    EXPECT_EQ(weather("cloud_percent", "30").sky, climate::Sky::Cloudy);
    EXPECT_EQ(weather("wind_m_s", "1.9").wind, climate::Wind::Calm);
    EXPECT_EQ(weather("wind_m_s", "2").wind, climate::Wind::Windy);
    EXPECT_EQ(weather("wind_km_h", "7.1").wind, climate::Wind::Calm); // 2 m/s are 7.2 km/h,
    EXPECT_EQ(weather("wind_km_h", "7.3").wind, climate::Wind::Windy);
    EXPECT_EQ(weather("wind_mph", "4.4").wind, climate::Wind::Calm); // and 4.47 mph.
    EXPECT_EQ(weather("wind_mph", "4.5").wind, climate::Wind::Windy);
    EXPECT_FALSE(weather("wind_mph", "").wind);
}

TEST(ForecastFile, NightsBeforeItsDayAreNone)
{
    const auto nights = forecast("date,low_c\n2026-04-09,1\n2026-04-10,2\n");
    ASSERT_TRUE(nights);
    ASSERT_EQ(nights->size(), 1U);
    EXPECT_EQ(nights->front().night, kIssued);
    EXPECT_THAT(refusal(forecast("date,low_c\n2026-04-09,1\n")), HasSubstr("take a newer forecast"));
}

TEST(ForecastFile, WhatIsWrongIsSaidWithItsLine)
{
    struct Case {
        const char* text;
        const char* says;
    };
    for (const auto& [text, says] :
         {Case{"low_c\n1\n", "date"}, Case{"date\n2026-04-11\n", "low_c"}, Case{"date,low_c\n", "needs one for each night"},
          Case{"date,low_c\n,1\n", "the date is missing"}, Case{"date,low_c\n11 April,1\n", "line 2"},
          Case{"date,low_c\n2026-04-11,\n", "the low is missing"}, Case{"date,low_c\n2026-04-11,cold\n", "line 2"},
          Case{"date,low_f\n2026-04-11,cold\n", "line 2"}, Case{"date,low_c\n2026-04-11,-90.1\n", "the low of -90.1 lies outside"},
          Case{"date,low_f\n2026-04-11,141\n", "the low of 141 lies outside"},
          Case{"date,low_c,dew_point_c\n2026-04-11,1,99\n", "the dew_point of 99"},
          Case{"date,low_c,sky\n2026-04-11,1,grey\n", "write clear or cloudy"},
          Case{"date,low_c,wind\n2026-04-11,1,breeze\n", "write calm or windy"},
          Case{"date,low_c,cloud_percent\n2026-04-11,1,101\n", "within 0 and 100"},
          Case{"date,low_c,cloud_percent\n2026-04-11,1,half\n", "line 2"},
          Case{"date,low_c,wind_m_s\n2026-04-11,1,-1\n", "the wind is negative"},
          Case{"date,low_c,wind_m_s\n2026-04-11,1,some\n", "line 2"},
          Case{"date,low_c,issued\n2026-04-11,1,yesterday\n", "line 2"},
          Case{"date,low_c\n2026-04-11,1\n2026-04-11,2\n", "stands in the file twice"}}) {
        const auto said = refusal(forecast(text));
        EXPECT_THAT(said, HasSubstr(says)) << text;
        EXPECT_THAT(said, HasSubstr("nights.csv")) << text;
    }
}

TEST(ReadingsFile, IsReadWithWhatTheThermometerSaid)
{
    const auto log = readings("date,spot,low_c,high_c,station_low_c,sky,note\n"
                              "2026-04-10,cool landing,1.5,9,0.5,clear,read late\n"
                              "2026-04-09,,2,,,,\n");
    ASSERT_TRUE(log) << log.error().message;
    ASSERT_EQ(log->size(), 2U);
    EXPECT_EQ(log->at(0), (Reading{3, Date{2026, 4, 10}, Celsius::from_degrees(1.5), Celsius::from_degrees(9.0),
                                   {climate::Sky::Clear, std::nullopt}, Celsius::from_degrees(0.5), kEntered, "read late"}));
    EXPECT_EQ(log->at(1).spot, 3);
    EXPECT_FALSE(log->at(1).high);
}

TEST(ReadingsFile, WhatIsWrongIsSaidWithItsLine)
{
    struct Case {
        const char* text;
        const char* says;
    };
    for (const auto& [text, says] :
         {Case{"spot,low_c\n3,1\n", "date"}, Case{"date,low_c\nx,1\n", "line 2"},
          Case{"date,low_c\n2026-04-11,1\n", "is not over yet"}, Case{"date,spot,low_c\n2026-04-10,cellar,1\n", "there is no spot \"cellar\""},
          Case{"date,low_c\n2026-04-10,\n", "the low is missing"}, Case{"date,low_c,high_c\n2026-04-10,1,warm\n", "line 2"},
          Case{"date,low_c,high_c\n2026-04-10,5,4\n", "the high is below the low"},
          Case{"date,low_c,station_low_c\n2026-04-10,5,-99\n", "the station_low of -99"},
          Case{"date,low_c,wind\n2026-04-10,5,some\n", "write calm or windy"},
          Case{"date,low_c\n2026-04-10,1\n2026-04-10,1\n", "twice for one spot"}}) {
        const auto said = refusal(readings(text));
        EXPECT_THAT(said, HasSubstr(says)) << text;
        EXPECT_THAT(said, HasSubstr("log.csv")) << text;
    }
    EXPECT_THAT(refusal(readings("date,low_c\n2026-04-10,1\n", std::nullopt)), HasSubstr("no spot is named"));
}

TEST(NightWords, ReadBackAsTheSame)
{
    for (const auto sky : {climate::Sky::Clear, climate::Sky::Cloudy}) {
        EXPECT_EQ(sky_of(to_string(sky)), sky);
    }
    for (const auto wind : {climate::Wind::Calm, climate::Wind::Windy}) {
        EXPECT_EQ(wind_of(to_string(wind)), wind);
    }
    EXPECT_FALSE(sky_of("calm"));
    EXPECT_FALSE(wind_of(""));
}

} // namespace
} // namespace lathhouse::home
