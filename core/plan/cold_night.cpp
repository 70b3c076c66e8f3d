#include "core/plan/cold_night.h"

#include "core/base/parse.h"
#include "core/plan/growth_index.h"
#include "core/plan/source_keys.h"
#include "core/plan/whereabouts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr double kForenoonHours = 6.0;
constexpr double kStepHours = 0.02;
constexpr double kAssumedSwing = 8.0;
// Parton and Logan 1981, air at 150 cm: lag of the highest temperature and decay at night.
constexpr double kLag = 1.86;
constexpr double kDecay = 2.20;

constexpr std::array<std::string_view, 5> kBases{"hours", "evening", "high", "usual", "assumed"};
constexpr std::array<std::string_view, 7> kOutcomes{
    "nothing",            "stress",         "growth_lost", "leaf_damage_possible",
    "leaf_damage_likely", "death_possible", "death_likely"};
constexpr std::array<std::string_view, 7> kDoubts{
    "no_published_temperature", "rating_only", "group_figure", "dark_test", "own_lines", "several_nights",
    "course_assumed"};
constexpr std::array<std::string_view, 3> kAfterColdActs{"look", "scratch_test", "expect_growth"};

std::optional<ColdDoubt> doubt_of(const plants::PlantKind* kind, const plants::ColdLines& lines)
{
    if (kind == nullptr || !(kind->lines == lines)) {
        return ColdDoubt::OwnLines;
    }
    switch (kind->cold_evidence) {
    case plants::Evidence::Memory:
        return ColdDoubt::NoPublishedTemperature;
    case plants::Evidence::PublishedRating:
        return ColdDoubt::RatingOnly;
    case plants::Evidence::PublishedGroupFigure:
        return ColdDoubt::GroupFigure;
    case plants::Evidence::PublishedTest:
        return ColdDoubt::DarkTest;
    case plants::Evidence::PublishedNumber:
        break;
    }
    return std::nullopt;
}

/// Hours and kelvin hours of a dip like a parabola that is `hours` long at `top` and reaches `low`.
std::pair<double, double> of_dip(Celsius low, Celsius top, Celsius line, double hours)
{
    const double depth = (top - low).kelvins();
    const double below = (line - low).kelvins();
    if (depth <= 0.0) {
        return below >= 0.0 ? std::pair{hours, hours * below} : std::pair{0.0, 0.0};
    }
    if (below < 0.0) {
        return {0.0, 0.0};
    }
    const double long_hours = hours * std::sqrt(std::min(1.0, below / depth));
    return {long_hours, long_hours * below * 2.0 / 3.0};
}

ColdOutcome outcome_of(const ColdPrognosis& sums, const plants::ColdLines& lines)
{
    constexpr double kLikelyHours = 10.0;
    constexpr double kLikelyDegreeHours = 6.0;
    constexpr double kGrowthHours = 48.0;
    auto low = sums.nights.front().low;
    double hours_below_lethal = 0.0;
    for (const auto& night : sums.nights) {
        low = std::min(low, night.low);
        hours_below_lethal += night.hours_below_lethal;
    }
    if (low <= lines.lethal) {
        const bool sure = (lines.lethal - low).kelvins() >= 1.0 || hours_below_lethal >= 1.0;
        return sure ? ColdOutcome::DeathLikely : ColdOutcome::DeathPossible;
    }
    if (low <= lines.damage_begins) {
        return sums.hours_below_damage >= kLikelyHours || sums.degree_hours_below_damage >= kLikelyDegreeHours
                   ? ColdOutcome::LeafDamageLikely
                   : ColdOutcome::LeafDamagePossible;
    }
    if (low <= lines.safe_night) {
        return sums.hours_below_safe >= kGrowthHours ? ColdOutcome::GrowthLost : ColdOutcome::Stress;
    }
    return ColdOutcome::Nothing;
}

std::optional<Celsius> degrees_in(const home::Event& event, const char* name)
{
    const auto number = parse_number(event.detail(name));
    return number ? std::optional{Celsius::from_degrees(*number)} : std::nullopt;
}

std::optional<ColdExposure> exposure_in(const home::Event& event, std::optional<home::SpotId> spot,
                                        const plants::ColdLines& lines, const UsualNight& usual,
                                        WithoutLow without_low)
{
    auto low = degrees_in(event, "low_c");
    if (without_low == WithoutLow::TakenAsHurt && event.detail("low_c").empty()) {
        low = lines.damage_begins;
    }
    if (!low) {
        return std::nullopt;
    }
    NightReadings readings{.low = *low,
                           .evening = degrees_in(event, "evening_c"),
                           .high = degrees_in(event, "high_c"),
                           .hours = parse_number(event.detail("hours"))};
    if (const auto night = usual && spot ? usual(*spot, event.happened) : std::nullopt) {
        readings.night_hours = night->first;
        readings.usual_swing = night->second;
    }
    const auto exposure = exposure_of(readings, lines, event.happened);
    return exposure ? std::optional{*exposure} : std::nullopt;
}

/// The cold nights of a plant by their date. A night that was told of the plant and of its spot, or told again, is one
/// night: what was said last of the plant itself counts, else the colder low of the spot.
class ColdNights {
public:
    void tell(const ColdExposure& night, bool of_plant)
    {
        const auto [known, is_new] = nights_.try_emplace(night.night, Told{night, of_plant});
        if (!is_new && (of_plant || (!known->second.of_plant && night.low < known->second.night.low))) {
            known->second = {night, of_plant};
        }
    }
    std::vector<ColdExposure> down_to(Celsius line) const
    {
        std::vector<ColdExposure> found;
        for (const auto& [date, told] : nights_) {
            if (told.night.low <= line) {
                found.push_back(told.night);
            }
        }
        return found;
    }

private:
    struct Told {
        ColdExposure night;
        bool of_plant;
    };
    std::map<Date, Told> nights_;
};

} // namespace

std::string_view to_string(NightCourseBasis basis)
{
    return kBases[static_cast<std::size_t>(basis)];
}

std::string_view to_string(ColdOutcome outcome)
{
    return kOutcomes[static_cast<std::size_t>(outcome)];
}

std::string_view to_string(ColdDoubt doubt)
{
    return kDoubts[static_cast<std::size_t>(doubt)];
}

std::string_view to_string(ColdAct act)
{
    return kAfterColdActs[static_cast<std::size_t>(act)];
}

Result<NightCourse> NightCourse::through(const NightReadings& readings)
{
    const auto refuse = [](const Said& what) { return Error{ErrorCode::OutOfRange, what}; };
    const double low = readings.low.degrees();
    if (!(low >= -60.0 && low <= 40.0)) {
        return refuse(said("the night's low must lie within -60 and 40 C"));
    }
    if (!(readings.night_hours >= 3.0 && readings.night_hours <= 21.0)) {
        return refuse(said("the night must be 3 to 21 hours long"));
    }
    if (readings.evening && !(*readings.evening >= readings.low)) {
        return refuse(said("the evening's temperature is below the night's low; exchange them"));
    }
    if (readings.high && !(*readings.high >= readings.low)) {
        return refuse(said("the day's high is below the night's low; exchange them"));
    }
    const auto high = readings.high ? *readings.high
                                    : std::max(readings.low, readings.evening.value_or(readings.low)) +
                                          readings.usual_swing.value_or(KelvinDelta::from_kelvins(kAssumedSwing));
    const auto basis = readings.evening ? NightCourseBasis::EveningGiven
                       : readings.high    ? NightCourseBasis::HighGiven
                       : readings.usual_swing ? NightCourseBasis::UsualSwing
                                              : NightCourseBasis::SwingAssumed;
    return NightCourse{readings, basis, high};
}

double NightCourse::by_day(double hours_after_low) const
{
    const double day_hours = 24.0 - readings_.night_hours;
    const double low = readings_.low.degrees();
    return low + (high_.degrees() - low) *
                     std::sin(std::numbers::pi * hours_after_low / (day_hours + 2.0 * kLag));
}

Celsius NightCourse::at(double hours_after_sunset) const
{
    const double night = readings_.night_hours;
    const double low = readings_.low.degrees();
    if (hours_after_sunset >= night) {
        return Celsius::from_degrees(by_day(hours_after_sunset - night));
    }
    if (readings_.evening) {
        const double share = std::max(0.0, hours_after_sunset - 2.0) / (night - 2.0);
        const double evening = readings_.evening->degrees();
        return Celsius::from_degrees(evening + (low - evening) * std::sqrt(share));
    }
    const double sunset = by_day(24.0 - night);
    const double end = std::exp(-kDecay);
    const double left = (std::exp(-kDecay * hours_after_sunset / night) - end) / (1.0 - end);
    return Celsius::from_degrees(low + (sunset - low) * left);
}

double NightCourse::hours_at_or_below(Celsius line) const
{
    const double end = readings_.night_hours + kForenoonHours;
    double hours = 0.0;
    for (double time = kStepHours / 2.0; time < end; time += kStepHours) {
        hours += at(time) <= line ? kStepHours : 0.0;
    }
    return hours;
}

double NightCourse::degree_hours_below(Celsius line) const
{
    const double end = readings_.night_hours + kForenoonHours;
    double sum = 0.0;
    for (double time = kStepHours / 2.0; time < end; time += kStepHours) {
        sum += std::max(0.0, (line - at(time)).kelvins()) * kStepHours;
    }
    return sum;
}

Result<ColdExposure> exposure_of(const NightReadings& readings, const plants::ColdLines& lines, Date night)
{
    const auto course = NightCourse::through(readings);
    if (!course) {
        return course.error();
    }
    if (readings.hours) {
        if (!(*readings.hours >= 0.0 && *readings.hours <= 72.0)) {
            return Error{ErrorCode::OutOfRange, said("the hours of cold must lie within 0 and 72")};
        }
        const auto safe = of_dip(readings.low, lines.safe_night, lines.safe_night, *readings.hours);
        const auto damage = of_dip(readings.low, lines.safe_night, lines.damage_begins, *readings.hours);
        const auto lethal = of_dip(readings.low, lines.safe_night, lines.lethal, *readings.hours);
        return ColdExposure{night,       readings.low, NightCourseBasis::HoursGiven,
                            safe.first,  safe.second,  damage.first,
                            damage.second, lethal.first};
    }
    return ColdExposure{night,
                        readings.low,
                        course->basis(),
                        course->hours_at_or_below(lines.safe_night),
                        course->degree_hours_below(lines.safe_night),
                        course->hours_at_or_below(lines.damage_begins),
                        course->degree_hours_below(lines.damage_begins),
                        course->hours_at_or_below(lines.lethal)};
}

ColdPrognosis prognosis_of(std::vector<ColdExposure> nights, const plants::PlantKind* kind,
                           const plants::ColdLines& lines, std::optional<home::PlantId> plant)
{
    constexpr int kFortnight = 14;
    std::ranges::sort(nights, {}, &ColdExposure::night);
    const auto last = nights.back().night;
    std::erase_if(nights, [&](const ColdExposure& night) {
        return calendar::days_between(night.night, last) > kFortnight;
    });
    ColdPrognosis prognosis{ColdOutcome::Nothing, std::move(nights), 0.0, 0.0, 0.0, 0.0, {}, false, false,
                            {},                   {}};
    bool assumed = false;
    for (const auto& night : prognosis.nights) {
        prognosis.hours_below_safe += night.hours_below_safe;
        prognosis.degree_hours_below_safe += night.degree_hours_below_safe;
        prognosis.hours_below_damage += night.hours_below_damage;
        prognosis.degree_hours_below_damage += night.degree_hours_below_damage;
        prognosis.roots_at_risk |= night.low <= Celsius::from_degrees(-4.0);
        assumed |= night.basis == NightCourseBasis::SwingAssumed || night.basis == NightCourseBasis::UsualSwing;
        switch (night.basis) {
        case NightCourseBasis::HoursGiven:
            add_keys(prognosis.sources, {"MEM"});
            break;
        case NightCourseBasis::EveningGiven:
            add_keys(prognosis.sources, {"FAO10"});
            break;
        case NightCourseBasis::HighGiven:
        case NightCourseBasis::UsualSwing:
        case NightCourseBasis::SwingAssumed:
            add_keys(prognosis.sources, {"PARTON81"});
            break;
        }
    }
    prognosis.outcome = outcome_of(prognosis, lines);
    if (const auto doubt = doubt_of(kind, lines)) {
        prognosis.doubts.push_back(*doubt);
    }
    if (prognosis.nights.size() > 1) {
        prognosis.doubts.push_back(ColdDoubt::SeveralNights);
    }
    if (assumed) {
        prognosis.doubts.push_back(ColdDoubt::CourseAssumed);
    }
    add_keys(prognosis.sources, {"SQCHILL", "MACC", "EP101", "RH936"});
    if (kind != nullptr) {
        for (const auto piece : split(kind->sources, ';')) {
            add_keys(prognosis.sources, {std::string{trimmed(piece)}});
        }
    }
    prognosis.feed_held = prognosis.outcome >= ColdOutcome::GrowthLost;
    if (prognosis.outcome == ColdOutcome::Nothing) {
        return prognosis;
    }
    const auto add = [&](ColdAct act, int from, int until, int minutes) {
        prognosis.steps.push_back({last + Days{from}, last + Days{until}, plant, act, minutes});
    };
    add(ColdAct::Look, 3, 4, 3);
    add(ColdAct::Look, 7, 8, 3);
    add(ColdAct::Look, 14, 16, 3);
    if (prognosis.outcome >= ColdOutcome::LeafDamagePossible) {
        add(ColdAct::ScratchTest, 14, 21, 5);
        add(ColdAct::ExpectGrowth, 21, 28, 3);
    }
    return prognosis;
}

UsualNight usual_night_of(const home::SpotClimate& spots)
{
    return [&spots](home::SpotId spot, Date date) {
        // The night of a date ends on its morning.
        constexpr double kShortest = 3.0;
        constexpr double kLongest = 21.0;
        const auto day = spots.on(spot, date);
        return std::optional{std::pair{std::clamp(24.0 - day.day_length_hours, kShortest, kLongest),
                                       day.high - day.low}};
    };
}

std::vector<ColdCourse> cold_courses(const home::Household& household, std::span<const home::Event> events,
                                     Date today, const UsualNight& usual, WithoutLow without_low)
{
    constexpr int kRemembered = 60;
    std::vector<ColdCourse> courses;
    for (const auto& plant : household.plants) {
        const Whereabouts whereabouts{plant, events, {}, today};
        ColdNights told;
        std::optional<Date> growth;
        bool gone = false;
        for (const auto& event : events) {
            if (event.happened > today) {
                continue;
            }
            const bool own = event.plant == plant.id;
            gone |= own && (event.kind == home::EventKind::Died || event.kind == home::EventKind::GivenAway ||
                             event.kind == home::EventKind::Removed);
            if (own && event.kind == home::EventKind::NewGrowth) {
                growth = growth ? std::max(*growth, event.happened) : event.happened;
            }
            if (event.kind == home::EventKind::ColdNight && reaches(event, whereabouts, household) &&
                calendar::days_between(event.happened, today) <= kRemembered) {
                const auto spot = whereabouts.on(event.happened);
                const bool is_there = spot && household.spot(*spot) != nullptr;
                if (const auto night =
                        exposure_in(event, is_there ? spot : std::nullopt, plant.lines, usual, without_low)) {
                    told.tell(*night, own && !event.detail("low_c").empty());
                }
            }
        }
        auto nights = told.down_to(plant.lines.safe_night);
        if (gone || nights.empty()) {
            continue;
        }
        auto prognosis = prognosis_of(std::move(nights), kind_of(plant), plant.lines, plant.id);
        const auto last = prognosis.nights.back().night;
        if (growth && *growth <= last) {
            growth.reset();
        }
        if (growth) {
            prognosis.feed_held = false;
        }
        courses.push_back({plant.id, std::move(prognosis), growth});
    }
    return courses;
}

} // namespace lathhouse::plan
