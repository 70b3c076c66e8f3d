pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Spots: ready-made ones with one press; the chosen one is changed beside the list, or below it.
Item {
    id: root

    required property SpotsForm form
    required property bool narrow
    /// Only the one spot is changed; there is no list.
    property bool single: false
    readonly property real listWidth: root.single ? 0 : root.narrow ? root.width : Math.round(root.width * 0.42)
    readonly property real editX: root.narrow || root.single ? 0 : root.listWidth + Theme.px(48)

    implicitHeight: root.single ? edit.height : root.narrow ? edit.y + edit.height : Math.max(list.height, edit.height)

    function focusFirst(): void {
        if (root.single)
            nameField.focusField();
        else
            ready.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
    }
    function focusTrouble(): void {
        if (root.form.potsTrouble !== "" && root.form.nameTrouble === "")
            pots.focusField();
        else
            nameField.focusField();
    }

    Column {
        id: list
        visible: !root.single
        width: root.listWidth
        spacing: Theme.px(8)

        Heading {
            width: parent.width
            text: qsTr("Where can pots stand?")
            font.pixelSize: Theme.nameSize
        }
        Words {
            width: parent.width
            text: qsTr("One press adds a spot; change what is different at your home.")
            quiet: true
        }
        Flow {
            width: parent.width
            spacing: Theme.apart(6)

            Repeater {
                id: ready
                model: root.form.ready

                SheetButton {
                    required property int index
                    required text
                    required reason
                    objectName: "ready" + index
                    onClicked: root.form.addReady(index)
                }
            }
        }
        Column {
            visible: root.form.spots.count === 0
            width: parent.width
            topPadding: Theme.px(12)
            spacing: Theme.px(6)

            EmptyPot {}
            Words {
                width: parent.width
                text: qsTr("The spots will stand here. The year carries each plant between them.")
                quiet: true
            }
        }
        Column {
            id: rows
            width: parent.width
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Spots")

            Repeater {
                model: root.form.spots

                FoundRow {
                    required property int index
                    required words
                    required detail
                    required sentence
                    required trouble
                    objectName: "spot" + index
                    width: rows.width
                    on: root.form.current === index
                    onClicked: root.form.current = index
                }
            }
        }
    }
    Rectangle {
        visible: !root.narrow && !root.single && edit.visible
        x: root.editX - Theme.px(24)
        width: 1
        height: root.implicitHeight
        color: Theme.rule
    }
    Column {
        id: edit
        visible: root.form.current >= 0
        x: root.editX
        y: root.narrow && !root.single ? list.height + Theme.px(20) : 0
        width: root.width - x
        spacing: Theme.px(10)
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("The spot %1").arg(root.form.name)

        LabelledField {
            id: nameField
            objectName: "spotName"
            width: Math.min(parent.width, Theme.px(320))
            label: qsTr("What you call it")
            value: root.form.name
            trouble: root.form.nameTrouble
            onEdited: words => root.form.name = words
        }
        Words {
            text: qsTr("What it is")
            font.pixelSize: Theme.rowSize
        }
        Flow {
            width: parent.width
            spacing: Theme.apart(6)

            Repeater {
                id: kinds
                model: root.form.kinds

                Chip {
                    required property int index
                    required text
                    required reason
                    objectName: "kind" + index
                    on: root.form.kind === index
                    onClicked: root.form.kind = index
                }
            }
        }
        Words {
            visible: root.form.faces
            text: root.form.kind === 1 ? qsTr("The house wall behind it faces; press again where there is none") : qsTr("Which way it looks")
            width: parent.width
            font.pixelSize: Theme.rowSize
        }
        Flow {
            visible: root.form.faces
            width: parent.width
            spacing: Theme.apart(6)

            Repeater {
                model: root.form.facings

                Chip {
                    required property int index
                    required property string spoken
                    required text
                    objectName: "facing" + index
                    Accessible.name: spoken
                    on: root.form.facing === index
                    onClicked: root.form.facing = index
                }
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.px(12)

            LabelledField {
                id: pots
                objectName: "spotPots"
                width: Theme.px(130)
                label: qsTr("Pots that fit")
                number: true
                value: root.form.pots
                trouble: root.form.potsTrouble
                onEdited: words => root.form.pots = words
            }
            LabelledField {
                objectName: "spotWinter"
                visible: root.form.indoors
                width: Theme.px(150)
                label: qsTr("Winter nights")
                unit: root.form.unit
                example: root.form.usualWinter
                value: root.form.winter
                onEdited: words => root.form.winter = words
            }
            LabelledField {
                objectName: "spotSummer"
                visible: root.form.indoors
                width: Theme.px(150)
                label: qsTr("Summer nights")
                unit: root.form.unit
                example: root.form.usualSummer
                value: root.form.summer
                onEdited: words => root.form.summer = words
            }
        }
        Trouble {
            width: parent.width
            words: root.form.roomTrouble
        }
        SheetButton {
            objectName: "measuredButton"
            text: root.form.measuring ? qsTr("Less") : !root.form.hasOpening ? qsTr("Measured there") : root.form.indoors ? qsTr("Measured at the window") : qsTr("Measured at its opening")
            reason: qsTr("Sizes, distances, what stands opposite, light and nights; blank fields keep the usual figure")
            onClicked: root.form.measuring = !root.form.measuring
        }
        Column {
            visible: root.form.measuring
            width: parent.width
            spacing: Theme.px(12)

            SpotMeasureFields {
                width: parent.width
                form: root.form
                measures: root.form.windowMeasures
                title: !root.form.hasOpening ? qsTr("What is round it") : root.form.indoors ? qsTr("The window") : qsTr("The open side")
            }
            SpotMeasureFields {
                width: parent.width
                form: root.form
                measures: root.form.lightMeasures
                title: qsTr("A day’s light, where you measured it or know it")
                about: qsTr("Moles on a level leaf. These two count in place of what the fields above give; hours of sun are then not told.")
            }
            SpotMeasureFields {
                width: parent.width
                form: root.form
                measures: root.form.nightMeasures
                title: qsTr("Its nights against the open air")
                about: qsTr("What the plan begins from; nights that you log then teach it.")
            }
        }
        Trouble {
            objectName: "measuresTrouble"
            visible: words !== "" && !root.form.measuring
            width: parent.width
            words: root.form.measuresTrouble
        }
        Column {
            width: parent.width

            TickRow {
                objectName: "spotReach"
                width: parent.width
                text: qsTr("A child or an animal gets at the pots there")
                reason: qsTr("Poisonous and spiny plants are then kept elsewhere")
                on: root.form.inReach
                onClicked: root.form.inReach = !root.form.inReach
            }
            TickRow {
                objectName: "spotApart"
                width: parent.width
                text: qsTr("Away from all other plants: fit for infested ones")
                on: root.form.apart
                onClicked: root.form.apart = !root.form.apart
            }
            TickRow {
                objectName: "spotWindy"
                width: parent.width
                text: qsTr("Wind tears at leaves and tips pots there")
                on: root.form.windy
                onClicked: root.form.windy = !root.form.windy
            }
        }
        Words {
            objectName: "spotLight"
            width: parent.width
            text: root.form.light
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        SheetButton {
            objectName: "removeSpot"
            visible: !root.single
            text: qsTr("Take %1 off the list").arg(root.form.name)
            onClicked: root.form.remove(root.form.current)
        }
    }
}
