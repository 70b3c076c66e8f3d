#pragma once

#include "app/models/ask_form.h"
#include "app/models/plants_model.h"

namespace lathhouse::models {

/// What a grower asks of one plant: questions whose answers the grower knows, and what the program says to them, said
/// anew with every answer. What belongs into the journal is written with one press, on the page Plants and its Undo.
class AskModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(bool open READ open NOTIFY openChanged)
    Q_PROPERTY(int what READ what NOTIFY openChanged)
    Q_PROPERTY(QString title READ title NOTIFY askedChanged)
    /// Roles: key, kind, label, unit, note, example, choices, value, chosen, ticked (by choice), trouble, shown.
    Q_PROPERTY(lathhouse::models::SheetRows* questions READ questions CONSTANT)
    Q_PROPERTY(QString headline READ headline NOTIFY askedChanged)
    /// The caution that stays in sight; empty where there is none.
    Q_PROPERTY(QString warning READ warning NOTIFY askedChanged)
    /// Roles: kind (of Line), words, date, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* lines READ lines CONSTANT)
    /// Whether the answer may be written into the journal.
    Q_PROPERTY(bool canWrite READ canWrite NOTIFY askedChanged)
    Q_PROPERTY(QString whyNot READ whyNot NOTIFY askedChanged)

public:
    enum What { None, AfterCold, Damage, Spray, Course, Water, Harden };
    Q_ENUM(What)
    enum Kind { Field, Number, Choice, Several };
    Q_ENUM(Kind)
    enum Line { Head, Plain, Strong, Quiet, Caution, Dated, Past };
    Q_ENUM(Line)

    explicit AskModel(PlantsModel& plants, QObject* parent = nullptr);

    bool open() const { return what_ != None; }
    int what() const { return what_; }
    QString title() const { return form_ ? form_->title() : QString{}; }
    SheetRows* questions() { return &questions_; }
    QString headline() const { return answer_.headline; }
    QString warning() const { return answer_.warning; }
    SheetRows* lines() { return &lines_; }
    bool canWrite() const { return !answer_.entries.events.empty(); }
    QString whyNot() const { return answer_.why_not; }

    /// Opens a form for the plant whose page is open.
    Q_INVOKABLE void ask(int what);
    /// Whether to spray a plant that the round treats; what is done there is ticked there.
    void ask_spray(home::PlantId plant);
    /// What was typed or chosen for the question of that key; others are ignored.
    Q_INVOKABLE void fill(int key, const QString& value);
    /// Turns one of several round.
    Q_INVOKABLE void toggle(int key, int choice);
    /// Writes the answer down and closes the form.
    Q_INVOKABLE void write();
    Q_INVOKABLE void leave();

signals:
    void openChanged();
    void askedChanged();
    /// What is wrong stands at a question.
    void wrong(int key);

protected:
    void read() override;

private:
    void begin(int what, home::PlantId plant, bool writes);
    void say_again();

    PlantsModel& plants_;
    int what_ = None;
    home::PlantId plant_ = 0;
    bool writes_ = true;
    int asked_ = 0;     ///< Forms asked for; only the last one is shown.
    bool fresh_ = true; ///< Nothing was answered yet.
    std::shared_ptr<const AskForm> form_;
    AskValues values_;
    AskAnswer answer_;
    SheetRows questions_;
    SheetRows lines_;
};

} // namespace lathhouse::models
