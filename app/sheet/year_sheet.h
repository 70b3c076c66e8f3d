#pragma once

#include "app/models/row_order.h"
#include "app/models/seed_facts.h"
#include "app/models/year_data.h"
#include "app/models/year_words.h"
#include "app/sheet/paper.h"

#include <QString>

#include <vector>

namespace lathhouse::sheet {

/// What the sheet of the year shows; values only, so that a thread can make and draw it.
struct YearSheetFacts {
    /// A sowing still to come: its lot's name and the year's bar.
    struct Sowing {
        QString name;
        models::SowingBar bar;
    };
    models::YearData year;
    models::SolvedYear solved;
    Probability risk;
    std::vector<Sowing> sowings;
    models::RowOrder order = models::RowOrder::ByDateOut;
};

/// The year on as many pages as the plants need: bands of the nights above, plants and sowings below, and at the foot
/// of every page the keys, the sources and the risk in words. Rows are never split.
Pages year_sheet(YearSheetFacts facts, const models::YearWords& words, Paper paper);

} // namespace lathhouse::sheet
