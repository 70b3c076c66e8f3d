pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// When the plant is fed through the year and when not, under lamps and with one's own water.
Column {
    id: root

    required property FeedingAskModel feeding
    property bool opened: false
    property int water: FeedingAskModel.NotKnown

    spacing: Theme.px(8)

    function ask(): void {
        if (!root.feeding.ask(hours.text, flux.text, root.water))
            hours.forceActiveFocus();
    }

    Connections { // Another plant's page is opened.
        target: root.feeding
        function onAnswered(): void {
            root.opened = root.opened && root.feeding.notes.length > 0;
        }
    }
    Chip {
        objectName: "feedingYearChip"
        spokenRole: Accessible.CheckBox
        height: Theme.target(32)
        text: qsTr("Feeding through the year")
        reason: qsTr("When, how strong, and why not; under lamps too")
        on: root.opened
        onClicked: {
            root.opened = !root.opened;
            if (root.opened)
                root.ask();
        }
    }
    Column {
        visible: root.opened
        width: parent.width
        spacing: Theme.px(8)

        Flow {
            width: parent.width
            spacing: Theme.px(8)

            SheetField {
                id: hours
                objectName: "lampHours"
                least: Theme.px(190)
                label: qsTr("Hours a day that lamps burn over the plants indoors, may be left blank")
                placeholderText: qsTr("lamps: none")
                unit: hours.text === "" ? "" : qsTr("hours of lamps")
                wrong: root.feeding.error !== ""
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onTextEdited: root.feeding.forgive()
                onAccepted: root.ask()
            }
            SheetField {
                id: flux
                objectName: "lampFlux"
                visible: hours.text.trim() !== ""
                least: Theme.px(250)
                label: qsTr("The lamps’ light at the leaves, may be left blank: a weak lamp")
                placeholderText: qsTr("light at the leaves: a weak lamp")
                unit: flux.text === "" ? "" : qsTr("µmol/m² s")
                wrong: root.feeding.error !== ""
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onTextEdited: root.feeding.forgive()
                onAccepted: root.ask()
            }
            SheetButton {
                objectName: "feedingAsk"
                text: qsTr("Work it out")
                onClicked: root.ask()
            }
        }
        ChoiceChips {
            width: parent.width
            title: qsTr("The water is")
            part: "waterKind"
            choices: [qsTr("not known"), qsTr("soft"), qsTr("hard")]
            chosen: root.water
            onChoose: index => {
                root.water = index;
                root.ask();
            }
        }
        Trouble {
            objectName: "feedingTrouble"
            width: parent.width
            words: root.feeding.error
        }
        Column {
            objectName: "feedingSpells"
            width: parent.width
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Feeding through the year")

            Repeater {
                model: root.feeding.spells

                Item {
                    id: spell

                    required property string dates
                    required property string words
                    required property string sentence
                    width: root.width
                    height: Math.max(spellDates.height, spellWords.height) + Theme.px(9)
                    Accessible.role: Accessible.ListItem
                    Accessible.name: spell.sentence

                    Words {
                        id: spellDates
                        y: Theme.px(4)
                        width: Theme.px(150)
                        text: spell.dates
                        strong: true
                        font.pixelSize: Theme.rowSize
                        Accessible.ignored: true
                    }
                    Words {
                        id: spellWords
                        x: spellDates.width + Theme.px(8)
                        y: Theme.px(4)
                        width: parent.width - x
                        text: spell.words
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
        Repeater {
            model: root.feeding.notes

            Words {
                required property string modelData
                width: Math.min(root.width, Theme.px(760))
                text: modelData
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
    }
}
