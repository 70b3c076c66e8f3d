pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The twelve months of the place, and what a pot meets there.
Column {
    id: root

    required property PlaceMonthsModel months
    readonly property real tableWidth: root.width < Theme.px(900) ? root.width : Math.floor((root.width - Theme.px(32)) / 2)

    spacing: Theme.px(10)

    Words {
        visible: text !== ""
        width: parent.width
        text: root.months.late ? qsTr("Working out the months.") : ""
        quiet: true
    }
    Trouble {
        width: parent.width
        words: root.months.error
    }
    Words {
        objectName: "monthsYear"
        visible: text !== ""
        width: Math.min(parent.width, Theme.px(760))
        text: root.months.year
    }
    Flow {
        visible: root.months.air.count > 0
        width: parent.width
        spacing: Theme.px(32)

        PlaceMonthsTable {
            objectName: "monthsAir"
            width: root.tableWidth
            months: root.months.air
            title: qsTr("The air")
            heads: [qsTr("Month"), qsTr("mean low"), qsTr("mean high"), qsTr("coldest of all years"), qsTr("days with frost"), qsTr("degree days")]
            roles: ["month", "low", "high", "coldest", "frost", "warmth"]
        }
        PlaceMonthsTable {
            objectName: "monthsSky"
            width: root.tableWidth
            months: root.months.sky
            title: qsTr("Rain and light")
            heads: [qsTr("Month"), qsTr("rain"), qsTr("day length"), qsTr("moles a day"), qsTr("a lawn drinks")]
            roles: ["month", "rain", "day", "light", "water"]
        }
        Column {
            width: root.tableWidth
            spacing: Theme.px(8)

            PlaceMonthsTable {
                objectName: "monthsGround"
                width: parent.width
                months: root.months.ground
                title: qsTr("The soil, and a pot")
                heads: [qsTr("Month"), qsTr("soil, shallow"), qsTr("soil, deeper"), qsTr("pot, low"), qsTr("pot, high"), qsTr("it drinks a day")]
                roles: ["month", "soil5", "soil10", "potLow", "potHigh", "drinks"]
            }
            Words {
                width: parent.width
                text: qsTr("Soil at 5 and 10 cm deep, that is 2 and 4 inches.")
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            LabelledField {
                objectName: "monthsPot"
                width: Math.min(parent.width, Theme.px(260))
                label: qsTr("Width of the pot, or of its crown")
                unit: root.months.potUnit
                example: root.months.usualPot
                number: true
                value: root.months.pot
                trouble: root.months.potTrouble
                onEdited: words => root.months.pot = words
            }
            Words {
                objectName: "monthsOfPot"
                width: parent.width
                text: root.months.ofPot
                font.pixelSize: Theme.smallSize
            }
        }
    }
}
