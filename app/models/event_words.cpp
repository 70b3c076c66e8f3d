#include "app/models/event_words.h"

#include "app/models/ticked_task.h"
#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"
#include "app/words/table_words.h"
#include "core/plants/pest.h"

#include <algorithm>
#include <variant>

namespace lathhouse::models {

namespace {

QString event_detail(const home::Event& event, const char* name)
{
    return text(std::string{event.detail(name)});
}

/// The pest that was found, in the reader's language also where it was written by one of its other names ("mealybug").
QString pest_found_words(const home::Event& event)
{
    const std::string written{event.detail("pest")};
    const auto known = plants::PestTable::built_in().find(written);
    return text(words::table_text(known && !words::language().empty() ? (*known)->name : written));
}

/// A sowing by the crop and the lot that the journal names.
QString tray_sown_words(const home::Event& event)
{
    if (event.detail("lot").empty()) {
        return tr("sown");
    }
    const QString crop = text(words::table_text(std::string{event.detail("crop")}));
    if (event.detail("seeds") == "1") {
        return tr("1 seed of %1 sown, of the lot %2").arg(crop, event_detail(event, "lot"));
    }
    return tr("%1 seeds of %2 sown, of the lot %3").arg(event_detail(event, "seeds"), crop, event_detail(event, "lot"));
}

QString entry_plant(const home::Household& household, home::PlantId id)
{
    const auto* plant = household.plant(id);
    return plant != nullptr ? text(plant->name) : tr("plant %1").arg(id);
}

QString entry_said(const home::Event& event, const home::Household& household, const YearWords& words)
{
    if (event.detail("change") == "household") { // What was changed stands in its words.
        return tr("%1, %2").arg(text(event.note), words.date_with_year(event.happened));
    }
    const QString what = event_words(event, household);
    const QString date = words.date_with_year(event.happened);
    const auto* spot = event.spot ? household.spot(*event.spot) : nullptr;
    if (event.plant) {
        return tr("%1: %2, %3").arg(entry_plant(household, *event.plant), what, date);
    }
    return spot != nullptr ? tr("%1: %2, %3").arg(text(spot->name), what, date) : tr("%1, %2").arg(what, date);
}

QString entry_said(const home::PhotoChange& change, const home::Household& household, const YearWords& words)
{
    using enum home::PhotoChangeKind;
    const QString plant = change.plant ? entry_plant(household, *change.plant) : tr("a plant");
    if (change.kind == DrawingChosen) {
        return tr("%1: its drawing stands for it").arg(plant);
    }
    if (change.photos.size() > 1) {
        return tr("%1 photographs came in, %2 the first").arg(change.photos.size()).arg(text(change.name));
    }
    const QString photo = tr("the photograph %1 of %2").arg(text(change.name), words.date_with_year(change.taken));
    switch (change.kind) {
    case Assigned:
        return tr("%1 shows %2").arg(photo, plant);
    case TakenOff:
        return tr("%1 shows %2 no longer").arg(photo, plant);
    case Dated:
        return tr("%1 was dated by hand").arg(photo);
    case Withdrawn:
        return tr("%1 is out of the lists").arg(photo);
    case BroughtBack:
        return tr("%1 is back in the lists").arg(photo);
    case Chosen:
        return tr("%1 stands for %2").arg(photo, plant);
    default:
        return tr("%1 came in").arg(photo);
    }
}

QString entry_said(const home::Measurement& measurement, const home::Household& household, const YearWords& words)
{
    return tr("%1: %2 %3, %4")
        .arg(entry_plant(household, measurement.plant), text(words::measured(measurement.kind)),
             text(words::measured_value(measurement, unit_system_of(words))), words.date_with_year(measurement.measured));
}

QString entry_said(const home::Reading& reading, const home::Household& household, const YearWords& words)
{
    const auto* spot = household.spot(reading.spot);
    return tr("%1: lowest of the night %2, %3")
        .arg(spot != nullptr ? text(spot->name) : tr("a spot"), words.temperature(reading.low),
             words.date_with_year(reading.night));
}

QString entry_said(const home::NightsTogether& nights, const home::Household& household, const YearWords& words)
{
    const auto [first, last] = std::ranges::minmax(nights.readings, {}, &home::Reading::night);
    const bool one = std::ranges::all_of(nights.readings, [&](const auto& reading) { return reading.spot == first.spot; });
    const auto* spot = one ? household.spot(first.spot) : nullptr;
    const QString count = QString::number(nights.readings.size());
    const QString from = words.date_with_year(first.night);
    const QString to = words.date_with_year(last.night);
    return spot != nullptr ? tr("%1: lowest of %2 nights, %3 to %4").arg(text(spot->name), count, from, to)
                           : tr("lowest of %1 nights at several spots, %2 to %3").arg(count, from, to);
}

} // namespace

QString entry_words(const home::Entry& entry, const home::Household& household, const YearWords& words)
{
    return std::visit([&](const auto& of) { return entry_said(of, household, words); }, entry);
}

QString sort_words(home::EventKind kind)
{
    using home::EventKind;
    switch (kind) {
    case EventKind::Inspected:
        return tr("Looked over");
    case EventKind::Treated:
        return tr("Treated");
    case EventKind::Watered:
        return tr("Watered");
    case EventKind::Fed:
        return tr("Fed");
    case EventKind::Leached:
        return tr("Washed through");
    case EventKind::Repotted:
        return tr("Repotted");
    case EventKind::Pruned:
        return tr("Pruned");
    case EventKind::Flowered:
        return tr("Flowered");
    case EventKind::NewGrowth:
        return tr("New growth");
    case EventKind::PestFound:
        return tr("Pest found");
    case EventKind::Isolated:
        return tr("Set apart");
    case EventKind::Released:
        return tr("Back among the others");
    case EventKind::ColdNight:
        return tr("Cold night");
    case EventKind::ChemicalDamage:
        return tr("Hit by a spray");
    case EventKind::Sown:
        return tr("Sown");
    case EventKind::Emerged:
        return tr("Came up");
    case EventKind::PlantedOut:
        return tr("Planted out");
    case EventKind::Died:
        return tr("Died");
    case EventKind::GivenAway:
        return tr("Given away");
    case EventKind::Removed:
        return tr("Off the list");
    case EventKind::Divided:
        return tr("Divided");
    default:
        return tr("Note");
    }
}

QString event_words(const home::Event& event, const home::Household& household)
{
    using home::EventKind;
    const auto* spot = event.spot ? household.spot(*event.spot) : nullptr;
    switch (event.kind) {
    case EventKind::Moved:
        return spot != nullptr ? tr("moved to %1").arg(text(spot->name)) : tr("moved");
    case EventKind::PestFound:
        return tr("%1 found").arg(event.detail("pest").empty() ? tr("pests") : pest_found_words(event));
    case EventKind::Inspected:
        return event.detail("found").empty() || event.detail("found") == "nothing"
                   ? event.note.empty() ? tr("looked over, nothing found") : tr("looked over")
                   : tr("looked over, found %1").arg(text(words::table_text(std::string{event.detail("found")})));
    case EventKind::ChemicalDamage:
        return event.detail("product").empty() ? tr("spray damage")
                                               : tr("damage by %1").arg(text(words::table_text(std::string{event.detail("product")})));
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
        if (event.detail("potted") == "1") {
            return tr("1 seedling of the lot %1 was potted").arg(event_detail(event, "lot"));
        }
        if (!event.detail("potted").empty()) {
            return tr("%1 seedlings of the lot %2 were potted").arg(event_detail(event, "potted"), event_detail(event, "lot"));
        }
        return event.detail("lot").empty()
                   ? tr("note")
                   : tr("the lot %1 of %2")
                         .arg(event_detail(event, "lot"), text(words::table_text(std::string{event.detail("crop")})));
    case EventKind::Sown:
        return tray_sown_words(event);
    case EventKind::Emerged:
        return event.detail("emerged").empty() || event.detail("sown").empty()
                   ? text(words::table_text("emerged"))
                   : tr("%1 of %2 seeds of the lot %3 had come up")
                         .arg(event_detail(event, "emerged"), event_detail(event, "sown"), event_detail(event, "lot"));
    case EventKind::Divided:
        return event.detail("into").empty() ? text(words::table_text("divided"))
                                            : tr("divided into %1").arg(event_detail(event, "into"));
    case EventKind::Treated:
        return event.detail("with").empty() ? tr("treated")
                                            : tr("treated with %1").arg(text(std::string{event.detail("with")}));
    case EventKind::TaskDone:
    case EventKind::TaskPostponed:
    case EventKind::TaskSkipped:
        return ticked_words(event);
    default: {
        std::string kind{home::to_string(event.kind)};
        std::ranges::replace(kind, '_', ' ');
        return text(words::table_text(kind));
    }
    }
}

} // namespace lathhouse::models
