#include "app/models/plant_archive.h"

#include "core/plan/plant_growth.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace lathhouse::models {

namespace {

constexpr std::size_t kMostKept = 3; ///< Two plants beside each other are looked at, of one of them a second measure.

/// Lists that are there as a whole, by plant.
class WholeLists {
public:
    WholeLists(std::vector<home::Measurement> measurements, std::vector<home::Photo> photos)
        : measurements_(std::move(measurements)), photos_(std::move(photos))
    {
    }

    std::vector<home::Measurement> measurements(home::PlantId plant, std::optional<home::MeasurementKind> kind) const
    {
        std::vector<home::Measurement> chosen;
        std::ranges::copy_if(measurements_, std::back_inserter(chosen), [&](const home::Measurement& of) {
            return of.plant == plant && (!kind || of.kind == *kind);
        });
        return chosen;
    }

    std::vector<home::Photo> photos(home::PlantId plant) const
    {
        std::vector<home::Photo> chosen;
        std::ranges::copy_if(photos_, std::back_inserter(chosen), [plant](const home::Photo& of) {
            return std::ranges::find(of.plants, plant) != of.plants.end();
        });
        return chosen;
    }

    journal::PlantPage page(home::PlantId plant, const journal::PlantAsked& asked) const
    {
        journal::PlantPage records;
        const auto all = measurements(plant, {});
        for (const auto kind : plan::measures_of(all, plant)) {
            records.kinds.push_back({kind, static_cast<int>(std::ranges::count(all, kind, &home::Measurement::kind))});
        }
        if (const auto kind = journal::shown_kind(records.kinds, asked.kind)) {
            records.series = measurements(plant, kind);
        }
        const auto newest = std::min(asked.newest, all.size());
        records.newest.assign(all.rbegin(), std::next(all.rbegin(), static_cast<std::ptrdiff_t>(newest)));
        const auto shown = photos(plant);
        records.photos.count = shown.size();
        if (!shown.empty()) {
            records.photos.oldest = shown.front().date();
        }
        for (const auto place : home::spread_places(shown.size(), asked.photos)) {
            records.photos.photos.push_back(shown[place]);
        }
        return records;
    }

    std::vector<home::Measurement> leading() const
    {
        std::set<std::pair<home::PlantId, home::MeasurementKind>> leading;
        std::set<home::PlantId> plants;
        for (const auto& of : measurements_) {
            if (plants.insert(of.plant).second) {
                leading.emplace(of.plant, plan::measures_of(measurements_, of.plant).front());
            }
        }
        std::vector<home::Measurement> chosen;
        std::ranges::copy_if(measurements_, std::back_inserter(chosen), [&](const home::Measurement& of) {
            return leading.contains({of.plant, of.kind});
        });
        return chosen;
    }

private:
    std::vector<home::Measurement> measurements_;
    std::vector<home::Photo> photos_;
};

} // namespace

template <class Key, class List, class Read>
std::shared_ptr<const List> PlantArchive::kept(Kept<Key, List>& lists, const Key& key, const Read& read) const
{
    const std::lock_guard lock(guard_); // Also while it reads: who asks for the same waits for it instead of reading too.
    const auto known = std::ranges::find(lists, key, &Kept<Key, List>::value_type::first);
    if (known != lists.end()) {
        std::rotate(known, std::next(known), lists.end());
        return lists.back().second;
    }
    auto list = read();
    if (!list) {
        return std::make_shared<const List>();
    }
    if (lists.size() >= kMostKept) {
        lists.erase(lists.begin());
    }
    lists.emplace_back(key, std::make_shared<const List>(std::move(*list)));
    return lists.back().second;
}

std::shared_ptr<const PlantArchive::Measurements> PlantArchive::measurements(home::PlantId plant, Kind kind) const
{
    return kept(measurements_, std::pair{plant, kind}, [&] { return source_.measurements(plant, kind); });
}

std::shared_ptr<const PlantArchive::Photos> PlantArchive::photos(home::PlantId plant) const
{
    return kept(photos_, plant, [&] { return source_.photos(plant); });
}

std::shared_ptr<const PlantArchive> archive_of(std::vector<home::Measurement> measurements, std::vector<home::Photo> photos)
{
    const auto all = std::make_shared<const WholeLists>(std::move(measurements), std::move(photos));
    return std::make_shared<const PlantArchive>(PlantArchive::Source{
        .page = [all](home::PlantId plant, const journal::PlantAsked& asked) -> Result<journal::PlantPage> { return all->page(plant, asked); },
        .measurements = [all](home::PlantId plant, PlantArchive::Kind kind) -> Result<PlantArchive::Measurements> {
            return all->measurements(plant, kind);
        },
        .photos = [all](home::PlantId plant) -> Result<PlantArchive::Photos> { return all->photos(plant); },
        .leading = [all]() -> Result<PlantArchive::Measurements> { return all->leading(); }});
}

} // namespace lathhouse::models
