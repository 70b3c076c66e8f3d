import QtQuick

// What a band shows, beside it.
Column {
    id: root

    required property string head
    required property string words

    Text {
        textFormat: Text.PlainText
        width: root.width
        horizontalAlignment: Text.AlignLeft
        text: root.head
        wrapMode: Text.WordWrap
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
    Text {
        textFormat: Text.PlainText
        visible: root.words !== ""
        horizontalAlignment: Text.AlignLeft
        text: root.words
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        lineHeight: 0.97
        Accessible.ignored: true
    }
}
