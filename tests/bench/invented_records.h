#pragma once

#include <filesystem>

namespace lathhouse {

/// Writes daily records of so many invented stations, 28 years of lows, highs and rain each, in GHCN-Daily's fixed
/// width, and beside it a table of where they stand. A season, warm and cold weeks, whole degrees Fahrenheit, a gap of
/// some days a year; equal numbers give equal files. 1,203 stations are 327 MB.
void write_invented_records(const std::filesystem::path& records, const std::filesystem::path& places, int stations);

} // namespace lathhouse
