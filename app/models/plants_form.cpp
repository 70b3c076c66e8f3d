#include "app/models/plants_form.h"

#include "app/models/apostrophes.h"
#include "app/models/asked_kind.h"
#include "app/models/typed_number.h"
#include "app/words/table_words.h"
#include "core/geodesy/place_name.h"
#include "core/home/new_plant.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace lathhouse::models {

namespace {

constexpr int kMostOfAKind = 500;

QString botanical(const plants::PlantKind& kind)
{
    return text(kind.botanical_name);
}

/// How well a name answers: 0 begins with what was typed, 1 a word within does, 2 it stands anywhere; 3 not at all.
int rank(const std::string& name, const std::string& wanted)
{
    const auto at = geodesy::name_key(name);
    if (at.starts_with(wanted)) {
        return 0;
    }
    const auto place = at.find(wanted);
    if (place == std::string::npos) {
        return 3;
    }
    return at.find(" " + wanted) != std::string::npos ? 1 : 2;
}

int rank(const plants::PlantKind& kind, const std::string& wanted)
{
    int best = rank(kind.botanical_name, wanted);
    for (const auto& name : kind.common_names) {
        best = std::min(best, rank(name, wanted));
    }
    for (const auto& name : words::foreign_names(kind.botanical_name)) {
        best = std::min(best, rank(name, wanted));
    }
    return best;
}

/// The moles of a class of light are the same for every kind of it.
const plants::PlantKind& kind_of_light(plants::LightClass light)
{
    const auto kinds = plants::PlantReference::built_in().kinds();
    return *std::ranges::find(kinds, light, &plants::PlantKind::light);
}

} // namespace

PlantsForm::PlantsForm(YearWords words, QObject* parent)
    : QObject(parent), words_(std::move(words)), looked_(words_), found_({"words", "detail", "lines", "hazard", "sentence"}),
      picked_({"words", "second", "number", "where", "trouble", "sentence"}),
      places_rows_({"text", "number", "chosen", "reason"})
{
    // What was wrong is forgiven once it is typed anew.
    connect(this, &PlantsForm::ownChanged, this, [this] {
        if (!own_trouble_.isEmpty()) {
            fail_own(-1, {});
        }
    });
    connect(&filter_, &KindFilter::changed, this, [this] {
        search();
        emit findChanged();
    });
    search();
}

void PlantsForm::setFind(const QString& find)
{
    if (find != find_) {
        find_ = find;
        search();
        emit findChanged();
    }
}

void PlantsForm::search()
{
    const auto& reference = plants::PlantReference::built_in();
    const auto wanted = geodesy::name_key(find_.toStdString());
    matches_.clear();
    std::vector<std::pair<int, const plants::PlantKind*>> ranked;
    bool called_so = false; // Whichever group it is of.
    for (const auto& kind : reference.kinds()) {
        const int place = wanted.empty() ? 0 : rank(kind, wanted);
        called_so = called_so || place < 3;
        if (place < 3 && filter_.passes(kind)) {
            ranked.emplace_back(place, &kind);
        }
    }
    std::ranges::stable_sort(ranked, [](const auto& a, const auto& b) {
        return a.first != b.first ? a.first < b.first
                                  : shown_name(*a.second).localeAwareCompare(shown_name(*b.second)) < 0;
    });
    const auto all = reference.kinds().size();
    if (ranked.empty() && called_so) {
        found_words_ = wanted.empty() ? tr("No kind is of that group and rests on that; choose another.")
                                      : tr("What is called “%1” is of another group or rests on something else.").arg(find_.trimmed());
    } else if (ranked.empty()) {
        QStringList near;
        for (const auto& name : reference.near_names(plain_apostrophes(find_.trimmed()).toStdString(), 3)) {
            near.append(printed_apostrophes(text(name)));
            if (const auto kind = reference.find(name)) {
                ranked.emplace_back(0, *kind);
            }
        }
        found_words_ = near.isEmpty()
                           ? tr("No kind here is called “%1”. Add it as a kind of your own below.").arg(find_.trimmed())
                           : tr("No kind here is called “%1”. Did you mean one of these?").arg(find_.trimmed());
    } else {
        found_words_ = wanted.empty() && !filter_.narrows() ? tr("%1 kinds are known; type a part of a name.").arg(all)
                                      : tr("%1 of %2 kinds").arg(ranked.size()).arg(all);
    }
    std::set<const plants::PlantKind*> seen;
    std::vector<SheetRows::Row> rows;
    for (const auto& [place, kind] : ranked) {
        if (!seen.insert(kind).second) {
            continue;
        }
        matches_.push_back(kind);
        const bool hazard = home::is_hazardous(*kind);
        const QString lines = tr("harm from %1").arg(words_.temperature(kind->lines.damage_begins));
        QString sentence = tr("%1, %2, %3").arg(shown_name(*kind), botanical(*kind), lines);
        if (hazard) {
            sentence += tr(", poisonous");
        }
        rows.push_back({shown_name(*kind), botanical(*kind), lines, hazard, sentence});
    }
    found_.show(std::move(rows));
}

QString PlantsForm::currentName() const
{
    return current_ >= 0 && current_ < static_cast<int>(drafts_.size()) ? shown_name(drafts_[static_cast<std::size_t>(current_)].kind) : QString{};
}

int PlantsForm::total() const
{
    int total = 0;
    for (const auto& of : drafts_) {
        total += of.count;
    }
    return total;
}

const StandingPlace* PlantsForm::place_of(int number) const
{
    const auto there = std::ranges::find(places_, number, &StandingPlace::number);
    return there == places_.end() ? nullptr : &*there;
}

int PlantsForm::free_at(const StandingPlace& place) const
{
    int free = place.free;
    for (const auto& of : drafts_) {
        free -= of.spot == place.number ? of.count : 0;
    }
    return free;
}

/// The first place with room where it does no harm, indoors before outdoors.
int PlantsForm::place_for(const PlantDraft& draft) const
{
    for (const bool indoors : {true, false}) {
        for (const auto& place : places_) {
            if (place.indoors == indoors && free_at(place) > 0 && !(draft.hazardous && place.in_reach)) {
                return place.number;
            }
        }
    }
    return 0;
}

QString PlantsForm::trouble_of(const PlantDraft& draft) const
{
    const auto* place = place_of(draft.spot);
    if (place == nullptr) {
        return places_.empty() ? QString{} : tr("Stands nowhere yet; choose its spot.");
    }
    if (draft.hazardous && place->in_reach) {
        return tr("Poisonous, and %1 is in reach of a child or an animal.").arg(place->name);
    }
    const int over = -free_at(*place);
    return over > 0 ? tr("%1 more than fit at %2.").arg(over).arg(place->name) : QString{};
}

void PlantsForm::show()
{
    std::vector<SheetRows::Row> rows;
    for (const auto& of : drafts_) {
        const auto* place = place_of(of.spot);
        const QString where = place != nullptr ? place->name : tr("nowhere yet");
        const QString trouble = trouble_of(of);
        const QString name = shown_name(of.kind);
        rows.push_back({name, of.own ? tr("a kind of your own") : botanical(of.kind), of.count, where, trouble,
                        tr("%1, %2, at %3. %4").arg(name).arg(of.count).arg(where, trouble).trimmed()});
    }
    picked_.show(std::move(rows));
    std::vector<SheetRows::Row> places;
    const auto* chosen = current_ >= 0 && current_ < static_cast<int>(drafts_.size()) ? &drafts_[static_cast<std::size_t>(current_)] : nullptr;
    for (const auto& place : places_) {
        const int free = free_at(place);
        places.push_back({place.name, place.number, chosen != nullptr && chosen->spot == place.number,
                          free == 1 ? tr("1 place free") : tr("%1 places free").arg(std::max(0, free))});
    }
    places_rows_.show(std::move(places));
    emit pickedChanged();
}

void PlantsForm::setCurrent(int current)
{
    if (current >= 0 && current < static_cast<int>(drafts_.size()) && current != current_) {
        current_ = current;
        show();
        emit currentChanged();
    }
}

void PlantsForm::add(PlantDraft draft)
{
    draft.spot = place_for(draft);
    drafts_.push_back(std::move(draft));
    current_ = static_cast<int>(drafts_.size()) - 1;
    show();
    emit currentChanged();
}

void PlantsForm::pick(int row)
{
    if (row < 0 || row >= static_cast<int>(matches_.size())) {
        return;
    }
    pick_kind(*matches_[static_cast<std::size_t>(row)]);
}

void PlantsForm::look(int row)
{
    if (row >= 0 && row < static_cast<int>(matches_.size())) {
        looked_kind_ = matches_[static_cast<std::size_t>(row)];
        looked_.show(*looked_kind_);
    }
}

void PlantsForm::pickLooked()
{
    if (looked_.open() && looked_kind_ != nullptr) {
        pick_kind(*looked_kind_);
        looked_.close();
    }
}

void PlantsForm::pick_kind(const plants::PlantKind& kind)
{
    const auto there = std::ranges::find_if(drafts_, [&](const PlantDraft& of) {
        return !of.own && of.kind.botanical_name == kind.botanical_name;
    });
    if (there != drafts_.end()) {
        more(static_cast<int>(there - drafts_.begin()));
        return;
    }
    add({.kind = kind, .own = false, .hazardous = home::is_hazardous(kind), .outdoors = home::is_grown_outdoors(kind)});
}

void PlantsForm::more(int row)
{
    if (row < 0 || row >= static_cast<int>(drafts_.size())) {
        return;
    }
    auto& draft = drafts_[static_cast<std::size_t>(row)];
    draft.count = std::min(draft.count + 1, kMostOfAKind);
    current_ = row;
    show();
    emit currentChanged();
}

void PlantsForm::fewer(int row)
{
    if (row < 0 || row >= static_cast<int>(drafts_.size())) {
        return;
    }
    auto& draft = drafts_[static_cast<std::size_t>(row)];
    if (draft.count > 1) {
        --draft.count;
        current_ = row;
    } else {
        drafts_.erase(drafts_.begin() + row);
        current_ -= row < current_ ? 1 : 0; // The same one stays chosen.
        current_ = std::min(current_, static_cast<int>(drafts_.size()) - 1);
    }
    show();
    emit currentChanged();
}

void PlantsForm::standAt(int row, int place)
{
    if (row < 0 || row >= static_cast<int>(drafts_.size()) || place < 0 || place >= static_cast<int>(places_.size())) {
        return;
    }
    drafts_[static_cast<std::size_t>(row)].spot = places_[static_cast<std::size_t>(place)].number;
    show();
}

bool PlantsForm::fail_own(int field, const QString& words)
{
    own_trouble_field_ = field;
    own_trouble_ = words;
    emit ownTroubleChanged();
    return false;
}

bool PlantsForm::addOwn()
{
    fail_own(-1, {});
    const QString name = own_name_.trimmed();
    if (name.isEmpty()) {
        return fail_own(0, tr("The kind needs a name."));
    }
    const auto temperature = [this](const QString& typed) { return typed_plant_line(typed, words_); };
    const auto safe = temperature(own_safe_);
    if (!safe) {
        return fail_own(1, tr("The safe night is missing: the lowest night that it stands without stress, such as %1.").arg(exampleSafe()));
    }
    const auto damage = temperature(own_damage_);
    if (!damage) {
        return fail_own(2, tr("The night at which harm begins is missing, such as %1.").arg(exampleDamage()));
    }
    if (*damage > *safe) {
        return fail_own(2, tr("Harm cannot begin above the safe night, %1.").arg(words_.temperature(*safe)));
    }
    // Where nobody knows what kills it, the line of harm stands for it: the cautious side.
    const auto lethal = own_lethal_.trimmed().isEmpty() ? damage : temperature(own_lethal_);
    if (!lethal || *lethal > *damage) {
        return fail_own(3, tr("The night that kills it lies at %1 or below, or is left blank.").arg(words_.temperature(*damage)));
    }
    const auto light = static_cast<plants::LightClass>(std::clamp(own_light_, 0, 3));
    plants::PlantKind kind = kind_of_light(light);
    kind.botanical_name = name.toStdString();
    kind.common_names = {name.toStdString()};
    kind.lines = {*safe, *damage, *lethal};
    kind.heat_limit = Celsius::from_degrees(38.0); // Common practice, no source.
    kind.must_dry = own_dries_;
    kind.sulks = false;
    add({.kind = std::move(kind), .own = true, .hazardous = own_poisonous_, .outdoors = own_outdoors_});
    own_name_.clear();
    own_safe_.clear();
    own_damage_.clear();
    own_lethal_.clear();
    own_poisonous_ = false;
    own_dries_ = false;
    emit ownChanged();
    return true;
}

void PlantsForm::set_places(std::vector<StandingPlace> places)
{
    places_ = std::move(places);
    for (auto& draft : drafts_) {
        if (place_of(draft.spot) == nullptr) {
            draft.spot = 0;
            draft.spot = place_for(draft);
        }
    }
    show();
}

void PlantsForm::set_taken(std::vector<std::string> names)
{
    taken_ = std::move(names);
}

Result<std::vector<home::Plant>> PlantsForm::make(const std::function<std::optional<home::SpotId>(int)>& spot_of) const
{
    std::set<std::string> taken;
    for (const auto& name : taken_) {
        taken.insert(text(name).toLower().toStdString());
    }
    std::vector<home::Plant> made;
    for (const auto& draft : drafts_) {
        for (int count = 0; count < draft.count; ++count) {
            const QString first = kept_name(draft.kind);
            QString name = first;
            for (int number = 2; !taken.insert(name.toLower().toStdString()).second; ++number) {
                name = tr("%1 %2").arg(first).arg(number);
            }
            auto plant = home::make_plant(static_cast<int>(made.size()) + 1, draft.kind,
                                          {.name = name.toStdString(),
                                           .hazardous = draft.hazardous,
                                           .wants_open_air = draft.outdoors});
            if (!plant) {
                return plant.error();
            }
            plant->spot = spot_of(draft.spot);
            made.push_back(std::move(*plant));
        }
    }
    return made;
}

void PlantsForm::clear()
{
    drafts_.clear();
    looked_.close();
    filter_.clear();
    current_ = -1;
    find_.clear();
    search();
    show();
    emit findChanged();
    emit currentChanged();
}

} // namespace lathhouse::models
