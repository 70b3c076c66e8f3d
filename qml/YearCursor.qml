pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The cursor over the chart: its line, its date, and where it meets the bands. Moving it repaints nothing below.
Item {
    id: root

    required property YearBands bands
    required property YearModel year
    required property real chartTop
    required property bool focused
    required property real tabHeight

    readonly property real at: root.bands.cursorX
    readonly property alias tabWidth: tab.width

    Accessible.ignored: true

    Rectangle {
        x: root.at - 0.8
        y: root.chartTop
        width: 1.6
        height: root.height - y
        color: Theme.action
        antialiasing: true
    }
    Rectangle {
        id: tab
        x: Math.max(0, Math.min(root.width - width, Math.round(root.at - width / 2)))
        y: root.chartTop - root.tabHeight
        width: Math.ceil(date.implicitWidth) + 10
        height: root.tabHeight - 2
        radius: 3
        color: Theme.action

        Text {
            id: date
            textFormat: Text.PlainText
            anchors.centerIn: parent
            text: root.year.cursor.shortDate
            color: Theme.actionInk
            font.family: Theme.textFamily
            font.pixelSize: Theme.rowSize
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        FocusRing {
            visible: root.focused
            away: 0
        }
    }
    Repeater {
        model: [root.bands.cursorSkyY, root.bands.cursorMiddleY, root.bands.cursorFrostY]

        Rectangle {
            required property real modelData
            x: root.at - 4
            y: root.chartTop + modelData - 4
            width: 8
            height: 8
            radius: 4
            color: Theme.sheet
            border.width: 1.8
            border.color: Theme.action
            antialiasing: true
        }
    }
    Repeater {
        model: [root.bands.cursorColdY, root.bands.cursorWarmY]

        Rectangle {
            required property real modelData
            x: root.at - 5
            y: root.chartTop + modelData - 1
            width: 10
            height: 2
            color: Theme.action
        }
    }
}
