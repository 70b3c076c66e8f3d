// How the plan of the page Year is solved: the risk asked for first, the others while nothing is asked for.
#include "app/models/risk_stops.h"
#include "app/models/year_model.h"

#include <QTimer>

#include <cstdlib>
#include <utility>

namespace lathhouse::models {

void YearModel::solve()
{
    pool_.clear(); // What is being solved goes on, what waits is not wanted any more.
    if (const auto& known = known_[static_cast<std::size_t>(risk_stop_)]) {
        take(*known);
        return;
    }
    if (!planning_) {
        planning_ = true;
        emit planningChanged();
    }
    start_solving(risk_stop_);
}

void YearModel::start_solving(int stop)
{
    pool_.start([this, stop, solver = solver_, accepted = risk_at(stop), generation = generation_, said = said_again_] {
        SolvedYear solved = solver(accepted);
        QMetaObject::invokeMethod(
            this,
            [this, stop, generation, said, result = std::move(solved)]() mutable {
                if (generation == generation_) {
                    keep(std::move(result), stop, said);
                }
            },
            Qt::QueuedConnection);
    });
}

void YearModel::keep(SolvedYear solved, int stop, int said)
{
    if (said != said_again_) {
        return;
    }
    auto& known = known_[static_cast<std::size_t>(stop)];
    known = std::move(solved);
    if (planning_ && stop == risk_stop_) {
        take(*known);
    } else if (!planning_) {
        look_ahead();
    }
}

void YearModel::look_ahead()
{
    std::optional<int> nearest;
    for (int stop = 0; stop < static_cast<int>(known_.size()); ++stop) {
        if (!known_[static_cast<std::size_t>(stop)] &&
            (!nearest || std::abs(stop - risk_stop_) < std::abs(*nearest - risk_stop_))) {
            nearest = stop;
        }
    }
    if (nearest && !planning_) {
        start_solving(*nearest);
    }
}

void YearModel::take(SolvedYear solved)
{
    const bool first_plan = solved_.stays.empty();
    if (first_plan) {
        plants_.begin_order();
    }
    solved_ = std::move(solved);
    if (first_plan) {
        order_ = order_of_going_out(year_, solved_);
        plants_.end_order();
    } else {
        plants_.dates_moved();
    }
    if (planning_) {
        planning_ = false;
        emit planningChanged();
    }
    emit planChanged();
    emit datesChanged();
    cursor_.say();
    emit riskSpokenChanged();
    if (first_plan) {
        read_sowings();
    }
    look_ahead_when_idle();
}

void YearModel::look_ahead_when_idle()
{
    // Not before the plan is drawn, and not where the slider is still moving.
    constexpr int kIdle = 400;
    idle_->start(kIdle);
}

} // namespace lathhouse::models
