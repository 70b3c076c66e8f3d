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

    Canvas {
        id: tick
        property color ink: Theme.actionInk
        anchors.fill: parent
        visible: root.ticked
        onInkChanged: tick.requestPaint()
        onPaint: {
            const pen = tick.getContext("2d");
            pen.reset();
            pen.scale(tick.width / 20, tick.height / 20);
            pen.strokeStyle = tick.ink;
            pen.lineWidth = 2.2;
            pen.beginPath();
            pen.moveTo(5, 10.5);
            pen.lineTo(8.5, 14);
            pen.lineTo(15, 6.5);
            pen.stroke();
        }
    }
}
