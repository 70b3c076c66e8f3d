#include "app/models/changes_model.h"

#include "app/models/household_door.h"
#include "app/models/year_words.h"

namespace lathhouse::models {

ChangesModel::ChangesModel(TurnLast turn, QObject* parent) : SheetModel(parent), turn_(std::move(turn)) {}

void ChangesModel::undo()
{
    turn(Turn::Undo);
}

void ChangesModel::redo()
{
    turn(Turn::Redo);
}

void ChangesModel::leave()
{
    can_redo_ = false;
    turned_ = false;
    clear_error();
    say({});
}

void ChangesModel::pass()
{
    clear_error();
    if (!turned_) {
        leave();
    }
}

void ChangesModel::turn(Turn direction)
{
    if (!turn_) {
        return;
    }
    clear_error();
    work<std::optional<std::string>>([turn = turn_, direction] { return turn(direction); },
                                     [this, direction](Result<std::optional<std::string>> turned) {
                                         turned_ = turned && *turned;
                                         if (!turned) {
                                             can_redo_ = false;
                                             say({});
                                             fail(turned.error());
                                             return;
                                         }
                                         const bool undone = direction == Turn::Undo;
                                         if (!*turned) {
                                             can_redo_ = false;
                                             say(undone ? tr("Nothing is left to take back.")
                                                        : tr("Nothing is left to do again."));
                                             return;
                                         }
                                         can_redo_ = undone;
                                         say((undone ? tr("Taken back: %1") : tr("Counts again: %1"))
                                                 .arg(text(**turned)));
                                         emit written();
                                     });
}

TurnLast turn_in_memory(std::shared_ptr<MemoryHousehold> household)
{
    return [household = std::move(household)](Turn direction) -> Result<std::optional<std::string>> {
        const bool turned = direction == Turn::Undo ? household->take_back_last() : household->bring_back_last();
        return turned ? std::optional{ChangesModel::tr("the last change in this window").toStdString()} : std::nullopt;
    };
}

} // namespace lathhouse::models
