#include "app/models/home_data_model.h"
#include "app/models/typed_path.h"

#include "app/words/credits.h"
#include "app/words/finding_words.h"
#include "core/journal/folder_kind.h"
#include "core/journal/household_csv.h"
#include "core/plants/plant_kind.h"

#include <QCryptographicHash>
#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>
#include <cctype>

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

/// A name that every file system takes.
QString file_name(const QString& words)
{
    QString name;
    for (const QChar letter : words) {
        name += letter.isLetterOrNumber() ? letter.toLower() : QLatin1Char('-');
    }
    while (name.contains(QLatin1String("--"))) {
        name.replace(QLatin1String("--"), QLatin1String("-"));
    }
    while (name.endsWith(QLatin1Char('-'))) {
        name.chop(1);
    }
    return name.isEmpty() ? QStringLiteral("household") : name;
}

/// A name in the folder for documents that is not taken.
QString free_place(const QString& name, const QString& extension)
{
    QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    if (folder.isEmpty() || !QFileInfo(folder).isDir()) {
        folder = QDir::homePath();
    }
    const QString whole = folder + QLatin1Char('/') + name;
    QString free = whole + extension;
    for (int number = 2; QFileInfo::exists(free) && number < 1000; ++number) {
        free = whole + QLatin1Char('-') + QString::number(number) + extension;
    }
    return free;
}

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
               : last_->entries_since == 1 ? tr("Last backup: %1, %2. One entry since.").arg(day, file)
                                           : tr("Last backup: %1, %2. %3 entries since.")
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
                   ? tr("%1 entries since the last backup.").arg(look_.words.whole(static_cast<int>(last_->entries_since)))
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
    return free_place(file_name(household_) + QLatin1Char('-') + to_qdate(look_.today).toString(Qt::ISODate),
                      QStringLiteral(".zip"));
}

QString HomeDataModel::usualTables() const
{
    return free_place(tr("%1-tables").arg(file_name(household_)) + QLatin1Char('-') +
                          to_qdate(look_.today).toString(Qt::ISODate),
                      {});
}

QString HomeDataModel::leavesWords() const
{
    const QString home = tr("It holds where your home is, to the metre as you gave it");
    return held_.placed_photos == 0
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
            auto climate = words::credits(household->climate);
            if (const auto colon = climate.find(": "); colon != std::string::npos) {
                climate.erase(0, colon + 2);
            }
            if (!climate.empty()) {
                climate.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(climate.front())));
            }
            const auto credit = [&](const QString& what, const QString& who) {
                facts.credits.push_back({what, who, tr("%1: %2").arg(what, who)});
            };
            credit(tr("Nights, frost, warmth, rain"), text(climate) + QLatin1Char('.'));
            credit(tr("Coast lines of the map"), tr("Natural Earth, public domain."));
            credit(tr("Towns, search by name"), tr("GeoNames, geonames.org, CC BY 4.0; a selection of its towns."));
            credit(tr("What plants, seeds and pests need"),
                   tr("%1 publications, listed below; a figure without one is marked as common practice where it stands.")
                       .arg(plants::PlantReference::built_in().sources().size()));
            credit(tr("Sun, light, water, nights, dates"),
                   tr("Worked out by this program; formulas with their sources and measured errors come with it (docs/methods)."));
            return facts;
        },
        [this](Result<Facts> made) {
            if (!made) {
                about_ = Nothing;
                emit aboutChanged();
                fail(made.error().message);
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
                std::vector<SheetRows::Row> sources;
                for (const auto& source : plants::PlantReference::built_in().sources()) {
                    if (source.key == plants::kCommonPractice) {
                        continue;
                    }
                    const QString title = text(source.title);
                    const QString who =
                        source.year ? tr("%1, %2").arg(text(source.publisher)).arg(*source.year) : text(source.publisher);
                    sources.push_back({title, who, tr("%1: %2").arg(who, title)});
                }
                sources_.show(std::move(sources));
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

bool HomeDataModel::begin(Act act)
{
    if (running_ != Nothing) {
        return false;
    }
    clear_error();
    say({});
    file_is_there_ = false;
    about_ = act;
    emit aboutChanged();
    way_ = std::make_shared<LongWay>();
    running_ = act;
    tick();
    pulse_.start();
    emit runningChanged();
    return true;
}

void HomeDataModel::end()
{
    pulse_.stop();
    running_ = Nothing;
    way_.reset();
    emit runningChanged();
    emit progressChanged();
}

void HomeDataModel::tick()
{
    if (!way_) {
        return;
    }
    const auto whole = way_->whole();
    const auto done = way_->done();
    const auto count = [this](std::uint64_t number) { return look_.words.whole(static_cast<int>(number)); };
    const auto of_photos = [&](std::uint64_t bytes) {
        return tr("%1 of %2 photographs").arg(count(way_->photos_within(bytes)), count(way_->photos()));
    };
    const auto of_bytes = [&](std::uint64_t part, std::uint64_t all) { return tr("%1 of %2").arg(size(part), size(all)); };
    if (whole == 0) {
        progress_ = tr("Getting ready");
    } else if (running_ == BackUp) {
        // Writing and reading back are the two halves.
        const auto half = whole / 2;
        const bool back = done >= half;
        const auto bytes = back ? done - half : done;
        const QString how_far = way_->counts_photos() ? of_photos(bytes) : of_bytes(bytes, half);
        progress_ = back ? tr("%1 read back and compared").arg(how_far) : tr("%1 written").arg(how_far);
    } else if (running_ == Check) {
        progress_ = tr("%1 compared").arg(way_->counts_photos() ? of_photos(done) : of_bytes(done, whole));
    } else if (running_ == Tables) {
        progress_ = tr("%1 of %2 photographs copied").arg(count(done), count(whole));
    } else {
        progress_ = tr("%1 unpacked and compared").arg(of_bytes(done, whole));
    }
    emit progressChanged();
}

void HomeDataModel::fail_about(Act act, const Error& error)
{
    about_ = act;
    emit aboutChanged();
    fail(error.message);
}

void HomeDataModel::say_about(Act act, QString words)
{
    about_ = act;
    emit aboutChanged();
    say(std::move(words));
}

void HomeDataModel::say_stopped(Act act)
{
    say_about(act, act == Check ? tr("Stopped. Nothing was changed.")
                                : tr("Stopped. Nothing was written, and nothing half done is left."));
}

void HomeDataModel::refuse(Act act, QString sentence)
{
    file_is_there_ = false;
    about_ = act;
    emit aboutChanged();
    say({});
    fail_with(std::move(sentence));
}

template <class Value>
void HomeDataModel::long_work(Act act, std::function<Result<Value>(const Progress&, LongWay&)> job,
                              std::function<void(const Value&)> done)
{
    if (!begin(act)) {
        return;
    }
    work<Value>([way = way_, job = std::move(job)] { return job(LongWay::progress_of(way), *way); },
                [this, act, way = way_, done = std::move(done)](Result<Value> made) {
                    end();
                    if (made) {
                        done(*made);
                    } else if (way->stopped()) {
                        say_stopped(act);
                    } else {
                        fail_about(act, made.error());
                    }
                });
}

bool HomeDataModel::may_leave(Act act, std::function<void()> go_on)
{
    if (act == BackUp ? backupLeaves() : tablesLeave()) {
        return true;
    }
    waiting_ = std::move(go_on);
    asking_ = act;
    emit askingChanged();
    return false;
}

void HomeDataModel::answer(bool may)
{
    const auto act = static_cast<Act>(asking_);
    const auto go_on = std::exchange(waiting_, {});
    asking_ = Nothing;
    emit askingChanged();
    if (!may || !go_on) {
        say_about(act, tr("Nothing was written."));
        return;
    }
    setLeaves(act, true);
    go_on();
}

void HomeDataModel::setLeaves(int act, bool may)
{
    if (act == BackUp || act == Tables) {
        kept_->keep(act == BackUp ? "leaves/backup" : "leaves/tables",
                    may ? QStringLiteral("true") : QStringLiteral("false"));
        emit leavesChanged();
    }
}

void HomeDataModel::backUp(const QString& file, bool replace)
{
    if (running_ != Nothing) {
        return;
    }
    if (!folder_) {
        refuse(BackUp, tr("The demonstration lies in memory; there is nothing to back up."));
        return;
    }
    QString target = whole_path(file);
    if (target.isEmpty()) {
        refuse(BackUp, tr("Say which file the backup is to be."));
        return;
    }
    if (QFileInfo(target).suffix().isEmpty() && !QFileInfo(target).isDir()) {
        target += QStringLiteral(".zip");
    }
    if (!replace && QFileInfo(target).isFile()) {
        refuse(BackUp, tr("%1 is there already. Take another name, or replace it once the new one is whole.").arg(target));
        file_is_there_ = true;
        emit aboutChanged();
        return;
    }
    if (!may_leave(BackUp, [this, target, replace] { backUp(target, replace); })) {
        return;
    }
    long_work<journal::BackupMade>(
        BackUp,
        [folder = *folder_, target, replace, today = look_.today, bytes = held_.database_bytes](
            const Progress& progress, LongWay& way) {
            way.set_photo_ends(photo_ends(folder, bytes));
            return journal::back_up(folder, to_path(target),
                                    replace ? journal::Existing::Replaced : journal::Existing::Refused, today, progress);
        },
        [this, target](const journal::BackupMade& made) {
            kept_->keep(key("on"), to_qdate(look_.today).toString(Qt::ISODate));
            kept_->keep(key("file"), target);
            last_ = journal::LastBackup{look_.today, to_path(target), 0};
            QString words = tr("Wrote %1, %2: the journal and %3, read back and compared. Keep it where you would keep a key.")
                                .arg(target, size(made.archive_bytes), photos(made.files == 0 ? 0 : made.files - 1));
            if (!made.missing.empty()) {
                words += tr(" %1 that the journal names are not in the folder and so not in the backup; look through the folder for which.")
                             .arg(photos(made.missing.size()));
            }
            if (!made.left_out.empty()) {
                words += tr(" Left out, since no archive takes its name or it is a link: %1.").arg(text(made.left_out.front()));
            }
            say_about(BackUp, std::move(words));
            emit backupChanged();
            emit dataChanged();
        });
}

void HomeDataModel::check()
{
    if (running_ != Nothing) {
        return;
    }
    if (!folder_) {
        refuse(Check, tr("The demonstration lies in memory; there is no folder to look through."));
        return;
    }
    findings_.show({});
    long_work<journal::CheckReport>(
        Check,
        [folder = *folder_](const Progress& progress, LongWay& way) {
            way.set_photo_ends(photo_ends(folder, 0));
            return journal::check_household(folder, progress);
        },
        [this](const journal::CheckReport& report) {
            std::vector<SheetRows::Row> rows;
            for (const auto& finding : report.findings) {
                QString where = text(finding.where);
                if (!finding.what.empty()) {
                    where += tr(" (%1)").arg(text(finding.what));
                }
                QString todo = text(words::what_to_do(finding.kind)) + QLatin1Char('.');
                todo[0] = todo[0].toUpper();
                const QString what = text(words::what_it_is(finding.kind));
                rows.push_back({what, where, todo, journal::is_fault(finding.kind),
                                tr("%1: %2. %3").arg(what, where, todo)});
            }
            const auto faults = std::ranges::count_if(
                report.findings, [](const journal::Finding& finding) { return journal::is_fault(finding.kind); });
            findings_.show(std::move(rows));
            const QString looked = report.photos == 0 ? tr("no photograph to compare")
                                                      : tr("%1 compared with their digests").arg(photos(report.photos));
            say_about(Check, report.sound()
                                 ? tr("The household is sound: the journal and its references hold, %1.").arg(looked)
                             : faults == 1 ? tr("One thing is lost or wrong; nothing was changed. The journal was looked at, %1.").arg(looked)
                                           : tr("%1 things are lost or wrong; nothing was changed. The journal was looked at, %2.")
                                                 .arg(faults)
                                                 .arg(looked));
        });
}

void HomeDataModel::restore(const QString& file, const QString& folder)
{
    if (running_ != Nothing) {
        return;
    }
    const QString source = whole_path(file);
    const QString target = whole_path(folder);
    if (source.isEmpty() || target.isEmpty()) {
        refuse(Restore, source.isEmpty() ? tr("Say which backup is to be brought back.")
                                         : tr("Say into which folder; it must be new or empty."));
        return;
    }
    long_work<journal::Restored>(
        Restore,
        [source, target](const Progress& progress, LongWay&) {
            return journal::restore(to_path(source), to_path(target), progress);
        },
        [this, target](const journal::Restored& made) {
            const QDate on = QDate::fromString(text(made.bagged_on), Qt::ISODate);
            const auto day = on.isValid() ? calendar::make_date(on.year(), on.month(), on.day())
                                          : Result<calendar::Date>{Error{ErrorCode::NotFound, ""}};
            QString words =
                day ? tr("The household as it was on %1 is in %2: the journal and %3, each compared with the backup’s list.")
                          .arg(look_.words.date_with_year(*day), target, photos(made.files == 0 ? 0 : made.files - 1))
                    : tr("The household is in %1: the journal and %2, each compared with the backup’s list.")
                          .arg(target, photos(made.files == 0 ? 0 : made.files - 1));
            words += tr(" What is open here is as it was. Open the other with: lathhouse --home %1").arg(target);
            if (!made.left_out.empty()) {
                words += tr("  %1 of the backup belongs to no household and was left out.").arg(text(made.left_out.front()));
            }
            say_about(Restore, std::move(words));
        });
}

void HomeDataModel::writeTables(const QString& folder)
{
    if (running_ != Nothing) {
        return;
    }
    if (!folder_) {
        refuse(Tables, tr("The demonstration lies in memory; there is nothing to write out."));
        return;
    }
    const QString target = whole_path(folder);
    if (target.isEmpty()) {
        refuse(Tables, tr("Say into which folder; it must be new or empty."));
        return;
    }
    if (!may_leave(Tables, [this, target] { writeTables(target); })) {
        return;
    }
    long_work<journal::CsvWritten>(
        Tables,
        [source = *folder_, target](const Progress& progress, LongWay&) {
            return journal::export_csv(source, to_path(target), journal::Unreadable::EndsIt, progress);
        },
        [this, target](const journal::CsvWritten& made) {
            say_about(Tables, tr("Wrote %1 tables with %2 rows and %3 to %4. A leading apostrophe marks a text that a "
                                 "spreadsheet could take for a formula.")
                                  .arg(made.tables)
                                  .arg(look_.words.whole(static_cast<int>(made.rows)), photos(made.photos), target));
            emit dataChanged();
        });
}

void HomeDataModel::stop()
{
    if (way_ && !way_->stopped()) {
        way_->stop();
        emit runningChanged();
    }
}

} // namespace lathhouse::models
