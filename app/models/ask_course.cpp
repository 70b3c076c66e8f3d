// A plant's course against pests: its steps, when it may end, and what is known of the pest.
#include "app/models/ask_form.h"
#include "app/models/word_form.h"
#include "app/words/course_words.h"
#include "app/words/table_words.h"
#include "core/plants/pest.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr std::size_t kStepsShown = 8;

class CourseAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(CourseAsk)

public:
    CourseAsk(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
        : PlantAskForm(std::move(ground), plant, look)
    {
        if (!ground_->parts) {
            return;
        }
        const auto& pests = ground_->parts->pests;
        for (const auto& course : pests.courses) {
            if (course.plant == plant_.id) {
                courses_.push_back(course);
            }
        }
        if (const auto found = std::ranges::find(pests.plants, plant_.id, &plan::PlantCondition::plant); found != pests.plants.end()) {
            condition_ = &*found;
        }
    }

    QString title() const override { return tr("Pests and the course: %1").arg(name()); }

    AskQuestions questions(const AskValues&) const override
    {
        QStringList pests{courses_.empty() ? tr("none in particular") : tr("its own")};
        for (const auto& pest : plants::PestTable::built_in().pests()) {
            pests.append(text(words::table_text(pest.name)));
        }
        return {{Pest, AskQuestion::Choice, tr("What is known of a pest"), {}, {}, {}, pests}};
    }

    AskAnswer answer(const AskValues& values) const override
    {
        if (condition_ == nullptr) {
            return not_yet();
        }
        AskAnswer said{.headline = state_words()};
        for (const auto& course : courses_) {
            tell_course(said, course);
        }
        tell_apart(said);
        if (!courses_.empty()) {
            add(said, AskLine::Caution, words::course_hygiene());
            add_cautions(said, {plan::CautionTopic::Label, plan::CautionTopic::LocalRules});
            add_plant_cautions(said);
        }
        const auto* asked = asked_pest(values);
        if (asked != nullptr) {
            tell_pest(said, *asked);
        } else {
            for (const auto& course : courses_) {
                if (!course.pest_is_assumed) {
                    tell_pest(said, *course.pest);
                }
            }
        }
        add_sources(said, words::course_sources(courses_, asked));
        return said;
    }

private:
    enum Key { Pest };

    QString state_words() const
    {
        const QString why = text(words::why(*condition_, ground_->household));
        switch (condition_->state) {
        case plan::PestState::Infested:
            return closed(tr("Infested: %1.").arg(why));
        case plan::PestState::Suspect:
            return closed(tr("Suspect: %1.").arg(why));
        case plan::PestState::Clean:
            break;
        }
        return closed(tr("Clean: %1.").arg(why));
    }

    static const plants::Pest* asked_pest(const AskValues& values)
    {
        const auto pests = plants::PestTable::built_in().pests();
        const int which = of(values, Pest).toInt() - 1;
        return which >= 0 && which < static_cast<int>(pests.size()) ? &pests[static_cast<std::size_t>(which)] : nullptr;
    }

    void tell_course(AskAnswer& said, const plan::Course& course) const
    {
        add(said, AskLine::Head,
            course.pest_is_assumed ? tr("A pest without a known name").toStdString() : words::table_text(course.pest->name));
        for (const auto& sentence : words::course_ends(course)) {
            add(said, AskLine::Plain, sentence);
        }
        if (course.state == plan::PestState::Infested) {
            said.lines.push_back({AskLine::Plain, tr("Since the last find on %1: treated %2 times, clean looks %3.")
                                                      .arg(date(course.last_find))
                                                      .arg(course.treatments)
                                                      .arg(course.clean_looks)});
        } else {
            said.lines.push_back({AskLine::Plain, tr("Since the last contact on %1: clean looks %2.")
                                                      .arg(date(course.last_find))
                                                      .arg(course.clean_looks)});
        }
        for (std::size_t index = 0; index < std::min(kStepsShown, course.steps.size()); ++index) {
            const auto& step = course.steps[index];
            const QString words = upper_first(text(words::step(step)));
            // What was not done stays to be done.
            said.lines.push_back({AskLine::Dated, step.date < today() ? tr("Overdue: %1").arg(words) : words, date(step.date)});
        }
        if (course.steps.size() > kStepsShown) {
            said.lines.push_back({AskLine::Plain, tr("And so on, every %1 days at this temperature.").arg(course.gap_days)});
        }
    }

    void tell_apart(AskAnswer& said) const
    {
        const auto& pests = ground_->parts->pests;
        for (const auto& need : pests.isolation) {
            if (need.plant == plant_.id) {
                add(said, AskLine::Strong, words::isolation(need, ground_->household));
            }
        }
        for (const auto& remark : pests.remarks) {
            if (!courses_.empty() && (!remark.plant || remark.plant == plant_.id)) {
                add(said, AskLine::Plain, words::course_remark(remark, ground_->household));
            }
        }
    }

    static void tell_pest(AskAnswer& said, const plants::Pest& pest)
    {
        said.lines.push_back({AskLine::Head, tr("%1 (%2)").arg(text(words::table_text(pest.name)), text(pest.botanical_name))});
        for (const auto& line : words::pest_lines(pest)) {
            add(said, AskLine::Plain, line);
        }
    }

    std::vector<plan::Course> courses_;
    const plan::PlantCondition* condition_ = nullptr; ///< nullptr before the plan is made.
};

} // namespace

std::shared_ptr<const AskForm> course_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
{
    return std::make_shared<const CourseAsk>(std::move(ground), plant, look);
}

} // namespace lathhouse::models
