pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Children and animals, what they reach, and the plants that could hurt them there.
Item {
    id: root

    required property HomePeopleModel people
    required property bool narrow
    property int kind: 0
    readonly property real leftWidth: root.narrow ? root.width : Math.round(root.width * 0.5)
    readonly property real rightX: root.narrow ? 0 : root.leftWidth + Theme.px(36)

    implicitHeight: Math.max(list.height, reached.y + reached.height)

    Keys.onPressed: event => {
        const shift = (event.modifiers & Qt.ShiftModifier) !== 0;
        event.accepted = event.key === Qt.Key_Z && (event.modifiers & Qt.ControlModifier) !== 0;
        if (event.accepted && shift)
            root.people.redo();
        else if (event.accepted)
            root.people.undo();
    }

    function add(): void {
        if (root.people.add(root.kind, name.text))
            name.clear();
        else
            name.forceActiveFocus();
    }

    Column {
        id: list
        width: root.leftWidth
        spacing: Theme.px(10)

        Heading {
            width: parent.width
            text: qsTr("Who is to be kept from harm")
        }
        Words {
            visible: root.people.known && root.people.members.count === 0
            width: parent.width
            text: qsTr("List the child or the animal that gets at the plants, and the spots within reach: no plan will then put a poisonous plant there where another spot will do. What can hurt them is named below.")
            quiet: true
        }
        Repeater {
            model: root.people.members

            HomePeopleMember {
                width: list.width
                spots: root.people.spots
                onReached: (spot, reaches) => root.people.setReach(index, spot, reaches)
                onRemoved: root.people.remove(index)
                onRenamed: name => {
                    if (root.people.rename(index, name))
                        renaming = false;
                }
            }
        }
        Words {
            width: parent.width
            topPadding: Theme.px(6)
            text: qsTr("Add")
            strong: true
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            Repeater {
                model: 4

                Chip {
                    required property int index
                    objectName: "kind" + index
                    height: Theme.target(32)
                    text: root.people.kindWord(index)
                    reason: qsTr("Who is added")
                    on: root.kind === index
                    onClicked: root.kind = index
                }
            }
            SheetField {
                id: name
                objectName: "memberName"
                least: Theme.px(200)
                most: list.width
                label: qsTr("Name, if you like")
                placeholderText: label
                wrong: root.people.error !== ""
                onTextEdited: root.people.forgive()
                onAccepted: root.add()
            }
            ActButton {
                objectName: "addMember"
                text: qsTr("Add to the list")
                onClicked: root.add()
            }
        }
        Trouble {
            width: parent.width
            words: root.people.error
        }
        UndoBar {
            objectName: "peopleUndo"
            width: parent.width
            said: root.people.said
            canUndo: root.people.canUndo
            canRedo: root.people.canRedo
            onUndo: root.people.undo()
            onRedo: root.people.redo()
        }
        Words {
            objectName: "markedLine"
            visible: text !== ""
            width: parent.width
            text: root.people.marked
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Column {
        id: reached
        x: root.rightX
        y: root.narrow ? list.height + Theme.px(24) : 0
        width: root.width - x
        spacing: Theme.px(10)

        Heading {
            width: parent.width
            text: qsTr("Within their reach now")
        }
        Words {
            objectName: "peopleLine"
            width: parent.width
            text: root.people.line
            strong: root.people.harms.count > 0
        }
        Item {
            objectName: "lilyCaution"
            visible: root.people.lilies !== ""
            width: parent.width
            height: lilies.height
            Accessible.role: Accessible.AlertMessage
            Accessible.name: root.people.lilies

            Lozenge {
                y: Theme.px(5)
            }
            Words {
                id: lilies
                x: Theme.px(19)
                width: parent.width - x
                text: root.people.lilies
                color: Theme.caution
                Accessible.ignored: true
            }
        }
        Repeater {
            model: root.people.harms

            HomePeopleHarm {
                width: reached.width
            }
        }
        Words {
            visible: root.people.harms.count > 0
            width: parent.width
            text: qsTr("Set them out of reach now; a plan made from now on does it with the poisonous ones, where another spot will do. If something was swallowed, ask a doctor, a vet or the poison line at once, and take a piece of the plant along. Label and local advice first.")
            strong: true
            font.pixelSize: Theme.rowSize
        }
    }
    Rectangle {
        visible: !root.narrow
        x: root.leftWidth + Theme.px(17)
        width: 1
        height: root.implicitHeight
        color: Theme.rule
    }
}
