#include "app/models/plants_model.h"

#include "app/models/clock.h"
#include "app/models/gone_in_memory.h"
#include "app/models/word_form.h"
#include "app/models/typed_decimal.h"
#include "app/words/measurement_words.h"
#include "app/words/phrase.h"

#include <QUrl>

#include <algorithm>
#include <optional>
#include <tuple>

namespace lathhouse::models {

namespace {

constexpr int kMostColumns = 24;
constexpr double kCentimetresInAnInch = 2.54;
constexpr double kMostPpm = 2000.0;

/// What one measures in a window; in the order of the list.
const std::vector<home::MeasurementKind>& measured_kinds()
{
    static const auto kKinds = home::every_measurement_kind();
    return kKinds;
}

bool in_inches(home::MeasurementKind kind, const YearWords& words)
{
    return words.units() == Units::Us && home::unit_of(kind) == home::MeasurementUnit::Centimetres;
}

/// Takes a decimal point or comma, and a unit behind the number.
std::optional<double> typed_number(const QString& typed)
{
    return typed_decimal(typed, {"cm", "in", "%", "ppm"});
}

QString unit_words(home::MeasurementKind kind, const YearWords& words)
{
    switch (home::unit_of(kind)) {
    case home::MeasurementUnit::Centimetres:
        return in_inches(kind, words) ? PlantsModel::tr("in") : PlantsModel::tr("cm");
    case home::MeasurementUnit::Share:
        return QStringLiteral("%");
    case home::MeasurementUnit::Count:
        break;
    }
    return {};
}

std::vector<SheetRows::Row> measure_rows(const YearWords& words)
{
    std::vector<SheetRows::Row> rows;
    for (const auto kind : measured_kinds()) {
        rows.push_back({upper_first(text(words::measured(kind))), unit_words(kind, words)});
    }
    return rows;
}

} // namespace

PlantsModel::PlantsModel(PlantDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), filters_({"filter", "words"}),
      shelves_(on_shelves_), table_(in_table_), spots_({"name", "hand", "number"}), measures_({"text", "unit"})
{
    on_shelves_.facts = &facts_;
    in_table_.facts = &facts_;
    on_shelves_.marked = &marked_;
    in_table_.marked = &marked_;
    measures_.show(measure_rows(look_.words));
}

QString PlantsModel::title() const
{
    if (!known()) {
        return tr("Plants");
    }
    return count() == 1 ? tr("1 plant") : tr("%1 plants").arg(count());
}

QString PlantsModel::note() const
{
    return door_.keeps ? QString{}
                       : tr("This household is invented: what is logged stays in this window and is gone when it closes.");
}

QString PlantsModel::gone() const
{
    if (!facts_.ground || facts_.ground->book.gone.empty()) {
        return {};
    }
    constexpr std::size_t kNamed = 5; // The line is one under the shelves.
    const auto& gone = facts_.ground->book.gone;
    QStringList names;
    for (std::size_t at = 0; at < std::min(kNamed, gone.size()); ++at) {
        names.append(text(gone[at]));
    }
    const QString named = names.join(QStringLiteral(", "));
    return gone.size() <= kNamed ? tr("Gone, with all of their past kept: %1.").arg(named)
                                 : tr("Gone, with all of their past kept: %1 and %2 more.").arg(named, QString::number(gone.size() - kNamed));
}

namespace {

/// Small pictures of the photos that stand for plants; one that cannot be read leaves the drawing in its place.
void set_pictures(PlantsFacts& facts, const PlantDoor& door)
{
    const auto& book = facts.ground->book;
    for (auto& card : facts.cards) {
        const auto chosen = book.pictures.find(card.id);
        if (chosen == book.pictures.end()) {
            continue;
        }
        if (const auto file = door.thumbnail(chosen->second)) {
            card.picture = QUrl::fromLocalFile(QString::fromStdString(file->string())).toString();
        }
    }
}

} // namespace

void PlantsModel::read()
{
    // Reads the book, unless it is there.
    const auto made = [this](PlantsDepth depth, std::shared_ptr<const PlantBook> book) {
        return [door = door_, look = look_, depth, book]() -> Result<PlantsFacts> {
            auto read = book;
            if (!read) {
                auto loaded = door.load();
                if (!loaded) {
                    return loaded.error();
                }
                read = std::make_shared<const PlantBook>(std::move(*loaded));
            }
            auto ground = plants_ground(std::move(read), look.today, depth);
            if (!ground) {
                return ground.error();
            }
            auto facts = plants_facts(std::move(*ground), look);
            set_pictures(facts, door);
            return facts;
        };
    };
    const auto done = [this](Result<PlantsFacts> facts) {
        if (facts) {
            take(std::move(*facts));
        } else {
            fail(facts.error().message);
        }
    };
    if (known()) {
        work<PlantsFacts>(made(PlantsDepth::Plan, nullptr), done);
        return;
    }
    work<PlantsFacts>(made(PlantsDepth::Names, nullptr), [this, made, done](Result<PlantsFacts> facts) {
        const bool read = facts.has_value();
        done(std::move(facts));
        if (read) { // Names first; the plan takes longer.
            work<PlantsFacts>(made(PlantsDepth::Plan, facts_.ground->kept), done);
        }
    });
}

void PlantsModel::take(PlantsFacts facts)
{
    measures_.show(measure_rows(look_.words)); // The units may be others by now.
    const home::PlantId at = current_ >= 0 && current_ < shownCount() ? shown().card(current_).id : -1;
    facts_ = std::move(facts);
    std::erase_if(marked_, [this](home::PlantId id) { return card_of(id) == nullptr; });
    std::vector<SheetRows::Row> rows;
    for (const auto& shelf : facts_.shelves) {
        if (shelf.spot >= 0) {
            rows.push_back({shelf.name, shelf.hand, static_cast<int>(rows.size()) + 1});
        }
    }
    spots_.show(std::move(rows));
    set_known();
    current_ = -1;
    arrange();
    for (int shown_at = 0; at >= 0 && shown_at < shownCount(); ++shown_at) {
        if (shown().card(shown_at).id == at) {
            current_ = shown_at;
        }
    }
    emit plantsChanged();
    emit currentChanged();
    emit markedChanged();
    emit targetChanged();
    emit groundChanged();
}

const PlantCard* PlantsModel::card_of(home::PlantId id) const
{
    const auto there = std::ranges::find(facts_.cards, id, &PlantCard::id);
    return there == facts_.cards.end() ? nullptr : &*there;
}

bool PlantsModel::passes(const PlantCard& card, int filter) const
{
    switch (filter) {
    case Outdoors:
        return card.outdoors;
    case Hardening:
        return card.hardening;
    case ToLookAt:
        return card.look;
    case Poisonous:
        return card.poisonous;
    case SetApart:
        return card.apart;
    case Recovering:
        return card.verdict == growth::Verdict::Recovering;
    default:
        return true;
    }
}

void PlantsModel::tell_filters()
{
    const std::pair<Filter, QString> named[] = {{All, tr("All %1")},
                                                {Outdoors, tr("Outdoors %1")},
                                                {Hardening, tr("Hardening %1")},
                                                {ToLookAt, tr("To look at %1")},
                                                {Poisonous, tr("Poisonous %1")},
                                                {SetApart, tr("Set apart %1")},
                                                {Recovering, tr("Recovering %1")}};
    std::vector<SheetRows::Row> rows;
    for (const auto& [filter, words] : named) {
        const auto number = std::ranges::count_if(
            facts_.cards, [this, of = filter](const PlantCard& card) { return passes(card, of); });
        if (number > 0 || filter == All || filter == filter_) {
            rows.push_back({static_cast<int>(filter), words.arg(number)});
        }
    }
    filters_.show(std::move(rows));
}

void PlantsModel::arrange()
{
    const std::string wanted = find_.trimmed().toLower().toStdString();
    std::vector<int> order;
    for (int at = 0; at < count(); ++at) {
        const auto& card = facts_.cards[static_cast<std::size_t>(at)];
        if (passes(card, filter_) && (wanted.empty() || card.find.find(wanted) != std::string::npos)) {
            order.push_back(at);
        }
    }
    on_shelves_.order = order;
    on_shelves_.with_free = filter_ == All && wanted.empty();
    const auto key = [this](int at) {
        const auto& card = facts_.cards[static_cast<std::size_t>(at)];
        switch (sorted_by_) {
        case 1:
            return card.spot;
        case 2:
            return card.state;
        case 3:
            return card.next_on ? QString::fromStdString(calendar::to_text(*card.next_on)) : QString{};
        case 4:
            return card.hazard;
        default:
            return card.name;
        }
    };
    std::vector<std::tuple<bool, QString, QString, int>> keys; // What has no word comes last, whichever way.
    keys.reserve(order.size());
    for (const int at : order) {
        QString of = key(at).toCaseFolded();
        keys.emplace_back(of.isEmpty(), std::move(of),
                          facts_.cards[static_cast<std::size_t>(at)].name.toCaseFolded(), at);
    }
    std::ranges::sort(keys, [this](const auto& a, const auto& b) {
        if (std::get<0>(a) != std::get<0>(b)) {
            return std::get<0>(b);
        }
        const int by_key = QString::compare(std::get<1>(a), std::get<1>(b));
        if (by_key != 0) {
            return descending_ ? by_key > 0 : by_key < 0;
        }
        return std::tie(std::get<2>(a), std::get<3>(a)) < std::tie(std::get<2>(b), std::get<3>(b));
    });
    in_table_.order.clear();
    for (const auto& of : keys) {
        in_table_.order.push_back(std::get<3>(of));
    }
    in_table_.with_free = false;
    tell_filters();
    shelves_.lay_out(columns_);
    table_.lay_out();
    current_ = shownCount() == 0 ? -1 : std::clamp(current_, 0, shownCount() - 1);
    emit shownChanged();
    emit currentChanged();
    emit targetChanged();
}

void PlantsModel::setFilter(int filter)
{
    if (filter >= All && filter <= Recovering && filter != filter_) {
        filter_ = filter;
        current_ = 0;
        arrange();
    }
}

void PlantsModel::setFind(const QString& find)
{
    if (find != find_) {
        find_ = find;
        current_ = 0;
        arrange();
    }
}

void PlantsModel::setByTable(bool by_table)
{
    if (by_table != by_table_) {
        const home::PlantId at = current_ >= 0 && current_ < shownCount() ? shown().card(current_).id : -1;
        by_table_ = by_table;
        for (int shown_at = 0; shown_at < shownCount(); ++shown_at) {
            if (shown().card(shown_at).id == at) {
                current_ = shown_at;
            }
        }
        emit shownChanged();
        emit currentChanged();
    }
}

void PlantsModel::sortBy(int column)
{
    descending_ = column == sorted_by_ && !descending_;
    sorted_by_ = std::clamp(column, 0, 4);
    arrange();
}

void PlantsModel::setColumns(int columns)
{
    columns = std::clamp(columns, 1, kMostColumns);
    if (columns != columns_) {
        columns_ = columns;
        shelves_.lay_out(columns_);
        emit shownChanged();
    }
}

void PlantsModel::setCurrent(int current)
{
    current = shownCount() == 0 ? -1 : std::clamp(current, 0, shownCount() - 1);
    if (current != current_) {
        current_ = current;
        emit currentChanged();
        emit targetChanged();
    }
}

void PlantsModel::mark(int shown_at)
{
    if (shown_at < 0 || shown_at >= shownCount()) {
        return;
    }
    const auto id = shown().card(shown_at).id;
    if (!marked_.erase(id)) {
        marked_.insert(id);
    }
    shelves_.refresh();
    table_.refresh();
    emit markedChanged();
    emit targetChanged();
}

void PlantsModel::clearMarks()
{
    if (!marked_.empty()) {
        marked_.clear();
        shelves_.refresh();
        table_.refresh();
        emit markedChanged();
        emit targetChanged();
    }
}

void PlantsModel::open(int shown_at)
{
    if (shown_at >= 0 && shown_at < shownCount()) {
        setCurrent(shown_at);
        openId(shown().card(shown_at).id);
    }
}

int PlantsModel::shownId(int shown_at) const
{
    return shown_at >= 0 && shown_at < shownCount() ? shown().card(shown_at).id : 0;
}

void PlantsModel::openId(int id)
{
    if (id > 0 && id != opened_) {
        opened_ = id;
        emit openedChanged();
        emit targetChanged();
    }
}

void PlantsModel::close()
{
    if (opened_ != 0) {
        opened_ = 0;
        emit openedChanged();
        emit targetChanged();
    }
}

void PlantsModel::close_missing(int id)
{
    close();
    fail_with(tr("There is no plant with the number %1 (any more).").arg(id));
}

std::vector<home::PlantId> PlantsModel::targets() const
{
    if (opened_ != 0) {
        return {opened_};
    }
    if (!marked_.empty()) {
        return {marked_.begin(), marked_.end()};
    }
    if (current_ >= 0 && current_ < shownCount()) {
        return {shown().card(current_).id};
    }
    return {};
}

QString PlantsModel::target_words(const std::vector<home::PlantId>& plants) const
{
    if (plants.empty()) {
        return {};
    }
    const auto* only = plants.size() == 1 ? card_of(plants.front()) : nullptr;
    return only != nullptr ? only->name : tr("%1 plants").arg(plants.size());
}

QString PlantsModel::target() const
{
    return target_words(targets());
}

bool PlantsModel::log(int what, const QString& number, int measure, const QString& note)
{
    clear_error();
    const auto plants = targets();
    if (plants.empty()) {
        fail_with(tr("Choose a plant first: arrow keys, or a click."));
        return false;
    }
    const QString whom = target_words(plants);
    const std::string written_note = note.trimmed().toStdString();
    PlantEntries entries;
    if (what == Measured) {
        if (plants.size() > 1) {
            fail_with(tr("One plant is measured at a time; take the marks off with Escape."));
            return false;
        }
        if (measure < 0 || measure >= static_cast<int>(measured_kinds().size())) {
            fail_with(tr("Choose what was measured."));
            return false;
        }
        const auto kind = measured_kinds()[static_cast<std::size_t>(measure)];
        const auto value = typed_number(number);
        if (!value) {
            fail_with(tr("“%1” is no number. Write it such as 27.3.").arg(number.trimmed()));
            return false;
        }
        const double kept = home::unit_of(kind) == home::MeasurementUnit::Share ? *value / 100.0
                            : in_inches(kind, look_.words)                     ? *value * kCentimetresInAnInch
                                                                              : *value;
        home::Measurement made{.plant = plants.front(),
                               .kind = kind,
                               .measured = look_.today,
                               .repeats = {kept},
                               .method = home::usual_method(kind),
                               .entered = now()};
        made.note = written_note;
        if (const auto* plant = facts_.ground->household.plant(plants.front())) {
            made.pot = plant->pot_volume;
        }
        if (const auto sound = home::check(made); !sound) {
            fail(sound.error().message);
            return false;
        }
        const QString said = text(words::measured_value(kind, kept, unit_system_of(look_.words)));
        entries.measurements.push_back(std::move(made));
        return write(std::move(entries), tr("%1: %2 %3 today.").arg(whom, text(words::measured(kind)), said));
    }
    home::Event event{.plant = {}, .kind = home::EventKind::Noted, .spot = {}, .happened = look_.today,
                      .entered = now(), .note = written_note};
    QString done;
    switch (what) {
    case Watered:
        event.kind = home::EventKind::Watered;
        done = tr("%1: watered today.");
        break;
    case Fed:
        event.kind = home::EventKind::Fed;
        done = tr("%1: fed today.");
        if (!number.trimmed().isEmpty()) {
            const auto ppm = typed_number(number);
            if (!ppm || *ppm < 0.0 || *ppm > kMostPpm) {
                fail_with(tr("Parts of nitrogen in a million lie between 0 and 2000; leave it blank where you do not know."));
                return false;
            }
            event.details["ppm"] = QString::number(*ppm).toStdString();
        }
        break;
    case NewGrowth:
        event.kind = home::EventKind::NewGrowth;
        done = tr("%1: new growth seen today.");
        break;
    case Flowered:
        event.kind = home::EventKind::Flowered;
        done = tr("%1: in flower today.");
        break;
    case Repotted:
        event.kind = home::EventKind::Repotted;
        done = tr("%1: repotted today.");
        break;
    case Pruned:
        event.kind = home::EventKind::Pruned;
        done = tr("%1: pruned today.");
        break;
    case Died:
        event.kind = home::EventKind::Died;
        done = tr("%1: died today. Off the lists, with all of the past kept; Undo brings it back.");
        break;
    case GivenAway:
        event.kind = home::EventKind::GivenAway;
        done = tr("%1: given away today. Off the lists, with all of the past kept; Undo brings it back.");
        break;
    case Noted:
        if (written_note.empty()) {
            fail_with(tr("Write the note first."));
            return false;
        }
        done = tr("%1: noted.");
        break;
    default:
        fail_with(tr("Choose what happened."));
        return false;
    }
    for (const auto id : plants) {
        event.plant = id;
        entries.events.push_back(event);
    }
    const bool kept = write(std::move(entries), done.arg(whom));
    if (kept && ends_plant(event.kind)) {
        clearMarks();
        close();
    }
    return kept;
}

bool PlantsModel::moveTo(int spot)
{
    clear_error();
    const auto plants = targets();
    if (plants.empty()) {
        fail_with(tr("Choose a plant first: arrow keys, or a click."));
        return false;
    }
    if (spot < 0 || spot >= spots_.rowCount()) {
        fail_with(tr("There is no spot of that number."));
        return false;
    }
    const auto& shelf = facts_.shelves[static_cast<std::size_t>(spot)];
    PlantEntries entries;
    for (const auto id : plants) {
        const auto* plant = facts_.ground->household.plant(id);
        if (plant != nullptr && plant->spot != shelf.spot) {
            entries.events.push_back({id, home::EventKind::Moved, shelf.spot, look_.today, now(), ""});
        }
    }
    const QString whom = target_words(plants);
    if (entries.events.empty()) {
        fail_with(tr("%1 stands at %2 already.").arg(whom, shelf.name));
        return false;
    }
    QString said = tr("%1 moved to %2 today.").arg(whom, shelf.name);
    const auto standing = std::ranges::count_if(facts_.cards, [&](const PlantCard& card) { return card.shelf == spot; });
    if (standing + static_cast<int>(entries.events.size()) > shelf.capacity) {
        said += tr(" It has %1 places.").arg(shelf.capacity);
    }
    return write(std::move(entries), std::move(said));
}

bool PlantsModel::keep(PlantEntries entries, QString words)
{
    clear_error();
    return write(std::move(entries), std::move(words));
}

void PlantsModel::keep_imported(home::PhotoChange added, QString words)
{
    if (!added.photos.empty()) {
        here_.add({{.events = {}, .measurements = {}, .photos = std::move(added)}, words});
    }
    say(std::move(words));
    emit written();
    read();
}

bool PlantsModel::write(PlantEntries entries, QString said)
{
    here_.add({entries, said});
    say(std::move(said));
    write_and_read([record = door_.record, entries] { return record(entries); },
                   [this, entries](const Error& error) {
                       here_.drop_written([&](const Written& of) {
                           return of.entries.events == entries.events && of.entries.measurements == entries.measurements &&
                                  of.entries.photos == entries.photos;
                       });
                       say({});
                       fail(words::phrase("this was not kept: %1", error.message));
                   });
    return true;
}

void PlantsModel::undo()
{
    clear_error();
    const auto last = here_.undo();
    if (!last) {
        fail_with(tr("Nothing was logged on this page yet that could be taken back; Undo above the pages takes back what the journal had before."));
        return;
    }
    say(tr("Taken back: %1").arg(last->words));
    write_and_read([back = door_.take_back, last = *last, at = now()] { return back(last.entries, at); },
                   [this](const Error& error) {
                       here_.forget_undone();
                       say({});
                       fail(error.message);
                   });
}

void PlantsModel::forget()
{
    here_.forget();
    say({});
}

void PlantsModel::redo()
{
    clear_error();
    const auto last = here_.redo();
    if (!last) {
        fail_with(tr("Nothing was taken back last on this page that could be done again."));
        return;
    }
    say(tr("Done again: %1").arg(last->words));
    write_and_read([again = door_.bring_back, last = *last, at = now()] { return again(last.entries, at); },
                   [this](const Error& error) {
                       here_.forget_written();
                       say({});
                       fail(error.message);
                   });
}

} // namespace lathhouse::models
