#include "app/words/season_words.h"

#include "app/words/phrase.h"

#include <algorithm>
#include <array>
#include <vector>

namespace lathhouse::words {
namespace {

constexpr std::array<const char*, 12> kMonthNames{
    said_later("January"), said_later("February"), said_later("March"), said_later("April"),
    said_later("May"), said_later("June"), said_later("July"), said_later("August"),
    said_later("September"), said_later("October"), said_later("November"), said_later("December")};

std::string three_months(std::size_t from)
{
    return phrase("%1 to %2", phrase(kMonthNames[from]), phrase(kMonthNames[(from + 2) % 12]));
}

std::string rain(const climate::Seasons& seasons)
{
    switch (seasons.rain) {
    case climate::RainSeasons::Unknown:
        return "";
    case climate::RainSeasons::DryAllYear:
        return phrase("It is dry all year.");
    case climate::RainSeasons::RainAllYear:
        return seasons.temperature == climate::TemperatureSeasons::Winter ? phrase("Rain falls in every season.")
                                                                          : phrase("Rain falls in every month.");
    case climate::RainSeasons::WetAndDry: {
        climate::Monthly<bool> wet{};
        std::ranges::transform(seasons.dry, wet.begin(), [](bool dry) { return !dry; });
        return phrase("The wet season is %1, the dry season %2.", months(wet), months(seasons.dry));
    }
    case climate::RainSeasons::DrySummer:
        return phrase("Summers are dry.");
    case climate::RainSeasons::DryWinter:
        return phrase("Winters are dry.");
    }
    return "";
}

} // namespace

const char* month_name(std::size_t month)
{
    return kMonthNames.at(month);
}

std::string months(const climate::Monthly<bool>& which)
{
    const auto count = std::ranges::count(which, true);
    if (count == 12) {
        return phrase("every month");
    }
    std::vector<std::string> runs;
    for (std::size_t m = 0; m < 12; ++m) {
        if (!which[m] || which[(m + 11) % 12]) {
            continue; // Not the first of a run.
        }
        std::size_t last = m;
        while (which[(last + 1) % 12]) {
            ++last;
        }
        runs.push_back(last > m ? phrase("%1 to %2", phrase(kMonthNames[m]), phrase(kMonthNames[last % 12]))
                                : phrase(kMonthNames[m]));
    }
    return runs.empty() ? phrase("no month") : joined(runs);
}

std::string seasons(const climate::Seasons& seasons)
{
    constexpr double kNoticed = 2.0; // Kelvins.
    const auto coldest = three_months(seasons.coldest_from);
    const auto warmest = three_months(seasons.warmest_from);
    std::string text;
    switch (seasons.temperature) {
    case climate::TemperatureSeasons::None:
        text = seasons.swing.kelvins() >= kNoticed
                   ? phrase("It is about as warm all year, a little cooler from %1; there is no winter.", coldest)
                   : phrase("It is about as warm all year; there is no winter.");
        break;
    case climate::TemperatureSeasons::CoolSeason:
        text = phrase("There is no winter; the cool season is %1, the hottest months are %2.", coldest, warmest);
        break;
    case climate::TemperatureSeasons::Winter:
        text = phrase("Winter is coldest from %1, summer warmest from %2.", coldest, warmest);
        break;
    }
    const auto falls = rain(seasons);
    return falls.empty() ? text : phrase("%1 %2", text, falls);
}

std::string frost(const climate::ThresholdDates& dates, std::optional<Celsius> lowest, UnitSystem units)
{
    constexpr double kNotRuledOut = 0.01;
    constexpr double kMostSeasons = 0.05;
    constexpr double kHardlyAny = 0.95;
    const double without = dates.first.share_without.fraction();
    if (dates.state == climate::ThresholdState::Never || dates.nights_per_year < 0.0005) {
        return phrase("No frost in any of the years.");
    }
    if (lowest && lowest->degrees() > 0.0) {
        const auto low = temperature(*lowest, units);
        return dates.nights_per_year >= kNotRuledOut
                   ? phrase("No frost in any of the years; the lowest night had %1, so it cannot be ruled out.", low)
                   : phrase("No frost in any of the years; the lowest night had %1.", low);
    }
    const auto nights = number(dates.nights_per_year, dates.nights_per_year < 9.95 ? 1 : 0);
    if (dates.state == climate::ThresholdState::NoWindow) {
        return phrase("Frost in every month, %1 nights a year.", nights);
    }
    if (without > kHardlyAny) {
        return phrase("Frost is an exception, in about %1 years.", chance(Probability::clamped(1.0 - without)));
    }
    if (without > kMostSeasons) {
        return phrase("Frost in some years, %1 nights a year on average.", nights);
    }
    return phrase("Frost every year, %1 nights a year.", nights);
}

std::string thermal_season(const climate::ThermalSeason& season, UnitSystem units)
{
    const auto line = temperature(season.above, units);
    if (!season.from || !season.to) {
        return season.days > 0.0 ? "above " + line + " all year" : "never above " + line;
    }
    return "above " + line + " from " + day(*season.from) + " to " + day(*season.to) + " (" +
           number(season.days, 0) + " days)";
}

} // namespace lathhouse::words
