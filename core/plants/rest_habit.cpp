#include "core/plants/rest_habit.h"

#include "core/base/parse.h"

#include <algorithm>
#include <initializer_list>

namespace lathhouse::plants {
namespace {

bool any_of(std::string_view text, std::initializer_list<std::string_view> words)
{
    return std::ranges::any_of(
        words, [&](std::string_view word) { return text.find(word) != std::string_view::npos; });
}

} // namespace

RestHabit rest_habit(const PlantKind& kind)
{
    const auto rest = lower_case(kind.rest);
    const auto season = lower_case(kind.growth_season);
    const bool summer_rest = any_of(rest, {"summer rest", "hot-summer", "summer dorm", "summer dry",
                                           "summer and winter", "summer leafless"});
    const bool winter_grower =
        any_of(season, {"autumn-spring", "winter-grow", "winter-summer", "cool season", "winter-spring",
                        "autumn-winter"}) ||
        (any_of(season, {"winter"}) && !any_of(season, {"slow in winter", "winter slow"}));
    const bool one_year = any_of(rest, {"annual", "biennial", "cuttings indoors"});
    const bool only_slow = any_of(rest, {"slow", "semi-rest", "leaf loss", "may rest", "may die", "near-stop",
                                         "short rest", "after bloom", "blooms once", " or warm+"}) ||
                           any_of(rest, {"cool winter ok"}) ||
                           rest.starts_with("none");
    const bool stands_still =
        any_of(rest, {"dormant", "leafless", "tuber", "corm", "rhizome", "winter rest", "dry winter",
                      "drier winter", "cold winter", "winter cold", "die-back", "dies back", "dry cool winter",
                      "cool dry winter", "bright winter", "dark cool", "cool winter", "cool light winter",
                      "chill", "cold rest", "wk dry", "wk at", "deciduous", "summer and winter dry"}) &&
        !any_of(rest, {"summer dormant", "summer dormancy"});

    RestHabit habit{WinterHabit::Grows, summer_rest, false, false, any_of(rest, {"after bloom"})};
    if (!winter_grower && !one_year && !rest.empty() && !rest.starts_with("none")) {
        const bool winter_too = !summer_rest || any_of(rest, {"winter"});
        if (winter_too) {
            habit.winter = stands_still && !only_slow ? WinterHabit::Rests : WinterHabit::Slows;
        }
    } else if (!winter_grower && rest.starts_with("none") && any_of(rest, {"slow"})) {
        habit.winter = WinterHabit::Slows;
    }
    habit.dry = any_of(rest, {"dry", "drier", "dormant", "leafless"}) &&
                (habit.winter == WinterHabit::Rests || summer_rest);
    habit.cool = any_of(rest, {"cool", "cold", "chill", "2-10c", "5-10c", "10-13c", "4-10c", "2-8c"}) &&
                 !any_of(rest, {"cool slows"});
    return habit;
}

} // namespace lathhouse::plants
