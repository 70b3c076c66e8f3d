pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What the grower says of one plant: name, pot, its own lines, and where it is kept.
Column {
    id: root

    required property PlantForm form

    spacing: Theme.px(10)

    function focusFirst(): void {
        nameField.focusField();
    }
    function focusTrouble(): void {
        if (root.form.nameTrouble !== "")
            nameField.focusField();
        else if (root.form.volumeTrouble !== "")
            volume.focusField();
        else if (root.form.weightTrouble !== "")
            weight.focusField();
        else
            safe.focusField();
    }

    Words {
        width: parent.width
        text: root.form.kind
        quiet: true
        font.family: Theme.titleFamily
        font.italic: true
        font.pixelSize: Theme.subheadSize
    }
    LabelledField {
        id: nameField
        objectName: "plantName"
        width: Math.min(parent.width, Theme.px(340))
        label: qsTr("Its name")
        value: root.form.name
        trouble: root.form.nameTrouble
        onEdited: words => root.form.name = words
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: volume
            objectName: "plantVolume"
            width: Theme.px(160)
            label: qsTr("Pot holds")
            unit: root.form.volumeUnit
            value: root.form.volume
            trouble: root.form.volumeTrouble
            onEdited: words => root.form.volume = words
        }
        LabelledField {
            id: weight
            objectName: "plantWeight"
            width: Theme.px(160)
            label: qsTr("Weight, moist")
            unit: root.form.weightUnit
            value: root.form.weight
            trouble: root.form.weightTrouble
            onEdited: words => root.form.weight = words
        }
        Column {
            spacing: Theme.px(3)

            Words {
                text: qsTr("The pot is")
                font.pixelSize: Theme.rowSize
            }
            Row {
                spacing: Theme.px(6)

                Repeater {
                    model: [qsTr("not said"), qsTr("light"), qsTr("dark")]

                    Chip {
                        required property string modelData
                        required property int index
                        objectName: "shade" + index
                        height: Theme.target(34)
                        text: modelData
                        on: root.form.shade === index
                        onClicked: root.form.shade = index
                    }
                }
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("Its own lines: night lows, and the day’s heat")
        font.pixelSize: Theme.rowSize
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: safe
            objectName: "plantSafe"
            width: Theme.px(120)
            label: qsTr("Safe night")
            unit: root.form.unit
            value: root.form.safe
            onEdited: words => root.form.safe = words
        }
        LabelledField {
            objectName: "plantDamage"
            width: Theme.px(120)
            label: qsTr("Harm begins")
            unit: root.form.unit
            value: root.form.damage
            onEdited: words => root.form.damage = words
        }
        LabelledField {
            objectName: "plantLethal"
            width: Theme.px(120)
            label: qsTr("May kill")
            unit: root.form.unit
            value: root.form.lethal
            onEdited: words => root.form.lethal = words
        }
        LabelledField {
            objectName: "plantHeat"
            width: Theme.px(120)
            label: qsTr("Heat harms")
            unit: root.form.unit
            value: root.form.heat
            onEdited: words => root.form.heat = words
        }
    }
    Trouble {
        objectName: "linesTrouble"
        width: parent.width
        words: root.form.linesTrouble
    }
    TickRow {
        objectName: "plantOutdoors"
        width: parent.width
        text: qsTr("Grown outdoors while the nights allow")
        on: root.form.outdoors
        onClicked: root.form.outdoors = !root.form.outdoors
    }
    TickRow {
        objectName: "plantPoisonous"
        width: parent.width
        text: qsTr("Poisonous or spiny: out of reach of children and animals")
        on: root.form.poisonous
        onClicked: root.form.poisonous = !root.form.poisonous
    }
    Words {
        width: parent.width
        text: qsTr("Always kept at")
        font.pixelSize: Theme.rowSize
    }
    Flow {
        width: parent.width
        spacing: Theme.apart(6)

        Repeater {
            model: root.form.spots

            Chip {
                required property string modelData
                required property int index
                objectName: "pinned" + index
                text: modelData
                on: root.form.pinned === index
                onClicked: root.form.pinned = index
            }
        }
    }
}
