#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/calendar/day_of_year.h"
#include "core/home/planned_stays.h"
#include "core/units/light.h"
#include "core/units/probability.h"
#include "core/units/temperature.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Hands that the theme has for spots.
constexpr int kSpotColours = 8;
/// Steps out of the light of one spot into that of another.
constexpr int kStepsOut = 5;
constexpr int kStepsIn = 4;

/// A date of the year shown. Its night is the one that ends on its morning.
struct YearDay {
    calendar::Date date;
    Celsius low_cold;                   ///< One night in twenty is colder.
    Celsius low_middle;                 ///< Half the nights are colder.
    Celsius low_warm;                   ///< One night in twenty is warmer.
    Probability frost;                  ///< A low at or below 0 C in this night, open air.
    Probability frost_after;            ///< At least one such night after this one, up to the turn.
    int day_length_minutes;             ///< 0 where the Sun does not rise, 1440 where it does not set.
    std::optional<int> sunrise_minutes; ///< Local clock, minutes after midnight.
    std::optional<int> sunset_minutes;
    std::optional<DailyLight> light; ///< In the open.
};

/// Days in a row among those of the year.
struct DaySpan {
    int first = 0;
    int count = 0;
};

/// Places of the frost dates among the days shown; nullopt where there is no such date.
struct FrostMarks {
    enum class State { Ordinary, Never, AlwaysPossible, NoSeason };
    State state = State::NoSeason;
    std::optional<std::size_t> last_half;   ///< Half the seasons have their last frost by then.
    std::optional<std::size_t> last_tenth;  ///< One season in ten has frost after it.
    std::optional<std::size_t> first_tenth; ///< One season in ten has had frost by then.
    std::optional<std::size_t> first_half;
};

/// What the strip below the night lows shows: frost, or what decides where there is none.
struct YearStrip {
    enum class Kind {
        FrostNights,  ///< Chance that the night has frost.
        TenderNights, ///< Chance that the night falls to the damage line of the tenderest plant.
        HotDays,      ///< Chance that the day goes above 30 C.
        Rain          ///< The month's rain, as a share of the wettest month's.
    };
    Kind kind = Kind::FrostNights;
    std::vector<double> shares = {}; ///< For each day, 0..1; empty for frost, which the days have.
    std::string plant = {};          ///< The tenderest one; TenderNights only.
    Celsius line = Celsius::from_degrees(0.0); ///< Its damage line; TenderNights only.
    double most_millimetres = 0.0;             ///< Rain of the wettest month; Rain only.
};

/// Hands in which spots are drawn; every colour of the theme has its own.
enum class Pattern { Plain, Rising, Dots, Slats, Posts, Grid, Sparse, Cross };

struct YearSpot {
    std::string name;
    std::string short_name;
    bool outdoors;
    std::optional<KelvinDelta> offset; ///< To the open-air low; outdoors only.
    std::size_t colour;                ///< 0..7, place among the theme's spot colours; also its pattern.
    bool turned = false; ///< The hand has been given before: its pattern lies at a right angle, plain has a double line.
    home::SpotId id = 0;
    KelvinDelta offset_spread = KelvinDelta::from_kelvins(0.0); ///< Standard deviation of `offset`.
};

/// Chances of a harmful night for one plant at one spot, for each day shown.
struct HarmCurve {
    std::vector<double> after;  ///< At or below the damage line after the day, up to the turn.
    std::vector<double> before; ///< The same from the turn up to the day, included.
    /// The least risk that allows the plant out: as above, or ten times the chance of a lethal night where
    /// that is more.
    std::vector<double> deciding_after;
    std::vector<double> deciding_before;
};

struct YearPlant {
    std::string name;
    std::string hazard; ///< What it does to whom, in words; empty where nothing is known. Shown as a lozenge.
    Celsius damage_begins;
    /// For each spot the place of its curve in YearData::curves; nullopt indoors.
    std::vector<std::optional<std::size_t>> curves;
    home::PlantId id = 0;
    /// Words on where a hand keeps it; empty where nothing does.
    std::string pinned = {};
};

/// Days in a row in one spot; both ends are places among the days shown.
struct YearStay {
    std::size_t spot;
    int first;
    int last;        ///< Included.
    int ladder_days; ///< Days of hardening before `first` outdoors, of coming in from `first` on indoors; 0:
                     ///< none.
    std::string why;
    std::optional<Probability> risk_out;
    std::optional<Probability> risk_in;
    std::string stays_in = {}; ///< In the longest stay of a plant that is not let out all year: why, in words.
    /// For each of the days of hardening, in their order: what is done, in words. Empty on the way in.
    std::vector<std::string> ladder_words = {};
};

/// A plan for one accepted risk: the stays of each plant, in the order of YearData::plants.
struct SolvedYear {
    std::vector<std::vector<YearStay>> stays;
    double gap;                        ///< To the bound of the best there can be, 0..1.
    std::vector<std::string> warnings; ///< What the plan could not keep to, in sentences.
    std::vector<std::vector<int>> feeds = {}; ///< Days on which each plant is fed.
    /// The date on which the grower said yes to a plan; none where that never was.
    std::optional<calendar::Date> accepted = {};
    std::vector<std::string> changes = {}; ///< Against that plan, in sentences.
};

/// What nights are like at the outdoor spot that is sheltered most.
struct ShelteredNights {
    std::size_t spot;
    std::vector<Celsius> low_middle;
    std::vector<Probability> frost_after;
};

/// All that the page Year shows of a household but the plan, computed once.
struct YearData {
    std::string household;
    std::string place;
    bool demonstration;
    calendar::Date today;     ///< The first day shown; another one where the year was asked for from there.
    bool from_today = true;
    calendar::DayOfYear turn; ///< Last day of the cold season.
    std::vector<YearDay> days;
    FrostMarks frost;
    YearStrip strip = {};
    std::vector<YearSpot> spots;
    std::vector<YearPlant> plants;
    std::vector<HarmCurve> curves;
    std::optional<ShelteredNights> sheltered;
    std::size_t stations;
    double nearest_kilometres;
    double farthest_kilometres;
    std::string base_period; ///< "1991–2020".
    double expected_error_days;
    std::vector<std::string> credits;  ///< Sentences.
    std::vector<std::string> warnings; ///< Sentences for people.
};

/// Solves the year for a risk; called from a thread of its own, one call at a time.
using YearSolver = std::function<SolvedYear(Probability)>;

/// A household's year as the page shows it, with what solves its plan.
struct HouseholdYear {
    YearData year;
    YearSolver solver;
};

/// The next season of one of the household's lots, by days from today; some may lie past the year shown.
struct YearSowing {
    std::string name;
    bool indoors = false;
    int sow = 0;
    std::optional<DaySpan> up = {};
    std::optional<int> harden = {};
    std::optional<int> out = {};
    std::optional<DaySpan> ready = {};
    std::string end_words = {}; ///< "first ripe 12 Jul".
    std::string sentence = {};  ///< All of it, read aloud.
};

/// Where the page Year reads the household, and writes what the hand decides. Called from threads of the model.
struct YearDoor {
    std::function<Result<HouseholdYear>()> load;
    /// The year from another date, to look at. Without it there is none.
    std::function<Result<HouseholdYear>(calendar::Date from)> load_from = {};
    /// Those of lots with seeds left, by the day of sowing.
    std::function<Result<std::vector<YearSowing>>()> sowings;
    std::function<Result<std::vector<YearSowing>>(calendar::Date from)> sowings_from = {};
    /// Keeps a plant at spots on those nights; all of them or none.
    /// words: what was done, for people, as an undo names it.
    std::function<Result<void>(const std::vector<home::Pin>&, const std::string& words, calendar::Instant now)> pin;
    /// Takes every pin of a plant back.
    std::function<Result<void>(home::PlantId, const std::string& words, calendar::Instant now)> unpin;
    std::function<Result<void>(const home::AcceptedPlan&)> accept;
};

} // namespace lathhouse::models
