#pragma once

#include "core/climate/daily_records.h"

#include <string>
#include <string_view>
#include <vector>

/// What the readers of the three forms of daily records share; see DailyFile for the forms.
namespace lathhouse::climate {

inline constexpr int kFirstYearOfRecords = 1700;
inline constexpr int kLastYearOfRecords = 2199;
inline constexpr int kMissingReading = -9999;

enum class Element { Low, High, Rain, Other };

constexpr Element element_of(std::string_view name)
{
    if (name == "TMIN") {
        return Element::Low;
    }
    if (name == "TMAX") {
        return Element::High;
    }
    return name == "PRCP" ? Element::Rain : Element::Other;
}

/// Precondition: not Other.
constexpr std::array<DailyReading, 31>& readings_of(DailyMonth& month, Element element)
{
    return element == Element::Low ? month.low : element == Element::High ? month.high : month.rain;
}

/// The number of `count` decimal digits, or -1.
constexpr int digits(const char* text, int count)
{
    int number = 0;
    for (int i = 0; i < count; ++i) {
        if (text[i] < '0' || text[i] > '9') {
            return -1;
        }
        number = number * 10 + (text[i] - '0');
    }
    return number;
}

/// Fields of one row with the quotes of RFC 4180 taken off; false where a quote is left open. Quoted fields
/// with doubled quotes inside are rare and kept as they stand.
bool split_row(std::string_view line, std::vector<std::string_view>& fields);

/// The next line without its line end; moves `rest` behind it.
std::string_view take_line(std::string_view& rest);

/// Gathers rows into records, one station after another.
class StationGatherer {
public:
    StationGatherer(std::vector<std::string>& stations, const DailyFile::OnStation& on_station)
        : stations_(stations), on_station_(on_station)
    {
    }
    DailyRecord& record_of(std::string_view station)
    {
        if (!begun_ || record_.station() != station) {
            finish();
            record_.restart(station);
            stations_.emplace_back(station);
            begun_ = true;
        }
        return record_;
    }
    void finish()
    {
        if (begun_) {
            on_station_(record_);
        }
        begun_ = false;
    }

private:
    std::vector<std::string>& stations_;
    const DailyFile::OnStation& on_station_;
    DailyRecord record_{""};
    bool begun_ = false;
};

} // namespace lathhouse::climate
