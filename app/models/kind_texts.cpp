#include "app/models/kind_texts.h"

#include "app/models/apostrophes.h"
#include "app/models/word_form.h"
#include "app/words/kind_words.h"
#include "app/words/table_words.h"
#include "core/base/parse.h"

namespace lathhouse::models {

NightNeeds KindTexts::needs(const home::Plant& plant)
{
    const auto& lines = plant.lines;
    return {lines.lethal, lines.damage_begins, lines.safe_night, plant.heat_limit, {}};
}

QString KindTexts::nights(const home::Plant& plant, const QString& here, const YearWords& words)
{
    const auto& lines = plant.lines;
    return tr("Nights: lethal at %1, harm from %2, stress from %3 on, too hot from %4.%5")
        .arg(words.temperature(lines.lethal), words.temperature(lines.damage_begins), words.temperature(lines.safe_night),
             words.temperature(plant.heat_limit), here);
}

QString KindTexts::light(const home::Plant& plant, const YearWords& words)
{
    return tr("Light: %1 mol/m² a day is good, %2 keeps it alive.")
        .arg(words.decimal(plant.light_to_thrive.moles(), 1), words.decimal(plant.light_to_survive.moles(), 1));
}

std::vector<SheetRows::Row> KindTexts::hazards(const home::Plant& plant, const plants::PlantKind* kind)
{
    std::vector<SheetRows::Row> rows;
    const QString short_words = hazard_in_short(plant, kind);
    if (!short_words.isEmpty()) {
        const QString rest = kind != nullptr && !kind->hazards.empty()
                                 ? upper_first(text(words::table_text(kind->hazards))) + QLatin1Char('.')
                                 : QString{};
        rows.push_back({upper_first(short_words) + QLatin1Char('.'),
                        rest + tr(" Where it was eaten or hurts, ask a doctor or a vet."), true});
    } else if (kind != nullptr) {
        rows.push_back({tr("Not known to be poisonous,"), tr("which is no proof."), false});
    }
    if (plant.sulks) {
        rows.push_back({tr("Sheds leaves after any move,"), tr("whatever the temperature: move it seldom."), false});
    }
    if (plant.must_dry) {
        rows.push_back({tr("Wants to dry right out"), tr("between waterings."), false});
    }
    return rows;
}

QStringList KindTexts::sources(const plants::PlantKind* kind)
{
    if (kind == nullptr) {
        return {tr("A kind of your own: its figures are those that you gave.")};
    }
    QStringList notes{tr("Cold lines: %1 (%2 confidence).")
                          .arg(text(words::rests_on(kind->cold_evidence)), text(words::table_text(kind->confidence)))};
    QStringList titles;
    for (const auto key : split(kind->sources, ';')) {
        if (const auto* source = plants::PlantReference::built_in().source(trimmed(key))) {
            titles.append(text(words::source_line(*source)));
        }
    }
    if (!titles.isEmpty()) {
        notes.append(tr("Sources: %1.").arg(titles.join(QStringLiteral("; "))));
    }
    if (!kind->note.empty()) {
        notes.append(printed_apostrophes(text(words::table_text(kind->note))));
    }
    return notes;
}

} // namespace lathhouse::models
