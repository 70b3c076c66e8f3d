#pragma once

#include "app/models/year_data.h"
#include "app/models/year_words.h"
#include "app/sheet/paper.h"

#include "core/plan/round_parts.h"

#include <string>
#include <vector>

namespace lathhouse::sheet {

/// The rounds of some days, for carrying about.
struct RoundSheetFacts {
    struct Line {
        plan::PestState state;
        bool hygiene;
        std::optional<std::size_t> spot; ///< Place among the household's.
        QString plant; ///< Empty where none is concerned.
        QString what;
        QString why;
        std::vector<QString> cautions;
        QString can_wait; ///< Empty where it cannot.
        int minutes;
    };
    struct Day {
        calendar::Date date;
        std::vector<Line> lines;
    };
    QString household;
    std::vector<models::YearSpot> spots; ///< In the household's order.
    std::vector<Day> days;
    bool has_forecast; ///< Of tonight.
};

RoundSheetFacts round_sheet_facts(const plan::HouseholdFacts& facts, calendar::Date today, int days,
                                  const models::YearWords& words);

/// Day by day, within a day by class and spot in walking order, with the washing between the classes, a box to tick
/// for each and the cautions under their tasks.
Pages round_sheet(const RoundSheetFacts& facts, const models::YearWords& words, Paper paper);

} // namespace lathhouse::sheet
