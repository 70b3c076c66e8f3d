pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Where a plant is kept by hand: at which spot, always or from one evening to another.
Column {
    id: root

    required property PinForm form

    spacing: Theme.px(12)

    function focusFirst(): void {
        const chip = spots.itemAt(root.form.spot);
        if (chip !== null)
            chip.forceActiveFocus();
    }
    function focusTrouble(): void {
        if (root.form.troubleField === 2)
            to.focusField();
        else if (root.form.troubleField === 1)
            from.focusField();
        else
            root.focusFirst();
    }
    function troubleAt(field: int): string {
        return root.form.troubleField === field ? root.form.trouble : "";
    }

    Repeater {
        model: root.form.kept

        Words {
            required property string modelData
            required property int index
            objectName: "pinKept" + index
            width: root.width
            text: modelData
            strong: true
        }
    }
    Words {
        width: parent.width
        text: qsTr("At which spot")
        font.pixelSize: Theme.rowSize
    }
    Flow {
        width: parent.width
        spacing: Theme.apart(6)
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("At which spot")

        Repeater {
            id: spots
            model: root.form.spots

            Chip {
                required property string modelData
                required property int index
                objectName: "pinSpot" + index
                text: modelData
                reason: qsTr("At which spot")
                on: root.form.spot === index
                onClicked: root.form.spot = index
            }
        }
    }
    Trouble {
        objectName: "pinSpotTrouble"
        width: parent.width
        words: root.troubleAt(0)
    }
    Trouble {
        objectName: "pinCaution"
        width: parent.width
        words: root.form.caution
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: from
            objectName: "pinFrom"
            width: Math.min(root.width, Theme.px(260))
            label: qsTr("First evening")
            example: root.form.example
            value: root.form.from
            trouble: root.troubleAt(1)
            onEdited: words => root.form.from = words
        }
        LabelledField {
            id: to
            objectName: "pinTo"
            width: Math.min(root.width, Theme.px(260))
            label: qsTr("Last evening")
            example: root.form.example
            value: root.form.to
            trouble: root.troubleAt(2)
            onEdited: words => root.form.to = words
        }
    }
    Words {
        width: parent.width
        text: qsTr("Both left blank: always. The plan keeps to it, whatever the nights are like; the page Year shows the plant’s chance of harm there.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
