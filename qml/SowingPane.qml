pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// When and how to sow the chosen lot or crop, and its trays.
Column {
    id: root

    required property SeedsModel seeds
    /// The trays have a column of their own in a wide window.
    property Item trayPlace: null
    readonly property TrayPane trays: trayPane

    spacing: Theme.px(8)

    function stand(): void {
        if (!root.seeds.standAt(room.text))
            room.forceActiveFocus();
    }

    Flow {
        id: names
        width: parent.width
        spacing: Theme.px(10)

        Heading {
            objectName: "sowingTitle"
            width: Math.min(implicitWidth, names.width)
            text: root.seeds.name
            font.pixelSize: Theme.nameSize
        }
        Text {
            textFormat: Text.PlainText
            height: Theme.target(28)
            verticalAlignment: Text.AlignBottom
            text: root.seeds.botanical
            color: Theme.ink2
            font.family: Theme.titleFamily
            font.italic: true
            font.pixelSize: Theme.subheadSize
            Accessible.role: Accessible.StaticText
            Accessible.name: text
            Accessible.ignored: text === ""
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        Words {
            objectName: "sowingAmount"
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: root.seeds.amount
            strong: true
            font.pixelSize: Theme.subheadSize
        }
        SheetButton {
            objectName: "fewerPlants"
            width: Theme.target(36)
            text: "−"
            Accessible.name: qsTr("One plant fewer")
            onClicked: root.seeds.plants -= 1
        }
        SheetButton {
            objectName: "morePlants"
            width: Theme.target(36)
            text: "+"
            Accessible.name: qsTr("One plant more")
            onClicked: root.seeds.plants += 1
        }
        Words {
            width: Math.min(implicitWidth, root.width)
            height: Math.max(Theme.target(32), implicitHeight)
            verticalAlignment: Text.AlignVCenter
            text: root.seeds.sure
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        Words {
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Trays stand at")
        }
        SheetField {
            id: room
            objectName: "roomField"
            least: Theme.px(190)
            label: qsTr("How warm it is where trays stand, blank for the usual")
            placeholderText: root.seeds.unit === "°F" ? qsTr("68, as usual") : qsTr("20, as usual")
            text: root.seeds.room
            unit: root.seeds.unit
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.seeds.forgive()
            onAccepted: root.stand()
            onEditingFinished: if (room.text !== root.seeds.room)
                root.seeds.standAt(room.text)
        }
    }
    ChoiceChips {
        objectName: "sowingRisk"
        width: parent.width
        title: qsTr("Risk you accept of a night that damages them outdoors")
        choices: root.seeds.riskStops
        chosen: root.seeds.riskStop
        part: "sowingRisk"
        onChoose: index => root.seeds.riskStop = index
    }
    SowingBarChart {
        objectName: "sowingBar"
        visible: root.seeds.hasBar
        width: parent.width
        height: Theme.px(116)
        theme: Theme
        scheme: Theme.look
        seeds: root.seeds
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("The year of this sowing")
        Accessible.description: root.seeds.barWords
    }
    Column {
        objectName: "sowingDates"
        width: parent.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Dates of the sowing")

        Repeater {
            model: root.seeds.dates

            Item {
                id: dateLine
                required property string label
                required property string value
                required property string why
                required property string sentence
                readonly property bool stacked: dateLine.width < Theme.px(430)
                width: root.width
                height: (dateLine.stacked ? what.height + reasonWords.height : Math.max(what.height, reasonWords.height)) + Theme.px(12)
                Accessible.role: Accessible.ListItem
                Accessible.name: dateLine.sentence

                Row {
                    id: what
                    y: Theme.px(6)

                    Words {
                        width: Theme.px(132)
                        text: dateLine.label
                        quiet: true
                        font.pixelSize: Theme.rowSize
                        Accessible.ignored: true
                    }
                    Words {
                        text: dateLine.value
                        strong: true
                        font.pixelSize: Theme.rowSize
                        Accessible.ignored: true
                    }
                }
                Words {
                    id: reasonWords
                    x: dateLine.stacked ? Theme.px(132) : what.width + Theme.px(12)
                    y: dateLine.stacked ? what.y + what.height : Theme.px(6)
                    width: dateLine.width - x
                    horizontalAlignment: dateLine.stacked ? Text.AlignLeft : Text.AlignRight
                    text: dateLine.why
                    quiet: true
                    font.pixelSize: Theme.smallSize
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
    Item {
        id: trayPlaceHere
        visible: root.trayPlace === null && root.seeds.currentRow >= 0
        width: parent.width
        height: trayPane.height

        TrayPane {
            id: trayPane
            objectName: "trayPane"
            parent: root.trayPlace ?? trayPlaceHere
            visible: root.seeds.currentRow >= 0
            width: parent.width
            seeds: root.seeds
            besides: root.trayPlace !== null
        }
    }
    Repeater {
        model: root.seeds.notes

        Words {
            required property string modelData
            width: root.width
            text: modelData
            font.pixelSize: Theme.rowSize
        }
    }
    Words {
        width: parent.width
        text: root.seeds.sources
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
