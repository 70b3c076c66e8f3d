#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/spot_climate.h"
#include "core/plants/plant_kind.h"
#include "core/units/temperature.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lathhouse::plan {

/// What is known of one cold night at the plant.
struct NightReadings {
    Celsius low;
    std::optional<Celsius> evening = {}; ///< Two hours after sunset.
    std::optional<Celsius> high = {};    ///< Of the days round it.
    std::optional<double> hours = {};    ///< At or below the plant's safe night, as somebody saw them.
    double night_hours = 12.0;      ///< From sunset to sunrise.
    std::optional<KelvinDelta> usual_swing = {}; ///< From low to high of a usual day there at that time of the year.
};

/// Which way the course of a night was found.
enum class NightCourseBasis {
    HoursGiven,  ///< A dip of the given length.
    EveningGiven,///< The square root of the time from the evening's reading down to the low.
    HighGiven,   ///< A sine by day and a falling exponential by night between high and low.
    UsualSwing,  ///< The same with the usual swing of the spot and the time of the year; a clear night's is wider,
                 ///< so that hours are rather too many than too few.
    SwingAssumed ///< The same with a swing of 8 K that nobody measured.
};
std::string_view to_string(NightCourseBasis basis); ///< "hours", "evening", "high", "usual", "assumed".

/// The air from sunset to the forenoon after, through the night's low at sunrise.
///
/// Evening given: T = T0 + (low - T0) sqrt((t - 2) / (n - 2)), t hours after sunset, n the night's hours, T0
/// two hours after sunset (FAO 2005, Snyder and de Melo-Abreu, chapter 5: the trend of a radiation night).
/// Otherwise the sine and exponential of Parton and Logan (1981), air at 1.5 m: by day low + (high - low)
/// sin(pi m / (D + 2 x 1.86)), m hours after the low and D the day's hours; by night a decay with 2.20 n / Z
/// from the sunset's temperature, stretched so that it ends at the low itself and not 11 % above.
/// Mean absolute error of such curves: up to 2.6 K an hour (their abstract).
class NightCourse {
public:
    /// Errors: OutOfRange for a low outside -60 to 40 C, an evening or high below the low, a night outside 3
    /// to 21 hours.
    static Result<NightCourse> through(const NightReadings& readings);

    NightCourseBasis basis() const { return basis_; }
    /// Hours after sunset, 0 to the night's hours plus 6.
    Celsius at(double hours_after_sunset) const;
    double hours_at_or_below(Celsius line) const;
    /// Kelvin hours below the line.
    double degree_hours_below(Celsius line) const;

private:
    NightCourse(const NightReadings& readings, NightCourseBasis basis, Celsius high)
        : readings_(readings), basis_(basis), high_(high)
    {
    }
    double by_day(double hours_after_low) const;

    NightReadings readings_;
    NightCourseBasis basis_;
    Celsius high_;
};

/// One night against a plant's lines.
struct ColdExposure {
    calendar::Date night; ///< Of the morning on which it ended.
    Celsius low;
    NightCourseBasis basis;
    double hours_below_safe;
    double degree_hours_below_safe;
    double hours_below_damage;
    double degree_hours_below_damage;
    double hours_below_lethal;
};

/// `line` is the plant's safe night where hours are given by hand; then a dip shaped like a parabola stands in
/// for the course: 2/3 of its depth on the mean, and below a deeper line the root of the share of the depth
/// (geometry; that nights dip so is common practice, no source). Errors: as NightCourse; OutOfRange for hours
/// outside 0 to 72.
Result<ColdExposure> exposure_of(const NightReadings& readings, const plants::ColdLines& lines,
                                 calendar::Date night);

/// What to expect, from nothing to the worst.
enum class ColdOutcome {
    Nothing,
    Stress,             ///< Below the safe night: no sign need show.
    GrowthLost,         ///< Long or often below it: stunted without a sign.
    LeafDamagePossible,
    LeafDamageLikely,
    DeathPossible,
    DeathLikely
};
std::string_view to_string(ColdOutcome outcome);

/// Why a prognosis is less sure.
enum class ColdDoubt {
    NoPublishedTemperature, ///< The plant's lines are common practice.
    RatingOnly,             ///< They rest on a hardiness class or a growth floor.
    GroupFigure,            ///< They are those of the group or genus.
    DarkTest,               ///< They come from cold stores in the dark.
    OwnLines,               ///< The grower's own lines, or a kind that is not in the reference.
    SeveralNights,          ///< Nights add up; by how much is not known.
    CourseAssumed           ///< Nobody measured how long it was cold, whether the swing is the usual one or assumed.
};
std::string_view to_string(ColdDoubt doubt);

enum class ColdAct { Look, ScratchTest, ExpectGrowth };
std::string_view to_string(ColdAct act); ///< "look", "scratch_test", "expect_growth".

struct ColdStep {
    calendar::Date date;
    calendar::Date latest;
    std::optional<home::PlantId> plant;
    ColdAct act;
    int minutes; ///< Common practice, no source.
};

struct ColdPrognosis {
    ColdOutcome outcome;
    std::vector<ColdExposure> nights; ///< In order of date; those that add up.
    double hours_below_safe;          ///< Of all of them.
    double degree_hours_below_safe;
    double hours_below_damage;
    double degree_hours_below_damage;
    std::vector<ColdDoubt> doubts;
    bool roots_at_risk; ///< -4 C or below: the wall of a pot is colder than the ground (ASKPOT).
    bool feed_held;     ///< Until new growth is logged.
    std::vector<ColdStep> steps;
    std::vector<std::string> sources;
};

/// The nights of the fortnight up to the last one, together: chilled nights add up (SQCHILL: ten hours a night
/// at 4.5 and 13 C for one, three and six nights), while the fortnight is common practice.
///
/// Leaf damage is likely from ten hours below the damage line (SQCHILL) or six kelvin hours (MACC: one to two
/// hours at 3 to 4 C start the decline of kinds whose line is 8 C), else possible. Death is likely where the
/// low was a degree below the lethal line or an hour at it, else possible; the degree and the hour are common
/// practice. Growth is lost from 48 hours below the safe night (EP101: two days at 10 to 11 C). Looks on day
/// 3, 7 and 14 (EP101, RH936: signs after 1 to 14 days).
/// Precondition: at least one night.
ColdPrognosis prognosis_of(std::vector<ColdExposure> nights, const plants::PlantKind* kind,
                           const plants::ColdLines& lines, std::optional<home::PlantId> plant = {});

/// A plant's cold nights in its journal: events of kind cold_night with the details `low_c` and, where known,
/// `evening_c`, `high_c`, `hours`; of the plant itself, of the spot where it stood that day (whereabouts.h), or of the whole
/// household.
struct ColdCourse {
    home::PlantId plant;
    ColdPrognosis prognosis;
    std::optional<calendar::Date> new_growth; ///< Logged after the last cold night: feed may begin again.
};
/// Night's length and swing of a spot on a date; cold nights whose high nobody wrote down are reckoned with them.
using UsualNight = std::function<std::optional<std::pair<double, KelvinDelta>>(home::SpotId, calendar::Date)>;
/// Of the spot's usual year: its day length (not of lamps) and the difference of its usual high and low.
UsualNight usual_night_of(const home::SpotClimate& spots);

/// What becomes of a night of which an event gives no low. TakenAsHurt: it is taken to have reached the plant's line of
/// damage, since it would not be written down else (common practice, no source); for what is to be looked at.
enum class WithoutLow { LeftOut, TakenAsHurt };

/// The plants with a cold night in the 60 days before `today` that went below their safe night. A night told more than
/// once is one night: as it was told last of the plant itself, else by the colder low of the spot. A night of the whole
/// household counts for what stood outdoors. Events that cannot be read are left out. events: oldest first.
std::vector<ColdCourse> cold_courses(const home::Household& household, std::span<const home::Event> events,
                                     calendar::Date today, const UsualNight& usual = {},
                                     WithoutLow without_low = WithoutLow::LeftOut);

} // namespace lathhouse::plan
