#include "app/models/event_words.h"

#include "app/models/translated.h"
#include "app/models/year_words.h"
#include "app/words/table_words.h"

#include <algorithm>

namespace lathhouse::models {

QString event_words(const home::Event& event, const home::Household& household)
{
    using home::EventKind;
    const auto* spot = event.spot ? household.spot(*event.spot) : nullptr;
    switch (event.kind) {
    case EventKind::Moved:
        return spot != nullptr ? tr("moved to %1").arg(text(spot->name)) : tr("moved");
    case EventKind::PestFound:
        return tr("%1 found").arg(event.detail("pest").empty() ? tr("pests")
                                                               : text(words::table_text(std::string{event.detail("pest")})));
    case EventKind::Inspected:
        return event.detail("found").empty() || event.detail("found") == "nothing"
                   ? event.note.empty() ? tr("looked over, nothing found") : tr("looked over")
                   : tr("looked over, found %1").arg(text(std::string{event.detail("found")}));
    case EventKind::ChemicalDamage:
        return event.detail("product").empty() ? tr("spray damage")
                                               : tr("damage by %1").arg(text(std::string{event.detail("product")}));
    case EventKind::Fed:
        return event.detail("ppm").empty()
                   ? tr("fed")
                   : tr("fed, %1 ppm nitrogen").arg(text(std::string{event.detail("ppm")}));
    case EventKind::ColdNight:
        return tr("cold night");
    case EventKind::NewGrowth:
        return tr("new growth");
    case EventKind::Isolated:
        return tr("set apart");
    case EventKind::Released:
        return tr("back among the others");
    case EventKind::Noted:
        return tr("note");
    case EventKind::Treated:
        return event.detail("with").empty() ? tr("treated")
                                            : tr("treated with %1").arg(text(std::string{event.detail("with")}));
    default: {
        std::string kind{home::to_string(event.kind)};
        std::ranges::replace(kind, '_', ' ');
        return text(words::table_text(kind));
    }
    }
}

} // namespace lathhouse::models
