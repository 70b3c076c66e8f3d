pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// How much milder an outdoor spot is than the open air, as its thermometer has taught; last night in one line.
Column {
    id: root

    required property HomeModel home
    required property bool narrow
    property bool asTable: false

    spacing: Theme.px(8)

    function focusField(): void {
        typed.focusField();
    }

    Heading {
        width: parent.width
        text: root.home.outdoors.count > 0 ? root.home.offsetTitle : qsTr("Thermometer")
    }
    Words {
        visible: root.home.outdoors.count === 0
        width: parent.width
        text: qsTr("No spot outdoors is known, so there is nothing to learn from a thermometer. Add one under Home, Spots.")
    }
    SpotChips {
        objectName: "outdoorChips"
        width: parent.width
        spots: root.home.outdoors
        current: root.home.outdoor
        onChosen: index => root.home.outdoor = index
    }
    LogLine {
        id: typed
        objectName: "nightLine"
        visible: root.home.outdoors.count > 0
        width: parent.width
        title: qsTr("Log last night")
        dated: true
        day: typed.daysAgo > 0 ? root.home.dateAgo(typed.daysAgo) : ""
        unit: root.home.unit
        trouble: root.home.known && !root.home.aboutFile ? root.home.error : ""
        instead: root.home.known && !root.home.aboutFile ? root.home.instead : ""
        reason: qsTr("Keeps the low of the night that ended this morning")
        onMended: root.home.forgive()
        onKept: (low, sky) => {
            if (root.home.logNight(low, sky, typed.daysAgo))
                typed.empty();
            else
                typed.focusField();
        }
    }
    Words {
        objectName: "homeSaid"
        visible: text !== "" && !root.home.aboutFile
        width: parent.width
        text: root.home.said
    }
    Flow {
        visible: root.home.outdoors.count > 0
        width: parent.width
        spacing: Theme.px(16)

        Words {
            objectName: "offsetNow"
            text: root.home.offsetNow
            strong: true
        }
        Words {
            text: root.home.offsetRange
        }
        Words {
            visible: text !== ""
            width: Math.min(implicitWidth, root.width)
            text: root.home.offsetKinds
            quiet: true
        }
    }
    OffsetChart {
        objectName: "offsetChart"
        visible: root.home.outdoors.count > 0 && !root.asTable
        width: parent.width
        height: Theme.px(root.narrow ? 240 : 300)
        theme: Theme
        scheme: Theme.look
        home: root.home
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("%1: %2, %3").arg(root.home.offsetTitle).arg(root.home.offsetNow).arg(root.home.offsetRange)
        Accessible.description: qsTr("Key T: the nights as a table.")
    }
    Words {
        visible: root.home.outdoors.count > 0 && !root.asTable
        width: parent.width
        text: qsTr("%1, by the number of logged nights. Band: where the spot’s mean lies, 9 in 10. Open dot: clear and calm; filled: cloud or wind; square: sky not noted.").arg(root.home.unit)
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Column {
        objectName: "nightTable"
        visible: root.home.outdoors.count > 0 && root.asTable
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: root.home.offsetTitle

        TwinRow {
            width: parent.width
            head: true
            cells: [qsTr("Night to"), qsTr("low"), qsTr("against the open air"), qsTr("sky")]
            sentence: qsTr("Night to, low, against the open air, sky")
        }
        Repeater {
            model: root.home.nights

            TwinRow {
                required property string date
                required property string low
                required property string difference
                required property string sky
                width: root.width
                cells: [date, low, difference, sky]
            }
        }
        Words {
            visible: root.home.nights.count === 0
            width: parent.width
            topPadding: Theme.px(6)
            text: qsTr("No night is logged yet.")
            quiet: true
        }
    }
    Chip {
        objectName: "nightTableChip"
        spokenRole: Accessible.CheckBox
        visible: root.home.outdoors.count > 0
        text: qsTr("As a table")
        reason: qsTr("Key T")
        on: root.asTable
        onClicked: root.asTable = !root.asTable
    }
    HomeForecasts {
        objectName: "homeForecasts"
        width: parent.width
        topPadding: Theme.px(10)
        forecasts: root.home.forecasts
    }
    HomeNightEntry {
        objectName: "nightEntry"
        width: parent.width
        topPadding: Theme.px(10)
        entry: root.home.entry
        unit: root.home.unit
    }
    HomeReadings {
        visible: root.home.outdoors.count > 0
        width: parent.width
        topPadding: Theme.px(10)
        home: root.home
    }
}
