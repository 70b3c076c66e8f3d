#include "core/plan/feeding.h"

#include "core/home/seedling.h"
#include "core/plan/growing_rules.h"
#include "core/plan/spot_warmth.h"
#include "core/plan/withheld.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string_view>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr int kDaysBefore = 30;        // Seen before the first day, to know whether a window is open.
constexpr double kFullGrowth = 0.5;    // Index from which the class's interval counts; light that is good gives
                                       // 0.63 at the best temperature.
constexpr double kLongestInterval = 3.0;
constexpr double kDaysOfMonth = 365.25 / 12.0;
constexpr int kMinutesToFeed = 2;
constexpr int kMinutesToLeach = 10;
constexpr int kLeachingCanWait = 30; // Days.

/// What one day of a plant is like.
struct Day {
    std::optional<WithheldWhy> why; ///< None where it may be fed.
    std::optional<Withheld> event;  ///< Where an event is the reason.
    double index = 0.0;
    DailyLight moles = DailyLight::from_moles(0.0);
    bool by_lamps = false;
    bool young = false;
};

/// What takes most from growth.
WithheldWhy what_lacks(const GrowthDay& grown)
{
    if (grown.temperature <= grown.light && grown.temperature <= grown.season) {
        return grown.too_warm ? WithheldWhy::TooWarm : WithheldWhy::TooCool;
    }
    return grown.light <= grown.season ? WithheldWhy::TooDark : WithheldWhy::ShortDays;
}

/// A window that opens above one level and closes below a lower one.
class Hysteresis {
public:
    bool step(double index)
    {
        open_ = open_ ? index >= close_ : index >= level_;
        return open_;
    }

private:
    double level_ = growing_figure("feed_index_open");
    double close_ = growing_figure("feed_index_close");
    bool open_ = false;
};

/// The heaviest reason of the events on that day.
std::optional<Withheld> reason_on(std::span<const Withheld> events, Date date)
{
    std::optional<Withheld> found;
    for (const auto& event : events) {
        if (event.from <= date && (!event.to || date <= *event.to) && (!found || event.why < found->why)) {
            found = event;
        }
    }
    return found;
}

struct AskedPot {
    const home::Household& household;
    const home::Plant& plant;
    const plants::PlantKind* kind;
    const Whereabouts& whereabouts;
    const home::SpotClimate& spots;
    const RestingSeasons& seasons;
    const FeedingOptions& options;
};

std::vector<Day> days_of(const AskedPot& asked, std::span<const Withheld> events)
{
    Hysteresis with;
    Hysteresis without;
    std::vector<Day> days;
    for (int offset = -kDaysBefore; offset < asked.options.days; ++offset) {
        const auto date = asked.options.from + Days{offset};
        Day day;
        const auto spot = asked.whereabouts.on(date);
        const auto* stands = spot ? asked.household.spot(*spot) : nullptr;
        day.young = home::is_young(asked.plant, date, stands != nullptr && home::is_outdoors(stands->kind));
        if (asked.kind == nullptr) {
            day.why = WithheldWhy::UnknownKind;
        } else if (asked.kind->feed == plants::FeedClass::None) {
            day.why = WithheldWhy::NeverFed;
        } else if (!spot || asked.household.spot(*spot) == nullptr) {
            day.why = WithheldWhy::Nowhere;
        } else {
            const auto there = asked.spots.on(*spot, date);
            const auto grown = [&](const std::optional<Lamps>& lamps) {
                return growth_on(*asked.kind, asked.plant.light_to_thrive, asked.plant.heat_limit, there, date,
                                 asked.seasons, lamps);
            };
            const auto growth = grown(asked.options.lamps);
            day.index = growth.index();
            day.moles = growth.moles;
            const bool open = with.step(day.index);
            day.by_lamps = open && asked.options.lamps && !without.step(grown({}).index());
            if (growth.rest != RestReason::None) {
                day.why = WithheldWhy::Rests;
            } else if (there.outdoors && is_wet(there)) {
                day.why = WithheldWhy::WetSeason;
            } else if (!open) {
                day.why = what_lacks(growth);
            }
            if (const auto event = reason_on(events, date); event && (!day.why || event->why < *day.why)) {
                day.why = event->why;
                day.event = event;
            }
        }
        if (offset >= 0) {
            days.push_back(day);
        }
    }
    return days;
}

WithheldUntil end_of(const Day& day)
{
    if (day.event) {
        return day.event->until;
    }
    return day.why == WithheldWhy::NeverFed || day.why == WithheldWhy::UnknownKind ? WithheldUntil::Never
                                                                                   : WithheldUntil::Date;
}

double class_interval(plants::FeedClass feed)
{
    switch (feed) {
    case plants::FeedClass::Heavy:
        return growing_figure("feed_heavy_days");
    case plants::FeedClass::Medium:
        return growing_figure("feed_medium_days");
    default:
        return growing_figure("feed_light_days");
    }
}

FeedingWindow window_of(const AskedPot& asked, std::span<const Day> days, Date from)
{
    double index = 0.0;
    double moles = 0.0;
    bool by_lamps = false;
    for (const auto& day : days) {
        index += day.index;
        moles += day.moles.moles();
        by_lamps = by_lamps || day.by_lamps;
    }
    const auto count = static_cast<double>(days.size());
    index /= count;
    moles /= count;
    const auto dim_light =
        daily_light_of(PhotonFlux::from_daylight_foot_candles(growing_figure("feed_dim_light")), 8.0);
    const bool dim = moles <= dim_light.moles();
    double every = class_interval(asked.kind->feed) *
                   std::clamp(kFullGrowth / std::max(index, 1e-6), 1.0, kLongestInterval);
    if (asked.kind->group == "succulent") {
        every = std::max(every, count / growing_figure("feed_succulent"));
    }
    if (dim) {
        every = std::max(every, growing_figure("feed_dim_days"));
    }
    const bool young = days.front().young;
    const double share = std::min(dim ? growing_figure("feed_home_share") : 1.0, young ? growing_figure("feed_young_share") : 1.0);
    return {from,
            from + Days{static_cast<int>(days.size()) - 1},
            static_cast<int>(std::lround(every)),
            {asked.kind->feed_nitrogen_ppm.low * share, asked.kind->feed_nitrogen_ppm.high * share},
            index,
            dim,
            by_lamps,
            young};
}

/// Days in a row that have the same reason, or none.
void add_runs(const AskedPot& asked, std::span<const Day> days, PlantFeeding& feeding)
{
    for (std::size_t first = 0; first < days.size();) {
        std::size_t next = first + 1;
        const auto same = [&](const Day& day) {
            return day.why == days[first].why && (day.why || day.young == days[first].young) &&
                   day.event.has_value() == days[first].event.has_value() &&
                   (!day.event || day.event->since == days[first].event->since);
        };
        while (next < days.size() && same(days[next])) {
            ++next;
        }
        const auto from = asked.options.from + Days{static_cast<int>(first)};
        const auto last = asked.options.from + Days{static_cast<int>(next) - 1};
        if (!days[first].why) {
            feeding.windows.push_back(window_of(asked, days.subspan(first, next - first), from));
        } else {
            const bool open_end =
                next == days.size() && (days[first].event ? !days[first].event->to
                                                          : end_of(days[first]) == WithheldUntil::Never);
            feeding.withheld.push_back(
                {from, open_end ? std::nullopt : std::optional{last}, *days[first].why, end_of(days[first]),
                 days[first].event ? days[first].event->since : std::nullopt});
        }
        first = next;
    }
}

/// What the grower said of a task of the round: when it was last left out, and until when it was put off.
struct SetAside {
    std::optional<Date> left_out;
    std::optional<Date> until;
};

/// task: how the key of such a task begins (round.cpp), as "feed/".
SetAside set_aside(std::span<const home::Event* const> own, std::string_view task, Date today)
{
    SetAside found;
    for (const auto* event : own) {
        if (event->happened > today || !event->detail("task").starts_with(task)) {
            continue;
        }
        if (event->kind == home::EventKind::TaskSkipped) {
            found.left_out = found.left_out ? std::max(*found.left_out, event->happened) : event->happened;
        } else if (event->kind == home::EventKind::TaskPostponed) {
            if (const auto until = calendar::parse_date(event->detail("until")); until) {
                found.until = found.until ? std::max(*found.until, *until) : *until;
            }
        }
    }
    return found;
}

void add_feeds(PlantFeeding& feeding, const SetAside& said, Date today)
{
    // A feed that was left out is as one that was given: the next one is due in its turn.
    auto last = feeding.last_fed;
    if (said.left_out) {
        last = last ? std::max(*last, *said.left_out) : *said.left_out;
    }
    auto earliest = said.until ? std::max(today, *said.until) : today;
    if (feeding.leaching && feeding.leaching->last) {
        // What was poured through still runs out on its day and would take the feed along.
        earliest = std::max(earliest, *feeding.leaching->last + Days{1});
    }
    for (const auto& window : feeding.windows) {
        auto due = std::max(window.from, earliest);
        if (last) {
            due = std::max(due, *last + Days{window.every_days});
        }
        const double growth = std::clamp(window.growth / kFullGrowth, 0.0, 1.0);
        const double ppm =
            window.nitrogen_ppm.low + growth * (window.nitrogen_ppm.high - window.nitrogen_ppm.low);
        for (; due <= window.to; due = due + Days{window.every_days}) {
            feeding.days.push_back({due, std::min(window.to, due + Days{window.every_days / 2}), ppm, window.young, window.every_days});
            last = due;
        }
    }
}

/// Since when a plant is known: its first event, else the household's, else today. What went before nobody knows, and
/// a plant is not thought salty for that.
Date known_since(std::span<const home::Event* const> own, std::span<const home::Event> all, Date today)
{
    auto since = today;
    for (const auto* event : own) {
        since = std::min(since, event->happened);
    }
    for (std::size_t at = 0; own.empty() && at < all.size(); ++at) {
        since = std::min(since, all[at].happened);
    }
    return since;
}

std::optional<Leaching> leaching_of(const AskedPot& asked, std::span<const home::Event* const> own, Date known,
                                    std::span<const Day> days)
{
    if (asked.kind == nullptr || asked.kind->feed == plants::FeedClass::None) {
        return std::nullopt;
    }
    const auto* rule = GrowingRules::built_in().find("leach_months");
    const auto months = static_cast<int>(std::lround(asked.options.water == WaterHardness::Hard   ? *rule->low
                                                     : asked.options.water == WaterHardness::Soft ? *rule->high
                                                                                                  : *rule->used));
    const auto size = pot_size(asked.plant);
    Leaching leaching{{}, {}, size.volume * growing_figure("leach_volumes"), size.from_weight, months};
    for (const auto* event : own) {
        if ((event->kind == home::EventKind::Leached || event->kind == home::EventKind::Repotted) &&
            event->happened <= asked.options.from) {
            leaching.last = leaching.last ? std::max(*leaching.last, event->happened) : event->happened;
        }
    }
    const auto full = Days{static_cast<int>(std::lround(months * kDaysOfMonth))};
    auto earliest = std::max(leaching.last.value_or(known) + full, asked.options.from);
    const auto said = set_aside(own, "wash-out/", asked.options.from);
    if (said.left_out) {
        earliest = std::max(earliest, *said.left_out + Days{kLeachingCanWait});
    }
    if (said.until) {
        earliest = std::max(earliest, *said.until);
    }
    // A plant that stands still cannot drink what is poured through, so washing out waits for growth.
    for (std::size_t at = 0; at < days.size(); ++at) {
        const auto date = asked.options.from + Days{static_cast<int>(at)};
        if (date >= earliest && !days[at].why) {
            leaching.due = date;
            break;
        }
    }
    return leaching;
}

/// What a course against pests withholds. Until when, nobody knows where it is too cold for a generation to pass; and one
/// that could have ended goes on until the last look.
std::vector<Withheld> withheld_by_pests(home::PlantId plant, const PestCoursePlan& pests)
{
    std::vector<Withheld> withheld;
    for (const auto& course : pests.courses) {
        if (course.plant == plant && course.state == PestState::Infested) {
            const auto to = course.clear_not_before ? std::optional{std::max(*course.clear_not_before - Days{1}, pests.today)}
                                                    : std::nullopt;
            withheld.push_back({course.started, to, WithheldWhy::Infested, WithheldUntil::NoPests, course.started});
        }
    }
    return withheld;
}

} // namespace

bool is_wet(const home::SpotDay& day)
{
    const double rain = day.rain.millimetres();
    return rain * kDaysOfMonth >= growing_figure("wet_month_rain") &&
           rain >= growing_figure("draw_factor") * day.water_demand.millimetres();
}

Lamps lamps_of(double hours, std::optional<PhotonFlux> flux)
{
    return {hours, flux ? *flux : PhotonFlux::from_daylight_foot_candles(growing_figure("lamp_light"))};
}

std::vector<PlantFeeding> feeding_year(const home::Household& household, const climate::PlaceClimate& climate,
                                       const home::SpotClimate& spots, std::span<const home::Event> events,
                                       std::span<const PlantYear> stays, const FeedingOptions& options)
{
    const RestingSeasons seasons{climate};
    const auto pests = plan_pest_courses(household, events, warmth_of(spots), options.from);
    std::vector<PlantFeeding> year;
    for (const auto& plant : household.plants) {
        const auto planned = std::ranges::find(stays, plant.id, &PlantYear::plant);
        const Whereabouts whereabouts{plant, events,
                                      planned == stays.end() ? std::span<const Stay>{} : planned->stays,
                                      options.from};
        std::vector<const home::Event*> own;
        PlantFeeding feeding{plant.id, plants::FeedClass::None, {}, {}, {}, {}, {}};
        for (const auto& event : events) {
            if (whereabouts.concerns(event)) {
                own.push_back(&event);
                if (event.kind == home::EventKind::Fed && event.happened <= options.from) {
                    feeding.last_fed =
                        feeding.last_fed ? std::max(*feeding.last_fed, event.happened) : event.happened;
                }
            }
        }
        const AskedPot asked{household, plant, kind_of(plant), whereabouts, spots, seasons, options};
        if (asked.kind != nullptr) {
            feeding.feed = asked.kind->feed;
        }
        auto by_events = withheld_by_events(household, plant, whereabouts, spots, events, options.from, options.days);
        std::ranges::move(withheld_by_pests(plant.id, pests), std::back_inserter(by_events));
        const auto days = days_of(asked, by_events);
        add_runs(asked, days, feeding);
        feeding.leaching = leaching_of(asked, own, known_since(own, events, options.from), days);
        add_feeds(feeding, set_aside(own, "feed/", options.from), options.from);
        year.push_back(std::move(feeding));
    }
    return year;
}

std::vector<FeedingDue> due_on(std::span<const PlantFeeding> year, Date date)
{
    std::vector<FeedingDue> due;
    for (const auto& plant : year) {
        // What is poured through takes a feed along: the washing out comes first, and the feed waits for it.
        if (plant.leaching && plant.leaching->due) {
            const auto wait = *plant.leaching->due + Days{kLeachingCanWait};
            if (*plant.leaching->due <= date && date <= wait) {
                due.push_back({plant.plant, FeedingTask::Leach, *plant.leaching->due, wait, kMinutesToLeach,
                               std::nullopt, plant.leaching->water});
                continue;
            }
        }
        for (const auto& day : plant.days) {
            if (day.on <= date && date <= day.can_wait_until) {
                due.push_back({plant.plant, FeedingTask::Feed, day.on, day.can_wait_until, kMinutesToFeed,
                               day.nitrogen_ppm, std::nullopt, !plant.last_fed && &day == &plant.days.front(), day.young, day.every_days});
            }
        }
    }
    return due;
}

} // namespace lathhouse::plan
