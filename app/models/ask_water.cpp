// When to look whether a plant wants water, its roots and its winter.
#include "app/models/ask_form.h"
#include "app/models/typed_decimal.h"
#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/table_words.h"
#include "core/plan/growing_rules.h"
#include "core/plan/roots.h"
#include "core/plan/water.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr int kMostLookDays = 365;
constexpr int kUsualLookDays = 14;
constexpr int kLooksListed = 40; ///< More are of no use on a screen.
constexpr int kShortIntervals = 3;
constexpr double kShortFactor = 0.6; ///< As the command line says it.

class WaterAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(WaterAsk)

public:
    WaterAsk(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
        : PlantAskForm(std::move(ground), plant, look)
    {
        if (!ground_->parts) {
            return;
        }
        const home::SpotClimate spots{ground_->household, facts().climate, facts().log};
        const auto& stays = ground_->parts->plan.plants;
        const auto looks = plan::water_looks(ground_->household, facts().climate, spots, facts().events, stays, today(), kMostLookDays);
        if (const auto found = std::ranges::find(looks, plant_.id, &plan::WaterLook::plant); found != looks.end()) {
            looks_ = *found;
        }
        const auto roots = plan::roots_of_year(ground_->household, facts().climate, spots, stays, today());
        if (const auto found = std::ranges::find(roots, plant_.id, &plan::RootsOfPlant::plant); found != roots.end()) {
            roots_ = *found;
        }
        wet_ = plan::wet_spells(ground_->household, spots, today());
    }

    QString title() const override { return tr("Water, roots and winter: %1").arg(name()); }

    AskQuestions questions(const AskValues&) const override
    {
        return {{DaysAhead, AskQuestion::Number, tr("Looks of the next"), tr("days"), tr("Blank: %1").arg(kUsualLookDays)}};
    }

    AskAnswer answer(const AskValues& values) const override
    {
        if (!looks_) {
            return not_yet();
        }
        const QString typed = of(values, DaysAhead);
        const auto number = typed.isEmpty() ? std::optional<double>{kUsualLookDays} : typed_decimal(typed);
        if (!number || !(*number >= 1.0 && *number <= kMostLookDays) || std::floor(*number) < *number) {
            return refused(DaysAhead, tr("Write days, 1 to %1.").arg(kMostLookDays));
        }
        AskAnswer said{.headline = tr("It stands at no spot, so nothing can be said; give it one.")};
        if (looks_->due) {
            said.headline = *looks_->due <= today() ? closed(tr("Look at the mix today: %1.").arg(text(words::why(looks_->why))))
                                                    : closed(tr("Look at the mix on %1: %2.").arg(date(*looks_->due), text(words::why(looks_->why))));
            tell_pot(said);
            tell_looks(said, static_cast<int>(*number));
        }
        tell_roots(said);
        add_cautions(said, {plan::CautionTopic::HeavyPot});
        said.lines.push_back({AskLine::Quiet, tr("Reckoned from usual weather; heat, wind and a full crown make it sooner. Empty saucers.")});
        add(said, AskLine::Quiet, words::sources_line(plan::GrowingRules::built_in().sources_of(words::water_rules())));
        return said;
    }

private:
    enum Key { DaysAhead };

    QString litres(Litres value) const { return text(words::volume(value, units_)); }

    void tell_pot(AskAnswer& said) const
    {
        said.lines.push_back({AskLine::Plain, tr("A look is a finger in the mix or the pot lifted: water only what is dry as its kind wants it.")});
        if (looks_->last_watered) {
            said.lines.push_back({AskLine::Plain, closed(tr("Last watered on %1.").arg(date(*looks_->last_watered)))});
        }
        said.lines.push_back({AskLine::Plain, tr("After a watering, a look about every %1 now.").arg(text(words::days(looks_->every_days)))});
        if (const auto& habit = looks_->habit; habit.intervals > 0) {
            said.lines.push_back({AskLine::Plain, habit.intervals == 1 ? tr("Learnt from 1 interval of yours.")
                                                                       : tr("Learnt from %1 intervals of yours.").arg(habit.intervals)});
            if (habit.intervals >= kShortIntervals && habit.factor < kShortFactor) {
                said.lines.push_back({AskLine::Strong, tr("They are short for such a pot: feel before you water.")});
            }
        }
        const auto& pot = looks_->pot;
        said.lines.push_back({AskLine::Plain, pot.size.from_weight
                                                  ? tr("The pot holds about %1 (guessed from its weight) and draws about %2 a day.")
                                                        .arg(litres(pot.size.volume), litres(pot.drawn_of_day))
                                                  : tr("The pot holds %1 and draws about %2 a day.")
                                                        .arg(litres(pot.size.volume), litres(pot.drawn_of_day))});
        said.lines.push_back({AskLine::Plain, tr("What it draws is rough, from half of it to double, as the size of its crown is not reckoned in: "
                                                 "the finger and the weight of the pot decide.")});
        said.lines.push_back({AskLine::Plain, tr("Of a full pot roots draw about %1 with ease; a look is due once %2 is gone.")
                                                  .arg(litres(pot.available), litres(pot.may_go))});
        if (looks_->nearly_dry) {
            said.lines.push_back({AskLine::Strong, tr("It rests: hardly any water.")});
        } else if (looks_->rests) {
            said.lines.push_back({AskLine::Strong, tr("It rests: less water.")});
        } else if (looks_->must_dry) {
            said.lines.push_back({AskLine::Strong, tr("It must dry right out first.")});
        }
    }

    void tell_looks(AskAnswer& said, int days) const
    {
        said.lines.push_back({AskLine::Head, tr("Looks, as if it were watered at each")});
        int listed = 0;
        for (const auto day : looks_->looks) {
            if (day < today() + calendar::Days{days} && ++listed <= kLooksListed) {
                said.lines.push_back({AskLine::Dated, tr("feel the mix, or lift the pot"), date(day)});
            }
        }
        if (listed == 0) {
            said.lines.push_back({AskLine::Plain, tr("None in these days.")});
        } else if (listed > kLooksListed) {
            said.lines.push_back({AskLine::Plain, tr("And %1 more.").arg(listed - kLooksListed)});
        }
    }

    void tell_roots(AskAnswer& said) const
    {
        said.lines.push_back({AskLine::Head, tr("Roots and winter quarters")});
        if (roots_) {
            said.lines.push_back({AskLine::Plain, tr("In its pot, roots are at risk from %1 on.").arg(look_.words.temperature(roots_->cold_line))});
            if (const auto& winter = roots_->winter) {
                said.lines.push_back({AskLine::Plain, tr("Its winter by the plan: %1, %2 on the mean, %3 mol/m² of light a day: %4.")
                                                          .arg(text(ground_->household.spot(winter->spot)->name),
                                                               look_.words.temperature(winter->mean),
                                                               look_.words.decimal(winter->light.moles(), 1),
                                                               text(words::winter_words(winter->quarters)))});
                if (winter->wants_cool) {
                    said.lines.push_back({AskLine::Plain, tr("Its kind rests cool.")});
                }
            }
            for (const auto& sentence : words::advice(*roots_, ground_->household, units_)) {
                add(said, AskLine::Strong, sentence);
            }
        }
        QStringList spells;
        for (const auto& spell : wet_) {
            spells.append(tr("%1 to %2").arg(look_.words.day_and_month(spell.from), look_.words.day_and_month(spell.to)));
        }
        if (!spells.isEmpty()) {
            add(said, AskLine::Plain, words::wet_season(spells.join(QStringLiteral(", ")).toStdString()));
        }
    }

    std::optional<plan::WaterLook> looks_; ///< Of a year; none before the plan is made.
    std::optional<plan::RootsOfPlant> roots_;
    std::vector<plan::WetSpell> wet_;
};

} // namespace

std::shared_ptr<const AskForm> water_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
{
    return std::make_shared<const WaterAsk>(std::move(ground), plant, look);
}

} // namespace lathhouse::models
