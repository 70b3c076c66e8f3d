#include "app/models/logged_detail.h"

#include "app/models/translated.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"
#include "app/models/word_form.h"
#include "app/words/table_words.h"
#include "core/plants/pest.h"

namespace lathhouse::models {

namespace {

constexpr double kMostPpm = 2000.0;

/// A pest that the tables do not know is kept as it was written; the course then runs by the citrus mealybug's clock.
std::string pest_meant(const std::string& said)
{
    const auto& pests = plants::PestTable::built_in();
    const auto known = pests.find(words::english_text(said));
    const auto written = known ? known : pests.find(said);
    return written ? (*written)->name : said;
}

} // namespace

QString detail_asked(home::EventKind kind)
{
    switch (kind) {
    case home::EventKind::Fed:
        return tr("Nitrogen of the feed in ppm, may be left blank");
    case home::EventKind::PestFound:
        return tr("Which pest");
    case home::EventKind::Treated:
        return tr("With what, may be left blank");
    case home::EventKind::ColdNight:
        return tr("Lowest of the night there, may be left blank");
    case home::EventKind::ChemicalDamage:
        return tr("Which product, may be left blank");
    default:
        return {};
    }
}

QString add_detail(home::Event& event, const QString& typed, const YearWords& words)
{
    const std::string said = typed.trimmed().toStdString();
    if (event.kind == home::EventKind::PestFound && said.empty()) {
        return tr("Choose which pest was found, or write it.");
    }
    if (said.empty()) {
        return {};
    }
    switch (event.kind) {
    case home::EventKind::Fed: {
        const auto ppm = typed_decimal(typed, {"ppm"});
        if (!ppm || *ppm < 0.0 || *ppm > kMostPpm) {
            return tr("Parts of nitrogen in a million lie between 0 and 2000; leave it blank where you do not know.");
        }
        event.details["ppm"] = QString::number(*ppm).toStdString();
        break;
    }
    case home::EventKind::PestFound:
        event.details["pest"] = pest_meant(said);
        break;
    case home::EventKind::Treated:
        event.details["with"] = said;
        break;
    case home::EventKind::ColdNight: {
        const auto low = typed_temperature(typed, words);
        if (!low.value) {
            return low.trouble;
        }
        event.details["low_c"] = QString::number(low.value->degrees(), 'f', 1).toStdString();
        break;
    }
    case home::EventKind::ChemicalDamage:
        event.details["product"] = said;
        break;
    default:
        break;
    }
    return {};
}

QStringList pest_names()
{
    QStringList names;
    for (const auto& pest : plants::PestTable::built_in().pests()) {
        names.append(upper_first(text(words::table_text(pest.name))));
    }
    return names;
}

} // namespace lathhouse::models
