#include "app/models/ask_form.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/source_words.h"
#include "app/words/table_words.h"

#include <cstdlib>
#include <utility>

namespace lathhouse::models {

PlantAskForm::PlantAskForm(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
    : ground_(std::move(ground)), plant_(*ground_->household.plant(plant)), kind_(kind_of(plant_)), look_(look),
      units_(unit_system_of(look.words))
{
}

QString PlantAskForm::date(calendar::Date date) const
{
    constexpr int kNear = 300; // Days.
    return std::abs(calendar::days_between(date, look_.today)) < kNear ? look_.words.short_date(date)
                                                                       : look_.words.date_with_year(date);
}

QString PlantAskForm::of(const AskValues& values, int key)
{
    const auto there = values.find(key);
    return there == values.end() ? QString{} : there->second.trimmed();
}

std::optional<bool> PlantAskForm::yes_no(const AskValues& values, int key)
{
    const QString value = of(values, key);
    return value == QLatin1String("1") ? std::optional{true} : value == QLatin1String("2") ? std::optional{false} : std::nullopt;
}

QString PlantAskForm::yes_no_value(std::optional<bool> known)
{
    return known ? QLatin1String(*known ? "1" : "2") : QLatin1String("0");
}

QStringList PlantAskForm::yes_no_choices()
{
    return {models::tr("not known"), models::tr("yes"), models::tr("no")};
}

AskAnswer PlantAskForm::refused(int wrong, const QString& trouble)
{
    return {.headline = models::tr("The answer stands here once what is marked is right."), .wrong = wrong, .trouble = trouble};
}

AskAnswer PlantAskForm::not_yet()
{
    return {.headline = models::tr("The day's plan is being worked out.")};
}

void PlantAskForm::add(AskAnswer& answer, AskLine::Kind kind, const std::string& words)
{
    if (!words.empty()) {
        answer.lines.push_back({kind, text(words)});
    }
}

void PlantAskForm::add_step(AskAnswer& answer, calendar::Date on, const std::string& words) const
{
    answer.lines.push_back({on < look_.today ? AskLine::Past : AskLine::Dated, upper_first(text(words)), date(on)});
}

void PlantAskForm::add_kind_cautions(AskAnswer& answer, const plants::PlantKind* kind)
{
    if (kind == nullptr) {
        return;
    }
    for (const auto* caution : plan::cautions_for_plant(*kind)) {
        add(answer, AskLine::Caution, words::table_text(caution->text));
    }
}

void PlantAskForm::add_cautions(AskAnswer& answer, std::initializer_list<plan::CautionTopic> topics)
{
    for (const auto topic : topics) {
        for (const auto* caution : plan::cautions_for(topic)) {
            add(answer, AskLine::Caution, words::table_text(caution->text));
        }
    }
}

void PlantAskForm::add_sources(AskAnswer& answer, const std::vector<std::string>& keys)
{
    const QString line = text(words::sources_line(keys)).trimmed();
    if (!line.isEmpty()) {
        answer.lines.push_back({AskLine::Quiet, line});
    }
}

} // namespace lathhouse::models
