import QtQuick
import Lathhouse.Models

// The read-out of the narrow window, along its foot.
Rectangle {
    id: root

    required property YearModel year
    property bool opened: false
    property bool low: false
    signal allNumbersAsked

    /// In little room the date stands at the cursor alone.
    readonly property bool dateless: root.low && Math.max(Theme.px(140), root.width * 0.232) + root.needed + Theme.px(12) > button.x && Theme.px(17) + root.needed + Theme.px(12) <= button.x
    readonly property real figuresX: root.dateless ? Theme.px(17) : Math.max(Theme.px(140), root.width * 0.232)
    readonly property real figureWidth: Math.max(Theme.px(120), root.width * 0.178)
    /// What has no room between the date and the button stands below them.
    readonly property bool below: root.figuresX + root.needed + Theme.px(12) > button.x
    readonly property real needed: root.low ? (lowFigure.visible ? lowFigure.implicitWidth + 24 : 0) + frostFigure.implicitWidth : 2 * root.figureWidth + 24

    implicitHeight: root.below ? Theme.px(44) + figures.height + Theme.px(10) : Theme.px(root.low ? 44 : 88)
    color: Theme.well
    border.width: 1
    border.color: Theme.contrast ? Theme.edge : Theme.rule

    Column {
        visible: !root.dateless
        x: Theme.px(17)
        y: root.below ? Theme.px(4) : Math.round((root.height - height) / 2)

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
            visible: !root.low && !root.below
            text: root.year.cursor.dayLength
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
    Row {
        id: figures
        x: root.below ? Theme.px(17) : root.figuresX
        y: root.below ? Theme.px(44) : Math.round((root.height - height) / 2)
        spacing: 24

        FootFigure {
            id: lowFigure
            visible: !root.low || root.width > 720 * Theme.textScale
            low: root.low
            width: root.below ? Math.floor((root.width - 2 * Theme.px(17) - 24) / 2) : root.figureWidth
            head: qsTr("Night low")
            figure: root.year.cursor.low
            words: qsTr("9 in 10: %1").arg(root.year.cursor.spread)
        }
        FootFigure {
            id: frostFigure
            low: root.low
            width: root.below && root.low ? root.width - 2 * Theme.px(17) : lowFigure.width
            head: qsTr("Frost after this night")
            figure: root.year.cursor.frostAfter
            words: root.year.cursor.shelteredAfter
        }
        FootFigure {
            visible: !root.low && !root.below && root.figuresX + root.needed + 24 + Theme.px(122) < button.x
            low: false
            width: Theme.px(110)
            head: qsTr("Plants outdoors")
            figure: root.year.cursor.outdoors
            words: root.year.cursor.hardening
        }
    }
    SheetButton {
        id: button
        objectName: "allNumbers"
        anchors.right: parent.right
        anchors.rightMargin: 16
        y: root.below ? Theme.px(6) : Math.round((root.height - height) / 2)
        text: root.opened ? qsTr("Fewer") : qsTr("All numbers")
        reason: qsTr("Shows every number of this date, and what they rest on.")
        onClicked: root.allNumbersAsked()
    }
}
