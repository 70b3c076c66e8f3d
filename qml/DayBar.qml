import QtQuick
import Lathhouse.Models

// That the day of the pages is over, with the way to the new one.
Rectangle {
    id: root

    property DayTurn day: null

    visible: root.day !== null && root.day.words !== ""
    height: visible ? Math.max(dayText.height, dayButton.height) + Theme.px(12) : 0
    radius: Theme.controlRadius
    color: Theme.select
    border.width: 1
    border.color: Theme.action
    Accessible.role: Accessible.AlertMessage
    Accessible.name: dayText.text

    Words {
        id: dayText
        objectName: "dayWords"
        x: Theme.px(12)
        anchors.verticalCenter: parent.verticalCenter
        width: dayButton.x - x - Theme.px(12)
        text: root.day === null ? "" : root.day.error !== "" ? root.day.error : root.day.words
        Accessible.ignored: true
    }
    SheetButton {
        id: dayButton
        objectName: "dayButton"
        anchors.right: parent.right
        anchors.rightMargin: Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Begin the day")
        reason: qsTr("This window closes, and one of today opens. What is typed and not kept is lost.")
        onClicked: root.day.begin()
    }
}
