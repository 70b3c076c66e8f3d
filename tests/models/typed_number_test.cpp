#include "app/models/typed_decimal.h"
#include "app/models/typed_measure.h"
#include "app/models/typed_number.h"
#include "app/models/typed_time.h"

#include <gtest/gtest.h>

#include <ostream>

namespace lathhouse::models {
namespace {

struct Typed {
    const char* name;
    const char* typed;
    Units units;
    std::optional<double> celsius;
    const char* trouble = "";
};
void PrintTo(const Typed& row, std::ostream* out)
{
    *out << row.name;
}

class TypedTemperatures : public testing::TestWithParam<Typed> {};

TEST_P(TypedTemperatures, AreReadAsPeopleWriteThem)
{
    const auto& row = GetParam();
    const auto read =
        typed_temperature(row.typed, YearWords(row.units, QLocale(QLocale::English, QLocale::UnitedKingdom)));
    EXPECT_EQ(read.value.has_value(), row.celsius.has_value()) << read.trouble.toStdString();
    if (read.value && row.celsius) {
        EXPECT_NEAR(read.value->degrees(), *row.celsius, 1e-9);
        EXPECT_TRUE(read.trouble.isEmpty());
    }
    if (!row.celsius) {
        EXPECT_TRUE(read.trouble.contains(row.trouble)) << read.trouble.toStdString();
        EXPECT_TRUE(read.trouble.endsWith('.') || read.trouble.endsWith('?'));
    }
}
INSTANTIATE_TEST_SUITE_P(Forms, TypedTemperatures,
                         testing::Values(Typed{"Point", "6.2", Units::Metric, 6.2},
                                         Typed{"Comma", "6,2", Units::Metric, 6.2},
                                         Typed{"Minus", "-3", Units::Metric, -3.0},
                                         Typed{"TrueMinus", "\u22123", Units::Metric, -3.0},
                                         Typed{"UnitBehind", " 6.2 \u00b0C ", Units::Metric, 6.2},
                                         Typed{"Fahrenheit", "41", Units::Us, 5.0},
                                         Typed{"CelsiusAmongFahrenheit", "5 C", Units::Us, 5.0},
                                         Typed{"FahrenheitAmongCelsius", "41F", Units::Metric, 5.0},
                                         Typed{"Nothing", "  ", Units::Metric, {}, "is missing"},
                                         Typed{"Word", "cold", Units::Metric, {}, "is not a number"},
                                         Typed{"TwoNumbers", "3 4", Units::Metric, {}, "is not a number"},
                                         Typed{"PointForgotten", "62", Units::Metric, {}, "Did you mean 6.2?"},
                                         Typed{"TooCold", "-120", Units::Metric, {}, "colder than any night"},
                                         Typed{"NotFinite", "nan", Units::Metric, {}, "is not a number"}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST(SlipOfLow, IsFarFromWhatSuchANightUsuallyHas)
{
    const YearWords metric(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const auto usual = Celsius::from_degrees(12.0);
    EXPECT_EQ(slip_of_low(Celsius::from_degrees(-27.0), usual, metric).trouble, "");
    EXPECT_EQ(slip_of_low(Celsius::from_degrees(-80.0), usual, metric).trouble.toStdString(),
              "Such a night usually has 12.0\u202f°C here. Instead of \u221280.0\u202f°C, did you mean \u22128.0\u202f°C?");
    EXPECT_EQ(slip_of_low(Celsius::from_degrees(-80.0), Celsius::from_degrees(33.0), metric).trouble.toStdString(),
              "Such a night usually has 33.0\u202f°C here; \u221280.0\u202f°C cannot be right.");
    const YearWords us(Units::Us, QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_TRUE(slip_of_low(Celsius::from_fahrenheit(-60.0), usual, us).trouble.contains("did you mean \u22126"));
    // What was likely meant can be put into the field, where anybody knows.
    EXPECT_EQ(slip_of_low(Celsius::from_degrees(-80.0), usual, metric).instead, decimal_to_type(metric, -8.0, 1));
    EXPECT_EQ(slip_of_low(Celsius::from_degrees(-80.0), Celsius::from_degrees(33.0), metric).instead, "");
    EXPECT_EQ(typed_temperature("62", metric).instead, "6.2");
    EXPECT_EQ(*typed_temperature(typed_temperature("62", metric).instead, metric).value, Celsius::from_degrees(6.2));
    EXPECT_EQ(typed_temperature("620 F", metric).instead, "") << "typed in another unit than the shown one";
    EXPECT_EQ(typed_temperature("often", metric).instead, "");
}

TEST(TypedMeasure, IsInTheShownUnitOrInTheOneBehindIt)
{
    const YearWords metric(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const YearWords us(Units::Us, QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_NEAR(*typed_measure("27,3", home::MeasurementKind::Height, metric), 27.3, 1e-9);
    EXPECT_NEAR(*typed_measure("10 in", home::MeasurementKind::Height, metric), 25.4, 1e-9);
    EXPECT_NEAR(*typed_measure("10", home::MeasurementKind::Height, us), 25.4, 1e-9);
    EXPECT_NEAR(*typed_measure("30 cm", home::MeasurementKind::Height, us), 30.0, 1e-9);
    EXPECT_NEAR(*typed_measure("42 %", home::MeasurementKind::GreenCover, us), 0.42, 1e-9);
    EXPECT_NEAR(*typed_measure("7", home::MeasurementKind::Leaves, us), 7.0, 1e-9);
    EXPECT_FALSE(typed_measure("27 ppm", home::MeasurementKind::Height, metric));
    EXPECT_FALSE(typed_measure("", home::MeasurementKind::Height, metric));
}

TEST(TypedPlantLine, IsReadAsATemperatureOfANightIs)
{
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_NEAR(typed_plant_line("\u22122,5 \u00b0C", words)->degrees(), -2.5, 1e-9);
    EXPECT_NEAR(typed_plant_line("41 F", words)->degrees(), 5.0, 1e-9);
    EXPECT_NEAR(typed_plant_line("55", words)->degrees(), 55.0, 1e-9);
}

TEST(TypedPlantLine, EndsWhereNoPlantInAPotIsKept)
{
    const YearWords words(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_FALSE(typed_plant_line("61", words));
    EXPECT_FALSE(typed_plant_line("-60.1", words));
    EXPECT_FALSE(typed_plant_line("", words));
    EXPECT_FALSE(typed_plant_line("cold", words));
    EXPECT_NEAR(typed_degrees("99", words)->degrees(), 99.0, 1e-9);
}

TEST(TypedTimes, AreReadAsPeopleWriteThem)
{
    using std::chrono::minutes;
    EXPECT_EQ(typed_time(" 8:05 "), minutes{485});
    EXPECT_EQ(typed_time("14.30"), minutes{870});
    EXPECT_EQ(typed_time("2:30 p.m."), minutes{870});
    EXPECT_EQ(typed_time("12:00 am"), minutes{0});
    for (const char* none : {"", "24:00", "8:60", "0:10 am", "13:00 pm", "noon", "8"}) {
        EXPECT_FALSE(typed_time(none)) << none;
    }
}

TEST(TypedDates, AreReadAsPeopleWriteThem)
{
    const YearWords british(Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom));
    const YearWords american(Units::Us, QLocale(QLocale::English, QLocale::UnitedStates));
    const calendar::Date may{2026, 5, 3};
    EXPECT_EQ(british.typed_date("2026-05-03"), may);
    EXPECT_EQ(british.typed_date("3.5.2026"), may);
    EXPECT_EQ(british.typed_date(" 3/5/2026"), may);
    EXPECT_EQ(american.typed_date("5/3/2026"), may);
    EXPECT_EQ(british.typed_date("3 May 2026"), may);
    EXPECT_EQ(american.typed_date("May 3, 2026"), may);
    EXPECT_EQ(YearWords(Units::Metric, QLocale(QLocale::German)).typed_date("3. Mai 2026"), may);
    for (const char* none : {"", "30.2.2026", "3.5.26", "May", "3.5.", "1066-10-14"}) {
        EXPECT_FALSE(british.typed_date(none)) << none;
    }
}

} // namespace
} // namespace lathhouse::models
