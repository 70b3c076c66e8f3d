import QtQuick

// The head of a column that sorts.
Rectangle {
    id: root

    property string text: ""
    property bool on: false
    property bool descending: false

    signal clicked

    implicitWidth: Math.ceil(label.implicitWidth) + Theme.px(18)
    implicitHeight: Theme.target(28)
    color: pointer.containsMouse ? Theme.well : "transparent"
    activeFocusOnTab: true
    Accessible.role: Accessible.ColumnHeader
    Accessible.name: root.text
    Accessible.description: root.on ? (root.descending ? qsTr("sorted, from the last") : qsTr("sorted, from the first")) : qsTr("sorts the table by this")
    Accessible.focusable: true
    Accessible.onPressAction: root.clicked()
    Keys.onSpacePressed: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    FocusRing {
        visible: root.activeFocus
        away: 0
    }
    Text {
        id: label
        textFormat: Text.PlainText
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        color: root.on ? Theme.ink : Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: root.on ? Font.DemiBold : Font.Normal
        Accessible.ignored: true
    }
    Canvas {
        id: arrow
        property color ink: Theme.ink
        property bool down: root.descending
        visible: root.on
        anchors.left: label.right
        anchors.leftMargin: Theme.px(5)
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.px(9)
        height: Theme.px(6)
        onInkChanged: arrow.requestPaint()
        onDownChanged: arrow.requestPaint()
        onPaint: {
            const pen = arrow.getContext("2d");
            pen.reset();
            pen.fillStyle = arrow.ink;
            pen.beginPath();
            pen.moveTo(0, arrow.down ? 0 : arrow.height);
            pen.lineTo(arrow.width / 2, arrow.down ? arrow.height : 0);
            pen.lineTo(arrow.width, arrow.down ? 0 : arrow.height);
            pen.closePath();
            pen.fill();
        }
    }
    MouseArea {
        id: pointer
        anchors.fill: parent
        hoverEnabled: true
        onClicked: root.clicked()
    }
}
