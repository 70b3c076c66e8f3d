#pragma once

#include "app/models/people_door.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/home/member.h"

#include <QVariantList>

#include <vector>

namespace lathhouse::models {

/// The section People and animals of Home: who is to be kept from harm, what they reach, and which plants stand there
/// now. A change is written at once and can be taken back; plans heed it when they are next made.
class HomePeopleModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    /// Roles: name, kind, own (the name as it was given; may be empty), reaches (a list of flags, one a spot), sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* members READ members CONSTANT)
    /// Roles: name, hand.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    /// Plants that can hurt somebody who reaches them now. Roles: plant, spot, hand, who, hazard, words, caution, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* harms READ harms CONSTANT)
    /// "3 plants that can hurt stand within reach."
    Q_PROPERTY(QString line READ line NOTIFY peopleChanged)
    /// Spots that are marked as within reach and that nobody listed reaches; may be empty.
    Q_PROPERTY(QString marked READ marked NOTIFY peopleChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY undoChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY undoChanged)

public:
    HomePeopleModel(PeopleDoor door, TodayLook look, QObject* parent = nullptr);

    SheetRows* members() { return &members_; }
    SheetRows* spots() { return &spots_; }
    SheetRows* harms() { return &harms_; }
    QString line() const { return line_; }
    QString marked() const { return marked_; }
    bool canUndo() const { return !done_.empty(); }
    bool canRedo() const { return !undone_.empty(); }

    /// kind: 0 child, 1 cat, 2 dog, 3 another animal; the name may be empty. Whether it could be taken.
    Q_INVOKABLE bool add(int kind, const QString& name);
    /// Whether it could be taken; a blank name is one too.
    Q_INVOKABLE bool rename(int row, const QString& name);
    /// Whether a member reaches a spot, by their places in the lists.
    Q_INVOKABLE void setReach(int row, int spot, bool reaches);
    Q_INVOKABLE void remove(int row);
    /// Takes back what was done last on this page; `redo` does it again.
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// The word for a kind: "child".
    Q_INVOKABLE static QString kindWord(int kind);

signals:
    void peopleChanged();
    void undoChanged();

protected:
    void read() override;

private:
    struct People;
    struct Done {
        home::Event event;
        QString words;
    };
    static People people_of(const plan::HouseholdFacts& facts, const TodayLook& look);
    static QString too_long();
    const home::Member* member(int row) const;
    QString called(const home::Member& member) const;
    std::string note_of(const home::Member& member) const;
    void write(home::Event event, QString words);
    void turn(std::vector<Done>& from, std::vector<Done>& to, bool back);

    PeopleDoor door_;
    TodayLook look_;
    std::vector<home::Member> known_members_;
    std::vector<home::Spot> known_spots_;
    int next_id_ = 1;
    QString line_;
    QString marked_;
    std::vector<Done> done_;
    std::vector<Done> undone_;
    SheetRows members_;
    SheetRows spots_;
    SheetRows harms_;
};

} // namespace lathhouse::models
