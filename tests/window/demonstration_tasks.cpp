#include "tests/window/demonstration_tasks.h"

#include "core/journal/demonstration_folder.h"
#include "tests/climate/sample_table.h"
#include "tests/window/demonstration_round.h"

#include <QFile>
#include <QFileInfo>
#include <QQmlEngine>
#include <QTimer>

#include <fstream>

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
    models::RecordDoor record{};
    models::PeopleDoor people{};
    if (!facts || kind == QLatin1String("broken")) {
        error_ = facts ? QString{} : models::text(facts.error().message);
        const Error why = facts ? Error{ErrorCode::NotFound, "the folder is gone"} : facts.error();
        source = models::no_round(why);
        door = models::no_door(why);
        plants = models::no_plants(why);
        people.load = door.load;
        record.load = [why]() -> Result<home::Household> { return why; };
    } else {
        auto of = *facts;
        if (kind == QLatin1String("empty")) {
            of.as_told.plants.clear();
            of.as_told.spots.clear();
            of.events = {};
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
        if (kind == QLatin1String("undated")) { // Two photos that do not say when they were taken wait to come in.
            plants.photos.undated = [](const auto&, const auto&) { return Result<std::size_t>{2}; };
            plants.photos.import = [](const auto&, home::PlantId, const auto& taken, auto&&...) -> Result<journal::ImportReport> {
                return Error{ErrorCode::Unavailable, "would be taken in by " + (taken ? photo::to_text(*taken) : std::string{"their files"})};
            };
        }
        people = models::people_in_memory(household);
        record = models::record_in_memory(
            [household]() -> Result<home::Household> { return household->facts().as_told; },
            [household](std::shared_ptr<const climate::OwnRecord> own) {
                return household->change("record", [&](plan::HouseholdFacts& changed) -> Result<void> {
                    changed.as_told.own_record = own;
                    return {};
                });
            },
            models::shipped_climate_at);
    }
    std::optional<std::filesystem::path> folder;
    auto folder_before = std::exchange(folder_, std::make_unique<QTemporaryDir>());
    if (kind.startsWith(QLatin1String("folder"))) {
        folder = std::filesystem::path{folder_->path().toStdString()} / "home";
        if (const auto made = journal::create_demonstration(*folder, {.today = kToday}, kind == QLatin1String("folder photos") ? 3 : 0);
            !made) {
            error_ = models::text(made.error().message);
        }
        plants.photos = models::photos_in_folder(*folder);
    }
    const models::ShownUnits units;
    const auto kept = std::make_shared<models::KeptSettings>(folder_->filePath(QStringLiteral("window.ini")));
    const models::TodayLook look{
        kToday, models::YearWords(units, QLocale(QLocale::English, QLocale::UnitedKingdom)), {}};
    auto before = std::move(model_); // Bindings leave them before they go.
    auto pages_before = std::move(pages_);
    model_ = std::make_unique<models::RoundModel>(std::move(source), models::TodayLook{look.today, look.words});
    pages_ = std::make_unique<Pages>(door, plants, look, units, folder, kept, std::move(record),
                                     std::move(people));
    pages_->keeping.opens_with([this](const QString& asked) {
        opened_ = asked;
        return true;
    });
    QObject::connect(model_.get(), &models::RoundModel::feedDoseAsked, &pages_->dose, &models::DoseModel::ask);
    QObject::connect(model_.get(), &models::RoundModel::sprayDoseAsked, &pages_->dose, &models::DoseModel::ask_spray);
    QObject::connect(model_.get(), &models::RoundModel::sprayAsked, &pages_->ask, &models::AskModel::ask_spray);
    for (QObject* page : {static_cast<QObject*>(model_.get()), static_cast<QObject*>(&pages_->ask), static_cast<QObject*>(&pages_->dose), static_cast<QObject*>(&pages_->tonight),
                          static_cast<QObject*>(&pages_->seeds), static_cast<QObject*>(&pages_->plants),
                          static_cast<QObject*>(&pages_->plant), static_cast<QObject*>(&pages_->home),
                          static_cast<QObject*>(&pages_->keeping), static_cast<QObject*>(&pages_->record),
                          static_cast<QObject*>(&pages_->people), static_cast<QObject*>(&pages_->leaving), static_cast<QObject*>(&pages_->journal),
                          static_cast<QObject*>(&pages_->aside),
                          static_cast<QObject*>(&pages_->calendar),
                          static_cast<QObject*>(&pages_->settings)}) {
        QQmlEngine::setObjectOwnership(page, QQmlEngine::CppOwnership);
    }
    emit roundChanged();
    if (before) {
        before.release()->deleteLater();
    }
    if (pages_before) {
        QTimer::singleShot(0, this,
                           [gone = std::shared_ptr<Pages>(std::move(pages_before)),
                            left = std::shared_ptr<QTemporaryDir>(std::move(folder_before))]() mutable { gone.reset(); });
    }
}

bool DemonstrationRound::isDone(int row) const
{
    return model_->data(model_->index(row), models::RoundModel::DoneRole).toBool();
}

bool DemonstrationRound::exists(const QString& name) const
{
    return folder_ && QFileInfo::exists(folder_->filePath(name));
}

QString DemonstrationRound::contents(const QString& name) const
{
    QFile file(folder_ ? folder_->filePath(name) : QString{});
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

models::CalendarDoor DemonstrationRound::calendar_door()
{
    return [](const std::filesystem::path& file, words::UnitSystem, int days, std::optional<int> alarm) -> Result<std::size_t> {
        std::ofstream{file} << days << " days, alarm " << alarm.value_or(-1);
        return static_cast<std::size_t>(days);
    };
}

QString DemonstrationRound::writeRecord(const QString& name, bool fahrenheit) const
{
    const QString path = folder_->filePath(name);
    std::ofstream{path.toStdString()} << climate::sample_table(2005, 2019, fahrenheit);
    return path;
}

QString DemonstrationRound::taskOf(int row) const
{
    return model_->data(model_->index(row), models::RoundModel::TaskRole).toString();
}

} // namespace lathhouse::testing
