pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// All numbers at the cursor: first the night, then the plants at that date, then what they rest on.
Flickable {
    id: root

    required property YearModel year
    /// Whether the year from another date is asked for here.
    property bool offersDate: false
    property string part: ""

    signal dateAsked

    contentHeight: column.height
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    activeFocusOnTab: root.contentHeight > root.height
    Keys.onUpPressed: root.scroll(-40)
    Keys.onDownPressed: root.scroll(40)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Numbers of %1").arg(root.year.cursor.longDate)

    ScrollBar.vertical: ScrollBar {
        policy: root.contentHeight > root.height ? ScrollBar.AsNeeded : ScrollBar.AlwaysOff
        width: 6
        Accessible.ignored: true
    }

    function scroll(by: real): void {
        root.contentY = Math.max(0, Math.min(root.contentHeight - root.height, root.contentY + by));
    }

    FocusRing {
        parent: root
        visible: root.activeFocus
        away: -2
    }
    Column {
        id: column
        width: root.width - (root.contentHeight > root.height ? 8 : 0)

        Text {
            textFormat: Text.PlainText
            objectName: "readoutTitle"
            width: column.width
            height: Theme.px(32)
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.smallSize
            horizontalAlignment: Text.AlignLeft
            verticalAlignment: Text.AlignVCenter
            text: root.year.cursor.longDate
            color: Theme.ink
            font.family: Theme.titleFamily
            font.pixelSize: Theme.headSize
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        Rectangle {
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Item {
            width: 1
            height: 4
        }
        Repeater {
            model: root.year.cursor.lines
            delegate: ReadoutRow {
                width: column.width
            }
        }
        Item {
            width: 1
            height: 8
        }
        Rectangle {
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Text {
            textFormat: Text.PlainText
            objectName: "whyThere"
            topPadding: 5
            bottomPadding: 4
            width: parent.width
            wrapMode: Text.Wrap
            visible: text !== ""
            text: root.year.cursor.whyThere
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Text {
            textFormat: Text.PlainText
            topPadding: 5
            width: parent.width
            wrapMode: Text.Wrap
            visible: root.year.plants.count > 0
            text: qsTr("Chance of a harmful night")
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        Text {
            textFormat: Text.PlainText
            bottomPadding: 4
            width: parent.width
            wrapMode: Text.Wrap
            visible: root.year.plants.count > 0
            text: root.year.cursor.harmHeading
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Repeater {
            model: root.year.plants
            delegate: HarmRow {
                width: column.width
            }
        }
        Item {
            width: 1
            height: 9
        }
        Rectangle {
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Text {
            textFormat: Text.PlainText
            objectName: "keptLine"
            width: parent.width
            topPadding: 6
            visible: root.year.keptLine !== "" && root.year.plants.count > 0
            text: root.year.keptLine
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Repeater {
            model: root.year.changes

            Text {
                textFormat: Text.PlainText
                required property string modelData
                width: column.width
                topPadding: 2
                leftPadding: 8
                text: modelData
                color: Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
        Item {
            visible: root.year.canKeep
            width: parent.width
            height: visible ? keep.height + 12 : 0

            SheetButton {
                id: keep
                objectName: "keepPlan"
                y: 6
                text: qsTr("Keep this plan")
                reason: qsTr("Later plans change it only where that pays, and name each change.")
                onClicked: root.year.keepPlan()
            }
        }
        Text {
            textFormat: Text.PlainText
            objectName: "fromElsewhere"
            visible: root.year.begin.elsewhere
            width: parent.width
            topPadding: 6
            text: qsTr("For looking: nothing of this year is kept or pinned.")
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Item {
            visible: root.offersDate
            width: parent.width
            height: visible ? other.height + 12 : 0

            SheetButton {
                id: other
                objectName: root.part + "ReadoutFrom"
                y: 6
                text: qsTr("From another date")
                reason: qsTr("Key F. The year from a date to come, or as of the first of March.")
                onClicked: root.dateAsked()
            }
        }
        Text {
            textFormat: Text.PlainText
            width: parent.width
            topPadding: 6
            text: root.year.footnote
            color: Theme.ink2
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Text {
            textFormat: Text.PlainText
            width: parent.width
            topPadding: 6
            visible: root.year.credits !== ""
            text: root.year.credits
            color: Theme.ink2
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
}
