import QtQuick

// A number with its name above and its spread below.
Grid {
    id: root

    required property string head
    required property string figure
    required property string words
    /// One line, without the last words.
    required property bool low

    columns: root.low ? 2 : 1
    columnSpacing: Theme.gap2

    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2, %3").arg(root.head).arg(root.figure).arg(root.words)

    Text {
        textFormat: Text.PlainText
        width: root.low ? undefined : root.width
        text: root.head
        wrapMode: Text.WordWrap
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
    Text {
        textFormat: Text.PlainText
        text: root.figure
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
    Text {
        textFormat: Text.PlainText
        visible: !root.low
        width: root.width
        text: root.words
        wrapMode: Text.WordWrap
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        Accessible.ignored: true
    }
}
