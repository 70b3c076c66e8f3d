pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// How much goes into the water: a second sheet over the page, where the grower says what stands at hand.
SheetFrame {
    id: root

    required property DoseModel dose

    signal closed

    part: "dose"
    title: root.dose.title
    visible: root.dose.open

    Component.onCompleted: if (root.dose.open)
        root.opened()
    onEscaped: root.dose.leave()

    function opened(): void {
        root.toTop();
        if (!root.dose.open) {
            root.closed();
            return;
        }
        root.forceActiveFocus();
        if (root.dose.spray)
            percent.focusField();
        else
            feed.focusField();
    }
    /// Where what is wrong stands.
    function focusTrouble(): void {
        const fields = [feed, feed, weight, water, strength, percent, canName, canHolds];
        fields[root.dose.troubleField].focusField();
    }
    function troubleAt(field: int): string {
        return root.dose.troubleField === field ? root.dose.trouble : "";
    }

    Shortcut {
        sequences: ["Ctrl+Return", "Ctrl+Enter"]
        enabled: root.visible
        onActivated: root.dose.keep()
    }
    Connections {
        target: root.dose
        function onOpenChanged(): void {
            root.opened();
        }
        function onWrong(): void {
            root.focusTrouble();
        }
    }
    Flow {
        visible: !root.dose.spray
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: feed
            objectName: "doseFeed"
            width: Theme.px(190)
            label: qsTr("Numbers on its label")
            example: "20-10-20"
            value: root.dose.feed
            trouble: root.troubleAt(DoseModel.Feed)
            onEdited: words => root.dose.feed = words
            onEntered: root.dose.keep()
        }
        ChoiceChips {
            width: Theme.px(210)
            title: qsTr("It is a")
            part: "doseForm"
            choices: [qsTr("powder"), qsTr("liquid")]
            chosen: root.dose.liquid ? 1 : 0
            onChoose: index => root.dose.liquid = index === 1
        }
        LabelledField {
            id: weight
            objectName: "doseWeight"
            width: Theme.px(300)
            label: root.dose.liquid ? qsTr("A millilitre of it weighs") : qsTr("A level teaspoon of it weighs")
            unit: "g"
            number: true
            note: root.dose.liquid ? qsTr("On its label; may be left blank") : qsTr("Weigh ten and take a tenth; may be left blank")
            value: root.dose.weight
            trouble: root.troubleAt(DoseModel.Weight)
            onEdited: words => root.dose.weight = words
            onEntered: root.dose.keep()
        }
        LabelledField {
            id: strength
            objectName: "doseStrength"
            width: Theme.px(200)
            label: qsTr("Strength, nitrogen")
            unit: "ppm"
            number: true
            note: qsTr("By the plan for this plant")
            value: root.dose.strength
            trouble: root.troubleAt(DoseModel.Strength)
            onEdited: words => root.dose.strength = words
            onEntered: root.dose.keep()
        }
    }
    Flow {
        visible: root.dose.spray
        width: parent.width
        spacing: Theme.px(12)

        ChoiceChips {
            width: Theme.px(210)
            title: qsTr("Mixed from")
            part: "doseStuff"
            choices: [qsTr("oil"), qsTr("soap")]
            chosen: root.dose.soap ? 1 : 0
            onChoose: index => root.dose.soap = index === 1
        }
        LabelledField {
            id: percent
            objectName: "dosePercent"
            width: Theme.px(230)
            label: qsTr("Of the water, by the label")
            unit: "%"
            number: true
            value: root.dose.percent
            trouble: root.troubleAt(DoseModel.Percent)
            onEdited: words => root.dose.percent = words
            onEntered: root.dose.keep()
        }
    }
    Column {
        width: parent.width
        spacing: Theme.px(8)

        LabelledField {
            id: water
            objectName: "doseWater"
            width: Math.min(parent.width, Theme.px(300))
            label: qsTr("Water, or a can of yours")
            value: root.dose.water
            trouble: root.troubleAt(DoseModel.Water)
            onEdited: words => root.dose.water = words
            onEntered: root.dose.keep()
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)
            Accessible.role: Accessible.Grouping
            Accessible.name: qsTr("Cans")

            Repeater {
                model: root.dose.cans

                Chip {
                    id: can
                    required property string words
                    required property string value
                    required property string sentence
                    required property int index
                    objectName: "can" + can.index
                    text: can.words
                    reason: can.sentence
                    on: root.dose.water === can.value
                    onClicked: root.dose.water = can.value
                }
            }
        }
    }
    Rectangle {
        width: parent.width
        height: answer.height + Theme.px(20)
        color: Theme.well
        border.width: Theme.contrast ? 1 : 0
        border.color: Theme.edge

        Column {
            id: answer
            x: Theme.px(14)
            y: Theme.px(10)
            width: parent.width - 2 * x
            spacing: Theme.px(4)

            Words {
                objectName: "doseAnswer"
                width: parent.width
                text: root.dose.dose !== "" ? root.dose.dose : root.dose.why !== "" ? root.dose.why : qsTr("The dose stands here once all of it is known.")
                quiet: root.dose.dose === ""
                font.family: Theme.titleFamily
                font.pixelSize: Theme.headSize
            }
            Repeater {
                model: root.dose.remarks

                Words {
                    required property string modelData
                    width: answer.width
                    text: modelData
                    quiet: true
                    font.pixelSize: Theme.smallSize
                }
            }
            Repeater {
                model: root.dose.cautions

                Item {
                    id: caution
                    required property string modelData
                    width: answer.width
                    height: cautionWords.height + 2

                    Lozenge {
                        y: Theme.px(3)
                    }
                    Words {
                        id: cautionWords
                        x: Theme.px(20)
                        width: caution.width - x
                        text: caution.modelData
                        color: Theme.caution
                        font.pixelSize: Theme.smallSize
                    }
                }
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("A can or a spoon of your own")
        strong: true
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: canName
            objectName: "canName"
            width: Theme.px(220)
            label: qsTr("What you call it")
            example: qsTr("blue can, coffee spoon")
            value: root.dose.canName
            trouble: root.troubleAt(DoseModel.CanName)
            onEdited: words => root.dose.canName = words
            onEntered: root.dose.keepCan()
        }
        LabelledField {
            id: canHolds
            objectName: "canHolds"
            width: Theme.px(170)
            label: qsTr("What it holds")
            example: qsTr("1.5 L, 6 cups, 7 ml")
            value: root.dose.canHolds
            trouble: root.troubleAt(DoseModel.CanHolds)
            onEdited: words => root.dose.canHolds = words
            onEntered: root.dose.keepCan()
        }
        Column {
            width: Math.min(keepIt.implicitWidth, parent.width) // Of its own, as the button is no wider than it.
            spacing: Theme.px(3)

            Words { // As high as the labels beside it.
                text: " "
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
            SheetButton {
                id: keepIt
                objectName: "canKeep"
                height: Theme.target(34)
                text: qsTr("Keep it")
                reason: qsTr("It stays with the household and can be taken wherever water is measured.")
                onClicked: root.dose.keepCan()
            }
        }
    }
    acts: [
        Trouble {
            objectName: "doseTrouble"
            width: parent.width
            words: root.dose.error
        },
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            ActButton {
                objectName: "doseKeep"
                text: root.dose.spray ? qsTr("Done") : qsTr("Use this feed and can")
                reason: root.dose.spray ? qsTr("Control and Enter") : qsTr("Control and Enter. Remembered on this machine; each feed then says its dose.")
                onClicked: root.dose.keep()
            }
            SheetButton {
                objectName: "doseLeave"
                visible: !root.dose.spray
                text: qsTr("Leave")
                reason: qsTr("Escape")
                onClicked: root.dose.leave()
            }
        }
    ]
}
