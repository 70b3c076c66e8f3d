pragma ComponentBehavior: Bound

import QtQuick

// A night in one line: a number, the sky where it is known, Keep.
Item {
    id: root

    required property string title
    required property string unit
    required property string trouble
    property string instead: ""
    property string act: qsTr("Keep")
    property string reason: ""
    /// Whether it may be a night of some days ago; the day in words.
    property bool dated: false
    property string day: ""
    /// -1 where it is no number.
    readonly property int daysAgo: !root.dated || ago.text.trim() === "" ? 0 : /^\d{1,4}$/.test(ago.text.trim()) ? parseInt(ago.text) : -1
    /// What stands as days ago is no day that can be told: no number, or too many.
    readonly property bool dayIsNone: root.daysAgo < 0 || root.daysAgo > 0 && root.day === ""
    /// 0 not said, 1 clear and calm, 2 cloud or wind.
    property int sky: 0
    readonly property bool calm: root.sky === 1
    readonly property bool clouded: root.sky === 2

    signal kept(low: string, sky: int)
    signal mended

    implicitHeight: flow.height + (problem.visible ? problem.implicitHeight + Theme.px(6) : 0)

    function empty(): void {
        field.clear();
        ago.clear();
        root.sky = 0;
    }
    function focusField(): void {
        if (root.dayIsNone)
            ago.forceActiveFocus();
        else
            field.forceActiveFocus();
    }

    Flow {
        id: flow
        width: root.width
        spacing: Theme.px(8)

        Words {
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: root.title
            strong: true
        }
        SheetField {
            id: field
            objectName: "lowField"
            label: root.title
            unit: root.unit
            wrong: root.trouble !== "" && !root.dayIsNone
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.mended()
            onAccepted: root.kept(field.text, root.sky)
        }
        SheetField {
            id: ago
            objectName: "nightAgo"
            visible: root.dated
            least: Theme.px(150)
            label: qsTr("How many days ago the night ended, blank for this morning")
            placeholderText: qsTr("this morning")
            unit: ago.text === "" ? "" : qsTr("days ago")
            wrong: root.dayIsNone
            inputMethodHints: Qt.ImhDigitsOnly
            onTextEdited: root.mended()
            onAccepted: root.kept(field.text, root.sky)
        }
        Words {
            objectName: "nightDay"
            visible: root.daysAgo > 0 && text !== ""
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: root.day
            quiet: true
        }
        // The two kinds of sky stay together where that has room.
        Flow {
            objectName: "skyChips"
            width: Math.min(root.width, calmChip.implicitWidth + spacing + cloudChip.implicitWidth)
            spacing: flow.spacing

            Chip {
                id: calmChip
                objectName: "calmChip"
                spokenRole: Accessible.CheckBox
                height: Theme.target(32)
                text: qsTr("clear, calm")
                reason: qsTr("The sky was clear and the air still")
                on: root.calm
                onClicked: root.sky = root.calm ? 0 : 1
            }
            Chip {
                id: cloudChip
                objectName: "cloudChip"
                spokenRole: Accessible.CheckBox
                height: Theme.target(32)
                text: qsTr("cloud or wind")
                on: root.clouded
                onClicked: root.sky = root.clouded ? 0 : 2
            }
        }
        ActButton {
            objectName: "keepButton"
            text: root.act
            reason: root.reason
            onClicked: root.kept(field.text, root.sky)
        }
    }
    Trouble {
        id: problem
        anchors.bottom: parent.bottom
        width: root.width
        words: root.trouble
        instead: root.instead
        onTaken: words => {
            field.text = words;
            root.mended();
            field.forceActiveFocus();
        }
    }
}
