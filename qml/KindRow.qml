import QtQuick

// A kind to pick from the list, and beside it what looks at it first.
Item {
    id: root

    required property int index
    required property string words
    required property string detail
    required property bool hazard
    required property string sentence
    /// The keys stand on it.
    property bool on: false

    signal picked
    signal lookedAt

    implicitHeight: Math.max(row.implicitHeight, look.implicitHeight)

    FoundRow {
        id: row
        objectName: "kindRow" + root.index
        width: look.x - Theme.px(6)
        height: root.height
        words: root.words
        detail: root.detail
        hazard: root.hazard
        sentence: root.sentence
        focusPolicy: Qt.NoFocus
        slanted: true
        on: root.on
        onClicked: root.picked()
    }
    SheetButton {
        id: look
        objectName: "kindLook" + root.index
        x: root.width - width
        anchors.verticalCenter: parent.verticalCenter
        implicitHeight: Theme.target(28)
        focusPolicy: Qt.NoFocus // In the list its key is L.
        text: qsTr("Look")
        reason: qsTr("Key L in the list. What is known of the kind, before it is picked.")
        Accessible.name: qsTr("Look at %1").arg(root.words)
        onClicked: root.lookedAt()
    }
}
