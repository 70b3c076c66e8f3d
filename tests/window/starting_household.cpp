#include "tests/window/starting_household.h"

#include "core/journal/household_store.h"
#include "tests/models/shipped_door.h"

#include <QQmlEngine>

namespace lathhouse::testing {

namespace {

std::filesystem::path folder_in(const QTemporaryDir& within)
{
    return std::filesystem::path{within.path().toStdString()} / "household";
}

} // namespace

StartingHousehold::StartingHousehold(QObject* parent) : QObject(parent)
{
    renew();
}

void StartingHousehold::renew()
{
    auto before = std::move(model_); // Bindings leave it before it goes.
    auto folder = std::make_unique<QTemporaryDir>();
    // A reading that still goes on may hold a file of it when it goes; then it stays among the temporary files.
    folder->setAutoRemove(false);
    model_ = std::make_unique<models::FirstStartModel>(
        models::shipped_door(), folder_in(*folder),
        models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)),
        calendar::Date{2026, 3, 14});
    QQmlEngine::setObjectOwnership(model_.get(), QQmlEngine::CppOwnership);
    model_->start();
    emit startChanged();
    folder_ = std::move(folder);
    if (before) {
        before.release()->deleteLater();
    }
}

QString StartingHousehold::written() const
{
    const auto household = journal::HouseholdStore::open(folder_in(*folder_)).and_then([](const auto& store) {
        return store.load();
    });
    return household ? QStringLiteral("%1: %2 spots, %3 plants")
                           .arg(QString::fromStdString(household->name))
                           .arg(household->spots.size())
                           .arg(household->plants.size())
                     : QString{};
}

} // namespace lathhouse::testing
