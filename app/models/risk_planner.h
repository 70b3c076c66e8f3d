#pragma once

#include "app/models/year_data.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <optional>
#include <vector>

namespace lathhouse::models {

/// Solves the plan of a year at the stops of the risk, in a thread of its own: the one that is wanted first, the others while
/// nothing is asked for, so that the slider finds them ready.
class RiskPlanner : public QObject {
    Q_OBJECT

public:
    RiskPlanner(YearSolver solver, QObject* parent);
    ~RiskPlanner() override;

    bool planning() const { return planning_; }
    /// The plan at that stop is wanted: `solved` tells it, at once where it is known.
    void want(int stop);
    /// Another year, whose plan at that stop is known and wanted; nothing is told.
    void replace(YearSolver solver, SolvedYear solved, int stop);
    /// Those that were solved are of no use any more; wanted is what it was.
    void forget();
    /// Begins on the others once nothing was asked for for a while.
    void look_ahead_when_idle();

signals:
    /// The plan that is wanted; `planning` is over.
    void solved(const lathhouse::models::SolvedYear& plan);
    void planningChanged();

private:
    void start(int stop);
    void keep(SolvedYear solved, int stop);
    void tell(const SolvedYear& plan);
    void look_ahead();

    YearSolver solver_;
    std::vector<std::optional<SolvedYear>> known_; ///< For each stop.
    int wanted_ = 0;
    bool planning_ = false;
    int generation_ = 0; ///< Of the year; a plan of an older one is not taken.
    QTimer idle_;
    QThreadPool pool_;
};

} // namespace lathhouse::models
