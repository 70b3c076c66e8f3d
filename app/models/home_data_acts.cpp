// What takes long in the section Data of Home: backup, check, restoring, tables; how far it has come, and stopping it.
#include "app/models/home_data_model.h"
#include "app/models/typed_path.h"
#include "app/words/finding_words.h"
#include "app/words/refusal.h"
#include "core/journal/household_csv.h"

#include <QDate>
#include <QFileInfo>

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

/// A path as a shell reads it: in single quotes where it has more than letters, digits and / . _ -
QString for_shell(QString path)
{
    const bool plain = std::ranges::all_of(path, [](QChar of) { return of.isLetterOrNumber() || QStringLiteral("/._-").contains(of); });
    return plain ? path : QLatin1Char('\'') + path.replace(QLatin1Char('\''), QLatin1String("'\\''")) + QLatin1Char('\'');
}

} // namespace

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
    } else if (running_ == Tables || running_ == ReadTables) {
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
    fail(error);
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
                if (!finding.what.text.empty()) {
                    where += tr(" (%1)").arg(text(words::refusal(finding.what)));
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
            words += tr(" What is open here is as it was. Open the other with: lathhouse --home %1").arg(for_shell(target));
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

void HomeDataModel::readTables(const QString& from, const QString& folder, bool leave_out_broken)
{
    if (running_ != Nothing) {
        return;
    }
    const QString source = whole_path(from);
    const QString target = whole_path(folder);
    if (source.isEmpty() || target.isEmpty()) {
        refuse(ReadTables, source.isEmpty() ? tr("Say which folder has the tables.")
                                            : tr("Say into which folder; it must be new or empty."));
        return;
    }
    long_work<journal::CsvRead>(
        ReadTables,
        [source, target, leave_out_broken](const Progress& progress, LongWay&) {
            return journal::import_csv(to_path(source), to_path(target),
                                       leave_out_broken ? journal::Broken::IsLeftOut : journal::Broken::EndsIt, progress);
        },
        [this, target](const journal::CsvRead& made) {
            QStringList sentences{tr("Made the household %1 of %2 tables with %3 rows and %4.")
                                      .arg(target)
                                      .arg(made.tables)
                                      .arg(look_.words.whole(static_cast<int>(made.rows)), photos(made.photos)),
                                  tr("What is open here is as it was. Open the other with: lathhouse --home %1").arg(for_shell(target))};
            const auto named = [](const std::vector<std::string>& names) {
                constexpr std::size_t kMostNamed = 5;
                QStringList said;
                for (std::size_t at = 0; at < std::min(names.size(), kMostNamed); ++at) {
                    said.append(text(names[at]));
                }
                return said.join(QStringLiteral(", ")) + (names.size() > kMostNamed ? QStringLiteral(" …") : QString{});
            };
            if (!made.broken.empty()) {
                sentences.append(tr("Left out, since they name rows that are not there: %1.").arg(named(made.broken)));
            }
            if (!made.missing_photos.empty()) {
                sentences.append(tr("Named by the journal and not there: %1. Put them beside the tables and read them again.")
                                     .arg(named(made.missing_photos)));
            }
            if (!made.unknown.empty()) {
                sentences.append(tr("Passed over, since no table is called so: %1.").arg(named(made.unknown)));
            }
            say_about(ReadTables, sentences.join(QLatin1Char(' ')));
        });
}

QString HomeDataModel::willMake(const QString& file)
{
    return will_make_words(file);
}

void HomeDataModel::stop()
{
    if (way_ && !way_->stopped()) {
        way_->stop();
        emit runningChanged();
    }
}

} // namespace lathhouse::models
