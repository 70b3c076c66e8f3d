import QtQuick
import Lathhouse.Models

// What can be asked at a task that feeds or treats: how much goes into the can, and whether to spray now.
Column {
    id: root

    required property RoundModel round
    required property DoseModel dose
    /// Of the row in the round.
    required property int row
    required property real ppm
    required property bool treats

    spacing: 1

    DoseLine {
        visible: root.dose !== null && (root.ppm > 0 || root.treats)
        width: parent.width
        dose: root.dose
        ppm: root.ppm
        focusPolicy: Qt.NoFocus // The keys stay with the tasks.
        onAsked: {
            root.round.currentRow = root.row;
            root.round.askDose(root.row);
        }
    }
    Item {
        visible: sprayButton.visible
        width: 1
        height: Theme.px(2)
    }
    SheetButton {
        id: sprayButton
        objectName: "sprayButton"
        visible: root.treats
        height: Theme.target(28)
        focusPolicy: Qt.NoFocus // The keys stay with the tasks.
        text: qsTr("Before a spray")
        reason: qsTr("Key B. Whether to spray now, to wait, or not at all.")
        onClicked: {
            root.round.currentRow = root.row;
            root.round.askSpray(root.row);
        }
    }
}
