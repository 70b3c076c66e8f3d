pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A question of a form: a field, one of a few, or several to tick.
Item {
    id: root

    required property AskModel ask
    required property int key
    required property int kind
    required property string label
    required property string unit
    required property string note
    required property string example
    required property var choices
    required property string value
    required property int chosen
    required property var ticked
    required property string trouble
    required property bool shown
    readonly property bool several: root.kind === AskModel.Several
    readonly property bool typed: root.kind === AskModel.Field || root.kind === AskModel.Number
    // The same number of choices keeps their buttons, and so the keys.
    readonly property int count: root.choices.length
    readonly property string part: "ask" + root.key

    visible: root.shown
    implicitHeight: root.typed ? field.height : choice.height

    function focusIt(): void {
        if (root.typed)
            field.focusField();
        else if (root.several)
            ticks.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
        else
            chips.itemAt(root.chosen).forceActiveFocus(Qt.TabFocusReason);
    }
    /// The choice beside the one that was chosen, as with the arrows of any group of which one is chosen.
    function step(by: int): void {
        const next = Math.max(0, Math.min(root.count - 1, root.chosen + by));
        chips.itemAt(next).forceActiveFocus(Qt.TabFocusReason); // First: what has the keys must be a stop of the Tab key.
        root.ask.fill(root.key, String(next));
    }

    LabelledField {
        id: field
        objectName: root.part
        visible: root.typed
        width: root.width
        label: root.label
        unit: root.unit
        note: root.note
        example: root.example
        number: root.kind === AskModel.Number
        value: root.typed ? root.value : ""
        trouble: root.trouble
        onEdited: words => root.ask.fill(root.key, words)
        onEntered: root.ask.write()
    }
    Column {
        id: choice
        visible: !root.typed
        width: root.width
        spacing: Theme.px(4)
        Accessible.role: Accessible.Grouping
        Accessible.name: root.label

        Words {
            width: parent.width
            text: root.label
            strong: root.several
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
        Flow {
            visible: !root.several
            width: parent.width
            spacing: Theme.apart(6)

            Repeater {
                id: chips
                model: root.kind === AskModel.Choice ? root.count : 0

                Chip {
                    id: chip
                    required property int index
                    objectName: root.part + "Chip" + chip.index
                    // One stop of the Tab key for all of them; the arrows go on.
                    focusPolicy: on ? Qt.StrongFocus : Qt.ClickFocus
                    text: root.choices[chip.index] ?? ""
                    reason: root.label
                    on: root.chosen === chip.index
                    onClicked: root.ask.fill(root.key, String(chip.index))
                    Keys.onLeftPressed: root.step(-1)
                    Keys.onRightPressed: root.step(1)
                }
            }
        }
        Repeater {
            id: ticks
            model: root.several ? root.count : 0

            TickRow {
                id: tick
                required property int index
                objectName: root.part + "Tick" + tick.index
                width: root.width
                text: root.choices[tick.index] ?? ""
                on: root.ticked[tick.index] === true
                onClicked: root.ask.toggle(root.key, tick.index)
            }
        }
    }
}
