#include "app/models/growth_facts.h"

#include "app/models/event_words.h"
#include "app/models/word_form.h"
#include "app/words/growth_verdict_words.h"
#include "app/words/measurement_words.h"
#include "app/words/table_words.h"
#include "app/words/us_units.h"

#include <QCoreApplication>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace lathhouse::models {

namespace {

class GrowthTeller {
    Q_DECLARE_TR_FUNCTIONS(PlantFacts)

public:
    GrowthTeller(PlantFacts& shown, const GrowthGround& ground)
        : records_(ground.records), facts_(ground.facts), household_(ground.household), plant_(ground.plant),
          where_(ground.where), spots_(ground.spots), archive_(ground.archive), look_(ground.look), words_(ground.look.words),
          units_(unit_system_of(ground.look.words)), shown_(shown)
    {
    }

    void tell_growth(std::optional<home::MeasurementKind> asked, const JudgeAsked& judge)
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
                                                        where_, spots_, facts_.log, wish_of(measure, judge)),
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
        chart.factor = inches ? 1.0 / words::kCentimetresInAnInch : 1.0;
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
        tell_judgeable(chart);
        tell_verdict(chart, measure);
        shown_.chart = std::move(chart);
    }

private:
    /// Something but a move happened to that plant within four weeks of the date (common practice, no source): it was not
    /// spared.
    bool was_troubled(const home::Plant& other, calendar::Date date) const
    {
        constexpr int kNear = 28;
        const plan::Whereabouts where{other, facts_.events, {}, look_.today};
        const auto all = plan::events_that_show(facts_.events, where);
        return std::ranges::any_of(all, [date](const auto& of) {
            return of.what != "moved" && std::abs(calendar::days_between(date, of.date)) <= kNear;
        });
    }

    /// Fills in the companions, and takes of the spared plants asked for those that can be a clock.
    plan::GrowthWish wish_of(home::MeasurementKind measure, const JudgeAsked& judge)
    {
        plan::GrowthWish wish{.event = judge.event, .spared = {}};
        if (!plan::series_kind_of(measure)) {
            return wish;
        }
        const auto own = growth::readings_of(plan::measured_of(records_.series, plant_.id, measure));
        const auto asked = plan::event_to_judge(facts_.events, where_, own);
        const auto date = judge.event ? judge.event : asked ? std::optional{asked->date} : std::nullopt;
        for (const auto& other : household_.plants) {
            if (other.id == plant_.id || other.kind != plant_.kind || (date && was_troubled(other, *date))) {
                continue;
            }
            auto readings = growth::readings_of(plan::measured_of(*archive_.measurements(other.id, measure), other.id, measure));
            if (readings.size() < growth::kLeastOfSpared) {
                continue;
            }
            const bool spared = std::ranges::find(judge.spared, other.id) != judge.spared.end();
            shown_.companions.push_back(other.id);
            shown_.spared.push_back({text(other.name), spared});
            if (spared) {
                wish.spared.push_back(std::move(readings));
            }
        }
        return wish;
    }

    /// What can be asked about: events between the readings, the newest first, one a day.
    void tell_judgeable(const GrowthChartData& chart)
    {
        constexpr std::size_t kMost = 6;
        const auto& growth = chart.growth;
        const auto all = plan::events_that_show(facts_.events, where_);
        for (auto at = all.rbegin(); at != all.rend() && shown_.judgeable.size() < kMost; ++at) {
            const bool between = growth.readings.front().date <= at->date && at->date < growth.readings.back().date;
            if (between && (shown_.judgeable.empty() || shown_.judgeable.back() != at->date)) {
                shown_.judgeable.push_back(at->date);
                shown_.judged.push_back({tr("%1, %2").arg(event_name(chart, *at), words_.date_with_year(at->date)),
                                         growth.event && growth.event->date == at->date});
            }
        }
    }

    QString event_name(const GrowthChartData& chart, const growth::DatedEvent& event) const
    {
        const auto marked = std::ranges::find(chart.events, event.date, &GrowthChartData::Mark::date);
        if (marked != chart.events.end()) {
            return marked->words;
        }
        return event.what == "moved" ? tr("a move") : text(words::table_text(event.what));
    }

    /// What lies between two shares of 100.
    QString points_words(double share) const { return tr("%1 points").arg(words_.decimal(100.0 * share, 1)); }

    /// A value of the measure in words, with its unit.
    QString value_words(home::MeasurementKind measure, double value) const
    {
        return text(words::measured_value(measure, value, units_));
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
                const QString sign = by > 0.0 ? QStringLiteral("+") : by < 0.0 ? QString(QChar(0x2212)) : QString{};
                change = sign + (chart.percent ? points_words(std::abs(by)) : value_words(measure, std::abs(by)));
            }
            const QString repeats = of.repeats > 1 ? tr("mean of %1").arg(of.repeats) : QString{};
            const QString date = words_.date_with_year(of.date);
            const QString value = value_words(measure, of.value);
            shown_.readings.push_back({date, value, change, repeats,
                                       change.isEmpty() ? tr("%1: %2.").arg(date, value)
                                                        : tr("%1: %2, %3 since the one before.").arg(date, value, change)});
        }
    }

    /// The verdict stands above as a title: "Recovering: it grows again" goes on with "It grows again".
    static QString behind_colon(const QString& line)
    {
        const qsizetype colon = line.indexOf(QLatin1String(": "));
        return colon > 0 ? upper_first(line.mid(colon + 2)) : line;
    }

    /// Beyond some months a day without its year may be taken for one of another.
    QString near_date(calendar::Date date) const
    {
        constexpr int kNear = 300;
        return calendar::days_between(look_.today, date) < kNear ? words_.short_date(date) : words_.date_with_year(date);
    }

    /// Too few readings after the event: when the next of them is due, and how many there have to be. last: the day of the
    /// last reading, or of the event where that is later; they go on as far apart as they were.
    void tell_needed(const growth::Recovery& recovery, calendar::Date last)
    {
        const int missing = static_cast<int>(growth::kLeastAfter) + 1 - recovery.readings_after;
        const auto first = last + calendar::Days{calendar::days_between(last, *recovery.next_reading) / missing};
        shown_.next_head = first <= look_.today ? tr("Measure again now.") : closed(tr("Measure again on %1.").arg(near_date(first)));
        shown_.next_rest = tr("The last of %1 readings that are still needed, about %2, could settle it.")
                               .arg(missing)
                               .arg(near_date(*recovery.next_reading));
    }

    /// The word at the badge.
    static QString verdict_word(const growth::Judgement& judgement)
    {
        static const char* const kWords[] = {QT_TR_NOOP("No setback"), QT_TR_NOOP("Recovered"), QT_TR_NOOP("Recovering"),
                                             QT_TR_NOOP("Holding"), QT_TR_NOOP("Declining"), QT_TR_NOOP("Too early")};
        return judgement.why == growth::TooEarlyWhy::FewBefore ? tr("Cannot be judged")
                                                               : tr(kWords[static_cast<int>(judgement.verdict)]);
    }
    /// What happened since the last reading, or on its day: it cannot be judged yet, and what is needed is said. False where
    /// nothing did.
    bool tell_awaited(const GrowthChartData& chart, growth::SeriesKind kind)
    {
        const auto& readings = chart.growth.readings;
        const auto all = plan::events_that_show(facts_.events, where_);
        const auto event = std::find_if(all.rbegin(), all.rend(), [&](const auto& of) { return of.date <= look_.today; });
        if (event == all.rend() || event->date < readings.back().date) {
            return false;
        }
        const auto window = growth::window_of(readings, event->date, plan::in_the_way_of(*event, all));
        // Without a reading after it no clock is asked: what is said is how many are needed.
        const auto recovery = growth::recovery_of(kind, window.readings, event->date, growth::GrowthClock::calendar());
        shown_.verdict = static_cast<int>(recovery.judgement.verdict);
        shown_.verdict_after = tr("after: %1, %2").arg(event_name(chart, *event), words_.date_with_year(event->date));
        shown_.verdict_word = verdict_word(recovery.judgement);
        const QString said = text(words::growth_verdict(kind, recovery, words::ClockKind::Calendar));
        shown_.verdict_words = behind_colon(said.section(QLatin1Char('\n'), 0, 0));
        if (recovery.next_reading) {
            tell_needed(recovery, event->date);
        }
        return true;
    }

    void tell_verdict(const GrowthChartData& chart, home::MeasurementKind measure)
    {
        const auto kind = plan::series_kind_of(measure);
        const auto& growth = chart.growth;
        if (kind && !growth.recovery && tell_awaited(chart, *kind)) {
            return;
        }
        if (!kind || !growth.recovery) {
            shown_.next_head = tr("Nothing to judge.");
            shown_.next_rest = tr("No move, cold night, spray or other event lies between these readings.");
            return;
        }
        const auto& recovery = *growth.recovery;
        const auto clock = growth.by_spared        ? words::ClockKind::Spared
                           : growth.by_plant_clock ? words::ClockKind::Plant
                                                   : words::ClockKind::Calendar;
        shown_.verdict = static_cast<int>(recovery.judgement.verdict);
        shown_.share = recovery.share_regained.value_or(shown_.share);
        shown_.share_low = recovery.share_low.value_or(shown_.share_low);
        shown_.share_high = recovery.share_high.value_or(shown_.share_high);
        shown_.verdict_word = verdict_word(recovery.judgement);
        if (growth.event) {
            shown_.verdict_after = tr("after: %1, %2").arg(event_name(chart, *growth.event), words_.date_with_year(growth.event->date));
        }
        const QString all = text(words::growth_verdict(*kind, recovery, clock));
        QStringList lines = all.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        // The last of them are told apart from the rest: the readings it rests on, and the date.
        const auto counted = std::ranges::find_if(lines, [&recovery](const QString& line) { return line == text(words::growth_readings(recovery)); });
        lines.erase(counted, lines.end());
        shown_.verdict_note = tr("From %1 readings before and %2 after it.")
                                  .arg(recovery.readings_before)
                                  .arg(recovery.readings_after);
        if (!lines.isEmpty()) {
            lines.first() = behind_colon(lines.first());
        }
        shown_.verdict_words = lines.join(QLatin1Char(' ')).replace(QLatin1String(" %"), QStringLiteral("\u00A0%")); // Never apart.
        if (recovery.judgement.why == growth::TooEarlyWhy::FewAfter && recovery.next_reading && growth.event) {
            tell_needed(recovery, std::max(growth.window.readings.back().date, growth.event->date));
        } else if (recovery.next_reading) {
            const int days = calendar::days_between(look_.today, *recovery.next_reading);
            shown_.next_head = days <= 0 ? tr("Measure again now.") : closed(tr("Measure again on %1.").arg(near_date(*recovery.next_reading)));
            shown_.next_rest = tr("That reading could settle it, if it goes on as now.");
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

    const journal::PlantPage& records_;
    const plan::HouseholdFacts& facts_;
    const home::Household& household_;
    const home::Plant& plant_;
    const plan::Whereabouts& where_;
    const home::SpotClimate& spots_;
    const PlantArchive& archive_;
    const TodayLook& look_;
    const YearWords& words_;
    words::UnitSystem units_;
    PlantFacts& shown_;
};

} // namespace

void tell_growth(PlantFacts& shown, const GrowthGround& ground, std::optional<home::MeasurementKind> asked,
                 const JudgeAsked& judge)
{
    GrowthTeller(shown, ground).tell_growth(asked, judge);
}

} // namespace lathhouse::models
