#include "app/models/household_year.h"

#include "app/models/household_strip.h"
#include "app/models/word_form.h"
#include "app/words/credits.h"
#include "app/words/ladder_words.h"
#include "app/words/phrase.h"
#include "app/words/plan_words.h"
#include "app/words/refusal.h"
#include "core/calendar/time_zone.h"
#include "core/plan/cold_chances.h"
#include "core/plan/feeding.h"
#include "core/plan/hardening_done.h"
#include "core/plan/year_plan.h"
#include "core/sky/radiation.h"
#include "core/sky/sun.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>

namespace lathhouse::models {

namespace {

constexpr int kDays = plan::kNightsOfAPlan;
constexpr Celsius kFrost = Celsius::from_degrees(0.0);

/// Value of a month's figure on a date, straight between the middles of months.
double between_months(const climate::Monthly<Celsius>& figures, calendar::Date date)
{
    const double days_in_month = static_cast<double>(
        boost::gregorian::gregorian_calendar::end_of_month_day(date.year(), date.month()));
    const double from_middle = (static_cast<double>(date.day()) - 0.5) / days_in_month - 0.5;
    const auto month = static_cast<std::size_t>(date.month() - 1);
    const std::size_t other = from_middle < 0.0 ? (month + 11) % 12 : (month + 1) % 12;
    const double here = figures[month].degrees();
    return here + (figures[other].degrees() - here) * std::abs(from_middle);
}

void add_days(YearData& year, const home::Household& household, const climate::PlaceClimate& climate,
              const plan::ColdChances& chances)
{
    const auto& nights = chances.nights();
    const auto& frost = chances.season(kFrost, {});
    const sky::SolarEphemeris ephemeris(year.today - calendar::Days(2),
                                        year.today + calendar::Days(kDays + 2));
    const auto zone = calendar::TimeZone::named(household.place.time_zone);
    const auto clock = [&zone](const std::optional<calendar::Instant>& instant) -> std::optional<int> {
        if (!instant || !zone) {
            return std::nullopt;
        }
        const auto since_midnight = zone->local(*instant).time_since_epoch() % std::chrono::hours(24);
        return static_cast<int>(std::chrono::round<std::chrono::minutes>(since_midnight).count());
    };
    for (int place = 0; place < kDays; ++place) {
        const calendar::Date date = year.today + calendar::Days(place);
        const auto day = calendar::DayOfYear::of(date);
        sky::SunDay sun = sky::sun_day(ephemeris, household.place.position, date);
        if (zone) {
            if (const auto by_clock = sky::sun_day(ephemeris, household.place.position, date, *zone)) {
                sun = *by_clock;
            }
        }
        const auto radiation = sky::radiation_from_temperature_range(
            sun.extraterrestrial, Celsius::from_degrees(between_months(climate.monthly.low, date)),
            Celsius::from_degrees(between_months(climate.monthly.high, date)), climate.elevation);
        year.days.push_back(
            {.date = date,
             .low_cold = nights.quantile(day, Probability::literal(0.05)),
             .low_middle = nights.quantile(day, Probability::literal(0.5)),
             .low_warm = nights.quantile(day, Probability::literal(0.95)),
             .frost = chances.place_nights().chance_on(day, kFrost),
             .frost_after = frost.after(day),
             .day_length_minutes = static_cast<int>(std::lround(sun.day_length_seconds / 60.0)),
             .sunrise_minutes = clock(sun.rise),
             .sunset_minutes = clock(sun.set),
             .light = sky::daily_light(radiation)});
    }
}

FrostMarks frost_marks(const plan::ColdChances& chances, calendar::Date today)
{
    const auto& nights = chances.nights();
    const auto& frost = chances.season(kFrost, {});
    FrostMarks marks;
    if (nights.no_season()) {
        marks.state = FrostMarks::State::NoSeason;
        return marks;
    }
    const auto place = [today](const std::optional<calendar::DayOfYear>& day) -> std::optional<std::size_t> {
        if (!day) {
            return std::nullopt;
        }
        const int days = calendar::days_between(today, day->next_on_or_after(today));
        return days < kDays ? std::optional{static_cast<std::size_t>(days)} : std::nullopt;
    };
    marks.last_half = place(frost.last(Probability::literal(0.5)));
    marks.last_tenth = place(frost.last(Probability::literal(0.1)));
    marks.first_tenth = place(frost.first(Probability::literal(0.1)));
    marks.first_half = place(frost.first(Probability::literal(0.5)));
    // Without a date for one winter in ten there is nothing to mark.
    switch (nights.dates(kFrost).state) {
    case climate::ThresholdState::Ordinary:
        marks.state =
            marks.last_tenth || marks.first_tenth ? FrostMarks::State::Ordinary : FrostMarks::State::Never;
        break;
    case climate::ThresholdState::Never:
        marks.state = FrostMarks::State::Never;
        break;
    case climate::ThresholdState::NoWindow:
        marks.state = FrostMarks::State::AlwaysPossible;
        break;
    case climate::ThresholdState::NoSeason:
        marks.state = FrostMarks::State::NoSeason;
        break;
    }
    return marks;
}

std::string hazard_of(const home::Plant& plant)
{
    // The lozenge marks deadly plants alone; others have their hazards on their own page.
    const auto kind = plants::PlantReference::built_in().find(plant.kind);
    if (!kind) {
        return plant.hazardous ? words::phrase("keep out of reach of children and animals") : std::string{};
    }
    const bool people = (*kind)->to_people == plants::Toxicity::Deadly;
    const bool pets = (*kind)->to_pets == plants::Toxicity::Deadly;
    if (people && pets) {
        return words::phrase("deadly to people and animals if eaten");
    }
    return people ? words::phrase("deadly to people if eaten")
           : pets ? words::phrase("deadly to animals if eaten")
                  : std::string{};
}

/// Where a hand keeps it, in words; empty where nothing does.
std::string pinned_words(const home::Household& household, const home::Plant& plant)
{
    if (plant.pinned_spot) {
        const home::Spot* spot = household.spot(*plant.pinned_spot);
        return spot == nullptr ? std::string{} : words::phrase("kept at %1 always", spot->name);
    }
    std::string stays;
    for (const home::Pin& pin : household.pins) {
        const home::Spot* spot = pin.plant == plant.id ? household.spot(pin.spot) : nullptr;
        if (spot != nullptr) {
            const auto when = pin.to == pin.from
                                  ? words::day(pin.from)
                                  : words::phrase("%1 to %2", words::day(pin.from), words::day(pin.to));
            stays = stays.empty() ? words::phrase("kept at %1 %2", spot->name, when)
                                  : words::phrase("%1, at %2 %3", stays, spot->name, when);
        }
    }
    return stays;
}

HarmCurve harm_curve(const YearData& year, const plan::ColdChances& chances, const plants::ColdLines& lines,
                     climate::NightOffset offset)
{
    const auto& damage = chances.season(lines.damage_begins, offset);
    const auto& lethal = chances.season(lines.lethal, offset);
    HarmCurve curve;
    for (const YearDay& day : year.days) {
        const auto place = calendar::DayOfYear::of(day.date);
        const double after = damage.after(place).fraction();
        const double before = damage.on_or_before(place).fraction();
        curve.after.push_back(after);
        curve.before.push_back(before);
        // A plant may be out where harm stays within the risk and death within a tenth of it.
        curve.deciding_after.push_back(std::max(after, std::min(1.0, 10.0 * lethal.after(place).fraction())));
        curve.deciding_before.push_back(
            std::max(before, std::min(1.0, 10.0 * lethal.on_or_before(place).fraction())));
    }
    return curve;
}

void add_plants(YearData& year, const home::Household& household, const plan::ColdChances& chances)
{
    std::map<std::tuple<double, double, std::size_t>, std::size_t> known;
    for (const home::Plant& plant : household.plants) {
        std::vector<std::optional<std::size_t>> curves(household.spots.size());
        for (std::size_t spot = 0; spot < household.spots.size(); ++spot) {
            if (!year.spots[spot].outdoors) {
                continue;
            }
            const auto key =
                std::tuple{plant.lines.damage_begins.degrees(), plant.lines.lethal.degrees(), spot};
            const auto [at, is_new] = known.try_emplace(key, year.curves.size());
            if (is_new) {
                year.curves.push_back(harm_curve(year, chances, plant.lines, household.spots[spot].offset));
            }
            curves[spot] = at->second;
        }
        year.plants.push_back({plant.name, hazard_of(plant), plant.lines.damage_begins, std::move(curves), plant.id,
                               pinned_words(household, plant)});
    }
}

/// The outdoor spot that is sheltered most, where one is warmer than the open air.
void add_sheltered(YearData& year, const home::Household& household, const plan::ColdChances& chances)
{
    std::optional<std::size_t> warmest;
    for (std::size_t spot = 0; spot < household.spots.size(); ++spot) {
        if (year.spots[spot].outdoors &&
            (!warmest || household.spots[spot].offset.mean > household.spots[*warmest].offset.mean)) {
            warmest = spot;
        }
    }
    if (!warmest || !(household.spots[*warmest].offset.mean > KelvinDelta::from_kelvins(0.0))) {
        return;
    }
    const auto offset = household.spots[*warmest].offset;
    const auto& frost = chances.season(kFrost, offset);
    ShelteredNights sheltered{*warmest, {}, {}};
    for (const YearDay& day : year.days) {
        sheltered.low_middle.push_back(day.low_middle + offset.mean);
        sheltered.frost_after.push_back(frost.after(calendar::DayOfYear::of(day.date)));
    }
    year.sheltered = std::move(sheltered);
}

/// The ladder that belongs to a stay's beginning; nullptr: none.
const plan::Ladder* ladder_to(const std::vector<plan::Ladder>& ladders, home::PlantId plant, const plan::Stay& stay)
{
    const auto found = std::ranges::find_if(ladders, [&](const plan::Ladder& of) {
        return of.plant == plant && of.to == stay.spot && of.planned == stay.from;
    });
    return found != ladders.end() ? &*found : nullptr;
}

/// Its days: of hardening before the stay, or kept apart after its beginning.
int ladder_days(const plan::Ladder& ladder)
{
    if (ladder.direction == plan::Direction::Out) {
        return calendar::days_between(ladder.items.front().date, ladder.reached);
    }
    for (const auto& item : ladder.items) {
        if (item.kind == plan::LadderItemKind::KeepApart) {
            return calendar::days_between(item.date, item.until) + 1;
        }
    }
    return 0;
}

/// What is done on the last `count` days before the stay outdoors begins, in words.
std::vector<std::string> ladder_day_words(const plan::Ladder& ladder, int count)
{
    std::vector<std::string> said;
    for (int before = count; before > 0; --before) {
        const auto on = std::ranges::find(ladder.items, ladder.reached - calendar::Days{before}, &plan::LadderItem::date);
        said.push_back(on != ladder.items.end() ? words::ladder_step(*on) : std::string{});
    }
    return said;
}

/// A plant that the nights would let out sooner than its hardening ends stays in until then.
void wait_for_hardening(std::vector<YearStay>& stays, YearStay& next, const plan::Ladder& ladder, calendar::Date from,
                        std::size_t stands)
{
    const int reached = calendar::days_between(from, ladder.reached);
    if (reached <= next.first || reached > next.last) {
        return;
    }
    if (stays.empty()) {
        stays.push_back({stands, next.first, reached - 1, 0, words::phrase("stands there"), {}, {}});
    } else {
        stays.back().last = reached - 1;
    }
    next.first = reached;
}

/// Why a plant is not let out all year stands in its longest stay.
void say_why_in(std::vector<YearStay>& stays, const plan::YearPlan& plan, home::PlantId plant, words::UnitSystem units)
{
    const auto refusal = std::ranges::find(plan.refusals, plant, &plan::Refusal::plant);
    if (refusal != plan.refusals.end() && !stays.empty()) {
        const auto longest =
            std::ranges::max_element(stays, {}, [](const YearStay& stay) { return stay.last - stay.first; });
        longest->stays_in = words::refusal(*refusal, units);
    }
}

SolvedYear solved_year(const home::Household& household, const plan::YearPlan& plan,
                       const std::vector<plan::Ladder>& ladders, words::UnitSystem units)
{
    SolvedYear solved{{}, plan.gap, {}};
    const auto place_of = [&household](home::SpotId id) {
        const auto found = std::find_if(household.spots.begin(), household.spots.end(),
                                        [id](const home::Spot& spot) { return spot.id == id; });
        return static_cast<std::size_t>(found - household.spots.begin());
    };
    for (const home::Plant& plant : household.plants) {
        std::vector<YearStay> stays;
        const auto year = std::find_if(plan.plants.begin(), plan.plants.end(),
                                       [&plant](const plan::PlantYear& of) { return of.plant == plant.id; });
        if (year != plan.plants.end()) {
            for (const plan::Stay& stay : year->stays) {
                const std::size_t spot = place_of(stay.spot);
                YearStay next{spot,
                              calendar::days_between(plan.from, stay.from),
                              calendar::days_between(plan.from, stay.to),
                              0,
                              words::why(stay.why, units),
                              stay.risk_out,
                              stay.risk_in};
                const auto* ladder = ladder_to(ladders, plant.id, stay);
                if (ladder != nullptr && ladder->direction == plan::Direction::Out) {
                    wait_for_hardening(stays, next, *ladder, plan.from, place_of(ladder->from));
                }
                if (ladder != nullptr && !stays.empty()) {
                    const bool was_out = home::is_outdoors(household.spots[stays.back().spot].kind);
                    const bool is_out = home::is_outdoors(household.spots[spot].kind);
                    const int spent = stays.back().last - stays.back().first + 1;
                    if (is_out != was_out) {
                        next.ladder_days = std::min(ladder_days(*ladder), is_out ? spent : next.last - next.first + 1);
                        if (is_out) {
                            next.ladder_words = ladder_day_words(*ladder, next.ladder_days);
                        }
                    }
                }
                stays.push_back(std::move(next));
            }
        }
        say_why_in(stays, plan, plant.id, units);
        solved.stays.push_back(std::move(stays));
    }
    for (const plan::Breach& breach : plan.breaches) {
        solved.warnings.push_back(words::breach(breach, household));
    }
    return solved;
}

void add_feeds(SolvedYear& solved, const home::Household& household, const std::vector<plan::PlantFeeding>& feeding,
               calendar::Date today)
{
    solved.feeds.resize(household.plants.size());
    for (const auto& of : feeding) {
        const auto plant = std::ranges::find(household.plants, of.plant, &home::Plant::id);
        for (const plan::FeedDay& day : of.days) {
            const int place = calendar::days_between(today, day.on);
            if (plant != household.plants.end() && place >= 0 && place < kDays) {
                solved.feeds[static_cast<std::size_t>(plant - household.plants.begin())].push_back(place);
            }
        }
    }
}

} // namespace

/// Colours in the theme's order: roofed outdoors is the fourth, open outdoors the fifth; the others share the
/// rest in the household's order.
std::vector<YearSpot> year_spots(const home::Household& household)
{
    std::vector<YearSpot> spots;
    constexpr std::size_t kRoofed = 3;
    constexpr std::size_t kOpen = 4;
    constexpr std::size_t kOthers[] = {0, 1, 2, 6, 5, 7};
    std::size_t others = 0;
    bool roofed_taken = false;
    bool open_taken = false;
    for (const home::Spot& spot : household.spots) {
        std::size_t colour = 0;
        bool turned = false;
        const bool outdoors = home::is_outdoors(spot.kind);
        if (outdoors && spot.kind != home::SpotKind::Open && !roofed_taken) {
            colour = kRoofed;
            roofed_taken = true;
        } else if (spot.kind == home::SpotKind::Open && !open_taken) {
            colour = kOpen;
            open_taken = true;
        } else {
            turned = others / std::size(kOthers) % 2 == 1;
            colour = kOthers[others++ % std::size(kOthers)];
        }
        spots.push_back({spot.name, spot.short_name.empty() ? spot.name : spot.short_name, outdoors,
                         outdoors ? std::optional{spot.offset.mean} : std::nullopt, colour, turned, spot.id, spot.offset.spread});
    }
    return spots;
}

HouseholdYear household_year(const plan::HouseholdFacts& facts, calendar::Date today, const ShownUnits& units,
                             std::optional<calendar::Date> from)
{
    const calendar::Date first = from.value_or(today);
    home::Household household = facts.household();
    const climate::PlaceClimate& climate = facts.climate;
    const auto chances = std::make_shared<plan::ColdChances>(climate::PlaceNights::of(climate));
    chances->prepare(household);
    const auto distance = [](const climate::StationInUse& station) { return station.distance.metres(); };
    double nearest = 0.0;
    double farthest = 0.0;
    std::string base;
    if (!climate.stations.empty()) {
        const auto [near, far] = std::minmax_element(
            climate.stations.begin(), climate.stations.end(),
            [&distance](const auto& a, const auto& b) { return distance(a) < distance(b); });
        nearest = distance(*near) / 1000.0;
        farthest = distance(*far) / 1000.0;
        const auto period = words::years_in_use(climate);
        base = std::to_string(period.first_year) + "–" + std::to_string(period.last_year);
    }
    YearData year{.household = household.name,
                  .place = household.place.name,
                  .demonstration = household.demonstration,
                  .today = first,
                  .from_today = first == today,
                  .turn = chances->nights().turn().last_day(),
                  .days = {},
                  .frost = frost_marks(*chances, first),
                  .spots = {},
                  .plants = {},
                  .curves = {},
                  .sheltered = std::nullopt,
                  .stations = climate.stations.size(),
                  .nearest_kilometres = nearest,
                  .farthest_kilometres = farthest,
                  .base_period = base,
                  .expected_error_days = chances->place_nights().expected_error_days(climate, kFrost),
                  .credits = {words::credits(climate)},
                  .warnings = {}};
    for (const auto& warning : climate.warnings) {
        year.warnings.push_back(words::refusal(warning));
    }
    add_days(year, household, climate, *chances);
    year.strip = strip_of(year, household, climate, chances->nights());
    year.spots = year_spots(household);
    add_plants(year, household, *chances);
    add_sheltered(year, household, *chances);
    const auto spots = std::make_shared<home::SpotClimate>(household, climate);
    YearSolver solver = [household = std::move(household), climate, chances, spots, today, first, units,
                         wishes = plan::wishes_of(facts, today), events = facts.events, log = facts.log](Probability risk) {
        const auto plan = plan::plan_year(household, climate, *chances, first, risk, plan::Effort::Fast, wishes);
        SolvedYear solved =
            solved_year(household, plan, plan::ladders_ahead(household, *spots, plan, events, log, today), unit_system_of(units));
        add_feeds(solved, household,
                  plan::feeding_year(household, climate, *spots, events, plan.plants, {.from = first}), first);
        if (wishes.accepted) {
            solved.accepted = calendar::utc_date(wishes.accepted->accepted);
            for (const auto& change : plan::changes_between(*wishes.accepted, plan)) {
                solved.changes.push_back(words::change(change, household));
            }
        }
        return solved;
    };
    return {std::move(year), std::move(solver)};
}

} // namespace lathhouse::models
