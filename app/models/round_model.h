#pragma once

#include "app/models/dose_wish.h"
#include "app/models/round_fold.h"
#include "app/models/round_source.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "app/models/written_here.h"

#include <QAbstractListModel>
#include <QThreadPool>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <optional>

namespace lathhouse::models {

/// The page Round: today's tasks in an order in which pests do not travel, ticked, put off and taken back.
///
/// Nothing is read before `start`. Reading, working out and writing are done in one thread of its own; a tick
/// shows at once and is taken off again where it could not be written.
class RoundModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")

    Q_PROPERTY(int count READ count NOTIFY roundChanged)
    Q_PROPERTY(QString title READ title CONSTANT)
    Q_PROPERTY(QString headLine READ headLine NOTIFY roundChanged)
    Q_PROPERTY(QString doneLine READ doneLine NOTIFY roundChanged)
    Q_PROPERTY(QString minutesLine READ minutesLine NOTIFY roundChanged)
    Q_PROPERTY(double doneShare READ doneShare NOTIFY roundChanged)
    /// What to do where there is no task; empty where there is one, or where nothing is known yet.
    Q_PROPERTY(QString emptySentence READ emptySentence NOTIFY roundChanged)
    /// Whether a plant of the household is there.
    Q_PROPERTY(bool hasPlants READ hasPlants NOTIFY roundChanged)
    /// What limits this round: an invented household, no forecast. May be empty.
    Q_PROPERTY(QString note READ note NOTIFY roundChanged)
    Q_PROPERTY(bool working READ working NOTIFY workingChanged)
    /// What was done last, in words.
    Q_PROPERTY(QString said READ said NOTIFY saidChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY saidChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY saidChanged)
    /// Plants that must come in tonight and have not yet.
    Q_PROPERTY(int carriesLeft READ carriesLeft NOTIFY roundChanged)
    /// "Carry six plants in this evening"; empty where none is left.
    Q_PROPERTY(QString coldTitle READ coldTitle NOTIFY roundChanged)
    /// What is to be carried today and is not yet, in few words by the number of the plant.
    Q_PROPERTY(QVariantMap carriesDue READ carriesDue NOTIFY roundChanged)
    /// Which plants those are, in walking order: "Weeping fig, Basil and 3 more"; empty where none must come in.
    Q_PROPERTY(QString carryNames READ carryNames NOTIFY roundChanged)
    /// What went wrong, a whole sentence; empty where nothing did.
    Q_PROPERTY(QString error READ error NOTIFY errorChanged)
    /// How many seeds went into the tray, or seedlings into pots, is asked before that is ticked; empty where nothing is.
    Q_PROPERTY(QString seedsAsked READ seedsAsked NOTIFY seedsAskedChanged)
    /// Plants that are not fed for what happened to them: "plant", "spot", "why" (a sentence of its own), "sentence".
    Q_PROPERTY(lathhouse::models::SheetRows* waits READ waits CONSTANT)
    /// Why the current task can be neither put off nor left out now; empty where it can.
    Q_PROPERTY(QString cannotPutOff READ cannotPutOff NOTIFY actsChanged)
    Q_PROPERTY(QString cannotLeaveOut READ cannotLeaveOut NOTIFY actsChanged)
    Q_PROPERTY(int currentRow READ currentRow WRITE setCurrentRow NOTIFY currentRowChanged)

public:
    enum Role {
        OrderRole = Qt::UserRole + 1,
        ClassWordRole,   ///< "clean plants"
        ClassStateRole,  ///< 0 clean, 1 suspect, 2 infested.
        HeadingRole,     ///< Of the class, at its first task; else empty.
        HeadingNoteRole, ///< "9 tasks, last of all"
        SpotRole, SpotColourRole, ///< -1 without a spot.
        PlantRole, TaskRole, WhyRole,
        LatestRole, ///< "can wait until Sat 30 May", or empty.
        OverdueRole, ///< "was due Sat 30 May" where it cannot wait any more; else empty.
        PinnedRole,  ///< A carry to where the grower keeps the plant.
        DoneAtRole,  ///< "done 18:05", or empty.
        MinutesRole, CautionsRole, HygieneRole, DoneRole,
        FeedPpmRole, ///< Nitrogen of a feed; 0 where the task is none.
        TreatsRole,  ///< Something is sprayed or wiped against a pest.
        FoldedRole, ///< Beyond the sixth of its class, and not asked for yet.
        MoreRole, ///< "3 more: lamp shelf", at the last row that is shown of a class; else empty.
        SentenceRole ///< All of it, to be read aloud.
    };
    Q_ENUM(Role)

    RoundModel(RoundSource source, TodayLook look, QObject* parent = nullptr);
    ~RoundModel() override;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;
    int count() const { return rowCount(); }

    QString title() const;
    QString headLine() const;
    QString doneLine() const;
    QString minutesLine() const;
    double doneShare() const;
    QString emptySentence() const;
    bool hasPlants() const { return has_plants_; }
    QString note() const;
    bool working() const { return jobs_ > 0; }
    bool known() const { return known_; }
    QString said() const { return said_; }
    bool canUndo() const { return here_.can_undo(); }
    bool canRedo() const { return here_.can_redo(); }
    int carriesLeft() const;
    QString coldTitle() const;
    QVariantMap carriesDue() const;
    QString carryNames() const;
    QString error() const { return error_; }
    QString seedsAsked() const;
    QString cannotPutOff() const { return put_off_refusal(current_row_); }
    QString cannotLeaveOut() const { return skip_refusal(current_row_); }
    SheetRows* waits() { return &waits_; }
    int currentRow() const { return current_row_; }
    void setCurrentRow(int row);

    /// Reads the round, once; `reload` reads it again.
    Q_INVOKABLE void start();
    Q_INVOKABLE void reload();
    /// Marks a task as done. A done one is left as it is: `undo` takes back. What is sown becomes a tray and what is
    /// potted becomes plants, so that first their number is asked.
    Q_INVOKABLE void tick(int row);
    Q_INVOKABLE void unfold(int row); ///< Shows the rest of the row's class.
    /// So many seeds went into the tray, or seedlings into pots: tray or plants are made and the task ticked, as one.
    /// False where that is no number or the lot or the tray has not that many.
    Q_INVOKABLE bool sow(const QString& number);
    Q_INVOKABLE void leaveSowing(); ///< Nothing was sown or potted.
    Q_INVOKABLE void askDose(int row); ///< How much feed, or oil or soap, goes into the water for a task.
    Q_INVOKABLE void askSpray(int row); ///< Whether to spray the plant of a task that treats one.
    /// Puts a task off by 1 to 60 days; the model says why where it cannot be.
    Q_INVOKABLE void postpone(int row, int days);
    /// The same for so many days, or until a date after today however far, as either is typed.
    Q_INVOKABLE void postponeUntil(int row, const QString& typed);
    /// Leaves a task out this time; the reason goes into the journal and must not be blank.
    Q_INVOKABLE void skip(int row, const QString& reason);
    Q_INVOKABLE void tickWashing(); ///< Marks the next washing step as done that is not.
    Q_INVOKABLE int plantOf(int row) const { return is_row(row) ? at(row).task.plant.value_or(0) : 0; }
    /// Whether a plant must come in tonight: 0 it need not, 1 it must, 2 it is in.
    Q_INVOKABLE int carryOf(int plant) const;
    Q_INVOKABLE void tickCarry(int plant);
    Q_INVOKABLE void tickCarries(); ///< Ticks every plant that must come in tonight; one undo takes all of it back.
    /// Takes back what was done last in this window; `redo` does it again.
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    void forget(); ///< Leaves what was written to the undo of the whole window.
    void hush() { say({}); } ///< Takes the words on what was done last away, once something else was done elsewhere.

signals:
    void roundChanged();
    void workingChanged();
    void saidChanged();
    void errorChanged();
    void currentRowChanged();
    void seedsAskedChanged();
    void actsChanged();
    void feedDoseAsked(const lathhouse::models::DoseWish& wish);
    void sprayDoseAsked(const QString& plant);
    void sprayAsked(int plant);
    /// Something was written into the household, or taken out again.
    void written();

private:
    struct Round {
        std::vector<RoundRow> rows;
        std::vector<RoundRow> before; ///< As it was before anything was ticked; empty where that is known here.
        std::vector<WaitingPlant> waits;
        TickedTasks done; ///< Today, by the journal.
        home::SeedBook seeds;
        bool has_plants = false;
        bool has_forecast = false;
    };
    struct Written {
        std::vector<std::string> keys; ///< Of the tasks.
        QString words;
        bool ticks = false; ///< Else it was put off or left out.
        std::string turn = {}; ///< What it is taken back by, where that is not its keys.
        std::string turn_key() const { return turn.empty() ? joined_keys(keys) : turn; }
    };
    const RoundRow& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    std::vector<RoundRow>::const_iterator carry_row(int plant) const;
    bool is_row(int row) const { return row >= 0 && row < rowCount(); }
    QStringList caution_words(std::size_t row) const;
    QString plain_words(const RoundRow& row) const;
    QString sentence(const RoundRow& row) const;
    QString clock_of(calendar::Instant at) const; ///< "18:05", where the reader is.
    bool is_overdue(const RoundRow& row) const;   ///< It cannot wait any more.
    bool starts_class(std::size_t row) const;
    QString heading_note(plan::PestState state) const;
    std::optional<Round> read_if_last(int number, bool first, Result<void>& outcome) const;
    /// Does `write` in the thread, then reads the round again unless another job waits; `after` is told how
    /// the writing went before the new rows are shown.
    void run(std::function<Result<void>()> write, std::function<void(const Result<void>&)> after);
    void write(int row, home::Event event, QString said, bool ticks);
    void write(Written what, QString said, std::function<Result<void>()> record);
    void show(Round round);
    void say(QString words);
    QString put_off_refusal(int row) const; ///< Empty where it can be.
    QString skip_refusal(int row) const;
    bool pot(const RoundRow& row, int plants);
    void put_off(int row, calendar::Date until);
    void fail(const std::string& message);
    void fail(const Error& error); ///< In the reader's language.
    void fail_with(QString sentence);
    void clear_error();
    void mark(const std::vector<std::string>& keys, bool done);

    RoundSource source_;
    TodayLook look_;
    std::vector<RoundRow> rows_;
    TickedTasks done_;
    SheetRows waits_;
    RoundFold fold_;
    home::SeedBook seeds_;
    std::string sowing_; ///< Key of the task whose seeds are asked for.
    WrittenHere<Written> here_;
    QString said_;
    QString error_;
    bool started_ = false;
    bool known_ = false; ///< Whether a round was read.
    bool has_plants_ = false;
    bool has_forecast_ = false;
    int jobs_ = 0;
    int current_row_ = 0;
    std::atomic<int> last_job_ = 0;
    QThreadPool pool_;
};

} // namespace lathhouse::models
