#include "app/models/risk_dates.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

/// First day of [begin, end) with a chance after it of at most `risk`; none where that holds from the start
/// or never.
std::optional<std::size_t> passing_out(const HarmCurve& curve, std::size_t begin, std::size_t end,
                                       double risk)
{
    for (std::size_t day = begin; day < end; ++day) {
        if (curve.deciding_after[day] <= risk) {
            return day == begin ? std::nullopt : std::optional{day};
        }
    }
    return std::nullopt;
}

/// Last day of [begin, end) whose morning is still within the risk, so the first evening indoors; none where
/// the chance never grows beyond.
std::optional<std::size_t> passing_in(const HarmCurve& curve, std::size_t begin, std::size_t end, double risk)
{
    for (std::size_t day = begin; day < end; ++day) {
        if (curve.deciding_before[day] > risk) {
            return day == begin ? std::nullopt : std::optional{day - 1};
        }
    }
    return std::nullopt;
}

} // namespace

std::vector<RiskDate> risk_dates(const HarmCurve& curve, const std::vector<YearDay>& days,
                                 calendar::DayOfYear turn, Probability risk)
{
    std::vector<RiskDate> found;
    const auto turn_day = std::find_if(days.begin(), days.end(), [turn](const YearDay& day) {
        return calendar::DayOfYear::of(day.date) == turn;
    });
    const auto split =
        turn_day == days.end() ? days.size() : static_cast<std::size_t>(turn_day - days.begin()) + 1;
    const std::pair<std::size_t, std::size_t> seasons[] = {{0, split}, {split, days.size()}};
    constexpr double kFifth = 0.2;
    constexpr double kTwentieth = 0.05;
    for (const auto& [begin, end] : seasons) {
        if (const auto chosen = passing_in(curve, begin, end, risk.fraction())) {
            found.push_back({false, *chosen, passing_in(curve, begin, end, kFifth).value_or(*chosen),
                             passing_in(curve, begin, end, kTwentieth).value_or(*chosen)});
        }
        if (const auto chosen = passing_out(curve, begin, end, risk.fraction())) {
            found.push_back({true, *chosen, passing_out(curve, begin, end, kFifth).value_or(*chosen),
                             passing_out(curve, begin, end, kTwentieth).value_or(*chosen)});
        }
    }
    return found;
}

std::vector<RiskDate> dates_of(const YearData& year, std::size_t plant, const std::vector<YearStay>& stays,
                               Probability risk)
{
    for (const YearStay& stay : stays) {
        const auto curve = year.plants[plant].curves[stay.spot];
        if (year.spots[stay.spot].outdoors && curve) {
            return risk_dates(year.curves[*curve], year.days, year.turn, risk);
        }
    }
    return {};
}

} // namespace lathhouse::models
