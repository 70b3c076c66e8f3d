import QtQuick

// A figure of what was measured: its name, the value, a note at the right.
Item {
    id: root

    required property string name
    required property string value
    required property string note
    required property string sentence
    height: Math.max(nameWords.height, noteWords.height) + Theme.px(12)
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence

    Words {
        id: nameWords
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width * 0.46
        text: root.name
        Accessible.ignored: true
    }
    Words {
        anchors.verticalCenter: parent.verticalCenter
        x: parent.width * 0.48
        width: parent.width * 0.24
        text: root.value
        strong: true
        Accessible.ignored: true
    }
    Words {
        id: noteWords
        anchors.verticalCenter: parent.verticalCenter
        x: parent.width * 0.72
        width: parent.width * 0.28
        horizontalAlignment: Text.AlignRight
        text: root.note
        quiet: true
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
