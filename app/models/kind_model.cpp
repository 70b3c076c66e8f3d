#include "app/models/kind_model.h"

#include "app/models/apostrophes.h"
#include "app/models/asked_kind.h"
#include "app/models/kind_texts.h"
#include "app/models/word_form.h"
#include "app/words/kind_words.h"
#include "app/words/table_words.h"
#include "core/home/new_plant.h"
#include "core/plan/cautions.h"
#include "core/plants/rest_habit.h"

#include <cmath>
#include <utility>

namespace lathhouse::models {

namespace {

using KindFigures = std::vector<SheetRows::Row>; // Qt's lupdate takes a qualified result for the class of the function.

/// A kind's figures, each under what it is.
class KindFigureWords {
    Q_DECLARE_TR_FUNCTIONS(KindFigures)

public:
    KindFigureWords(const plants::PlantKind& kind, const YearWords& words) : kind_(kind), words_(words) {}

    KindFigures all()
    {
        add(tr("Safe night"), words_.temperature(kind_.lines.safe_night));
        add(tr("Harm begins"), words_.temperature(kind_.lines.damage_begins));
        add(tr("May kill"), words_.temperature(kind_.lines.lethal));
        add(tr("Grows well"), tr("%1 to %2").arg(words_.temperature(kind_.comfort_low), words_.temperature(kind_.comfort_high)));
        add(tr("Heat harms"), tr("from %1 on").arg(words_.temperature(kind_.heat_limit)));
        add(tr("Light"), text(words::light_class(kind_.light)));
        add(tr("Light of a day"), tr("%1 mol/m² is good, %2 keeps it alive")
                                      .arg(words_.decimal(kind_.light_to_thrive.moles(), 1), words_.decimal(kind_.light_to_survive.moles(), 1)));
        add(tr("Water"), text(words::drying_class(kind_.drying_class)));
        add(tr("Grows in"), text(words::table_text(kind_.growth_season)));
        add(tr("Its rest"), rest());
        add(tr("Feed"), feed());
        add(tr("Repot"), repot());
        return std::move(rows_);
    }

private:
    void add(const QString& label, const QString& value) { rows_.push_back({label, value, tr("%1: %2").arg(label, value)}); }

    QString bare(double number) const { return words_.decimal(number, number > std::floor(number) ? 1 : 0); }

    QString rest() const
    {
        const auto habit = plants::rest_habit(kind_);
        QStringList parts;
        if (habit.winter == plants::WinterHabit::Rests) {
            parts.append(habit.cool ? tr("stands still in winter, and wants it cool then") : tr("stands still in winter"));
        } else if (habit.winter == plants::WinterHabit::Slows) {
            parts.append(habit.cool ? tr("slower in winter, and wants it cool then") : tr("slower in winter"));
        }
        if (habit.summer_rest) {
            parts.append(tr("stands still in the hot season"));
        }
        if (habit.after_bloom) {
            parts.append(tr("a while after its flowers"));
        }
        if (habit.dry) {
            parts.append(tr("nearly dry while it rests"));
        }
        return parts.isEmpty() ? tr("none known") : parts.join(QStringLiteral("; "));
    }

    QString feed() const
    {
        if (kind_.feed == plants::FeedClass::None) {
            return tr("takes no feed");
        }
        const auto& ppm = kind_.feed_nitrogen_ppm;
        return ppm.high > ppm.low ? tr("while it grows, %1 to %2 ppm nitrogen each time").arg(bare(ppm.low), bare(ppm.high))
                                  : tr("while it grows, %1 ppm nitrogen each time").arg(bare(ppm.low));
    }

    QString repot() const
    {
        const auto& years = kind_.repot_years;
        if (years.high > years.low) {
            return tr("after %1 to %2 years").arg(bare(years.low), bare(years.high));
        }
        return std::abs(years.low - 1.0) < 1e-9 ? tr("after a year") : tr("after %1 years").arg(bare(years.low));
    }

    const plants::PlantKind& kind_;
    const YearWords& words_;
    KindFigures rows_;
};

} // namespace

KindModel::KindModel(YearWords words, QObject* parent)
    : QObject(parent), words_(std::move(words)), hazards_({"strong", "rest", "rust"}), figures_({"label", "value", "sentence"})
{
}

void KindModel::close()
{
    if (open_) {
        open_ = false;
        emit kindChanged();
    }
}

void KindModel::show(const plants::PlantKind& kind)
{
    // One as it would be bought: the kind's own lines.
    const auto plant = home::make_plant(1, kind, {.hazardous = home::is_hazardous(kind)});
    if (!plant) {
        return; // No kind of the tables is one that could not be kept.
    }
    open_ = true;
    name_ = shown_name(kind);
    botanical_ = tr("%1, %2").arg(text(kind.botanical_name), text(kind.family));
    const auto beside = [this](const std::vector<std::string>& names) {
        QStringList others;
        for (const auto& common : names) {
            if (const QString other = printed_apostrophes(text(common)); other != name_) {
                others.append(other);
            }
        }
        return others.join(QStringLiteral(", "));
    };
    const bool english = words::language().empty();
    const QString others = beside(english ? kind.common_names : words::common_names(kind.botanical_name));
    const QString in_english = english ? QString{} : beside(kind.common_names);
    other_names_ = others.isEmpty() ? QString{} : tr("Also called %1.").arg(others);
    if (!in_english.isEmpty()) {
        other_names_ = tr("%1 In English: %2.").arg(other_names_, in_english).trimmed();
    }
    cautions_.clear();
    for (const auto* caution : plan::cautions_for_plant(kind)) {
        cautions_.append(text(words::table_text(caution->text)));
    }
    needs_ = KindTexts::needs(*plant);
    needs_spoken_ = KindTexts::nights(*plant, {}, words_);
    notes_ = KindTexts::sources(&kind);
    notes_.insert(1, tr("Where it grows well, heat, light, growth and rest: %1.").arg(text(words::rests_on_row(kind))));
    notes_.insert(2, tr("Poison: %1.").arg(text(words::toxicity_rests_on(kind))));
    notes_.insert(3, tr("Water, feed, repotting, and light in moles by its class: common practice, no source."));
    hazards_.show(KindTexts::hazards(*plant, &kind));
    figures_.show(KindFigureWords(kind, words_).all());
    emit kindChanged();
}

} // namespace lathhouse::models
