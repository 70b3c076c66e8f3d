#pragma once

namespace lathhouse::models {

/// What is written down now may have happened so many days ago at most: ten years.
inline constexpr int kLongestDaysAgo = 3650;

} // namespace lathhouse::models
