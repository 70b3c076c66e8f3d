#include "core/plan/pest_course.h"

#include "core/base/parse.h"
#include "core/plan/pest_history.h"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace lathhouse::plan {
namespace {

using calendar::Date;
using calendar::Days;

constexpr int kInspectMinutes = 3;
constexpr int kTreatMinutes = 10;
constexpr int kSetApartMinutes = 5;
constexpr std::size_t kMostSteps = 60;

/// Makes the courses of one pest, or of the pests that nobody named.
class CourseMaker {
public:
    CourseMaker(const PestHistory& history, const SpotWarmth& warmth, Date today)
        : history_(history), warmth_(warmth), today_(today)
    {
    }

    /// What the air is like round the plant; the spot of the day, and today's from today on.
    WarmthOn round_plant(home::PlantId plant) const
    {
        return [this, plant](Date date) {
            const auto spot = history_.spot_on(plant, std::min(date, today_));
            constexpr double kRoomDegrees = 20.0; // A plant without a spot: an ordinary room.
            return spot ? warmth_(*spot, date)
                        : DayWarmth{Celsius::from_degrees(kRoomDegrees), Celsius::from_degrees(kRoomDegrees)};
        };
    }

    std::vector<GenerationByStudy> generations(const plants::Pest& pest, Date since,
                                               const WarmthOn& air) const
    {
        std::vector<GenerationByStudy> found;
        for (const auto& phases : pest.generations()) {
            GenerationByStudy study{phases.front()->study, {}, {}, plants::ClockBasis::Published};
            for (const auto* phase : phases) {
                if (std::ranges::find(study.sources, phase->source) == study.sources.end()) {
                    study.sources.push_back(phase->source);
                }
                study.basis = std::max(study.basis, phase->basis);
            }
            study.through = clock_through(phases, pest.upper_limit, since, air);
            found.push_back(std::move(study));
        }
        return found;
    }

    /// The latest of the studies; nullopt where one of them never gets there.
    static std::optional<Date> latest(const std::vector<GenerationByStudy>& generations)
    {
        std::optional<Date> last;
        for (const auto& study : generations) {
            if (!study.through) {
                return std::nullopt;
            }
            last = last ? std::max(*last, *study.through) : *study.through;
        }
        return last;
    }

    /// The episode of the plant that runs today or the last one that ended.
    struct Episode {
        Date first_find;
        Date last_find;
        std::optional<Date> cleared;
    };
    std::vector<Episode> episodes(home::PlantId plant, const PestOfHistory& pest) const
    {
        std::vector<Episode> found;
        const auto air = round_plant(plant);
        for (const auto& find : history_.finds(plant, pest)) {
            if (!found.empty() && !(found.back().cleared && *found.back().cleared <= find.date)) {
                found.back().last_find = find.date;
            } else {
                found.push_back({find.date, find.date, {}});
            }
            auto& episode = found.back();
            const auto through = latest(generations(*pest.clock, episode.last_find, air));
            episode.cleared.reset();
            for (const auto look : history_.clean_looks(plant)) {
                if (through && look >= *through) {
                    episode.cleared = look;
                    break;
                }
            }
        }
        return found;
    }

    /// A clean look that ends suspicion, or the days that are still wanted.
    struct Release {
        std::optional<Date> released;
        Date next_look;
        Date end; ///< Earliest day of being back.
        int clean_looks;
    };
    Release release(home::PlantId plant, const plants::Pest& pest, Date since) const
    {
        const auto air = round_plant(plant);
        const auto least = since + Days{kLeastDaysApart};
        std::optional<Date> first;
        Release result{{}, std::max(since, today_), least, 0};
        for (const auto look : history_.clean_looks(plant)) {
            if (look <= since) {
                continue;
            }
            ++result.clean_looks;
            if (!first) {
                first = look;
                continue;
            }
            const auto second = *first + Days{days_between_treatments(pest, *first, air)};
            if (look >= second && look >= least) {
                result.released = look;
                return result;
            }
        }
        const auto base = first ? *first : std::max(since + Days{1}, today_);
        const auto second = base + Days{days_between_treatments(pest, base, air)};
        result.end = std::max(least, second);
        result.next_look = first ? result.end : base;
        return result;
    }

    Course infested(home::PlantId plant, const PestOfHistory& pest, const Episode& episode) const
    {
        const auto air = round_plant(plant);
        Course course = begin(plant, pest, PestState::Infested, episode.first_find, episode.last_find);
        course.generations = generations(*pest.clock, episode.last_find, air);
        course.clear_not_before = latest(course.generations);
        course.treatments = history_.treatments_after(plant, episode.last_find);
        for (const auto look : history_.clean_looks(plant)) {
            course.clean_looks += look > episode.last_find ? 1 : 0;
        }
        course.discard_is_a_choice = history_.amount(plant, pest, episode.last_find) == PestAmount::Heavy;
        treatments(course, air);
        looks_until(course, air,
                    course.clear_not_before.value_or(today_ + Days{kLongestClockDays}),
                    course.clear_not_before.has_value());
        return course;
    }

    Course suspect(home::PlantId plant, const PestOfHistory& pest, Date contact, const Release& ends) const
    {
        Course course = begin(plant, pest, PestState::Suspect, contact, contact);
        course.clean_looks = ends.clean_looks;
        course.clear_not_before = ends.end;
        if (ends.next_look < ends.end) {
            add(course, CourseAct::Inspect, ends.next_look, ends.next_look + Days{2});
        }
        add(course, CourseAct::LastInspection, ends.end, ends.end + Days{14});
        return course;
    }

private:
    Course begin(home::PlantId plant, const PestOfHistory& pest, PestState state, Date started,
                 Date last) const
    {
        const auto air = round_plant(plant);
        Course course{.plant = plant,
                      .pest = pest.clock,
                      .pest_is_assumed = !pest.is_known,
                      .state = state,
                      .started = started,
                      .last_find = last,
                      .generations = {},
                      .clear_not_before = {},
                      .clock_stands_today = true,
                      .days_at_20_degrees = days_at_20(*pest.clock),
                      .treatments = 0,
                      .clean_looks = 0,
                      .gap_days = days_between_treatments(*pest.clock, today_, air),
                      .discard_is_a_choice = false,
                      .released_early = history_.released_after(plant, last),
                      .steps = {}};
        for (const auto& phases : pest.clock->generations()) {
            if (clock_runs(phases, pest.clock->upper_limit, air(today_))) {
                course.clock_stands_today = false;
            }
        }
        if (!history_.is_apart_on(plant, today_)) {
            add(course, CourseAct::SetApart, std::max(last, started), today_);
        }
        return course;
    }

    int days_at_20(const plants::Pest& pest) const
    {
        const auto room = [](Date) {
            return DayWarmth{Celsius::from_degrees(20.0), Celsius::from_degrees(20.0)};
        };
        const auto end = latest(generations(pest, today_, room));
        return end ? calendar::days_between(today_, *end) : 0;
    }

    void add(Course& course, CourseAct act, Date date, Date latest) const
    {
        const int minutes = act == CourseAct::Treat      ? kTreatMinutes
                            : act == CourseAct::SetApart ? kSetApartMinutes
                                                         : kInspectMinutes;
        course.steps.push_back(
            {date, std::max(date, latest), course.plant, act, course.pest, course.state, minutes});
    }

    void treatments(Course& course, const WarmthOn& air) const
    {
        auto next = course.last_find;
        if (const auto last = history_.last_treatment(course.plant, course.last_find)) {
            next = *last + Days{days_between_treatments(*course.pest, *last, air)};
        }
        for (int done = course.treatments; done < kTreatmentsAfterFind; ++done) {
            // The next one counts from the day on which an overdue one is made.
            const auto made = std::max(next, today_);
            add(course, CourseAct::Treat, next, made);
            next = made + Days{days_between_treatments(*course.pest, made, air)};
        }
    }

    void looks_until(Course& course, const WarmthOn& air, Date end, bool end_is_known) const
    {
        auto last = course.last_find;
        for (const auto look : history_.clean_looks(course.plant)) {
            last = std::max(last, look);
        }
        auto next = last + Days{days_between_treatments(*course.pest, last, air)};
        while (next < end && course.steps.size() < kMostSteps) {
            const auto gap = days_between_treatments(*course.pest, std::max(next, today_), air);
            add(course, CourseAct::Inspect, next, next + Days{gap / 2});
            next = std::max(next, today_) + Days{gap};
        }
        if (end_is_known) {
            add(course, CourseAct::LastInspection, end, end + Days{14});
        }
    }

    const PestHistory& history_;
    const SpotWarmth& warmth_;
    Date today_;
};

/// The worse of two conditions of one plant.
void take_worse(PlantCondition& kept, const PlantCondition& other)
{
    const bool first_word = kept.state == PestState::Clean && other.state == PestState::Clean &&
                            kept.reason == PestReason::NothingFound;
    if (other.state > kept.state || first_word) {
        kept = other;
    }
}

class IsolationNeeds {
public:
    IsolationNeeds(const home::Household& household, const PestHistory& history, const SpotWarmth& warmth,
              Date today, const std::vector<PlantCondition>& conditions)
        : household_(household), history_(history), warmth_(warmth), today_(today), conditions_(conditions)
    {
    }

    IsolationNeed need_of(const Course& course)
    {
        IsolationNeed need{course.plant,
                           course.state,
                           course.started,
                           course.clear_not_before,
                           history_.is_apart_on(course.plant, today_),
                           {},
                           false,
                           0};
        if (need.is_kept) {
            need.place = history_.spot_on(course.plant, today_);
            const auto* spot = need.place ? household_.spot(*need.place) : nullptr;
            need.place_is_apart = spot != nullptr && spot->apart;
            need.contacts = need.place ? clean_at(*need.place, course.plant) : 0;
            return need;
        }
        const home::Spot* best = nullptr;
        for (const auto& spot : household_.spots) {
            if (!fits(course.plant, spot)) {
                continue;
            }
            if (best == nullptr || rank(spot, course.plant) < rank(*best, course.plant)) {
                best = &spot;
            }
        }
        if (best != nullptr) {
            need.place = best->id;
            need.place_is_apart = best->apart;
            need.contacts = clean_at(best->id, course.plant);
            promised_.push_back({course.plant, best->id});
        }
        return need;
    }

private:
    int clean_at(home::SpotId spot, home::PlantId except) const
    {
        int count = 0;
        for (const auto& condition : conditions_) {
            count += condition.plant != except && condition.state == PestState::Clean &&
                             history_.spot_on(condition.plant, today_) == spot
                         ? 1
                         : 0;
        }
        return count;
    }
    /// Apart first, then fewest clean plants, then the spot one comes to last.
    std::array<int, 3> rank(const home::Spot& spot, home::PlantId plant) const
    {
        const int contacts = clean_at(spot.id, plant);
        return {spot.apart && contacts == 0 ? 0 : 1, contacts, -spot.walking_order};
    }
    bool fits(home::PlantId id, const home::Spot& spot) const
    {
        const auto& plant = *household_.plant(id);
        if (plant.pinned_spot && *plant.pinned_spot != spot.id) {
            return false;
        }
        if (plant.hazardous && spot.in_reach) {
            return false;
        }
        if (warmth_(spot.id, today_).low <= plant.lines.damage_begins) {
            return false;
        }
        int taken = 0;
        for (const auto& condition : conditions_) {
            const bool going = std::ranges::any_of(
                promised_, [&](const auto& promise) { return promise.first == condition.plant; });
            taken += condition.plant != id && !going &&
                             history_.spot_on(condition.plant, today_) == spot.id
                         ? 1
                         : 0;
        }
        for (const auto& promise : promised_) {
            taken += promise.second == spot.id ? 1 : 0;
        }
        return taken < spot.capacity;
    }

    const home::Household& household_;
    const PestHistory& history_;
    const SpotWarmth& warmth_;
    Date today_;
    const std::vector<PlantCondition>& conditions_;
    std::vector<std::pair<home::PlantId, home::SpotId>> promised_;
};

void remark_on_isolation(const home::Household& household, PestCoursePlan& plan)
{
    const bool any_apart =
        std::ranges::any_of(household.spots, [](const home::Spot& spot) { return spot.apart; });
    const auto unmet = [](const IsolationNeed& need) { return !need.is_kept && !need.place_is_apart; };
    if (std::ranges::any_of(plan.isolation, unmet)) {
        plan.remarks.push_back(
            {any_apart ? CourseRemarkKind::SpotsApartFull : CourseRemarkKind::NoSpotApart, {}, ""});
    }
    for (const auto& need : plan.isolation) {
        if (need.is_kept && need.contacts > 0) {
            plan.remarks.push_back({CourseRemarkKind::OnlySharedSetApart, need.plant, ""});
        }
    }
}

} // namespace

std::string_view to_string(PestState state)
{
    constexpr std::array<std::string_view, 3> kWords{"clean", "suspect", "infested"};
    return kWords[static_cast<std::size_t>(state)];
}

std::string_view to_string(CourseAct act)
{
    constexpr std::array<std::string_view, 4> kWords{"set_apart", "treat", "inspect", "last_inspection"};
    return kWords[static_cast<std::size_t>(act)];
}

PestCoursePlan plan_pest_courses(const home::Household& household, std::span<const home::Event> events,
                                 const SpotWarmth& warmth, Date today)
{
    PestCoursePlan plan{today, {}, {}, {}, {}};
    const PestHistory history{household, events, today};
    const CourseMaker maker{history, warmth, today};
    for (const auto plant : history.living()) {
        plan.plants.push_back({plant, PestState::Clean, PestReason::NothingFound, today, {}, nullptr});
    }
    const auto condition_of = [&](home::PlantId plant) -> PlantCondition& {
        return *std::ranges::find(plan.plants, plant, &PlantCondition::plant);
    };
    for (const auto& pest : history.pests()) {
        const auto* named = pest.is_known ? pest.clock : nullptr;
        std::vector<PestHistory::Source> sources;
        std::set<home::PlantId> infested;
        for (const auto plant : history.living_or_gone()) {
            for (const auto& episode : maker.episodes(plant, pest)) {
                sources.push_back({plant, episode.first_find - Days{kLeastDaysApart},
                                   episode.cleared ? episode.last_find : today});
                if (!history.is_living(plant)) {
                    continue;
                }
                if (episode.cleared) {
                    infested.erase(plant);
                    take_worse(condition_of(plant), {plant, PestState::Clean, PestReason::DeclaredClear,
                                                     *episode.cleared, {}, nullptr});
                } else {
                    infested.insert(plant);
                    take_worse(condition_of(plant), {plant, PestState::Infested, PestReason::Found,
                                                     episode.last_find, {}, named});
                    plan.courses.push_back(maker.infested(plant, pest, episode));
                }
            }
        }
        for (const auto& contact : history.contacts(pest, sources)) {
            // What a plant has a course for already needs none by precaution.
            if (infested.contains(contact.plant) ||
                (pest.is_precaution &&
                 std::ranges::find(plan.courses, contact.plant, &Course::plant) != plan.courses.end())) {
                continue;
            }
            const auto release = maker.release(contact.plant, *pest.clock, contact.last);
            auto& condition = condition_of(contact.plant);
            if (release.released) {
                take_worse(condition, {contact.plant, PestState::Clean, PestReason::TimeApartOver,
                                       *release.released, {}, nullptr});
                continue;
            }
            take_worse(condition, {contact.plant, PestState::Suspect, contact.reason, contact.last,
                                   contact.from, named});
            plan.courses.push_back(maker.suspect(contact.plant, pest, contact.last, release));
        }
        if (!pest.is_known && !pest.is_precaution) {
            plan.remarks.push_back({CourseRemarkKind::PestNotKnown, {}, pest.as_written});
        } else if (pest.is_known && !infested.empty()) {
            if (pest.clock->flies()) {
                plan.remarks.push_back({CourseRemarkKind::FliesAbout, {}, pest.clock->name});
            }
            if (pest.clock->botanical_name == "Bemisia tabaci") {
                plan.remarks.push_back({CourseRemarkKind::MustBeReported, {}, pest.clock->name});
            }
        }
    }
    for (auto& course : plan.courses) {
        std::ranges::stable_sort(course.steps, {}, &CourseStep::date);
    }
    std::ranges::stable_sort(plan.courses, [](const Course& a, const Course& b) {
        return a.state != b.state ? a.state > b.state : a.plant < b.plant;
    });
    IsolationNeeds isolation{household, history, warmth, today, plan.plants};
    for (const auto& course : plan.courses) {
        const auto seen = std::ranges::find(plan.isolation, course.plant, &IsolationNeed::plant);
        if (seen == plan.isolation.end()) {
            plan.isolation.push_back(isolation.need_of(course));
        } else if (!course.clear_not_before || (seen->until && *course.clear_not_before > *seen->until)) {
            seen->until = course.clear_not_before;
        }
    }
    for (const auto plant : history.living()) {
        if (!history.spot_on(plant, today) && condition_of(plant).state != PestState::Clean) {
            plan.remarks.push_back({CourseRemarkKind::PlantWithoutSpot, plant, ""});
        }
    }
    remark_on_isolation(household, plan);
    return plan;
}

std::vector<CourseStep> due_on(const PestCoursePlan& plan, Date date)
{
    std::vector<CourseStep> due;
    for (const auto& course : plan.courses) {
        for (const auto& step : course.steps) {
            if (step.date == date || (date == plan.today && step.date < date)) {
                due.push_back(step);
            }
        }
    }
    return due;
}

} // namespace lathhouse::plan
