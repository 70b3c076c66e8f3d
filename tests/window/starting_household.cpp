#include "tests/window/starting_household.h"

#include "core/climate/station_table.h"
#include "core/journal/household_store.h"

#include <QQmlEngine>

namespace lathhouse::testing {

namespace {

std::filesystem::path folder_in(const QTemporaryDir& within)
{
    return std::filesystem::path{within.path().toStdString()} / "household";
}

models::PlaceDoor door_of_shipped_tables()
{
    return {[]() -> Result<const geodesy::TownTable*> {
                static const auto kTowns = geodesy::TownTable::find().and_then(
                    [](const std::filesystem::path& file) { return geodesy::TownTable::load(file); });
                return kTowns ? Result<const geodesy::TownTable*>{&*kTowns} : Result<const geodesy::TownTable*>{kTowns.error()};
            },
            [](Position position, std::optional<Metres> elevation) -> Result<climate::PlaceClimate> {
                static const auto kTable = climate::StationTable::find().and_then(
                    [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
                return kTable ? climate::climate_at(*kTable, position, elevation) : Result<climate::PlaceClimate>{kTable.error()};
            }};
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
        door_of_shipped_tables(), folder_in(*folder),
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
