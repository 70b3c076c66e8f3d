import QtQuick

// A few words about what lies under the pointer; the same are read aloud where they belong.
Rectangle {
    id: root

    required property string words

    implicitWidth: text.implicitWidth + Theme.px(16)
    implicitHeight: text.implicitHeight + Theme.px(8)
    radius: Theme.controlRadius
    color: Theme.ink
    Accessible.ignored: true

    Text {
        id: text
        textFormat: Text.PlainText
        anchors.centerIn: parent
        text: root.words
        color: Theme.sheet
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
}
