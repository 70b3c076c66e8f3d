import QtQuick

// Words on the sheet, read aloud as they stand.
Text {
    id: root
    textFormat: Text.PlainText

    property bool quiet: false
    property bool strong: false

    color: root.quiet ? Theme.ink2 : Theme.ink
    wrapMode: Text.WordWrap
    font.family: Theme.textFamily
    font.pixelSize: Theme.textSize
    font.weight: root.strong ? Font.DemiBold : Font.Normal
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
    Accessible.ignored: root.text === ""
}
