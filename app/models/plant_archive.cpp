#include "app/models/plant_archive.h"

#include "core/plan/plant_growth.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace lathhouse::models {

namespace {

constexpr std::size_t kMostKept = 2; ///< Two plants beside each other are looked at.

} // namespace

Result<std::shared_ptr<const PlantRecords>> PlantArchive::of(home::PlantId plant) const
{
    const std::lock_guard lock(guard_); // Also while it reads: who asks for the same waits for it instead of reading too.
    const auto known = std::ranges::find(kept_, plant, &std::pair<home::PlantId, std::shared_ptr<const PlantRecords>>::first);
    if (known != kept_.end()) {
        std::rotate(known, std::next(known), kept_.end());
        return kept_.back().second;
    }
    auto read = read_(plant);
    if (!read) {
        return read.error();
    }
    if (kept_.size() >= kMostKept) {
        kept_.erase(kept_.begin());
    }
    kept_.emplace_back(plant, std::make_shared<const PlantRecords>(std::move(*read)));
    return kept_.back().second;
}

std::shared_ptr<const PlantRecords> PlantArchive::readable_of(home::PlantId plant) const
{
    const auto read = of(plant);
    return read ? *read : std::make_shared<const PlantRecords>();
}

std::shared_ptr<const PlantArchive> archive_of(std::vector<home::Measurement> measurements, std::vector<home::Photo> photos)
{
    const auto all = std::make_shared<const PlantRecords>(PlantRecords{std::move(measurements), std::move(photos)});
    return std::make_shared<const PlantArchive>(
        [all](home::PlantId plant) -> Result<PlantRecords> {
            PlantRecords records;
            std::ranges::copy_if(all->measurements, std::back_inserter(records.measurements),
                                 [plant](const home::Measurement& of) { return of.plant == plant; });
            std::ranges::copy_if(all->photos, std::back_inserter(records.photos), [plant](const home::Photo& of) {
                return std::ranges::find(of.plants, plant) != of.plants.end();
            });
            return records;
        },
        [all]() -> Result<std::vector<home::Measurement>> {
            std::set<std::pair<home::PlantId, home::MeasurementKind>> leading;
            std::set<home::PlantId> plants;
            for (const auto& of : all->measurements) {
                if (plants.insert(of.plant).second) {
                    leading.emplace(of.plant, plan::measures_of(all->measurements, of.plant).front());
                }
            }
            std::vector<home::Measurement> chosen;
            std::ranges::copy_if(all->measurements, std::back_inserter(chosen), [&](const home::Measurement& of) {
                return leading.contains({of.plant, of.kind});
            });
            return chosen;
        });
}

} // namespace lathhouse::models
