#include "app/words/refusal.h"

#include "app/models/home_data_model.h"
#include "app/words/phrase.h"
#include "core/base/csv.h"
#include "core/base/named_rows.h"
#include "core/calendar/time_zone.h"
#include "core/climate/own_record.h"
#include "core/geodesy/read_position.h"
#include "core/growth/comparison.h"
#include "core/home/household_change.h"
#include "core/home/jug.h"
#include "core/home/measurement.h"
#include "core/home/night_log_file.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_csv.h"
#include "core/journal/household_store.h"
#include "core/photo/photo_file.h"
#include "core/photo/photo_length.h"
#include "core/plan/cold_night.h"
#include "core/plan/kitchen_measures.h"
#include "core/plan/mix.h"
#include "core/plants/pest.h"
#include "core/plants/plant_kind.h"
#include "core/sky/spot_view.h"
#include "tests/models/page_fixtures.h"

#include <gmock/gmock.h>

#include <QFile>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <fstream>
#include <map>
#include <memory>

namespace lathhouse::models {
namespace {

using testing::HasSubstr;

/// The sentences of the words' room as the table of a language has them.
std::map<std::string, std::string> words_in(const char* language)
{
    QFile file(QStringLiteral(LATHHOUSE_SOURCE "/app/i18n/lathhouse_%1.ts").arg(QLatin1String(language)));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    std::map<std::string, std::string> words;
    QString context;
    std::string source;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QLatin1String("source")) {
            source = xml.readElementText().toStdString();
        } else if (xml.name() == QLatin1String("translation") && context == QLatin1String("words")) {
            words[source] = xml.readElementText().toStdString();
        }
    }
    EXPECT_GT(words.size(), 400U);
    return words;
}

/// Somebody who reads that language, and nobody any more afterwards.
class ReaderOf {
public:
    explicit ReaderOf(const char* language)
    {
        auto words = std::make_shared<std::map<std::string, std::string>>(words_in(language));
        words::speak_to({.language = language,
                         .phrase =
                             [words](const char* source) {
                                 const auto found = words->find(source);
                                 return found == words->end() ? std::string{} : found->second;
                             },
                         .decimal_mark = ','});
    }
    ~ReaderOf() { words::speak_to({}); }
    ReaderOf(const ReaderOf&) = delete;
    ReaderOf& operator=(const ReaderOf&) = delete;
};

template <class T>
Error error_of(const Result<T>& refused)
{
    EXPECT_FALSE(refused.has_value());
    return refused ? Error{} : refused.error();
}

/// What is refused, and what is said of it.
struct Refused {
    Error error;
    const char* english;
    const char* german;
    const char* spanish;
};

class RefusalTest : public testing::Test {
protected:
    std::filesystem::path path(const char* name) const { return std::filesystem::path{folder_.path().toStdString()} / name; }
    std::filesystem::path file(const char* name, const char* content) const
    {
        std::ofstream{path(name), std::ios::binary} << content;
        return path(name);
    }
    std::vector<Refused> refusals() const;
    QTemporaryDir folder_;
};

std::vector<Refused> RefusalTest::refusals() const
{
    const auto& household = plain_facts().as_told;
    auto change = home::HouseholdChange{};
    change.spots.push_back(household.spots.front());
    change.spots.back().id = 0;
    auto taken_off = home::HouseholdChange{};
    taken_off.spots_gone.push_back(*household.plants.front().spot);
    home::SeedBook book;
    book.lots.push_back({.id = 1, .name = "Basil 24", .crop = "Ocimum basilicum", .packed_year = {}, .stated_percent = {}, .seeds = 10, .note = {}});
    const home::Tray tray{.id = 0, .lot = 1, .sown = kShownToday, .seeds = 12, .spot = {}, .mix = {}, .note = {}};
    const home::Measurement tall{.plant = 1, .kind = home::MeasurementKind::LongestLeaf, .measured = {2026, 5, 2},
                                 .repeats = {20'000.5}, .method = home::MeasurementMethod::Ruler, .entered = {}};
    sky::SpotFigures wide;
    wide.width = Metres::from_metres(40.5);
    const std::vector<home::Jug> jugs{{"blue can", Litres::from_millilitres(5000.0)}};
    const std::string text = "no photo at all";
    const auto table = file("days.csv", "date,low,high\n1991-01-01,1,2\nyesterday,1,2\n");
    const std::vector<std::string_view> columns{"date", "low_c"};
    const auto rows = NamedRows::parse("date,low_c\n2026-05-01,warm\n", "nights.csv", columns, {});
    const auto named = home::readings_from(*rows, household, household.spots.front().id, kShownToday, {});
    std::filesystem::create_directory(path("empty"));
    auto store = journal::HouseholdStore::create(path("kept"), household);
    EXPECT_TRUE(store) << store.error().message;
    auto attic = household.spots.front();
    attic.id = 0;
    attic.name = "Attic";
    EXPECT_TRUE(store->change({.words = "Attic", .spots = {attic}}, kShownToday, {}));
    const auto where = store->load()->spot_called("Attic")->id;
    EXPECT_TRUE(store->accept({{}, {{household.plants.front().id, where, kShownToday, kShownToday}}}));
    return {
        {error_of(store->change({.words = "Off", .spots_gone = {where}}, kShownToday, {})), "a plan that was accepted uses it",
         "ein angenommener Plan braucht diesen Platz", "un plan aceptado lo usa"},
        {error_of(CsvTable::read(path("none.csv"))), "there is no file", "es gibt keine Datei", "no existe el archivo"},
        {error_of(calendar::parse_date("13.5.")), "\"13.5.\" is no date", "„13.5.“ ist kein Datum", "«13.5.» no es una fecha"},
        {error_of(calendar::TimeZone::named("Mars/Olympus")), "there is no time zone \"Mars/Olympus\"", "keine Zeitzone „Mars/Olympus“",
         "no hay zona horaria «Mars/Olympus»"},
        {error_of(geodesy::read_position("95.5, 10")), "the latitude 95.5 in", "die Breite 95,5 in", "la latitud 95,5 en"},
        {error_of(geodesy::read_position("at the well")), "is no place: ", "ist kein Ort: es enthält etwas", "no es un lugar: contiene algo"},
        {error_of(Probability::from_percent(120.0)), "within 0 and 100", "zwischen 0 und 100", "entre 0 y 100"},
        {home::make(change, *std::make_unique<home::Household>(household)).error(), "there is a spot \"", "es gibt schon einen Platz „",
         "ya hay un sitio «"},
        {home::make(taken_off, *std::make_unique<home::Household>(household)).error(), "; move it first", "; zuerst umstellen", "; moverla antes"},
        {error_of(home::make_jug("1 jug", Litres::from_millilitres(100.0))), "\"1 jug\" cannot name", "„1 jug“ kann kein Name", "«1 jug» no puede ser"},
        {home::check(tall).error(), "the measurement longest leaf of 2026-05-02 has a reading of 20000.5; it lies within 0 and 10000 cm",
         "die Messung „längstes Blatt“ vom 2026-05-02 hat einen Messwert von 20000,5; er liegt zwischen 0 und 10000 cm",
         "la medición «hoja más larga» del 2026-05-02 tiene una lectura de 20000,5; debe estar entre 0 y 10000 cm"},
        {error_of(plan::read_feed_label("0-10-10")), "the feed 0-10-10 holds no nitrogen", "der Dünger 0-10-10 enthält keinen Stickstoff",
         "el abono 0-10-10 no contiene nitrógeno"},
        {error_of(plan::read_amount("three pails", jugs)), "gal-imp, or blue can", "gal-imp, oder blue can", "gal-imp, o blue can"},
        {error_of(plan::percent_mix(30.0, Litres::from_millilitres(100.0))), "at 0.5 to 2", "mit 0,5 bis 2", "al 0,5 a 2"},
        {error_of(plan::NightCourse::through({.low = Celsius::from_degrees(-70.0), .high = Celsius::from_degrees(5.0)})),
         "the night's low must", "der Tiefstwert der Nacht muss", "la mínima de la noche debe"},
        {error_of(sky::SpotView::of(wide)), "the width of a window or opening must lie within 0.05 and 30 m, not 40.5",
         "die Breite eines Fensters oder einer Öffnung muss zwischen 0,05 und 30 m liegen, nicht bei 40,5",
         "la anchura de una ventana o abertura debe estar entre 0,05 y 30 m, no 40,5"},
        {error_of(photo::read_facts({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()}, "letter.jpg")), "letter.jpg is no photo",
         "letter.jpg ist kein Foto", "letter.jpg no es una fotografía"},
        {error_of(photo::length_of({}, {})), "a length is measured by a scale", "an einem Maßstab gemessen", "se mide con una escala"},
        {error_of(journal::HouseholdStore::open(path("nowhere"))), "; choose a household's folder", "; den Ordner eines Haushalts wählen",
         "; elegir la carpeta de un hogar"},
        {error_of(journal::HouseholdStore::open(path("empty"))), "is not a household; it has no file household.sqlite3",
         "ist kein Haushalt; darin ist keine Datei household.sqlite3", "no es un hogar; no tiene dentro el archivo household.sqlite3"},
        {error_of(journal::restore(file("letter.zip", "Dear all"), path("back"), {})), "this is no zip file, or it is torn or was altered; nothing was unpacked",
         "das ist keine Zip-Datei, oder sie ist unvollständig oder wurde verändert; nichts wurde ausgepackt",
         "esto no es un archivo zip, o está incompleto o fue alterado; no se desempaquetó nada"},
        {error_of(journal::import_csv(path("empty"), path("again"))), "has no about.csv; choose a folder into which",
         "hat keine about.csv; einen Ordner wählen, in den", "no tiene about.csv; elegir una carpeta en la que"},
        {error_of(climate::read_record_file({.file = table, .columns = climate::DayTableColumns{"date", "low", "high", {}}})),
         "days.csv, line 3: \"yesterday\" is no day", "days.csv, Zeile 3: „yesterday“ ist kein Tag", "days.csv, línea 3: «yesterday» no es un día"},
        {error_of(named), "nights.csv, line 2: \"warm\" is no number (low_c)", "nights.csv, Zeile 2: „warm“ ist keine Zahl (low_c)",
         "nights.csv, línea 2: «warm» no es un número (low_c)"},
        {home::check(tray, book, kShownToday).error(), "Basil 24 has 10 seeds left, not 12", "Basil 24 hat noch 10 Samen, nicht 12",
         "a Basil 24 le quedan 10 semillas, no 12"},
        {error_of(growth::paired_difference({})), "needs 2 plants, has 0", "braucht 2 Pflanzen, hat 0", "necesita 2 plantas, tiene 0"},
        {error_of(plants::PlantReference::built_in().find("Rosmary")), "did you mean", "gemeint vielleicht", "quizá"},
        {error_of(plants::PestTable::built_in().find("tigers")), "no pest named \"tigers\"", "keinen Schädling „tigers“", "ninguna plaga «tigers»"},
    };
}

TEST_F(RefusalTest, OfEveryRoomIsSaidInTheReadersLanguageWithItsParts)
{
    const auto all = refusals();
    ASSERT_GE(all.size(), 15U);
    for (const auto& one : all) {
        EXPECT_NE(one.error.sentence, nullptr) << one.error.message;
        EXPECT_THAT(words::refusal(one.error), HasSubstr(one.english));
    }
    const ReaderOf german{"de"};
    for (const auto& one : all) {
        EXPECT_THAT(words::refusal(one.error), HasSubstr(one.german)) << one.error.message;
    }
    const ReaderOf spanish{"es"};
    for (const auto& one : all) {
        EXPECT_THAT(words::refusal(one.error), HasSubstr(one.spanish)) << one.error.message;
    }
}

TEST_F(RefusalTest, NamesNoCommandAndNoOptionAtTheWindow)
{
    for (const auto& one : refusals()) {
        const auto said = words::refusal(one.error);
        EXPECT_EQ(said.find("`lathhouse"), std::string::npos) << said;
        EXPECT_EQ(said.find(" --"), std::string::npos) << said;
    }
    const auto opened = error_of(journal::HouseholdStore::open(path("nowhere")));
    EXPECT_THAT(opened.message, HasSubstr("--home")) << "the command line is told of its option";
}

TEST_F(RefusalTest, WithoutASentenceStandsAsItIs)
{
    const ReaderOf german{"de"};
    EXPECT_EQ(words::refusal(Error{ErrorCode::NotFound, "what a library says 1.5"}), "what a library says 1.5");
    EXPECT_EQ(words::refusal(said("a sentence %1 of nobody, %2", "of 1.5", 2)), "a sentence of 1.5 of nobody, 2");
}

TEST_F(RefusalTest, IsShownByTheModelsInGerman)
{
    const ReaderOf german{"de"};
    HomeDataModel data([]() -> Result<plan::HouseholdFacts> { return plain_facts(); }, path("home"), british_look(),
                       std::make_shared<KeptSettings>(folder_.filePath("window.ini")));
    data.start();
    wait_for(data);
    data.restore(QString::fromStdString(file("letter.zip", "Dear all").string()), QString::fromStdString(path("back").string()));
    wait_for(data);
    EXPECT_TRUE(data.error().endsWith("; nichts wurde ausgepackt.")) << data.error().toStdString();
}

} // namespace
} // namespace lathhouse::models
