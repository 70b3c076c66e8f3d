#include "app/models/round_model.h"

#include "app/models/behind_window.h"
#include "app/models/word_form.h"
#include "app/words/refusal.h"
#include "app/words/round_words.h"
#include "core/plan/cold_night.h"

#include <QDateTime>
#include <QMetaObject>

#include <QRegularExpression>

#include <algorithm>
#include <numeric>
#include <utility>

namespace lathhouse::models {

RoundModel::RoundModel(RoundSource source, TodayLook look, QObject* parent)
    : QAbstractListModel(parent), source_(std::move(source)), look_(std::move(look)),
      waits_({"plant", "spot", "why", "sentence"})
{
    connect(this, &RoundModel::roundChanged, this, &RoundModel::actsChanged);
    connect(this, &RoundModel::currentRowChanged, this, &RoundModel::actsChanged);
    pool_.setMaxThreadCount(1); // In the order in which they were asked for.
}

RoundModel::~RoundModel()
{
    // What was ticked is written before the window goes; only the reading after it is left out.
    ++last_job_;
    pool_.waitForDone();
}

int RoundModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant RoundModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const RoundRow& row = at(index.row());
    switch (role) {
    case OrderRole:
        return index.row() + 1;
    case ClassWordRole:
        return text(words::round_class(row.task.state));
    case ClassStateRole:
        return static_cast<int>(row.task.state);
    case HeadingRole:
        return starts_class(static_cast<std::size_t>(index.row()))
                   ? upper_first(text(words::round_class(row.task.state)))
                   : QString{};
    case HeadingNoteRole:
        return starts_class(static_cast<std::size_t>(index.row())) ? heading_note(row.task.state) : QString{};
    case SpotRole:
        return text(row.spot);
    case SpotColourRole: {
        const auto hand = look_.hands.find(row.spot);
        return hand == look_.hands.end() ? -1 : hand->second;
    }
    case PlantRole:
        return text(row.plant);
    case Qt::DisplayRole:
    case TaskRole:
        return upper_first(text(row.words));
    case WhyRole:
        return text(row.why);
    case LatestRole:
        return row.task.latest > look_.today
                   ? tr("can wait until %1").arg(unbroken(look_.words.short_date(row.task.latest)))
                   : QString{};
    case OverdueRole:
        return is_overdue(row) ? tr("was due %1").arg(unbroken(look_.words.short_date(row.task.due))) : QString{};
    case PinnedRole:
        return row.pinned;
    case DoneAtRole:
        return row.done_at ? tr("done %1").arg(clock_of(*row.done_at)) : QString{};
    case MinutesRole:
        return row.task.minutes;
    case CautionsRole:
        return caution_words(static_cast<std::size_t>(index.row()));
    case HygieneRole:
        return row.is_hygiene();
    case DoneRole:
        return row.done;
    case FeedPpmRole:
        return row.feed_ppm();
    case TreatsRole:
        return row.is_treating();
    case FoldedRole:
        return fold_.hides(static_cast<std::size_t>(index.row()));
    case MoreRole:
        return fold_.more(rows_, static_cast<std::size_t>(index.row()));
    case SentenceRole:
        return sentence(row);
    default:
        return {};
    }
}

QHash<int, QByteArray> RoundModel::roleNames() const
{
    return {{OrderRole, "order"},
            {ClassWordRole, "classWord"},
            {ClassStateRole, "classState"},
            {HeadingRole, "heading"},
            {HeadingNoteRole, "headingNote"},
            {SpotRole, "spot"},
            {SpotColourRole, "spotColour"},
            {PlantRole, "plant"},
            {TaskRole, "task"},
            {WhyRole, "why"},
            {LatestRole, "latest"},
            {OverdueRole, "overdue"},
            {PinnedRole, "pinned"},
            {DoneAtRole, "doneAt"},
            {MinutesRole, "minutes"},
            {CautionsRole, "cautions"},
            {HygieneRole, "isHygiene"},
            {DoneRole, "done"},
            {FeedPpmRole, "feedPpm"},
            {TreatsRole, "treats"},
            {FoldedRole, "folded"},
            {MoreRole, "more"},
            {SentenceRole, "sentence"}};
}

/// In full; at a feed with the same cautions as a task above it their first words in one line and where the rest stands, so that
/// five feeds do not say the same on three screens.
QStringList RoundModel::caution_words(std::size_t row) const
{
    QStringList all;
    for (const auto& caution : rows_[row].cautions) {
        all.append(text(caution));
    }
    const auto above = std::ranges::find(rows_, rows_[row].cautions, &RoundRow::cautions); // It finds its own row at the latest.
    if (all.isEmpty() || rows_[row].feed_ppm() <= 0.0 || static_cast<std::size_t>(above - rows_.begin()) == row) {
        return all;
    }
    for (auto& caution : all) {
        static const QRegularExpression kEnd(QStringLiteral("[.,:;](\\s|$)"));
        caution = caution.left(caution.indexOf(kEnd));
    }
    const QString where = above->plant.empty() ? upper_first(text(above->words)) : text(above->plant);
    return {tr("%1. In full above, at %2.").arg(all.join(QStringLiteral(" · ")), where)};
}

QString RoundModel::clock_of(calendar::Instant at) const
{
    const QTime time = QDateTime::fromSecsSinceEpoch(at.time_since_epoch().count()).time();
    return look_.words.clock(time.hour() * 60 + time.minute());
}

bool RoundModel::is_overdue(const RoundRow& row) const
{
    return !row.done && row.task.latest < look_.today && row.task.due < look_.today;
}

/// "Lemon: Feed, 100 ppm nitrogen".
QString RoundModel::plain_words(const RoundRow& row) const
{
    const QString task = upper_first(text(row.words));
    return row.plant.empty() ? task : tr("%1: %2").arg(text(row.plant), task);
}

QString RoundModel::sentence(const RoundRow& row) const
{
    QStringList parts{plain_words(row)};
    if (!row.spot.empty()) {
        parts.append(text(row.spot));
    }
    parts.append(upper_first(text(row.why)));
    if (row.task.latest > look_.today) {
        parts.append(tr("Can wait until %1").arg(look_.words.short_date(row.task.latest)));
    }
    if (is_overdue(row)) {
        parts.append(upper_first(tr("was due %1").arg(look_.words.short_date(row.task.due))));
    }
    if (row.pinned) {
        parts.append(tr("Pinned"));
    }
    parts.append(row.task.minutes == 1 ? tr("About 1 minute") : tr("About %1 minutes").arg(row.task.minutes));
    parts.append(row.done_at ? upper_first(tr("done %1").arg(clock_of(*row.done_at))) : row.done ? tr("Done") : tr("Not done"));
    QString all = parts.join(QStringLiteral(". ")) + QLatin1Char('.');
    for (const auto& caution : row.cautions) {
        all += QLatin1Char(' ') + text(caution);
    }
    return closed(all);
}

bool RoundModel::starts_class(std::size_t row) const
{
    if (rows_[row].is_hygiene()) {
        return false;
    }
    const auto first = std::ranges::find_if(rows_, [&](const RoundRow& other) {
        return !other.is_hygiene() && other.task.state == rows_[row].task.state;
    });
    return static_cast<std::size_t>(first - rows_.begin()) == row;
}

QString RoundModel::heading_note(plan::PestState state) const
{
    const auto tasks = std::ranges::count_if(
        rows_, [state](const RoundRow& row) { return !row.is_hygiene() && row.task.state == state; });
    const QString number = tasks == 1 ? tr("1 task") : tr("%1 tasks").arg(tasks);
    return state == plan::PestState::Infested ? tr("%1, last of all").arg(number)
                                              : tr("%1, in walking order").arg(number);
}

QString RoundModel::title() const
{
    return tr("%1’s round").arg(look_.words.weekday(look_.today));
}

QString RoundModel::headLine() const
{
    const QString date = look_.words.long_date(look_.today);
    if (!known_) {
        return date;
    }
    if (rows_.empty()) {
        return tr("%1, nothing is due.").arg(date);
    }
    const int minutes = std::accumulate(rows_.begin(), rows_.end(), 0,
                                        [](int sum, const RoundRow& row) { return sum + row.task.minutes; });
    const QString tasks = rows_.size() == 1 ? tr("1 task") : tr("%1 tasks").arg(rows_.size());
    const bool several = rows_.front().task.state != rows_.back().task.state;
    return tr("%1, %2, about %3 minutes.").arg(date, tasks).arg(minutes) +
           (several ? tr(" Clean plants first, infested ones last.") : QString{});
}

QString RoundModel::doneLine() const
{
    return tr("%1 of %2 done").arg(std::ranges::count(rows_, true, &RoundRow::done)).arg(rows_.size());
}

QString RoundModel::minutesLine() const
{
    const int left = std::accumulate(rows_.begin(), rows_.end(), 0, [](int sum, const RoundRow& row) {
        return row.done ? sum : sum + row.task.minutes;
    });
    return tr("%1 min left").arg(left);
}

double RoundModel::doneShare() const
{
    return rows_.empty() ? 0.0
                         : static_cast<double>(std::ranges::count(rows_, true, &RoundRow::done)) /
                               static_cast<double>(rows_.size());
}

QString RoundModel::emptySentence() const
{
    if (!known_ || !rows_.empty()) {
        return {};
    }
    return has_plants_
               ? tr("Nothing is due today. The year (key 2) shows what comes next; what was fed, watered or "
                    "found since is logged under Plants (key 3).")
               : tr("No plant stands here yet. Each will have its tasks here in an order in which pests do "
                    "not travel. Add the first under Plants.");
}

QString RoundModel::note() const
{
    if (!known_) {
        return {};
    }
    QStringList sentences;
    if (!source_.keeps) {
        sentences.append(
            tr("This household is invented: what is ticked stays in this window and is gone when it "
               "closes. A household of your own keeps it; the first start makes one when the window is opened anew."));
    }
    if (!has_forecast_ && has_plants_) {
        sentences.append(
            tr("No forecast is kept, so tonight is not in the round."));
    }
    return sentences.join(QLatin1Char(' '));
}

void RoundModel::setCurrentRow(int row)
{
    row = std::clamp(row, 0, std::max(0, rowCount() - 1));
    if (row != current_row_) {
        current_row_ = row;
        if (is_row(row) && fold_.hides(static_cast<std::size_t>(row))) {
            unfold(row); // Keys walk into what is folded away.
        }
        emit currentRowChanged();
    }
}

void RoundModel::start()
{
    if (!started_) {
        reload();
    }
}

void RoundModel::reload()
{
    started_ = true;
    clear_error();
    run({}, {});
}

void RoundModel::run(std::function<Result<void>()> write, std::function<void(const Result<void>&)> after)
{
    const int number = ++last_job_;
    if (++jobs_ == 1) {
        emit workingChanged();
    }
    pool_.start([this, number, first = !known_, write = std::move(write), after = std::move(after)] {
        stay_behind_window();
        const Result<void> written = write ? write() : Result<void>{};
        Result<void> read;
        std::optional<Round> round = read_if_last(number, first, read);
        QMetaObject::invokeMethod(
            this,
            [this, written, read, round = std::move(round), after]() mutable {
                if (after) {
                    after(written);
                    if (written) {
                        emit this->written();
                    }
                }
                if (!read) {
                    fail(read.error());
                }
                if (round) {
                    show(std::move(*round));
                }
                if (--jobs_ == 0) {
                    emit workingChanged();
                }
            },
            Qt::QueuedConnection);
    });
}

std::optional<RoundModel::Round> RoundModel::read_if_last(int number, bool first, Result<void>& outcome) const
{
    if (number != last_job_) {
        return std::nullopt;
    }
    const auto facts = source_.load();
    if (!facts) {
        outcome = facts.error();
        return std::nullopt;
    }
    const auto nights = facts->climate.nights();
    const auto parts = plan::round_parts(*facts, nights, look_.today, plan::kUsualRisk);
    const auto units = unit_system_of(look_.words);
    Round round;
    round.rows = rows_of(*facts, parts, units);
    round.waits = waiting_plants(facts->as_told, parts);
    round.done = ticked_on(facts->events, look_.today);
    if (first && !round.done.empty()) { // The window was closed meanwhile: what was done today still stands in its place.
        const auto morning = before_ticks(*facts, look_.today);
        const auto begun = morning.climate.nights();
        round.before = rows_of(morning, plan::round_parts(morning, begun, look_.today, plan::kUsualRisk), units);
    }
    round.seeds = facts->seeds;
    round.has_plants = !facts->as_told.plants.empty();
    round.has_forecast = !plan::nights_of_forecast(facts->log.forecasts, look_.today).empty();
    return round;
}

void RoundModel::show(Round round)
{
    if (jobs_ == 1) {
        // Nothing was ticked while this was read: what is due and not in the journal was taken back elsewhere. Of what
        // was sown or potted the journal keeps no tick.
        for (const auto& row : round.rows) {
            if (!row.is_sowing() && !row.is_potting()) {
                done_.erase(row.task.key);
            }
        }
    }
    // What was ticked while this was read is done too, though the journal did not say so yet.
    done_.insert(round.done.begin(), round.done.end());
    auto rows = with_done_rows(std::move(round.rows), known_ ? rows_ : round.before, done_);
    const bool same = std::ranges::equal(
        rows, rows_, {}, [](const RoundRow& row) { return row.task.key; },
        [](const RoundRow& row) { return row.task.key; });
    std::vector<SheetRows::Row> waits;
    for (const auto& of : round.waits) {
        QString why = upper_first(text(of.why));
        if (of.until) {
            why = tr("%1; until %2").arg(why, look_.words.short_date(*of.until));
        }
        waits.push_back({text(of.plant), text(of.spot), closed(tr("Not fed. %1.").arg(why)), closed(tr("%1, not fed: %2.").arg(text(of.plant), why))});
    }
    waits_.show(std::move(waits));
    seeds_ = std::move(round.seeds);
    has_plants_ = round.has_plants;
    has_forecast_ = round.has_forecast;
    known_ = true;
    if (same) {
        rows_ = std::move(rows);
        fold_.renew(rows_, look_.today);
        if (!rows_.empty()) {
            emit dataChanged(index(0), index(rowCount() - 1));
        }
    } else {
        const std::string current = is_row(current_row_) ? at(current_row_).task.key : std::string{};
        beginResetModel();
        rows_ = std::move(rows);
        fold_.renew(rows_, look_.today);
        endResetModel();
        // The row that was read last stays the one that is read, wherever it stands now.
        const auto there =
            std::ranges::find(rows_, current, [](const RoundRow& row) { return row.task.key; });
        current_row_ =
            std::clamp(there != rows_.end() ? static_cast<int>(there - rows_.begin()) : current_row_, 0,
                       std::max(0, rowCount() - 1));
        if (is_row(current_row_) && fold_.hides(static_cast<std::size_t>(current_row_))) {
            unfold(current_row_);
        }
        emit currentRowChanged();
    }
    emit roundChanged();
}

int RoundModel::carriesLeft() const
{
    return static_cast<int>(std::ranges::count_if(rows_, [](const RoundRow& row) {
        return row.is_carry_in() && !row.done;
    }));
}

std::vector<RoundRow>::const_iterator RoundModel::carry_row(int plant) const
{
    return std::ranges::find_if(rows_, [plant](const RoundRow& row) { return row.is_carry_in() && row.task.plant == plant; });
}

QString RoundModel::carryNames() const
{
    constexpr qsizetype kNamed = 8; // More are read in the list below.
    QStringList names;
    for (const RoundRow& row : rows_) {
        if (row.is_carry_in() && !row.done) {
            names.append(text(row.plant));
        }
    }
    const qsizetype more = names.size() - kNamed;
    const QString named = names.mid(0, kNamed).join(QStringLiteral(", "));
    return more > 0 ? tr("%1 and %2 more").arg(named).arg(more) : named;
}

QString RoundModel::coldTitle() const
{
    const char* numbers[] = {QT_TR_NOOP("one plant"),    QT_TR_NOOP("two plants"),   QT_TR_NOOP("three plants"),
                             QT_TR_NOOP("four plants"),  QT_TR_NOOP("five plants"),  QT_TR_NOOP("six plants"),
                             QT_TR_NOOP("seven plants"), QT_TR_NOOP("eight plants"), QT_TR_NOOP("nine plants")};
    const int left = carriesLeft();
    if (left == 0) {
        return {};
    }
    return tr("Carry %1 in this evening")
        .arg(left <= static_cast<int>(std::size(numbers)) ? tr(numbers[left - 1]) : tr("%1 plants").arg(left));
}

void RoundModel::say(QString words)
{
    said_ = std::move(words);
    emit saidChanged();
}

void RoundModel::fail(const std::string& message)
{
    fail_with(upper_first(text(message)) + QLatin1Char('.'));
}

void RoundModel::fail(const Error& error)
{
    fail(words::refusal(error));
}

void RoundModel::fail_with(QString sentence)
{
    error_ = std::move(sentence);
    emit errorChanged();
}

void RoundModel::clear_error()
{
    if (!error_.isEmpty()) {
        error_.clear();
        emit errorChanged();
    }
}

} // namespace lathhouse::models
