#pragma once

#include "core/base/result.h"

#include <array>
#include <cassert>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::climate {

/// A day's reading in tenths (of a degree Celsius, or of a millimetre), or a gap. Two bytes, so that the lows
/// of a month are compared with a line in a few machine instructions.
class DailyReading {
public:
    /// A gap.
    constexpr DailyReading() = default;
    /// nullopt outside -32767..32766.
    static constexpr std::optional<DailyReading> from_tenths(int tenths)
    {
        if (tenths <= -kGap || tenths >= kGap) {
            return std::nullopt;
        }
        return DailyReading{static_cast<std::int16_t>(tenths)};
    }
    constexpr bool known() const { return raw_ != kGap; }
    /// Precondition: known.
    constexpr int tenths() const
    {
        assert(known());
        return raw_;
    }
    /// False for a gap. Precondition: line_tenths < 32767.
    constexpr bool at_or_below(std::int16_t line_tenths) const { return raw_ <= line_tenths; }
    friend constexpr bool operator==(DailyReading, DailyReading) = default;

private:
    static constexpr std::int16_t kGap = std::numeric_limits<std::int16_t>::max();
    explicit constexpr DailyReading(std::int16_t raw) : raw_(raw) {}
    std::int16_t raw_ = kGap;
};

/// Readings of one calendar month, day 1 first; days that the month does not have are gaps.
struct DailyMonth {
    std::array<DailyReading, 31> low;  ///< TMIN, tenths of a degree Celsius.
    std::array<DailyReading, 31> high; ///< TMAX, tenths of a degree Celsius.
    std::array<DailyReading, 31> rain; ///< PRCP, tenths of a millimetre.
};

/// One station's days, month after month without a break.
class DailyRecord {
public:
    explicit DailyRecord(std::string station) : station_(std::move(station)) {}

    const std::string& station() const { return station_; }
    bool empty() const { return months_.empty(); }
    /// First and last calendar year with any line. Precondition: not empty.
    int first_year() const { return first_month_ / 12; }
    int last_year() const { return (first_month_ + static_cast<int>(months_.size()) - 1) / 12; }
    /// nullptr where the record has no line for that month or lies before or after it.
    const DailyMonth* month(int year, int month) const
    {
        const int at = year * 12 + month - 1 - first_month_;
        return at < 0 || at >= static_cast<int>(months_.size()) ? nullptr
                                                                : &months_[static_cast<std::size_t>(at)];
    }
    /// The month to write to; the record grows to hold it. Precondition: month 1..12, year 1700..2199.
    DailyMonth& month_to_write(int year, int month);
    /// An empty record of another station, keeping the memory.
    void restart(std::string_view station);

private:
    std::string station_;
    int first_month_ = 0; ///< year x 12 + month - 1
    std::vector<DailyMonth> months_;
};

/// A file of daily records, mapped into memory and read station by station. Three forms, told apart by the
/// first line:
///
/// - *GHCN-Daily fixed width* (`.dly`): lines of 269 characters, station, year, month, element and 31 values
///   with three flags each; tenths of a degree Celsius and of a millimetre. Any number of stations, one after
///   another. Source: GHCN-Daily readme, NOAA NCEI, section III.
/// - *one row a day and element*: `ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,TIME`, with or without a head
///   line; the last four fields may be absent. Tenths.
/// - *one row a day*: a head line that names at least STATION, DATE and TMIN, optionally TMAX, PRCP and each
///   one's `_ATTRIBUTES` ("m,q,s"). Units: tenths, as NCEI's access files have them, unless any value of
///   these columns has a decimal point: then the whole file is in degrees Celsius and millimetres. Degrees
///   Fahrenheit cannot be told from tenths and must be converted first.
///
/// Only TMIN, TMAX and PRCP are read. A value of -9999 or with a quality flag is a gap. A line that breaks
/// the form, or gives a reading a second time, is an error which names file and line; nothing is skipped. All lines of a
/// station stand together.
class DailyFile {
public:
    enum class Form { FixedWidth, RowPerElement, RowPerDay };
    using OnStation = std::function<void(const DailyRecord&)>;
    /// A run of whole stations.
    using Piece = std::string_view;

    /// Errors: NotFound, Unreadable (a folder too), Malformed (empty; the first line is no record). Of fixed-width
    /// lines it reads the first alone; the forms with rows are held in memory from here on.
    static Result<DailyFile> open(const std::filesystem::path& file);

    Form form() const { return form_; }
    const std::string& name() const { return name_; }

    /// Calls back for each station in the file's order; the record is lent for the call.
    /// Errors: Malformed with file and line. Stations before the bad line have been reported by then.
    Result<void> for_each_station(const OnStation& on_station) const;

    /// At most `wanted` (>= 1) runs of whole stations that together are the file; one for the forms with
    /// rows.
    std::vector<Piece> pieces(std::size_t wanted) const;
    /// As for_each_station on several threads: `on_station(index of piece, record)` is called from different
    /// threads for different pieces, in order within one.
    Result<void>
    for_each_station_of(std::span<const Piece> pieces, int threads,
                        const std::function<void(std::size_t, const DailyRecord&)>& on_station) const;

private:
    struct Mapping;
    DailyFile() = default;
    static Result<DailyFile> read_rows(DailyFile file, Form form, const std::filesystem::path& path);
    std::shared_ptr<const Mapping> mapping_;
    std::string_view text_;
    std::string name_;
    Form form_ = Form::FixedWidth;

    Result<void> read_piece(Piece piece, std::vector<std::string>& stations,
                            const OnStation& on_station) const;
    Result<void> read_fixed_width(Piece piece, std::vector<std::string>& stations,
                                  const OnStation& on_station) const;
    Result<void> read_row_per_element(std::vector<std::string>& stations, const OnStation& on_station) const;
    Result<void> read_row_per_day(std::vector<std::string>& stations, const OnStation& on_station) const;
    Error bad_line(const char* at, const Said& what) const;
};

/// `compute(record)` for every station of the file, in its order, on two threads at most.
/// Errors: as DailyFile::for_each_station.
template <class Compute>
auto for_stations_of(const DailyFile& file, Compute compute)
    -> Result<std::vector<std::invoke_result_t<Compute, const DailyRecord&>>>
{
    using Value = std::invoke_result_t<Compute, const DailyRecord&>;
    constexpr int kThreads = 2;
    constexpr std::size_t kPiecesEach = 8;
    const auto pieces = file.pieces(kThreads * kPiecesEach);
    std::vector<std::vector<Value>> parts(pieces.size());
    const auto read =
        file.for_each_station_of(pieces, kThreads, [&](std::size_t piece, const DailyRecord& record) {
            parts[piece].push_back(compute(record));
        });
    if (!read) {
        return read.error();
    }
    std::vector<Value> all;
    for (auto& part : parts) {
        for (auto& value : part) {
            all.push_back(std::move(value));
        }
    }
    return all;
}

} // namespace lathhouse::climate
