#include "app/models/plant_facts.h"

#include "app/models/event_words.h"
#include "app/models/growth_facts.h"
#include "app/models/kind_texts.h"
#include "app/models/next_move.h"
#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/kind_words.h"
#include "app/words/measurement_words.h"
#include "app/words/plan_words.h"
#include "app/words/table_words.h"
#include "core/base/parse.h"
#include "core/home/spot_climate.h"
#include "core/plan/withheld.h"

#include <QCoreApplication>
#include <QUrl>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr auto kWorthSaying = Probability::literal(0.001); ///< A chance of harm tonight.

bool is_task_mark(home::EventKind kind)
{
    return kind == home::EventKind::TaskDone || kind == home::EventKind::TaskPostponed ||
           kind == home::EventKind::TaskSkipped;
}

class FactMaker {
    Q_DECLARE_TR_FUNCTIONS(PlantFacts)

public:
    /// household: with the plant, also where it is gone.
    FactMaker(const PlantsGround& ground, const journal::PlantPage& records, const home::Household& household, const home::Plant& plant,
              const home::GonePlant* gone, const TodayLook& look)
        : ground_(ground), records_(records), facts_(ground.book.facts), household_(household), plant_(plant), gone_(gone),
          kind_(kind_of(plant)), look_(look), words_(look.words), units_(unit_system_of(look.words)),
          spots_(household_, facts_.climate, facts_.log),
          where_(plant, facts_.events, {}, look.today)
    {
        shown_.id = plant.id;
        shown_.name = text(plant.name);
        shown_.botanical = text(plant.kind);
    }

    PlantFacts make(const journal::PlantAsked& asked, const PlantDoor& door, const PlantArchive& archive, const JudgeAsked& judge)
    {
        tell_since();
        if (gone_ == nullptr) {
            tell_chips();
        } else {
            shown_.left = tr("Gone: %1. All that was kept of it stays; notes and photographs from before can be added.")
                              .arg(gone_words(*gone_, words_));
        }
        tell_growth(shown_, {records_, facts_, household_, plant_, where_, spots_, look_, archive}, asked.kind, judge);
        if (gone_ == nullptr) {
            tell_needs();
            shown_.hazards = KindTexts::hazards(plant_, kind_);
            if (was_sprayed()) {
                shown_.hazards.insert(shown_.hazards.begin(), {tr("Do not eat."), QString{}, true});
            }
        } else { // It is measured no more.
            shown_.next_head.clear();
            shown_.next_rest.clear();
            if (shown_.chart) {
                shown_.chart->next_reading.reset();
            }
        }
        shown_.notes = KindTexts::sources(kind_);
        tell_history(asked.newest);
        tell_photos(door);
        return std::move(shown_);
    }

private:
    /// Hit by a spray within a year, and not said to be nothing that is eaten: a year is common practice, no source; label and
    /// local advice say more.
    bool was_sprayed() const
    {
        return std::ranges::any_of(facts_.events, [this](const home::Event& event) {
            return event.plant == plant_.id && event.kind == home::EventKind::ChemicalDamage && event.detail("edible") != "no" &&
                   calendar::days_between(event.happened, look_.today) <= 365;
        });
    }
    QString date_words(calendar::Date date) const
    {
        const bool near = std::abs(calendar::days_between(date, look_.today)) < 300;
        return near ? words_.day_and_month(date) : words_.date_with_year(date);
    }

    void tell_since()
    {
        QStringList parts;
        const auto first = std::ranges::find(facts_.events, std::optional{plant_.id}, &home::Event::plant);
        if (first != facts_.events.end()) {
            parts.append(tr("known since %1").arg(words_.date_with_year(first->happened)));
        }
        for (const auto& of : ground_.book.descents) {
            if (of.plant == plant_.id && of.parent) {
                const auto* parent = household_.plant(*of.parent);
                parts.append(parent != nullptr ? tr("divided from %1").arg(text(parent->name)) : tr("divided from a plant that is gone"));
            }
        }
        if (plant_.pot_volume) {
            parts.append(tr("pot %1").arg(text(words::volume(*plant_.pot_volume, units_))));
        }
        if (plant_.pot_kilograms > 0.0) {
            parts.append(tr("about %1 wet").arg(text(words::weight(plant_.pot_kilograms, units_))));
        }
        shown_.since = parts.join(QStringLiteral(" · "));
    }

    void chip(const QString& words, int hand, const QString& reason)
    {
        shown_.chips.push_back({words, hand, reason});
    }

    void tell_chips()
    {
        const auto* spot = plant_.spot ? household_.spot(*plant_.spot) : nullptr;
        if (spot != nullptr) {
            chip(text(spot->name), look_.hand_of(spot->name), tr("where it stands"));
        } else {
            chip(tr("at no spot yet"), -1, tr("M gives it one"));
        }
        if (!ground_.parts) {
            return;
        }
        const auto& parts = *ground_.parts;
        for (const auto& of : parts.pests.plants) {
            if (of.plant == plant_.id && of.state != plan::PestState::Clean) {
                chip(of.state == plan::PestState::Infested ? tr("pests found") : tr("suspected"), -1,
                     tr("since %1").arg(date_words(of.since)));
            }
        }
        if (const auto* tonight = coming_night(); tonight != nullptr && tonight->plant.damage >= kWorthSaying) {
            const QString chance = YearWords::chance(tonight->plant.damage);
            const bool carry = tonight->plant.carry_in && tonight->by_forecast;
            chip(carry ? tr("carry in tonight: %1 for harm").arg(chance) : tr("tonight: %1 for harm").arg(chance), -1,
                 tonight->by_forecast ? tr("by the forecast") : tr("by the season alone"));
        }
        const auto next = next_move(parts, plant_.id, plant_.spot, look_.today);
        const auto* to = next ? household_.spot(next->stay->spot) : nullptr;
        if (to == nullptr) {
            const auto refused = std::ranges::find(parts.plan.refusals, plant_.id, &plan::Refusal::plant);
            chip(tr("stays where it is"), -1,
                 refused != parts.plan.refusals.end() ? upper_first(text(words::refusal(*refused, units_)))
                                                      : tr("for the year ahead, by the plan"));
        } else {
            chip(next->on == look_.today ? tr("to %1 today").arg(text(to->name))
                                         : tr("to %1 %2").arg(text(to->name), words_.day_and_month(next->on)),
                 look_.hand_of(to->name),
                 next->stay->risk_out ? tr("chance of a harmful night after it: %1").arg(YearWords::chance(*next->stay->risk_out))
                                      : tr("by the plan"));
        }
        for (const auto& of : parts.feeding) {
            if (of.plant != plant_.id) {
                continue;
            }
            const auto* held = plan::withheld_on(of, look_.today);
            tell_feed(held, of);
            if (held != nullptr) {
                chip(feed_words(*held), -1, upper_first(text(words::why(*held))));
            } else if (const auto day = std::ranges::find_if(
                           of.days, [this](const plan::FeedDay& feed) { return feed.on >= look_.today; });
                       day != of.days.end()) {
                chip(day->on == look_.today ? tr("feed today") : tr("feed %1").arg(words_.day_and_month(day->on)), -1,
                     tr("%1 ppm nitrogen").arg(words_.decimal(day->nitrogen_ppm, 0)));
            }
        }
    }

    /// A plant that rests, is sick or was just potted has no dose; one of a kind of the grower's own has one by its label.
    void tell_feed(const plan::Withheld* held, const plan::PlantFeeding& of)
    {
        const auto feeder = kind_ != nullptr ? std::optional{kind_->feed} : std::nullopt;
        if (held != nullptr) {
            if (held->why == plan::WithheldWhy::UnknownKind) {
                shown_.feed = DoseWish{text(plant_.name), 0.0, feeder};
                shown_.feed_line = tr("Feed: %1.").arg(text(words::why(*held)));
            }
            return;
        }
        const auto day =
            std::ranges::find_if(of.days, [this](const plan::FeedDay& feed) { return feed.on >= look_.today; });
        if (day == of.days.end()) {
            return;
        }
        shown_.feed = DoseWish{text(plant_.name), day->nitrogen_ppm, feeder};
        const QString ppm = words_.decimal(day->nitrogen_ppm, 0);
        shown_.feed_line = day->on == look_.today
                               ? tr("Feed today, %1 ppm nitrogen. The label comes first.").arg(ppm)
                               : tr("Feed on %1, %2 ppm nitrogen. The label comes first.").arg(words_.day_and_month(day->on), ppm);
    }

    QString feed_words(const plan::Withheld& held) const
    {
        if (held.why == plan::WithheldWhy::NeverFed) {
            return tr("takes no feed");
        }
        if (held.why == plan::WithheldWhy::Infested) {
            return tr("no feed while it has pests");
        }
        if (held.to) {
            return tr("no feed until %1").arg(words_.day_and_month(*held.to + calendar::Days{1}));
        }
        switch (held.until) {
        case plan::WithheldUntil::NewGrowth:
            return tr("no feed until new growth is logged");
        case plan::WithheldUntil::Release:
            return tr("no feed until it is released");
        case plan::WithheldUntil::ReleaseAndNewGrowth:
            return tr("no feed until released and growing");
        default:
            return tr("no feed for now");
        }
    }

    void tell_needs()
    {
        shown_.needs = KindTexts::needs(plant_);
        QString here;
        if (plant_.spot && household_.spot(*plant_.spot) != nullptr) {
            const auto day = spots_.on(*plant_.spot, look_.today);
            const auto* tonight = coming_night();
            const auto low = tonight != nullptr ? tonight->low : spots_.on(*plant_.spot, look_.today + calendar::Days{1}).low;
            shown_.needs->here = low;
            here = tr(" Its spot has about %1 tonight.").arg(words_.temperature(low));
            if (tonight != nullptr) {
                here += QLatin1Char(' ') + (tonight->by_forecast ? tr("Chance that it is harmed tonight: %1.") : tr("Chance that it is harmed tonight, by the season alone: %1."))
                                               .arg(YearWords::chance(tonight->plant.damage));
            }
            const double need = plant_.light_to_thrive.moles();
            shown_.light_words = tr("Light: %1 mol/m² a day is good, %2 keeps it alive; its spot gives about %3 now.")
                                     .arg(words_.decimal(need, 1), words_.decimal(plant_.light_to_survive.moles(), 1),
                                          words_.decimal(day.light.moles(), 1));
            // From four times on (common practice, no source).
            constexpr double kBurns = 4.0;
            if (const double times = need > 0.0 ? day.light.moles() / need : 0.0; times >= kBurns) {
                shown_.light_words += tr(" That is %1 times as much: sun there may burn its leaves.").arg(words_.decimal(times, 0));
            }
        } else {
            shown_.light_words = KindTexts::light(plant_, words_);
        }
        shown_.needs_spoken = KindTexts::nights(plant_, here, words_);
    }

    /// Of the plant where it stands outdoors: what Round and the command line say of tonight.
    const plan::ComingNight* coming_night() const
    {
        if (!ground_.parts) {
            return nullptr;
        }
        const auto found = std::ranges::find_if(ground_.parts->tonight, [this](const auto& of) { return of.plant.plant == plant_.id; });
        return found != ground_.parts->tonight.end() ? &*found : nullptr;
    }

    /// When in the day, by whom, and the note, as far as they were said.
    QString how_measured(const home::Measurement& of) const
    {
        QStringList parts;
        if (of.time) {
            parts.append(tr("at %1").arg(words_.clock(static_cast<int>(of.time->count()))));
        }
        if (!of.by.empty()) {
            parts.append(tr("by %1").arg(text(of.by)));
        }
        if (!of.note.empty()) {
            parts.append(text(of.note));
        }
        return parts.join(QStringLiteral(", "));
    }

    /// The newest so many of what happened; what was entered later on a day stands above.
    void tell_history(std::size_t most)
    {
        struct Line {
            calendar::Date date;
            std::chrono::minutes time; ///< Of the day; noon where none was said.
            const home::Event* event;
            const home::Measurement* measurement;
        };
        std::vector<Line> lines;
        for (const auto& event : facts_.events) {
            if (event.plant == plant_.id && !is_task_mark(event.kind)) {
                lines.push_back({event.happened, std::chrono::hours{12}, &event, nullptr});
            }
        }
        shown_.history_count = lines.size();
        for (const auto& of : records_.kinds) {
            shown_.history_count += static_cast<std::size_t>(of.count);
        }
        for (auto of = records_.newest.rbegin(); of != records_.newest.rend(); ++of) {
            lines.push_back({of->measured, of->time.value_or(std::chrono::hours{12}), nullptr, &*of});
        }
        std::ranges::reverse(lines);
        std::ranges::stable_sort(lines, std::greater{}, [](const Line& of) { return std::pair{of.date, of.time}; });
        lines.erase(std::next(lines.begin(), static_cast<std::ptrdiff_t>(std::min(most, lines.size()))), lines.end());
        for (const auto& line : lines) {
            const QString date = words_.date_with_year(line.date);
            const QString what = line.event != nullptr
                                     ? upper_first(event_words(*line.event, household_))
                                     : tr("%1 %2").arg(upper_first(text(words::measured(line.measurement->kind))),
                                                       text(words::measured_value(*line.measurement, units_)));
            const QString note = line.event != nullptr ? text(line.event->note) : how_measured(*line.measurement);
            shown_.history.push_back({date, what, note,
                                      note.isEmpty() ? tr("%1: %2.").arg(date, what) : tr("%1: %2. %3").arg(date, what, note)});
        }
    }

    void tell_photos(const PlantDoor& door)
    {
        const auto& [count, oldest, photos] = records_.photos;
        if (photos.empty() || !oldest) {
            return;
        }
        for (const auto& photo : photos) {
            const auto file = door.thumbnail(photo);
            const bool newest = &photo == &photos.back();
            const QString date = words_.date_with_year(photo.date());
            const QString word = !file ? tr("file missing") : newest ? tr("newest") : QString{};
            shown_.photos.push_back(
                {file ? QUrl::fromLocalFile(QString::fromStdString(file->string())) : QUrl{}, date, word, newest,
                 word.isEmpty() ? tr("Photograph of %1").arg(date) : tr("Photograph of %1, %2").arg(date, word), photo.id});
        }
        shown_.photos_head = count == 1 ? tr("1 photograph") : tr("%1 photographs").arg(count);
        if (photos.size() < count) {
            const int days = calendar::days_between(*oldest, photos.back().date());
            shown_.photos_note =
                tr("%1 shown, spread over %2 months").arg(photos.size()).arg(std::max(1, (days + 15) / 30));
        }
    }

    const PlantsGround& ground_;
    const journal::PlantPage& records_;
    const plan::HouseholdFacts& facts_;
    const home::Household& household_;
    const home::Plant& plant_;
    const home::GonePlant* gone_; ///< nullptr: it is there.
    const plants::PlantKind* kind_;
    const TodayLook& look_;
    const YearWords& words_;
    words::UnitSystem units_;
    home::SpotClimate spots_;
    plan::Whereabouts where_;
    PlantFacts shown_;
};

} // namespace

Result<PlantFacts> plant_facts(const PlantsGround& ground, home::PlantId id, const journal::PlantAsked& asked, const PlantDoor& door,
                               const TodayLook& look, const JudgeAsked& judge)
{
    const auto* plant = ground.household.plant(id);
    const auto left = std::ranges::find(ground.book.gone, id, [](const home::GonePlant& of) { return of.plant.id; });
    if (plant == nullptr && left == ground.book.gone.end()) {
        PlantFacts none;
        none.id = id;
        none.gone = true;
        return none;
    }
    const auto records = ground.book.archive->page(id, asked);
    if (!records) {
        return records.error();
    }
    if (plant == nullptr) {
        home::Household with_it = ground.household;
        with_it.plants.push_back(left->plant);
        TodayLook then = look; // What happened at its spot since does not concern it.
        then.today = std::min(look.today, left->on);
        return FactMaker(ground, *records, with_it, left->plant, &*left, then).make(asked, door, *ground.book.archive, judge);
    }
    return FactMaker(ground, *records, ground.household, *plant, nullptr, look).make(asked, door, *ground.book.archive, judge);
}

} // namespace lathhouse::models
