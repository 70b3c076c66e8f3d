import QtQuick

// One thing asked about the chosen task, in place above the tasks.
Rectangle {
    id: root

    required property string label
    required property string example
    required property string act
    required property string leaveWords
    /// A question of its own above the field; may be empty.
    property string question: ""
    property bool open: false
    /// Names of the parts for tests.
    property string fieldName: "askField"
    property string actName: "askButton"
    property bool number: false
    /// Few letters are written, as for a number or a date.
    property bool narrowField: root.number
    readonly property string words: field.text

    signal done
    signal givenUp

    visible: root.open
    height: visible ? contents.height + Theme.px(16) : 0
    color: Theme.well
    border.width: 1
    border.color: Theme.edge
    Keys.onEscapePressed: root.givenUp()

    function ask(): void {
        root.open = true;
        field.forceActiveFocus();
    }
    function close(): void {
        root.open = false;
        field.clear();
    }
    function focusField(): void {
        field.forceActiveFocus();
        field.selectAll();
    }

    Column {
        id: contents
        x: Theme.px(12)
        y: Theme.px(8)
        width: parent.width - 2 * x
        spacing: Theme.px(6)

        Words {
            visible: text !== ""
            width: parent.width
            text: root.question
        }
        Flow {
            width: parent.width
            spacing: Theme.px(8)

            SheetField {
                id: field
                objectName: root.fieldName
                least: Theme.px(root.narrowField ? 150 : 340)
                most: contents.width
                label: root.label
                placeholderText: root.example
                inputMethodHints: root.number ? Qt.ImhDigitsOnly : Qt.ImhNone
                onAccepted: root.done()
            }
            SheetButton {
                objectName: root.actName
                text: root.act
                onClicked: root.done()
            }
            SheetButton {
                text: root.leaveWords
                reason: qsTr("Escape")
                onClicked: root.givenUp()
            }
        }
    }
}
