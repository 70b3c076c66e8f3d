import QtQuick
import QtQuick.Window

// After Qt's own dialogs for files, which leave the keys nowhere: back to what had them when it was asked for. The desktop's
// own are windows of their own, which do that themselves.
Item {
    id: root

    /// Whether the dialog is open.
    required property bool open
    readonly property Item focused: root.Window.activeFocusItem
    property Item before: null
    property bool waiting: false

    onOpenChanged: if (!root.open && root.before !== null) {
        root.waiting = true;
        root.giveBack();
    }
    onFocusedChanged: root.giveBack()

    /// Called before the dialog opens.
    function remember(): void {
        root.before = root.Window.activeFocusItem;
    }
    function giveBack(): void {
        if (!root.waiting || root.focused !== null && root.focused !== root.Window.contentItem)
            return;
        root.waiting = false;
        root.before.forceActiveFocus(Qt.TabFocusReason); // With its ring.
    }
    /// What was chosen as the address of a file. A name that was typed in Qt's own dialog comes without a scheme, a whole path
    /// with the folder before it.
    function fileOf(chosen: url): url {
        const words = String(chosen);
        if (!words.startsWith("/"))
            return chosen;
        const path = words.slice(Math.max(0, words.lastIndexOf("//") + 1));
        return "file://" + path.split("/").map(part => encodeURIComponent(decodeURIComponent(part))).join("/");
    }
}
