import QtQuick

// A stop of the risk slider: its tick, and its chance in words below.
Item {
    id: root

    required property string words
    required property bool here
    required property bool named

    Rectangle {
        x: -0.8
        y: Theme.px(11)
        width: 1.6
        height: Theme.px(12)
        color: Theme.edge
        antialiasing: true
    }
    Text {
        textFormat: Text.PlainText
        visible: root.named
        x: Math.round(-width / 2)
        y: Theme.px(26)
        text: root.words
        color: root.here ? Theme.ink : Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: root.here ? Font.DemiBold : Font.Normal
        Accessible.ignored: true
    }
}
