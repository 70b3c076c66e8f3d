#include "tests/window/demonstration_window.h"

#include "app/models/household_year.h"
#include "app/models/year_door.h"
#include "tests/window/demonstration_round.h"
#include "tests/window/demonstration_year.h"

#include <QQmlEngine>

#include <algorithm>
#include <map>

namespace lathhouse::testing {

namespace {

/// What a page begins with, worked out once a place, and what it is worked out from.
struct Shown {
    plan::HouseholdFacts facts;
    models::HouseholdYear year;
};

const Result<Shown>& year_at(const QString& where)
{
    static std::map<QString, Result<Shown>> kept;
    const auto known = kept.find(where);
    if (known != kept.end()) {
        return known->second;
    }
    home::DemonstrationOptions options{.today = models::shown_today()};
    std::optional<Position> elsewhere;
    if (where == QLatin1String("south")) {
        options.hemisphere = home::Hemisphere::South;
    } else if (where == QLatin1String("equator")) {
        elsewhere = Position{Latitude::literal(1.3), Longitude::literal(103.9)};
    }
    return kept
        .emplace(where, models::facts_of_demonstration(options, elsewhere).transform([&where](plan::HouseholdFacts facts) {
            if (where == QLatin1String("bare")) {
                facts.as_told.plants.clear();
            }
            if (where == QLatin1String("seeds")) {
                facts = models::with_seeds(std::move(facts), models::shown_today());
            }
            return Shown{facts, models::household_year(facts, models::shown_today(), models::Units::Metric)};
        }))
        .first->second;
}

} // namespace

DemonstrationYear::DemonstrationYear(QObject* parent) : QObject(parent)
{
    renew();
}

void DemonstrationYear::setWhere(const QString& where)
{
    if (where != where_) {
        where_ = where;
        renew();
    }
}

void DemonstrationYear::renew()
{
    const auto& shown = year_at(where_);
    auto before = std::move(model_); // Bindings leave it before it goes.
    if (shown) {
        model_ = std::make_unique<models::YearModel>(
            shown->year.year, shown->year.solver,
            models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)), nullptr,
            models::year_in_memory(std::make_shared<models::MemoryHousehold>(shown->facts), models::shown_today(),
                                   models::Units::Metric));
        QQmlEngine::setObjectOwnership(model_.get(), QQmlEngine::CppOwnership);
        error_.clear();
    } else {
        error_ = models::text(shown.error().message);
    }
    emit yearChanged();
    if (before) {
        before.release()->deleteLater();
    }
}

int DemonstrationYear::goesOut(int row) const
{
    const auto& stays = model_->stays(model_->order().at(static_cast<std::size_t>(row)));
    const auto out = std::find_if(stays.begin(), stays.end(), [this](const models::YearStay& stay) {
        return model_->year().spots[stay.spot].outdoors;
    });
    return out == stays.end() ? -1 : out->first;
}

int DemonstrationYear::mayGoOut(int row) const
{
    for (const models::RiskDate& date : model_->dates(model_->order().at(static_cast<std::size_t>(row)))) {
        if (date.going_out) {
            return static_cast<int>(date.chosen);
        }
    }
    return -1;
}

} // namespace lathhouse::testing
