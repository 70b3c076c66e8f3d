pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Plants: found by a part of any name, several at once, each with its spot; or a kind of one's own with its lines.
Item {
    id: root

    required property PlantsForm form
    required property bool narrow
    property string heading: qsTr("Which plants?")
    readonly property real leftWidth: root.narrow ? root.width : Math.round(root.width * 0.46)
    readonly property real rightX: root.narrow ? 0 : root.leftWidth + Theme.px(48)

    implicitHeight: root.narrow ? right.y + right.height : Math.max(left.height, right.height)

    function focusFirst(): void {
        find.focusField();
    }
    /// Back from a kind that was looked at.
    function focusKinds(): void {
        kinds.forceActiveFocus();
    }

    Column {
        id: left
        width: root.leftWidth
        spacing: Theme.px(8)

        Heading {
            width: parent.width
            text: root.heading
            font.pixelSize: Theme.nameSize
        }
        LabelledField {
            id: find
            objectName: "plantFind"
            width: parent.width
            label: qsTr("Common or botanical name")
            example: qsTr("lemon, Ficus, basil")
            value: root.form.find
            note: root.form.foundWords
            onEdited: words => root.form.find = words
            onEntered: root.form.pick(0)
            onBelow: {
                kinds.currentIndex = 0;
                kinds.forceActiveFocus();
            }
        }
        KindFilterChips {
            width: parent.width
            filter: root.form.filter
        }
        ListView {
            id: kinds
            objectName: "kinds"
            width: parent.width
            height: Math.min(contentHeight, Theme.px(230))
            clip: true
            activeFocusOnTab: true
            boundsBehavior: Flickable.StopAtBounds
            model: root.form.found
            currentIndex: 0
            highlightFollowsCurrentItem: true
            highlightMoveDuration: 0
            cacheBuffer: 0 // Rows made ahead would be cancelled, with a warning of Qt, as the list shrinks with each letter.
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Kinds that answer to it")
            Accessible.description: qsTr("Enter picks one; L looks at what is known of it")
            Keys.onReturnPressed: root.form.pick(kinds.currentIndex)
            Keys.onEnterPressed: root.form.pick(kinds.currentIndex)
            Keys.onSpacePressed: root.form.pick(kinds.currentIndex)
            Keys.onPressed: event => {
                if (event.key === Qt.Key_L && event.modifiers === Qt.NoModifier) {
                    root.form.look(kinds.currentIndex);
                    event.accepted = true;
                }
            }
            Keys.onUpPressed: event => {
                if (kinds.currentIndex > 0)
                    kinds.currentIndex -= 1;
                else
                    find.focusField();
            }

            ScrollBar.vertical: SheetScrollBar {}
            delegate: KindRow {
                width: kinds.width - 10
                on: kinds.activeFocus && kinds.currentIndex === index
                onPicked: {
                    kinds.currentIndex = index;
                    root.form.pick(index);
                }
                onLookedAt: {
                    kinds.currentIndex = index;
                    root.form.look(index);
                }
            }
        }
        SheetButton {
            id: ownButton
            objectName: "ownButton"
            text: own.visible ? qsTr("No kind of your own") : qsTr("A kind of your own")
            reason: qsTr("For a plant that is not in the list: you say its lines")
            onClicked: {
                own.visible = !own.visible;
                if (own.visible)
                    ownName.focusField();
            }
        }
        Column {
            id: own
            objectName: "ownKind"
            visible: false
            width: parent.width
            spacing: Theme.px(8)

            LabelledField {
                id: ownName
                objectName: "ownName"
                width: parent.width
                label: qsTr("Its name")
                value: root.form.ownName
                trouble: root.form.ownTroubleField === 0 ? root.form.ownTrouble : ""
                onEdited: words => root.form.ownName = words
            }
            Flow {
                width: parent.width
                spacing: Theme.px(8)

                LabelledField {
                    id: ownSafe
                    objectName: "ownSafe"
                    width: Theme.px(104)
                    label: qsTr("Safe night")
                    unit: root.form.unit
                    example: root.form.exampleSafe
                    value: root.form.ownSafe
                    onEdited: words => root.form.ownSafe = words
                }
                LabelledField {
                    id: ownDamage
                    objectName: "ownDamage"
                    width: Theme.px(104)
                    label: qsTr("Harm begins")
                    unit: root.form.unit
                    example: root.form.exampleDamage
                    value: root.form.ownDamage
                    onEdited: words => root.form.ownDamage = words
                }
                LabelledField {
                    id: ownLethal
                    objectName: "ownLethal"
                    width: Theme.px(104)
                    label: qsTr("Kills")
                    unit: root.form.unit
                    value: root.form.ownLethal
                    onEdited: words => root.form.ownLethal = words
                }
            }
            Trouble {
                objectName: "ownTrouble"
                width: parent.width
                words: root.form.ownTroubleField > 0 ? root.form.ownTrouble : ""
            }
            Flow {
                width: parent.width
                spacing: Theme.apart(6)

                Repeater {
                    model: [qsTr("Little light"), qsTr("Some light"), qsTr("Bright"), qsTr("Full sun")]

                    Chip {
                        required property string modelData
                        required property int index
                        objectName: "ownLight" + index
                        text: modelData
                        on: root.form.ownLight === index
                        onClicked: root.form.ownLight = index
                    }
                }
            }
            TickRow {
                objectName: "ownPoisonous"
                width: parent.width
                text: qsTr("Poisonous or spiny: out of reach of children and animals")
                on: root.form.ownPoisonous
                onClicked: root.form.ownPoisonous = !root.form.ownPoisonous
            }
            TickRow {
                width: parent.width
                text: qsTr("Must dry out between waterings; rain on it is stress")
                on: root.form.ownDries
                onClicked: root.form.ownDries = !root.form.ownDries
            }
            TickRow {
                width: parent.width
                text: qsTr("Grown outdoors while the nights allow")
                on: root.form.ownOutdoors
                onClicked: root.form.ownOutdoors = !root.form.ownOutdoors
            }
            SheetButton {
                objectName: "addOwn"
                text: qsTr("Add this kind")
                onClicked: {
                    if (root.form.addOwn()) {
                        own.visible = false;
                        ownButton.forceActiveFocus();
                    } else if (root.form.ownTroubleField === 0) {
                        ownName.focusField();
                    } else if (root.form.ownTroubleField === 1) {
                        ownSafe.focusField();
                    } else if (root.form.ownTroubleField === 2) {
                        ownDamage.focusField();
                    } else {
                        ownLethal.focusField();
                    }
                }
            }
        }
    }
    Rectangle {
        visible: !root.narrow
        x: root.rightX - Theme.px(24)
        width: 1
        height: root.implicitHeight
        color: Theme.rule
    }
    Column {
        id: right
        x: root.rightX
        y: root.narrow ? left.height + Theme.px(20) : 0
        width: root.width - x
        spacing: Theme.px(8)

        Heading {
            width: parent.width
            text: root.form.total === 0 ? qsTr("Picked") : root.form.total === 1 ? qsTr("Picked: 1 plant") : qsTr("Picked: %1 plants").arg(root.form.total)
        }
        Column {
            visible: root.form.total === 0
            width: parent.width
            spacing: Theme.px(6)

            EmptyPot {}
            Words {
                width: parent.width
                text: qsTr("Press a kind to pick it, and again for one more. A few are enough for a year.")
                quiet: true
            }
        }
        Column {
            id: picked
            objectName: "picked"
            width: parent.width
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Plants that were picked")

            Repeater {
                model: root.form.picked

                PickedRow {
                    required property int index
                    objectName: "picked" + index
                    width: picked.width
                    on: root.form.current === index
                    onMore: root.form.more(index)
                    onFewer: root.form.fewer(index)
                    onChosen: root.form.current = index
                }
            }
        }
        Words {
            visible: root.form.total > 0 && root.form.places.count > 0
            width: parent.width
            text: qsTr("%1 stands today at").arg(root.form.currentName)
            font.pixelSize: Theme.rowSize
        }
        Flow {
            visible: root.form.total > 0
            width: parent.width
            spacing: Theme.apart(6)

            Repeater {
                model: root.form.places

                Chip {
                    required property int index
                    required text
                    required reason
                    required property bool chosen
                    on: chosen
                    objectName: "place" + index
                    onClicked: root.form.standAt(root.form.current, index)
                }
            }
        }
    }
}
