import QtQuick

// What was done last, in words, with the way back; stays until the next change, wherever one goes meanwhile.
Rectangle {
    id: root

    required property string said
    required property bool canUndo
    required property bool canRedo
    /// What it may have been meant as instead, on a button of its own; empty where it is plain.
    property string instead: ""
    property string insteadReason: ""
    property string undoReason: qsTr("Control and Z. Takes back what was logged last on this page.")

    signal undo
    signal redo
    signal insteadAsked

    visible: root.said !== ""
    implicitHeight: visible ? Math.max(saidText.height, undoButton.height) + Theme.px(12) : 0
    radius: Theme.controlRadius
    color: Theme.ink
    Accessible.role: Accessible.StatusBar
    Accessible.name: root.said

    Words {
        id: saidText
        objectName: "said"
        x: Theme.px(12)
        anchors.verticalCenter: parent.verticalCenter
        width: (insteadButton.visible ? insteadButton.x : redoButton.visible ? redoButton.x : undoButton.visible ? undoButton.x : parent.width) - x - Theme.px(12)
        text: root.said
        color: Theme.sheet
        Accessible.ignored: true
    }
    SheetButton {
        id: insteadButton
        objectName: "insteadButton"
        visible: root.instead !== ""
        x: (redoButton.visible ? redoButton.x : undoButton.visible ? undoButton.x : parent.width) - width - Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        text: root.instead
        reason: root.insteadReason
        onClicked: root.insteadAsked()
    }
    SheetButton {
        id: redoButton
        objectName: "redoButton"
        visible: root.canRedo
        x: (undoButton.visible ? undoButton.x : parent.width) - width - Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Redo")
        reason: qsTr("Control, Shift and Z. Does again what was taken back last.")
        onClicked: root.redo()
    }
    SheetButton {
        id: undoButton
        objectName: "undoButton"
        visible: root.canUndo
        anchors.right: parent.right
        anchors.rightMargin: Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Undo")
        reason: root.undoReason
        onClicked: root.undo()
    }
}
