#pragma once

#include "core/home/measurement.h"
#include "core/home/photo.h"
#include "core/journal/database.h"

#include <filesystem>

// Rows of a query as what they tell; of use inside core/journal only. They throw SQLite::Exception.

namespace lathhouse::journal {

/// "SELECT ... ", whose rows measurement_in reads.
extern const char* const kMeasurementColumns;
/// The measurement of the statement's present row. Errors: Damaged.
Result<home::Measurement> measurement_in(SQLite::Statement& rows, const std::filesystem::path& file);

/// "SELECT ... FROM photos_that_count ", whose rows photo_in reads.
extern const char* const kPhotoColumns;
/// The photo of the statement's present row, without the plants that it shows. Errors: Damaged.
Result<home::Photo> photo_in(SQLite::Statement& row, const std::filesystem::path& file);

} // namespace lathhouse::journal
