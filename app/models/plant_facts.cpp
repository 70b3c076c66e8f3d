#include "app/models/plant_facts.h"

#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/growth_verdict_words.h"
#include "app/words/kind_words.h"
#include "app/words/measurement_words.h"
#include "app/words/table_words.h"
#include "core/base/parse.h"
#include "core/home/spot_climate.h"

#include <QCoreApplication>
#include <QUrl>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr double kCentimetresInAnInch = 2.54;

QString tr(const char* words)
{
    return QCoreApplication::translate("lathhouse::models", words);
}

/// "pest found": what happened, for people.
QString event_words(const home::Event& event, const home::Household& household)
{
    using home::EventKind;
    const auto* spot = event.spot ? household.spot(*event.spot) : nullptr;
    switch (event.kind) {
    case EventKind::Moved:
        return spot != nullptr ? tr("moved to %1").arg(text(spot->name)) : tr("moved");
    case EventKind::PestFound:
        return tr("%1 found").arg(event.detail("pest").empty() ? tr("pests")
                                                               : text(words::table_text(std::string{event.detail("pest")})));
    case EventKind::Inspected:
        return event.detail("found").empty() || event.detail("found") == "nothing"
                   ? event.note.empty() ? tr("looked over, nothing found") : tr("looked over")
                   : tr("looked over, found %1").arg(text(std::string{event.detail("found")}));
    case EventKind::ChemicalDamage:
        return event.detail("product").empty() ? tr("spray damage")
                                               : tr("damage by %1").arg(text(std::string{event.detail("product")}));
    case EventKind::Fed:
        return event.detail("ppm").empty()
                   ? tr("fed")
                   : tr("fed, %1 ppm nitrogen").arg(text(std::string{event.detail("ppm")}));
    case EventKind::ColdNight:
        return tr("cold night");
    case EventKind::NewGrowth:
        return tr("new growth");
    case EventKind::Isolated:
        return tr("set apart");
    case EventKind::Released:
        return tr("back among the others");
    case EventKind::Noted:
        return tr("note");
    case EventKind::Treated:
        return event.detail("with").empty() ? tr("treated")
                                            : tr("treated with %1").arg(text(std::string{event.detail("with")}));
    default: {
        std::string kind{home::to_string(event.kind)};
        std::ranges::replace(kind, '_', ' ');
        return text(words::table_text(kind));
    }
    }
}

bool is_task_mark(home::EventKind kind)
{
    return kind == home::EventKind::TaskDone || kind == home::EventKind::TaskPostponed ||
           kind == home::EventKind::TaskSkipped;
}

class FactMaker {
    Q_DECLARE_TR_FUNCTIONS(PlantFacts)

public:
    FactMaker(const PlantsGround& ground, const journal::PlantPage& records, const home::Plant& plant, const TodayLook& look)
        : ground_(ground), records_(records), facts_(ground.book.facts), household_(ground.household), plant_(plant),
          kind_(kind_of(plant)), look_(look), words_(look.words), units_(unit_system_of(look.words)),
          spots_(household_, facts_.climate, facts_.log),
          where_(plant, facts_.events, {}, look.today)
    {
        shown_.id = plant.id;
        shown_.name = text(plant.name);
        shown_.botanical = text(plant.kind);
    }

    PlantFacts make(const journal::PlantAsked& asked, const PlantDoor& door)
    {
        tell_since();
        tell_chips();
        tell_growth(asked.kind);
        tell_needs();
        tell_hazards();
        tell_sources();
        tell_history(asked.newest);
        tell_photos(door);
        return std::move(shown_);
    }

private:
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
        if (plant_.pot_volume) {
            parts.append(tr("pot %1").arg(text(words::volume(*plant_.pot_volume, units_))));
        }
        if (plant_.pot_kilograms > 0.0) {
            constexpr double kPoundsInAKilogram = 2.2046;
            parts.append(!units_.us_measures()
                             ? tr("about %1 kg wet").arg(words_.decimal(plant_.pot_kilograms, 0))
                             : tr("about %1 lb wet").arg(words_.decimal(plant_.pot_kilograms * kPoundsInAKilogram, 0)));
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
        for (const auto& of : parts.plan.plants) {
            if (of.plant != plant_.id) {
                continue;
            }
            const auto next = std::ranges::find_if(of.stays,
                                                   [this](const plan::Stay& stay) { return stay.from > look_.today; });
            if (next == of.stays.end()) {
                chip(tr("stays where it is"), -1, tr("for the year ahead, by the plan"));
            } else if (const auto* to = household_.spot(next->spot)) {
                chip(tr("to %1 %2").arg(text(to->name), words_.day_and_month(next->from)), look_.hand_of(to->name),
                     next->risk_out ? tr("chance of a harmful night after it: %1").arg(YearWords::chance(*next->risk_out))
                                    : tr("by the plan"));
            }
        }
        for (const auto& of : parts.feeding) {
            if (of.plant != plant_.id) {
                continue;
            }
            const auto held = std::ranges::find_if(of.withheld, [this](const plan::Withheld& withheld) {
                return withheld.from <= look_.today && (!withheld.to || look_.today <= *withheld.to);
            });
            if (held != of.withheld.end()) {
                chip(feed_words(*held), -1, upper_first(text(words::why(*held))));
            } else if (const auto day = std::ranges::find_if(
                           of.days, [this](const plan::FeedDay& feed) { return feed.on >= look_.today; });
                       day != of.days.end()) {
                chip(day->on == look_.today ? tr("feed today") : tr("feed %1").arg(words_.day_and_month(day->on)), -1,
                     tr("%1 ppm nitrogen").arg(words_.decimal(day->nitrogen_ppm, 0)));
            }
        }
    }

    QString feed_words(const plan::Withheld& held) const
    {
        if (held.why == plan::WithheldWhy::NeverFed) {
            return tr("takes no feed");
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

    /// A value of the measure in words, with its unit.
    QString value_words(home::MeasurementKind measure, double value) const
    {
        return text(words::measured_value(measure, value, units_));
    }

    void tell_growth(std::optional<home::MeasurementKind> asked)
    {
        for (const auto& of : records_.kinds) {
            shown_.measures.push_back(of.kind);
        }
        const auto shown = journal::shown_kind(records_.kinds, asked);
        if (!shown) {
            return;
        }
        const auto measure = *shown;
        for (const auto of : shown_.measures) {
            shown_.kinds.push_back({upper_first(text(words::measured(of))), of == measure});
        }
        GrowthChartData chart{.growth = plan::growth_of(plant_, measure, records_.series, facts_.events,
                                                        where_, spots_, facts_.log),
                              .events = {},
                              .moves = {},
                              .next_reading = {},
                              .unit = {},
                              .factor = 1.0,
                              .logarithmic = false,
                              .percent = false};
        const auto& growth = chart.growth;
        if (growth.readings.empty()) {
            return;
        }
        const bool length = home::unit_of(measure) == home::MeasurementUnit::Centimetres;
        const bool inches = length && units_.us_measures();
        chart.factor = inches ? 1.0 / kCentimetresInAnInch : 1.0;
        chart.unit = length ? (inches ? tr("in") : tr("cm")) : QString{};
        chart.percent = home::unit_of(measure) == home::MeasurementUnit::Share;
        chart.counts = home::unit_of(measure) == home::MeasurementUnit::Count;
        chart.logarithmic = length && std::ranges::all_of(growth.readings, [](const auto& of) { return of.value > 0.0; });
        tell_marks(chart);
        if (growth.recovery && growth.recovery->next_reading && *growth.recovery->next_reading > look_.today) {
            chart.next_reading = growth.recovery->next_reading;
        }
        shown_.chart_title = upper_first(text(words::measured(measure)));
        shown_.chart_note = chart.logarithmic ? tr("each step up the paper is the same share of growth") : QString{};
        if (growth.standard_error && chart.logarithmic) {
            shown_.chart_note += tr("; bar: error of one reading%1")
                                     .arg(growth.error_by_repeats ? tr(", by its repeats") : QString{});
        }
        const auto& first = growth.readings.front();
        const auto& last = growth.readings.back();
        shown_.chart_spoken = tr("%1 from %2 on %3 to %4 on %5, %6 readings.")
                                  .arg(shown_.chart_title, value_words(measure, first.value),
                                       words_.date_with_year(first.date), value_words(measure, last.value),
                                       words_.date_with_year(last.date))
                                  .arg(growth.readings.size());
        tell_readings(chart, measure);
        tell_verdict(chart, measure);
        shown_.chart = std::move(chart);
    }

    void tell_marks(GrowthChartData& chart) const
    {
        const auto from = chart.growth.readings.front().date;
        for (const auto& event : facts_.events) {
            if (event.happened < from || event.happened > look_.today || !where_.concerns(event)) {
                continue;
            }
            switch (event.kind) {
            case home::EventKind::ColdNight:
            case home::EventKind::ChemicalDamage:
            case home::EventKind::PestFound:
            case home::EventKind::Repotted:
            case home::EventKind::Pruned:
            case home::EventKind::Divided:
                chart.events.push_back({event.happened, event_words(event, household_)});
                break;
            case home::EventKind::Moved:
                if (event.plant == plant_.id) {
                    chart.moves.push_back({event.happened, move_words(event)});
                }
                break;
            default:
                break;
            }
        }
    }

    QString move_words(const home::Event& event) const
    {
        const auto* to = event.spot ? household_.spot(*event.spot) : nullptr;
        const auto before = where_.on(event.happened - calendar::Days{1});
        const auto* from = before ? household_.spot(*before) : nullptr;
        if (to == nullptr) {
            return tr("moved");
        }
        const bool out = home::is_outdoors(to->kind);
        const bool was_out = from != nullptr && home::is_outdoors(from->kind);
        if (from != nullptr && out != was_out) {
            return out ? tr("went out") : tr("came in");
        }
        return text(to->short_name.empty() ? to->name : to->short_name);
    }

    void tell_readings(const GrowthChartData& chart, home::MeasurementKind measure)
    {
        const auto& readings = chart.growth.readings;
        for (std::size_t at = readings.size(); at > 0; --at) {
            const auto& of = readings[at - 1];
            QString change;
            if (at > 1) {
                const double by = of.value - readings[at - 2].value;
                change = (by > 0.0 ? QStringLiteral("+") : QString{}) + value_words(measure, by);
                if (by < 0.0) {
                    change = QString(QChar(0x2212)) + value_words(measure, -by);
                }
            }
            const QString repeats = of.repeats > 1 ? tr("mean of %1").arg(of.repeats) : QString{};
            const QString date = words_.date_with_year(of.date);
            const QString value = value_words(measure, of.value);
            shown_.readings.push_back({date, value, change, repeats,
                                       change.isEmpty() ? tr("%1: %2.").arg(date, value)
                                                        : tr("%1: %2, %3 since the one before.").arg(date, value, change)});
        }
    }

    void tell_verdict(const GrowthChartData& chart, home::MeasurementKind measure)
    {
        const auto kind = plan::series_kind_of(measure);
        const auto& growth = chart.growth;
        if (!kind || !growth.recovery) {
            shown_.next_head = tr("Nothing to judge.");
            shown_.next_rest = tr("No move, cold night, spray or other event lies between these readings.");
            return;
        }
        const auto& recovery = *growth.recovery;
        const auto clock = growth.by_plant_clock ? words::ClockKind::Plant : words::ClockKind::Calendar;
        shown_.verdict = static_cast<int>(recovery.judgement.verdict);
        shown_.share = recovery.share_regained.value_or(shown_.share);
        shown_.share_low = recovery.share_low.value_or(shown_.share_low);
        shown_.share_high = recovery.share_high.value_or(shown_.share_high);
        static const char* const kWords[] = {QT_TR_NOOP("No setback"), QT_TR_NOOP("Recovered"), QT_TR_NOOP("Recovering"),
                                             QT_TR_NOOP("Holding"), QT_TR_NOOP("Declining"), QT_TR_NOOP("Too early")};
        shown_.verdict_word = tr(kWords[shown_.verdict]);
        if (growth.event) {
            const auto judged = std::ranges::find(chart.events, growth.event->date, &GrowthChartData::Mark::date);
            const QString what = judged != chart.events.end() ? judged->words : growth.event->what == "moved" ? tr("a move") : text(words::table_text(growth.event->what));
            shown_.verdict_after = tr("after %1, %2").arg(what, words_.date_with_year(growth.event->date));
        }
        const QString all = text(words::growth_verdict(*kind, recovery, clock));
        QStringList lines = all.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        // The last of them are told apart from the rest: the readings it rests on, and the date.
        const auto counted = std::ranges::find_if(lines, [&recovery](const QString& line) { return line == text(words::growth_readings(recovery)); });
        lines.erase(counted, lines.end());
        shown_.verdict_note = tr("From %1 readings before and %2 after it.")
                                  .arg(recovery.readings_before)
                                  .arg(recovery.readings_after);
        // The verdict stands above as a title: "Recovering: it grows again" goes on with "It grows again".
        const qsizetype colon = lines.isEmpty() ? -1 : lines.first().indexOf(QLatin1String(": "));
        if (colon > 0) {
            lines.first() = upper_first(lines.first().mid(colon + 2));
        }
        shown_.verdict_words = lines.join(QLatin1Char(' '));
        if (recovery.next_reading) {
            shown_.next_head = *recovery.next_reading <= look_.today
                                   ? tr("Measure again now.")
                                   : tr("Measure again on %1.").arg(words_.short_date(*recovery.next_reading));
            shown_.next_rest = tr("That reading could settle it, at the earliest.");
        } else if (recovery.judgement.verdict == growth::Verdict::TooEarly && recovery.rate_after) {
            shown_.next_rest = tr("No date in sight settles it, if readings go on as they do.");
        }
        for (const auto& caution : words::growth_cautions(*kind, recovery)) {
            // What names an option of the command line is of no use here.
            shown_.verdict_note += QLatin1Char(' ') + text(caution).remove(QLatin1String(" (--spared)"));
        }
        if (!growth.window.also.empty()) {
            shown_.verdict_note += tr(" Other things happened too close to tell apart; the verdict is on the plant after "
                                      "all of them.");
        }
    }

    void tell_needs()
    {
        const auto& lines = plant_.lines;
        shown_.needs = NightNeeds{lines.lethal, lines.damage_begins, lines.safe_night, plant_.heat_limit, {}};
        QString here;
        if (plant_.spot && household_.spot(*plant_.spot) != nullptr) {
            const auto day = spots_.on(*plant_.spot, look_.today);
            shown_.needs->here = day.low;
            here = tr(" Its spot has about %1 tonight.").arg(words_.temperature(day.low));
            const double need = plant_.light_to_thrive.moles();
            shown_.light_words = tr("Light: %1 mol/m² a day is good, %2 keeps it alive; its spot gives about %3 now.")
                                     .arg(words_.decimal(need, 1), words_.decimal(plant_.light_to_survive.moles(), 1),
                                          words_.decimal(day.light.moles(), 1));
        } else {
            shown_.light_words = tr("Light: %1 mol/m² a day is good, %2 keeps it alive.")
                                     .arg(words_.decimal(plant_.light_to_thrive.moles(), 1),
                                          words_.decimal(plant_.light_to_survive.moles(), 1));
        }
        shown_.needs_spoken = tr("Nights: lethal at %1, harm from %2, stress from %3 on, too hot from %4.%5")
                                  .arg(words_.temperature(lines.lethal), words_.temperature(lines.damage_begins),
                                       words_.temperature(lines.safe_night), words_.temperature(plant_.heat_limit), here);
    }

    void tell_hazards()
    {
        const QString short_words = hazard_in_short(plant_, kind_);
        if (!short_words.isEmpty()) {
            const QString rest = kind_ != nullptr && !kind_->hazards.empty()
                                     ? upper_first(text(words::table_text(kind_->hazards))) + QLatin1Char('.')
                                     : QString{};
            shown_.hazards.push_back(
                {upper_first(short_words) + QLatin1Char('.'),
                 rest + tr(" Where it was eaten or hurts, ask a doctor or a vet."), true});
        } else if (kind_ != nullptr) {
            shown_.hazards.push_back({tr("Not known to be poisonous,"), tr("which is no proof."), false});
        }
        if (plant_.sulks) {
            shown_.hazards.push_back({tr("Sheds leaves after any move,"), tr("whatever the temperature: move it seldom."), false});
        }
        if (plant_.must_dry) {
            shown_.hazards.push_back({tr("Wants to dry right out"), tr("between waterings."), false});
        }
    }

    void tell_sources()
    {
        if (kind_ == nullptr) {
            shown_.notes.append(tr("A kind of your own: its figures are those that you gave."));
            return;
        }
        shown_.notes.append(tr("Cold lines: %1 (%2 confidence).")
                                .arg(text(words::rests_on(kind_->cold_evidence)), text(words::table_text(kind_->confidence))));
        QStringList titles;
        for (const auto key : split(kind_->sources, ';')) {
            if (const auto* source = plants::PlantReference::built_in().source(trimmed(key))) {
                titles.append(text(words::source_line(*source)));
            }
        }
        if (!titles.isEmpty()) {
            shown_.notes.append(tr("Sources: %1.").arg(titles.join(QStringLiteral("; "))));
        }
        if (!kind_->note.empty()) {
            shown_.notes.append(text(words::table_text(kind_->note)));
        }
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
            const QString note = text(line.event != nullptr ? line.event->note : line.measurement->note);
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
                               const TodayLook& look)
{
    const auto* plant = ground.household.plant(id);
    if (plant == nullptr) {
        PlantFacts none;
        none.id = id;
        none.gone = true;
        return none;
    }
    const auto records = ground.book.archive->page(id, asked);
    if (!records) {
        return records.error();
    }
    return FactMaker(ground, *records, *plant, look).make(asked, door);
}

} // namespace lathhouse::models
