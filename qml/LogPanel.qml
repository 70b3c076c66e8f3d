pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Log something for a plant or for those that are marked: a second sheet over the page.
FocusScope {
    id: root

    required property PlantsModel plants
    /// Place in PlantsModel.What.
    property int what: PlantsModel.Watered
    property int measure: 0
    readonly property bool measuring: root.what === PlantsModel.Measured
    /// Of pests, of harm, of the list.
    readonly property bool seen: root.what >= PlantsModel.LookedOver
    readonly property bool detailed: root.what === PlantsModel.PestFound || root.what === PlantsModel.Treated || root.what === PlantsModel.ColdNight || root.what === PlantsModel.ChemicalDamage || root.what === PlantsModel.Divided
    /// How many pests, or why it is set apart.
    property int choice: 0
    /// How it was measured; -1: as the measure usually is.
    property int method: -1

    signal closed

    implicitHeight: body.height + Theme.px(32)
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text

    Keys.onEscapePressed: root.closed()

    /// What the keyboard has come to is brought into view.
    readonly property Item focused: root.visible ? root.Window.activeFocusItem : null
    onFocusedChanged: {
        let above = root.focused;
        while (above !== null && above !== sheet.contentItem)
            above = above.parent;
        if (above === null || root.focused === sheet.contentItem)
            return;
        const top = root.focused.mapToItem(sheet.contentItem, 0, 0).y - Theme.px(8);
        const bottom = top + root.focused.height + Theme.px(16);
        if (top < sheet.contentY)
            sheet.contentY = Math.max(0, top);
        else if (bottom > sheet.contentY + sheet.height)
            sheet.contentY = Math.min(top, bottom - sheet.height);
    }

    function open(): void {
        sheet.contentY = 0;
        number.text = "";
        note.text = "";
        detail.text = "";
        ago.text = "";
        clock.text = "";
        zone.text = "";
        pot.text = "";
        mix.text = "";
        root.method = -1;
        if (root.plants.targetGone)
            root.choose(PlantsModel.Noted);
        root.visible = true;
        chips.itemAt(root.what).forceActiveFocus(Qt.TabFocusReason);
    }
    function choose(what: int): void {
        root.what = what;
        root.choice = 0;
        detail.text = "";
        root.plants.forgive();
    }
    function keep(): void {
        const days = ago.text.trim() === "" ? 0 : /^\d+$/.test(ago.text.trim()) ? parseInt(ago.text) : -1;
        if (root.measuring)
            root.plants.measuredIn(clock.text.trim() === "" ? "" : zone.text, pot.text, mix.text);
        const kept = root.measuring ? root.plants.logMeasured(number.text, root.measure, root.method, clock.text, who.text, note.text, days) : root.seen ? root.plants.logSeen(root.what, detail.text, root.choice, note.text, days) : root.plants.log(root.what, number.text, root.measure, note.text, days);
        if (kept)
            root.closed();
        else if (root.plants.dateAgo(days) === "")
            ago.forceActiveFocus();
        else if (root.measuring && clock.text !== "" && clock.wrong)
            clock.forceActiveFocus();
        else if (detail.visible)
            detail.forceActiveFocus();
        else if (number.visible && (root.measuring || number.text !== ""))
            number.forceActiveFocus();
        else
            note.forceActiveFocus();
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.controlRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge
    }
    MouseArea { // What lies below is not for the pointer now.
        anchors.fill: parent
    }
    SheetScroll { // With large letters it is higher than the window.
        id: sheet
        anchors.fill: parent
        contentHeight: body.height + Theme.px(32)

        Column {
            id: body
            x: Theme.px(18)
            y: Theme.px(14)
            width: sheet.width - 2 * x
            spacing: Theme.px(12)

            Heading {
                id: title
                width: parent.width
                text: qsTr("Log for %1").arg(root.plants.target)
            }
            Flow {
                width: parent.width
                spacing: Theme.px(8)

                Repeater {
                    id: chips
                    model: root.plants.sorts

                    Chip {
                        required property string modelData
                        required property int index
                        objectName: "logChip" + index
                        visible: !root.plants.targetGone || index === PlantsModel.Noted
                        text: modelData
                        on: root.what === index
                        // One stop of Tab for all of them; the arrows go from one to the next.
                        focusPolicy: on || activeFocus ? Qt.StrongFocus : Qt.ClickFocus
                        onClicked: root.choose(index)
                        Keys.onLeftPressed: if (!root.plants.targetGone)
                            chips.itemAt(Math.max(0, index - 1)).forceActiveFocus(Qt.TabFocusReason)
                        Keys.onRightPressed: if (!root.plants.targetGone)
                            chips.itemAt(Math.min(chips.count - 1, index + 1)).forceActiveFocus(Qt.TabFocusReason)
                    }
                }
            }
            Flow {
                visible: root.measuring
                width: parent.width
                spacing: Theme.px(8)

                Repeater {
                    id: measureChips
                    model: root.plants.measures

                    Chip {
                        required property int index
                        objectName: "measureChip" + index
                        on: root.measure === index
                        focusPolicy: on || activeFocus ? Qt.StrongFocus : Qt.ClickFocus
                        text: root.plants.measures.at(index, "text")
                        onClicked: root.measure = index
                        Keys.onLeftPressed: measureChips.itemAt(Math.max(0, index - 1)).forceActiveFocus(Qt.TabFocusReason)
                        Keys.onRightPressed: measureChips.itemAt(Math.min(measureChips.count - 1, index + 1)).forceActiveFocus(Qt.TabFocusReason)
                    }
                }
            }
            SheetField {
                id: number
                objectName: "logNumber"
                visible: root.measuring || root.what === PlantsModel.Fed
                least: Theme.px(170)
                label: root.measuring ? qsTr("What was read; repeats with a semicolon between") : qsTr("Nitrogen of the feed, may be left blank")
                unit: root.visible && root.measuring ? root.plants.measures.at(root.measure, "unit") : "ppm"
                placeholderText: root.measuring ? qsTr("43.5; 43.7") : qsTr("nitrogen")
                wrong: root.plants.error !== "" && (root.measuring || number.text !== "") && !(root.measuring && clock.wrong)
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onTextEdited: root.plants.forgive()
                onAccepted: root.keep()
            }
            ChoiceChips {
                visible: root.measuring
                width: parent.width
                part: "methodChip"
                title: qsTr("Measured with")
                choices: [qsTr("as usual"), qsTr("ruler"), qsTr("counting"), qsTr("by eye"), qsTr("photograph")]
                chosen: root.method + 1
                onChoose: index => root.method = index - 1
            }
            Flow {
                visible: root.what === PlantsModel.PestFound
                width: parent.width
                spacing: Theme.px(8)

                Repeater {
                    model: root.visible && root.what === PlantsModel.PestFound ? root.plants.pests() : []

                    Chip {
                        required property string modelData
                        required property int index
                        objectName: "pestChip" + index
                        on: detail.text === modelData
                        text: modelData
                        onClicked: {
                            detail.text = modelData;
                            root.plants.forgive();
                        }
                    }
                }
            }
            ChoiceChips {
                visible: root.what === PlantsModel.PestFound || root.what === PlantsModel.SetApartNow
                width: parent.width
                part: "logChoice"
                title: root.what === PlantsModel.PestFound ? qsTr("How many") : qsTr("Why")
                choices: root.what === PlantsModel.PestFound ? [qsTr("few"), qsTr("many"), qsTr("all over it")] : [qsTr("pests, or new here"), qsTr("sick roots")]
                chosen: root.choice
                onChoose: index => root.choice = index
            }
            SheetField {
                id: detail
                objectName: "logDetail"
                visible: root.detailed
                least: Theme.px(360)
                most: parent.width
                label: root.what === PlantsModel.PestFound ? qsTr("Which pest") : root.what === PlantsModel.Treated ? qsTr("With what, may be left blank") : root.what === PlantsModel.ColdNight ? qsTr("Lowest at the plant, may be left blank") : root.what === PlantsModel.Divided ? qsTr("Names of the new plants, with commas") : qsTr("Which product, may be left blank")
                placeholderText: label
                wrong: root.plants.error !== "" && (root.what === PlantsModel.PestFound || root.what === PlantsModel.ColdNight || root.what === PlantsModel.Divided)
                onTextEdited: root.plants.forgive()
                onAccepted: root.keep()
            }
            Words {
                objectName: "logCaution"
                visible: root.what === PlantsModel.Treated
                width: parent.width
                text: qsTr("The label and local advice come first, and say how long to keep away.")
            }
            Flow {
                width: parent.width
                spacing: Theme.px(10)

                SheetField {
                    id: ago
                    objectName: "logAgo"
                    least: Theme.px(150)
                    label: qsTr("How many days ago, blank for today")
                    placeholderText: qsTr("0 days ago")
                    unit: ago.text === "" ? "" : qsTr("days ago")
                    inputMethodHints: Qt.ImhDigitsOnly
                    onTextEdited: root.plants.forgive()
                    onAccepted: root.keep()
                }
                Words {
                    visible: text !== ""
                    height: Theme.target(32)
                    verticalAlignment: Text.AlignVCenter
                    text: /^\d+$/.test(ago.text.trim()) ? root.plants.dateAgo(parseInt(ago.text)) : ""
                    quiet: true
                }
                SheetField {
                    id: clock
                    objectName: "logTime"
                    visible: root.measuring
                    least: Theme.px(190)
                    label: qsTr("Time of day, may be left blank")
                    placeholderText: qsTr("time, such as 14:30")
                    wrong: root.plants.error.includes(clock.text.trim()) && clock.text.trim() !== ""
                    onTextEdited: root.plants.forgive()
                    onAccepted: root.keep()
                }
                SheetField {
                    id: zone
                    objectName: "logZone"
                    visible: root.measuring && clock.text.trim() !== ""
                    least: Theme.px(220)
                    label: qsTr("Time zone of that clock; blank: the one at home")
                    placeholderText: qsTr("zone, such as Europe/Rome")
                    wrong: zone.text.trim() !== "" && root.plants.error.includes(zone.text.trim())
                    onTextEdited: root.plants.forgive()
                    onAccepted: root.keep()
                }
                SheetField {
                    id: who
                    objectName: "logBy"
                    visible: root.measuring
                    least: Theme.px(190)
                    label: qsTr("Who measured, may be left blank")
                    placeholderText: qsTr("who measured")
                    onAccepted: root.keep()
                }
                SheetField {
                    id: pot
                    objectName: "logPot"
                    visible: root.measuring
                    least: Theme.px(190)
                    label: qsTr("Volume of the pot then; blank: as it is now")
                    placeholderText: qsTr("pot, if another")
                    unit: pot.text === "" ? "" : root.plants.potUnit()
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    onTextEdited: root.plants.forgive()
                    onAccepted: root.keep()
                }
                SheetField {
                    id: mix
                    objectName: "logMix"
                    visible: root.measuring
                    least: Theme.px(190)
                    label: qsTr("What it stood in, may be left blank")
                    placeholderText: qsTr("mix it stood in")
                    onAccepted: root.keep()
                }
            }
            SheetField {
                id: note
                objectName: "logNote"
                width: parent.width
                label: root.what === PlantsModel.Noted ? qsTr("Note") : qsTr("Note, may be left blank")
                placeholderText: label
                wrong: root.plants.error !== "" && root.what === PlantsModel.Noted
                onTextEdited: root.plants.forgive()
                onAccepted: root.keep()
            }
            Trouble {
                width: parent.width
                words: root.plants.error
            }
            Row {
                spacing: Theme.px(8)

                ActButton {
                    objectName: "keepButton"
                    text: qsTr("Keep in the journal")
                    onClicked: root.keep()
                }
                SheetButton {
                    objectName: "leaveButton"
                    text: qsTr("Leave")
                    reason: qsTr("Escape")
                    onClicked: root.closed()
                }
            }
        }
    }
}
