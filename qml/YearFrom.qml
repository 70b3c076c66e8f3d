import QtQuick
import Lathhouse.Models

// From which date the year is looked at.
FocusScope {
    id: root

    required property YearModel year

    signal closed

    visible: false
    implicitHeight: body.height + Theme.px(28)
    Accessible.role: Accessible.Dialog
    Accessible.name: title.text
    Keys.onEscapePressed: root.close()

    function open(): void {
        root.visible = true;
        field.forceActiveFocus(Qt.TabFocusReason);
        field.selectAll();
    }
    function close(): void {
        root.year.begin.forgive();
        root.visible = false;
        root.closed();
    }
    function show(typed: string): void {
        if (root.year.begin.show(typed))
            root.close();
        else
            field.forceActiveFocus(Qt.TabFocusReason);
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.controlRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge
    }
    MouseArea {
        anchors.fill: parent
    }
    Column {
        id: body
        x: Theme.px(18)
        y: Theme.px(14)
        width: root.width - 2 * x
        spacing: Theme.px(8)

        Heading {
            id: title
            width: parent.width
            text: qsTr("The year from another date")
        }
        Words {
            width: Math.min(parent.width, Theme.px(620))
            text: qsTr("Twelve months from there, planned as the plants stand today. It is for looking: nothing of it is kept or pinned.")
            quiet: true
            font.pixelSize: Theme.rowSize
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            SheetField {
                id: field
                objectName: "yearFromField"
                width: Theme.px(190)
                label: qsTr("From which date, blank for today")
                placeholderText: root.year.begin.example
                wrong: root.year.begin.trouble !== ""
                onTextEdited: root.year.begin.forgive()
                onAccepted: root.show(field.text)
            }
            SheetButton {
                objectName: "yearFromShow"
                text: qsTr("Show the year")
                reason: qsTr("Enter")
                onClicked: root.show(field.text)
            }
            SheetButton {
                objectName: "yearFromToday"
                visible: root.year.begin.elsewhere
                text: qsTr("From today")
                reason: qsTr("The year in which plans are kept.")
                onClicked: {
                    field.clear();
                    root.show("");
                }
            }
            SheetButton {
                objectName: "yearFromClose"
                text: qsTr("Close")
                reason: qsTr("Escape")
                onClicked: root.close()
            }
        }
        Trouble {
            objectName: "yearFromTrouble"
            width: parent.width
            words: root.year.begin.trouble
        }
    }
}
