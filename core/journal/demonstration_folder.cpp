#include "core/journal/demonstration_folder.h"

#include "core/home/demonstration_photos.h"
#include "core/journal/demonstration_pictures.h"

#include <algorithm>
#include <iterator>

namespace lathhouse::journal {
namespace {

calendar::Instant evening(calendar::Date date)
{
    return calendar::start_of_day_utc(date) + std::chrono::hours{18};
}

/// What the store has to number itself: seeds, pottings, divisions.
Result<void> tell_rest(HouseholdStore& store, const home::Story& story, calendar::Date today)
{
    std::vector<int> lots;
    for (const auto& [lot, on] : story.lots) {
        const auto id = store.add_lot(lot, on, evening(on));
        if (!id) {
            return id.error();
        }
        lots.push_back(*id);
    }
    std::vector<int> trays;
    for (auto tray : story.trays) {
        tray.lot = lots.at(static_cast<std::size_t>(tray.lot));
        const auto id = store.record(tray, today, evening(tray.sown));
        if (!id) {
            return id.error();
        }
        trays.push_back(*id);
    }
    for (auto count : story.counts) {
        count.tray = trays.at(static_cast<std::size_t>(count.tray));
        if (const auto id = store.record(count, today, evening(count.on)); !id) {
            return id.error();
        }
    }
    for (const auto& potting : story.potted) {
        const auto ids = store.pot_up(trays.at(potting.tray), potting.plants, potting.on, evening(potting.on));
        if (!ids) {
            return ids.error();
        }
        std::vector<home::Event> ends;
        for (const auto id : *ids) {
            if (potting.gone) {
                ends.push_back({id, home::EventKind::Removed, {}, *potting.gone, evening(*potting.gone),
                                "harvest over, on the compost"});
            }
        }
        if (const auto done = store.record(std::span<const home::Event>{ends}); !done) {
            return done.error();
        }
    }
    for (const auto& division : story.divisions) {
        const auto ids = store.divide(division.parent, std::span{&division.piece, 1}, division.on,
                                      evening(division.on), "cut through the rhizome with a clean knife");
        if (!ids) {
            return ids.error();
        }
        if (division.given) {
            const home::Event given{ids->front(), home::EventKind::GivenAway, {}, *division.given,
                                    evening(*division.given), "to the neighbour"};
            if (const auto done = store.record(std::span{&given, 1}); !done) {
                return done.error();
            }
        }
    }
    return {};
}

} // namespace

Result<HouseholdStore> create_demonstration(const std::filesystem::path& folder,
                                            const home::DemonstrationOptions& options, std::optional<int> photos)
{
    const auto made = home::demonstration(options);
    if (!made) {
        return made.error();
    }
    const auto story = home::tell_story(options, *made);
    auto household = made->household;
    std::ranges::copy(story.gone, std::back_inserter(household.plants));
    auto history = made->history;
    std::ranges::copy(story.events, std::back_inserter(history));
    std::ranges::stable_sort(history, {}, &home::Event::happened);

    std::error_code failure;
    const bool was_there = std::filesystem::exists(folder, failure);
    auto store = HouseholdStore::create(folder, household, history);
    if (!store) {
        return store;
    }
    auto told = tell_rest(*store, story, options.today);
    if (told) {
        const auto measured = store->record(std::span<const home::Measurement>{story.measurements});
        if (!measured) {
            told = measured.error();
        }
    }
    if (told) {
        told = take_pictures(*store, made->household, home::demonstration_photos(options, *made, story, photos));
    }
    if (told) {
        return store;
    }
    // The folder was new or empty, and all in it is ours.
    const auto error = told.error();
    store = error;
    for (std::filesystem::directory_iterator entry{folder, failure}, end; !failure && entry != end; entry.increment(failure)) {
        std::error_code stays;
        std::filesystem::remove_all(entry->path(), stays);
    }
    if (!was_there) {
        std::filesystem::remove(folder, failure);
    }
    return error;
}

} // namespace lathhouse::journal
