import QtQuick

// Words of one cell. Names that do not fit are cut, and read in full; what else there is goes on in a second line.
Text {
    id: root
    textFormat: Text.PlainText

    property bool strong: false
    property bool wraps: false

    color: Theme.ink
    elide: root.wraps ? Text.ElideNone : Text.ElideRight
    wrapMode: root.wraps ? Text.WordWrap : Text.NoWrap
    verticalAlignment: Text.AlignVCenter
    font.family: Theme.textFamily
    font.pixelSize: Theme.rowSize
    font.weight: root.strong ? Font.DemiBold : Font.Normal
    Accessible.ignored: true
}
