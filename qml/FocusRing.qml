import QtQuick

// The ring of keyboard focus, two pixels away from what it encloses.
Rectangle {
    id: root

    property int away: 2

    anchors.fill: parent
    anchors.margins: -(root.away + 2)
    radius: Theme.controlRadius + root.away
    color: "transparent"
    border.width: 2
    border.color: Theme.focus
}
