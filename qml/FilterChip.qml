import QtQuick

// A chip that filters; a lozenge before the words where it is about hazards.
Chip {
    id: root

    property bool lozenge: false

    leftPadding: 0
    implicitWidth: Math.ceil(root.textWidth) + Theme.px(20) + (root.lozenge ? Theme.px(16) : 0)
    textX: root.lozenge ? Theme.px(25) : -1

    Lozenge {
        visible: root.lozenge
        x: Theme.px(9)
        anchors.verticalCenter: parent.verticalCenter
        Accessible.ignored: true
    }
}
