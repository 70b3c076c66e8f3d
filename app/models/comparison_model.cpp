#include "app/models/comparison_model.h"

#include "app/models/word_form.h"
#include "app/models/plant_facts.h"
#include "app/words/growing_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <optional>
#include <utility>

namespace lathhouse::models {

namespace {

/// Asks both plants the same and keeps what they answer.
class Comparing {
    Q_DECLARE_TR_FUNCTIONS(Comparison)

    using Compared = ComparisonModel::Compared;

public:
    Comparing(const std::shared_ptr<const PlantsGround>& shared, std::array<home::PlantId, 2> ids, const PlantDoor& door,
              const TodayLook& look)
        : words_(look.words), units_(unit_system_of(look.words)),
          plants_{shared->household.plant(ids[0]), shared->household.plant(ids[1])}
    {
        if (plants_[0] == nullptr || plants_[1] == nullptr) {
            compared_.gone = true;
            return;
        }
        for (std::size_t side = 0; side < 2; ++side) {
            auto facts = plant_facts(*shared, ids[side], {.newest = 0, .photos = 1}, door, look);
            if (!facts) {
                unread_ = facts.error();
                return;
            }
            facts_[side] = std::move(*facts);
            auto& shown = compared_.sides[side];
            shown.name = facts_[side].name;
            if (!facts_[side].photos.empty()) {
                shown.picture = facts_[side].photos.back().front().toUrl();
            }
        }
        const auto cards = plants_facts(shared, look).cards;
        for (std::size_t side = 0; side < 2; ++side) {
            const auto card = std::ranges::find(cards, ids[side], &PlantCard::id);
            cards_[side] = *card;
        }
    }

    Result<Compared> compare()
    {
        if (unread_) {
            return *unread_;
        }
        if (compared_.gone) {
            return std::move(compared_);
        }
        const QString none = tr("none");
        group(tr("What and where"));
        row(tr("Botanical name"), [&](std::size_t side) { return facts_[side].botanical; });
        row(tr("Stands"), [&](std::size_t side) {
            return cards_[side].spot.isEmpty() ? tr("at no spot") : cards_[side].spot;
        });
        row(tr("Next move"), [&](std::size_t side) {
            return cards_[side].next.isEmpty() ? tr("none in the year ahead") : upper_first(cards_[side].next);
        });
        row(tr("Pot"), [&](std::size_t side) {
            const auto& pot = plants_[side]->pot_volume;
            return pot ? text(words::volume(*pot, units_)) : tr("not said");
        });
        row(tr("Caution"), [&](std::size_t side) {
            return cards_[side].hazard.isEmpty() ? tr("none known, which is no proof") : upper_first(cards_[side].hazard);
        });

        group(tr("Nights and light"));
        row(tr("Killed at"), [&](std::size_t side) { return words_.temperature(plants_[side]->lines.lethal); });
        row(tr("Harmed from"), [&](std::size_t side) { return words_.temperature(plants_[side]->lines.damage_begins); });
        row(tr("At ease above"), [&](std::size_t side) { return words_.temperature(plants_[side]->lines.safe_night); });
        row(tr("Tonight at its spot"), [&](std::size_t side) {
            const auto& here = facts_[side].needs ? facts_[side].needs->here : std::nullopt;
            return here ? tr("about %1").arg(words_.temperature(*here)) : QStringLiteral("–");
        });
        row(tr("Too hot from"), [&](std::size_t side) { return words_.temperature(plants_[side]->heat_limit); });
        row(tr("Good light"), [&](std::size_t side) {
            return tr("%1 mol/m² a day").arg(words_.decimal(plants_[side]->light_to_thrive.moles(), 1));
        });
        row(tr("Keeps it alive"), [&](std::size_t side) {
            return tr("%1 mol/m² a day").arg(words_.decimal(plants_[side]->light_to_survive.moles(), 1));
        });
        row(tr("Between waterings"), [&](std::size_t side) {
            return plants_[side]->must_dry ? tr("dries right out") : tr("does not dry out");
        });

        group(tr("Growth"));
        row(tr("Measured"), [&](std::size_t side) {
            const auto& readings = facts_[side].readings;
            return readings.empty() ? none : tr("%1: %2").arg(facts_[side].chart_title, readings.front()[1].toString());
        });
        row(tr("Since the reading before"), [&](std::size_t side) {
            const auto& readings = facts_[side].readings;
            const auto change = readings.empty() ? QString{} : readings.front()[2].toString();
            return change.isEmpty() ? QStringLiteral("–") : change;
        });
        row(tr("Recovery"), [&](std::size_t side) {
            const auto& of = facts_[side];
            return of.verdict_word.isEmpty() ? tr("nothing to judge")
                                             : tr("%1 %2").arg(of.verdict_word, of.verdict_after);
        });
        row(tr("Next reading"), [&](std::size_t side) {
            return facts_[side].next_head.isEmpty() ? none : facts_[side].next_head;
        });
        return std::move(compared_);
    }

private:
    void group(const QString& name) { group_ = name; }

    template <class Tell>
    void row(const QString& what, const Tell& tell)
    {
        const QString first = tell(0);
        const QString second = tell(1);
        const bool differs = first != second;
        compared_.differing += differs ? 1 : 0;
        const QString sentence =
            differs ? tr("%1: %2 %3, %4 %5.").arg(what, facts_[0].name, first, facts_[1].name, second)
                    : tr("%1: both %2.").arg(what, first);
        compared_.rows.push_back({std::exchange(group_, QString{}), what, first, second, differs, sentence});
    }

    const YearWords& words_;
    words::UnitSystem units_;
    std::array<const home::Plant*, 2> plants_;
    std::array<PlantFacts, 2> facts_;
    std::array<PlantCard, 2> cards_;
    QString group_;
    std::optional<Error> unread_;
    ComparisonModel::Compared compared_;
};

} // namespace

ComparisonModel::ComparisonModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), rows_({"group", "what", "first", "second", "differs", "sentence"})
{
    connect(&plants_, &PlantsModel::groundChanged, this, [this] {
        if (shown_) {
            reload();
        }
    });
}

QString ComparisonModel::summary() const
{
    const int count = rows_.rowCount();
    return differing_ == 0 ? tr("They differ in none of these %1.").arg(count)
                           : tr("They differ in %1 of these %2, which are in bold. Why they differ, two plants cannot show.")
                                 .arg(differing_)
                                 .arg(count);
}

bool ComparisonModel::open()
{
    const auto marked = plants_.marked();
    if (marked.size() != 2) {
        return false;
    }
    ids_ = {marked[0], marked[1]};
    shown_ = true;
    emit shownChanged();
    reload();
    return true;
}

void ComparisonModel::close()
{
    if (shown_) {
        shown_ = false;
        emit shownChanged();
    }
}

void ComparisonModel::read()
{
    const auto ground = plants_.facts().ground;
    if (!shown_ || !ground) {
        return;
    }
    work<Compared>(
        [ground, ids = ids_, door = plants_.door(), look = plants_.look()]() -> Result<Compared> {
            return Comparing(ground, ids, door, look).compare();
        },
        [this](Result<Compared> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            if (made->gone) {
                close();
                return;
            }
            sides_ = std::move(made->sides);
            differing_ = made->differing;
            rows_.show(std::move(made->rows));
            set_known();
            emit comparedChanged();
        });
}

} // namespace lathhouse::models
