import QtQuick

// A part that few rows have: made where it is first wanted, so that the many rows without it cost nothing.
Loader {
    id: root

    required property bool wanted

    /// Its source is to be set now.
    signal firstWanted

    visible: root.wanted
    onWantedChanged: if (root.wanted && root.status === Loader.Null)
        root.firstWanted()
}
