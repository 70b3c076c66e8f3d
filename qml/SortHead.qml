import QtQuick
import QtQuick.Templates as T

// The head of a column that sorts.
T.Button {
    id: root

    property bool on: false
    property bool descending: false

    implicitWidth: Math.ceil(label.implicitWidth) + Theme.px(18)
    implicitHeight: Theme.px(28)
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.role: Accessible.ColumnHeader
    Accessible.name: root.text
    Accessible.description: root.on ? (root.descending ? qsTr("sorted, last first") : qsTr("sorted, first first")) : qsTr("sorts the table by this")
    Accessible.onPressAction: root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        color: root.hovered ? Theme.well : "transparent"

        FocusRing {
            visible: root.visualFocus
        }
    }
    contentItem: Item {
        Text {
            id: label
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
    }
}
