#pragma once

#include "app/models/plants_model.h"

namespace lathhouse::models {

/// The feeding of the plant whose page is open through the year ahead, under lamps and with the grower's own water: when, how
/// strong, and why not. What is asked here is an answer alone; nothing is kept.
class FeedingAskModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page of a plant")
    /// Roles: dates, words, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* spells READ spells CONSTANT)
    /// Washing out, and what the water calls for.
    Q_PROPERTY(QStringList notes READ notes NOTIFY answered)

public:
    enum Water { NotKnown, Soft, Hard };
    Q_ENUM(Water)

    explicit FeedingAskModel(PlantsModel& plants, QObject* parent = nullptr);

    SheetRows* spells() { return &spells_; }
    QStringList notes() const { return notes_; }

    /// lamp_hours: a day, over the plants indoors; flux: the lamps' light at the leaves in micromoles a square metre and second;
    /// both may be blank. Gives whether it is worked out; else `error` says what is wrong.
    Q_INVOKABLE bool ask(const QString& lamp_hours, const QString& flux, int water);
    /// Takes the answer away.
    Q_INVOKABLE void clear();

signals:
    void answered();

protected:
    void read() override {}

private:
    PlantsModel& plants_;
    int asked_ = 0; ///< Only the last answer is shown.
    QStringList notes_;
    SheetRows spells_;
};

} // namespace lathhouse::models
