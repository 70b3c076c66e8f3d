pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Light of a spot through the year against what the plants need that stand there.
Column {
    id: root

    required property HomeModel home
    property MendModel mend: null
    required property bool narrow
    property bool asTable: false

    spacing: Theme.px(8)

    /// The cells of a row of the table: what clouds change where it is told, and the spot beside where there is one.
    function columns(month: string, moles: string, days: string, beside: string, who: string): list<string> {
        if (root.home.beside < 0)
            return root.home.lightSpread ? [month, moles, days, who] : [month, moles, who];
        return root.home.lightSpread ? [month, moles, days, beside, who] : [month, moles, beside, who];
    }
    function listed(cells: list<string>): string {
        let words = "";
        for (let cell = 0; cell < cells.length; ++cell)
            words += (cell > 0 ? ", " : "") + cells[cell];
        return words;
    }

    Heading {
        width: parent.width
        text: qsTr("Light on a spot through the year")
    }
    SpotChips {
        objectName: "spotChips"
        width: parent.width
        spots: root.home.spots
        current: root.home.spot
        onChosen: index => root.home.spot = index
    }
    Flow {
        visible: root.mend !== null
        width: parent.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "addSpotButton"
            text: qsTr("Add a spot")
            onClicked: root.mend.addSpots()
        }
        SheetButton {
            objectName: "changeSpotButton"
            visible: root.home.spots.count > 0
            text: qsTr("Change this spot")
            reason: qsTr("Name, kind, side, pots, reach, window; or take it off the list")
            onClicked: root.mend.editSpot(root.home.spot)
        }
    }
    Words {
        visible: root.home.spots.count === 0
        width: parent.width
        text: qsTr("No spot is known yet. A sill, a shelf, a balcony: wherever pots can stand.")
    }
    Words {
        visible: root.home.spots.count > 0
        width: parent.width
        text: qsTr("Moles of light on a level leaf, m² and day; %1. Behind glass right to about 30 %, outdoors to 10 %.").arg(root.home.spotFacts)
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    SpotLightChart {
        objectName: "spotLight"
        visible: root.home.spots.count > 0 && !root.asTable
        width: parent.width
        height: Theme.px(root.narrow ? 240 : 300)
        theme: Theme
        scheme: Theme.look
        home: root.home
        Accessible.role: Accessible.Chart
        Accessible.name: root.home.lightLine
        Accessible.description: qsTr("Key T: the same as a table.")
    }
    Column {
        objectName: "lightTable"
        visible: root.asTable
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: root.home.lightLine

        TwinRow {
            objectName: "lightHead"
            width: parent.width
            head: true
            cells: root.columns(qsTr("Month"), qsTr("moles a day"), qsTr("9 days in 10"), root.home.besideName, qsTr("for the plants there"))
            sentence: root.listed(cells)
        }
        Repeater {
            model: root.home.lightMonths

            TwinRow {
                required property string month
                required property string moles
                required property string days
                required property string beside
                required property string who
                width: root.width
                cells: root.columns(month, moles, days, beside, who)
            }
        }
    }
    CompareSpots {
        objectName: "compareSpots"
        visible: root.home.spots.count > 1
        width: parent.width
        home: root.home
    }
    Chip {
        objectName: "lightTableChip"
        spokenRole: Accessible.CheckBox
        visible: root.home.spots.count > 0
        text: qsTr("As a table")
        reason: qsTr("Key T")
        on: root.asTable
        onClicked: root.asTable = !root.asTable
    }
    Words {
        objectName: "lightNote"
        visible: root.home.spots.count > 0
        width: Math.min(parent.width, Theme.px(520))
        text: root.home.lightNote
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Heading {
        visible: root.home.spots.count > 0
        topPadding: Theme.px(6)
        text: qsTr("Plants that stand there now")
    }
    Words {
        visible: root.home.spots.count > 0 && root.home.lightPlants.count === 0
        width: parent.width
        text: qsTr("None.")
        quiet: true
    }
    Column {
        objectName: "lightPlants"
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Plants at the spot and their light")

        Repeater {
            model: root.home.lightPlants

            Item {
                id: plantLine
                required property string plant
                required property string wants
                required property string words
                required property string sentence
                width: root.width
                height: Math.max(plantName.height, plantWords.height) + Theme.px(8)
                Accessible.role: Accessible.ListItem
                Accessible.name: plantLine.sentence

                Words {
                    id: plantName
                    y: Theme.px(4)
                    width: Math.min(Theme.px(200), parent.width * 0.36)
                    text: plantLine.plant
                    strong: true
                    font.pixelSize: Theme.rowSize
                    Accessible.ignored: true
                }
                Words {
                    id: plantWords
                    x: plantName.width + Theme.px(12)
                    y: Theme.px(4)
                    width: parent.width - x
                    text: qsTr("%1; %2").arg(plantLine.words).arg(plantLine.wants)
                    font.pixelSize: Theme.rowSize
                    Accessible.ignored: true
                }
                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: 1
                    color: Theme.rule
                }
            }
        }
    }
    HomeLightReading {
        objectName: "lightReading"
        visible: root.home.spots.count > 0
        width: parent.width
        topPadding: Theme.px(6)
        meter: root.home.meter
    }
}
