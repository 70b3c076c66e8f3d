import QtQuick
import Lathhouse.Models

// What can be done with a task of the round.
ActsMenu {
    id: root

    required property RoundModel round
    /// Whether a dose of feed or soap is told.
    property bool hasDose: false
    property int row: -1

    signal laterAsked
    signal leaveAsked
    signal plantAsked(plant: int)
    signal logAsked(plant: int)

    function ask(of: RoundRow, at: point): void {
        root.row = of.index;
        root.round.currentRow = of.index;
        const plant = root.round.plantOf(of.index) !== 0;
        const open = !of.done && !of.isHygiene;
        root.open(of.plant === "" ? of.task : qsTr("%1: %2").arg(of.plant).arg(of.task), [
            { name: "tick", words: qsTr("Done today"), key: qsTr("Space"), on: !of.done },
            { name: "open", words: qsTr("Open the plant’s page"), key: qsTr("Enter"), on: plant },
            { name: "log", words: qsTr("Log something"), key: qsTr("Ctrl+L"), on: plant },
            { name: "dose", words: qsTr("How much goes into the water"), key: "D", on: open && root.hasDose && (of.feedPpm > 0 || of.treats) },
            { name: "spray", words: qsTr("Before a spray"), key: "B", on: open && of.treats },
            { name: "day", words: qsTr("Put off a day"), key: "P", on: open },
            { name: "later", words: qsTr("Put off longer"), key: qsTr("Shift+P"), on: open },
            { name: "leave", words: qsTr("Leave out"), key: "S", on: open }
        ], at);
    }

    onChosen: name => {
        root.round.currentRow = root.row;
        if (name === "tick")
            root.round.tick(root.row);
        else if (name === "open")
            root.plantAsked(root.round.plantOf(root.row));
        else if (name === "log")
            root.logAsked(root.round.plantOf(root.row));
        else if (name === "dose")
            root.round.askDose(root.row);
        else if (name === "spray")
            root.round.askSpray(root.row);
        else if (name === "day")
            root.round.postpone(root.row, 1);
        else if (name === "later")
            root.laterAsked();
        else if (name === "leave")
            root.leaveAsked();
    }
}
