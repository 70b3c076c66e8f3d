#pragma once

#include "app/models/plant_facts.h"

#include <QCoreApplication>

namespace lathhouse::models {

/// What a plant's lines and its kind say of it, in words: on the page of a plant, and of a kind that nobody keeps yet.
class KindTexts {
    Q_DECLARE_TR_FUNCTIONS(PlantFacts)

public:
    static NightNeeds needs(const home::Plant& plant);
    /// "Nights: lethal at ..."; here: a sentence of its spot with a blank before it, or empty.
    static QString nights(const home::Plant& plant, const QString& here, const YearWords& words);
    /// Without what its spot gives.
    static QString light(const home::Plant& plant, const YearWords& words);
    /// Poison, spines and habits; strong, rest, rust. kind: nullptr for one of the grower's own.
    static std::vector<SheetRows::Row> hazards(const home::Plant& plant, const plants::PlantKind* kind);
    /// What its cold lines rest on, its sources, and the table's note.
    static QStringList sources(const plants::PlantKind* kind);
};

} // namespace lathhouse::models
