#include "app/models/window_language.h"

#include "app/models/settings_model.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>

namespace lathhouse::models {
namespace {

const QLocale kAustrian(QLocale::German, QLocale::Austria);
const QLocale kOfBritain(QLocale::English, QLocale::UnitedKingdom);

TEST(WindowLanguage, WhatIsAskedForGoesBeforeWhatIsKeptAndThatBeforeTheDesktop)
{
    EXPECT_EQ(language_in_force("es", "de", kOfBritain), "es");
    EXPECT_EQ(language_in_force(std::nullopt, "de", kOfBritain), "de");
    EXPECT_EQ(language_in_force(std::nullopt, "desktop", kAustrian), "de");
    EXPECT_EQ(language_in_force(std::nullopt, "", kOfBritain), "en");
    EXPECT_EQ(language_in_force("mirror", "de", kOfBritain), "mirror");
}

TEST(WindowLanguage, WordsThatAreNoLanguageCountAsNotSaid)
{
    EXPECT_EQ(language_in_force("klingon", "es", kOfBritain), "es");
    EXPECT_EQ(language_in_force(std::nullopt, "mirror", kAustrian), "de") << "it is for tests alone";
    EXPECT_EQ(language_in_force(std::nullopt, "", QLocale(QLocale::Finnish)), "en") << "none that the window speaks";
    EXPECT_EQ(language_in_force(std::nullopt, "", QLocale::c()), "en");
}

TEST(WindowLanguage, NumbersAndDatesFollowTheDesktopWhereItSpeaksTheSame)
{
    EXPECT_EQ(locale_of_language("de", kAustrian), kAustrian);
    EXPECT_EQ(locale_of_language("en", QLocale::c()), QLocale::c());
    const QLocale spanish = locale_of_language("es", kAustrian);
    EXPECT_EQ(spanish.language(), QLocale::Spanish);
    EXPECT_EQ(spanish.decimalPoint(), ",");
    EXPECT_EQ(locale_of_language("de", kOfBritain).decimalPoint(), ",");
    EXPECT_EQ(locale_of_language("mirror", kOfBritain), kOfBritain);
}

TEST(WindowLanguage, IsChosenAndKeptAndInForceAtTheNextStart)
{
    const QTemporaryDir folder;
    const auto kept = [&] { return std::make_shared<KeptSettings>(folder.filePath("window.ini")); };
    SettingsModel model(kept(), {}, ShownUnits{}, kOfBritain);
    EXPECT_EQ(model.languages().size(), 1 + static_cast<qsizetype>(kWindowLanguages.size()));
    EXPECT_EQ(model.language(), 0);
    QSignalSpy changed(&model, &SettingsModel::languageChanged);
    model.setLanguage(2);
    model.setLanguage(9);
    model.setLanguage(-1);
    EXPECT_EQ(model.language(), 2);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_TRUE(model.languageNote().contains("next start")) << model.languageNote().toStdString();
    EXPECT_EQ(kept()->value("language").toString(), "de");
    AskedSettings asked;
    asked.language = "es";
    const SettingsModel again(kept(), asked, ShownUnits{}, kOfBritain);
    EXPECT_EQ(again.language(), 2);
    EXPECT_TRUE(again.languageNote().isEmpty());
    EXPECT_TRUE(again.languageFixed().contains("--language"));
    model.setLanguage(0);
    EXPECT_EQ(kept()->value("language").toString(), "desktop");
    EXPECT_TRUE(model.languageNote().isEmpty()) << "as it was opened";
}

TEST(TypedNumbers, HaveADecimalPointOrCommaInEveryLanguage)
{
    for (const QLocale::Language language : {QLocale::English, QLocale::German, QLocale::Spanish}) {
        const YearWords words(Units::Metric, QLocale(language));
        for (const char* typed : {"1.5", "1,5", " 1,5 ", "1,5 °C"}) {
            const auto read = typed_temperature(typed, words);
            ASSERT_TRUE(read.value) << typed << ": " << read.trouble.toStdString();
            EXPECT_DOUBLE_EQ(read.value->degrees(), 1.5) << typed;
        }
    }
}

TEST(TypedNumbers, MayHaveTheirUnitBehindAndNothingElse)
{
    EXPECT_EQ(typed_decimal("14,5 cm", {"cm", "%"}), 14.5);
    EXPECT_EQ(typed_decimal("14.5CM", {"cm", "%"}), 14.5);
    EXPECT_EQ(typed_decimal("\u22123"), -3.0);
    EXPECT_EQ(typed_decimal("100,5 \u00b5mol", {"lux", "µmol", "mol"}), 100.5) << "the micro sign";
    EXPECT_EQ(typed_decimal("100.5 \u03bcmol", {"lux", "µmol", "mol"}), 100.5) << "the Greek letter";
    EXPECT_EQ(typed_decimal("100.5 \u00b5MOL", {"\u03bcmol"}), 100.5);
    EXPECT_FALSE(typed_decimal("100.5 \u00b5mol", {"mol"}));
    for (const char* typed : {"", " ", "cm", "1.2.3", "1.234,5", "nan", "inf", "14 mm", "1 5"}) {
        EXPECT_FALSE(typed_decimal(typed, {"cm", "%"})) << typed;
    }
}

TEST(TypedNumbers, AreReadAsTheyWerePutIntoAField)
{
    for (const auto language : {QLocale::English, QLocale::German, QLocale::Spanish, QLocale::French}) {
        const YearWords words(Units::Metric, QLocale(language));
        EXPECT_EQ(typed_decimal(decimal_to_type(words, 1200.0, 0)), 1200.0);
        EXPECT_EQ(typed_decimal(decimal_to_type(words, -1234567.25, 2)), -1234567.25);
        EXPECT_EQ(typed_decimal(decimal_to_type(words, 0.5, 1)), 0.5);
    }
}

} // namespace
} // namespace lathhouse::models
