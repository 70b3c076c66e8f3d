import QtQuick

// A heading on the sheet.
Text {
    id: root
    textFormat: Text.PlainText

    color: Theme.ink
    wrapMode: Text.WrapAtWordBoundaryOrAnywhere // A long word of a grower's own name breaks.
    font.family: Theme.titleFamily
    font.pixelSize: Theme.headSize
    Accessible.role: Accessible.Heading
    Accessible.name: root.text
}
