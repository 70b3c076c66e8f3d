#include "tests/window/demonstration_tasks.h"

#include "tests/window/demonstration_round.h"

#include <QQmlEngine>
#include <QTimer>

namespace lathhouse::testing {

namespace {

const calendar::Date kToday{2026, 5, 16};

const Result<plan::HouseholdFacts>& kept_facts()
{
    static const auto kFacts = models::demonstration_facts(kToday);
    return kFacts;
}

} // namespace

DemonstrationRound::DemonstrationRound(QObject* parent) : QObject(parent)
{
    renew();
}

void DemonstrationRound::renew(const QString& kind)
{
    const auto& facts = kept_facts();
    models::RoundSource source;
    models::HouseholdDoor door;
    models::PlantDoor plants;
    if (!facts || kind == QLatin1String("broken")) {
        error_ = facts ? QString{} : models::text(facts.error().message);
        const Error why = facts ? Error{ErrorCode::NotFound, "the folder is gone"} : facts.error();
        source = models::no_round(why);
        door = models::no_door(why);
        plants = models::no_plants(why);
    } else {
        auto of = *facts;
        if (kind == QLatin1String("empty")) {
            of.as_told.plants.clear();
            of.as_told.spots.clear();
            of.events.clear();
        } else if (kind == QLatin1String("cold")) {
            of = models::with_cold_night(std::move(of), kToday);
        } else if (kind == QLatin1String("harm") || kind == QLatin1String("photos")) {
            of = models::with_harm(std::move(of), kToday);
        } else if (kind == QLatin1String("seeds")) {
            of = models::with_seeds(std::move(of), kToday);
        }
        const auto household = std::make_shared<models::MemoryHousehold>(std::move(of));
        source = models::round_in_memory(household);
        door = models::door_to_memory(household);
        plants = models::plants_in_memory(household, models::demonstration_measurements(kToday),
                                          kind == QLatin1String("photos") ? models::demonstration_pictures(kToday)
                                                                          : std::vector<home::DemonstrationPhoto>{});
    }
    const models::TodayLook look{
        kToday, models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)), {}};
    auto before = std::move(model_); // Bindings leave them before they go.
    auto pages_before = std::move(pages_);
    model_ = std::make_unique<models::RoundModel>(std::move(source), models::RoundLook{look.today, look.words});
    pages_ = std::make_unique<Pages>(door, plants, look);
    for (QObject* page : {static_cast<QObject*>(model_.get()), static_cast<QObject*>(&pages_->tonight),
                          static_cast<QObject*>(&pages_->seeds), static_cast<QObject*>(&pages_->plants),
                          static_cast<QObject*>(&pages_->plant), static_cast<QObject*>(&pages_->home)}) {
        QQmlEngine::setObjectOwnership(page, QQmlEngine::CppOwnership);
    }
    emit roundChanged();
    if (before) {
        before.release()->deleteLater();
    }
    if (pages_before) {
        QTimer::singleShot(0, this, [gone = std::shared_ptr<Pages>(std::move(pages_before))]() mutable { gone.reset(); });
    }
}

bool DemonstrationRound::isDone(int row) const
{
    return model_->data(model_->index(row), models::RoundModel::DoneRole).toBool();
}

QString DemonstrationRound::taskOf(int row) const
{
    return model_->data(model_->index(row), models::RoundModel::TaskRole).toString();
}

} // namespace lathhouse::testing
