pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A lot of seed: which crop, what the packet says, how many seeds.
Column {
    id: root

    required property LotForm form

    /// Enter in a field: the lot is to be kept.
    signal kept

    spacing: Theme.px(10)

    function focusFirst(): void {
        crop.focusField();
    }
    function focusTrouble(): void {
        if (root.form.troubleField === 1)
            nameField.focusField();
        else if (root.form.troubleField === 2)
            year.focusField();
        else if (root.form.troubleField === 3)
            percent.focusField();
        else if (root.form.troubleField === 4)
            seeds.focusField();
        else
            crop.focusField();
    }
    function troubleAt(field: int): string {
        return root.form.troubleField === field ? root.form.trouble : "";
    }

    Column {
        width: Math.min(parent.width, Theme.px(340))

        LabelledField {
            id: crop
            objectName: "lotCrop"
            width: parent.width
            label: qsTr("Crop")
            example: qsTr("tomato, zinnia")
            value: root.form.crop
            trouble: root.troubleAt(0)
            onEdited: words => root.form.crop = words
            onEntered: {
                if (crops.count === 0) { // It is chosen, or none answers: what is wrong is said.
                    root.kept();
                    return;
                }
                root.form.choose(0);
                nameField.focusField();
            }
            onBelow: {
                if (crops.count > 0)
                    crops.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
            }
        }
        Repeater {
            id: crops
            model: root.form.crops

            FoundRow {
                required property int index
                required words
                required detail
                required sentence
                objectName: "crop" + index
                width: crop.width
                slanted: true
                onClicked: {
                    root.form.choose(index);
                    nameField.focusField();
                }
                Keys.onDownPressed: crops.itemAt(Math.min(crops.count - 1, index + 1)).forceActiveFocus(Qt.TabFocusReason)
                Keys.onUpPressed: {
                    if (index > 0)
                        crops.itemAt(index - 1).forceActiveFocus(Qt.TabFocusReason);
                    else
                        crop.focusField();
                }
            }
        }
    }
    LabelledField {
        id: nameField
        objectName: "lotName"
        width: Math.min(parent.width, Theme.px(340))
        label: qsTr("What you call the lot; blank: crop and year")
        value: root.form.name
        trouble: root.troubleAt(1)
        onEdited: words => root.form.name = words
        onEntered: root.kept()
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: year
            objectName: "lotYear"
            width: Theme.px(150)
            label: qsTr("Packed in")
            value: root.form.year
            trouble: root.troubleAt(2)
            onEdited: words => root.form.year = words
            onEntered: root.kept()
        }
        LabelledField {
            id: percent
            objectName: "lotPercent"
            width: Theme.px(170)
            label: qsTr("Comes up, by the packet")
            unit: "%"
            value: root.form.percent
            trouble: root.troubleAt(3)
            onEdited: words => root.form.percent = words
            onEntered: root.kept()
        }
        LabelledField {
            id: seeds
            objectName: "lotSeeds"
            width: Theme.px(150)
            label: qsTr("Seeds in it")
            value: root.form.seeds
            trouble: root.troubleAt(4)
            onEdited: words => root.form.seeds = words
            onEntered: root.kept()
        }
    }
    LabelledField {
        objectName: "lotNote"
        width: Math.min(parent.width, Theme.px(500))
        label: qsTr("Note, may be left blank")
        value: root.form.note
        onEdited: words => root.form.note = words
        onEntered: root.kept()
    }
}
