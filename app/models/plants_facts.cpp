#include "app/models/plants_facts.h"

#include "app/models/apostrophes.h"
#include "app/models/next_move.h"
#include "app/models/translated.h"
#include "app/words/table_words.h"
#include "core/home/spot_climate.h"
#include "core/plan/plant_growth.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr int kRecentDays = 21; ///< In which a flower or a new shoot is still worth a word.
constexpr int kClays = 4;

std::string lower(std::string_view words)
{
    return plain_apostrophes(QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()))).toLower().toStdString();
}

QString nights_of(const home::Spot& spot, const YearWords& words)
{
    if (home::is_outdoors(spot.kind)) {
        return tr("outdoors");
    }
    if (!spot.winter || !spot.summer) {
        return {};
    }
    const auto low = std::min(*spot.winter, *spot.summer);
    const auto high = std::max(*spot.winter, *spot.summer);
    const auto whole = [&](Celsius of) { return words.whole(static_cast<int>(std::lround(words.shown(of)))); };
    return low == high ? whole(low) + QChar(0x202F) + words.unit()
                       : tr("%1 to %2").arg(whole(low), whole(high) + QChar(0x202F) + words.unit());
}

/// Everything of a plan that concerns one plant, found once instead of searched for each plant.
struct OfPlant {
    const plan::PlantCondition* condition = nullptr;
    const plan::IsolationNeed* isolation = nullptr;
    const plan::PlantYear* year = nullptr;
    const plan::PlantFeeding* feeding = nullptr;
    const plan::WaterLook* water = nullptr;
    std::vector<const plan::Ladder*> ladders;
    std::vector<const plan::Task*> tasks;
    std::optional<calendar::Date> flowered;
    std::optional<calendar::Date> new_growth;
    bool set_apart = false;
    bool watered_today = false;
};

/// "hardening 3 of 5"; empty where the day is none of the ladder.
QString ladder_words(const plan::Ladder& ladder, calendar::Date today)
{
    if (ladder.direction == plan::Direction::Out) {
        int steps = 0;
        int now = 0;
        for (const auto& item : ladder.items) {
            if (item.kind == plan::LadderItemKind::OutByDay) {
                ++steps;
                now = item.date <= today ? steps : now;
            }
        }
        const bool begun = now > 0 && today < ladder.reached;
        return begun ? tr("hardening %1 of %2").arg(now).arg(steps) : QString{};
    }
    for (const auto& item : ladder.items) {
        if (item.date <= today && today <= item.until) {
            if (item.kind == plan::LadderItemKind::KeepApart) {
                return tr("kept apart");
            }
            if (item.kind == plan::LadderItemKind::StepDown) {
                return tr("gets used to shade");
            }
        }
    }
    return {};
}

class CardMaker {
    Q_DECLARE_TR_FUNCTIONS(PlantsFacts)

public:
    CardMaker(const PlantsGround& ground, const TodayLook& look) : ground_(ground), look_(look), today_(look.today)
    {
        for (const auto& event : ground.book.facts.events) {
            read(event);
        }
        if (!ground.parts) {
            return;
        }
        const auto& parts = *ground.parts;
        for (const auto& of : parts.pests.plants) {
            of_[of.plant].condition = &of;
        }
        for (const auto& of : parts.pests.isolation) {
            of_[of.plant].isolation = &of;
        }
        for (const auto& of : parts.plan.plants) {
            of_[of.plant].year = &of;
        }
        for (const auto& of : parts.feeding) {
            of_[of.plant].feeding = &of;
        }
        for (const auto& of : parts.water) {
            of_[of.plant].water = &of;
        }
        for (const auto& of : parts.ladders) {
            of_[of.plant].ladders.push_back(&of);
        }
        for (const auto& of : ground.tasks) {
            if (of.plant) {
                of_[*of.plant].tasks.push_back(&of);
            }
        }
    }

    PlantCard card(const home::Plant& plant, int shelf)
    {
        const auto* kind = kind_of(plant);
        const auto* spot = plant.spot ? ground_.household.spot(*plant.spot) : nullptr;
        PlantCard card{.id = plant.id,
                       .name = text(plant.name),
                       .botanical = text(plant.kind),
                       .spot = spot != nullptr ? text(spot->name) : QString{},
                       .shelf = shelf,
                       .habit = habit_of(kind),
                       .fruit = bears_fruit(kind),
                       .clay = plant.id % kClays,
                       .state = {},
                       .next = {},
                       .next_on = {},
                       .hazard = hazard_in_short(plant, kind),
                       .picture = {},
                       .verdict = {},
                       .find = lower(plant.name + ' ' + plant.kind)};
        card.outdoors = spot != nullptr && home::is_outdoors(spot->kind);
        add_names(card, kind);
        if (kind != nullptr) {
            const auto harms = [](plants::Toxicity of) {
                return of == plants::Toxicity::Low || of == plants::Toxicity::Toxic || of == plants::Toxicity::Deadly;
            };
            card.poisonous = harms(kind->to_people) || harms(kind->to_pets);
        }
        card.poisonous = card.poisonous || plant.hazardous;
        if (const auto verdict = ground_.verdicts.find(plant.id); verdict != ground_.verdicts.end()) {
            card.verdict = verdict->second;
        }
        tell_next(card, of_[plant.id]);
        tell_state(card, of_[plant.id]);
        return card;
    }

    PlantCard card(const home::GonePlant& gone, int shelf) const
    {
        const auto* kind = kind_of(gone.plant);
        PlantCard card{.id = gone.plant.id,
                       .name = text(gone.plant.name),
                       .botanical = text(gone.plant.kind),
                       .spot = {},
                       .shelf = shelf,
                       .habit = habit_of(kind),
                       .fruit = bears_fruit(kind),
                       .clay = gone.plant.id % kClays,
                       .state = gone_words(gone, look_.words),
                       .next = {},
                       .next_on = {},
                       .hazard = {},
                       .picture = {},
                       .gone = true,
                       .verdict = {},
                       .find = lower(gone.plant.name + ' ' + gone.plant.kind)};
        add_names(card, kind);
        card.find += ' ' + tr("gone").toLower().toStdString() + ' ' + card.state.toLower().toStdString();
        return card;
    }

private:
    static void add_names(PlantCard& card, const plants::PlantKind* kind)
    {
        if (kind == nullptr) {
            return;
        }
        for (const auto& name : kind->common_names) {
            card.find += ' ' + lower(name);
        }
        for (const auto& name : words::foreign_names(kind->botanical_name)) {
            card.find += ' ' + lower(name);
        }
    }

    void read(const home::Event& event)
    {
        if (!event.plant) {
            return;
        }
        auto& of = of_[*event.plant];
        const bool recent = event.happened + calendar::Days{kRecentDays} >= today_ && event.happened <= today_;
        switch (event.kind) {
        case home::EventKind::Flowered:
            of.flowered = recent ? std::optional{event.happened} : of.flowered;
            break;
        case home::EventKind::NewGrowth:
            of.new_growth = recent ? std::optional{event.happened} : of.new_growth;
            break;
        case home::EventKind::Isolated:
            of.set_apart = true;
            break;
        case home::EventKind::Released:
            of.set_apart = false;
            break;
        case home::EventKind::Watered:
            of.watered_today = of.watered_today || event.happened == today_;
            break;
        default:
            break;
        }
    }

    QString short_spot(home::SpotId id) const
    {
        const auto* spot = ground_.household.spot(id);
        if (spot == nullptr) {
            return tr("another spot");
        }
        return text(spot->short_name.empty() ? spot->name : spot->short_name);
    }

    void tell_next(PlantCard& card, const OfPlant& of) const
    {
        const auto* plant = ground_.household.plant(card.id);
        if (of.year == nullptr || plant == nullptr) {
            return;
        }
        if (const auto next = next_move(*ground_.parts, card.id, plant->spot, today_)) {
            card.next = next->on == today_
                            ? tr("to %1 today").arg(short_spot(next->stay->spot))
                            : tr("to %1 %2").arg(short_spot(next->stay->spot), look_.words.day_and_month(next->on));
            card.next_on = next->on;
        }
    }

    /// What matters most comes first.
    void tell_state(PlantCard& card, const OfPlant& of) const
    {
        QStringList states;
        card.apart = of.set_apart;
        if (of.condition != nullptr && of.condition->state != plan::PestState::Clean) {
            card.look = true;
            states << (of.condition->state == plan::PestState::Infested ? tr("pests found") : tr("suspected: look"));
        }
        if (of.isolation != nullptr && of.isolation->is_kept) {
            card.apart = true;
        }
        if (card.apart) {
            states << tr("set apart");
        }
        bool feed = false;
        for (const auto* task : of.tasks) {
            if (std::holds_alternative<plan::CarryInTonight>(task->matter)) {
                states.prepend(tr("carry in tonight"));
            } else if (const auto* move = std::get_if<plan::PlainMove>(&task->matter)) {
                states << tr("to %1 today").arg(short_spot(move->to));
            } else if (std::holds_alternative<plan::CourseStep>(task->matter) ||
                       std::holds_alternative<plan::ColdStep>(task->matter) ||
                       std::holds_alternative<plan::DamageStep>(task->matter)) {
                card.look = true;
                states << tr("look today");
            } else if (const auto* due = std::get_if<plan::FeedingDue>(&task->matter)) {
                feed = feed || due->task == plan::FeedingTask::Feed;
            } else if (std::holds_alternative<plan::WaterDue>(task->matter)) {
                card.look = true;
            }
        }
        for (const auto* ladder : of.ladders) {
            const QString words = ladder_words(*ladder, today_);
            if (!words.isEmpty()) {
                card.hardening = card.hardening || ladder->direction == plan::Direction::Out;
                states << words;
            }
        }
        if (card.verdict == growth::Verdict::Declining) {
            states << tr("declining");
        } else if (card.verdict == growth::Verdict::Recovering) {
            states << tr("recovering");
        }
        if (feed) {
            states << tr("feed today");
        }
        if (of.flowered) {
            states << tr("in flower");
        } else if (of.new_growth) {
            states << tr("new shoots");
        }
        if (of.watered_today) {
            states << tr("watered");
        } else if (std::ranges::any_of(of.tasks, [](const plan::Task* task) {
                       return std::holds_alternative<plan::WaterDue>(task->matter);
                   })) {
            states << tr("feel the mix");
        }
        if (of.water != nullptr && of.water->rests) {
            states << tr("rests");
        }
        card.state = states.isEmpty() ? QString{} : states.first();
    }

    const PlantsGround& ground_;
    const TodayLook& look_;
    calendar::Date today_;
    std::map<home::PlantId, OfPlant> of_;
};

} // namespace

const plants::PlantKind* kind_of(const home::Plant& plant)
{
    const auto found = plants::PlantReference::built_in().find(plant.kind);
    return found ? *found : nullptr;
}

QString gone_words(const home::GonePlant& gone, const YearWords& words)
{
    const QString on = words.date_with_year(gone.on);
    switch (gone.how) {
    case home::GoneHow::Died:
        return tr("died on %1").arg(on);
    case home::GoneHow::GivenAway:
        return tr("given away on %1").arg(on);
    default:
        return tr("taken off the list on %1").arg(on);
    }
}

QString hazard_in_short(const home::Plant& plant, const plants::PlantKind* kind)
{
    using plants::Toxicity;
    if (kind == nullptr) {
        return plant.hazardous ? tr("keep out of reach of children and animals") : QString{};
    }
    const auto word = [](Toxicity of) {
        switch (of) {
        case Toxicity::Deadly:
            return tr("deadly");
        case Toxicity::Toxic:
            return tr("poisonous");
        case Toxicity::Low:
            return tr("slightly poisonous");
        case Toxicity::Irritant:
            return tr("irritant");
        case Toxicity::NotKnownToBe:
            break;
        }
        return QString{};
    };
    const QString people = word(kind->to_people);
    const QString pets = word(kind->to_pets);
    if (people.isEmpty() && pets.isEmpty()) {
        return plant.hazardous ? tr("keep out of reach of children and animals") : QString{};
    }
    if (people == pets) {
        return tr("%1 to people and animals").arg(people);
    }
    if (people.isEmpty()) {
        return tr("%1 to animals").arg(pets);
    }
    return pets.isEmpty() ? tr("%1 to people").arg(people)
                          : tr("%1 to animals, %2 to people").arg(pets, people);
}

Result<std::shared_ptr<const PlantsGround>> plants_ground(std::shared_ptr<const PlantBook> book, calendar::Date today,
                                                          PlantsDepth depth)
{
    // It keeps its place from here on: what is worked out refers to it.
    const auto& read = *book;
    auto household = read.facts.household();
    const auto made = std::make_shared<PlantsGround>(PlantsGround{.kept = std::move(book),
                                                                  .book = read,
                                                                  .household = std::move(household),
                                                                  .today = today,
                                                                  .nights = {},
                                                                  .parts = {},
                                                                  .tasks = {},
                                                                  .verdicts = {}});
    auto& ground = *made;
    const auto& facts = ground.book.facts;
    if (depth == PlantsDepth::Names) {
        return std::shared_ptr<const PlantsGround>{made};
    }
    ground.nights = std::make_shared<const climate::NightModel>(facts.climate.nights());
    ground.parts = plan::round_parts(facts, *ground.nights, today, plan::kUsualRisk);
    ground.tasks = plan::round_of(ground.household, facts.events, *ground.parts, today);
    const auto measurements = ground.book.archive->leading();
    if (!measurements) {
        return measurements.error();
    }
    std::set<home::PlantId> measured;
    for (const auto& of : *measurements) {
        measured.insert(of.plant);
    }
    if (measured.empty()) {
        return std::shared_ptr<const PlantsGround>{made};
    }
    const home::SpotClimate spots{ground.household, facts.climate, facts.log};
    for (const auto& plant : ground.household.plants) {
        if (!measured.contains(plant.id)) {
            continue;
        }
        const auto measures = plan::measures_of(*measurements, plant.id);
        const auto growth = plan::growth_of(plant, measures.front(), *measurements, facts.events,
                                            plan::Whereabouts{plant, facts.events, {}, today}, spots, facts.log);
        if (growth.recovery) {
            ground.verdicts[plant.id] = growth.recovery->judgement.verdict;
        }
    }
    return std::shared_ptr<const PlantsGround>{made};
}

PlantsFacts plants_facts(std::shared_ptr<const PlantsGround> ground, const TodayLook& look)
{
    PlantsFacts facts{.ground = std::move(ground), .cards = {}, .living = 0, .shelves = {}};
    std::vector<const home::Spot*> spots;
    for (const auto& spot : facts.ground->household.spots) {
        spots.push_back(&spot);
    }
    std::ranges::stable_sort(spots, {}, &home::Spot::walking_order);
    std::map<home::SpotId, int> shelf_of;
    for (const auto* spot : spots) {
        shelf_of[spot->id] = static_cast<int>(facts.shelves.size());
        facts.shelves.push_back({.spot = spot->id,
                                 .name = text(spot->name),
                                 .hand = look.hand_of(spot->name),
                                 .capacity = spot->capacity,
                                 .nights = nights_of(*spot, look.words),
                                 .outdoors = home::is_outdoors(spot->kind)});
    }
    const int nowhere = static_cast<int>(facts.shelves.size());
    CardMaker maker(*facts.ground, look);
    bool some_nowhere = false;
    for (const auto& plant : facts.ground->household.plants) {
        const auto shelf = plant.spot ? shelf_of.find(*plant.spot) : shelf_of.end();
        const int at = shelf == shelf_of.end() ? nowhere : shelf->second;
        some_nowhere = some_nowhere || at == nowhere;
        facts.cards.push_back(maker.card(plant, at));
    }
    if (some_nowhere) {
        facts.shelves.push_back({-1, tr("At no spot yet"), -1, 0, tr("M gives it one"), false});
    }
    facts.living = static_cast<int>(facts.cards.size());
    const auto& gone = facts.ground->book.gone;
    for (auto of = gone.rbegin(); of != gone.rend(); ++of) { // The last to go is looked for most.
        facts.cards.push_back(maker.card(*of, static_cast<int>(facts.shelves.size())));
    }
    if (!gone.empty()) {
        facts.shelves.push_back({-2, tr("Gone"), -1, 0, {}, false});
    }
    std::ranges::stable_sort(facts.cards, {}, &PlantCard::shelf);
    return facts;
}

} // namespace lathhouse::models
