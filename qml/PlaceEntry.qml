pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Where the pots are: a town by name, or coordinates in any form; height and time zone are proposed.
Column {
    id: root

    required property PlaceForm form

    spacing: Theme.px(10)

    function focusFirst(): void {
        find.focusField();
    }
    /// The field that something is wrong at.
    function focusTrouble(): void {
        if (root.form.positionTrouble !== "")
            latitude.focusField();
        else if (root.form.heightTrouble !== "")
            height.focusField();
        else if (root.form.zoneTrouble !== "")
            zone.focusField();
        else
            find.focusField();
    }

    Column {
        width: parent.width

        LabelledField {
            id: find
            objectName: "placeFind"
            width: parent.width
            label: qsTr("Nearest town, or coordinates")
            example: qsTr("Town, or 48.2, 16.4")
            value: root.form.find
            trouble: root.form.findTrouble
            onEdited: words => root.form.find = words
            onEntered: {
                if (root.form.found.count > 0)
                    root.form.choose(0);
            }
            onBelow: {
                if (towns.count > 0)
                    towns.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
            }
        }
        Rectangle {
            visible: root.form.found.count > 0
            width: parent.width
            height: list.height + 2
            color: Theme.sheet
            border.width: 1
            border.color: Theme.edge
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Towns that answer to it")

            Column {
                id: list
                x: 1
                y: 1
                width: parent.width - 2

                Repeater {
                    id: towns
                    model: root.form.found

                    FoundRow {
                        required property int index
                        required words
                        required detail
                        required sentence
                        objectName: "town" + index
                        width: list.width
                        onClicked: {
                            root.form.choose(index);
                            find.focusField();
                        }
                        Keys.onDownPressed: towns.itemAt(Math.min(towns.count - 1, index + 1)).forceActiveFocus(Qt.TabFocusReason)
                        Keys.onUpPressed: {
                            if (index > 0)
                                towns.itemAt(index - 1).forceActiveFocus(Qt.TabFocusReason);
                            else
                                find.focusField();
                        }
                    }
                }
            }
        }
    }
    Row {
        width: parent.width
        spacing: Theme.px(11)

        LabelledField {
            id: latitude
            objectName: "latitude"
            width: (parent.width - parent.spacing) / 2
            label: qsTr("Latitude")
            unit: qsTr("° N")
            value: root.form.latitude
            onEdited: words => root.form.latitude = words
        }
        LabelledField {
            objectName: "longitude"
            width: (parent.width - parent.spacing) / 2
            label: qsTr("Longitude")
            unit: qsTr("° E")
            value: root.form.longitude
            onEdited: words => root.form.longitude = words
        }
    }
    Trouble {
        objectName: "positionTrouble"
        width: parent.width
        words: root.form.positionTrouble
    }
    LabelledField {
        id: height
        objectName: "height"
        width: parent.width
        label: qsTr("Height above the sea")
        unit: root.form.heightUnit
        value: root.form.height
        trouble: root.form.heightTrouble
        note: root.form.heightNote
        onEdited: words => root.form.height = words
    }
    LabelledField {
        id: zone
        objectName: "zone"
        width: parent.width
        label: qsTr("Time zone")
        value: root.form.zone
        trouble: root.form.zoneTrouble
        note: root.form.zoneNote
        onEdited: words => root.form.zone = words
    }
    LabelledField {
        objectName: "placeName"
        width: parent.width
        label: qsTr("What you call the place")
        value: root.form.name
        onEdited: words => root.form.name = words
    }
}
