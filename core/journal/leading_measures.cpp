#include "core/journal/leading_measures.h"

#include "core/journal/reading.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

namespace lathhouse::journal {

namespace {

using CountedMeasures = std::map<home::PlantId, std::map<home::MeasurementKind, int>>;

/// How many measurements that count each plant has of each kind.
Result<CountedMeasures> counted_measures(const std::filesystem::path& folder)
{
    auto household = open_folder_to_read(folder);
    if (!household) {
        return household.error();
    }
    auto& [file, database] = *household;
    try {
        SQLite::Statement rows{database, "SELECT plant_id, kind, count(*) FROM measurements_that_count GROUP BY plant_id, kind"};
        CountedMeasures counts;
        while (rows.executeStep()) {
            if (const auto kind = home::measurement_kind_of(rows.getColumn(1).getString())) {
                counts[rows.getColumn(0).getInt()][*kind] = rows.getColumn(2).getInt();
            }
        }
        return counts;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, file);
    }
}

} // namespace

Result<std::vector<home::Measurement>> leading_measurements(const HouseholdStore& store)
{
    const auto counts = counted_measures(store.folder());
    if (!counts) {
        return counts.error();
    }
    std::vector<home::Measurement> all;
    for (const auto& [plant, kinds] : *counts) {
        // The first of those that it has most of, as the kinds are ordered.
        const auto most = std::ranges::max_element(kinds, {}, [](const auto& of) { return of.second; });
        auto of_plant = store.measurements(plant, most->first);
        if (!of_plant) {
            return of_plant.error();
        }
        std::ranges::move(*of_plant, std::back_inserter(all));
    }
    return all;
}

} // namespace lathhouse::journal
