import QtQuick

// What is wrong, in place: a rust triangle and the sentence.
Item {
    id: root

    property string words: ""
    /// What was likely meant, as one would type it; it is put into the field by one press.
    property string instead: ""

    /// That is taken.
    signal taken(words: string)

    visible: root.words !== ""
    implicitHeight: visible ? sentence.height + (likely.visible ? likely.height + Theme.px(6) : 0) : 0
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.words
    Accessible.ignored: root.words === ""

    Canvas {
        id: triangle
        property color ink: Theme.caution
        y: Theme.px(4)
        width: Theme.px(11)
        height: Theme.px(10)
        onInkChanged: triangle.requestPaint()
        onPaint: {
            const pen = triangle.getContext("2d");
            pen.reset();
            pen.fillStyle = triangle.ink;
            pen.beginPath();
            pen.moveTo(triangle.width / 2, 0);
            pen.lineTo(triangle.width, triangle.height);
            pen.lineTo(0, triangle.height);
            pen.closePath();
            pen.fill();
        }
    }
    Words {
        id: sentence
        objectName: "trouble"
        x: Theme.px(17)
        width: root.width - x
        text: root.words
        color: Theme.caution
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    SheetButton {
        id: likely
        objectName: "insteadButton"
        visible: root.words !== "" && root.instead !== ""
        x: sentence.x
        y: sentence.height + Theme.px(6)
        height: Theme.target(28)
        text: qsTr("Write %1").arg(root.instead)
        reason: qsTr("Puts it into the field; nothing is kept by that")
        onClicked: root.taken(root.instead)
    }
}
