#pragma once

#include "app/models/round_rows.h"

#include <QCoreApplication>
#include <QString>

#include <set>
#include <vector>

namespace lathhouse::models {

/// Which rows of the round are folded away: beyond the sixth of a class those that are due today or later, can wait, carry
/// no caution and are not done. What is dangerous or overdue is always in sight, and one row alone is not folded, since the
/// words on it would take its place.
class RoundFold {
    Q_DECLARE_TR_FUNCTIONS(RoundFold)

public:
    void renew(const std::vector<RoundRow>& rows, calendar::Date today);
    /// Shows all of a class from the next renewal on; false where it does already.
    bool open(plan::PestState state) { return opened_.insert(state).second; }
    bool hides(std::size_t row) const { return row < folded_.size() && folded_[row]; }
    /// "3 more: Lamp shelf" for the last row that is shown of a class of which some are hidden; else empty.
    QString more(const std::vector<RoundRow>& rows, std::size_t row) const;

private:
    std::set<plan::PestState> opened_;
    std::vector<bool> folded_; ///< For each row.
};

} // namespace lathhouse::models
