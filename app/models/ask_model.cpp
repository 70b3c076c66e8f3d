#include "app/models/ask_model.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

std::shared_ptr<const AskForm> form_of(int what, std::shared_ptr<const PlantsGround> ground, home::PlantId plant,
                                       const TodayLook& look, bool writes)
{
    if (ground->household.plant(plant) == nullptr) {
        return nullptr;
    }
    switch (what) {
    case AskModel::AfterCold:
        return cold_ask(std::move(ground), plant, look);
    case AskModel::Damage:
        return damage_ask(std::move(ground), plant, look);
    case AskModel::Spray:
        return spray_ask(std::move(ground), plant, look, writes);
    case AskModel::Course:
        return course_ask(std::move(ground), plant, look);
    case AskModel::Water:
        return water_ask(std::move(ground), plant, look);
    case AskModel::Harden:
        return harden_ask(std::move(ground), plant, look);
    default:
        return nullptr;
    }
}

QStringList places_in(const QString& value)
{
    return value.split(QLatin1Char(';'), Qt::SkipEmptyParts);
}

} // namespace

AskModel::AskModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants),
      questions_({"key", "kind", "label", "unit", "note", "example", "choices", "value", "chosen", "ticked", "trouble", "shown"}),
      lines_({"kind", "words", "date", "sentence"})
{
    // What was written elsewhere, or the day's plan once it is made, may give another answer.
    connect(&plants_, &PlantsModel::groundChanged, this, [this] {
        if (open()) {
            reload();
        }
    });
}

void AskModel::ask(int what)
{
    begin(what, plants_.opened(), true);
}

void AskModel::ask_spray(home::PlantId plant)
{
    plants_.start();
    begin(Spray, plant, false);
}

void AskModel::begin(int what, home::PlantId plant, bool writes)
{
    if (plant == 0 || what <= None || what > Harden) {
        return;
    }
    what_ = what;
    plant_ = plant;
    writes_ = writes;
    fresh_ = true;
    form_.reset();
    answer_ = {};
    if (!plants_.facts().ground) {
        answer_.headline = tr("The household is being read.");
    }
    questions_.show({});
    lines_.show({});
    emit openChanged();
    emit askedChanged();
    reload();
}

void AskModel::read()
{
    const auto ground = plants_.facts().ground;
    if (!open() || !ground) {
        return; // It is asked again once the ground is there.
    }
    const int number = ++asked_;
    work<std::shared_ptr<const AskForm>>(
        [ground, what = what_, plant = plant_, look = plants_.look(), writes = writes_]() -> Result<std::shared_ptr<const AskForm>> {
            return form_of(what, ground, plant, look, writes);
        },
        [this, number](Result<std::shared_ptr<const AskForm>> made) {
            if (number != asked_ || !open()) {
                return;
            }
            if (!*made) { // The plant is gone meanwhile.
                leave();
                return;
            }
            form_ = std::move(*made);
            if (fresh_) {
                values_ = form_->begin();
            }
            set_known();
            say_again();
        });
}

void AskModel::fill(int key, const QString& value)
{
    if (!form_ || values_[key] == value) {
        return;
    }
    fresh_ = false;
    values_[key] = value;
    form_->settle(values_, key);
    say_again();
}

void AskModel::toggle(int key, int choice)
{
    QStringList on = places_in(form_ ? values_[key] : QString{});
    const QString place = QString::number(choice);
    if (!on.removeOne(place)) {
        on.append(place);
    }
    fill(key, on.join(QLatin1Char(';')));
}

void AskModel::say_again()
{
    answer_ = form_->answer(values_);
    std::vector<SheetRows::Row> rows;
    for (const auto& question : form_->questions(values_)) {
        const QString value = values_[question.key];
        const QStringList places = places_in(value);
        QVariantList on;
        for (qsizetype choice = 0; choice < question.choices.size(); ++choice) {
            on.append(places.contains(QString::number(choice)));
        }
        rows.push_back({question.key, static_cast<int>(question.kind), question.label, question.unit, question.note, question.example,
                        question.choices, value, value.toInt(), on, question.key == answer_.wrong ? answer_.trouble : QString{},
                        question.shown});
    }
    questions_.show(std::move(rows));
    rows.clear();
    for (const auto& line : answer_.lines) {
        rows.push_back({static_cast<int>(line.kind), line.words, line.date,
                        line.date.isEmpty() ? line.words : tr("%1: %2").arg(line.date, line.words)});
    }
    lines_.show(std::move(rows));
    emit askedChanged();
}

void AskModel::write()
{
    if (answer_.wrong >= 0) {
        emit wrong(answer_.wrong);
        return;
    }
    if (canWrite()) {
        plants_.keep(answer_.entries, answer_.written);
        leave();
    }
}

void AskModel::leave()
{
    if (open()) {
        what_ = None;
        emit openChanged();
    }
}

} // namespace lathhouse::models
