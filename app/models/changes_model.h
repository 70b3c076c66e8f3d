#pragma once

#include "app/models/sheet_model.h"

#include <functional>
#include <optional>
#include <string>

namespace lathhouse::models {

enum class Turn { Undo, Redo };

/// Takes back what was entered last into the household, whichever page or program entered it, or lets it count again.
/// Gives it in words; nullopt where there is nothing. Called from a thread of the model.
using TurnLast = std::function<Result<std::optional<std::string>>(Turn)>;

/// Undo and redo for the whole window, in the order of the journal.
class ChangesModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    /// Whether `said` speaks of something taken back, so that it can count again.
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY saidChanged)

public:
    explicit ChangesModel(TurnLast turn, QObject* parent = nullptr);

    bool canRedo() const { return can_redo_; }
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// Takes the words away, once something else was done.
    Q_INVOKABLE void leave();
    /// Takes them away where they speak of no change: one has gone on to another page.
    Q_INVOKABLE void pass();

protected:
    void read() override { set_known(); }

private:
    void turn(Turn direction);

    TurnLast turn_;
    bool can_redo_ = false;
    bool turned_ = false; ///< Whether `said` speaks of a change.
};

class MemoryHousehold;
/// Of a household without a folder.
TurnLast turn_in_memory(std::shared_ptr<MemoryHousehold> household);

} // namespace lathhouse::models
