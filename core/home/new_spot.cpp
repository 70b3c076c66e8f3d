#include "core/home/new_spot.h"

#include "core/base/parse.h"
#include "core/home/shelter.h"

namespace lathhouse::home {
namespace {

constexpr std::size_t kJune = 5;
constexpr std::size_t kDecember = 11;

bool is_room_temperature(const std::optional<Celsius>& value)
{
    constexpr double kLimit = 60.0; // The limit of the journal's tables.
    return !value || (value->degrees() >= -kLimit && value->degrees() <= kLimit);
}

} // namespace

Result<void> pots_can_fit(const std::string& name, int pots)
{
    if (pots >= 0 && pots <= kMostPots) {
        return {};
    }
    return Error{ErrorCode::OutOfRange,
                 said("the pots that fit at %1 must be a number from 0 to %2, not %3", name, kMostPots, pots)};
}

Result<Spot> make_spot(SpotId id, int walking_order, const SpotWish& wish, const YearOfSky& year)
{
    const auto name = std::string{trimmed(wish.name)};
    if (name.empty()) {
        return Error{ErrorCode::OutOfRange, said("a spot needs a name, such as South sill")};
    }
    if (auto fit = pots_can_fit(name, wish.capacity); !fit) {
        return fit.error();
    }
    if (!is_room_temperature(wish.winter) || !is_room_temperature(wish.summer)) {
        return Error{ErrorCode::OutOfRange,
                     said("the nights of a room lie within -60 and 60 degrees Celsius (%1)", name)};
    }
    const auto view = sky::SpotView::of(wish.measured.value_or(usual_view(wish.kind, wish.facing)));
    if (!view) {
        return view.error();
    }
    const auto months = months_at(*view, year);
    const bool north = year.latitude().degrees() >= 0.0;
    const bool indoors = !is_outdoors(wish.kind);
    const bool light_is_said = wish.light_in_summer && wish.light_in_winter;
    return Spot{.id = id,
                .name = name,
                .short_name = name,
                .kind = wish.kind,
                .offset = wish.offset.value_or(prior_offset(wish.kind)),
                .winter = indoors ? std::optional{wish.winter.value_or(kUsualRoomInWinter)} : std::nullopt,
                .summer = indoors ? std::optional{wish.summer.value_or(kUsualRoomInSummer)} : std::nullopt,
                .light_in_summer = light_is_said ? *wish.light_in_summer : months[north ? kJune : kDecember].level,
                .light_in_winter = light_is_said ? *wish.light_in_winter : months[north ? kDecember : kJune].level,
                .capacity = wish.capacity,
                .in_reach = wish.in_reach,
                .walking_order = walking_order,
                .view = light_is_said ? std::nullopt : std::optional{*view},
                .apart = wish.apart,
                .windy = wish.windy};
}

} // namespace lathhouse::home
