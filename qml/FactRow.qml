import QtQuick

// A figure of the place: what, and how much.
Item {
    id: root

    required property string label
    required property string value
    required property string sentence
    /// Label and value stand one below the other where they do not fit beside each other.
    readonly property bool stacked: name.implicitWidth + amount.implicitWidth + Theme.px(16) > root.width

    implicitHeight: (root.stacked ? name.height + amount.height : Math.max(name.height, amount.height)) + Theme.px(5)
    Accessible.role: Accessible.StaticText
    Accessible.name: root.sentence

    Words {
        id: name
        width: Math.min(implicitWidth, root.width)
        text: root.label
        quiet: true
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    Words {
        id: amount
        x: root.stacked ? 0 : root.width - width
        y: root.stacked ? name.height : 0
        width: Math.min(implicitWidth, root.width)
        text: root.value
        strong: true
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
}
