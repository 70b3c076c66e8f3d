#include "tests/bench/invented_records.h"

#include "core/calendar/month_length.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <numbers>
#include <string>

namespace lathhouse {
namespace {

/// Numbers within 0..1 that look random. Source: Knuth's MMIX generator, upper bits.
class Draw {
public:
    explicit Draw(std::uint64_t seed) : state_(seed) {}
    double operator()()
    {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state_ >> 40) / 16777216.0;
    }

private:
    std::uint64_t state_;
};

/// Tenths of a degree Celsius of a whole degree Fahrenheit, as most lows in records are.
int tenths_of_whole_fahrenheit(double celsius)
{
    return static_cast<int>(std::lround((std::round(celsius * 1.8 + 32.0) - 32.0) / 0.18));
}

void put(std::string& line, int value)
{
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%5d  0", value);
    line.append(text.data(), 8);
}

} // namespace

void write_invented_records(const std::filesystem::path& records, const std::filesystem::path& places, int stations)
{
    std::ofstream out{records, std::ios::binary};
    std::ofstream table{places, std::ios::binary};
    table << "station,name,latitude,longitude,elevation_m\n";
    for (int station = 0; station < stations; ++station) {
        Draw draw{static_cast<std::uint64_t>(station) + 1};
        std::array<char, 16> name{};
        std::snprintf(name.data(), name.size(), "USX%08d", station);
        const double latitude = 30.0 + 18.0 * draw();
        const double longitude = -120.0 + 45.0 * draw();
        table << name.data() << ",invented " << station << ',' << latitude << ',' << longitude << ",200\n";
        double weeks = 0.0; // Warm and cold weeks, kelvins.
        int day_of_all = 0;
        for (int year = 1991; year <= 2018; ++year) {
            const int gap = static_cast<int>(draw() * 360.0); // Three days without any reading.
            int day_of_year = 0;
            for (int month = 1; month <= 12; ++month) {
                char head[48];
                std::array<std::string, 3> lines;
                for (std::size_t element = 0; element < 3; ++element) {
                    constexpr std::array kNames = {"TMAX", "TMIN", "PRCP"};
                    std::snprintf(head, sizeof head, "%s%04d%02d%s", name.data(), year, month, kNames[element]);
                    lines[element] = head;
                }
                const int days = calendar::days_in_month(year, month);
                for (int day = 1; day <= 31; ++day) {
                    if (day > days || (day_of_year >= gap && day_of_year < gap + 3)) {
                        for (auto& line : lines) {
                            line += "-9999   ";
                        }
                        day_of_year += day > days ? 0 : 1;
                        continue;
                    }
                    weeks = 0.8 * weeks + 5.0 * (draw() - 0.5);
                    const double season = -std::cos(2.0 * std::numbers::pi * (day_of_all - 20) / 365.2425);
                    const double low = 24.0 - 0.45 * latitude + 11.0 * season + weeks;
                    put(lines[0], tenths_of_whole_fahrenheit(low + 8.0 + 6.0 * draw()));
                    put(lines[1], tenths_of_whole_fahrenheit(low));
                    put(lines[2], draw() < 0.7 ? 0 : static_cast<int>(300.0 * draw() * draw()));
                    ++day_of_year;
                    ++day_of_all;
                }
                for (const auto& line : lines) {
                    out << line << '\n';
                }
            }
        }
    }
}

} // namespace lathhouse
