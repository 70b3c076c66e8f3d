#include "app/models/home_record_model.h"

#include "app/models/typed_decimal.h"
#include "app/models/typed_path.h"
#include "app/models/typed_position.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "app/words/us_units.h"
#include "core/climate/record_check.h"
#include "core/journal/household_store.h"

namespace lathhouse::models {

namespace {

constexpr double kLowestPlace = -500.0;
constexpr double kHighestPlace = 9000.0;

/// What becomes of a file: the record, and what it would be in the household.
struct Taken {
    std::shared_ptr<const climate::OwnRecord> record;
    std::optional<QString> implausible;
};

struct RecordRead {
    RecordFacts facts;
    std::shared_ptr<const climate::OwnRecord> record;
    bool height_known = true;
};

RecordRead read_record(const home::Household& household, const ShippedClimate& shipped, const YearWords& words)
{
    return {record_facts(household, shipped, words), household.own_record, household.place.elevation.has_value()};
}

/// Names of date, low, high and rain as somebody typed them; nullopt where nothing is named.
Result<std::optional<climate::DayTableColumns>> columns_typed(const QString& typed)
{
    if (typed.trimmed().isEmpty()) {
        return std::optional<climate::DayTableColumns>{};
    }
    const auto pieces = typed.split(QLatin1Char(','));
    const auto name = [&](qsizetype place) { return place < pieces.size() ? pieces[place].trimmed().toStdString() : ""; };
    if (pieces.size() < 3 || pieces.size() > 4 || name(0).empty() || name(1).empty() || name(2).empty()) {
        return Error{ErrorCode::WrongUsage,
                     words::phrase("name the columns of date, low and high, and rain if there is one, with commas between: Day,Min,Max")};
    }
    climate::DayTableColumns columns{.date = name(0), .low = name(1), .high = name(2), .rain = {}};
    if (!name(3).empty()) {
        columns.rain = name(3);
    }
    return std::optional{columns};
}

} // namespace

RecordDoor record_in_folder(std::filesystem::path folder, ShippedClimate shipped)
{
    return {.load = [folder]() -> Result<home::Household> {
                const auto store = journal::HouseholdStore::open(folder);
                return store ? store->load() : Result<home::Household>{store.error()};
            },
            .keep = [folder](const climate::OwnRecord& record) -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->keep_own_record(record) : Result<void>{store.error()};
            },
            .remove = [folder]() -> Result<void> {
                auto store = journal::HouseholdStore::open(folder);
                return store ? store->remove_own_record() : Result<void>{store.error()};
            },
            .shipped = std::move(shipped),
            .keeps = true};
}

RecordDoor record_in_memory(std::function<Result<home::Household>()> load,
                            std::function<Result<void>(std::shared_ptr<const climate::OwnRecord>)> change,
                            ShippedClimate shipped)
{
    return {.load = std::move(load),
            .keep = [change](const climate::OwnRecord& record) {
                return change(std::make_shared<const climate::OwnRecord>(record));
            },
            .remove = [change] { return change(nullptr); },
            .shipped = std::move(shipped),
            .keeps = false};
}

HomeRecordModel::HomeRecordModel(RecordDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), figures_({"label", "value", "sentence"}),
      months_({"month", "low", "tableLow", "lowApart", "high", "tableHigh", "highApart", "sentence"})
{
}

void HomeRecordModel::read()
{
    work<RecordRead>(
        [door = door_, words = look_.words]() -> Result<RecordRead> {
            return door.load().transform(
                [&](const home::Household& household) { return read_record(household, door.shipped, words); });
        },
        [this](Result<RecordRead> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            record_ = std::move(made->record);
            height_known_ = made->height_known;
            facts_ = std::move(made->facts);
            figures_.show(facts_.figures);
            months_.show(facts_.months);
            set_known();
            emit recordChanged();
        });
}

QString HomeRecordModel::pathOfDropped(const QList<QUrl>& files)
{
    clear_error();
    say({});
    if (files.size() != 1) {
        fail_with(tr("A record is one file, and %1 were let go here. Nothing was taken in.").arg(files.size()));
        return {};
    }
    if (!files.front().isLocalFile()) {
        fail_with(tr("Only a file of this computer can be taken in. Save the record first. Nothing was taken in."));
        return {};
    }
    return pathOf(files.front());
}

void HomeRecordModel::take(const QString& file, int units, const QString& columns, const QString& station,
                           const QString& height, bool insist, const QString& position)
{
    clear_error();
    say({});
    if (std::exchange(can_insist_, false)) {
        emit insistChanged();
    }
    const QString path = whole_path(file);
    if (path.isEmpty()) {
        fail_with(tr("Say which file holds the record."));
        return;
    }
    auto named = columns_typed(columns);
    if (!named) {
        fail(named.error());
        return;
    }
    std::optional<Metres> elevation;
    if (!height.trimmed().isEmpty()) {
        const auto typed = typed_decimal(height);
        const double metres = typed ? *typed * (feet() ? words::kMetresInAFoot : 1.0) : 0.0;
        if (!typed || !(metres >= kLowestPlace && metres <= kHighestPlace)) {
            fail_with(tr("“%1” is no height of a place; write it as %2.")
                          .arg(height.trimmed(), feet() ? tr("460") : tr("140")));
            return;
        }
        elevation = Metres::from_metres(metres);
    }
    std::optional<Position> kept_at;
    if (!position.trimmed().isEmpty()) {
        const auto typed = typed_position(position);
        if (!typed) {
            fail_with(tr("“%1” is no position; write both coordinates, such as 48.2, 20.5.").arg(position.trimmed()));
            return;
        }
        kept_at = *typed;
    }
    climate::RecordFile asked{.file = path.toStdString(),
                              .station = {},
                              .columns = *named,
                              .units = units == 1 ? climate::TableUnits::Us : climate::TableUnits::Metric};
    if (!station.trimmed().isEmpty()) {
        asked.station = station.trimmed().toStdString();
    }
    work<Taken>(
        [door = door_, asked, elevation, kept_at, today = look_.today, words = look_.words]() -> Result<Taken> {
            auto household = door.load();
            if (!household) {
                return household.error();
            }
            const auto high = elevation ? elevation : household->place.elevation;
            if (!high) {
                return Error{ErrorCode::WrongUsage,
                             words::phrase("the height of the household's place is not known; say at which height the record was kept")};
            }
            auto days = climate::read_record_file(asked);
            if (!days) {
                return days.error();
            }
            if (!climate::summary_of(*days)) {
                return Error{ErrorCode::Malformed, words::phrase("%1 has no night's low in it", asked.file.string())};
            }
            const auto record = std::make_shared<const climate::OwnRecord>(
                climate::OwnRecord{.name = asked.file.stem().string(),
                                   .file = asked.file.filename().string(),
                                   .position = kept_at.value_or(household->place.position),
                                   .elevation = *high,
                                   .imported = today,
                                   .days = *std::move(days)});
            household->own_record = record;
            return Taken{record, record_facts(*household, door.shipped, words).implausible};
        },
        [this, insist, unnamed = !asked.columns](Result<Taken> taken) {
            if (!taken && unnamed && taken.error().message.find("--columns") != std::string::npos) { // Said for the command line.
                emit columnsAsked();
                fail_with(tr("The head line of the file has no columns date, low and high (rain may be missing). If it is a table of days that calls them otherwise, write its names below in the order date, low, high, rain, such as Day,Min,Max,Rain. Nothing was taken in."));
                return;
            }
            if (!taken) {
                fail(words::phrase("%1. Nothing was taken in", words::refusal(taken.error())));
                return;
            }
            if (taken->implausible && !insist) {
                can_insist_ = true;
                emit insistChanged();
                fail_with(tr("It is not plausible for this place: %1. Nothing was taken in.").arg(*taken->implausible));
                return;
            }
            change(taken->record, tr("Taken in: %1.").arg(text(taken->record->name)), Step::New);
        });
}

void HomeRecordModel::remove()
{
    if (record_) {
        change(nullptr, tr("Removed: %1. The shipped stations answer again.").arg(text(record_->name)), Step::New);
    }
}

void HomeRecordModel::undo()
{
    if (undo_) {
        const Kept to = *undo_;
        change(to, to ? tr("%1 is there again.").arg(text(to->name)) : tr("Taken out again; the shipped stations answer."),
               Step::Back);
    }
}

void HomeRecordModel::redo()
{
    if (redo_) {
        const Kept to = *redo_;
        change(to, to ? tr("%1 is there again.").arg(text(to->name)) : tr("Removed again; the shipped stations answer."),
               Step::Forth);
    }
}

void HomeRecordModel::change(Kept to, QString said, Step step)
{
    clear_error();
    work<bool>(
        [door = door_, to]() -> Result<bool> {
            const auto done = to ? door.keep(*to) : door.remove();
            return done ? Result<bool>{true} : Result<bool>{done.error()};
        },
        [this, said = std::move(said), step, before = record_](const Result<bool>& done) {
            if (!done) {
                fail(done.error());
                return;
            }
            if (step == Step::Back) {
                undo_.reset();
                redo_ = before;
            } else {
                undo_ = before;
                redo_.reset();
            }
            emit undoChanged();
            say(said);
            emit written();
            read();
        });
}

} // namespace lathhouse::models
