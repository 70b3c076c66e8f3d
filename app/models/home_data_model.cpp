#include "app/models/home_data_model.h"

#include "app/models/free_place.h"
#include "app/models/home_credits.h"
#include "core/journal/folder_kind.h"

#include <QCryptographicHash>
#include <QDate>

namespace lathhouse::models {

namespace fs = std::filesystem;

struct HomeDataModel::Facts {
    journal::Holdings held;
    std::optional<journal::LastBackup> last;
    std::string household;
    bool demonstration = false;
    std::optional<journal::FolderKind> kind;
    std::vector<SheetRows::Row> credits;
};

namespace {

constexpr int kUsualRemindDays = 30;
constexpr int kMostRemindDays = 3650;
constexpr std::uint64_t kManyEntries = 100; ///< Some weeks of an eager grower; our own.
constexpr int kPulse = 100; ///< Milliseconds between two looks at how far work has come.

} // namespace

HomeDataModel::HomeDataModel(std::function<Result<plan::HouseholdFacts>()> load, std::optional<fs::path> folder,
                             TodayLook look, std::shared_ptr<KeptSettings> kept, QObject* parent)
    : SheetModel(parent), load_(std::move(load)), folder_(std::move(folder)), look_(std::move(look)),
      kept_(std::move(kept)), holdings_({"label", "value", "sentence"}),
      findings_({"what", "where", "todo", "fault", "sentence"}), credits_({"what", "who", "sentence"}),
      sources_({"title", "who", "sentence"})
{
    pulse_.setInterval(kPulse);
    connect(&pulse_, &QTimer::timeout, this, &HomeDataModel::tick);
}

HomeDataModel::~HomeDataModel()
{
    if (way_) {
        way_->stop(); // The window goes; what was begun is cleared away before the thread ends.
    }
}

QString HomeDataModel::folder() const
{
    return folder_ ? text(folder_->string()) : QString{};
}

QString HomeDataModel::size(std::uint64_t bytes) const
{
    const auto megabytes = static_cast<double>(bytes) / 1e6;
    if (megabytes < 0.05) {
        return tr("under %1 MB").arg(look_.words.decimal(0.1, 1));
    }
    return megabytes < 1000.0 ? tr("%1 MB").arg(look_.words.decimal(megabytes, megabytes < 10.0 ? 1 : 0))
                              : tr("%1 GB").arg(look_.words.decimal(megabytes / 1000.0, 1));
}

QString HomeDataModel::photos(std::uint64_t count) const
{
    return count == 0 ? tr("no photograph")
           : count == 1 ? tr("one photograph")
                        : tr("%1 photographs").arg(look_.words.whole(static_cast<int>(count)));
}

QString HomeDataModel::key(const char* what) const
{
    const auto digest = QCryptographicHash::hash(folder().toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return QStringLiteral("backups/%1/%2").arg(QString::fromLatin1(digest), QString::fromLatin1(what));
}

QString HomeDataModel::lastBackup() const
{
    if (!folder_) {
        return {};
    }
    if (last_) {
        const QString day = look_.words.long_date_with_year(last_->on);
        const QString file = text(last_->file.string());
        return last_->entries_since == 0   ? tr("Last backup: %1, %2. Nothing was entered since.").arg(day, file)
               : last_->entries_since == 1 ? tr("Last backup: %1, %2. One thing was entered since.").arg(day, file)
                                           : tr("Last backup: %1, %2. %3 things were entered since.")
                                                 .arg(day, file, look_.words.whole(static_cast<int>(last_->entries_since)));
    }
    // Made by a version that left no word in the folder, or the folder cannot be written.
    const QDate on = QDate::fromString(kept_->value(key("on")).toString(), Qt::ISODate);
    if (!on.isValid()) {
        return tr("No backup was made from this window yet.");
    }
    const auto day = calendar::make_date(on.year(), on.month(), on.day());
    return tr("Last backup from this window: %1, %2.")
        .arg(day ? look_.words.long_date_with_year(*day) : on.toString(Qt::ISODate), kept_->value(key("file")).toString());
}

QString HomeDataModel::overdue() const
{
    if (!folder_ || remindDays() == 0) {
        return {};
    }
    const QDate on = last_ ? to_qdate(last_->on) : QDate::fromString(kept_->value(key("on")).toString(), Qt::ISODate);
    if (!on.isValid()) {
        // A household that was begun today has little to lose.
        return held_.events > 0 ? tr("No backup of this household was made from this window yet.") : QString{};
    }
    const auto days = on.daysTo(to_qdate(look_.today));
    if (days <= remindDays()) {
        return last_ && last_->entries_since >= kManyEntries
                   ? tr("%1 things were entered since the last backup.").arg(look_.words.whole(static_cast<int>(last_->entries_since)))
                   : QString{};
    }
    constexpr int kWeek = 7;
    constexpr int kWeeks = 10 * kWeek;
    return days < kWeeks ? tr("The last backup is %1 days old.").arg(days)
                         : tr("The last backup is %1 weeks old.").arg(days / kWeek);
}

int HomeDataModel::remindDays() const
{
    return kept_->number("backups/remind_days", 0, kMostRemindDays).value_or(kUsualRemindDays);
}

void HomeDataModel::setRemindDays(int days)
{
    if (days >= 0 && days <= kMostRemindDays && days != remindDays()) {
        kept_->keep("backups/remind_days", days);
        emit backupChanged();
    }
}

QString HomeDataModel::usualBackup() const
{
    return free_place(file_name(household_, QStringLiteral("household")) + QLatin1Char('-') + to_qdate(look_.today).toString(Qt::ISODate),
                      QStringLiteral(".zip"));
}

QString HomeDataModel::usualTables() const
{
    return free_place(tr("%1-tables").arg(file_name(household_, QStringLiteral("household"))) + QLatin1Char('-') +
                          to_qdate(look_.today).toString(Qt::ISODate),
                      {});
}

QString HomeDataModel::leavesWords() const
{
    const QString home = tr("It holds where your home is, as exactly as you gave it");
    return held_.photos == 0 ? home + QLatin1Char('.')
           : held_.placed_photos == 0
               ? tr("%1; none of the photographs says where it was taken.").arg(home)
               : tr("%1, and %2 in which the camera wrote where it was taken.").arg(home, photos(held_.placed_photos));
}

void HomeDataModel::read()
{
    work<Facts>(
        [load = load_, folder = folder_]() -> Result<Facts> {
            const auto household = load();
            if (!household) {
                return household.error();
            }
            Facts facts;
            facts.household = household->as_told.name;
            facts.demonstration = household->as_told.demonstration;
            if (folder) {
                const auto held = journal::holdings_of(*folder);
                if (!held) {
                    return held.error();
                }
                facts.held = *held;
                const auto last = journal::last_backup_of(*folder);
                if (!last) {
                    return last.error();
                }
                facts.last = *last;
                facts.kind = journal::folder_kind(*folder);
            } else {
                facts.held.spots = household->as_told.spots.size();
                facts.held.plants = household->as_told.plants.size();
                facts.held.events = household->events.size();
                facts.held.readings = household->log.readings.size();
            }
            facts.credits = credit_rows(household->climate);
            return facts;
        },
        [this](Result<Facts> made) {
            if (!made) {
                about_ = Nothing;
                emit aboutChanged();
                fail(made.error());
                return;
            }
            held_ = made->held;
            last_ = made->last;
            household_ = text(made->household);
            warning_.clear();
            if (made->kind == journal::FolderKind::Network) {
                warning_ = tr("The folder lies on a network drive. Have it open on one machine at a time, or keep it on "
                              "this machine’s own disk and copy it by backup.");
            } else if (made->kind == journal::FolderKind::UserSpace) {
                warning_ = tr("The folder lies on a drive that a program provides, perhaps a synced or a remote one. Keep "
                              "the household on this machine’s own disk and let backups be synced instead.");
            }
            std::vector<SheetRows::Row> rows;
            const auto add = [&](const QString& label, const QString& value) {
                rows.push_back({label, value, tr("%1: %2").arg(label, value)});
            };
            const auto number = [&](std::uint64_t count) { return look_.words.whole(static_cast<int>(count)); };
            add(tr("Plants"), number(held_.plants));
            add(tr("Spots"), number(held_.spots));
            add(tr("Events"), number(held_.events));
            if (folder_) {
                add(tr("Measurements"), number(held_.measurements));
            }
            add(tr("Nights logged"), number(held_.readings));
            if (folder_) {
                add(tr("Photographs"), held_.photos == 0 ? tr("none")
                                                         : tr("%1, %2").arg(number(held_.photos), size(held_.photo_bytes)));
                add(tr("The journal"), size(held_.database_bytes));
            }
            holdings_.show(std::move(rows));
            credits_.show(std::move(made->credits));
            if (sources_.rowCount() == 0) {
                sources_.show(source_rows());
            }
            set_known();
            emit dataChanged();
            emit backupChanged();
        });
}

void HomeDataModel::look()
{
    if (known()) {
        follow();
    } else {
        start();
    }
}

} // namespace lathhouse::models
