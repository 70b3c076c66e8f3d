import QtQuick

// Words of one cell; what does not fit is cut, and read in full.
Text {
    id: root
    textFormat: Text.PlainText

    property bool strong: false

    color: Theme.ink
    elide: Text.ElideRight
    verticalAlignment: Text.AlignVCenter
    font.family: Theme.textFamily
    font.pixelSize: Theme.rowSize
    font.weight: root.strong ? Font.DemiBold : Font.Normal
    Accessible.ignored: true
}
