#pragma once

#include "app/models/data_work.h"
#include "app/models/household_door.h"
#include "app/models/kept_settings.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_check.h"
#include "core/journal/household_holdings.h"
#include "core/journal/last_backup.h"

#include <QTimer>
#include <QUrl>

#include <array>
#include <filesystem>
#include <optional>

namespace lathhouse::models {

/// The section Data and backup of Home: what the folder holds and where it lies, backups with the date of the last,
/// the check, restoring, tables for others, what leaves the folder, and whose figures the program shows.
///
/// What takes long goes on in a thread of its own and can be stopped; nothing half written is left.
class HomeDataModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Whether there is a folder; the demonstration in memory has none.
    Q_PROPERTY(bool keeps READ keeps CONSTANT)
    Q_PROPERTY(QString folder READ folder CONSTANT)
    Q_PROPERTY(QString folderWarning READ folderWarning NOTIFY dataChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* holdings READ holdings CONSTANT)
    Q_PROPERTY(QString lastBackup READ lastBackup NOTIFY backupChanged)
    /// Where the last backup is long ago or much was entered since, a quiet line; else empty.
    Q_PROPERTY(QString overdue READ overdue NOTIFY backupChanged)
    /// After how many days that is said; 0: never.
    Q_PROPERTY(int remindDays READ remindDays WRITE setRemindDays NOTIFY backupChanged)
    Q_PROPERTY(QString usualBackup READ usualBackup NOTIFY dataChanged)
    Q_PROPERTY(QString usualTables READ usualTables NOTIFY dataChanged)
    /// What goes on now: an Act, 0 where nothing does.
    Q_PROPERTY(int running READ running NOTIFY runningChanged)
    Q_PROPERTY(bool stopping READ stopping NOTIFY runningChanged)
    Q_PROPERTY(double share READ share NOTIFY progressChanged)
    Q_PROPERTY(QString progress READ progress NOTIFY progressChanged)
    /// The Act that `error` and `said` speak of.
    Q_PROPERTY(int about READ about NOTIFY aboutChanged)
    /// The Act that waits for a word on what leaves the folder; 0 where none does.
    Q_PROPERTY(int asking READ asking NOTIFY askingChanged)
    Q_PROPERTY(bool backupLeaves READ backupLeaves NOTIFY leavesChanged)
    Q_PROPERTY(bool tablesLeave READ tablesLeave NOTIFY leavesChanged)
    Q_PROPERTY(QString leavesWords READ leavesWords NOTIFY dataChanged)
    /// Whether the backup failed for a file of that name alone, so that replacing it helps.
    Q_PROPERTY(bool fileIsThere READ fileIsThere NOTIFY aboutChanged)
    /// The folder of the household that was brought back last, while what is said speaks of it; else empty.
    Q_PROPERTY(QString brought READ brought NOTIFY aboutChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* findings READ findings CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* credits READ credits CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* sources READ sources CONSTANT)

public:
    enum Act { Nothing, BackUp, Check, Restore, Tables, ReadTables };
    Q_ENUM(Act)

    /// folder: of the household; nullopt where it lies in memory.
    HomeDataModel(std::function<Result<plan::HouseholdFacts>()> load, std::optional<std::filesystem::path> folder,
                  TodayLook look, std::shared_ptr<KeptSettings> kept, QObject* parent = nullptr);
    ~HomeDataModel() override;

    bool keeps() const { return folder_.has_value(); }
    QString folder() const;
    QString folderWarning() const { return warning_; }
    SheetRows* holdings() { return &holdings_; }
    QString lastBackup() const;
    QString overdue() const;
    int remindDays() const;
    void setRemindDays(int days); ///< Ignored outside 0..3650.
    QString usualBackup() const;
    QString usualTables() const;
    int running() const { return running_; }
    bool stopping() const { return way_ && way_->stopped(); }
    double share() const { return way_ ? way_->share() : 0.0; }
    QString progress() const { return progress_; }
    int about() const { return about_; }
    int asking() const { return asking_; }
    bool backupLeaves() const { return kept_->is("leaves/backup"); }
    bool tablesLeave() const { return kept_->is("leaves/tables"); }
    QString leavesWords() const;
    bool fileIsThere() const { return file_is_there_; }
    QString brought() const { return brought_; }
    /// What opens another household's folder in a window of its own; without it that is not offered.
    void opens_with(std::function<bool(const QString& folder)> opener) { opener_ = std::move(opener); }
    SheetRows* findings() { return &findings_; }
    SheetRows* credits() { return &credits_; }
    SheetRows* sources() { return &sources_; }

    /// Reads what is shown, again where it was read before.
    Q_INVOKABLE void look();
    /// Writes a backup, or asks first where nothing was said yet about what leaves the folder (`answer`).
    Q_INVOKABLE void backUp(const QString& file, bool replace = false);
    Q_INVOKABLE void check();
    Q_INVOKABLE void restore(const QString& file, const QString& folder);
    Q_INVOKABLE void writeTables(const QString& folder);
    /// Makes a household in a new or an empty folder of tables that `writeTables` wrote; one open here stays as it is. Rows that
    /// name others that are not there end it, or are left out and told of.
    Q_INVOKABLE void readTables(const QString& from, const QString& folder, bool leave_out_broken = false);
    /// Opens what was brought back in a window of its own; this one stays.
    Q_INVOKABLE void openBrought();
    /// Whether what was asked about may leave the folder: kept, and what waited is done where it may.
    Q_INVOKABLE void answer(bool may);
    /// Changes what was answered; an Act, BackUp or Tables.
    Q_INVOKABLE void setLeaves(int act, bool may);
    /// Stops what goes on; what it had begun is cleared away.
    Q_INVOKABLE void stop();
    /// The path of a file's address, as dialogs give it.
    Q_INVOKABLE static QString pathOf(const QUrl& address) { return address.toLocalFile(); }
    /// A sentence where writing the file makes a folder for it as well; else empty.
    Q_INVOKABLE static QString willMake(const QString& file);

signals:
    void dataChanged();
    void backupChanged();
    void runningChanged();
    void progressChanged();
    void aboutChanged();
    void askingChanged();
    void leavesChanged();

protected:
    void read() override;

private:
    struct Facts;
    bool begin(Act act);
    void end();
    void tick();
    void fail_about(Act act, const Error& error);
    void say_about(Act act, QString words);
    void say_brought(Act act, QString words, const QString& folder);
    void say_stopped(Act act);
    void refuse(Act act, QString sentence);
    /// Whether that may leave the folder; else asks.
    bool may_leave(Act act, std::function<void()> go_on);
    template <class Value>
    void long_work(Act act, std::function<Result<Value>(const Progress&, LongWay&)> job,
                   std::function<void(const Value&)> done);
    QString key(const char* what) const;
    QString size(std::uint64_t bytes) const;
    QString photos(std::uint64_t count) const;

    std::function<Result<plan::HouseholdFacts>()> load_;
    std::optional<std::filesystem::path> folder_;
    TodayLook look_;
    std::shared_ptr<KeptSettings> kept_;
    std::shared_ptr<LongWay> way_;
    std::function<void()> waiting_;
    QTimer pulse_;
    QString warning_;
    QString household_;
    QString progress_;
    journal::Holdings held_;
    std::optional<journal::LastBackup> last_; ///< As the folder tells; nullopt where it does not.
    int running_ = Nothing;
    int about_ = Nothing;
    int asking_ = Nothing;
    bool file_is_there_ = false;
    QString brought_;
    std::function<bool(const QString& folder)> opener_;
    SheetRows holdings_;
    SheetRows findings_;
    SheetRows credits_;
    SheetRows sources_;
};

} // namespace lathhouse::models
