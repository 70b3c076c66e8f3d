#include "app/models/journal_lines.h"

#include "app/models/apostrophes.h"
#include "app/models/event_words.h"
#include "app/models/ticked_task.h"
#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"

#include <QByteArrayMatcher>

#include <algorithm>
#include <array>
#include <functional>
#include <numeric>
#include <optional>
#include <span>
#include <tuple>
#include <utility>

namespace lathhouse::models {

namespace {

/// What makes one line: some of the records of a kind, by their places in `order` of that kind.
struct Gathered {
    calendar::Date day;
    calendar::Instant entered; ///< The latest of them.
    std::span<const std::size_t> records;
};

using Order = std::vector<std::size_t>;

Order in_order(std::size_t count)
{
    Order order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    return order;
}

/// Sorts `order` by what `of` says of a record, and puts those together of which it says the same. `of` begins with the day.
template <class Record, class Of>
std::vector<Gathered> gathered(const std::vector<Record>& records, Order& order, const Of& of)
{
    std::ranges::stable_sort(order, {}, [&](std::size_t at) { return of(records[at]); });
    std::vector<Gathered> all;
    for (std::size_t begin = 0; begin < order.size();) {
        std::size_t end = begin;
        auto entered = records[order[begin]].entered;
        for (; end < order.size() && of(records[order[end]]) == of(records[order[begin]]); ++end) {
            entered = std::max(entered, records[order[end]].entered);
        }
        all.push_back({std::get<0>(of(records[order[begin]])), entered, std::span{order}.subspan(begin, end - begin)});
        begin = end;
    }
    return all;
}

class JournalWriter {
    Q_DECLARE_TR_FUNCTIONS(JournalLine)

public:
    JournalWriter(const JournalRecords& records, const YearWords& words)
        : of_(records), words_(words), units_(unit_system_of(words)), happened_(in_order(records.events.size())),
          measured_(in_order(records.measurements.size())), read_(in_order(records.nights.readings.size())),
          foretold_(in_order(records.nights.forecasts.size()))
    {
    }

    JournalLines all() &&
    {
        struct Placed {
            Gathered from;
            void (JournalWriter::*write)(const Gathered&);
        };
        std::vector<Placed> others;
        const auto place = [&](const std::vector<Gathered>& all, auto write) {
            for (const auto& one : all) {
                others.push_back({one, write});
            }
        };
        place(gathered(of_.measurements, measured_, [](const home::Measurement& one) { return std::tuple{one.measured, one.plant}; }),
              &JournalWriter::of_plant);
        place(gathered(of_.nights.readings, read_, [](const home::Reading& one) { return std::tuple{one.night}; }), &JournalWriter::of_night);
        place(gathered(of_.nights.forecasts, foretold_, [](const home::KeptForecast& one) { return std::tuple{one.issued}; }),
              &JournalWriter::of_forecasts);
        std::ranges::stable_sort(others, std::greater{}, [](const Placed& one) { return std::pair{one.from.day, one.from.entered}; });
        // Events keep the order in which they were entered, whatever the clock said then.
        std::ranges::reverse(happened_);
        std::ranges::stable_sort(happened_, std::greater{}, [&](std::size_t at) { return of_.events[at].happened; });

        auto other = others.begin();
        const auto write_others = [&](const home::Event* above) {
            for (; other != others.end() && (above == nullptr || std::pair{other->from.day, other->from.entered} >
                                                                     std::pair{above->happened, above->entered});
                 ++other) {
                (this->*other->write)(other->from);
            }
        };
        for (const auto at : happened_) {
            write_others(&of_.events[at]);
            of_event(of_.events[at]);
        }
        write_others(nullptr);
        lines_.close();
        return std::move(lines_);
    }

private:
    void line(calendar::Date day, const QString& who, const QString& what, home::PlantId plant = 0)
    {
        if (day != day_) { // Lines of a day follow each other and share its words.
            day_ = day;
            date_ = words_.date_with_year(day);
        }
        lines_.add(date_, who, what, plant);
    }

    QString with_note(const QString& words, const std::string& note) const
    {
        return note.empty() ? words : tr("%1 (%2)").arg(words, text(note));
    }

    QString plant_name(home::PlantId id) const
    {
        const auto* plant = of_.household.plant(id);
        return plant != nullptr ? text(plant->name) : tr("plant %1").arg(id);
    }

    QString spot_name(home::SpotId id) const
    {
        const auto* spot = of_.household.spot(id);
        return spot != nullptr ? text(spot->name) : tr("a spot");
    }

    QString who(const home::Event& event) const
    {
        if (event.plant) {
            return of_.household.plant(*event.plant) == nullptr && !event.detail("name").empty()
                       ? text(std::string{event.detail("name")}) // Gone from memory.
                       : plant_name(*event.plant);
        }
        if (const auto seeds = ticked_seeds(event)) {
            const auto* tray = seeds->is_tray ? of_.seeds.tray(seeds->number) : nullptr;
            const auto* lot = of_.seeds.lot(tray != nullptr ? tray->lot : seeds->is_tray ? 0 : seeds->number);
            return lot != nullptr ? text(lot->name) : QString{};
        }
        return event.spot && of_.household.spot(*event.spot) != nullptr ? spot_name(*event.spot) : QString{};
    }

    void of_event(const home::Event& event)
    {
        if (event.detail("change") == "household") { // What was changed stands in its words.
            line(event.happened, who(event), text(event.note), event.plant.value_or(0));
            return;
        }
        const QString what = upper_first(event_words(event, of_.household));
        line(event.happened, who(event),
             event.note.empty()              ? what
             : ticked_words(event).isEmpty() ? tr("%1: %2").arg(what, text(event.note))
                                             : with_note(what, event.note),
             event.plant.value_or(0));
    }

    void of_plant(const Gathered& from)
    {
        QStringList parts;
        for (const auto at : from.records) {
            const auto& one = of_.measurements[at];
            parts.append(with_note(tr("%1 %2").arg(text(words::measured(one.kind)), text(words::measured_value(one, units_))), one.note));
        }
        line(from.day, plant_name(of_.measurements[from.records.front()].plant), tr("Measured: %1").arg(parts.join(QStringLiteral(", "))),
             of_.measurements[from.records.front()].plant);
    }

    void of_night(const Gathered& from)
    {
        QStringList parts;
        for (const auto at : from.records) {
            const auto& one = of_.nights.readings[at];
            const QString low = words_.temperature(one.low);
            parts.append(with_note(from.records.size() > 1 ? tr("%1 %2").arg(spot_name(one.spot), low) : low, one.note));
        }
        line(from.day, from.records.size() > 1 ? QString{} : spot_name(of_.nights.readings[from.records.front()].spot),
             tr("Lowest of the night: %1").arg(parts.join(QStringLiteral(", "))));
    }

    void of_forecasts(const Gathered& from)
    {
        QStringList parts;
        for (const auto at : from.records) {
            const auto& one = of_.nights.forecasts[at];
            parts.append(tr("night to %1 %2").arg(words_.short_date(one.night), words_.temperature(one.low)));
        }
        line(from.day, {}, tr("Forecast kept: %1").arg(parts.join(QStringLiteral(", "))));
    }

    const JournalRecords& of_;
    const YearWords& words_;
    words::UnitSystem units_;
    Order happened_;
    Order measured_;
    Order read_;
    Order foretold_;
    std::optional<calendar::Date> day_;
    QString date_;
    JournalLines lines_;
};

QString journal_sentence(const QString& date, const QString& who, const QString& what)
{
    return closed(who.isEmpty() ? tr("%1: %2.").arg(date, what) : tr("%1, %2: %3.").arg(date, who, what));
}

/// Without case, and an apostrophe as a typewriter has it: what is looked for, and where.
QByteArray journal_key(const QString& words)
{
    return plain_apostrophes(words.toLower()).toUtf8();
}

} // namespace

int JournalLines::place_of(const QString& words)
{
    QByteArray text = words.toUtf8();
    const auto known = places_.constFind(text);
    if (known != places_.constEnd()) {
        return *known;
    }
    const int place = static_cast<int>(texts_.size());
    places_.insert(text, place);
    texts_.push_back({std::move(text), journal_key(words)});
    return place;
}

void JournalLines::add(const QString& date, const QString& who, const QString& what, home::PlantId plant)
{
    lines_.push_back({place_of(date), place_of(who), place_of(what), plant});
}

void JournalLines::close()
{
    places_ = {};
    texts_.shrink_to_fit();
    lines_.shrink_to_fit();
}

QString JournalLines::sentence(const JournalLine& line) const
{
    return journal_sentence(words(line.date), words(line.who), words(line.what));
}

std::vector<int> JournalLines::having(const QString& words) const
{
    std::vector<int> found(lines_.size());
    std::iota(found.begin(), found.end(), 0);
    for (const auto& word : journal_key(words).split(' ')) {
        if (word.isEmpty()) {
            continue;
        }
        const QByteArrayMatcher wanted(word);
        std::vector<char> has(texts_.size()); // A word has no space, so it lies within one text of a line.
        std::ranges::transform(texts_, has.begin(), [&](const Text& text) { return wanted.indexIn(text.key) >= 0 ? char{1} : char{0}; });
        const auto lacks = [&](int at) {
            const auto& line = lines_[static_cast<std::size_t>(at)];
            return std::ranges::none_of(std::array{line.date, line.who, line.what},
                                        [&](int text) { return has[static_cast<std::size_t>(text)] != 0; });
        };
        std::erase_if(found, lacks);
    }
    return found;
}

JournalLines journal_lines(const JournalRecords& records, const YearWords& words)
{
    return JournalWriter(records, words).all();
}

} // namespace lathhouse::models
