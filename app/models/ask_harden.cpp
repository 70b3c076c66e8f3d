// The days before a plant stays out, and those around its coming in.
#include "app/models/ask_form.h"
#include "app/models/word_form.h"
#include "app/words/ladder_words.h"
#include "core/plan/hardening.h"

#include <QCoreApplication>

#include <utility>

namespace lathhouse::models {

namespace {

class HardenAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(HardenAsk)

public:
    using PlantAskForm::PlantAskForm;

    QString title() const override { return tr("Going out and coming in: %1").arg(name()); }

    AskQuestions questions(const AskValues&) const override { return {}; }

    AskAnswer answer(const AskValues&) const override
    {
        if (!ground_->parts) {
            return not_yet();
        }
        AskAnswer said{.headline = tr("Neither goes out nor comes in within the year’s plan.")};
        bool first = true;
        for (const auto& ladder : ground_->parts->ladders) {
            if (ladder.plant != plant_.id) {
                continue;
            }
            const QString head = upper_first(text(words::ladder_head(ladder, ground_->household, units_)));
            if (first) {
                said.headline = head;
            } else {
                said.lines.push_back({AskLine::Head, head});
            }
            first = false;
            tell(said, ladder);
        }
        if (!first) {
            said.lines.push_back({AskLine::Quiet, tr("7 to 14 days out, a week of shade, a look, a bath, 14 days apart and 4 to 8 weeks of stepping down in: "
                                                     "extension advice; how they grow with the step of light and cold is common practice, without a source. "
                                                     "Leaves that bleach or hang want a step back.")});
        }
        return said;
    }

private:
    void tell(AskAnswer& said, const plan::Ladder& ladder) const
    {
        for (const auto& item : ladder.items) {
            said.lines.push_back({item.until < today() ? AskLine::Past : AskLine::Dated, upper_first(text(words::ladder_item(item))),
                                  item.date == item.until ? date(item.date) : tr("%1 to %2").arg(date(item.date), date(item.until))});
        }
        for (const auto& note : words::ladder_notes(ladder, ground_->household, units_)) {
            said.lines.push_back({AskLine::Plain, upper_first(text(note))});
        }
    }
};

} // namespace

std::shared_ptr<const AskForm> harden_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
{
    return std::make_shared<const HardenAsk>(std::move(ground), plant, look);
}

} // namespace lathhouse::models
