#pragma once

#include "core/home/spot_climate.h"
#include "core/plan/move_problem.h"
#include "core/plan/year_plan.h"

#include <utility>

namespace lathhouse::plan {

class LightYear;
class StressOfYear;

/// A household's year as a move problem, with what is needed to tell its solution in words.
class HouseholdMoves {
public:
    /// All that is given must outlive it.
    HouseholdMoves(const home::Household& household, const climate::PlaceClimate& climate,
                   const ColdChances& chances, calendar::Date from, Probability risk,
                   const PlanWishes& wishes);

    const MoveProblem& problem() const { return problem_; }
    const home::Household& household() const { return *household_; }
    const ColdChances& chances() const { return *chances_; }
    Probability risk() const { return risk_; }
    calendar::Date date(std::size_t night) const { return from_ + calendar::Days{static_cast<int>(night)}; }
    /// The spots of the problem that the household has come first; what follows is filled up or "nowhere".
    std::size_t real_spots() const { return spots_.size(); }
    const home::Spot& spot(std::size_t of_problem) const { return household_->spots[spots_[of_problem]]; }
    /// Whether the cold lines allow the plant that evening at that spot (of the problem); always indoors.
    bool allowed(std::size_t plant, std::size_t spot, std::size_t night) const;
    /// Where a hand keeps the plant that night: the pin entered last, then the one for always.
    std::optional<home::SpotId> pinned(std::size_t plant, calendar::Date evening) const;
    /// What pests bid where the plant must stand apart that night; else nullptr.
    const Isolation* isolated(std::size_t plant, calendar::Date evening) const;
    /// Why the plant is to rest that day; nullptr where it is not.
    const Rest* resting(std::size_t plant, calendar::Date day) const;

    /// Whether they bid that of any plant.
    bool some_isolated(calendar::Date evening) const;
    /// What a night at a spot costs a clean plant on account of pests there; 0 where none are about.
    float price_of_pests(std::size_t plant, std::size_t spot, std::size_t night) const
    {
        const auto evening = date(night);
        return isolated(plant, evening) == nullptr ? beside_pests(nullptr, plant, spot, evening) : 0.0F;
    }

    /// The path with nights spent "nowhere" put at the least bad real spot: before all else within the cold
    /// lines, then out of reach, then where the plant is best off.
    MovePath at_real_spots(std::size_t plant, const MovePath& path) const;

private:
    void make_zones(const std::vector<LightYear>& light);
    void fill_alike(const StressOfYear& stress);
    void fill_plant(std::size_t plant);
    void keep_to_accepted(std::size_t plant);
    /// Whether a plant to be isolated can stay where it stands that night: it is carried to no clean plants then.
    bool keeps_place(std::size_t plant, std::size_t night) const;
    /// Whether a first night out on that evening would have the plant hardened before it is clear or has rested.
    bool hardens_too_early(std::size_t plant, const home::Spot& spot, calendar::Date evening) const;
    /// Price of a night that is too cool for a plant from a tray which is not old enough to be planted out.
    float too_cool_for_young(std::size_t plant, std::size_t spot, calendar::Date evening) const;
    /// Price of a night at a spot on account of pests; 0 where none are about.
    float beside_pests(const Isolation* isolated, std::size_t plant, std::size_t spot, calendar::Date evening) const;
    /// What a plant feels at a spot that night, closed or not.
    float felt(std::size_t plant, std::size_t night, std::size_t spot) const
    {
        return stress_[alike_[plant]][night * spots_.size() + spot];
    }
    /// Whether a spot is closed to the plant that night for another reason than cold. some_isolated: whether
    /// any plant is to stand apart that night.
    bool closed(const Isolation* isolated, bool some_isolated, std::size_t plant, std::size_t spot,
                std::size_t night) const;

    const home::Household* household_;
    const ColdChances* chances_;
    calendar::Date from_;
    Probability risk_;
    const PlanWishes* wishes_;
    bool some_spot_apart_ = false;
    std::optional<home::SpotClimate> usual_; ///< Only where a plant is young.
    std::vector<std::pair<std::size_t, Isolation>> pests_at_; ///< Spots (of the problem) that are not apart, where they stand.
    std::vector<std::size_t> spots_;         ///< Of the problem, as places in the household's list.
    std::vector<std::size_t> alike_; ///< [plant]: plants of the same number have equal needs and lines.
    std::vector<std::vector<char>> allowed_; ///< [alike x spots + spot][night]; empty indoors.
    std::vector<std::vector<float>> stress_; ///< [alike][night x spots + spot], closed or not.
    MoveProblem problem_;
};

/// Spot and reason of every night.
PlantYear tell_year(const HouseholdMoves& moves, std::size_t plant, const std::vector<MovePath>& paths);
/// What the plan does not keep to, a row for each run of nights.
std::vector<Breach> breaches_of(const HouseholdMoves& moves, const std::vector<MovePath>& paths);
/// Why plants stay indoors the whole year, where there is a spot outdoors.
std::vector<Refusal> refusals_of(const HouseholdMoves& moves, const std::vector<MovePath>& paths);

} // namespace lathhouse::plan
