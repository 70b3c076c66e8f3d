#include "core/home/demonstration_story.h"

#include "core/calendar/day_of_year.h"
#include "core/home/demonstration_spots.h"
#include "core/home/draws.h"
#include "core/home/new_plant.h"
#include "core/plants/seed_kind.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace lathhouse::home {
namespace {

using calendar::Date;
using calendar::DayOfYear;
using calendar::Days;

constexpr int kSharedPlants = 40; ///< Of a household of any size, those that are measured.

// Plants of the household that was thought out, by their place in it.
constexpr PlantId kLemon = 3;
constexpr PlantId kJade = 6;
constexpr PlantId kGeranium = 8;
constexpr PlantId kSnakePlant = 11;
constexpr PlantId kPeaceLily = 12;
constexpr PlantId kBougainvillea = 13;

/// What is measured of a plant. All figures are invented.
struct Series {
    PlantId plant;
    MeasurementKind kind;
    double start;       ///< Where the journal begins.
    double weekly_rate; ///< Growth in a week of high summer, as a share.
    double noise;       ///< Share by which single readings differ.
    bool weekly;        ///< While it grows; else once a month.
    double in_winter = 0.04; ///< What is left of that growth in the depth of the cold season.
};

/// Young, and in a room that is warm all year.
constexpr std::array<Series, 2> kOfThePeaceLily{{{kPeaceLily, MeasurementKind::Height, 15.0, 0.016, 0.010, true, 0.5},
                                                {kPeaceLily, MeasurementKind::Width, 21.0, 0.015, 0.011, true, 0.5}}};

constexpr std::array<Series, 17> kSeries{{{1, MeasurementKind::Height, 118.0, 0.004, 0.006, false},
                                          {2, MeasurementKind::Height, 96.0, 0.018, 0.010, false},
                                          {kLemon, MeasurementKind::Height, 54.0, 0.014, 0.010, true},
                                          {kLemon, MeasurementKind::Leaves, 62.0, 0.015, 0.0, true},
                                          {kLemon, MeasurementKind::Stem, 1.45, 0.004, 0.015, false},
                                          {4, MeasurementKind::Height, 88.0, 0.008, 0.008, false},
                                          {5, MeasurementKind::Height, 61.0, 0.016, 0.012, true},
                                          {kJade, MeasurementKind::Width, 34.0, 0.006, 0.015, false},
                                          {7, MeasurementKind::Width, 28.0, 0.007, 0.020, false},
                                          {kGeranium, MeasurementKind::Height, 21.0, 0.016, 0.015, true},
                                          {kGeranium, MeasurementKind::Leaves, 34.0, 0.017, 0.0, true},
                                          {9, MeasurementKind::Leaves, 48.0, 0.016, 0.0, true},
                                          {10, MeasurementKind::LongestLeaf, 17.5, 0.003, 0.008, false},
                                          {10, MeasurementKind::Leaves, 6.0, 0.005, 0.0, false},
                                          {kPeaceLily, MeasurementKind::Leaves, 26.0, 0.008, 0.0, false, 0.5},
                                          {kBougainvillea, MeasurementKind::Height, 72.0, 0.014, 0.012, true},
                                          {14, MeasurementKind::Height, 39.0, 0.010, 0.012, false}}};

/// Those on the rail that the drift hit hard; others there had a wall between.
constexpr bool is_hit(PlantId plant)
{
    return plant == kLemon || plant == kGeranium;
}

class Teller {
public:
    Teller(const DemonstrationOptions& options, const Demonstration& made)
        : options_(options), made_(made), draws_(options.seed + 7919U),
          begin_(DayOfYear::of(options.today).in_year(options.today.year() - options.years))
    {
    }

    Story tell() &&
    {
        if (options_.plants || options_.spots) {
            for (const auto& plant : made_.household.plants) {
                if (plant.id <= kSharedPlants) {
                    measure({plant.id, MeasurementKind::Height, draws_.between(15.0, 90.0), 0.012, 0.012, false});
                }
            }
        } else {
            drift_ = latest(6, 14, 140);
            cold_ = latest(10, 19, 100);
            drift();
            cold_night();
            mealybugs();
            division();
            seeds();
            for (const auto& series : kSeries) {
                measure(series);
            }
            yellowing();
            peace_lily();
        }
        std::ranges::stable_sort(story_.events, {}, &Event::happened);
        std::ranges::stable_sort(story_.measurements, {}, &Measurement::measured);
        return std::move(story_);
    }

private:
    /// The latest such day, by a northern grower's calendar, that lies within the journal and at least so many days
    /// back.
    std::optional<Date> latest(int month, int day, int days_back) const
    {
        for (int year = options_.today.year(); year >= begin_.year(); --year) {
            const auto date = local(month, day, year);
            if (date > begin_ && date + Days{days_back} <= options_.today) {
                return date;
            }
        }
        return std::nullopt;
    }
    Date local(int month, int day, int year) const
    {
        const int here = options_.hemisphere == Hemisphere::North ? month : (month + 5) % 12 + 1;
        return DayOfYear::from_month_day(here, day).value().in_year(year);
    }
    calendar::Instant evening(Date date)
    {
        return calendar::start_of_day_utc(date) + std::chrono::minutes{17 * 60 + draws_.below(180)};
    }
    void add(std::optional<PlantId> plant, EventKind kind, Date date, std::string note,
             std::map<std::string, std::string> details = {}, std::optional<SpotId> spot = {})
    {
        story_.events.push_back(
            {plant, kind, spot, date, evening(date), std::move(note), std::move(details)});
    }

    void drift()
    {
        if (!drift_) {
            return;
        }
        for (const auto plant : {kLemon, kGeranium}) {
            add(plant, EventKind::ChemicalDamage, *drift_,
                "the verge below was sprayed on a windy evening; new leaves curled within days",
                {{"product", "unknown weed-killer"}, {"signs", "cupped_leaves;twisted_stems"}, {"still_wet", "no"}}, kRail);
            add(plant, EventKind::Noted, *drift_ + Days{12}, "lower leaves yellow, a few dropped");
            add(plant, EventKind::NewGrowth, *drift_ + Days{40}, "first clean leaves");
        }
    }

    void cold_night()
    {
        if (!cold_) {
            return;
        }
        const auto* kind = plants::PlantReference::built_in().find("Pelargonium x hortorum").value();
        OwnFigures own;
        own.name = "Old geranium";
        own.pot_kilograms = 2.0;
        auto plant = make_plant(next_id(), *kind, own).value();
        plant.spot = kRail;
        story_.gone.push_back(plant);
        add(plant.id, EventKind::Moved, begin_ + Days{1}, "in the old clay pot", {}, kRail);
        add(plant.id, EventKind::ColdNight, *cold_, "forgotten outside; glassy leaves in the morning",
            {{"low_c", "-4.5"}, {"hours", "6"}}, kRail);
        add(plant.id, EventKind::Inspected, *cold_ + Days{14}, "stem soft at the base, brown inside when scratched");
        add(plant.id, EventKind::Died, *cold_ + Days{24}, "nothing green left");
        measure({plant.id, MeasurementKind::Leaves, 19.0, 0.008, 0.0, false}, *cold_);
    }

    void mealybugs()
    {
        const auto found = latest(2, 8, 200);
        if (!found) {
            return;
        }
        add(kJade, EventKind::PestFound, *found, "white wool in the leaf axils",
            {{"pest", "citrus mealybug"}, {"amount", "few"}});
        add(kJade, EventKind::Isolated, *found, "to the bathroom window");
        for (const int day : {0, 7, 14, 21, 28}) {
            add(kJade, EventKind::Treated, *found + Days{day},
                day == 0 ? "wiped off by hand" : "looked over and wiped again", {{"product", "soft soap, label dose"}});
        }
        add(kJade, EventKind::Inspected, *found + Days{14}, "two more",
            {{"found", "few"}, {"pest", "citrus mealybug"}, {"amount", "few"}});
        for (const int day : {35, 49, 63, 77, 98, 119, 140}) {
            add(kJade, EventKind::Inspected, *found + Days{day}, "nothing found", {{"found", "nothing"}});
        }
        add(kJade, EventKind::Released, *found + Days{141}, "clean for more than a generation");
    }

    /// How it took being repotted. Its figures are drawn apart, so that the others stay what they are without it.
    void peace_lily()
    {
        draws_ = Draws{options_.seed + 15'485'863U};
        for (const auto& series : kOfThePeaceLily) {
            measure(series);
        }
        const auto repotted = last_repotting(options_.today);
        if (repotted && *repotted + Days{60} <= options_.today) {
            add(kPeaceLily, EventKind::Noted, *repotted + Days{9}, "hangs a little; kept out of the sun, watered sparingly");
            add(kPeaceLily, EventKind::Noted, *repotted + Days{38}, "the first new leaf since it was repotted");
        }
    }

    void division()
    {
        const auto divided = latest(5, 9, 60);
        const auto* parent = made_.household.plant(kSnakePlant);
        if (!divided || parent == nullptr) {
            return;
        }
        auto piece = *parent;
        piece.name = parent->name + ", the small half";
        piece.pinned_spot.reset();
        piece.spot = kRoom;
        piece.pot_kilograms = 1.5;
        story_.divisions.push_back({kSnakePlant, piece, *divided, *divided + Days{35}});
    }

    void seeds()
    {
        const auto sown = latest(3, 9, 210);
        if (!sown) {
            return;
        }
        struct Packet {
            const char* crop;
            const char* name;
            double stated;
            int seeds;
            int sown;
            std::array<std::pair<int, int>, 3> counts; ///< Day after sowing, seedlings so far.
        };
        const std::array<Packet, 3> packets{
            {{"Tomato", "Tomato, round red", 85.0, 40, 12, {{{6, 3}, {9, 8}, {15, 10}}}},
             {"Basil", "Basil, green", 70.0, 200, 30, {{{5, 9}, {8, 17}, {14, 21}}}},
             {"Zinnia", "Zinnia, mixed", 65.0, 60, 20, {{{4, 7}, {7, 13}, {14, 14}}}}}};
        for (const auto& packet : packets) {
            const auto* kind = plants::SeedReference::built_in().find(packet.crop).value();
            const auto place = static_cast<int>(story_.lots.size());
            const auto date = *sown + Days{place * 4};
            story_.lots.push_back({{.id = 0,
                                    .name = packet.name,
                                    .crop = kind->botanical_name,
                                    .packed_year = static_cast<int>(sown->year()) - 1,
                                    .stated_percent = packet.stated,
                                    .seeds = packet.seeds,
                                    .note = "from the corner shop"},
                                   *sown - Days{5}});
            story_.trays.push_back({.id = 0,
                                    .lot = place,
                                    .sown = date,
                                    .seeds = packet.sown,
                                    .spot = 1,
                                    .mix = Celsius::from_degrees(22.0),
                                    .note = {}});
            for (std::size_t at = 0; at < packet.counts.size(); ++at) {
                story_.counts.push_back({place, date + Days{packet.counts[at].first}, packet.counts[at].second,
                                         at + 1 == packet.counts.size()});
            }
        }
        const auto tomato = plants::PlantReference::built_in().find("Solanum lycopersicum");
        if (!tomato) {
            return;
        }
        StoryPotting potting{0, {}, *sown + Days{35}, *sown + Days{205}};
        for (const auto* name : {"Tomato from seed", "Tomato from seed 2"}) {
            OwnFigures own;
            own.name = name;
            own.pot_kilograms = 6.0;
            auto plant = make_plant(0, **tomato, own).value();
            plant.spot = kRail;
            potting.plants.push_back(std::move(plant));
        }
        story_.potted.push_back(std::move(potting));
    }

    // --- Measuring ------------------------------------------------------------------------------------------

    /// How fast things grow on a date against high summer: little in the cold season, all of it in June and July.
    double season(Date date, double in_winter) const
    {
        const int day = calendar::ordinal_of_year(date) + (options_.hemisphere == Hemisphere::North ? 0 : 182);
        const double wave = 0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * (day + 10) / 365.25);
        return in_winter + (1.0 - in_winter) * wave * wave;
    }
    /// Growth of a plant that the drift hit, in its usual growth: backward for four weeks, then back within five.
    double after_drift(PlantId plant, MeasurementKind kind, Date date) const
    {
        if (!drift_ || !is_hit(plant) || date <= *drift_) {
            return 1.0;
        }
        const int days = calendar::days_between(*drift_, date);
        if (days <= 28) {
            return kind == MeasurementKind::Leaves ? -4.5 : 0.0;
        }
        return std::min(1.1, 1.1 * (days - 28) / 35.0);
    }
    std::optional<Date> last_repotting(Date until) const
    {
        std::optional<Date> found;
        for (const auto& event : made_.history) {
            if (event.plant == kPeaceLily && event.kind == EventKind::Repotted && event.happened <= until) {
                found = event.happened;
            }
        }
        return found;
    }
    /// Growth of the peace lily in its usual growth: none for three weeks and a half after it was repotted, back within
    /// three more.
    double after_repotting(PlantId plant, Date date) const
    {
        const auto repotted = plant == kPeaceLily ? last_repotting(date) : std::nullopt;
        if (!repotted || date == *repotted) {
            return 1.0;
        }
        const int days = calendar::days_between(*repotted, date);
        return days <= 24 ? 0.0 : std::min(1.05, 1.05 * (days - 24) / 21.0);
    }
    /// Of about normal spread 1, within 3.5.
    double scatter()
    {
        double sum = 0.0;
        for (int draw = 0; draw < 12; ++draw) {
            sum += draws_.share();
        }
        return std::clamp(sum - 6.0, -3.5, 3.5);
    }

    void measure(const Series& series, std::optional<Date> end = {})
    {
        const auto last = end.value_or(options_.today);
        double size = series.start;
        Date next = begin_ + Days{3 + draws_.below(5)};
        for (Date date = begin_; date <= last; date += Days{1}) {
            const double grows_now = season(date, series.in_winter);
            size *= std::exp(series.weekly_rate / 7.0 * grows_now * after_drift(series.plant, series.kind, date) *
                             after_repotting(series.plant, date));
            if (date != next) {
                continue;
            }
            next += Days{series.weekly && grows_now > 0.2 ? 7 : 28 + draws_.below(5)};
            read(series, date, size);
        }
    }

    void read(const Series& series, Date date, double size)
    {
        const bool counted = unit_of(series.kind) == MeasurementUnit::Count;
        Measurement one{.plant = series.plant,
                        .kind = series.kind,
                        .measured = date,
                        .repeats = {},
                        .method = usual_method(series.kind),
                        .entered = evening(date)};
        const int repeats = counted ? 1 : series.weekly ? 3 : 1;
        for (int repeat = 0; repeat < repeats; ++repeat) {
            const double reading = counted ? std::round(size + 0.6 * scatter())
                                           : std::round(size * (1.0 + series.noise * scatter()) * 10.0) / 10.0;
            one.repeats.push_back(std::max(0.0, reading));
        }
        if (const auto* plant = made_.household.plant(series.plant)) {
            one.pot = plant->pot_volume;
        }
        story_.measurements.push_back(std::move(one));
    }

    /// Share of yellow leaves by eye, from the drift until it is over.
    void yellowing()
    {
        if (!drift_) {
            return;
        }
        for (const auto plant : {kLemon, kGeranium}) {
            for (int week = -6; week <= 18; ++week) {
                const auto date = *drift_ + Days{7 * week + 1};
                if (date <= begin_ || date > options_.today) {
                    continue;
                }
                const double since = week;
                const double share = since < 0.0 ? 0.03 : 0.03 + 0.37 * (since / 3.0) * std::exp(1.0 - since / 3.0);
                Measurement one{.plant = plant,
                                .kind = MeasurementKind::YellowShare,
                                .measured = date,
                                .repeats = {std::round(std::clamp(share + 0.01 * scatter(), 0.0, 1.0) * 100.0) / 100.0},
                                .method = MeasurementMethod::Eye,
                                .entered = evening(date)};
                story_.measurements.push_back(std::move(one));
            }
        }
    }

    PlantId next_id() const
    {
        return static_cast<PlantId>(made_.household.plants.size() + story_.gone.size()) + 1;
    }

    const DemonstrationOptions& options_;
    const Demonstration& made_;
    Draws draws_;
    Date begin_;
    std::optional<Date> drift_;
    std::optional<Date> cold_;
    Story story_;
};

} // namespace

Story tell_story(const DemonstrationOptions& options, const Demonstration& made)
{
    return Teller{options, made}.tell();
}

} // namespace lathhouse::home
