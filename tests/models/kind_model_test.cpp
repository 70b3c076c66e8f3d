#include "app/models/kind_model.h"

#include "app/models/asked_kind.h"
#include "app/models/plants_form.h"
#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "core/plan/cautions.h"
#include "tests/models/start_fixtures.h"

#include <QRegularExpression>

#include <algorithm>

namespace lathhouse::models {
namespace {

const plants::PlantKind& kind_called(const char* name)
{
    return **plants::PlantReference::built_in().find(name);
}

QString figure(KindModel& model, const QString& label)
{
    for (int row = 0; row < model.figures()->rowCount(); ++row) {
        if (model.figures()->at(row, "label").toString() == label) {
            return model.figures()->at(row, "value").toString();
        }
    }
    return QStringLiteral("not there");
}

TEST(KindModel, TellsTheLinesHazardsAndSourcesOfTheTable)
{
    const auto& kind = kind_called("Nerium oleander");
    KindModel model(british_words());
    EXPECT_FALSE(model.open());
    model.show(kind);
    ASSERT_TRUE(model.open());
    EXPECT_EQ(model.name(), "Oleander");
    EXPECT_EQ(model.botanical(), "Nerium oleander, Apocynaceae");
    const auto words = british_words();
    EXPECT_EQ(figure(model, "Safe night"), words.temperature(kind.lines.safe_night));
    EXPECT_EQ(figure(model, "Harm begins"), words.temperature(kind.lines.damage_begins));
    EXPECT_EQ(figure(model, "May kill"), words.temperature(kind.lines.lethal));
    EXPECT_EQ(figure(model, "Light"), "four hours of direct sun or more");
    EXPECT_TRUE(figure(model, "Feed").contains("ppm nitrogen")) << figure(model, "Feed").toStdString();
    EXPECT_EQ(figure(model, "Grows in"), text(kind.growth_season));
    ASSERT_EQ(model.hazards()->at(0, "rust").toBool(), true);
    EXPECT_TRUE(model.hazards()->at(0, "strong").toString().contains("Deadly")) << model.hazards()->at(0, "strong").toString().toStdString();
    EXPECT_EQ(static_cast<std::size_t>(model.cautions().size()), plan::cautions_for_plant(kind).size());
    EXPECT_FALSE(model.cautions().isEmpty());
    EXPECT_TRUE(model.notes().join(' ').contains("Sources: "));
    EXPECT_TRUE(model.notes().join(' ').contains("common practice, no source"));
    ASSERT_TRUE(model.needs());
    EXPECT_EQ(model.needs()->damage, kind.lines.damage_begins);
    EXPECT_FALSE(model.needs()->here); // It stands nowhere.
    EXPECT_TRUE(model.needsSpoken().contains(words.temperature(kind.lines.lethal)));
    model.close();
    EXPECT_FALSE(model.open());
}

TEST(KindModel, HasWordsForEveryKind)
{
    KindModel model(british_words());
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        model.show(kind);
        ASSERT_TRUE(model.open()) << kind.botanical_name;
        model.close();
        EXPECT_EQ(model.figures()->rowCount(), 12) << kind.botanical_name;
        for (int row = 0; row < model.figures()->rowCount(); ++row) {
            EXPECT_FALSE(model.figures()->at(row, "value").toString().isEmpty()) << kind.botanical_name << row;
        }
        EXPECT_GT(model.hazards()->rowCount(), 0) << kind.botanical_name;
        EXPECT_GE(words::foreign_texts(kind.growth_season).size(), 2U) << kind.growth_season << " is not translated";
    }
}

/// Somebody who reads another language, while it is there.
class InLanguage {
public:
    explicit InLanguage(const char* language) { words::speak_to({.language = language, .phrase = {}, .decimal_mark = ','}); }
    ~InLanguage() { words::speak_to({}); }
    InLanguage(const InLanguage&) = delete;
    InLanguage& operator=(const InLanguage&) = delete;
};

class KindModelInLanguage : public testing::TestWithParam<const char*> {};

TEST_P(KindModelInLanguage, ShowsNoEnglishNote)
{
    const InLanguage reader(GetParam());
    const QRegularExpression english("\\b(the|and|below|from|stand|stands|dies|hurt|hurts|list|source|figure|roots|frost is)\\b",
                                     QRegularExpression::CaseInsensitiveOption);
    KindModel model(YearWords(Units::Metric, QLocale(QString::fromLatin1(GetParam()))));
    int notes = 0;
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        model.show(kind);
        if (!kind.note.empty()) {
            ++notes;
            const QString shown = model.notes().last();
            EXPECT_FALSE(model.notes().join('\n').contains(text(kind.note))) << kind.botanical_name;
            EXPECT_FALSE(shown.contains(english)) << shown.toStdString();
            EXPECT_FALSE(shown.contains('\'')) << shown.toStdString();
        }
    }
    EXPECT_GT(notes, 150);
}
INSTANTIATE_TEST_SUITE_P(Languages, KindModelInLanguage, testing::Values("de", "es"), [](const auto& row) { return std::string{row.param}; });

TEST(KindModel, OtherNamesAreInTheReadersLanguageAndTheEnglishOnesSaySo)
{
    KindModel model(british_words());
    model.show(kind_called("Citrus reticulata"));
    EXPECT_EQ(model.otherNames(), "Also called Satsuma.");
    const InLanguage german("de");
    model.show(kind_called("Spathiphyllum wallisii"));
    EXPECT_EQ(model.otherNames(), "Also called Friedenslilie. In English: Peace lily.");
    model.show(kind_called("Citrus reticulata"));
    EXPECT_EQ(model.otherNames(), "In English: Mandarin, Satsuma.");
}

TEST(KindModel, PrintsTheApostrophesThatATableHasAsAKeyboardDoes)
{
    KindModel model(british_words());
    model.show(kind_called("Brugmansia suaveolens"));
    EXPECT_EQ(model.name(), "Angel\u2019s trumpet");
    model.show(kind_called("Aglaonema commutatum"));
    EXPECT_TRUE(model.notes().last().startsWith("\u2018Silver Queen\u2019 is")) << model.notes().last().toStdString();
}

TEST(AskedKind, IsMetByEitherApostrophe)
{
    const auto* kind = &kind_called("Brugmansia suaveolens");
    for (const char* typed : {"Angel's trumpet", "angel\u2019s trumpet", " Angel\u2018s Trumpet "}) {
        EXPECT_EQ(asked_kind(typed).kind, kind) << typed;
        PlantsForm form(british_words());
        form.setFind(typed);
        ASSERT_EQ(form.found()->rowCount(), 1) << typed;
        EXPECT_EQ(form.found()->at(0, "words").toString(), "Angel\u2019s trumpet");
        form.pick(0);
        const auto made = form.make([](int) { return std::nullopt; });
        ASSERT_TRUE(made);
        EXPECT_EQ(made->front().name, "Angel's trumpet") << "as the command line finds it";
    }
}

TEST(KindModel, AKindThatIsNotFedAndOneThatRestsSaySo)
{
    KindModel model(british_words());
    const auto kinds = plants::PlantReference::built_in().kinds();
    model.show(*std::ranges::find(kinds, plants::FeedClass::None, &plants::PlantKind::feed));
    EXPECT_EQ(figure(model, "Feed"), "takes no feed");
    model.show(*std::ranges::find(kinds, "dry winter", &plants::PlantKind::rest));
    EXPECT_EQ(figure(model, "Its rest"), "stands still in winter; nearly dry while it rests");
    model.show(*std::ranges::find(kinds, "annual", &plants::PlantKind::rest));
    EXPECT_EQ(figure(model, "Its rest"), "none known");
}

TEST(PlantsForm, AKindIsLookedAtBeforeItIsPicked)
{
    PlantsForm form(british_words());
    form.setFind("oleander");
    form.look(99);
    EXPECT_FALSE(form.looked()->open());
    form.pickLooked();
    EXPECT_EQ(form.total(), 0);
    form.look(0);
    ASSERT_TRUE(form.looked()->open());
    EXPECT_EQ(form.looked()->name(), form.found()->at(0, "words").toString());
    EXPECT_EQ(form.total(), 0) << "looking picks nothing";
    form.setFind("basil"); // What is looked at stays what it is.
    form.pickLooked();
    EXPECT_FALSE(form.looked()->open());
    ASSERT_EQ(form.total(), 1);
    EXPECT_EQ(form.drafts().front().kind.botanical_name, "Nerium oleander");
    form.look(0);
    form.clear();
    EXPECT_FALSE(form.looked()->open());
    EXPECT_EQ(form.total(), 0);
}

} // namespace
} // namespace lathhouse::models
