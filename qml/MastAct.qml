import QtQuick

// An act of the window beside the date: in a word, or as a small drawn shape where words have no room.
SheetButton {
    id: root

    /// "undo" or "find".
    required property string shape
    property bool drawn: false
    readonly property real wordsWidth: Math.ceil(words.advanceWidth) + Theme.px(26)
    readonly property real drawnWidth: Theme.target(28)

    width: root.drawn ? root.drawnWidth : root.wordsWidth
    height: Theme.target(28)
    contentItem: Item {}

    Text {
        textFormat: Text.PlainText
        anchors.centerIn: parent
        visible: !root.drawn
        text: root.text
        color: Theme.ink
        font: words.font
        Accessible.ignored: true
    }
    Canvas {
        id: drawing
        readonly property color ink: Theme.ink
        anchors.centerIn: parent
        visible: root.drawn
        width: Theme.px(18)
        height: Theme.px(18)
        Accessible.ignored: true
        onInkChanged: drawing.requestPaint()

        onPaint: {
            const pen = drawing.getContext("2d");
            pen.reset();
            pen.scale(drawing.width / 18, drawing.height / 18);
            pen.strokeStyle = drawing.ink;
            pen.lineWidth = 1.8;
            pen.lineCap = "round";
            pen.lineJoin = "round";
            pen.beginPath();
            if (root.shape === "undo") { // An arrow that turns back.
                pen.moveTo(6.5, 2.5);
                pen.lineTo(2.5, 6.5);
                pen.lineTo(6.5, 10.5);
                pen.moveTo(2.5, 6.5);
                pen.lineTo(10.5, 6.5);
                pen.arc(10.5, 11, 4.5, -Math.PI / 2, Math.PI / 2);
                pen.lineTo(7, 15.5);
            } else { // A glass.
                pen.arc(7.5, 7.5, 5, 0, 2 * Math.PI);
                pen.moveTo(11.2, 11.2);
                pen.lineTo(16, 16);
            }
            pen.stroke();
        }
    }
    TextMetrics {
        id: words
        text: root.text
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
    }
    Hint {
        objectName: "mastHint"
        visible: root.drawn && (root.hovered || root.visualFocus)
        anchors.horizontalCenter: parent.horizontalCenter
        y: root.height + Theme.px(4)
        z: 10
        words: root.text
    }
}
