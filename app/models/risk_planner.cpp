#include "app/models/risk_planner.h"

#include "app/models/behind_window.h"
#include "app/models/risk_stops.h"

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <utility>

namespace lathhouse::models {

RiskPlanner::RiskPlanner(YearSolver solver, QObject* parent)
    : QObject(parent), solver_(std::move(solver)), known_(std::size(kRiskStops))
{
    pool_.setMaxThreadCount(1);
    idle_.setSingleShot(true);
    connect(&idle_, &QTimer::timeout, this, [this] {
        if (pool_.activeThreadCount() == 0) {
            look_ahead();
        }
    });
}

RiskPlanner::~RiskPlanner()
{
    pool_.clear();
    pool_.waitForDone();
}

void RiskPlanner::want(int stop)
{
    wanted_ = stop;
    pool_.clear(); // What is being solved goes on, what waits is not wanted any more.
    if (const auto& known = known_[static_cast<std::size_t>(stop)]) {
        tell(*known);
        return;
    }
    if (!planning_) {
        planning_ = true;
        emit planningChanged();
    }
    start(stop);
}

void RiskPlanner::start(int stop)
{
    pool_.start([this, stop, solver = solver_, accepted = risk_at(stop), generation = generation_] {
        stay_behind_window();
        SolvedYear solved = solver(accepted);
        QMetaObject::invokeMethod(
            this,
            [this, stop, generation, result = std::move(solved)]() mutable {
                if (generation == generation_) {
                    keep(std::move(result), stop);
                }
            },
            Qt::QueuedConnection);
    });
}

void RiskPlanner::keep(SolvedYear solved, int stop)
{
    auto& known = known_[static_cast<std::size_t>(stop)];
    known = std::move(solved);
    if (planning_ && stop == wanted_) {
        tell(*known);
    } else if (!planning_) {
        look_ahead();
    }
}

void RiskPlanner::tell(const SolvedYear& plan)
{
    const bool waited = std::exchange(planning_, false);
    emit solved(plan);
    if (waited) {
        emit planningChanged();
    }
    look_ahead_when_idle();
}

void RiskPlanner::replace(YearSolver solver, SolvedYear solved, int stop)
{
    pool_.clear();
    forget();
    solver_ = std::move(solver);
    wanted_ = stop;
    known_[static_cast<std::size_t>(stop)] = std::move(solved);
    planning_ = false;
}

void RiskPlanner::forget()
{
    ++generation_;
    std::ranges::fill(known_, std::nullopt);
}

void RiskPlanner::look_ahead()
{
    std::optional<int> nearest;
    for (int stop = 0; stop < static_cast<int>(known_.size()); ++stop) {
        if (!known_[static_cast<std::size_t>(stop)] &&
            (!nearest || std::abs(stop - wanted_) < std::abs(*nearest - wanted_))) {
            nearest = stop;
        }
    }
    if (nearest && !planning_) {
        start(*nearest);
    }
}

void RiskPlanner::look_ahead_when_idle()
{
    // Not before the plan is drawn, and not where the slider is still moving.
    constexpr int kIdle = 400;
    idle_.start(kIdle);
}

} // namespace lathhouse::models
