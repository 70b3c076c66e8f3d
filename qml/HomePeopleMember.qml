pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// One of the household to be kept from harm, and the spots within reach.
Column {
    id: root

    required property int index
    required property string name
    required property string kind
    required property var reaches // A list of flags; QML knows no type for one that comes from a model.
    required property string sentence
    required property SheetRows spots

    signal reached(spot: int, reaches: bool)
    signal removed
    /// Whether it could be taken is for the model to say.
    signal renamed(name: string)

    property bool renaming: false
    /// The household's own name; blank where it has none.
    required property string own

    function keepName(): void {
        root.renamed(field.text);
    }

    onRenamingChanged: if (!root.renaming)
        rename.forceActiveFocus()

    objectName: "member" + root.index
    spacing: Theme.px(6)
    Accessible.role: Accessible.Grouping
    Accessible.name: root.sentence

    Words {
        width: root.width
        text: root.name.toLowerCase().endsWith(root.kind) ? root.name : qsTr("%1, %2").arg(root.name).arg(root.kind)
        strong: true
        Accessible.ignored: true
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        SheetButton {
            id: rename
            objectName: "renameMember" + root.index
            text: qsTr("Rename")
            reason: root.name
            onClicked: {
                root.renaming = !root.renaming;
                if (root.renaming) {
                    field.text = root.own;
                    field.forceActiveFocus();
                    field.selectAll();
                }
            }
        }
        SheetButton {
            objectName: "removeMember" + root.index
            text: qsTr("Take off the list")
            reason: root.name
            onClicked: root.removed()
        }
    }
    Flow {
        visible: root.renaming
        width: root.width
        spacing: Theme.px(8)

        SheetField {
            id: field
            objectName: "memberName" + root.index
            least: Theme.px(200)
            most: root.width
            label: qsTr("The name of %1; blank for none").arg(root.name)
            onAccepted: root.keepName()
            Keys.onEscapePressed: root.renaming = false
        }
        SheetButton {
            objectName: "keepMemberName" + root.index
            text: qsTr("Keep the name")
            onClicked: root.keepName()
        }
    }
    Words {
        width: root.width
        text: qsTr("Press the spots within reach.")
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        Repeater {
            model: root.spots

            Chip {
                id: chip
                required property string name
                required property int hand
                required property int index
                objectName: "reach" + root.index + "_" + chip.index
                text: chip.name
                spotColour: chip.hand
                on: root.reaches[chip.index] === true
                reason: chip.on ? qsTr("Within reach of %1").arg(root.name) : qsTr("Out of reach of %1").arg(root.name)
                spokenRole: Accessible.CheckBox
                onClicked: root.reached(chip.index, !chip.on)
            }
        }
    }
    Rectangle {
        width: root.width
        height: 1
        color: Theme.rule
    }
}
