#include "core/home/demonstration.h"

#include "core/calendar/day_of_year.h"
#include "core/home/demonstration_spots.h"
#include "core/home/draws.h"
#include "core/home/new_plant.h"
#include "core/home/shelter.h"
#include "core/home/spot_light.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <map>
#include <string>
#include <utility>

namespace lathhouse::home {
namespace {

using calendar::Date;
using calendar::DayOfYear;
using calendar::Days;

/// A plant with where it usually stands; the household itself knows only where it stands now.
struct Kept {
    Plant plant;
    const plants::PlantKind* kind;
    SpotId in_winter;
    SpotId in_summer; ///< The same where it is never carried.
};

struct Drawn {
    std::vector<Spot> spots;
    std::vector<Kept> plants;
};

DayOfYear day(int month, int day_of_month)
{
    return DayOfYear::from_month_day(month, day_of_month).value();
}

Place place_in(Hemisphere hemisphere)
{
    if (hemisphere == Hemisphere::North) {
        return {"A continental town",
                {Latitude::literal(48.2), Longitude::literal(20.8)},
                Metres::from_metres(170.0),
                "Europe/Budapest"};
    }
    return {"A subtropical town",
            {Latitude::literal(-27.4), Longitude::literal(152.6)},
            Metres::from_metres(60.0),
            "Australia/Brisbane"};
}

// --- The household that was thought out -------------------------------------------------------------------

struct IndoorTemperatures {
    double winter;
    double summer;
};

Spot indoor_spot(SpotId id, std::string name, std::string short_name, IndoorTemperatures night_low,
                 double summer_moles, double winter_moles, int capacity)
{
    return {.id = id,
            .name = std::move(name),
            .short_name = std::move(short_name),
            .kind = SpotKind::Indoors,
            .offset = prior_offset(SpotKind::Indoors),
            .winter = Celsius::from_degrees(night_low.winter),
            .summer = Celsius::from_degrees(night_low.summer),
            .light_in_summer = DailyLight::from_moles(summer_moles),
            .light_in_winter = DailyLight::from_moles(winter_moles),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = id};
}

Spot outdoor_spot(SpotId id, std::string name, std::string short_name, SpotKind kind, double summer_moles,
                  double winter_moles, int capacity)
{
    return {.id = id,
            .name = std::move(name),
            .short_name = std::move(short_name),
            .kind = kind,
            .offset = prior_offset(kind),
            .winter = std::nullopt,
            .summer = std::nullopt,
            .light_in_summer = DailyLight::from_moles(summer_moles),
            .light_in_winter = DailyLight::from_moles(winter_moles),
            .capacity = capacity,
            .in_reach = false,
            .walking_order = id};
}

/// Windows and roofs of the flat, from its third floor: low houses opposite, the stair's tall window toward
/// the morning sun and the equator, the living room's on the side that has little sun.
void describe_views(std::vector<Spot>& spots, Hemisphere hemisphere)
{
    const bool north = hemisphere == Hemisphere::North;
    const auto degrees = [](double value) { return Angle::from_degrees(value); };
    const auto metres = [](double value) { return Metres::from_metres(value); };
    const auto sunny = degrees(north ? 180.0 : 0.0);
    const auto view_of = [&](const Spot& spot) -> sky::SpotFigures {
        auto view = usual_view(spot.kind, sunny);
        view.opposite = degrees(north ? 5.0 : 10.0);
        if (spot.kind == SpotKind::Indoors) {
            view.panes = north ? 2 : 1;
        }
        switch (spot.id) {
        case kSunSill:
            view.opposite = degrees(north ? 8.0 : 10.0);
            view.distance = metres(north ? 0.3 : 0.2);
            view.passes = north ? 0.7 : 0.9; // A thin curtain in the north.
            break;
        case kEastSill:
            view.facing = degrees(90.0);
            view.opposite = degrees(north ? 10.0 : 20.0);
            view.overhang = metres(north ? 0.0 : 0.3);
            break;
        case kLanding:
            view.facing = degrees(north ? 135.0 : 45.0);
            view.width = metres(north ? 1.4 : 1.0);
            view.height = metres(north ? 2.4 : 2.0);
            view.sill = metres(north ? -0.6 : -0.4);
            view.distance = metres(north ? 0.4 : 0.5);
            view.overhang = metres(0.4);
            view.panes = 1;
            break;
        case kRoom:
            view.facing = degrees(north ? 300.0 : 180.0);
            view.width = metres(north ? 2.4 : 1.8);
            view.height = metres(north ? 2.1 : 1.5);
            view.sill = metres(north ? -0.8 : -0.1);
            view.distance = metres(north ? 1.0 : 0.7);
            view.sideways = metres(north ? 0.4 : 0.0);
            view.overhang = metres(north ? 0.0 : 0.3);
            view.opposite = degrees(north ? 5.0 : 10.0);
            view.passes = north ? 0.9 : 0.85;
            break;
        case kBalcony:
            view.facing = degrees(north ? 180.0 : 90.0);
            view.width = metres(north ? 3.5 : 4.0);
            view.distance = metres(north ? 0.65 : 0.5);
            view.height = metres(north ? 1.9 : 2.2);
            break;
        case kRail:
            view.behind = degrees(north ? 75.0 : 60.0);
            view.opposite = degrees(north ? 5.0 : 20.0);
            break;
        default:
            break;
        }
        return view;
    };
    for (auto& spot : spots) {
        spot.view = sky::SpotView::of(view_of(spot)).value();
    }
}

/// The two figures of light are what the grower wrote down; tests hold them against the views.
std::vector<Spot> flat(Hemisphere hemisphere)
{
    std::vector<Spot> spots;
    if (hemisphere == Hemisphere::North) {
        spots = {indoor_spot(kSunSill, "South sill", "S sill", {18.0, 23.0}, 10.0, 2.0, 5),
                 indoor_spot(kEastSill, "East sill", "E sill", {17.0, 22.0}, 12.0, 1.2, 4),
                 indoor_spot(kLanding, "Cool landing", "Landing", {7.0, 19.0}, 12.0, 2.2, 4),
                 indoor_spot(kRoom, "Living room", "Room", {19.0, 23.0}, 5.0, 0.4, 4),
                 outdoor_spot(kBalcony, "Roofed balcony", "Balcony", SpotKind::Roofed, 25.0, 4.5, 8),
                 outdoor_spot(kRail, "Balcony rail", "Rail", SpotKind::Open, 42.0, 6.0, 5)};
    } else {
        spots = {indoor_spot(kSunSill, "North sill", "N sill", {17.0, 25.0}, 5.0, 13.0, 5),
                 indoor_spot(kEastSill, "East sill", "E sill", {16.0, 25.0}, 10.0, 4.5, 4),
                 indoor_spot(kLanding, "Cool landing", "Landing", {12.0, 24.0}, 2.5, 6.0, 4),
                 indoor_spot(kRoom, "Living room", "Room", {17.0, 25.0}, 2.5, 1.3, 4),
                 outdoor_spot(kBalcony, "Roofed verandah", "Verandah", SpotKind::Roofed, 21.0, 10.0, 8),
                 outdoor_spot(kRail, "Garden bench", "Bench", SpotKind::Open, 45.0, 22.0, 5)};
    }
    describe_views(spots, hemisphere);
    // A small child sleeps by the east window, so what is poisonous stands elsewhere.
    spots[kEastSill - 1].in_reach = true;
    return spots;
}

struct Chosen {
    const char* kind;
    double pot_kilograms;
    SpotId in_winter;
    SpotId in_summer;
};

constexpr std::array<Chosen, 14> kChosen{{{"Ficus benjamina", 9.0, kSunSill, kBalcony},
                                          {"Brugmansia suaveolens", 12.0, kLanding, kBalcony},
                                          {"Citrus limon", 10.0, kLanding, kRail},
                                          {"Olea europaea", 14.0, kLanding, kRail},
                                          {"Hibiscus rosa-sinensis", 7.0, kEastSill, kBalcony},
                                          {"Crassula ovata", 5.0, kSunSill, kBalcony},
                                          {"Schlumbergera truncata", 2.0, kEastSill, kBalcony},
                                          {"Pelargonium x hortorum", 2.5, kSunSill, kRail},
                                          {"Fuchsia hybrida", 3.0, kLanding, kBalcony},
                                          {"Phalaenopsis hybrids", 0.8, kEastSill, kEastSill},
                                          {"Dracaena trifasciata", 4.0, kRoom, kRoom},
                                          {"Spathiphyllum wallisii", 3.5, kRoom, kRoom},
                                          {"Bougainvillea glabra", 8.0, kSunSill, kRail},
                                          {"Salvia rosmarinus", 4.5, kSunSill, kRail}}};

Drawn thought_out(Hemisphere hemisphere)
{
    Drawn drawn{flat(hemisphere), {}};
    PlantId id = 0;
    for (const auto& chosen : kChosen) {
        const auto* kind = plants::PlantReference::built_in().find(chosen.kind).value();
        OwnFigures own;
        own.pot_kilograms = chosen.pot_kilograms;
        Kept kept{make_plant(++id, *kind, own).value(), kind, chosen.in_winter, chosen.in_summer};
        if (kind->botanical_name == "Dracaena trifasciata") {
            kept.plant.pinned_spot = kRoom; // It screens the radiator and is not to be moved.
        }
        drawn.plants.push_back(std::move(kept));
    }
    return drawn;
}

// --- Households of any size -------------------------------------------------------------------------------

/// How much of their pots the inside spots hold together.
constexpr double kRoomForPots = 1.2;

int outside_count(int spots)
{
    return spots >= 50 ? spots / 10 : std::max(1, std::min(4, spots / 5 + 1));
}

std::vector<Spot> drawn_spots(int count, int plants, Draws& draws)
{
    std::vector<Spot> spots;
    const int outside = outside_count(count);
    const int inside = count - outside;
    std::vector<double> weights;
    double weight_sum = 0.0;
    for (int index = 0; index < inside; ++index) {
        weights.push_back(draws.between(1.0, 6.0));
        weight_sum += weights.back();
    }
    struct Window {
        const char* name;
        double least_moles;
        double most_moles;
    };
    for (int index = 0; index < inside; ++index) {
        const double place = (index + 0.5) / inside;
        const Window window = place < 0.40   ? Window{"Bright", 4.0, 9.0}
                              : place < 0.75 ? Window{"Medium", 1.8, 4.0}
                                             : Window{"Dim", 0.6, 1.8};
        const double moles = draws.between(window.least_moles, window.most_moles);
        const double swing = draws.between(-0.1, 0.6);
        const int id = index + 1;
        const auto name = std::string{window.name} + " " + std::to_string(id);
        const double winter = draws.between(13.0, 20.0);
        const double summer = draws.between(21.0, 26.0);
        const auto pots = static_cast<int>(
            std::ceil(weights[static_cast<std::size_t>(index)] / weight_sum * kRoomForPots * plants));
        auto spot =
            indoor_spot(id, name, name, {winter, summer}, moles * (1.0 + swing), moles * (1.0 - swing), pots);
        spot.in_reach = index % 8 == 7;
        spots.push_back(std::move(spot));
    }
    for (int index = 0; index < outside; ++index) {
        const bool sun = index % 2 == 0;
        const double moles = sun ? draws.between(18.0, 30.0) : draws.between(5.0, 12.0);
        const double swing = draws.between(0.5, 0.75);
        const int id = inside + index + 1;
        const auto name = std::string{sun ? "Sun " : "Shade "} + std::to_string(index + 1);
        spots.push_back(outdoor_spot(id, name, name, sun ? SpotKind::Open : SpotKind::Roofed,
                                     moles * (1.0 + swing), moles * (1.0 - swing), plants));
    }
    return spots;
}

/// Only the first rows of the reference are drawn: rows added later stand after them, so that the same
/// arguments go on giving the same household, on which the planner's figures were measured.
constexpr std::size_t kDrawnKinds = 147;

Drawn drawn_household(int spot_count, int plant_count, Draws& draws)
{
    Drawn drawn{drawn_spots(spot_count, plant_count, draws), {}};
    const auto kinds = plants::PlantReference::built_in().kinds().first(kDrawnKinds);
    const int outside = outside_count(spot_count);
    const int inside = spot_count - outside;
    std::map<std::string, int> named;
    std::vector<int> room_left;
    for (const auto& spot : drawn.spots) {
        room_left.push_back(spot.capacity);
    }
    for (PlantId id = 1; id <= plant_count; ++id) {
        const auto& kind = kinds[static_cast<std::size_t>(draws.below(static_cast<int>(kinds.size())))];
        OwnFigures own;
        own.pot_kilograms = draws.between(1.0, 15.0);
        const int same = ++named[kind.common_names.front()];
        own.name = kind.common_names.front() + (same == 1 ? "" : " " + std::to_string(same));
        Kept kept{make_plant(id, kind, own).value(), &kind, 0, 0};

        // From a random window on, the first that has room and where it may stand.
        const int first = draws.below(inside);
        int chosen = first;
        for (int step = 0; step < inside; ++step) {
            const int index = (first + step) % inside;
            const auto& spot = drawn.spots[static_cast<std::size_t>(index)];
            if (room_left[static_cast<std::size_t>(index)] > 0 && !(spot.in_reach && kept.plant.hazardous)) {
                chosen = index;
                break;
            }
        }
        const SpotId garden = inside + draws.below(outside) + 1;
        const bool house_plant = draws.share() < 0.3 && kind.light != plants::LightClass::VeryHigh;
        const bool winter_hardy = kind.lines.damage_begins <= Celsius::from_degrees(-10.0);
        kept.in_summer = house_plant ? chosen + 1 : garden;
        kept.in_winter = winter_hardy ? kept.in_summer : chosen + 1;
        if (kept.in_winter == chosen + 1) {
            --room_left[static_cast<std::size_t>(chosen)];
        }
        drawn.plants.push_back(std::move(kept));
    }
    return drawn;
}

// --- What has happened ------------------------------------------------------------------------------------

struct OutAndIn {
    DayOfYear out;
    DayOfYear in;
};

/// When people of the place carry such a plant, roughly: by custom, not by our own plan.
OutAndIn custom(Hemisphere hemisphere, Celsius damage_begins)
{
    if (hemisphere == Hemisphere::South) {
        return damage_begins >= Celsius::from_degrees(5.0) ? OutAndIn{day(9, 20), day(5, 15)}
                                                           : OutAndIn{day(9, 1), day(6, 10)};
    }
    if (damage_begins >= Celsius::from_degrees(5.0)) {
        return {day(5, 27), day(9, 14)};
    }
    if (damage_begins >= Celsius::from_degrees(0.0)) {
        return {day(5, 15), day(9, 30)};
    }
    return {day(4, 22), day(10, 24)};
}

/// The month as a northern grower would name it.
int northern_month(Date date, Hemisphere hemisphere)
{
    const int month = date.month().as_number();
    return hemisphere == Hemisphere::North ? month : (month + 5) % 12 + 1;
}

/// What happens about once a year, on a northern date.
struct Yearly {
    const char* kind;
    EventKind event;
    int month;
    int day;
    const char* note;
};

constexpr std::array<Yearly, 10> kYearly{
    {{"Brugmansia suaveolens", EventKind::Pruned, 9, 27,
      "cut back by a third before it came in, with gloves"},
     {"Brugmansia suaveolens", EventKind::Flowered, 7, 20, "first trumpets open"},
     {"Schlumbergera truncata", EventKind::Flowered, 12, 3, "in full flower"},
     {"Phalaenopsis hybrids", EventKind::Flowered, 2, 18, "one spike, six flowers"},
     {"Hibiscus rosa-sinensis", EventKind::Noted, 10, 5, "a few buds dropped after it came in"},
     {"Citrus limon", EventKind::Flowered, 5, 30, "flowers all over"},
     {"Fuchsia hybrida", EventKind::Pruned, 3, 12, "cut back to short stems"},
     {"Pelargonium x hortorum", EventKind::Pruned, 3, 5, "cut back, three cuttings taken"},
     {"Olea europaea", EventKind::Noted, 6, 14, "new shoots of a hand's length"},
     {"Spathiphyllum wallisii", EventKind::Noted, 1, 25, "brown tips, the room is dry"}}};

class HistoryWriter {
public:
    HistoryWriter(const DemonstrationOptions& options, Draws& draws)
        : today_(options.today), hemisphere_(options.hemisphere), draws_(&draws),
          begin_(DayOfYear::of(options.today).in_year(options.today.year() - options.years))
    {
    }

    /// Writes what happened to the plant and sets where it stands.
    void tell(Kept& kept)
    {
        moves(kept);
        care(kept);
        if (today_ > begin_) {
            yearly(kept);
        }
    }

    std::vector<Event> finish() &&
    {
        std::ranges::stable_sort(events_, {}, [](const Event& event) { return event.happened; });
        return std::move(events_);
    }

private:
    void add(PlantId plant, EventKind kind, Date date, std::string note, std::optional<SpotId> spot = {})
    {
        const auto minutes = std::chrono::minutes{17 * 60 + draws_->below(180)};
        events_.push_back(
            {plant, kind, spot, date, calendar::start_of_day_utc(date) + minutes, std::move(note)});
    }

    void moves(Kept& kept)
    {
        struct Move {
            Date date;
            bool out;
        };
        const auto usual = custom(hemisphere_, kept.plant.lines.damage_begins);
        std::vector<Move> planned;
        for (int year = begin_.year() - 1; year <= today_.year(); ++year) {
            planned.push_back({usual.out.in_year(year) + Days{draws_->below(9) - 4}, true});
            planned.push_back({usual.in.in_year(year) + Days{draws_->below(9) - 4}, false});
        }
        std::ranges::sort(planned, {}, &Move::date);
        bool out = false;
        for (const auto& move : planned) {
            if (move.date <= begin_) {
                out = move.out;
            }
        }
        auto now = out ? kept.in_summer : kept.in_winter;
        add(kept.plant.id, EventKind::Moved, begin_, "the journal begins", now);
        for (const auto& move : planned) {
            const auto next = move.out ? kept.in_summer : kept.in_winter;
            if (move.date <= begin_ || move.date > today_ || next == now) {
                continue;
            }
            now = next;
            add(kept.plant.id, EventKind::Moved, move.date,
                move.out ? "out for the warm season" : "in for the cold season", now);
            const auto noticed = move.date + Days{12};
            if (kept.plant.sulks && noticed <= today_) {
                add(kept.plant.id, EventKind::Noted, noticed,
                    "dropped " + std::to_string(25 + draws_->below(40)) + " leaves after the move");
            }
        }
        kept.plant.spot = now;
    }

    void care(const Kept& kept)
    {
        const auto& kind = *kept.kind;
        const int days_between_waterings = kind.drying_class == "keep_moist" ? 4
                                           : kind.drying_class == "top_inch" ? 7
                                                                             : 12;
        const int days_between_feeds = kind.feed == plants::FeedClass::Heavy    ? 14
                                       : kind.feed == plants::FeedClass::Medium ? 21
                                                                                : 35;
        Date next_water = begin_ + Days{draws_->below(days_between_waterings) + 1};
        Date next_feed = begin_ + Days{draws_->below(days_between_feeds) + 1};
        Date next_look = begin_ + Days{draws_->below(30) + 1};
        const auto repot_every = std::max(1, static_cast<int>(kind.repot_years.high));
        for (Date date = begin_ + Days{1}; date <= today_; date += Days{1}) {
            const int month = northern_month(date, hemisphere_);
            const bool growing = month >= 3 && month <= 10;
            if (date == next_water) {
                add(kept.plant.id, EventKind::Watered, date, "");
                const int interval = growing ? days_between_waterings : days_between_waterings * 2;
                next_water += Days{interval + draws_->below(3) - 1};
            }
            if (date == next_feed) {
                if (growing && month < 10 && kind.feed != plants::FeedClass::None) {
                    add(kept.plant.id, EventKind::Fed, date, "half the dose of the label");
                }
                next_feed += Days{days_between_feeds + draws_->below(4)};
            }
            if (date == next_look) {
                add(kept.plant.id, EventKind::Inspected, date, "nothing found");
                next_look += Days{28 + draws_->below(8)};
            }
            if (month == 4 && date.day() == 1 + kept.plant.id % 25 &&
                (date.year() + kept.plant.id) % repot_every == 0) {
                add(kept.plant.id, EventKind::Repotted, date, "one size up, fresh mix");
            }
        }
    }

    void yearly(const Kept& kept)
    {
        for (const auto& happening : kYearly) {
            if (kept.plant.kind != happening.kind) {
                continue;
            }
            const int month =
                hemisphere_ == Hemisphere::North ? happening.month : (happening.month + 5) % 12 + 1;
            for (int year = begin_.year(); year <= today_.year(); ++year) {
                const auto date = day(month, happening.day).in_year(year) + Days{draws_->below(7)};
                if (date > begin_ && date <= today_) {
                    add(kept.plant.id, happening.event, date, happening.note);
                }
            }
        }
    }

    Date today_;
    Hemisphere hemisphere_;
    Draws* draws_;
    Date begin_;
    std::vector<Event> events_;
};

Result<int> within(std::optional<int> wanted, int usual, int least, int most, const char* what)
{
    const int value = wanted.value_or(usual);
    if (value < least || value > most) {
        return Error{ErrorCode::OutOfRange, "a demonstration has " + std::to_string(least) + " to " +
                                                std::to_string(most) + " " + what + ", not " +
                                                std::to_string(value)};
    }
    return value;
}

} // namespace

Result<Demonstration> demonstration(const DemonstrationOptions& options)
{
    const auto plant_count = within(options.plants, 14, 1, 5000, "plants");
    if (!plant_count) {
        return plant_count.error();
    }
    const auto spot_count = within(options.spots, 6, 2, 500, "spots");
    if (!spot_count) {
        return spot_count.error();
    }
    const auto years = within(options.years, 2, 0, 20, "years of history");
    if (!years) {
        return years.error();
    }
    if (options.today.year() < 1930 || options.today.year() > 2190) {
        return Error{ErrorCode::OutOfRange, "a demonstration needs a date in the years 1930 to 2190, not " +
                                                calendar::to_text(options.today)};
    }
    Draws draws{options.seed};
    auto drawn = options.plants || options.spots ? drawn_household(*spot_count, *plant_count, draws)
                                                 : thought_out(options.hemisphere);
    HistoryWriter writer{options, draws};
    Demonstration made{
        {"Demonstration household", true, place_in(options.hemisphere), std::move(drawn.spots), {}}, {}};
    for (auto& kept : drawn.plants) {
        writer.tell(kept);
        made.household.plants.push_back(std::move(kept.plant));
    }
    made.history = std::move(writer).finish();
    return made;
}

} // namespace lathhouse::home
