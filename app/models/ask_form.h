#pragma once

#include "app/models/plants_facts.h"
#include "core/plan/cautions.h"

#include <QString>
#include <QStringList>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::models {

/// A question of a form. What the grower does not know is left open.
struct AskQuestion {
    enum Kind { Field, Number, Choice, Several };
    int key;
    Kind kind;
    QString label;
    QString unit = {};
    QString note = {};
    QString example = {};
    QStringList choices = {};
    bool shown = true; ///< Whether it matters as things stand.
};
/// The answers by the questions' keys: as typed; of a choice its place, of several theirs, with ';' between them.
using AskValues = std::map<int, QString>;
using AskQuestions = std::vector<AskQuestion>;

/// A line of what the program says to that.
struct AskLine {
    enum Kind { Head, Plain, Strong, Quiet, Caution, Dated, Past };
    Kind kind;
    QString words;
    QString date = {};
};

struct AskAnswer {
    QString headline; ///< All of it in a sentence.
    QString warning = {}; ///< The caution that stands before all others.
    std::vector<AskLine> lines = {};
    int wrong = -1;   ///< Key of the question whose answer cannot be taken; -1: none.
    QString trouble = {};
    PlantEntries entries = {}; ///< What may be written down of it.
    QString written = {};      ///< Said once it is.
    QString why_not = {};      ///< Why nothing is to be written; empty where that needs no word.
};

/// What a grower asks of a plant and what the answer is; it holds all that it rests on, so that a thread can make it.
class AskForm {
public:
    virtual ~AskForm() = default;
    virtual QString title() const = 0;
    /// What is known before anything is asked.
    virtual AskValues begin() const { return {}; }
    /// The question of that key was just answered; others may follow from it.
    virtual void settle(AskValues&, int) const {}
    virtual AskQuestions questions(const AskValues& values) const = 0;
    virtual AskAnswer answer(const AskValues& values) const = 0;
};

/// A form of one plant, with what such forms share.
class PlantAskForm : public AskForm {
public:
    /// Precondition: the plant is in the ground's household.
    PlantAskForm(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);

protected:
    QString name() const { return text(plant_.name); }
    const plan::HouseholdFacts& facts() const { return ground_->book.facts; }
    /// "Sat 30 May", with the year where it is far away.
    QString date(calendar::Date date) const;
    calendar::Date today() const { return look_.today; }
    static QString of(const AskValues& values, int key);
    /// Of a choice of "not known, yes, no".
    static std::optional<bool> yes_no(const AskValues& values, int key);
    static QString yes_no_value(std::optional<bool> known);
    static QStringList yes_no_choices();
    /// Nothing is said while a question's answer cannot be taken.
    static AskAnswer refused(int wrong, const QString& trouble);
    /// The day's plan, on which the answer rests, is not there yet.
    static AskAnswer not_yet();
    static void add(AskAnswer& answer, AskLine::Kind kind, const std::string& words);
    void add_step(AskAnswer& answer, calendar::Date on, const std::string& words) const;
    /// Cautions of the plant's kind, whoever handles it.
    void add_plant_cautions(AskAnswer& answer) const { add_kind_cautions(answer, kind_); }
    /// Of another kind; nullptr has none.
    static void add_kind_cautions(AskAnswer& answer, const plants::PlantKind* kind);
    static void add_cautions(AskAnswer& answer, std::initializer_list<plan::CautionTopic> topics);
    static void add_sources(AskAnswer& answer, const std::vector<std::string>& keys);

    std::shared_ptr<const PlantsGround> ground_;
    const home::Plant& plant_;
    const plants::PlantKind* kind_; ///< nullptr for one of the grower's own.
    TodayLook look_;
    words::UnitSystem units_;
};

/// What a cold night may have done to a plant; by the journal where nothing is typed.
std::shared_ptr<const AskForm> cold_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);
/// What weed-killer or else may have hurt a plant.
std::shared_ptr<const AskForm> damage_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);
/// Whether to spray a plant now. writes: whether it may be written down once it is done.
std::shared_ptr<const AskForm> spray_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look,
                                         bool writes);
/// A plant's course against pests.
std::shared_ptr<const AskForm> course_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);
/// When to look at its mix, its roots and its winter.
std::shared_ptr<const AskForm> water_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);
/// The days before it stays out, and those around its coming in.
std::shared_ptr<const AskForm> harden_ask(std::shared_ptr<const PlantsGround> ground, home::PlantId plant, const TodayLook& look);

} // namespace lathhouse::models
