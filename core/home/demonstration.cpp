#include "core/home/demonstration.h"

#include "core/calendar/day_of_year.h"
#include "core/home/demonstration_parts.h"
#include "core/home/demonstration_spots.h"
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

DrawnHousehold thought_out(Hemisphere hemisphere)
{
    DrawnHousehold drawn{flat(hemisphere), {}};
    PlantId id = 0;
    for (const auto& chosen : kChosen) {
        const auto* kind = plants::PlantReference::built_in().find(chosen.kind).value();
        OwnFigures own;
        own.pot_kilograms = chosen.pot_kilograms;
        KeptPlant kept{make_plant(++id, *kind, own).value(), kind, chosen.in_winter, chosen.in_summer};
        if (kind->botanical_name == "Dracaena trifasciata") {
            kept.plant.pinned_spot = kRoom; // It screens the radiator and is not to be moved.
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
    void tell(KeptPlant& kept)
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

    void moves(KeptPlant& kept)
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

    void care(const KeptPlant& kept)
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

    void yearly(const KeptPlant& kept)
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

Result<int> within(std::optional<int> wanted, int usual, int least, int most, Sentence<0> what)
{
    const int value = wanted.value_or(usual);
    if (value < least || value > most) {
        return Error{ErrorCode::OutOfRange,
                     said("a demonstration has %1 to %2 %3, not %4", least, most, said_now(what), value)};
    }
    return value;
}

} // namespace

Result<Demonstration> demonstration(const DemonstrationOptions& options)
{
    const auto plant_count = within(options.plants, 14, 1, 5000, said_later("plants"));
    if (!plant_count) {
        return plant_count.error();
    }
    const auto spot_count = within(options.spots, 6, 2, 500, said_later("spots"));
    if (!spot_count) {
        return spot_count.error();
    }
    const auto years = within(options.years, 2, 0, 20, said_later("years of history"));
    if (!years) {
        return years.error();
    }
    if (options.today.year() < 1930 || options.today.year() > 2190) {
        return Error{ErrorCode::OutOfRange, said("a demonstration needs a date in the years 1930 to 2190, not %1",
                                                 calendar::to_text(options.today))};
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
