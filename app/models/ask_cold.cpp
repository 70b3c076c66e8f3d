// What a cold night may have done to a plant, asked by hand or from the journal.
#include "app/clock.h"
#include "app/models/ask_form.h"
#include "app/models/asked_kind.h"
#include "app/models/days_ago.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"
#include "app/models/word_form.h"
#include "app/words/damage_words.h"
#include "app/words/refusal.h"
#include "app/words/table_words.h"
#include "core/base/parse.h"
#include "core/plan/cold_night.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr int kMostColdNights = 14; // Older ones do not add up with the last.
constexpr double kMostColdHours = 72.0;
constexpr double kShortestNight = 3.0;
constexpr double kLongestNight = 21.0;
constexpr double kColdestHere = -60.0; // As the curve of a night takes them.
constexpr double kWarmestLow = 40.0;

class ColdAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(ColdAsk)

public:
    ColdAsk(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
        : PlantAskForm(std::move(ground), plant, look), spots_(ground_->household, facts().climate, facts().log)
    {
        const auto courses =
            plan::cold_courses(ground_->household, facts().events, today(), plan::usual_night_of(spots_));
        if (const auto found = std::ranges::find(courses, plant_.id, &plan::ColdCourse::plant); found != courses.end()) {
            logged_ = *found;
        }
        for (const auto& event : facts().events) {
            constexpr int kRemembered = 60; // As the courses remember.
            if (event.kind == home::EventKind::ColdNight && event.plant == plant_.id && event.happened <= today() &&
                calendar::days_between(event.happened, today()) <= kRemembered) {
                nights_.push_back(event);
            }
        }
    }

    QString title() const override { return tr("After a cold night: %1").arg(name()); }

    AskValues begin() const override
    {
        // A night without its lowest gives at least its day.
        if (!logged_ && !nights_.empty() && nights_.back().happened != today()) {
            return {{Ago, QString::number(calendar::days_between(nights_.back().happened, today()))}};
        }
        return {};
    }

    AskQuestions questions(const AskValues& values) const override
    {
        const QString degrees = look_.words.unit();
        const auto subject = subject_of(values);
        const auto night = usual(subject, last_night(values));
        const QString usual_hours = look_.words.decimal(night ? night->first : 12.0, 1);
        return {{Lows, AskQuestion::Field, tr("Lowest at the plant"), degrees,
                 logged_ && subject.own ? tr("Blank: as the journal has it. Several nights with ; between them, the last one last")
                         : tr("Several nights with ; between them, the last one last")},
                {Ago, AskQuestion::Number, tr("The last of them ended"), tr("days ago"), tr("Blank: this morning")},
                {Evening, AskQuestion::Number, tr("Two hours after sunset"), degrees, tr("May be left blank")},
                {High, AskQuestion::Number, tr("High of the day"), degrees, tr("May be left blank")},
                {Hours, AskQuestion::Number,
                 tr("Hours at or below %1").arg(look_.words.temperature(subject.lines.safe_night)), tr("h"),
                 tr("Where somebody saw them")},
                {NightHours, AskQuestion::Number, tr("From sunset to sunrise"), tr("h"),
                 (night ? tr("Blank: %1 h, by place and date") : tr("Blank: %1 h")).arg(usual_hours)},
                {Other, AskQuestion::Field, tr("Another kind of plant"), {},
                 tr("Blank: %1. Its name, for a plant that is not among yours").arg(name())}};
    }

    AskAnswer answer(const AskValues& values) const override
    {
        const auto typed = read(values);
        if (typed.wrong >= 0) {
            return refused(typed.wrong, typed.trouble);
        }
        const auto subject = subject_of(values);
        if (typed.nights.empty()) {
            return !subject.own ? AskAnswer{.headline = tr("Write the lowest of the night at the plant.")}
                   : logged_    ? of_journal()
                                : AskAnswer{.headline = nothing_known()};
        }
        const auto prognosis = plan::prognosis_of(typed.nights, subject.kind, subject.lines,
                                                  subject.own ? std::optional{plant_.id} : std::nullopt);
        auto said = told(subject, prognosis, {});
        if (!subject.own) {
            said.why_not = tr("Nothing is written of a plant that is not among yours.");
        } else if (prognosis.outcome != plan::ColdOutcome::Nothing) {
            offer(said, values, typed);
        }
        return said;
    }

private:
    enum Key { Lows, Ago, Evening, High, Hours, NightHours, Other };
    /// What the answer is of: the plant of the page, or a kind that is not in the household.
    struct ColdSubject {
        bool own;
        const plants::PlantKind* kind;
        plants::ColdLines lines;
        QString name;
    };
    struct TypedNights {
        std::vector<plan::ColdExposure> nights;
        std::optional<Celsius> evening;
        std::optional<Celsius> high;
        std::optional<double> hours;
        std::optional<double> night_hours;
        int wrong = -1;
        QString trouble;
    };

    QString nothing_known() const
    {
        return nights_.empty() ? tr("Write the lowest of the night at the plant.")
                               : tr("The journal has the cold night of %1 without its lowest at the plant; write it here.")
                                     .arg(date(nights_.back().happened));
    }
    calendar::Date last_night(const AskValues& values) const
    {
        return today() - calendar::Days{typed_days_ago(of(values, Ago)).value_or(0)};
    }
    /// The plant of the page also where the name of another kind cannot be taken yet.
    ColdSubject subject_of(const AskValues& values) const
    {
        const QString other = of(values, Other);
        const auto* kind = other.isEmpty() ? nullptr : asked_kind(other).kind;
        return kind != nullptr ? ColdSubject{false, kind, kind->lines, shown_name(*kind)}
                               : ColdSubject{true, kind_, plant_.lines, {}};
    }
    std::optional<std::pair<double, KelvinDelta>> usual(const ColdSubject& subject, calendar::Date night) const
    {
        if (!subject.own || !plant_.spot || ground_->household.spot(*plant_.spot) == nullptr) {
            return std::nullopt;
        }
        return plan::usual_night_of(spots_)(*plant_.spot, night);
    }

    static bool refuse(TypedNights& typed, Key key, const QString& why)
    {
        typed.wrong = key;
        typed.trouble = why;
        return false;
    }
    /// Whether it could be read; blank can.
    static bool read_hours(TypedNights& typed, const AskValues& values, Key key, double least, double most,
                           std::optional<double>& hours, const QString& why)
    {
        const QString words = of(values, key);
        if (words.isEmpty()) {
            return true;
        }
        hours = typed_decimal(words, {"h"});
        return (hours && *hours >= least && *hours <= most) || refuse(typed, key, why);
    }
    bool read_warmer(TypedNights& typed, const AskValues& values, Key key, Celsius low, std::optional<Celsius>& read) const
    {
        const QString words = of(values, key);
        if (words.isEmpty()) {
            return true;
        }
        read = typed_plant_line(words, look_.words);
        if (!read) {
            return refuse(typed, key, tr("“%1” is no temperature.").arg(words));
        }
        return *read >= low || refuse(typed, key, tr("That is below the night's lowest; exchange the two."));
    }

    TypedNights read(const AskValues& values) const
    {
        TypedNights typed;
        const QString other = of(values, Other);
        if (const auto asked = other.isEmpty() ? AskedKind{kind_, {}} : asked_kind(other); !asked.trouble.isEmpty()) {
            refuse(typed, Other, asked.trouble);
            return typed;
        }
        const auto subject = subject_of(values);
        if (!typed_days_ago(of(values, Ago))) {
            refuse(typed, Ago, tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo));
            return typed;
        }
        static const QRegularExpression kBetween(QStringLiteral("[;/]|(?<![-−+;/\\s])\\s+(?=[-−+]?\\d)"));
        std::vector<Celsius> lows;
        for (const QString& word : of(values, Lows).split(kBetween, Qt::SkipEmptyParts)) {
            if (word.trimmed().isEmpty()) {
                continue;
            }
            const auto low = typed_temperature(word, look_.words);
            if (!low.value) {
                refuse(typed, Lows, low.trouble);
                return typed;
            }
            if (!(low.value->degrees() >= kColdestHere && low.value->degrees() <= kWarmestLow)) {
                refuse(typed, Lows, tr("%1 is no low of a night at a pot.").arg(look_.words.temperature(*low.value)));
                return typed;
            }
            lows.push_back(*low.value);
        }
        if (lows.size() > kMostColdNights) {
            refuse(typed, Lows, tr("Write %1 nights at most; older ones do not count with the last.").arg(kMostColdNights));
            return typed;
        }
        if (lows.empty()) {
            return typed;
        }
        const auto warmest = *std::ranges::max_element(lows);
        if (!read_warmer(typed, values, Evening, warmest, typed.evening) ||
            !read_warmer(typed, values, High, warmest, typed.high) ||
            !read_hours(typed, values, Hours, 0.0, kMostColdHours, typed.hours, tr("Write hours of cold, 0 to 72.")) ||
            !read_hours(typed, values, NightHours, kShortestNight, kLongestNight, typed.night_hours,
                        tr("A night lasts 3 to 21 hours."))) {
            return typed;
        }
        const auto last = last_night(values);
        for (std::size_t index = 0; index < lows.size(); ++index) {
            const auto night = last - calendar::Days{static_cast<int>(lows.size() - 1 - index)};
            plan::NightReadings readings{.low = lows[index], .evening = typed.evening, .high = typed.high, .hours = typed.hours};
            if (const auto known = usual(subject, night)) {
                readings.night_hours = known->first;
                readings.usual_swing = known->second;
            }
            readings.night_hours = typed.night_hours.value_or(readings.night_hours);
            const auto exposure = plan::exposure_of(readings, subject.lines, night);
            if (!exposure) {
                refuse(typed, Lows, text(words::refusal(exposure.error())));
                return typed;
            }
            typed.nights.push_back(*exposure);
        }
        return typed;
    }

    AskAnswer of_journal() const
    {
        auto said = told({true, kind_, plant_.lines, {}}, logged_->prognosis, logged_->new_growth);
        said.why_not = tr("As the journal has it.");
        return said;
    }

    AskAnswer told(const ColdSubject& subject, const plan::ColdPrognosis& prognosis, std::optional<calendar::Date> new_growth) const
    {
        AskAnswer said{.headline = text(words::cold_outcome(prognosis.outcome))};
        const auto& lines = subject.lines;
        const auto degrees = [&](Celsius value) { return look_.words.temperature(value); };
        if (!subject.own) {
            said.lines.push_back({AskLine::Head, subject.name});
        }
        said.lines.push_back({AskLine::Plain, tr("Safe night %1, damage begins at %2, lethal at %3.")
                                                  .arg(degrees(lines.safe_night), degrees(lines.damage_begins), degrees(lines.lethal))});
        for (const auto& night : prognosis.nights) {
            said.lines.push_back({AskLine::Dated,
                                  tr("Low %1; %2 h below the safe night (%3 kelvin hours), %4 h below the line of damage (%5).")
                                      .arg(degrees(night.low), look_.words.decimal(night.hours_below_safe, 1),
                                           look_.words.decimal(night.degree_hours_below_safe, 1),
                                           look_.words.decimal(night.hours_below_damage, 1),
                                           look_.words.decimal(night.degree_hours_below_damage, 1)),
                                  date(night.night)});
        }
        for (const auto doubt : prognosis.doubts) {
            add(said, AskLine::Quiet, words::cold_doubt(doubt));
        }
        auto keys = prognosis.sources;
        if (prognosis.outcome != plan::ColdOutcome::Nothing) {
            for (const auto& list : words::care_lists("cold", words::cold_cases(prognosis, subject.kind))) {
                add(said, AskLine::Head, list.head);
                for (const auto* line : list.lines) {
                    add(said, AskLine::Plain, words::table_text(line->text));
                    keys.insert(keys.end(), line->sources.begin(), line->sources.end());
                }
            }
        }
        if (!prognosis.steps.empty()) {
            said.lines.push_back({AskLine::Head, tr("Days")});
            for (const auto& step : prognosis.steps) {
                add_step(said, step.date, words::cold_step(step.act));
            }
        }
        if (new_growth) {
            said.lines.push_back({AskLine::Strong, tr("New growth is logged: feeding may begin again.")});
        }
        add_kind_cautions(said, subject.kind);
        add_sources(said, keys);
        return said;
    }

    /// What was typed may be written down, unless the journal has one of these nights.
    void offer(AskAnswer& said, const AskValues& values, const TypedNights& typed) const
    {
        for (const auto& night : typed.nights) {
            const bool there = std::ranges::any_of(nights_, [&](const home::Event& event) {
                return event.happened == night.night && parse_number(event.detail("low_c"));
            });
            if (there) {
                said.why_not = tr("The journal has the cold night of %1 already.").arg(date(night.night));
                return;
            }
        }
        const auto number = [](double value) { return QString::number(value, 'f', 1).toStdString(); };
        for (const auto& night : typed.nights) {
            home::Event event{.plant = plant_.id, .kind = home::EventKind::ColdNight, .spot = {}, .happened = night.night,
                              .entered = now(), .note = ""};
            event.details["low_c"] = number(night.low.degrees());
            if (typed.evening) {
                event.details["evening_c"] = number(typed.evening->degrees());
            }
            if (typed.high) {
                event.details["high_c"] = number(typed.high->degrees());
            }
            if (typed.hours) {
                event.details["hours"] = number(*typed.hours);
            }
            said.entries.events.push_back(std::move(event));
        }
        said.written = typed.nights.size() == 1
                           ? tr("%1: the cold night of %2 is written down. Looks at it come into the round.")
                                 .arg(name(), date(last_night(values)))
                           : tr("%1: %2 cold nights to %3 are written down. Looks at it come into the round.")
                                 .arg(name(), QString::number(typed.nights.size()), date(last_night(values)));
    }

    home::SpotClimate spots_;
    std::optional<plan::ColdCourse> logged_;
    std::vector<home::Event> nights_; ///< Of the plant, by their entry.
};

} // namespace

std::shared_ptr<const AskForm> cold_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
{
    return std::make_shared<const ColdAsk>(std::move(ground), plant, look);
}

} // namespace lathhouse::models
