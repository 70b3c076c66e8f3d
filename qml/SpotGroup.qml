import QtQuick

// The heading of the plants that begin the year at one spot.
Item {
    id: root

    required property string section

    implicitHeight: words.height + Theme.px(6)
    Accessible.role: Accessible.Heading
    Accessible.name: root.section

    Text {
        id: words
        textFormat: Text.PlainText
        x: 8
        y: Theme.px(4)
        width: root.width - x
        horizontalAlignment: Text.AlignLeft
        text: root.section
        color: Theme.ink
        wrapMode: Text.WordWrap
        font.family: Theme.textFamily
        font.pixelSize: Theme.smallSize
        font.weight: Font.DemiBold
        style: Text.Outline
        styleColor: Theme.sheet
        Accessible.ignored: true
    }
}
