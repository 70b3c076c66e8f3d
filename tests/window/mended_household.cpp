#include "tests/window/mended_household.h"

#include "tests/window/demonstration_round.h"

#include <QQmlEngine>

namespace lathhouse::testing {

MendedHousehold::MendedHousehold(QObject* parent) : QObject(parent)
{
    renew();
}

void MendedHousehold::renew()
{
    const calendar::Date today{2026, 5, 16};
    auto before = std::move(model_); // Bindings leave it before it goes.
    household_ = std::make_shared<models::MemoryHousehold>(models::demonstration_facts(today).value());
    const auto no_climate = [](Position, std::optional<Metres>) -> Result<climate::PlaceClimate> {
        return Error{ErrorCode::Unavailable, "no climate here"};
    };
    const auto no_towns = []() -> Result<const geodesy::TownTable*> { return Error{ErrorCode::Unavailable, "no towns here"}; };
    model_ = std::make_unique<models::MendModel>(
        models::mend_in_memory(household_, {no_towns, no_climate}),
        models::TodayLook{today, models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom))});
    QQmlEngine::setObjectOwnership(model_.get(), QQmlEngine::CppOwnership);
    emit mendChanged();
    if (before) {
        before.release()->deleteLater();
    }
}

bool MendedHousehold::undo()
{
    return household_->take_back_last();
}

int MendedHousehold::plants() const
{
    return static_cast<int>(household_->facts().as_told.plants.size());
}

QString MendedHousehold::nameOfSpot(int spot) const
{
    const auto spots = household_->facts().as_told.spots;
    return spot >= 0 && spot < static_cast<int>(spots.size()) ? QString::fromStdString(spots[static_cast<std::size_t>(spot)].name) : QString{};
}

QString MendedHousehold::nameOfPlant(int id) const
{
    const auto facts = household_->facts();
    const auto* plant = facts.as_told.plant(id);
    return plant != nullptr ? QString::fromStdString(plant->name) : QString{};
}

} // namespace lathhouse::testing
