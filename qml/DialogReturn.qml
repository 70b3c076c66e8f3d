import QtQuick
import QtQuick.Templates as T
import QtQuick.Window

// Return in Qt's own dialog for a file that is to be written, which it does not heed: the field of the name has the
// keys when the dialog opens, and Return there is the button that accepts. The desktop's own dialogs are windows of their
// own and are left alone.
Item {
    id: root

    readonly property Item focused: root.Window.activeFocusItem
    readonly property QtObject field: root.focused !== null && root.focused.objectName === "fileNameTextField" ? root.focused : null
    property bool begun: false

    onFocusedChanged: if (!root.begun && root.focused !== null && root.focused.objectName.startsWith("fileDialog")) { // Its list, or what lies in it.
        root.begun = true;
        beginning.start();
    }

    Connections {
        target: root.field
        ignoreUnknownSignals: true
        function onAccepted(): void { // The dialog hears of the name only after this.
            accepting.beside = root.focused.parent;
            accepting.start();
        }
    }
    Timer { // The dialog gives the keys to its list once more when it is there.
        id: beginning
        interval: 0
        onTriggered: root.begin()
    }
    Timer {
        id: accepting
        property Item beside: null
        interval: 0
        onTriggered: root.accept(accepting.beside)
    }

    function named(within: Item, name: string): Item {
        for (let at = 0; at < within.children.length; ++at) {
            const child = within.children[at];
            const found = child.objectName === name ? child : root.named(child, name);
            if (found !== null)
                return found;
        }
        return null;
    }
    function begin(): void {
        for (let around = root.focused; around !== null; around = around.parent) {
            const name = root.named(around, "fileNameTextField");
            if (name !== null) {
                name.Accessible.name = qsTr("File name"); // Its label stands beside it and is not told with it.
                name.forceActiveFocus(Qt.OtherFocusReason);
                return;
            }
        }
    }
    function accept(beside: Item): void {
        for (let at = 0; at < beside.children.length; ++at) {
            const box = beside.children[at];
            if (box["standardButton"] !== undefined)
                box["standardButton"](T.Dialog.Open).clicked();
        }
    }
}
