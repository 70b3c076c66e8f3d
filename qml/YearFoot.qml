import QtQuick
import Lathhouse.Models

// The read-out of the narrow window, along its foot.
Rectangle {
    id: root

    required property YearModel year
    property bool opened: false
    property bool low: false
    signal allNumbersAsked

    color: Theme.well
    border.width: 1
    border.color: Theme.contrast ? Theme.edge : Theme.rule

    Column {
        x: Theme.px(17)
        anchors.verticalCenter: parent.verticalCenter

        Text {
            textFormat: Text.PlainText
            text: root.year.cursor.shortDate
            color: Theme.ink
            font.family: Theme.titleFamily
            font.pixelSize: Theme.headSize
            Accessible.role: Accessible.Heading
            Accessible.name: root.year.cursor.longDate
        }
        Text {
            textFormat: Text.PlainText
            visible: !root.low
            text: root.year.cursor.dayLength
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
    Row {
        x: Math.max(Theme.px(140), root.width * 0.232)
        anchors.verticalCenter: parent.verticalCenter
        spacing: 24

        FootFigure {
            visible: !root.low || root.width > 720 * Theme.textScale
            low: root.low
            width: Math.max(Theme.px(120), root.width * 0.178)
            head: qsTr("Night low")
            figure: root.year.cursor.low
            words: qsTr("9 in 10: %1").arg(root.year.cursor.spread)
        }
        FootFigure {
            low: root.low
            width: Math.max(Theme.px(120), root.width * 0.178)
            head: qsTr("Frost after this night")
            figure: root.year.cursor.frostAfter
            words: root.year.cursor.shelteredAfter
        }
        FootFigure {
            visible: !root.low && root.width > 700 * Theme.textScale
            low: false
            width: Theme.px(110)
            head: qsTr("Plants outdoors")
            figure: root.year.cursor.outdoors
            words: root.year.cursor.hardening
        }
    }
    SheetButton {
        objectName: "allNumbers"
        anchors.right: parent.right
        anchors.rightMargin: 16
        anchors.verticalCenter: parent.verticalCenter
        text: root.opened ? qsTr("Fewer") : qsTr("All numbers")
        reason: qsTr("Shows every number of this date, and what they rest on.")
        onClicked: root.allNumbersAsked()
    }
}
