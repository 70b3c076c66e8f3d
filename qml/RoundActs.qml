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
        const acts = [];
        if (!of.done)
            acts.push({ name: "tick", words: qsTr("Done today"), key: qsTr("Space") });
        if (plant)
            acts.push({ name: "open", words: qsTr("Open the plant’s page"), key: qsTr("Enter") });
        if (plant)
            acts.push({ name: "log", words: qsTr("Log something"), key: qsTr("Ctrl+L") });
        if (!of.done && !of.isHygiene) {
            if (root.hasDose && (of.feedPpm > 0 || of.treats))
                acts.push({ name: "dose", words: qsTr("How much goes into the water"), key: "D" });
            if (of.treats)
                acts.push({ name: "spray", words: qsTr("Before a spray"), key: "B" });
            acts.push({ name: "day", words: qsTr("Put off a day"), key: "P" });
            acts.push({ name: "later", words: qsTr("Put off longer"), key: qsTr("Shift+P") });
            acts.push({ name: "leave", words: qsTr("Leave out"), key: "S" });
        }
        root.open(of.plant === "" ? of.task : qsTr("%1: %2").arg(of.plant).arg(of.task), acts, at);
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
