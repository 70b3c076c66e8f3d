#include "tests/window/demonstration_tasks.h"

#include "tests/window/demonstration_round.h"

#include <QQmlEngine>

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
    if (!facts || kind == QLatin1String("broken")) {
        error_ = facts ? QString{} : models::text(facts.error().message);
        source = models::no_round(facts ? Error{ErrorCode::NotFound, "the folder is gone"} : facts.error());
    } else {
        auto of = *facts;
        if (kind == QLatin1String("empty")) {
            of.as_told.plants.clear();
            of.events.clear();
        }
        source = models::round_in_memory(std::move(of));
    }
    auto before = std::move(model_); // Bindings leave it before it goes.
    model_ = std::make_unique<models::RoundModel>(
        std::move(source),
        models::RoundLook{kToday, models::YearWords(models::Units::Metric,
                                                    QLocale(QLocale::English, QLocale::UnitedKingdom))});
    QQmlEngine::setObjectOwnership(model_.get(), QQmlEngine::CppOwnership);
    emit roundChanged();
    if (before) {
        before.release()->deleteLater();
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
