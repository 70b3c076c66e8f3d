#include "core/climate/figures.h"
#include "tests/models/start_fixtures.h"

#include <QAbstractItemModelTester>

namespace lathhouse::models {
namespace {

class PlaceFormTest : public testing::Test {
protected:
    PlaceFormTest() : form(shipped_door(), british_words(), kStartToday)
    {
        form.start();
        wait_until_still(form);
    }
    PlaceForm form;
};

struct PositionCase {
    const char* name;
    const char* typed;
    double latitude;
    double longitude;
};
void PrintTo(const PositionCase& row, std::ostream* out)
{
    *out << row.name;
}
class PastedPosition : public testing::TestWithParam<PositionCase> {};

TEST_P(PastedPosition, FillsBothFieldsFromAnyOfThem)
{
    const auto& row = GetParam();
    for (const int field : {0, 1, 2}) {
        PlaceForm form(shipped_door(), british_words(), kStartToday);
        const auto typed = QString::fromUtf8(row.typed);
        field == 0 ? form.setFind(typed) : field == 1 ? form.setLatitude(typed) : form.setLongitude(typed);
        wait_until_still(form);
        const auto place = form.place();
        ASSERT_TRUE(place) << field << " " << place.error().message;
        EXPECT_NEAR(place->position.latitude.degrees(), row.latitude, 1e-4) << field;
        EXPECT_NEAR(place->position.longitude.degrees(), row.longitude, 1e-4) << field;
    }
}
INSTANTIATE_TEST_SUITE_P(Forms, PastedPosition,
                         testing::Values(PositionCase{"Decimals", "48.2, 16.4", 48.2, 16.4},
                                         PositionCase{"South", "-33.87 151.21", -33.87, 151.21},
                                         PositionCase{"TrueMinus", "\u221233.87, 151.21", -33.87, 151.21},
                                         PositionCase{"Letters", "N48.2 E16.4", 48.2, 16.4},
                                         PositionCase{"Seconds", "48°12'30\"N, 16°22'E", 48.20833, 16.36667},
                                         PositionCase{"DecimalCommas", "48,25 16,5", 48.25, 16.5}),
                         [](const auto& row) { return std::string{row.param.name}; });

TEST_F(PlaceFormTest, FieldsTakeACommaAndALetter)
{
    form.setLatitude(QStringLiteral("33,9 S"));
    form.setLongitude(QStringLiteral("151.2"));
    wait_until_still(form);
    ASSERT_TRUE(form.place());
    EXPECT_NEAR(form.place()->position.latitude.degrees(), -33.9, 1e-9);
}

TEST_F(PlaceFormTest, ATownIsFoundAsOneTypesAndBringsItsZoneAndHeight)
{
    QAbstractItemModelTester tester(form.found(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    for (const char* typed : {"Vi", "Vien", "Vienna, Austria"}) {
        form.setFind(QString::fromUtf8(typed));
    }
    wait_until_still(form);
    ASSERT_GT(form.found()->count(), 0);
    EXPECT_TRUE(form.found()->at(0, QStringLiteral("words")).toString().contains(QStringLiteral("Austria")));
    form.choose(0);
    wait_until_still(form);
    const auto place = form.place();
    ASSERT_TRUE(place);
    EXPECT_EQ(place->time_zone, "Europe/Vienna");
    EXPECT_EQ(form.found()->count(), 0);
    ASSERT_TRUE(place->elevation);
    EXPECT_NEAR(place->elevation->metres(), 170.0, 60.0);
    EXPECT_FALSE(form.zoneNote().isEmpty()); // Proposed, not assumed.
}

TEST_F(PlaceFormTest, WhatItGivesFollowsTheTyping)
{
    form.setFind(QStringLiteral("48.2, 16.4"));
    wait_until_still(form);
    ASSERT_TRUE(form.hasGiven());
    const auto figure = [this](const QString& label) {
        for (int row = 0; row < form.figures()->count(); ++row) {
            if (form.figures()->at(row, QStringLiteral("label")).toString() == label) {
                return form.figures()->at(row, QStringLiteral("value")).toString();
            }
        }
        return QString{};
    };
    EXPECT_TRUE(figure(QStringLiteral("Hardiness zone")).startsWith(text(climate::hardiness_zone(form.climate()->lowest_nights().mean))));
    const QString cold = figure(QStringLiteral("Last frost"));
    EXPECT_TRUE(cold.contains(QStringLiteral("1 in 10 after"))) << cold.toStdString();
    EXPECT_FALSE(form.given().nights.days.empty());
    EXPECT_TRUE(form.given().nights.last_tenth.has_value());
    form.setFind(QStringLiteral("1.3, 103.9"));
    wait_until_still(form);
    EXPECT_TRUE(figure(QStringLiteral("Last frost")).isEmpty());
    EXPECT_FALSE(form.given().nights.last_tenth.has_value());
    form.setLatitude({});
    EXPECT_FALSE(form.hasGiven());
}

TEST_F(PlaceFormTest, WhatIsWrongIsSaidAtItsField)
{
    form.setLatitude(QStringLiteral("95"));
    form.setLongitude(QStringLiteral("16"));
    EXPECT_TRUE(form.positionTrouble().contains(QStringLiteral("exchanged")));
    EXPECT_FALSE(form.check());
    form.setLatitude(QStringLiteral("forty"));
    EXPECT_TRUE(form.positionTrouble().contains(QStringLiteral("no latitude")));
    form.setLatitude(QStringLiteral("48"));
    EXPECT_TRUE(form.positionTrouble().isEmpty());
    form.setHeight(QStringLiteral("12000"));
    EXPECT_FALSE(form.heightTrouble().isEmpty());
    form.setHeight({});
    form.setZone(QStringLiteral("Europe/Nowhere"));
    EXPECT_FALSE(form.zoneTrouble().isEmpty());
    wait_until_still(form);
    EXPECT_FALSE(form.check());
    form.setZone({});
    wait_until_still(form);
    EXPECT_TRUE(form.check()) << form.zone().toStdString();
}

TEST_F(PlaceFormTest, AnOwnHeightAndZoneAreNotOverwritten)
{
    form.setFind(QStringLiteral("48.2, 16.4"));
    wait_until_still(form);
    form.setHeight(QStringLiteral("412"));
    form.setZone(QStringLiteral("Europe/Berlin"));
    form.setFind(QStringLiteral("47.3, 11.4"));
    wait_until_still(form);
    EXPECT_EQ(form.height(), QStringLiteral("412"));
    EXPECT_EQ(form.place()->time_zone, "Europe/Berlin");
    EXPECT_NEAR(form.place()->elevation->metres(), 412.0, 1e-9);
}

TEST_F(PlaceFormTest, FeetAreTurnedIntoMetres)
{
    PlaceForm us(shipped_door(), british_words(Units::Us), kStartToday);
    us.setFind(QStringLiteral("40.0, -105.3"));
    us.setHeight(QStringLiteral("5430"));
    wait_until_still(us);
    EXPECT_NEAR(us.place()->elevation->metres(), 1655.1, 0.1);
}

TEST_F(PlaceFormTest, ATownThatIsNoneIsSaid)
{
    form.setFind(QStringLiteral("Qqzzxxq"));
    wait_until_still(form);
    EXPECT_FALSE(form.findTrouble().isEmpty());
}

} // namespace
} // namespace lathhouse::models
