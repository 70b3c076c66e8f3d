#pragma once

#include "app/models/plant_facts.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace lathhouse::models {

/// What the reference knows of a kind of plant, before anybody keeps one: its lines, what it wants, what it can do to people and
/// animals, and what all that rests on.
class KindModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the form that adds plants")
    Q_PROPERTY(bool open READ open NOTIFY kindChanged)
    /// Its common name.
    Q_PROPERTY(QString name READ name NOTIFY kindChanged)
    /// "Nerium oleander, Apocynaceae".
    Q_PROPERTY(QString botanical READ botanical NOTIFY kindChanged)
    /// "Also called ..."; empty where it has one name.
    Q_PROPERTY(QString otherNames READ otherNames NOTIFY kindChanged)
    /// Poison, spines and habits. Roles: strong, rest, rust.
    Q_PROPERTY(lathhouse::models::SheetRows* hazards READ hazards CONSTANT)
    /// What to do about them.
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY kindChanged)
    Q_PROPERTY(QString needsSpoken READ needsSpoken NOTIFY kindChanged)
    /// Roles: label, value, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* figures READ figures CONSTANT)
    /// What the figures rest on, and their sources.
    Q_PROPERTY(QStringList notes READ notes NOTIFY kindChanged)

public:
    explicit KindModel(YearWords words, QObject* parent = nullptr);

    bool open() const { return open_; }
    QString name() const { return name_; }
    QString botanical() const { return botanical_; }
    QString otherNames() const { return other_names_; }
    SheetRows* hazards() { return &hazards_; }
    QStringList cautions() const { return cautions_; }
    QString needsSpoken() const { return needs_spoken_; }
    SheetRows* figures() { return &figures_; }
    QStringList notes() const { return notes_; }

    Q_INVOKABLE void close();

    void show(const plants::PlantKind& kind);
    const std::optional<NightNeeds>& needs() const { return needs_; }
    const YearWords& words() const { return words_; }

signals:
    void kindChanged();

private:
    YearWords words_;
    bool open_ = false;
    QString name_, botanical_, other_names_, needs_spoken_;
    QStringList cautions_, notes_;
    std::optional<NightNeeds> needs_;
    SheetRows hazards_;
    SheetRows figures_;
};

} // namespace lathhouse::models
