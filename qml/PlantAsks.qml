import QtQuick
import Lathhouse.Models

// What can be asked of a plant by hand.
Flow {
    id: root

    required property AskModel ask

    spacing: Theme.px(8)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Ask")

    SheetButton {
        objectName: "askCold"
        text: qsTr("After a cold night")
        reason: qsTr("Key C. What the cold may have done, what helps and what waits.")
        onClicked: root.ask.ask(AskModel.AfterCold)
    }
    SheetButton {
        objectName: "askDamage"
        text: qsTr("Hit by a spray")
        reason: qsTr("Key H. What weed-killer or drift may have done, by what is seen.")
        onClicked: root.ask.ask(AskModel.Damage)
    }
    SheetButton {
        objectName: "askSpray"
        text: qsTr("Before a spray")
        reason: qsTr("Key S. Whether to spray now, to wait, or not at all.")
        onClicked: root.ask.ask(AskModel.Spray)
    }
    SheetButton {
        objectName: "askCourse"
        text: qsTr("Pests and the course")
        reason: qsTr("Key P. How it stands, the steps and when it may end.")
        onClicked: root.ask.ask(AskModel.Course)
    }
    SheetButton {
        objectName: "askWater"
        text: qsTr("Water and winter")
        reason: qsTr("Key W. When to look at the mix, its roots and its winter quarters.")
        onClicked: root.ask.ask(AskModel.Water)
    }
    SheetButton {
        objectName: "askHarden"
        text: qsTr("Going out and coming in")
        reason: qsTr("Key O. The days before it stays out, and those around its coming in.")
        onClicked: root.ask.ask(AskModel.Harden)
    }
}
