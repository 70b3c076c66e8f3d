// Whether to spray a plant now, to wait, or not at all.
#include "app/clock.h"
#include "app/models/ask_form.h"
#include "app/models/asked_kind.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"
#include "app/models/word_form.h"
#include "app/words/spray_words.h"
#include "app/words/table_words.h"
#include "core/plan/spray_gate.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace lathhouse::models {

namespace {

using plan::SprayAnswers;
using plan::SprayCheck;

constexpr double kMostSprayHours = 1000.0;
constexpr double kMostRepottedDays = 10000.0;

/// A question of yes or no, by the check that asks it.
struct SprayYesNo {
    SprayCheck check;
    std::optional<bool> SprayAnswers::*answer;
};
constexpr std::array<SprayYesNo, 18> kSprayYesNo{{{SprayCheck::Label, &SprayAnswers::label_read},
                                                  {SprayCheck::LabelForbids, &SprayAnswers::label_forbids},
                                                  {SprayCheck::TestLeafHurt, &SprayAnswers::test_leaf_hurt},
                                                  {SprayCheck::Place, &SprayAnswers::outdoors},
                                                  {SprayCheck::Windy, &SprayAnswers::windy},
                                                  {SprayCheck::RainSoon, &SprayAnswers::rain_soon},
                                                  {SprayCheck::NoFreshAir, &SprayAnswers::fresh_air},
                                                  {SprayCheck::FlameNear, &SprayAnswers::flame_near},
                                                  {SprayCheck::ChildNear, &SprayAnswers::child_near},
                                                  {SprayCheck::AnimalNear, &SprayAnswers::animal_near},
                                                  {SprayCheck::AsthmaOrPregnant, &SprayAnswers::asthma_or_pregnant},
                                                  {SprayCheck::OpenFlowers, &SprayAnswers::open_flowers},
                                                  {SprayCheck::DirectSun, &SprayAnswers::direct_sun},
                                                  {SprayCheck::DryOrWilted, &SprayAnswers::dry_or_wilted},
                                                  {SprayCheck::Seedling, &SprayAnswers::seedling},
                                                  {SprayCheck::Edible, &SprayAnswers::edible},
                                                  {SprayCheck::EdibleNotOnLabel, &SprayAnswers::crop_on_label},
                                                  {SprayCheck::Homemade, &SprayAnswers::homemade}}};

class SprayAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(SprayAsk)

public:
    SprayAsk(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look, bool writes)
        : PlantAskForm(std::move(ground), plant, look), writes_(writes)
    {
    }

    QString title() const override { return tr("Before a spray: %1").arg(name()); }

    AskValues begin() const override
    {
        AskValues values{{Spray, QStringLiteral("0")}};
        if (const auto* spot = plant_.spot ? ground_->household.spot(*plant_.spot) : nullptr) {
            values[key_of(SprayCheck::Place)] = yes_no_value(home::is_outdoors(spot->kind));
        }
        std::optional<calendar::Date> repotted;
        for (const auto& event : facts().events) {
            if (event.kind == home::EventKind::Repotted && event.plant == plant_.id && event.happened <= today()) {
                repotted = repotted ? std::max(*repotted, event.happened) : event.happened;
            }
        }
        if (repotted) {
            values[RepottedDays] = QString::number(calendar::days_between(*repotted, today()));
        }
        return values;
    }

    AskQuestions questions(const AskValues& values) const override
    {
        AskQuestions all{
            {Spray, AskQuestion::Choice, tr("What is to be sprayed or wiped on"), {}, {}, {},
             sprays()},
            {Warmth, AskQuestion::Number, question(SprayCheck::TemperatureHigh), look_.words.unit()},
            {LeafHours, AskQuestion::Number, question(SprayCheck::TestLeaf), tr("h"), tr("Blank: none was tried")},
            {RepottedDays, AskQuestion::Number, question(SprayCheck::JustRepotted), tr("days"), tr("Blank: long ago")},
            {MixedHours, AskQuestion::Number, question(SprayCheck::MixedHours), tr("h"), tr("Blank: just now"), {}, {},
             spray(values) == plan::SprayKind::Neem}};
        for (const auto& of_check : kSprayYesNo) {
            all.push_back({key_of(of_check.check), AskQuestion::Choice, question(of_check.check), {}, {}, {}, yes_no_choices(),
                           matters(of_check.check, values)});
        }
        if (writes_) { // Of a treatment of the round its plant is asked.
            all.push_back({OtherKind, AskQuestion::Field, tr("Another kind of plant"), {},
                           tr("Blank: %1. Its name, for a plant that is not among yours").arg(name())});
        }
        return all;
    }

    AskAnswer answer(const AskValues& values) const override
    {
        AskAnswer said;
        const auto answers = read(values, said);
        if (said.wrong >= 0) {
            return refused(said.wrong, said.trouble);
        }
        const auto decision = plan::decide_spray(answers);
        said.headline = text(words::spray_verdict(decision));
        said.warning = text(words::table_text(plan::cautions_for(plan::CautionTopic::Label).front()->text));
        for (const auto& finding : decision.findings) {
            add(said, finding.verdict == plan::SprayVerdict::Never  ? AskLine::Caution
                      : finding.verdict == plan::SprayVerdict::Wait ? AskLine::Strong
                                                                    : AskLine::Plain,
                words::spray_finding(finding, units_));
        }
        for (const auto& conflict : decision.conflicts) {
            add(said, AskLine::Plain, words::spray_conflict(conflict, units_));
        }
        tell_open(said, decision);
        if (decision.verdict == plan::SprayVerdict::Go) {
            add(said, AskLine::Plain, words::spray_go());
        } else if (!answers.test_leaf_hours) {
            said.lines.push_back({AskLine::Plain, closed(tr("A leaf tried today is looked at from %1 to %2.")
                                                             .arg(date(today() + calendar::Days{plan::kTestLeafFirstDay}),
                                                                  date(today() + calendar::Days{plan::kTestLeafLastDay})))});
        }
        tell_cautions(said, answers);
        add_sources(said, decision.sources);
        if (!of(values, OtherKind).isEmpty()) {
            said.why_not = tr("Nothing is written of a plant that is not among yours.");
        } else if (decision.verdict == plan::SprayVerdict::Go && writes_) {
            offer(said, answers.spray);
        }
        return said;
    }

private:
    enum Key { Spray, Warmth, LeafHours, RepottedDays, MixedHours, FirstYesNo, OtherKind = 100 };

    static QStringList sprays() // By SprayKind.
    {
        return {tr("soap"), tr("oil"), tr("neem"), tr("alcohol"), tr("what roots take up"), tr("something else")};
    }
    static int key_of(SprayCheck check) { return FirstYesNo + static_cast<int>(check); }
    static QString question(SprayCheck check) { return text(words::spray_question(check)); }
    static plan::SprayKind spray(const AskValues& values)
    {
        return static_cast<plan::SprayKind>(std::clamp(of(values, Spray).toInt(), 0, static_cast<int>(plan::SprayKind::Other)));
    }

    /// Some questions arise by the answer to another alone.
    static bool matters(SprayCheck check, const AskValues& values)
    {
        const auto yes = [&](SprayCheck other) { return yes_no(values, key_of(other)).value_or(false); };
        switch (check) {
        case SprayCheck::LabelForbids:
            return yes(SprayCheck::Label);
        case SprayCheck::TestLeafHurt:
            return !of(values, LeafHours).isEmpty();
        case SprayCheck::Windy:
        case SprayCheck::RainSoon:
            return yes(SprayCheck::Place);
        case SprayCheck::NoFreshAir:
            return !yes(SprayCheck::Place);
        case SprayCheck::FlameNear:
            return spray(values) == plan::SprayKind::Alcohol;
        case SprayCheck::OpenFlowers:
            return yes(SprayCheck::Place) || spray(values) == plan::SprayKind::Systemic;
        case SprayCheck::EdibleNotOnLabel:
            return yes(SprayCheck::Edible);
        case SprayCheck::Homemade:
            return spray(values) == plan::SprayKind::Soap;
        default:
            return true;
        }
    }

    static std::optional<double> number(const AskValues& values, int key, double most, const QString& why, AskAnswer& said)
    {
        const QString words = of(values, key);
        const auto value = words.isEmpty() ? std::nullopt : typed_decimal(words);
        if (!words.isEmpty() && (!value || !(*value >= 0.0 && *value <= most))) {
            said.wrong = key;
            said.trouble = why;
            return std::nullopt;
        }
        return value;
    }

    SprayAnswers read(const AskValues& values, AskAnswer& said) const
    {
        SprayAnswers answers;
        answers.spray = spray(values);
        answers.plant = kind_;
        if (const QString other = of(values, OtherKind); !other.isEmpty()) {
            const auto asked = asked_kind(other);
            if (asked.kind == nullptr) {
                said.wrong = OtherKind;
                said.trouble = asked.trouble;
                return answers;
            }
            answers.plant = asked.kind;
        }
        for (const auto& of_check : kSprayYesNo) {
            if (matters(of_check.check, values)) {
                answers.*of_check.answer = yes_no(values, key_of(of_check.check));
            }
        }
        const QString hours = tr("Write hours, 0 to 1000, or leave it blank.");
        answers.mixed_hours = spray(values) == plan::SprayKind::Neem ? number(values, MixedHours, kMostSprayHours, hours, said) : std::nullopt;
        answers.days_since_repotting =
            number(values, RepottedDays, kMostRepottedDays, tr("Write days, or leave it blank."), said);
        answers.test_leaf_hours = number(values, LeafHours, kMostSprayHours, hours, said);
        if (const QString warmth = of(values, Warmth); !warmth.isEmpty()) {
            answers.temperature = typed_plant_line(warmth, look_.words);
            constexpr double kLeastWarmth = -30.0;
            if (!answers.temperature || answers.temperature->degrees() < kLeastWarmth) {
                said.wrong = Warmth;
                said.trouble = tr("“%1” is no warmth at which anybody sprays.").arg(warmth);
            }
        }
        return answers;
    }

    static void tell_open(AskAnswer& said, const plan::SprayDecision& decision)
    {
        QStringList open;
        for (const auto check : decision.open) {
            if (const QString asked = question(check); !open.contains(asked)) {
                open.append(asked);
            }
        }
        if (!open.isEmpty()) {
            said.lines.push_back({AskLine::Head, tr("Not answered yet")});
        }
        for (const QString& asked : open) {
            said.lines.push_back({AskLine::Plain, asked});
        }
    }

    void tell_cautions(AskAnswer& said, const SprayAnswers& answers) const
    {
        using plan::CautionTopic;
        switch (answers.spray) {
        case plan::SprayKind::Soap:
            add_cautions(said, {CautionTopic::Soap});
            break;
        case plan::SprayKind::Oil:
            add_cautions(said, {CautionTopic::Oil});
            break;
        case plan::SprayKind::Neem:
            add_cautions(said, {CautionTopic::Neem});
            break;
        case plan::SprayKind::Alcohol:
            add_cautions(said, {CautionTopic::AlcoholWipe});
            break;
        case plan::SprayKind::Systemic:
            add_cautions(said, {CautionTopic::SystemicInsecticide});
            break;
        case plan::SprayKind::Other:
            break;
        }
        if (answers.homemade.value_or(false)) {
            add_cautions(said, {CautionTopic::HomemadeMix});
        }
        add_cautions(said, {CautionTopic::Bees, CautionTopic::Ventilation, CautionTopic::Breathing, CautionTopic::ChildOrAnimal,
                            CautionTopic::LocalRules});
        add_kind_cautions(said, answers.plant);
    }

    void offer(AskAnswer& said, plan::SprayKind spray) const
    {
        home::Event event{.plant = plant_.id, .kind = home::EventKind::Treated, .spot = {}, .happened = today(),
                          .entered = now(), .note = ""};
        if (spray != plan::SprayKind::Other) {
            event.details["with"] = sprays().at(static_cast<int>(spray)).toStdString();
        }
        said.entries.events.push_back(std::move(event));
        said.written = tr("%1: treated today.").arg(name());
    }

    bool writes_;
};

} // namespace

std::shared_ptr<const AskForm> spray_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look,
                                         bool writes)
{
    return std::make_shared<const SprayAsk>(std::move(ground), plant, look, writes);
}

} // namespace lathhouse::models
