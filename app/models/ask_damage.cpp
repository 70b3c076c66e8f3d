// What weed-killer, drift or else may have hurt a plant, asked by hand or from the journal.
#include "app/clock.h"
#include "app/models/ask_form.h"
#include "app/models/days_ago.h"
#include "app/models/typed_decimal.h"
#include "app/models/word_form.h"
#include "app/words/damage_words.h"
#include "app/words/growing_words.h"
#include "app/words/table_words.h"
#include "core/plan/chemical_damage.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace lathhouse::models {

namespace {

using plan::DamageCase;

constexpr double kMostSignDays = 1000.0;
constexpr double kMostPotLitres = 1000.0;
constexpr double kLitresOfAQuart = 0.946352946; // NIST Handbook 44, appendix C.
constexpr std::size_t kFitsDescribed = 3;

class DamageAsk final : public PlantAskForm {
    Q_DECLARE_TR_FUNCTIONS(DamageAsk)

public:
    DamageAsk(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
        : PlantAskForm(std::move(ground), plant, look)
    {
        const auto& events = facts().events;
        for (std::size_t index = 0; index < events.size(); ++index) {
            const auto& event = events[index];
            if (event.kind == home::EventKind::ChemicalDamage && event.plant == plant_.id && event.happened <= today() &&
                !plan::is_told_anew(events, index)) {
                logged_.push_back(event);
            }
        }
        std::ranges::stable_sort(logged_, std::greater{}, &home::Event::happened);
        for (const auto& sign : plan::DamageTable::built_in().signs()) {
            of_group_[static_cast<std::size_t>(group_of(sign.group))].push_back(&sign);
        }
    }

    QString title() const override { return tr("Hit by a spray or weed-killer: %1").arg(name()); }

    AskValues begin() const override { return values_of(0); }

    void settle(AskValues& values, int key) const override
    {
        if (key == Which) {
            const auto which = static_cast<std::size_t>(std::max(0, of(values, Which).toInt()));
            values = values_of(which);
        }
    }

    AskQuestions questions(const AskValues&) const override
    {
        QStringList which;
        for (const auto& event : logged_) {
            which.append(date(event.happened));
        }
        which.append(tr("another, not in the journal"));
        const bool us = look_.words.units() == Units::Us;
        AskQuestions all{
            {Which, AskQuestion::Choice, tr("Which, of those in the journal"), {}, {}, {}, which, !logged_.empty()},
            {Product, AskQuestion::Field, tr("What was sprayed"), {}, tr("The active substance, from the label; blank where nobody knows"),
             text(words::table_text("glyphosate"))},
            {Ago, AskQuestion::Number, tr("It happened"), tr("days ago"), tr("Blank: today")},
            {FirstSigns, AskQuestion::Number, tr("From the spray to the first signs"), tr("days"), tr("May be left blank")},
            {Pot, AskQuestion::Number, tr("Mix in the pot"), us ? tr("quarts") : tr("L"), tr("May be left blank")},
            {Wet, AskQuestion::Choice, tr("Is it still wet on the leaves?"), {}, {}, {}, yes_no_choices()},
            {Compost, AskQuestion::Choice, tr("Is it suspected in mix, compost or manure?"), {}, {}, {}, yes_no_choices()},
            {Edible, AskQuestion::Choice, tr("Is any of it eaten?"), {}, {}, {}, yes_no_choices()}};
        const std::array<QString, 5> heads{tr("What is seen on new growth"), tr("On leaves that were there"), tr("On stems"),
                                           tr("On roots"), tr("Where and on which plants")};
        for (std::size_t group = 0; group < of_group_.size(); ++group) {
            AskQuestion signs{FirstGroup + static_cast<int>(group), AskQuestion::Several, heads[group]};
            for (const auto* sign : of_group_[group]) {
                signs.choices.append(text(words::table_text(sign->text)));
            }
            all.push_back(std::move(signs));
        }
        return all;
    }

    AskAnswer answer(const AskValues& values) const override
    {
        AskAnswer said;
        const auto what = read(values, said);
        if (said.wrong >= 0) {
            return refused(said.wrong, said.trouble);
        }
        tell(said, plan::damage_course(what));
        offer(said, values, what);
        return said;
    }

private:
    enum Key { Which, Product, Ago, FirstSigns, Pot, Wet, Compost, Edible, FirstGroup };

    static int group_of(const std::string& group)
    {
        constexpr std::array<const char*, 4> kGroups{"young", "old", "stem", "root"};
        return static_cast<int>(std::ranges::find(kGroups, group) - kGroups.begin()); // Others: where.
    }
    bool in_journal(std::size_t which) const { return which < logged_.size(); }
    QString shown_days(double days) const { return decimal_to_type(look_.words, days, days < 2.0 ? 1 : 0); }
    double pot_step() const { return look_.words.units() == Units::Us ? kLitresOfAQuart : 1.0; }

    AskValues values_of(std::size_t which) const
    {
        AskValues values{{Which, QString::number(which)}};
        DamageCase known{.happened = today(), .pot_volume = plant_.pot_volume};
        if (in_journal(which)) {
            known = plan::case_of(logged_[which], ground_->household, facts().events);
        }
        values[Product] = text(words::table_text(known.product));
        if (known.happened != today()) {
            values[Ago] = QString::number(calendar::days_between(known.happened, today()));
        }
        if (known.first_signs_days) {
            values[FirstSigns] = shown_days(*known.first_signs_days);
        }
        if (known.pot_volume) {
            values[Pot] = decimal_to_type(look_.words, known.pot_volume->litres() / pot_step(), 1);
        }
        values[Wet] = yes_no_value(known.still_wet);
        values[Compost] = yes_no_value(known.from_compost);
        values[Edible] = yes_no_value(known.edible);
        for (std::size_t group = 0; group < of_group_.size(); ++group) {
            QStringList seen;
            for (std::size_t place = 0; place < of_group_[group].size(); ++place) {
                if (std::ranges::find(known.signs, of_group_[group][place]->key) != known.signs.end()) {
                    seen.append(QString::number(place));
                }
            }
            values[FirstGroup + static_cast<int>(group)] = seen.join(QLatin1Char(';'));
        }
        return values;
    }

    /// A number within the limits, or blank; else it says what is wrong.
    static std::optional<double> number(const AskValues& values, int key, double most, const QString& why, AskAnswer& said)
    {
        const QString words = of(values, key);
        if (words.isEmpty()) {
            return std::nullopt;
        }
        const auto value = typed_decimal(words);
        if (!value || !(*value >= 0.0 && *value <= most)) {
            said.wrong = key;
            said.trouble = why;
            return std::nullopt;
        }
        return value;
    }

    DamageCase read(const AskValues& values, AskAnswer& said) const
    {
        DamageCase what{.happened = today(), .plant = plant_.id};
        const auto ago = typed_days_ago(of(values, Ago));
        if (!ago) {
            said.wrong = Ago;
            said.trouble = tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo);
            return what;
        }
        what.happened = today() - calendar::Days{*ago};
        what.product = words::english_text(of(values, Product).toStdString());
        what.first_signs_days = number(values, FirstSigns, kMostSignDays, tr("Write days, 0 to 1000, or leave it blank."), said);
        const auto which = static_cast<std::size_t>(std::max(0, of(values, Which).toInt()));
        if (in_journal(which)) { // Not touched, it keeps what the rounding on screen does not show.
            const auto told = plan::case_of(logged_[which], ground_->household, facts().events).first_signs_days;
            if (told && of(values, FirstSigns) == shown_days(*told)) {
                what.first_signs_days = told;
            }
        }
        const auto pot = number(values, Pot, kMostPotLitres / pot_step(), tr("Write how much mix the pot holds, or leave it blank."), said);
        if (pot && *pot > 0.0) {
            what.pot_volume = Litres::from_litres(*pot * pot_step());
        }
        what.still_wet = yes_no(values, Wet);
        what.from_compost = yes_no(values, Compost);
        what.edible = yes_no(values, Edible);
        for (std::size_t group = 0; group < of_group_.size(); ++group) {
            for (const QString& place : of(values, FirstGroup + static_cast<int>(group)).split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
                const auto index = place.toUInt();
                if (index < of_group_[group].size()) {
                    what.signs.push_back(of_group_[group][index]->key);
                }
            }
        }
        for (const auto& event : facts().events) {
            if (event.kind == home::EventKind::NewGrowth && event.plant == plant_.id && event.happened > what.happened) {
                what.new_growth = what.new_growth ? std::min(*what.new_growth, event.happened) : event.happened;
            }
        }
        return what;
    }

    static QString head_of(const plan::DamageCourse& course)
    {
        if (course.mode != nullptr) {
            return tr("What is known of %1, and what to do").arg(text(words::table_text(course.mode->name)));
        }
        if (!course.fits.empty() && course.fits.front().closeness != plan::Closeness::Weak) {
            return tr("It looks most like %1. That is not certain.").arg(text(words::table_text(course.fits.front().mode->name)));
        }
        return tr("What did it is not known: the careful way.");
    }

    static void tell_mode(AskAnswer& said, const plan::DamageMode& mode)
    {
        const auto of_mode = words::mode_words(mode);
        said.lines.push_back({AskLine::Plain, upper_first(text(of_mode.told))});
        add(said, AskLine::Quiet, of_mode.note);
        add(said, AskLine::Strong, of_mode.conflict);
    }

    void tell(AskAnswer& said, const plan::DamageCourse& course) const
    {
        const auto& table = plan::DamageTable::built_in();
        said.headline = head_of(course);
        std::set<std::string> cases{course.cases.begin(), course.cases.end()};
        // Where nobody said, somebody may eat of it.
        const bool eaten = course.what.edible.value_or(true);
        if (eaten) {
            cases.insert("food");
            said.warning = tr("Do not eat.");
        }
        const auto lists = words::care_lists("chemical", cases);
        for (const auto& list : lists) { // What may hurt people stands first.
            for (const auto* line : list.lines) {
                if (is_urgent(*line)) {
                    add(said, AskLine::Caution, words::table_text(line->text));
                }
            }
        }
        if (!course.what.signs.empty()) {
            tell_fits(said, course, table);
        }
        if (course.mode != nullptr) {
            tell_mode(said, *course.mode);
        } else if (!course.what.product.empty()) {
            said.lines.push_back({AskLine::Plain, tr("“%1” is not in the table; read on the label what it contains.")
                                                      .arg(text(course.what.product))});
        }
        auto keys = course.sources;
        for (const auto& list : lists) {
            bool any = false;
            for (const auto* line : list.lines) {
                keys.insert(keys.end(), line->sources.begin(), line->sources.end());
                if (is_urgent(*line)) {
                    continue;
                }
                if (!std::exchange(any, true)) {
                    add(said, AskLine::Head, list.head);
                }
                add(said, AskLine::Plain, words::table_text(line->text));
            }
            if (list.lines.front()->list == "now" && course.leach_water) {
                said.lines.push_back({AskLine::Plain, tr("To wash the mix through: %1 of water, twice the pot's volume, caught in a basin.")
                                                          .arg(text(words::volume(*course.leach_water, units_)))});
            }
        }
        said.lines.push_back({AskLine::Head, tr("Feed")});
        said.lines.push_back({AskLine::Plain, course.feed_waits_for_growth
                                                  ? tr("No feed before %1, and then only once new, healthy growth is logged.").arg(date(course.no_feed_before))
                                                  : closed(tr("No feed before %1.").arg(date(course.no_feed_before)))});
        said.lines.push_back({AskLine::Head, tr("Days")});
        for (const auto& step : course.steps) {
            add_step(said, step.date, words::damage_step(step.act));
        }
        tell_described(said, course);
        add_plant_cautions(said);
        said.lines.push_back({AskLine::Quiet, tr("This is no diagnosis and no legal proof.")});
        add_sources(said, keys);
    }

    static void tell_fits(AskAnswer& said, const plan::DamageCourse& course, const plan::DamageTable& table)
    {
        said.lines.push_back({AskLine::Head, tr("What the signs fit, not certain")});
        for (const auto& fit : course.fits) {
            QStringList sentences;
            for (const auto& piece : words::fit_words(fit, table)) {
                sentences.append(upper_first(text(piece)) + QLatin1Char('.'));
            }
            said.lines.push_back({AskLine::Plain, sentences.join(QLatin1Char(' '))});
        }
        if (course.fits.empty()) {
            said.lines.push_back({AskLine::Plain, tr("Nothing in the table; show it to a plant clinic.")});
        }
    }

    /// What the likely ones are.
    static void tell_described(AskAnswer& said, const plan::DamageCourse& course)
    {
        bool any = false;
        for (std::size_t index = 0; index < std::min(kFitsDescribed, course.fits.size()); ++index) {
            if (course.fits[index].mode == course.mode) {
                continue;
            }
            if (!std::exchange(any, true)) {
                said.lines.push_back({AskLine::Head, tr("What is known of these")});
            }
            tell_mode(said, *course.fits[index].mode);
        }
    }

    /// Eating of it, and what somebody has touched or swallowed.
    static bool is_urgent(const plan::CareLine& line)
    {
        return line.applies == "food" || line.id == "c28";
    }

    void offer(AskAnswer& said, const AskValues& values, const DamageCase& what) const
    {
        const auto which = static_cast<std::size_t>(std::max(0, of(values, Which).toInt()));
        // Of a day that the journal has, it is the same case, told anew.
        const auto there = std::ranges::find(logged_, what.happened, &home::Event::happened);
        if (in_journal(which) && logged_[which].happened != what.happened) {
            said.why_not = tr("The journal keeps the day it has, %1; another day is another case.").arg(date(logged_[which].happened));
            return;
        }
        if (there != logged_.end()) {
            const auto known = plan::case_of(*there, ground_->household, facts().events);
            const bool same_signs = std::ranges::is_permutation(known.signs, what.signs); // In whatever order they were ticked.
            if (known.product == what.product && same_signs && known.still_wet == what.still_wet &&
                known.from_compost == what.from_compost && known.first_signs_days == what.first_signs_days &&
                known.edible == what.edible) {
                said.why_not = tr("As the journal has it.");
                return;
            }
        }
        home::Event event{.plant = plant_.id, .kind = home::EventKind::ChemicalDamage, .spot = {}, .happened = what.happened,
                          .entered = now(), .note = ""};
        const auto keep = [&](const char* detail, const std::string& value) {
            if (!value.empty()) {
                event.details[detail] = value;
            }
        };
        const auto yes = [](std::optional<bool> known) { return known ? std::string{*known ? "yes" : "no"} : std::string{}; };
        std::string signs;
        for (const auto& key : what.signs) {
            signs += (signs.empty() ? "" : ";") + key;
        }
        keep("product", what.product);
        keep("signs", signs);
        keep("first_signs_days", what.first_signs_days ? QString::number(*what.first_signs_days).toStdString() : std::string{});
        keep("still_wet", yes(what.still_wet));
        keep("compost", yes(what.from_compost));
        keep("edible", yes(what.edible));
        if (there != logged_.end()) { // What the form does not ask stays as it was told.
            event.note = there->note;
            for (const char* kept : {"wind", "distance"}) {
                keep(kept, std::string{there->detail(kept)});
            }
        }
        said.entries.events.push_back(std::move(event));
        said.written = tr("%1: hit by a spray on %2, written down. What helps and what waits comes into the round; nothing of it is eaten.")
                           .arg(name(), date(what.happened));
    }

    std::vector<home::Event> logged_; ///< Newest first.
    std::array<std::vector<const plan::DamageSign*>, 5> of_group_;
};

} // namespace

std::shared_ptr<const AskForm> damage_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look)
{
    return std::make_shared<const DamageAsk>(std::move(ground), plant, look);
}

} // namespace lathhouse::models
