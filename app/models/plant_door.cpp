#include "app/models/plant_door.h"

#include "app/models/drawn_photos.h"
#include "app/models/gone_in_memory.h"
#include "app/words/phrase.h"
#include "core/journal/household_store.h"
#include "core/journal/leading_measures.h"
#include "core/journal/photo_book.h"

#include <algorithm>
#include <iterator>
#include <mutex>
#include <span>
#include <utility>

namespace lathhouse::models {

namespace {

using Direction = journal::HouseholdStore::Direction;

bool is_it(const home::Event& event, const home::Entry& entry)
{
    const auto* other = std::get_if<home::Event>(&entry);
    return other != nullptr && other->plant == event.plant && other->kind == event.kind && other->spot == event.spot &&
           other->happened == event.happened && other->note == event.note && other->details == event.details;
}

bool is_it(const home::Measurement& measurement, const home::Entry& entry)
{
    const auto* other = std::get_if<home::Measurement>(&entry);
    return other != nullptr && other->plant == measurement.plant && other->kind == measurement.kind &&
           other->measured == measurement.measured && other->repeats == measurement.repeats;
}

bool is_it(const home::PhotoChange& change, const home::Entry& entry)
{
    const auto* other = std::get_if<home::PhotoChange>(&entry);
    return other != nullptr && other->kind == change.kind && other->plant == change.plant && other->photos == change.photos;
}

/// Turns the entries one by one, in the order given; where one is another than thought, all are turned back.
template <class Entries>
Result<void> turn(journal::HouseholdStore& store, const Entries& entries, Direction direction, calendar::Instant now)
{
    const auto back = direction == Direction::Undo ? Direction::Redo : Direction::Undo;
    int turned = 0;
    for (const auto& entry : entries) {
        const auto done = store.turn_last(direction, now);
        const bool right = done && *done && is_it(entry, **done);
        turned += done && *done ? 1 : 0;
        if (right) {
            continue;
        }
        for (; turned > 0; --turned) {
            if (const auto again = store.turn_last(back, now); !again) {
                return again.error();
            }
        }
        return done ? something_else_came() : done.error();
    }
    return {};
}

Result<void> turn_in_folder(const std::filesystem::path& folder, const PlantEntries& entries, Direction direction,
                            calendar::Instant now)
{
    auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    // What was entered last is taken back first.
    auto events = entries.events;
    auto measurements = entries.measurements;
    if (direction == Direction::Undo) {
        std::ranges::reverse(events);
        std::ranges::reverse(measurements);
    }
    if (!events.empty()) {
        return turn(*store, events, direction, now);
    }
    if (entries.photos && entries.photos->kind == home::PhotoChangeKind::Added) {
        return journal::PhotoBook{*store}.turn_added(entries.photos->photos, direction, now);
    }
    if (entries.photos) {
        return turn(*store, std::span{&*entries.photos, 1}, direction, now);
    }
    return turn(*store, measurements, direction, now);
}

/// Divides a plant as the event says: the journal enters that event itself.
Result<void> divide_in(journal::HouseholdStore& store, const home::Event& event)
{
    const auto household = store.load();
    if (!household) {
        return household.error();
    }
    const auto* parent = household->plant(event.plant.value_or(0));
    if (parent == nullptr) {
        return Error{ErrorCode::NotFound, words::phrase("the plant is not there any more")};
    }
    const auto pieces = home::pieces_of(*parent, home::pieces_in(event.detail("into")));
    if (!pieces) {
        return pieces.error();
    }
    const auto ids = store.divide(parent->id, *pieces, event.happened, event.entered, event.note);
    return ids ? Result<void>{} : Result<void>{ids.error()};
}

std::shared_ptr<const PlantArchive> archive_in(const std::filesystem::path& folder)
{
    const auto open = [folder] { return journal::HouseholdStore::open(folder); };
    return std::make_shared<const PlantArchive>(PlantArchive::Source{
        .page = [folder](home::PlantId plant, const journal::PlantAsked& asked) {
            return journal::read_plant_page(folder, plant, asked);
        },
        .measurements = [open](home::PlantId plant, PlantArchive::Kind kind) -> Result<PlantArchive::Measurements> {
            const auto store = open();
            return store ? store->measurements(plant, kind) : store.error();
        },
        .photos = [open](home::PlantId plant) -> Result<PlantArchive::Photos> {
            auto store = open();
            return store ? journal::PhotoBook{*store}.photos(plant) : store.error();
        },
        .leading = [open]() -> Result<PlantArchive::Measurements> {
            const auto store = open();
            return store ? journal::leading_measurements(*store) : store.error();
        }});
}

Result<PlantBook> book_of(plan::HouseholdFacts facts, const std::filesystem::path& folder)
{
    auto store = journal::HouseholdStore::open(folder);
    if (!store) {
        return store.error();
    }
    const journal::PhotoBook photos{*store};
    const auto chosen = photos.pictures();
    if (!chosen) {
        return chosen.error();
    }
    std::map<home::PlantId, home::Photo> pictures;
    for (const auto& [plant, id] : *chosen) {
        if (auto photo = photos.photo(id)) { // Else another program has taken it out of the lists since.
            pictures.emplace(plant, std::move(*photo));
        }
    }
    const auto gone = store->gone_plants();
    if (!gone) {
        return gone.error();
    }
    auto descents = store->descents();
    if (!descents) {
        return descents.error();
    }
    PlantBook book{std::move(facts), archive_in(folder), std::move(pictures), std::move(*descents)};
    for (const auto& of : *gone) {
        if (of.how != home::GoneHow::Undone) {
            book.gone.push_back(of);
        }
    }
    return book;
}

/// Measurements beside a household in memory, which keeps none.
class MeasuredInMemory {
public:
    explicit MeasuredInMemory(std::vector<home::Measurement> measurements) : kept_(std::move(measurements)) {}

    std::vector<home::Measurement> all() const
    {
        const std::lock_guard lock(guard_);
        return kept_;
    }
    void add(const std::vector<home::Measurement>& measurements)
    {
        const std::lock_guard lock(guard_);
        std::ranges::copy(measurements, std::back_inserter(kept_));
        std::ranges::stable_sort(kept_, {}, &home::Measurement::measured);
    }
    void remove(const std::vector<home::Measurement>& measurements)
    {
        const std::lock_guard lock(guard_);
        for (const auto& of : measurements) {
            if (const auto there = std::ranges::find(kept_, of); there != kept_.end()) {
                kept_.erase(there);
            }
        }
    }

private:
    mutable std::mutex guard_;
    std::vector<home::Measurement> kept_;
};

/// Plants that were ever seen in a household in memory: one that is gone is not kept there.
class KnownInMemory {
public:
    void see(const std::vector<home::Plant>& plants)
    {
        const std::lock_guard lock(guard_);
        for (const auto& plant : plants) {
            known_.insert_or_assign(plant.id, plant);
        }
    }
    std::map<home::PlantId, home::Plant> all() const
    {
        const std::lock_guard lock(guard_);
        return known_;
    }

private:
    mutable std::mutex guard_;
    std::map<home::PlantId, home::Plant> known_;
};

/// What a change is taken back by.
std::string name_of(const PlantEntries& entries)
{
    std::string name = "plants";
    for (const auto& event : entries.events) {
        name += ' ' + std::string{home::to_string(event.kind)} + ' ' + std::to_string(event.plant.value_or(0)) + ' ' +
                std::to_string(event.spot.value_or(0)) + ' ' + event.note;
    }
    if (entries.photos) {
        name += ' ' + std::string{home::to_string(entries.photos->kind)};
    }
    for (const auto& of : entries.measurements) {
        name += ' ' + std::string{home::to_string(of.kind)} + ' ' + std::to_string(of.plant) + ' ' +
                std::to_string(of.value());
    }
    return name;
}

} // namespace

PlantDoor plants_in_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load)
{
    PlantDoor door;
    door.load = [folder, load = std::move(load)]() -> Result<PlantBook> {
        auto facts = load();
        return facts ? book_of(std::move(*facts), folder) : Result<PlantBook>{facts.error()};
    };
    door.record = [folder](const PlantEntries& entries) -> Result<void> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        if (entries.events.size() == 1 && entries.events.front().kind == home::EventKind::Divided) {
            return divide_in(*store, entries.events.front());
        }
        if (!entries.events.empty()) {
            return store->record(std::span<const home::Event>{entries.events});
        }
        if (entries.photos) {
            return change_photos(*store, *entries.photos, entries.taken);
        }
        const auto ids = store->record(std::span<const home::Measurement>{entries.measurements});
        return ids ? Result<void>{} : Result<void>{ids.error()};
    };
    door.take_back = [folder](const PlantEntries& entries, calendar::Instant now) {
        return turn_in_folder(folder, entries, Direction::Undo, now);
    };
    door.bring_back = [folder](const PlantEntries& entries, calendar::Instant now) {
        return turn_in_folder(folder, entries, Direction::Redo, now);
    };
    door.thumbnail = [folder](const home::Photo& photo) -> Result<std::filesystem::path> {
        auto store = journal::HouseholdStore::open(folder);
        if (!store) {
            return store.error();
        }
        return journal::PhotoBook{*store}.thumbnail(photo);
    };
    door.photos = photos_in_folder(folder);
    door.keeps = true;
    return door;
}

PlantDoor plants_in_memory(std::shared_ptr<MemoryHousehold> household, std::vector<home::Measurement> measurements,
                           std::vector<home::DemonstrationPhoto> photos)
{
    const auto drawn = std::make_shared<DrawnPhotos>(std::move(photos), household->facts().as_told);
    const auto measured = std::make_shared<MeasuredInMemory>(std::move(measurements));
    const auto known = std::make_shared<KnownInMemory>();
    PlantDoor door;
    door.load = [household, measured, drawn, known]() -> Result<PlantBook> {
        auto all = drawn->photos();
        std::map<home::PlantId, home::Photo> pictures;
        for (const auto& [plant, id] : drawn->pictures()) {
            if (const auto photo = std::ranges::find(all, id, &home::Photo::id); photo != all.end()) {
                pictures.emplace(plant, *photo);
            }
        }
        PlantBook book{household->facts(), archive_of(measured->all(), std::move(all)), std::move(pictures)};
        book.descents = descents_in_memory(book.facts);
        known->see(book.facts.as_told.plants);
        book.gone = gone_in_memory(book.facts, known->all());
        return book;
    };
    door.record = [household, measured, drawn, known](const PlantEntries& entries) -> Result<void> {
        known->see(household->facts().as_told.plants);
        for (const auto& of : entries.measurements) {
            if (const auto sound = home::check(of); !sound) {
                return sound.error();
            }
        }
        const auto done = household->change(name_of(entries), [&](plan::HouseholdFacts& facts) -> Result<void> {
            for (const auto& event : entries.events) {
                if (const auto happened = happen_in_memory(facts, event); !happened) {
                    return happened;
                }
            }
            return {};
        });
        if (done) {
            measured->add(entries.measurements);
            if (entries.photos) {
                drawn->change(*entries.photos, entries.taken);
            }
        }
        return done;
    };
    door.take_back = [household, measured, drawn](const PlantEntries& entries, calendar::Instant) -> Result<void> {
        const auto done = household->take_back(name_of(entries));
        if (done) {
            measured->remove(entries.measurements);
            if (entries.photos) {
                drawn->take_back(*entries.photos);
            }
        }
        return done;
    };
    door.bring_back = [household, measured, drawn](const PlantEntries& entries, calendar::Instant) -> Result<void> {
        const auto done = household->bring_back(name_of(entries));
        if (done) {
            measured->add(entries.measurements);
            if (entries.photos) {
                drawn->change(*entries.photos, entries.taken);
            }
        }
        return done;
    };
    door.thumbnail = [drawn](const home::Photo& photo) { return drawn->file(photo); };
    door.photos = no_photos({ErrorCode::Unavailable, "this household is invented and has no folder; make one of your own "
                                                     "with `lathhouse demo DIR`, which takes photos in"});
    door.photos.file = [drawn](const home::Photo& photo) { return drawn->file(photo); };
    door.photos.aside = [household, drawn]() -> Result<PhotosAside> {
        auto aside = aside_of(drawn->photos(), household->facts().as_told);
        aside.withdrawn = drawn->withdrawn();
        return aside;
    };
    door.keeps = false;
    return door;
}

PlantDoor no_plants(Error why)
{
    return {.load = [why]() -> Result<PlantBook> { return why; },
            .record = [why](const PlantEntries&) -> Result<void> { return why; },
            .take_back = [why](const PlantEntries&, calendar::Instant) -> Result<void> { return why; },
            .bring_back = [why](const PlantEntries&, calendar::Instant) -> Result<void> { return why; },
            .thumbnail = [why](const home::Photo&) -> Result<std::filesystem::path> { return why; },
            .photos = no_photos(why),
            .keeps = false};
}

} // namespace lathhouse::models
