#pragma once

#include "core/home/history.h"
#include "core/plan/growth_index.h"
#include "core/plan/pot_size.h"
#include "core/plan/year_plan.h"

#include <optional>
#include <span>
#include <vector>

namespace lathhouse::plan {

/// Why a plant is not fed. In order of weight: where two hold, the first is named.
enum class WithheldWhy {
    UnknownKind,    ///< Not in the reference, so nothing is known of its needs.
    NeverFed,       ///< A kind that takes no feed.
    Nowhere,        ///< It stands at no spot.
    ChemicalDamage, ///< Until new growth is logged, and for the substance's weeks of hold (chemical_damage.h).
    SickRoots,      ///< Isolated with sick roots, until it is released and new growth is logged.
    Chilled,        ///< A cold night reached its damage line, until new growth is logged.
    Infested,       ///< Pests were found on it, until its course ends. Feed is for what grows, and soft growth is what many pests live on (common practice, no source).
    Isolated,       ///< Set apart, until it is released.
    Repotted,       ///< For some weeks.
    Bought,         ///< Fresh from a shop, for some weeks.
    Moved,          ///< Into much brighter light, for two weeks.
    Rests,          ///< In the winter or in the hot season of the place.
    WetSeason,      ///< Rain keeps the pot wet and washes feed out.
    TooCool,
    TooWarm,
    TooDark,
    ShortDays
};
/// What ends it.
enum class WithheldUntil { Date, NewGrowth, Release, ReleaseAndNewGrowth, NoPests, Never };

struct Withheld {
    calendar::Date from;
    /// Last day, included; none where only an event of the journal ends it, or nothing within the year.
    std::optional<calendar::Date> to;
    WithheldWhy why;
    WithheldUntil until;
    std::optional<calendar::Date> since; ///< Of the event that is the reason, where one is.
};

/// Days in a row on which a plant may be fed.
struct FeedingWindow {
    calendar::Date from;
    calendar::Date to; ///< Included.
    int every_days;
    plants::Range nitrogen_ppm; ///< Of each feed, by the kind's class; halved where the spot is dim.
    double growth;              ///< Mean index of its days.
    bool dim;                   ///< At most 100 foot-candles: little feed.
    bool by_lamps;              ///< Without the lamps it would be closed on some of its days.
    bool young = false;         ///< Of a plant from a tray before it is old enough to be planted out: weak feed.
};

struct FeedDay {
    calendar::Date on;
    calendar::Date can_wait_until;
    double nitrogen_ppm;
    bool young = false; ///< Weak, since it is young.
    int every_days = 0; ///< The interval of its window.
};

/// Washing salts out of the mix.
struct Leaching {
    std::optional<calendar::Date> last; ///< Leached or repotted, as logged.
    /// Some months after `last`, or since the plant is known where there is none; none where no day of the year suits.
    std::optional<calendar::Date> due;
    Litres water;                       ///< Twice what the pot holds.
    bool rough;                         ///< The pot's volume is guessed from its weight.
    int every_months;
};

struct PlantFeeding {
    home::PlantId plant;
    plants::FeedClass feed;
    std::optional<calendar::Date> last_fed;
    std::vector<FeedingWindow> windows; ///< In order; together with `withheld` they cover every day once.
    std::vector<Withheld> withheld;     ///< In order.
    std::vector<FeedDay> days;          ///< The year's feeds.
    std::optional<Leaching> leaching;   ///< None for kinds that are not fed.
};

enum class WaterHardness { Unknown, Soft, Hard };

/// Lamps that burn so many hours a day; flux: at the leaves, where it is known, else that of a weak lamp (rule lamp_light).
Lamps lamps_of(double hours, std::optional<PhotonFlux> flux);

struct FeedingOptions {
    calendar::Date from;
    int days = 365;
    std::optional<Lamps> lamps = {};
    WaterHardness water = WaterHardness::Unknown;
};

/// The year's feeding of every plant of the household.
///
/// A window opens where the growth index (growth_index.h) rises above 0.25 and closes where it falls below
/// 0.15, so that it does not flutter; the 30 days before `from` say whether it is open on the first.
/// Plants from a tray get a share of the strength until they are old enough to be planted out (rule feed_young_share).
/// Interval: that of the class in full growth (an index of 0.5 or more), longer as growth is slower, at most
/// three times; five months in dim spots; cacti and succulents get two feeds a window. The figures and their
/// sources are those of growing_rules.csv.
///
/// An infested plant (pest_course.h) is not fed from the find to the end of its course, at the earliest the day on which it can be
/// clear; a suspect one is, unless it is set apart.
///
/// Events that count: fed, leached, repotted; cold_night (detail "low_c": counts at or below the damage line;
/// without it always), chemical_damage, new_growth; isolated (detail "why" with the word "root": sick roots),
/// released; moved (detail "bought": "yes" for a plant from a shop); task_skipped and task_postponed of a feed or a
/// washing out: a feed left out is followed by the next in its turn, a washing out after 30 days. A cold night or damage of the whole
/// household counts for what stood outdoors. An event without a plant counts for the
/// plants that stood at its spot.
std::vector<PlantFeeding> feeding_year(const home::Household& household, const climate::PlaceClimate& climate,
                                       const home::SpotClimate& spots, std::span<const home::Event> events,
                                       std::span<const PlantYear> stays, const FeedingOptions& options);

enum class FeedingTask { Feed, Leach };
/// Something to do on a date.
struct FeedingDue {
    home::PlantId plant;
    FeedingTask task;
    calendar::Date due;
    calendar::Date can_wait_until;
    int minutes; ///< It takes, about: 2 to feed, 10 to wash out (common practice, no source).
    std::optional<double> nitrogen_ppm; ///< Of a feed.
    std::optional<Litres> water;        ///< Of a leaching.
    bool first = false;                 ///< No feed is logged yet: whether it was fed lately nobody knows.
    bool young = false;                 ///< Weak, since it is young.
    int every_days = 0;                 ///< Of a feed: as often as it is fed now.
};
/// What is due on a date: due by then and not past what can wait. Where a plant is to be washed out, its feed waits: it
/// is due from the day after, or once the washing out is left out or put off.
std::vector<FeedingDue> due_on(std::span<const PlantFeeding> year, calendar::Date date);

/// Whether rain keeps a pot in the open wet on such a day: at least 100 mm a month, and half as much again as
/// a pot can draw. Rules wet_month_rain, draw_factor.
bool is_wet(const home::SpotDay& day);

} // namespace lathhouse::plan
