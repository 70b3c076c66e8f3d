pragma ComponentBehavior: Bound

import QtQuick

// Where a file or a folder lies: typed, or chosen in a dialog.
Flow {
    id: root

    enum Kind { Open, Save, Folder }

    required property string label
    required property int kind
    property list<string> filters: []
    property bool wrong: false
    property alias text: field.text
    property string part: "path"
    /// What is worth knowing before it is written.
    property string note: ""

    signal accepted
    signal edited
    /// A dialog gave this address.
    signal picked(address: url)

    spacing: Theme.px(8)

    function focusField(): void {
        field.forceActiveFocus();
    }

    SheetField {
        id: field
        objectName: root.part + "Field"
        width: Math.max(Theme.px(120), Math.min(root.width, Math.max(Theme.px(200), root.width - choose.width - root.spacing)))
        label: root.label
        placeholderText: root.label
        wrong: root.wrong
        // A path that stands there is replaced by what is typed, until somebody has begun to mend it.
        property bool untouched: true
        onActiveFocusChanged: if (field.activeFocus && (field.untouched || field.focusReason === Qt.TabFocusReason || field.focusReason === Qt.BacktabFocusReason))
            field.selectAll()
        Accessible.description: root.note
        onTextEdited: {
            field.untouched = false;
            root.edited();
        }
        onAccepted: root.accepted()
    }
    SheetButton {
        id: choose
        objectName: root.part + "Choose"
        text: qsTr("Choose")
        reason: qsTr("%1: opens a dialog").arg(root.label)
        onClicked: {
            pick.source = "";
            pick.setSource(Qt.resolvedUrl("FilePick.qml"), { asker: root });
        }
    }
    Words {
        objectName: root.part + "Note"
        visible: text !== ""
        width: root.width
        text: root.note
        quiet: true
        font.pixelSize: Theme.smallSize
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        Accessible.ignored: true
    }
    Words {
        visible: pick.status === Loader.Error
        width: root.width
        text: qsTr("There is no dialog for files on this machine; type the path.")
        font.pixelSize: Theme.smallSize
    }
    // Loaded when it is first asked for.
    Loader {
        id: pick
    }
}
