import QtQuick

// Words of one cell. A plant's own name that does not fit is cut, and read in full; all else goes on in a second line.
Text {
    id: root
    textFormat: Text.PlainText

    property bool strong: false
    property bool mayBeCut: false

    color: Theme.ink
    elide: root.mayBeCut ? Text.ElideRight : Text.ElideNone
    wrapMode: root.mayBeCut ? Text.NoWrap : Text.WordWrap
    verticalAlignment: Text.AlignVCenter
    font.family: Theme.textFamily
    font.pixelSize: Theme.rowSize
    font.weight: root.strong ? Font.DemiBold : Font.Normal
    Accessible.ignored: true
}
