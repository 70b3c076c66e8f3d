#pragma once

#include "core/plants/plant_kind.h"

#include <string>

namespace lathhouse::words {

/// What the cold lines rest on: "a figure published for this plant; the other lines may be common practice".
std::string rests_on(plants::Evidence evidence);
/// "common practice, no source" where the row names nothing else, else that the table does not record which
/// of its sources a figure is from.
std::string rests_on_row(const plants::PlantKind& kind);
/// "poisonous". Harmless is never said: "not known to be poisonous, which is no proof".
std::string toxicity(plants::Toxicity toxicity);
/// Whether a list of poisonous or harmless plants stands behind the row's two toxicities.
std::string toxicity_rests_on(const plants::PlantKind& kind);
/// "bright, without direct sun".
std::string light_class(plants::LightClass light);
/// "top inch dry".
std::string drying_class(std::string_view word);
/// "Title, publisher, 2001"; "common practice, no source" for the key that stands for it.
std::string source_line(const plants::Source& source);
/// Whether only common practice stands behind the row.
bool is_common_practice(const plants::PlantKind& kind);

} // namespace lathhouse::words
