import QtQuick
import Lathhouse.Models

// How the plants of the year stand, in words that change it when they are pressed, and what the marks at their bars mean.
Item {
    id: root

    required property YearModel year
    readonly property bool roomy: longLine.width + Theme.px(16) < root.width
    readonly property string order: root.roomy ? root.year.plants.line : root.year.plants.shortLine

    property real orderHeight: 0
    implicitHeight: root.orderHeight + 4

    /// By date out, by spot, by name, and round again.
    function turn(): void {
        root.year.plants.rowOrder = (root.year.plants.rowOrder + 1) % 3;
    }

    TextMetrics {
        id: longLine
        text: root.year.plants.line + " · " + root.year.plants.marks
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
    }
    TextMetrics {
        id: orderWidth
        text: root.order
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
    }
    SpokenButton {
        id: button
        objectName: "rowOrderButton"
        visible: root.order !== ""
        width: Math.min(Math.ceil(orderWidth.advanceWidth) + 1 + Theme.px(8), root.width)
        height: root.height
        text: root.order
        reason: qsTr("Key O. Rows by the date out, by spot, or by name.")
        onClicked: root.turn()

        background: Rectangle {
            color: button.down ? Theme.well : button.hovered ? Theme.select : "transparent"

            FocusRing {
                visible: button.visualFocus
                away: -1
            }
        }
        contentItem: Item {
            Text {
                textFormat: Text.PlainText
                x: Theme.px(4)
                width: Math.min(implicitWidth, root.width - x)
                anchors.verticalCenter: parent.verticalCenter
                text: root.order
                color: Theme.ink
                wrapMode: Text.WordWrap
                onImplicitHeightChanged: root.orderHeight = implicitHeight
                font.family: Theme.textFamily
                font.pixelSize: Theme.smallSize
                font.underline: true
                style: Text.Outline
                styleColor: Theme.sheet
                Accessible.ignored: true
            }
        }
    }
    Text {
        textFormat: Text.PlainText
        visible: root.roomy && text !== ""
        x: button.width + Theme.px(6)
        anchors.verticalCenter: parent.verticalCenter
        text: root.year.plants.marks === "" ? "" : "· " + root.year.plants.marks
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        style: Text.Outline
        styleColor: Theme.sheet
        Accessible.ignored: true
    }
}
