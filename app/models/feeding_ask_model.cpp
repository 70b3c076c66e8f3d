#include "app/models/feeding_ask_model.h"

#include "app/models/typed_decimal.h"
#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/table_words.h"
#include "core/plan/cautions.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

struct FeedingAnswer {
    std::vector<SheetRows::Row> spells;
    QStringList notes;
};

using SpellRow = SheetRows::Row; // Qt's lupdate takes a qualified result for the class of the function.

/// A plant's feeding in words.
class FeedingYearWords {
    Q_DECLARE_TR_FUNCTIONS(FeedingYear)

public:
    explicit FeedingYearWords(const TodayLook& look) : words_(look.words) {}

    FeedingAnswer of(const plan::PlantFeeding& feeding, const plan::FeedingOptions& options) const
    {
        // Windows and what lies between them, by date.
        std::vector<std::pair<calendar::Date, SheetRows::Row>> spells;
        for (const auto& window : feeding.windows) {
            spells.emplace_back(window.from, row(window.from, window.to, window_words(window)));
        }
        for (const auto& rest : feeding.withheld) {
            spells.emplace_back(rest.from, row(rest.from, rest.to, tr("no feed: %1").arg(text(words::why(rest)))));
        }
        std::ranges::stable_sort(spells, {}, [](const auto& spell) { return spell.first; });
        FeedingAnswer answer;
        for (auto& spell : spells) {
            answer.spells.push_back(std::move(spell.second));
        }
        if (!feeding.days.empty()) {
            const auto& next = feeding.days.front();
            answer.notes.append(closed(tr("Next feed %1 at %2 ppm nitrogen; it can wait until %3.")
                                           .arg(words_.short_date(next.on), words_.decimal(next.nitrogen_ppm, 0),
                                                words_.day_and_month(next.can_wait_until))));
        }
        if (feeding.leaching && feeding.leaching->due) {
            const auto& leaching = *feeding.leaching;
            const QString water = text(words::volume(leaching.water, unit_system_of(words_)));
            const QString due = words_.short_date(*leaching.due);
            answer.notes.append(leaching.rough ? tr("Wash salts out about %1 with %2, twice the pot as guessed from its weight.").arg(due, water)
                                               : tr("Wash salts out about %1 with %2, twice the pot.").arg(due, water));
        }
        if (options.water == plan::WaterHardness::Hard) {
            answer.notes.append(tr("Hard water leaves a crust and makes the mix less acid: use rain for citrus, ferns and others that want it acid."));
        }
        answer.notes.append(tr("Water from a softener holds salt: not for plants."));
        if (options.lamps) {
            for (const auto* caution : plan::cautions_for(plan::CautionTopic::LampsAndWater)) {
                answer.notes.append(text(words::table_text(caution->text)));
            }
        }
        answer.notes.append(tr("Dates are by usual weather: feed when you see it grow, never a dry pot, and follow the label."));
        return answer;
    }

private:
    QString window_words(const plan::FeedingWindow& window) const
    {
        const QString low = words_.decimal(window.nitrogen_ppm.low, 0);
        const QString high = words_.decimal(window.nitrogen_ppm.high, 0);
        const QString said = tr("every %1 days, %2 to %3 ppm nitrogen").arg(QString::number(window.every_days), low, high);
        if (window.young) {
            return tr("%1, half the strength while it is young").arg(said);
        }
        if (window.dim) {
            return window.by_lamps ? tr("%1, weak for want of light, by the lamps").arg(said) : tr("%1, weak for want of light").arg(said);
        }
        return window.by_lamps ? tr("%1, by the lamps").arg(said) : said;
    }

    SpellRow row(calendar::Date from, std::optional<calendar::Date> to, const QString& said) const
    {
        const QString dates = !to          ? tr("%1 on").arg(words_.day_and_month(from))
                              : *to == from ? words_.day_and_month(from)
                                            : tr("%1 to %2").arg(words_.day_and_month(from), words_.day_and_month(*to));
        return {dates, said, tr("%1: %2").arg(dates, said)};
    }

    const YearWords& words_;
};

} // namespace

FeedingAskModel::FeedingAskModel(PlantsModel& plants, QObject* parent)
    : SheetModel(parent), plants_(plants), spells_({"dates", "words", "sentence"})
{
    connect(&plants_, &PlantsModel::openedChanged, this, &FeedingAskModel::clear);
}

void FeedingAskModel::clear()
{
    ++asked_;
    clear_error();
    notes_.clear();
    spells_.show({});
    emit answered();
}

bool FeedingAskModel::ask(const QString& lamp_hours, const QString& flux, int water)
{
    constexpr double kMostHours = 24.0;
    constexpr double kMostFlux = 2500.0;
    clear_error();
    const auto ground = plants_.facts().ground;
    if (!ground || !ground->parts) {
        fail_with(tr("The year is still being worked out; ask again in a moment."));
        return false;
    }
    const auto number = [](const QString& typed) { return typed.trimmed().isEmpty() ? std::optional{0.0} : typed_decimal(typed, {"h"}); };
    const auto hours = number(lamp_hours);
    if (!hours || *hours < 0.0 || *hours > kMostHours) {
        fail_with(tr("Write how many hours a day the lamps burn, 0 to 24."));
        return false;
    }
    const auto light = number(flux);
    if (!light || *light < 0.0 || *light > kMostFlux) {
        fail_with(tr("The lamps’ light at the leaves lies between 0 and 2500 micromoles; leave it blank where you do not know."));
        return false;
    }
    if (*light > 0.0 && *hours <= 0.0) {
        fail_with(tr("Say how many hours a day the lamps burn as well."));
        return false;
    }
    plan::FeedingOptions options{.from = plants_.look().today};
    if (*hours > 0.0) {
        options.lamps = plan::lamps_of(*hours, *light > 0.0 ? std::optional{PhotonFlux::from_micromoles(*light)} : std::nullopt);
    }
    options.water = water == Hard ? plan::WaterHardness::Hard : water == Soft ? plan::WaterHardness::Soft : plan::WaterHardness::Unknown;
    const int asked = ++asked_;
    work<FeedingAnswer>(
        [ground, plant = plants_.opened(), options, look = plants_.look()]() -> Result<FeedingAnswer> {
            const auto& facts = ground->book.facts;
            const home::SpotClimate spots{ground->household, facts.climate, facts.log};
            const auto year = plan::feeding_year(ground->household, facts.climate, spots, facts.events,
                                                 ground->parts->plan.plants, options);
            const auto of = std::ranges::find(year, plant, &plan::PlantFeeding::plant);
            if (of == year.end()) {
                return Error{ErrorCode::NotFound, "the plant is not there any more"};
            }
            return FeedingYearWords(look).of(*of, options);
        },
        [this, asked](Result<FeedingAnswer> answer) {
            if (asked != asked_) {
                return;
            }
            if (!answer) {
                fail(answer.error());
                return;
            }
            spells_.show(std::move(answer->spells));
            notes_ = std::move(answer->notes);
            emit answered();
        });
    return true;
}

} // namespace lathhouse::models
