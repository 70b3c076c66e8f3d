#include "core/home/demonstration_photos.h"

#include "core/calendar/day_of_year.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

namespace lathhouse::home {
namespace {

using calendar::Date;
using calendar::Days;
using photo::DrawnForm;

constexpr PlantId kRepotted = 12;     ///< The peace lily.
constexpr double kRimBefore = 15.5; ///< Centimetres, of its pot before it was repotted.

/// How a plant of the household that was thought out is drawn. All figures are invented.
struct Portrait {
    PlantId plant;
    DrawnForm form;
    int leaves;
    double height_cm;
    double leaf_cm;
    double rim_cm;
    double frame_cm;
    int flowers;
};
constexpr std::array<Portrait, 14> kPortraits{{{1, DrawnForm::Tree, 130, 118, 8, 26, 175, 0},
                                               {2, DrawnForm::Bush, 46, 96, 20, 28, 190, 0},
                                               {3, DrawnForm::Tree, 62, 54, 7, 25, 140, 0},
                                               {4, DrawnForm::Tree, 190, 88, 4, 30, 150, 0},
                                               {5, DrawnForm::Bush, 70, 61, 8, 24, 130, 5},
                                               {6, DrawnForm::Bush, 70, 30, 5, 21, 80, 0},
                                               {7, DrawnForm::Arching, 26, 18, 3, 15, 70, 6},
                                               {8, DrawnForm::Bush, 34, 21, 6, 17, 75, 4},
                                               {9, DrawnForm::Bush, 48, 40, 5, 18, 85, 8},
                                               {10, DrawnForm::Arching, 6, 24, 6, 12, 75, 3},
                                               {11, DrawnForm::Blades, 12, 62, 6, 20, 105, 0},
                                               {12, DrawnForm::Arching, 26, 48, 7, 19, 95, 0},
                                               {13, DrawnForm::Bush, 90, 72, 5, 25, 170, 12},
                                               {14, DrawnForm::Bush, 160, 39, 3, 20, 95, 0}}};

/// A value that the journal has now and then, on any day between.
class Course {
public:
    Course(const Story& story, PlantId plant, MeasurementKind kind)
    {
        for (const auto& one : story.measurements) {
            if (one.plant == plant && one.kind == kind) {
                points_.emplace_back(one.measured, one.value());
            }
        }
    }
    std::optional<double> on(Date date) const
    {
        if (points_.empty()) {
            return std::nullopt;
        }
        const auto after = std::ranges::find_if(points_, [&](const auto& point) { return point.first >= date; });
        if (after == points_.begin() || after == points_.end()) {
            return after == points_.end() ? points_.back().second : after->second;
        }
        const auto before = std::prev(after);
        const double whole = calendar::days_between(before->first, after->first);
        const double part = calendar::days_between(before->first, date);
        return whole <= 0.0 ? after->second : std::lerp(before->second, after->second, part / whole);
    }

private:
    std::vector<std::pair<Date, double>> points_;
};

class Photographer {
public:
    Photographer(const DemonstrationOptions& options, const Demonstration& made, const Story& story)
        : options_(options), made_(made), story_(story),
          begin_(calendar::DayOfYear::of(options.today).in_year(options.today.year() - options.years))
    {
    }

    std::vector<DemonstrationPhoto> told()
    {
        if (options_.plants || options_.spots) {
            return {};
        }
        for (const auto& portrait : kPortraits) {
            const auto drift = drift_on(portrait.plant);
            if (drift) {
                for (const int day : {-27, -6, 3, 8, 15, 22, 29, 36, 43, 57, 71, 92, 120}) {
                    take(portrait, *drift + Days{day}, drift, true);
                }
                for (int back = 1; back <= 8; ++back) {
                    take(portrait, *drift - Days{27 + 70 * back}, drift, true);
                }
                for (int on = 1; on <= 8; ++on) {
                    take(portrait, *drift + Days{120 + 42 * on}, drift, true);
                }
            } else {
                const int days = calendar::days_between(begin_, options_.today);
                for (const int part : {2, 8}) {
                    take(portrait, begin_ + Days{days * part / 10 + 3 * portrait.plant}, drift, false);
                }
            }
        }
        before_and_after_repotting();
        sort();
        return std::move(photos_);
    }

    /// More of every plant in turn, spread over the journal.
    std::vector<DemonstrationPhoto> more(std::vector<DemonstrationPhoto> told, std::size_t count)
    {
        photos_ = std::move(told);
        const auto& plants = made_.household.plants;
        const auto missing = count - std::min(count, photos_.size());
        const int days = std::max(1, calendar::days_between(begin_, options_.today));
        for (std::size_t number = 0; number < missing && !plants.empty(); ++number) {
            const auto& plant = plants[number % plants.size()];
            const auto known = std::ranges::find(kPortraits, plant.id, &Portrait::plant);
            const auto seed = static_cast<int>(number);
            const bool own = known != kPortraits.end() && !options_.plants && !options_.spots;
            const Portrait portrait = own ? *known
                                          : Portrait{plant.id, static_cast<DrawnForm>(plant.id % 4), 12 + plant.id % 50,
                                                     20.0 + plant.id % 60, 4.0 + plant.id % 5, 14.0 + plant.id % 12,
                                                     110.0, plant.id % 3};
            take(portrait, begin_ + Days{static_cast<int>(static_cast<double>(days) * seed / static_cast<double>(missing))},
                 drift_on(plant.id), false);
            // So that no two are alike, whatever the day.
            photos_.back().drawn.shift_cm += 0.01 * seed;
            photos_.back().name = "extra-" + std::to_string(seed) + ".jpg";
            photos_.back().time = std::chrono::minutes{8 * 60 + seed % 600};
        }
        sort();
        return std::move(photos_);
    }

private:
    /// The plant that was repotted, before and after: taken last, so that all others stay what they are without them.
    void before_and_after_repotting()
    {
        const auto repotted = last_repotting(options_.today);
        const auto portrait = std::ranges::find(kPortraits, kRepotted, &Portrait::plant);
        for (const int day : {-150, -80, -20, -3, 10, 24, 45, 80, 120, 160, 210}) {
            if (repotted && portrait != kPortraits.end()) {
                take(*portrait, *repotted + Days{day}, std::nullopt, false);
            }
        }
    }
    std::optional<Date> last_repotting(Date until) const
    {
        std::optional<Date> found;
        for (const auto& event : made_.history) {
            if (event.plant == kRepotted && event.kind == EventKind::Repotted && event.happened <= until) {
                found = event.happened;
            }
        }
        return found;
    }
    std::optional<Date> drift_on(PlantId plant) const
    {
        for (const auto& event : story_.events) {
            if (event.plant == plant && event.kind == EventKind::ChemicalDamage) {
                return event.happened;
            }
        }
        return std::nullopt;
    }
    bool outdoors_on(PlantId plant, Date date) const
    {
        std::optional<SpotId> spot;
        for (const auto& event : made_.history) {
            if (event.plant == plant && event.kind == EventKind::Moved && event.happened <= date) {
                spot = event.spot;
            }
        }
        const auto* found = spot ? made_.household.spot(*spot) : nullptr;
        return found != nullptr && is_outdoors(found->kind);
    }
    bool in_its_small_pot(PlantId plant, Date date) const
    {
        const auto repotted = plant == kRepotted ? last_repotting(options_.today) : std::nullopt;
        return repotted && date < *repotted;
    }
    static std::string file_name(const std::string& plant)
    {
        std::string name;
        for (const char letter : plant) {
            const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
            const bool capital = letter >= 'A' && letter <= 'Z';
            name += plain ? letter : capital ? static_cast<char>(letter - 'A' + 'a') : '-';
        }
        return name;
    }
    const Course& course(PlantId plant, MeasurementKind kind)
    {
        return courses_.try_emplace({plant, kind}, story_, plant, kind).first->second;
    }

    void take(const Portrait& portrait, Date date, std::optional<Date> drift, bool measured)
    {
        const auto* plant = made_.household.plant(portrait.plant);
        if (plant == nullptr || date < begin_ || date > options_.today) {
            return;
        }
        const int number = static_cast<int>(photos_.size());
        DemonstrationPhoto one{.plant = portrait.plant,
                               .taken = date,
                               .time = std::chrono::minutes{10 * 60 + (number * 37) % 180},
                               .drawn = {},
                               .name = file_name(plant->name) + "-" + calendar::to_text(date) + ".jpg",
                               .measured = measured,
                               .reach_cm = portrait.frame_cm * 0.62};
        one.drawn = {.form = portrait.form,
                     .leaves = static_cast<int>(std::lround(
                         course(portrait.plant, MeasurementKind::Leaves).on(date).value_or(portrait.leaves))),
                     .yellow_share = course(portrait.plant, MeasurementKind::YellowShare).on(date).value_or(0.0),
                     .cupped_share = 0.0,
                     .height_cm = course(portrait.plant, MeasurementKind::Height).on(date).value_or(portrait.height_cm),
                     .leaf_cm = portrait.leaf_cm,
                     .rim_cm = in_its_small_pot(portrait.plant, date) ? kRimBefore : portrait.rim_cm,
                     .frame_cm = portrait.frame_cm,
                     .outdoors = outdoors_on(portrait.plant, date),
                     .shift_cm = 0.4 * (number % 5 - 2),
                     .light = 0.94 + 0.02 * (number % 5),
                     .flowers = portrait.flowers,
                     .seed = static_cast<std::uint32_t>(portrait.plant) * 101U + options_.seed};
        if (drift && date > *drift) {
            const int days = calendar::days_between(*drift, date);
            one.drawn.cupped_share = days <= 28 ? 0.3 : std::max(0.0, 0.3 * (85 - days) / 57.0);
            one.drawn.flowers = days < 60 ? 0 : one.drawn.flowers;
        }
        photos_.push_back(std::move(one));
    }

    void sort()
    {
        std::ranges::stable_sort(photos_, {}, [](const DemonstrationPhoto& photo) {
            return std::pair{photo.taken, photo.time};
        });
    }

    const DemonstrationOptions& options_;
    const Demonstration& made_;
    const Story& story_;
    Date begin_;
    std::map<std::pair<PlantId, MeasurementKind>, Course> courses_;
    std::vector<DemonstrationPhoto> photos_;
};

} // namespace

std::vector<DemonstrationPhoto> demonstration_photos(const DemonstrationOptions& options, const Demonstration& made,
                                                     const Story& story, std::optional<int> count)
{
    auto told = Photographer{options, made, story}.told();
    if (!count) {
        return told;
    }
    const auto wanted = static_cast<std::size_t>(std::max(0, *count));
    if (wanted >= told.size()) {
        return Photographer{options, made, story}.more(std::move(told), wanted);
    }
    std::vector<DemonstrationPhoto> some; // Spread over the story.
    for (std::size_t at = 0; at < wanted; ++at) {
        some.push_back(std::move(told[at * told.size() / wanted]));
    }
    return some;
}

} // namespace lathhouse::home
