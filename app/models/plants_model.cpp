#include "app/models/plants_model.h"

#include "app/models/apostrophes.h"
#include "app/models/typed_measure.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"

#include <QUrl>

#include <algorithm>
#include <optional>
#include <tuple>

namespace lathhouse::models {

namespace {

constexpr int kMostColumns = 24;

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
    for (const auto kind : home::every_measurement_kind()) {
        rows.push_back({upper_first(text(words::measured(kind))), unit_words(kind, words)});
    }
    return rows;
}

} // namespace

PlantsModel::PlantsModel(PlantDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), filters_({"filter", "words"}),
      shelves_(on_shelves_), table_(in_table_), spots_({"name", "hand", "number"}), measures_({"text", "unit"}), gone_({"plant", "name", "words"})
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
    return count() == 0 ? tr("No plants yet") : count() == 1 ? tr("1 plant") : tr("%1 plants").arg(count());
}

QString PlantsModel::note() const
{
    return door_.keeps ? QString{}
                       : tr("This household is invented: what is logged stays in this window and is gone when it closes.");
}

bool PlantsModel::targetGone() const
{
    return std::ranges::any_of(targets(), [this](home::PlantId id) {
        const auto* card = card_of(id);
        return card != nullptr && card->gone;
    });
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
            fail(facts.error());
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
    std::erase_if(marked_, [this](home::PlantId id) { return card_of(id) == nullptr || card_of(id)->gone; });
    std::vector<SheetRows::Row> rows;
    for (const auto& shelf : facts_.shelves) {
        if (shelf.spot >= 0) {
            rows.push_back({shelf.name, shelf.hand, static_cast<int>(rows.size()) + 1});
        }
    }
    spots_.show(std::move(rows));
    constexpr std::size_t kNamed = 5; // The line is one under the shelves.
    rows.clear();
    for (const auto& card : facts_.cards) {
        if (card.gone && rows.size() < kNamed) {
            rows.push_back({card.id, card.name, card.state});
        }
    }
    gone_.show(std::move(rows));
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
    case All:
        return !card.gone;
    case Gone:
        return card.gone;
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
                                                {Recovering, tr("Recovering %1")},
                                                {Gone, tr("Gone %1")}};
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
    const std::string wanted = plain_apostrophes(find_.trimmed()).toLower().toStdString();
    std::vector<int> order;
    for (int at = 0; at < static_cast<int>(facts_.cards.size()); ++at) {
        const auto& card = facts_.cards[static_cast<std::size_t>(at)];
        const bool sought = filter_ == All && !wanted.empty(); // Those that are gone are found too.
        if ((sought || passes(card, filter_)) && (wanted.empty() || card.find.find(wanted) != std::string::npos)) {
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
    if (filter >= All && filter <= Gone && filter != filter_) {
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
    if (is_refused({id})) {
        return;
    }
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

} // namespace lathhouse::models
