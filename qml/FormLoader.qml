import QtQuick

// A form over the pages: made when it is opened, and gone with the memory it held once it is closed.
Loader {
    id: root

    required property bool open
    required property string file
    /// Its properties.
    required property var given

    signal closed

    onOpenChanged: {
        if (!root.open)
            release.start();
        else if (root.status === Loader.Null)
            root.setSource(root.file, root.given);
    }

    Timer { // Not while the form itself says that it closes.
        id: release
        interval: 1
        onTriggered: if (!root.open)
            root.source = ""
    }
    Connections {
        target: root.item
        ignoreUnknownSignals: true
        function onClosed(): void {
            root.closed();
        }
    }
}
