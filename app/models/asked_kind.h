#pragma once

#include "core/plants/plant_kind.h"

#include <QString>

namespace lathhouse::models {

/// Its common name in the language that is shown, as it is printed.
QString shown_name(const plants::PlantKind& kind);
/// The same as a plant of it is called in the journal: with the marks of a keyboard.
QString kept_name(const plants::PlantKind& kind);

/// A kind of plant that somebody asks of by its name; nullptr with a sentence where the tables have none of it.
struct AskedKind {
    const plants::PlantKind* kind;
    QString trouble;
};

/// By a common name in the language that is shown or in English, or by the botanical name. Precondition: not blank.
AskedKind asked_kind(const QString& typed);

} // namespace lathhouse::models
