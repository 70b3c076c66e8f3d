#pragma once

#include "app/models/row_order.h"
#include "core/home/household.h"
#include "core/plan/round_parts.h"

namespace lathhouse::sheet {

enum class Paper { A4, Letter };
enum class SheetKind { Year, Round, Plant, Seeds };

/// What is to be printed. Knows no Qt, so that the command line can ask.
struct SheetWish {
    SheetKind kind = SheetKind::Year;
    Paper paper = Paper::A4;
    home::PlantId plant = 0;                  ///< Plant only.
    int days = 7;                             ///< Round only: from today.
    Probability risk = plan::kUsualRisk; ///< Year and Seeds.
    models::RowOrder order = models::RowOrder::ByDateOut; ///< Year only.
};

} // namespace lathhouse::sheet
