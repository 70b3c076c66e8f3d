import QtQuick

// A box that is ticked or not; the tick is a shape, since the text font has none.
Rectangle {
    id: root

    required property bool ticked

    implicitWidth: Theme.px(20)
    implicitHeight: Theme.px(20)
    radius: Theme.sheetRadius
    color: root.ticked ? Theme.action : Theme.sheet
    border.width: root.ticked ? 0 : 1.5
    border.color: Theme.edge

    MarkBox {
        objectName: "tick"
        anchors.fill: parent
        visible: root.ticked
    }
}
