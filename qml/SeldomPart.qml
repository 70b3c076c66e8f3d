import QtQuick

// A part that few rows have: made where it is first wanted, so that the many rows without it cost nothing.
Loader {
    id: root

    required property bool wanted
    required property string file
    /// Its properties, asked for when it is made.
    property var given: null

    visible: root.wanted
    onWantedChanged: if (root.wanted && root.status === Loader.Null)
        root.setSource(root.file, root.given())
}
