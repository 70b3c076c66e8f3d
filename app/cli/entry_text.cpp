#include "app/cli/entry_text.h"

#include "app/words/measurement_words.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace lathhouse::cli {
namespace {

Json optional_text(const std::string& text)
{
    return text.empty() ? Json(nullptr) : Json(text);
}

std::string clock_text(std::chrono::minutes time)
{
    std::array<char, 8> text{};
    std::snprintf(text.data(), text.size(), "%02d:%02d", static_cast<int>(time.count() / 60 % 24),
                  static_cast<int>(time.count() % 60));
    return text.data();
}

Json json_of_celsius(const std::optional<Celsius>& value)
{
    return value ? json_number(value->degrees()) : Json(nullptr);
}

std::string name_of_plant(const home::Household& household, home::PlantId id)
{
    const auto* plant = household.plant(id);
    return plant != nullptr ? plant->name : "plant " + std::to_string(id);
}

} // namespace

Result<home::Household> with_gone_plants(const journal::HouseholdStore& store)
{
    auto household = store.load();
    if (!household) {
        return household;
    }
    auto gone = store.gone_plants();
    if (!gone) {
        return gone.error();
    }
    for (auto& plant : *gone) {
        household->plants.push_back(std::move(plant.plant));
    }
    return household;
}

std::string sentence_of(const home::Event& event, const home::Household& household)
{
    if (event.detail("change") == "household") { // What was changed stands in its words.
        return calendar::to_text(event.happened) + "  " + event.note;
    }
    std::string text = calendar::to_text(event.happened) + "  " + std::string{home::to_string(event.kind)};
    if (event.plant) {
        text += ", " + name_of_plant(household, *event.plant);
    }
    if (const auto* spot = event.spot ? household.spot(*event.spot) : nullptr) {
        text += (event.kind == home::EventKind::Moved ? " to " : ", ") + spot->name;
    }
    for (const auto& [name, value] : event.details) {
        text += ", " + name + " " + value;
    }
    return event.note.empty() ? text : text + " (" + event.note + ")";
}

std::string sentence_of(const home::Measurement& measurement, const home::Household& household,
                        words::UnitSystem units)
{
    std::string text = calendar::to_text(measurement.measured) + "  " + words::measured(measurement.kind) + ", " +
                       name_of_plant(household, measurement.plant) + " " + words::measured_value(measurement, units);
    if (!measurement.by.empty()) {
        text += ", by " + measurement.by;
    }
    if (!measurement.mix.empty()) {
        text += ", in " + measurement.mix;
    }
    return measurement.note.empty() ? text : text + " (" + measurement.note + ")";
}

std::string sentence_of(const home::Reading& reading, const home::Household& household, words::UnitSystem units)
{
    const auto* spot = household.spot(reading.spot);
    std::string text = calendar::to_text(reading.night) + "  reading, " +
                       (spot != nullptr ? spot->name : "spot " + std::to_string(reading.spot)) + " low " +
                       words::temperature(reading.low, units);
    if (reading.high) {
        text += ", high " + words::temperature(*reading.high, units);
    }
    return reading.note.empty() ? text : text + " (" + reading.note + ")";
}

std::string sentence_of(const home::NightsTogether& nights)
{
    const auto [first, last] = std::ranges::minmax(nights.readings, {}, &home::Reading::night);
    return std::to_string(nights.readings.size()) + " readings, nights of " + calendar::to_text(first.night) + " to " +
           calendar::to_text(last.night);
}

std::string sentence_of(const home::PhotoChange& change, const home::Household& household)
{
    using enum home::PhotoChangeKind;
    const auto plant = change.plant ? name_of_plant(household, *change.plant) : std::string{"a plant"};
    if (change.kind == DrawingChosen) {
        return plant + ", its drawing stands for it";
    }
    if (change.photos.size() > 1) {
        return std::to_string(change.photos.size()) + " photos came in, " + change.name + " the first";
    }
    const auto photo = "photo " + std::to_string(change.photos.empty() ? 0 : change.photos.front()) + " of " +
                       calendar::to_text(change.taken) + " (" + change.name + ")";
    switch (change.kind) {
    case Assigned:
        return photo + " shows " + plant;
    case TakenOff:
        return photo + " shows " + plant + " no longer";
    case Dated:
        return photo + ", dated by hand";
    case Withdrawn:
        return photo + " is out of the lists";
    case BroughtBack:
        return photo + " is back in the lists";
    case Chosen:
        return photo + " stands for " + plant;
    default:
        return photo + " came in";
    }
}

std::string sentence_of(const home::Entry& entry, const home::Household& household, words::UnitSystem units)
{
    if (const auto* change = std::get_if<home::PhotoChange>(&entry)) {
        return sentence_of(*change, household);
    }
    if (const auto* event = std::get_if<home::Event>(&entry)) {
        return sentence_of(*event, household);
    }
    if (const auto* measurement = std::get_if<home::Measurement>(&entry)) {
        return sentence_of(*measurement, household, units);
    }
    if (const auto* nights = std::get_if<home::NightsTogether>(&entry)) {
        return sentence_of(*nights);
    }
    return sentence_of(std::get<home::Reading>(entry), household, units);
}

Json entry_json(const home::Event& event)
{
    Json details = Json::object();
    for (const auto& [name, value] : event.details) {
        details[name] = value;
    }
    return {{"id", event.id ? Json(*event.id) : Json(nullptr)},
            {"date", calendar::to_text(event.happened)},
            {"kind", home::to_string(event.kind)},
            {"plant", event.plant ? Json(*event.plant) : Json(nullptr)},
            {"spot", event.spot ? Json(*event.spot) : Json(nullptr)},
            {"entered", calendar::to_text(event.entered)},
            {"details", details},
            {"note", event.note}};
}

Json entry_json(const home::Measurement& measurement)
{
    Json repeats = Json::array();
    for (const double reading : measurement.repeats) {
        repeats.push_back(json_number(reading));
    }
    const auto error = measurement.standard_error();
    return {{"id", measurement.id ? Json(*measurement.id) : Json(nullptr)},
            {"date", calendar::to_text(measurement.measured)},
            {"time", measurement.time ? Json(clock_text(*measurement.time)) : Json(nullptr)},
            {"zone", optional_text(measurement.time_zone)},
            {"plant", measurement.plant},
            {"kind", home::to_string(measurement.kind)},
            {"unit", home::to_string(home::unit_of(measurement.kind))},
            {"value", json_number(measurement.value())},
            {"repeats", repeats},
            {"standard_error", error ? json_number(*error) : Json(nullptr)},
            {"method", home::to_string(measurement.method)},
            {"by", optional_text(measurement.by)},
            {"pot_l", measurement.pot ? json_number(measurement.pot->litres()) : Json(nullptr)},
            {"mix", optional_text(measurement.mix)},
            {"photo", measurement.photo ? Json(*measurement.photo) : Json(nullptr)},
            {"entered", calendar::to_text(measurement.entered)},
            {"note", measurement.note}};
}

Json entry_json(const home::Reading& reading)
{
    return {{"date", calendar::to_text(reading.night)},
            {"spot", reading.spot},
            {"low_c", json_number(reading.low.degrees())},
            {"high_c", json_of_celsius(reading.high)},
            {"station_low_c", json_of_celsius(reading.station_low)},
            {"entered", calendar::to_text(reading.entered)},
            {"note", reading.note}};
}

Json entry_json(const home::PhotoChange& change)
{
    return {{"kind", home::to_string(change.kind)},
            {"photos", change.photos},
            {"plant", change.plant ? Json(*change.plant) : Json(nullptr)},
            {"file", optional_text(change.name)},
            {"entered", calendar::to_text(change.entered)}};
}

Json entry_json(const home::Entry& entry)
{
    const auto named = [](const char* name, const Json& rest) {
        Json json{{"entry", name}};
        json.update(rest);
        return json;
    };
    if (const auto* event = std::get_if<home::Event>(&entry)) {
        return named("event", entry_json(*event));
    }
    if (const auto* measurement = std::get_if<home::Measurement>(&entry)) {
        return named("measurement", entry_json(*measurement));
    }
    if (const auto* change = std::get_if<home::PhotoChange>(&entry)) {
        return named("photo", entry_json(*change));
    }
    if (const auto* nights = std::get_if<home::NightsTogether>(&entry)) {
        Json readings = Json::array();
        for (const auto& reading : nights->readings) {
            readings.push_back(entry_json(reading));
        }
        return named("readings", {{"readings", readings}});
    }
    return named("reading", entry_json(std::get<home::Reading>(entry)));
}

} // namespace lathhouse::cli
