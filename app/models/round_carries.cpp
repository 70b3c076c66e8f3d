// What is carried today, for the page Round and for the rows of the year.
#include "app/models/round_model.h"

#include <algorithm>

namespace lathhouse::models {

QVariantMap RoundModel::carriesDue() const
{
    const auto words = [](const RoundRow& row) -> QString {
        if (row.is_carry_in()) {
            return tr("carry in this evening");
        }
        if (std::holds_alternative<plan::PlainMove>(row.task.matter)) {
            return tr("carry to its new spot today");
        }
        const auto* step = std::get_if<plan::LadderStep>(&row.task.matter);
        if (step == nullptr) {
            return {};
        }
        switch (step->item.kind) {
        case plan::LadderItemKind::OutByDay:
            return tr("carry out for the day today");
        case plan::LadderItemKind::FirstNightOut:
            return tr("carry out today, to stay");
        case plan::LadderItemKind::IntoShade:
            return tr("carry into deeper shade today");
        case plan::LadderItemKind::CarryIn:
            return tr("carry in today");
        case plan::LadderItemKind::Inspect:
        case plan::LadderItemKind::Soak:
        case plan::LadderItemKind::KeepApart:
        case plan::LadderItemKind::StepDown:
            break; // Nothing is carried, or step by step over weeks.
        }
        return {};
    };
    QVariantMap due;
    for (const RoundRow& row : rows_) {
        if (const QString said = words(row); !row.done && row.task.plant && !said.isEmpty()) {
            const QString plant = QString::number(*row.task.plant);
            if (!due.contains(plant) || row.is_carry_in()) { // Tonight's cold comes before the plan.
                due.insert(plant, said);
            }
        }
    }
    return due;
}

} // namespace lathhouse::models
