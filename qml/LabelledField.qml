import QtQuick

// A field under its label, with what is wrong or worth knowing below it.
Column {
    id: root

    required property string label
    property string value: ""
    property string unit: ""
    property string trouble: ""
    property string instead: ""
    property string note: ""
    property string example: ""
    property bool number: false
    /// What is wrong with it is said elsewhere.
    property bool wrong: false

    signal edited(words: string)
    signal entered
    signal below

    spacing: Theme.px(3)

    function focusField(): void {
        field.forceActiveFocus();
        field.selectAll();
    }

    Words {
        width: parent.width
        text: root.label
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    SheetField {
        id: field
        objectName: root.objectName + "Field"
        width: parent.width
        height: Theme.target(34)
        label: root.label
        unit: root.unit
        text: root.value
        placeholderText: root.example
        wrong: root.wrong || root.trouble !== ""
        inputMethodHints: root.number ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        Accessible.description: root.trouble !== "" ? root.trouble : root.note
        onTextEdited: root.edited(field.text)
        onAccepted: root.entered()
        Keys.onDownPressed: root.below()
    }
    Trouble {
        width: parent.width
        words: root.trouble
        instead: root.instead
        onTaken: words => {
            root.edited(words);
            field.forceActiveFocus();
        }
    }
    Words {
        visible: root.note !== "" && root.trouble === ""
        width: parent.width
        text: root.note
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
}
